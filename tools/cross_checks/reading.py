"""Products as plain arrays, read by the netCDF library. Missing numbers are NaN."""

import netCDF4
import numpy as np


def numbers(dataset, name):
    """Values of a variable as doubles; its fill value becomes NaN."""
    variable = dataset.variables[name]
    variable.set_auto_maskandscale(False)
    raw = variable[...]
    values = np.array(raw, dtype="float64")
    if "_FillValue" in variable.ncattrs():
        values[np.asarray(raw) == variable.getncattr("_FillValue")] = np.nan
    return values


def texts(dataset, name):
    """Values of a char variable, without padding."""
    variable = dataset.variables[name]
    variable.set_auto_chartostring(False)
    raw = np.atleast_2d(np.ma.filled(variable[...], b""))
    return [b"".join(row.tolist()).rstrip(b"\0 ").decode("utf-8") for row in raw]


def casts(dataset):
    """(id, slice of rows, latitude, longitude) of every cast; a series is one cast."""
    if "row_size" in dataset.variables:
        ids = texts(dataset, "profile_id")
        ends = np.cumsum(numbers(dataset, "row_size").astype(int))
        starts = np.concatenate([[0], ends[:-1]])
        places = zip(numbers(dataset, "latitude"), numbers(dataset, "longitude"))
        return [(i, slice(a, b), lat, lon) for i, a, b, (lat, lon) in zip(ids, starts, ends, places)]
    rows = len(dataset.dimensions["time"])
    return [(texts(dataset, "station_id")[0], slice(0, rows), float(numbers(dataset, "latitude")), float(numbers(dataset, "longitude")))]


def code_of(dataset, name, meaning):
    """Number that stands for a meaning in a flag variable; None if it has no such meaning."""
    variable = dataset.variables[name]
    meanings = variable.flag_meanings.split()
    return int(np.atleast_1d(variable.flag_values)[meanings.index(meaning)]) if meaning in meanings else None


def opened(path):
    return netCDF4.Dataset(path)
