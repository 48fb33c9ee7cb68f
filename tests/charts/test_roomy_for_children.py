"""Girths larger than any child's of the height or age beside them are asked about."""

from __future__ import annotations

import pytest

from charts.schema import Basis, Dimension
from tests.charts.read_text import asked_at, questions, ranges, table

GIRTHS = {Dimension.CHEST, Dimension.WAIST, Dimension.HIP}


@pytest.mark.parametrize(
    "rows",
    [
        ("Height (cm) | Waist (cm) | Hip (cm)", "100 | 52 | 69", "110 | 54 | 74", "120 | 56 | 79"),
        ("Size | Height (cm) | Chest (cm)", "XS | 98-104 | 68", "S | 110-116 | 76", "M | 140 | 84"),
        ("Size | 3-4 years | 5-6 years | 7-8 years", "Hip (cm) | 68 | 76 | 84"),
        (
            "Größe | Alter (Jahre) | Brustumfang (cm)",
            "S | 3-4 | 70",
            "M | 5-6 | 76",
            "L | 8-9 | 84",
        ),
    ],
)
def test_they_are_no_bodys_and_asked_about_once(rows: tuple[str, ...]) -> None:
    reading = table("\n".join(rows))
    girths = [one for one in ranges(reading) if one.dimension in GIRTHS]
    assert {one.basis for one in girths} == {Basis.UNKNOWN}
    assert questions(reading) == ["basis-doubtful"]
    assert len(asked_at(reading, "basis-doubtful")) == len(girths)


@pytest.mark.parametrize(
    "rows",
    [
        ("Height (cm) | Waist (cm) | Hip (cm)", "98 | 52 | 57", "110 | 54 | 61", "122 | 57 | 67"),
        ("Height (cm) | Chest (cm)", "74-80 | 50-52", "86-92 | 54-56", "98-104 | 56-58"),
        ("Size | 3-4 years | 5-6 years | 7-8 years", "Hip (cm) | 60 | 65 | 72"),
        ("Height (cm) | Hip (cm)", "120 | 78", "150 | 99", "160 | 104"),
        ("Size | Hip (in) | Length (in)", "28 | 36 | 39.5", "30 | 38 | 40.5", "32 | 40 | 41.5"),
        ("Height (cm) | Hip of your body (cm)", "100 | 69", "110 | 74", "120 | 79"),
    ],
)
def test_a_childs_are_not(rows: tuple[str, ...]) -> None:
    assert "basis-doubtful" not in questions(table("\n".join(rows)))
