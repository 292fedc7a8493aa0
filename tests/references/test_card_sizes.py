"""The card in every size against poppler and two independent readers of squares (ISO/IEC 18004), zxing-cpp and zbar.

Sizes: ISO/IEC 7810 (ID-1), ISO 216 (A4, A5, A6), ANSI/ASME Y14.1 (Letter)."""

import datetime
import json
import re
import subprocess

import pikepdf
import pytest
import zxingcpp
from PIL import Image

import card_photos
from conftest import TODAY, VIEWER, WELLKEPT, wellkept
from test_card import EPOCH, verified

MM = 72 / 25.4
A4, LETTER = (210, 297), (215.9, 279.4)
# Width and height of the card, then of the paper that it lies on.
SIZES = {"id1": (85.6, 53.98), "a6": (105, 148), "a5": (210, 148), "a4": A4}
PAPERS = {
    ("id1", "a4"): A4,
    ("id1", "letter"): LETTER,
    ("a6", "a4"): A4,
    ("a6", "letter"): LETTER,
    ("a5", "a4"): A4[::-1],
    ("a5", "letter"): LETTER[::-1],
}
MANY = 400
LONG = "Großmutters Kombi mit der Anhängerkupplung und Dachgepäckbox"
BACKWARDS = "מכונית Heron"
SHOP = "Hollow Lane Garage"
COST = {"cost": "37.25", "currency": "EUR"}
# From the edge of the card to the mark, and how long the mark is.
CLEAR, LENGTH = 2, 6


def ask(shelf, *requests):
    """The answers of the program under test to requests of its own protocol, one JSON a line."""
    lines = "".join(json.dumps(request) + "\n" for request in requests)
    command = [WELLKEPT, "--shelf", str(shelf), "--today", TODAY, "ask"]
    said = subprocess.run(command, input=lines, capture_output=True, text=True, check=True).stdout
    return [json.loads(line) for line in said.splitlines()]


def visit(at):
    day = datetime.date(2006, 1, 9) + datetime.timedelta(days=18 * at)
    # Engine oil, brake fluid and the look at the tyres, by their numbers in the catalogue.
    items = [{"catalogue": number} for number in (1, 10, 15)[: at % 3 + 1]]
    return {"day": day.isoformat(), "reading": str(1000 + 480 * at), "workshop": SHOP, "items": items, **COST}


@pytest.fixture(scope="session")
def odd(tmp_path_factory):
    """A car with a name of 60 letters and 400 visits, and one without a visit that is named from right to left."""
    shelf = tmp_path_factory.mktemp("odd")
    added = [
        {"ask": "add-vehicle", "vehicle": {"name": name, "engine": "petrol", "unit": "km", "reading": reading}}
        for name, reading in ((LONG, "900"), (BACKWARDS, "12"))
    ]
    book = ask(shelf, *added)[0]["book"]
    written = ask(shelf, *({"ask": "record-visit", "book": book, "visit": visit(at), "keep": True} for at in range(MANY)))
    assert all(answer["answer"] == "written" for answer in written), written[0]
    return shelf


def print_card(where, shelf, name, *options):
    out = where / ("-".join(options).replace("/", "_").replace("--", "") + ".pdf")
    wellkept("--shelf", str(shelf), "--today", TODAY, "--vehicle", name, "card", "--viewer", VIEWER, "--out", str(out), *options)
    return out


@pytest.fixture(scope="session")
def printed(shelf, vehicles, tmp_path_factory):
    """The first car's card in every size on every paper."""
    where = tmp_path_factory.mktemp("sizes")
    wanted = [(size, "own") for size in SIZES] + list(PAPERS) + [("a4", "letter")]
    name = vehicles[0]["name"]
    return {(size, paper): print_card(where, shelf, name, "--size", size, "--paper", paper) for size, paper in wanted}


def pages(pdf):
    """Width and height of every page, in millimetres."""
    info = subprocess.run(["pdfinfo", "-f", "1", "-l", "99", pdf], capture_output=True, text=True, check=True).stdout
    return [(float(w) / MM, float(h) / MM) for w, h in re.findall(r"size:\s+([\d.]+) x ([\d.]+) pts", info)]


def words(pdf, page):
    """Every word of a page with its upper left corner, in millimetres."""
    said = subprocess.run(
        ["pdftotext", "-bbox", "-f", str(page), "-l", str(page), pdf, "-"], capture_output=True, text=True, check=True
    ).stdout
    found = re.findall(r'<word xMin="([\d.]+)" yMin="([\d.]+)"[^>]*>([^<]*)</word>', said)
    return [(text, float(x) / MM, float(y) / MM) for x, y, text in found]


def raster(pdf, page, dpi):
    said = subprocess.run(
        ["pdftoppm", "-r", str(dpi), "-f", str(page), "-l", str(page), "-gray", pdf], capture_output=True, check=True
    ).stdout
    picture = Image.frombytes("L", *header(said))
    return picture


def header(pgm):
    """The size and the pixels of a binary PGM."""
    match = re.match(rb"P5\s+(\d+)\s+(\d+)\s+255\s", pgm)
    return (int(match[1]), int(match[2])), pgm[match.end() :]


@pytest.mark.parametrize("size", SIZES)
def test_the_pages_have_the_size_of_the_card(printed, size):
    for width, height in pages(printed[size, "own"]):
        assert abs(width - SIZES[size][0]) < 0.1 and abs(height - SIZES[size][1]) < 0.1


def test_a_full_page_takes_letter_as_it_is(printed):
    for width, height in pages(printed["a4", "letter"]):
        assert abs(width - LETTER[0]) < 0.1 and abs(height - LETTER[1]) < 0.1


@pytest.mark.parametrize(("size", "paper"), PAPERS)
def test_front_and_back_meet_on_a_larger_paper(printed, size, paper):
    """Each word stands as far from the middle of the paper as it does from the middle of the card."""
    own, laid = printed[size, "own"], printed[size, paper]
    (width, height), (card_width, card_height) = PAPERS[size, paper], SIZES[size]
    assert len(pages(own)) == len(pages(laid))
    lefts = []
    for page, extent in enumerate(pages(laid), 1):
        assert abs(extent[0] - width) < 0.1 and abs(extent[1] - height) < 0.1
        alone, amid = words(own, page), words(laid, page)
        assert len(alone) > 5 and len(amid) > len(alone)
        # The sentence for whoever prints comes first or last, where it lies on the page.
        at = {(text, round(x, 1), round(y, 1)) for text, x, y in amid}
        for text, x, y in alone:
            moved = (x + (width - card_width) / 2, y + (height - card_height) / 2)
            near = [(dx, dy) for other, dx, dy in at if other == text and abs(dx - moved[0]) < 0.15 and abs(dy - moved[1]) < 0.15]
            assert near, (text, moved)
        lefts.append((width - card_width) / 2)
    # Turned about an upright edge, the left of the back is the right of the front.
    assert abs(lefts[1] - (width - card_width - lefts[0])) < 0.1


@pytest.mark.parametrize(("size", "paper"), PAPERS)
def test_the_marks_stand_at_the_corners_of_the_card(printed, size, paper):
    dpi = 600
    px = lambda mm: round(mm * dpi / 25.4)
    (width, height), (card_width, card_height) = PAPERS[size, paper], SIZES[size]
    left, top = (width - card_width) / 2, (height - card_height) / 2
    for page in (1, 2):
        picture = raster(printed[size, paper], page, dpi)
        for y in (top - CLEAR - LENGTH / 2, top + card_height + CLEAR + LENGTH / 2):
            row = [x for x in range(picture.width) if picture.getpixel((x, px(y))) < 128]
            places = {round(x * 25.4 / dpi, 2) for x in row}
            for expected in (left, left + card_width):
                assert any(abs(place - expected) < 0.1 for place in places), (page, y, expected, places)
        for x in (left - CLEAR - LENGTH / 2, left + card_width + CLEAR + LENGTH / 2):
            column = [y for y in range(picture.height) if picture.getpixel((px(x), y)) < 128]
            places = {round(y * 25.4 / dpi, 2) for y in column}
            for expected in (top, top + card_height):
                assert any(abs(place - expected) < 0.1 for place in places), (page, x, expected, places)


# On which page the square stands.
SQUARE = {"id1": 2, "a6": 2, "a5": 1, "a4": 1}


def read_both(pdf, page, dpi, where):
    """What zxing-cpp and zbar read of a page; the same text, or the test fails."""
    picture = raster(pdf, page, dpi)
    found = [code.text for code in zxingcpp.read_barcodes(picture) if code.text.startswith(VIEWER)]
    png = where / "page.png"
    picture.save(png)
    zbar = subprocess.run(["zbarimg", "--quiet", "--raw", png], capture_output=True, text=True, check=True)
    assert found == [zbar.stdout.strip()]
    return found[0]


@pytest.mark.parametrize("dpi", (150, 200, 300))
@pytest.mark.parametrize("size", SIZES)
def test_two_independent_readers_read_the_square_of_every_size(printed, size, dpi, tmp_path):
    texts = {read_both(printed[size, paper], SQUARE[size], dpi, tmp_path) for paper in ("own", "letter")}
    assert len(texts) == 1 and verified(texts.pop())[7] > 10


# The square of the card in the wallet, and the largest there is, which is that of every other size.
@pytest.mark.parametrize("size", ["id1", "a6"])
def test_a_photograph_of_a_tilted_and_stained_card_is_read(printed, size):
    picture = card_photos.render(printed[size, "own"], 2)
    text, place = zxingcpp.read_barcodes(picture)[0].text, card_photos.square_of(picture)
    # At half of every bound: 12.5 degrees, 6 % of the square under a stain, JPEG 78.
    photos = [card_photos.photograph(picture, place, seed, 0.5, card_photos.stained) for seed in range(100)]
    assert sum(card_photos.zxing_reads(photo, text) for photo in photos) >= 99


@pytest.mark.parametrize("size", SIZES)
def test_modules_are_0_40_mm_at_least(printed, size):
    """The dark top row of a finder pattern is 7 modules wide (ISO/IEC 18004)."""
    dpi = 1200
    picture = raster(printed[size, "own"], SQUARE[size], dpi)
    code = zxingcpp.read_barcodes(picture)[0]
    place = code.position
    side = place.top_right.x - place.top_left.x + 1
    y = place.top_left.y + 2
    run = 0
    while picture.getpixel((place.top_left.x + 1 + run, y)) < 128:
        run += 1
    module = run / 7 * 25.4 / dpi
    assert module > 0.40 - 0.01, module
    assert side * 25.4 / dpi < 74


@pytest.mark.parametrize("size", SIZES)
def test_the_pdf_of_every_size_is_sound(printed, size):
    for paper in ("own", "letter"):
        subprocess.run(["qpdf", "--check", printed[size, paper]], check=True, capture_output=True)
        fonts = subprocess.run(["pdffonts", printed[size, paper]], capture_output=True, text=True, check=True).stdout
        rows = fonts.splitlines()[2:]
        assert rows and all(row.split()[-5] == "yes" for row in rows), fonts


@pytest.mark.parametrize("size", SIZES)
def test_boxes_and_fonts_are_what_pikepdf_reads_too(printed, size):
    with pikepdf.open(printed[size, "own"]) as pdf:
        for page in pdf.pages:
            left, low, right, high = (float(edge) / MM for edge in page.mediabox)
            assert (left, low) == (0, 0)
            assert abs(right - SIZES[size][0]) < 0.1 and abs(high - SIZES[size][1]) < 0.1
        fonts = [one for one in pdf.objects if isinstance(one, pikepdf.Dictionary) and one.get("/Type") == "/FontDescriptor"]
        # ISO 32000-1, 9.9: a font is embedded by one of these.
        assert fonts and all({"/FontFile", "/FontFile2", "/FontFile3"} & set(font.keys()) for font in fonts)


def text_of(pdf):
    return subprocess.run(["pdftotext", "-layout", pdf, "-"], capture_output=True, text=True, check=True).stdout


def test_what_the_owner_hides_stands_neither_on_the_card_nor_in_its_square(shelf, vehicles, tmp_path):
    car = vehicles[0]
    vin = ask(shelf, {"ask": "sheet", "book": car["book"]})[0]["form"]["vin"]
    whole = print_card(tmp_path, shelf, car["name"], "--size", "a4")
    assert vin in text_of(whole) and verified(read_both(whole, 1, 200, tmp_path))[3][2] == vin
    part = print_card(tmp_path, shelf, car["name"], "--size", "a4", "--hide", "vin-head,names")
    said = text_of(part)
    assert vin not in said and f"… {vin[-6:]}" in said
    assert 2 not in verified(read_both(part, 1, 200, tmp_path))[3]
    none = print_card(tmp_path, shelf, car["name"], "--size", "a4", "--hide", "vin,vin-head")
    assert vin[-6:] not in text_of(none)


@pytest.mark.parametrize("size", SIZES)
def test_a_long_history_says_what_its_square_leaves_out(odd, size, tmp_path):
    pdf = print_card(tmp_path, odd, LONG, "--size", size)
    claims = verified(read_both(pdf, SQUARE[size], 300, tmp_path))
    assert claims[3][1] == LONG and claims[7] == MANY
    left_out = MANY - len(claims[6])
    said = " ".join(text_of(pdf).split())
    if left_out:
        assert str(left_out) in said, said[:2000]
    else:
        assert "all of which the square holds too" in said
    if size in ("id1", "a6"):
        assert len(pages(pdf)) == 2


@pytest.mark.parametrize("size", SIZES)
def test_a_car_without_a_visit_has_a_card_too(odd, size, tmp_path):
    pdf = print_card(tmp_path, odd, BACKWARDS, "--size", size)
    claims = verified(read_both(pdf, SQUARE[size], 300, tmp_path))
    assert claims[3][1] == BACKWARDS and claims[6] == []
    # The typeface has no Hebrew, and a letter that can not be shown is a question mark.
    assert re.search(r"\?+ Heron", text_of(pdf))


def test_names_and_prices_are_the_owners_to_show(odd, tmp_path):
    for size in ("a5", "a4"):
        usual = " ".join(text_of(print_card(tmp_path, odd, LONG, "--size", size)).split())
        assert SHOP in usual and "37.25" not in usual
        other = " ".join(text_of(print_card(tmp_path, odd, LONG, "--size", size, "--hide", "names", "--prices")).split())
        assert SHOP not in other and other.count("37.25") == MANY


@pytest.mark.parametrize("size", ("a6", "a5", "a4"))
def test_the_work_was_done_last_when_the_square_says(printed, size, tmp_path):
    """Number 1 of the catalogue is the engine oil."""
    pdf = printed[size, "own"]
    day, reading, last = EPOCH, 0, None
    for days, way, _flags, *items in verified(read_both(pdf, SQUARE[size], 300, tmp_path))[6]:
        day, reading = day + datetime.timedelta(days=days), reading + way
        if 1 in items:
            last = (day.isoformat(), reading)
    rows = [line.split() for line in text_of(pdf).splitlines() if "Engine oil and filter" in line and last[0] in line]
    assert any(str(last[1]) in "".join(row) for row in rows), (last, rows)
