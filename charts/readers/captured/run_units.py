"""Whether two runs of values give the same in two units, and such runs put together."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.dimensions import find_units
from charts.notation import read_cell
from charts.quantities import Unit
from charts.readers.captured.lines import LineCell

_IMPERIAL: Final = ('"', "”", "″", "''")
_LAST_WORD: Final = re.compile(r"[^\W\d_]+\.?\Z")


def paired(cells: Sequence[LineCell]) -> list[LineCell]:
    """Two values of each size as one cell, where they stand alternately in two units."""
    first, second = cells[::2], cells[1::2]
    if not other_unit(first, second):
        half = len(cells) // 2
        first, second = cells[:half], cells[half:]
        if not other_unit(first, second):
            return []
    return [
        LineCell(f"{one.text}\n{other.text}", one.line)
        for one, other in zip(first, second, strict=True)
    ]


def both_ways(cells: Sequence[LineCell]) -> list[LineCell]:
    """``80-88 88-96 31½-34½ 34½-37¾``: each size in cm, then each in inches, as its figures prove.

    Empty where a single pair of them is not the same in two units.
    """
    half = len(cells) // 2
    pairs = [
        LineCell(f"{one.text}\n{other.text}", one.line)
        for one, other in zip(cells[:half], cells[half:], strict=True)
    ]
    return pairs if all(read_cell(one.text).also is not None for one in pairs) else []


def _unit_of(cells: Sequence[LineCell]) -> Unit | None:
    """The one unit that all of the cells print; None where they print none or several."""
    found = {_printed_unit(cell.text) for cell in cells}
    return found.pop() if len(found) == 1 else None


def _printed_unit(text: str) -> Unit | None:
    if text.endswith(_IMPERIAL):
        return Unit.IN
    last = _LAST_WORD.search(text)
    units = find_units(last[0]) if last is not None else ()
    return units[0] if units else None


def other_unit(before: Sequence[LineCell], cells: Sequence[LineCell]) -> bool:
    """Whether both runs print a unit each, and not the same."""
    units = _unit_of(before), _unit_of(cells)
    return None not in units and units[0] is not units[1]
