"""Both units side by side: sizes across in each unit, a bare unit behind a measure."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.quantities import Unit
from tests.charts.read_text import questions, ranges, table, values

BOTH = {"S chest": (84, 88), "S waist": (68, 72), "M chest": (88, 92), "M waist": (72, 76)}


@pytest.mark.parametrize("corner", ["", "Size"])
@pytest.mark.parametrize("form", ["S {0}", "S ({0})", "S / {0}"])
def test_sizes_across_stand_in_each_unit(corner: str, form: str) -> None:
    heads = [form.format(unit).replace("S", size, 1) for size in "SM" for unit in ("cm", "inch")]
    reading = table(
        f"""
        {corner} | {" | ".join(heads)}
        Chest | 84-88 | 33-34.5 | 88-92 | 34.5-36
        Waist | 68-72 | 27-28.5 | 72-76 | 28.5-30
        """
    )
    assert values(reading) == BOTH
    assert questions(reading) == []
    assert all(value.also_published is not None for value in ranges(reading))


def test_numbers_across_stand_in_each_unit() -> None:
    reading = table(
        """
        Size | 34 cm | 34 in | 36 cm | 36 in
        Chest | 84-88 | 33-34.5 | 88-92 | 34.5-36
        """
    )
    assert values(reading) == {"34 chest": (84, 88), "36 chest": (88, 92)}


def test_a_size_word_merged_over_a_row_of_units_is_no_size() -> None:
    page = (
        "<table><tr><th rowspan=2>Size</th><th colspan=2>S</th><th colspan=2>M</th></tr>"
        "<tr><th>cm</th><th>in</th><th>cm</th><th>in</th></tr>"
        "<tr><td>Chest</td><td>84-88</td><td>33-34.5</td><td>88-92</td><td>34.5-36</td></tr>"
        "<tr><td>Waist</td><td>68-72</td><td>27-28.5</td><td>72-76</td><td>28.5-30</td></tr></table>"
    )
    reading = read_bytes(page.encode(), "page.html")
    assert values(reading) == BOTH
    assert questions(reading) == []


def test_a_bare_unit_is_the_measure_to_its_left_in_that_unit() -> None:
    reading = table(
        """
        Größe | Brust | Zoll | Taille | Zoll
        S | 84-88 | 33-34.5 | 68-72 | 27-28.5
        M | 88-92 | 34.5-36 | 72-76 | 28.5-30
        """
    )
    assert values(reading) == BOTH
    assert questions(reading) == []


def test_masses_and_feet_behind_a_measure_are_proved_by_their_ratio() -> None:
    reading = table(
        """
        Size | Weight | lbs | Height | ft
        S | 40-50 | 88-110 | 150-160 | 4'11"-5'3"
        M | 50-60 | 110-132 | 160-170 | 5'3"-5'7"
        """
    )
    assert values(reading)["S weight"] == (40, 50)
    assert values(reading)["M height"] == (160, 170)
    assert questions(reading) == []


def test_without_a_proof_the_other_unit_is_not_taken_over_but_asked_about() -> None:
    reading = table(
        """
        Size | Weight | lbs
        S | 40-50 | 80-110
        M | 50-60 | 115-132
        """
    )
    assert values(reading)["S weight"] == (40, 50)
    assert "unit-missing" in questions(reading)
    beside = ranges(reading)[0].also_published
    assert beside is not None
    assert beside.unit is Unit.LB


@pytest.mark.parametrize("first", [1, 2, 3])
def test_a_unit_over_any_one_of_its_sizes_holds_for_all_of_them(first: int) -> None:
    """A word centred over the sizes in its unit stands over one of them once it is text."""
    units = [""] * 7
    units[first], units[first + 3] = "CM", "INCHES"
    reading = read_bytes(
        "\n".join(
            "\t".join(row)
            for row in (
                units,
                ["", "S", "M", "L", "S", "M", "L"],
                ["Chest", "84-88", "88-92", "92-97", "33-34½", "34½-36", "36-38"],
                ["Waist", "68-72", "72-76", "76-81", "27-28½", "28½-30", "30-32"],
            )
        ).encode(),
        "a.tsv",
    )
    assert values(reading) == BOTH | {"L chest": (92, 97), "L waist": (76, 81)}
    assert questions(reading) == []
