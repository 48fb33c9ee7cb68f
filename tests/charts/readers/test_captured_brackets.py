"""Sizes and figures in one rhythm of brackets, as patterns for knitting and sewing print them."""

from __future__ import annotations

from decimal import Decimal
from textwrap import dedent

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.importer import read_bytes, read_pasted
from charts.readers.captured.brackets import bracket_table
from charts.readers.captured.lines import numbered
from charts.schema import Basis, Dimension, Kind
from tests.charts.readers.reading import paste

_PATTERN = dedent("""\
    A vest
    SIZES
    1 (2, 3, 4) (5, 6)
    Worn with 6 to 14 cm of ease.
    FINISHED MEASUREMENTS
    A) Bust:
    91 (99, 107, 115) (123, 131) cm / 35.75 (39, 42, 45.25) (48.5, 51.5)”.
    B) Upper arm: 35 (39, 43, 45) (49, 52) cm Waist: 80 (88, 96, 104) (112, 120) cm
    GAUGE
    20 stitches x 30 rounds = 10 cm
    """)


def test_figures_in_brackets_belong_to_the_sizes_in_the_same_brackets() -> None:
    rows = paste(_PATTERN).rows()
    assert rows[3] == ["SIZES", "1", "2", "3", "4", "5", "6"]
    assert rows[4][:3] == ["A) Bust", "91 cm / 35.75”", "99 cm / 39”"]
    assert rows[5] == ["B) Upper arm", "35 cm", "39 cm", "43 cm", "45 cm", "49 cm", "52 cm"]
    assert rows[6][0] == "Waist"


@pytest.mark.parametrize("name", ["pattern.txt", "pattern.csv"])
def test_commas_inside_brackets_part_no_columns(name: str) -> None:
    (chart,) = read_bytes(_PATTERN.encode(), name).charts
    bust = {
        size.label: one.value
        for size in chart.sizes
        for one in size.ranges
        if one.dimension is Dimension.CHEST
    }
    assert bust == {str(at): Decimal(83 + 8 * at) for at in range(1, 7)}


@pytest.mark.parametrize(
    ("old", "new"),
    [("(99, 107, 115)", "(99, 107)"), ("(123, 131)", "(123 131, 140)"), ("(39, 42,", "(39,")],
)
def test_a_figure_too_few_or_too_many_makes_no_value_without_a_question(old: str, new: str) -> None:
    reading = read_pasted(_PATTERN.replace(old, new))
    values = [one for chart in reading.charts for size in chart.sizes for one in size.ranges]
    assert not [one for one in values if one.dimension is Dimension.CHEST]
    assert {one.code for one in reading.findings} & {"text-order", "no-table"}


def test_a_later_row_of_another_count_makes_the_whole_to_be_compared() -> None:
    found = bracket_table(numbered("S (M) L\nBust: 80 (84) 88 cm\nHip: 90 (94) cm\n"))
    assert found is not None
    assert (len(found.rows), found.used, found.inferred) == (2, 2, True)


def test_a_hyphen_lost_in_one_figure_is_asked_and_the_others_are_read() -> None:
    text = "Sizes\nS (M) L (XL)\nChest: 81-89 (90-97) 98-105 (106113) cm\n"
    reading = read_pasted(text)
    kinds = [size.ranges[0].kind for size in reading.charts[0].sizes]
    assert kinds == [Kind.RANGE, Kind.RANGE, Kind.RANGE, Kind.UNREAD]
    assert "separator-lost" in {one.code for one in reading.findings}


@pytest.mark.parametrize("sizes", ["1 (3, 2)", "S (M)", "L (M) S", "see page (2) and (3)"])
def test_what_does_not_rise_as_sizes_do_begins_no_table(sizes: str) -> None:
    assert bracket_table(numbered(f"{sizes}\nBust: 80 (84) 88 cm\n")) is None


@given(st.lists(st.integers(60, 140), min_size=3, max_size=3), st.sampled_from(["cm", "in", ""]))
def test_each_figure_comes_to_the_size_in_its_place(figures: list[int], unit: str) -> None:
    first, second, third = figures
    table = bracket_table(numbered(f"S (M) L\nBust: {first} ({second}) {third} {unit}\n"))
    assert table is not None
    assert [cell.text.split()[0] for cell in table.rows[-1][1:]] == [str(one) for one in figures]


_AGED = dedent("""\
    Sizes: 1-2 (2-3) 3-4 (4-5) years
    Bust: 73 (75) 79 (83) cm
    Length: 36 (38) 42 (43) cm, taken at the middle of the back
    Gauge: 20 stitches = 10 cm
    """)


def test_years_behind_all_sizes_belong_to_each_and_words_behind_a_row_to_its_name() -> None:
    rows = paste(_AGED).rows()
    assert rows[0] == ["Sizes", "1-2 years", "2-3 years", "3-4 years", "4-5 years"]
    assert rows[1] == ["Bust", "73 cm", "75 cm", "79 cm", "83 cm"]
    assert rows[2][0] == "Length, taken at the middle of the back"
    assert rows[2][1:] == ["36 cm", "38 cm", "42 cm", "43 cm"]


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("years", "stitches"),
        ("3-4 (4-5)", "3-4 (XL)"),
        ("73 (75)", "73"),
        (" (83) cm", " (83) cm or 2 more"),
    ],
)
def test_brackets_that_are_no_sizes_or_not_even_give_no_value_silently(old: str, new: str) -> None:
    reading = read_pasted(_AGED.replace(old, new))
    values = [one for chart in reading.charts for size in chart.sizes for one in size.ranges]
    kept = [one for one in values if one.dimension is Dimension.CHEST and one.value is not None]
    assert not kept
    assert reading.findings


_NEXT_LINE = dedent("""\
    SIZES
    1 (2, 3, 4) (5, 6)
    A) Bust:
    91 (99, 107, 115) (123, 131) cm.
    35.75 (39, 42, 45.25) (48.5, 51.5)”.
    B) Hip:
    95 (103, 111, 119) (127, 135) cm.
    37.5 (40.5, 43.75, 46.75) (50, 53)”
    """)


def test_a_line_without_a_name_gives_the_last_measure_in_the_other_unit() -> None:
    rows = paste(_NEXT_LINE).rows()
    assert rows[1][:3] == ["A) Bust", "91 cm / 35.75”", "99 cm / 39”"]
    assert rows[2][:2] == ["B) Hip", "95 cm / 37.5”"]


def test_a_second_line_in_the_same_unit_is_no_other_reading_of_the_first() -> None:
    table = bracket_table(numbered(_NEXT_LINE.replace("”", " cm").partition("\n")[2]))
    assert table is not None
    assert table.inferred
    assert [cell.text for cell in table.rows[1]][:2] == ["A) Bust", "91 cm"]


def test_inches_in_square_brackets_that_are_broken_over_two_lines_are_the_same_again() -> None:
    rows = paste(
        dedent("""\
        Sizes: XS (S) M (L) XL
        Chest: 90 (94) 98 (102) 106 cm [35½ (37) 38½ (40¼)
        41¾ inches]
        Hip: 94 (98) 102 (106) 110 cm [37 (38½) 40¼ (41¾) 43¼ inches] (widest part)
        """)
    ).rows()
    assert rows[1][::5] == ["Chest", "106 cm / 41¾ inches"]
    assert rows[2][:2] == ["Hip (widest part)", "94 cm / 37 inches"]
    assert len(rows) == 3


def test_sizes_of_two_words_that_are_told_once_more_behind_or_are_sizes() -> None:
    rows = paste(
        dedent("""\
        Kids' sizes: 3–6 months (6–12 months, 18–24 months) (3–4 years) OR 62 (74, 86) (98) cm
        Bust about 54 (58, 64) (66) cm / 21 (23, 25.25) (26)“
        """)
    ).rows()
    assert rows[0][1:] == ["3–6 months", "6–12 months", "18–24 months", "3–4 years"]
    assert rows[1][1::3] == ["about 54 cm / 21“", "about 66 cm / 26“"]


def test_as_many_sizes_must_stand_on_both_sides_of_or() -> None:
    lines = numbered(
        "Sizes: 3–6 months (6–12 months) 1–2 years OR 62 (74, 86) 98 cm\nBust 54 (58) 64 cm\n"
    )
    assert bracket_table(lines) is None


def test_the_first_size_may_stand_in_brackets_itself() -> None:
    reading = read_pasted(
        "Size: (XS) S (M) L\nChest: (84) 90 (96) 104 cm\nWaist: (68) 74 (80) 88 cm\n"
    )
    found = {size.label: [one.value for one in size.ranges] for size in reading.charts[0].sizes}
    assert found == {"XS": [84, 68], "S": [90, 74], "M": [96, 80], "L": [104, 88]}


@pytest.mark.parametrize(
    "words",
    [
        "Gauge: 18 stitches x 22 rows = 10 cm",
        "Recommended ease: 5 cm of positive ease",
        "Strikkefasthed: 18 masker x 22 pinde = 10 cm",
        "Rundstricknadel 4 mm",
    ],
)
def test_a_girth_of_a_knitted_pattern_is_not_taken_for_the_bodys(words: str) -> None:
    reading = read_pasted(f"Size: S (M) L\nChest circumference: 110 (115) 121 cm\n{words}\n")
    (chart,) = reading.charts
    assert {one.basis for size in chart.sizes for one in size.ranges} == {Basis.UNKNOWN}
    assert "basis-doubtful" in [one.code for one in reading.findings]


def test_a_girth_to_fit_stays_the_bodys_beside_words_of_knitting() -> None:
    reading = read_pasted("Size: S (M) L\nTo fit chest: 84 (90) 97 cm\nGauge: 18 stitches\n")
    (chart,) = reading.charts
    assert {one.basis for size in chart.sizes for one in size.ranges} == {Basis.BODY}


_TITLED = dedent("""\
    Sizes:
    (1-2) 3-5 (6-8) 10 yrs
    Measurements:
    Chest: approx (60) 68 (76) 84 cm
    Sleeve length: ca. (23-25) 28 (33-35½) 38 cm, or as wished
    Yarn: (2) 3 (4) 5 balls
    """)


def test_words_for_rounding_and_titles_stand_before_the_figures_of_a_pattern() -> None:
    rows = paste(_TITLED).rows()
    assert rows[1] == ["Sizes", "1-2 yrs", "3-5 yrs", "6-8 yrs", "10 yrs"]
    assert rows[2] == ["Chest", "approx 60 cm", "approx 68 cm", "approx 76 cm", "approx 84 cm"]
    assert rows[3][1:] == ["ca. 23-25 cm", "ca. 28 cm", "ca. 33-35½ cm", "ca. 38 cm"]


def test_yarn_of_each_size_is_no_part_of_a_chart_that_is_missing() -> None:
    codes = [one.code for one in read_pasted(_TITLED).findings]
    assert "text-order" not in codes
    lost = _TITLED.replace("Yarn", "Hip").replace("5 balls", "95 cm (10)")
    assert "text-order" in [one.code for one in read_pasted(lost).findings]


def test_a_title_and_a_colon_may_stand_before_the_first_measure_of_a_line() -> None:
    found = bracket_table(numbered("S (M) L\nMål: Brystvidde: 80 (84) 88 cm\n"))
    assert found is not None
    assert [row[0].text for row in found.rows] == ["Mål:", "", "Brystvidde"]


@pytest.mark.parametrize("word", ["ca.", "approx", "n.", "unos", "noin"])
def test_a_word_for_rounding_holds_for_every_figure_of_its_row(word: str) -> None:
    reading = read_pasted(f"Size\nS (M) L\nChest: {word} 80 (84) 88 cm\n")
    read = [(one.value, one.circa) for size in reading.charts[0].sizes for one in size.ranges]
    assert read == [(Decimal(80), True), (Decimal(84), True), (Decimal(88), True)]


@pytest.mark.parametrize(
    "measure",
    [
        "83,5 (93, 103) cm de contorno de peito",
        "83,5 (93, 103) cm de contorno de peito (zorbo da peça)",
        "83,5 (93, 103) cm chest.",
    ],
)
def test_the_name_may_stand_behind_and_plain_sizes_below_their_word(measure: str) -> None:
    text = f"FIO\n\n10 (12, 13) novelos, cor 13 (50g/95m).\n\nTAMANHOS\n\nS, M, L.\n\n{measure}\n"
    (chart,) = read_bytes(text.encode(), "pattern.txt").charts
    found = {
        size.label: [(one.dimension, one.value) for one in size.ranges] for size in chart.sizes
    }
    chest = Dimension.CHEST
    assert found == {
        "S": [(chest, Decimal("83.5"))],
        "M": [(chest, Decimal(93))],
        "L": [(chest, Decimal(103))],
    }


@pytest.mark.parametrize("behind", ["of the zorbo", "", "from the chest to the end: all"])
def test_what_is_no_measure_behind_the_figures_names_nothing(behind: str) -> None:
    text = f"FIO: 10 (12, 13) novelos\n\nTAMANHOS\n\nS, M, L.\n\n83,5 (93, 103) cm {behind}\n"
    assert not read_bytes(text.encode(), "pattern.txt").charts
