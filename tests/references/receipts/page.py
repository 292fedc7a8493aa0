"""Invoices on a page of about A5, with a table of lines; each style has its own."""

import roll
from shops import pick
from ticket import Ticket, at_left, both, middle
from typeset import Cell, Gap, Logo, Row, Rule, glued

# Where the columns of the table stand: number, description, quantity, price, amount.
COLUMNS = {
    "number first": ((0.0, "l"), (0.25, "l"), (0.7, "r"), (0.85, "r"), (1.0, "r")),
    "text first": ((0.42, "l"), (0.0, "l"), (0.72, "r"), (0.86, "r"), (1.0, "r")),
    "quantity first": ((0.1, "l"), (0.36, "l"), (0.05, "r"), (0.85, "r"), (1.0, "r")),
}


def head_sides(ticket):
    """The shop at the left, what the invoice is at the right."""
    writing, bill = ticket.writing, ticket.bill
    invoice = f"{writing.word('invoice no')} {writing.random('20##-####')}"
    return [
        Row((Cell(ticket.name, 0), Cell(writing.word("invoice"), 1, "r")), size=1.45, bold=True),
        both(ticket.street, invoice),
        both(ticket.town, f"{writing.word('date')}: {writing.day(bill.day)}"),
        both(f"{writing.word('phone')} {ticket.phone}", ticket.tax_number),
        Rule("line"),
        Gap(0.6),
    ]


def head_letter(ticket):
    """A letterhead in the middle, then a block of labels and values."""
    writing, bill = ticket.writing, ticket.bill
    rows = [Logo(int(ticket.rng.integers(99)), 0.0)] if ticket.rng.random() < 0.5 else []
    rows += [
        middle(ticket.name, size=1.8, bold=True),
        middle(f"{ticket.street} · {ticket.town} · {ticket.phone}", size=0.85),
        Rule("line"),
        Gap(),
        at_left(writing.word("invoice"), size=1.4, bold=True),
    ]
    pairs = (
        (writing.word("invoice no"), writing.random("RF####")),
        (writing.word("date"), writing.day(bill.day)),
        (writing.word("customer"), writing.random("K-####")),
    )
    return [*rows, *(Row((Cell(label, 0), Cell(value, 0.3))) for label, value in pairs), Gap()]


def vehicle(ticket):
    """Plate, odometer and now and then the number of the car, which looks like a part number and is none."""
    writing, bill = ticket.writing, ticket.bill
    if not bill.odometer:
        return []
    label, count = writing.odometer()
    plate = f"{writing.word('plate')}: {writing.random('@@ ## @@@')}"
    rows = (
        [both(plate, f"{label}: {count}")]
        if ticket.rng.random() < 0.5
        else [at_left(plate), at_left(f"{label} {count}")]
    )
    if ticket.rng.random() < 0.4:
        rows.append(at_left(f"VIN {writing.random('ZZZZZZ##Z@@######')}"))
    return [*rows, Gap(0.6)]


def table(ticket, shaded):
    """The table, its rows on grey in turn if `shaded`, else between lines."""
    writing = ticket.writing
    columns = COLUMNS[pick(ticket.rng, tuple(COLUMNS))]
    heads = [writing.word(key) for key in ("article", "description", "quantity", "unit price", "amount")]
    rows = [_columns(heads, columns, bold=True, shade=2 if shaded and ticket.rng.random() < 0.5 else 0), Rule("line")]
    for place, line in enumerate(ticket.bill.lines):
        unit = f" {writing.word('hours')}" if line.kind == "labour" and columns is COLUMNS["text first"] else ""
        texts = [
            glued(line.number or ""),
            writing.described(line),
            ticket.count(line) + unit,
            writing.amount(line.each, "bare"),
            ticket.price(line),
        ]
        rows.append(_columns(texts, columns, shade=1 if shaded and place % 2 == 0 else 0))
        if not shaded and ticket.rng.random() < 0.3:
            rows.append(Gap(0.2))
    return [*rows, Rule("line")]


def _columns(texts, columns, **how):
    cells = [
        Cell(text, x, at, give=place == 1) for place, (text, (x, at)) in enumerate(zip(texts, columns, strict=True))
    ]
    return Row(tuple(sorted(cells, key=lambda cell: cell.x)), **how)


def totals_right(ticket):
    """Net, taxes and total in a block at the right."""
    writing, bill = ticket.writing, ticket.bill
    name = writing.text(writing.tax_name)
    pairs = []
    if bill.net:
        pairs.append((writing.word("net"), writing.amount(sum(line.total for line in bill.lines))))
        pairs += [(f"{name} {writing.decimal(rate)} %", writing.amount(tax)) for rate, _, tax in bill.taxes]
    if bill.rounding:
        pairs.append((writing.word("rounding"), writing.amount(bill.rounding, "bare")))
    rows = [Row((Cell(label, 0.5), Cell(amount, 1, "r"))) for label, amount in pairs]
    label, amount = writing.total_pair("invoice total")
    rows += [Rule("line", 0.5), Row((Cell(label, 0.5), Cell(amount, 1, "r")), size=1.15, bold=True)]
    if not bill.net:
        including = writing.word("including")
        rows += [
            Row((Cell(f"{including} {name} {writing.decimal(rate)}%", 0.5), Cell(writing.amount(tax), 1, "r")))
            for rate, _, tax in bill.taxes
        ]
    return rows


def totals_across(ticket):
    """One row of heads over one of amounts for each rate, then the total across the page."""
    writing, bill = ticket.writing, ticket.bill
    name = writing.text(writing.tax_name)
    places = ((0, "l"), (0.45, "r"), (0.75, "r"))
    rows = [Gap(0.5), _placed((writing.word("rate"), writing.word("net short"), name), places, bold=True)]
    for rate, net, tax in bill.taxes:
        texts = (f"{writing.decimal(rate)} %", writing.amount(net, "bare"), writing.amount(tax, "bare"))
        rows.append(_placed(texts, places))
    if bill.rounding:
        rows.append(both(writing.word("rounding"), writing.amount(bill.rounding, "bare")))
    label, amount = writing.total_pair("invoice total")
    return [*rows, Gap(0.5), both(label, amount, size=1.3, bold=True, shade=1)]


def _placed(texts, places, **how):
    return Row(tuple(Cell(text, x, at) for text, (x, at) in zip(texts, places, strict=True)), **how)


def foot(ticket):
    writing, rng = ticket.writing, ticket.rng
    rows = [Gap(1.2)]
    if rng.random() < 0.5:
        rows.append(at_left(f"{writing.word('due')}: {writing.soon(10, 31)}"))
    if ticket.bill.shop.kind == "workshop" and rng.random() < 0.4:
        rows.append(at_left(f"{writing.word('next test')}: {writing.soon(90, 700)}"))
    rows.append(middle(writing.word("thanks"), size=0.9))
    return [*rows, both(ticket.tax_number, writing.word("page"), size=0.85)]


STYLES = {"a": (head_sides, False, totals_right), "b": (head_letter, True, totals_across)}


def lay_out(rng, bill, writing, style):
    """An invoice: its rows, and its ticket."""
    head, shaded, totals = STYLES[style]
    ticket = Ticket(rng, bill, writing)
    roll.give_numbers(rng, bill, labelled=True)
    rows = [*head(ticket), *vehicle(ticket), *table(ticket, shaded), Gap(0.5), *totals(ticket)]
    return rows + foot(ticket), ticket
