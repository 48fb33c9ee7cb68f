"""Rows of single blanks as captured pages have them: sizes of digits, headings in many pieces."""

from __future__ import annotations

from textwrap import dedent

import pytest

from charts.importer import read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.rows import row_table
from charts.readers.captured.value_runs import sized_values, values_in
from charts.schema import Dimension
from tests.charts.readers.reading import paste

_BROKEN = dedent("""\
    Riders Fit Guide
    Metric

    SIZE HEIGHT
    (CM)

    WEIGHT
    (KG)

    S 166-174 59-66
    ST 174-184 61-68
    MS 168-176 63.5-70.5
    M 171-176 66-73

    LTS* 186-194 73-79.5
    """)


@pytest.mark.parametrize(
    ("text", "name", "parts"),
    [
        ("2T 1-2 33-35 28-30", "2T", ("1-2", "33-35", "28-30")),
        ("5/6 5-6 42-45", "5/6", ("5-6", "42-45")),
        ("XS/34 80 - 83 cm 78 cm", "XS/34", ("80 - 83 cm", "78 cm")),
        ("6 Months 3-6 M 22-24", "6 Months", ("3-6 M", "22-24")),
    ],
)
def test_a_size_may_hold_digits(text: str, name: str, parts: tuple[str, ...]) -> None:
    assert sized_values(text) == (name, parts)


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("até 81 acima de 97", ("até 81", "acima de 97")),
        ("45 - 48 6'1\" and above", ("45 - 48", "6'1\" and above")),
        ("1m12 - 1m18 19 - 22 kg", ("1m12 - 1m18", "19 - 22 kg")),
        ("5'-1\" - 5'-3\" 33-34", ("5'-1\" - 5'-3\"", "33-34")),
        ("oltre 150 78-82", ("oltre 150", "78-82")),
        ("bis 81 bis 63", ("bis 81", "bis 63")),
        ("81 bis 86 63 bis 68", ("81 bis 86", "63 bis 68")),
    ],
)
def test_a_limit_in_words_belongs_to_its_value(text: str, parts: tuple[str, ...]) -> None:
    assert values_in(text) == parts


@pytest.mark.parametrize("text", ["36 84 68", "2T", "2T and 33-35", "We ship 3 to 5"])
def test_a_number_alone_or_a_sentence_is_no_such_row(text: str) -> None:
    assert sized_values(text) is None


def test_groups_of_small_children_are_read_under_their_headings() -> None:
    reading = read_pasted(
        dedent("""\
        TODDLER

        Size Age Height (in) Weight (lbs)

        2T 1-2 33-35 28-30
        3T 2-3 36-38 30-33

        5/6 5-6 42-45 39-49

        INFANT

        Size Age Height (in) Weight (lbs)

        12 Months 6-12 M 29-30 17-20
        18 Months 12-18 M 30-31 21-24
        """)
    )
    assert [[one.label for one in chart.sizes] for chart in reading.charts] == [
        ["2T", "3T", "5/6"],
        ["12 Months", "18 Months"],
    ]
    last = reading.charts[1].sizes[1].ranges
    assert [(one.dimension, one.published) for one in last] == [
        (Dimension.HEIGHT, "30-31"),
        (Dimension.WEIGHT, "21-24"),
    ]


def test_headings_broken_before_their_brackets_are_put_together() -> None:
    rows = [list(filter(None, row)) for row in paste(_BROKEN).rows()]
    assert [row for row in rows if row] == [
        ["Riders Fit Guide"],
        ["Metric"],
        ["SIZE", "HEIGHT (CM)", "WEIGHT (KG)"],
        ["S", "166-174", "59-66"],
        ["ST", "174-184", "61-68"],
        ["MS", "168-176", "63.5-70.5"],
        ["M", "171-176", "66-73"],
        ["LTS*", "186-194", "73-79.5"],
    ]
    assert "text-order" not in {one.code for one in read_pasted(_BROKEN).findings}


def test_headings_that_were_only_counted_out_are_asked_about() -> None:
    reading = read_pasted(_BROKEN.replace("WEIGHT", "Weigth"))
    assert [one.code for one in reading.findings].count("text-order") == 1


def test_headings_fewer_than_the_figures_make_no_table() -> None:
    reading = read_pasted(_BROKEN.replace("WEIGHT\n(KG)", "(2)"))
    assert not reading.charts
    assert {one.code for one in reading.findings} == {"no-table"}


def test_a_bullet_before_a_row_is_no_part_of_its_size() -> None:
    read = read_pasted("Chest:\n- S 84-90 cm\n- M 90-96 cm\n- L 96-102 cm\n")
    (chart,) = read.charts
    assert [size.label for size in chart.sizes] == ["S", "M", "L"]
    assert not [one for one in read.findings if one.code == "second-axis"]


@pytest.mark.parametrize("item", ["- {0}: {1}", "• {0} - {1}", "{0} - {1}", "* {0} = {1}"])
def test_items_of_a_list_are_named_without_their_signs(item: str) -> None:
    sizes = {"X-Small": "76-80 cm", "Medium": "88-92 cm", "2X": "100-104 cm"}
    lines = "\n".join(item.format(*pair) for pair in sizes.items())
    (chart,) = read_pasted(f"Chest girth\n\n{lines}\n").charts
    assert [size.label for size in chart.sizes] == list(sizes)
    assert {one.dimension for size in chart.sizes for one in size.ranges} == {Dimension.CHEST}


def test_years_by_their_letter_and_both_units_by_a_stroke_are_rows() -> None:
    text = (
        "SIZE AGE HEIGHT CHEST\n"
        '2Y 1 - 2Y 86 - 92 cm / 33 3/4 to 36 1/4" 52 cm / 20 1/2"\n'
        '3Y 2 - 3Y 98 cm / 38 1/2" 54 cm / 21 1/4"\n'
    )
    assert paste(text).rows() == [
        ["SIZE", "AGE", "HEIGHT", "CHEST"],
        ["2Y", "1 - 2Y", '86 - 92 cm / 33 3/4 to 36 1/4"', '52 cm / 20 1/2"'],
        ["3Y", "2 - 3Y", '98 cm / 38 1/2"', '54 cm / 21 1/4"'],
    ]
    ranges = [one for size in read_pasted(text).charts[0].sizes for one in size.ranges]
    heights = [one for one in ranges if one.dimension is Dimension.HEIGHT]
    assert [(one.low, one.high, one.value) for one in heights] == [(86, 92, None), (None, None, 98)]


def test_a_title_that_stands_once_more_before_the_heading_of_the_sizes_names_no_column() -> None:
    reading = read_pasted(
        dedent("""\
        Body Length
        Body Length Size Your height in cm Your height in inches
        S 157 - 165cm 5'2" - 5'5"
        M 165 - 173cm 5'5" - 5'8"
        L 173 - 180cm 5'8" - 5'11"
        """)
    )
    found = [value for size in reading.charts[0].sizes for value in size.ranges]
    assert {value.dimension for value in found} == {Dimension.HEIGHT}
    assert [size.label for size in reading.charts[0].sizes] == ["S", "M", "L"]


def test_a_word_for_sizes_in_one_heading_of_measures_parts_no_columns() -> None:
    lines = numbered(
        "Body Length Size Your height in cm Your height in inches\n"
        "S 157 - 165cm 5'2\" - 5'5\"\nM 165 - 173cm 5'5\" - 5'8\"\n"
    )
    assert row_table(lines) is None


def test_a_unit_ends_the_heading_before_it() -> None:
    text = """\
        Size Height (cm) Weight (kg) Chest (cm) Waist (cm)
        S 51-57 81-86 65-70
        M 57-65 86-92 70-76
        """
    assert row_table(numbered(dedent(text))) is None
