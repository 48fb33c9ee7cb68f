"""``-50``, ``70-``, ``... - 86``: a dash with a figure at one side of it.

The end may be open, or the figure that stood there is lost: the open end is taken and asked about.
"""

from __future__ import annotations

import re
from typing import Final

from charts.cell_reading import CellReading, Expected, Quantity, Reading
from charts.cell_text import clean
from charts.grammar.outcome import asked
from charts.notation import read_cell
from charts.schema import Kind

_NOTHING: Final = r"(?:\.{2,3}|…|\?|x|_)?"
_BEHIND: Final = re.compile(rf"{_NOTHING}\s*[-–—]\s*(?P<figure>\d[^-–—]*)", re.IGNORECASE)
_BEFORE: Final = re.compile(rf"(?P<figure>\d[^-–—]*?)\s*[-–—]\s*{_NOTHING}", re.IGNORECASE)
_ONE_DIGIT: Final = re.compile(r"\D*\d\D*")


def one_end(reading: CellReading, text: str, expected: Expected) -> CellReading:
    """The reading of a cell as it is, or as an open end that is asked about."""
    if reading.reading is not Reading.UNREAD or reading.quantity is not None:
        return reading
    plain = clean(text)
    for pattern, kind in ((_BEHIND, Kind.AT_MOST), (_BEFORE, Kind.AT_LEAST)):
        match = pattern.fullmatch(plain)
        if match is not None and not _ONE_DIGIT.fullmatch(plain):
            found = read_cell(match["figure"], expected)
            return _open(found, kind) or reading
    return reading


def _open(found: CellReading, kind: Kind) -> CellReading | None:
    single = found.quantity
    if found.reading is not Reading.READ or single is None or single.kind is not Kind.SINGLE:
        return None
    up_to = kind is Kind.AT_MOST
    ends = (None, single.value) if up_to else (single.value, None)
    text = f"{'≤' if up_to else '≥'} {single.text}"
    end: Quantity = single._replace(kind=kind, text=text, value=None, low=ends[0], high=ends[1])
    return asked("double-range", end, ((end, "end-open"), (single, "figure-alone")))
