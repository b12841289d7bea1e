"""Sound-speed profiles and exchange files against the layer means they were made from."""

import csv
import re

import numpy as np

from .reading import casts, code_of, numbers, opened


def sound_speed(path, binned, tally):
    """Points are layer means, none is left out by more than the tolerance that the summary states."""
    with opened(path) as s, opened(binned) as b:
        tolerance = float(re.search(r"within ([\d.]+) m s-1", s.summary)[1])
        rows_of = {cast: rows for cast, rows, _, _ in casts(b)}
        layer = {name: numbers(b, name) for name in ("depth", "sound_speed", "sound_speed_qc")}
        point = {name: numbers(s, name) for name in ("depth", "sound_speed", "sound_speed_origin", "sound_speed_change")}
        mean = code_of(s, "sound_speed_origin", "layer_mean")
        before = None
        for cast, rows, _, _ in casts(s):
            where = f"{path.name}, {cast}"
            if not tally.check(cast in rows_of, where, "the binned file has no such cast"):
                continue
            depth, speed = point["depth"][rows], point["sound_speed"][rows]
            tally.check(bool(np.all(np.diff(depth) > 0)), where, "depth does not increase")
            tally.check(bool(np.all(point["sound_speed_origin"][rows] == mean)), where, "carried without being asked")
            own = {name: values[rows_of[cast]] for name, values in layer.items()}
            usable = np.isin(own["sound_speed_qc"], (1, 2)) & np.isfinite(own["sound_speed"])
            known = dict(zip(own["depth"][usable], own["sound_speed"][usable]))
            tally.check(all(known.get(d) == c for d, c in zip(depth, speed)), where, "a point is no layer mean")
            error = np.abs(np.interp(own["depth"][usable], depth, speed) - own["sound_speed"][usable])
            tally.check(error.max() <= tolerance + 1e-3, where, f"a layer is {error.max():.3f} m/s off the profile")
            change = point["sound_speed_change"][rows]
            wanted = np.full(len(depth), np.nan) if before is None else speed - np.interp(depth, *before, np.nan, np.nan)
            tally.check(bool(np.allclose(change, wanted, atol=1e-3, equal_nan=True)), where, "change since the cast before")
            before = (depth, speed)


PARAMETERS = {"CTDPRS": ("pressure", 0.01), "CTDTMP": ("temperature", 1e-4), "CTDSAL": ("salinity", 1e-4)}


def exchange(path, binned, tally):
    """A WHP-Exchange file, by its description, against the layer means of its cast."""
    lines = path.read_text(encoding="utf-8").split("\n")
    tally.check(bool(re.match(r"CTD,\d{8}[A-Z]*$", lines[0])), path.name, f"first line {lines[0]!r}")
    start = next(k for k, line in enumerate(lines) if line.startswith("NUMBER_HEADERS"))
    header = dict(line.split(" = ", 1) for line in lines[start + 1 : start + int(lines[start].split(" = ")[1])])
    names, units, *rows = list(csv.reader(lines[start + 1 + len(header) : lines.index("END_DATA")]))
    tally.check(len(names) == len(units) and all(len(row) == len(names) for row in rows), path.name, "rows of different width")
    with opened(binned) as b:
        (cast,) = [each for each in casts(b) if path.name.endswith(f"_{each[0]}_ct1.csv")]
        _, layers, lat, lon = cast
        placed = np.isfinite(numbers(b, "pressure")[layers])
        near = abs(float(header["LATITUDE"]) - lat) + abs(float(header["LONGITUDE"]) - lon)
        tally.check(near < 2e-6, path.name, "another position than in the binned file")
        for name, (variable, step) in PARAMETERS.items():
            got = np.array([float(row[names.index(name)]) for row in rows])
            got[got == -999] = np.nan
            wanted = numbers(b, variable)[layers][placed]
            same = got.shape == wanted.shape and np.allclose(got, wanted, rtol=0, atol=step / 2 + 1e-5, equal_nan=True)
            tally.check(bool(same), path.name, f"{name} is not {variable} of the binned file")
            flags = [int(row[names.index(f"{name}_FLAG_W")]) for row in rows]
            mapped = [{1: 1, 2: 1, 3: 3, 4: 4, 9: 5}[int(flag)] for flag in numbers(b, f"{variable}_qc")[layers][placed]]
            tally.check(flags == mapped, path.name, f"{name}_FLAG_W does not follow {variable}_qc")
