"""A size a line with two figures crossed behind it: ``S 49.5cm x 68cm``, ``M: 53 × 70 cm``.

Such lines tell no measure's name: the two columns are left without one, so that they are asked.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.readers.lines import Line, LineCell, LineTable
from charts.size_labels import read_label

_FIGURE: Final = r"\d{1,3}(?:[.,]\d{1,2})?(?:\s?[½¼¾⅛⅜⅝⅞])?"
_UNIT: Final = r"(?:\s?(?:cms?|mm|in(?:ch(?:es)?)?|[\"”″])\.?)"
_CROSSED: Final = re.compile(
    rf"\s*(?P<label>[^\s:=]{{1,8}}(?: [^\W\d_]{{1,12}})?)\s*(?:[:=]|\s[-–]|\s)\s*"
    rf"(?P<first>{_FIGURE})(?P<unit>{_UNIT})?\s?[x×X*]\s?(?P<second>{_FIGURE})"
    rf"(?P<other>{_UNIT})?\s*[.;,]?\s*"
)
_FEWEST: Final = 2
_LONGEST_LABEL: Final = 14


def crossed_table(lines: Sequence[Line]) -> LineTable | None:
    """The table of crossed figures that ``lines`` begin with; None for fewer than two such lines.

    Where only the second figure has a unit it holds for both.
    """
    rows: list[list[LineCell]] = []
    for line in lines:
        cells = _cells(line)
        if cells is None:
            break
        rows.append(cells)
    labels = {row[0].text for row in rows}
    if len(rows) < _FEWEST or len(labels) < len(rows):
        return None
    head = [LineCell("", lines[0].number)] * 3
    return LineTable([head, *rows], len(rows))


def _cells(line: Line) -> list[LineCell] | None:
    found = _CROSSED.fullmatch(line.text) if len(line.text) <= 80 else None
    if found is None or len(found["label"]) > _LONGEST_LABEL:
        return None
    if read_label(found["label"]) is None and not _ends_in_size(found["label"]):
        return None
    unit = found["unit"] or found["other"] or ""
    texts = (
        found["label"],
        f"{found['first']}{unit}",
        f"{found['second']}{found['other'] or unit}",
    )
    return [LineCell(text, line.number) for text in texts]


def _ends_in_size(label: str) -> bool:
    """Whether a letter for whose size it is stands before a size: ``LXS``, ``Y2XL``."""
    return label[:1].isalpha() and read_label(label[1:]) is not None
