"""One heading that was broken at its blanks stands over its column in rows of their own."""

from __future__ import annotations

import pytest

from charts.schema import Basis
from tests.charts.read_text import questions, ranges, table, values


@pytest.mark.parametrize(
    "rows",
    [
        ("Taille | Tour | Tour", " | de | de", " | poitrine (cm) | hanches (cm)"),
        ("Talla | Contorno | Contorno", " | de | de", " | pecho (cm) | cadera (cm)"),
        ("Size | To | To", " | fit | fit", " | chest (cm) | hips (cm)"),
        ("Size | To fit | To fit", " | chest (cm) | hips (cm)"),
    ],
)
def test_a_joint_in_a_row_of_its_own_is_no_end_of_a_range(rows: tuple[str, ...]) -> None:
    reading = table("\n".join((*rows, "S | 84 | 90", "M | 88 | 94", "L | 92 | 98")))
    assert values(reading)["S chest"] == 84
    assert values(reading)["L hip"] == 98
    assert {one.basis for one in ranges(reading)} == {Basis.BODY}
    assert not questions(reading)


@pytest.mark.parametrize(
    ("low", "high"), [("from", "to"), ("min", "max"), ("de", "à"), ("von", "bis")]
)
def test_ends_below_the_name_of_a_measure_stay_ends(low: str, high: str) -> None:
    reading = table(
        f"Size | To fit | \n | chest (cm) | \n | {low} | {high}\nS | 84 | 88\nM | 88 | 92"
    )
    assert values(reading) == {"S chest": (84, 88), "M chest": (88, 92)}
