"""Products as plain arrays, read by the netCDF library. Missing numbers are NaN.

However the casts are arranged in the file (one behind the other, in rows of padded or common arrays, a single one),
values per row come out one behind the other, cast by cast, without padding.
"""

import netCDF4
import numpy as np

INSTANCES = ("profile", "timeSeries")


def arrangement(dataset):
    """(instance dimension or None, dimension of the rows, rows of each cast)"""
    if "row_size" in dataset.variables:
        return "profile", "obs", [int(count) for count in dataset.variables["row_size"][...]]
    instance = next((name for name in INSTANCES if name in dataset.dimensions), None)
    flags = [v for name, v in dataset.variables.items() if name.endswith("_qc")]
    if instance is None:
        (element,) = {v.dimensions[0] for v in flags if v.dimensions}
        return None, element, [len(dataset.dimensions[element])]
    flags = [v for v in flags if len(v.dimensions) == 2 and v.dimensions[0] == instance]
    (element,) = {v.dimensions[1] for v in flags}
    kept = np.zeros((len(dataset.dimensions[instance]), len(dataset.dimensions[element])), bool)
    for variable in flags:
        variable.set_auto_mask(False)
        kept |= variable[...] != variable.getncattr("_FillValue")
    return instance, element, [int(np.flatnonzero(row)[-1]) + 1 if row.any() else 0 for row in kept]


def behind_each_other(dataset, variable, values):
    """Values per row of all casts; values per cast, or one, as they are."""
    instance, element, counts = arrangement(dataset)
    dimensions = variable.dimensions
    if instance is None or element == "obs" and "row_size" in dataset.variables or element not in dimensions[:2]:
        return values
    per_cast = values if dimensions[0] == instance else [values] * len(counts)
    return np.concatenate([cast[:count] for cast, count in zip(per_cast, counts)])


def numbers(dataset, name):
    """Values of a variable as doubles, unpacked; its fill value becomes NaN."""
    variable = dataset.variables[name]
    variable.set_auto_maskandscale(False)
    raw = variable[...]
    values = np.array(raw, dtype="float64")
    if "_FillValue" in variable.ncattrs():
        values[np.asarray(raw) == variable.getncattr("_FillValue")] = np.nan
    if "scale_factor" in variable.ncattrs():  # a power of ten: the decimal number that was printed
        scale = float(variable.getncattr("scale_factor"))
        values = np.round(values * scale, round(-np.log10(scale)))
    return behind_each_other(dataset, variable, values)


def texts(dataset, name):
    """Values of a char variable, without padding."""
    variable = dataset.variables[name]
    variable.set_auto_chartostring(False)
    raw = behind_each_other(dataset, variable, np.atleast_2d(np.ma.filled(variable[...], b"")))
    return [b"".join(row.tolist()).rstrip(b"\0 ").decode("utf-8") for row in raw]


def casts(dataset):
    """(id, slice of rows, latitude, longitude) of every cast; a series is one cast."""
    name = next(name for name in ("profile_id", "cast_id", "station_id", "station_name") if name in dataset.variables)
    ids = texts(dataset, name)
    _, _, counts = arrangement(dataset)
    ends = np.cumsum(counts)
    starts = np.concatenate([[0], ends[:-1]])
    places = zip(np.atleast_1d(numbers(dataset, "latitude")), np.atleast_1d(numbers(dataset, "longitude")))
    return [(i, slice(int(a), int(b)), float(lat), float(lon)) for i, a, b, (lat, lon) in zip(ids, starts, ends, places)]


def layer_bounds(dataset):
    """Upper and lower edge of each layer; where the arrangement has no bounds, from what is said in their place."""
    if "depth_bounds" in dataset.variables:
        return numbers(dataset, "depth_bounds")
    depth = numbers(dataset, "depth")
    if "layer_thickness" in dataset.variables:
        half = numbers(dataset, "layer_thickness") / 2
    else:
        half = float(dataset.geospatial_vertical_resolution.split()[0]) / 2
    return np.stack([depth - half, depth + half], axis=1)


def code_of(dataset, name, meaning):
    """Number that stands for a meaning in a flag variable; None if it has no such meaning."""
    variable = dataset.variables[name]
    meanings = variable.flag_meanings.split()
    return int(np.atleast_1d(variable.flag_values)[meanings.index(meaning)]) if meaning in meanings else None


def opened(path):
    return netCDF4.Dataset(path)
