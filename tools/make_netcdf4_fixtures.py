#!/usr/bin/python3
"""Make small netCDF-4 and HDF5 files for the tests of the netCDF package, with what the netCDF library reads.

Writes test-data/netcdf4/*.nc, *.h5 and expected.json (raw values by tools/netcdf_contents.py, versions).
Debian: python3-netcdf4, python3-h5py, netcdf-bin. The values are invented.
"""
import json
import os
import subprocess

import h5py
import netCDF4
import numpy as np

from netcdf_contents import contents, versions

HERE = os.path.dirname(os.path.abspath(__file__))
OUT = os.path.join(HERE, "..", "test-data", "netcdf4")
NUMBERS = ["i1", "i2", "i4", "i8", "u1", "u2", "u4", "u8", "f4", "f8"]


def create(name, **options):
    d = netCDF4.Dataset(os.path.join(OUT, name), "w", **{"format": "NETCDF4", **options})
    d.set_auto_maskandscale(False)
    return d


def extremes(kind):
    kind = np.dtype(kind)
    if kind.kind == "f":
        info = np.finfo(kind)
        return np.array([0.1, -0.0, np.nan, np.inf, -np.inf, info.max, info.tiny], kind)
    info = np.iinfo(kind)
    return np.array([info.min, info.max, 0, 1, 2, 3, 4], kind)


def types(name, endian):
    d = create(name)
    d.createDimension("x", 7)
    for kind in NUMBERS:
        v = d.createVariable(f"v_{kind}", np.dtype(kind).newbyteorder(endian[0]), ("x",), endian=endian)
        v[:] = extremes(kind)
        v.setncattr("several", extremes(kind))
        v.setncattr("one", extremes(kind)[0])
        d.setncattr(f"g_{kind}", extremes(kind)[1])
    d.close()


def text():
    d = create("text.nc")
    d.createDimension("n", 3)
    d.createDimension("length", 5)
    c = d.createVariable("letters", "S1", ("n", "length"))
    c.set_auto_chartostring(False)
    c[:] = np.frombuffer("ab\0\0\0é\0\0\0\xff\xfe\x01 \n!".encode("latin-1"), "S1").reshape(3, 5)
    d.createVariable("one_letter", "S1", ())[...] = b"q"
    s = d.createVariable("words", str, ("n",))
    s[:] = np.array(["", "größer", "two\nlines"], object)
    s.setncattr("units_of_words", "1")
    d.createVariable("word", str, ())[...] = np.array("only", object)
    d.createVariable("words_unwritten", str, ("n",))
    d.title = "a title with é, 水 and 😀"
    d.empty = ""
    d.setncattr_string("one_string", "as a string")
    d.setncattr_string("some_strings", ["a", "", "ü"])
    d.no_numbers = np.array([], "i4")
    d.no_reals = np.array([], "f8")
    d.setncattr("größe", np.int16(-3))
    d.close()
    with h5py.File(os.path.join(OUT, "text.nc"), "r+") as h:
        # text of an old program: Latin-1
        kind = h5py.h5t.C_S1.copy()
        kind.set_size(5)
        space = h5py.h5s.create(h5py.h5s.SCALAR)
        a = h5py.h5a.create(h5py.h5g.open(h.id, b"/"), b"latin", kind, space)
        a.write(np.array(b"22 \xb0C", "S5"))


def dimensions():
    d = create("dimensions.nc")
    d.createDimension("late", 2)
    d.createDimension("time", None)
    d.createDimension("bare", 4)
    d.createDimension("x", 3)
    d.createDimension("text_length", 6)
    d.createDimension("never", None)
    d.createVariable("z_first", "f4", ("time", "x"), fill_value=-9.0)[:] = np.arange(6).reshape(2, 3)
    d.createVariable("x", "f8", ("x",))[:] = [10, 20, 30]
    d.createVariable("time", "S1", ("time", "text_length"))[:] = np.frombuffer(b"abcdefghijklmnopqr", "S1").reshape(3, 6)
    d.createVariable("late", "i4", ("bare", "late"))[:] = np.arange(8).reshape(4, 2)
    d.createVariable("square", "i2", ("x", "x"))[:] = np.arange(9).reshape(3, 3)
    d.createVariable("records", "i4", ("time",))[:] = [1, 2, 3, 4, 5]
    d.createVariable("short_records", "u1", ("time",))[:] = [7]
    d.createVariable("no_records", "f8", ("time", "bare"))
    d.createVariable("never_written", "f8", ("never",))
    d.createVariable("two_unlimited", "i4", ("time", "never"))
    d.createVariable("scalar", "f8", ())[...] = 1.5
    for i in range(20, 0, -1):
        d.setncattr(f"attribute_{i:02}", np.int32(i))
        d["x"].setncattr(f"own_{i:02}", np.int32(i))
    d.close()


def storage():
    d = create("storage.nc")
    d.createDimension("y", 40)
    d.createDimension("x", 30)
    d.createDimension("t", None)
    full = np.arange(1200, dtype="f8").reshape(40, 30) / 7
    d.createVariable("contiguous", "f8", ("y", "x"), contiguous=True)[:] = full
    d.createVariable("deflated", "f4", ("y", "x"), zlib=True, complevel=6, shuffle=True, chunksizes=(7, 11))[:] = full
    d.createVariable("checked", "i4", ("y", "x"), fletcher32=True, zlib=True, chunksizes=(16, 16))[:] = full
    d.createVariable("big", ">i2", ("y", "x"), zlib=True, endian="big", chunksizes=(16, 16))[:] = full
    d.createVariable("holes", "i4", ("y", "x"), chunksizes=(8, 8), fill_value=-5)[10:12, 3:9] = 1
    d.createVariable("holes_default", "f4", ("y", "x"), chunksizes=(8, 8), zlib=True)[30:, 25:] = 2
    d.createVariable("packed", "i2", ("t", "x"), zlib=True)[:] = np.arange(90).reshape(3, 30)
    d["packed"].scale_factor = 0.01
    d["packed"].add_offset = 5.0
    d["packed"].missing_value = np.int16(7)
    d.close()


def groups():
    d = create("groups.nc")
    d.createDimension("x", 2)
    d.title = "root"
    d.createVariable("a", "i4", ("x",))[:] = [1, 2]
    g = d.createGroup("g")
    g.createDimension("x", 3)
    g.createDimension("y", 2)
    g.title = "inner"
    g.createVariable("a", "i4", ("x", "y"))[:] = np.arange(6).reshape(3, 2)
    h = g.createGroup("deep er")
    h.createVariable("b", "f8", ("y",))[:] = [0.5, 1.5]
    h.createVariable("x", "f4", ("x",))[:] = [1, 2, 3]
    h.setncattr("note", "deep")
    d.createGroup("empty")
    d.close()


def classic_model():
    d = create("classic_model.nc", format="NETCDF4_CLASSIC")
    d.createDimension("time", None)
    d.createDimension("length", 4)
    d.createVariable("time", "f8", ("time",), zlib=True)[:] = [1, 2, 3]
    d.createVariable("name", "S1", ("time", "length"))[:] = np.frombuffer(b"one\0two\0abcd", "S1").reshape(3, 4)
    d["time"].units = "seconds since 2026-01-01T00:00:00Z"
    d.close()


def user_types():
    d = create("user_types.nc")
    d.createDimension("n", 3)
    d.createVariable("plain", "i4", ("n",))[:] = [1, 2, 3]
    enum = d.createEnumType("u1", "sky_t", {"clear": 0, "cloudy": 1, "unknown": 255})
    d.createVariable("sky", enum, ("n",), fill_value=255)[:] = [0, 1, 255]
    pair = d.createCompoundType(np.dtype([("a", "i4"), ("b", "f8")]), "pair_t")
    d.createVariable("pairs", pair, ("n",))[:] = np.array([(1, 1.5), (2, 2.5), (3, 3.5)], pair.dtype)
    ragged = d.createVLType("i4", "ragged_t")
    v = d.createVariable("ragged", ragged, ("n",))
    v[0], v[1], v[2] = np.arange(2, dtype="i4"), np.arange(3, dtype="i4"), np.arange(1, dtype="i4")
    d["plain"].setncattr("pair_attribute", np.array((1, 1.5), pair.dtype))
    d["plain"].setncattr("after", "still here")
    d.close()


def opaque():
    cdl = """netcdf opaque { types: opaque(4) raw_t ; dimensions: n = 2 ; variables: raw_t raw(n) ; int plain(n) ;
    raw:comment = "kept bytes" ; data: raw = 0x01020304, 0x05060708 ; plain = 3, 4 ; }"""
    path = os.path.join(OUT, "opaque.cdl")
    with open(path, "w") as f:
        f.write(cdl)
    subprocess.run(["ncgen", "-k", "nc4", "-o", os.path.join(OUT, "opaque.nc"), path], check=True)
    os.remove(path)


def hdf5(name, **options):
    return h5py.File(os.path.join(OUT, name), "w", **options)


def phony():
    with hdf5("phony.h5") as h:
        h["b"] = np.arange(12, dtype="i4").reshape(3, 4)
        h["a"] = np.arange(4.0)
        h["cube"] = np.arange(27, dtype="i2").reshape(3, 3, 3)
        h["square"] = np.arange(9, dtype="i2").reshape(3, 3)
        h["scalar"] = np.float32(2.5)
        h.create_dataset("grows", data=np.arange(4, dtype="u2"), maxshape=(None,), chunks=(2,))
        h.create_dataset("inner/p", data=np.arange(5, dtype="u1"))
        h.create_dataset("inner/q", data=np.arange(4, dtype="u1"))
        h.attrs["made_by"] = "another program"
        h["b"].attrs["list"] = [1, 2, 3]


def foreign():
    """What other programs put into HDF5; not all of it is netCDF."""
    with hdf5("foreign.h5", libver="latest", userblock_size=1024, track_order=True) as h:
        h["zeta"] = np.arange(3, dtype="f8")
        h["zeta"].make_scale("zeta")
        h["field"] = np.arange(6, dtype=">i4").reshape(2, 3)
        h["field"].dims[1].attach_scale(h["zeta"])
        h["flags"] = np.array([True, False, True])
        h["half"] = np.arange(3, dtype="f2")
        h["names"] = np.array([b"ab", b"cde"], "S4")
        h["nothing"] = h5py.Empty("f4")
        h.create_dataset("packed_otherwise", data=np.arange(100), compression="lzf", chunks=(50,))
        h["reference"] = np.array([h["zeta"].ref], h5py.ref_dtype)
        h["soft"] = h5py.SoftLink("/zeta")
        h["broken"] = h5py.SoftLink("/nowhere")
        h["outside"] = h5py.ExternalLink("other.h5", "/x")
        h.create_group("loop")["back"] = h["/"]
        h.attrs["nothing"] = h5py.Empty("i4")
        h["field"].attrs["table"] = np.arange(4, dtype="i4").reshape(2, 2)
        h.attrs["fixed"] = np.array([b"ab", b"cde"], "S4")


def main():
    os.makedirs(OUT, exist_ok=True)
    types("types_little.nc", "little")
    types("types_big.nc", "big")
    for make in (text, dimensions, storage, groups, classic_model, user_types, opaque, phony, foreign):
        make()
    expected = {"about": "Raw contents as the netCDF library reads them; made by tools/make_netcdf4_fixtures.py",
                "versions": {**versions(), "h5py": h5py.__version__}, "files": {}}
    for name in sorted(os.listdir(OUT)):
        # the netCDF library has no words for much of foreign.h5; the test states what is read of it
        if name.endswith((".nc", ".h5")) and name != "foreign.h5":
            expected["files"][name] = contents(os.path.join(OUT, name))
    with open(os.path.join(OUT, "expected.json"), "w") as f:
        json.dump(expected, f, indent=1, ensure_ascii=False)
        f.write("\n")


if __name__ == "__main__":
    main()
