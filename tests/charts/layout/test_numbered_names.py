"""A first column that only numbers the names of measures, under headings of one row or two."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Dimension

_ROWS = (("Shoulders", "36", "37", "38"), ("Chest", "83", "87", "91"), ("Waist", "64", "68", "72"))
_SIZES = "<td>S</td><td>M</td><td>L</td>"
_CORNER = "<td rowspan=2>No.</td><td rowspan=2>Name</td><td colspan=3>SIZE</td>"


def _page(head: str) -> bytes:
    rows = "".join(
        f"<tr>{''.join(f'<td>{cell}</td>' for cell in (str(number), *row))}</tr>"
        for number, row in enumerate(_ROWS, start=1)
    )
    return f"<table>{head}{rows}</table>".encode()


@pytest.mark.parametrize(
    "head",
    [
        f"<tr><td>No.</td><td>Name</td>{_SIZES}</tr>",
        f"<tr>{_CORNER}</tr><tr>{_SIZES}</tr>",
        f"<tr>{_CORNER.replace('No.', 'Zorb')}</tr><tr>{_SIZES}</tr>",
    ],
)
def test_the_numbers_are_no_sizes_and_no_figures(head: str) -> None:
    (chart,) = read_bytes(_page(head), "a.html").charts
    found = {
        size.label: {one.dimension: one.value for one in size.ranges if one.value is not None}
        for size in chart.sizes
    }
    assert list(found) == ["S", "M", "L"]
    assert float(found["M"][Dimension.CHEST]) == 87
    assert float(found["L"][Dimension.WAIST]) == 72
