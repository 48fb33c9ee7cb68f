"""The cells of a table in an open document, with its hidden rows and columns.

Blank cells and rows are written once with the number of their repetitions, often a million:
they are counted and never made.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from datetime import datetime
from typing import TYPE_CHECKING, Final

from charts.readers.merged_areas import Area
from charts.readers.open_document_looks import Look, Looks
from charts.readers.open_document_parts import OFFICE, TABLE, repeated
from charts.readers.open_document_text import cell_text, comment_of
from charts.readers.source import LONGEST_CELL, MOST_CELLS, too_many
from charts.readers.workbook_cells import exact
from charts.sheet import Cell, StoredValue

if TYPE_CHECKING:
    from lxml.etree import _Element

_LAST_ROW: Final = 1_048_576
_LAST_COLUMN: Final = 16_384
_CELLS: Final = (f"{TABLE}table-cell", f"{TABLE}covered-table-cell")
_ROW_GROUPS: Final = frozenset(
    f"{TABLE}{name}" for name in ("table-header-rows", "table-rows", "table-row-group")
)
_COLUMN_GROUPS: Final = frozenset(
    f"{TABLE}{name}" for name in ("table-header-columns", "table-columns", "table-column-group")
)
_OUT_OF_SIGHT: Final = ("collapse", "filter")
_NUMBERS: Final = ("float", "currency", "percentage")


@dataclass(slots=True)
class OpenTable:
    """What one table holds. Rows and columns count from 0 and are the source's own."""

    cells: dict[tuple[int, int], Cell] = field(default_factory=dict)
    merged: list[Area] = field(default_factory=list)
    hidden_rows: set[int] = field(default_factory=set)
    hidden_columns: set[int] = field(default_factory=set)


@dataclass(frozen=True, slots=True)
class _Column:
    first: int
    after: int
    style: str


def read_table(table: _Element, looks: Looks) -> OpenTable:
    """The filled cells of ``table``. Raises UnusableSourceError when there are too many."""
    found = OpenTable()
    columns = list(_columns(table, found))
    row = 0
    for element, heading, hidden in _rows(table, heading=False, hidden=False):
        count = repeated(element, "number-rows-repeated", _LAST_ROW - row)
        cells = list(_row_cells(element, looks, columns))
        for copy in range(count if cells else 0):
            for column, cell, area in cells:
                found.cells[row + copy, column] = replace(cell, heading=heading)
                if area != (1, 1):
                    top = row + copy
                    last = (top + area[0] - 1, column + area[1] - 1)
                    found.merged.append((top, column, *last))
            if hidden:
                found.hidden_rows.add(row + copy)
            if len(found.cells) > MOST_CELLS:
                raise too_many(count * len(cells))
        row += count
        if row >= _LAST_ROW:
            break
    return found


def _rows(table: _Element, *, heading: bool, hidden: bool) -> Iterator[tuple[_Element, bool, bool]]:
    """The rows with whether the source calls them headings, and whether they are out of sight."""
    for child in table.iterchildren(f"{TABLE}*"):
        if child.tag == f"{TABLE}table-row":
            gone = child.get(f"{TABLE}visibility") in _OUT_OF_SIGHT
            yield child, heading, hidden or gone
        elif child.tag in _ROW_GROUPS:
            yield from _rows(
                child,
                heading=heading or child.tag.endswith("header-rows"),
                hidden=hidden or child.get(f"{TABLE}display") == "false",
            )


def _columns(table: _Element, found: OpenTable) -> Iterator[_Column]:
    at = 0
    for element, hidden in _column_elements(table, hidden=False):
        count = repeated(element, "number-columns-repeated", _LAST_COLUMN - at)
        if hidden:
            found.hidden_columns.update(range(at, at + count))
        yield _Column(at, at + count, element.get(f"{TABLE}default-cell-style-name", ""))
        at += count
        if at >= _LAST_COLUMN:
            return


def _column_elements(table: _Element, *, hidden: bool) -> Iterator[tuple[_Element, bool]]:
    for child in table.iterchildren(f"{TABLE}*"):
        if child.tag == f"{TABLE}table-column":
            yield child, hidden or child.get(f"{TABLE}visibility") in _OUT_OF_SIGHT
        elif child.tag in _COLUMN_GROUPS:
            gone = hidden or child.get(f"{TABLE}display") == "false"
            yield from _column_elements(child, hidden=gone)


def _row_cells(
    row: _Element, looks: Looks, columns: list[_Column]
) -> Iterator[tuple[int, Cell, tuple[int, int]]]:
    """The filled cells of a row: column, cell, and how many rows and columns it covers."""
    column = 0
    for element in row.iterchildren(*_CELLS):
        count = repeated(element, "number-columns-repeated", _LAST_COLUMN - column)
        if len(element) or element.get(f"{OFFICE}value-type") or element.get(f"{TABLE}formula"):
            style = element.get(f"{TABLE}style-name") or _default(columns, column)
            cell = _cell(element, looks.of(style), looks)
            area = (
                repeated(element, "number-rows-spanned", _LAST_ROW),
                repeated(element, "number-columns-spanned", _LAST_COLUMN),
            )
            if cell is not None and element.tag == _CELLS[0]:
                yield from ((column + copy, cell, area) for copy in range(count))
        column += count
        if column >= _LAST_COLUMN:
            return


def _default(columns: list[_Column], at: int) -> str:
    return next((one.style for one in columns if one.first <= at < one.after), "")


def _cell(element: _Element, look: Look, looks: Looks) -> Cell | None:
    text, struck = cell_text(element, looks)
    comment = comment_of(element)
    if len(text) > LONGEST_CELL:
        raise too_many(len(text))
    if not text:
        lost = element.get(f"{TABLE}formula") is not None and not _has_value(element)
        if not lost and not comment:
            return None
        return Cell("", comment=comment, formula_without_value=lost)
    stored = _stored(element, text)
    return Cell(text, stored, look.number_format, comment=comment, struck=struck or look.struck)


def _has_value(element: _Element) -> bool:
    names = ("value", "string-value", "date-value", "time-value", "boolean-value")
    return any(element.get(f"{OFFICE}{name}") is not None for name in names)


def _stored(element: _Element, text: str) -> StoredValue:
    """The value behind the text: an exact number, a day, a truth, or the text itself."""
    kind = element.get(f"{OFFICE}value-type", "string")
    if kind in _NUMBERS:
        return exact(element.get(f"{OFFICE}value", ""))
    if kind == "boolean":
        return element.get(f"{OFFICE}boolean-value") == "true"
    if kind == "date":
        return _moment(element.get(f"{OFFICE}date-value", "")) or text
    return text


def _moment(text: str) -> datetime | None:
    try:
        return datetime.fromisoformat(text.removesuffix("Z")).replace(tzinfo=None)
    except ValueError:
        return None
