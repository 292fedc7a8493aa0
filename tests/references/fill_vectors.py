"""Writes data/fills.txt: 500 invented fuel logs and what pandas makes of them, for the Rust tests to be held against.

A log begins with its number and the unit of its odometer. Its lines are
- `fill DAY ODOMETER UNIT AMOUNT LEVEL`, as typed;
- `span KIND FROM TO MILLIMETRES BASE TENTHS...`, from full to full, BASE in picolitres or watt-hours, and the figures
  in L/100 km, km/L, mpg (US) and mpg (imperial), or kWh/100 km and mi/kWh, in tenths, halves up;
- `apart KIND FROM TO REASON`, where nothing can be said;
- `mean KIND TENTHS...`, over the distance.

Run it by hand after a change: `python tests/references/fill_vectors.py`. The seed is fixed; a test beside it asks
pandas again on every run.
"""

import datetime
import math
import pathlib
import random
from fractions import Fraction

import pandas

FILE = pathlib.Path(__file__).parent / "data" / "fills.txt"
SEED = 20_250_603
LOGS = 500

MILLIMETRES = {"km": 1_000_000, "mi": 1_609_344}
# Base units in a thousandth: the gallons as NIST SP 811, appendix B.8, has them.
THOUSANDTH = {"L": 10**9, "gal-us": 3_785_411_784, "gal-imp": 4_546_090_000, "kWh": 1}
LEAST_AND_MOST = {"petrol": (100, 6_000), "electric": (300, 10_000)}


def logs():
    chance = random.Random(SEED)
    return [log(number, chance) for number in range(LOGS)]


def log(number, chance):
    """Fills of a car: full, in part, one missed before, two on a day, now and then a mistyped odometer."""
    unit = chance.choice(["km", "mi"])
    volume_unit = chance.choice(["L", "L", "gal-us", "gal-imp"])
    kinds = chance.choice([["petrol"], ["petrol"], ["petrol"], ["electric"], ["petrol", "electric"]])
    day = datetime.date(2020, 1, 1) + datetime.timedelta(days=chance.randrange(1500))
    odometer = chance.randrange(150_000)
    fills = []
    for _ in range(chance.randrange(1, 15)):
        day += datetime.timedelta(days=chance.choice([0, 1, 3, 7, 7, 8, 14]))
        way = chance.randrange(5, 900 if unit == "km" else 560)
        odometer += way
        kind = chance.choice(kinds)
        per_100_km = chance.uniform(3, 15) if kind == "petrol" else chance.uniform(12, 28)
        base = way * MILLIMETRES[unit] / 1e8 * per_100_km * (1e12 if kind == "petrol" else 1e3)
        amount_unit = volume_unit if kind == "petrol" else "kWh"
        decimals = chance.choice([2, 3])
        thousandths = max(1, round(base / THOUSANDTH[amount_unit]))
        thousandths = thousandths if decimals == 3 else max(10, round(thousandths, -1))
        level = chance.choices(["full", "part", "missed"], [7, 2, 1])[0]
        shown = odometer + chance.choice([-1, 1]) * 10 ** chance.randrange(2, 5) if chance.random() < 0.04 else odometer
        amount = f"{thousandths // 1000}.{thousandths % 1000:03}"[: None if decimals == 3 else -1]
        fills.append((str(day), max(0, shown), amount_unit, amount, level))
    return number, unit, fills


def half_up(value):
    return math.floor(value + Fraction(1, 2))


def figures(kind, millimetres, base, scale=10):
    """Every figure of a consumption in steps of `scale`, by exact fractions."""
    km, mile = Fraction(int(millimetres), 10**6), Fraction(int(millimetres), MILLIMETRES["mi"])
    if kind == "electric":
        kwh = Fraction(int(base), 1000)
        return [half_up(kwh / km * 100 * scale), half_up(mile / kwh * scale)]
    litre = Fraction(int(base), 10**12)
    us, imperial = (Fraction(int(base), THOUSANDTH[unit] * 1000) for unit in ("gal-us", "gal-imp"))
    return [half_up(value * scale) for value in (litre / km * 100, km / litre, mile / us, mile / imperial)]


def reason(kind, row, alone):
    if row["level"] == "missed":
        return "missed"
    if row["millimetres"] <= 0:
        return "no-distance"
    hundredths = figures(kind, row["millimetres"], row["base"], 100)[0]
    least, most = LEAST_AND_MOST[kind]
    if hundredths > most:
        return "too-much"
    return "too-little" if alone and hundredths < least else None


def spans(kind, fills, alone):
    """Full to full in pandas: a fill belongs to the first full one at or after it, found from the end."""
    full = fills["level"] != "part"
    group = full[::-1].cumsum()[::-1]
    ends = fills.assign(group=group)[group > 0].groupby("group", sort=False)
    table = ends.agg(base=("base", "sum"), to=("day", "last"), end=("at", "last"), level=("level", "last"))
    table["from"], table["millimetres"] = table["to"].shift(), table["end"].diff()
    table = table.iloc[1:].astype({"millimetres": "int64"})
    table["why"] = pandas.Series([reason(kind, row, alone) for row in rows(table)], table.index, dtype=object)
    return table


def rows(table):
    return table.to_dict("records")


def said(unit, fills):
    frame = pandas.DataFrame(fills, columns=["day", "odometer", "unit", "amount", "level"])
    frame["kind"] = frame["unit"].map(lambda unit: "electric" if unit == "kWh" else "petrol")
    frame["at"] = frame["odometer"] * MILLIMETRES[unit]
    thousandths = frame["amount"].map(lambda amount: int(Fraction(amount) * 1000))
    frame["base"] = thousandths * frame["unit"].map(THOUSANDTH)
    frame = frame.sort_values(["day", "at"], kind="stable")
    kinds = [kind for kind in ("petrol", "electric") if (frame["kind"] == kind).any()]
    for kind in kinds:
        table = spans(kind, frame[frame["kind"] == kind], len(kinds) == 1)
        for row in rows(table):
            if row["why"]:
                yield f"apart {kind} {row['from']} {row['to']} {row['why']}"
            else:
                tenths = " ".join(map(str, figures(kind, row["millimetres"], row["base"])))
                yield f"span {kind} {row['from']} {row['to']} {row['millimetres']} {row['base']} {tenths}"
        good = table[table["why"].isna()]
        if len(good):
            tenths = figures(kind, good["millimetres"].sum(), good["base"].sum())
            yield f"mean {kind} {' '.join(map(str, tenths))}"


def vectors():
    lines = []
    for number, unit, fills in logs():
        lines.append(f"log {number} {unit}")
        lines += [f"fill {' '.join(map(str, fill))}" for fill in fills]
        lines += said(unit, fills)
    return lines


if __name__ == "__main__":
    FILE.parent.mkdir(exist_ok=True)
    FILE.write_text("".join(f"{line}\n" for line in vectors()))
