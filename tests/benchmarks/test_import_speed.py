"""Reading charts costs at most twice what opening their workbooks costs.

Reference, measured in the same run: openpyxl opening each workbook in full mode and touching
every cell, which is what any reading of merged cells has to do at least.
"""

from __future__ import annotations

import io
import random
import time
from collections.abc import Callable, Sequence
from itertools import product

import openpyxl
import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from charts.importer import read_bytes

WORKBOOKS = 200
TIMES = 2.0
ROUNDS = 4


def workbook(chance: random.Random) -> bytes:
    """A small chart: a title, six sizes, four dimensions in cm, a note."""
    book = openpyxl.Workbook()
    page = book.active
    assert page is not None
    page.title = chance.choice(("Women", "Men", "Vest", "Chart"))
    page.append([f"Vest {chance.randint(1, 99)}"])
    page.merge_cells("A1:E1")
    page.append([])
    page.append(["Size", "Chest (cm)", "Waist (cm)", "Hips (cm)", "Back length (cm)"])
    first = chance.randint(76, 92)
    for number, label in enumerate(("XS", "S", "M", "L", "XL", "XXL")):
        chest = first + 4 * number
        waist, hip = chest - 14, chest + 8
        back = 38 + number
        page.append([label, *(f"{low}-{low + 4}" for low in (chest, waist, hip)), back])
    page.append([])
    page.append(["Measure over a light shirt, standing."])
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


@pytest.fixture(scope="module")
def workbooks() -> Sequence[bytes]:
    chance = random.Random(7)  # noqa: S311 - figures of invented charts
    return [workbook(chance) for _ in range(WORKBOOKS)]


def opened(books: Sequence[bytes]) -> int:
    """Open each workbook in full mode and touch every cell."""
    touched = 0
    for data in books:
        for page in openpyxl.load_workbook(io.BytesIO(data)).worksheets:
            for row, column in product(range(page.max_row), range(page.max_column)):
                touched += page.cell(row + 1, column + 1).value is not None
    return touched


def read(books: Sequence[bytes]) -> int:
    """Read each workbook into charts, with every check."""
    return sum(len(read_bytes(data, "chart.xlsx").charts) for data in books)


def processor_time_s(work: Callable[[Sequence[bytes]], int], books: Sequence[bytes]) -> float:
    """What ``work`` costs the processor: the clock on the wall also counts the neighbours."""
    start = time.process_time()
    work(books)
    return time.process_time() - start


def test_reading_charts_costs_at_most_twice_opening_their_workbooks(
    benchmark: BenchmarkFixture, workbooks: Sequence[bytes]
) -> None:
    read(workbooks[:5])
    opened(workbooks[:5])
    reference, measured = [], []
    for _ in range(ROUNDS):  # turn about, so that both meet the same machine
        reference.append(processor_time_s(opened, workbooks))
        measured.append(processor_time_s(read, workbooks))
    assert benchmark.pedantic(read, args=(workbooks,), rounds=1) == WORKBOOKS
    ratio = min(measured) / min(reference)
    benchmark.extra_info["times the reference"] = round(ratio, 2)
    assert ratio <= TIMES, f"{ratio:.2f} times openpyxl"
