"""Bands in columns of their own, in front of the sizes of each: a turned table."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table, values

BOTH = {
    "women 36 chest": (84, 88),
    "women 38 chest": (88, 92),
    "men 48 chest": (94, 98),
    "men 50 chest": (98, 102),
}


TURNED = """
Size | Women | 36 | 38 | Men | 48 | 50
Chest (cm) | | 84-88 | 88-92 | | 94-98 | 98-102
"""
OWN_NAMES = """
Women | Size | 36 | 38 | Men | Size | 48 | 50
| Chest (cm) | 84-88 | 88-92 | | Chest (cm) | 94-98 | 98-102
"""
TITLES = """
Women's vests | Tried on without a jacket, as they are worn. | Size | 36 | 38 \
| Men's vests | Cut straight, and longer in the back than hers. | Size | 48 | 50
| | Chest (cm) | 84-88 | 88-92 | | | Chest (cm) | 94-98 | 98-102
"""


@pytest.mark.parametrize("text", [TURNED, f"Vests\n{TURNED}", OWN_NAMES, TITLES])
def test_each_band_in_a_column_of_its_own_has_the_sizes_behind_it(text: str) -> None:
    reading = table(text)
    assert (values(reading), questions(reading)) == (BOTH, [])


def test_the_same_letters_may_stand_behind_every_band() -> None:
    reading = table("Size|Women|S|M|Men|S|M\nChest (cm)||84-88|88-92||94-98|98-102")
    assert questions(reading) == []
    assert values(reading)["men S chest"] == (94, 98)


def test_tables_side_by_side_under_one_band_keep_their_own_sizes() -> None:
    text = (
        "Women's sizes | Size | Hip (cm) | Size | Chest (cm) | Men's sizes | Size | Chest (cm)\n"
        "| 24 | 84-88 | Small | 84-86 | | Small | 94-98\n"
        "| 25 | 88-92 | Medium | 90-92 | | Medium | 98-102\n"
        "| 26 | 92-96 | | | | |"
    )
    found = values(table(text))
    assert {key for key in found if "chest" in key} == {
        f"{band} {size} chest" for band in ("women", "men") for size in ("Small", "Medium")
    }
    assert found["women 26 hip"] == (92, 96)


def test_a_band_in_front_of_a_second_heading_of_sizes_is_that_tables() -> None:
    text = "EU | Women | 36 | 38 | Men | 48 | 50 | Kids | EU | 140 | 152\n"
    text += "Chest (cm) | | 84-88 | 88-92 | | 94-98 | 98-102 | | Chest (cm) | 68-72 | 72-76"
    found = values(table(text))
    assert found == {**BOTH, "kids 140 chest": (68, 72), "kids 152 chest": (72, 76)}


@pytest.mark.parametrize(
    ("text", "chests"),
    [
        ("Size|Women S|Women M|Men S|Men M\nChest (cm)||84-88||94-98", [(84, 88), (94, 98)]),
        ("Size|Chest (cm)|Women|Men\nS|84-88||\nM|88-92||", [(84, 88), (88, 92)]),
    ],
)
def test_sizes_without_figures_and_columns_to_tick_are_no_bands_of_what_follows(
    text: str, chests: list[object]
) -> None:
    found = [ends for key, ends in values(table(text)).items() if key.endswith("chest")]
    assert found == chests
