"""Rows or columns of names, one for each length: a size for every name."""

from __future__ import annotations

from tests.charts.read_text import table, values

ROWS = """
Chest (cm) | 70-78 | 78-86
Back short | XS-S | S-S
Back regular | XS-R | S-R
Back long | XS-L | S-L
"""


def test_every_name_of_every_length_is_a_size() -> None:
    found = values(table(ROWS))
    assert len(found) == 6
    assert {found[f"XS-{end} chest"] for end in ("S short", "R regular", "L long")} == {(70, 78)}


def test_a_length_that_is_not_made_is_no_size() -> None:
    assert len(values(table(ROWS.replace("S-L\n", "-\n")))) == 5


def test_names_that_stand_twice_are_left_as_they_were() -> None:
    assert len(values(table(ROWS.replace("XS-S", "XS").replace("XS-R", "XS")))) == 2
