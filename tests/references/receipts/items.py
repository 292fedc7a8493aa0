"""Ways to set the lines of a receipt on a roll: where the number stands, where the quantity and the price."""

from ticket import at_left, both
from typeset import Cell, Gap, Row, Rule, glued


def number_below(ticket):
    writing, rows = ticket.writing, []
    for line in ticket.bill.lines:
        if line.quantity != 1:
            rows.append(at_left(f"{ticket.count(line)} x {writing.amount(line.each)}", 0.05))
        rows.append(both(writing.described(line), ticket.price(line), give=True))
        if line.number:
            rows.append(at_left(ticket.number(line), 0.05))
    return rows


def number_before(ticket):
    writing, rows = ticket.writing, []
    for line in ticket.bill.lines:
        if line.number:
            rows.append(at_left(ticket.number(line)))
        rows.append(at_left(writing.described(line)))
        count = f"{ticket.count(line)} {writing.word('hours' if line.kind == 'labour' else 'each')}"
        rows.append(both(f"  {count} x {writing.amount(line.each)}", ticket.price(line)))
    return rows


def inline(ticket):
    """The number in front of the description, or behind it, on the same row."""
    writing, rows, before = ticket.writing, [], ticket.rng.random() < 0.5
    for line in ticket.bill.lines:
        text = writing.described(line)
        if line.number:
            text = f"{glued(line.number)} {text}" if before else f"{text} {glued(line.number)}"
        rows.append(both(text, ticket.price(line), give=before or not line.number))
        if line.quantity != 1:
            rows.append(at_left(f"{ticket.count(line)} @ {writing.amount(line.each)}", 0.1))
    return rows


def columns(ticket):
    writing = ticket.writing
    head = (
        Cell(writing.word("quantity"), 0),
        Cell(writing.word("description"), 0.14),
        Cell(writing.word("amount"), 1, "r"),
    )
    rows = [Row(head), Rule(ticket.rule)]
    for line in ticket.bill.lines:
        cells = (
            Cell(ticket.count(line), 0),
            Cell(writing.described(line), 0.14, give=True),
            Cell(ticket.price(line), 1, "r"),
        )
        rows.append(Row(cells))
        if line.number:
            rows.append(at_left(ticket.number(line), 0.14))
    return rows


def numbered(ticket):
    writing, rows = ticket.writing, []
    for place, line in enumerate(ticket.bill.lines, 1):
        rows.append(at_left(f"{place}) {writing.described(line)}"))
        if line.number:
            rows.append(at_left(f"{writing.word('article')} {glued(line.number)}", 0.08))
        rows.append(both(f"   {ticket.count(line)} x {writing.amount(line.each)} =", ticket.price(line)))
        rows.append(Gap(0.3))
    return rows


def dotted(ticket):
    writing, rows = ticket.writing, []
    for line in ticket.bill.lines:
        text = writing.described(line)
        text = f"{ticket.count(line)} {text}" if line.quantity != 1 else text
        rows.append(both(f"{text} {'.' * max(26 - len(text), 3)}", ticket.price(line), give=True))
        if line.number:
            rows.append(Row((Cell(f"({glued(line.number)})", 0.04),), size=0.9))
    return rows


def number_and_price(ticket):
    """The description on a row of its own, then number, quantity and price on one."""
    writing, rows = ticket.writing, []
    for line in ticket.bill.lines:
        rows.append(at_left(writing.described(line), bold=True))
        count = f"{ticket.count(line)}x"
        rows.append(
            Row((Cell(glued(line.number or ""), 0.03), Cell(count, 0.7, "r"), Cell(ticket.price(line), 1, "r")))
        )
    return rows


def bar_coded(ticket):
    """A thirteen-figure article code of the shop under each line, which is no part number."""
    writing, rows = ticket.writing, []
    for line in ticket.bill.lines:
        rows.append(both(writing.described(line), ticket.price(line), give=True))
        if line.kind in ("part", "supply"):
            rows.append(at_left(writing.random("200##########"), 0.04))
        if line.number:
            rows.append(at_left(f"{writing.word('article')} {glued(line.number)}", 0.04))
        if line.quantity != 1:
            rows.append(at_left(f"{ticket.count(line)} x {writing.amount(line.each)}", 0.04))
    return rows
