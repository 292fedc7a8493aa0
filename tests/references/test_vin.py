"""Vehicle identification numbers against the tables of 49 CFR 565, worked out here by ten lines of our own."""

import json

import pytest

from conftest import wellkept

# 49 CFR 565.15, Table III (values) and Table IV (weights).
VALUES = dict(zip("ABCDEFGH", range(1, 9))) | dict(zip("JKLMN", range(1, 6))) | {"P": 7, "R": 9}
VALUES |= dict(zip("STUVWXYZ", range(2, 10))) | {str(digit): digit for digit in range(10)}
WEIGHTS = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2]


def check_digit(vin):
    return "0123456789X"[sum(VALUES[letter] * weight for letter, weight in zip(vin, WEIGHTS)) % 11]


@pytest.mark.parametrize(
    ("vin", "verdict"),
    [
        ("1G4AH59H45G118341", "right"),  # 49 CFR 565, tables V and VI, the regulation's own sample
        ("1J9RP1A36A1644345", "right"),  # NHTSA, Outline for New Manufacturer Information, p. 18
        ("1M8GDM9AXKP042788", "right"),  # pandsauto.ca, 'Do you have a valid VIN number': 351 = 31 * 11 + 10, so X
        ("11111111111111111", "right"),  # every value 1, weights that sum to 89 = 8 * 11 + 1: from tables III and IV
        ("1G4AH59H45G118331", "wrong"),  # one digit changed
        ("SALVA2AE4EH877322", "wrong"),  # well formed, from outside North America
    ],
)
def test_the_check_digit_is_that_of_the_regulation(vin, verdict):
    said = json.loads(wellkept("--json", "vin", vin).stdout)
    assert said["check_digit"] == verdict
    assert (check_digit(vin) == vin[8]) == (verdict == "right")
    if verdict == "wrong":
        assert said["expected"] == check_digit(vin)


@pytest.mark.parametrize("vin", ["SALVO2AE4EH877322", "1M8GDM9AXKP04278", "1M8GDM9AXKP0427888", ""])
def test_an_impossible_number_is_refused_in_one_sentence(vin):
    said = wellkept("--json", "vin", vin, check=False)
    assert said.returncode == 1
    assert len(said.stderr.strip().splitlines()) == 1
