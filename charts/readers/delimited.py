"""Delimited text to one sheet: the separator is the one that gives even rows."""

from __future__ import annotations

import csv
import io
import re
from collections import Counter
from dataclasses import dataclass
from typing import Final

from charts.findings import FindingLog
from charts.readers.source import Claim, Reader, Source
from charts.sheet import Addressing, Cell, Sheet

_SEPARATORS: Final = (";", "\t", "|", ",")
_SEP_LINE: Final = re.compile(r"\s*\"?sep=(.)\"?[;,\t ]*\r?\n?\Z", re.IGNORECASE)
_CELL_LIKE: Final = re.compile(
    r"""\s*(?:[<>~≤≥+(]?\s*\d[\d.,'"”’½¼¾\s/]*(?:cm|mm|in|kg|lbs?)?
    (?:\s*(?:-|–|to|à|bis)\s*\d.*)?|\d*X*-?[SML]|[A-Z]{1,3})\s*\Z""",
    re.IGNORECASE | re.VERBOSE,
)


@dataclass(frozen=True, slots=True)
class _Row:
    line: int
    fields: tuple[str, ...]


def _parsed(text: str, separator: str) -> list[_Row]:
    source = csv.reader(io.StringIO(text, newline=""), delimiter=separator)
    rows: list[_Row] = []
    line = 1
    for fields in source:
        rows.append(_Row(line, tuple(fields)))
        line = source.line_num + 1
    return rows


def _score(rows: list[_Row]) -> float:
    """Share of rows with the usual width, times the share of cells that look like a chart's."""
    widths = [len(row.fields) for row in rows if any(field.strip() for field in row.fields)]
    wide = [width for width in widths if width > 1]
    if not wide:
        return 0.0
    usual, count = Counter(wide).most_common(1)[0]
    cells = [f for row in rows if len(row.fields) == usual for f in row.fields if f.strip()]
    like = sum(1 for field in cells if _CELL_LIKE.match(field))
    return count / len(widths) * (0.1 + like / max(1, len(cells)))


def separator_of(text: str) -> str | None:
    """The separator that fits the text best; None when no row has two fields."""
    scored = [(_score(_parsed(text, separator)), separator) for separator in _SEPARATORS]
    best, separator = max(scored, key=lambda pair: pair[0])
    return separator if best > 0 else None


def _claims(source: Source) -> Claim:
    if not source.text:
        return Claim.NONE
    return Claim.LIKELY if separator_of(source.text) is not None else Claim.LEFTOVER


def _open(source: Source, _log: FindingLog) -> tuple[Sheet, ...]:
    text = source.text
    first, _, _ = text.partition("\n")
    said = _SEP_LINE.match(first)
    rows = _parsed(text, said[1] if said else separator_of(text) or ",")
    cells = {
        (number, column): Cell(field.strip(" \t"))
        for number, row in enumerate(rows)
        if not (said and number == 0)
        for column, field in enumerate(row.fields)
        if field.strip()
    }
    return (
        Sheet(
            name="",
            addressing=Addressing.PLAIN,
            cells=cells,
            rows=len(rows),
            columns=max((len(row.fields) for row in rows), default=0),
            line_of_row={number: row.line for number, row in enumerate(rows)},
        ),
    )


READER: Final = Reader("delimited text", _claims, _open)
