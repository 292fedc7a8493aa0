"""Scores `wellkept read FILE --json` against the corpus, field by field, each to be met exactly.

    python score.py --wellkept PATH --models FOLDER --count 72 --seed 1 --style a --json OUT.json

For every field: how many of the values that stand on the receipts were read, how many were offered that do not stand
there, and how many of the values that the program called sure are wrong."""

import argparse
import json
import re
import resource
import statistics
import subprocess
import tempfile
import time
from collections import Counter
from dataclasses import dataclass, field
from decimal import Decimal, InvalidOperation
from pathlib import Path

from corpus import photo

TIMEOUT = 120  # seconds for one photo
FIELDS = ("total", "day", "currency", "shop", "tax", "numbers", "volume", "price", "odometer", "lines")


# What the program is called with, and where in its answer a field stands. If its JSON changes, change it here alone.


def command(wellkept, models, photo_file):
    return [wellkept, "read", str(photo_file), "--json", *(["--models", str(models)] if models else [])]


@dataclass
class Given:
    """A value that was offered; `other` is the second reading of a day."""

    value: object
    sure: bool
    other: object = None


def answered(answer):
    """The answer's values by field, each a list of `Given`."""
    fields = answer.get("fields") or {}

    def one(name, read):
        told = fields.get(name)
        return [Given(read(told), told.get("sure") == "sure", told.get("or"))] if told else []

    def several(name, read):
        told = [{"value": item} if isinstance(item, str) else item for item in fields.get(name) or []]
        return [Given(read(item), item.get("sure") == "sure") for item in told]

    return {
        "total": one("total", lambda told: number(told.get("value"))),
        "currency": one("total", lambda told: told.get("currency")),
        "day": one("day", lambda told: told.get("value")),
        "shop": one("shop", lambda told: name(told.get("value"))),
        "tax": [
            given
            for given in several("tax", lambda told: number(told.get("value", told.get("amount"))))
            if given.value
        ],
        "numbers": several("numbers", lambda told: bare(told.get("value"))),
        "volume": one("fuel", lambda told: (number(told.get("volume")), told.get("unit"))),
        "price": one("fuel", lambda told: number(told.get("price"))),
        "odometer": one("odometer", lambda told: number(told.get("value"))),
        "lines": several("lines", lambda told: (number(told.get("quantity") or "1"), number(told.get("price")))),
    }


def expected(truth):
    """The true values by field, in the same form."""
    fuel, odometer = truth["fuel"], truth["odometer"]
    lines = [(number(line["quantity"]), minor(line["price"])) for line in truth["lines"]]
    return {
        "total": [minor(truth["total"])],
        "currency": [truth["currency"]],
        "day": [truth["day"]],
        "shop": [name(truth["shop"])],
        "tax": [minor(tax) for tax in truth["tax"] if tax],
        "numbers": [bare(value) for value in truth["numbers"]],
        "volume": [(number(fuel["volume"]), fuel["unit"])] if fuel else [],
        "price": [number(fuel["price"])] if fuel else [],
        "odometer": [number(odometer["value"])] if odometer else [],
        # A pump's own row is no line of goods, and its volume and price are scored above.
        "lines": [] if fuel else lines,
    }


def number(text):
    try:
        return Decimal(str(text))
    except InvalidOperation:
        return None


def minor(amount):
    return Decimal(amount).scaleb(-2)


def bare(text):
    """A part number without case, spaces, dots and dashes."""
    return re.sub(r"[\s.\-]", "", str(text)).upper()


def name(text):
    return " ".join(str(text).split()).casefold()


# Scoring.


@dataclass
class Tally:
    """Counts of one field: values on the receipts, those of them read, values that do not stand there, those called
    sure, and those called sure that are wrong."""

    of: int = 0
    read: int = 0
    extra: int = 0
    sure: int = 0
    wrong_and_sure: int = 0

    def add(self, other):
        for key, count in vars(other).items():
            setattr(self, key, getattr(self, key) + count)

    @property
    def rate(self):
        return self.read / self.of if self.of else 1.0


@dataclass
class Score:
    """All counts, the seconds of each photo, and every photo of which something was missed."""

    fields: dict = field(default_factory=lambda: {name: Tally() for name in FIELDS})
    seconds: list = field(default_factory=list)
    missed: list = field(default_factory=list)
    failed: list = field(default_factory=list)

    @property
    def sure(self):
        return sum(tally.sure for tally in self.fields.values())

    @property
    def wrong_and_sure(self):
        return sum(tally.wrong_and_sure for tally in self.fields.values())

    @property
    def share_wrong_and_sure(self):
        return self.wrong_and_sure / self.sure if self.sure else 0.0


def compare(truth, answer):
    """The tallies of one photo by field."""
    wanted, given = expected(truth), answered(answer)
    if truth["fuel"]:
        given["lines"] = []
    also = {name(value) for value in truth["shop_also"]}
    for shop in given["shop"]:
        # The legal form may be read or left out.
        shop.value = wanted["shop"][0] if shop.value in also else shop.value
    return {name: _tally(wanted[name], given[name], truth["ambiguous"] and name == "day") for name in FIELDS}


def _tally(wanted, given, either):
    left = Counter(wanted)
    tally = Tally(of=len(wanted))
    for value in given:
        right = left[value.value] > 0
        # A day that can be read two ways is met by either reading, but who calls it sure must have the true one first.
        met = right or (either and left[value.other] > 0)
        if met:
            left[value.value if right else value.other] -= 1
            tally.read += 1
        else:
            tally.extra += 1
        tally.sure += value.sure
        tally.wrong_and_sure += value.sure and not right
    return tally


def read(wellkept, models, jpeg):
    """The program's answer to one photo, and the seconds it took; an answer of nothing and why, if it failed."""
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "photo.jpg"
        file.write_bytes(jpeg)
        began = time.perf_counter()
        try:
            ran = subprocess.run(command(wellkept, models, file), capture_output=True, text=True, timeout=TIMEOUT)
        except subprocess.TimeoutExpired:
            return {}, TIMEOUT, f"no answer in {TIMEOUT} seconds"
        seconds = time.perf_counter() - began
    if ran.returncode:
        return {}, seconds, ran.stderr.strip() or f"ended with {ran.returncode}"
    return json.loads(ran.stdout), seconds, None


def run(wellkept, models, photos, told=lambda _: None):
    """Scores the program over `photos`: (seed, index, style) each."""
    score = Score()
    for seed, index, style in photos:
        jpeg, truth = photo(seed, index, style)
        answer, seconds, failure = read(wellkept, models, jpeg)
        score.seconds.append(seconds)
        if failure:
            score.failed.append({"photo": [seed, index, style], "why": failure})
        tallies = compare(truth, answer)
        for name, tally in tallies.items():
            score.fields[name].add(tally)
        told(_miss(score, truth, answer, tallies))
    return score


def _miss(score, truth, answer, tallies):
    """Keeps what was missed of one photo, and says it on one row."""
    bad = [name for name, tally in tallies.items() if tally.read < tally.of or tally.extra]
    if bad:
        wanted, given = expected(truth), answered(answer)
        shown = {name: {"is": wanted[name], "read": [value.value for value in given[name]]} for name in bad}
        score.missed.append(
            {
                "photo": [truth["seed"], truth["index"], truth["style"]],
                "taken": truth["taken"],
                "fields": shown,
                "printed": truth["printed"],
                "rows": answer.get("rows"),
            }
        )
    return f"{truth['style']} {truth['index']:3} {score.seconds[-1]:6.2f} s  {', '.join(bad) or 'all right'}"


def table(score):
    """The counts as text."""
    rows = [f"{'field':10}{'of':>6}{'read':>6}{'rate':>9}{'extra':>7}{'sure':>6}{'wrong and sure':>16}"]
    for name, tally in score.fields.items():
        rows.append(
            f"{name:10}{tally.of:6}{tally.read:6}{tally.rate:9.1%}{tally.extra:7}{tally.sure:6}"
            f"{tally.wrong_and_sure:16}"
        )
    seconds = sorted(score.seconds)
    rows += [
        f"wrong and sure: {score.wrong_and_sure} of {score.sure} ({score.share_wrong_and_sure:.1%})",
        f"time: median {statistics.median(seconds):.2f} s, slowest {seconds[-1]:.2f} s of {len(seconds)} photos",
        f"most memory of one reading: {resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss // 1024} MB",
    ]
    return "\n".join([*rows, *(f"failed: {failure}" for failure in score.failed)])


def as_json(score):
    fields = {name: vars(tally) | {"rate": round(tally.rate, 4)} for name, tally in score.fields.items()}
    told = {
        "fields": fields,
        "sure": score.sure,
        "wrong_and_sure": score.wrong_and_sure,
        "seconds": score.seconds,
        "failed": score.failed,
        "missed": score.missed,
    }
    return json.dumps(told, ensure_ascii=False, indent=1, default=str)


def main():
    asked = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    asked.add_argument("--wellkept", required=True)
    asked.add_argument("--models", help="folder of the models; without it the program looks where it always does")
    asked.add_argument("--count", type=int, default=72)
    asked.add_argument("--seed", type=int, default=1)
    asked.add_argument("--style", choices="ab", default="a")
    asked.add_argument("--json", type=Path)
    asked = asked.parse_args()
    photos = [(asked.seed, index, asked.style) for index in range(asked.count)]
    score = run(asked.wellkept, asked.models, photos, told=lambda row: print(row, flush=True))
    print(table(score))
    if asked.json:
        asked.json.write_text(as_json(score))


if __name__ == "__main__":
    main()
