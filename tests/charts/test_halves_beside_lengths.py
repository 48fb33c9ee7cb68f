"""Chests no larger than the garment is long: halves laid flat, asked about once a table."""

from __future__ import annotations

import pytest

from charts.schema import Dimension
from tests.charts.read_text import questions, ranges, table

GIRTHS = {Dimension.CHEST, Dimension.WAIST, Dimension.HIP}


def asked(text: str) -> set[Dimension]:
    """The dimensions of the values that carry a question about halves."""
    reading = table(text)
    halves = {one.id for one in reading.findings if one.code == "laid-flat"}
    return {one.dimension for one in ranges(reading) if halves & set(one.findings)}


def test_codes_for_sizes_with_both_units_in_each_cell() -> None:
    text = """
    Size | Wingspan | Chest | Length | Waist | Hips
    A0 | 157cm 61.8 in | 53cm 20.9 in | 72cm 28.3 in | 48cm 18.9 in | 52cm 20.5 in
    A1 | 162cm 63.8 in | 54cm 21.3 in | 76cm 29.9 in | 50cm 19.7 in | 53cm 20.9 in
    A5 | 187cm 73.6 in | 62cm 24.4 in | 92cm 36.2 in | 62cm 24.4 in | 64cm 25.2 in
    """
    assert asked(text) == GIRTHS
    assert questions(table(text)) == ["laid-flat"]


def test_wide_halves_beside_a_length_without_a_language() -> None:
    text = """
    Tamanho | Peito (cm) | Cintura (cm) | Comprimento (cm)
    P | 64 | 54 | 70
    M | 68 | 58 | 74
    GG | 76 | 66 | 82
    """
    assert asked(text) == {Dimension.CHEST, Dimension.WAIST}


@pytest.mark.parametrize("length", ["Back length (cm)", "Longueur avant (cm)"])
def test_a_length_of_the_back_or_the_front_tells_as_well(length: str) -> None:
    text = f"Size | Chest (cm) | {length}\nXS | 60.5 | 73\nM | 65.5 | 75\nXXL | 73 | 78"
    assert asked(text) == {Dimension.CHEST}
    doubled = "Size | Chest (cm) | Waist over shoulder to waist (cm)\n1 | 70 | 82\n2 | 78 | 88"
    assert asked(doubled) == set()


@pytest.mark.parametrize(
    "text",
    [
        "Size | Chest (cm) | Length (cm)\nS | 96 | 70\nM | 102 | 72",
        "Size | Chest (cm) | Length (cm)\n4 years | 58 | 60\n6 years | 62 | 64",
        "Size | Height (cm) | Chest (cm) | Length (cm)\n104 | 104 | 58 | 60\n116 | 116 | 62 | 64",
        "Size | Chest girth (cm) | Length (cm)\n1 | 64 | 70\n2 | 68 | 74",
        "Kids\nSize | Chest (cm) | Length (cm)\n1 | 64 | 70\n2 | 68 | 74",
    ],
)
def test_whole_girths_and_childrens_are_not_asked_about(text: str) -> None:
    assert asked(text) == set()


def test_a_band_of_grown_ups_does_for_letters() -> None:
    rows = "Size | Chest (cm) | Waist (cm)\n1 | 53 | 48\n2 | 55 | 50\n3 | 57 | 52"
    assert asked(f"Men\n{rows}") == {Dimension.CHEST, Dimension.WAIST}
    assert asked(f"Boys\n{rows}") == set()


def test_a_small_half_beside_a_half_is_in_no_other_unit() -> None:
    text = "Women's shorts\nSize | Waist (cm) | Hip (cm)\nS | 36 | 46\nM | 38 | 50\nL | 40 | 52"
    found = {one.value for one in ranges(table(text)) if one.dimension is Dimension.WAIST}
    assert found == {36, 38, 40}
    assert asked(text) == {Dimension.WAIST, Dimension.HIP}


def test_inches_under_cm_beside_whole_girths_are_still_exchanged() -> None:
    text = "Size | Waist (cm) | Hip (cm)\nS | 28 | 92\nM | 30 | 96\nL | 32 | 100"
    assert "units-swapped" in questions(table(text))


def test_halves_of_children_without_a_unit_are_in_the_unit_of_such_halves() -> None:
    sizes = "SIZES | 3-4 | 5-6 | 7-8 | 9-11\n"
    reading = table(f"{sizes}Half Chest | 33 | 35 | 37 | 41\nBody Length | 42 | 46 | 51.5 | 57.5")
    assert {float(one.value or 0) for one in ranges(reading)} >= {33, 41, 57.5}
    assert "unit-missing" in questions(reading)
