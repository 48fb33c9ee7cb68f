"""Figures between strokes behind each size, whose order is told once."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.told_order import told_order_table
from tests.charts.read_text import questions, values

_BOTH = {
    "S chest": (82, 86),
    "S waist": (66, 70),
    "M chest": (87, 91),
    "M waist": (71, 75),
}


@pytest.mark.parametrize(
    "order",
    [
        "Measurements are given as chest / waist in cm",
        "Order: chest, waist (cm)",
        "Maße in cm: Brust / Taille",
        "Mesures (cm) : poitrine x taille",
    ],
)
def test_a_line_above_may_tell_the_order(order: str) -> None:
    reading = read_pasted(f"{order}\n\nS: 82-86 / 66-70\nM: 87-91 / 71-75\n")
    assert values(reading) == _BOTH
    assert questions(reading) == ["text-order"]


def test_each_line_may_tell_the_order_in_brackets() -> None:
    order = "(chest/waist in cm)"
    reading = read_pasted(f"Size S: 82-86 / 66-70 {order}\nSize M: 87-91 / 71-75 {order}\n")
    assert values(reading) == _BOTH
    assert questions(reading) == ["text-order"]


def test_inches_are_told_with_the_order() -> None:
    reading = read_pasted("Chest / waist (inches)\nS 34/28\nM 36/30\n")
    assert values(reading)["S chest"] == 86.36
    assert values(reading)["M waist"] == 76.2


@pytest.mark.parametrize(
    "text",
    [
        "S: 82-86 / 66-70\nM: 87-91 / 71-75\n",  # of what
        "Chest / waist\nS: 82-86 cm / 32-34 in\nM: 87-91 cm / 34-36 in\n",
        "Chest / waist / hips\nS: 82 / 66\nM: 87 / 71\n",
        "Chest / chest\nS: 82 / 66\nM: 87 / 71\n",
        "Chest / waist\nS: 82 / 66\n",
        "Chest / waist\nS: 82 / 66 (chest/hips)\nM: 87 / 71 (chest/waist)\n",
        "Red / blue\nS: 82 / 66\nM: 87 / 71\n",
    ],
)
def test_without_a_sure_order_there_is_no_table(text: str) -> None:
    assert told_order_table(numbered(text)) is None
