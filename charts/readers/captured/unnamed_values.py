"""Sizes with values of two kinds that nobody names: ``S: 165-172 cm, 55-65 kg`` a line.

Each value has its own unit, and those units tell the columns: a length beside a mass. What they
measure is for the headings to say, or for a person.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final, NamedTuple

from charts.notation import Expected, read_cell
from charts.quantities import FAMILY, Family
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.prose import common_head
from charts.readers.captured.said import unbulleted
from charts.readers.captured.size_names import size_line

_LINE: Final = re.compile(
    r"(?P<label>[^:=(]{1,24}?)\s*(?:[:=]|\s[-–—]\s|\(|\s(?=\d))\s*(?P<said>[^()]{6,90}?)\)?[.;,]?"
)
_PARTS: Final = re.compile(
    r"\s*[,;|·&]\s+|\s+[/|·•+]\s*|\s*/\s+"
    r"|\s+(?:and|und|et|y|e|ve|i|en|og|och|a)\s+(?=\d)|(?<=cm|kg|in|lb)s?\s+(?=\d)",
    re.IGNORECASE,
)
_PLAIN: Final = Expected()
_LONGEST: Final = 120
_FEWEST: Final = 2


class _Row(NamedTuple):
    """A size with its values by their kinds, in the order of the first line."""

    label: str
    values: tuple[tuple[Family, str], ...]
    line: int


def unnamed_values_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that such lines at the beginning of ``lines`` make; None when they make none."""
    found: list[_Row] = []
    used = 0
    for at, line in enumerate(lines):
        if not line.text.strip():
            continue
        row = _row(line)
        if row is None or (found and not _goes_on(found, row)):
            break
        found.append(row)
        used = at + 1
    if len(found) < _FEWEST:
        return None
    head, labels = common_head([one.label for one in found])
    kinds = [kind for kind, _ in found[0].values]
    rows = [[head, *("" for _ in kinds)]] if head else []
    told = [dict(one.values) for one in found]
    rows += [
        [label, *(each[kind] for kind in kinds)] for label, each in zip(labels, told, strict=True)
    ]
    numbers = [found[0].line] * bool(head) + [one.line for one in found]
    cells = [
        [LineCell(text, number) for text in row] for row, number in zip(rows, numbers, strict=True)
    ]
    return LineTable(cells, used)


def _goes_on(found: Sequence[_Row], row: _Row) -> bool:
    """Whether it is a further size of the same list: no size again, and the same kinds."""
    kinds = {kind for kind, _ in row.values}
    return kinds == {kind for kind, _ in found[0].values} and row.label not in {
        one.label for one in found
    }


def _row(line: Line) -> _Row | None:
    text = unbulleted(line.text).strip()
    match = _LINE.fullmatch(text) if len(text) <= _LONGEST else None
    if match is None or size_line(match["label"]) is None:
        return None
    values = tuple(_value(part.strip()) for part in _PARTS.split(match["said"]) if part.strip())
    known = tuple(one for one in values if one is not None)
    kinds = {kind for kind, _ in known}
    if len(known) < len(values) or len(kinds) < len(known) or len(known) < 2:
        return None
    return _Row(match["label"].strip(), known, line.number) if Family.LENGTH in kinds else None


def _value(text: str) -> tuple[Family, str] | None:
    """A value with a unit of its own, and the kind of its unit."""
    if not any(map(str.isdigit, text)):
        return None
    quantity = read_cell(text, _PLAIN).quantity
    if quantity is None or quantity.unit is None:
        return None
    return FAMILY[quantity.unit], text
