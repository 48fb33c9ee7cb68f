"""A word for a height or a length over what sizes or ages make a child's height: nothing to ask."""

from __future__ import annotations

import pytest

from charts.schema import Dimension
from tests.charts.read_text import questions, ranges, table

NAMED = """
Størrelse | Højde (cm)
50 | 48-50
56 | 51-56
62 | 57-62
68 | 63-68
"""
AGED = """
Talla | Edad aprox. | Altura (cm) | Peso aprox. (kg)
2 | 2-3 años | 87-99 | 12-15
4 | 3-4 años | 99-111 | 15-18
6 | 5-6 años | 111-123 | 18-23
8 | 7-8 años | 123-135 | 23-28
"""
GARMENT = """
Talla | Edad | Altura (cm)
2 | 2-3 años | 38-40
4 | 4-5 años | 42-44
6 | 6-7 años | 46-48
"""


def dimensions(text: str) -> set[Dimension]:
    return {one.dimension for one in ranges(table(text))}


@pytest.mark.parametrize("text", [NAMED, NAMED.replace("Højde", "Længde")])
def test_what_a_size_is_called_by_is_the_height(text: str) -> None:
    assert dimensions(text) == {Dimension.HEIGHT}
    assert questions(table(text)) == []


def test_a_height_beside_its_ages_is_the_childs() -> None:
    assert Dimension.OTHER not in dimensions(AGED)
    assert "heading-two-readings" not in questions(table(AGED))


def test_a_garments_height_beside_ages_is_no_childs() -> None:
    assert Dimension.HEIGHT not in dimensions(GARMENT)


def test_sizes_outside_their_ranges_name_no_heights() -> None:
    text = NAMED.replace("48-50", "40-42").replace("51-56", "44-46").replace("57-62", "48-50")
    found = table(text.replace("63-68", "52-54"))
    assert Dimension.HEIGHT not in {one.dimension for one in ranges(found)} or questions(found)


def test_a_product_in_russian_is_the_garment() -> None:
    text = (
        "Размеры вещи\n\nРазмер | Грудь (см) | Талия (см)\nS | 98-100 | 90-92\nM | 102-104 | 94-96"
    )
    assert {one.basis.value for one in ranges(table(text))} == {"finished"}
