"""Lengths of one size in headings, beside a grid of lengths, and what a note says of it."""

from __future__ import annotations

import pytest

from charts.schema import Dimension
from tests.charts.read_text import notes, questions, ranges, table, values

BOTH = {
    "S short chest": (84, 88), "S short back_length": 40,
    "S long chest": (84, 88), "S long back_length": 46,
    "M short chest": (88, 92), "M short back_length": 41,
    "M long chest": (88, 92), "M long back_length": 47,
}  # fmt: skip


@pytest.mark.parametrize(
    "form", ["Back length {} (cm)", "Back length ({}) (cm)", "{} back length (cm)"]
)
def test_a_measure_for_each_length_gives_a_line_for_each(form: str) -> None:
    reading = table(
        f"""
        Size | Chest (cm) | {form.format("short")} | {form.format("long")}
        S | 84-88 | 40 | 46
        M | 88-92 | 41 | 47
        """
    )
    assert values(reading) == BOTH
    assert questions(reading) == []
    assert "second-axis" in notes(reading)


def test_lengths_stand_below_their_measure() -> None:
    reading = table(
        """
        Größe | Brust (cm) | Körpergröße (cm) | |
         | | kurz | normal | lang
        S | 84-88 | 155-165 | 165-175 | 175-185
        M | 88-92 | 157-167 | 167-177 | 177-187
        """
    )
    assert values(reading)["M lang height"] == (177, 187)
    assert values(reading)["S normal chest"] == (84, 88)
    assert len(values(reading)) == 12
    assert questions(reading) == []


def test_lengths_run_down_where_the_sizes_run_across() -> None:
    reading = table(
        """
        Size | S | M
        Chest (cm) | 84-88 | 88-92
        Back length short (cm) | 40 | 41
        Back length long (cm) | 46 | 47
        """
    )
    assert values(reading) == BOTH


def test_a_long_and_a_short_sleeve_are_no_lengths_of_a_size() -> None:
    reading = table(
        """
        Size | Long sleeve (cm) | Short sleeve (cm) | Chest (cm)
        S | 60 | 22 | 84-88
        M | 61 | 23 | 88-92
        """
    )
    assert "second-axis" not in notes(reading)
    assert "column-unused" in questions(reading)


@pytest.mark.parametrize("note", ["Back length in cm", "Back length (cm)"])
def test_a_note_names_what_a_grid_of_lengths_holds(note: str) -> None:
    reading = table(
        f"""
         | Short | Regular | Long
        S | 40 | 43 | 46
        M | 41 | 44 | 47
        {note}
        """
    )
    assert values(reading)["M Long back_length"] == 47
    assert questions(reading) == []


def test_two_dimensions_in_the_notes_name_none() -> None:
    reading = table(
        """
        S | M | L
        84-88 | 88-92 | 92-96
        Chest in cm
        Waist in cm
        """
    )
    assert questions(reading) == ["heading-unknown"]


def test_a_plain_measure_beside_those_for_lengths_is_of_the_plain_size() -> None:
    reading = table(
        """
        Size | XS | S | M
        Chest (cm) | 80-84 | 84-88 | 88-92
        Inseam (cm) | 79 | 81 | 82
        Short inseam (cm) | - | 72 | 74.5
        Tall inseam (cm) | - | 86 | 88
        """
    )
    found = values(reading)
    due: dict[str, object] = {
        "XS inseam": 79,
        "S inseam": 81,
        "S Short inseam": 72,
        "S Tall inseam": 86,
        "M inseam": 82,
        "M Short inseam": 74.5,
        "M Tall inseam": 88,
        "M Tall chest": (88, 92),
    }
    assert {key: found[key] for key in due} == due

    assert not [key for key in found if key.startswith(("XS Short", "XS Tall"))]
    assert questions(reading) == []


def test_one_other_length_beside_the_plain_one_is_enough() -> None:
    reading = table(
        """
        Size | Chest (cm) | Back length (cm) | Back length tall (cm)
        S | 84-88 | 40 | 44
        M | 88-92 | 41 | 45
        """
    )
    found = values(reading)
    assert found["S back_length"] == 40
    assert found["M tall back_length"] == 45
    assert questions(reading) == []


def test_lengths_that_end_before_the_figures_name_no_row_for_sure() -> None:
    reading = table(
        "Waist | cm | Length | cm\n28 | 71 | Short | 76\n30 | 76 | Regular | 81\n"
        "32 | 81 | Long | 86\n34 | 86 | | \n36 | 91 | | "
    )
    waists = [one for one in ranges(reading) if one.dimension is Dimension.WAIST]
    assert len(waists) == 5
    assert all(one.findings for one in waists)
