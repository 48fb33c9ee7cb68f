"""Names that name several: of a file, a page, a row of tabs; and a thing beside a band."""

from __future__ import annotations

import io

import pytest
from openpyxl import Workbook

from charts.headings.bands import bands_named
from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import table

SIZES = "Size | Chest (cm) | Waist (cm)\n"
SMALL = f"{SIZES}S | 84-88 | 66-70\nM | 88-92 | 70-74\n"
LARGE = f"{SIZES}S | 94-98 | 76-80\nM | 98-102 | 80-84\n"
CHILD = f"{SIZES}104 | 56-58 | 54-55\n116 | 60-62 | 56-57\n"


def web_table(text: str) -> str:
    rows = (row.split("|") for row in text.strip().splitlines())
    cells = ("".join(f"<td>{cell.strip()}</td>" for cell in row) for row in rows)
    return f"<table>{''.join(f'<tr>{row}</tr>' for row in cells)}</table>"


def bands(reading: FileReading) -> list[str | None]:
    return [chart.band for chart in reading.charts]


def page(body: str, name: str = "page.html") -> FileReading:
    return read_bytes(f"<html><body>{body}</body></html>".encode(), name)


@pytest.mark.parametrize(
    ("text", "named"),
    [
        ("women_and_men.html", {"women", "men"}),
        ("Damen und Herren", {"women", "men"}),
        ("sizesKids", {"kids"}),
        ("Unisex vest", {"unisex"}),
        ("Size chart", set()),
        ("Baby blue vest", set()),
        ("Adults and kids", set()),
    ],
)
def test_every_band_of_a_name(text: str, named: set[str]) -> None:
    assert bands_named(text) == named


@pytest.mark.parametrize(
    ("name", "first", "second"),
    [
        ("women_and_men.csv", "Women", "Zorbo"),
        ("women_men.csv", "Women's chest", "Spec of trousers"),
        ("damen-herren.csv", "Damen", "Zorbo Weste"),
        ("femmes_et_hommes.csv", "Tailles femmes", "Gilet Zorbo"),
    ],
)
def test_a_file_for_both_says_nothing_beside_a_table_for_one(
    name: str, first: str, second: str
) -> None:
    assert bands(table(f"{first}\n{SMALL}\n{second}\n{LARGE}", name)) == ["women", None]


def test_a_file_for_both_holds_where_nothing_names_one() -> None:
    assert bands(table(f"Vest\n{SMALL}", "women_and_men.csv")) == ["unisex"]
    text = "Size | Men's US | Women's US | Chest (cm)\nS | 34 | 4 | 84-88\nM | 36 | 6 | 88-92"
    assert bands(table(text, "women_and_men.csv")) == ["unisex"]


def test_a_heading_of_the_page_for_both_says_nothing_beside_a_table_for_one() -> None:
    head = "<h1>Men's and women's sizes</h1>"
    both = f"{head}<h3>Women</h3>{web_table(SMALL)}<h3>Zorbo</h3>{web_table(LARGE)}"
    assert bands(page(both)) == ["women", None]
    assert bands(page(f"{head}<h3>Zorbo</h3>{web_table(LARGE)}")) == ["unisex"]


def test_the_title_of_one_table_for_both_holds_beside_tables_for_one() -> None:
    text = f"Women\n{SMALL}\nMen's and women's vests\n{LARGE}"
    assert bands(table(text)) == ["women", "unisex"]


@pytest.mark.parametrize(
    "name", ["jersey_and_kids.csv", "Vest & Kids.csv", "weste_und_kinder.csv", "gilet-et-enfants"]
)
def test_a_file_for_something_and_kids_is_not_the_kids_in_all_its_tables(name: str) -> None:
    assert bands(table(f"Vest chart\n{LARGE}\nKids' chart\n{CHILD}", name)) == [None, "kids"]


@pytest.mark.parametrize(
    ("name", "band"),
    [
        ("jackets_and_trousers_women.csv", "women"),
        ("womens_jackets_and_trousers.csv", "women"),
        ("boys_and_girls.csv", "kids"),
    ],
)
def test_and_between_things_leaves_the_band(name: str, band: str) -> None:
    assert bands(table(SMALL, name)) == [band]


def test_a_title_for_somebody_unknown_and_a_baby_is_not_the_babys() -> None:
    assert bands(table(f"Mother and baby\n{SMALL}")) == [None]
    assert bands(table(f"Sizes and baby sizes\n{SMALL}")) == ["baby"]


@pytest.mark.parametrize(
    "tabs", ["<div><b>Women</b><b>Men</b></div>", "<p>Women's | Men's</p>", "<p>Damen|Herren</p>"]
)
def test_tabs_in_one_line_are_no_name(tabs: str) -> None:
    assert bands(page(f"{tabs}<h2>Vest</h2>{web_table(SMALL)}")) == [None]


@pytest.mark.parametrize("last", ["Kids", "Kids' vests", "Gloves"])
def test_a_list_of_links_above_the_title_names_nobody(last: str) -> None:
    links = "".join(f"<li>{word}</li>" for word in ("Women's vests", "Men's vests", last))
    assert bands(page(f"<ul>{links}</ul><h2>Vest</h2>{web_table(SMALL)}")) == [None]
    barred = f"<p>Women's vests | Men's vests | {last}</p>"
    assert bands(page(f"{barred}<h2>Vest</h2>{web_table(SMALL)}")) == [None]


def test_the_nearest_of_two_long_names_is_the_tables_own() -> None:
    names = "<p>Men's riding vests</p><p>Women's riding vests</p>"
    assert bands(page(f"{names}{web_table(SMALL)}")) == ["women"]


def test_a_title_for_women_and_men_is_a_name() -> None:
    assert bands(page(f"<h2>Women / Men</h2>{web_table(SMALL)}")) == ["unisex"]


def workbook(name: str, sheets: dict[str, str]) -> FileReading:
    book, out = Workbook(), io.BytesIO()
    book.remove(book.worksheets[0])
    for title, text in sheets.items():
        sheet = book.create_sheet(title)
        for line in text.strip().splitlines():
            sheet.append([cell.strip() for cell in line.split("|")])
    book.save(out)
    return read_bytes(out.getvalue(), name)


@pytest.mark.parametrize(
    ("name", "first", "last", "whose"),
    [
        ("zorbo_coats_kids.xlsx", "Coats", "Kids", None),
        ("zorbo-coats-women.xlsx", "Long coats", "Women", None),
        ("zorbo_coats_kids.xlsx", "Coats", "Zorbo kids", "kids"),
        ("zorbo_coats_kids.xlsx", "Coats", "Vests", "kids"),
        ("zorbo_kids.xlsx", "Coats", "Kids", "kids"),
        ("kids_sizes.xlsx", "Sizes", "Kids", "kids"),
    ],
)
def test_a_file_that_lists_its_sheets_is_for_those_of_one_sheet_only_there(
    name: str, first: str, last: str, whose: str | None
) -> None:
    assert bands(workbook(name, {first: CHILD, last: CHILD}))[0] == whose
