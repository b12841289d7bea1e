#!/usr/bin/python3
"""Prints what netCDF files hold, as the netCDF C library reads them: python3 tools/netcdf_as_json.py FILE...

One JSON object, keyed by file name. Values are texts that lose nothing: integers and the bytes of chars in
decimal, floats in the shortest form that gives the same number. No masking, no scaling.
"""

import json
import sys
from pathlib import Path

import netCDF4
import numpy

TYPES = {
    "int8": "byte",
    "|S1": "char",
    "int16": "short",
    "int32": "int",
    "float32": "float",
    "float64": "double",
    "uint8": "ubyte",
    "uint16": "ushort",
    "uint32": "uint",
    "int64": "int64",
    "uint64": "uint64",
}
NOT_FINITE = {"nan": "NaN", "inf": "Infinity", "-inf": "-Infinity"}


def plain(values):
    """Values as texts; a char is the number of its byte."""
    array = numpy.asarray(values)
    if array.dtype.kind == "S":
        array = numpy.frombuffer(array.tobytes(), dtype="u1")
    return [NOT_FINITE.get(repr(value), repr(value)) for value in array.ravel().tolist()]


def attributes(owner):
    """Attributes as name, type, value."""
    found = []
    for name in owner.ncattrs():
        value = owner.getncattr(name)
        if isinstance(value, str):
            found.append({"name": name, "type": "char", "value": value})
        else:
            array = numpy.asarray(value)
            found.append({"name": name, "type": TYPES[str(array.dtype)], "value": plain(array)})
    return found


def content(path):
    """Everything that a file holds."""
    with netCDF4.Dataset(path) as file:
        file.set_auto_maskandscale(False)
        file.set_auto_chartostring(False)
        return {
            "kind": file.data_model,
            "dimensions": [
                {"name": name, "length": len(dimension), "unlimited": dimension.isunlimited()}
                for name, dimension in file.dimensions.items()
            ],
            "attributes": attributes(file),
            "variables": [
                {
                    "name": name,
                    "type": TYPES[str(variable.dtype)],
                    "dimensions": list(variable.dimensions),
                    "attributes": attributes(variable),
                    "values": plain(variable[...]),
                }
                for name, variable in file.variables.items()
            ],
        }


if __name__ == "__main__":
    print(json.dumps({Path(path).name: content(path) for path in sys.argv[1:]}))
