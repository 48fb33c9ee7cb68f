"""What a PDF file would swell to, measured before anybody takes it apart.

A PDF is a row of packed streams; a few hundred bytes of one can unpack to a gigabyte. Each is
unpacked here piece by piece and thrown away, until it is done or too large.
"""

from __future__ import annotations

import base64
import re
import zlib
from collections.abc import Iterator
from typing import Final

from charts.readers.source import MEGABYTE, UnusableSourceError, too_many

_STREAM: Final = re.compile(rb"(?<!end)stream\r?\n")
_END: Final = b"endstream"
_ESCAPED: Final = re.compile(rb"#([0-9A-Fa-f]{2})")
_LARGEST_PICTURE: Final = 160 * MEGABYTE
_LARGEST_STREAM: Final = 24 * MEGABYTE
_LARGEST_TOGETHER: Final = 200 * MEGABYTE
_MOST_STREAMS: Final = 20_000
_LARGEST_OLD: Final = MEGABYTE // 4
"""Bytes of a stream packed in one of the old ways: they unpack slowly, up to a thousandfold."""
_LONGEST_HEAD: Final = 4_000
_PIECE: Final = MEGABYTE
_PACKED_AGAIN: Final = 20_000
_OLD_WAYS: Final = (b"LZWDecode", b"RunLengthDecode", b"ASCIIHexDecode", b"/LZW", b"/RL")


def refuse_if_swollen(data: bytes) -> None:
    """Raise UnusableSourceError where a stream of ``data`` holds more than any page does."""
    together = 0
    for count, (head, packed) in enumerate(_streams(data)):
        if count > _MOST_STREAMS:
            raise too_many(count)
        if len(packed) > _LARGEST_OLD and any(way in head for way in _OLD_WAYS):
            raise _too_large(len(packed))
        picture = b"/Image" in head
        size = _unpacked(_bare(head, packed), _LARGEST_PICTURE if picture else _LARGEST_STREAM)
        together += 0 if picture else size
        if together > _LARGEST_TOGETHER:
            raise _too_large(together)


def _streams(data: bytes) -> Iterator[tuple[bytes, bytes]]:
    """Each stream with what stands before it; names freed of their escapes."""
    end = 0
    while found := _STREAM.search(data, end):
        start = data.rfind(b"obj", max(end, found.start() - _LONGEST_HEAD), found.start())
        head = data[
            start if start >= 0 else max(end, found.start() - _LONGEST_HEAD) : found.start()
        ]
        end = data.find(_END, found.end())
        end = len(data) if end < 0 else end
        yield _ESCAPED.sub(lambda one: bytes([int(one[1], 16)]), head), data[found.end() : end]


def _bare(head: bytes, packed: bytes) -> bytes:
    """A stream that is also written in letters, as bytes again."""
    if b"ASCII85Decode" not in head and b"/A85" not in head:
        return packed
    try:
        return base64.a85decode(packed.strip().removesuffix(b"~>"))
    except ValueError:
        return packed


def _unpacked(packed: bytes, most: int) -> int:
    """How many bytes ``packed`` unpacks to; as many as it has where it is not packed so."""
    unpacker = zlib.decompressobj()
    size, rest = 0, packed
    try:
        while rest and not unpacker.eof:
            piece = unpacker.decompress(rest, _PIECE)
            rest = unpacker.unconsumed_tail
            if size == 0 and _is_packed(piece):
                raise _too_large(len(packed))  # packed twice: nothing but a trap is written so
            size += len(piece)
            if size > most:
                raise _too_large(size)
    except zlib.error:
        return max(size, len(packed))
    return max(size, len(packed))


def _is_packed(piece: bytes) -> bool:
    if piece[:1] != b"x":
        return False
    try:
        return len(zlib.decompressobj().decompress(piece, _PACKED_AGAIN)) >= _PACKED_AGAIN
    except zlib.error:
        return False


def _too_large(size: int) -> UnusableSourceError:
    return UnusableSourceError("too-large", f"{max(1, size // MEGABYTE)} MB")
