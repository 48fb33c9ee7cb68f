"""Rows of sizes and ranges that ran together without units: ``10L8 - 953½ - 5562 - 80``.

A seam lies somewhere between the end of one range and the beginning of the next. The table is
parted where one way alone makes every range rise, no column fall from row to row and the numbers
of the sizes rise; a person compares it all the same. Where none or several ways do, no line of the
block is read. ``6X`` is a size of children in the United States (common practice, no source).
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.glued import parted_headings
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.value_runs import rises
from charts.readers.captured.values import is_value

_FEWEST: Final = 3
_LONGEST: Final = 200
_MOST_ROWS: Final = 40
_LETTERS: Final = r"(?P<letters>[2-6]?X{0,4}[SL]|M|[2-6]XL)"
_LABELS: Final = (
    re.compile(rf"(?P<number>\d{{1,2}}){_LETTERS}(?=\d)"),
    re.compile(rf"(?P<number>6X){_LETTERS}(?=\d)"),
    re.compile(rf"(?P<number>){_LETTERS}(?=\d)"),
)
_ROW: Final = re.compile(r"\d{0,2}X{0,4}[SML]\d[\d\s.,½¼¾–-]+")
_JOINT: Final = re.compile(r"\s*[-–]\s*")
_FIGURE: Final = re.compile(r"(?P<whole>0|[1-9]\d{0,2})(?P<part>[.,]\d)?\s?(?P<fraction>[½¼¾])?")
_FRACTION: Final = {"½": Decimal("0.5"), "¼": Decimal("0.25"), "¾": Decimal("0.75")}
_WIDEST: Final = Decimal("1.5")
_WIDEST_SMALL: Final = 4
"""A range ends at most half as high again as it begins, or four further on: years of children."""


@dataclass(frozen=True, slots=True)
class _Way:
    """One way to part a row: the texts of its cells, and what must not fall to the next row."""

    texts: tuple[str, ...]
    number: Decimal | None
    letters: str
    ends: tuple[Decimal, ...]


def glued_ranges_table(lines: Sequence[Line]) -> LineTable | None:
    """The table of glued ranges below the headings that ``lines`` begin with; else None."""
    if len(lines) <= _FEWEST or not _ROW.fullmatch(lines[1].text.strip()):
        return None
    heads = parted_headings(lines[0].text)
    if not _names_columns(heads):
        return None
    rows: list[list[_Way]] = []
    for line in lines[1 : _MOST_ROWS + 1]:
        text = line.text.strip()
        if len(text) > _LONGEST or not _ROW.fullmatch(text):
            break
        rows.append(_ways(text, len(heads)))
    if len(rows) < _FEWEST or not any(rows):
        return None
    ways = _only_way(rows)
    used = lines[: len(rows) + 1]
    if ways is None:
        return LineTable([[LineCell(one.text, one.number)] for one in used], len(used), lost=True)
    texts = [heads, *(way.texts for way in ways)]
    cells = [
        [LineCell(text, line.number) for text in row] for row, line in zip(texts, used, strict=True)
    ]
    return LineTable(cells, len(used), inferred=True)


def _names_columns(heads: Sequence[str]) -> bool:
    """Whether a size comes first and two or more measures or ages follow."""
    roles = [read_heading(one).role for one in heads]
    measures = roles.count(Role.MEASURE)
    return roles[:1] == [Role.LABEL] and measures > 1 and not any(map(is_value, heads))


def _ways(text: str, count: int) -> list[_Way]:
    """Every way to part a row into ``count`` cells, the sizes first and ranges behind them."""
    found: list[_Way] = []
    for pattern in _LABELS:
        label = pattern.match(text)
        if label is None:
            continue
        labels = [one for one in (label["number"], label["letters"]) if one]
        ranges = _ranges(text[label.end() :], count - len(labels))
        found += [_way(label, labels, one) for one in ranges]
    return found


def _way(label: re.Match[str], labels: Sequence[str], ranges: Sequence[tuple[str, str]]) -> _Way:
    number = Decimal(label["number"].replace("X", ".5")) if label["number"] else None
    ends = tuple(_number(end) for pair in ranges for end in pair)
    texts = (*labels, *(f"{low} - {high}" for low, high in ranges))
    return _Way(texts, number, label["letters"], ends)


def _ranges(text: str, count: int) -> list[list[tuple[str, str]]]:
    """Every way to part ``3 - 439 - 41½31 - 38`` into ``count`` ranges that may be ones."""
    pieces = _JOINT.split(text.strip())
    if count < 2 or len(pieces) != count + 1 or not all(pieces):
        return []
    ways: list[tuple[list[tuple[str, str]], str]] = [([], pieces[0])]
    for piece in pieces[1:-1]:
        ways = [
            ([*before, (low, piece[:at].strip())], piece[at:].strip())
            for before, low in ways
            for at in range(1, len(piece))
            if _may_range(low, piece[:at])
        ]
    return [[*before, (low, pieces[-1])] for before, low in ways if _may_range(low, pieces[-1])]


def _may_range(low_text: str, high_text: str) -> bool:
    if not _FIGURE.fullmatch(low_text.strip()) or not _FIGURE.fullmatch(high_text.strip()):
        return False
    low, high = _number(low_text), _number(high_text)
    return low < high <= max(low * _WIDEST, low + _WIDEST_SMALL)


def _number(text: str) -> Decimal:
    """The figure of a text that is one. Raises ValueError for any other."""
    found = _FIGURE.fullmatch(text.strip())
    if found is None:
        raise ValueError(text)
    whole = Decimal(found["whole"] + (found["part"] or "").replace(",", "."))
    return whole + _FRACTION.get(found["fraction"], Decimal(0))


def _only_way(rows: Sequence[Sequence[_Way]]) -> list[_Way] | None:
    """The one way to part all rows so that nothing falls; None for none or for several."""
    chains = [([way], 1) for way in rows[0]]
    for row in rows[1:]:
        chains = [
            ([*before[0][0], way], sum(ways for _, ways in before))
            for way in row
            if (before := [one for one in chains if _follows(one[0][-1], way)])
        ]
    return chains[0][0] if len(chains) == 1 and chains[0][1] == 1 else None


def _follows(before: _Way, way: _Way) -> bool:
    if len(before.texts) != len(way.texts) or (before.number is None) != (way.number is None):
        return False
    if before.number is not None and way.number is not None and before.number >= way.number:
        return False
    if before.letters != way.letters and not rises((before.letters, way.letters)):
        return False
    return all(a <= b for a, b in zip(before.ends, way.ends, strict=True))
