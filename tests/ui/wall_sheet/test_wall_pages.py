"""The pages of the wall sheet as numbers: what stands on each, how large, and where."""

from __future__ import annotations

from dataclasses import replace

import pytest

from charts.cautions import GENERAL
from charts.in_house import InHouseChart
from charts.wording import LANGUAGES, Wording
from harmonizer.shop.editions import Edition
from tests.ui.wall_sheet.conftest import Draw
from tests.ui.wall_sheet.hard_wall import DAY
from tests.ui.wall_sheet.on_page import (
    bar_of,
    bars,
    box_of,
    cm_at,
    collisions,
    outside,
    word,
    words,
)
from ui.wall_sheet.ink import End, Page
from ui.wall_sheet.paper import A3, A4, SMALLEST, Paper, paper_of

ENGLISH = Wording("en")
PAPERS = pytest.mark.parametrize("paper", [A3, A4, paper_of(792, 612), paper_of(1224, 792)])
TONGUES = pytest.mark.parametrize("language", LANGUAGES)


class Longer(Wording):
    """Every sentence two fifths longer, as another language may be."""

    def say(self, topic: str, code: str, /, **values: object) -> str:
        said = super().say(topic, code, **values)
        return said if topic == "days" else f"{said} {'ö' * (len(said) * 2 // 5)}".rstrip()


def wall(pages: tuple[Page, ...]) -> list[Page]:
    """The pages with bars of models on them, the annex left out."""
    title = ENGLISH.say("wall_sheet", "title")
    return [page for page in pages if title in page.texts]


@PAPERS
@TONGUES
@pytest.mark.parametrize("which", ["chart", "demo"])
def test_no_word_is_smaller_than_9_points_and_none_stands_on_another(
    printed: Draw, which: str, language: str, paper: Paper, request: pytest.FixtureRequest
) -> None:
    pages = printed(request.getfixturevalue(which), paper, Wording(language))
    assert pages
    for page in pages:
        assert min(each.face.size for each in words(page)) >= SMALLEST
        assert list(collisions(page)) == []
        assert list(outside(page)) == []


@pytest.mark.parametrize("paper", [A3, A4])
def test_a_language_two_fifths_longer_still_has_room(
    printed: Draw, demo: InHouseChart, paper: Paper
) -> None:
    pages = printed(demo, paper, Longer("en"))
    assert pages
    for page in pages:
        assert list(collisions(page)) == []
        assert list(outside(page)) == []


@PAPERS
def test_every_model_has_one_line(ruled: Draw, demo: InHouseChart, paper: Paper) -> None:
    said = [text for page in wall(ruled(demo, paper)) for text in page.texts]
    models = {row.model for row in demo.rows}
    assert {model: said.count(str(model)) for model in models} == dict.fromkeys(models, 1)


def test_every_line_names_maker_season_kind_level_and_file(ruled: Draw, demo: InHouseChart) -> None:
    said = [text for page in wall(ruled(demo)) for text in page.texts]
    assert "Tarnwhistle, spring 2027" in said
    assert "foam · level 3 · file of 3 Nov 2026" in said
    assert "rider from 40 kg (88 lb)" in said


@PAPERS
@TONGUES
def test_number_date_version_and_cautions_stand_at_the_foot_of_every_page(
    ruled: Draw, demo: InHouseChart, paper: Paper, language: str
) -> None:
    wording = Wording(language)
    pages = ruled(demo, paper, wording, Edition(4, demo.version, DAY))
    for number, page in enumerate(pages, 1):
        lowest = max(box_of(each).top for each in words(page))
        last = " ".join(each.text for each in words(page) if box_of(each).top == lowest)
        assert wording.say("wall_sheet", "replaces", number=3) in last
        assert demo.version in last
        assert "2027" in last
        assert wording.say("combined", "page", number=number, pages=len(pages)) in last
        whole = " ".join(page.texts).replace("\N{NO-BREAK SPACE}", " ")
        for code in GENERAL:
            caution = wording.say("cautions", code).split()
            assert caution[0] in whole
            assert caution[-1] in whole


@PAPERS
def test_the_heads_are_repeated_on_every_page(
    ruled: Draw, demo: InHouseChart, paper: Paper
) -> None:
    pages = wall(ruled(demo, paper))
    assert len(pages) > 1
    for page in pages:
        for code in ("chest", "waist", "hip", "back_length"):
            assert ENGLISH.say("combined", f"dimension-{code}") in page.texts
        assert "cm" in page.texts
        assert "in" in page.texts


def test_the_first_sheet_replaces_none_and_an_uncounted_one_says_no_number(
    ruled: Draw, chart: InHouseChart
) -> None:
    first = ruled(chart, edition=Edition(1, chart.version, DAY))[0].texts
    assert any("the first of its kind" in text for text in first)
    uncounted = ruled(chart)[0].texts
    assert "Made on 11 Feb 2027" in uncounted
    assert not any("No." in text or "replaces" in text for text in uncounted)


def test_models_left_out_are_named_with_the_reason(ruled: Draw, chart: InHouseChart) -> None:
    page = " ".join(ruled(chart)[0].texts)
    assert "Tarnwhistle Oldcoat (recalled)" in page
    assert "Ventarroya Airevieja (superseded)" in page
    assert "Heldback (kept aside)" in page
    assert "One file could not be read" in page
    assert "One question to a maker is open" in page


def test_a_bar_stands_where_the_ruler_above_it_says(printed: Draw, demo: InHouseChart) -> None:
    """Fellgarrow W, size M: chest 88 to 96 cm, as its maker's chart has it."""
    page = wall(printed(demo))[0]
    bar = bar_of(page, "M", word(page, "Fellgarrow W"))
    block = word(page, "Women")
    assert cm_at(page, bar.left, block) == pytest.approx(88.0, abs=0.05)
    assert cm_at(page, bar.right, block) == pytest.approx(96.0, abs=0.05)


def test_an_open_end_is_an_arrow_and_never_a_figure(printed: Draw, chart: InHouseChart) -> None:
    page = printed(chart)[0]
    line = word(page, "Fellrunner")
    smallest, largest = bar_of(page, "XS", line), bar_of(page, "L", line)
    assert (smallest.left_end, smallest.right_end) == (End.OPEN, End.FIRM)
    assert (largest.left_end, largest.right_end) == (End.FIRM, End.OPEN)
    assert cm_at(page, smallest.right, word(page, "Women")) == pytest.approx(80.0, abs=0.05)


def test_every_state_has_a_shape_of_its_own(printed: Draw, chart: InHouseChart) -> None:
    """Nothing is told by a tone alone: dashes, hollowness, hatching and arrows tell."""
    page = printed(chart)[0]
    assert bar_of(page, "40", word(page, "Holloway")).dashed
    assert bar_of(page, "M?", word(page, "Twoback")).hatched
    hollow = [bar for bar in bars(page) if bar.hollow]
    assert len(hollow) == 4 + 3 + 1  # four hips, three backs, the legend's
    for bar in bars(page):
        if bar.hatched:
            assert bar.clear_left < bar.clear_right


def test_a_sign_before_the_bars_has_its_footnote_on_the_page(
    ruled: Draw, chart: InHouseChart
) -> None:
    page = ruled(chart)[0]
    assert "†" in page.texts
    assert any(text.startswith("† Hip at the widest") for text in page.texts)
    assert any("of the finished vest only‡" in text for text in page.texts)
    assert any(text.startswith("‡ Measured on the finished vest") for text in page.texts)


def test_a_block_broken_over_pages_says_that_it_goes_on(ruled: Draw, demo: InHouseChart) -> None:
    pages = wall(ruled(demo, A4))
    goes_on = [text for page in pages for text in page.texts if text.endswith(", continued")]
    assert goes_on
    starts = [text.removesuffix(", continued") for text in goes_on]
    before = [text for page in pages for text in page.texts]
    assert all(start in before for start in starts)


def test_a_chart_without_rows_is_one_page_that_says_so_by_its_emptiness(ruled: Draw) -> None:
    pages = ruled(InHouseChart((), DAY))
    assert len(pages) == 1
    assert "page 1 of 1" in pages[0].texts


def test_a_hundred_models_fill_pages_and_lose_none(ruled: Draw, demo: InHouseChart) -> None:
    rows = tuple(
        replace(row, model=f"{row.model} {copy}") for copy in range(8) for row in demo.rows
    )
    pages = wall(ruled(replace(demo, rows=rows)))
    said = [text for page in pages for text in page.texts]
    assert all(said.count(f"Granvisp {copy}") == 1 for copy in range(8))
    assert all(list(outside(page)) == [] for page in pages)
