"""What receipts lie on when they are photographed: wood, a car seat, concrete, a bonnet, cardboard. All of it is
worked out from noise; colours are blue, green, red, as OpenCV has them."""

import cv2
import numpy as np

from shops import pick


def clouds(rng, height, width, first=3, octaves=4):
    """Smooth noise from 0 to 1: octaves of random grids, each twice as fine and half as strong."""
    total = np.zeros((height, width), np.float32)
    for octave in range(octaves):
        cells = first * 2**octave
        rows, columns = (
            max(round(cells * height / max(height, width)), 2),
            max(round(cells * width / max(height, width)), 2),
        )
        grid = rng.random((rows, columns), np.float32)
        total += cv2.resize(grid, (width, height), interpolation=cv2.INTER_CUBIC) / 2**octave
    total -= total.min()
    return total / max(float(total.max()), 1e-6)


def _tinted(grey, dark, light):
    dark, light = np.float32(dark), np.float32(light)
    return dark + grey[..., None] * (light - dark)


def wood(rng, height, width):
    """Boards with grain along them and a gap between two boards."""
    grain = clouds(rng, height, 48, 40, 3)
    grain = cv2.resize(grain, (width, height), interpolation=cv2.INTER_CUBIC)
    wave = clouds(rng, height, width, 2, 2)
    rings = 0.5 + 0.5 * np.sin(wave * float(rng.uniform(25, 60)) + grain * 6)
    dark, light = pick(
        rng, (((20, 42, 72), (70, 112, 160)), ((60, 90, 120), (140, 175, 205)), ((18, 24, 38), (48, 62, 84)))
    )
    picture = _tinted(rings * 0.45 + grain * 0.55, dark, light)
    for board in range(1, int(rng.integers(2, 4))):
        at = int(height * board / 3 + rng.integers(-20, 20))
        picture[max(at, 0) : at + 3] *= 0.35
    return picture


def seat(rng, height, width):
    """Dark woven cloth with a double seam."""
    across, down = np.meshgrid(np.arange(width), np.arange(height))
    weave = 0.5 + 0.25 * np.sin(across * 1.9) * np.sin(down * 1.9) + 0.25 * np.sin((across + down) * 0.7)
    picture = _tinted(weave.astype(np.float32) * 0.6 + clouds(rng, height, width) * 0.4, (20, 18, 18), (66, 60, 58))
    seam = int(rng.uniform(0.05, 0.95) * width)
    bent = (seam + 12 * np.sin(np.arange(height) / 90)).astype(int)
    for offset in (0, 9):
        for row in range(height):
            column = bent[row] + offset
            if 0 <= column < width - 2 and row % 9 < 6:
                picture[row, column : column + 2] = (120, 118, 116)
    return picture


def concrete(rng, height, width):
    """Grey with grains and stains."""
    grains = clouds(rng, height, width, 160, 2)
    grey = clouds(rng, height, width, 3, 5) * 0.55 + grains * 0.45
    picture = _tinted(grey, (86, 92, 96), (178, 182, 186))
    stain = np.clip(clouds(rng, height, width, 2, 3) - 0.62, 0, 1)[..., None]
    return picture * (1 - stain)


def bonnet(rng, height, width):
    """Car paint with the sky in it."""
    base = np.float32(pick(rng, ((92, 30, 20), (28, 24, 112), (52, 52, 52), (60, 72, 44), (150, 150, 148))))
    sheen = cv2.GaussianBlur(clouds(rng, height, width, 2, 2), (0, 0), 25)
    return base + sheen[..., None] ** 2 * 90


def cardboard(rng, height, width):
    """Brown, with flutes that show through."""
    flutes = 0.5 + 0.5 * np.sin(np.arange(width) * 0.55)[None, :] * np.ones((height, 1))
    grey = clouds(rng, height, width, 6, 5) * 0.8 + flutes.astype(np.float32) * 0.2
    return _tinted(grey, (84, 122, 158), (128, 170, 202))


GROUNDS = (wood, seat, concrete, bonnet, cardboard)


def ground(rng, height, width):
    """A ground of the given size, 8 bits, drawn at a third of it and made larger."""
    small = pick(rng, GROUNDS)(rng, height // 3 + 1, width // 3 + 1)
    return cv2.resize(np.clip(small, 0, 255).astype(np.uint8), (width, height), interpolation=cv2.INTER_LINEAR)
