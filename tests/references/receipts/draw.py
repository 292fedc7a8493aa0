"""Draws one receipt, clean, with the truth about it. The same seed, index and style give the same picture."""

from dataclasses import dataclass

import numpy as np

import bill as sales
import page
import pump
import roll
from shops import of_style, pick
from typeset import NO_BREAK, Look, Sheet
from writing import Writing

# Regular and bold for a thermal head, then for a page.
THERMAL = {
    "a": (
        ("dejavu:DejaVuSansMono", "dejavu:DejaVuSansMono-Bold"),
        ("pypi:cascadia", "pypi:cascadiab"),
        ("pypi:fimo", "pypi:fimbo"),
        ("dejavu:DejaVuSans", "dejavu:DejaVuSans-Bold"),
    ),
    "b": (
        ("pypi:ubuntm", "pypi:ubuntmbo"),
        ("pypi:spacemo", "pypi:spacembo"),
        ("pypi:figo", "pypi:figbo"),
        ("dejavu:DejaVuSansMono", "dejavu:DejaVuSansMono-Bold"),
    ),
}
OFFICE = {
    "a": (
        ("card:AtkinsonHyperlegibleNext-Regular", "card:AtkinsonHyperlegibleNext-Bold"),
        ("dejavu:DejaVuSerif", "dejavu:DejaVuSerif-Bold"),
    ),
    "b": (
        ("pypi:notos", "pypi:notosbo"),
        ("pypi:ubuntu", "pypi:ubuntubo"),
        ("dejavu:DejaVuSans", "dejavu:DejaVuSans-Bold"),
    ),
}
NEEDLES = ("dejavu:DejaVuSansMono", "dejavu:DejaVuSansMono-Bold")


@dataclass
class Drawn:
    """A clean receipt: `ink` is grey, 0 black; `dpmm` its dots a millimetre; `roll` if torn from one."""

    ink: np.ndarray
    dpmm: float
    truth: dict
    roll: bool
    thermal: bool


def stream(seed, index, style, use):
    """A stream of random numbers for one use, so that a change in one leaves the others as they were."""
    return np.random.default_rng([seed, index, ord(style), use])


def draw(seed, index, style="a"):
    """The receipt number `index` of the corpus `seed` in `style`."""
    rng = stream(seed, index, style, 1)
    shops = of_style(style)
    shop = shops[index % len(shops)]
    paged = rng.random() < {"workshop": 0.75, "counter": 0.2, "fuel": 0.0}[shop.kind]
    bill = sales.sale(rng, shop, paged)
    needles = not paged and style == "b" and rng.random() < 0.25
    writing = Writing(rng, bill, bare=needles, upper=not paged and rng.random() < 0.3)
    way = page if paged else pump if bill.fuel else roll
    rows, ticket = way.lay_out(rng, bill, writing, style)
    look = _page(rng, style) if paged else _needle(rng) if needles else _thermal(rng, style)
    sheet = Sheet(look)
    ink, dpmm = sheet.draw(rows)
    truth = _truth(bill, writing, ticket) | {"printed": sheet.printed}
    return Drawn(ink, dpmm, truth, not paged, not paged and not needles)


def _truth(bill, writing, ticket):
    told = sales.truth(bill)
    told["day"] = bill.day.isoformat()
    told["ambiguous"] = writing.ambiguous
    told["shop"] = ticket.shop
    told["shop_also"] = [f"{ticket.shop} {ticket.legal}"] if ticket.legal else []
    told["written_day"] = writing.day(bill.day).replace(NO_BREAK, " ")
    for line, shown in zip(told["lines"], bill.lines, strict=True):
        line["text"] = writing.described(shown)
    return told


def _thermal(rng, style):
    """A thermal head has eight dots a millimetre; rolls are 80 or 58 mm wide."""
    regular, bold = pick(rng, THERMAL[style])
    narrow = rng.random() < 0.2
    mono = "Sans" not in regular.replace("SansMono", "") and "figo" not in regular
    columns = int(rng.integers(30, 34)) if narrow else int(rng.integers(38, 46))
    width, margin = (58, 4) if narrow else (80, 4)
    advance = 0.5 if "ubuntm" in regular else 0.6
    size = (width - 2 * margin) / columns / advance if mono else float(rng.uniform(2.6, 3.3))
    return Look(width, margin, 8, regular, bold, size, float(rng.uniform(1.15, 1.45)), float(rng.uniform(1.0, 1.35)))


def _needle(rng):
    """Needles are coarser; the font is small enough that its hinted shapes are those of such a printer."""
    return Look(76, 3, 3.9, *NEEDLES, 11.6 / 3.9, float(rng.uniform(1.25, 1.45)), dots=4)


def _page(rng, style):
    regular, bold = pick(rng, OFFICE[style])
    return Look(
        148,
        11,
        12,
        regular,
        bold,
        float(rng.uniform(2.9, 3.4)),
        float(rng.uniform(1.35, 1.6)),
        dots=0,
        height=float(rng.uniform(120, 205)),
    )
