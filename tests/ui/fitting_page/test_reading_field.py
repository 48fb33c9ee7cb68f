"""One field: when a value counts, and how the unit is asked for in place."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from charts.quantities import Unit
from harmonizer.rider import Measure
from ui.appearance import fonts
from ui.controls.buttons import FlatButton
from ui.fitting_page.reading_field import ReadingField
from ui.fitting_page.typed import Standing, Typed
from ui.words import Words


@pytest.fixture
def home(qtbot: QtBot, application: QApplication) -> QWidget:
    del application
    home = QWidget()
    qtbot.addWidget(home)
    return home


@pytest.fixture
def field(qtbot: QtBot, home: QWidget, words: Words) -> ReadingField:
    field = ReadingField(Measure.CHEST, words, fonts().small, home)
    with qtbot.waitExposed(home):
        home.show()
    home.activateWindow()
    field.line.edit.setFocus()
    return field


def enter(field: ReadingField, text: str) -> None:
    QTest.keyClicks(field.line.edit, text)
    QTest.keyClick(field.line.edit, Qt.Key.Key_Return)


def answers(field: ReadingField) -> list[FlatButton]:
    return [one for one in field.question.findChildren(FlatButton) if one.isVisible()]


def test_enter_counts_a_plain_value_and_moves_on(field: ReadingField, qtbot: QtBot) -> None:
    with qtbot.waitSignals([field.committed, field.advance]):
        enter(field, "93")
    assert field.line.edit.text() == "93 cm"
    assert not field.pending


def test_a_value_in_the_making_does_not_count(field: ReadingField) -> None:
    told: list[Typed] = []
    field.committed.connect(told.append)
    QTest.keyClicks(field.line.edit, "9")
    assert field.pending
    assert told == []


def test_the_unit_is_asked_for_by_two_small_buttons(field: ReadingField) -> None:
    enter(field, "36")
    assert [button.text() for button in answers(field)] == ["in", "cm"]
    assert field.pending


def test_enter_takes_the_likelier_unit(field: ReadingField, qtbot: QtBot) -> None:
    enter(field, "36")
    with qtbot.waitSignal(field.committed) as told:
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    (typed,) = told.args
    assert typed.unit is Unit.IN
    assert field.line.edit.text() == "36 in"
    assert not answers(field)


def test_what_cannot_be_one_value_is_said_under_the_field(field: ReadingField) -> None:
    enter(field, "92-94")
    assert field.hint.text() == "One value, please"
    assert field.line.wanting


def test_typing_on_puts_the_question_away(field: ReadingField) -> None:
    enter(field, "36")
    field.line.edit.setFocus()
    QTest.keyClicks(field.line.edit, " in")
    assert not answers(field)
    assert not field.line.wanting


def test_an_emptied_field_takes_the_reading_back(field: ReadingField, qtbot: QtBot) -> None:
    enter(field, "93")
    field.line.edit.selectAll()
    QTest.keyClick(field.line.edit, Qt.Key.Key_Delete)
    with qtbot.waitSignal(field.committed) as told:
        QTest.keyClick(field.line.edit, Qt.Key.Key_Return)
    assert told.args[0].standing is Standing.EMPTY


def test_a_moment_after_a_whole_value_it_counts_by_itself(
    field: ReadingField, qtbot: QtBot
) -> None:
    with qtbot.waitSignal(field.committed, timeout=3000):
        QTest.keyClicks(field.line.edit, "93")
    assert field.line.edit.text() == "93"


def test_the_line_under_the_field_says_what_to_ask_the_client(field: ReadingField) -> None:
    assert "shoulder blades" in field.hint.text()
    assert field.line.edit.accessibleName() == "Chest"
    assert field.line.edit.accessibleDescription() == field.hint.text()
