"""A small typesetter: rows of cells at places across the paper, drawn as a till or an office printer would."""

import functools
import io
from dataclasses import dataclass, replace
from pathlib import Path

import cv2
import numpy as np
import pymupdf_fonts
from PIL import Image, ImageDraw, ImageFont

# Debian's fonts-dejavu-core, the fonts of the printed card (SIL OFL 1.1), and those of PyPI's pymupdf-fonts (SIL OFL
# 1.1, and the Ubuntu font licence).
DEJAVU = Path("/usr/share/fonts/truetype/dejavu")
CARD = Path(__file__).parents[3] / "src-tauri/crates/card/sheets/fonts"


NO_BREAK = "\u00a0"


def glued(text):
    """The text so that no row ends within it; printed, its spaces are spaces."""
    return text.replace(" ", NO_BREAK)


def _unglued(text):
    return text.replace(NO_BREAK, " ")


@functools.cache
def _bytes(name):
    source, _, key = name.partition(":")
    if source == "pypi":
        return pymupdf_fonts.myfont(key)
    return ((DEJAVU if source == "dejavu" else CARD) / f"{key}.ttf").read_bytes()


@functools.cache
def font(name, size):
    return ImageFont.truetype(io.BytesIO(_bytes(name)), size)


@dataclass(frozen=True)
class Cell:
    """A text at `x` (0 to 1 across the printed width); `at` says which of its ends stands there: l, r or m.
    One that `give`s may be cut where room is short."""

    text: str
    x: float = 0.0
    at: str = "l"
    give: bool = False


@dataclass(frozen=True)
class Row:
    cells: tuple
    size: float = 1.0
    bold: bool = False
    shade: int = 0  # 1: on grey; 2: white on black


@dataclass(frozen=True)
class Rule:
    kind: str = "-"  # a sign to repeat, or "line"
    left: float = 0.0


@dataclass(frozen=True)
class Gap:
    height: float = 0.5  # in rows


@dataclass(frozen=True)
class Bars:
    """A bar code of no meaning, with figures beneath."""

    digits: str


@dataclass(frozen=True)
class Logo:
    """A made-up sign at the head: a few plain shapes."""

    seed: int
    x: float = 0.5


@dataclass(frozen=True)
class Look:
    """Paper and printer. `stretch` makes letters taller; `dots` is 0 for an office printer, 1 for a thermal head, and
    more for a needle printer, in pixels a needle."""

    width: float  # mm
    margin: float  # mm at either side
    dpmm: float  # dots a millimetre
    regular: str
    bold: str
    size: float  # of the font in mm
    leading: float = 1.25
    stretch: float = 1.0
    dots: int = 1
    height: float = 0.0  # least height in mm, for a page


class Sheet:
    """Lays rows out and draws them."""

    def __init__(self, look):
        self.look = look
        self.width = round(look.width * look.dpmm)
        self.left = round(look.margin * look.dpmm)
        self.inner = self.width - 2 * self.left
        self.printed = []  # the text of every row, as it stands on the paper

    def draw(self, elements):
        """The print as a grey picture, 0 black to 255 white, and its dots a millimetre."""
        look = self.look
        placed = [piece for element in elements for piece in self._fit(element)]
        rows = [piece for piece in placed if isinstance(piece, Row)]
        self.printed = [_unglued(" ".join(cell.text for cell in row.cells)) for row in rows]
        heights = [self._height(piece) for piece in placed]
        blank = round(4 * look.dpmm / look.stretch)
        total = max(sum(heights) + 2 * blank, round(look.height * look.dpmm / look.stretch))
        image = Image.new("L", (self.width, total), 255)
        pen = ImageDraw.Draw(image)
        pen.fontmode = "1" if look.dots > 1 else "L"
        at = blank
        for piece, height in zip(placed, heights, strict=True):
            self._put(image, pen, piece, at, height)
            at += height
        return self._printed(np.asarray(image))

    def _printed(self, grey):
        look = self.look
        if look.dots > 1:
            return self._needles(grey), look.dpmm * look.dots
        if look.stretch != 1:
            size = (grey.shape[1], round(grey.shape[0] * look.stretch))
            grey = cv2.resize(grey, size, interpolation=cv2.INTER_CUBIC)
        if look.dots == 1:
            grey = np.where(grey < 150, 0, 255).astype(np.uint8)
        return grey, look.dpmm

    def _needles(self, grey):
        """Every dot as the round mark of a needle."""
        dots = self.look.dots
        axis = np.arange(dots) - (dots - 1) / 2
        distance = np.hypot(axis[:, None], axis[None, :])
        mark = np.clip((distance - dots * 0.42) * 1.2, 0, 1)
        ink = (grey < 128).astype(np.float32)
        drawn = 1 - np.kron(ink, 1 - mark.astype(np.float32))
        return (drawn * 255).astype(np.uint8)

    def _font(self, row):
        name = self.look.bold if row.bold else self.look.regular
        return font(name, max(round(self.look.size * self.look.dpmm * row.size), 5))

    def _width(self, row, text):
        return self._font(row).getlength(_unglued(text)) / self.inner

    def _span(self, row, cell):
        width = self._width(row, cell.text)
        start = {"l": cell.x, "r": cell.x - width, "m": cell.x - width / 2}[cell.at]
        return start, start + width

    def _fit(self, element):
        """The element as rows in which nothing runs into another thing or off the paper."""
        if not isinstance(element, Row):
            return [element]
        row = replace(element, cells=tuple(cell for cell in element.cells if cell.text))
        if len(row.cells) == 1:
            return self._fit_alone(row)
        space = self._width(row, "n")
        for index in range(len(row.cells) - 1):
            left, right = row.cells[index], row.cells[index + 1]
            limit = self._span(row, right)[0] - space
            if self._span(row, left)[1] <= limit:
                continue
            cut = self._cut(row, left, limit) if left.give else None
            if cut is None:
                first = replace(row, cells=row.cells[: index + 1])
                return self._fit(first) + self._fit(replace(row, cells=row.cells[index + 1 :]))
            row = replace(row, cells=row.cells[:index] + (cut,) + row.cells[index + 1 :])
        return [row]

    def _cut(self, row, cell, limit):
        text = cell.text
        while len(text) >= 10:
            text = text[:-1]
            cut = replace(cell, text=text.rstrip())
            if self._span(row, cut)[1] <= limit:
                return cut
        return None

    def _fit_alone(self, row):
        """Smaller, if it was larger than the rest; else over several rows."""
        cell = row.cells[0]
        room = 1 - cell.x if cell.at == "l" else 1
        while row.size > 1 and self._width(row, cell.text) > room:
            row = replace(row, size=max(row.size - 0.1, 1))
        if self._width(row, cell.text) <= room or " " not in cell.text:
            return [row]
        words = cell.text.split(" ")
        count = len(words) - 1
        while count > 1 and self._width(row, " ".join(words[:count])) > room:
            count -= 1
        head = replace(cell, text=" ".join(words[:count]))
        tail = replace(cell, text=" ".join(words[count:]))
        return [replace(row, cells=(head,)), *self._fit_alone(replace(row, cells=(tail,)))]

    def _height(self, piece):
        line = self.look.size * self.look.dpmm * self.look.leading
        if isinstance(piece, Row):
            return round(line * piece.size)
        if isinstance(piece, Gap):
            return round(line * piece.height)
        if isinstance(piece, Rule):
            return round(line * (0.5 if piece.kind == "line" else 1))
        return round(line * (4 if isinstance(piece, Bars) else 3))

    def _put(self, image, pen, piece, at, height):
        if isinstance(piece, Row):
            self._put_row(pen, piece, at, height)
        elif isinstance(piece, Rule):
            self._put_rule(pen, piece, at, height)
        elif isinstance(piece, Bars):
            self._put_bars(pen, piece, at, height)
        elif isinstance(piece, Logo):
            self._put_logo(pen, piece, at, height)

    def _put_row(self, pen, row, at, height):
        face = self._font(row)
        if row.shade:
            box = (self.left - 4, at, self.width - self.left + 4, at + height - 1)
            pen.rectangle(box, fill=0 if row.shade == 2 else 222)
        base = at + round(height * 0.76)
        for cell in row.cells:
            place = self.left + round(self._span(row, cell)[0] * self.inner)
            pen.text((place, base), _unglued(cell.text), font=face, fill=255 if row.shade == 2 else 0, anchor="ls")

    def _put_rule(self, pen, rule, at, height):
        start = self.left + round(rule.left * self.inner)
        if rule.kind == "line":
            pen.line(
                (start, at + height // 2, self.left + self.inner, at + height // 2),
                fill=0,
                width=max(round(self.look.dpmm * 0.2), 1),
            )
            return
        row = Row(())
        count = int(self.inner * (1 - rule.left) / max(self._font(row).getlength(rule.kind), 1))
        pen.text((start, at + round(height * 0.76)), rule.kind * count, font=self._font(row), fill=0, anchor="ls")

    def _put_bars(self, pen, bars, at, height):
        step = max(round(self.look.dpmm * 0.33), 1)
        widths = [1 + (int(sign) * 7 + place) % 3 for place, sign in enumerate(bars.digits * 3)]
        across = sum(widths) * step
        x = self.left + (self.inner - across) // 2
        for place, width in enumerate(widths):
            if place % 2 == 0:
                pen.rectangle((x, at, x + width * step - 1, at + round(height * 0.7)), fill=0)
            x += width * step
        face = self._font(Row((), size=0.9))
        pen.text((self.left + self.inner / 2, at + height - 2), bars.digits, font=face, fill=0, anchor="ms")

    def _put_logo(self, pen, logo, at, height):
        rng = np.random.default_rng(logo.seed)
        side = round(height * 0.9)
        x = self.left + round(logo.x * (self.inner - side * 2)) + side // 2
        pen.ellipse((x, at, x + side, at + side), fill=0)
        inset = round(side * 0.2)
        if rng.random() < 0.5:
            pen.polygon(
                [(x + side // 2, at + inset), (x + side - inset, at + side - inset), (x + inset, at + side - inset)],
                fill=255,
            )
        else:
            pen.ellipse((x + inset, at + inset, x + side - inset, at + side - inset), fill=255)
            pen.rectangle((x + side // 2 - inset // 2, at, x + side // 2 + inset // 2, at + side), fill=0)
