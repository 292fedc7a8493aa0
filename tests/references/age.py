"""The age file format, version 1, with one passphrase: as much of it as a reader and a writer of one file need.

Written from the format's description (C2SP, age.md): a header with one `scrypt` stanza and a MAC, then the payload in
chunks of 64 KiB, each sealed by ChaCha20-Poly1305 (RFC 8439). HKDF is that of RFC 5869 with SHA-256.
"""

import base64
import hashlib
import hmac
import os

from nacl.bindings import (
    crypto_aead_chacha20poly1305_ietf_decrypt as unseal,
    crypto_aead_chacha20poly1305_ietf_encrypt as seal,
)

VERSION = b"age-encryption.org/v1"
CHUNK = 64 * 1024
TAG = 16


def b64(data):
    return base64.b64encode(data).rstrip(b"=")


def unb64(text):
    return base64.b64decode(text + b"=" * (-len(text) % 4), validate=True)


def hkdf(key, salt, info):
    """One block of output, 32 bytes."""
    extracted = hmac.digest(salt or bytes(32), key, "sha256")
    return hmac.digest(extracted, info + b"\x01", "sha256")


def wrapping_key(passphrase, salt, work_factor):
    n = 2**work_factor
    salt = VERSION + b"/scrypt" + salt
    return hashlib.scrypt(passphrase.encode(), salt=salt, n=n, r=8, p=1, maxmem=200 * 8 * n, dklen=32)


def work_factor(file):
    return int(file.split(b"\n")[1].split(b" ")[3])


def nonces(count):
    return [number.to_bytes(11, "big") + bytes([number == count - 1]) for number in range(count)]


def decrypt(file, passphrase):
    version, stanza, body, mac, payload = file.split(b"\n", 4)
    arrow, kind, salt, factor = stanza.split(b" ")
    assert (version, arrow, kind) == (VERSION, b"->", b"scrypt")
    wrapping = wrapping_key(passphrase, unb64(salt), int(factor))
    file_key = unseal(unb64(body), None, bytes(12), wrapping)
    header = b"\n".join([version, stanza, body, b"---"])
    assert mac == b"--- " + b64(hmac.digest(hkdf(file_key, b"", b"header"), header, "sha256"))
    key, sealed = hkdf(file_key, payload[:16], b"payload"), payload[16:]
    chunks = [sealed[at : at + CHUNK + TAG] for at in range(0, len(sealed), CHUNK + TAG)]
    return b"".join(unseal(chunk, None, nonce, key) for chunk, nonce in zip(chunks, nonces(len(chunks))))


def encrypt(data, passphrase, work_factor):
    salt, file_key, nonce = os.urandom(16), os.urandom(16), os.urandom(16)
    body = seal(file_key, None, bytes(12), wrapping_key(passphrase, salt, work_factor))
    stanza = b" ".join([b"->", b"scrypt", b64(salt), str(work_factor).encode()])
    header = b"\n".join([VERSION, stanza, b64(body), b"---"])
    mac = b64(hmac.digest(hkdf(file_key, b"", b"header"), header, "sha256"))
    key = hkdf(file_key, nonce, b"payload")
    chunks = [data[at : at + CHUNK] for at in range(0, len(data), CHUNK)]
    sealed = [seal(chunk, None, number, key) for chunk, number in zip(chunks, nonces(len(chunks)))]
    return header + b" " + mac + b"\n" + nonce + b"".join(sealed)
