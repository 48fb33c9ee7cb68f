"""A size a line with two figures crossed behind it: ``S 49.5cm x 68cm``, ``M: 53 × 70 cm``.

Such lines tell no measure's name: the two columns are left without one, so that they are asked,
unless a line above says what comes first: ``width x length``, ``first is width, second is length``.
A person compares which is which.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.schema import Dimension
from charts.size_labels import read_label

_FIGURE: Final = r"\d{1,3}(?:[.,]\d{1,2})?(?:\s?[½¼¾⅛⅜⅝⅞])?"
_UNIT: Final = r"(?:\s?(?:cms?|mm|in(?:ch(?:es)?)?|[\"”″])\.?)"
_CROSSED: Final = re.compile(
    rf"\s*(?P<label>[^\s:=]{{1,8}}(?: [^\W\d_]{{1,12}})?)\s*(?:[:=]|\s[-–]|\s)\s*"
    rf"(?P<first>{_FIGURE})(?P<unit>{_UNIT})?\s?[x×X*]\s?(?P<second>{_FIGURE})"
    rf"(?P<other>{_UNIT})?\s*[.;,]?\s*"
)
_TOLD: Final = re.compile(
    r".*?(?P<first>(?:half\s|½\s?)?[^\W\d_]+)\s*[x×X]\s*(?P<second>[^\W\d_]+)[).:\s]*"
    r"|.*?\bfirst\b[^,;.\d]*?(?P<one>(?:half\s|½\s?)?[^\W\d_]+)\s*[,;]\s*(?:and\s)?(?:the\s)?second\b[^,;.\d]*?"
    r"(?P<other>[^\W\d_]+)\s*\.?",
    re.IGNORECASE,
)
"""What stands before the sign and what behind it."""
_LINES_BETWEEN: Final = 4
_MOST_LINES: Final = 60
_LONGEST_WORDS: Final = 120
_FEWEST: Final = 2
_LONGEST_LABEL: Final = 14


def crossed_table(lines: Sequence[Line]) -> LineTable | None:
    """The table of crossed figures that ``lines`` begin with; None for fewer than two such lines.

    Where only the second figure has a unit it holds for both.
    """
    rows = _rows(lines)
    if not rows:
        return _named_table(lines)
    head = [LineCell("", lines[0].number)] * 3
    return LineTable([head, *rows], len(rows))


def _rows(lines: Sequence[Line]) -> list[list[LineCell]]:
    """The rows that follow each other; none for fewer than two, or a size that comes twice."""
    rows: list[list[LineCell]] = []
    for line in lines:
        cells = _cells(line)
        if cells is None:
            break
        rows.append(cells)
    labels = {row[0].text for row in rows}
    return [] if len(rows) < _FEWEST or len(labels) < len(rows) else rows


def _named_table(lines: Sequence[Line]) -> LineTable | None:
    """Groups of rows below a line that says what is crossed, each under its titles."""
    names = _told(lines[0]) if lines else None
    if names is None:
        return None
    table = [[LineCell(lines[0].text.strip(), lines[0].number)]]
    titles: list[list[LineCell]] = []
    used, at = 0, 1
    while at < min(len(lines), _MOST_LINES) and len(titles) <= _LINES_BETWEEN:
        if rows := _rows(lines[at:]):
            head = [LineCell(text, lines[0].number) for text in ("", *names)]
            table += [*titles, head, *rows]
            titles, at = [], at + len(rows)
            used = at
            continue
        text = lines[at].text.strip()
        titles += [[LineCell(text, lines[at].number)]] if text else []
        at += 1
    return LineTable(table, used, inferred=True) if used else None


def _told(line: Line) -> tuple[str, str] | None:
    """What a line says to be first and second, where both are measures; else None."""
    text = line.text.strip()
    found = _TOLD.fullmatch(text) if len(text) <= _LONGEST_WORDS else None
    if found is None:
        return None
    first, second = found["first"] or found["one"], found["second"] or found["other"]
    headings = [read_heading(name) for name in (first, second)]
    known = all(
        Role.MEASURE in {one.role, *(role for role, _ in one.candidates)} for one in headings
    )
    return (_of_a_garment(first), _of_a_garment(second)) if known else None


def _of_a_garment(name: str) -> str:
    """The name; "" for a height, which is no rider's where a width is crossed with it."""
    return "" if read_heading(name).dimension is Dimension.HEIGHT else name


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
