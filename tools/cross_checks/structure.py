"""Structure of a product against the reference CDL: dimensions, variables, types, attributes.

Arrangements without a reference file of their own are held against the usual one, with shapes and names changed as
CF appendix H has it.

What the reference has must be there. Beyond it only what the design names may stand: flags of the source, of
positions and of times, uncertainties, what the sheet says of a cast, and a row number that the source has.
"""

import pathlib
import re
import subprocess
import tempfile

import netCDF4
import numpy as np

from .reading import arrangement

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
OPTIONAL = {"comment", "time_coverage_resolution", "calibration_date", "actual_range", "accuracy", "precision", "make_model", "serial_number"}
EXTRA = re.compile(r"^(sample_number|sample_number_qc|position_qc|time_qc|station|remarks|end_(time|latitude|longitude)|(start|end)_satellites|pressure_offset|source_file|.*_uncertainty|.*_source_flag|.*_received(_qc|_count|_sd)?|.*_layer_sd)$")
TEXT_LENGTHS = re.compile(r"_length$")


# facts that a file leaves out if none of its casts has them, as one of the demo's casts may
RARE = re.compile(r"^end_(latitude|longitude|satellites)$")
# names that change where casts and series are numbered
LABELS = {"profile_id": "cast_id", "station_id": "station_name"}
CONTAINER = re.compile(r"^(crs|platform\d+|instrument\d+)$")


class Arrangement:
    """How the casts of a file lie, and what becomes of the names and shapes of a reference that lies otherwise."""

    def __init__(self, path, dataset):
        instance, self.element, counts = arrangement(dataset)
        self.alone = len(counts) == 1
        self.series = "_series" in path.name
        self.ragged = "row_size" in dataset.variables
        self.numbered = not self.ragged and instance is not None
        self.incomplete = self.numbered and self.element == "z"
        kind = "series" if self.series else "binned" if path.stem.endswith("_binned") else "full"
        # the one arrangement beside the usual ones that has a reference of its own
        self.exact = self.incomplete and kind == "binned"
        self.reference = REFERENCES / ("binned_incomplete.cdl" if self.exact else f"{kind}.cdl")
        self.usual = self.exact or self.ragged or (self.series and not self.numbered)

    def name(self, name):
        """Of a variable of the reference; None if it has no place here."""
        if self.usual:
            return name
        if name == "row_size" or (self.incomplete and name.endswith("_bounds")):
            return None
        return LABELS.get(name, name) if self.numbered else name

    def shape(self, name, dimensions):
        shape = [d for d in dimensions if not TEXT_LENGTHS.search(d)]
        if self.usual:
            return shape
        if self.series:
            return shape if CONTAINER.match(name) or name in ("time", "time_qc") else ["timeSeries", *shape]
        if not self.numbered:
            return [self.element if d == "obs" else d for d in shape if d != "profile"]
        own = name in (self.element, f"{self.element}_bounds")
        return [new for d in shape for new in (([] if own else ["profile"]) + [self.element] if d == "obs" else [d])]

    def dropped(self, name):
        """Attributes of a variable of the reference that have no place here."""
        if self.usual:
            return set()
        return ({"bounds"} if self.incomplete else set()) | ({"cf_role"} if self.numbered and name in LABELS else set())

    def text(self, text):
        """A list of names of the reference."""
        return " ".join(self.name(name) or "" for name in text.split())

    def extra(self, name):
        return not self.usual and name in ("profile", "timeSeries", "layer_thickness") or self.exact and name == "layer_thickness"


def structure(path, tally):
    with netCDF4.Dataset(path) as have, tempfile.TemporaryDirectory() as folder:
        lie = Arrangement(path, have)
        made = pathlib.Path(folder) / "reference.nc"
        subprocess.run(["ncgen", "-k", "nc3", "-o", str(made), str(lie.reference)], check=True)
        with netCDF4.Dataset(made) as want:
            compare(path.name, lie, want, have, tally)


def compare(where, lie, want, have, tally):
    dimensions = {d for name, variable in want.variables.items() if lie.name(name) for d in lie.shape(name, variable.dimensions)}
    for name in dimensions:
        tally.check(name in have.dimensions, where, f"dimension {name} is missing")
    attributes(f"{where}, global", lie, want, have, tally)
    for former, variable in want.variables.items():
        name = lie.name(former)
        if name is None or (lie.alone and RARE.match(name) and name not in have.variables):
            continue
        if not tally.check(name in have.variables, where, f"variable {name} is missing"):
            continue
        found = have.variables[name]
        shape = lie.shape(former, variable.dimensions)
        tally.check(shape == [d for d in found.dimensions if not TEXT_LENGTHS.search(d)], where, f"{name} has dimensions {found.dimensions}, expected {shape}")
        wider = variable.dtype == np.float32 and found.dtype == np.float64  # where the source has more digits
        packed = found.dtype == np.int16 and "scale_factor" in found.ncattrs()
        tally.check(variable.dtype == found.dtype or wider or packed, where, f"{name} is {found.dtype}, the reference {variable.dtype}")
        attributes(f"{where}, {name}", lie, variable, found, tally, lie.dropped(former))
    known = {lie.name(name) for name in want.variables}
    extra = [name for name in have.variables if name not in known and not EXTRA.match(name) and not lie.extra(name)]
    extra = [name for name in extra if not re.match(r"^(platform|instrument)\d+$", name)]
    tally.check(not extra, where, f"variables that the reference does not have: {extra}")


def attributes(where, lie, want, have, tally, dropped=frozenset()):
    found = set(have.ncattrs())
    asked = [name for name in want.ncattrs() if name not in dropped]
    missing = [name for name in asked if name not in found and name not in OPTIONAL]
    tally.check(not missing, where, f"attributes missing: {missing}")
    for name in asked:
        if name not in found:
            continue
        a, b = want.getncattr(name), have.getncattr(name)
        if name in ("coordinates", "ancillary_variables"):
            a = lie.text(a)
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
