"""``ditto`` says the figures of the size before once more."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table, values


@pytest.mark.parametrize("said", ["ditto", "dito", "dto.", "idem", "〃", "wie oben", "jak wyżej"])
def test_the_word_for_the_same_stands_for_the_figures_before(said: str) -> None:
    reading = table(f"""Size | Height (cm) | Chest (cm)
S | 160-170 | 84-88
M | {said} | 88-92
L | 170-180 | 92-96""")
    assert values(reading)["M height"] == (160, 170)
    assert questions(reading) == []


def test_across_the_size_before_stands_to_the_left() -> None:
    reading = table("""Size | S | M | L
Height (cm) | 160-170 | ditto | 170-180
Chest (cm) | 84-88 | 88-92 | 92-96""")
    assert values(reading)["M height"] == (160, 170)


@pytest.mark.parametrize("said", ["as above", "ditto", "idem", '"', "wie oben"])
def test_across_the_word_for_the_same_below_another_measure_is_asked_about(said: str) -> None:
    reading = table(f"""Size | S | M | L
Chest (cm) | 84-88 | 88-92 | 92-96
Height (cm) | 160-170 | {said} | 170-180
Weight (kg) | 50-60 | 60-70 | {said}""")
    found = values(reading)
    assert (found["M height"], found["L weight"]) == (None, None)
    assert found["L height"] == (170, 180)
    assert questions(reading) == ["impossible"]


def test_as_above_in_the_first_line_of_figures_is_asked_about() -> None:
    reading = table("""Size | S | M | L
Height (cm) | 160-170 | as above | 170-180
Chest (cm) | 84-88 | 88-92 | 92-96""")
    assert values(reading)["M height"] is None
    assert questions(reading) == ["impossible"]


def test_a_blank_is_no_ditto_and_nothing_stands_before_the_first() -> None:
    reading = table("""Size | Height (cm) | Chest (cm)
S | ditto | 84-88
M | 160-170 | 88-92
L |  | 92-96""")
    found = values(reading)
    assert "L height" not in found
    assert found.get("S height") is None
