"""Cells that ran together behind a unit: ``80-84 cm60-64 cm`` is two values.

Where a figure follows its neighbour's unit at once the seam is plain, whatever stands around it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.readers.captured.lines import Line, LineTable

_UNIT: Final = r"(?<=\d)(\s?(?:cm|mm|kg|lbs|in))"
_SEAM: Final = re.compile(rf"{_UNIT}(?=\d{{2,3}}(?!\d))", re.IGNORECASE)
_BEHIND: Final = re.compile(rf"{_UNIT}\s?(?=\d{{2,3}}(?!\d))", re.IGNORECASE)


def parted_at_units(lines: Sequence[Line]) -> Sequence[Line] | None:
    """The lines with a blank behind every such unit; None where no line has one."""
    if not any(_SEAM.search(line.text) for line in lines):
        return None
    return [Line(_SEAM.sub(r"\1 ", line.text), line.number) for line in lines]


def holds_seam(table: LineTable) -> bool:
    """Whether a cell of the table is still two values, one behind the unit of the other."""
    return any(_BEHIND.search(cell.text) for row in table.rows if len(row) > 1 for cell in row)
