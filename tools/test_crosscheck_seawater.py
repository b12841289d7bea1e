"""That the comparison with the TEOS-10 library notices what it is there for."""

import unittest

import numpy as np

from crosscheck_seawater import NEIGHBOURS, SAME, largest

ALL = np.full(3, True)


class Largest(unittest.TestCase):
    def test_finds_the_row_that_is_farthest_off(self):
        self.assertEqual(largest([1, 2, 3.5], [1, 2.25, 3], ALL), (0.5, 2))

    def test_a_number_on_one_side_alone_is_too_far(self):
        self.assertEqual(largest([1, None, 3], [1, 2, 3], ALL), (float("inf"), 1))
        self.assertEqual(largest([1, 2, 3], [1, np.nan, 3], ALL), (float("inf"), 1))

    def test_no_number_on_both_sides_agrees(self):
        self.assertEqual(largest([1, None, 3], [1, np.nan, 3], ALL)[0], 0)

    def test_rows_left_out_do_not_count(self):
        self.assertEqual(largest([1, 9, 3], [1, 2, 3], np.array([True, False, True]))[0], 0)


class Tolerances(unittest.TestCase):
    def test_every_one_is_small_and_positive(self):
        for name, (_, within) in SAME.items():
            self.assertTrue(0 < within <= 5e-8, name)
        for name, (_, within) in NEIGHBOURS.items():
            self.assertTrue(0 < within <= 1, name)


if __name__ == "__main__":
    unittest.main()
