"""Rows of another chart in the same file, whose separator the file was not parted by."""

from __future__ import annotations

from charts.importer import read_bytes
from tests.charts.read_text import questions

_BARS = """Women
SIZE | INCH | |
Bust | Waist | Hips |
0 | 32.5 | 25.5 | 35.5 |
2 | 33.5 | 26.5 | 36.5 |
4 | 34.5 | 27.5 | 37.5 |
6 | 35.5 | 28.5 | 38.5 |
8 | 36.5 | 30 | 39.5 |
10 | 37.5 | 31 | 40.5 |
12 | 39 | 32 | 42 |
"""


def _asked(text: str, name: str = "sizes.txt") -> list[str]:
    return [code for code in questions(read_bytes(text.encode(), name)) if code == "text-order"]


def test_rows_parted_by_tabs_above_or_below_rows_of_bars_are_asked_about() -> None:
    tabs = "Men\nSize\tChest (cm)\tHip (cm)\nS\t84-88\t86-90\nM\t88-92\t90-94\n"
    assert _asked(f"{tabs}\n{_BARS}") == ["text-order"]
    assert _asked(f"{_BARS}\n{tabs}") == ["text-order"]


def test_rows_of_blanks_and_rows_run_together_beside_rows_of_bars_are_asked_about() -> None:
    blanks = "Men\nSIZE 36 38 40\n\nCHEST 81 cm 85 cm 89 cm\n\nHIP 87 cm 90 cm 94 cm\n"
    assert _asked(f"{blanks}\n{_BARS}") == ["text-order"]
    together = "Men\nSizeA ChestB Hip\nS86-92 cm91-96 cm\nM92-96 cm96-99 cm\nL96-99 cm99-104 cm\n"
    assert _asked(f"{together}\n{_BARS}") == ["text-order"]


def test_sentences_parted_by_bars_beside_a_chart_of_tabs_are_asked_about() -> None:
    sentences = "\n".join(
        f"Size {size}: Waist {low}-{low + 8} cm | Weight up to {low - 6} kg"
        for size, low in (("S", 66), ("M", 74))
    )
    tabs = "Size\tChest (in)\tWaist (in)\tHip (in)\tWeight (lbs)\n" + "".join(
        f"{size}\t{at}-{at + 2}\t{at - 6}-{at - 4}\t{at + 2}-{at + 4}\t{3 * at}-{3 * at + 10}\n"
        for size, at in zip("SMLX", (36, 38, 40, 42), strict=True)
    )
    assert _asked(f"{sentences}\nWomen\n{tabs}") == ["text-order"]


def test_numbers_of_pages_and_names_of_sizes_above_a_chart_are_no_rows_left() -> None:
    assert _asked(f"Page 1 of 2\n{_BARS}Page 2 of 2\n") == []
    assert _asked(f"Sizes 0-12, since 2019\n{_BARS}Allow 2-3 cm of ease.\n") == []


_LISTED = """Ladies chest protectors

- Small - 30”-33”
- Medium - 33”-36”
- Large - 36” -38”

Sizes refer to the chest measured over the clothes you ride in.

Shin guards

• Small - 5'0" to 5'4"
• Medium - 5'5" to 5'8" {0}
• Large - 5'9" and above
"""


def test_a_list_of_sizes_that_came_into_no_chart_is_asked_about() -> None:
    assert _asked(_LISTED.format("any build")) == ["text-order"]


def test_a_word_for_the_height_behind_one_of_its_figures_names_no_other_measure() -> None:
    reading = read_bytes(_LISTED.format("tall").encode(), "sizes.txt")
    assert [len(chart.sizes) for chart in reading.charts] == [3, 3]
    assert "text-order" not in questions(reading)
