"""All that was said of a file stands on its page, and is taken back there at any later time."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from charts.schema import Basis
from tests.ui.test_commands import opened
from ui.desk import Desk, make_desk
from ui.frame import Frame
from ui.preferences import Preferences
from ui.questions_page.page import QuestionsPage
from ui.questions_page.question_rows import QuestionRow, Weight
from ui.theme import Scheme, Theme

CLEAN = "Size,Chest (cm),Waist (cm)\nS,84-92,68-76\nM,92-98,76-82\nL,98-104,82-90\n"
NO_UNIT = CLEAN.replace(" (cm)", "")
FILE = "clean.csv"


def page_of(desk: Desk, qtbot: QtBot, folder: Path, name: str = FILE) -> QuestionsPage:
    opened(desk, qtbot, folder)
    desk.window.show_page("charts")
    desk.window.charts.open_file(name)
    return desk.window.charts.questions


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    (tmp_path / "in").mkdir()
    (tmp_path / "in" / FILE).write_text(CLEAN, encoding="utf-8")
    (tmp_path / "in" / "asked.csv").write_text(NO_UNIT, encoding="utf-8")
    return tmp_path / "in"


def say_finished(page: QuestionsPage) -> None:
    """The chest column is the finished vest's, by the menu and without a question."""
    page.source.view.setCurrentIndex(page.source.view.cells.index(1, 1))
    words = page.acting.column_texts()
    page.acting.take_column_word(words.index("Finished measures of the vest"))


def given(page: QuestionsPage) -> list[QuestionRow]:
    return [row for row in page.panel.rows.rows if row.weight is Weight.GIVEN]


def chest_basis(desk: Desk) -> Basis:
    held = desk.window.workspace.contents.file(FILE)
    assert held is not None
    return held.reading.charts[0].sizes[0].ranges[0].basis


def test_what_was_said_without_a_question_is_listed(desk: Desk, qtbot: QtBot, folder: Path) -> None:
    page = page_of(desk, qtbot, folder)
    assert given(page) == []
    say_finished(page)
    (row,) = given(page)
    assert row.sentence == "A1:C4, column Chest (cm): Finished measures of the vest."
    assert desk.window.signature.name in row.more
    assert not row.is_open


def test_it_is_taken_back_by_its_row_and_the_taking_back_is_undone(
    desk: Desk, qtbot: QtBot, folder: Path
) -> None:
    page = page_of(desk, qtbot, folder)
    say_finished(page)
    assert chest_basis(desk) is Basis.FINISHED
    page.panel.choose(page.panel.rows.rows.index(given(page)[0]))
    assert page.source.view.framed, "the place it speaks of is shown"
    QTest.keyClick(page.panel.list, Qt.Key.Key_1)
    assert chest_basis(desk) is Basis.FINISHED, "a figure takes nothing back"
    QTest.keyClick(page.panel.list, Qt.Key.Key_Delete)
    assert given(page) == []
    assert chest_basis(desk) is Basis.UNKNOWN
    desk.window.actions_["undo"].trigger()
    assert len(given(page)) == 1
    assert chest_basis(desk) is Basis.FINISHED


def test_an_answer_to_a_question_stands_once_with_its_question(
    desk: Desk, qtbot: QtBot, folder: Path
) -> None:
    page = page_of(desk, qtbot, folder, "asked.csv")
    QTest.keyClick(page.panel.list, Qt.Key.Key_1)
    assert given(page) == []
    settled = [row for row in page.panel.rows.rows if row.weight is Weight.SETTLED]
    assert len(settled) == 1
    assert "centimetres" in settled[0].more
    page.panel.choose(page.panel.rows.rows.index(settled[0]))
    QTest.keyClick(page.panel.list, Qt.Key.Key_Delete)
    assert [row for row in page.panel.rows.rows if row.is_open]


def test_a_question_settled_along_with_another_answer_says_so(
    desk: Desk, qtbot: QtBot, folder: Path
) -> None:
    page = page_of(desk, qtbot, folder, "asked.csv")
    page.source.view.setCurrentIndex(page.source.view.cells.index(1, 1))
    words = page.acting.column_texts()
    at = next(at for at, word in enumerate(words) if "inches" in word)
    page.acting.take_column_word(at)
    rows = page.panel.rows.rows
    for row in rows:
        if row.weight is Weight.SETTLED and not row.given:
            page.panel.choose(rows.index(row))
            assert page.panel.head.text() == (
                "Settled along with another answer: take that one back."
            )
            assert page.panel.buttons == []
    (row,) = given(page)
    page.panel.choose(rows.index(row))
    page.panel.buttons[0].click()
    assert [row for row in page.panel.rows.rows if row.is_open]


def test_after_a_restart_it_is_still_there_to_be_taken_back(
    qapp: QApplication, qtbot: QtBot, folder: Path, tmp_path: Path
) -> None:
    chosen = Preferences("en", Scheme.LIGHT)
    for round_ in range(2):
        frame = Frame(Theme(Scheme.LIGHT))
        qtbot.addWidget(frame)
        desk = make_desk(qapp, frame, chosen, tmp_path / "screen.json")
        page = page_of(desk, qtbot, folder)
        if round_ == 0:
            say_finished(page)
            desk.shop.keep()
        else:
            (row,) = given(page)
            page.panel.choose(page.panel.rows.rows.index(row))
            QTest.keyClick(page.panel.list, Qt.Key.Key_Delete)
            assert chest_basis(desk) is Basis.UNKNOWN
        desk.window.operations.close()
