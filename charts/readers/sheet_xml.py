"""The XML of one worksheet, freed of cells that hold nothing before it is parsed.

A formatted column or a stray format at the foot of a sheet can leave a million empty cells;
they are cut out of the bytes, which costs a thousandth of parsing them.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Final

from charts.readers.source import MEGABYTE, MOST_CELLS, UnusableSourceError, too_many
from charts.readers.xml_parts import WIDE_MARKS, narrow

_LARGEST_LEFT: Final = 12 * MEGABYTE
_ROOT: Final = re.compile(rb"<(\w+:)?worksheet\b")
_REFERENCE: Final = re.compile(r"\$?([A-Z]{1,3})\$?(\d{1,7})", re.IGNORECASE | re.ASCII)


def without_empty_cells(chunks: Iterable[bytes]) -> bytes:
    """The worksheet in ``chunks`` with its filled cells only.

    Raises UnusableSourceError when it is no worksheet, broken off, or still too large.
    """
    kept: list[bytes] = []
    rest, total = b"", 0
    marks: _Marks | None = None
    for chunk in _narrowed(chunks):
        data = rest + chunk
        end = data.rfind(b"<")  # a piece can end inside a mark
        whole, rest = data[:end], data[end:]
        marks = marks or _marks(whole)
        kept.append(marks.cut(whole))
        total += len(kept[-1])
        if total > _LARGEST_LEFT:
            raise UnusableSourceError("too-large", f"{total // MEGABYTE} MB")
    xml = b"".join([*kept, rest])
    if marks is None or (marks.cutting and marks.nameless.search(xml)):
        raise UnusableSourceError("truncated")
    count = len(marks.cell.findall(xml))
    if count > MOST_CELLS:
        raise too_many(count)
    return xml


def position(reference: str) -> tuple[int, int] | None:
    """The 0-based row and column of "C4"; None when it is no reference."""
    found = _REFERENCE.fullmatch(reference)
    if found is None or found[2] == "0":
        return None
    column = 0
    for letter in found[1].upper():
        column = column * 26 + ord(letter) - ord("A") + 1
    return int(found[2]) - 1, column - 1


@dataclass(frozen=True, slots=True)
class _Marks:
    """Patterns for one prefix of names, b"" or b"x:"."""

    cell: re.Pattern[bytes]
    empty_cell: re.Pattern[bytes]
    empty_row: re.Pattern[bytes]
    nameless: re.Pattern[bytes]
    cutting: bool

    def cut(self, xml: bytes) -> bytes:
        if not self.cutting:
            return xml
        return self.empty_row.sub(b"", self.empty_cell.sub(b"", xml))


def _marks(head: bytes) -> _Marks:
    found = _ROOT.search(head)
    if found is None:
        raise UnusableSourceError("truncated")
    marks = _marks_of(re.escape(found[1] or b""))
    return replace(marks, cutting=marks.nameless.search(head) is None)


@lru_cache(maxsize=16)
def _marks_of(name: bytes) -> _Marks:
    """Where cells or rows carry no reference, the empty ones count for the place of the rest."""
    return _Marks(
        cell=re.compile(rb"<%bc[ >]" % name),
        empty_cell=re.compile(rb"<%bc [^>]*(?:/>|></%bc>)" % (name, name)),
        empty_row=re.compile(rb"<%brow [^>]*(?:/>|>\s*</%brow>)" % (name, name)),
        nameless=re.compile(rb"<%b(?:c|row)(?:>|/>| (?![^>]*\br=))" % name),
        cutting=True,
    )


def _narrowed(chunks: Iterable[bytes]) -> Iterator[bytes]:
    pieces = iter(chunks)
    first = next(pieces, b"")
    if first.startswith(WIDE_MARKS):
        yield narrow(first + b"".join(pieces))
        return
    yield narrow(first)
    yield from pieces
