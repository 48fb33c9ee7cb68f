"""Rows whose cells ran together but end in a unit each: ``S86-92 cm91-96 cm97-104 cm``.

Where every figure is closed by its unit and the headings change from small letters to a capital,
the seams are plain. Counts must agree in all rows and headings; the table is asked about all the
same. Without units the seams are lost for good: ``S33.535.5``.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.value_runs import is_size
from charts.readers.captured.values import is_value

_UNITED: Final = re.compile(
    r"[<>~]?\s?\d{1,3}(?:[.,]\d)?(?:\s?[-–]\s?\d{1,3}(?:[.,]\d)?)?\s?(?:cm|mm|kg|lbs|in|\"|”|″)"
)
_LABEL: Final = re.compile(r"[2-6]?X{0,4}[SML]|[2-6]XL")
_SEAM: Final = re.compile(r"(?<=[^\W\d_A-Z])(?=[A-ZÄÖÜÉÈÀÓ])|(?<=\))(?=[^\W\d_])")
_LONGEST: Final = 200
_FEWEST: Final = 2


def glued_table(lines: Sequence[Line]) -> LineTable | None:
    """The table of glued rows below the headings that ``lines`` begin with; else None."""
    if len(lines) <= _FEWEST or len(lines[0].text) > _LONGEST:
        return None
    rows: list[list[LineCell]] = []
    for line in lines[1:]:
        cells = _cells(line.text.strip())
        if cells is None or (rows and len(cells) != len(rows[0])):
            break
        rows.append([LineCell(text, line.number) for text in cells])
    heads = parted_headings(lines[0].text)
    if len(rows) < _FEWEST or len(heads) != len(rows[0]) or any(map(is_value, heads)):
        return None
    labels = {row[0].text for row in rows}
    if len(labels) < len(rows):
        return None
    head = [LineCell(text.strip(), lines[0].number) for text in heads]
    return LineTable([head, *rows], len(rows) + 1, inferred=True)


def parted_headings(text: str) -> list[str]:
    """Headings that ran together, parted where small letters or a bracket meet a capital."""
    return [one.strip() for one in _SEAM.split(text.strip())] if len(text) <= _LONGEST else []


def _cells(text: str) -> list[str] | None:
    """A label of letters and two or more figures with their units; None for anything else."""
    label = _LABEL.match(text) if len(text) <= _LONGEST else None
    if label is None or not is_size(label[0]):
        return None
    cells, end = [label[0]], label.end()
    while (value := _UNITED.match(text, end)) is not None:
        cells.append(value[0].strip())
        end = value.end()
    return cells if end == len(text) and len(cells) > _FEWEST else None
