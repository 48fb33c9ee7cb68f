"""Words printed with a blank behind every letter."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.spaced_letters import closed_up
from tests.charts.read_text import questions, values


@pytest.mark.parametrize(
    ("text", "closed"),
    [
        ("C I N T U R A ( A ) 65 cm", "CINTURA (A) 65 cm"),
        ("T A L L A", "TALLA"),
        ("S M L X", "S M L X"),
        ("X S M L", "X S M L"),
        ("A B C D 4", "A B C D 4"),
        ("T A L L A S M L", "T A L L A S M L"),
    ],
)
def test_only_words_that_headings_know_are_closed_up(text: str, closed: str) -> None:
    assert closed_up(text) == closed


def test_chico_is_a_size_before_m_and_g_and_an_order_that_breaks_is_asked() -> None:
    reading = read_pasted(
        "D A M A\nT A L L A\nCH M G XG XXG\n"
        "C I N T U R A ( A ) 65 cm 75 cm 70 cm 80 cm 85 cm\n"
        "C A D E R A (B) 106 cm 110 cm 113 cm 116 cm 120 cm\n"
    )
    assert questions(reading) == ["order-broken"]
    found = {key.removeprefix("women "): ends for key, ends in values(reading).items()}
    assert found["CH waist"] == 65
    assert found["XXG hip"] == 120
