"""One sale: what was bought, what it came to, and what of it a reader should find. Amounts are in minor units."""

import datetime
from dataclasses import dataclass, field
from decimal import ROUND_HALF_UP, Decimal

import goods
from shops import COUNTRIES, Shop, pick

FIRST, LAST = datetime.date(2022, 1, 3), datetime.date(2026, 5, 30)


def rounded(amount):
    """The nearest whole number of minor units, halves away from zero, as tills round."""
    return int(Decimal(amount).quantize(Decimal(1), ROUND_HALF_UP))


@dataclass
class Line:
    """A line: `each` and `total` in minor units, `rate` the index of its tax rate in the country's rates."""

    text: str
    quantity: Decimal
    each: int
    total: int
    number: str | None = None
    rate: int = 0
    kind: str = "part"


@dataclass
class Fuel:
    """What the pump says: decimals as text, so that their digits are those printed."""

    name: str
    volume: str
    unit: str
    price: str
    total: int


@dataclass
class Bill:
    """A sale as the shop's books have it. `net`: the lines are without tax, which is added at the end."""

    shop: Shop
    day: datetime.date
    time: datetime.time
    lines: list
    net: bool
    taxes: list = field(default_factory=list)  # (percent, net, tax)
    tax_shown: bool = True
    rounding: int = 0
    total: int = 0
    tendered: int | None = None  # None: by card
    fuel: Fuel | None = None
    odometer: tuple | None = None

    @property
    def country(self):
        return COUNTRIES[self.shop.country]

    @property
    def numbers(self):
        return [line.number for line in self.lines if line.number]


def sale(rng, shop, paged):
    """A sale in `shop`; `paged` if it is to be written as an invoice on a page."""
    country = COUNTRIES[shop.country]
    net = shop.kind != "fuel" and (country.added or (paged and rng.random() < 0.7))
    fuel = _fuel(rng, shop, country) if shop.kind == "fuel" else None
    lines = _forecourt(rng, shop, country, fuel) if fuel else _goods(rng, shop, country, net)
    day = FIRST + datetime.timedelta(days=int(rng.integers((LAST - FIRST).days + 1)))
    time = datetime.time(*(int(rng.integers(low, high)) for low, high in ((7, 20), (0, 60), (0, 60))))
    bill = Bill(shop, day, time, lines, net, fuel=fuel)
    _sum_up(bill)
    if not paged and shop.kind != "workshop" and rng.random() < 0.45:
        bill.tendered = _tendered(rng, bill.total)
    if rng.random() < {"workshop": 0.85, "fuel": 0.2, "counter": 0.0}[shop.kind]:
        bill.odometer = (int(rng.integers(8_000, 260_000)), country.unit)
    return bill


def _fuel(rng, shop, country):
    american = shop.country == "US"
    names = goods.FUELS["US" if american else shop.language]
    volume = Decimal(int(rng.integers(4_000, 18_000) if american else rng.integers(900, 6_900)))
    volume = volume.scaleb(-3 if american else -2)
    low, high = {"USD": (2_899, 4_799), "GBP": (1_289, 1_799)}.get(country.currency, (1_399, 2_099))
    price = Decimal(int(rng.integers(low, high)) // 10 * 10 + 9).scaleb(-3)
    unit = "us-gallon" if american else "litre"
    return Fuel(pick(rng, names), str(volume), unit, str(price), rounded(volume * price * 100))


def _forecourt(rng, shop, country, fuel):
    lines = [Line(fuel.name, Decimal(fuel.volume), 0, fuel.total, kind="fuel")]
    for snack in rng.permutation(len(goods.SNACKS))[: pick(rng, (0, 0, 0, 1, 2))]:
        part = goods.SNACKS[snack]
        lines.append(_line(rng, part, shop, country, False, kind="snack"))
    return lines


def _goods(rng, shop, country, net):
    workshop = shop.kind == "workshop"
    lines = []
    if workshop:
        hourly = int(rng.integers(52, 145)) * 100
        for job in rng.permutation(len(goods.LABOUR))[: pick(rng, (1, 1, 2))]:
            hours = Decimal(pick(rng, goods.HOURS))
            text = goods.LABOUR[job].names[shop.language]
            rate = 1 if country.added else 0
            lines.append(Line(text, hours, hourly, rounded(hours * hourly), rate=rate, kind="labour"))
    for part in rng.permutation(len(goods.PARTS))[: pick(rng, (1, 1, 2, 2, 3, 4))]:
        lines.append(_line(rng, goods.PARTS[part], shop, country, net))
    for part in rng.permutation(len(goods.SUPPLIES))[: pick(rng, (0, 1, 1, 2))]:
        lines.append(_line(rng, goods.SUPPLIES[part], shop, country, net, kind="supply"))
    _extras(rng, lines)
    return lines


def _extras(rng, lines):
    """A discount on everything before it, or a deposit for an old unit; most sales have neither."""
    draw = rng.random()
    if draw < 0.12:
        off = rounded(Decimal(sum(line.total for line in lines if line.rate == 0)) / -10)
        lines.append(Line("discount", Decimal(1), off, off, kind="discount"))
    elif draw < 0.2:
        amount = int(pick(rng, (500, 1000, 1500, 4000)))
        lines.append(Line("deposit", Decimal(1), amount, amount, kind="deposit"))


def _line(rng, part, shop, country, net, kind="part"):
    each = goods.price(rng, part, country.currency, net)
    quantity = 1 if rng.random() < 0.45 else int(rng.integers(1, part.most + 1))
    rate = 1 if kind == "snack" and len(country.rates) > 1 else 0
    return Line(part.names[shop.language], Decimal(quantity), each, each * quantity, rate=rate, kind=kind)


def _sum_up(bill):
    """Fills taxes, rounding and total. A pump in the US shows no tax: it is within the price and not told."""
    country, lines = bill.country, bill.lines
    total = sum(line.total for line in lines)
    for index, percent in enumerate(country.rates):
        of_rate = sum(line.total for line in lines if line.rate == index)
        rate = Decimal(percent)
        if not any(line.rate == index for line in lines) or (country.added and (bill.fuel or rate == 0)):
            continue
        tax = rounded(of_rate * rate / 100) if bill.net else rounded(of_rate * rate / (100 + rate))
        bill.taxes.append((percent, of_rate if bill.net else of_rate - tax, tax))
        total += tax if bill.net else 0
    step = country.cash_step
    bill.total = (total + step // 2) // step * step
    bill.rounding = bill.total - total


def _tendered(rng, total):
    """What was handed over: the exact sum, or notes that come to more."""
    if rng.random() < 0.15:
        return total
    note = int(pick(rng, (1000, 2000, 5000)))
    return (total // note + 1) * note


def truth(bill):
    """What a reader should find, as plain values; what depends on the way of writing is added by the drawing."""
    fuel = bill.fuel
    return {
        "country": bill.shop.country,
        "currency": bill.country.currency,
        "total": bill.total,
        "net": bill.net,
        "name": bill.shop.name,
        "rounding": bill.rounding,
        "tax": [tax for _, _, tax in bill.taxes] if bill.tax_shown else [],
        "numbers": bill.numbers,
        "lines": [{"quantity": str(line.quantity), "price": line.total, "number": line.number} for line in bill.lines],
        "fuel": fuel and {"volume": fuel.volume, "unit": fuel.unit, "price": fuel.price, "total": fuel.total},
        "odometer": bill.odometer and {"value": bill.odometer[0], "unit": bill.odometer[1]},
    }
