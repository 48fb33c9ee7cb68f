"""Cells on lines of their own whose words leave an end open, or whose headings are ends alone."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes, read_pasted
from charts.schema import FileReading
from tests.charts.read_text import questions, ranges, values


def cell_a_line(*cells: str) -> FileReading:
    return read_bytes("\n".join(cells).encode(), "chart.txt")


@pytest.mark.parametrize(
    "more", ["a více", "i więcej", "and more", "en meer", "e più", "og mere", "och mer", "и более"]
)
def test_the_last_size_may_have_no_upper_end(more: str) -> None:
    reading = cell_a_line(
        "Size", "Hip (cm)", "S", "78 - 86 cm", "M", "87 - 95 cm", "L", "96 - 104 cm",
        "XL", f"105 cm {more}", "", "Ask us where you are between two of them.",
    )  # fmt: skip
    assert values(reading)["XL hip"] == (105, None)
    assert questions(reading) == []


def test_an_open_end_behind_single_blanks_stays_in_its_cell() -> None:
    text = "Velikost Hrudník Pas\nS 84 - 90 cm 66 - 72 cm\nM 91 - 97 cm 73 - 79 cm\n"
    found = values(read_bytes(f"{text}L 98 cm a více 80 cm a více\n".encode(), "chart.txt"))
    assert (found["L chest"], found["L waist"]) == ((98, None), (80, None))


def test_least_and_most_twice_below_names_that_came_first_are_asked_about() -> None:
    rows = [
        "XS", "89", "93", "73", "77", "89", "93", "170-175", "",
        "S", "93", "97", "77", "81", "93", "97", "170-175", "",
        "M", "97", "101", "81", "85", "97", "101", "175-180", "",
    ]  # fmt: skip
    heads = ["Size", "Chest", "Waist", "Hips", "Height", "", *["min", "max"] * 3, ""]
    found = ranges(cell_a_line(*heads, *rows))
    assert all(one.findings for one in found)


def test_the_weight_of_a_parcel_is_nobodys() -> None:
    lines = (
        "Size Chest Waist Panel height Panel width Shipping weight",
        'SM 33-37" 28-32" 12.5" 17" 4.6 lb',
        'MD 37-41" 32-36" 13.5" 19" 5.2 lb',
        'LG 41-45" 36-40" 14.5" 21" 5.9 lb',
    )
    found = values(cell_a_line(*lines))
    assert found["MD chest"] == (93.98, 104.14)
    assert not [key for key in found if "weight" in key or "height" in key]


def test_the_signs_of_open_ends_stay_with_their_figures_in_sentences() -> None:
    reading = read_pasted(
        "XS - Bust (cm): ≤87 / Waist (cm): < 72\n"
        "S - Bust (cm): 88-92 / Waist (cm): 72-77\n"
        "M - Bust (cm): 93+ / Waist (cm): >77\n"
    )
    assert values(reading) == {
        "XS chest": (None, 87),
        "XS waist": (None, 72),
        "S chest": (88, 92),
        "S waist": (72, 77),
        "M chest": (93, None),
        "M waist": (77, None),
    }
