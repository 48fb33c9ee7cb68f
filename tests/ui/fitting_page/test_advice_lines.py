"""What the page says beyond one row: which reading to take again."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from charts.wording import LANGUAGES, Wording
from harmonizer.fit import fit
from harmonizer.rider import Measure, Rider, TakenBy
from tests.ui.fitting_page.test_page import stocked
from tests.ui.shop import rider_of, shop_table
from ui.desk import Desk
from ui.fitting_page.advice_lines import again_sentence
from ui.fitting_page.draft import Draft
from ui.fitting_page.page import FittingPage


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
