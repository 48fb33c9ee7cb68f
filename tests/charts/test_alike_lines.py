"""Lines of one shape below a chart that tell sizes of their own are never passed over quietly."""

from __future__ import annotations

import pytest

from charts.checks.alike_lines import alike_lines
from charts.importer import read_bytes
from tests.charts.read_text import questions

CHART = "Size\tChest (cm)\tWaist (cm)\nS\t84-88\t68-72\nM\t88-92\t72-76\nL\t92-96\t76-80\n"


@pytest.mark.parametrize(
    "below",
    [
        "Kids\nS   3436   2830   120145\nM   3638   3032   140165\n",
        "- Taglia 42: 88 cm di petto, 70 cm di vita\n- Taglia 44: 92 cm di petto, 74 cm di vita\n",
        (
            "Small is worn with a chest of 84 cm and a back of 42 cm.\n"
            "Medium is worn with a chest of 90 cm and a back of 44 cm.\n"
        ),
    ],
)
def test_a_second_chart_in_other_words_is_asked_about_or_read(below: str) -> None:
    reading = read_bytes((CHART + "\n" + below).encode(), "a.txt")
    sizes = [size for chart in reading.charts for size in chart.sizes]
    assert len(sizes) > 3 or "text-order" in questions(reading)


@pytest.mark.parametrize(
    "below",
    [
        "Delivery within 10 to 12 days.\nReturns within 14 to 30 days.\n",
        "Vest with a light chest panel 89,95 EUR\nVest with a heavy chest panel 99,95 EUR\n",
        "Example: a chest of 90 cm and a waist of 74 cm give size M.\n",
        "Wash at 30 degrees, 60 minutes.\nDry at 40 degrees, 20 minutes.\n",
    ],
)
def test_terms_prices_and_one_example_are_no_chart(below: str) -> None:
    assert questions(read_bytes((CHART + "\n" + below).encode(), "a.txt")) == []


def test_only_lines_of_one_shape_count_with_all_their_figures() -> None:
    told = [
        ((1, 0), "- Size 42: chest 88 cm, waist 70 cm"),
        ((2, 0), "- Size 44: chest 92 cm, waist 74 cm"),
        ((3, 0), "Chest 96 cm and waist 78 cm, that is 46"),
        ((4, 0), "M"),
    ]
    assert alike_lines(told) == {(1, 0): 3, (2, 0): 3}
