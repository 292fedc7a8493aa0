"""Receipts of fuel stations, in several ways, of which each style has its own."""

from decimal import Decimal

import roll
from shops import pick
from ticket import Ticket, at_left, both, middle
from typeset import Cell, Gap, Row, Rule


def _pump(ticket):
    return f"{ticket.writing.word('pump')} {ticket.writing.random('#')}"


def fuel_labelled(ticket):
    """Label and value on a row each."""
    writing, fuel = ticket.writing, ticket.bill.fuel
    label, price = writing.per_unit()
    volume = "Gallons" if fuel.unit == "us-gallon" else writing.word("volume")
    return [
        both(_pump(ticket), writing.text(fuel.name)),
        both(writing.text(volume), writing.volume()),
        both(label, price),
        both(writing.word("amount"), writing.amount(fuel.total)),
    ]


def fuel_one_row(ticket):
    """All of it behind a star: volume, price and amount."""
    writing, fuel = ticket.writing, ticket.bill.fuel
    _, price = writing.per_unit()
    per = "gal" if fuel.unit == "us-gallon" else "l"
    price = f"{price}p/{per}" if writing.pence else f"{price}/{per}"
    line = ticket.bill.lines[0]
    return [
        at_left(f"*{_pump(ticket)}  {writing.text(fuel.name)}"),
        both(f" {writing.volume()} x {price}", ticket.price(line)),
    ]


def fuel_table(ticket):
    """Heads in one row, values beneath them."""
    writing, fuel = ticket.writing, ticket.bill.fuel
    label, price = writing.per_unit()
    volume = writing.text("Gallons") if fuel.unit == "us-gallon" else writing.word("volume")
    places = ((0, "l"), (0.42, "r"), (0.72, "r"), (1, "r"))
    heads = (writing.word("pump"), volume, label, writing.word("amount"))
    values = (writing.random("0#"), writing.decimal(fuel.volume), price, writing.amount(fuel.total))
    rows = [middle(writing.text(fuel.name), bold=True)]
    for texts in (heads, values):
        rows.append(Row(tuple(Cell(text, x, at) for text, (x, at) in zip(texts, places, strict=True))))
    return rows


def fuel_stacked(ticket):
    """Each value in large figures under its label."""
    writing, fuel = ticket.writing, ticket.bill.fuel
    label, price = writing.per_unit()
    volume = writing.text("Gallons") if fuel.unit == "us-gallon" else writing.word("volume")
    rows = [middle(f"{_pump(ticket)} - {writing.text(fuel.name)}"), Gap(0.4)]
    for name, value in (
        (volume, writing.volume()),
        (label, price),
        (writing.word("amount"), writing.amount(fuel.total)),
    ):
        rows += [middle(name, size=0.9), middle(value, size=1.3, bold=True)]
    return rows


STYLES = {"a": (fuel_labelled, fuel_one_row), "b": (fuel_table, fuel_stacked, fuel_labelled)}


def _snacks(ticket):
    rows = []
    for line in ticket.bill.lines[1:]:
        count = f"{line.quantity} x " if line.quantity != Decimal(1) else ""
        rows.append(both(f"{count}{ticket.writing.text(line.text)}", ticket.price(line), give=True))
    return rows


def lay_out(rng, bill, writing, style):
    """A pump receipt: its rows, and its ticket."""
    ways = roll.STYLES[style]
    ticket = Ticket(rng, bill, writing)
    meta = pick(rng, ways["metas"])
    rows = [*pick(rng, ways["heads"])(ticket), *meta(ticket), *pick(rng, STYLES[style])(ticket), *_snacks(ticket)]
    if bill.odometer:
        label, count = writing.odometer()
        rows.append(both(label, count))
    rows += pick(rng, ways["totals"])(ticket)
    rows += [*roll.payment(ticket), *roll.taxes(ticket, ways["taxes"])]
    if rng.random() < 0.3:
        rows += [Rule("-"), at_left(f"{writing.word('plate')} {writing.random('@@ ### @')}")]
    return rows + roll.foot(ticket, day_here=meta is roll.meta_below), ticket
