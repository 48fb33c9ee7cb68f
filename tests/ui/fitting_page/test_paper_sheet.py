"""The fitting sheet says how sure, in which season and what was estimated; it draws the length."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QSizeF
from PySide6.QtGui import QPainter, QPicture

from charts.model_facts import ModelFacts, VestKind
from charts.schema import FileReading
from harmonizer.fit import fit
from harmonizer.fit_sheet import FitSheet
from harmonizer.offers import offers
from harmonizer.range_table import RangeTable
from harmonizer.rider import Rider, TakenBy
from harmonizer.seasons import both_seasons, side_by_side
from tests.ui.fitting_page.test_advice_lines import own_length
from tests.ui.fitting_page.test_fit_rows import laid_out, model_rows
from tests.ui.shop import model_chart, rider_of, shop_table
from ui.appearance import paper_fonts
from ui.desk import Desk
from ui.drawing.row_shape import Density
from ui.drawing.unbroken import unbroken
from ui.dress import Dress
from ui.fitting_page.draft import Draft
from ui.fitting_page.paper_page import PaperPage
from ui.fitting_page.paper_sheet import (
    certainty_words,
    estimate_line,
    legend,
    reasons_on_paper,
    season_lines,
    tape_lines,
)
from ui.fitting_page.print_sheet import LEAST_MODELS, rows_to_print, write_pdf
from ui.fitting_page.printed import Printed
from ui.theme import Scheme, Theme
from ui.words import Words

EN = Words("en")
NAMED = {"chest": 92.7, "waist": 76.0, "hip": 99.0, "back_length": 43.0}


def usual(**more: float) -> Rider:
    return rider_of(**(NAMED | more))  # type: ignore[arg-type]  # readings by name


def two_kinds() -> RangeTable:
    """The same chart as a foam vest and as an inflatable one, which takes the layers."""
    charts = [model_chart("Alderway", name) for name in ("Merle", "Harrier")]
    readings = [FileReading(f"{at}.csv", (chart,)) for at, chart in enumerate(charts)]
    facts = tuple(
        ModelFacts(model=name, file=f"{at}.csv", kind=kind)
        for at, (name, kind) in enumerate(
            (("Merle", VestKind.INFLATABLE), ("Harrier", VestKind.FOAM))
        )
    )
    return RangeTable.compiled(offers(readings, facts))


def text_of(path: Path, printed: Printed, words: Words = EN) -> str:
    import pdfplumber

    assert write_pdf(str(path), printed, words)
    with pdfplumber.open(path) as document:
        assert len(document.pages) == 1
        return " ".join(document.pages[0].extract_text().split())


def printed_of(found: FitSheet, rider: Rider, words: Words = EN) -> Printed:
    sheet = laid_out(found)
    return Printed(Draft(rider), sheet, rows_to_print(sheet, None), date(2027, 3, 2))


class TestSeasons:
    def test_a_size_that_serves_both_stands_before_one_that_serves_a_season(self) -> None:
        """12 mm add 2 pi t = 7.54 cm (Steiner), which no range of 8 cm holds as well."""
        rider = usual(back_length=45.0, winter_mm=12)
        sheet = laid_out(fit(rider, two_kinds()))
        lines = season_lines(sheet, model_rows(sheet), EN)
        assert lines[0].serves == (True, True)
        assert lines[0].size.startswith("Harrier")
        assert lines[0].summer == lines[0].winter
        assert {line.serves for line in lines[1:]} == {(True, False), (False, True)}
        assert [sum(line.serves) for line in lines] == [2, 1, 1]
        assert all(line.size.startswith("Merle") for line in lines[1:])

    def test_no_layers_no_line(self) -> None:
        sheet = laid_out(fit(usual(), two_kinds()))
        assert season_lines(sheet, model_rows(sheet), EN) == ()

    def test_a_model_that_serves_neither_is_still_told(self) -> None:
        rider = usual(chest=150.0, winter_mm=12)
        table = two_kinds()
        members = [tuple(range(6)), tuple(range(6, 12))]
        found = side_by_side(both_seasons(rider, table), members)
        assert len(found) == 2
        assert {one.serves for one in found} == {(False, False)}

    @pytest.mark.parametrize(("language", "says"), [("en", "serves both"), ("de", "für beide")])
    def test_they_stand_on_the_sheet(
        self, desk: Desk, tmp_path: Path, language: str, says: str
    ) -> None:
        del desk
        rider, words = usual(winter_mm=12), Words(language)
        said = text_of(tmp_path / "s.pdf", printed_of(fit(rider, two_kinds()), rider), words)
        assert says in said
        assert words.wording.say("paper", "seasons-title") in said


class TestCertainty:
    def test_a_frequency_and_a_word(self) -> None:
        row = fit(usual(), shop_table(2)).rows[0]
        chance = row.probability
        assert chance is not None
        assert certainty_words(row, EN).endswith(f", {round(10 * chance)} in 10")

    def test_over_how_many_dimensions_where_it_is_not_all_four(self) -> None:
        row = fit(rider_of(chest=92.7, waist=76.0), shop_table(2)).rows[0]
        assert certainty_words(row, EN).endswith(" in 10, 2 of 4")

    def test_every_printed_row_carries_it(self, desk: Desk, tmp_path: Path) -> None:
        del desk
        rider = usual()
        printed = printed_of(fit(replace(rider, taken_by=TakenBy.HELPER), shop_table(6)), rider)
        said = text_of(tmp_path / "s.pdf", printed)
        for row in printed.rows:
            assert certainty_words(printed.sheet.fit_row(row), EN) in said


class TestEstimates:
    def test_they_are_named_as_estimates_with_their_spread(self) -> None:
        rider = rider_of(height=168.0, weight=62.0, waist=76.0)
        sheet = laid_out(fit(rider, shop_table(2)))
        said = estimate_line(Draft(rider), sheet, EN)
        assert said.startswith("Not measured, only estimated from height and weight")
        assert "Chest about 89 (80–97)" in said

    def test_a_rider_without_a_weight_has_none(self) -> None:
        sheet = laid_out(fit(usual(), shop_table(2)))
        assert estimate_line(Draft(usual()), sheet, EN) == ""

    def test_they_stand_on_the_sheet(self, desk: Desk, tmp_path: Path) -> None:
        del desk
        rider = rider_of(height=168.0, weight=62.0, waist=76.0)
        said = text_of(tmp_path / "s.pdf", printed_of(fit(rider, shop_table(2)), rider))
        assert "only estimated" in said


def test_the_length_is_drawn_to_scale_where_both_numbers_are_known(
    desk: Desk, tmp_path: Path
) -> None:
    del desk
    found = own_length(46.0)
    said = text_of(tmp_path / "s.pdf", printed_of(found, found.rider))
    assert "heights to scale" in said
    plain = fit(usual(), shop_table(2))
    assert "Not to scale" in text_of(tmp_path / "p.pdf", printed_of(plain, usual()))


def test_the_reasons_are_those_of_the_chosen_row_and_what_it_is_held_against() -> None:
    sheet = laid_out(fit(usual(), shop_table(8)))
    rows = model_rows(sheet)
    printed = rows_to_print(sheet, rows[6], 3, rows[7].key)
    assert {rows[6].key, rows[7].key} < {row.key for row in printed}
    own, beside = reasons_on_paper(sheet, rows[6], rows[7].key, EN)
    assert own.heading == f"{rows[6].model}, size {sheet.size_of(rows[6].at)}"
    assert " against " in beside.heading
    assert rows[7].model in beside.heading


def test_where_nothing_fits_the_sheet_names_the_nearest(desk: Desk, tmp_path: Path) -> None:
    del desk
    rider = usual(chest=150.0)
    said = text_of(tmp_path / "s.pdf", printed_of(fit(rider, shop_table(6)), rider))
    assert "Nothing can be tried as it stands" in said


@pytest.mark.parametrize("language", ["en", "de"])
def test_with_everything_there_is_to_say_two_models_fit_the_page(desk: Desk, language: str) -> None:
    """Layers, estimates and a row held: the cautions still end on the page."""
    del desk
    rider = rider_of(chest=92.7, waist=76.0, hip=99.0, height=168.0, weight=62.0, winter_mm=12)
    sheet = laid_out(fit(rider, shop_table(8)))
    rows = rows_to_print(sheet, None, LEAST_MODELS, model_rows(sheet)[1].key)
    printed = Printed(Draft(rider), sheet, rows, date(2027, 3, 2), held=rows[1].key)
    tried = QPicture()
    painter = QPainter(tried)
    dress = Dress.of(Theme(Scheme.PAPER), paper_fonts(), Density.TALL)
    bottom = PaperPage(painter, dress, Words(language)).paint(QSizeF(1032, 703), printed)
    painter.end()
    assert bottom <= 703


def test_a_figure_keeps_its_unit_beside_it() -> None:
    assert unbroken("tight by 2.7 cm.") == "tight by 2.7\N{NO-BREAK SPACE}cm."
    assert unbroken("in 10 such readings") == "in 10 such readings"


class TestWhatTheDrawingMeans:
    def test_dashes_and_hatching_are_explained_only_where_they_are_drawn(self) -> None:
        sheet = laid_out(fit(usual(), two_kinds()))
        assert "Bars in dashes" in " ".join(legend(sheet, model_rows(sheet), EN))
        bare = laid_out(own_length(46.0))
        spans = [
            one for row in model_rows(bare) for cell in row.cells.values() for one in cell.spans
        ]
        assert any(span.assumed for span in spans) is bool(legend(bare, model_rows(bare), EN))

    def test_layers_and_estimates_are_explained(self) -> None:
        rider = rider_of(chest=92.7, height=168.0, weight=62.0, winter_mm=6)
        sheet = laid_out(fit(rider, two_kinds()))
        said = " ".join(legend(sheet, model_rows(sheet), EN))
        assert "what the winter layers add" in said
        assert "estimated, not measured" in said

    def test_how_far_the_tape_may_be_out(self) -> None:
        """1.96 times the fitter's 0.8 and 1.0 cm: the middle 95 % of a normal error."""
        sheet = laid_out(fit(usual(), two_kinds()))
        girths, back = tape_lines(sheet, EN)
        assert "± 1.6 cm, 19 times in 20" in girths
        assert "± 2 cm, 19 times in 20" in back

    def test_a_helpers_sheet_says_which_reading_to_send_again(
        self, desk: Desk, tmp_path: Path
    ) -> None:
        del desk
        rider = replace(usual(), taken_by=TakenBy.HELPER)
        said = text_of(tmp_path / "s.pdf", printed_of(fit(rider, shop_table(6)), rider))
        assert "a fitter's tape" in said.replace("\n", " ")
