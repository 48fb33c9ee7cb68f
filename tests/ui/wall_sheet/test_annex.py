"""The full table behind the wall sheet says what the workbook says."""

from __future__ import annotations

import re

import pytest

from charts.in_house import InHouseChart
from charts.schema import Dimension
from charts.wording import LANGUAGES, Wording
from charts.writers.in_house_table import laid_out
from charts.writers.printed_table import Role
from tests.ui.wall_sheet.conftest import Draw
from tests.ui.wall_sheet.on_page import words
from ui.wall_sheet.ink import Area, Page, Tone
from ui.wall_sheet.paper import A3, A4, Paper

ENGLISH = Wording("en")


def plain(text: str) -> str:
    """Without spaces: lines may be broken anywhere between words."""
    return re.sub(r"\s", "", text)


def pages_titled(pages: tuple[Page, ...], code: str, wording: Wording = ENGLISH) -> list[Page]:
    title = wording.say("wall_sheet", code)
    return [page for page in pages if title in page.texts]


@pytest.mark.parametrize("paper", [A3, A4])
@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("which", ["chart", "demo"])
def test_every_cell_of_the_workbook_stands_in_it(
    ruled: Draw, which: str, language: str, paper: Paper, request: pytest.FixtureRequest
) -> None:
    chart: InHouseChart = request.getfixturevalue(which)
    wording = Wording(language)
    table = laid_out(chart, wording)
    assert table.rows
    pages = pages_titled(ruled(chart, paper, wording), "annex-title", wording)
    said = plain("".join(text for page in pages for text in page.texts))
    for row in table.rows:
        for cell in row.cells:
            for line in cell.text.split("\n"):
                assert plain(line) in said
    for column in table.columns[2:]:  # maker and model stand over their rows without a head
        assert plain(column.head) in said


def test_every_size_has_its_row_in_the_order_of_the_table(ruled: Draw, demo: InHouseChart) -> None:
    pages = pages_titled(ruled(demo), "annex-title")
    table = laid_out(demo, ENGLISH)
    rows = [
        (each.text, round(each.y))
        for page in pages
        for each in words(page)
        if each.x == page.paper.left and each.face.size == 9.0 and each.face.strong
    ]
    sizes = [row.cells[3].text for row in table.rows]
    assert [text for text, _ in rows if text in set(sizes)] == sizes


def test_what_a_maker_does_not_give_is_said_once_for_both_units(
    ruled: Draw, chart: InHouseChart
) -> None:
    pages = pages_titled(ruled(chart), "annex-title")
    said = []
    for page in pages:
        column = next(each.x for each in words(page) if each.text == "Waist")
        said += [each for each in words(page) if each.text == "not given" and each.x == column]
    silent = [row for row in chart.rows if Dimension.WAIST not in row.measures]
    assert len(said) == len(silent) > 5


def test_the_makers_figures_are_strong_and_the_converted_ones_are_not(
    ruled: Draw, chart: InHouseChart
) -> None:
    table = laid_out(chart, ENGLISH)
    (page, *_) = pages_titled(ruled(chart), "annex-title")
    by_text = {each.text: each for each in words(page)}
    cells = [cell for row in table.rows for cell in row.cells if "\n" not in cell.text]
    published = {cell.text for cell in cells if cell.role is Role.PUBLISHED}
    converted = {cell.text for cell in cells if cell.role is Role.CONVERTED}
    shown = (published | converted) & set(by_text)
    assert len(shown) > 20
    for text in shown - (published & converted):
        assert by_text[text].face.strong is (text in published)


def test_a_value_in_question_lies_on_grey_and_carries_its_question_mark(
    ruled: Draw, chart: InHouseChart
) -> None:
    (page, *_) = pages_titled(ruled(chart), "annex-title")
    washes = [mark for mark in page.marks if isinstance(mark, Area) and mark.tone is Tone.WASH]
    asked = [each for each in words(page) if each.text == "90–98 ?"]
    assert len(asked) == 1
    assert any(
        wash.left <= asked[0].x <= wash.right and wash.top <= asked[0].y <= wash.bottom
        for wash in washes
    )


def test_columns_that_do_not_fit_beside_come_as_a_further_table_with_the_sizes_again(
    ruled: Draw, demo: InHouseChart
) -> None:
    wide = pages_titled(ruled(demo, A3), "annex-title")
    narrow = pages_titled(ruled(demo, A4), "annex-title")
    heads = ("Chest", "Weight")
    assert all(set(heads) <= set(page.texts) for page in wide)
    assert not any(set(heads) <= set(page.texts) for page in narrow)
    for head in heads:
        assert any(head in page.texts and "Size" in page.texts for page in narrow)


def test_a_model_broken_over_pages_is_named_again(ruled: Draw, demo: InHouseChart) -> None:
    pages = pages_titled(ruled(demo, A4), "annex-title")
    again = [text for page in pages for text in page.texts if text.endswith(", continued")]
    assert again
    for page in pages[1:]:
        first = min(
            (each for each in words(page) if each.face.size == 11.0 and each.face.strong),
            key=lambda each: each.y,
        )
        models = {row.model for row in demo.rows}
        assert first.text.removesuffix(", continued") in models


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_open_questions_stand_behind_it_word_for_word(
    ruled: Draw, demo: InHouseChart, language: str
) -> None:
    wording = Wording(language)
    questions = laid_out(demo, wording).questions
    assert questions is not None
    pages = [page for page in ruled(demo, A3, wording) if questions.title in page.texts]
    said = plain("".join(text for page in pages for text in page.texts))
    for row in questions.rows:
        for cell in row[:3]:
            assert plain(cell) in said
