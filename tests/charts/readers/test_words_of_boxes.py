"""Whose chart and in which unit: said in comments before a page, in labels and data of boxes."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from tests.charts.read_text import questions

ROWS = (
    "<tr><th>Size<th>Chest<th>Waist</tr><tr><td>S<td>84-88<td>68-72</tr>"
    "<tr><td>M<td>88-92<td>72-76</tr><tr><td>L<td>92-96<td>76-80</tr>"
)
TABLE = f"<table>{ROWS}</table>"
SAID = {
    "a comment before the page": f"<!-- WOMEN, in cm -->\n<html><body>{TABLE}</body></html>",
    "behind the document type": f"<!DOCTYPE html>\n<!-- WOMEN -->\n<html>{TABLE}<p>All in cm.</p>",
    "a comment before a bare table": f"<!-- WOMEN (cm) -->{TABLE}",
    "a comment in the head": f"<html><head><!-- Women: cm --></head><body>{TABLE}</body></html>",
    "two comments": f"<!-- WOMEN --><!-- in cm --><html><body>{TABLE}</body></html>",
    "the label of a box": f"<section aria-label='Women, all in cm'>{TABLE}</section>",
    "the label of the table": f"<table aria-label='Women (cm)'>{ROWS}</table>",
    "the summary": f'<table summary="Women\'s sizes in cm">{ROWS}</table>',
    "the caption": f"<table><caption>Women - cm</caption>{ROWS}</table>",
    "the data of a box": f"<div data-title=Women data-unit=cm>{TABLE}</div>",
    "the data of the table": f"<table data-gender=women data-units=cm>{ROWS}</table>",
    "the id of a box": f"<div id=women-cm>{TABLE}</div>",
    "a folded part": f"<details><summary>Women (cm)</summary>{TABLE}</details>",
    "the title": f"<html><head><title>Women in cm</title></head><body>{TABLE}</body></html>",
}


@pytest.mark.parametrize("page", SAID.values(), ids=SAID.keys())
def test_the_band_and_the_unit_hold(page: str) -> None:
    reading = read_bytes(page.encode(), "page.html")
    assert [chart.band for chart in reading.charts] == ["women"]
    assert questions(reading) == []


def test_a_comment_before_the_page_holds_for_all_its_tables() -> None:
    page = f"<!-- KIDS --><html><body><h2>Vest (cm)</h2>{TABLE}<h2>Hat (cm)</h2>{TABLE}</body>"
    reading = read_bytes(page.encode(), "page.html")
    assert [chart.band for chart in reading.charts] == ["kids", "kids"]


def test_a_code_in_the_data_of_a_box_says_nothing() -> None:
    page = f"<div data-name=x17 data-label='ab:cd' class='in fade'>{TABLE}</div>"
    reading = read_bytes(page.encode(), "page.html")
    assert [chart.band for chart in reading.charts] == [None]
    assert questions(reading) == ["unit-missing"]


def test_the_links_of_a_page_name_the_boxes_they_lead_to() -> None:
    links = '<ul class="nav"><li><a href="#w">Women</a></li><li><a href="#m">Men</a></li></ul>'
    reading = read_bytes(
        f'{links}<div id="w">{TABLE}</div><div id="m">{TABLE.replace("84", "94")}</div>'.encode(),
        "page.html",
    )
    assert [chart.band for chart in reading.charts] == ["women", "men"]
    assert "label-repeated" not in questions(reading)


def test_a_link_that_says_nothing_names_no_box() -> None:
    page = f'<a href="#a">Back to top</a><a href="#">Women</a><div id="a">{TABLE}</div>'
    reading = read_bytes(page.encode(), "page.html")
    assert [chart.band for chart in reading.charts] == [None]


def rows_of_boxes(*rows: str) -> str:
    cells = ("".join(f"<div>{cell}</div>" for cell in row.split("|")) for row in rows)
    return "".join(f'<div class="r">{row}</div>' for row in cells)


def test_a_heading_between_two_tables_of_boxes_parts_them() -> None:
    women = rows_of_boxes("Size|36|38", "Chest (cm)|78-83|83-88")
    men = rows_of_boxes("Size|36|38", "Chest (cm)|86-91|91-96")
    page = f"<body><h3>Women</h3><div>{women}</div><h3>Men</h3><div>{men}</div></body>"
    reading = read_bytes(page.encode(), "page.html")
    assert [chart.band for chart in reading.charts] == ["women", "men"]
    assert [chart.place for chart in reading.charts] == ["table 1!A1:C2", "table 2!A1:C2"]
    assert questions(reading) == []


def test_a_box_between_rows_of_boxes_heads_the_rows_below() -> None:
    head, women, men = (
        rows_of_boxes("Size|Chest (cm)|Waist (cm)"),
        rows_of_boxes("S|78-83|62-66", "M|83-88|67-71"),
        rows_of_boxes("S|86-91|74-78", "M|91-96|79-83"),
    )
    page = f"<section>{head}<div>Women</div>{women}<div>Men</div>{men}</section>"
    reading = read_bytes(page.encode(), "page.html")
    assert [chart.band for chart in reading.charts] == ["women", "men"]
    assert questions(reading) == []
