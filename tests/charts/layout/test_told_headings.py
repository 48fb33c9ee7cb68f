"""Sentences that explain a heading: what they name stands under it, or is asked about."""

from __future__ import annotations

import pytest

from charts.schema import Definition, Dimension
from tests.charts.read_text import questions, ranges, table

C7 = (Dimension.BACK_LENGTH, Definition.BACK_C7_WAIST)


@pytest.mark.parametrize(
    ("heading", "sentence", "due"),
    [
        ("Length", "Length is measured from the C7 vertebra down to the waist.", C7),
        ("Back", "Back: from the nape of the neck to the waist", C7),
        ("Rücken", "Rücken = Rückenbreite", (Dimension.OTHER, Definition.UNKNOWN)),
        ("Rücken (cm)", "Rücken = Rückenbreite", (Dimension.OTHER, Definition.UNKNOWN)),
        ("Chest", "Chest: measure around the fullest part", (Dimension.CHEST, Definition.UNKNOWN)),
        ("Chest", "Chest = Brust", (Dimension.CHEST, Definition.UNKNOWN)),
        ("Chest", "Waist = hip", (Dimension.CHEST, Definition.UNKNOWN)),
    ],
)
def test_the_measure_of_a_column_is_what_its_sentence_names(
    heading: str, sentence: str, due: tuple[Dimension, Definition]
) -> None:
    reading = table(f"Size | {heading} | Neck\nS | 43 | 36\nM | 45 | 38\ncm. {sentence}")
    first = ranges(reading)[0]
    assert (first.dimension, first.definition) == due


def test_another_measure_than_the_heading_says_is_asked_once() -> None:
    text = "Taille | Poitrine | Dos\nS | 88-92 | 38\nM | 92-98 | 40\n"
    told = table(text + "cm. Dos : carrure dos d'emmanchure à emmanchure")
    assert questions(told) == ["heading-two-readings"]
    assert questions(table(text + "cm")) == []
