"""Receipts on a roll: heads, totals, taxes and feet in several ways, of which each style has its own."""

from decimal import Decimal

import goods
import items
from shops import pick
from ticket import Ticket, at_left, both, middle
from typeset import Bars, Cell, Gap, Logo, Row, Rule

# Heads.


def head_centred(ticket):
    rows = [Logo(int(ticket.rng.integers(99)))] if ticket.rng.random() < 0.35 else []
    if ticket.rng.random() < 0.25:
        rows.append(middle(ticket.writing.word("welcome")))
    rows.append(middle(ticket.name, size=pick(ticket.rng, (1.0, 1.3, 1.7)), bold=ticket.rng.random() < 0.6))
    return [
        *rows,
        middle(ticket.street),
        middle(ticket.town),
        middle(f"{ticket.writing.word('phone')} {ticket.phone}"),
        middle(ticket.tax_number),
        Gap(),
    ]


def head_left(ticket):
    return [
        at_left(ticket.name, size=1.2, bold=True),
        at_left(f"{ticket.street}, {ticket.town}"),
        at_left(f"{ticket.writing.word('phone')}: {ticket.phone}"),
        at_left(ticket.tax_number),
        Rule(ticket.rule),
    ]


def head_banner(ticket):
    rows = [Row((Cell(ticket.shop, 0.5, "m"),), size=1.4, bold=True, shade=2), Gap(0.3)]
    if ticket.legal:
        rows.append(middle(f"{ticket.legal}"))
    return [*rows, middle(f"{ticket.street} - {ticket.town}"), middle(ticket.tax_number), Rule(ticket.rule)]


def head_wide(ticket):
    rows = [Gap(), middle(ticket.name, size=1.9), Gap(0.4), middle(ticket.town), middle(ticket.street)]
    return [*rows, both(ticket.phone, ticket.tax_number), Rule("line"), Gap(0.4)]


# The receipt's own number, day and hour.


def meta_one_line(ticket):
    writing = ticket.writing
    row = both(writing.day(ticket.bill.day), writing.time())
    return [
        row,
        both(f"{writing.word('receipt no')} {writing.random('0#####')}", writing.word("till")),
        Rule(ticket.rule),
    ]


def meta_labelled(ticket):
    writing = ticket.writing
    return [
        at_left(f"{writing.word('date')}: {writing.day(ticket.bill.day)} {writing.time()}"),
        at_left(f"{writing.word('receipt no')}: {writing.random('####/####')}"),
        at_left(f"{writing.word('served by')}: {writing.word('clerk')}"),
        Gap(),
    ]


def meta_below(ticket):
    """Nothing here: the day stands at the foot."""
    writing = ticket.writing
    return [both(writing.word("served by"), writing.word("clerk")), Rule(ticket.rule)]


def meta_packed(ticket):
    writing = ticket.writing
    first = f"{writing.random('###')}  {writing.day(ticket.bill.day)}  {writing.time()}  {writing.random('#/##')}"
    return [middle(first), Rule(ticket.rule)]


# Totals.


def totals(ticket):
    """What leads from the lines to the total: a subtotal, taxes that are added, a rounding, the total itself."""
    writing, bill = ticket.writing, ticket.bill
    rows = [Rule(ticket.rule)]
    if bill.net or ticket.rng.random() < 0.2:
        rows.append(both(writing.word("subtotal"), writing.amount(sum(line.total for line in bill.lines))))
    if bill.net:
        rows += [
            both(f"{writing.text(writing.tax_name)} {writing.decimal(rate)}%", writing.amount(tax))
            for rate, _, tax in bill.taxes
        ]
    if bill.rounding:
        rows.append(both(writing.word("rounding"), writing.amount(bill.rounding, "bare")))
    large = {"size": pick(ticket.rng, (1.0, 1.3, 1.6)), "bold": ticket.rng.random() < 0.6}
    label, amount = writing.total_pair()
    return [*rows, both(label, amount, **large)]


def totals_boxed(ticket):
    rows = totals(ticket)
    return [*rows[:-1], Rule("="), rows[-1], Rule("=")]


# Taxes within the prices.


def tax_rows(ticket):
    writing, bill = ticket.writing, ticket.bill
    if bill.net:
        return []
    including, name = writing.word("including"), writing.text(writing.tax_name)
    return [both(f"{including} {name} {writing.decimal(rate)}%", writing.amount(tax)) for rate, _, tax in bill.taxes]


def tax_table(ticket):
    writing, bill = ticket.writing, ticket.bill
    if bill.net or not bill.taxes:
        return []
    name = writing.text(writing.tax_name)
    heads = (f"{name} %", writing.word("net short"), name, writing.word("gross short"))
    places = ((0, "l"), (0.45, "r"), (0.7, "r"), (1, "r"))
    rows = [Gap(0.5), Row(tuple(Cell(head, x, at) for head, (x, at) in zip(heads, places, strict=True)))]
    for place, (rate, net, tax) in enumerate(bill.taxes):
        letter = f"{'AB'[place]} " if writing.marked else ""
        texts = [
            f"{letter}{writing.decimal(rate)}%",
            *(writing.amount(sum_, "bare") for sum_ in (net, tax, net + tax)),
        ]
        rows.append(Row(tuple(Cell(text, x, at) for text, (x, at) in zip(texts, places, strict=True))))
    return rows


def taxes(ticket, ways):
    """The taxes in one of the ways; a few tills do not tell what is within the price."""
    bill = ticket.bill
    bill.tax_shown = bill.net or ticket.rng.random() > 0.08
    return pick(ticket.rng, ways)(ticket) if bill.tax_shown else []


def tax_two_rows(ticket):
    """The net on one row, the tax on the next."""
    writing, rows = ticket.writing, []
    if ticket.bill.net:
        return rows
    for rate, net, tax in ticket.bill.taxes:
        rate = f"{writing.decimal(rate)}%"
        rows.append(both(f"{writing.word('net')} {rate}", writing.amount(net)))
        rows.append(both(f"{writing.text(writing.tax_name)} {rate}", writing.amount(tax)))
    return rows


# Payment and foot.


def payment(ticket):
    writing, bill = ticket.writing, ticket.bill
    if bill.tendered is None:
        rows = [both(writing.word("card"), writing.amount(bill.total))]
        if ticket.rng.random() < 0.5:
            rows += [
                at_left(f"**** **** **** {writing.random('####')}"),
                both(f"AUTH {writing.random('######')}", writing.word("approved")),
            ]
        return rows
    rows = [both(writing.word("cash"), writing.amount(bill.tendered))]
    return [*rows, both(writing.word("change"), writing.amount(bill.tendered - bill.total))]


def foot(ticket, day_here=False):
    writing, bill, rng = ticket.writing, ticket.bill, ticket.rng
    rows = [Gap(0.6)]
    if bill.odometer and not bill.fuel:
        label, count = writing.odometer()
        rows += [at_left(f"{label}: {count}"), at_left(f"{writing.word('plate')}: {writing.random('@@ ## @@@')}")]
    if day_here:
        rows.append(
            middle(f"{writing.day(bill.day)} {writing.time()} {writing.random('###')} {writing.random('####')}")
        )
    if rng.random() < 0.25 and not bill.fuel:
        rows.append(middle(f"{writing.word('returns')} {writing.soon(13, 31)}"))
    if rng.random() < 0.25:
        pieces = sum(Decimal(line.quantity) if line.kind in ("part", "supply") else 1 for line in bill.lines)
        rows.append(at_left(f"{writing.word('items')}: {pieces}"))
    rows.append(middle(writing.word("thanks")))
    if rng.random() < 0.3:
        rows += [Gap(0.5), Bars(writing.random("#############"))]
    return rows


STYLES = {
    "a": {
        "heads": (head_centred, head_left),
        "metas": (meta_one_line, meta_labelled),
        "items": (items.number_below, items.number_before, items.inline, items.columns),
        "totals": (totals,),
        "taxes": (tax_rows, tax_table),
    },
    "b": {
        "heads": (head_banner, head_wide, head_centred),
        "metas": (meta_below, meta_packed),
        "items": (items.numbered, items.dotted, items.number_and_price, items.bar_coded),
        "totals": (totals_boxed, totals),
        "taxes": (tax_two_rows, tax_table),
    },
}


def give_numbers(rng, bill, labelled):
    """Draws the numbers of the parts; where nothing says that it is a number, only of shapes that tell."""
    taken = set()
    for line in bill.lines:
        if line.kind != "part":
            continue
        number = goods.number(rng, labelled)
        while number in taken:
            number = goods.number(rng, labelled)
        taken.add(number)
        line.number = number


def lay_out(rng, bill, writing, style):
    """A receipt of a counter or a workshop on a roll: its rows, and its ticket."""
    ways = STYLES[style]
    ticket = Ticket(rng, bill, writing)
    way = pick(rng, ways["items"])
    always = way in (items.numbered, items.bar_coded)
    if way in (items.inline, items.dotted, items.number_and_price):
        ticket.label = False
    give_numbers(rng, bill, always or ticket.label)
    meta = pick(rng, ways["metas"])
    rows = [*pick(rng, ways["heads"])(ticket), *meta(ticket), *way(ticket), *pick(rng, ways["totals"])(ticket)]
    paid, tax = payment(ticket), taxes(ticket, ways["taxes"])
    rows += [*paid, *tax] if rng.random() < 0.5 else [*tax, *paid]
    return rows + foot(ticket, day_here=meta is meta_below), ticket
