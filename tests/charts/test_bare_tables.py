"""Tables without a unit, or with halves of girths: what their figures alone rule out."""

from __future__ import annotations

import pytest

from charts.findings import Level
from charts.importer import read_bytes
from tests.charts.read_text import asked_at, questions, ranges, table, values

SUIT = """
Size | Wingspan | Chest | Length | Waist | Hips
F1 | 150 | 49 | 66 | 44 | 50
F2 | 155 | 51 | 68 | 46 | 52
F3 | 160 | 53 | 70 | 48 | 54
"""


def test_no_arm_span_is_proposed_in_inches() -> None:
    reading = table(SUIT)
    chests = [float(one.value or 0) for one in ranges(reading) if one.heading == "Chest"]
    assert chests == [49, 51, 53]
    assert {value.unit_from.value for value in ranges(reading)} == {"inferred"}
    assert len(asked_at(reading, "unit-missing")) == 15


def test_one_figure_too_long_may_be_a_slip() -> None:
    text = "Size | Length | Chest\nXS | 711 | 91\nS | 73 | 96\nM | 75 | 101\nL | 77 | 106"
    reading = table(text)
    assert values(reading)["S chest"] == 96
    assert "unit-missing" in questions(reading)


def test_a_length_beside_a_span_in_cm_is_no_height_in_inches() -> None:
    assert "heading-two-readings" not in questions(table(SUIT))
    unsure = SUIT.replace("Wingspan", "Sleeve").replace("150", "20").replace("155", "21")
    assert "heading-two-readings" in questions(table(unsure.replace("160", "22")))


def test_a_slip_alone_does_not_say_the_unit() -> None:
    text = "Size | Chest | Length\nS | 34 | 60\nM | 36 | 62\nL | 83 | 64\nXL | 40 | 66"
    assert "heading-two-readings" in questions(table(text))


def test_girths_that_begin_below_a_body_are_asked_about_as_a_whole() -> None:
    reading = table("Size | F1 | F2 | F3\nBust (in) | 17 | 18 | 21\nHips (in) | 18.5 | 21 | 22.5")
    assert questions(reading) == ["laid-flat"]
    assert len(asked_at(reading, "laid-flat")) == 6


def test_small_children_are_not_taken_for_halves_as_a_whole() -> None:
    text = "Age | Chest | Waist\n0-3 M | 39 cm | 40 cm\n6-12 M | 50 cm | 50 cm\n2 | 53 cm | 52 cm"
    assert questions(table(text)) == []  # at that age a half of 39 is no child's
    reading = table(text.replace("39", "26").replace("40", "28"))
    assert questions(reading) == ["laid-flat"]
    assert len(asked_at(reading, "laid-flat")) == 2


@pytest.mark.parametrize("figures", [(19, 21, 23), (18, 20, 25)])
def test_a_unit_said_of_all_holds_where_no_other_unit_can(figures: tuple[int, ...]) -> None:
    rows = "".join(f"<tr><td>{n} yr<td>{figure}</tr>" for n, figure in enumerate(figures, 1))
    page = f"<p>All measurements in inches</p><table><tr><th>Age<th>Chest</tr>{rows}</table>"
    reading = read_bytes(page.encode(), "chart.html")
    assert "unit-missing" not in questions(reading)
    assert {value.published_unit for value in ranges(reading) if value.value} == {"in"}


def test_a_unit_said_of_all_is_asked_about_where_another_one_fits() -> None:
    page = (
        "<p>All measurements in inches</p><table><tr><th>Size<th>Chest</tr>"
        "<tr><td>S<td>84</tr><tr><td>M<td>88</tr></table>"
    )
    assert "unit-missing" in questions(read_bytes(page.encode(), "chart.html"))


def test_a_bracket_under_a_title_is_not_the_title() -> None:
    page = (
        "<table><tr><th colspan=3>Women's jackets</tr><tr><td colspan=3>(± 2 cm in all areas)</tr>"
        "<tr><th>Size<th>Chest (cm)<th>Waist (cm)</tr><tr><td>S<td>84<td>66</tr>"
        "<tr><td>M<td>88<td>70</tr></table>"
    )
    reading = read_bytes(page.encode(), "chart.html")
    assert reading.charts[0].title == "Women's jackets"
    assert [one for one in reading.findings if one.level is Level.QUESTION] == []


@pytest.mark.parametrize("word", ["Size", "Größe", "Taglia", "EU"])
def test_a_word_for_size_before_each_number_heads_no_row(word: str) -> None:
    rows = [f"{word} {size} | {size * 2} cm | {size * 2 - 18} cm" for size in (38, 40, 42, 44, 46)]
    reading = table("\n".join(rows))
    assert [size.label.split(" ")[-1] for size in reading.charts[0].sizes if size.label] == [
        *("38", "40", "42", "44", "46")
    ]
    assert questions(reading) == ["heading-unknown"]
