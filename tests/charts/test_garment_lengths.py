"""How long a named garment is: no height of a rider, and nothing to ask about."""

from __future__ import annotations

import pytest

from charts.schema import Dimension
from tests.charts.read_text import asked_at, questions, ranges, table


@pytest.mark.parametrize(
    "heading",
    [
        "Trouser length", "Length of the skirt", "Hosenlänge", "Rocklaenge", "Longueur de la jupe",
        "Broeklengte", "Lunghezza pantaloni", "Largo de falda", "Comprimento da calça", "Byxlängd",
        "Bukselængde", "Długość spodni", "Délka sukně", "Длина брюк", "Pantolon boyu",
        "Lungime rochie", "Hameen pituus", "Szoknya hossza",
    ],
)  # fmt: skip
def test_the_length_of_a_named_garment_is_known(heading: str) -> None:
    reading = table(f"Size | Chest (cm) | {heading} (cm)\nS | 84-88 | 103\nM | 88-92 | 106")
    lengths = [one.dimension for one in ranges(reading) if one.place.endswith(("C2", "C3"))]
    assert lengths == [Dimension.OTHER] * 2
    assert questions(reading) == []


def test_words_for_lengths_below_it_are_lengths_of_the_sizes() -> None:
    reading = table("Größe | Taille (cm) | Hosenlänge\n30 | 77 | kurz\n31 | 80 | lang")
    assert [size.length for size in reading.charts[0].sizes] == ["kurz", "lang"]


def test_an_unknown_garments_length_beside_a_grown_ups_head_is_asked_about() -> None:
    reading = table(
        "Size | Sherwani length (cm) | Head girth (cm)\nS | 104-107 | 57\nM | 108-111 | 59"
    )
    assert asked_at(reading, "heading-two-readings") == ["B2", "B3"]
