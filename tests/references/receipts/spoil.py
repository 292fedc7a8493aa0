"""Makes of a clean receipt what a phone's camera would: paper on a ground, seen at an angle, lit unevenly, blurred,
noisy, and a JPEG. What is spoilt by how much is drawn from the seed alone."""

import io
from dataclasses import dataclass

import cv2
import numpy as np
from PIL import Image

from grounds import clouds, ground
from shops import pick

# Fewest pixels a millimetre of paper, if the photo's long side is 2000: letters are then about 13 pixels high.
LEGIBLE = 7.0

# EXIF orientation of a picture turned by so many quarter turns against the clock (EXIF 2.32, tag 0x0112).
TURNED = {0: 1, 1: 6, 2: 3, 3: 8}


@dataclass
class Photo:
    """The bytes of a JPEG, and how it was taken: for looking into what goes wrong."""

    jpeg: bytes
    taken: dict


def photograph(rng, drawn):
    """A photo of the drawn receipt."""
    paper, cover = _paper(rng, drawn)
    height, width = _frame(rng, paper.shape[:2])
    picture, scale, taken = _lay(rng, paper, cover, drawn.dpmm, height, width)
    picture = _light(rng, picture)
    picture = _blur(rng, picture, scale, taken)
    picture = _noise(rng, picture, taken)
    return _developed(rng, picture, taken)


def _paper(rng, drawn):
    """The print on its paper, in colour, with folds; and where there is paper at all."""
    ink = drawn.ink
    height, width = ink.shape
    dark = 1 - ink.astype(np.float32) / 255
    if drawn.thermal:
        dark = cv2.GaussianBlur(dark, (0, 0), float(rng.uniform(0.35, 0.6))) * _faded(rng, height, width)
    elif drawn.roll:
        dark *= float(rng.uniform(0.6, 0.9))
    tones = ((232, 238, 240), (226, 232, 238), (238, 236, 230), (214, 226, 236), (236, 232, 236))
    sheet = np.float32(pick(rng, tones if drawn.roll else ((240, 242, 243), (232, 238, 242))))
    inks = ((52, 48, 50), (70, 50, 54), (84, 58, 66), (40, 40, 44)) if drawn.thermal else ((30, 28, 28), (70, 40, 40))
    black = np.float32(pick(rng, inks))
    picture = sheet + dark[..., None] * (black - sheet)
    picture *= _folds(rng, height, width, drawn)[..., None]
    picture = np.clip(picture, 0, 255).astype(np.uint8)
    return _curl(rng, picture, _outline(rng, height, width, drawn.roll))


def _faded(rng, height, width):
    """How strong the print still is: it fades in patches and along columns whose heating dot is weak."""
    strength = float(rng.uniform(0.5, 1.0)) if rng.random() < 0.4 else float(rng.uniform(0.85, 1.0))
    patches = 1 - clouds(rng, height, width, 2, 3) * float(rng.uniform(0, 0.35))
    columns = np.ones(width, np.float32)
    if rng.random() < 0.3:
        weak = rng.integers(0, width, int(rng.integers(1, 4)))
        columns[weak] = float(rng.uniform(0.1, 0.6))
    return strength * patches * columns[None, :]


def _folds(rng, height, width, drawn):
    """Light and dark beside creases, and the roundness of a paper that was rolled or folded."""
    shade = np.ones((height, width), np.float32)
    down = np.arange(height, dtype=np.float32)[:, None]
    across = np.arange(width, dtype=np.float32)[None, :]
    for _ in range(int(pick(rng, (0, 0, 1, 1, 2, 3)))):
        slope = float(rng.uniform(-0.08, 0.08))
        upright = rng.random() < 0.3
        away = across - slope * down if upright else down - slope * across
        away = away - float(rng.uniform(0.15, 0.85)) * (width if upright else height)
        reach, depth = float(rng.uniform(1.5, 4)) * drawn.dpmm, float(rng.uniform(0.05, 0.16))
        shade *= 1 - depth * np.exp(-np.abs(away) / reach) * np.sign(away)
        shade *= 1 - 0.25 * np.exp(-((away / (0.12 * drawn.dpmm)) ** 2))
    if rng.random() < 0.35:
        shade *= _crumpled(rng, height, width)
    roundness = float(rng.uniform(0, 0.12))
    return shade * (1 - roundness * (2 * down / height - 1) ** 2)


def _crumpled(rng, height, width):
    """The facets of a paper that was in a pocket: light and dark as each one leans to the light or away."""
    small = (height // 4 + 1, width // 4 + 1)
    bumps = np.abs(clouds(rng, *small, 5, 3) - 0.5) + np.abs(clouds(rng, *small, 8, 2) - 0.5)
    lean = cv2.GaussianBlur(np.gradient(bumps, axis=0) + 0.6 * np.gradient(bumps, axis=1), (0, 0), 1.2)
    lean *= float(rng.uniform(0.02, 0.045)) / max(float(lean.std()), 1e-6)
    return 1 + cv2.resize(np.tanh(lean * 8) / 8, (width, height), interpolation=cv2.INTER_LINEAR)


def _outline(rng, height, width, roll):
    """Where there is paper: a roll ends in the teeth of its cutter."""
    cover = np.full((height, width), 255, np.uint8)
    if roll:
        tooth = int(rng.integers(5, 12))
        depth = np.abs(np.arange(width) % (2 * tooth) - tooth) * float(rng.uniform(0.3, 0.9))
        down = np.arange(height)[:, None]
        cover[down < depth[None, :]] = 0
        cover[down > height - 1 - depth[None, ::-1]] = 0
    return cover


def _curl(rng, picture, cover):
    """Bends the paper a little, so that rows of print are no longer quite straight, with an empty edge around it."""
    edge = 24
    height, width = cover.shape
    rows, columns = np.mgrid[0 : height + 2 * edge, 0 : width + 2 * edge].astype(np.float32)
    rows, columns = rows - edge, columns - edge
    bend, lean = float(rng.normal(0, 0.006)) * width, float(rng.normal(0, 0.004)) * width
    turns = float(rng.uniform(0.5, 1.6))
    shift_down = bend * np.sin(np.pi * columns / width)
    shift_across = lean * np.sin(turns * np.pi * rows / height)
    maps = (columns + shift_across.astype(np.float32), rows + shift_down.astype(np.float32))
    bent = cv2.remap(picture, *maps, cv2.INTER_CUBIC, borderMode=cv2.BORDER_REPLICATE)
    return bent, cv2.remap(cover, *maps, cv2.INTER_LINEAR, borderMode=cv2.BORDER_CONSTANT, borderValue=0)


def _frame(rng, shape):
    """Height and width of the photo in pixels: 12 megapixels for a part, 3 to 8 for the rest; as the paper lies."""
    area = 12e6 if rng.random() < 0.3 else float(rng.uniform(3e6, 8e6))
    long_paper = max(shape) > 1.6 * min(shape)
    ratio = pick(rng, (4 / 3, 4 / 3, 16 / 9)) if long_paper else 4 / 3
    long, short = round((area * ratio) ** 0.5), round((area / ratio) ** 0.5)
    upright = shape[0] >= shape[1] * (1 if long_paper else 1.12)
    return (long, short) if upright else (short, long)


def _lay(rng, paper, cover, dpmm, height, width):
    """The paper on its ground, at an angle; also pixels a millimetre there, and how it was taken."""
    rows, columns = cover.shape
    angle = float(np.clip(rng.normal(0, 2.5), -7, 7))
    turn = np.deg2rad(angle)
    across = columns * abs(np.cos(turn)) + rows * abs(np.sin(turn))
    down = rows * abs(np.cos(turn)) + columns * abs(np.sin(turn))
    scale = _filled(rng, min(width / across, height / down), LEGIBLE * max(height, width) / 2000 / dpmm)
    corners = np.float32([[0, 0], [columns, 0], [columns, rows], [0, rows]])
    spin = np.float32([[np.cos(turn), -np.sin(turn)], [np.sin(turn), np.cos(turn)]])
    placed = (corners - np.float32([columns / 2, rows / 2])) * scale @ spin.T
    placed *= 1 + rng.uniform(-0.045, 0.045, (4, 2))
    spare = np.maximum(np.float32([width, height]) / 2 - np.abs(placed).max(axis=0), 0)
    placed += np.float32([width / 2, height / 2]) + spare * rng.uniform(-0.7, 0.7, 2)
    matrix = cv2.getPerspectiveTransform(corners, placed.astype(np.float32))
    flags = cv2.INTER_AREA if scale < 0.5 else cv2.INTER_CUBIC
    seen = cv2.warpPerspective(cv2.merge([paper, cover]), matrix, (width, height), flags=flags)
    mask = cv2.merge([seen[..., 3]] * 3)
    picture = _shaded(rng, ground(rng, height, width), seen[..., 3])
    picture = cv2.add(
        cv2.multiply(picture, 255 - mask, scale=1 / 255), cv2.multiply(seen[..., :3], mask, scale=1 / 255)
    )
    return picture, scale * dpmm, {"angle": round(angle, 1), "pixels_per_mm": float(round(scale * dpmm, 1))}


def _filled(rng, most, least):
    """How large the paper is in the photo: it mostly fills it, and is never smaller than `least` unless it must be."""
    scale = most * float(rng.uniform(0.84, 0.97))
    further = scale * (float(rng.uniform(0.5, 1)) if rng.random() < 0.4 else 1.0)
    return max(further, min(scale, least))


def _shaded(rng, picture, where):
    """The shadow of the paper's edge on the ground."""
    small = cv2.resize(where, None, fx=0.1, fy=0.1, interpolation=cv2.INTER_AREA)
    move = np.float32([[1, 0, rng.uniform(-4, 4)], [0, 1, rng.uniform(1, 5)]])
    soft = cv2.GaussianBlur(cv2.warpAffine(small, move, small.shape[::-1]), (0, 0), float(rng.uniform(1.5, 4)))
    soft = 255 - (soft * 0.55).astype(np.uint8)
    soft = cv2.resize(soft, (picture.shape[1], picture.shape[0]), interpolation=cv2.INTER_LINEAR)
    return cv2.multiply(picture, cv2.merge([soft] * 3), scale=1 / 255)


def _light(rng, picture):
    """Uneven light, the colour of the lamp, and often the shadow of a hand or of the phone."""
    height, width = picture.shape[:2]
    rows, columns = 200, max(round(200 * width / height), 40)
    down, across = np.mgrid[-1 : 1 : rows * 1j, -1 : 1 : columns * 1j].astype(np.float32)
    way = float(rng.uniform(0, 2 * np.pi))
    level = 1 + float(rng.uniform(0.02, 0.22)) * (np.cos(way) * across + np.sin(way) * down)
    level *= 1 - float(rng.uniform(0, 0.18)) * (across**2 + down**2) / 2
    if rng.random() < 0.5:
        level *= _hand(rng, rows, columns)
    lamp = np.float32(pick(rng, ((1.0, 1.0, 1.0), (0.84, 0.96, 1.03), (0.92, 0.98, 1.02), (1.05, 1.0, 0.95))))
    gain = level[..., None] * lamp * float(rng.uniform(0.72, 1.03))
    gain = cv2.resize(
        np.rint(np.clip(gain, 0.15, 1.2) * 200).astype(np.uint8), (width, height), interpolation=cv2.INTER_LINEAR
    )
    return cv2.multiply(picture, gain, scale=1 / 200)


def _hand(rng, rows, columns):
    """A dark shape that reaches in from an edge, softer the further away the hand was."""
    shape = np.zeros((rows, columns), np.float32)
    middle = np.float32([rng.uniform(0, columns), rng.choice([0, rows]) + rng.uniform(-20, 20)])
    around = np.sort(rng.uniform(0, 2 * np.pi, 9))
    reach = rng.uniform(0.25, 0.6, 9) * rows
    points = middle + np.stack([np.cos(around), np.sin(around)], axis=1) * reach[:, None]
    cv2.fillPoly(shape, [points.astype(np.int32)], 1.0)
    shape = cv2.GaussianBlur(shape, (0, 0), float(rng.uniform(3, 18)))
    return 1 - shape * float(rng.uniform(0.2, 0.5))


def _blur(rng, picture, scale, taken):
    """Out of focus by up to about a tenth of a millimetre on the paper, and now and then moved by up to a third."""
    focus = float(rng.uniform(0.02, 0.11)) * scale
    taken["focus"] = round(focus, 2)
    picture = cv2.GaussianBlur(picture, (0, 0), max(focus, 0.3))
    if rng.random() < 0.3:
        length = float(rng.uniform(0.1, 0.3)) * scale
        taken["motion"] = round(length, 1)
        picture = cv2.filter2D(picture, -1, _streak(length, float(rng.uniform(0, np.pi))))
    return picture


def _streak(length, way):
    size = 2 * int(np.ceil(length / 2)) + 3
    middle = size / 2
    streak = np.zeros((size * 8, size * 8), np.float32)
    reach = np.float32([np.cos(way), np.sin(way)]) * length / 2
    ends = [tuple(int(value) for value in (np.float32([middle, middle]) + side * reach) * 8) for side in (-1, 1)]
    cv2.line(streak, *ends, 1.0, 8)
    kernel = cv2.resize(streak, (size, size), interpolation=cv2.INTER_AREA)
    return kernel / kernel.sum()


def _noise(rng, picture, taken):
    """Noise of the sensor, the same in all colours for the most part, and coarser in colour."""
    height, width = picture.shape[:2]
    strength = float(rng.uniform(1.5, 8.0))
    taken["noise"] = round(strength, 1)
    # One square of noise, laid out over the picture: drawing all of it would take longer than everything else.
    side = 800
    colour = rng.standard_normal((side // 4, side // 4, 3), np.float32) * (strength * 0.6)
    square = cv2.resize(colour, (side, side), interpolation=cv2.INTER_LINEAR)
    square += rng.standard_normal((side, side, 1), np.float32) * strength
    square = np.rint(square).astype(np.int16)
    for top in range(0, height, side):
        for left in range(0, width, side):
            block = picture[top : top + side, left : left + side]
            block[:] = cv2.add(block, square[: block.shape[0], : block.shape[1]], dtype=cv2.CV_8U)
    return picture


def _developed(rng, picture, taken):
    """The JPEG: mostly upright; some lie on a side or on their head, with or without EXIF saying so."""
    picture = cv2.cvtColor(picture, cv2.COLOR_BGR2RGB)
    draw = rng.random()
    turns = 0 if draw < 0.72 else 2 if draw < 0.84 else pick(rng, (1, 3))
    told = turns != 0 and rng.random() < 0.5
    image = Image.fromarray(np.ascontiguousarray(np.rot90(picture, turns)))
    exif = Image.Exif()
    exif[0x0112] = TURNED[turns] if told else 1
    taken |= {"turns": turns, "told": told, "quality": int(rng.integers(70, 86)), "size": list(image.size)}
    out = io.BytesIO()
    image.save(out, "JPEG", quality=taken["quality"], exif=exif)
    return Photo(out.getvalue(), taken)
