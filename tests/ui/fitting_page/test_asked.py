"""Where a client is told to measure follows the shop's setting; what was read keeps its own."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from charts.schema import Definition
from charts.wording import LANGUAGES, Wording
from harmonizer.rider import Measure
from harmonizer.setting_checks import CHOICES, DIMENSION_OF
from harmonizer.settings import DEFAULTS
from ui.desk import Desk
from ui.fitting_page.draft import asked_definition

NAVEL = replace(DEFAULTS, default_waist=Definition.WAIST_NAVEL)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_place_a_shop_may_choose_has_its_words_to_the_client(language: str) -> None:
    wording = Wording(language)
    for key, choices in CHOICES.items():
        measure = Measure(DIMENSION_OF[key].value)
        for one in choices:
            usual = one is asked_definition(measure)
            code = f"hint-{measure.value}" if usual else f"hint-{measure.value}-{one.value}"
            assert wording.say("screen" if usual else "advice", code)


def typed_waist(desk: Desk, text: str) -> None:
    edit = desk.window.fitting.readings.fields[Measure.WAIST].line.edit
    edit.setFocus()
    edit.selectAll()
    QTest.keyClicks(edit, text)
    QTest.keyClick(edit, Qt.Key.Key_Return)


def waist(desk: Desk) -> tuple[Decimal, Definition]:
    reading = desk.window.fitting.readings.draft.reading(Measure.WAIST)
    assert reading is not None
    return reading.value, reading.definition


def test_the_line_under_the_field_and_the_reading_follow_the_setting(desk: Desk) -> None:
    desk.window.workspace.set_settings(NAVEL)
    hint = desk.window.fitting.readings.fields[Measure.WAIST].hint
    assert hint.text() == "At the navel, level all round"
    typed_waist(desk, "76")
    assert waist(desk) == (76, Definition.WAIST_NAVEL)
    desk.window.workspace.undo()
    assert hint.text() == "Narrowest: bend sideways, at the crease"


def test_a_reading_keeps_where_it_was_taken_when_the_setting_changes(desk: Desk) -> None:
    typed_waist(desk, "76")
    desk.window.workspace.set_settings(NAVEL)
    assert waist(desk) == (76, Definition.WAIST_NATURAL)
    typed_waist(desk, "80")
    assert waist(desk) == (80, Definition.WAIST_NAVEL)
