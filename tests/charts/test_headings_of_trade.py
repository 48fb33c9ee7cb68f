"""Columns that count money, cartons, numbers of stock or lift: no measure, and no question."""

from __future__ import annotations

import pytest

from charts.dimensions import Role, read_heading
from charts.headings.near import near_headings
from charts.schema import Basis, Dimension
from tests.charts.read_text import questions, table, values

TABLE = """
Size | Chest (cm) | Waist (cm) | {heading}
S | 84-88 | 70-74 | {cells[0]}
M | 88-92 | 74-78 | {cells[1]}
L | 92-96 | 78-82 | {cells[2]}
"""


@pytest.mark.parametrize(
    "heading",
    [
        *("VK netto", "EK netto", "Net price", "PA HT", "Prezzo netto", "Precio sin IVA"),
        *("Preço sem IVA", "Prijs excl. btw", "Pris exkl. moms", "Pris ekskl. moms"),
        *("Cena netto", "Cena bez DPH", "Pieces per carton", "Pezzi per cartone"),
        *("Stück pro Karton", "Sztuk w kartonie", "NSN (part)", "Stock number", "Wyporność"),
        *("Buoyancy (N)", "Auftrieb (N)", "Flottabilité (N)", "Drijfvermogen (N)"),
    ],
)
def test_a_heading_of_the_trade_is_no_measure_and_no_question(heading: str) -> None:
    assert read_heading(heading).role is Role.OTHER
    reading = table(TABLE.format(heading=heading, cells=("40", "40", "30")))
    assert questions(reading) == []
    assert len(values(reading)) == 6


@pytest.mark.parametrize(
    "cells", [("49.90 €", "49.90 €", "52.90 €"), ("40", "40", "30"), ("50N", "60N", "55N")]
)
def test_an_unknown_heading_is_asked_about_once_and_not_checked_as_a_measure(
    cells: tuple[str, str, str],
) -> None:
    reading = table(TABLE.format(heading="Florbel", cells=cells))
    assert questions(reading) == ["heading-unknown"]


def test_a_short_word_with_another_first_letter_is_no_slip_of_a_measure() -> None:
    assert near_headings(read_heading("VK fetto")) == ()
    assert near_headings(read_heading("VK pettp")) == ("petto",)


@pytest.mark.parametrize(
    "heading",
    ["Sleeve circumference", "Arm circumference", "Tour de manche", "Contorno de manga",
     "Circonferenza manica", "Perímetro da manga", "Back circumference"],
)  # fmt: skip
def test_a_girth_of_what_is_long_elsewhere_is_no_length(heading: str) -> None:
    assert read_heading(heading).dimension is Dimension.OTHER


@pytest.mark.parametrize("heading", ["Cintura (lado a lado)", "Cadera (de lado a lado)"])
def test_from_side_to_side_is_laid_flat(heading: str) -> None:
    reading = read_heading(heading)
    assert (reading.basis, reading.candidates) == (Basis.FLAT, ())
