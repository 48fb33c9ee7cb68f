"""Chests that no grown-up of these letters has are asked about, whatever word stands over them."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table


@pytest.mark.parametrize(
    "heading", ["Chest girth (cm)", "Brustumfang (cm)", "Contorno de pecho cm"]
)
@pytest.mark.parametrize("figures", [("46", "50", "54"), ("46", "56", "76")])
def test_chests_too_small_for_their_letters_are_asked_about_once(
    heading: str, figures: tuple[str, str, str]
) -> None:
    rows = [f"{size} | {figure}" for size, figure in zip("SML", figures, strict=True)]
    assert questions(table("\n".join([f"Size | {heading}", *rows]))) == ["laid-flat"]


@pytest.mark.parametrize(
    "text",
    [
        "Kids\nSize | Chest girth (cm)\nS | 56\nM | 60\nL | 64",
        "Age | Size | Chest girth (cm)\n4 | S | 56\n6 | M | 60\n8 | L | 64",
        "Size | Chest girth (cm)\n104 | 56\n116 | 60\n128 | 64",
        "Size | Chest girth (cm)\nS | 84\nM | 90\nL | 96",
        "Size | Chest girth (cm)\nXXS | 60\nXS | 64\nS | 70\nM | 78",
        "Size | Chest (cm) | Chest (in)\nS | 86 | 34\nM | 92 | 36\nL | 97 | 38",
    ],
)
def test_chests_of_children_or_of_the_letters_are_not(text: str) -> None:
    assert "laid-flat" not in questions(table(text))
