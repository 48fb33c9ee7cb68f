"""Names around a chart that say for whom something is, and were taken for no chart."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from tests.charts.read_text import questions

_ROWS = "Size;Width of the chest;Length\nS;46 cm;60 cm\nM;49 cm;62 cm\nL;52 cm;64 cm\n"


def asked(text: str) -> list[str]:
    reading = read_bytes(text.encode(), "a.csv")
    found = [one for one in reading.findings if one.values.get("case") == "people"]
    for one in found:
        bear = [
            one.id in value.findings for size in reading.charts[0].sizes for value in size.ranges
        ]
        assert all(bear)
    return [one.values["heading"] for one in found]


@pytest.mark.parametrize("name", ["ORGANIC WOMEN CREW NECK", "Zorbo Men's Range", "WOMEN / GIRLS"])
def test_the_name_of_a_garment_below_its_figures_is_asked_about(name: str) -> None:
    assert asked(f"{_ROWS}\n{name}\n") == [name]


@pytest.mark.parametrize(
    "text",
    [
        _ROWS,
        f"Women\n{_ROWS}",
        f"{_ROWS}\nWomen order a size smaller than men do, as most of our clients tell us.\n",
        f"{_ROWS}\nZorbo Men's Range\nZorbo Women's Range\n",
        f"{_ROWS}\nKind regards\n",
        _ROWS.replace("\nS;", "\nYouth S;"),
    ],
)
def test_what_names_somebody_else_or_nobody_is_not(text: str) -> None:
    assert asked(text) == []


def test_one_name_of_several_leaves_open_whose_a_chart_is_beside_that_of_others() -> None:
    text = f"WOMEN / GIRLS SIZE CHARTS\n\nCHILD SIZES\n{_ROWS}\nADULT SIZES\n{_ROWS}"
    reading = read_bytes(text.encode(), "a.csv")
    (one,) = [one for one in reading.findings if one.values.get("case") == "people"]
    bear = {
        chart.band: {one.id in value.findings for size in chart.sizes for value in size.ranges}
        for chart in reading.charts
    }
    assert bear == {"kids": {False}, None: {True}}


def test_a_chart_of_its_own_title_is_not_for_those_of_another() -> None:
    text = f"Zorbo\n{_ROWS}\nWomen's jackets\n{_ROWS.replace('46', '44')}"
    assert asked(text) == []
    assert "columns-shifted" not in questions(read_bytes(text.encode(), "a.csv"))


def test_a_kind_of_goods_says_for_whom_its_rows_are() -> None:
    rows = "品类,尺码,胸围cm\n男装T恤,S,92\n男装T恤,M,96\n女装上衣,S,80\n女装上衣,M,84\n跑鞋,38,-\n"
    reading = read_bytes(rows.encode(), "a.csv")
    assert [(one.band, len(one.sizes)) for one in reading.charts if one.band] == [
        ("men", 2),
        ("women", 2),
    ]


def test_vietnamese_words_for_whom_count_where_both_stand_in_a_column() -> None:
    rows = "gender,size,chest_cm\nnam,M,92-96\nnam,L,96-100\nnữ,S,80-84\nnữ,M,84-88\n"
    reading = read_bytes(rows.encode(), "a.csv")
    assert [one.band for one in reading.charts] == ["men", "women"]


_AGES = "Boys' Wear\nAge;3;4;5;6\nChest (cm);54;56;58;60\nWaist (cm);52;53;54;55\n"
_OLDER = "\nAge;7;8;9\nChest (cm);62;64;67\nWaist (cm);56;57;58\n"
_GIRLS = "\nGirls' Wear\nAge;3;4;5;6\nChest (cm);53;55;57;59\nWaist (cm);51;52;53;54\n"


def test_a_table_without_a_name_whose_sizes_and_figures_go_on_is_for_those_of_the_one_before() -> (
    None
):
    reading = read_bytes((_AGES + _OLDER + _GIRLS).encode(), "a.csv")
    assert [chart.band for chart in reading.charts] == ["boys", "boys", "girls"]
    assert "columns-shifted" not in questions(reading)


@pytest.mark.parametrize(
    "other",
    [
        _OLDER.replace("62;64;67", "52;54;56"),  # figures that begin anew: other people's
        _OLDER.replace("62;64;67", "88;92;96"),  # a leap, as to grown-ups
        _OLDER.replace("7;8;9", "4;5;6"),
        _OLDER.replace("\nAge", "\n20 22 24\n\nAge"),  # a row of figures in place of a name
    ],
)
def test_a_table_without_a_name_below_a_named_one_is_asked_about_where_it_does_not_go_on(
    other: str,
) -> None:
    reading = read_bytes((_AGES + other + _GIRLS).encode(), "a.csv")
    (one,) = [one for one in reading.findings if one.values.get("case") == "nameless"]
    bear = [
        {one.id in value.findings for size in chart.sizes for value in size.ranges}
        for chart in reading.charts
    ]
    assert [chart.band for chart in reading.charts] == ["boys", None, "girls"]
    assert bear == [{False}, {True}, {False}]
