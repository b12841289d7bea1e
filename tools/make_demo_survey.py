#!/usr/bin/env python3
"""Makes the demo survey: an invented estuary, in test-data/demo, with its truth in test-data/demo-truth.

    /usr/bin/python3 tools/make_demo_survey.py            writes the files
    /usr/bin/python3 tools/make_demo_survey.py --check    makes them again in memory and compares the values

Needs the TEOS-10 library gsw and numpy (Debian: python3-gsw). Fixed seed. The physics stands in
tools/demo_survey/physics.py, the casts in casts.py, the text layouts in layouts.py, the sheet in sheet.py. --check
allows one unit of the last printed digit, as another version of the libraries may round differently.
"""

import hashlib
import json
import pathlib
import re
import sys

import gsw
import numpy as np

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent))
from demo_survey import physics  # noqa: E402
from demo_survey.casts import CASTS, SERIES, STATIONS  # noqa: E402
from demo_survey.layouts import LAYOUTS  # noqa: E402
from demo_survey.sheet import readme, sheet  # noqa: E402

ROOT = pathlib.Path(__file__).resolve().parent.parent
DEMO = ROOT / "test-data" / "demo"
TRUTH = ROOT / "test-data" / "demo-truth"
SEED = 20250513


def water_of(place):
    lat, lon, bottom, salinity, temperature, interface, thickness = STATIONS[place]
    return physics.Water(bottom, salinity, temperature, interface, thickness, lat, lon), lat, lon


def fixes(rng, cast, lat, lon):
    """Start and end fix; the boat drifts some metres in between."""
    start = {"lat": lat + rng.normal(0, 4e-5), "lon": lon + rng.normal(0, 6e-5), "satellites": cast["satellites"][0]}
    end = {"lat": start["lat"] + rng.normal(0, 1.5e-4), "lon": start["lon"] + rng.normal(0, 2e-4), "satellites": cast["satellites"][1]}
    return start, end if cast["end_fix"] else None


def make(number, cast):
    """Bytes of the file and its truth."""
    rng = np.random.default_rng([SEED, number])
    water, lat, lon = water_of(cast["place"])
    series = cast is SERIES
    if series:
        depth, phase = physics.stay(cast["plan"])
        # the flood brings saltier water past the pontoon
        change = lambda t: 3.0 * t / t[-1] + 0.4 * np.sin(2 * np.pi * t / 240)  # noqa: E731
    else:
        cast["plan"]["deepest"] = STATIONS[cast["place"]][2] - cast["short"]
        depth, phase = physics.motion(rng, cast["plan"])
        change = None
    rows, truth = physics.record(
        rng, water, depth, phase, offset=cast["offset"], air_temperature=cast["air_temperature"],
        interval=cast.get("interval", 0.25), change=change, spikes=cast.get("spikes", ()),
    )
    kept = len(rows["elapsed"])
    if cast["cut"]:
        up = np.flatnonzero(truth["kinds"] == "up")
        kept = int(up[int(0.6 * len(up))]) + 1  # the last of these rows is the one cut off
        rows = {name: values[:kept] for name, values in rows.items()}
        truth = {name: values[:kept] if isinstance(values, np.ndarray) else values for name, values in truth.items()}
    write, ending = LAYOUTS[cast["layout"]]
    start, end = fixes(rng, cast, lat, lon)
    data = write({**cast, "from": start, "to": end}, rows)
    whole = kept - 1 if cast["cut"] else kept
    kinds, pressure = truth["kinds"][:whole], truth["sea_pressure"][:whole]
    known = {
        "about": "Truth of an invented cast; made by tools/make_demo_survey.py. Rows count from 0 in the data rows.",
        "id": cast["id"],
        "file": f"{cast['id'].lower().replace('-', '_')}.{ending}",
        "place": cast["place"],
        "kind": "fixed-depth" if series else "profile",
        "start_utc": f"{cast['start']:%Y-%m-%dT%H:%M:%SZ}",
        "start": {"latitude": round(start["lat"], 6), "longitude": round(start["lon"], 6), "satellites": start["satellites"]},
        "end": end and {"latitude": round(end["lat"], 6), "longitude": round(end["lon"], 6), "satellites": end["satellites"]},
        "rows": whole,
        "row_cut_off": bool(cast["cut"]),
        "interval_s": cast.get("interval", 0.25),
        "pressure_offset_dbar": cast["offset"],
        "rated_pressure_dbar": cast["rated"],
        "segments": physics.segments(kinds),
        "deepest_row": int(np.argmax(pressure)),
        "max_sea_pressure_dbar": round(float(pressure.max()), 4),
        "max_depth_m": round(float(truth["depth"][:whole].max()), 4),
        "soaked": bool(not series and cast["plan"]["soak"] > 0),
        "spikes": truth["spikes"],
        "sensor": {"response_s": physics.RESPONSE, "noise": physics.NOISE},
    }
    if series:
        stay = kinds == "stay"
        known["fixed_depth_m"] = cast["depth"]
        known["stay_means"] = {name: round(float(truth[name][:whole][stay].mean()), 5) for name in ("temperature", "salinity", "sea_pressure")}
    else:
        deepest = float(truth["depth"][:whole].max())
        known["layers"] = [physics.layers(water, deepest, width) for width in (0.25, 0.5, 1.0, 2.0)]
    return known, data


def everything():
    """Path and bytes of every file of the survey."""
    files, listed = {}, []
    for number, cast in enumerate([*CASTS, SERIES], start=1):
        known, data = make(number, cast)
        files[DEMO / known["file"]] = data
        text = json.dumps(known, indent=1, ensure_ascii=False) + "\n"
        files[TRUTH / f"{cast['id']}.json"] = text.encode("utf-8")
        listed.append((cast, known, hashlib.sha256(data).hexdigest()))
    files[DEMO / "survey.yaml"] = sheet(listed).encode("utf-8")
    files[DEMO / "README.md"] = readme(listed).encode("utf-8")
    return files


NUMBER = re.compile(r"(?<![\w.,])-?\d+(?:[.,]\d+)?(?![\w])")


def compare(path, made):
    """Differences between a committed file and the one made now, beyond one unit of the last printed digit."""
    if not path.exists():
        return [f"{path.relative_to(ROOT)}: not there"]
    encoding = "latin-1" if path.suffix == ".txt" else "utf-8"
    old, new = path.read_bytes().decode(encoding), made.decode(encoding)
    if path.name == "survey.yaml":  # checksums are compared with the committed files below
        old, new = (re.sub(r"[0-9a-f]{64}", "SHA", text) for text in (old, new))
    old_lines, new_lines = old.split("\n"), new.split("\n")
    if len(old_lines) != len(new_lines):
        return [f"{path.relative_to(ROOT)}: {len(old_lines)} lines, made now {len(new_lines)}"]
    out = []
    for line, (a, b) in enumerate(zip(old_lines, new_lines), start=1):
        if a != b and not alike(a, b):
            out.append(f"{path.relative_to(ROOT)}, line {line}: {a.strip()!r}, made now {b.strip()!r}")
    return out


def alike(a, b):
    if NUMBER.sub("#", a) != NUMBER.sub("#", b):
        return False
    for x, y in zip(NUMBER.findall(a), NUMBER.findall(b)):
        places = max(len(n.replace(",", ".").partition(".")[2]) for n in (x, y))
        if abs(float(x.replace(",", ".")) - float(y.replace(",", "."))) > 1.5 * 10.0**-places:
            return False
    return True


def check(files):
    problems = [problem for path, made in files.items() for problem in compare(path, made)]
    known = set(files)
    extra = [path for folder in (DEMO, TRUTH) for path in folder.iterdir() if path not in known]
    problems += [f"{path.relative_to(ROOT)}: not made by this script" for path in extra]
    listed = (DEMO / "survey.yaml").read_text(encoding="utf-8") if (DEMO / "survey.yaml").exists() else ""
    for path in sorted(known):
        if path.parent == DEMO and path.suffix in (".csv", ".txt", ".tsv", ".dat") and path.exists():
            if hashlib.sha256(path.read_bytes()).hexdigest() not in listed:
                problems.append(f"survey.yaml: checksum of {path.name} is not that of the committed file")
    for problem in problems[:40]:
        print(problem)
    print(f"demo survey: {len(files)} files compared, {len(problems)} differences (gsw {gsw.__version__})")
    return 1 if problems else 0


def main():
    files = everything()
    if "--check" in sys.argv[1:]:
        return check(files)
    for folder in (DEMO, TRUTH):
        folder.mkdir(parents=True, exist_ok=True)
        for path in folder.iterdir():
            if path not in files:
                path.unlink()
    for path, data in files.items():
        path.write_bytes(data)
    print(f"{len(files)} files written to {DEMO.relative_to(ROOT)} and {TRUTH.relative_to(ROOT)}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
