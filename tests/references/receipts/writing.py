"""How one till writes: which words it uses for a thing, how it writes days, amounts and counts, and in what
letters."""

import datetime
import unicodedata

from shops import pick, shaped
from terms import MONTHS, WORDS
from typeset import glued

PLAIN = str.maketrans(
    {"ä": "ae", "ö": "oe", "ü": "ue", "Ä": "Ae", "Ö": "Oe", "Ü": "Ue", "ß": "ss", "œ": "oe", "º": "o", "’": "'"}
)


class Writing:
    """The habits of one till, drawn once for a receipt. `bare`: its printer has no letters beyond ASCII."""

    def __init__(self, rng, bill, bare=False, upper=False):
        self.rng, self.bill, self.bare, self.upper = rng, bill, bare, upper
        self.country, self.language = bill.country, bill.shop.language
        self._said = {}
        self.day_format = "%Y-%m-%d" if rng.random() < 0.06 else pick(rng, self.country.days)
        self.clock_format = pick(rng, self.country.clock)
        self.total_style = pick(rng, self.country.styles)
        self.line_style = "bare" if rng.random() < 0.7 else pick(rng, self.country.styles)
        self.grouped = rng.random() < 0.7
        self.tax_name = pick(rng, self.country.tax)
        self.marked = rng.random() < 0.3
        self.pence = self.country.currency == "GBP" and rng.random() < 0.4

    def text(self, text):
        """The text in the letters that this till has."""
        if self.bare:
            text = unicodedata.normalize("NFKD", text.translate(PLAIN)).encode("ascii", "ignore").decode()
        return text.upper() if self.upper else text

    def word(self, key):
        """What this till says for `key`, always the same on one receipt."""
        if key not in self._said:
            self._said[key] = pick(self.rng, WORDS[self.language][key])
        return self.text(self._said[key])

    def amount(self, minor, style=None):
        """An amount, by default as it stands on a line; with its currency unless the style is bare."""
        sign = "-" if minor < 0 else ""
        whole, cents = divmod(abs(minor), 100)
        whole = f"{whole:,}".replace(",", self.country.group if self.grouped else "")
        figures = f"{whole}{self.country.decimal}{cents:02}"
        style = style or self.line_style
        code = self.country.currency
        mark = code if self.bare and not self.country.sign.isascii() else self.country.sign
        gap = " " if len(mark) > 1 else ""
        return {
            "bare": f"{sign}{figures}",
            "before": f"{sign}{mark}{gap}{figures}",
            "after": f"{sign}{figures} {mark}",
            "code before": f"{code} {sign}{figures}",
            "code after": f"{sign}{figures} {code}",
        }[style]

    def total_pair(self, key="total"):
        """The label of the total and its amount; the currency stands with one of the two."""
        label = self.word(key)
        amount = self.amount(self.bill.total, self.total_style)
        return (f"{label} {self.country.currency}" if self.total_style == "bare" else label), amount

    def decimal(self, text):
        """A decimal number, whose point may be a comma here."""
        return str(text).replace(".", self.country.decimal)

    def count(self, number):
        """A whole number, in groups of three where this till groups."""
        return f"{number:,}".replace(",", self.country.group if self.grouped else "")

    def day(self, day):
        months = MONTHS[self.language].split()
        name = months[day.month - 1]
        form = self.day_format.replace("%E", str(day.day)).replace("%B", name).replace("%b", name[:3])
        return glued(self.text(day.strftime(form)))

    def time(self):
        return self.bill.time.strftime(self.clock_format)

    def soon(self, low, high):
        """A later day, such as the last day of a return or of a payment."""
        return self.day(self.bill.day + datetime.timedelta(days=int(self.rng.integers(low, high))))

    def mark(self, line):
        """A letter for the tax rate after an amount, where this till sets one."""
        if not self.marked:
            return ""
        return " T" if self.country.added else " " + "AB"[line.rate]

    def described(self, line):
        return self.word(line.kind) if line.kind in ("discount", "deposit") else self.text(line.text)

    def per_unit(self):
        """Label and amount of the price for a litre or a gallon."""
        price, code = self.bill.fuel.price, self.country.currency
        if self.pence:
            return self.text("Pence per litre"), f"{price[2:5]}.{price[5:]}" if price[0] == "0" else self._pence(price)
        gallons = self.bill.fuel.unit == "us-gallon"
        label = self.text("Price/Gal" if gallons else pick(self.rng, WORDS[self.language]["per unit"]))
        figures = self.decimal(price)
        bare = self.bare or self.rng.random() < 0.4
        return label, pick(self.rng, (figures, f"{code} {figures}" if bare else f"{self.country.sign}{figures}"))

    @staticmethod
    def _pence(price):
        pounds, thousandths = price.split(".")
        digits = str(int(pounds + thousandths))
        return f"{digits[:-1]}.{digits[-1]}"

    def volume(self):
        """Volume with its unit."""
        litres = ("l", "L", "L", "Ltr") if self.language in ("de", "en") else ("L", "l")
        unit = "gal" if self.bill.fuel.unit == "us-gallon" else pick(self.rng, litres)
        return f"{self.decimal(self.bill.fuel.volume)} {self.text(unit)}"

    def odometer(self):
        value, unit = self.bill.odometer
        shown = unit if self.rng.random() < 0.6 else ""
        return self.word("odometer"), f"{self.count(value)} {self.text(shown)}".strip()

    def random(self, shape):
        return shaped(self.rng, shape)

    @property
    def ambiguous(self):
        """Whether the day as written could be read as two days: figures only, and no year in front."""
        day, form = self.bill.day, self.day_format
        figures = "b" not in form.lower() and form[1] != "Y"
        return figures and day.day <= 12 and day.month <= 12 and day.day != day.month
