"""Rows of single blanks told by their headings: ``18 50 1 month 3-4`` under ``Size Height Age …``.

The headings are parted by what is known of them, the rows into whole values, ages and words; the
table stands where both come out at as many. A size may have several words or come twice. Where a
heading is not known, or a row has a piece that is no value, a person compares the whole.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import islice, pairwise, takewhile
from typing import Final

from charts.dimensions import Role, read_band, read_heading
from charts.readers.captured.heads import (
    begins_with_letters,
    begins_with_sizes,
    holds_two_measures,
    is_known_column,
    parted_heads,
)
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.pieces import is_age, may_stand_in_cell, pieces
from charts.readers.captured.rows import LIST_ITEM
from charts.readers.captured.sizes_last import or_sizes_last
from charts.readers.captured.value_runs import is_cell_value, is_size, values_in
from charts.readers.captured.values import is_blank, is_value
from charts.schema import Dimension
from charts.size_labels import read_label

_MOST_HEAD_LINES: Final = 3
_MOST_ROWS: Final = 60
_FEWEST_ROWS: Final = 2
_MOST_LABEL_PIECES: Final = 3
_LONGEST_HEAD: Final = 300
_LONGEST_BAND: Final = 40
_LONGEST_LONE_HEAD: Final = 24
_MOST_LONE_HEADS: Final = 8
_UNFIT: Final = re.compile(r"[\t|]|\S\s{2,}\S")
_PARTED: Final = re.compile(r";|,(?!\d)|(?<!\d),|,\d+,|\d,\d{3}")
"""Signs in a row that may part its cells: any semicolon, commas that part no decimals."""
_FEWEST_COLUMNS: Final = 2


@dataclass(frozen=True, slots=True)
class _Row:
    """The pieces of one line; ``band`` is the words of a line that tells whose the next are."""

    parts: tuple[str, ...]
    line: int
    band: str = ""

    def cells(self, columns: int) -> list[str]:
        """The label, of one piece or several, and a piece for every other column."""
        own = len(self.parts) - columns + 1
        return [" ".join(self.parts[:own]), *self.parts[own:]]


def headed_table(lines: Sequence[Line]) -> LineTable | None:
    """The table whose headings ``lines`` begin with; None where the counts do not agree."""
    ahead = _rejoined(line for line in lines[: _MOST_ROWS * 2] if line.text.strip())
    filled = list(islice(ahead, _MOST_LONE_HEADS + 1))  # rows begin among these, or not at all
    start = next((at for at, line in enumerate(filled) if _is_row(line.text)), 0)
    if not 0 < start <= _most_heads(filled) or any(
        _UNFIT.search(one.text) for one in filled[:start]
    ):
        return None
    filled += ahead
    rows = _rows(filled[start:])
    told = [row for row in rows if not row.band]
    if len(told) < _FEWEST_ROWS:
        return None
    titled = any(begins_with_sizes(one.text) for one in filled[1:start])
    titled = titled or any(begins_with_letters(one.text) for one in filled[:start])
    if titled or any(_begins_below(filled[:start], at, told) for at in range(start - 1, 0, -1)):
        return None  # the lines before are titles
    found = _best(filled[:start], told)
    if found is None:
        rows = [_turned(row) for row in rows]
        found = _best_turned(filled[:start], [row for row in rows if not row.band])
    if found is None:
        return None
    heads, fitting = found
    last = fitting[-1].line
    cells = [[LineCell(head, filled[start - 1].number) for head in heads]]
    cells += [_laid(row, len(heads)) for row in rows if row.line <= last]
    used = next(at for at, line in enumerate(lines, start=1) if line.number == last)
    return or_sizes_last(LineTable(cells, used, inferred=_is_counted(heads, fitting)))


def _rejoined(lines: Iterable[Line]) -> Iterator[Line]:
    """The lines, a size alone on its line joined with the line of its values below."""
    before: Line | None = None
    for line in lines:
        text = line.text.strip()
        if before is None:
            before = line
            continue
        lone = is_size(before.text.strip()) and not is_value(before.text)
        if lone and len(values_in(text)) >= _FEWEST_COLUMNS:
            before = Line(f"{before.text.strip()} {text}", line.number)
        else:
            yield before
            before = line
    if before is not None:
        yield before


def _most_heads(lines: Sequence[Line]) -> int:
    """How many lines the headings may take up: as many as columns where each has its own."""
    short = takewhile(lambda line: len(line.text.strip()) <= _LONGEST_LONE_HEAD, lines)
    return max(_MOST_HEAD_LINES, min(len(list(short)), _MOST_LONE_HEADS))


def _begins_below(heads: Sequence[Line], at: int, rows: Sequence[_Row]) -> bool:
    """Whether the headings begin at a line further down, and no word for sizes stands above it."""
    found = _best(heads[at:], rows)
    return found is not None and not (not found[0][0] and _names_rows(heads[at - 1].text))


def _best(lines: Sequence[Line], rows: Sequence[_Row]) -> tuple[list[str], list[_Row]] | None:
    text = " ".join(one.text.strip() for one in lines)
    return next(_fits(text, rows), None) if len(text) <= _LONGEST_HEAD else None


def _best_turned(
    lines: Sequence[Line], rows: Sequence[_Row]
) -> tuple[list[str], list[_Row]] | None:
    """The same where the sizes stand in the last column: their word and they are put in front."""
    *words, last = " ".join(one.text.strip() for one in lines).split()
    if not words or read_heading(last).role is not Role.LABEL:
        return None
    labels = {row.parts[0] for row in rows}
    lettered = not any(map(is_value, labels)) and all(map(is_size, labels))
    text = " ".join((last, *words))
    return next(_fits(text, rows), None) if lettered and len(text) <= _LONGEST_HEAD else None


def _turned(row: _Row) -> _Row:
    return row if row.band else replace(row, parts=(row.parts[-1], *row.parts[:-1]))


def _laid(row: _Row, columns: int) -> list[LineCell]:
    return [LineCell(text, row.line) for text in ([row.band] if row.band else row.cells(columns))]


@lru_cache(maxsize=4096)
def _is_row(text: str) -> bool:
    """Whether pieces that may stand in cells follow a label: at least half of the pieces do."""
    parted = _PARTED.search(text) or LIST_ITEM.match(text.strip())
    found = [] if parted else pieces(text)
    values = sum(map(may_stand_in_cell, found[1:]))
    return len(found) > 1 and values > 0 and 2 * values >= len(found) - 1


def _rows(lines: Sequence[Line]) -> list[_Row]:
    """The rows that follow each other, words for whose they are among them."""
    found: list[_Row] = []
    for at, line in enumerate(lines):
        text = line.text.strip()
        if not _UNFIT.search(text) and _is_row(text):
            found.append(_Row(tuple(pieces(text)), line.number))
        elif _is_band(text) and at + 1 < len(lines) and _is_row(lines[at + 1].text):
            found.append(_Row((), line.number, text))
        else:
            break
    return found


def _is_band(text: str) -> bool:
    short = len(text) <= _LONGEST_BAND and not any(map(str.isdigit, text))
    return short and read_band(text) is not None and read_heading(text).role is not Role.MEASURE


def _fits(head_text: str, rows: Sequence[_Row]) -> Iterator[tuple[list[str], list[_Row]]]:
    """The headings and the rows that have a piece for each, the most columns first."""
    most = min(len(row.parts) for row in rows[:_FEWEST_ROWS])
    for columns in range(most, max(most - _MOST_LABEL_PIECES, _FEWEST_COLUMNS - 1), -1):
        heads = _heads(head_text, columns)
        if heads is None:
            continue
        fitting: list[_Row] = []
        for row in rows:
            if not _fills(row, heads, strict=len(fitting) < _FEWEST_ROWS):
                break
            fitting.append(row)
        if len(fitting) >= _FEWEST_ROWS and _tell_apart(fitting, columns):
            yield heads, fitting


def _heads(text: str, columns: int) -> list[str] | None:
    """The headings of sizes and ``columns`` columns, with a word for the sizes or without."""
    heads = parted_heads(text, columns)
    if heads is None or not _names_rows(heads[0]):
        bare = parted_heads(text, columns - 1) if columns > _FEWEST_COLUMNS else None
        if bare is None or any(read_heading(one).role is not Role.MEASURE for one in bare):
            return None
        heads = ["", *bare]
    return heads if any(map(_is_measure, heads[1:])) else None


def _names_rows(head: str) -> bool:
    heading = read_heading(head)
    named = heading.role is Role.LABEL or (Role.LABEL, None) in heading.candidates
    return named or _is_age(head) or _is_height(head)


def _is_height(head: str) -> bool:
    """Whether a heading can name sizes that are heights, as children's are."""
    heading = read_heading(head)
    return heading.dimension is Dimension.HEIGHT and not heading.candidates


def _is_measure(head: str) -> bool:
    return read_heading(head).role is Role.MEASURE and not _is_age(head)


def _is_age(head: str) -> bool:
    return read_heading(head).dimension is Dimension.AGE


def _fills(row: _Row, heads: Sequence[str], *, strict: bool) -> bool:
    """Whether a row has a piece for every heading; unless ``strict`` one may be no value."""
    own = len(row.parts) - len(heads) + 1
    if not 0 < own <= _MOST_LABEL_PIECES:
        return False
    label, *values = row.cells(len(heads))
    strange = sum(not _fits_under(text, head) for text, head in zip(values, heads[1:], strict=True))
    if strange > (0 if strict else 1) or strange == len(values):
        return False
    return _is_label(label, own, heads[0])


def _is_label(label: str, own: int, head: str) -> bool:
    """Whether the pieces in front name a size: one that is known, or letters under its heading."""
    if read_label(label) is not None and not is_blank(label):
        return own == 1 or not is_value(label)
    lettered = own == 1 and label[0].isalnum() and not is_value(label)
    return lettered and len(label) <= _MOST_LABEL_PIECES * 2 and bool(head)


def _fits_under(text: str, head: str) -> bool:
    if is_blank(text):
        return True
    if read_heading(head).role is Role.LABEL:
        return is_size(text) or is_value(text)
    if is_age(text):
        return _is_age(head)
    return is_cell_value(text)


def _tell_apart(rows: Sequence[_Row], columns: int) -> bool:
    """Whether no two rows repeat both their size and what stands behind it, and numbers rise."""
    cells = [row.cells(columns) for row in rows]
    labels = [read_label(row[0]) for row in cells if is_value(row[0])]
    orders = [label.order for label in labels if label is not None]
    rising = all(a <= b for a, b in pairwise(orders))
    return rising and len({tuple(row[:2]) for row in cells}) == len(rows)


def _is_counted(heads: Sequence[str], rows: Sequence[_Row]) -> bool:
    """Whether anything but what is known of headings and values parted the table."""
    unknown = not all(map(is_known_column, heads if heads[0] else heads[1:]))
    strange = not all(_fills(row, heads, strict=True) for row in rows)
    return unknown or strange or any(map(holds_two_measures, heads))
