"""Writes data/currencies.txt: code and minor units of every currency in the package `iso4217`.

What has no minor units in the standard (metals, baskets, codes for tests) is no money that a person pays with,
and is left out. Run it by hand after a change: `python tests/references/currency_vectors.py`.
"""

import pathlib

from iso4217 import Currency

FILE = pathlib.Path(__file__).parent / "data" / "currencies.txt"


def vectors():
    return sorted(f"{currency.code} {currency.exponent}" for currency in Currency if currency.exponent is not None)


if __name__ == "__main__":
    FILE.parent.mkdir(exist_ok=True)
    FILE.write_text("".join(f"{line}\n" for line in vectors()))
