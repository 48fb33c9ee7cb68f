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


def test_ages_that_name_the_sizes_beside_other_names_tell_it_too() -> None:
    text = """
Tam | Idade | Altura (cm) | Peito (cm)
RN | Recém-nascido | 45-52 | 39-43
3M-6M | 3 a 6 meses | 58-68 | 43-47
9M-12M | 9 a 12 meses | 68-76 | 47-51
2Y-4Y | 2 a 4 anos | 90-104 | 55-59
10Y-14Y | 10 a 14 anos | 134-164 | 69-83
"""
    assert dimensions(text) == {Dimension.HEIGHT, Dimension.CHEST}
    assert "heading-two-readings" not in questions(table(text))


def test_masses_under_a_weight_have_not_slipped_from_a_height() -> None:
    text = """
Size | Age | Weight | Height | Chest
Newborn | 0-1 months | 2.5-4.5 kg | 48-56 cm | 39-42 cm
0-3M | 0-3 months | 4-6 kg | 56-62 cm | 42-45 cm
3-6M | 3-6 months | 6-8 kg | 62-68 cm | 45-48 cm
"""
    assert questions(table(text)) == []
    assert dimensions(text) == {Dimension.WEIGHT, Dimension.HEIGHT, Dimension.CHEST}


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


def test_a_weight_that_strayed_among_heights_makes_no_garment_of_them() -> None:
    rows = "".join(
        f"{size} | {low} a {low + 8} cm\n"
        for size, low in zip("SMLX", (158, 166, 173, 180), strict=True)
    )
    reading = table(f"Talla | Altura\nXS | 40 a 50 kg\n{rows}")
    assert {one.dimension for one in ranges(reading)} == {Dimension.HEIGHT}
    assert questions(reading) == ["units-disagree"]
