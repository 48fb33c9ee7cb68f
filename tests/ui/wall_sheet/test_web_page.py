"""The wall sheet as a web page: whole in itself, every word in it text, known again as ours."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

import pytest
from lxml import etree

from charts.in_house import InHouseChart
from charts.wording import LANGUAGES, Wording
from charts.writers.own_files import is_ours
from tests.ui.wall_sheet.conftest import Draw
from ui.wall_sheet.ink import Page
from ui.wall_sheet.web_page import web_page_bytes


def pictures(page: bytes) -> list[etree._Element]:
    found = re.findall(r"<svg.*?</svg>", page.decode(), re.DOTALL)
    return [etree.fromstring(each.encode()) for each in found]


def said(picture: etree._Element) -> list[str]:
    return [each.text or "" for each in picture.iter("{*}text")]


@pytest.fixture
def pages(printed: Draw, chart: InHouseChart) -> tuple[Page, ...]:
    return printed(chart)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_page_is_a_picture_whose_words_are_words(
    printed: Draw, chart: InHouseChart, language: str
) -> None:
    wording = Wording(language)
    pages = printed(chart, wording=wording)
    found = pictures(web_page_bytes(pages, wording))
    assert [said(picture) for picture in found] == [list(page.texts) for page in pages]


def test_nothing_is_fetched_from_anywhere(pages: tuple[Page, ...]) -> None:
    text = web_page_bytes(pages, Wording("en")).decode()
    links = re.findall(r"""(?:src|href)="([^"]*)"|url\(([^)]{1,9})""", text)
    assert links
    assert all((a or b).startswith(("data:font", "#page")) for a, b in links)
    assert "<script" not in text


def test_a_name_stands_once_and_points_to_its_own_page(pages: tuple[Page, ...]) -> None:
    text = web_page_bytes(pages, Wording("en")).decode()
    names = re.findall(r'id="([^"]+)"', text)
    assert len(names) == len(set(names)) > 0
    assert set(re.findall(r"url\(#([^)]+)\)", text)) <= set(names)


def test_it_prints_a_page_a_sheet_in_the_size_of_the_paper(pages: tuple[Page, ...]) -> None:
    text = web_page_bytes(pages, Wording("en")).decode()
    assert "@page { size: 1190.6pt 841.9pt; margin: 0 }" in text
    assert "break-after: page" in text


def test_it_is_known_as_ours(pages: tuple[Page, ...], tmp_path: Path) -> None:
    path = tmp_path / "wall sheet.html"
    path.write_bytes(web_page_bytes(pages, Wording("de")))
    assert is_ours(path)
    assert b'<html lang="de">' in path.read_bytes()


def test_what_a_supplier_wrote_cannot_become_markup(printed: Draw, chart: InHouseChart) -> None:
    rows = tuple(replace(row, model="<script>x</script>") for row in chart.rows[:1])
    page = web_page_bytes(printed(replace(chart, rows=rows)), Wording("en"))
    assert b"<script" not in page
    assert "<script>x</script>" in said(pictures(page)[0])
