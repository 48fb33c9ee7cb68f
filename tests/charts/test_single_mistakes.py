"""One wrong figure in a sound chart: each way of going wrong is asked about at its own value."""

from __future__ import annotations

import random

import pytest

from charts.importer import read_bytes
from charts.schema import Range
from tests.charts.read_text import figures, questions, ranges, table

LETTERS = (["S", "M", "L"], ["XS", "S", "M", "L"], ["XS", "S", "M", "L", "XL", "XXL"])
MEASURES = (("Chest", 80, 4), ("Waist", 62, 4), ("Hips", 86, 6), ("Height", 152, 6))
FACTORS = {"ten times": 10, "a tenth": 0.1, "twice": 2, "half": 0.5, "in inches": 1 / 2.54}
CHARTS = 60

Cells = list[list[list[float]]]


def sound_chart(rng: random.Random) -> tuple[list[str], list[str], Cells]:
    """Sizes, measures, and the ends of each cell by row and column."""
    sizes, single = rng.choice(LETTERS), rng.random() < 0.5
    measures = rng.sample(MEASURES, rng.choice((1, 2, 3)))
    cells: Cells = [
        [
            [base + row * step, base + (row + 1) * step][: 1 if single else 2]
            for _, base, step in measures
        ]
        for row in range(len(sizes))
    ]
    return sizes, [name for name, _, _ in measures], cells


def printed(sizes: list[str], names: list[str], cells: Cells) -> str:
    """The chart as text."""
    lines = ["Size | " + " | ".join(f"{name} (cm)" for name in names)]
    for size, row in zip(sizes, cells, strict=True):
        lines.append(
            f"{size} | " + " | ".join("-".join(f"{round(x, 1):g}" for x in c) for c in row)
        )
    return "\n".join(lines)


def value_at(values: list[Range], row: int, column: int) -> Range | None:
    """The value of a cell, if one was kept."""
    place = f"{'ABCDE'[column + 1]}{row + 2}"
    return next((value for value in values if value.place == place), None)


def unasked(cells: Cells, sizes: list[str], names: list[str], row: int, column: int) -> bool:
    """Whether the cell's figure was stored and nothing is asked about it."""
    value = value_at(ranges(table(printed(sizes, names, cells))), row, column)
    return value is not None and figures(value) is not None and not value.findings


@pytest.mark.parametrize("way", FACTORS)
def test_a_figure_out_by_a_factor_is_asked_about(way: str) -> None:
    rng = random.Random(way)  # noqa: S311 - a seed, so that a failure comes back
    for _ in range(CHARTS):
        sizes, names, cells = sound_chart(rng)
        row, column = rng.randrange(len(sizes)), rng.randrange(len(names))
        cells[row][column] = [end * FACTORS[way] for end in cells[row][column]]
        assert not unasked(cells, sizes, names, row, column), printed(sizes, names, cells)


def test_the_same_charts_without_a_mistake_are_not_asked_about() -> None:
    rng = random.Random(1)  # noqa: S311 - a seed, so that a failure comes back
    for _ in range(CHARTS):
        text = printed(*sound_chart(rng))
        assert questions(table(text)) == [], text


def test_exchanged_digits_far_from_the_series_are_asked_about_at_an_end() -> None:
    reading = table("Size | Height (cm)\nXS | 125\nS | 158\nM | 164\nL | 170\nXL | 176")
    value = value_at(ranges(reading), 0, 0)
    assert value is not None
    assert value.findings


@pytest.mark.parametrize(
    "rows", ["XS | 62-66\nS | 62-66\nM | 70-74\nL | 74-78", "S | 62-68\nM | 74-80\nL | 74-80"]
)
def test_a_range_entered_twice_that_leaves_a_hole_is_asked_about(rows: str) -> None:
    assert questions(table(f"Size | Waist (cm)\n{rows}")) == ["step-broken"]


def test_two_equal_sizes_without_a_hole_are_sound() -> None:
    assert questions(table("Size | Waist (cm)\nS | 62-66\nM | 66-70\nL | 66-70\nXL | 70-74")) == []


def test_a_cell_printed_for_two_sizes_is_not_entered_twice() -> None:
    page = (
        "<table><tr><th>Size<th>Waist (cm)<tr><td>S<td rowspan=2>62-66<tr><td>M"
        "<tr><td>L<td>66-70<tr><td>XL<td>70-74</table>"
    )
    assert "step-broken" not in questions(read_bytes(page.encode(), "chart.html"))


def test_a_size_that_is_wide_in_each_of_its_columns_has_no_wrong_digit() -> None:
    rows = "XS | 84-87 | 72-75\nS | 88-91 | 76-79\nM | 92-99 | 80-87\nL | 100-103 | 88-91"
    head = "Size | Chest (cm) | Waist (cm)\n"
    assert questions(table(head + rows)) == []
    narrow = rows.replace("80-87", "80-83").replace("92-99", "90-99")
    assert questions(table(head + narrow)) == ["step-broken"]


def test_a_wide_range_between_the_borders_of_its_neighbours_has_no_wrong_digit() -> None:
    rows = "XS | up to 62\nS | 63-72\nM | 73-76\nL | 77-79\nXL | 80-82"
    assert questions(table(f"Size | Waist (cm)\n{rows}")) == []
    slip = rows.replace("63-72", "53-72")
    assert questions(table(f"Size | Waist (cm)\n{slip}")) == ["step-broken"]


def test_the_next_range_after_narrow_steps_is_no_stride() -> None:
    rows = "134 | 58-62\n140 | 59-63\n146 | 60-64\n152 | 61-65\n158 | 65-69"
    assert questions(table(f"Size | Waist (cm)\n{rows}")) == []
    slip = rows.replace("65-69", "71-75")
    assert questions(table(f"Size | Waist (cm)\n{slip}")) == ["step-broken"]


def test_a_lone_sound_value_is_looked_at_beside_those_that_are_asked_about() -> None:
    rows = ("58-62cm / 23-24.5", "80-84cm / 32-34", "84-88cm / 34-36", "88-92cm / 36-38")
    names = ("XS", "S", "M", "L")
    text = "\n".join(f"{name} | {cell}" for name, cell in zip(names, rows, strict=True))
    reading = table(f"Size | Bust\n{text}")
    first = reading.charts[0].sizes[0].ranges[0]
    assert first.low == 58
    assert [one.code for one in reading.findings if one.id in first.findings][-1] == "step-broken"
