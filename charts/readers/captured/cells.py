"""One cell a line, as some copies of a web page come: put back into rows where they are even."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import islice, pairwise
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.blocks import block_table
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.sizes_below import sizes_below_table
from charts.readers.captured.stream import MOST_LEAD, may_stream, stream_table
from charts.readers.captured.value_runs import is_cell_value, takes_turns
from charts.readers.captured.values import is_blank

_MOST_COLUMNS: Final = 16
_LONGEST: Final = 40
_FEWEST_CELLS: Final = 6
_LINES_TO_A_FIGURE: Final = 60
_LINES_OF_TITLES: Final = 12
_LINES_OF_A_TITLE: Final = 4
_MOST_TITLES: Final = 3
_FEWEST_BRACKETS: Final = 2
_LABEL: Final = re.compile(r"(?P<low>\d{1,3})(?:\s?[-–]\s?(?P<high>\d{1,3}))?")
_BRACKET: Final = re.compile(r"\([^\W\d_][^()\d]{0,20}\)")


def cell_table(lines: Sequence[Line]) -> LineTable | None:
    """The table whose headings ``lines`` begin with; None when the lines come out uneven."""
    if len(lines) < 4 or not lines[0].text.strip() or is_cell_value(lines[0].text):
        return None
    return _by_blank_lines(lines) or _by_headings(lines)


def streamed_table(lines: Sequence[Line]) -> LineTable | None:
    """The same where the rows tell how many columns there are, whatever the language."""
    if not lines or not lines[0].text.strip() or not _figure_near(lines):
        return None
    if not may_stream(list(islice(_filled(lines), MOST_LEAD))):
        return None  # told before all lines ahead are looked at
    filled = list(_filled(lines))
    if len(filled) < _FEWEST_CELLS:
        return None
    joined = _with_brackets(filled)
    table = stream_table(joined) if joined else None
    if table is None or not next(row for row in table.rows if len(row) > 1)[0].text:
        joined, table = filled, stream_table(filled)
    if table is None or not _rows_keep_together(table, lines) or _block_ahead(lines):
        return None
    last = joined[table.used - 1].number
    used = next(at for at, line in enumerate(lines, start=1) if line.number == last)
    return LineTable(table.rows, used, inferred=table.inferred)


def _filled(lines: Sequence[Line]) -> Iterator[Line]:
    """The lines that are not blank, without the blanks around them."""
    for line in lines:
        if text := line.text.strip():
            yield line if text == line.text else replace(line, text=text)


def _with_brackets(cells: Sequence[Line]) -> list[Line]:
    """The cells with ``(in cm)`` joined to the heading before it; none where fewer than two are.

    A heading broken before its bracket is one heading: as two it would move all that follow.
    """
    lead = next((at for at, one in enumerate(cells) if is_cell_value(one.text)), 0)
    if sum(_BRACKET.fullmatch(one.text) is not None for one in cells[1:lead]) < _FEWEST_BRACKETS:
        return []
    found: list[Line] = []
    for at, one in enumerate(cells):
        bracket = 0 < at < lead and _BRACKET.fullmatch(one.text) is not None
        if bracket and _BRACKET.fullmatch(cells[at - 1].text) is None:
            found[-1] = replace(found[-1], text=f"{found[-1].text} {one.text}")
        else:
            found.append(one)
    return found if len(cells) - len(found) >= _FEWEST_BRACKETS else []


def _figure_near(lines: Sequence[Line]) -> bool:
    return any(sign.isdigit() for line in lines[:_LINES_TO_A_FIGURE] for sign in line.text)


def _block_ahead(lines: Sequence[Line]) -> bool:
    """Whether a table of sizes on lines of their own, or of blocks, begins below this title."""
    if any(sizes_below_table(lines[at:]) for at in range(1, _LINES_OF_A_TITLE)):
        return True
    starts = [
        at
        for at in range(1, min(len(lines), _LINES_OF_TITLES))
        if lines[at].text.strip() and not lines[at - 1].text.strip()
    ]
    return any(block_table(lines[at:]) is not None for at in starts[:_MOST_TITLES])


def _rows_keep_together(table: LineTable, lines: Sequence[Line]) -> bool:
    """Empty lines stand between all cells, or nowhere but between rows."""
    apart = {
        line.number
        for before, line in pairwise(lines)
        if line.text.strip() and not before.text.strip()
    }
    numbers = [[cell.line for cell in row] for row in table.rows if len(row) > 1]
    inside = [number for row in numbers for number in row[1:]]
    first = [row[0] for row in numbers[1:]]
    if all(number in apart for number in (*inside, *first)):
        return True
    return apart.isdisjoint(inside)


def _by_blank_lines(lines: Sequence[Line]) -> LineTable | None:
    """Rows set apart by empty lines."""
    groups: list[list[Line]] = [[]]
    for line in lines:
        if line.text.strip():
            groups[-1].append(line)
        elif groups[-1]:
            groups.append([])
    rows = []
    for group in groups:
        if len(group) != len(groups[0]) or len(group) < 2:
            break
        rows.append(group)
    if len(rows) < 3 or not all(_is_row(row) for row in rows[1:]) or _has_value(rows[0]):
        return None
    used = lines.index(rows[-1][-1]) + 1
    return LineTable(_cells(rows), used)


def _by_headings(lines: Sequence[Line]) -> LineTable | None:
    first_value = _first_value(lines)
    if not first_value:
        return None
    filled = [line for line in lines if line.text.strip()]
    # Titles above can make a second way of putting the lines together: known headings decide.
    fits = [
        (*_known_headings(filled[start : start + width]), start, width, count)
        for start in range(min(first_value, _MOST_COLUMNS))
        for width, count in _fits(filled[start:], first_value - start)
    ]
    best = max(fits, default=None)
    if best is None or best[2] or sum(fit[:2] == best[:2] for fit in fits) > 1:
        return None
    width, count = best[3:]
    rows = [filled[at : at + width] for at in range(0, width * count, width)]
    if _are_astray([row[0].text.strip() for row in rows[1:]]):
        return None  # asked here, for a way that goes astray still speaks against another
    used = lines.index(rows[-1][-1]) + 1
    return LineTable(_cells(_once(rows)), used)


def _first_value(lines: Sequence[Line]) -> int:
    """Which of the filled lines is the first with a figure; 0 when no table can begin here."""
    at = 0
    for line in lines[: _MOST_COLUMNS * 3]:
        if is_cell_value(line.text):
            return at
        text = line.text.strip()
        at += bool(text)
        if "\t" in text or "|" in text:
            return 0
        if at > _MOST_COLUMNS:
            break
    return 0


def _known_headings(lines: Sequence[Line]) -> tuple[bool, float]:
    """Whether the first is the heading of labels, and the share of known headings of charts."""
    roles = [read_heading(line.text).role for line in lines]
    known = sum(role is not Role.UNKNOWN for role in roles)
    return roles[0] is Role.LABEL, known / len(lines)


def _fits(lines: Sequence[Line], first_value: int) -> Iterator[tuple[int, int]]:
    """Every (columns, rows) into which the lines can be put, the headings included.

    The first figure stands in the first row: as its label or right behind it.
    """
    for width in (first_value, first_value - 1):
        if not 2 <= width <= _MOST_COLUMNS or _has_value(lines[:width]):
            continue
        count = 1
        while _is_row(lines[count * width : (count + 1) * width], width):
            count += 1
        left = lines[count * width :]
        rows = [lines[at : at + width] for at in range(width, count * width, width)]
        labels = [row[0].text.strip() for row in _once(rows)]
        apart = len(set(labels)) == len(labels) and not takes_turns(labels)
        even = count > 2 and apart and not _has_value(left[:width])
        if even and not (_names_measure(lines[1:width]) and _names_measure(lines[width::width])):
            yield width, count


def _once(rows: Sequence[Sequence[Line]]) -> list[Sequence[Line]]:
    """The rows without those that repeat one of them in every cell, as a copy too long does."""
    found: dict[tuple[str, ...], Sequence[Line]] = {}
    for row in rows:
        found.setdefault(tuple(line.text.strip() for line in row), row)
    return list(found.values())


def _are_astray(labels: Sequence[str]) -> bool:
    """Whether ranges among the labels go up and down: figures of measures, cut at wrong lines."""
    found = [_LABEL.fullmatch(label) for label in labels]
    low = [int(one["low"]) for one in found if one is not None]
    ranged = any(one is not None and one["high"] for one in found)
    steps = [before < after for before, after in pairwise(low)]
    return ranged and len(low) == len(labels) and len(set(steps)) > 1


def _names_measure(lines: Sequence[Line]) -> bool:
    """Whether a measure stands here: it may head the columns or the rows of a chart, not both."""
    return any(read_heading(line.text).role is Role.MEASURE for line in lines[:_MOST_COLUMNS])


def _is_row(lines: Sequence[Line], width: int = 0) -> bool:
    """Whether a label and values stand here, as many as there are headings."""
    if width and len(lines) != width:
        return False
    label, *values = [line.text.strip() for line in lines]
    if not values or len(label) > _LONGEST:
        return False
    return all(is_cell_value(text) or is_blank(text) for text in values)


def _has_value(lines: Sequence[Line]) -> bool:
    return any(is_cell_value(line.text) for line in lines)


def _cells(rows: Sequence[Sequence[Line]]) -> list[list[LineCell]]:
    return [[LineCell(line.text.strip(), line.number) for line in row] for row in rows]
