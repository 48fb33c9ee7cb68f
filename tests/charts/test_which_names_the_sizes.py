"""Which column names the sizes, where several could and where one of them has no heading."""

from __future__ import annotations

import pytest

from charts.schema import FileReading
from tests.charts.read_text import asked_at, questions, table, values

HEIGHTS = """
Size (height in cm) | EU | Chest (cm) | Hip (cm)
110 | 34 | 59 | 63
116 | 36 | 61 | 65
122 | 38 | 63 | 68
"""
AGED = """
Größe (Körpergröße in cm) | Brustumfang (cm) | US | Hüftumfang (cm)
110 | 59 | 4 | 63
116 | 61 | 6 | 65
122 | 63 | 8 | 68
"""
NAMELESS = """
Size (height in cm) | Chest (cm) | | Hip (cm)
110 | 59 | 70 | 63
116 | 61 | 74 | 65
122 | 63 | 78 | 68
"""
LETTERED = """
Chest size (in) | Size | Waist (in)
34 | S | 28
36 | M | 30
38 | L | 32
"""
HALVES = """
Chest (cm) | | Waist (cm)
84 | 88 | 66
88 | 92 | 70
92 | 96 | 74
"""
SLEEVES = """
Short sleeve jersey
Size | Chest (cm) | | Waist (cm)
S | 84 | 40 | 66
M | 88 | 42 | 70
L | 92 | 44 | 74
"""
YOUTH = """
Size | US | Chest (cm) | Waist (cm)
Youth S | 6 | 60 | 55
Youth M | 8 | 64 | 58
Youth L | 10 | 68 | 61
"""
BANDS = """
Size | EU | Chest (cm) | Waist (cm)
Women | 36 | 84 | 66
Women | 38 | 88 | 70
Men | 48 | 96 | 84
Men | 50 | 100 | 88
"""


STOCK = """
Measure (cm) | S | M | L | Stock
Chest | 84 | 88 | 92 | 49
Waist | 66 | 70 | 74 | 47
Hip | 90 | 94 | 98 | 46
"""
LENGTHS = """
Length | Inseam (cm) | Army size
Short | 71 | I-II
Regular | 77 | III-IV
Long | 83 | V-VI
"""
KNOWN = """
Length | Inseam (cm) | Size
Short | 71 | 24
Regular | 77 | 48
Long | 83 | 94
"""


def labels(reading: FileReading) -> list[str | None]:
    return [size.label for chart in reading.charts for size in chart.sizes]


@pytest.mark.parametrize("text", [HEIGHTS, AGED])
def test_a_measure_under_a_word_for_size_comes_before_a_system_of_sizes(text: str) -> None:
    reading = table(text)
    assert questions(reading) == []
    assert labels(reading) == ["110", "116", "122"]
    assert values(reading)["116 height"] == 116


def test_the_other_system_is_kept_beside_it() -> None:
    (chart,) = table(HEIGHTS).charts
    also = [(one.label, one.heading) for size in chart.sizes for one in size.also]
    assert also == [("34", "EU"), ("36", "EU"), ("38", "EU")]


def test_a_column_without_a_heading_is_no_name_beside_it_and_is_asked_about() -> None:
    reading = table(NAMELESS)
    assert labels(reading) == ["110", "116", "122"]
    assert questions(reading) == ["heading-unknown"]


def test_letters_under_a_word_for_size_stay_the_names() -> None:
    reading = table(LETTERED)
    assert labels(reading) == ["S", "M", "L"]
    assert values(reading)["S chest"] == pytest.approx(34 * 2.54)


def test_figures_without_a_heading_between_measures_name_no_size_unasked() -> None:
    reading = table(HALVES)
    assert questions(reading) == ["columns-shifted"]


def test_letters_without_a_heading_behind_measures_are_sizes() -> None:
    reading = table("Chest (cm) | | Waist (cm)\n84 | S | 66\n88 | M | 70\n92 | L | 74\n")
    assert questions(reading) == []
    assert labels(reading) == ["S", "M", "L"]


def test_a_title_names_no_column_beside_columns_that_are_named() -> None:
    reading = table(SLEEVES)
    assert "S arm_length" not in values(reading)
    assert questions(reading) == ["heading-unknown"]


def test_a_title_names_a_column_that_stands_alone() -> None:
    reading = table("Inseam in cm\nSize |\nS | 72\nM | 74\nL | 76\n")
    assert values(reading)["M inseam"] == 74


def test_sizes_with_a_word_for_who_wears_them_stay_sizes() -> None:
    assert labels(table(YOUTH)) == ["Youth S", "Youth M", "Youth L"]


def test_words_for_who_wears_it_alone_are_no_sizes() -> None:
    reading = table(BANDS)
    assert [chart.band for chart in reading.charts] == ["women", "men"]
    assert labels(reading) == ["36", "38", "48", "50"]


def test_what_a_shop_counts_is_no_size_among_sizes() -> None:
    reading = table(STOCK)
    assert questions(reading) == []
    assert labels(reading) == ["S", "M", "L"]


def test_a_second_name_of_a_length_is_no_size() -> None:
    (chart,) = table(LENGTHS).charts
    assert [(one.label, one.length) for one in chart.sizes] == [
        (None, "Short"),
        (None, "Regular"),
        (None, "Long"),
    ]
    assert [one.label for size in chart.sizes for one in size.also] == ["I-II", "III-IV", "V-VI"]


def test_known_sizes_beside_lengths_stay_sizes() -> None:
    assert labels(table(KNOWN)) == ["24", "48", "94"]


def test_the_same_size_spelt_in_two_ways_is_asked_about() -> None:
    reading = table("Size | Chest (cm)\nXL | 106\nXXL | 112\n2XL | 116\n3XL | 122\n")
    assert questions(reading) == ["label-repeated"]
    assert asked_at(reading, "label-repeated") == ["B3", "B4"]


def test_a_dash_names_no_size_where_another_column_names_all() -> None:
    reading = table("EU | UK | Chest (cm)\n- | 4 | 78\n34 | 6 | 82\n36 | 8 | 86\n")
    assert labels(reading) == ["4", "6", "8"]


PARTED = """
 | | Obwód
Nr | Wymiar | Wzrost | 88, 92 | 96, 100 | 104, 108
Kurtka (rys. 2-4)
1 | Plecy | 158, 164 | 73,0 | 74,0 | 75,0
2 | Barki | - | 44,4 | 47,2 | 50,0
4 | Przód | - | 24,1 | 25,3 | 26,5
"""


def test_heads_that_a_lone_line_parts_from_their_columns_are_asked_about_once() -> None:
    reading = table(PARTED)
    found = [one for one in reading.findings if one.code == "text-order"]
    assert [one.values["text"] for one in found] == ["Nr"]
    assert [one.place for one in found] == ["A2:F6"]


def test_a_table_with_headings_of_its_own_is_not_asked_for_a_row_above_it() -> None:
    reading = table(
        "Vest | Alpha | Beta | Gamma\nThe vest\nSize | Chest (cm)\nS | 88\nM | 96\nL | 104"
    )
    assert "text-order" not in questions(reading)
