"""Delimited text to one sheet: the separator is the one that gives even rows.

A file may hold titles, notes and several tables one below the other: rows keep their place, and
a quoted field may run over several lines.
"""

from __future__ import annotations

import csv
import io
import re
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise
from typing import Final, Literal

from charts.findings import FindingLog
from charts.readers.captured.marks import is_drawn
from charts.readers.captured.values import is_value
from charts.readers.plain_text import tidy
from charts.readers.source import (
    LONGEST_CELL,
    MARKDOWN_ENDINGS,
    MOST_CELLS,
    PASTED,
    TEXT_ENDINGS,
    Claim,
    Reader,
    Source,
    UnusableSourceError,
    too_many,
)
from charts.sheet import Addressing, Cell, Sheet

_SEPARATORS: Final = (";", "\t", "|", ",")
_SEP_LINE: Final = re.compile(r"\"?sep=(.)\"?[;,\t ]*(?:\r?\n|\Z)", re.IGNORECASE)
_LABEL: Final = re.compile(r"\d*X*-?[SML]|[A-Z]{1,4}|[^\W\d_]{3,20}", re.IGNORECASE)
_NAMED: Final = re.compile(r"[^\W\d_][^\d<>~;]{2,40}?[\s:)]\s*(?=[<>~]?\d)")
_NAME_BEHIND: Final = re.compile(
    r"([<>~]?\d(?:.*\d)?\s*(?:[a-z]{1,2}|inch(?:es)?|[\"”])?)\s+[^\W\d_][^\d;]{2,40}"
)
_LISTED: Final = re.compile(r",\s+(?=[^\W\d_])|\s(?:[/+&]|and|und|et|en|e|y)\s")
_WORD: Final = re.compile(r"[^\W\d_]{3,}")
_FEW_WORDS: Final = 3
_FEWEST_EVEN: Final = 3
_SAMPLE: Final = 60_000
_LEAST_SCORE: Final = 0.12
_WIDE_BLANK: Final = re.compile(r"\S[ \u00a0]{2,}(?=\S)")
_LAST_COMMA: Final = re.compile(r",[ \t]*$", re.MULTILINE)
_DECIMAL_COMMA: Final = re.compile(r"(?<=\d),(?=\d)")
_QUOTED: Final = re.compile(r'(?:^|(?<=[;,|]))"((?:[^"\n]|""){3,400})"(?=([;,|])|$)', re.MULTILINE)
"""A field in quotation marks with the separator behind it."""
_TORN_RANGE: Final = re.compile(r"(?<!\d)\d{2,3}, \d\s?[-–]\s?\d{2,3}, \d(?!\d)")
"""A range whose decimal commas a scan has torn off: ``143, 0-154, 9``; no cell is ``0-154``."""

_TORN_BRACKET: Final = re.compile(r"[(\[]\d[\d.]*(?:, ?\d[\d.]*)*, \d[\d.]*[)\]]")
"""Figures of several sizes in brackets, ``86 (91, 97)``: no cell is ``97)``."""


@dataclass(frozen=True, slots=True)
class Row:
    """One record; ``line`` is where it begins, counting from 1."""

    line: int
    fields: tuple[str, ...]


def parsed_rows(text: str, separator: str) -> list[Row]:
    """The records of ``text``. A quotation mark that is never closed is taken as an inch mark.

    Raises UnusableSourceError when a field is absurdly long.
    """
    rows = _parsed(text, separator, csv.QUOTE_MINIMAL)
    if '"' in text:
        bare = _parsed(text, separator, csv.QUOTE_NONE)
        words = _quoted_words(rows, separator)
        if _ends_inside_quotes(text, separator) or (
            _evenness(_without(bare, words)) > _evenness(_without(rows, words))
        ):
            rows = bare
    if any(len(field) > LONGEST_CELL for row in rows for field in row.fields):
        raise too_many(LONGEST_CELL)
    return rows


@lru_cache(maxsize=2)  # asked by two readers when they claim a text, and when one opens it
def separator_of(text: str) -> str | None:
    """The separator that gives the most even rows; None when none does."""
    said = _SEP_LINE.match(text)
    if said:
        return said[1]
    end = text.rfind("\n", 0, _SAMPLE) + 1 if len(text) > _SAMPLE else len(text)
    sample = text[: end or _SAMPLE]
    present = [separator for separator in _SEPARATORS if separator in sample]
    scored = [(_score(_quietly_parsed(sample, one)), one) for one in present]
    best, separator = max(
        scored, key=lambda pair: (*_told_by_signs(sample, *pair), pair[0]), default=(0.0, "")
    )
    torn = (len(one.findall(sample)) > 1 for one in (_TORN_RANGE, _TORN_BRACKET))
    if separator == "," and (_parted_by_blanks(sample) or any(torn)):
        return None
    return separator if best > _LEAST_SCORE else None


def _told_by_signs(sample: str, score: float, separator: str) -> tuple[bool, bool]:
    """Whether a separator is a tab, or stands in quotation marks that only it makes needful.

    Nobody types a tab into a cell, and a program puts a cell in quotation marks for the sake of
    the separator within it. Commas and semicolons of the cells may be as even as the rows are.
    """
    if score <= _LEAST_SCORE:
        return False, False
    return separator == "\t", any(
        separator in found[1] and found[2] in {None, separator}
        for found in _QUOTED.finditer(sample)
    )


def evenly_separated(text: str) -> bool:
    """Whether commas, semicolons or bars part the rows of a text as a program writes them.

    No blank stands beside them, all rows are equally wide, and they are no decimal commas.
    Among more lines without them they part one of several tables, and not the others; a title
    or a note with all the separators of a row behind it is one of the rows.
    """
    separator = separator_of(text)
    if separator is None:
        return False
    rows = [row.fields for row in parsed_rows(text, separator)]
    wide = [row for row in rows if sum(map(_filled, row)) > 1]
    widths = {len(row) for row in wide}
    without = sum(any(map(_filled, row)) and len(row) not in widths for row in rows)
    if len(wide) < without:
        return False
    if len(wide) < _FEWEST_EVEN or len(widths) > 1 or min(widths) < _FEWEST_EVEN:
        return False
    if any(field != field.strip() for row in wide for field in row):
        return False
    return any(not _joins_figures(row) for row in wide)


def _joins_figures(row: Sequence[str]) -> bool:
    """Whether a separator of the row stands between two figures: it may be a decimal comma."""
    return any(a[-1:].isdigit() and b[:1].isdigit() for a, b in pairwise(row))


def _parted_by_blanks(sample: str) -> bool:
    """Whether blanks part the columns and every comma is a decimal mark."""
    sample = _LAST_COMMA.sub("", sample)  # "Dear Madam," parts nothing
    lines = [line for line in sample.splitlines() if "," in line]
    wide = sum(len(_WIDE_BLANK.findall(line)) > 1 or line.count(" ") > 1 for line in lines)
    return 2 * wide > len(lines) and len(_DECIMAL_COMMA.findall(sample)) == sample.count(",")


def _parsed(text: str, separator: str, quoting: Literal[0, 3]) -> list[Row]:
    source = csv.reader(io.StringIO(text, newline=""), delimiter=separator, quoting=quoting)
    rows: list[Row] = []
    count, line = 0, 1
    try:
        for fields in source:
            rows.append(Row(line, tuple(fields)))
            line = source.line_num + 1
            count += len(fields)
            if count > MOST_CELLS * 4:
                raise too_many(count)
    except csv.Error as problem:
        raise too_many(LONGEST_CELL) from problem
    return rows


def _quietly_parsed(sample: str, separator: str) -> list[Row]:
    try:
        return _parsed(sample, separator, csv.QUOTE_MINIMAL)
    except UnusableSourceError:
        return []


def _ends_inside_quotes(text: str, separator: str) -> bool:
    strict = csv.reader(io.StringIO(text, newline=""), delimiter=separator, strict=True)
    try:
        for _ in strict:
            pass
    except csv.Error as problem:
        return "end of data" in str(problem)
    return False


def _quoted_words(rows: Sequence[Row], separator: str) -> frozenset[int]:
    """The lines with words in quotation marks and the separator between them: several, or all.

    They are no row torn by an inch mark, however many parts they would have.
    """
    return frozenset(
        row.line
        for row in rows
        for field in row.fields
        if separator in field
        and "\n" not in field
        and (len(row.fields) == 1 or len(_WORD.findall(field)) > _FEW_WORDS)
    )


def _without(rows: Sequence[Row], lines: frozenset[int]) -> list[Row]:
    return [row for row in rows if row.line not in lines]


def _evenness(rows: Sequence[Row]) -> float:
    """Share of the filled rows that have the usual width."""
    widths = [len(row.fields) for row in rows if any(field.strip() for field in row.fields)]
    return Counter(widths).most_common(1)[0][1] / len(widths) if widths else 0.0


def _score(rows: Sequence[Row]) -> float:
    """Share of rows with the usual width, times the share of cells that look like a chart's.

    Where two widths are as usual, as two rows of headings over two of figures, the better counts.
    """
    filled = [row for row in rows if any(field.strip() for field in row.fields)]
    # A lone field behind a separator is an indented line: it parts nothing.
    wide = Counter(len(row.fields) for row in filled if sum(map(_filled, row.fields)) > 1)
    most = max(wide.values(), default=0)
    usual = [width for width, count in wide.items() if count == most > 1]
    return max((most / len(filled) * _like_a_chart(filled, one) for one in usual), default=0.0)


def _like_a_chart(rows: Sequence[Row], width: int) -> float:
    """How many cells of the rows of this width are values or short words; 0 without values."""
    fields = [field for row in rows if len(row.fields) == width for field in row.fields]
    cells = [text for field in fields if (text := tidy(field))]
    values = [field for field in cells if is_value(field)]
    # "Size 42: 88 cm chest, 70 cm waist" is a sentence: a blank stands behind its commas.
    values += [field for field in fields if field[:1].strip() and _names_its_value(field)]
    if not values:
        return 0.0
    like = len(values) + sum(1 for field in cells if _LABEL.fullmatch(field))
    return 0.1 + like / len(cells)


def _names_its_value(field: str) -> bool:
    """``Chest 84-88 cm, waist 68-72 cm``: values, each with the name of its measure."""
    return all(map(_named, map(tidy, _LISTED.split(field))))


def _named(text: str) -> bool:
    """A value in front of a name or behind one."""
    name = _NAMED.match(text)
    if name is not None:
        return is_value(text[name.end() :])
    behind = _NAME_BEHIND.fullmatch(text)
    return behind is not None and is_value(behind[1])


def _filled(field: str) -> bool:
    return bool(field.strip())


def _claims(source: Source) -> Claim:
    if not source.text or source.name == PASTED or source.ending in MARKDOWN_ENDINGS:
        return Claim.NONE
    if separator_of(source.text) is not None:
        return Claim.LIKELY
    return Claim.LEFTOVER if source.ending in TEXT_ENDINGS else Claim.NONE


def _open(source: Source, log: FindingLog) -> tuple[Sheet, ...]:
    text = source.opened_text(log)
    rows = parsed_rows(text, separator_of(text) or ",")
    if _SEP_LINE.match(text):
        rows[0] = Row(1, ())  # a word to the spreadsheet program, not a cell
    if _breaks_off(rows, text):
        log.add("truncated", source.name, name=source.name, what="")
        rows.pop()
    cells = _cells(rows)
    return (
        Sheet(
            name="",
            addressing=Addressing.PLAIN,
            cells=cells,
            rows=len(rows),
            columns=max((column for _, column in cells), default=-1) + 1,
            line_of_row={number: row.line for number, row in enumerate(rows)},
            row_widths={number: len(row.fields) for number, row in enumerate(rows)},
        ),
    )


def _cells(rows: Sequence[Row]) -> dict[tuple[int, int], Cell]:
    cells = {
        (number, column): Cell(shown)
        for number, row in enumerate(rows)
        if not is_drawn(row.fields)
        for column, field in enumerate(row.fields)
        if (shown := tidy(field))
    }
    if len(cells) > MOST_CELLS:
        raise too_many(len(cells))
    return cells


def _breaks_off(rows: Sequence[Row], text: str) -> bool:
    """Whether the last row of an even table lacks fields and its line end: its last is in doubt."""
    if len(rows) < 4 or text.endswith(("\n", "\r")):
        return False
    widths = [len(row.fields) for row in rows if len(row.fields) > 1]
    usual = Counter(widths).most_common(1)[0] if widths else (0, 0)
    return usual[1] == len(widths) - 1 and 1 < len(rows[-1].fields) < usual[0]


READER: Final = Reader("delimited text", _claims, _open)
