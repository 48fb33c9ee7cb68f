"""The height of a place on the body is not the rider's own, in any language."""

from __future__ import annotations

import pytest

from charts.dimensions import read_heading
from charts.schema import Dimension


@pytest.mark.parametrize(
    "text",
    [
        "Shoulder height (cm)",
        "Height to waist",
        "Height at shoulder",
        "Hauteur d'épaule",
        "Hauteur de taille",
        "Schulterhöhe in cm",
        "Altezza spalle",
        "Altura de la cintura",
        "Højde til talje",
        "Schouderhoogte",
        "Cervicale height (inches)",
    ],
)
def test_the_height_of_a_place_is_not_the_rider_s(text: str) -> None:
    reading = read_heading(text)
    assert (reading.dimension, reading.candidates) == (Dimension.OTHER, ())


@pytest.mark.parametrize(
    "text", ["Height of back", "Torso height", "Altezza schiena", "Altura espalda", "Hoogte rug"]
)
def test_a_height_of_the_back_is_its_length(text: str) -> None:
    reading = read_heading(text)
    assert (reading.dimension, reading.candidates) == (Dimension.BACK_LENGTH, ())


@pytest.mark.parametrize(
    "text", ["Height", "Height head to toe", "Height without shoes", "Körpergröße (ohne Schuhe)"]
)
def test_a_height_from_head_to_toe_is_the_rider_s(text: str) -> None:
    reading = read_heading(text)
    assert (reading.dimension, reading.candidates) == (Dimension.HEIGHT, ())


def test_a_height_listed_beside_another_measure_is_no_place_on_it() -> None:
    found = {dimension for _, dimension in read_heading("Height / chest").candidates}
    assert found == {Dimension.HEIGHT, Dimension.CHEST}


def test_a_height_of_the_crotch_may_be_an_inseam() -> None:
    found = [dimension for _, dimension in read_heading("Altezza cavallo (cm)").candidates]
    assert found == [Dimension.INSEAM, Dimension.OTHER]
