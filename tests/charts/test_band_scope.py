"""How far a word for whom a table is reaches: titles, captions, boxes, columns and comments."""

from __future__ import annotations

import io

import pytest

from charts.dimensions import read_band
from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import table, values

SIZES = "Size | Chest (cm) | Waist (cm)\n"
SMALL = "S | 84-88 | 66-70\nM | 88-92 | 70-74\n"
LARGE = "S | 94-98 | 76-80\nM | 98-102 | 80-84\n"
HIPS = "Size | Hip (cm) | Back (cm)\nS | 90-94 | 40\nM | 94-98 | 41\n"
ROWS = {
    "small": "<tr><td>S</td><td>84-88</td></tr><tr><td>M</td><td>88-92</td></tr>",
    "large": "<tr><td>S</td><td>94-98</td></tr><tr><td>M</td><td>98-102</td></tr>",
}


def web_table(rows: str, attributes: str = "") -> str:
    return f"<table {attributes}><tr><th>Size</th><th>Chest (cm)</th></tr>{ROWS[rows]}</table>"


def bands(reading: FileReading) -> list[str | None]:
    return [chart.band for chart in reading.charts]


@pytest.mark.parametrize(
    ("text", "band"),
    [
        ("GUYS' SIZING", "men"),
        ("Fellas", "men"),
        ("Guys and gals", "unisex"),
        ("Mesdames", "women"),
        ("Muchachas", "girls"),
        ("Garotos", "boys"),
        ("Для мальчикам", "boys"),
        ("Lads' sizes", None),
    ],
)
def test_words_for_whom_a_table_is(text: str, band: str | None) -> None:
    assert read_band(text) == band


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("WOMEN'S SIZING", "ZORBOS' SIZING"),
        ("Women", "Zorbos"),
        ("Size chart for women", "Size chart for zorbos"),
        ("Damen Größen", "Zorben Größen"),
    ],
)
def test_a_file_for_women_says_nothing_of_a_title_like_theirs(first: str, second: str) -> None:
    text = f"{first}\n{SIZES}{SMALL}\n{second}\n{SIZES}{LARGE}"
    assert bands(table(text, "womens_sizes.csv")) == ["women", None]


@pytest.mark.parametrize("second", ["Back lengths", "Vests in short sizes", "Women's vests"])
def test_a_file_for_women_holds_for_a_title_of_another_kind(second: str) -> None:
    text = f"Women's sizing\n{SIZES}{SMALL}\n{second}\n{SIZES}{LARGE}"
    assert bands(table(text, "womens_sizes.csv")) == ["women", "women"]


def test_a_heading_for_women_ends_at_a_caption_like_it() -> None:
    page = f"<h2>Women's sizing</h2>{web_table('small')}<p>Zorbos' sizing</p>{web_table('large')}"
    assert bands(read_bytes(page.encode(), "page.html")) == ["women", None]


def test_a_heading_for_women_holds_over_the_models_under_it() -> None:
    page = f"<h2>Women</h2>{web_table('small')}<h3>Zorbo</h3>{web_table('large')}"
    assert bands(read_bytes(page.encode(), "page.html")) == ["women", "women"]


@pytest.mark.parametrize("model", ["Zorbo", "Plus"])
def test_a_heading_of_one_possessive_holds_over_the_models_under_it(model: str) -> None:
    page = f"<h2>Women's</h2>{web_table('small')}<h3>{model}</h3>{web_table('large')}"
    assert bands(read_bytes(page.encode(), "page.html")) == ["women", "women"]


def test_a_heading_for_women_ends_where_a_line_below_it_names_men() -> None:
    lines = ("<h2>Women's</h2>", "<p>Men</p>", "<p>Tall</p>")
    page = "".join(f"{line}{web_table('small')}" for line in lines)
    assert bands(read_bytes(page.encode(), "page.html")) == ["women", "men", None]


def test_the_heading_above_a_table_beats_the_id_of_its_box() -> None:
    page = f"<h3>Men's sizes of all our vests</h3>{web_table('large', 'class=womens-size')}"
    assert bands(read_bytes(page.encode(), "page.html")) == ["men"]


def test_the_heading_of_the_table_before_and_the_id_of_this_one_name_nobody() -> None:
    page = f"<h3>Men</h3>{web_table('large')}{web_table('small', 'class=womens-size')}"
    assert bands(read_bytes(page.encode(), "page.html")) == ["men", None]


def test_a_box_that_names_men_and_women_says_it_of_no_table() -> None:
    page = f'<div class="womens-and-mens"><h3>Vest</h3>{web_table("large")}</div>'
    assert bands(read_bytes(page.encode(), "page.html")) == [None]


def test_columns_of_nobody_known_are_nobodys_who_is_known() -> None:
    head = "".join(f"<th colspan=2>{who}</th>" for who in ("Women", "Girls", "Zorbos"))
    names = "<th>Chest (cm)</th><th>Waist (cm)</th>" * 3
    row = "<td>84-88</td><td>66-70</td><td>74-78</td><td>60-64</td><td>94-98</td><td>76-80</td>"
    page = (
        f"<table><tr><th>Size</th>{head}<th>Height (cm)</th></tr><tr><th></th>{names}<th></th></tr>"
        f"<tr><td>S</td>{row}<td>160-170</td></tr></table>"
    )
    found = values(read_bytes(page.encode(), "page.html"))
    assert found["women S chest"] == (84, 88)
    assert found["S chest"] == (94, 98)
    assert found["girls S height"] == (160, 170)


def test_a_comment_like_one_for_women_ends_their_rows() -> None:
    from openpyxl import Workbook
    from openpyxl.comments import Comment

    book = Workbook()
    sheet = book.active
    assert sheet is not None
    for row in (["Size", "Chest (cm)"], ["XS", "80-84"], ["S", "84-88"], ["L", "94-98"]):
        sheet.append(row)
    sheet["A2"].comment = Comment("Women", "shop")
    sheet["A4"].comment = Comment("Zorbos", "shop")
    out = io.BytesIO()
    book.save(out)
    found = values(read_bytes(out.getvalue(), "chart.xlsx"))
    assert list(found) == ["women XS chest", "women S chest", "L chest"]


def test_rows_for_nobody_known_are_not_in_the_chart_of_the_women() -> None:
    found = values(
        table(
            "Gender | Size | Chest (cm)\n"
            "Women | S | 84-88\n | M | 88-92\nZorbos | S | 94-98\n | M | 98-102"
        )
    )
    assert found["women S chest"] == (84, 88)
    assert found["S chest"] == (94, 98)
    assert found["women M chest"] == (88, 92)
    assert len(found) == 4


@pytest.mark.parametrize(
    ("label", "band"), [("Adult S", None), ("Men S", None), ("Youth S", "kids"), ("S", "kids")]
)
def test_a_file_for_kids_is_not_for_the_sizes_of_adults(label: str, band: str | None) -> None:
    text = f"Size | Chest (cm)\n128 | 64-66\n{label} | 84-88"
    assert bands(table(text, "kids.csv")) == [band]


def test_sizes_that_say_men_are_not_the_womens() -> None:
    assert bands(table("Women's\nSize | Chest (cm)\nMen S | 94-98\nMen M | 98-102")) == [None]


GROUPED = (
    "<table><tr><th rowspan=2>Size</th><th colspan=2>{}</th><th colspan=2>{}</th></tr>"
    "<tr><th>Bust (cm)</th><th>Hip (cm)</th><th>Height (cm)</th><th>Waist (cm)</th></tr>"
    "<tr><td>S</td><td>84-88</td><td>90-94</td><td>170-176</td><td>76-80</td></tr>"
    "<tr><td>M</td><td>88-92</td><td>94-98</td><td>174-180</td><td>80-84</td></tr></table>"
)


@pytest.mark.parametrize("stranger", ["Zorbos'", "Fritz", "K7"])
def test_a_column_under_a_name_beside_bands_is_not_theirs(stranger: str) -> None:
    found = values(read_bytes(GROUPED.format("Ladies'", stranger).encode(), "page.html"))
    assert set(found) == {
        f"{band}{size} {name}"
        for band, names in (("women ", ("chest", "hip")), ("", ("height", "waist")))
        for size in "SM"
        for name in names
    }


@pytest.mark.parametrize("shared", ["Body", "Measurements (cm)", "Garment"])
def test_a_column_under_a_word_of_the_trade_is_shared_by_the_bands(shared: str) -> None:
    found = values(read_bytes(GROUPED.format("Ladies'", shared).encode(), "page.html"))
    assert found["women S waist"] == (76, 80)


def test_the_sizes_of_somebody_unknown_beside_the_womens_are_not_the_womens() -> None:
    rows = "1 | 44 | 34 | 80-84\n2 | 46 | 36 | 84-88"
    assert bands(table(f"Size | EU zorbos | EU women | Chest (cm)\n{rows}")) == [None]
    assert bands(table(f"Size | UK | EU women | Chest (cm)\n{rows}")) == ["women"]


@pytest.mark.parametrize("second", ["To fit guide", "", "Measurements"])
def test_the_first_of_two_titles_at_the_head_of_a_sheet_is_the_sheets(second: str) -> None:
    text = f"Women's guide\nSpecifications\n{SIZES}{SMALL}\n{second}\n{SIZES}{LARGE}"
    assert bands(table(text)) == ["women", "women"]


@pytest.mark.parametrize("second", ["Zorbo", "Gloves", "Men"])
def test_the_name_of_a_sheet_is_none_of_a_table_with_its_own(second: str) -> None:
    text = f"Women's guide\nSpecifications\n{SIZES}{SMALL}\n{second}\n{SIZES}{LARGE}"
    assert bands(table(text))[1] != "women"


def test_the_name_of_a_sheet_ends_at_a_table_for_others() -> None:
    first, last = f"Women's guide\nSizes\n{SIZES}{SMALL}", f"To fit guide\n{SIZES}{LARGE}"
    text = f"{first}\nMen's sizes\n{SIZES}{LARGE}\n{last}"
    assert bands(table(text)) == ["women", "men", None]


def test_a_band_holds_for_a_table_right_below_without_a_name() -> None:
    text = f"Girls' sizes\n{SIZES}{SMALL}{HIPS}"
    assert set(bands(table(text))) == {"girls"}


def test_a_band_does_not_hold_over_a_blank_row() -> None:
    text = f"Girls' sizes\n{SIZES}{SMALL}\n{HIPS}"
    assert bands(table(text)) == ["girls", None]
