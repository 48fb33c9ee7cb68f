"""What the page says beyond one row: take again, seasons, nearest, pairs, the saddle to scale."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from charts.model_facts import ModelFacts, VestKind
from charts.schema import Basis, Dimension, FileReading, Kind
from charts.wording import LANGUAGES, Wording
from harmonizer.fit import fit
from harmonizer.fit_sheet import FitSheet
from harmonizer.offers import offers
from harmonizer.range_table import RangeTable
from harmonizer.rider import Measure, Rider, TakenBy
from tests.ui.fitting_page.test_fit_rows import laid_out, model_rows
from tests.ui.fitting_page.test_page import stocked
from tests.ui.shop import length_range, model_chart, rider_of, shop_table
from ui.desk import Desk
from ui.dress import Dress
from ui.fitting_page.advice_lines import again_sentence, all_reasons, with_advice
from ui.fitting_page.chosen import ChosenReasons
from ui.fitting_page.draft import Draft
from ui.fitting_page.length_check_view import LengthCheckView
from ui.fitting_page.page import FittingPage
from ui.words import Words

EMPTY = ChosenReasons("", (), "", "", "")


def caller(taken_by: TakenBy = TakenBy.HELPER) -> Rider:
    return rider_of(chest=92.7, waist=76.0, hip=99.0, back_length=43.0, taken_by=taken_by)


@pytest.mark.parametrize(
    ("language", "words"), [("en", "a fitter's tape"), ("de", "Messung durch eine Fachkraft")]
)
def test_a_helpers_readings_name_the_one_worth_taking_again(language: str, words: str) -> None:
    said = again_sentence(fit(caller(), shop_table(6)), Wording(language))
    assert words in said
    assert said.endswith(".")


@pytest.mark.parametrize("language", LANGUAGES)
def test_readings_taken_twice_by_a_fitter_are_not_to_be_taken_again(language: str) -> None:
    said = again_sentence(fit(caller(TakenBy.FITTER), shop_table(6)), Wording(language))
    assert said == ""


def test_nothing_compared_says_nothing() -> None:
    assert again_sentence(None, Wording()) == ""


def shown(page: FittingPage, qtbot: QtBot) -> str:
    qtbot.waitUntil(page.readings.again.isVisible)
    return page.readings.again.says.text()


def test_the_page_says_it_once_the_verdicts_stand_and_takes_it_back(
    desk: Desk, qtbot: QtBot
) -> None:
    page = desk.window.fitting
    stocked(page)
    page.show_draft(Draft(caller()))
    assert "fitter's tape" in shown(page, qtbot)
    page.readings.taken_by.picked.emit(TakenBy.FITTER.value)
    qtbot.waitUntil(lambda: not page.readings.again.isVisible())


def test_it_speaks_of_what_was_measured_while_a_value_is_tried(desk: Desk, qtbot: QtBot) -> None:
    page = desk.window.fitting
    stocked(page)
    page.show_draft(Draft(caller()))
    before = shown(page, qtbot)
    dimension = Measure.CHEST.dimension
    assert dimension is not None
    page.try_value(dimension, 99.0)
    assert page.readings.again.says.text() == before


def lines_of(page: FittingPage) -> str:
    """Every sentence about the chosen row, those that follow the first frame among them."""
    page.reasons.say_more()
    return page.reasons.sentences.accessibleDescription()


def test_summer_and_winter_stand_side_by_side_where_layers_go_underneath(desk: Desk) -> None:
    page = desk.window.fitting
    table = stocked(page)
    rider = rider_of(winter_mm=12, chest=92.7, waist=76.0, hip=99.0, back_length=43.0)
    page.show_draft(Draft(rider))
    fit_ = fit(rider, table)
    said = {
        at: with_advice(EMPTY, fit_, at, Wording()).lines[0].text for at in range(len(table.offers))
    }
    kinds = {at: table.offers[at].kind for at in said}
    layered = [text for at, text in said.items() if kinds[at] == VestKind.INFLATABLE]
    foam = [text for at, text in said.items() if kinds[at] == VestKind.FOAM]
    assert any(text.startswith("In summer: ") and "Over the winter" in text for text in layered)
    assert not any("summer" in text for text in foam)


def test_one_verdict_by_two_figures_is_said_with_both(words: Words) -> None:
    """Tight in both seasons, but by 7.5 cm more over the layers: never called the same."""
    rider = rider_of(winter_mm=12, chest=110.0, waist=76.0, hip=99.0, back_length=43.0)
    fit_ = fit(rider, shop_table(2))
    said = [
        with_advice(EMPTY, fit_, at, words.wording).lines[0].text
        for at, offer in enumerate(fit_.table.offers)
        if offer.kind == VestKind.INFLATABLE and offer.size == "S"
    ]
    assert len(said) == 1
    assert "chest tight 16 cm" in said[0]
    assert "chest tight 23.5 cm" in said[0]


def test_where_nothing_fits_three_are_named_and_each_says_what_to_ask_for(desk: Desk) -> None:
    page = desk.window.fitting
    stocked(page)
    page.show_draft(Draft(rider_of(chest=150.0, waist=140.0, hip=150.0, back_length=43.0)))
    banner = page.banner.text()
    assert banner.startswith("Nothing can be tried as it stands. The nearest: ")
    assert banner.count(",") == 2
    assert "Ask the maker of " in lines_of(page)


def test_before_the_chest_is_read_nothing_is_said_to_miss(desk: Desk) -> None:
    page = desk.window.fitting
    stocked(page)
    page.show_draft(Draft(rider_of(waist=76.0, hip=99.0)))
    assert page.banner.text() == ""
    assert "Ask the maker" not in lines_of(page)


def test_while_something_fits_no_maker_is_asked(desk: Desk) -> None:
    page = desk.window.fitting
    stocked(page)
    page.show_draft(Draft(caller()))
    assert page.banner.text() == ""
    assert "Ask the maker" not in lines_of(page)


def test_a_chosen_row_is_held_against_the_one_that_stands_first(desk: Desk) -> None:
    page = desk.window.fitting
    stocked(page)
    page.show_draft(Draft(caller()))
    assert "stands first" not in lines_of(page)
    QTest.keyClick(page.table, Qt.Key.Key_Down)
    assert "stands first." in lines_of(page)


def test_the_cut_is_not_spoken_of_where_the_girths_miss() -> None:
    stout = rider_of(chest=150.0, waist=160.0, hip=150.0, back_length=43.0)
    fit_ = fit(stout, shop_table(2))
    said = [one.text for one in with_advice(EMPTY, fit_, 0, Wording()).lines]
    assert not any("This cut" in text for text in said)


def own_length(back: float) -> FitSheet:
    """One size whose vest is ``back`` cm long, on a rider 62.4 cm from C7 to the seat."""
    chart = model_chart("Alderway", "Harrier", sizes=("M",))
    own = replace(
        length_range(Dimension.BACK_LENGTH, back, back, Basis.FINISHED),
        kind=Kind.SINGLE,
        value=Decimal(str(back)),
        low=None,
        high=None,
    )
    (size,) = chart.sizes
    chart = replace(chart, sizes=(replace(size, ranges=(*size.ranges, own)),))
    table = RangeTable.compiled(offers([FileReading("a/h.csv", (chart,))], ()))
    rider = rider_of(chest=82.0, waist=68.0, hip=88.0, back_length=41.0, c7_above_seat=62.4)
    return fit(rider, table)


def test_both_lengths_known_draw_the_clearance_to_scale_and_say_it(
    dress: Dress, words: Words, qtbot: QtBot
) -> None:
    view = LengthCheckView(dress, words)
    qtbot.addWidget(view)
    assert view.shape is None
    sheet = own_length(46.0)
    view.show_row(sheet.row_of(0))
    assert view.shape is not None
    assert view.accessibleDescription() == "11.4 cm, which is 1.3 hands of 9 cm"
    said = [one.text for one in with_advice(EMPTY, sheet, 0, Wording()).lines]
    assert said[0].startswith("Computed, the lower edge lies 11.4 cm above the saddle")
    view.show_row(None)
    assert view.shape is None
    assert view.accessibleDescription() == words("length-check-line")


def test_a_body_range_alone_keeps_the_plain_check(dress: Dress, words: Words, qtbot: QtBot) -> None:
    view = LengthCheckView(dress, words)
    qtbot.addWidget(view)
    rider = rider_of(chest=92.7, waist=76.0, hip=99.0, back_length=43.0, c7_above_seat=62.4)
    view.show_row(fit(rider, shop_table(2)).row_of(0))
    assert view.shape is None


def test_the_sentences_can_be_scrolled_with_the_keys(desk: Desk, qtbot: QtBot) -> None:
    page = desk.window.fitting
    stocked(page)
    desk.frame.resize(1000, 500)
    page.show_draft(Draft(caller()))
    scroll = page.reasons.room
    bar = scroll.verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() > 0)
    scroll.setFocus(Qt.FocusReason.TabFocusReason)
    QTest.keyClick(scroll, Qt.Key.Key_Down)
    assert bar.value() > 0


def test_what_is_beside_the_dimensions_follows_by_itself(desk: Desk, qtbot: QtBot) -> None:
    page = desk.window.fitting
    stocked(page)
    page.show_draft(Draft(caller()))
    at_once = page.reasons.sentences.accessibleDescription()
    qtbot.waitUntil(lambda: page.reasons.sentences.accessibleDescription() != at_once)
    assert page.reasons.sentences.accessibleDescription().startswith(at_once.splitlines()[0])


def test_the_size_of_each_season_is_named_before_the_dimensions() -> None:
    """12 mm add 7.54 cm (2 pi t, Steiner): M in summer, L over the layers, none for both."""
    rider = rider_of(winter_mm=12, chest=92.7, waist=76.0, hip=99.0, back_length=45.0)
    chart = model_chart("Alderway", "Harrier")
    facts = ModelFacts(model="Harrier", file="h.csv", kind=VestKind.INFLATABLE)
    table = RangeTable.compiled(offers([FileReading("h.csv", (chart,))], (facts,)))
    sheet = laid_out(fit(rider, table))
    said = [line.text for line in all_reasons(sheet, model_rows(sheet)[0], Words("en")).lines]
    assert said[0] == "In summer M serves, over the winter layers L."
    assert said[1].startswith("In summer: ")
    assert said[2].startswith("Chest ")


def all_of(fit_: FitSheet) -> str:
    sheet = laid_out(fit_)
    row = model_rows(sheet)[0]
    return " ".join(line.text for line in all_reasons(sheet, row, Words("en")).lines)


@pytest.mark.parametrize(
    ("own", "says"),
    [
        (38.0, "2.2 hands of 9 cm: far too short."),
        (46.0, "1.3 hands of 9 cm: right."),
        (52.0, "0.6 hands of 9 cm: to check before the sale."),
        (55.0, "0.3 hands of 9 cm: too long, do not offer it."),
    ],
)
def test_the_clearance_is_said_with_its_band(own: float, says: str) -> None:
    """By hand: (62.4 above the seat - vest - 5.0 of saddle) / 9.0 a hand."""
    assert says in all_of(own_length(own))


def test_where_only_a_body_range_is_known_the_clearance_is_said_not_to_be_computed() -> None:
    rider = rider_of(chest=92.7, waist=76.0, hip=99.0, back_length=43.0, c7_above_seat=62.4)
    assert "cannot be computed from a body range" in all_of(fit(rider, shop_table(1)))


def test_an_inflatable_without_elastic_figures_says_so() -> None:
    chart = model_chart("Alderway", "Harrier")
    facts = ModelFacts(model="Harrier", file="h.csv", kind=VestKind.INFLATABLE)
    table = RangeTable.compiled(offers([FileReading("h.csv", (chart,))], (facts,)))
    assert "the reserve of the elastic is not known" in all_of(fit(caller(), table))


def test_what_the_chart_leaves_unsaid_is_said_last() -> None:
    said = all_of(fit(caller(), shop_table(1)))
    assert "The chart does not say between which points" in said
    assert said.index("The chart does not say") > said.index("Of 10 such readings")
