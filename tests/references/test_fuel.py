"""What the Rust tests of fuel and money read is what pandas, scipy, numpy and iso4217 say; published values hold."""

import json
import statistics

import currency_vectors
import fill_vectors
import pytest
import welch_vectors
from scipy.stats import linregress, ttest_ind


@pytest.fixture(scope="module")
def written():
    return json.loads(welch_vectors.FILE.read_text())


def alike(now, then):
    if isinstance(now, dict):
        return now.keys() == then.keys() and all(alike(now[key], then[key]) for key in now)
    if isinstance(now, list):
        return len(now) == len(then) and all(map(alike, now, then))
    return now == (pytest.approx(then, rel=1e-9, abs=1e-12) if isinstance(now, float) else then)


def test_pandas_says_what_the_file_says():
    assert fill_vectors.vectors() == fill_vectors.FILE.read_text().splitlines()


def test_scipy_and_numpy_say_what_the_file_says(written):
    assert alike(welch_vectors.vectors(), written)


def test_the_currencies_are_those_of_the_file():
    assert currency_vectors.vectors() == currency_vectors.FILE.read_text().splitlines()


def test_auto83b_is_the_one_of_nist():
    """NIST e-Handbook, 1.3.5.3: 249 and 79 cars, their means and deviations, and T of the pooled test."""
    us, japan = welch_vectors.auto83b()
    assert (len(us), len(japan)) == (249, 79)
    assert statistics.mean(us) == pytest.approx(20.14458, abs=5e-6)
    assert statistics.stdev(us) == pytest.approx(6.41470, abs=5e-6)
    assert statistics.mean(japan) == pytest.approx(30.48101, abs=5e-6)
    assert statistics.stdev(japan) == pytest.approx(6.10771, abs=5e-6)
    pooled = ttest_ind(us, japan)
    assert (pooled.statistic, pooled.df) == (pytest.approx(-12.62059, abs=5e-6), 326)


def test_the_small_comparisons_are_those_of_r(written):
    """scipy's test class TestTTestInd, whose values are from R."""
    by_name = {case["name"]: case["t"] for case in written["welch"]}
    assert by_name["scipy 1"] == pytest.approx(-0.686495127355726, rel=1e-12)
    assert by_name["scipy 2"] == pytest.approx(-0.210866331595072, rel=1e-12)


def test_norris_has_its_certified_slope(written):
    """NIST Statistical Reference Datasets, Norris."""
    assert linregress(**written["norris"]).slope == pytest.approx(1.00211681802045, rel=1e-13)
