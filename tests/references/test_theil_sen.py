"""The slopes that the Rust tests read are those of scipy, and the two published cases come out as published."""

import json

import pytest
import theil_sen_vectors


@pytest.fixture(scope="module")
def written():
    return json.loads(theil_sen_vectors.FILE.read_text())


def test_scipy_says_what_the_file_says(written):
    said = theil_sen_vectors.vectors()
    assert [case["name"] for case in said] == [case["name"] for case in written]
    for now, then in zip(said, written):
        assert (now["x"], now["y"]) == (then["x"], then["y"]), now["name"]
        assert now["slope"] == pytest.approx(then["slope"], rel=1e-12, abs=1e-12), now["name"]


def test_the_published_cases_are_among_them(written):
    by_name = {case["name"]: case["slope"] for case in written}
    assert by_name["textbook"] == 4
    # The certified slope of the least squares is 1.00211681802045; this estimator is not far off on such data.
    assert by_name["Norris"] == pytest.approx(1.0021968365553604, rel=1e-12)
