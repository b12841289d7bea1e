"""A product opens in programs that are not ours: ncdump, xarray with warnings as errors, udunits."""

import subprocess
import warnings

import netCDF4
import numpy as np
import xarray


def opens(path, tally):
    dump = subprocess.run(["ncdump", "-h", str(path)], capture_output=True, text=True)
    tally.check(dump.returncode == 0 and dump.stderr == "", path.name, f"ncdump -h says: {dump.stderr.strip()}")
    dump = subprocess.run(["ncdump", str(path)], capture_output=True, text=True)
    tally.check(dump.returncode == 0 and dump.stderr == "", path.name, f"ncdump of the data says: {dump.stderr.strip()}")

    with warnings.catch_warnings():
        warnings.simplefilter("error")
        try:
            with xarray.open_dataset(path) as dataset:
                dataset.load()
                names = [str(name) for name in dataset.sizes]
                tally.check(names and not any(name.startswith("phony") for name in names), path.name, f"dimensions {names}")
                for name in ("time", "latitude", "longitude", "depth"):
                    tally.check(name in dataset.coords, path.name, f"{name} is not a coordinate in xarray")
                time = dataset["time"]
                tally.check(np.issubdtype(time.dtype, np.datetime64), path.name, f"time is not decoded: {time.dtype}")
                tally.check(not np.isnat(time.values).any(), path.name, "a time is missing")
        except Exception as problem:  # a warning is a failure here, whatever its class
            tally.check(False, path.name, f"xarray: {type(problem).__name__}: {problem}")


def units_are_known(path, tally):
    with netCDF4.Dataset(path) as dataset:
        units = {variable.units for variable in dataset.variables.values() if "units" in variable.ncattrs()}
    for unit in sorted(units):
        base = unit.split(" since ")[0]
        run = subprocess.run(["udunits2", "-H", base, "-W", base], capture_output=True, text=True, stdin=subprocess.DEVNULL)
        tally.check(run.returncode == 0, path.name, f"udunits2 does not know the unit {unit!r}: {(run.stderr or run.stdout).strip()}")
