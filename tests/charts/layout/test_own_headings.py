"""A run with names of its own takes no sizes from the table above it, readable or not."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table, values

ABOVE = """
Size | S | M | L
Hip (cm) | 90-94 | 94-98 | 98-102

"""


@pytest.mark.parametrize(
    "names", ["34 / 8 / 4 | 36 / 10 / 6 | 38 / 12 / 8", "K1/q | K2/q | K3/q", "#34# | #36# | #38#"]
)
def test_names_that_no_rule_can_read_leave_the_figures_below_without_sizes(names: str) -> None:
    reading = table(f"{ABOVE}cm | {names}\nBust | 80-84 | 84-88 | 88-92\nWaist | 62 | 66 | 70")
    assert {key.split(" ")[1] for key in values(reading)} == {"hip"}
    assert questions(reading) == ["text-order"]


def test_names_in_three_systems_head_a_table_of_their_own() -> None:
    names = "S / 34 / 8 | M / 36 / 10 | L / 38 / 12"
    reading = table(f"{ABOVE}cm | {names}\nBust | 80-84 | 84-88 | 88-92")
    assert values(reading)["M / 36 / 10 chest"] == (84, 88)
    assert questions(reading) == []


def test_measures_without_names_of_their_own_are_still_for_the_sizes_above() -> None:
    reading = table(f"{ABOVE}Bust (cm) | 80-84 | 84-88 | 88-92\nWaist (cm) | 62 | 66 | 70")
    assert values(reading)["L chest"] == (88, 92)
