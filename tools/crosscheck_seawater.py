#!/usr/bin/python3
"""Compares the equations of sea water in @wherry/core with the general-purpose TEOS-10 library (Debian:
python3-gsw) at 5,000 fresh random points.

    /usr/bin/python3 tools/crosscheck_seawater.py [SEED]

Without a seed a new one is drawn; it is printed, so that a failure can be seen again. Exit status 1 if a point is
farther off than the tolerance stated beside the quantity. Needs Node and the installed clone (npm test does that).
"""

import json
import pathlib
import random
import subprocess
import sys
import tempfile

import numpy as np

ROOT = pathlib.Path(__file__).resolve().parent.parent
POINTS = 5000
CAST = 100

# The same equation in the library: unit, tolerance, and what it leaves room for. Names are those of @wherry/core.
SAME = {
    "practicalSalinity": ("1", 1e-9),
    "conductivityFromSalinity": ("mS cm-1", 1e-9),
    "referenceSalinity": ("g kg-1", 1e-9),
    "anomalyRatio": ("1", 6e-10),  # the table is stored to 1e-9
    "absoluteSalinity": ("g kg-1", 5e-8),  # so this cannot be nearer
    "salinityFromAbsolute": ("1", 5e-8),
    "potentialTemperature0": ("degC", 1e-9),
    "conservativeTemperature": ("degC", 1e-9),
    "temperatureFromConservative": ("degC", 1e-9),
    "density": ("kg m-3", 1e-9),
    "sigma0": ("kg m-3", 1e-9),
    "soundSpeed": ("m s-1", 1e-8),
    "thermalExpansion": ("K-1", 1e-15),
    "halineContraction": ("kg g-1", 1e-15),
    "spiciness0": ("kg m-3", 1e-9),
    "freezingTemperature": ("degC", 1e-9),  # the library's polynomial
    "oxygenSolubility": ("umol kg-1", 1e-9),
    "depthFromPressure": ("m", 1e-8),
    "pressureFromDepth": ("dbar", 1e-8),
    "specificConductance25": ("mS cm-1", 1e-9),
    "specificConductance25Pss78": ("mS cm-1", 1e-9),
    "temperatureTo68": ("degC", 1e-12),
    "temperatureFrom68": ("degC", 1e-12),
    "buoyancyFrequencySquared": ("s-2", 1e-9),  # of rows without order: values up to 1 and more
    "densityFromSensors": ("kg m-3", 5e-8),  # all steps from conductivity on are ours
}

# Another equation for the same quantity: these only show that nothing is far off. Ranges where they should agree.
NEIGHBOURS = {
    "freezingTemperature, exact": ("degC", 3e-4),
    "densityEos80": ("kg m-3", 0.02),
    "depthFromPressureUnesco": ("m", 0.3),
    "pressureFromDepthSaunders": ("dbar", 0.5),
    "adiabaticLapseRateEos80": ("degC dbar-1", 3e-6),
    "potentialTemperatureEos80": ("degC", 0.02),
    "freezingTemperatureEos80": ("degC", 5e-3),
    "soundSpeedChenMillero": ("m s-1", 1.0),
    "soundSpeedDelGrosso": ("m s-1", 0.3),
}


def inputs(rng):
    """Casts of 100 rows: rivers and estuaries, shelf, open sea, and any water anywhere."""
    import gsw

    casts = []
    for n in range(POINTS // CAST):
        lon, lat = rng.uniform(-180, 360), rng.uniform(-86, 90)
        kind = n % 4
        salty = (np.exp(rng.uniform(np.log(0.05), np.log(30), CAST)), rng.uniform(20, 38, CAST),
                 rng.uniform(33.5, 37, CAST), rng.uniform(0.05, 42, CAST))[kind]
        warm = rng.uniform(*((-0.1, 32), (-1.5, 30), (-1, 18), (-2, 36))[kind], CAST)
        p = np.sort(rng.uniform(0, (40, 200, 6000, 6000)[kind], CAST))
        casts.append((salty, warm, p, np.full(CAST, lon), np.full(CAST, lat)))
    sp, t, p, lon, lat = (np.concatenate([cast[k] for cast in casts]) for k in range(5))
    c = gsw.C_from_SP(sp, t, p)
    sp = gsw.SP_from_C(c, t, p)
    sa = gsw.SA_from_SP(sp, p, lon, lat)
    return {"C": c, "t": t, "p": p, "lon": lon, "lat": lat, "SP": sp, "SA": sa, "CT": gsw.CT_from_t(sa, t, p),
            "pt0": gsw.pt0_from_t(sa, t, p), "depth": -gsw.z_from_p(p, lat)}


def library(given):
    import gsw

    c, t, p, lon, lat, sp, sa, ct, pt0, depth = (given[name] for name in
                                                 ("C", "t", "p", "lon", "lat", "SP", "SA", "CT", "pt0", "depth"))
    casts = [slice(start, start + CAST) for start in range(0, len(p), CAST)]
    sound = gsw.sound_speed(sa, ct, p)
    return {
        "practicalSalinity": sp, "conductivityFromSalinity": gsw.C_from_SP(sp, t, p),
        "referenceSalinity": gsw.SR_from_SP(sp), "anomalyRatio": gsw.SAAR(p, lon, lat), "absoluteSalinity": sa,
        "salinityFromAbsolute": gsw.SP_from_SA(sa, p, lon, lat), "potentialTemperature0": pt0,
        "conservativeTemperature": ct, "temperatureFromConservative": gsw.t_from_CT(sa, ct, p),
        "density": gsw.rho(sa, ct, p), "sigma0": gsw.sigma0(sa, ct), "soundSpeed": sound,
        "thermalExpansion": gsw.alpha(sa, ct, p), "halineContraction": gsw.beta(sa, ct, p),
        "spiciness0": gsw.spiciness0(sa, ct), "freezingTemperature": gsw.t_freezing_poly(sa, p, 1.0),
        "oxygenSolubility": gsw.O2sol_SP_pt(sp, pt0), "depthFromPressure": depth,
        "pressureFromDepth": gsw.p_from_z(-depth, lat), "specificConductance25": c / (1 + 0.0191 * (t - 25)),
        "specificConductance25Pss78": gsw.C_from_SP(sp, 25.0, 0.0), "temperatureTo68": 1.00024 * t,
        "temperatureFrom68": t / 1.00024,
        "buoyancyFrequencySquared": np.concatenate([gsw.Nsquared(sa[k], ct[k], p[k], lat=lat[k])[0] for k in casts]),
        "densityFromSensors": gsw.rho(sa, ct, p), "freezingTemperature, exact": gsw.t_freezing(sa, p, 1.0),
        "densityEos80": gsw.rho(gsw.SR_from_SP(sp), gsw.CT_from_t(gsw.SR_from_SP(sp), t, p), p),
        "pressureFromDepthSaunders": gsw.p_from_z(-depth, lat),
        "adiabaticLapseRateEos80": 1e4 * gsw.adiabatic_lapse_rate_from_CT(sa, ct, p),  # K per Pa
        "potentialTemperatureEos80": pt0, "freezingTemperatureEos80": gsw.t_freezing(sa, p, 1.0),
        "depthFromPressureUnesco": depth, "soundSpeedChenMillero": sound, "soundSpeedDelGrosso": sound,
    }


def places(given):
    """Rows on which a quantity is compared, by name; the others are compared on all."""
    p, sp, t = given["p"], given["SP"], given["t"]
    lon = given["lon"] % 360
    # four cells there have one depth limit for both oceans: up to 0.02 g/kg off, see anomaly-ratio.ts
    box = (lon >= 260) & (lon <= 292) & (given["lat"] >= 3.4) & (given["lat"] <= 19.55) & (p > 3800)
    by_table = dict.fromkeys(("anomalyRatio", "absoluteSalinity", "salinityFromAbsolute", "densityFromSensors"), ~box)
    shallow = p < 500
    sea = (sp > 30) & (sp < 40) & (t > -2) & (t < 30)
    return {**by_table, "pressureFromDepthSaunders": shallow, "adiabaticLapseRateEos80": shallow & sea,
            "potentialTemperatureEos80": shallow & sea, "freezingTemperatureEos80": shallow & (sp > 4) & (sp < 40), "densityEos80": shallow & (t > -2) & (sp < 40), "depthFromPressureUnesco": p > -1,
            "soundSpeedChenMillero": shallow & (t > 0) & (sp < 40),
            "soundSpeedDelGrosso": shallow & (t > 0) & (t < 30) & (sp > 30) & (sp < 40)}


def largest(ours, theirs, rows):
    """Largest difference on the rows, and the row; infinite where only one of both is a number."""
    ours, theirs = np.asarray(ours, float), np.asarray(theirs, float)
    off = np.abs(ours - theirs)
    off[np.isnan(ours) & np.isnan(theirs)] = 0
    off[np.isnan(off)] = np.inf
    off[~rows] = 0
    at = int(np.argmax(off))
    return float(off[at]), at


def ours_at(given):
    with tempfile.TemporaryDirectory() as folder:
        source, target = pathlib.Path(folder, "in.json"), pathlib.Path(folder, "out.json")
        source.write_text(json.dumps({name: values.tolist() for name, values in given.items()}), encoding="ascii")
        subprocess.run(["npx", "tsx", "--conditions=wherry-source", "tools/seawater/values-at-points.ts",
                        str(source), str(target)], cwd=ROOT, check=True)
        return json.loads(target.read_text(encoding="ascii"))


def main(args):
    import gsw

    seed = int(args[0]) if args else random.SystemRandom().randrange(2**32)
    print(f"{POINTS} points, seed {seed}, library gsw {gsw.__version__}")
    given = inputs(np.random.default_rng(seed))
    ours, theirs, compared = ours_at(given), library(given), places(given)
    failures = 0
    for title, table in (("The same equation", SAME), ("Another equation", NEIGHBOURS)):
        print(f"\n{title:32} {'rows':>5} {'largest':>9} {'allowed':>9}")
        for name, (unit, within) in table.items():
            values = ours[name.split(",")[0]]
            rows = compared.get(name, np.full(len(values), True))
            off, at = largest(values, theirs[name], rows)
            print(f"{name:32} {int(rows.sum()):5} {off:9.1e} {within:9.0e} {unit}{'' if off <= within else '  TOO FAR'}")
            if not off <= within:
                failures += 1
                where = {key: float(value[at]) for key, value in given.items()}
                print(f"    ours {values[at]}, library {theirs[name][at]}, at {where}")
    unknown = set(ours) - set(SAME) - set(NEIGHBOURS)
    if unknown:
        print(f"not compared: {', '.join(sorted(unknown))}")
    print(f"\n{failures} quantities too far off" if failures else "\nall within their tolerance")
    return 1 if failures or unknown else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
