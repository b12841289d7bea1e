#!/usr/bin/env python3
"""Makes the hard simulated casts of test-data/hard-casts, with their truth.

    /usr/bin/python3 tools/make_hard_casts.py            writes the files
    /usr/bin/python3 tools/make_hard_casts.py --check    makes them again in memory and compares the values

Needs the TEOS-10 library gsw and numpy (Debian: python3-gsw). Fixed seed. All waters, places and casts are invented;
water, hand and waves are those of tools/demo_survey/physics.py. Sensors: first-order responses, a delay of the
thermistor, heat kept by the wall of the cell (its error as a first-order memory of temperature), white noise; dirt
as said by each cast. --check allows one unit of the last printed digit.
"""

import json
import pathlib
import sys

import gsw
import numpy as np

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent))
from demo_survey import physics  # noqa: E402

ROOT = pathlib.Path(__file__).resolve().parent.parent
FOLDER = ROOT / "test-data" / "hard-casts"
SEED = 771
DT = physics.DT
WAIT = 3.5  # s, just under the surface before the downcast

# depth of water (m), salinity top and bottom, temperature top and bottom, depth and half thickness of the interface (m)
WATERS = {
    "wedge": (12.0, (2.0, 29.0), (17.0, 13.0), 3.5, 0.35),
    "shelf": (40.0, (33.8, 35.1), (16.0, 9.5), 15.0, 3.0),
    "sound": (25.0, (28.0, 33.5), (15.0, 11.0), 8.0, 2.5),
    "mixed": (20.0, (31.0, 31.3), (13.0, 12.6), 10.0, 4.0),
}

PLAIN = {
    "water": "sound", "rate": 4, "offset": 0.11, "short": 0.5, "tau": (0.35, 0.1), "delay": 0.0, "cell": None,
    "air": 6.0, "soak": 40, "soak_depth": 1.2, "down": 0.5, "uneven": 0.2, "bottom": 5.0, "up": 0.5, "stops": [],
    "waves": (0.1, 4.0), "air_after": 4.0, "spikes": (), "dirt": None, "from": 0.0, "to": 1.0, "expected": None,
}

CASTS = {
    "slow-in-swell": {"water": "sound", "down": 0.22, "waves": (1.0, 6.0), "uneven": 0.1, "story": "lowered at 0.22 m/s in 1 m of swell: lifted by every wave"},
    "hand-jerks": {"water": "wedge", "uneven": 0.9, "waves": (0.25, 2.6), "rate": 2, "tau": (0.6, 0.1), "story": "jerked by hand through a salt wedge, 2 rows a second"},
    "bubble": {"water": "mixed", "dirt": ("down", 0.0, 0.4, 0.97), "expected": "bubble in the cell", "story": "a bubble takes 3 % of the conductivity for the first part of the downcast"},
    "weed": {"water": "mixed", "dirt": ("up", 0.0, 0.55, 0.985), "expected": "something in the cell", "story": "weed takes 1.5 % of the conductivity on the lower half of the upcast"},
    "slow-sensor": {"water": "shelf", "tau": (0.9, 0.1), "down": 0.8, "up": 0.8, "expected": "sensor response", "story": "temperature nine times slower than conductivity"},
    "one-hertz": {"water": "sound", "rate": 1, "soak": 0, "down": 0.6, "tau": (0.5, 0.1), "story": "1 row a second, no soak"},
    "fast-drop": {"water": "shelf", "rate": 16, "soak": 0, "down": 2.2, "uneven": 0.02, "bottom": 1.0, "tau": (0.2, 0.03), "delay": 0.1, "waves": (0.0, 4.0), "story": "free fall at 2.2 m/s, thermistor late"},
    "warm-cell": {"water": "shelf", "rate": 8, "down": 1.0, "up": 0.9, "tau": (0.15, 0.05), "cell": (0.03, 8.0), "story": "heat of the cell in a strong thermocline"},
    "mud": {"water": "sound", "bottom": 15.0, "dirt": ("bottom", 0.0, 1.0, 0.8), "story": "15 s in the mud: conductivity falls while pressure rests"},
    "upcast-only": {"water": "sound", "from": 0.7, "story": "the record begins at the bottom"},
    "cut-off": {"water": "sound", "to": 0.48, "story": "the record ends on the way down"},
    "in-water": {"water": "mixed", "from": 0.09, "to": 0.94, "story": "switched on and off under water: no reading in air"},
    "many-spikes": {"water": "sound", "rate": 8, "story": "bad rows in every column, two side by side",
                    "spikes": (("temperature", 0.44, 0.8), ("temperature", 0.44, 0.8), ("conductivity", 0.5, -3.0), ("pressure", 0.40, 9.0), ("pressure", 0.55, -6.0), ("conductivity", 0.72, 1.5), ("temperature", 0.8, -1.2))},
}


def sensors(rng, cast, water, depth):
    """True and measured values at the rows."""
    wet = depth > 0
    inside = np.clip(depth, 0, None)
    salinity = water.at("salinity", inside)
    temperature = np.where(wet, water.at("temperature", inside), 18.5)
    pressure = np.where(wet, water.at("pressure", inside), 0.0)
    conductivity = np.where(wet, gsw.C_from_SP(salinity, np.where(wet, temperature, 10.0), pressure), 0.004)
    measured = conductivity
    if cast["cell"]:
        size, tau = cast["cell"]
        memory, kept = np.zeros_like(temperature), 0.0
        decay, gain = np.exp(-DT / tau), size * tau / DT * (1 - np.exp(-DT / tau))
        for k in range(1, len(temperature)):
            kept = decay * kept + (gain * (temperature[k] - temperature[k - 1]) if wet[k] and wet[k - 1] else 0.0)
            memory[k] = kept
        warm, cold = (np.where(wet, temperature + d, 10.0) for d in (0.005, -0.005))
        slope = (gsw.C_from_SP(salinity, warm, pressure) - gsw.C_from_SP(salinity, cold, pressure)) / 0.01
        measured = measured - np.where(wet, slope * memory, 0.0)
    late = int(round(cast["delay"] / DT))
    felt = np.concatenate([np.full(late, temperature[0]), temperature[: len(temperature) - late]]) if late else temperature
    pick = np.arange(0, len(depth), int(round(1 / (cast["rate"] * DT))))
    noise = lambda name: rng.normal(0, physics.NOISE[name], len(pick))  # noqa: E731
    return pick, {
        "elapsed": pick * DT,
        "pressure": pressure[pick] + cast["offset"] + noise("pressure"),
        "temperature": physics.respond(felt, cast["tau"][0])[pick] + noise("temperature"),
        "conductivity": physics.respond(measured, cast["tau"][1])[pick] + noise("conductivity"),
    }, pressure[pick]


def means(water, deepest, width=1.0):
    """True means over layers of pressure centred at multiples of the width, whole ones only."""
    out = {"pressure": [], "temperature": [], "salinity": []}
    for k in range(1, int(deepest / width - 0.5) + 1):
        within = (water.pressure >= (k - 0.5) * width) & (water.pressure < (k + 0.5) * width)
        out["pressure"].append(k * width)
        for name in ("temperature", "salinity"):
            out[name].append(round(float(getattr(water, name)[within].mean()), 5))
    return out


def make(number, name, choice):
    cast = {**PLAIN, **choice}
    rng = np.random.default_rng([SEED, number])
    water = physics.Water(*WATERS[cast["water"]], 47.2, -3.9)
    cast["deepest"] = WATERS[cast["water"]][0] - cast["short"]
    depth, phase = physics.motion(rng, cast)
    pick, rows, pressure = sensors(rng, cast, water, depth)
    kinds = phase[pick].copy()
    wet = depth[pick] > 0
    kinds[~wet] = "air"
    kinds[wet & (kinds == "air")] = "other"
    if cast["dirt"]:
        where, start, end, factor = cast["dirt"]
        at = np.flatnonzero(kinds == where)
        at = at[int(start * len(at)) : int(end * len(at))]
        rows["conductivity"][at] *= factor if where != "bottom" else np.linspace(1.0, factor, len(at))
    count = len(pick)
    first, last = int(cast["from"] * count), int(cast["to"] * count)
    kinds, pressure = kinds[first:last], pressure[first:last]
    rows = {key: values[first:last] for key, values in rows.items()}
    rows["elapsed"] = rows["elapsed"] - rows["elapsed"][0]
    rows["conductivity"] = np.maximum(0, rows["conductivity"])
    spikes = []
    for column, part, added in cast["spikes"]:
        row = int(part * (last - first))
        while any(each["row"] == row and each["column"] == column for each in spikes):
            row += 1
        rows[column][row] += added
        spikes.append({"row": row, "column": column, "added": added})
    going = np.flatnonzero(kinds == "down")
    soaked = cast["soak"] > 0
    before = 0 if not len(going) else int(going[0] - (WAIT * cast["rate"] if soaked else 0))
    deepest = float(pressure.max())
    truth = {
        "about": "Truth of an invented cast; made by tools/make_hard_casts.py. Rows count from 0 in the data rows.",
        "story": cast["story"],
        "rate_hz": cast["rate"],
        "pressure_offset_dbar": cast["offset"],
        "air": bool(kinds[0] == "air"),
        "segments": physics.segments(kinds),
        "down": [int(going[0]), int(going[-1])] if len(going) else None,
        "down_start_sea_pressure": round(float(pressure[going[0]]), 4) if len(going) else None,
        "rows_before_profile": before,
        "deepest_row": int(np.argmax(pressure)),
        "max_sea_pressure": round(deepest, 4),
        "spikes": spikes,
        "sensor": {"tau_temperature_s": cast["tau"][0], "tau_conductivity_s": cast["tau"][1], "delay_temperature_s": cast["delay"],
                   "cell": cast["cell"] and {"size": cast["cell"][0], "relaxation_time_s": cast["cell"][1]}},
        "comparison": cast["expected"],
        "profile_1dbar": means(water, deepest),
    }
    places = {"elapsed": 3, "pressure": 3, "temperature": 4, "conductivity": 4}
    lines = ["elapsed (s),pressure (dbar),temperature (degC),conductivity (mS/cm)"]
    for values in zip(*(np.round(rows[key], d) for key, d in places.items())):
        lines.append(",".join(f"{value:.{d}f}" for value, d in zip(values, places.values())))
    return "\n".join(lines) + "\n", json.dumps(truth, indent=1) + "\n"


def alike(old, new):
    """Same text but for one unit of the last digit of a number of the table."""
    a, b = old.split("\n"), new.split("\n")
    if len(a) != len(b):
        return False
    for x, y in zip(a, b):
        if x == y:
            continue
        p, q = x.strip().rstrip(",").split(","), y.strip().rstrip(",").split(",")
        try:
            if len(p) != len(q) or any(abs(float(m) - float(n)) > 1.5 * 10.0 ** -len(m.partition(".")[2]) for m, n in zip(p, q)):
                return False
        except ValueError:
            return False
    return True


def main():
    files = {}
    for number, (name, choice) in enumerate(CASTS.items(), start=1):
        table, truth = make(number, name, choice)
        files[FOLDER / f"{name}.csv"], files[FOLDER / f"{name}.truth.json"] = table, truth
    if "--check" in sys.argv[1:]:
        wrong = [path for path, text in files.items() if not path.exists() or not alike(path.read_text(), text)]
        for path in wrong:
            print(f"{path.relative_to(ROOT)}: not what the script makes")
        print(f"hard casts: {len(files)} files compared, {len(wrong)} differ (gsw {gsw.__version__})")
        return 1 if wrong else 0
    FOLDER.mkdir(parents=True, exist_ok=True)
    for path, text in files.items():
        path.write_text(text)
        print(path.relative_to(ROOT))
    return 0


if __name__ == "__main__":
    sys.exit(main())
