"""The square of a card of 120 visits beside libqrencode drawing the same text: in turns, on this machine, both warm.

Not a test, because a busy machine would fail it: `python square_speed.py PROGRAM [ROUNDS]`, where PROGRAM is the bench
binary of the crate card, as `cargo bench -p card --bench sheet --no-run` names it. Needs Debian's libqrencode4. The library
is called in this process, through its C interface, so that starting a program is not counted against it.
"""

import ctypes
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from statistics import median

WARM_UP = 5
# QRecLevel and QRencodeMode of qrencode.h, version 4.1.1.
LEVELS = {"L": 0, "M": 1, "Q": 2, "H": 3}
MODE_8 = 2


def library():
    found = ctypes.CDLL("libqrencode.so.4")
    found.QRcode_encodeString.restype = ctypes.POINTER(ctypes.c_int)
    found.QRcode_encodeString.argtypes = [ctypes.c_char_p, ctypes.c_int, ctypes.c_int, ctypes.c_int, ctypes.c_int]
    found.QRcode_free.argtypes = [ctypes.c_void_p]
    return found


def theirs(found, text, version, level):
    start = time.perf_counter()
    # QRcode begins with its version and its width.
    code = found.QRcode_encodeString(text, version, LEVELS[level], MODE_8, 1)
    took = (time.perf_counter() - start) * 1000
    assert code and code[0] == version, "libqrencode draws another version"
    found.QRcode_free(code)
    return took


def main(program, rounds=101):
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run([program, "--pages", folder], check=True)
        text = Path(folder, "square.txt").read_bytes()
        version, level = Path(folder, "square.kind").read_text().split()
    found = library()
    with subprocess.Popen([program, "--beside", "square"], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True) as core:
        times = []
        for _ in range(WARM_UP + int(rounds)):
            core.stdin.write("\n")
            core.stdin.flush()
            times.append((float(core.stdout.readline()), theirs(found, text, int(version), level)))
        core.stdin.close()
    ours, qrencode = (median(side) for side in zip(*times[WARM_UP:]))
    print(f"version {version}, level {level}, {len(text)} characters, {rounds} rounds, medians")
    print(f"core {ours:.2f} ms, libqrencode {qrencode:.2f} ms: it takes {qrencode / ours:.2f} times as long")


if __name__ == "__main__":
    main(*sys.argv[1:])
