"""The box that files of old office programs lie in: sectors chained by a table, taken out here.

xlrd follows the chain of a small stream without end where a damaged table makes it a ring; so the
stream is taken out before xlrd sees anything, and no chain is followed past its own table.
"""

from __future__ import annotations

import struct
from collections.abc import Sequence
from typing import Final

from charts.readers.source import UnusableSourceError

BOX_MARK: Final = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
_HEADER: Final = 512
_IN_HEADER: Final = 109
_ENTRY: Final = 128
_STREAM: Final = 2
_ROOT: Final = 5
_SHIFTS: Final = range(6, 17)


def stream_of(data: bytes, names: Sequence[str]) -> bytes:
    """The first stream of the box that bears one of ``names``; b"" where none does.

    Raises UnusableSourceError where the box is damaged.
    """
    try:
        return _Box(data).stream(names)
    except (struct.error, IndexError, ValueError) as problem:
        raise UnusableSourceError("truncated") from problem


class _Box:
    def __init__(self, data: bytes) -> None:
        self._data = data
        shift, small_shift = struct.unpack_from("<HH", data, 30)
        if shift not in _SHIFTS or small_shift not in _SHIFTS:
            raise UnusableSourceError("truncated")
        self._size, self._small_size = 1 << shift, 1 << small_shift
        self._first, self._cutoff, small = struct.unpack_from("<i4xIi", data, 48)
        self._table = self._read_table()
        self._small_table = _numbers(self._joined(small))

    def stream(self, names: Sequence[str]) -> bytes:
        entries = self._joined(self._first)
        found: dict[str, tuple[int, int]] = {}
        inner = b""
        for at in range(0, len(entries) - _ENTRY + 1, _ENTRY):
            length, kind = struct.unpack_from("<HB", entries, at + 64)
            start, size = struct.unpack_from("<iI", entries, at + 116)
            name = entries[at : at + max(0, min(length, 64) - 2)].decode("utf-16-le")
            if kind == _ROOT:
                inner = self._joined(start)[:size]
            elif kind == _STREAM:
                found.setdefault(name.lower(), (start, size))
        for name in names:
            if name.lower() in found:
                return self._taken(*found[name.lower()], inner)
        return b""

    def _taken(self, start: int, size: int, inner: bytes) -> bytes:
        if size >= self._cutoff:
            return self._joined(start)[:size]
        step = self._small_size
        chain = _chain(start, self._small_table)
        return b"".join(inner[at * step : (at + 1) * step] for at in chain)[:size]

    def _read_table(self) -> list[int]:
        """The table that says which sector follows which."""
        sectors = list(struct.unpack_from(f"<{_IN_HEADER}i", self._data, 76))
        (more,) = struct.unpack_from("<i", self._data, 68)
        most = len(self._data) // self._size
        while more >= 0 and len(sectors) < most:
            *further, more = _numbers(self._sector(more))
            sectors += further
        return _numbers(b"".join(self._sector(at) for at in sectors[:most] if at >= 0))

    def _joined(self, start: int) -> bytes:
        return b"".join(self._sector(at) for at in _chain(start, self._table))

    def _sector(self, number: int) -> bytes:
        at = max(_HEADER, self._size) + number * self._size
        return self._data[at : at + self._size]


def _chain(start: int, table: Sequence[int]) -> list[int]:
    """The sectors from ``start`` on; a chain longer than its table goes in a ring."""
    found: list[int] = []
    while start >= 0:
        found.append(start)
        if start >= len(table) or len(found) > len(table):
            raise UnusableSourceError("truncated")
        start = table[start]
    return found


def _numbers(data: bytes) -> list[int]:
    return list(struct.unpack(f"<{len(data) // 4}i", data[: len(data) // 4 * 4]))
