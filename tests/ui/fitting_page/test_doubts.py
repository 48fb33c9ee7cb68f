"""What is asked beside a field: both readings, one act to take the other, one to keep this one."""

from __future__ import annotations

from decimal import Decimal

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from charts.quantities import Unit
from charts.schema import Definition
from charts.wording import LANGUAGES, Wording
from harmonizer.rider import BodyFigure, Measure, Reading, Rider
from tests.ui.shop import rider_of
from ui.desk import Desk
from ui.fitting_page.doubts import doubts_on
from ui.fitting_page.draft import Draft

WORDING = Wording()


def navel(value: str) -> Reading:
    return Reading(Measure.WAIST, Decimal(value), value, Unit.CM, definition=Definition.WAIST_NAVEL)


def woman(waist: str) -> Draft:
    """168 cm and 62 kg, her waist read at the navel."""
    rider = rider_of(height=168.0, weight=62.0)
    return Draft(Rider("R", readings=(*rider.readings, navel(waist)), figure=BodyFigure.WOMAN))


def test_swapped_digits_are_asked_with_both_readings() -> None:
    doubt = doubts_on(woman("97"), WORDING)[Measure.WAIST]
    assert doubt.asks == "Waist: 97 or 79?"
    assert doubt.text == "97 cm"
    assert doubt.other is not None
    assert (doubt.other.value, doubt.other.text) == (Decimal(79), "79 cm")


def test_inches_taken_for_centimetres_offer_the_figure_in_centimetres() -> None:
    doubt = doubts_on(Draft(rider_of(chest=36.0)), WORDING)[Measure.CHEST]
    assert doubt.asks == "Chest 36: is that inches, which would be 91.5 cm?"
    assert doubt.other is not None
    assert doubt.other.value == Decimal("91.4")


def test_a_doubt_without_another_reading_can_only_be_kept() -> None:
    doubt = doubts_on(Draft(rider_of(chest=88.0, waist=88.0)), WORDING)[Measure.WAIST]
    assert doubt.other is None
    assert doubt.may_stay
    assert "copy" in doubt.asks


def test_what_was_said_to_be_right_is_not_asked_again_until_the_reading_changes() -> None:
    draft = woman("97")
    kept = draft.confirming(doubts_on(draft, WORDING)[Measure.WAIST].key)
    assert Measure.WAIST not in doubts_on(kept, WORDING)
    rider = rider_of(height=168.0, weight=62.0)
    other = Rider("R", readings=(*rider.readings, navel("96")), figure=BodyFigure.WOMAN)
    assert Measure.WAIST in doubts_on(Draft(other, confirmed=kept.confirmed), WORDING)


def test_plain_readings_raise_no_question() -> None:
    rider = rider_of(chest=92.0, waist=76.0, hip=99.0, back_length=43.0, height=168.0, weight=62.0)
    assert doubts_on(Draft(rider), WORDING) == {}


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_act_is_worded(language: str) -> None:
    for code in ("take-other", "keep-this"):
        for end in ("", "-sentence"):
            values = {"name": "A", "x": "97 cm", "other": "79"}
            assert "9" in Wording(language).say("advice", code + end, **values)


def test_taking_the_other_reading_is_one_act_and_compares_at_once(desk: Desk) -> None:
    page = desk.window.fitting
    page.show_draft(woman("97"))
    field = page.readings.fields[Measure.WAIST]
    assert field.doubt.isVisible()
    assert not field.hint.isVisible()
    QTest.keyClick(field.doubt.other, Qt.Key.Key_Return)
    reading = page.readings.draft.reading(Measure.WAIST)
    assert reading is not None
    assert reading.value == 79
    assert field.line.edit.text() == "79 cm"
    assert not field.doubt.isVisible()
    assert field.hint.isVisible()
    assert QApplication.focusWidget() is field.line.edit


def test_keeping_the_reading_puts_the_question_away_for_this_call(desk: Desk) -> None:
    page = desk.window.fitting
    page.show_draft(woman("97"))
    field = page.readings.fields[Measure.WAIST]
    QTest.keyClick(field.doubt.keep, Qt.Key.Key_Return)
    assert not field.doubt.isVisible()
    page.new_rider()
    page.next_rider()
    assert page.readings.draft.reading(Measure.WAIST) is not None
    assert not field.doubt.isVisible()


def test_a_question_stands_in_nobodys_way(desk: Desk) -> None:
    page = desk.window.fitting
    page.show_draft(Draft(rider_of(chest=36.0)))
    chest, waist = (page.readings.fields[one] for one in (Measure.CHEST, Measure.WAIST))
    chest.line.edit.setFocus()
    QTest.keyClick(chest.line.edit, Qt.Key.Key_Return)
    assert chest.doubt.isVisible()
    assert QApplication.focusWidget() is waist.line.edit


def test_typing_anew_puts_the_question_away_and_escape_asks_again(desk: Desk) -> None:
    page = desk.window.fitting
    page.show_draft(Draft(rider_of(chest=36.0)))
    field = page.readings.fields[Measure.CHEST]
    field.line.edit.setFocus()
    QTest.keyClicks(field.line.edit, "9")
    assert not field.doubt.isVisible()
    QTest.keyClick(field.line.edit, Qt.Key.Key_Escape)
    assert field.doubt.isVisible()


def test_centimetres_typed_as_inches_offer_the_figure_as_centimetres() -> None:
    """93 typed as inches is 236 cm; the question and the button speak of the same 93 cm."""
    doubt = doubts_on(Draft(rider_of(chest=236.22)), WORDING)[Measure.CHEST]
    assert doubt.asks.endswith("It would be 93 cm.")
    assert doubt.other is not None
    assert doubt.other.value == 93
