"""Headings across over rows that they name in turn: read, and asked about as a whole."""

from __future__ import annotations

from tests.charts.read_text import asked_at, questions, ranges, table, values


def test_headings_across_name_the_rows_below_them_in_turn_and_all_is_asked_about() -> None:
    reading = table(
        """
        Size | Waist (cm) | Hip (cm) | Inseam (cm)
        XS | S | M | L
        60-64 | 65-68 | 69-72 | 73-77
        90-92 | 93-95 | 96-98 | 99-101
        """
    )
    assert values(reading) == {
        "XS waist": (60, 64),
        "S waist": (65, 68),
        "M waist": (69, 72),
        "L waist": (73, 77),
        "XS hip": (90, 92),
        "S hip": (93, 95),
        "M hip": (96, 98),
        "L hip": (99, 101),
    }
    assert questions(reading) == ["columns-shifted"]
    assert len(asked_at(reading, "columns-shifted")) == len(ranges(reading)) == 8


def test_more_sizes_than_headings_are_read_as_well() -> None:
    reading = table("Size | Chest (cm)\nS | M | L\n84-88 | 88-92 | 92-96")
    assert values(reading) == {"S chest": (84, 88), "M chest": (88, 92), "L chest": (92, 96)}
    assert len(asked_at(reading, "columns-shifted")) == 3


def test_a_row_without_a_heading_leaves_nothing_that_could_be_told() -> None:
    reading = table("Size | Chest (cm)\nS | M\n84-88 | 88-92\n68-72 | 72-76")
    assert all(value.findings for value in ranges(reading))
    assert questions(reading)


def test_a_part_further_down_is_not_read_under_the_names_of_such_a_table() -> None:
    reading = table(
        """
        Size | Waist (cm) | Hip (cm)
        S | M | L
        60-64 | 65-68 | 69-72
        90-92 | 93-95 | 96-98
        Men
        Hip (cm) | 95-98 | 99-102
        Waist (cm) | 73-75 | 76-78
        """
    )
    assert {value.place[1] for value in ranges(reading)} == {"3", "4"}
    (left,) = [one for one in reading.findings if one.code == "text-order"]
    assert left.place == "B6:C7"
