"""What processing found in the demo survey against what its script put there.

Marks: offset within 0.02 dbar of the truth, maximum pressure within 0.15 dbar, downcast at most 0.3 dbar late, the
first bottom row within 5 s or before the deepest row, no row of air or soak taken for downcast, every spike
flagged, positions and start as simulated, and the layers' salinity near the true water's: half of them within
0.1, all of them within a fifth of the cast's range or 0.3 (sensors lag in a sharp interface).
"""

import json

import numpy as np

from .reading import casts, code_of, numbers, opened

HEIGHT = {"offset": 0.02, "deepest": 0.15, "late": 0.3}


def truth(folder, truths, tally):
    (record,) = folder.glob("*_processing.json")
    done = {cast["id"]: cast for cast in json.loads(record.read_text(encoding="utf-8"))["casts"]}
    known = {path.stem: json.loads(path.read_text(encoding="utf-8")) for path in sorted(truths.glob("*.json"))}
    tally.check(set(done) == set(known), record.name, f"casts {sorted(done)}, simulated {sorted(known)}")
    for cast in sorted(set(done) & set(known)):
        segments_and_pressure(done[cast], known[cast], cast, tally)
    (full,) = folder.glob("*_full.nc")
    with opened(full) as dataset:
        for cast, rows, lat, lon in casts(dataset):
            if cast in known:
                rows_of(dataset, rows, lat, lon, known[cast], cast, tally)
    (binned,) = folder.glob("*_binned.nc")
    with opened(binned) as dataset:
        for cast, rows, _, _ in casts(dataset):
            if cast in known:
                layers_of(dataset, rows, known[cast], cast, tally)


def first_row(segments, kind):
    return next((segment["firstRow"] for segment in segments if segment["kind"] == kind), None)


def segments_and_pressure(done, known, cast, tally):
    offset = done["pressureOffset"]
    tally.check(offset is not None and abs(offset - known["pressure_offset_dbar"]) <= HEIGHT["offset"], cast, f"offset {offset}, simulated {known['pressure_offset_dbar']}")
    deepest = done["maxPressure"]
    tally.check(deepest is not None and abs(deepest - known["max_sea_pressure_dbar"]) <= HEIGHT["deepest"], cast, f"maximum pressure {deepest}, simulated {known['max_sea_pressure_dbar']}")
    rows = sum(segment["lastRow"] - segment["firstRow"] + 1 for segment in done["segments"])
    tally.check(rows == known["rows"], cast, f"segments cover {rows} rows of {known['rows']}")
    found, wanted = first_row(done["segments"], "bottom"), first_row(known["segments"], "bottom")
    if wanted is not None and found is not None:
        near = abs(found - wanted) * known["interval_s"] <= 5 or min(wanted, known["deepest_row"]) <= found <= max(wanted, known["deepest_row"])
        tally.check(near, cast, f"bottom from row {found}, simulated {wanted}")


def rows_of(dataset, rows, lat, lon, known, cast, tally):
    tally.check(abs(lat - known["start"]["latitude"]) < 2e-6 and abs(lon - known["start"]["longitude"]) < 2e-6, cast, f"start fix {lat}, {lon}, simulated {known['start']}")
    segment = numbers(dataset, "segment")[rows]
    pressure = numbers(dataset, "pressure")[rows]
    tally.check(len(segment) == known["rows"], cast, f"{len(segment)} rows, simulated {known['rows']}")
    down = np.flatnonzero(segment == code_of(dataset, "segment", "down"))
    if not tally.check(len(down) > 0, cast, "no downcast"):
        return
    simulated = first_row(known["segments"], "down")
    late = pressure[down[0]] - pressure[simulated]
    tally.check(late <= HEIGHT["late"], cast, f"downcast from row {down[0]}, simulated {simulated}: {late:.2f} dbar late")
    for kind in ("air", "soak"):
        taken = sum(np.isin(down, range(s["firstRow"], s["lastRow"] + 1)).sum() for s in known["segments"] if s["kind"] == kind)
        tally.check(taken == 0, cast, f"{taken} rows of {kind} taken for downcast")
    for spike in known["spikes"]:
        flag = numbers(dataset, f"{spike['column']}_qc")[rows][spike["row"]]
        tally.check(flag in (3, 4), cast, f"spike in {spike['column']}, row {spike['row']}, has flag {flag:g}")


def layers_of(dataset, rows, known, cast, tally):
    bounds = numbers(dataset, "depth_bounds")[rows]
    if not tally.check(len(bounds) > 0, cast, "no layers"):
        return
    width = round(float(np.median(bounds[:, 1] - bounds[:, 0])), 3)
    wanted = next((layers for layers in known["layers"] if layers["width_m"] == width), None)
    if not tally.check(wanted is not None, cast, f"layers of {width} m"):
        return
    found = dict(zip(np.round(bounds.mean(axis=1), 3).tolist(), numbers(dataset, "salinity")[rows]))
    pairs = [(found[c], s) for c, s in zip(wanted["centre_m"], wanted["salinity"]) if c in found and np.isfinite(found[c])]
    # the deepest true layer may be a sliver that no row lies in
    tally.check(len(pairs) >= len(wanted["centre_m"]) - 1, cast, f"{len(pairs)} layers of {len(wanted['centre_m'])} have a salinity")
    off = np.abs([a - b for a, b in pairs])
    allowed = max(0.3, 0.2 * np.ptp(wanted["salinity"]))
    tally.check(np.median(off) <= 0.1 and off.max() <= allowed, cast, f"salinity of layers: median {np.median(off):.3f}, largest {off.max():.3f} off (allowed 0.1 and {allowed:.2f})")
