"""Letters in their order tell that a line names sizes, whatever stands among them."""

from __future__ import annotations

import pytest

from charts.schema import FileReading
from tests.charts.read_text import asked_at, figures, table

_ROWS = """
T1 | Zorbo length | 56 | 56 | 54 | 56 | 58 | AX/1/2 | %1
T2 | Chest width | 43 | 43 | 40 | 43 | 46 | AX/1/3 | %2
T3 | Waist width | 39 | 39 | 36 | 39 | 42 | AX/1/4 | %3
T4 | Farlan | 16 | 16 | 15.5 | 16 | 16.5 | AX/1/5 | %4
"""


def read(corner: str, sizes: str) -> FileReading:
    return table(f" | {corner} | Base | User | {sizes} | Code | Index{_ROWS}")


def chests(reading: FileReading) -> dict[str | None, object]:
    return {
        size.label: figures(one)
        for chart in reading.charts
        for size in chart.sizes
        for one in size.ranges
        if one.dimension == "chest"
    }


@pytest.mark.parametrize("corner", ["Unit (cm)", "单位(厘米)"])
def test_columns_of_a_program_beside_sizes_in_letters_do_not_turn_a_table(corner: str) -> None:
    reading = read(corner, "S | M | L")
    found = chests(reading)
    assert [found[size] for size in ("S", "M", "L")] == [40, 43, 46]
    assert not asked_at(reading, "unit-missing")


def test_letters_in_no_order_name_nothing() -> None:
    assert not chests(read("Unit (cm)", "M | L | S"))
