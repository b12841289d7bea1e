"""What processing found in the demo survey against what its script put there.

Marks: offset within 0.02 dbar of the truth, maximum pressure within 0.15 dbar, downcast at most 0.3 dbar late, the
first bottom row within 5 s or before the deepest row, no row of air or soak in a layer, every spike flagged,
positions as simulated. Layers: none empty between the first and the last of the true water but for the last, and
salinity at most 1.5 times as far from the true water (root mean square, 0.02 added for noise) as simple means over
the true downcast are, computed here with the TEOS-10 library from the recorded rows.
"""

import json

import gsw
import numpy as np

from .reading import casts, code_of, layer_bounds, numbers, opened

RECORDED = [*("pressure", "temperature", "conductivity", "depth", "segment"), *(f"{name}_qc" for name in ("pressure", "temperature", "conductivity"))]
HEIGHT = {"offset": 0.02, "deepest": 0.15, "late": 0.3}


def truth(folder, truths, tally):
    (record,) = folder.glob("*_processing.json")
    done = {cast["id"]: cast for cast in json.loads(record.read_text(encoding="utf-8"))["casts"]}
    known = {path.stem: json.loads(path.read_text(encoding="utf-8")) for path in sorted(truths.glob("*.json"))}
    tally.check(set(done) == set(known), record.name, f"casts {sorted(done)}, simulated {sorted(known)}")
    for cast in sorted(set(done) & set(known)):
        segments_and_pressure(done[cast], known[cast], cast, tally)
    recorded = {}
    for full in sorted(folder.glob("*_full.nc")):
        with opened(full) as dataset:
            for cast, rows, lat, lon in casts(dataset):
                if cast in known:
                    recorded[cast] = {name: numbers(dataset, name)[rows] for name in RECORDED}
                    rows_of(dataset, recorded[cast], lat, lon, known[cast], cast, tally)
    averaged = set()
    for binned in sorted(folder.glob("*_binned.nc")):
        with opened(binned) as dataset:
            for cast, rows, _, _ in casts(dataset):
                if cast in known:
                    averaged.add(cast)
                    layers_of(dataset, rows, recorded[cast], known[cast], cast, tally)
    tally.check(bool(averaged) and averaged == set(recorded), record.name, f"casts in full files {sorted(recorded)}, in binned files {sorted(averaged)}")
    for path in sorted(folder.glob("*_series*.nc")):
        with opened(path) as dataset:
            ((cast, rows, _, _),) = casts(dataset)
            if cast in known:
                series_of(dataset, known[cast], cast, tally)


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
    pressure = rows["pressure"]
    tally.check(len(pressure) == known["rows"], cast, f"{len(pressure)} rows, simulated {known['rows']}")
    down = np.flatnonzero(rows["segment"] == code_of(dataset, "segment", "down"))
    if not tally.check(len(down) > 0, cast, "no downcast"):
        return
    simulated = first_row(known["segments"], "down")
    late = pressure[down[0]] - pressure[simulated] if down[0] > simulated else 0
    tally.check(late <= HEIGHT["late"], cast, f"downcast from row {down[0]}, simulated {simulated}: {late:.2f} dbar late")
    good = down[np.isin(rows["pressure_qc"][down], (1, 2)) & np.isin(rows["conductivity_qc"][down], (1, 2))]
    for kind in ("air", "soak"):
        taken = sum(np.isin(good, range(s["firstRow"], s["lastRow"] + 1)).sum() for s in known["segments"] if s["kind"] == kind)
        tally.check(taken == 0, cast, f"{taken} rows of {kind} taken for good rows of the downcast")
    for spike in known["spikes"]:
        flag = rows[f"{spike['column']}_qc"][spike["row"]]
        tally.check(flag in (3, 4), cast, f"spike in {spike['column']}, row {spike['row']}, has flag {flag:g}")


def series_of(dataset, known, cast, tally):
    nominal = float(numbers(dataset, "nominal_depth"))
    tally.check(abs(nominal - known["fixed_depth_m"]) <= 0.05, cast, f"nominal depth {nominal}, the file says {known['fixed_depth_m']}")
    stay = numbers(dataset, "segment") == code_of(dataset, "segment", "stay")
    simulated = sum(s["lastRow"] - s["firstRow"] + 1 for s in known["segments"] if s["kind"] == "stay")
    tally.check(abs(stay.sum() - simulated) <= 20, cast, f"{stay.sum()} rows of the stay, simulated {simulated}")
    for name, within in (("pressure", 0.02), ("temperature", 0.01), ("salinity", 0.02)):
        mean = float(np.nanmean(numbers(dataset, name)[stay]))
        wanted = known["stay_means"]["sea_pressure" if name == "pressure" else name]
        tally.check(abs(mean - wanted) <= within, cast, f"mean {name} of the stay is {mean:.4f}, simulated {wanted}")


def layers_of(dataset, layers, rows, known, cast, tally):
    bounds = layer_bounds(dataset)[layers]
    if not tally.check(len(bounds) > 0, cast, "no layers"):
        return
    width = round(float(np.median(bounds[:, 1] - bounds[:, 0])), 3)
    wanted = next((each for each in known["layers"] if each["width_m"] == width), None)
    if not tally.check(wanted is not None, cast, f"layers of {width} m"):
        return
    found = dict(zip(np.round(bounds.mean(axis=1), 3).tolist(), numbers(dataset, "salinity")[layers]))
    true = dict(zip(wanted["centre_m"], wanted["salinity"]))
    filled = [c for c in true if np.isfinite(found.get(c, np.nan))]
    if not tally.check(bool(filled), cast, "no layer has a salinity"):
        return
    # the deepest true layer may be a sliver in which no row lies
    empty = [c for c in list(true)[:-1] if c > filled[0] and c not in filled]
    tally.check(not empty, cast, f"layers without a salinity: {empty}")
    if known["soaked"]:
        tally.check(filled[0] == width, cast, f"the first layer is centred at {filled[0]} m")
    simple = simple_means(rows, known, width)
    both = [c for c in filled if c in simple]
    reached = rms([found[c] - true[c] for c in both])
    attainable = rms([simple[c] - true[c] for c in both])
    tally.check(reached <= 1.5 * attainable + 0.02, cast, f"salinity of layers is {reached:.3f} off, simple means over the true downcast {attainable:.3f}")


def rms(values):
    return float(np.sqrt(np.mean(np.square(values)))) if values else float("nan")


def simple_means(rows, known, width):
    """Mean salinity over the rows of the true downcast that go deeper than all before, spikes left out."""
    sums = {}
    deepest = -np.inf
    spiked = {spike["row"] for spike in known["spikes"]}
    with np.errstate(invalid="ignore"):
        salinity = gsw.SP_from_C(rows["conductivity"] * 10, rows["temperature"], rows["pressure"])
    (down,) = [segment for segment in known["segments"] if segment["kind"] == "down"]
    for k in range(down["firstRow"], down["lastRow"] + 1):
        if k in spiked or not rows["pressure"][k] > deepest or not np.isfinite(salinity[k]):
            continue
        deepest = rows["pressure"][k]
        sums.setdefault(round(float(np.floor(rows["depth"][k] / width + 0.5)) * width, 3), []).append(salinity[k])
    return {centre: float(np.mean(values)) for centre, values in sums.items() if centre > 0}
