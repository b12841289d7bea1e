#!/usr/bin/python3
"""Raw contents of netCDF and HDF5 files as the netCDF library reads them, as JSON on stdout.

Usage: netcdf_contents.py FILE...   (Debian: python3-netcdf4; the types of attributes are asked of the C library)

No masking, no scaling, no joining of characters. Numbers stand as they are, 64-bit ones as text, NaN and
infinities as "NaN", "Infinity", "-Infinity"; char values and attributes are bytes in hexadecimal.
"""
import ctypes
import ctypes.util
import json
import math
import sys

import netCDF4
import numpy as np

C = ctypes.CDLL(ctypes.util.find_library("netcdf"))
TYPES = {1: "byte", 2: "char", 3: "short", 4: "int", 5: "float", 6: "double", 7: "ubyte", 8: "ushort", 9: "uint",
         10: "int64", 11: "uint64", 12: "string"}
NUMPY = {"i1": "byte", "S1": "char", "i2": "short", "i4": "int", "f4": "float", "f8": "double", "u1": "ubyte",
         "u2": "ushort", "u4": "uint", "i8": "int64", "u8": "uint64"}
GLOBAL = -1
NC_ENUM = 15


def number(x):
    if isinstance(x, (np.integer, int)):
        return str(int(x)) if x.dtype.itemsize == 8 else int(x)
    x = float(x)
    return x if math.isfinite(x) else "NaN" if math.isnan(x) else "Infinity" if x > 0 else "-Infinity"


def attribute(ncid, varid, holder, name):
    kind, length = ctypes.c_int(), ctypes.c_size_t()
    raw = name.encode()
    if C.nc_inq_att(ncid, varid, raw, ctypes.byref(kind), ctypes.byref(length)):
        raise RuntimeError(f"attribute {name} can't be asked for")
    if kind.value not in TYPES:
        # an enumeration counts as its base type
        size, base, fields, form = ctypes.c_size_t(), ctypes.c_int(), ctypes.c_size_t(), ctypes.c_int()
        C.nc_inq_user_type(ncid, kind, ctypes.create_string_buffer(257), ctypes.byref(size), ctypes.byref(base),
                           ctypes.byref(fields), ctypes.byref(form))
        if form.value == NC_ENUM:
            kind = base
    if kind.value not in TYPES:
        return {"name": name, "type": "other", "value": None}
    if kind.value == 2:
        text = ctypes.create_string_buffer(length.value + 1)
        C.nc_get_att_text(ncid, varid, raw, text)
        return {"name": name, "type": "char", "value": text.raw[: length.value].hex()}
    if length.value == 0:
        return {"name": name, "type": TYPES[kind.value], "value": []}
    value = holder.getncattr(name)
    if kind.value == 12:
        value = [value] if isinstance(value, str) else list(value)
    else:
        value = [number(x) for x in np.atleast_1d(value)]
    return {"name": name, "type": TYPES[kind.value], "value": value}


def variable(v, path):
    user = v.datatype if not isinstance(v.datatype, np.dtype) and v.dtype is not str else None
    enum = isinstance(user, netCDF4.EnumType)
    if v.dtype is str:
        kind = "string"
    elif user is not None and not enum:
        kind = "other"
    else:
        kind = NUMPY[(user.dtype if enum else v.dtype).newbyteorder("=").str.lstrip("<>|=")]
    values = None
    if kind != "other":
        data = v[...]
        if kind == "string":
            values = [data] if isinstance(data, str) else [str(x) for x in data.flat]
        elif kind == "char":
            values = np.asarray(data).tobytes().hex()
        else:
            values = [number(x) for x in np.asarray(data).flat]
    group = v.group()
    return {"name": path + v.name, "type": kind, "enum": enum,
            "dimensions": dimension_paths(group, v),
            "attributes": [attribute(group._grpid, v._varid, v, a) for a in v.ncattrs()], "values": values}


def dimension_paths(group, v):
    """By number: a name may also be that of a dimension of a nearer group."""
    ids = (ctypes.c_int * max(v.ndim, 1))()
    if C.nc_inq_vardimid(group._grpid, v._varid, ids):
        raise RuntimeError(f"dimensions of {v.name} can't be asked for")
    paths = {}
    while group is not None:
        paths.update({d._dimid: prefix(group) + d.name for d in group.dimensions.values()})
        group = group.parent
    return [paths[ids[i]] for i in range(v.ndim)]


def prefix(group):
    return group.path.strip("/") + "/" if group.path != "/" else ""


def contents(path):
    with netCDF4.Dataset(path) as root:
        root.set_auto_maskandscale(False)
        root.set_auto_chartostring(False)
        out = {"model": root.data_model, "dimensions": [], "attributes": [], "variables": []}

        def walk(group):
            at = prefix(group)
            for d in group.dimensions.values():
                out["dimensions"].append({"name": at + d.name, "length": len(d), "unlimited": d.isunlimited()})
            for a in group.ncattrs():
                out["attributes"].append({**attribute(group._grpid, GLOBAL, group, a), "name": at + a})
            for v in group.variables.values():
                out["variables"].append(variable(v, at))
            for child in group.groups.values():
                walk(child)

        walk(root)
        return out


def versions():
    return {"python-netcdf4": netCDF4.__version__, "netcdf": netCDF4.__netcdf4libversion__,
            "hdf5": netCDF4.__hdf5libversion__, "numpy": np.__version__}


if __name__ == "__main__":
    json.dump({"versions": versions(), "files": [contents(path) for path in sys.argv[1:]]}, sys.stdout)
