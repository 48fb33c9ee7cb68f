"""Chests larger than anybody's of these letters are asked about, whatever word stands over them."""

from __future__ import annotations

import pytest

from charts.schema import Basis, Dimension
from tests.charts.read_text import asked_at, questions, ranges, table


@pytest.mark.parametrize(
    "rows",
    [
        ("Size | Chest girth (cm)", "S | 105", "M | 111", "L | 117", "XL | 123"),
        ("Größe | Brustumfang (cm) | Länge (cm)", "S | 98 | 66", "M | 104 | 68", "L | 110 | 70"),
        ("Размер | Обхват груди, см | Длина изделия", "S | 105 | 70", "M | 111 | 72"),
        ("Taille | Tour de poitrine (cm) | Longueur (cm)", "S/M | 108 | 66", "L/XL | 120 | 68"),
        ("Size | S | M | L", "Bust girth (cm) | 104-108 | 110-114 | 116-120"),
    ],
)
def test_they_are_no_bodys_and_asked_about_once(rows: tuple[str, ...]) -> None:
    reading = table("\n".join(rows))
    chests = [one for one in ranges(reading) if one.dimension is Dimension.CHEST]
    assert {one.basis for one in chests} == {Basis.UNKNOWN}
    assert questions(reading) == ["basis-doubtful"]
    assert len(asked_at(reading, "basis-doubtful")) == len(chests)


@pytest.mark.parametrize(
    "rows",
    [
        ("Size | Chest girth (cm)", "S | 96", "M | 102", "L | 108", "XL | 114"),
        ("Size | Chest girth (cm) | Length (cm)", "S | 92 | 66", "M | 98 | 68", "L | 104 | 70"),
        ("Size | Chest girth (cm) | Length (cm)", "M | 102 | 68", "L | 107 | 70", "3XL | 140 | 73"),
        ("Size | Chest girth (cm)", "4XL | 140", "5XL | 150"),
        ("Size | Chest girth (in)", "S | 36-38", "M | 38-41", "L | 41-44"),
    ],
)
def test_chests_of_bodies_are_not(rows: tuple[str, ...]) -> None:
    reading = table("\n".join(rows))
    chests = [one for one in ranges(reading) if one.dimension is Dimension.CHEST]
    assert {one.basis for one in chests} == {Basis.BODY}
    assert "basis-doubtful" not in questions(reading)
