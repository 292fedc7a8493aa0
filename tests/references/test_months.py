"""The days that the Rust tests read are those of dateutil."""

import month_vectors
import pytest


@pytest.fixture(scope="module")
def lines():
    return month_vectors.vectors()


def test_dateutil_says_what_the_file_says(lines):
    assert lines == month_vectors.FILE.read_text().splitlines()


def test_a_month_after_the_31st_is_the_end_of_the_next_one(lines):
    assert {"2024-01-31 2 2024-02-29", "2025-01-31 2 2025-02-28", "2024-12-31 4 2025-02-28"} <= set(lines)
