"""One row a size and a measure: limits in columns of their own, and whom each row is for."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table, values

_ROWS = """
top | {chest} | 83 | 88 | S | {first}
top | {waist} | 71 | 75 | S | {first}
top | {chest} | 89 | 95 | M | {first}
top | {waist} | 76 | 82 | M | {first}
top | {bust} | 78 | 83 | S | {second}
top | {waist} | 61 | 66 | S | {second}
top | {bust} | 84 | 89 | M | {second}
top | {waist} | 67 | 72 | M | {second}
"""


@pytest.mark.parametrize(
    ("heads", "words"),
    [
        ("prenda | parte | límite_inferior | límite_superior | talla | género", ("pecho", "busto")),
        ("item | part (cm) | lower_bound | upper_bound | size | gender", ("chest", "bust")),
    ],
)
def test_rows_of_women_and_men_are_told_by_letters_under_their_word(
    heads: str, words: tuple[str, str]
) -> None:
    chest, bust = words
    waist = "cintura" if chest == "pecho" else "waist"
    rows = _ROWS.format(chest=chest, bust=bust, waist=waist, first="M", second="F")
    reading = table(heads + rows)
    found = values(reading)
    assert found["men S chest"] == (83, 88)
    assert found["men M waist"] == (76, 82)
    assert found["women S chest"] == (78, 83)
    assert found["women M waist"] == (67, 72)
    assert set(questions(reading)) <= {"unit-missing"}
