#!/usr/bin/python3
"""Write test-data/cf-dsg/expected.json: what casts the discrete sampling geometries of the test data hold.

The netCDF library reads, masks and unpacks; the layout of each file is named here by hand (CF Conventions, appendix H),
so that nothing of the reader under test decides what is expected. Debian: python3-netcdf4, netcdf-bin.
"""
import datetime
import json
import os
import subprocess
import tempfile

import netCDF4
import numpy as np

HERE = os.path.dirname(os.path.abspath(__file__))
DATA = os.path.join(HERE, "..", "test-data")

# standard name: column of a cast, factor from the unit in these files to that of casts
COLUMNS = {
    "depth": ("depth", 1),
    "sea_water_pressure_due_to_sea_water": ("pressure", 1),
    "sea_water_temperature": ("temperature", 1),
    "sea_water_electrical_conductivity": ("conductivity", 10),  # S m-1 to mS cm-1
    "sea_water_practical_salinity": ("salinity", 1),
    "sea_water_density": ("density", 1),
    "speed_of_sound_in_sea_water": ("sound_speed", 1),
}

# file: layout, variable with the ids, variable that lays out the rows or the dimension of rows
FILES = {
    "samples/dsg_own/profile_single.nc": ("single", "profile", "depth"),
    "samples/dsg_own/profile_orth.nc": ("grid", "profile_name", "depth"),
    "samples/dsg_own/profile_incomplete.nc": ("padded", "profile_name", "level"),
    "samples/dsg_own/profile_contig.nc": ("count", "profile_name", "row_size"),
    "samples/dsg_own/profile_indexed.nc": ("index", "profile_name", "profile_index"),
    "samples/dsg_own/ts_single.nc": ("single", "station", "time"),
    "samples/dsg_own/ts_multi.nc": ("grid", "station_name", "time"),
    "samples/dsg_own/tsprof_single.nc": ("padded", "profile_name", "level"),
    "samples/dsg_own/trajprof_single.nc": ("padded", "profile_name", "level"),
    "samples/dsg_own/trajprof_ragged.nc": ("count", "profile_name", "row_size"),
    "reference-products/full.cdl": ("count", "profile_id", "row_size"),
    "reference-products/binned.cdl": ("count", "profile_id", "row_size"),
    "reference-products/binned_incomplete.cdl": ("padded", "cast_id", "z"),
    "reference-products/series.cdl": ("single", "station_id", "time"),
    "cf-examples/profile_single_h33.cdl": ("single", "cast_id", "z"),
    "cf-examples/profile_orthogonal_binned_h31.cdl": ("grid", "cast_id", "z"),
    "cf-examples/profile_incomplete_h32.cdl": ("padded", "cast_id", "level"),
    "cf-examples/profile_contiguous_ragged_h34.cdl": ("count", "cast_id", "row_size"),
    "cf-examples/profile_indexed_ragged_h35.cdl": ("index", "cast_id", "cast_index"),
    "cf-examples/timeseries_single_deviation_h23.cdl": ("single", "station_name", "time"),
    "cf-examples/timeseries_orthogonal_h21.cdl": ("grid", "station_name", "time"),
    "cf-examples/timeseriesprofile_ragged_h53.cdl": ("count", "cast_id", "row_size"),
    "cf-examples/trajectoryprofile_ragged_h63.cdl": ("count", "cast_id", "row_size"),
    "cf-examples/trajectoryprofile_single_h62.cdl": ("grid", "cast_id", "z"),
}


def names(variable):
    text = netCDF4.chartostring(variable[:].filled(b"\0"), encoding="utf-8")
    return [str(name).strip() for name in np.atleast_1d(text)]


def by_axis(d, axis):
    return next((v for v in d.variables.values() if getattr(v, "axis", None) == axis), None)


def main_variable(d, standard_name, along):
    """The variable of a quantity that has rows and is no spread of others."""
    for v in d.variables.values():
        if getattr(v, "standard_name", None) != standard_name or along not in v.dimensions:
            continue
        if "standard_deviation" not in getattr(v, "cell_methods", ""):
            return v
    return None


def rows_of(d, layout, key, cast, variable, kept):
    """Values of a variable in the rows of a cast, masked where missing."""
    if layout == "single":
        return variable[:]
    if layout == "grid":
        return variable[:] if len(variable.dimensions) == 1 else variable[cast, :]
    if layout == "padded":
        return variable[cast, :kept]
    if layout == "count":
        ends = np.cumsum(d[key][:])
        return variable[ends[cast] - d[key][cast] : ends[cast]]
    return variable[np.asarray(d[key][:]) == cast]


def one(variable, cast, owner):
    """The value of a cast; of its station where the variable has one for each station."""
    if variable.ndim == 0:
        return float(variable[...])
    return float(variable[owner if variable.dimensions == ("station",) and owner is not None else cast])


def casts(d, layout, ids, key):
    along = d[key].dimensions[0] if layout == "index" else getattr(d[key], "sample_dimension", key) if layout == "count" else key
    found = []
    t, y, x = (by_axis(d, axis) for axis in "TYX")
    series = d.featureType == "timeSeries"
    for cast, name in enumerate(names(d[ids])):
        owner = int(d["station_index"][cast]) if "station_index" in d.variables else None
        kept = int(np.ma.count(d["depth"][cast, :])) if layout == "padded" else None
        moment = float(t[0] if series else one(t, cast, owner))
        when = netCDF4.num2date(moment, t.units.replace("00Z", "00 Z"), getattr(t, "calendar", "standard"), only_use_cftime_datetimes=False)
        columns = {}
        flags = {}
        for standard_name, (column, factor) in COLUMNS.items():
            v = main_variable(d, standard_name, along)
            if v is None:
                continue
            values = np.ma.asarray(rows_of(d, layout, key, cast, v, kept)).astype("f8") * factor
            there = values.compressed()
            columns[column] = {
                "variable": v.name,
                "rows": int(values.size),
                "missing": int(values.size - there.size),
                "first": float(there[0]),
                "last": float(there[-1]),
                "sum": float(there.sum()),
                "sumOfSquares": float((there**2).sum()),
            }
            flag = d.variables.get(f"{v.name}_qc")
            if flag is not None:
                stored = np.ma.asarray(rows_of(d, layout, key, cast, flag, kept)).compressed()
                flags[column] = {str(code): int((stored == code).sum()) for code in np.unique(stored)}
        fixed = by_axis(d, "Z") if series else None
        found.append({
            "id": name,
            "time": when.replace(tzinfo=datetime.timezone.utc).timestamp(),
            "latitude": one(y, cast, owner),
            "longitude": one(x, cast, owner),
            "fixedDepth": None if fixed is None else one(fixed, cast, owner),
            "columns": columns,
            "flags": flags,
        })
    return found


def main():
    files = {}
    with tempfile.TemporaryDirectory() as folder:
        for name, (layout, ids, key) in FILES.items():
            path = os.path.join(DATA, name)
            if name.endswith(".cdl"):
                made = os.path.join(folder, "made.nc")
                subprocess.run(["ncgen", "-k", "nc3", "-o", made, path], check=True)
                path = made
            with netCDF4.Dataset(path) as d:
                files[name] = casts(d, layout, ids, key)
    out = {
        "about": "Made by tools/make_cf_dsg_expected.py; not to be edited.",
        "netCDF4": netCDF4.__version__,
        "netcdf-c": netCDF4.__netcdf4libversion__,
        "files": files,
    }
    with open(os.path.join(DATA, "cf-dsg", "expected.json"), "w") as f:
        json.dump(out, f, indent=1)
        f.write("\n")


main()
