"""Structure of a product against the reference CDL: dimensions, variables, types, attributes.

What the reference has must be there. Beyond it only what the design names may stand: flags of the source, of
positions and of times, uncertainties, what the sheet says of a cast, and a row number that the source has.
"""

import pathlib
import re
import subprocess
import tempfile

import netCDF4
import numpy as np

REFERENCES = pathlib.Path(__file__).resolve().parent.parent.parent / "test-data" / "reference-products"

# attributes whose value is part of the contract; all others need only be there
FIXED = {
    "standard_name", "units", "units_metadata", "calendar", "axis", "positive", "cf_role", "sample_dimension", "bounds",
    "flag_values", "coverage_content_type", "grid_mapping", "grid_mapping_name", "Conventions", "featureType",
    "standard_name_vocabulary", "cdm_data_type", "geospatial_bounds_crs",
    "geospatial_bounds_vertical_crs", "geospatial_lat_units", "geospatial_lon_units", "geospatial_vertical_units",
    "geospatial_vertical_positive",
}
# lists of names in which a product may have more than the reference
GROWING = {"coordinates", "ancillary_variables", "flag_meanings", "keywords_vocabulary"}
# attributes that stand only where there is something to say
OPTIONAL = {"comment", "calibration_date", "actual_range", "accuracy", "precision", "make_model", "serial_number"}
EXTRA = re.compile(r"^(sample_number|sample_number_qc|position_qc|time_qc|station|remarks|end_(time|latitude|longitude)|(start|end)_satellites|pressure_offset|source_file|.*_uncertainty|.*_source_flag|.*_received|.*_layer_sd)$")
TEXT_LENGTHS = re.compile(r"_length$")


def reference_for(path):
    if "_series_" in path.name:
        return REFERENCES / "series.cdl"
    return REFERENCES / ("binned.cdl" if path.stem.endswith("_binned") else "full.cdl")


def structure(path, tally):
    reference = reference_for(path)
    with tempfile.TemporaryDirectory() as folder:
        made = pathlib.Path(folder) / "reference.nc"
        subprocess.run(["ncgen", "-k", "nc3", "-o", str(made), str(reference)], check=True)
        with netCDF4.Dataset(made) as want, netCDF4.Dataset(path) as have:
            compare(path.name, want, have, tally)


def compare(where, want, have, tally):
    for name in want.dimensions:
        if not TEXT_LENGTHS.search(name):
            tally.check(name in have.dimensions, where, f"dimension {name} is missing")
    attributes(f"{where}, global", want, have, tally)
    for name, variable in want.variables.items():
        if not tally.check(name in have.variables, where, f"variable {name} is missing"):
            continue
        found = have.variables[name]
        shape = [d for d in variable.dimensions if not TEXT_LENGTHS.search(d)]
        tally.check(shape == [d for d in found.dimensions if not TEXT_LENGTHS.search(d)], where, f"{name} has dimensions {found.dimensions}, the reference {variable.dimensions}")
        wider = variable.dtype == np.float32 and found.dtype == np.float64  # where the source has more digits
        tally.check(variable.dtype == found.dtype or wider, where, f"{name} is {found.dtype}, the reference {variable.dtype}")
        attributes(f"{where}, {name}", variable, found, tally)
    extra = [name for name in have.variables if name not in want.variables and not EXTRA.match(name)]
    extra = [name for name in extra if not re.match(r"^(platform|instrument)\d+$", name)]
    tally.check(not extra, where, f"variables that the reference does not have: {extra}")


def attributes(where, want, have, tally):
    found = set(have.ncattrs())
    missing = [name for name in want.ncattrs() if name not in found and name not in OPTIONAL]
    tally.check(not missing, where, f"attributes missing: {missing}")
    for name in want.ncattrs():
        if name not in found:
            continue
        a, b = want.getncattr(name), have.getncattr(name)
        if name in GROWING:
            tally.check(set(a.split()) <= set(b.replace(",", " ").split()), where, f"{name} is {b!r}, the reference has {a!r}")
        elif name == "flag_values":
            tally.check(list(np.atleast_1d(a)) == list(np.atleast_1d(b))[: np.size(a)], where, f"flag_values are {b}, the reference has {a}")
        elif name == "_FillValue":
            tally.check(np.asarray(b).dtype == have.dtype, where, "_FillValue is of another type than the variable")
        elif name == "cell_methods":
            strip = lambda text: re.sub(r"\s*\(.*?\)", "", text)  # noqa: E731
            tally.check(strip(a) == strip(b), where, f"cell_methods is {b!r}, the reference has {a!r}")
        elif name in FIXED:
            tally.check(str(a) == str(b), where, f"{name} is {b!r}, the reference has {a!r}")
