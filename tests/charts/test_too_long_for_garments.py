"""Lengths longer or shorter than any garment, under a word that can be a height."""

from __future__ import annotations

import pytest

from tests.charts.read_text import asked_at, questions, table

NO_GARMENTS = {
    "a row lost a cell": """
        Tamanho | Altura (cm) | Peso (kg) | Busto (cm)
        4 | 14-18 | 60-63 |
        6 | 108-118 | 18-23 | 63-66
        8 | 118-128 | 22-28 | 66-70
        10 | 128-138 | 26-35 | 70-74
        12 | 138-148 | 33-44 | 75-79
        14 | 150-158 | 40-54 | 80-85
        """,
    "a note says of the garment": """
        Garment measurements
        Taglia | Circonferenza torace cm | Altezza cm | Peso kg
        S | 84-90 | 158-166 | 50-60
        M | 90-96 | 166-174 | 60-72
        L | 96-102 | 174-182 | 72-86
        """,
    "figures of something else": """
        Talla | Altura (cm) | Contorno de pecho (cm)
        S | 8 | 63
        M | 9 | 66
        L | 10 | 70
        """,
}


@pytest.mark.parametrize("text", NO_GARMENTS.values(), ids=NO_GARMENTS.keys())
def test_what_no_garment_is_long_is_asked_about(text: str) -> None:
    reading = table(text)
    due = {
        one.place
        for chart in reading.charts
        for size in chart.sizes
        for one in size.ranges
        if one.heading.startswith("Al")
    }
    asked = set(asked_at(reading, "heading-two-readings")) | set(asked_at(reading, "impossible"))
    assert due <= asked


@pytest.mark.parametrize("length", ["64 66 68", "110 114 118", "140 142 144"])
def test_the_length_of_a_garment_is_not_asked_about(length: str) -> None:
    lines = [
        f"{size} | {chest} | {long}"
        for size, chest, long in zip("SML", (92, 98, 104), length.split(), strict=True)
    ]
    head = "Garment measurements\nTaglia | Circonferenza torace cm | Altezza cm\n"
    assert questions(table(head + "\n".join(lines))) == []
