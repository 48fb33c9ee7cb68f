"""A size a line with its values behind it, parted by single blanks: ``S 84 - 90 68 - 74``.

Rows may be broken over lines. Every row must have as many values; headings are parted where each
part is a known heading, or where there are as many words as columns.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations, pairwise
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.heads import (
    begins_with_letters,
    begins_with_sizes,
    holds_sizes_first,
    holds_two_measures,
    holds_two_units,
    may_begin,
    must_begin,
)
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.value_runs import (
    named_values,
    rises,
    sized_values,
    takes_turns,
    values_in,
)
from charts.readers.captured.values import is_value
from charts.schema import Dimension
from charts.size_labels import LabelKind, read_label

_MOST_ROWS: Final = 60
_FEWEST_BEFORE: Final = 2
_SIZE_LIKE: Final = re.compile(r"\d?X*[SML][SMLRT]{0,2}(?:/\d{2}(?:[-–]\d{2})?)?\*{0,3}")
"""The letters of sizes in an order that no list has, with what is printed behind them."""
_BULLET: Final = re.compile(r"\s*[•▪◦●○·*‣–—-]\s+(?=[^\W_])")
_NAME: Final = r"(?:\d{1,2}[^\W\d_]{1,4}|[^\d:=]*[^\W\d_])"
LIST_ITEM: Final = re.compile(
    rf"(?:{_BULLET.pattern})?{_NAME}(?:\s*[=→]|\s[–—-]\s)|{_BULLET.pattern}{_NAME}\s*:"
)
"""``Small - 86 cm``, ``• 2X: 86 cm``: an item of a list, which is no row of columns."""
_MOST_HEAD_LINES: Final = 2
_MOST_BROKEN_LINES: Final = 9
"""Lines of headings alone: each broken before its bracket, as narrow columns are captured."""
_MOST_WORDS: Final = 14
_MOST_COLUMNS: Final = 8
_UNFIT: Final = re.compile(r"[\t|]|\S\s{2,}\S|.{120}")
_WORD: Final = re.compile(r"\S+(?:\s*\([^)]*\))?")
_CONTINUED: Final = re.compile(r"[\d½¼¾⅛⅜⅝⅞<>≤≥~–—-]|(?:cm|mm|in|kg|lbs?|to|bis)\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class _Row:
    """One size: its label, its values, the line it begins on."""

    label: str
    values: tuple[str, ...]
    line: int


@dataclass(frozen=True, slots=True)
class _Head:
    """The headings of all columns, and how many lines they were broken over."""

    texts: tuple[str, ...]
    lines: int


def row_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that ``lines`` begin with, headings first; None when rows do not come out even."""
    filled = [line for line in lines[: _MOST_ROWS * 2] if line.text.strip()]
    start = next((at for at, line in enumerate(filled) if any(map(str.isdigit, line.text))), None)
    if start is None or start > _MOST_BROKEN_LINES:
        return None
    if any(_UNFIT.search(line.text) for line in filled[: start + 1]):
        return None
    rows, ends = _rows(filled[start:])
    if len(rows) < 2 or not _named_apart(rows):
        return None
    head = _head(filled[:start], len(rows[0].values), aged=_are_ages(rows))
    if head is None or (start > _MOST_HEAD_LINES and head.lines < start):
        return None  # words above that name the columns must not be lost to a title
    last = filled[start + ends - 1].number
    used = next(at for at, line in enumerate(lines, start=1) if line.number == last)
    cells = [[LineCell(text, row.line) for text in (row.label, *row.values)] for row in rows]
    counted = ends > len(rows) or (head.lines > _MOST_HEAD_LINES and not _all_known(head.texts, 1))
    counted = counted or any(map(holds_two_measures, head.texts))
    return LineTable([*_above(filled[:start], head), *cells], used, inferred=counted)


def _above(lines: Sequence[Line], head: _Head) -> list[list[LineCell]]:
    """The rows above the sizes: titles, and the headings."""
    titles = lines[: len(lines) - head.lines]
    rows = [[LineCell(one.text.strip(), one.number)] for one in titles]
    return [*rows, [LineCell(text, lines[-1].number) for text in head.texts]]


def _rows(lines: Sequence[Line]) -> tuple[list[_Row], int]:
    """The rows at the beginning, and how many lines they take up."""
    rows: list[_Row] = []
    used = 0
    at = 0
    while at < len(lines):
        taken = next(_readings(lines[at:], rows), None)
        if taken is None:
            break
        row, count = taken
        rows.append(row)
        at += count
        used = at
    return rows, used


def _readings(lines: Sequence[Line], rows: Sequence[_Row]) -> Iterator[tuple[_Row, int]]:
    """A row of one line, or of one and its continuation; as wide as the rows before."""
    text = ""
    for count, line in enumerate(lines[: _MOST_HEAD_LINES + 1], start=1):
        if count > 1 and _CONTINUED.match(line.text.strip()) is None:
            return
        text = f"{text} {line.text.strip()}"
        row = _row(text, lines[0].number) or _like(rows, text, lines[0].number)
        follows = lines[count].text.strip() if count < len(lines) else ""
        whole = not follows or _CONTINUED.match(follows) is None or _row(follows, 0) is not None
        if row is not None and (len(row.values) == len(rows[0].values) if rows else whole):
            yield row, count


def _row(text: str, number: int) -> _Row | None:
    """A size and its values; the bullet of a list before it is no part of the size."""
    text = text.strip()
    if LIST_ITEM.match(text):
        return None
    bullet = _BULLET.match(text)
    text = text[bullet.end() :] if bullet is not None else text
    found = named_values(text) or sized_values(text)
    if found is None or len(found.parts) > _MOST_COLUMNS + 1:
        return None
    label, *values = (found.name, *found.parts) if found.name else found.parts
    if label.endswith(" /") and len(values) > 1 and values[0].isdigit():
        label, values = f"{label} {values[0]}", values[1:]  # "XS / 28" is one size
    size = read_label(label)
    if not values or size is None or size.doubtful is not None:
        return None
    if not found.name and size.kind not in (LabelKind.NUMBER, LabelKind.HEIGHT):
        return None
    return _Row(label, tuple(values), number)


def _like(rows: Sequence[_Row], text: str, number: int) -> _Row | None:
    """A row like those before it whose size is not known: ``MS 168-176 63-70``, ``LTS* …``."""
    label, _, rest = text.strip().partition(" ")
    values = values_in(rest)
    if len(rows) < _FEWEST_BEFORE or len(values) != len(rows[0].values):
        return None
    return _Row(label, values, number) if _SIZE_LIKE.fullmatch(label) else None


def _named_apart(rows: Sequence[_Row]) -> bool:
    labels = [row.label for row in rows]
    even = len({len(row.values) for row in rows}) == 1 and len(set(labels)) == len(labels)
    return even and not takes_turns(labels) and rises(list(filter(is_value, labels)))


def _are_ages(rows: Sequence[_Row]) -> bool:
    """Whether the sizes are ages with their word: a heading for ages is that of the sizes."""
    labels = [read_label(row.label) for row in rows]
    aged = all(one is not None and one.kind is LabelKind.AGE for one in labels)
    return aged and all(any(map(str.isalpha, row.label)) for row in rows)


def _head(lines: Sequence[Line], count: int, *, aged: bool = False) -> _Head | None:
    """The headings over the label and ``count`` values; None when they cannot be parted surely."""
    for taken in range(1, len(lines) + 1):
        if begins_with_letters(lines[-taken].text):
            return None  # "XS INCHES" is the row of a size
        if taken > 1 and begins_with_sizes(lines[1 - taken].text):
            return None  # what stands above is a title
        text = " ".join(line.text for line in lines[-taken:]).strip()
        words = _WORD.findall(_without_title(text, lines[:-taken]))
        found = _parted(words, count)
        if found is not None and not (aged and Dimension.AGE in map(_dimension, found[1:])):
            return _Head(tuple(found), taken)
    return None


def _banded_alike(
    best: Sequence[str], ways: Sequence[Sequence[str]], ranks: Sequence[tuple[int, int]]
) -> bool:
    """Whether other ways as plain leave every measure its band: ``Size Men Waist`` has two."""
    plain = max(one for one, _ in ranks)
    equal = [way for way, (one, _) in zip(ways, ranks, strict=True) if one == plain]
    return len({tuple(_bands(way)) for way in (best, *equal)}) == 1


def _bands(way: Sequence[str]) -> Iterator[str | None]:
    return (one.band for one in map(read_heading, way) if one.role is Role.MEASURE)


def _dimension(text: str) -> Dimension | None:
    return read_heading(text).dimension


def _without_title(text: str, above: Sequence[Line]) -> str:
    """The headings without the title of the table that stands once more before the sizes' own."""
    title = above[-1].text.strip() if above else ""
    rest = text[len(title) :].lstrip() if title and text.startswith(f"{title} ") else ""
    return rest if rest and _names_sizes(rest.split()[0]) else text


def _parted(words: Sequence[str], count: int) -> list[str] | None:
    if not count <= len(words) <= _MOST_WORDS:
        return None
    for columns in (count + 1, count):
        known = [parts for parts in _ways(words, columns) if _all_known(parts, columns - count)]
        ranks = [_evenness(parts[columns - count :]) for parts in known]
        best = [parts for parts, one in zip(known, ranks, strict=True) if one == max(ranks)]
        if len(best) == 1 and _banded_alike(best[0], known, ranks):
            return [""] * (count + 1 - columns) + best[0]
        if best:
            return None
    return list(words) if len(words) == count + 1 else None


def _all_known(parts: Sequence[str], labels: int) -> bool:
    """Whether every part names a measure, the first one the sizes where there is one for them."""
    measures = all(read_heading(part).role is Role.MEASURE for part in parts[labels:])
    measures = measures and not any(map(holds_sizes_first, parts))
    measures = measures and not any(map(holds_two_units, parts))
    if labels:
        return measures and _names_sizes(parts[0])
    return measures and (len(parts) < 2 or sum(map(_holds_sizes, parts)) != 1)


def _holds_sizes(part: str) -> bool:
    """Whether a word for sizes alone stands in a heading: it would name their column."""
    headings = map(read_heading, part.split())
    return any(one.role is Role.LABEL and not one.candidates for one in headings)


def _evenness(parts: Sequence[str]) -> tuple[int, int]:
    """How many parts are plainly one measure, and how little they differ in length."""
    headings = [read_heading(part) for part in parts]
    lengths = [part.count(" ") for part in parts]
    plain = sum(not one.candidates and not one.rest for one in headings)
    return plain, min(lengths) - max(lengths)


def _ways(words: Sequence[str], columns: int) -> Iterator[list[str]]:
    due = {at for at in range(len(words)) if must_begin(words, at)}
    able = [at for at in range(1, len(words)) if may_begin(words, at)]
    for cuts in combinations(able, columns - 1):
        if not due.issubset(cuts):
            continue
        ends = (0, *cuts, len(words))
        yield [" ".join(words[a:b]) for a, b in pairwise(ends)]


def _names_sizes(text: str) -> bool:
    if text.count(" ") > 1:
        return False
    heading = read_heading(text)
    return heading.role is Role.LABEL or (Role.LABEL, None) in heading.candidates
