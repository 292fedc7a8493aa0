"""What is sold: parts with numbers of the shapes that makers use, and goods without a number whose descriptions look
like one. All numbers are drawn at random; only their shapes are those of the trade (common practice, from memory)."""

from dataclasses import dataclass
from decimal import Decimal

from shops import pick, shaped

# Shapes that are known for a part number wherever they stand.
PLAIN = (
    "0#@ ### ### @",
    "A ### ### ## ##",
    "## ## # ### ###",
    "#####-@@@@#",
    "#####-#####",
    "#####-@@@-A0#",
    "@@#G-####-@@",
    "HU #### z",
    "W ####/#",
    "C ## ###",
    "CUK ## ###",
    "0 986 @## ###",
    "F 026 ### ###",
    "@@@@#@-11",
    "P ## ###",
    "13.0###-####.2",
    "VK@@ ####",
    "K######XS",
    "#PK####",
    "########@@",
    "#####-##@0A",
    "@@0#-14-###@",
    "#####@@##@",
    "## ## ### ###",
    "##-#####-##",
    "@@@ ###.###",
    "####.@@",
    "LX ####/#D",
    "5@0 ### ### @@",
)
# Shapes that could be anything; they stand in a column of their own or behind a label.
BARE = ("########", "######", "####-####", "## ### ##", "7700 ### ###")
LETTERED = tuple(shape.replace("z", "x") for shape in PLAIN)


@dataclass(frozen=True)
class Part:
    """A part that has a number, in English, German, French and Spanish, with its price in minor units of a euro."""

    names: dict
    low: int
    high: int
    most: int  # how many are bought at most


def _goods(text):
    table = []
    for row in text.strip().splitlines():
        *names, low, high, most = (cell.strip() for cell in row.split("|"))
        table.append(Part(dict(zip(("en", "de", "fr", "es"), names, strict=True)), int(low), int(high), int(most)))
    return tuple(table)


PARTS = _goods("""
Oil filter|Ölfilter|Filtre à huile|Filtro de aceite|590|1890|1
Air filter|Luftfilter|Filtre à air|Filtro de aire|990|2890|1
Cabin filter|Innenraumfilter|Filtre habitacle|Filtro de habitáculo|1190|3490|1
Fuel filter|Kraftstofffilter|Filtre carburant|Filtro combustible|1490|5490|1
Spark plug|Zündkerze|Bougie d'allumage|Bujía|690|1690|4
Glow plug|Glühkerze|Bougie préchauffage|Calentador|1090|2490|4
Brake pads front|Bremsbeläge vorn|Plaquettes avant|Pastillas freno del.|2990|7990|1
Brake disc|Bremsscheibe VA|Disque de frein|Disco de freno|3290|8990|2
Wiper blade set|Scheibenwischer Satz|Balais essuie-glace|Escobillas limpia|1690|3990|1
V-ribbed belt|Keilrippenriemen|Courroie accessoires|Correa poli-V|1290|3490|1
Timing belt kit|Zahnriemensatz|Kit distribution|Kit distribución|8900|23900|1
Water pump|Wasserpumpe|Pompe à eau|Bomba de agua|3900|11900|1
Thermostat|Thermostat|Thermostat|Termostato|1490|4990|1
Shock absorber rear|Stoßdämpfer HA|Amortisseur AR|Amortiguador tras.|4490|11990|2
Wheel bearing kit|Radlagersatz|Roulement de roue|Kit rodamiento|2990|9990|2
Drop link|Koppelstange|Biellette barre stab.|Bieleta estab.|1190|3290|2
Ignition coil|Zündspule|Bobine d'allumage|Bobina encendido|2690|8990|4
Rocker cover gasket|Ventildeckeldichtung|Joint cache-culbuteurs|Junta tapa balancines|990|3990|1
""")

# Without a number of their own: what stands in them is a grade, a size or a standard.
SUPPLIES = _goods("""
Engine oil 5W-30 C3 5L|Motoröl 5W-30 C3 5 L|Huile 5W-30 C3 5L|Aceite 5W-30 C3 5L|2990|5990|1
Engine oil 0W-20 1L|Motoröl 0W-20 1 L|Huile moteur 0W20 1L|Aceite motor 0W-20 1L|990|1690|5
Bulb H7 12V 55W PX26d|Lampe H7 12V 55W PX26d|Ampoule H7 12V 55W|Lámpara H7 12V 55W|590|1490|2
Bulb PY21W 12V|Blinkerlampe PY21W|Ampoule PY21W 12V|Lámpara PY21W 12V|190|450|2
Brake fluid DOT 4 1L|Bremsflüssigk. DOT 4|Liquide frein DOT 4|Líquido frenos DOT 4|690|1290|1
Coolant conc. 1.5L|Kühlerfrostschutz 1,5L|Liquide refroid. 5L|Anticongelante 50% 5L|890|2190|1
Crush washer M14x1.5|Dichtring A14x20 CU|Joint vidange 14x20|Arandela cobre 14x20|50|190|2
Tyre 205/55 R16 91V|Reifen 205/55 R16 91V|Pneu 205/55 R16 91V|Neumático 205/55 R16|6990|12990|4
Battery 12V 74Ah 680A|Batterie 12V 74Ah 680A|Batterie 12V 74Ah|Batería 12V 74Ah 680A|7990|14990|1
Screenwash -20C 5L|Scheibenfrostsch. -20 5L|Lave-glace -20 5L|Limpiaparabrisas 5L|490|1190|2
Brake cleaner 500ml|Bremsenreiniger 500ml|Nettoyant frein 500ml|Limpia frenos 500ml|290|690|3
""")

LABOUR = _goods("""
Labour: service|Inspektion Arbeit|M.O. révision|M.O. revisión|0|0|1
Fit brakes front|Bremsen vorn ersetzen|M.O. freins avant|M.O. frenos delanteros|0|0|1
Diagnostic check|Fehlerspeicher auslesen|Diagnostic|Diagnosis|0|0|1
Timing belt replacement|Zahnriemen ersetzen|Remplacement distribution|Sustituir distribución|0|0|1
""")
HOURS = ("0.4", "0.5", "0.8", "1", "1.2", "1.5", "2", "2.5", "3.5")

# Beside the fuel; the last number says how many. Taxed at the lower rate where a country has one for food.
SNACKS = _goods("""
Coffee large|Kaffee groß|Café grand|Café grande|220|390|2
Water 0.5L|Wasser 0,5L|Eau 50cl|Agua 50cl|120|250|2
Sandwich cheese|Käsebrötchen|Sandwich fromage|Bocadillo queso|320|590|1
""")

FUELS = {
    "US": ("REGULAR 87", "Unleaded Plus 89", "PREMIUM 93", "DIESEL #2"),
    "en": ("Unleaded E10", "Super Unleaded E5", "DIESEL", "UNL 95"),
    "de": ("Super E10", "Super E5", "Diesel", "Bleifrei 95", "SUPER PLUS 98"),
    "fr": ("SP95-E10", "SP98 E5", "GAZOLE B7", "Diesel B7"),
    "es": ("Gasolina 95 E5", "GASOLEO A", "Diésel B7", "SIN PLOMO 98"),
}


def number(rng, labelled):
    """A part number: of any shape where a label or a column says what it is, else of a shape that tells."""
    shapes = PLAIN + LETTERED
    return shaped(rng, pick(rng, BARE if labelled and rng.random() < 0.2 else shapes))


def price(rng, part, currency, net):
    """A price in minor units, as shops end them; net prices end anyhow."""
    dearer = {"EUR": Decimal(1), "GBP": Decimal("0.9"), "USD": Decimal("1.1"), "CHF": Decimal("1.3")}[currency]
    raw = int(rng.integers(part.low, part.high + 1) * dearer)
    if currency == "CHF":
        return max(raw // 5 * 5, 5)
    if net or raw < 200:
        return raw
    return raw // 100 * 100 + int(pick(rng, (99, 95, 90, 49, 50, 79)))
