"""Sizes named by ages: two units, words between them, halves, and toddlers' sizes in pairs."""

from __future__ import annotations

import pytest

from charts.layout.looks import look
from charts.size_labels import LabelKind, read_label
from tests.charts.read_text import questions, table, values

MIXED = """
Size | Chest (cm) | Height (cm)
6 months - 1 year | 47 | 66-75
1 year - 2 years | 50 | 75-87
2 years - 3 years | 53 | 87-95
"""


@pytest.mark.parametrize(
    ("text", "normal"),
    [
        ("6 months - 1 year", "6 months-1 years"),
        ("1 year - 2 years", "1-2 years"),
        ("0 to 6 months", "0-6 months"),
        ("0 à 6 mois", "0-6 months"),
        ("1 a 2 años", "1-2 years"),
        ("3 bis 4 Jahre", "3-4 years"),
        ("1½-2 Jahre", "1.5-2 years"),
        ("21/24 months", "21-24 months"),
        ("14+ years", "14+ years"),
        ("4-5T", "4-5T"),
        ("2T/3T", "2T/3T"),
    ],
)
def test_a_size_may_be_two_ages(text: str, normal: str) -> None:
    found = read_label(text)
    assert found is not None
    assert (found.kind, found.normal) == (LabelKind.AGE, normal)
    assert not look(text).heads


@pytest.mark.parametrize("text", ["10 to 12", "5 a 6", "2 years - 1 year", "40 months - 4 years"])
def test_two_figures_without_a_unit_or_out_of_order_are_no_ages(text: str) -> None:
    found = read_label(text)
    assert found is None or found.kind is not LabelKind.AGE


def test_ages_stand_in_the_order_of_who_wears_them() -> None:
    texts = ["0 to 6 months", "6 months - 1 year", "1 year - 2 years", "2 to 3 years"]
    orders = [found.order for text in texts if (found := read_label(text)) is not None]
    assert orders == sorted(orders)
    assert len(set(orders)) == len(texts)


def test_ages_in_two_units_down_the_side_are_sizes_and_no_headings() -> None:
    reading = table(MIXED)
    assert questions(reading) == []
    assert values(reading)["1 year - 2 years height"] == (75, 87)
