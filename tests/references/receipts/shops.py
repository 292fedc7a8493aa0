"""Shops that do not exist, in ten countries, and how receipts are written there.

Names, streets and numbers are made up to be plainly invented. Tax rates, the shapes of VAT numbers and the ways to
write a date or an amount are from memory; a reader is held against what is printed, so a wrong rate would not move a
result."""

from dataclasses import dataclass

KINDS = ("counter", "workshop", "fuel")


@dataclass(frozen=True)
class Country:
    """How receipts are written in one country."""

    currency: str  # ISO 4217
    sign: str  # what stands for the currency beside an amount; its code is used as well
    styles: tuple  # how an amount may stand with its currency
    decimal: str
    group: str
    days: (
        tuple  # how a day may be written: strftime, with %B and %b in the language of the receipt and %E without zero
    )
    clock: tuple
    tax: tuple  # names of the tax
    rates: tuple  # percent: the standard one, then the one for food
    added: bool  # the tax is added to the prices, not within them
    tax_number: tuple  # label and shape of the number under which a shop pays its tax
    phone: str
    town: tuple  # shape of a post code, and towns
    unit: str  # of the odometer
    cash_step: int  # minor units to which a total is rounded


SLASHED = ("%d/%m/%Y", "%d/%m/%Y", "%d/%m/%y")
DOTTED = ("%d.%m.%Y", "%d.%m.%Y", "%d.%m.%y")
AFTER = ("after", "code after", "code before")
CLOCK = ("%H:%M", "%H:%M:%S")
EURO = "€"

COUNTRIES = {
    "GB": Country(
        "GBP",
        "£",
        ("before", "before", "bare"),
        ".",
        ",",
        (*SLASHED, "%d %b %Y", "%E %B %Y", "%d-%b-%y"),
        CLOCK,
        ("VAT",),
        ("20", "0"),
        False,
        ("VAT No", "GB ### #### ##"),
        "01632 960###",
        ("ZZ# #QQ", ("Muddlecombe", "Nether Wibble", "Gristleford")),
        "mi",
        1,
    ),
    "IE": Country(
        "EUR",
        EURO,
        ("before", "before", "bare", "code after"),
        ".",
        ",",
        (*SLASHED, "%d-%m-%Y", "%d %b %Y"),
        CLOCK,
        ("VAT",),
        ("23", "13.5"),
        False,
        ("VAT Reg No", "IE#######@"),
        "020 912 ####",
        ("X## Q###", ("Ballynowhere", "Kilmadeup", "Inishfib")),
        "km",
        1,
    ),
    "US": Country(
        "USD",
        "$",
        ("before", "before", "bare"),
        ".",
        ",",
        ("%m/%d/%Y", "%m/%d/%Y", "%m/%d/%y", "%b %d, %Y", "%m-%d-%Y"),
        ("%I:%M %p", "%H:%M"),
        ("Sales Tax", "TAX"),
        ("7.25", "0"),
        True,
        ("Tax ID", "00-#######"),
        "(555) 555-01##",
        ("000##", ("Nowhere Falls, OH", "Lostbolt, TX", "Fakeport, OR")),
        "mi",
        1,
    ),
    "DE": Country(
        "EUR",
        EURO,
        AFTER,
        ",",
        ".",
        (*DOTTED, "%E. %B %Y"),
        CLOCK,
        ("MwSt", "USt", "MwSt."),
        ("19", "7"),
        False,
        ("USt-IdNr.", "DE#########"),
        "030 23125 ###",
        ("0#0##", ("Krummenquell", "Niederschwindel", "Irgendhausen")),
        "km",
        1,
    ),
    "AT": Country(
        "EUR",
        EURO,
        ("code before", "before", "after"),
        ",",
        ".",
        DOTTED,
        CLOCK,
        ("USt", "MwSt"),
        ("20", "10"),
        False,
        ("UID", "ATU########"),
        "0999 55 ## ##",
        ("00##", ("Oberschnapsdorf", "Hinterdunst", "Sankt Erfunden")),
        "km",
        1,
    ),
    "CH": Country(
        "CHF",
        "Fr.",
        ("code before", "code before", "code after", "before"),
        ".",
        "'",
        (*DOTTED, "%E. %B %Y"),
        CLOCK,
        ("MWST",),
        ("8.1", "2.6"),
        False,
        ("MWST-Nr.", "CHE-###.###.### MWST"),
        "099 555 ## ##",
        ("00##", ("Hinterwyl am Nirgends", "Nullikon", "Luftingen")),
        "km",
        5,
    ),
    "CHF": Country(
        "CHF",
        "Fr.",
        ("code before", "code after", "before"),
        ".",
        "'",
        (*DOTTED, "%E %B %Y"),
        CLOCK,
        ("TVA",),
        ("8.1", "2.6"),
        False,
        ("No TVA", "CHE-###.###.### TVA"),
        "099 555 ## ##",
        ("00##", ("Sornetaz-le-Faux", "Nullens", "Val-Songe")),
        "km",
        5,
    ),
    "FR": Country(
        "EUR",
        EURO,
        ("after", "after", "code after"),
        ",",
        " ",
        (*SLASHED, "%E %B %Y", "%d-%m-%Y"),
        CLOCK,
        ("TVA",),
        ("20", "5.5"),
        False,
        ("TVA intracom.", "FR## #########"),
        "01 99 00 ## ##",
        ("000##", ("Saint-Nulle-Part", "Faussy-sur-Rien", "Brumevieille")),
        "km",
        1,
    ),
    "BE": Country(
        "EUR",
        EURO,
        ("after", "code after", "code before"),
        ",",
        ".",
        (*SLASHED, "%d-%m-%Y"),
        CLOCK,
        ("TVA",),
        ("21", "6"),
        False,
        ("TVA", "BE 0###.###.###"),
        "099 55 ## ##",
        ("00##", ("Nullebois", "Vaguemont", "Imagines-la-Neuve")),
        "km",
        1,
    ),
    "LU": Country(
        "EUR",
        EURO,
        ("after", "code after"),
        ",",
        ".",
        (*SLASHED, "%d.%m.%Y"),
        CLOCK,
        ("TVA",),
        ("17", "3"),
        False,
        ("No TVA", "LU########"),
        "00 55 ## ##",
        ("L-00##", ("Faussembourg", "Nirgelange")),
        "km",
        1,
    ),
    "ES": Country(
        "EUR",
        EURO,
        ("after", "code after", "bare"),
        ",",
        ".",
        (*SLASHED, "%d-%m-%Y", "%E de %B de %Y"),
        CLOCK,
        ("IVA",),
        ("21", "10"),
        False,
        ("NIF", "B########"),
        "900 55# ###",
        ("000##", ("Villaninguna", "Pueblo Falso de la Nada", "Quiméricos")),
        "km",
        1,
    ),
}


@dataclass(frozen=True)
class Shop:
    """One shop. `legal` is its legal form; a receipt may leave it out, or set it on a line of its own."""

    country: str
    language: str
    kind: str
    style: str
    name: str
    legal: str
    street: str


def _table(text):
    return tuple(Shop(*(cell.strip() for cell in row.split("|"))) for row in text.strip().splitlines())


SHOPS = _table("""
GB|en|counter|a|Gribbleworth Motor Factors|Ltd|14 Sprocket Yard
US|en|workshop|a|Honest Ned's Imaginary Auto Repair|LLC|2200 Gasket Blvd
DE|de|fuel|a|Tankstelle Wolkenheim|e.K.|Zapfweg 3
AT|de|counter|a|Schraubenreich Erfinder|GmbH|Muttergasse 9
FR|fr|workshop|a|Garage du Piston Rêveur|SARL|7 rue de la Bielle
BE|fr|fuel|a|Station Nullebois|SRL|Chaussée du Vide 112
ES|es|counter|a|Recambios Quimera|S.L.|Calle de la Biela 21
CH|de|workshop|a|Garage Luftibus|AG|Kolbenstrasse 17
IE|en|fuel|a|Ballynowhere Filling Station|Ltd|The Long Lane
CHF|fr|counter|a|Pièces Auto du Val-Songe|Sàrl|Rue du Boulon 4
GB|en|workshop|a|Plumstock & Daughter Garage||Unit 6, Old Crankshaft Works
US|en|fuel|a|Lostbolt Gas & Go||901 Tumbleweed Rd
DE|de|counter|a|Autoteile Krummenquell|GmbH & Co. KG|Ritzelstraße 44
AT|de|workshop|a|Werkstatt Nockenwellner|KG|Ölweg 2
FR|fr|fuel|a|Relais des Brumes|SAS|Route de Nulle Part
BE|fr|counter|a|Comptoir de la Rotule|SRL|Rue du Ressort 30
ES|es|workshop|a|Taller Hermanos Inventados|S.L.|Avenida del Cárter 8
CH|de|fuel|a|Tankstopp Nullikon|GmbH|Hauptstrasse 1
IE|en|counter|a|Fibber Auto Spares||2 Camshaft Row
LU|fr|workshop|a|Atelier Faussembourg|S.à r.l.|Impasse du Joint 5
GB|en|fuel|a|Dithering Lane Service Station||Dithering Lane
US|en|counter|a|Fakeport Parts Depot|Inc.|77 Flywheel Ave
DE|de|workshop|a|Kfz-Meisterbetrieb Schwindelmann|e.K.|Am Unterboden 12
AT|de|fuel|a|Zapfsäule Hinterdunst||Bundesstraße 0
FR|fr|counter|a|Comptoir Pièces Chimère|SARL|18 avenue du Carter
ES|es|fuel|a|Estación Villaninguna|S.A.|Carretera N-000, km 7
CH|de|counter|a|Ersatzteil-Stübli Nirgends||Achsweg 11
IE|en|workshop|a|Kilmadeup Motor Works|Ltd|Tappet Road
LU|fr|fuel|a|Station Nirgelange||Route des Songes 40
CHF|fr|workshop|a|Garage Nulletaz|SA|Chemin du Moyeu 3
GB|en|counter|b|Wibble Bros Car Spares|Ltd|3a Tappet Street
US|en|fuel|b|Milepost Zero Fuel||Hwy 0 & Phantom Rd
DE|de|workshop|b|Autohaus Niederschwindel|GmbH|Getriebering 5
FR|fr|counter|b|L'Écrou Imaginaire|SARL|3 place du Vilebrequin
ES|es|workshop|b|Mecánica Don Nadie|S.L.|Calle del Pistón 13
AT|de|fuel|b|Tankinsel Sankt Erfunden|OG|Nebelstraße 77
CH|de|counter|b|Teilelager Luftingen|AG|Bolzenweg 6
BE|fr|workshop|b|Garage Imagines|SRL|Rue de la Courroie 9
IE|en|fuel|b|Inishfib Pumps||Pier Road
US|en|counter|b|Two Left Wrenches Auto Parts|LLC|410 Washer St
GB|en|workshop|b|Gristleford Tyre & Exhaust|Ltd|9 Manifold Mews
DE|de|fuel|b|Sprithof Irgendhausen|GmbH|Bundesstraße 00
FR|fr|workshop|b|Atelier Mirage Automobile|EURL|22 rue du Radiateur
ES|es|fuel|b|Gasolinera La Fantasía|S.L.|Polígono Cero, nave 2
AT|de|counter|b|Teilestadl Dunstinger|GmbH|Splintweg 15
CHF|fr|fuel|b|Relais Sornetaz|Sàrl|Route Cantonale 0
BE|fr|counter|b|Pièces Vaguemont|SA|Avenue du Piston 61
IE|en|workshop|b|Madeup & Sons Garage||Cross of Nowhere
LU|fr|counter|b|Dépôt Songeur Pièces|S.à r.l.|Rue de l'Essieu 2
US|en|workshop|b|Phantom Creek Garage|LLC|5150 Dipstick Dr
GB|en|fuel|b|Wobbly Bridge Fuels|Ltd|Wobbly Bridge Hill
DE|de|counter|b|Ersatzteile Windig & Sohn|oHG|Keilriemengasse 8
FR|fr|fuel|b|Station du Faux Col||Col du Mensonge
ES|es|counter|b|Repuestos El Tornillo Soñado|S.L.|Plaza del Embrague 4
AT|de|workshop|b|Kfz-Technik Traumhuber|GmbH|Federweg 21
""")


def of_style(style):
    """The shops of one style, in the order in which a corpus goes through them."""
    return tuple(shop for shop in SHOPS if shop.style == style)


def shaped(rng, shape):
    """A text of the given shape: `#` is a digit, `@` a letter, all else stands as it is."""
    letters = "ABCDEFGHJKLMNPRSTUVWXYZ"
    drawn = {"#": lambda: str(rng.integers(10)), "@": lambda: letters[rng.integers(len(letters))]}
    return "".join(drawn[sign]() if sign in drawn else sign for sign in shape)


def pick(rng, choices):
    """One of `choices`, all as likely."""
    return choices[int(rng.integers(len(choices)))]
