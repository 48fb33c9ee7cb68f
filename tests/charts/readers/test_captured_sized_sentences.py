"""Lines of one pattern whose first word is a size that holds a figure, or that lack a figure."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from tests.charts.read_text import asked_at, questions, ranges, values


def _lines(*sizes: str) -> str:
    return "\n".join(
        f"{size} - Chest (cm): {80 + 4 * at}-{83 + 4 * at} / Sleeve length (cm): {58 + at}"
        for at, size in enumerate(sizes)
    )


@pytest.mark.parametrize(
    "sizes",
    [
        ("XL", "XXL", "3XL"),
        ("XS (30)", "S (32)", "M (34)"),
        ("38", "40", "42"),
        ("Child S (4-6)", "Child M (7-8)", "Adult S"),
        ("P", "G", "G3"),
    ],
)
def test_each_line_is_a_size(sizes: tuple[str, ...]) -> None:
    found = ranges(read_pasted(_lines(*sizes)))
    chest = [one for one in found if one.dimension.value == "chest"]
    assert [one.low for one in chest] == [80, 84, 88]
    assert [one.dimension.value for one in found].count("arm_length") == len(sizes)


def test_a_cell_without_a_figure_loses_no_line() -> None:
    text = f"{_lines('S', 'M')}\nL - Chest (cm): >88 / Sleeve length (cm): N/A\n"
    assert values(read_pasted(text))["L chest"] == (88, None)


def test_a_line_that_leaves_a_measure_out_is_asked_about() -> None:
    rest = "L - Sleeve length (cm): 60-62\nXL - Chest (cm): 92-95 / Sleeve length (cm): 63"
    reading = read_pasted(f"{_lines('S', 'M')}\n{rest}\n")
    assert questions(reading) == ["text-order"]


def test_words_of_a_model_below_the_sizes_are_no_row() -> None:
    text = f"{_lines('S', 'M', 'L')}\nModel - Chest 96 cm, height 182 cm, wears M\n"
    assert not questions(read_pasted(text))


def test_the_unit_of_a_name_stays_with_it() -> None:
    reading = read_pasted(_lines("S", "M", "L"))
    assert not asked_at(reading, "unit-missing")
    assert {one.heading for one in ranges(reading)} == {"Chest (cm)", "Sleeve length (cm)"}
