"""A word in the corner that speaks of the other headings, and the unit that stands beside it."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from tests.charts.read_text import notes, questions, ranges, table, values

SHEET = {"36 chest": 84, "36 waist": 68, "38 chest": 88, "38 waist": 72}


@pytest.mark.parametrize(
    "corner", ["Measure", "Point of measure", "Measurement", "Description", "Mesure", ""]
)
def test_a_word_for_measures_in_the_corner_hides_no_sizes(corner: str) -> None:
    reading = table(
        f"""
        {corner} | 36 | 38
        Chest (cm) | 84 | 88
        Waist (cm) | 68 | 72
        """
    )
    assert values(reading) == SHEET
    assert questions(reading) == []


@pytest.mark.parametrize("sign", ["+/-", "±", "Tol."])
@pytest.mark.parametrize("step", ["Grade", "Step", "Sprung"])
def test_steps_and_tolerances_among_the_sizes_are_none(sign: str, step: str) -> None:
    reading = table(
        f"""
        Pos | Measure | 36 | 38 | {step} | {sign}
        1 | Chest (cm) | 84 | 88 | 4 | 1
        2 | Waist (cm) | 68 | 72 | 4 | 1
        """
    )
    assert values(reading) == SHEET
    assert {float(one.tolerance or 0) for one in ranges(reading)} == {1.0}
    assert "tolerance-kept" in notes(reading)


def test_prices_are_no_sizes() -> None:
    reading = read_bytes(b"Price,Chest (cm),Waist (cm)\n119,84,68\n129,88,72\n", "a.csv")
    assert values(reading) == {}
    assert questions(reading) == ["no-table"]


@pytest.mark.parametrize("corner", ["Body measurements (cm)", "Size (cm)", "Measure in cm"])
def test_the_unit_in_the_corner_holds_for_all_figures(corner: str) -> None:
    reading = table(
        f"""
        {corner} | 36 | 38
        Chest | 84 | 88
        Waist | 68 | 72
        """
    )
    assert values(reading) == SHEET
    assert questions(reading) == []


def test_the_corner_gives_no_unit_that_the_figures_cannot_have() -> None:
    reading = table(
        """
        Size (cm) | Chest | Waist
        104 | 22 | 21
        110 | 23 | 22
        116 | 24 | 23
        """
    )
    assert "unit-missing" in questions(reading)


def test_a_row_of_the_same_size_in_the_other_unit_is_proved_by_its_ratio() -> None:
    reading = table(
        """
        Size | Chest | Waist
        S | 33-34.5 | 27-28.5
         | 84-88 cm | 68-72 cm
        M | 34.5-36 | 28.5-30
         | 88-92 cm | 72-76 cm
        """
    )
    assert values(reading)["M chest"] == (88, 92)
    assert len(values(reading)) == 4
    assert questions(reading) == []
    assert all(one.also_published is not None for one in ranges(reading))


@pytest.mark.parametrize("sizes", [("XS", "S", "M"), ("36", "38", "40"), ("104", "110", "116")])
@pytest.mark.parametrize("second", [("Height", "98-104", "104-110", "110-116"), ()])
def test_a_missing_corner_moves_no_figures_to_the_next_size(
    sizes: tuple[str, ...], second: tuple[str, ...]
) -> None:
    rows = [sizes, ("Chest (cm)", "55", "57", "59"), *([second] if second else [])]
    reading = read_bytes("\n".join(",".join(row) for row in rows).encode(), "a.csv")
    found = {key: one for key, one in values(reading).items() if "chest" in key}
    asked = questions(reading)
    right = {f"{size} chest": figure for size, figure in zip(sizes, (55, 57, 59), strict=True)}
    assert found == right or asked


def test_numbers_below_the_first_measure_are_sizes_where_only_that_fits() -> None:
    reading = read_bytes(b"Chest (cm),Waist (cm)\n36,84,68\n38,88,72\n", "a.csv")
    assert values(reading) == SHEET
    assert questions(reading) == []


def test_numbers_that_fit_both_ways_are_asked_about() -> None:
    reading = read_bytes(b"Chest (in),Waist (in)\n36,38,32\n38,40,34\n", "a.csv")
    assert values(reading) == {}
    assert questions(reading) == ["no-table"]


def test_rows_shorter_than_the_sizes_are_no_rows_of_one_size_each() -> None:
    reading = read_bytes(b"Size,S,M,L\nChest (cm),80-84,84-88\nWaist (cm),64-68,68-72\n", "a.csv")
    assert values(reading)["S chest"] == (80, 84)
    assert values(reading)["M waist"] == (68, 72)
    assert len(values(reading)) == 4


def test_a_cell_may_list_its_measures_behind_commas() -> None:
    reading = read_bytes(
        b'Size,Measurements\nS,"Chest 84-88 cm, Waist 68-72 cm"\n'
        b'M,"Chest 88-92 cm, Waist 72-76 cm"\n',
        "a.csv",
    )
    assert values(reading)["M waist"] == (72, 76)
    assert len(values(reading)) == 4


def test_sizes_by_names_of_their_own_stand_beside_a_word_for_measures() -> None:
    reading = table(
        """
        Measure | Small | Bigger | Huge
        Chest (cm) | 84-88 | 88-92 | 92-96
        Waist (cm) | 68-72 | 72-76 | 76-80
        """
    )
    assert values(reading)["Bigger chest"] == (88, 92)
    assert values(reading)["Huge waist"] == (76, 80)
    assert questions(reading) == []


def test_one_size_stands_beside_numbered_points_of_measure() -> None:
    reading = table(
        """
        PUNTO DE MEDIDA | TALLA M (std) | TOLERANCIA
        01 // Ancho de hombros | 45.5 cm | ± 0.2 cm
        02 // Contorno de pecho | 103.0 cm | ± 0.5 cm
        03 // Largo total superior | 73.0 cm | ± 0.4 cm
        """
    )
    found = {value.heading: (value.value, value.tolerance) for value in ranges(reading)}
    assert [float(one[0] or 0) for one in found.values()] == [45.5, 103, 73]
    assert [float(one[1] or 0) for one in found.values()] == [0.2, 0.5, 0.4]


@pytest.mark.parametrize("length", ["Länge (cm)", "Long (cm)"])
def test_a_length_with_its_unit_is_no_long_size_below_a_blank_corner(length: str) -> None:
    reading = table(
        f"""
        | Brust (cm) | {length}
        S | 97-102 | 71
        M | 102-107 | 73
        L | 107-112 | 76
        """
    )
    found = values(reading)
    assert [found[f"{size} chest"] for size in "SML"] == [(97, 102), (102, 107), (107, 112)]
