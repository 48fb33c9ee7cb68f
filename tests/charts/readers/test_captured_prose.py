"""Lines of a label, a dash and figures; whole tables in one line; what came into no table."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from charts.choices import answers, choices
from charts.importer import read_bytes, read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.prose import prose_table
from charts.schema import Dimension
from tests.charts.read_text import values
from tests.charts.readers.reading import paste

_VESTS = (
    "Infant – 8-30 lbs.\n\nYouth – 50-90 lbs. 26-30” Chest\n\nAdult XL - 41-61” Chest\n"
    "Children under age 13 must wear one.\n"
)


def test_a_mass_without_a_name_stands_beside_a_girth_with_one() -> None:
    found = paste(_VESTS)
    assert found.rows()[:4] == [
        ["", "", "Chest"],
        ["Infant", "8-30 lbs", ""],
        ["Youth", "50-90 lbs", "26-30”"],
        ["Adult XL", "", "41-61”"],
    ]
    (chart,) = read_pasted(_VESTS).charts
    measured = [[one.dimension for one in size.ranges] for size in chart.sizes]
    assert measured == [[Dimension.WEIGHT], [Dimension.WEIGHT, Dimension.CHEST], [Dimension.CHEST]]


def test_a_girth_without_a_name_is_not_put_beside_another_measure() -> None:
    found = paste("Infant – 8-30 cm\nYouth – 50-90 cm; Chest 26\n")
    assert found.sheet.columns == 1


def test_ranges_are_no_label_with_a_dash_behind() -> None:
    assert paste('26 - 32" 33 - 38" 39-44"\n66 - 81cm 82 - 96cm 97-112cm\n').sheet.columns == 1


def test_figures_before_their_names_are_parted_by_commas() -> None:
    text = "- Taglia 42: 88 cm petto, 70 cm vita\n- Taglia 44: 92 cm petto, 74 cm vita\n"
    rows = [["Taglia", "petto", "vita"], ["42", "88 cm", "70 cm"], ["44", "92 cm", "74 cm"]]
    assert paste(text).rows() == rows


@pytest.mark.parametrize(
    ("text", "rows"),
    [
        (
            "Size chart (body length / chest laid flat, inches): XS 26½/19 · S 27½/20 · M 28/21.",
            [["Size chart (body length / chest laid flat, inches)", "", ""],
             ["", "body length", "chest laid flat"],
             ["XS", "26½", "19"], ["S", "27½", "20"], ["M", "28", "21"]],
        ),
        (
            "Brust / Taille (cm): S 84-90/70-76, M 90-96/76-82",
            [["Brust / Taille (cm)", "", ""], ["", "Brust", "Taille"],
             ["S", "84-90", "70-76"], ["M", "90-96", "76-82"]],
        ),
    ],
)  # fmt: skip
def test_one_line_that_is_a_whole_table(text: str, rows: list[list[str]]) -> None:
    assert paste(text).rows() == rows


@pytest.mark.parametrize(
    "text",
    [
        "Size chart (length / chest): XS 26½/19 · S 27½ · M 28/21",  # a figure is missing
        "Black stock at read time: XS 18094 · S 18543 · M 24574",  # pieces, no measurements
        "Colours (black / white): S 12/14 · M 10/9",  # nothing is measured
    ],
)
def test_what_only_looks_like_a_table_in_one_line_stays_a_line(text: str) -> None:
    assert paste(text).sheet.columns == 1


_LEFT = "Size\tChest\nS\t84-90 cm\nM\t90-96 cm\n\nTaille\n70-76\n76-82\n82-88\n88-94\n"


def test_figures_that_came_into_no_table_are_asked_about_once_and_can_be_closed() -> None:
    reading = read_bytes(_LEFT.encode(), "-")
    (question,) = [one for one in reading.findings if one.code == "text-order"]
    assert question.place == "line 6"
    (choice,) = choices(question, reading)
    said = answers(choice, question, "R. Foss", date(2027, 2, 1))
    again = read_bytes(_LEFT.encode(), "-", answers=said)
    assert [one.settled is not None for one in again.findings if one.code == "text-order"] == [True]


def test_a_telephone_number_and_a_page_number_are_no_lost_figures() -> None:
    text = _LEFT.partition("Taille")[0] + "Tel 0123 4567 8901\n12.05.2027\n1 / 5\nPage 3\n"
    assert "text-order" not in {one.code for one in read_pasted(text).findings}


def test_a_table_found_among_the_lines_takes_back_that_there_is_none() -> None:
    text = "- Taglia 42: 88 cm di petto\n- Taglia 44: 92 cm di petto\n"
    reading = read_pasted(f"Prendere le misure.\n{text}Sono 4 i cm di differenza.\n")
    assert reading.charts
    assert "no-table" not in {one.code for one in reading.findings}


def test_a_plus_before_a_figure_is_the_figures_own() -> None:
    text = "Talla S: Cintura 66-74 cm | Peso hasta 60 kg\nTalla M: Cintura 74-84 cm | Peso +60 kg\n"
    (chart,) = read_pasted(text).charts
    weights = [value for size in chart.sizes for value in size.ranges if value.unit == "kg"]
    assert [(one.kind.value, one.low, one.high) for one in weights] == [
        ("at_most", None, 60),
        ("at_least", 60, None),
    ]


_JACKETS = "Jacket Size\nS (Up to 55kg / 121lbs)\nM (55kg to 80kg / 121-176lbs)\nXL (Over 80kg)\n"


def test_what_stands_in_brackets_behind_a_size_with_its_unit_is_its_value() -> None:
    rows = paste(f"Safety\n{_JACKETS}Name\n").rows()
    assert rows[2:5] == [
        ["S", "Up to 55kg / 121lbs"],
        ["M", "55kg to 80kg / 121-176lbs"],
        ["XL", "Over 80kg"],
    ]
    (chart,) = read_pasted(_JACKETS).charts
    measured = [[one.dimension for one in size.ranges] for size in chart.sizes]
    assert measured == [[Dimension.WEIGHT]] * 3


@pytest.mark.parametrize(
    "text", ["S (6-8)\nM (10-12)\nL (14-16)\n", "Vest (20 kg)\nBoots (3 kg)\n"]
)
def test_a_second_name_or_a_parcel_in_brackets_is_no_value(text: str) -> None:
    assert paste(text).sheet.columns == 1


_TWO_LISTS = """\
Sizes

To Fit Bust:

- Small: 34” (86 cm)
- Medium: 38” (96.5 cm)

Finished Bust / Back Length:

- Small: 36” (91.4 cm) / 21” (53.3 cm)
- Medium: 40” (101.6 cm) / 21 ½” (54.6 cm)
"""


def test_a_list_of_two_measures_by_a_stroke_is_a_row_for_each() -> None:
    found = paste(_TWO_LISTS)
    assert found.rows()[1:] == [
        ["", "Small", "Medium"],
        ["To Fit Bust:", "34” (86 cm)", "38” (96.5 cm)"],
        ["Finished Bust", "36” (91.4 cm)", "40” (101.6 cm)"],
        ["Finished Back Length", "21” (53.3 cm)", "21 ½” (54.6 cm)"],
    ]
    reading = read_pasted(_TWO_LISTS)
    chests = [
        (size.label, one.basis.value, one.value, one.place)
        for size in reading.charts[0].sizes
        for one in size.ranges
        if one.dimension is Dimension.CHEST
    ]
    assert chests == [
        ("Small", "body", 86, "line 5"),
        ("Small", "finished", Decimal("91.4"), "line 10"),
        ("Medium", "body", Decimal("96.5"), "line 6"),
        ("Medium", "finished", Decimal("101.6"), "line 11"),
    ]


def test_of_two_measures_by_a_stroke_the_first_word_says_for_both_what_is_measured() -> None:
    reading = read_pasted(_TWO_LISTS)
    backs = {
        one.basis.value
        for size in reading.charts[0].sizes
        for one in size.ranges
        if one.dimension is Dimension.BACK_LENGTH
    }
    assert backs == {"finished"}
    for name in ("Body Waist", "Height"):
        names = [row[0] for row in paste(_TWO_LISTS.replace("Back Length", name)).rows()]
        assert name in names


def test_an_end_left_open_with_a_second_unit_in_brackets_goes_on_with_its_list() -> None:
    small = "• Small – 40 to 45 cm (16 to 17 ½ inches)"
    text = f"Back length\n\n{small}\n\n• Large – 46 and up (18 inches and up)\n"
    assert paste(text).rows()[-1] == ["Large", "46 and up (18 inches and up)"]


@pytest.mark.parametrize("value", ["34 in / 86 cm", "34-36 in", "34 in / 20 in / 60 in"])
def test_two_units_or_other_counts_by_a_stroke_are_no_two_measures(value: str) -> None:
    text = f"Bust / Back Length:\nS: {value}\nM: {value}\n\nWaist / Hip:\nS: {value}\nM: {value}\n"
    assert ["Bust / Back Length:", value, value] in paste(text).rows()


def test_rows_of_one_line_may_have_a_title_before_and_a_note_behind() -> None:
    text = 'Size Guide:10 = 30-32" chest.12 = 32-34" chest.14 = 34-36" chest.A guide only.'
    assert paste(text).rows() == [
        ["Size Guide:", ""],
        ["", "chest"],
        ["10", '30-32"'],
        ["12", '32-34"'],
        ["14", '34-36"'],
        ["A guide only.", ""],
    ]
    assert paste(f"{text[:-1]}, up to 38 inches.").codes == ["no-table"]


def test_a_measure_named_in_brackets_behind_the_size_is_a_column() -> None:
    found = paste("Robe sizes\n\nSmall (Height < 5'4\")\nMedium (Height 5'4\" - 5'9\")\n")
    assert found.rows()[1:] == [
        ["", "Height"],
        ["Small", "< 5'4\""],
        ["Medium", "5'4\" - 5'9\""],
    ]
    assert paste("Small (Order 54)\nMedium (Order 59)\n").codes == ["no-table"]


@pytest.mark.parametrize(
    "text",
    [
        "- Kids S (chest: 62cm, length 44cm)\n- Kids M (chest: 68cm, length 47cm)\n",
        "Kids S - chest 62 cm - length 44 cm\nKids M - chest 68 cm - length 47 cm\n",
        "In cm:\nKids S, chest 62, length 44\nKids M, chest 68, length 47\n",
        "Kids S → chest 62 cm, length 44 cm\nKids M → chest 68 cm, length 47 cm\n",
    ],
)
def test_each_sign_between_a_size_and_its_measures_parts_them(text: str) -> None:
    assert values(read_pasted(text))["kids M chest"] == 68


def test_abbreviations_end_no_value_of_a_series() -> None:
    found = values(read_pasted("Brustumfang: S ca. 88 cm, M ca. 94 cm, L ca. 112 cm.\n"))
    assert found == {"S chest": 88, "M chest": 94, "L chest": 112}


def test_words_in_brackets_that_are_no_measures_are_no_row() -> None:
    text = "Kids S (colour: 62 red, weight in stock 44)\nKids M (colour: 68 red, weight 47)\n"
    assert prose_table(numbered(text)) is None


def test_a_code_of_the_country_stays_with_its_size() -> None:
    assert paste("UK 8: chest 82, waist 64\nUK 10: chest 86, waist 68\n").rows()[1][0] == "UK 8"


def test_the_beginning_of_a_range_is_no_size_with_a_dash_behind() -> None:
    assert paste("100 - 110 cm\n15 - 20 kg\n").rows() == [["100 - 110 cm"], ["15 - 20 kg"]]
    assert paste("38 - 84 cm\n40 - 88 cm\n").rows() == [["38", "84 cm"], ["40", "88 cm"]]


def test_a_measure_behind_each_size_is_no_part_of_its_name() -> None:
    lines = ["XS chest: 84 cm, waist: 70 cm", "MD chest: 92 cm, waist: 78 cm"]
    lines.append("2X chest: 108 cm, waist: 94 cm")
    assert paste("\n".join(lines)).rows() == [
        ["", "chest", "waist"],
        ["XS", "84 cm", "70 cm"],
        ["MD", "92 cm", "78 cm"],
        ["2X", "108 cm", "94 cm"],
    ]


@pytest.mark.parametrize("bracket", ["(Length: 32)", "(length 32)", "(waist: 32)"])
def test_one_more_measure_in_brackets_is_a_column(bracket: str) -> None:
    text = f"Small: Chest 46″ {bracket}\n\nMedium: Chest 48″ {bracket.replace('2', '3')}\n"
    rows = paste(text).rows()
    assert [row[0] for row in rows] == ["", "Small", "Medium"]
    assert [row[1:] for row in rows[1:]] == [["46″", "32"], ["48″", "33"]]


def test_another_unit_or_a_remark_in_brackets_is_no_further_measure() -> None:
    rows = paste("Small: Chest 46″ (117 cm)\nMedium: Chest 48″ (122 cm)\n").rows()
    assert [len(row) for row in rows] == [2, 2, 2]


def test_a_value_of_two_ends_in_two_units_each_is_cut_at_no_comma() -> None:
    text = (
        "Infant Weight: less than or equal to 33 lbs/15 kg\n"
        "Child Weight: Over 33 lbs/15 kg, less than or equal to 55 lbs/25 kg\n"
        "Adult Weight: Greater than 55 lbs/25 kg\n"
    )
    assert values(read_pasted(text)) == {
        "Infant weight": (None, 15),
        "Child weight": (15, 25),
        "Adult weight": (25, None),
    }
