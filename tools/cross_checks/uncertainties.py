"""Standard uncertainties of computed quantities, made again with derivatives of the TEOS-10 library.

The stored uncertainties of conductivity, temperature and pressure are propagated by central differences a thousandth
of an uncertainty wide. The program takes one uncertainty to either side and goes by Reference Salinity: 0.5 %, and
where the conductivity is smaller than 20 of its uncertainties (the curvature of salinity counts there, and in air
the equations do not hold) nothing is compared.
"""

import gsw
import numpy as np

from .reading import casts, numbers, opened

WITHIN = 5e-3
STEP = 1e-3
INPUTS = ("conductivity", "temperature", "pressure")


def uncertainties(path, tally):
    with opened(path) as dataset:
        names = set(dataset.variables)
        if not all(f"{name}_uncertainty" in names for name in INPUTS):
            return
        read = {name: numbers(dataset, name) for name in INPUTS}
        given = {name: numbers(dataset, f"{name}_uncertainty") for name in INPUTS}
        results = [name for name in ("salinity", "density", "sound_speed", "depth") if name == "depth" or name in names]
        if "binned" in path.stem:
            results.remove("depth")
        for name in results:
            tally.check(f"{name}_uncertainty" in names, path.name, f"{name} has no uncertainty beside it")
        stored = {name: numbers(dataset, f"{name}_uncertainty") for name in results if f"{name}_uncertainty" in names}
        listed = casts(dataset)
    for cast, rows, lat, lon in listed:
        C, t, p = (read[name][rows] for name in INPUTS)
        u = [given[name][rows] for name in INPUTS]
        scaled = 10 * C, t, p
        wide = 10 * u[0], u[1], u[2]
        clear = (C > 20 * u[0]) & np.isfinite(C + t + p)
        for name, values in stored.items():
            quantity = QUANTITIES[name]
            made = np.sqrt(sum(contribution(quantity, scaled, wide, k, lat, lon) ** 2 for k in range(3)))
            known = clear & np.isfinite(made)
            lacking = known & ~np.isfinite(values[rows])
            tally.check(not lacking.any(), f"{path.name}, {cast}", f"{name}_uncertainty: missing in {lacking.sum()} rows")
            within = 0.04 if name == "depth" else WITHIN  # fresh water is 3 % more depth a dbar than the standard ocean
            off = np.abs(values[rows] / made - 1)
            far = known & (off > within)
            worst = off[known].max(initial=0)
            tally.check(known.any(), f"{path.name}, {cast}", f"{name}_uncertainty: no row to compare")
            tally.check(not far.any(), f"{path.name}, {cast}", f"{name}_uncertainty: {far.sum()} rows differ, up to {worst:.2%}")


def salinity(C, t, p, lat, lon):
    return gsw.SP_from_C(C, t, p)


def density(C, t, p, lat, lon):
    SA = gsw.SA_from_SP(gsw.SP_from_C(C, t, p), p, lon, lat)
    return gsw.rho(SA, gsw.CT_from_t(SA, t, p), p)


def sound_speed(C, t, p, lat, lon):
    SA = gsw.SA_from_SP(gsw.SP_from_C(C, t, p), p, lon, lat)
    return gsw.sound_speed(SA, gsw.CT_from_t(SA, t, p), p)


def depth(C, t, p, lat, lon):
    return -gsw.z_from_p(p, lat)


QUANTITIES = {"salinity": salinity, "density": density, "sound_speed": sound_speed, "depth": depth}


def contribution(quantity, values, wide, k, lat, lon):
    """Uncertainty of the k-th input times the slope of the quantity along it."""
    step = STEP * wide[k]
    with np.errstate(invalid="ignore", divide="ignore"):
        above = quantity(*(v + step if i == k else v for i, v in enumerate(values)), lat, lon)
        below = quantity(*(v - step if i == k else v for i, v in enumerate(values)), lat, lon)
    return (above - below) / (2 * STEP)
