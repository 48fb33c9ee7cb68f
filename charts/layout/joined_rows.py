"""One range printed over several rows: 84, below it "to", below that 88.

The rows are one size; read one by one the first would be a single 84 that nobody printed. The
range stands in the cell of its first row, and the other rows are left out as hidden ones are.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Final

from charts.layout.looks import look
from charts.remembered import remembered
from charts.schema import Kind
from charts.sheet import Addressing, Cell, Sheet

_OPEN: Final = re.compile(r".*\d\D{0,6}?(?:\s[^\W\d_]{1,4}|\s*[-–—~])$")
"""Figures with a word or a dash behind them that wait for the next row: ``84 -``, ``84 to``."""
Row = Mapping[int, str]


def ranges_joined(sheet: Sheet) -> Sheet:
    """The sheet with every range that runs over rows in one cell."""
    if sheet.addressing is Addressing.LINE:
        return sheet
    rows = list(sheet.filled_rows)
    cells = dict(sheet.cells)
    emptied: set[int] = set()
    for number, row in enumerate(rows):
        if row in emptied:
            continue
        joined, below = _range_from(sheet, rows[number : number + 3])
        for column, text in joined.items():
            cells[row, column] = replace(cells[row, column], text=text, stored=None)
        emptied |= set(below)
    if not emptied:
        return sheet
    kept: dict[tuple[int, int], Cell] = {
        place: cell for place, cell in cells.items() if place[0] not in emptied
    }
    return replace(sheet, cells=kept, hidden_rows=sheet.hidden_rows | emptied)


def _range_from(sheet: Sheet, rows: Sequence[int]) -> tuple[Row, Sequence[int]]:
    """The ranges that begin in the first row, and the rows they take up below it."""
    own = [_own(sheet, row) for row in rows]
    if len(own) > 2 and own[1] and _between(own[1]) and _continues(own[0], own[1], own[2]):
        words, ends = own[1], own[2]
        texts = {column: f"{own[0][column]} {words[column]} {ends[column]}" for column in words}
        return (texts, rows[1:3]) if _are_ranges(texts) else ({}, ())
    if len(own) > 1 and own[1]:
        waiting = {column: text for column, text in own[0].items() if _OPEN.fullmatch(text)}
        if waiting and _continues(own[0], waiting, own[1]):
            texts = {column: f"{text} {own[1][column]}" for column, text in waiting.items()}
            return (texts, rows[1:2]) if _are_ranges(texts) else ({}, ())
    return {}, ()


@remembered
def _own(sheet: Sheet, row: int) -> Row:
    """The texts of a row without what only reaches into it from above."""
    return {
        column: cell.text.strip()
        for column, cell in sheet.row(row)
        if cell.text.strip() and (cell.shared_from or (row, column))[0] == row
    }


def _between(words: Row) -> bool:
    """Whether a row holds nothing but words or signs that stand between two ends."""
    return all(
        not any(sign.isdigit() for sign in word) and _is_range(f"84 {word} 88")
        for word in words.values()
    )


def _continues(first: Row, columns: Row, last: Row) -> bool:
    """Whether the last row holds the other ends of just these columns, and no size."""
    return set(last) == set(columns) <= set(first) and all(
        look(text).value for text in last.values()
    )


def _are_ranges(texts: Row) -> bool:
    return all(_is_range(text) for text in texts.values())


def _is_range(text: str) -> bool:
    quantity = look(text).reading.quantity
    return quantity is not None and quantity.kind is Kind.RANGE
