"""The TEOS-10 library's side of seawater.ts: reads names of quantities, one a line, computes each once and answers
with a line of JSON: seconds of processor time and of the clock, and the results at every 9973rd point."""

import json
import sys
import time

import gsw
import numpy as np

points = int(sys.argv[1])
rows = np.arange(points, dtype=float)


def column(step, low, high):
    return (rows * step) % 1 * (high - low) + low


# the same columns as in seawater.ts
SP = column(0.6180339887498949, 0.5, 40)
t = column(0.7548776662466927, 0, 30)
p = column(0.5698402909980532, 0, 500)
C = gsw.C_from_SP(SP, t, p)
SA = gsw.SR_from_SP(SP)
CT = gsw.CT_from_t(SA, t, p)

quantities = {
    "practicalSalinity": lambda: gsw.SP_from_C(C, t, p),
    "soundSpeed": lambda: gsw.sound_speed(SA, CT, p),
    "conservativeTemperature": lambda: gsw.CT_from_t(SA, t, p),
    "depthFromPressure": lambda: gsw.z_from_p(p, 45.0),
    "absoluteSalinity": lambda: gsw.SA_from_SP(SP, p, -30.0, 30.0),
    "density": lambda: gsw.rho(SA, CT, p),
}

print(json.dumps({"version": gsw.__version__}), flush=True)
for line in sys.stdin:
    clock, processor = time.perf_counter(), time.process_time()
    result = quantities[line.strip()]()
    processor, clock = time.process_time() - processor, time.perf_counter() - clock
    print(json.dumps({"processor": processor, "clock": clock, "sample": result[::9973].tolist()}), flush=True)
