"""How fast workbooks become sheets, each beside a named reference measured in the same run.

Reference: openpyxl 3.1 opens the same workbooks in full mode and touches each existing cell.
"""

from __future__ import annotations

import io
import time
import tracemalloc
from collections.abc import Callable, Sequence
from typing import Final

import pytest
from openpyxl import Workbook, load_workbook
from pytest_benchmark.fixture import BenchmarkFixture

from charts.findings import FindingLog
from charts.readers.registry import open_bytes
from tests.charts.readers.reading import book_of, saved, with_part

BOOKS: Final = 200
MEGABYTE: Final = 1024 * 1024
SHEET: Final = "xl/worksheets/sheet1.xml"


def small_book(number: int) -> bytes:
    """Six sizes and five dimensions, a merged title, a unit that stands in the format only."""
    book, sheet = book_of(["Vest", *[None] * 5])
    sheet.merge_cells("A1:F1")
    sheet.append(["Size", "Chest (cm)", "Waist (cm)", "Hip (cm)", "Height (cm)", "Weight"])
    for step, label in enumerate(["XS", "S", "M", "L", "XL", "XXL"]):
        low = 80 + number % 5 + 4 * step
        ranges = [f"{low + shift}-{low + shift + 4}" for shift in (0, -14, 6, 80)]
        sheet.append([label, *ranges, 50 + 8 * step])
        sheet.cell(sheet.max_row, 6).number_format = '0" kg"'
    return saved(book)


def stray_cell() -> bytes:
    book, sheet = book_of(["Size", "Chest"], ["S", "86-91"])
    sheet["E1048576"] = "x"
    return saved(book)


def styled_empty_rows() -> bytes:
    book, sheet = book_of(["Size", "Chest"], ["S", "86-91"])
    sheet["C1"].number_format = '0" cm"'
    rows = "".join(
        f'<row r="{row}">'
        + "".join(f'<c r="{letter}{row}" s="1"/>' for letter in "ABCDEFGHIJ")
        + "</row>"
        for row in range(3, 60_003)
    )
    return with_part(
        saved(book), SHEET, lambda xml: xml.replace("</sheetData>", f"{rows}</sheetData>")
    )


def read_all(books: Sequence[bytes]) -> int:
    return sum(
        len(sheet.cells) for data in books for sheet in open_bytes(data, "a.xlsx", FindingLog())
    )


def openpyxl_touches_all(books: Sequence[bytes]) -> int:
    touched = 0
    for data in books:
        book: Workbook = load_workbook(io.BytesIO(data), rich_text=True)
        for page in book.worksheets:
            for cell in list(page._cells.values()):
                touched += cell.value is not None
    return touched


def fastest(work: Callable[[], object], rounds: int = 5) -> float:
    best = float("inf")
    for _ in range(rounds):
        before = time.perf_counter()
        work()
        best = min(best, time.perf_counter() - before)
    return best


def test_many_small_workbooks_take_less_than_openpyxl_alone(benchmark: BenchmarkFixture) -> None:
    books = [small_book(number) for number in range(BOOKS)]
    assert read_all(books) == openpyxl_touches_all(books) + BOOKS * 5  # the merged title, repeated
    reference = fastest(lambda: openpyxl_touches_all(books), rounds=3)
    benchmark.pedantic(read_all, args=(books,), rounds=5, warmup_rounds=1)
    ratio = benchmark.stats.stats.min / reference
    benchmark.extra_info["ratio to openpyxl"] = round(ratio, 3)
    assert ratio < 0.8


@pytest.mark.parametrize("build", [stray_cell, styled_empty_rows])
def test_a_swollen_workbook_takes_half_a_second_and_100_megabytes(
    benchmark: BenchmarkFixture, build: Callable[[], bytes]
) -> None:
    data = build()
    tracemalloc.start()
    assert read_all([data]) in (4, 5)
    _, peak = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    benchmark.pedantic(read_all, args=([data],), rounds=5, warmup_rounds=1)
    benchmark.extra_info["peak megabytes"] = round(peak / MEGABYTE)
    assert benchmark.stats.stats.max < 0.5
    assert peak < 100 * MEGABYTE
