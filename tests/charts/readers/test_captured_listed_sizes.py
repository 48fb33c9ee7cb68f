"""Sizes listed in one line: over measures with as many figures, or each with its own measures."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.listed_across import listed_across_table
from charts.readers.captured.run_on_sizes import run_on_size_table
from tests.charts.read_text import questions, values

_BOTH = {
    "36 chest": (82, 86),
    "38 chest": (87, 91),
    "40 chest": (92, 96),
    "36 waist": (66, 70),
    "38 waist": (71, 75),
    "40 waist": (76, 80),
}


@pytest.mark.parametrize("sign", [", ", "; ", " / ", " | ", " • "])
@pytest.mark.parametrize("colon", [":", ""])
def test_figures_are_listed_like_the_sizes(sign: str, colon: str) -> None:
    lists = {
        "Größen": ("36", "38", "40"),
        "Brust": ("82-86", "87-91", "92-96 cm"),
        "Taille": ("66-70", "71-75", "76-80 cm"),
    }
    reading = read_pasted("\n".join(f"{name}{colon} {sign.join(lists[name])}" for name in lists))
    assert values(reading) == _BOTH
    assert questions(reading) == []


def test_a_blank_among_the_figures_stays_one() -> None:
    reading = read_pasted("Sizes: S, M, L\nChest (cm): 82,5, 87,5, 92,5\nWaist (cm): 66, -, 76\n")
    assert values(reading) == {
        "S chest": 82.5,
        "M chest": 87.5,
        "L chest": 92.5,
        "S waist": 66,
        "L waist": 76,
    }


@pytest.mark.parametrize(
    "text",
    [
        "Sizes: S, M, L\nChest: 82, 87 cm\n",
        "Sizes: S, M, L\nPrice: € 20, € 30, € 40\n",
        "Sizes: S, M, L\nColours: red, blue, green\n",
        "Colours: red, blue\nChest: 82, 87\n",
    ],
)
def test_lists_that_do_not_come_out_even_are_none(text: str) -> None:
    assert listed_across_table(numbered(text)) is None


@pytest.mark.parametrize(
    "line",
    [
        (
            "Größe 36: Brust 82-86 cm, Taille 66-70 cm. Größe 38: Brust 87-91 cm, Taille 71-75 cm. "
            "Größe 40: Brust 92-96 cm, Taille 76-80 cm."
        ),
        (
            "Size 36: chest 82-86 cm, waist 66-70 cm; size 38: chest 87-91 cm, waist 71-75 cm; "
            "size 40: chest 92-96 cm, waist 76-80 cm"
        ),
        (
            "Taille 36 : poitrine 82-86 cm, taille 66-70 cm / Taille 38 : poitrine 87-91 cm, "
            "taille 71-75 cm / Taille 40 : poitrine 92-96 cm, taille 76-80 cm"
        ),
    ],
)
def test_sizes_may_run_on_in_one_line(line: str) -> None:
    assert values(read_pasted(line)) == _BOTH


def test_masses_may_run_on_behind_a_title() -> None:
    reading = read_pasted("Weight guide: S: 40-55 kg, M: 56-70 kg, L: 71-90 kg\n")
    assert values(reading) == {"S weight": (40, 55), "M weight": (56, 70), "L weight": (71, 90)}


@pytest.mark.parametrize(
    "text",
    [
        "S: chest 82-86 cm, M: waist 71-75 cm",
        "S: red, M: blue, L: green",
        "S: 40-55, M: 55-70, L: 70-90",
        "S: chest 82-86 cm, S: chest 87-91 cm",
    ],
)
def test_pieces_that_say_different_things_are_no_table(text: str) -> None:
    assert run_on_size_table(numbered(text)) is None
