"""Writes the first files of each corpus: the smallest honest ones of each kind.

usage: python3 seeds.py   (with Pillow, as tests/references/requirements.txt pins it)
"""

import io
import json
import zlib
from pathlib import Path

from PIL import Image

HERE = Path(__file__).parent / "corpus"


def write(target, name, data):
    folder = HERE / target
    folder.mkdir(parents=True, exist_ok=True)
    (folder / name).write_bytes(data)


def saved(picture, kind, **options):
    data = io.BytesIO()
    picture.save(data, kind, **options)
    return data.getvalue()


def pictures():
    exif = Image.Exif()
    exif[0x0112] = 6
    for mode in ["L", "RGB", "CMYK"]:
        for progressive in [False, True]:
            picture = Image.linear_gradient("L").resize((16, 9)).convert(mode)
            jpeg = saved(picture, "JPEG", progressive=progressive, exif=exif, quality=50)
            write("intake", f"{mode}-{progressive}.jpg", jpeg)
    for mode in ["1", "L", "LA", "P", "RGB", "RGBA", "I;16"]:
        picture = Image.linear_gradient("L").resize((9, 7)).convert(mode)
        write("intake", f"{mode.replace(';', '')}.png", saved(picture, "PNG"))
    for mode in ["RGB", "RGBA"]:
        for lossless in [False, True]:
            picture = Image.linear_gradient("L").resize((9, 7)).convert(mode)
            write("intake", f"{mode}-{lossless}.webp", saved(picture, "WEBP", lossless=lossless))


def document(content, extra=""):
    objects = [
        b"<< /Type /Catalog /Pages 2 0 R >>",
        b"<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
        b"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 20 20] /Contents 4 0 R"
        b" /Resources << /Font << /F1 5 0 R >> >> >>",
        b"<< /Length %d %s >>\nstream\n%s\nendstream" % (len(content), extra.encode(), content),
        b"<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>",
    ]
    data = b"%PDF-1.7\n"
    places = []
    for number, body in enumerate(objects, 1):
        places.append(len(data))
        data += b"%d 0 obj\n%s\nendobj\n" % (number, body)
    table = len(data)
    data += b"xref\n0 6\n0000000000 65535 f \n" + b"".join(b"%010d 00000 n \n" % place for place in places)
    return data + b"trailer\n<< /Size 6 /Root 1 0 R >>\nstartxref\n%d\n%%%%EOF\n" % table


def documents():
    content = b"0 0 9 9 re f BT /F1 9 Tf 1 9 Td (a) Tj ET BI /W 2 /H 2 /BPC 8 /CS /G ID abcd EI"
    write("pages", "plain.pdf", document(content))
    write("pages", "packed.pdf", document(zlib.compress(content), "/Filter /FlateDecode"))


def receipts():
    german = "\x00Quellmuster Teile\nMusterweg 1\n01.02.2026\t10:15\nÖlfilter HU 718/1k\t7,49 A\n2 x 12,50 Kerze\t25,00 A\n"
    write("read", "de.txt", (german + "Summe EUR\t32,49\nMwSt 19,00%\t5,19\n").encode())
    english = "\x06Sample Motor Stores\n03/04/2026\nOIL 5W-30 5L\t31.99\nTOTAL GBP\t31.99\nVAT 20%\t5.33\n"
    write("read", "en.txt", english.encode())
    pump = "\x04Station Exemple\n12/05/26\nGazole\n42,17 L\t1,689 EUR/L\nTotal TTC\t71,23 €\n98420 km\n"
    write("read", "fr.txt", pump.encode())


def cards():
    """Each way in, from the published vector: its text, its message, what it signs, and its claims."""
    vector = json.loads((HERE.parent / "../crates/card/tests/card-code-vector.json").read_text())
    histories = json.loads((HERE.parent / "../crates/card/tests/questions-vector.json").read_text())
    cases = json.loads((HERE.parent / "../crates/card/tests/agree-cases.json").read_text())
    write("claims", "text", b"\x00https://card.example/#" + vector["digits"].encode())
    write("claims", "message", b"\x01" + bytes.fromhex(vector["packed"]))
    for at, stream in enumerate(cases["streams"]):
        write("claims", f"stream-{at}", b"\x02" + bytes.fromhex(stream))
    for at, claims in enumerate([vector["claims_cbor"], *(history["claims"] for history in histories)]):
        write("claims", f"claims-{at}", b"\x03" + bytes.fromhex(claims))


pictures()
documents()
receipts()
cards()
