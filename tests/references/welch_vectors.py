"""Writes data/welch.json: comparisons of two groups by scipy and numpy, for the Rust tests to be held against.

`welch` has plain comparisons by `scipy.stats.ttest_ind(equal_var=False)`: published ones and NIST's
AUTO83B, which is rebuilt from vega_datasets. `joint` has comparisons with weights and a season, worked out from the
normal equations by numpy. `norris` has NIST's Norris data. `totals` has amount, price and total by `decimal`.

Run it by hand after a change: `python tests/references/welch_vectors.py`. The seed is fixed; a test beside it works
it out again on every run.
"""

import importlib.resources
import json
import math
import pathlib
from decimal import ROUND_HALF_UP, Decimal

import numpy
from iso4217 import Currency
from scipy.stats import ttest_ind
from vega_datasets import local_data

FILE = pathlib.Path(__file__).parent / "data" / "welch.json"
SEED = 20_250_604


def auto83b():
    """NIST e-Handbook 1.3.5.3, AUTO83B: miles per gallon of US and Japanese cars, as whole numbers, halves up."""
    cars = local_data.cars().dropna(subset=["Miles_per_Gallon"])
    of = lambda origin: [math.floor(mpg + 0.5) for mpg in cars[cars["Origin"] == origin]["Miles_per_Gallon"]]
    return of("USA"), of("Japan")


def pairs():
    """scipy's own tests, with values from R; and the worked example of the encyclopedia."""
    return {
        "scipy 1": ([1, 2, 3], [1.1, 2.9, 4.2]),
        "scipy 2": ([1, 2, 3, 4], [1.1, 2.9, 4.2]),
        "example": ([30.02, 29.99, 30.11, 29.97, 30.01, 29.99], [29.89, 29.93, 29.72, 29.98, 30.02, 29.98]),
        "AUTO83B": auto83b(),
    }


def welch(name, a, b):
    result = ttest_ind(a, b, equal_var=False)
    low, high = result.confidence_interval(0.95)
    return {
        "name": name, "a": list(map(float, a)), "b": list(map(float, b)), "t": float(result.statistic),
        "freedom": float(result.df), "low": float(low), "high": float(high),
    }


def joint(number, chance):
    """A difference of two groups with weights and a season, each group with a spread of its own."""
    before, after = int(chance.integers(30, 70)), int(chance.integers(4, 40))
    count = before + after
    turn = 2 * numpy.pi * numpy.arange(count) / 52
    second = numpy.arange(count) >= before
    weights = chance.uniform(0.3, 1.8, count)
    y = 2 + 0.1 * numpy.cos(turn + 1) - 0.03 * second + chance.normal(0, 0.04, count)
    x = numpy.column_stack([~second, second, numpy.cos(turn), numpy.sin(turn)]).astype(float)
    inverse = numpy.linalg.inv(x.T @ (weights[:, None] * x))
    coefficients = inverse @ x.T @ (weights * y)
    residuals = y - x @ coefficients
    hat = weights * numpy.einsum("ij,jk,ik->i", x, inverse, x)
    share = numpy.array([-1, 1, 0, 0]) @ inverse @ x.T * weights
    parts, freedoms = [], []
    for group in (~second, second):
        freedom = group.sum() - hat[group].sum()
        spread = (weights[group] * residuals[group] ** 2).sum() / freedom
        parts.append((share[group] ** 2 / weights[group]).sum() * spread)
        freedoms.append(freedom)
    variance = sum(parts)
    return {
        "columns": [list(map(float, column)) for column in x.T], "y": list(map(float, y)),
        "weights": list(map(float, weights)), "before": before,
        "estimate": float(coefficients[1] - coefficients[0]), "variance": float(variance),
        "freedom": float(variance**2 / sum(part**2 / freedom for part, freedom in zip(parts, freedoms))),
    }


def norris():
    file = importlib.resources.files("scipy.stats") / "tests/data/nist_linregress/Norris.dat"
    points = [tuple(map(float, line.split())) for line in file.read_text().splitlines()[60:] if line.strip()]
    return {"x": [x for _, x in points], "y": [y for y, _ in points]}


def totals(chance):
    """Hundredths of a unit times a price of three decimals, in currencies of all kinds of minor units."""
    for _ in range(300):
        code = ["EUR", "JPY", "KWD", "CLF", "GBP"][int(chance.integers(5))]
        hundredths, thousandths = int(chance.integers(1, 12_000)), int(chance.integers(1, 4_000))
        exact = Decimal(hundredths) / 100 * Decimal(thousandths) / 1000
        step = Decimal(1).scaleb(-Currency(code).exponent)
        total = exact.quantize(step, rounding=ROUND_HALF_UP)
        yield [code, str(Decimal(hundredths) / 100), str(Decimal(thousandths) / 1000), str(total)]


def vectors():
    chance = numpy.random.default_rng(SEED)
    return {
        "welch": [welch(name, a, b) for name, (a, b) in pairs().items()],
        "joint": [joint(number, chance) for number in range(20)],
        "norris": norris(),
        "totals": list(totals(chance)),
    }


if __name__ == "__main__":
    FILE.parent.mkdir(exist_ok=True)
    parts = []
    for key, value in vectors().items():
        rows = "[\n" + ",\n".join(map(json.dumps, value)) + "\n]" if isinstance(value, list) else json.dumps(value)
        parts.append(f'"{key}": {rows}')
    FILE.write_text("{\n" + ",\n".join(parts) + "\n}\n")
