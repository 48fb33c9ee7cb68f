"""The workbook reader held against openpyxl's own loader: same cells, same values, same formats.

Reference: openpyxl 3.1 in full mode with ``data_only`` and ``rich_text``.
"""

from __future__ import annotations

import io
import random
from datetime import date, datetime, time
from decimal import Decimal

import pytest
from openpyxl import Workbook, load_workbook

from charts.sheet import Cell
from tests.charts.readers.reading import book_of, read, saved

FORMATS = [
    "General", "0", "0.0", '0" cm"', "# ?/?", "0%", "00-00", "@", "d-mmm", "mmm-yy", "m/d/yyyy",
    "h:mm", '[>=1000]0.0,"m";0" mm"', "0\\ \\c\\m", "[Red]0", "#,##0.00",
]  # fmt: skip


def _same(cell: Cell, value: object) -> bool:
    if isinstance(value, bool | str | datetime | date | time):
        return cell.stored == value
    if isinstance(value, int | float):
        return isinstance(cell.stored, Decimal) and abs(float(cell.stored) - value) < 1e-9
    return str(value) == str(cell.stored)


def _random_book(seed: int) -> Workbook:
    chance = random.Random(seed)  # noqa: S311 - a repeatable book, not a secret
    book, sheet = book_of(title="Vests")
    for row in range(1, 30):
        for column in range(1, 9):
            cell = sheet.cell(row, column)
            kind = chance.randrange(6)
            if kind == 0:
                cell.value = chance.choice(
                    ["S", "86–91 cm", "34 1/2", "Größe", " padded", "<>&'\""]
                )
            elif kind == 1:
                cell.value = chance.randrange(0, 2000)
            elif kind == 2:
                cell.value = round(chance.uniform(0, 200), chance.randrange(6))
            elif kind == 3:
                cell.value = datetime(2024, chance.randrange(1, 13), chance.randrange(1, 29))  # noqa: DTZ001 - a workbook's dates have no zone
            cell.number_format = chance.choice(FORMATS)
    sheet.merge_cells("A1:B2")
    return book


@pytest.mark.parametrize("seed", range(12))
def test_every_value_and_format_is_the_one_openpyxl_finds(seed: int) -> None:
    data = saved(_random_book(seed))
    reference = load_workbook(io.BytesIO(data), data_only=True, rich_text=True).worksheets[0]
    found = {
        at: cell for at, cell in read(data, "a.xlsx").sheet.cells.items() if not cell.shared_from
    }
    expected = {
        (cell.row - 1, cell.column - 1): cell
        for row in reference.iter_rows()
        for cell in row
        if cell.value is not None
    }
    assert set(found) == set(expected)
    for at, cell in found.items():
        assert cell.number_format == expected[at].number_format, at
        value = expected[at].value
        assert _same(cell, value.strip() if isinstance(value, str) else value), (at, value)
