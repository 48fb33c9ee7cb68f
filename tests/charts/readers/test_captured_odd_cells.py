"""Rows of text with sizes across in which a cell or two hold no figure."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.odd_cells import row_with_odd_cells
from tests.charts.read_text import questions, values

_BACK = {"S back_length": 38, "M back_length": 40, "L back_length": 42}


def _across(row: str) -> str:
    return f"Size S M L\nChest (cm) 82-86 87-91 92-96\n{row}\nBack length (cm) 38 40 42\n"


@pytest.mark.parametrize("odd", ["-", "–", "n/a", "x", "?", "tbc"])
@pytest.mark.parametrize("at", [0, 1, 2])
def test_what_stands_for_no_figure_costs_no_row(odd: str, at: int) -> None:
    cells = ["66-70", "71-75", "76-80"]
    cells[at] = odd
    found = values(read_pasted(_across(f"Waist (cm) {' '.join(cells)}")))
    waists = {"S waist": (66, 70), "M waist": (71, 75), "L waist": (76, 80)}
    lost = list(waists)[at]
    assert {key: one for key, one in found.items() if one is not None and "waist" in key} == {
        key: one for key, one in waists.items() if key != lost
    }
    assert _BACK.items() <= found.items()


@pytest.mark.parametrize(
    ("odd", "read"), [("71-75*", (71, 75)), ("max. 71", (None, 71)), ("71/75", (71, 75))]
)
def test_a_figure_with_a_mark_or_a_limit_is_one_cell(odd: str, read: object) -> None:
    found = values(read_pasted(_across(f"Waist (cm) 66-70 {odd} 76-80")))
    assert found["S waist"] == (66, 70)
    assert found["L waist"] == (76, 80)
    assert found["M waist"] == read
    assert _BACK.items() <= found.items()


def test_words_for_a_figure_are_asked() -> None:
    reading = read_pasted(_across("Waist (cm) 66-70 on request 76-80"))
    assert values(reading)["L waist"] == (76, 80)
    assert values(reading)["M waist"] is None
    assert questions(reading) == ["impossible"]


def test_a_blank_cell_is_found_by_its_column() -> None:
    reading = read_pasted(
        "Größe          S        M        L\n"
        "Brust (cm)     82-86    87-91    92-96\n"
        "Taille (cm)    66-70             76-80\n"
        "Rücken (cm)             40       42\n"
    )
    assert values(reading) == {
        "S chest": (82, 86),
        "M chest": (87, 91),
        "L chest": (92, 96),
        "S waist": (66, 70),
        "L waist": (76, 80),
        "M back_length": 40,
        "L back_length": 42,
    }


def test_a_dash_that_may_join_two_figures_is_asked() -> None:
    reading = read_pasted(_across("Hips (cm) 90 - 98"))
    assert "text-order" in questions(reading)


@pytest.mark.parametrize(
    "line",
    [
        "Chest measured about 2 cm below",
        "Waist on request only today",
        "Waist (cm) - - -",
        "Waist (cm) 66-70 71-75",
        "Colour 12 red 14",
        "Waist (cm) 66-70 ask us by telephone please 76-80",
    ],
)
def test_sentences_and_uneven_rows_are_no_rows(line: str) -> None:
    assert row_with_odd_cells(line, 3, "Size S M L") is None
