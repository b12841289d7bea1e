"""Layer means of the binned file, made again from the rows of the full file."""

import numpy as np

from .reading import casts, code_of, layer_bounds, numbers, opened

MEANS = {"pressure": 2e-5, "temperature": 5e-6, "conductivity": 1e-6, "salinity": 2e-5, "density": 3e-4, "sound_speed": 4e-4}


def layers(binned, full, tally):
    """Counts must agree and means within single precision.

    Rows count whose own flag and pressure flag are 1 or 2, without the rows at the start of a downcast in which the
    sensors had not settled (temperature and conductivity are 3 there from its first row on). Deeper than the rated pressure (common practice: 100
    dbar) the pressure flag is 3 for two reasons that the file does not part, so layers below 99 dbar are only
    compared loosely.
    """
    with opened(full) as f, opened(binned) as b:
        rows_of = {cast: rows for cast, rows, _, _ in casts(f)}
        down = code_of(f, "segment", "down")
        column = {name: numbers(f, name) for name in [*MEANS, "depth", "segment", *(f"{name}_qc" for name in MEANS)]}
        bounds = layer_bounds(b)
        for cast, layers_of, _, _ in casts(b):
            where = f"{binned.name}, {cast}"
            if not tally.check(cast in rows_of, where, "the full file has no such cast"):
                continue
            rows = rows_of[cast]
            part = {name: values[rows] for name, values in column.items()}
            settled = settled_rows(part, down)
            for name, within in MEANS.items():
                counts, means = numbers(b, f"{name}_count")[layers_of], numbers(b, name)[layers_of]
                wrong = []
                for k, (top, bottom) in enumerate(bounds[layers_of]):
                    use = settled & (part["depth"] >= top) & (part["depth"] < bottom) & np.isfinite(part[name])
                    use &= np.isin(part[f"{name}_qc"], (1, 2)) & np.isin(part["pressure_qc"], (1, 2))
                    if part["pressure"][(part["segment"] == down) & (part["depth"] < bottom)].max(initial=0) > 99:
                        continue
                    if use.sum() != counts[k]:
                        wrong.append(f"layer {top:g} to {bottom:g} m has {counts[k]:g} rows, {use.sum()} counted")
                    elif use.any() and abs(part[name][use].mean() - means[k]) > within:
                        wrong.append(f"layer {top:g} to {bottom:g} m: {means[k]:g}, mean of the rows {part[name][use].mean():g}")
                tally.check(not wrong, where, f"{name}: {len(wrong)} layers differ; {wrong[:2]}")


def settled_rows(part, down):
    """Rows of the downcast from the first one on in which temperature or conductivity is not questionable."""
    rows = np.flatnonzero(part["segment"] == down)
    doubted = (part["temperature_qc"][rows] == 3) & (part["conductivity_qc"][rows] == 3)
    first = int(np.argmin(doubted)) if not doubted.all() else len(rows)
    settled = np.zeros(len(part["segment"]), bool)
    settled[rows[first:]] = True
    return settled
