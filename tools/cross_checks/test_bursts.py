"""That the check of burst means notices a wrong mean, number of rows, bound, flag or deviation."""

import contextlib
import io
import pathlib
import shutil
import tempfile
import unittest

import netCDF4
import numpy as np

from . import Tally
from .bursts import bursts
from .layers import MEANS

NAMES = [*MEANS, "depth"]
TIMES = np.array([0.0, 1, 2, 100, 101, 102, 103, 200, 201])
PARTS = [slice(1, 3), slice(3, 7), slice(7, 9)]  # the first row is on the way down


def written(path, columns):
    with netCDF4.Dataset(path, "w") as dataset:
        for name, values in columns.items():
            for length in values.shape:
                if f"d{length}" not in dataset.dimensions:
                    dataset.createDimension(f"d{length}", length)
            dataset.createVariable(name, values.dtype, tuple(f"d{length}" for length in values.shape))[...] = values
        if "segment" in columns:
            dataset["segment"].flag_values, dataset["segment"].flag_meanings = np.array([1, 2], "i1"), "down stay"
    return path


class Bursts(unittest.TestCase):
    def setUp(self):
        self.folder = pathlib.Path(tempfile.mkdtemp())
        self.addCleanup(shutil.rmtree, self.folder)
        rng = np.random.default_rng(1)
        rows = {name: 10 + rng.random(len(TIMES)) for name in NAMES}
        flags = {name: np.ones(len(TIMES), "i1") for name in NAMES}
        flags["temperature"][4] = 4
        segment = np.array([1] + [2] * (len(TIMES) - 1), "i1")
        self.series = written(self.folder / "s.nc", {
            "time": TIMES, "segment": segment, **rows, **{f"{name}_qc": flags[name] for name in NAMES}})
        self.means = {
            "time": np.array([TIMES[part].mean() for part in PARTS]),
            "time_bounds": np.array([TIMES[part][[0, -1]] for part in PARTS]),
        }
        for name in NAMES:
            used = [rows[name][part][flags[name][part] == 1] for part in PARTS]
            self.means[name] = np.array([values.mean() for values in used])
            self.means[f"{name}_count"] = np.array([len(values) for values in used], "i4")
            self.means[f"{name}_qc"] = np.ones(len(used), "i1")
        self.means["temperature_sd"] = np.array([rows["temperature"][part][flags["temperature"][part] == 1].std(ddof=1) for part in PARTS])

    def failures(self):
        tally, said = Tally(), io.StringIO()
        with contextlib.redirect_stdout(said):
            bursts(written(self.folder / "b.nc", self.means), self.series, tally)
        self.assertGreater(tally.passed, 0)
        return said.getvalue()

    def test_right_means_pass(self):
        self.assertEqual(self.failures(), "")

    def test_what_is_wrong_is_found(self):
        for name, by, said in (("salinity", 1e-3, "salinity: 1 means differ"), ("temperature_count", 1, "numbers of rows"),
                               ("time_bounds", 1, "bounds"), ("time", 1, "times"), ("depth_qc", 1, "flags"),
                               ("temperature_sd", 0.1, "standard deviations")):
            with self.subTest(name):
                right = self.means[name]
                self.means[name] = right.copy()
                self.means[name][1] += by
                self.assertIn(said, self.failures())
                self.means[name] = right

    def test_a_burst_too_few_is_found(self):
        self.means = {name: values[:2] for name, values in self.means.items()}
        tally = Tally()
        with contextlib.redirect_stdout(io.StringIO()):
            bursts(written(self.folder / "b.nc", self.means), self.series, tally)
        self.assertEqual(tally.failed, 1)


if __name__ == "__main__":
    unittest.main()
