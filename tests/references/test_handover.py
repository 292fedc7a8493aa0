"""A book that was handed over, taken apart with standard parts: tarfile, cbor2, hashlib, PyNaCl.

What the file is made of is said in the head of the room `exchange`, what an entry is in the room `book`. The lock is
opened and made by the few lines of `age.py`, which share nothing with the library that the program uses.
"""

import hashlib
import io
import json
import re
import shutil
import tarfile

import cbor2
import pytest
from nacl.exceptions import CryptoError
from nacl.signing import SigningKey, VerifyKey

import age
from conftest import TODAY, wellkept

PASSPHRASE = "Wälzlager sieben, Radlager acht"


@pytest.fixture(scope="module")
def sold(shelf, vehicles, tmp_path_factory):
    """A copy of the shelf whose first book is handed over, once in the open and once more locked."""
    folder = tmp_path_factory.mktemp("sold")
    copy, out = folder / "shelf", folder / "book.wellkept"
    shutil.copytree(shelf, copy)
    (folder / "passphrase.txt").write_text(PASSPHRASE + "\n")
    common = ["--shelf", str(copy), "--today", TODAY, "--vehicle", vehicles[0]["name"], "--json"]
    said = json.loads(wellkept(*common, "handover", "--words", "Mind the mirror", "--out", str(out)).stdout)
    again = ["handover", "--passphrase-file", str(folder / "passphrase.txt"), "--out", str(folder / "locked.wellkept")]
    assert json.loads(wellkept(*common, *again).stdout)["locked"]
    return folder, said


@pytest.fixture(scope="module")
def members(sold):
    with tarfile.open(sold[0] / "book.wellkept") as archive:
        assert all(member.isreg() for member in archive.getmembers())
        return {member.name: archive.extractfile(member).read() for member in archive.getmembers()}


def sequence(data):
    """A CBOR sequence (RFC 8742), value by value."""
    stream = io.BytesIO(data)
    decoder = cbor2.CBORDecoder(stream)
    values = []
    while stream.tell() < len(data):
        values.append(decoder.decode())
    return values


@pytest.fixture(scope="module")
def entries(members):
    return [(cbor2.loads(signed), signed, signature) for signed, signature in sequence(members["entries.cbor"])]


def test_the_manifest_says_what_is_there(members, sold):
    names = list(members)
    manifest = cbor2.loads(members["manifest.cbor"])
    assert cbor2.dumps(manifest, canonical=True) == members["manifest.cbor"]
    assert (manifest[1], manifest[4]) == (1, len(members["entries.cbor"]))
    assert manifest[3] == sold[1]["entries"]
    expected = ["manifest.cbor", "entries.cbor"]
    expected += [f"photos/{hash.hex()}.jpg" for hash, _ in manifest[5]]
    expected += [f"documents/{hash.hex()}.pdf" for hash, _ in manifest[6]]
    assert names == expected
    assert len(manifest[5]) + len(manifest[6]) == sold[1]["papers"] > 0
    for hash, size in manifest[5]:
        photo = members[f"photos/{hash.hex()}.jpg"]
        assert (hashlib.sha256(photo).digest(), len(photo)) == (hash, size)
        assert photo.startswith(b"\xff\xd8\xff")
    assert manifest[5] == sorted(manifest[5])


def test_every_entry_is_signed_and_every_chain_is_whole(members, entries):
    manifest = cbor2.loads(members["manifest.cbor"])
    assert len(entries) == manifest[3]
    ends = {}
    for entry, signed, signature in entries:
        assert cbor2.dumps(entry, canonical=True) == signed
        hash = hashlib.sha256(signed).digest()
        VerifyKey(entry[3]).verify(hash, signature)
        number, previous = ends.get(entry[3], (-1, None))
        assert (entry[2], entry[4], entry.get(5)) == (manifest[2], number + 1, previous)
        ends[entry[3]] = (entry[4], hash)
    order = [(entry[6], entry[3], entry[4]) for entry, _, _ in entries]
    assert order == sorted(order)


def test_the_last_entry_hands_the_book_over(entries):
    entry, _, _ = entries[-1]
    kind, subject, content = entry[7]
    assert (kind, subject) == (14, entry[1])
    assert content[3] == "Mind the mirror" and content[4] is True


def test_what_is_kept_is_what_the_entries_name(members, entries):
    named = set()
    for entry, _, _ in entries:
        kind, _, content = entry[7]
        if kind == 7 and content[1] == 6:
            kind, content = 6, content[2]
        if kind == 6:
            named.update(value for value in (content[1], content.get(4)) if value)
    photos = {bytes.fromhex(name[7:71]) for name in members if name.startswith("photos/")}
    assert photos <= named


def test_the_lock_is_age_and_holds_the_same_bytes(sold):
    folder, _ = sold
    locked = (folder / "locked.wellkept").read_bytes()
    assert age.work_factor(locked) == 17
    assert age.decrypt(locked, PASSPHRASE) == (folder / "book.wellkept").read_bytes()
    with pytest.raises(CryptoError):
        age.decrypt(locked, PASSPHRASE + "\n")


def test_a_file_that_somebody_else_locked_is_taken_in(sold, tmp_path):
    folder, said = sold
    theirs = tmp_path / "theirs.wellkept"
    theirs.write_bytes(age.encrypt((folder / "book.wellkept").read_bytes(), PASSPHRASE, work_factor=14))
    run = ["--shelf", str(tmp_path / "new"), "--today", TODAY, "--json", "receive", str(theirs)]
    received = json.loads(wellkept(*run, "--passphrase-file", str(folder / "passphrase.txt")).stdout)
    assert (received["new"], received["papers"], received["missing"]) == (said["entries"], said["papers"], [])
    check = json.loads(wellkept("--shelf", str(tmp_path / "new"), "--json", "check").stdout)
    assert (check["entries"], check["faults"]) == (said["entries"], [])


def test_a_lock_that_asks_for_too_much_work_is_refused(sold, tmp_path):
    folder, _ = sold
    passphrase = ["--passphrase-file", str(folder / "passphrase.txt")]
    locked = (folder / "locked.wellkept").read_bytes()
    greedy = tmp_path / "greedy.wellkept"
    greedy.write_bytes(locked.replace(b" 17\n", b" 30\n", 1))
    run = wellkept("--shelf", str(tmp_path / "new"), "receive", str(greedy), *passphrase, check=False)
    assert run.returncode == 1 and "scrypt" in run.stderr, run.stderr


def test_what_was_cut_or_changed_is_refused_in_one_sentence(sold, tmp_path):
    folder, _ = sold
    whole = (folder / "book.wellkept").read_bytes()
    middle = len(whole) // 2
    spoilt = {
        "cut": whole[:middle],
        "changed": whole[:middle] + bytes([whole[middle] ^ 1]) + whole[middle + 1 :],
        "empty": b"",
        "other": b"PK\x03\x04 something else altogether",
    }
    for name, data in spoilt.items():
        path = tmp_path / name
        path.write_bytes(data)
        run = wellkept("--shelf", str(tmp_path / f"shelf-{name}"), "receive", str(path), check=False)
        assert (run.returncode, run.stdout) == (1, ""), name
        assert run.stderr.count("\n") == 1 and run.stderr.endswith(".\n"), run.stderr
        vehicles = json.loads(wellkept("--shelf", str(tmp_path / f"shelf-{name}"), "--json", "vehicles").stdout)
        assert vehicles == []


def test_the_book_here_is_read_only_until_it_is_taken_back(sold, vehicles):
    folder, _ = sold
    common = ["--shelf", str(folder / "shelf"), "--today", TODAY, "--vehicle", vehicles[0]["name"]]
    refused = wellkept(*common, "reading", "999999", "--keep", check=False)
    assert refused.returncode == 1 and "read-only" in refused.stderr
    wellkept(*common, "handover", "--take-back", "--why", "no sale")
    wellkept(*common, "reading", "999999", "--keep")


def test_a_strangers_book_can_not_steer_the_terminal(entries, tmp_path):
    """A program of somebody else signs names that the forms here refuse."""
    key = SigningKey(bytes(32))
    entry = cbor2.loads(entries[0][1])
    entry[3] = bytes(key.verify_key)
    name = entry[7][2][1]
    entry[7][2][1] = "\x1b[2J" + name + "\x9b1m\u202e"
    signed = cbor2.dumps(entry, canonical=True)
    sequence = cbor2.dumps([signed, key.sign(hashlib.sha256(signed).digest()).signature])
    manifest = {1: 1, 2: entry[2], 3: 1, 4: len(sequence), 5: [], 6: []}
    theirs, new = tmp_path / "theirs.wellkept", str(tmp_path / "new")
    with tarfile.open(theirs, "w", format=tarfile.USTAR_FORMAT) as archive:
        for member, data in (("manifest.cbor", cbor2.dumps(manifest)), ("entries.cbor", sequence)):
            info = tarfile.TarInfo(member)
            info.size = len(data)
            archive.addfile(info, io.BytesIO(data))
    said = [wellkept("--shelf", new, "receive", str(theirs)), wellkept("--shelf", new, "vehicles")]
    said.append(wellkept("--shelf", new, "--vehicle", "none", "due", check=False))
    for run in said:
        told = run.stdout + run.stderr
        assert name in told and not re.search("[\x00-\x09\x0b-\x1f\x7f-\x9f\u202e]", told), told
