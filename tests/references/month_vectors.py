"""Writes data/months.txt: days plus whole and half months by dateutil, for the Rust tests to be held against.

A line for each case: the day, the half months, the day that many later.

Run it by hand after a change: `python tests/references/month_vectors.py`. The seed is fixed; a test beside it asks
dateutil again on every run.
"""

import datetime
import pathlib
import random

from dateutil.relativedelta import relativedelta

FILE = pathlib.Path(__file__).parent / "data" / "months.txt"
SEED = 20_250_602
CASES = 2_000
FIRST, LAST = datetime.date(1900, 1, 1), datetime.date(2099, 12, 31)


def plus(day, half_months):
    """Whole months clamp to the end of the month; a half month is 15 days, added after them."""
    return day + relativedelta(months=half_months // 2) + relativedelta(days=15 * (half_months % 2))


def month_ends():
    """Every end of a month of a leap year and the year after it, with one to fourteen half months."""
    day = datetime.date(2024, 1, 31)
    while day.year < 2026:
        yield from ((day, half_months) for half_months in range(1, 15))
        day += relativedelta(months=1, day=31)


def anywhere():
    chance = random.Random(SEED)
    for _ in range(CASES):
        day = FIRST + datetime.timedelta(days=chance.randrange((LAST - FIRST).days + 1))
        yield day, chance.randrange(480)


def vectors():
    cases = [*month_ends(), *anywhere()]
    return [f"{day} {half_months} {plus(day, half_months)}" for day, half_months in cases]


if __name__ == "__main__":
    FILE.parent.mkdir(exist_ok=True)
    FILE.write_text("".join(f"{line}\n" for line in vectors()))
