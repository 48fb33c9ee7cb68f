"""Words behind figures, and dashes with a figure at one side, keep the figures and ask once."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table, values


@pytest.mark.parametrize("words", ["(limited)", "NEU", "[auf Anfrage]", "new!", "(épuisé)"])
def test_figures_before_words_are_kept_with_one_question_of_the_file(words: str) -> None:
    reading = table(f"""Size | Chest (cm) | Waist (cm)
S | 82-86 {words} | 66-70
M | 87-91 | 71-75 {words}
L | 92-96 | 76-80""")
    found = values(reading)
    assert (found["S chest"], found["M waist"]) == ((82, 86), (71, 75))
    assert questions(reading) == ["text-order"]


def test_figures_that_cannot_be_right_are_not_kept_for_their_words() -> None:
    reading = table("Size | Chest (cm)\nS | 82-86\nM | 8-9 (new)\nL | 92-96")
    assert values(reading)["M chest"] is None
    assert questions(reading) == ["impossible"]


@pytest.mark.parametrize(
    ("low", "high"), [("-86", "92-"), ("... - 86", "92 - ..."), ("- 86", "92 –"), ("?-86", "92-?")]
)
def test_a_dash_with_one_figure_is_an_open_end_and_asked_about(low: str, high: str) -> None:
    reading = table(f"""Size | Chest (cm) | Waist (cm)
S | {low} | 66-70
M | 87-91 | 71-75
L | {high} | 76-80""")
    found = values(reading)
    assert (found["S chest"], found["L chest"]) == ((None, 86), (92, None))
    assert questions(reading) == ["double-range"]
    (finding,) = (one for one in reading.findings if one.code == "double-range")
    assert [one.why for one in finding.candidates] == ["end-open", "figure-alone"]


def test_a_dash_alone_is_blank() -> None:
    reading = table("Size | Chest (cm) | Waist (cm)\nS | 82-86 | -\nM | 87-91 | 71-75")
    assert "S waist" not in values(reading)
