"""Sentences that say in passing whose measures a chart gives, and those that do not say it."""

from __future__ import annotations

import pytest

from charts.headings.whose import Whose, whose
from charts.importer import read_bytes
from charts.schema import Basis
from tests.charts.read_text import asked_at

OPEN = Whose(open=True)
FINISHED = Whose(Basis.FINISHED)
BODY = Whose(Basis.BODY)


@pytest.mark.parametrize(
    "text",
    [
        "These measurements refer to the product, not to the body.",
        "Measurements do not refer to the body",
        "Die Maße beziehen sich auf das Kleidungsstück, nicht auf den Körper",
        "Die Maße beziehen sich nicht auf den Körper.",
        "Les mesures correspondent au produit, pas au corps",
        "Le misure si riferiscono al capo",
        "Las medidas se refieren a la prenda",
        "De maten hebben betrekking op het kledingstuk",
        "Måtten gäller plagget, inte kroppen (cm)",
        "Målene gælder tøjet",
        "Wymiary dotyczą odzieży",
        "Mitat ovat vaatteen mittoja, eivät vartalon (cm)",
    ],
)
def test_measures_that_refer_to_the_garment(text: str) -> None:
    assert whose(text) == FINISHED


@pytest.mark.parametrize(
    "text",
    [
        "Die Maße beziehen sich auf den Körper.",
        "Le misure sono del corpo, espresse in cm",
        "Les mesures sont prises près du corps avec un mètre ruban.",
        "Gemessen am Körper.",
        "Numbers refer to your body, not the garment",
        "Measure your body.",
        "Body measurements, no ease included",
    ],
)
def test_measures_that_refer_to_the_body(text: str) -> None:
    assert whose(text) == BODY


@pytest.mark.parametrize(
    "text",
    [
        "Sitzt nah am Körper.",
        "Moves with your body",
        "Do not measure over the body armour",
        "Ease has been added to the garment",
        "Allow 5 cm of ease",
        "Measurements do not include ease",
    ],
)
def test_a_cut_and_an_instruction_say_nothing(text: str) -> None:
    assert whose(text) == Whose()


@pytest.mark.parametrize(
    "text",
    [
        "Measurements refer to the vest",
        "The figures are your body measurements plus 4 cm ease",
        "The chest figure includes 10 cm ease.",
        "Maße inkl. 5 cm Zugabe",
        "The finished size of the garment will be larger than the measurements in the chart.",
    ],
)
def test_more_than_a_body_and_another_thing_leave_it_open(text: str) -> None:
    assert whose(text) == OPEN


def test_ease_is_asked_about_beside_a_height_too() -> None:
    text = (
        'Size,Height,Chest\nS,155-165,96\nM,163-172,102\n"Measurements in cm include 10 cm ease."'
    )
    reading = read_bytes(text.encode(), "chart.csv")
    chest = reading.charts[0].sizes[0].ranges[1]
    assert chest.basis is not Basis.FINISHED
    assert chest.place in asked_at(reading, "basis-doubtful")


def test_a_recommended_ease_leaves_open_whose_the_girths_are() -> None:
    chart = "Size;Chest (cm)\nS;90\nM;96\nL;102\n\n"
    said = {
        words: bool(asked_at(read_bytes(f"{chart}{words}\n".encode(), "a.csv"), "basis-doubtful"))
        for words in (
            "Recommended ease: 8 cm of positive ease.",
            "Finished garment measurements. Recommended ease: 8 cm.",
            "Made for ease of movement.",
        )
    }
    assert list(said.values()) == [True, False, False]
