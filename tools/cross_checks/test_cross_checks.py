"""The cross-checks find what is wrong: /usr/bin/python3 -m unittest discover -s tools -t tools -p 'test_*.py'"""

import contextlib
import csv
import io
import pathlib
import shutil
import subprocess
import tempfile
import unittest

import gsw
import netCDF4
import numpy as np

from . import Tally
from .layers import layers
from .opening import opens, units_are_known
from .reading import casts, layer_bounds, numbers
from .recomputing import recompute
from .sound_speed import sound_speed
from .structure import REFERENCES, structure
from .tables import same
from .uncertainties import uncertainties


class CrossChecks(unittest.TestCase):
    """Each starts from a reference file whose computed numbers have been made again at full precision."""

    def setUp(self):
        self.folder = pathlib.Path(tempfile.mkdtemp())
        self.addCleanup(shutil.rmtree, self.folder)
        self.full = self.made("full.cdl", "survey_full.nc")
        with netCDF4.Dataset(self.full, "a") as dataset:
            dataset.set_auto_maskandscale(False)
            read = {name: numbers(dataset, name) for name in ("conductivity", "temperature", "pressure")}
            for _, rows, lat, lon in casts(dataset):
                C, t, p = (read[name][rows] for name in ("conductivity", "temperature", "pressure"))
                SP = np.where(C == 0, 0, gsw.SP_from_C(C * 10, t, p))
                SA = gsw.SA_from_SP(SP, p, lon, lat)
                CT = gsw.CT_from_t(SA, t, p)
                for name, values in (("salinity", SP), ("density", gsw.rho(SA, CT, p)), ("sound_speed", gsw.sound_speed(SA, CT, p))):
                    dataset[name][rows] = np.where(np.isnan(values), -9999, values)

    def made(self, reference, name):
        path = self.folder / name
        subprocess.run(["ncgen", "-k", "nc3", "-o", path, REFERENCES / reference], check=True)
        return path

    def failures(self, part, *arguments):
        tally, said = Tally(), io.StringIO()
        with contextlib.redirect_stdout(said):
            part(*arguments, tally)
        self.assertGreater(tally.passed + tally.failed, 0)
        return said.getvalue()

    def change(self, name, row, by):
        with netCDF4.Dataset(self.full, "a") as dataset:
            dataset.set_auto_maskandscale(False)
            dataset[name][row] = dataset[name][row] + by

    def test_a_right_file_passes(self):
        for part in (opens, units_are_known, structure, recompute):
            self.assertEqual(self.failures(part, self.full), "", part.__name__)

    def test_a_wrong_number_is_found(self):
        for name, by in (("salinity", 1e-3), ("density", 2e-3), ("sound_speed", 5e-3), ("depth", 0.05)):
            with self.subTest(name):
                self.change(name, 20, by)
                self.assertIn(f"{name}", self.failures(recompute, self.full))
                self.change(name, 20, -by)

    def test_a_missing_attribute_and_a_wrong_unit_are_found(self):
        with netCDF4.Dataset(self.full, "a") as dataset:
            dataset["salinity"].delncattr("references")
            dataset["temperature"].units = "degrees of warmth"
        self.assertIn("references", self.failures(structure, self.full))
        self.assertIn("degrees of warmth", self.failures(units_are_known, self.full))

    def test_a_lacking_and_a_wrong_uncertainty_are_found(self):
        with netCDF4.Dataset(self.full, "a") as dataset:
            for name, u in (("conductivity", 0.001), ("temperature", 0.005), ("pressure", 0.05)):
                dataset.createVariable(f"{name}_uncertainty", "f4", ("obs",))[:] = u
            # at 45 to 51 degrees north and small depth, 0.05 dbar is 0.0496 m by any formula of the standard ocean
            dataset.createVariable("depth_uncertainty", "f4", ("obs",))[:] = 0.0496
        said = self.failures(uncertainties, self.full)
        self.assertIn("salinity has no uncertainty", said)
        self.assertNotIn("depth_uncertainty", said)
        with netCDF4.Dataset(self.full, "a") as dataset:
            dataset["depth_uncertainty"][:] = 0.06
        self.assertIn("depth_uncertainty", self.failures(uncertainties, self.full))

    def test_a_wrong_layer_is_found(self):
        binned = self.made("binned.cdl", "survey_binned.nc")
        with netCDF4.Dataset(binned, "a") as dataset:
            dataset["temperature_count"][3] = 99
        self.assertIn("has 99 rows", self.failures(layers, binned, self.full))

    def test_a_wrong_point_and_a_point_too_few_of_a_sound_speed_profile_are_found(self):
        binned = self.made("binned.cdl", "survey_binned.nc")
        path = self.folder / "survey_soundspeed.nc"
        shutil.copy(binned, path)
        with netCDF4.Dataset(path, "a") as dataset:
            dataset.summary = "thinned within 0.1 m s-1"
            origin = dataset.createVariable("sound_speed_origin", "i1", ("obs",))
            origin.flag_values, origin.flag_meanings = np.int8([0, 1]), "layer_mean carried"
            origin[:] = 0
            change = dataset.createVariable("sound_speed_change", "f4", ("obs",), fill_value=-9999.0)
            before = None
            for _, rows, _, _ in casts(dataset):
                depth, speed = numbers(dataset, "depth")[rows], numbers(dataset, "sound_speed")[rows]
                if before is not None:
                    values = speed - np.interp(depth, *before, np.nan, np.nan)
                    change[rows] = np.where(np.isnan(values), -9999, values)
                before = (depth, speed)
        self.assertEqual(self.failures(sound_speed, path, binned), "")
        with netCDF4.Dataset(path, "a") as dataset:
            dataset["sound_speed"][2] += 1
        said = self.failures(sound_speed, path, binned)
        self.assertIn("a point is no layer mean", said)
        self.assertIn("off the profile", said)

    def test_rows_of_padded_arrays_are_those_of_the_ragged_one(self):
        ragged, padded = self.made("binned.cdl", "ragged_binned.nc"), self.made("binned_incomplete.cdl", "padded_binned.nc")
        self.assertEqual(self.failures(structure, padded), "")
        with netCDF4.Dataset(ragged) as a, netCDF4.Dataset(padded) as b:
            self.assertEqual(casts(a), casts(b))
            for name in ("depth", "salinity", "salinity_qc", "temperature_count", "temperature_sd"):
                np.testing.assert_array_equal(numbers(a, name), numbers(b, name), name)
            np.testing.assert_array_equal(layer_bounds(a), layer_bounds(b))

    def test_a_row_lost_in_padding_is_found(self):
        ragged, padded = self.made("binned.cdl", "ragged_binned.nc"), self.made("binned_incomplete.cdl", "padded_binned.nc")
        with netCDF4.Dataset(padded, "a") as dataset:
            for name in [name for name in dataset.variables if name.endswith("_qc")]:
                dataset[name][0, 4] = np.ma.masked
        with netCDF4.Dataset(ragged) as a, netCDF4.Dataset(padded) as b:
            self.assertNotEqual(casts(a), casts(b))

    def test_a_file_that_is_not_netcdf_is_found(self):
        path = self.folder / "survey_full.nc"
        path.write_bytes(b"CDF\x01 and no more")
        said = self.failures(opens, path)
        self.assertIn("ncdump", said)
        self.assertIn("xarray", said)

    def test_cells(self):
        single = float(np.float32(15.326))
        self.assertTrue(same("15.326", single, ""))
        self.assertFalse(same("15.327", single, ""))
        self.assertTrue(same("", np.nan, ""))
        self.assertFalse(same("", 0.0, ""))
        self.assertFalse(same("0", np.nan, ""))
        self.assertTrue(same("1970-01-01T00:00:01Z", 1.0, ""))
        self.assertEqual(next(csv.reader(['"a,b"'])), ["a,b"])


if __name__ == "__main__":
    unittest.main()
