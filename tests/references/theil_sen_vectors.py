"""Writes data/theil_sen.json: Theil-Sen slopes by scipy.stats.theilslopes, for the Rust tests to be held against.

Run it by hand after a change: `python tests/references/theil_sen_vectors.py`. The seed is fixed, and so are the
histories; a test beside it asks scipy again on every run.
"""

import importlib.resources
import json
import pathlib
import random

from scipy.stats import theilslopes

FILE = pathlib.Path(__file__).parent / "data" / "theil_sen.json"
SEED = 20_250_601
HISTORIES = 200


def slope(x, y):
    return float(theilslopes(y, x).slope)


def textbook():
    """The worked case in scipy's own tests: 21 pairs, whose median slope is 4. Sen's data of 1968, from memory."""
    return {"name": "textbook", "x": [1, 2, 3, 4, 10, 12, 18], "y": [9, 15, 19, 20, 45, 55, 78]}


def norris():
    """NIST Statistical Reference Datasets, linear regression, Norris: 36 points after a head of 60 lines."""
    file = importlib.resources.files("scipy.stats") / "tests/data/nist_linregress/Norris.dat"
    points = [tuple(map(float, line.split())) for line in file.read_text().splitlines()[60:] if line.strip()]
    points.sort(key=lambda point: point[1])
    assert len(points) == 36
    return {"name": "Norris", "x": [x for _, x in points], "y": [y for y, _ in points]}


def history(number, chance):
    """Days and kilometres of an invented car: gaps, two readings on one day, one reading in twenty mistyped."""
    day, odometer = 0, chance.randrange(200_000)
    x, y = [], []
    for count in range(chance.randrange(2, 31)):
        step = 1 if count == 1 else chance.choice([0, 1, 7, 7, 14, 30, 30, 61, 120])
        day += step
        odometer += step * chance.randrange(0, 130) + chance.randrange(20)
        shown = odometer + chance.choice([-1, 1]) * 10 ** chance.randrange(5) if chance.random() < 0.05 else odometer
        x.append(day)
        y.append(shown)
    return {"name": f"history {number}", "x": x, "y": y}


def vectors():
    chance = random.Random(SEED)
    cases = [textbook(), norris(), *(history(number, chance) for number in range(HISTORIES))]
    return [case | {"slope": slope(case["x"], case["y"])} for case in cases]


if __name__ == "__main__":
    FILE.parent.mkdir(exist_ok=True)
    FILE.write_text("[\n" + ",\n".join(json.dumps(case) for case in vectors()) + "\n]\n")
