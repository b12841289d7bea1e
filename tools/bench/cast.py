"""The library's side of cast.js: reads the cast named and computes its salinity, density, sound speed and depth with
numpy and gsw, once for each line of input, and answers with a line of JSON: milliseconds of processor time for reading and computing.

Nothing is cleaned, cut or judged here: it is the least that a script of one's own does with a cast."""

import json
import sys
import time

import gsw
import numpy as np

path, longitude, latitude = sys.argv[1], float(sys.argv[2]), float(sys.argv[3])

print(json.dumps({"version": gsw.__version__}), flush=True)
for _ in sys.stdin:
    started = time.process_time()
    C, t, p = np.loadtxt(path, delimiter=",", skiprows=1, usecols=(1, 2, 3), unpack=True)
    read = time.process_time()
    SP = gsw.SP_from_C(C, t, p)
    SA = gsw.SA_from_SP(SP, p, longitude, latitude)
    CT = gsw.CT_from_t(SA, t, p)
    rho = gsw.rho(SA, CT, p)
    sound_speed = gsw.sound_speed(SA, CT, p)
    depth = -gsw.z_from_p(p, latitude)
    computed = time.process_time()
    answer = {"rows": len(depth), "reading": (read - started) * 1e3, "computing": (computed - read) * 1e3}
    print(json.dumps(answer), flush=True)
