"""Whose measure a column gives, where a title and a heading say different things."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Basis

SIZES = "S;84\nM;90\nL;96\n"


def basis(title: str, heading: str) -> Basis:
    reading = read_bytes(f"{title}\n{heading}\n{SIZES}".encode(), "chart.csv")
    return reading.charts[0].sizes[0].ranges[0].basis


@pytest.mark.parametrize(
    ("title", "heading"),
    [
        ("Finished garment measurements in cm", "Size;Chest girth"),
        ("Fertigmaße in cm", "Größe;Brustumfang"),
        ("Mesures du vêtement fini, en cm", "Taille;Tour de poitrine"),
        ("Medidas de la prenda en cm", "Talla;Contorno de pecho"),
        ("Wymiary odzieży w cm", "Rozmiar;Obwód klatki"),
    ],
)
def test_a_title_of_the_garment_beats_a_heading_that_only_says_girth(
    title: str, heading: str
) -> None:
    assert basis(title, heading) is Basis.FINISHED


def test_a_title_of_the_body_is_believed_even_when_it_names_the_vest() -> None:
    title = "Body dimensions for sizes of the vest, in cm"
    assert basis(title, "Size;Chest circumference") is Basis.BODY


def test_a_heading_that_names_the_body_itself_stands() -> None:
    assert basis("Finished garment measurements in cm", "Size;To fit chest") is Basis.BODY
