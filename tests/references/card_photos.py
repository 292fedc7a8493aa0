"""What a phone makes of a printed card: tilt, turn, blur, glare, dirt and JPEG, each up to a stated bound.

Dirt is one of two things. A stain lies in one place, as from a drop or a thumb. Smears lie all over the square: they touch
far more of its codewords than their area says, and more than error correction M can mend (15 % of them, ISO/IEC 18004).

As a program it prints how many of so many photographs each reader reads, by kind of dirt and by severity:
`python card_photos.py PDF PAGE COUNT [FOLDER]`; the photographs stay in the folder, if one is given.
"""

import subprocess
import sys
import tempfile
from pathlib import Path

import cv2
import numpy as np
import zxingcpp

# The card is rendered at 508 dots to the inch: a module of 0.40 mm has 8 pixels, as in a photograph of 12 megapixels
# that a square of 74 mm fills to half its height.
DPI = 508
MODULE = 0.40 / 25.4 * DPI
# The bounds at severity 1.
TILT, TURN, BLUR, GLARE, DIRT, QUALITY = 25.0, 12.0, 0.2, 0.6, 0.12, 60
# How dark dirt leaves white paper, as a share of its light.
SMEAR = 0.45
PAPER = 238


def render(pdf, page):
    said = subprocess.run(
        ["pdftoppm", "-r", str(DPI), "-f", str(page), "-l", str(page), "-gray", "-png", str(pdf)], capture_output=True, check=True
    ).stdout
    return cv2.imdecode(np.frombuffer(said, np.uint8), cv2.IMREAD_GRAYSCALE)


def square_of(picture):
    """Where the square lies: left, top, right, bottom."""
    place = zxingcpp.read_barcodes(picture)[0].position
    corners = [place.top_left, place.top_right, place.bottom_right, place.bottom_left]
    xs, ys = [corner.x for corner in corners], [corner.y for corner in corners]
    return min(xs), min(ys), max(xs), max(ys)


def photograph(picture, place, seed, severity, soiled):
    """The card as it comes out of a phone, the square and a third of its side around it, as JPEG bytes."""
    chance = np.random.default_rng(seed)
    left, top, right, bottom = place
    side = right - left
    light = picture.astype(np.float32) * (PAPER / 255)
    light = darkened(light, soiled(light.shape, place, DIRT * severity, chance))
    around = side // 3
    light = cv2.copyMakeBorder(light, around, around, around, around, cv2.BORDER_CONSTANT, value=PAPER)
    light = light[top : bottom + 2 * around, left : right + 2 * around]
    light = tilted(light, severity, chance)
    light = cv2.GaussianBlur(light, (0, 0), max(0.3, BLUR * severity * MODULE * chance.uniform(0.5, 1)))
    light = lit(light, severity, chance)
    light += chance.normal(0, 3 * severity, light.shape).astype(np.float32)
    quality = round(95 - (95 - QUALITY) * severity)
    return cv2.imencode(".jpg", np.clip(light, 0, 255).astype(np.uint8), [cv2.IMWRITE_JPEG_QUALITY, quality])[1].tobytes()


def stained(shape, place, share, chance):
    """One stain, round or longer than wide, that covers this share of the square and lies all on it."""
    left, top, right, bottom = place
    mask = np.zeros(shape, np.uint8)
    radius, stretch = (right - left) * np.sqrt(share / np.pi), np.sqrt(chance.uniform(0.7, 1.4))
    axes = (int(radius * stretch), int(radius / stretch))
    far = max(axes)
    middle = (int(chance.uniform(left + far, right - far)), int(chance.uniform(top + far, bottom - far)))
    return cv2.ellipse(mask, middle, axes, chance.uniform(0, 180), 0, 360, 255, -1)


def smeared(shape, place, share, chance):
    """Smears of two to five modules across that cover this share of the square."""
    left, top, right, bottom = place
    mask = np.zeros(shape, np.uint8)
    square = mask[top:bottom, left:right]
    while square.mean() < 255 * share:
        middle = (int(chance.uniform(left, right)), int(chance.uniform(top, bottom)))
        axes = (int(MODULE * chance.uniform(1, 2.5)), int(MODULE * chance.uniform(1, 2.5)))
        cv2.ellipse(mask, middle, axes, chance.uniform(0, 180), 0, 360, 255, -1)
    return mask


def darkened(light, mask):
    """Dirt with soft edges, dark on white and unseen on black."""
    dirt = cv2.GaussianBlur(mask.astype(np.float32) / 255, (0, 0), MODULE / 3)
    return light * (1 - (1 - SMEAR) * dirt)


def tilted(light, severity, chance):
    """Seen by a pinhole camera at twice the width away, tilted about any axis in the plane and turned in it."""
    height, width = light.shape
    tilt = np.radians(TILT * severity) * chance.uniform(0.6, 1)
    axis = chance.uniform(0, 2 * np.pi)
    turn = np.radians(TURN * severity) * chance.uniform(-1, 1)
    rotation = cv2.Rodrigues(np.array([np.cos(axis), np.sin(axis), 0]) * tilt)[0] @ cv2.Rodrigues(np.array([0, 0, turn]))[0]
    far = 2 * width
    corners = np.array([[0, 0], [width, 0], [width, height], [0, height]], np.float32)
    flat = np.c_[corners - [width / 2, height / 2], np.zeros(4)] @ rotation.T
    seen = flat[:, :2] * far / (far + flat[:, 2:]) + [width / 2, height / 2]
    warp = cv2.getPerspectiveTransform(corners, seen.astype(np.float32))
    return cv2.warpPerspective(light, warp, (width, height), flags=cv2.INTER_AREA, borderValue=PAPER / 2)


def lit(light, severity, chance):
    """A shadow across the card, and a lamp that shines back from it."""
    height, width = light.shape
    ys, xs = np.mgrid[0:height, 0:width].astype(np.float32)
    way = chance.uniform(0, 2 * np.pi)
    across = ((xs / width - 0.5) * np.cos(way) + (ys / height - 0.5) * np.sin(way)) + 0.5
    light = light * (1 - 0.35 * severity * np.clip(across, 0, 1))
    x, y = chance.uniform(0.25, 0.75) * width, chance.uniform(0.25, 0.75) * height
    spot = np.exp(-(((xs - x) / (0.18 * width)) ** 2 + ((ys - y) / (0.12 * height)) ** 2))
    return light + (255 - light) * GLARE * severity * spot


def zxing_reads(photo, text):
    picture = cv2.imdecode(np.frombuffer(photo, np.uint8), cv2.IMREAD_GRAYSCALE)
    return any(code.text == text for code in zxingcpp.read_barcodes(picture))


def zbar_reads(photo, text):
    with tempfile.NamedTemporaryFile(suffix=".jpg") as file:
        file.write(photo)
        file.flush()
        said = subprocess.run(["zbarimg", "--quiet", "--raw", file.name], capture_output=True, text=True, check=False).stdout
    return text in said.splitlines()


def main(pdf, page, count, folder=None):
    picture = render(pdf, page)
    text, place = zxingcpp.read_barcodes(picture)[0].text, square_of(picture)
    for soiled in (stained, smeared):
        for severity in (0.5, 1.0):
            photos = [photograph(picture, place, seed, severity, soiled) for seed in range(int(count))]
            if folder:
                for seed, photo in enumerate(photos):
                    name = f"{Path(pdf).stem}-{soiled.__name__}-{severity}-{seed}.jpg"
                    Path(folder, name).write_bytes(photo)
            zxing = sum(zxing_reads(photo, text) for photo in photos)
            zbar = sum(zbar_reads(photo, text) for photo in photos)
            print(f"{pdf} {soiled.__name__}, severity {severity}: zxing-cpp {zxing}, zbar {zbar} of {count}")


if __name__ == "__main__":
    main(*sys.argv[1:])
