"""The full report against qpdf and poppler: PDF/A-2b (ISO 19005-2), PDF/UA-1 (ISO 14289-1), tags (ISO 32000-1, 14.7
and 14.8), contents, and a history of more than a hundred pages; the
marks of a file that is sound, and its words, in each of its languages."""

import datetime
import io
import json
import re
import shutil
import subprocess

import pikepdf
import pytest
from PIL import Image, ImageDraw

from conftest import TODAY, VIEWER, WELLKEPT, wellkept
from test_card_sizes import SHOP, ask, text_of

MANY = 600
NAME = "Heron"
VIN = "1M8GDM9AXKP042788"
EPOCH = datetime.date(1996, 1, 9)


def day(at):
    return (EPOCH + datetime.timedelta(days=18 * at)).isoformat()


def visit(at, papers=()):
    items = [{"catalogue": number} for number in (1, 10, 15)[: at % 3 + 1]]
    part = {"name": f"Filter of visit {at}", "maker": "Quillane", "number": f"QL-{at:04}", "quantity": "1", "price": "8.75"}
    return {
        "day": day(at),
        "reading": str(1000 + 480 * at),
        "workshop": SHOP if at % 2 else "",
        "items": items,
        "parts": [part],
        "cost": f"{100 + at}.25",
        "currency": "EUR",
        "note": f"Noted at visit {at}.",
        "papers": list(papers),
    }


def receipt(at):
    """A receipt as a PNG, different each time."""
    paper = Image.new("RGB", (420, 560), "white")
    pen = ImageDraw.Draw(paper)
    pen.text((40, 40), f"Hollow Lane Garage\nReceipt {at}\nTotal {100 + at}.25 EUR", fill="black")
    out = io.BytesIO()
    paper.save(out, "PNG")
    return out.getvalue()


def report(where, shelf, name, *options, check=True):
    out = where / "report.pdf"
    common = ["--shelf", str(shelf), "--today", TODAY, "--vehicle", name]
    done = wellkept(*common, "report", "--out", str(out), *options, check=check)
    return out if check else done


def shelf_of(folder, many):
    """A car with so many visits, every third with a receipt; one of them amended, one struck out."""
    vehicle = {"name": NAME, "engine": "petrol", "unit": "km", "reading": "900", "vin": VIN, "first_use": "1995-05-01"}
    book = ask(folder, {"ask": "add-vehicle", "vehicle": vehicle})[0]["book"]
    common = ["--shelf", str(folder), "--today", TODAY, "--vehicle", NAME, "--json", "paper"]
    files = []
    for at in range(0, many, 3):
        file = folder / f"receipt-{at}.png"
        file.write_bytes(receipt(at))
        files.append(str(file))
    papers = json.loads(wellkept(*common, *files).stdout)
    tied = {at: papers[at // 3 : at // 3 + 1] for at in range(0, many, 3)}
    requests = [
        {"ask": "record-visit", "book": book, "visit": visit(at, tied.get(at, ())), "keep": True} for at in range(many)
    ]
    written = ask(folder, *requests)
    assert all(answer["answer"] == "written" for answer in written), written[0]
    amended = {**visit(1), "note": "Noted at visit 1, and mended."}
    change = {"ask": "amend-visit", "book": book, "subject": written[1]["subject"], "visit": amended, "why": "", "keep": True}
    strike = {"ask": "strike-out", "book": book, "subject": written[2]["subject"], "why": "Entered twice."}
    assert all(answer["answer"] == "written" for answer in ask(folder, change, strike))
    return folder


@pytest.fixture(scope="session")
def long_shelf(tmp_path_factory):
    return shelf_of(tmp_path_factory.mktemp("long"), MANY)


@pytest.fixture(scope="session")
def long(long_shelf, tmp_path_factory):
    return report(tmp_path_factory.mktemp("report"), long_shelf, NAME, "--viewer", VIEWER, "--prices")


def info(pdf):
    said = subprocess.run(["pdfinfo", pdf], capture_output=True, text=True, check=True).stdout
    return dict(re.findall(r"^([^:]+):\s+(.*)$", said, re.MULTILINE))


def objects_of(pdf):
    """Every object of the file as qpdf reads it, by its reference."""
    said = subprocess.run(["qpdf", "--json=2", "--json-key=qpdf", pdf], capture_output=True, check=True).stdout
    held = json.loads(said)["qpdf"][1]
    return {key.removeprefix("obj:"): value.get("value", value.get("stream")) for key, value in held.items()}


@pytest.fixture(scope="session")
def objects(long):
    return objects_of(long)


def of_kind(objects, kind):
    """The structure elements of a kind."""
    return [value for value in objects.values() if isinstance(value, dict) and value.get("/S") == kind]


def catalogue(objects):
    return next(value for value in objects.values() if isinstance(value, dict) and value.get("/Type") == "/Catalog")


def test_the_file_is_sound_and_its_fonts_are_embedded(long):
    subprocess.run(["qpdf", "--check", long], check=True, capture_output=True)
    fonts = subprocess.run(["pdffonts", long], capture_output=True, text=True, check=True).stdout.splitlines()[2:]
    # The fifth word from the end says whether a font is embedded, the third whether it has a map to Unicode.
    assert fonts and all(row.split()[-5] == "yes" and row.split()[-3] == "yes" for row in fonts), fonts


def names_both_standards(pdf):
    said = subprocess.run(["pdfinfo", "-meta", pdf], capture_output=True, text=True, check=True).stdout
    # ISO 19005-2, 6.6.4, and ISO 14289-1, 5.
    for mark in ("pdfaid:part>2<", "pdfaid:conformance>B<", "pdfuaid:part>1<"):
        assert mark in said, mark


def test_the_metadata_names_both_standards(long):
    names_both_standards(long)
    with pikepdf.open(long) as pdf, pdf.open_metadata() as metadata:
        assert metadata.pdfa_status == "2B" and metadata["pdfuaid:part"] == "1"


def test_the_catalogue_says_what_a_screen_reader_asks_for(long, objects):
    # ISO 14289-1, 7.1 and 7.2: tagged, with a title that is shown, and a language.
    root = catalogue(objects)
    assert root["/MarkInfo"]["/Marked"] is True
    assert root["/Lang"] == "u:en"
    assert root["/ViewerPreferences"]["/DisplayDocTitle"] is True
    assert "/StructTreeRoot" in root and "/Outlines" in root
    assert info(long)["Title"] == f"Full report – {NAME}" and info(long)["Tagged"] == "yes"


def test_every_figure_has_a_text_in_its_place(objects):
    # ISO 14289-1, 7.3.
    figures = of_kind(objects, "/Figure")
    alts = [figure.get("/Alt", "u:") for figure in figures]
    assert all(alt.removeprefix("u:").strip() for alt in alts), alts
    # The square, the readings and the costs are drawn; each third visit, save the first on paper, has a photo.
    photos = [alt for alt in alts if alt.startswith("u:Photo of a receipt, 1 of 1, visit of ")]
    assert len(photos) == MANY // 3 and len(alts) == len(photos) + 3


def test_headings_go_down_by_one_level_at_a_time(objects):
    # ISO 14289-1, 7.4.2.
    levels = {level: len(of_kind(objects, f"/H{level}")) for level in range(1, 7)}
    years = {day(at)[:4] for at in range(MANY)}
    assert levels[1] == 4 and levels[2] >= len(years) and levels[3] == MANY and not any(levels[level] for level in (4, 5, 6))
    assert of_kind(objects, "/TOC") and len(of_kind(objects, "/TOCI")) == 3 + len(years)


def test_tables_have_heads(objects):
    # ISO 14289-1, 7.5.
    assert len(of_kind(objects, "/THead")) == len(of_kind(objects, "/Table")) > 0
    assert len(of_kind(objects, "/TH")) >= 3 * len(of_kind(objects, "/Table"))


def test_every_visit_can_be_read_out_of_the_file(long):
    text = re.sub(r"\s+", " ", text_of(long))
    for at in range(MANY):
        assert day(at) in text and f"QL-{at:04}" in text and f"{100 + at}.25 EUR" in text, at
        assert f"Noted at visit {at}{', and mended' if at == 1 else ''}." in text, at
    assert "Struck out: this line does not count. Why: Entered twice." in text
    assert text.count("amended") >= 1


def page_texts(pdf):
    said = subprocess.run(["pdftotext", "-layout", pdf, "-"], capture_output=True, text=True, check=True).stdout
    # Typst puts what steers the breaking and direction of lines into the contents (Unicode Standard, 23.2).
    return re.sub("[\u2060-\u2069]", "", said).split("\f")[:-1]


def test_the_contents_name_the_pages_on_which_their_parts_stand(long):
    pages = page_texts(long)
    listed = [line for page in pages[:2] for line in page.splitlines()]
    found = dict(re.findall(r"^\s*(\d{4}|What to ask|Visits|What the history comes to)[ .]+(\d+)\s*$", "\n".join(listed), re.MULTILINE))
    years = sorted({day(at)[:4] for at in range(MANY)})
    assert set(years) <= set(found) and {"Visits", "What to ask"} <= set(found)
    for name, number in found.items():
        lines = [line.strip() for line in pages[int(number) - 1].splitlines()]
        assert name in lines, (name, number)


def test_each_page_says_which_of_how_many_it_is_and_of_which_car(long):
    pages = page_texts(long)
    assert len(pages) >= 100 and len(pages) == int(info(long)["Pages"])
    for number, page in enumerate(pages, 1):
        lines = page.strip().splitlines()
        assert lines[-1].strip().endswith(f"{number} / {len(pages)}"), number
        assert number == 1 or lines[0].split() == [NAME, "Full", "report"], number


def test_no_visit_is_torn_across_pages(long):
    """None of these is longer than a page: its day and its note stand on the same one."""
    place = {}
    for number, page in enumerate(page_texts(long), 1):
        for at in re.findall(r"Noted at visit (\d+)", page):
            place[int(at)] = (number, page)
    assert len(place) == MANY
    for at, (number, page) in place.items():
        assert re.search(rf"^\s*{day(at)}\b", page, re.MULTILINE), (at, number)


def test_every_photo_is_there_and_none_is_large(long):
    said = subprocess.run(["pdfimages", "-list", long], capture_output=True, text=True, check=True).stdout.splitlines()[2:]
    sizes = [(int(row.split()[3]), int(row.split()[4]), row.split()[8]) for row in said]
    assert len(sizes) == MANY // 3
    assert all(max(width, height) <= 320 and coded == "jpeg" for width, height, coded in sizes)


def test_without_prices_no_photo_has_the_pixels_to_tell_a_price(short_shelf, tmp_path):
    out = report(tmp_path, short_shelf, NAME)
    said = subprocess.run(["pdfimages", "-list", out], capture_output=True, text=True, check=True).stdout.splitlines()[2:]
    sizes = [(int(row.split()[3]), int(row.split()[4])) for row in said]
    assert sizes and all(max(size) <= 16 for size in sizes), sizes


@pytest.fixture(scope="session")
def short_shelf(tmp_path_factory):
    return shelf_of(tmp_path_factory.mktemp("short"), 7)


# What a report of these shelves has to say, each language in its own words. The first is the title.
SAID = {
    "en": [
        "Full report",
        "Contents",
        "What the history comes to",
        "Costs by year, EUR",
        "Work done",
        "Engine oil and filter",
        "What to ask",
        "Struck out: this line does not count. Why:",
        "8.75 EUR",
    ],
    "de": [
        "Vollständiger Bericht",
        "Inhalt",
        "Die Historie im Überblick",
        "Kosten nach Jahren, EUR",
        "Ausgeführte Arbeiten",
        "Motoröl und Filter",
        "Wonach Sie fragen sollten",
        "Gestrichen: Dieser Eintrag zählt nicht. Grund:",
        "8,75 EUR",
    ],
    "fr": [
        "Rapport complet",
        "Sommaire",
        "L’historique en bref",
        "Dépenses par an, EUR",
        "Travaux effectués",
        "Vidange et filtre à huile",
        "Ce que vous pouvez demander",
        "Rayé : cette ligne ne compte pas. Motif :",
        "8,75 EUR",
    ],
    "es": [
        "Informe completo",
        "Índice",
        "El historial en resumen",
        "Gastos por año, EUR",
        "Trabajos realizados",
        "Aceite de motor y filtro",
        "Qué preguntar",
        "Tachado: esta línea no cuenta. Motivo:",
        "8,75 EUR",
    ],
}
OTHERS = [lang for lang in SAID if lang != "en"]


@pytest.fixture(scope="session", params=SAID)
def spoken(request, short_shelf, tmp_path_factory):
    """A language, and a report in it."""
    where = tmp_path_factory.mktemp(f"report-{request.param}")
    return request.param, report(where, short_shelf, NAME, "--lang", request.param, "--prices", "--viewer", VIEWER)


def test_a_report_is_sound_and_tagged_in_every_language(spoken):
    lang, pdf = spoken
    subprocess.run(["qpdf", "--check", pdf], check=True, capture_output=True)
    names_both_standards(pdf)
    objects = objects_of(pdf)
    root = catalogue(objects)
    # ISO 32000-1, 14.9.2: the language of whatever has none of its own, and here nothing has another.
    assert root["/Lang"] == f"u:{lang}"
    assert {value["/Lang"] for value in objects.values() if isinstance(value, dict) and "/Lang" in value} == {f"u:{lang}"}
    assert root["/MarkInfo"]["/Marked"] is True and "/StructTreeRoot" in root
    assert info(pdf)["Title"] == f"{SAID[lang][0]} – {NAME}"
    assert len(of_kind(objects, "/H3")) == 7 and of_kind(objects, "/Figure")


def test_a_report_says_everything_in_its_own_language(spoken):
    lang, pdf = spoken
    text = re.sub(r"\s+", " ", text_of(pdf))
    assert [said for said in SAID[lang] if said not in text] == []
    foreign = {said for other in SAID if other != lang for said in SAID[other]} - set(SAID[lang])
    assert [said for said in foreign if said in text] == []
    # The owner's own words are his.
    assert "Noted at visit 1, and mended." in text and "Entered twice." in text and SHOP in text
    alts = [figure["/Alt"] for figure in of_kind(objects_of(pdf), "/Figure")]
    photos = {"en": "Photo of a receipt, 1 of 1", "de": "Foto eines Belegs, 1 von 1"}
    photos |= {"fr": "Photo d’un justificatif, 1 sur 1", "es": "Foto de un justificante, 1 de 1"}
    assert sum(alt.startswith(f"u:{photos[lang]}, ") for alt in alts) == 3


@pytest.mark.parametrize("lang", OTHERS)
def test_a_long_history_comes_out_whole_in_every_other_language(long_shelf, tmp_path, lang):
    pdf = report(tmp_path, long_shelf, NAME, "--lang", lang, "--viewer", VIEWER, "--prices")
    pages = page_texts(pdf)
    assert len(pages) >= 100 and all(page.strip().endswith(f"{at} / {len(pages)}") for at, page in enumerate(pages, 1))
    text = re.sub(r"\s+", " ", " ".join(pages))
    assert all(f"QL-{at:04}" in text and f"{100 + at},25 EUR" in text for at in range(MANY))
    assert [said for said in SAID["en"] if said in text] == []


def test_a_language_that_is_not_there_is_refused_as_for_a_card(short_shelf, tmp_path):
    done = report(tmp_path, short_shelf, NAME, "--lang", "tlh", check=False)
    card = wellkept("--shelf", str(short_shelf), "card", "--out", str(tmp_path / "card.pdf"), "--lang", "tlh", check=False)
    assert done.returncode == card.returncode != 0
    assert done.stderr == card.stderr and "en, de, fr, es" in done.stderr
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("options", [("--hide", "names"), ("--hide", "vin"), ("--hide", "vin-head"), ("--without-receipts",)])
def test_what_is_left_out_is_nowhere_in_the_file(short_shelf, tmp_path, options):
    out = report(tmp_path, short_shelf, NAME, *options)
    text = text_of(out)
    assert (SHOP in text) == ("names" not in options)
    assert (VIN in text) == ("vin" not in options and "vin-head" not in options)
    assert "8.75 EUR" not in text and "100.25" not in text and "Costs by year" not in text
    images = subprocess.run(["pdfimages", "-list", out], capture_output=True, text=True, check=True).stdout.splitlines()
    assert len(images) == 2 and "left out" in text


def test_a_book_without_a_visit_has_a_report_that_says_so(tmp_path):
    shelf = tmp_path / "shelf"
    ask(shelf, {"ask": "add-vehicle", "vehicle": {"name": NAME, "engine": "diesel", "unit": "mi", "reading": "12"}})
    text = text_of(report(tmp_path, shelf, NAME))
    assert "The book holds no visit yet." in text and "The book holds no visit:" in text


def test_a_book_without_a_reading_is_refused_in_one_sentence(tmp_path):
    shelf = tmp_path / "shelf"
    ask(shelf, {"ask": "add-vehicle", "vehicle": {"name": NAME, "engine": "diesel", "unit": "mi"}})
    done = report(tmp_path, shelf, NAME, check=False)
    assert done.returncode == 1 and done.stderr.strip() == "The report needs a reading; write one first."
    assert not (tmp_path / "report.pdf").exists()


def test_a_photo_that_is_gone_is_said_to_be_and_the_report_comes_out(short_shelf, tmp_path):
    copy = tmp_path / "shelf"
    shutil.copytree(short_shelf, copy)
    kept = sorted((copy / "photos").rglob("*.jpg"))
    thumbs = [path for path in kept if "thumbs" in path.parts]
    # A thumbnail is made anew from its photo, so that both have to go.
    gone = thumbs[0].name
    for path in kept:
        if path.name == gone:
            path.unlink()
    # One that is damaged in its middle has both its ends.
    hurt = thumbs[1]
    bytes_ = hurt.read_bytes()
    hurt.write_bytes(bytes_[:20] + bytes(len(bytes_) - 40) + bytes_[-20:])
    text = text_of(report(tmp_path, copy, NAME))
    assert text.count("The photo of a receipt is not there any more.") == 2
