"""How much an old workbook (.xls) holds, counted before anything of it is taken apart.

A book is a row of records, each with its kind and its length; going over them costs a
hundredth of what reading the cells costs.
"""

from __future__ import annotations

import struct
from typing import Final

from charts.readers.source import MOST_CELLS, too_many

# INTEGER, NUMBER, LABEL, BOOLERR, FORMULA, RSTRING, LABELSST and RK of every version.
# fmt: off
_ONE_CELL: Final = frozenset((
    0x02, 0x03, 0x04, 0x05, 0x06, 0x7E, 0xD6, 0xFD, 0x203, 0x204, 0x205, 0x206, 0x27E, 0x406,
))
# fmt: on
_MANY_NUMBERS: Final = 0x00BD
_MANY_BLANKS: Final = 0x00BE
_BLANK: Final = frozenset((0x0001, 0x0201))
_MOST_BLANKS: Final = 5 * MOST_CELLS
_MOST_RECORDS: Final = 600_000


def refuse_if_swollen(stream: bytes) -> None:
    """Raise UnusableSourceError where ``stream`` holds more than any chart's book does."""
    filled = blank = count = at = 0
    end = len(stream) - 4
    while at <= end:
        kind, length = struct.unpack_from("<HH", stream, at)
        at += 4 + length
        count += 1
        if kind in _ONE_CELL:
            filled += 1
        elif kind == _MANY_NUMBERS:
            filled += max(0, length - 6) // 6
        elif kind == _MANY_BLANKS:
            blank += max(0, length - 6) // 2
        elif kind in _BLANK:
            blank += 1
        if filled > MOST_CELLS or blank > _MOST_BLANKS or count > _MOST_RECORDS:
            raise too_many(max(filled, blank, count))
