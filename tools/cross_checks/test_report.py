"""That the check of the report notices a picture that is no XML, a wrong density, dot, range and an outside address."""

import contextlib
import io
import pathlib
import shutil
import tempfile
import unittest

import gsw
import netCDF4
import numpy as np

from . import Tally
from .report import report

LAT, LON = 46.3, -4.1
P = np.array([1.0, 5.0, 9.0])
T = np.array([15.0, 13.0, 12.0])
SP = np.array([20.0, 28.0, 31.0])
SA = gsw.SA_from_SP(SP, P, LON, LAT)
CT = gsw.CT_from_t(SA, T, P)


def pixels(sa, ct):
    """An axis of 20 pixels a g/kg and one of 40 a degree, upward."""
    return 20 * sa, 800 - 40 * ct


def page(density=20.0, warmer=0.0, title="T", printed="12.00 to 15.00", more=""):
    temperatures = np.linspace(11, 16, 9)
    salts = [np.interp(20.0, gsw.sigma0(grid := np.linspace(0, 40, 4001), ct), grid) for ct in temperatures]
    line = "L".join("%.1f,%.1f" % pixels(sa, ct) for sa, ct in zip(salts, temperatures))
    dots = "".join("M%.1f %.1fh0.1" % pixels(sa, ct + warmer) for sa, ct in zip(SA, CT))
    across = "".join(f'<text x="{20 * sa}" y="900" text-anchor="middle" class="tick">{sa}</text>' for sa in (10, 20, 30))
    down = "".join(f'<text x="9" y="{804.2 - 40 * ct}" text-anchor="end" class="tick">{ct}</text>' for ct in (10, 12, 16))
    return f"""<table><tr><th scope="row" class="w"><a href="#c">c1</a></th><td>3</td><td>{printed}</td><td>20.00 to 31.00</td></tr></table>
<svg xmlns="http://www.w3.org/2000/svg" id="diagram"><title>{title}</title><desc>D</desc>{across}{down}<path class="density" d="M{line}"/>
<text class="onlines">{density}</text><g data-cast="c1"><path d="M1,1"/><path d="{dots}"/></g></svg>{more}"""


class Report(unittest.TestCase):
    def setUp(self):
        self.folder = pathlib.Path(tempfile.mkdtemp())
        self.addCleanup(shutil.rmtree, self.folder)
        self.product = self.folder / "s.nc"
        with netCDF4.Dataset(self.product, "w") as dataset:
            for name, length in (("profile", 1), ("obs", 3), ("letters", 2)):
                dataset.createDimension(name, length)
            dataset.createVariable("profile_id", "S1", ("profile", "letters"))[0] = np.array([b"c", b"1"])
            for name, value in (("row_size", 3), ("latitude", LAT), ("longitude", LON)):
                dataset.createVariable(name, "i4" if name == "row_size" else "f8", ("profile",))[0] = value
            for name, values in (("temperature", T), ("pressure", P), ("salinity", SP)):
                dataset.createVariable(name, "f8", ("obs",))[...] = values
                dataset.createVariable(f"{name}_qc", "i1", ("obs",))[...] = 1
            segment = dataset.createVariable("segment", "i1", ("obs",))
            segment[...] = 1
            segment.flag_values, segment.flag_meanings = np.array([1, 2], "i1"), "down air"

    def failures(self, **changes):
        path = self.folder / "s_report.html"
        path.write_text(page(**changes), encoding="utf-8")
        tally, said = Tally(), io.StringIO()
        with contextlib.redirect_stdout(said):
            report(path, self.product, self.product, tally)
        self.assertGreater(tally.passed, 0)
        return said.getvalue()

    def test_passes_what_is_right(self):
        self.assertEqual(self.failures(), "")

    def test_notices_a_wrong_density(self):
        self.assertIn("is off by", self.failures(density=21.0))

    def test_notices_a_wrong_dot(self):
        self.assertIn("pixels from any layer", self.failures(warmer=0.1))

    def test_notices_a_wrong_range(self):
        self.assertIn("temperature from 12.00 to 15.00", self.failures(printed="12.00 to 15.20"))

    def test_notices_a_picture_without_a_title(self):
        self.assertIn("no title", self.failures(title=""))

    def test_notices_what_is_fetched_from_outside(self):
        self.assertIn("outside", self.failures(more='<img src="https://example.org/x.png">'))


if __name__ == "__main__":
    unittest.main()
