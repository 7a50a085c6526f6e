#!/usr/bin/env python3
"""Draws the program's icon, a plumb bob on its string, as PNG and ICO files beside this script.

Needs only Python's standard library. Run it after changing a shape or colour, and commit the files.
"""
import struct
import zlib
from pathlib import Path

PAPER, INK, BOB = (0xFA, 0xF7, 0xF1), (0x20, 0x29, 0x2E), (0xB0, 0x7C, 0x22)
SIZES = (16, 32, 48, 128, 256, 512)
FINE = 4  # each pixel is the mean of FINE by FINE points


def colour_at(x, y):
    """The colour at a point of the unit square, or None outside the rounded sheet."""
    corner = 0.2
    dx, dy = max(abs(x - 0.5) - (0.5 - corner), 0), max(abs(y - 0.5) - (0.5 - corner), 0)
    if dx * dx + dy * dy > corner * corner:
        return None
    top, belly, tip, half = 0.40, 0.54, 0.90, 0.155  # the bob: a diamond, longer below
    if top <= y <= tip:
        width = half * ((y - top) / (belly - top) if y < belly else (tip - y) / (tip - belly))
        if abs(x - 0.5) <= width:
            return BOB
    if y <= top + 0.02 and abs(x - 0.5) <= 0.026:
        return INK
    return PAPER


def pixel(column, row, size):
    points = [colour_at((column + (i + 0.5) / FINE) / size, (row + (j + 0.5) / FINE) / size)
              for i in range(FINE) for j in range(FINE)]
    seen = [p for p in points if p]
    if not seen:
        return bytes(4)
    mean = [round(sum(p[c] for p in seen) / len(seen)) for c in range(3)]
    return bytes(mean + [round(255 * len(seen) / len(points))])


def png(size):
    rows = b"".join(b"\0" + b"".join(pixel(x, y, size) for x in range(size)) for y in range(size))

    def chunk(kind, data):
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))

    header = struct.pack(">IIBBBBB", size, size, 8, 6, 0, 0, 0)
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", header) + chunk(b"IDAT", zlib.compress(rows, 9)) + chunk(b"IEND", b"")


def ico(pictures):
    entries, data, offset = b"", b"", 6 + 16 * len(pictures)
    for size, picture in pictures:
        entries += struct.pack("<BBBBHHII", size % 256, size % 256, 0, 0, 1, 32, len(picture), offset + len(data))
        data += picture
    return struct.pack("<HHH", 0, 1, len(pictures)) + entries + data


if __name__ == "__main__":
    here = Path(__file__).parent
    drawn = {size: png(size) for size in SIZES}
    for size in (32, 128, 256, 512):
        (here / f"{size}x{size}.png").write_bytes(drawn[size])
    (here / "icon.ico").write_bytes(ico([(size, drawn[size]) for size in (16, 32, 48, 256)]))
