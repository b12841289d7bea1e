#!/usr/bin/env python3
"""Checks products of `wherry convert` with programs and libraries that are not ours.

    /usr/bin/python3 tools/crosscheck.py demo-output [--truth test-data/demo-truth] [--package demo-package.zip]

Every .nc file under the folder opens with ncdump and with xarray (warnings are failures); its units are known to
udunits; salinity, density, sound speed and depth and their uncertainties are recomputed with the TEOS-10 library; layer
means and means of bursts are made again from the rows; the CSV equals the netCDF file number by number; the structure is
that of the reference CDL. The report shows the same numbers, and its lines of equal density are those of the TEOS-10
library. Sound-speed profiles and exchange files are held against the layer means.
With --package, a deposit package is read with Python's own libraries and compared with its manifests.
With --truth, what processing found is compared with what the demo's script simulated.
Ends with "crosscheck: N passed, M failed" and status 1 on any failure or if there is nothing to check.

Needs (Debian): python3-gsw python3-netcdf4 python3-xarray python3-numpy netcdf-bin udunits-bin.
"""

import argparse
import pathlib
import sys

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent))
from cross_checks import Tally  # noqa: E402
from cross_checks.bursts import bursts  # noqa: E402
from cross_checks.layers import layers  # noqa: E402
from cross_checks.opening import opens, units_are_known  # noqa: E402
from cross_checks.package import package  # noqa: E402
from cross_checks.recomputing import recompute  # noqa: E402
from cross_checks.report import report  # noqa: E402
from cross_checks.sound_speed import exchange, sound_speed  # noqa: E402
from cross_checks.structure import structure  # noqa: E402
from cross_checks.tables import tables  # noqa: E402
from cross_checks.truth import truth  # noqa: E402
from cross_checks.uncertainties import uncertainties  # noqa: E402


def attempt(tally, path, part, *arguments):
    """A check that breaks is a failed check, and the others go on."""
    try:
        part(*arguments, tally)
    except Exception as problem:
        tally.check(False, path.name, f"{part.__name__} broke off: {type(problem).__name__}: {problem}")


def main(arguments):
    parser = argparse.ArgumentParser(description="Checks products with programs and libraries that are not ours.")
    parser.add_argument("folder", type=pathlib.Path)
    parser.add_argument("--truth", type=pathlib.Path, help="folder with the truth of the demo survey")
    parser.add_argument("--package", type=pathlib.Path, help="a deposit package, folder or zip archive")
    given = parser.parse_args(arguments)
    tally = Tally()
    paths = sorted(path for path in given.folder.rglob("*.nc") if "original" not in path.parts)
    if not paths:
        print(f"no .nc file under {given.folder}")
        return 1
    for path in paths:
        before = tally.passed
        attempt(tally, path, opens, path)
        attempt(tally, path, units_are_known, path)
        attempt(tally, path, tables, path)
        if path.stem.endswith("_soundspeed"):
            attempt(tally, path, sound_speed, path, path.with_name(path.name.replace("_soundspeed.nc", "_binned.nc")))
            print(f"{path}: {tally.passed - before} checks passed")
            continue
        if not path.stem.endswith("_bursts"):
            attempt(tally, path, structure, path)
        attempt(tally, path, uncertainties, path)
        if path.stem.endswith("_binned"):
            full = path.with_name(path.name.replace("_binned.nc", "_full.nc"))
            attempt(tally, path, layers, path, full)
        elif path.stem.endswith("_bursts"):
            attempt(tally, path, bursts, path, path.with_name(path.name.replace("_bursts.nc", ".nc")))
        else:
            attempt(tally, path, recompute, path)
        print(f"{path}: {tally.passed - before} checks passed")
    for path in sorted(path for path in given.folder.glob("*_ct1.csv")):
        (binned,) = given.folder.glob("*_binned.nc")
        attempt(tally, path, exchange, path, binned)
    for path in sorted(given.folder.glob("*_report.html")):
        products = [path.with_name(path.name.replace("_report.html", end)) for end in ("_full.nc", "_binned.nc")]
        if all(product.exists() for product in products):
            before = tally.passed
            attempt(tally, path, report, path, *products)
            print(f"{path}: {tally.passed - before} checks passed")
    if given.package:
        attempt(tally, given.package, package, given.package)
    if given.truth:
        attempt(tally, given.folder, truth, given.folder, given.truth)
    print(f"crosscheck: {tally.passed} passed, {tally.failed} failed")
    return 1 if tally.failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
