"""The corpus: receipt photos with the truth about them, made anew from a seed whenever they are wanted.

python corpus.py --count 72 --seed 1 --style a --out FOLDER      writes the photos, with the truth beside each
python corpus.py --count 24 --seed 1 --style a --sheet SHEET.png  draws them small on one picture, to look at"""

import argparse
import io
import json
from pathlib import Path

from PIL import Image, ImageOps

from draw import draw, stream
from spoil import photograph


def photo(seed, index, style="a"):
    """Photo `index`, and its truth."""
    drawn = draw(seed, index, style)
    taken = photograph(stream(seed, index, style, 2), drawn)
    return taken.jpeg, drawn.truth | {"taken": taken.taken, "seed": seed, "index": index, "style": style}


def _sheet(photos, columns=6, side=420):
    rows = -(-len(photos) // columns)
    sheet = Image.new("RGB", (columns * side, rows * side), "white")
    for place, jpeg in enumerate(photos):
        small = ImageOps.exif_transpose(Image.open(io.BytesIO(jpeg)))
        small.thumbnail((side - 8, side - 8))
        sheet.paste(small, (place % columns * side + 4, place // columns * side + 4))
    return sheet


def main():
    asked = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    asked.add_argument("--count", type=int, default=72)
    asked.add_argument("--seed", type=int, default=1)
    asked.add_argument("--style", choices="ab", default="a")
    asked.add_argument("--out", type=Path)
    asked.add_argument("--sheet", type=Path)
    asked = asked.parse_args()
    photos = []
    for index in range(asked.count):
        jpeg, truth = photo(asked.seed, index, asked.style)
        if asked.out:
            asked.out.mkdir(parents=True, exist_ok=True)
            (asked.out / f"{index:03}.jpg").write_bytes(jpeg)
            (asked.out / f"{index:03}.json").write_text(json.dumps(truth, ensure_ascii=False, indent=1))
        photos.append(jpeg if asked.sheet else b"")
    if asked.sheet:
        _sheet(photos).save(asked.sheet)


if __name__ == "__main__":
    main()
