"""A page whose titles are plain lines: the names between two tables belong to the second."""

from __future__ import annotations

import pytest

from tests.charts.readers.reading import read

TABLE = "<table><tr><td>Size<td>Chest</tr><tr><td>S<td>86-91</tr></table>"


def read_page(*lines: str) -> list[tuple[tuple[str, ...], tuple[str, ...]]]:
    """Words before and after each table of a page of lines, "#" for a table."""
    body = "".join(TABLE if line == "#" else f"<p>{line}</p>" for line in lines)
    return [(one.context, one.notes) for one in read(body.encode(), "a.html").sheets]


TRIED = "Tried on with a thin shirt."


def test_a_name_and_what_is_said_of_it_stand_above_the_same_table() -> None:
    first, second = read_page("Men", TRIED, "#", "Wash cold.", "Women", "Cut narrower.", "#")
    assert first == (("Men", TRIED), ("Wash cold.",))
    assert second == (("Women", "Cut narrower."), ())


@pytest.mark.parametrize(
    "names",
    [
        ("2. Kids", "Columns: Size, Chest", "Sizes: S"),
        ("Tab: Kids", "KIDS", "Sizes for small riders."),
        ("Kids", "Vests", "Worn over a pullover."),
        ("Kids", "Vests"),
    ],
)
def test_names_in_a_row_and_what_is_stated_below_them_stay_together(names: tuple[str, ...]) -> None:
    first, second = read_page("1. Men", TRIED, "#", "Note: in cm", *names, "#")
    assert (first[1], second[0]) == (("Note: in cm",), names)


@pytest.mark.parametrize("note", ["Wash cold", "All sizes in cm", "Model: 180 cm"])
def test_a_short_note_stays_above_where_the_first_table_has_no_name(note: str) -> None:
    first, second = read_page("#", note, "Between sizes take the smaller.", "#")
    assert (first[1][0], second[0]) == (note, ())


@pytest.mark.parametrize("note", ["All sizes in cm", "Model: 180 cm", "* measured flat", "---"])
def test_lines_about_units_and_statements_are_no_names(note: str) -> None:
    first, second = read_page("Men", TRIED, "#", note, "Between sizes take the smaller.", "#")
    assert (first[1][0], second[0]) == (note, ())


def test_what_stands_over_the_name_of_a_table_holds_for_the_tables_that_only_have_a_name() -> None:
    flat = "All of these are measured flat."
    coats, blazers, women = read_page(
        flat, "Coats", "#", "Blazers", "#", "Women", "Measured on the body.", "#"
    )
    assert (coats[0], blazers[0]) == ((flat, "Coats"), (flat, "Blazers"))
    _, long = read_page("Women's vests (4, 5)", "Model 4:", "#", "Model 5 (long):", "#")
    assert long[0] == ("Women's vests (4, 5)", "Model 5 (long):")
    assert women[0] == ("Women", "Measured on the body.")
