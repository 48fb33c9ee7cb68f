"""The web page: the same table, nothing fetched, nothing of a supplier's text taken for markup."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

import pytest

from charts.in_house import InHouseChart
from charts.wording import Wording
from charts.writers.web_page import web_page_bytes

if TYPE_CHECKING:
    from lxml.html import HtmlElement


@pytest.fixture
def page(chart: InHouseChart) -> HtmlElement:
    from lxml.html import document_fromstring

    return document_fromstring(web_page_bytes(chart, Wording("en")).decode())


def test_every_row_of_the_chart_is_a_row_of_the_page(
    page: HtmlElement, chart: InHouseChart
) -> None:
    assert len(page.xpath("//table[1]/tbody/tr")) == len(chart.rows)


def test_the_makers_figures_and_the_converted_ones_are_told_apart(page: HtmlElement) -> None:
    (row,) = page.xpath("//table[1]/tbody/tr[2]")
    assert "36–39" in row.xpath("td[contains(@class, 'published')]/text()")
    assert "91.5–99" in row.xpath("td[contains(@class, 'converted')]/text()")


def test_heads_and_cells_have_the_same_number_of_columns(page: HtmlElement) -> None:
    spans = [int(head.get("colspan", "1")) for head in page.xpath("//table[1]/thead/tr[1]/th")]
    assert sum(spans) == len(page.xpath("//table[1]/tbody/tr[1]/td"))


def test_nothing_is_fetched_and_nothing_runs(chart: InHouseChart) -> None:
    text = web_page_bytes(chart, Wording("en")).decode()
    assert not re.search(r"<script|https?:|src=|@import|url\(", text)


def test_markup_in_a_suppliers_text_is_shown_and_not_obeyed(chart: InHouseChart) -> None:
    odd = replace(chart.rows[0], model="<script>alert(1)</script>")
    text = web_page_bytes(replace(chart, rows=(odd,)), Wording("en")).decode()
    assert "<script>" not in text
    assert "&lt;script&gt;alert(1)" in text


def test_the_page_carries_cautions_questions_and_its_language(chart: InHouseChart) -> None:
    text = web_page_bytes(chart, Wording("de")).decode()
    assert '<html lang="de">' in text
    assert "Keine Weste verhindert alle Verletzungen" in text
    assert "Offene Fragen" in text
