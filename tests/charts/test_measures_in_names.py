"""Figures behind sizes whose heading names a measure too are asked about."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table


def _chart(heading: str, sizes: tuple[str, str, str]) -> list[str]:
    rows = [f"{size} | {hip}" for size, hip in zip(sizes, ("90", "94", "98"), strict=True)]
    return questions(table("\n".join([f"{heading} | Hip cm", *rows])))


@pytest.mark.parametrize(
    ("heading", "sizes"),
    [
        ("Size/Chest", ("S/86", "M/90", "L/94")),
        ("Größe (Brust)", ("S (86)", "M (90)", "L (94)")),
        ("Size/Chest/Waist", ("S/86/70", "M/90/74", "L/94/78")),
    ],
)
def test_figures_of_a_measure_in_the_heading_of_the_sizes_are_asked(
    heading: str, sizes: tuple[str, str, str]
) -> None:
    assert _chart(heading, sizes) == ["text-order"]


@pytest.mark.parametrize(
    ("heading", "sizes"),
    [
        ("Size/EU", ("S/36", "M/38", "L/40")),
        ("Size (Age)", ("S (10)", "M (12)", "L (14)")),
        ("Size/Chest", ("S", "M", "L")),
    ],
)
def test_second_names_of_a_size_are_no_measure(heading: str, sizes: tuple[str, str, str]) -> None:
    assert _chart(heading, sizes) == []


def test_figures_parted_from_the_sizes_are_asked_about_once() -> None:
    assert _chart("Size (Chest cm)", ("S (84-88)", "M (88-92)", "L (92-96)")) == ["impossible"]
