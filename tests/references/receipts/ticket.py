"""What all receipts share: rows of one or two texts, and the ticket with what its ways of laying out need."""

from shops import pick
from typeset import Cell, Row, glued


def both(left, right, give=False, **how):
    """A text at the left edge and one at the right."""
    return Row((Cell(left, 0, "l", give), Cell(right, 1, "r")), **how)


def middle(text, **how):
    return Row((Cell(text, 0.5, "m"),), **how)


def at_left(text, indent=0.0, **how):
    return Row((Cell(text, indent),), **how)


class Ticket:
    """What the ways below share: the bill, its writing, and where the printed name of the shop is kept."""

    def __init__(self, rng, bill, writing):
        self.rng, self.bill, self.writing = rng, bill, writing
        self.shop = writing.text(bill.shop.name)
        self.legal = writing.text(bill.shop.legal)
        self.with_legal = bool(self.legal) and rng.random() < 0.5
        post, towns = bill.country.town
        self.street = writing.text(bill.shop.street)
        self.town = writing.text(f"{writing.random(post)} {pick(rng, towns)}")
        if bill.shop.country == "US":
            code, town = self.town.split(" ", 1)
            self.town = f"{town} {code}"
        self.phone = writing.random(bill.country.phone)
        label, shape = bill.country.tax_number
        self.tax_number = writing.text(f"{label}{pick(rng, (' ', ': '))}{writing.random(shape)}")
        self.rule = pick(rng, ("-", "=", "line", "*", "_")) if rng.random() < 0.4 else "-"
        self.label = rng.random() < 0.55

    @property
    def name(self):
        return f"{self.shop} {self.legal}" if self.with_legal else self.shop

    def number(self, line):
        """The part number as it stands: alone, or behind its label."""
        label = f"{self.writing.word('article')}{pick(self.rng, (' ', ': '))}" if self.label else ""
        return label + glued(line.number)

    def price(self, line):
        return self.writing.amount(line.total) + self.writing.mark(line)

    def count(self, line):
        """The quantity as a till writes it."""
        return self.writing.decimal(line.quantity)
