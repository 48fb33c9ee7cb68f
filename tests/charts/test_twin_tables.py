"""A page's table printed again in the other units: one chart, compared; hidden strangers asked."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import asked_at, questions, ranges, values

ROWS = {
    "cm": ("84-88", "68-72", "88-92", "72-76", "92-96", "76-80"),
    "in": ("33-34.5", "27-28.5", "34.5-36", "28.5-30", "36-38", "30-31.5"),
}
CHART = {
    "S chest": (84, 88), "S waist": (68, 72),
    "M chest": (88, 92), "M waist": (72, 76),
    "L chest": (92, 96), "L waist": (76, 80),
}  # fmt: skip
HIDING = ["style='display:none'", "hidden", "aria-hidden='true'"]


def rows(unit: str, said: str = "", more: str = "") -> str:
    figures = iter(ROWS[unit])
    heads = f"<tr><th>Size<th>Chest {said}<th>Waist {said}</tr>"
    lines = (f"<tr><td>{size}<td>{next(figures)}<td>{next(figures)}</tr>" for size in "SML")
    return f"<table>{heads}{''.join(lines)}{more}</table>"


def read(body: str) -> FileReading:
    return read_bytes(f"<html><body>{body}</body></html>".encode(), "page.html")


@pytest.mark.parametrize("hiding", [*HIDING, ""])
def test_the_other_printing_stands_beside_the_first(hiding: str) -> None:
    reading = read(f"<div>{rows('cm', '(cm)')}</div><div {hiding}>{rows('in', '(in)')}</div>")
    assert values(reading) == CHART
    assert questions(reading) == []
    beside = {one.also_published.place for one in ranges(reading) if one.also_published}
    assert beside == {f"table 2!{column}{row}" for column in "BC" for row in (2, 3, 4)}


def test_the_metric_figures_are_read_where_the_inches_stand_first() -> None:
    reading = read(f"<div>{rows('in', '(in)')}</div><div hidden>{rows('cm', '(cm)')}</div>")
    assert values(reading) == CHART


@pytest.mark.parametrize(
    "body",
    [
        "<h3>Centimetres</h3>{cm}<h3>Inches</h3>{inches}",
        "<ul class=tabs><li>cm</li><li>inches</li></ul><div>{cm}</div><div hidden>{inches}</div>",
        "<div data-unit=cm>{cm}</div><div data-unit=in hidden>{inches}</div>",
        "<div id=chart-cm>{cm}</div><div id=chart-inches hidden>{inches}</div>",
        "<div>{cm}</div><div hidden>{inches}</div>",
    ],
)
def test_the_units_may_stand_at_the_switch_or_be_proved_by_each_other(body: str) -> None:
    reading = read(body.format(cm=rows("cm"), inches=rows("in")))
    assert values(reading) == CHART
    assert questions(reading) == []


def test_a_figure_that_differs_between_the_two_is_asked_about_alone() -> None:
    wrong = rows("in", "(in)").replace("36-38", "46-48")
    reading = read(f"{rows('cm', '(cm)')}<div hidden>{wrong}</div>")
    assert values(reading) == CHART
    assert questions(reading) == ["units-disagree"]
    assert asked_at(reading, "units-disagree") == ["table 1!B4"]


def test_a_size_of_the_hidden_printing_alone_is_kept_and_asked_about() -> None:
    more = "<tr><td>XL<td>38-40<td>31.5-33</tr>"
    reading = read(f"{rows('cm', '(cm)')}<div hidden>{rows('in', '(in)', more)}</div>")
    assert values(reading)["XL chest"] == (96.52, 101.6)
    assert set(asked_at(reading, "label-repeated")) == {"table 2!B5", "table 2!C5"}


def test_a_hidden_table_that_is_no_twin_is_asked_about() -> None:
    body = "<table><tr><th>Size<th>Hips (cm)</tr><tr><td>S<td>90-94</tr><tr><td>M<td>94-98</table>"
    reading = read(f"{rows('cm', '(cm)')}<div hidden>{body}</div>")
    assert questions(reading) == ["label-repeated"]
    assert set(asked_at(reading, "label-repeated")) == {"table 2!B2", "table 2!B3"}


def test_a_hidden_table_with_a_name_of_its_own_is_a_tab_like_the_others() -> None:
    men = rows("cm", "(cm)").replace("84-88", "85-88")
    reading = read(f"<h2>Women</h2>{rows('cm', '(cm)')}<h2>Men</h2><div hidden>{men}</div>")
    assert [chart.band for chart in reading.charts] == ["women", "men"]
    assert questions(reading) == []


def test_a_second_printing_below_or_on_a_sheet_of_its_own_is_one_chart_too() -> None:
    below = read_bytes(
        b"Size,Chest (in),Waist (in)\nS,33-35,27-29\nM,35-37,29-31\n"
        b"Size,Chest (cm),Waist (cm)\nS,84-89,69-74\nM,89-94,74-79\n",
        "a.csv",
    )
    assert values(below)["M chest"] == (89, 94)
    assert len(values(below)) == 4
    assert all(one.also_published is not None for one in ranges(below))
    assert questions(below) == []


def test_tables_of_two_bands_in_two_units_stay_two() -> None:
    reading = read(f"<h2>Women</h2>{rows('cm', '(cm)')}<h2>Men</h2>{rows('in', '(in)')}")
    assert [chart.band for chart in reading.charts] == ["women", "men"]


@pytest.mark.parametrize(
    ("first", "second"), [("Metric (cm)", "Imperial (in)"), ("Métrique", "Impérial (in)")]
)
def test_a_section_for_each_system_of_units_is_one_chart(first: str, second: str) -> None:
    reading = read_bytes(
        f"Size,S,M,L\n{first},,,\nChest,84-88,88-92,92-96\nWaist,68-72,72-76,76-80\n"
        f"{second},,,\nChest,33-34.5,34.5-36,36-38\nWaist,27-28.5,28.5-30,30-31.5\n".encode(),
        "chart.csv",
    )
    assert len(reading.charts) == 1
    assert values(reading) == CHART


def test_what_is_asked_of_one_heading_in_both_printings_is_asked_once() -> None:
    reading = read_bytes(
        b"Size,S,M,L\nMetric (cm),,,\nChest width,84,88,92\nWaist,68,72,76\n"
        b"Imperial (in),,,\nChest width,33,34.5,36\nWaist,27,28.5,30\n",
        "chart.csv",
    )
    assert len(reading.charts) == 1
    assert questions(reading) == ["basis-doubtful"]


SECTIONS = """size     34         36         38         40
in inches
neck    14         15         16         17
waist   21         22         24         26
in cm
neck    35.5       38         40.5       {last}
waist   53.5       56         61         66
"""


def test_two_sections_below_one_line_of_sizes_are_one_chart() -> None:
    reading = read_bytes(SECTIONS.format(last="43").encode(), "chart.txt")
    assert len(reading.charts) == 1
    assert values(reading)["40 neck"] == 43
    assert all(one.also_published for one in ranges(reading))


def test_what_is_asked_of_a_figure_that_cannot_be_is_asked_of_its_twin() -> None:
    reading = read_bytes(SECTIONS.format(last="98").encode(), "chart.txt")
    assert values(reading)["40 neck"] == 43.18
    assert questions(reading) == ["impossible"]
    assert [bool(one.findings) for one in ranges(reading)].count(True) == 1
