"""Words for the back that do not say whether its length or its width was measured."""

from __future__ import annotations

import pytest

from charts.schema import Dimension
from tests.charts.read_text import questions, ranges, table

TWO = ["heading-two-readings"]


@pytest.mark.parametrize(
    "heading",
    ["Back measurement", "Back size", "Rückenmaß", "Rugmaat", "Ryggmått", "Rygmål",
     "Medida de espalda", "Misura schiena", "Mesure du dos"],
)  # fmt: skip
def test_a_measure_of_the_back_is_asked_about(heading: str) -> None:
    assert questions(table(f"Size | {heading} (cm)\nS | 41-43\nM | 43-45\nL | 45-47")) == TWO


@pytest.mark.parametrize("beside", ["Sleeve (cm)", "Shoulder (cm)"])
@pytest.mark.parametrize("back", ["Back", "Espalda", "Costas", "Rücken", "Спина"])
def test_the_back_alone_is_asked_about_beside_a_garments_measures(back: str, beside: str) -> None:
    text = f"Size | Chest (cm) | {back} (cm) | {beside}\nS | 96 | 41 | 42\nM | 100 | 43 | 44"
    reading = table(text)
    (asked,) = [one for one in reading.findings if one.code in TWO]
    assert {asked.id} <= set(next(r for r in ranges(reading) if "41" in r.published).findings)


@pytest.mark.parametrize("back", ["Back", "Rücken", "Dos", "Rug", "Rygg", "Plecy"])
def test_the_back_of_a_riders_chart_is_its_length(back: str) -> None:
    reading = table(f"Size | Chest (cm) | Waist (cm) | {back} (cm)\nS | 88-92 | 72-76 | 41-43")
    assert [one.dimension for one in ranges(reading)][-1] is Dimension.BACK_LENGTH
    assert questions(reading) == []


def test_a_length_of_the_back_is_asked_nothing_beside_sleeves() -> None:
    reading = table("Size | Chest (cm) | Back length (cm) | Sleeve (cm)\nS | 96 | 41 | 60")
    assert not set(questions(reading)) & set(TWO)


def test_words_about_broad_shoulders_leave_the_back_open() -> None:
    text = "Measure the shoulder width first.\nSize | Back (cm)\nS | 41-43\nM | 43-45\nL | 45-47"
    assert questions(table(text)) == TWO
