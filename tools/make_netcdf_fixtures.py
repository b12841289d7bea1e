#!/usr/bin/python3
"""Makes test-data/netcdf: classic files written by the netCDF C library, and their values as JSON.

Run: python3 tools/make_netcdf_fixtures.py [FOLDER]

The values are stated here and written by netCDF4 (Python) in the three classic formats. expected.json gives
them independently of any reader, spelt as netcdf_contents.py does. All data are invented.
"""

import json
import sys
from pathlib import Path

import netCDF4
import numpy

from netcdf_contents import number

FOLDER = Path(sys.argv[1]) if len(sys.argv) > 1 else Path(__file__).parent.parent / "test-data" / "netcdf"
MADE_WITH = f"netCDF4 {netCDF4.__version__}, libnetcdf {netCDF4.__netcdf4libversion__}"

FORMATS = {
    "classic": "NETCDF3_CLASSIC",
    "offset64": "NETCDF3_64BIT_OFFSET",
    "data64": "NETCDF3_64BIT_DATA",
}
CLASSIC = {
    "byte": ("i1", [-128, -1, 0, 1, 127]),
    "char": ("S1", [b"a", b"\x00", b"\xc3", b"\xa9", b"z"]),
    "short": ("i2", [-32768, -1, 0, 258, 32767]),
    "int": ("i4", [-(2**31), -1, 0, 16909060, 2**31 - 1]),
    "float": ("f4", [-1.5, 0.0, 1e-45, 3.4028234663852886e38, float("inf")]),
    "double": ("f8", [-1.5, 0.1, 5e-324, 1.7976931348623157e308, float("-inf")]),
}
DATA64 = {
    **CLASSIC,
    "ubyte": ("u1", [0, 1, 127, 128, 255]),
    "ushort": ("u2", [0, 1, 258, 32768, 65535]),
    "uint": ("u4", [0, 1, 16909060, 2**31, 2**32 - 1]),
    "int64": ("i8", [-(2**63), -1, 0, 72623859790382856, 2**63 - 1]),
    "uint64": ("u8", [0, 1, 72623859790382856, 2**63, 2**64 - 1]),
}


def plain(values):
    """Values as in expected.json: numbers, 64-bit integers as text, chars as bytes in hexadecimal."""
    array = numpy.asarray(values)
    return array.tobytes().hex() if array.dtype.kind == "S" else [number(value) for value in array.ravel()]


class Fixture:
    """A file together with what is expected of it."""

    def __init__(self, name, kind, wanted):
        self.file = netCDF4.Dataset(FOLDER / f"{name}.nc", "w", format=FORMATS[kind])
        self.file.set_auto_maskandscale(False)
        self.wanted = wanted[f"{name}.nc"] = {
            "version": {"classic": 1, "offset64": 2, "data64": 5}[kind],
            "dimensions": [],
            "attributes": [],
            "variables": [],
        }
        self.attribute("made_with", "char", MADE_WITH)

    def dimension(self, name, length, unlimited=False):
        self.file.createDimension(name, None if unlimited else length)
        self.wanted["dimensions"].append({"name": name, "length": length, "unlimited": unlimited})

    def attribute(self, name, type_name, value, variable=None):
        owner = self.file if variable is None else self.file[variable]
        stored = value if type_name == "char" else numpy.array(value, dtype=DATA64[type_name][0])
        owner.setncattr(name, stored)
        wanted = self.wanted if variable is None else self.wanted["variables"][-1]
        said = value.encode().hex() if type_name == "char" else plain(stored)
        wanted["attributes"].append({"name": name, "type": type_name, "value": said})

    def variable(self, name, type_name, dimensions, values, fill=None):
        dtype = DATA64[type_name][0]
        variable = self.file.createVariable(name, dtype, dimensions, fill_value=fill)
        variable.set_auto_maskandscale(False)
        variable.set_auto_chartostring(False)
        array = numpy.array(values, dtype=dtype)
        variable[...] = array if dimensions else array[()]
        attributes = []
        if fill is not None:
            attributes.append({"name": "_FillValue", "type": type_name, "value": plain(array.dtype.type([fill]))})
        self.wanted["variables"].append(
            {
                "name": name,
                "type": type_name,
                "dimensions": list(dimensions),
                "attributes": attributes,
                "values": plain(array),
            }
        )

    def close(self):
        self.file.close()


def all_types(kind, wanted):
    """Every type as scalar, fixed (odd length, so padded) and record variable, and as attribute."""
    fixture = Fixture(f"{kind}_all_types", kind, wanted)
    fixture.dimension("time", 3, unlimited=True)
    fixture.dimension("level", 5)
    fixture.dimension("two", 2)
    fixture.attribute("umlaut_ä_水", "char", "Grüße, 海 😀")
    types = DATA64 if kind == "data64" else CLASSIC
    for name, (_, values) in types.items():
        if name != "char":
            fixture.attribute(f"one_{name}", name, values[:1])
            fixture.attribute(f"five_{name}", name, values)
    for name, (_, values) in types.items():
        fixture.variable(f"scalar_{name}", name, (), values[-1])
        fixture.variable(f"record_{name}", name, ("time", "level"), [values, values[::-1], values])
        fixture.variable(f"fixed_{name}", name, ("level",), values)
        fixture.variable(f"stamp_{name}", name, ("time",), values[1:4])
        fill = None if name == "char" else values[0]
        fixture.variable(f"grid_{name}", name, ("two", "level"), [values, values[::-1]], fill)
        fixture.attribute("note", "char", f"invented values of type {name}", variable=f"grid_{name}")
    fixture.variable("tiefe_°", "double", ("level",), [0, 1, 2, 3, 4])
    fixture.close()


def single_record(kind, type_name, wanted):
    """A single record variable of a small type: its records are not padded."""
    fixture = Fixture(f"{kind}_single_{type_name}", kind, wanted)
    fixture.dimension("time", 5, unlimited=True)
    fixture.dimension("n", 3)
    values = DATA64[type_name][1]
    fixture.variable("before", "short", ("n",), [1, 2, 3])
    fixture.variable("only", type_name, ("time", "n"), [(values * 2)[i : i + 3] for i in range(5)])
    fixture.close()


def no_records(kind, wanted):
    """Record variables without a record."""
    fixture = Fixture(f"{kind}_no_records", kind, wanted)
    fixture.dimension("time", 0, unlimited=True)
    fixture.variable("t", "double", ("time",), [])
    fixture.variable("flag", "byte", ("time",), [])
    fixture.close()


def nul_text(wanted):
    """An empty text, which this library stores as a single NUL."""
    fixture = Fixture("classic_nul_text", "classic", wanted)
    fixture.attribute("empty_text", "char", "")
    fixture.close()


def main():
    FOLDER.mkdir(parents=True, exist_ok=True)
    wanted = {}
    for kind in FORMATS:
        all_types(kind, wanted)
        no_records(kind, wanted)
        small = ["byte", "char", "short"] + (["ubyte", "ushort"] if kind == "data64" else [])
        for type_name in small:
            single_record(kind, type_name, wanted)
    nul_text(wanted)
    text = json.dumps({"made_with": MADE_WITH, "files": wanted}, ensure_ascii=False, indent=1)
    (FOLDER / "expected.json").write_text(text + "\n", encoding="utf-8")


main()
