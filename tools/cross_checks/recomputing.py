"""Computed quantities of full files and series, made again with the TEOS-10 library from stored C, t, p.

Tolerances are those of single-precision storage: half a step of the stored value plus what half a step of the
inputs makes. Salinity 2e-5; density 2e-4 kg m-3 (a step at 1000 is 6e-5); sound speed 4e-4 m s-1 (a step at 1500
is 1.2e-4). Depth by the standard ocean 1e-4 m. Depth by the measured density is integrated here over the good
rows of the downcast, while the program may leave out other rows: 5 mm and 0.05 %.
"""

import gsw
import numpy as np

from .reading import casts, code_of, numbers, opened

BRACKISH = 30.0
WITHIN = {"salinity": 2e-5, "density": 2e-4, "sound_speed": 4e-4}


def recompute(path, tally):
    with opened(path) as dataset:
        stored = {name: numbers(dataset, name) for name in ("conductivity", "temperature", "pressure", "salinity", "density", "sound_speed", "depth")}
        segment = numbers(dataset, "segment")
        part = {kind: code_of(dataset, "segment", kind) for kind in ("down", "stay", "up")}
        flags = {name: numbers(dataset, f"{name}_qc") for name in ("pressure", "density")}
        listed = casts(dataset)
    for cast, rows, lat, lon in listed:
        where = f"{path.name}, {cast}"
        values = {name: column[rows] for name, column in stored.items()}
        C, t, p = values["conductivity"] * 10, values["temperature"], values["pressure"]
        with np.errstate(invalid="ignore"):
            SP = gsw.SP_from_C(C, t, p)
            # the low-salinity form dips below 0 in air: the library gives no number there, the program 0
            SP = np.where(np.isnan(SP) & (C >= 0) & (C < 0.002), 0.0, SP)
            SA = gsw.SA_from_SP(SP, p, lon, lat)
            CT = gsw.CT_from_t(SA, t, p)
            made = {"salinity": SP, "density": gsw.rho(SA, CT, p), "sound_speed": gsw.sound_speed(SA, CT, p)}
        for name, within in WITHIN.items():
            compare(values[name], made[name], within, where, name, tally)
        kinds = [code for code in (part["stay"], part["down"], part["up"]) if code is not None]
        judged = next((segment[rows] == code for code in kinds if (segment[rows] == code).any()), None)
        if tally.check(judged is not None, where, "no row is marked as downcast, upcast or stay"):
            depth_of(values, judged, flags, rows, lat, part, segment[rows], where, tally)


def compare(stored, made, within, where, name, tally):
    gaps = np.isnan(stored) != np.isnan(made)
    tally.check(not gaps.any(), where, f"{name}: {gaps.sum()} rows missing in one and not in the other, first row {first(gaps)}")
    with np.errstate(invalid="ignore"):
        far = np.abs(stored - made) > within
    worst = np.nanmax(np.abs(stored - made)) if np.isfinite(stored - made).any() else 0
    tally.check(not far.any(), where, f"{name}: {far.sum()} rows differ by more than {within}, up to {worst:.3g}, first row {first(far)}")


def first(rows):
    return int(np.flatnonzero(rows)[0]) if rows.any() else "-"


def depth_of(values, judged, flags, rows, lat, part, segment, where, tally):
    p, rho, depth = values["pressure"], values["density"], values["depth"]
    known = np.isfinite(p)
    mean = np.nanmean(values["salinity"][judged])
    standard = -gsw.z_from_p(p, lat)
    # which rows make the mean is for the program to choose, so close to the limit both methods will do
    near = abs(mean - BRACKISH) < 1 and np.nanmax(np.abs(depth - standard)) < 1e-4
    if mean >= BRACKISH or near:
        compare(depth[known], standard[known], 1e-4, where, "depth (standard ocean)", tally)
        return
    good = judged & known & np.isfinite(rho) & np.isin(flags["density"][rows], (1, 2))
    # rows before the sensors had settled are nearer to the water above than the deeper rows are
    start = np.flatnonzero(judged)[: np.argmax(good[judged])] if good.any() else []
    good[start] = known[start] & np.isfinite(rho[start])
    if (segment == part["stay"]).any():
        volume = lambda q: np.full_like(q, 1 / np.nanmean(rho[judged]))  # noqa: E731
    else:
        order = np.argsort(p[good], kind="stable")
        levels, volumes = p[good][order], 1 / rho[good][order]
        volume = lambda q: np.interp(q, levels, volumes)  # noqa: E731
    # fine steps from the surface down; gravity grows with depth by 2.26e-7 a metre
    top, bottom = min(0, np.nanmin(p)), max(0.01, np.nanmax(p))
    grid = np.linspace(0, bottom, 20001)
    steps = np.diff(grid) * 1e4 * volume((grid[1:] + grid[:-1]) / 2)
    work = np.concatenate([[0], np.cumsum(steps)])
    gravity = gsw.grav(lat, 0.0)
    reached = work / gravity * (1 - 0.5 * 2.26e-7 * work / gravity)
    made = np.interp(p, grid, reached)
    above = p < 0
    made[above] = p[above] * 1e4 * volume(np.zeros(above.sum())) / gravity
    if top < 0:
        tally.check((depth[above] <= 0).all(), where, "depth above the surface is not negative")
    far = np.abs(depth - made) > 5e-3 + 5e-4 * np.abs(made)
    far &= known
    worst = np.nanmax(np.abs(depth - made)[known])
    tally.check(not far.any(), where, f"depth (measured density): {far.sum()} rows differ, up to {worst:.3g} m, first row {first(far)}")
