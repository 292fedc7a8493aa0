"""A demo shelf and its printed card, made by the program under test, for all reference tests."""

import json
import os
import subprocess

import pytest

WELLKEPT = os.environ["WELLKEPT"]
TODAY = "2026-06-01"
VIEWER = "https://card.example/"


def wellkept(*args, check=True):
    return subprocess.run([WELLKEPT, *args], capture_output=True, text=True, check=check)


@pytest.fixture(scope="session")
def shelf(tmp_path_factory):
    folder = tmp_path_factory.mktemp("shelf")
    wellkept("--shelf", str(folder), "--today", TODAY, "demo")
    return folder


@pytest.fixture(scope="session")
def vehicles(shelf):
    return json.loads(wellkept("--shelf", str(shelf), "--today", TODAY, "--json", "vehicles").stdout)


@pytest.fixture(scope="session")
def card(shelf, vehicles, tmp_path_factory):
    """The first car's card as PDF."""
    out = tmp_path_factory.mktemp("card") / "card.pdf"
    common = ["--shelf", str(shelf), "--today", TODAY, "--vehicle", vehicles[0]["name"]]
    wellkept(*common, "card", "--viewer", VIEWER, "--out", str(out))
    return out
