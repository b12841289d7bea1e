"""Means of the bursts of a series, made again from the rows of the series' own file."""

import numpy as np

from .layers import MEANS
from .reading import code_of, numbers, opened


def bursts(path, series, tally):
    """Bursts must be those that pauses of more than five median intervals part, means within single precision."""
    with opened(series) as rows, opened(path) as means:
        stay = numbers(rows, "segment") == code_of(rows, "segment", "stay")
        times = numbers(rows, "time")[stay]
        steps = np.diff(times)
        starts = np.flatnonzero(np.r_[True, steps > 5 * np.median(steps)])
        parts = np.split(np.arange(len(times)), starts[1:])
        where = path.name
        bounds = numbers(means, "time_bounds")
        if not tally.check(len(parts) == len(bounds), where, f"{len(bounds)} bursts, {len(parts)} counted"):
            return
        ends = np.array([(times[part[0]], times[part[-1]]) for part in parts])
        tally.check(np.array_equal(bounds, ends), where, "bounds are not the first and last time of the bursts")
        middle = np.array([times[part].mean() for part in parts])
        tally.check(np.abs(numbers(means, "time") - middle).max() < 1e-6, where, "times are not the means of the rows' times")
        for name, within in {**MEANS, "depth": 2e-5}.items():
            values, flags = numbers(rows, name)[stay], numbers(rows, f"{name}_qc")[stay]
            used = [part[np.isin(flags[part], (1, 2)) & np.isfinite(values[part])] for part in parts]
            counts = np.array([len(part) for part in used])
            tally.check(np.array_equal(counts, numbers(means, f"{name}_count")), where, f"{name}: numbers of rows differ")
            made = np.array([values[part].mean() if len(part) else np.nan for part in used])
            far = np.abs(numbers(means, name) - made) > within
            missing = np.isnan(made) != np.isnan(numbers(means, name))
            tally.check(not (far | missing).any(), where, f"{name}: {(far | missing).sum()} means differ")
            good = np.array([(flags[part] == 1).sum() for part in used])
            expected = np.where(counts == 0, 9, np.where(2 * good >= counts, 1, 2))
            tally.check(np.array_equal(expected, numbers(means, f"{name}_qc")), where, f"{name}: flags of the means differ")
            if f"{name}_sd" in means.variables:
                spread = np.array([values[part].std(ddof=1) if len(part) > 1 else np.nan for part in used])
                off = np.abs(numbers(means, f"{name}_sd") - spread) > within + 1e-3 * spread
                tally.check(not off.any(), where, f"{name}: {off.sum()} standard deviations differ")
