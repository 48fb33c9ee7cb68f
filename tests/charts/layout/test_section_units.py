"""A measure on its own row over rows that only say their unit, beside rows with their names."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from tests.charts.read_text import questions, values

_SIZES = {
    "sizes": "Size,XS,S,M",
    "ages": "Age,3-4,5-6,Age 14+",
}
_ROWS = """
TO FIT CHEST SIZE,,,
INCHES,23,25,27
CM,58,63,69
RECOMMENDED HEIGHT (cm),104,116,128
"""


@pytest.mark.parametrize("sizes", _SIZES.values(), ids=_SIZES)
def test_the_measure_names_the_rows_of_its_units(sizes: str) -> None:
    reading = read_bytes(f"{sizes}{_ROWS}".encode(), "a.csv")
    first = sizes.split(",")[1]
    found = values(reading)
    assert (found[f"{first} chest"], found[f"{first} height"]) == (58, 104)
    assert (len(found), questions(reading)) == (6, [])


def test_each_section_names_its_own_rows() -> None:
    rows = "Chest,,,\ninch,32-34,34-36,36-38\ncm,81-86,86-91,91-97\n"
    rows += rows.replace("Chest", "Waist").replace("3", "2", 1).replace("81-86", "66-71")
    found = values(read_bytes(f"Size,XS,S,M\n{rows}".encode(), "a.csv"))
    assert (found["XS chest"], found["XS waist"]) == ((81, 86), (66, 71))


@pytest.mark.parametrize("title", ["ZORBOS", "84"])
def test_any_other_row_names_nothing(title: str) -> None:
    rows = _ROWS.replace("TO FIT CHEST SIZE", title)
    found = values(read_bytes(f"{_SIZES['sizes']}{rows}".encode(), "a.csv"))
    assert "XS chest" not in found
