"""The printed card against independent readers: zxing-cpp and zbar for the square (ISO/IEC 18004), cbor2 for CBOR
(RFC 8949) and COSE (RFC 9052), PyNaCl for Ed25519 (RFC 8032), zlib for DEFLATE (RFC 1951), qpdf and poppler for PDF."""

import datetime
import io
import subprocess
import zlib

import cbor2
import nacl.exceptions
import nacl.signing
import pytest
import zxingcpp
from PIL import Image

from conftest import TODAY, VIEWER, wellkept

# Bytes in a last group, by its digits; a full group has 17 digits and 7 bytes.
SIZES = {3: 1, 5: 2, 8: 3, 10: 4, 13: 5, 15: 6, 17: 7}
DPI = 200

# What the numbers of claims 3.3 and 4 stand for, as the card code writes them down.
ENGINES = ["petrol", "diesel", "petrol-hybrid", "diesel-hybrid", "gas", "electric", "other"]
UNITS = ["km", "mi"]
EPOCH = datetime.date(1970, 1, 1)

# What this reader raises at a changed digit, depending on what the digit stood for.
REFUSED = (nacl.exceptions.BadSignatureError, cbor2.CBORDecodeError, OverflowError, ValueError)
REFUSED += (AssertionError, AttributeError, KeyError, TypeError)


def from_digits(digits):
    groups = [digits[at : at + 17] for at in range(0, len(digits), 17)]
    return b"".join(int(group).to_bytes(SIZES[len(group)], "big") for group in groups)


def verified(text):
    packed = from_digits(text.split("#")[1])
    assert packed[0] == 1, "version"
    message = cbor2.loads(packed[1:])
    assert message.tag == 18
    protected, unprotected, payload, signature = message.value
    header = cbor2.loads(protected)
    assert set(header) == {1, 4} and header[1] == -8 and unprotected == {}
    signed = cbor2.dumps(["Signature1", protected, b"", payload])
    nacl.signing.VerifyKey(header[4]).verify(signed, signature)
    inflater = zlib.decompressobj(-15)
    claims = inflater.decompress(payload)
    assert inflater.eof and not inflater.unused_data
    assert cbor2.dumps(cbor2.loads(claims), canonical=True) == claims
    return cbor2.loads(claims)


@pytest.fixture(scope="session")
def page(card, tmp_path_factory):
    """The page with the square, as poppler rasterises it."""
    out = tmp_path_factory.mktemp("page") / "page"
    subprocess.run(["pdftoppm", "-r", str(DPI), "-f", "1", "-l", "1", "-png", "-singlefile", card, out], check=True)
    return out.with_suffix(".png")


@pytest.fixture(scope="session")
def text(page):
    picture = Image.open(io.BytesIO(page.read_bytes()))
    codes = [code for code in zxingcpp.read_barcodes(picture) if code.text.startswith(VIEWER)]
    assert len(codes) == 1
    return codes[0].text


def test_two_independent_readers_read_the_same_text(page, text):
    zbar = subprocess.run(["zbarimg", "--quiet", "--raw", page], capture_output=True, text=True, check=True)
    assert zbar.stdout.strip() == text


def test_the_message_verifies_and_says_what_the_book_says(text, vehicles):
    claims = verified(text)
    assert EPOCH + datetime.timedelta(days=claims[1]) == datetime.date.fromisoformat(TODAY)
    car = vehicles[0]
    assert claims[3][1] == car["name"]
    assert ENGINES[claims[3][3]] == car["engine"]
    assert claims[3][4] == car["make_model"]
    assert UNITS[claims[4]] == car["unit"] == car["reading"]["reading"]["unit"]
    day, reading = claims[5]
    assert (EPOCH + datetime.timedelta(days=day)).isoformat() == car["reading"]["day"]
    assert reading == car["reading"]["reading"]["count"]
    assert claims[7] >= len(claims[6]) > 10
    assert len(claims[8]) == 16


def test_any_changed_digit_is_refused(text):
    address, digits = text.split("#")
    verified(text)
    for at in range(len(digits)):
        changed = digits[:at] + str((int(digits[at]) + 1) % 10) + digits[at + 1 :]
        with pytest.raises(REFUSED):
            verified(f"{address}#{changed}")


def test_the_program_refuses_a_changed_digit_too(shelf, text):
    address, digits = text.split("#")
    for at in (0, len(digits) // 3, len(digits) // 2, len(digits) - 1):
        changed = digits[:at] + str((int(digits[at]) + 1) % 10) + digits[at + 1 :]
        read = wellkept("--shelf", str(shelf), "card-read", f"{address}#{changed}", check=False)
        assert read.returncode == 1 and len(read.stderr.strip().splitlines()) == 1, read.stderr


def test_the_pdf_is_sound_and_its_fonts_are_embedded(card):
    subprocess.run(["qpdf", "--check", card], check=True, capture_output=True)
    fonts = subprocess.run(["pdffonts", card], capture_output=True, text=True, check=True).stdout
    rows = fonts.splitlines()[2:]
    assert rows and all(row.split()[-5] == "yes" for row in rows), fonts


def test_the_pages_are_a5(card):
    info = subprocess.run(["pdfinfo", card], capture_output=True, text=True, check=True).stdout
    width, height = (float(word) for word in info.split("Page size:")[1].split("pts")[0].split("x"))
    # ISO 216: A5 is 148 mm by 210 mm.
    assert abs(width - 595.276) < 0.3 and abs(height - 419.528) < 0.3
