"""Markdown gives a sheet for every table with bars."""

from __future__ import annotations

import pytest

from tests.charts.readers.reading import read, rows_of

GUIDE = """\
# Vests

All figures in cm

## Women

| Size | Chest (cm) | Waist |
|:-----|:----------:|------:|
| **8** | 80-84 | 62-66 |
| 10 | 84-88 | |

* measured on the body

Men
---
<!-- inches -->
Size | Chest
--- | ---
S | 36-38
"""


def test_tables_keep_their_headings_and_the_words_around_them() -> None:
    women, men = read(GUIDE, "a.md").sheets
    assert rows_of(women) == [
        ["Size", "Chest (cm)", "Waist"],
        ["8", "80-84", "62-66"],
        ["10", "84-88", ""],
    ]
    assert women.context == ("Vests", "All figures in cm", "Women")
    assert women.notes == ("* measured on the body",)
    assert women.place(1, 1) == "table 1!B2"
    assert women.cells[0, 0].heading
    assert rows_of(men) == [["Size", "Chest"], ["S", "36-38"]]
    assert men.context == ("Vests", "All figures in cm", "Men", "inches")


@pytest.mark.parametrize(
    ("cell", "seen"),
    [
        (r"34\|36", "34|36"),
        ('34-36"<br>86-91 cm', '34-36"\n86-91 cm'),
        ("`86-91`", "86-91"),
        ("*86-91*", "86-91"),
        ("Chest*", "Chest*"),
        ("[86-91](http://x.invalid)", "86-91"),
        ("34<sup>1</sup>/<sub>2</sub>", "34 1/2"),
        ("34&frac12;", "34½"),
        ("~~84~~ 86", "86"),
        (r"\*86", "*86"),
        ("<b>86</b>", "86"),
        ("< 79 cm", "< 79 cm"),
    ],
)
def test_a_cell_is_read_as_a_person_sees_it(cell: str, seen: str) -> None:
    assert read(f"a | b\n--|--\n{cell} | x\n", "a.md").rows()[1] == [seen, "x"]


def test_bullets_are_rows_where_there_is_no_table() -> None:
    found = read("### Vest\n\n* Small - 34”-36”\n* Large - 38”-40”\n", "a.md").sheet
    assert rows_of(found) == [["Small", "34”-36”"], ["Large", "38”-40”"]]
    assert found.context == ("Vest",)


def test_markdown_without_a_chart_asks() -> None:
    assert read("# Vests\n\nAsk us.\n", "a.md").codes == ["no-table"]


def test_lines_are_a_table_where_markdown_has_none() -> None:
    text = "Vest sizes\nSize | Chest |\nS | 34 inch |\nM | 36 inch |\nL | 38 inch |\n"
    found = read(text, "a.md")
    assert rows_of(found.sheet)[-3:] == [["S", "34 inch"], ["M", "36 inch"], ["L", "38 inch"]]
    assert found.codes == []


def test_bars_without_a_rule_below_the_head_are_a_table() -> None:
    sheet = read(
        "# Vest\n\n| Size | S | M |\n| Chest (cm) | 86 | 92 |\n\nLaid flat.\n", "a.md"
    ).sheet
    assert rows_of(sheet) == [["Size", "S", "M"], ["Chest (cm)", "86", "92"]]
    assert sheet.context == ("Vest",)
    assert sheet.notes == ("Laid flat.",)
    assert sheet.place(1, 1) == "table 1!B2"


@pytest.mark.parametrize(
    "text",
    [
        "Home | Vests | Sale\nSizes | Help | Contact\n",
        "| Size | S | M |\n| Chest | 86 | 92 | 98 | 104 |\n",
        "| Size | S | M |\n",
    ],
)
def test_bars_that_are_no_even_rows_of_figures_make_no_table(text: str) -> None:
    assert read(text, "a.md").codes == ["no-table"]


@pytest.mark.parametrize(
    "block",
    [
        "    Gr.\tChest (cm)\tWaist (cm)\n    S\t86\t70\n    M\t\t76\n",
        "\tGr.\tChest (cm)\tWaist (cm)\n\tS\t86\t70\n\tM\t\t76\n",
        "```\nGr.\tChest (cm)\tWaist (cm)\nS\t86\t70\nM\t\t76\n```\n",
        "~~~\nGr.   Chest (cm)   Waist (cm)\nS     86           70\nM                  76\n~~~\n",
    ],
)
def test_a_block_of_code_with_columns_is_a_table(block: str) -> None:
    sheet = read(f"## Vest\n\n{block}\nOn the body.\n", "a.md").sheet
    assert rows_of(sheet) == [
        ["Gr.", "Chest (cm)", "Waist (cm)"],
        ["S", "86", "70"],
        ["M", "", "76"],
    ]
    assert sheet.context == ("Vest",)
    assert sheet.notes == ("On the body.",)


def test_a_hyphen_in_a_cell_of_its_own_is_no_rule_below_a_heading() -> None:
    assert read("33 |\n- |\n35 |\n", "chart.txt").codes == ["no-table"]
    assert read("Chest |\n- |\n86 cm |\n", "chart.txt").rows() == [["Chest"], ["86 cm"]]


def test_a_line_in_bold_letters_heads_what_follows_it() -> None:
    chart = "| Size | Chest |\n|---|---|\n| S | 36-38 |\n"
    men, women = read(f"**Men**\n\n{chart}\n**Women**\n\nCut wider.\n\n{chart}", "a.md").sheets
    assert (men.context, men.notes) == (("Men",), ())
    assert women.context == ("Women", "Cut wider.")


def test_a_sentence_in_bold_letters_is_a_note_of_the_table_above() -> None:
    chart = "| Size | Chest |\n|---|---|\n| S | 36-38 |\n"
    text = f"**Men**\n\n{chart}\n**Cut wider.**\n\n**Women**\n\n{chart}"
    assert [one.notes for one in read(text, "a.md").sheets] == [("Cut wider.",), ()]


def test_what_a_line_in_bold_letters_heads_holds_below_the_next_heading() -> None:
    text = (
        "**How to measure**\n\nFlat, in cm\n\n## Men\n\n| Size | Chest |\n|---|---|\n| S | 48 |\n"
    )
    assert read(text, "a.md").sheet.context == ("How to measure", "Flat, in cm", "Men")


def test_what_a_line_in_bold_letters_heads_holds_below_the_next_one_too() -> None:
    chart = "| Size | Chest |\n|---|---|\n| S | 36-38 |\n"
    text = f"**Men's vests**\n\nMeasure with care.\n\n**Body, in cm**\n\n{chart}"
    found = read(text, "a.md").sheet
    assert found.context == ("Men's vests", "Measure with care.", "Body, in cm")


BARS = "| Size | Chest |\n|---|---|\n| S | 86-90 |\n"


def test_a_name_and_the_line_below_it_in_its_paragraph_stand_above_the_same_table() -> None:
    text = f"Women's vests\nBody measurements\n\n{BARS}\nMen's vests\nBody measurements\n\n{BARS}"
    first, second = read(text, "a.md").sheets
    assert (first.notes, second.context) == ((), ("Men's vests", "Body measurements"))


@pytest.mark.parametrize("between", ["Wash cold.\nMen", "\nWash cold.\nMen", "\nWash cold\n\nMen"])
def test_a_note_before_a_name_stays_with_the_table_above(between: str) -> None:
    first, second = read(f"{BARS}{between}\n\n{BARS}", "a.md").sheets
    assert (first.notes[0].rstrip("."), second.context) == ("Wash cold", ("Men",))


def test_a_long_line_in_capitals_names_the_table_below_it() -> None:
    title = "SIZES OF VESTS, JACKETS AND TROUSERS — MEN (numbers as they are sewn in)"
    first, second = read(f"{BARS}\n{title}\n\n{BARS}", "a.md").sheets
    assert (first.notes, second.context) == ((), (title,))
