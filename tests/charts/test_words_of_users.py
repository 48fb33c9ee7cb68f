"""Words for who wears it, as on water, marks of notes, and signs between figures."""

from __future__ import annotations

import pytest

from charts.dimensions import Role, read_heading
from charts.notation import Reading, read_cell
from charts.schema import Dimension, Kind


@pytest.mark.parametrize(
    ("heading", "dimension"),
    [
        ("Poids de l'utilisateur (kg)", Dimension.WEIGHT),
        ("Gewicht gebruiker", Dimension.WEIGHT),
        ("Peso dell'utilizzatore", Dimension.WEIGHT),
        ("Peso usuario", Dimension.WEIGHT),
        ("Peso do utilizador", Dimension.WEIGHT),
        ("Brukarens vikt", Dimension.WEIGHT),
        ("Brugerens vægt", Dimension.WEIGHT),
        ("Brukervekt", Dimension.WEIGHT),
        ("Waga użytkownika", Dimension.WEIGHT),
        ("Hmotnost uživatele", Dimension.WEIGHT),
        ("Gewicht des Nutzers", Dimension.WEIGHT),
        ("Obvod v bocích (cm)", Dimension.HIP),
        ("Distance épaule-taille", Dimension.BACK_LENGTH),
        ("Distanza spalla-vita (cm)", Dimension.BACK_LENGTH),
        ("Taille-Schulter-Länge", Dimension.BACK_LENGTH),
        ("Waist¹ (cm)", Dimension.WAIST),
        ("Chest² ³ (cm)", Dimension.CHEST),
    ],
)
def test_what_is_measured_is_known(heading: str, dimension: Dimension) -> None:
    reading = read_heading(heading)
    assert (reading.role, reading.dimension) == (Role.MEASURE, dimension)
    assert reading.candidates == ()
    assert reading.rest == ""


@pytest.mark.parametrize(
    "text", ["82÷86", "82 ÷ 86 cm", "82 cm ÷ 86 cm", "82..86", "82 … 86", "82...86"]
)
def test_signs_for_a_range(text: str) -> None:
    quantity = read_cell(text).quantity
    assert quantity is not None
    assert quantity.low is not None
    assert quantity.high is not None
    assert (quantity.kind, quantity.low.value, quantity.high.value) == (Kind.RANGE, 82, 86)


def test_a_sign_without_a_lower_end_is_no_range() -> None:
    assert read_cell("÷5").reading is not Reading.READ


@pytest.mark.parametrize(
    "text", ["ab 70 kg aufwärts", "from 70 kg upwards", "à partir de 70 kg et plus"]
)
def test_an_open_end_said_twice_is_one(text: str) -> None:
    quantity = read_cell(text).quantity
    assert quantity is not None
    assert quantity.low is not None
    assert (quantity.kind, quantity.low.value) == (Kind.AT_LEAST, 70)
