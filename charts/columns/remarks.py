"""Words behind the figures of a cell: ``84-88 (limited)``, ``90 NEU``. The figures are kept.

What the words mean nobody knows: they may be news, or say of what the figures are.
"""

from __future__ import annotations

import re
from typing import Final

from charts.cell_reading import CellReading, Expected, Reading
from charts.cell_text import clean
from charts.notation import read_cell

REMARK: Final = "remark"
"""The code of such a reading: no finding's, as all of a file are one question."""
_REMARKED: Final = re.compile(
    r"(?P<figures>[^()\[\]]*?\d[^()\[\]]*?)"
    r"(?:\s*[(\[][^\d()\[\]]{2,40}[)\]]|\s*[*!–,;-]?\s+[^\W\d_]{3,15}[.!*]?)"
)
_NO_FIGURES: Final = frozenset({Reading.UNREAD, Reading.NOTE})


def without_remark(reading: CellReading, text: str, expected: Expected) -> CellReading:
    """The reading of a cell as it is, or of the figures before its words, to be asked about."""
    if reading.reading not in _NO_FIGURES or reading.quantity is not None:
        return reading
    match = _REMARKED.fullmatch(clean(text))
    if match is None:
        return reading
    found = read_cell(match["figures"], expected)
    if found.reading is not Reading.READ or found.quantity is None or found.label is not None:
        return reading
    return found._replace(reading=Reading.ASK, code=REMARK)
