"""The questions page by its keys: every act at once, undone at once, a clean file in two acts."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QAbstractItemModelTester, QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from harmonizer.shop.season import Stage, State
from tests.ui.test_commands import Answers, opened
from ui.desk import Desk
from ui.questions_page.page import QuestionsPage
from ui.questions_page.question_rows import Weight

CLEAN = """Size,Chest (cm),Waist (cm),Hip (cm)
S,84-92,68-76,90-98
M,92-98,76-82,98-104
L,98-104,82-90,104-110
"""
NO_UNIT = "Size,Chest,Waist\nS,84-92,68-76\nM,92-98,76-82\nL,98-104,82-90\n"
WRONG = CLEAN.replace("98-104,82-90", "12,82-90")


@pytest.fixture
def shop(desk: Desk, qtbot: QtBot, tmp_path: Path) -> Desk:
    folder = tmp_path / "Alderway"
    folder.mkdir()
    (folder / "clean.csv").write_text(CLEAN, encoding="utf-8")
    (folder / "no_unit.csv").write_text(NO_UNIT, encoding="utf-8")
    (folder / "wrong.csv").write_text(WRONG, encoding="utf-8")
    opened(desk, qtbot, tmp_path)
    desk.window.show_page("charts")
    return desk


def choose(desk: Desk, name: str) -> None:
    charts = desk.window.charts
    charts.table.choose(charts.files.find(f"Alderway/{name}"))
    charts.table.setFocus()


def open_file(desk: Desk, qtbot: QtBot, name: str) -> QuestionsPage:
    choose(desk, name)
    QTest.keyClick(desk.window.charts.table, Qt.Key.Key_Return)
    return desk.window.charts.questions


def state(desk: Desk, name: str) -> State:
    return desk.window.workspace.state(f"Alderway/{name}").state


def test_a_clean_file_is_approved_in_two_acts(shop: Desk, qtbot: QtBot) -> None:
    choose(shop, "clean.csv")
    table = shop.window.charts.table
    QTest.keyClick(table, Qt.Key.Key_Return)
    assert shop.window.charts.opened == "Alderway/clean.csv"
    shop.window.actions_["approve"].trigger()
    assert state(shop, "clean.csv") is State.APPROVED
    assert shop.window.charts.opened == ""


def test_approving_is_a_key_and_leads_to_the_next_file_that_wants_a_person(
    shop: Desk, qtbot: QtBot
) -> None:
    open_file(shop, qtbot, "clean.csv")
    assert shop.window.actions_["approve"].shortcut().toString() == "Ctrl+Return"
    shop.window.actions_["approve"].trigger()
    row = shop.window.charts.files.row(shop.window.charts.table.currentIndex().row())
    assert row is not None
    assert row.state is State.QUESTIONS


def test_one_figure_answers_a_question_and_everything_is_read_again(
    shop: Desk, qtbot: QtBot
) -> None:
    page = open_file(shop, qtbot, "no_unit.csv")
    assert page.panel.current is not None
    assert page.panel.current.weight is Weight.DANGER
    QTest.keyClick(page.panel.list, Qt.Key.Key_1)
    assert state(shop, "no_unit.csv") is State.READY
    assert page.head.state.text() == "Ready: look it over and approve it"
    assert not [row for row in page.panel.rows.rows if row.is_open]
    shape = page.source.view.cells.shape
    assert shape is not None
    tags = [one.tag for one in shape.outlines]
    assert "Chest in centimetres" in tags


def test_every_act_is_undone_and_made_again(shop: Desk, qtbot: QtBot) -> None:
    page = open_file(shop, qtbot, "no_unit.csv")
    QTest.keyClick(page.panel.list, Qt.Key.Key_1)
    shop.window.actions_["undo"].trigger()
    assert state(shop, "no_unit.csv") is State.QUESTIONS
    assert [row for row in page.panel.rows.rows if row.is_open]
    shop.window.actions_["redo"].trigger()
    assert state(shop, "no_unit.csv") is State.READY


def test_a_settled_question_is_taken_back_by_its_row(shop: Desk, qtbot: QtBot) -> None:
    page = open_file(shop, qtbot, "no_unit.csv")
    QTest.keyClick(page.panel.list, Qt.Key.Key_1)
    settled = [at for at, row in enumerate(page.panel.rows.rows) if row.weight is Weight.SETTLED]
    page.panel.choose(settled[0])
    QTest.keyClick(page.panel.list, Qt.Key.Key_1)
    assert state(shop, "no_unit.csv") is State.READY, "one figure too many takes nothing back"
    QTest.keyClick(page.panel.list, Qt.Key.Key_Delete)
    assert state(shop, "no_unit.csv") is State.QUESTIONS


def test_choosing_a_question_frames_its_cells(shop: Desk, qtbot: QtBot) -> None:
    page = open_file(shop, qtbot, "wrong.csv")
    assert page.source.view.framed == {(3, 1)}
    index = page.source.view.cells.index(3, 1)
    assert page.source.view.viewport().rect().contains(page.source.view.visualRect(index))


def test_up_and_down_go_through_the_list(shop: Desk, qtbot: QtBot) -> None:
    page = open_file(shop, qtbot, "wrong.csv")
    assert QApplication.focusWidget() is page.panel.list
    page.panel.choose(0)
    QTest.keyClick(page.panel.list, Qt.Key.Key_Down)
    assert page.panel.list.currentIndex().row() == min(1, page.panel.rows.rowCount() - 1)


def test_a_typed_cell_is_read_and_its_print_stays_struck_through(shop: Desk, qtbot: QtBot) -> None:
    page = open_file(shop, qtbot, "wrong.csv")
    page.panel.start_typing()
    line = page.panel.line.edit
    assert line.text() == "12"
    QTest.keyClicks(line, "98-104")
    QTest.keyClick(line, Qt.Key.Key_Return)
    assert state(shop, "wrong.csv") is State.READY
    shown = page.understood.view.cells.shown(4, 1)
    assert shown is not None
    assert shown.text == "98–104 cm"
    assert shown.printed == "12"
    cell = page.source.view.cells.cell(3, 1)
    assert cell is not None
    assert cell.printed == "12"
    assert QApplication.focusWidget() is page.panel.list


def test_escape_leaves_the_line_and_then_the_file(shop: Desk, qtbot: QtBot) -> None:
    page = open_file(shop, qtbot, "wrong.csv")
    page.panel.start_typing()
    QTest.keyClicks(page.panel.line.edit, "5")
    QTest.keyClick(page.panel.line.edit, Qt.Key.Key_Escape)
    assert page.panel.line.edit.text() == "12"
    assert shop.window.charts.opened
    QTest.keyClick(page.panel.list, Qt.Key.Key_Escape)
    assert shop.window.charts.opened == ""


def test_a_tables_edge_is_moved_from_the_chosen_cell(shop: Desk, qtbot: QtBot) -> None:
    page = open_file(shop, qtbot, "clean.csv")
    page.source.view.setCurrentIndex(page.source.view.cells.index(2, 1))
    page.acting.take_table_act("bottom")
    assert page.case is not None
    labels = [size.label for size in page.case.reading.charts[0].sizes]
    assert labels == ["S", "M"]
    shop.window.actions_["undo"].trigger()
    assert len(page.case.reading.charts[0].sizes) == 3


def test_a_file_kept_aside_says_so_and_is_opened_again(shop: Desk, qtbot: QtBot) -> None:
    page = open_file(shop, qtbot, "clean.csv")
    shop.window.actions_["keep-aside"].trigger()
    assert state(shop, "clean.csv") is State.ASIDE
    assert page.head.state.text().startswith("Kept aside by ")
    shop.window.actions_["reopen"].trigger()
    assert state(shop, "clean.csv") is State.READY


def test_a_slow_file_is_read_beside_the_screen(
    shop: Desk, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    page = open_file(shop, qtbot, "no_unit.csv")
    monkeypatch.setattr(page._shelf, "is_slow", lambda _file: True)
    with qtbot.waitSignal(shop.window.operations.finished, timeout=20000):
        QTest.keyClick(page.panel.list, Qt.Key.Key_1)
    assert state(shop, "no_unit.csv") is State.READY


def test_a_slow_file_is_opened_when_it_has_been_read(
    shop: Desk, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    charts = shop.window.charts
    monkeypatch.setattr(charts.questions._shelf, "is_slow", lambda _file: True)
    with qtbot.waitSignal(shop.window.operations.finished, timeout=20000):
        charts.show_place("Alderway/wrong.csv", "B3")
        assert charts.opened == ""
    assert charts.opened == "Alderway/wrong.csv"
    assert charts.questions.source.view.framed == {(2, 1)}


def test_the_letter_is_copied_and_its_questions_are_marked_sent(shop: Desk, qtbot: QtBot) -> None:
    page = open_file(shop, qtbot, "no_unit.csv")
    shop.window.actions_["letter-de"].trigger()
    assert "Sehr geehrte" in QApplication.clipboard().text()
    finding = page.panel.rows.rows[0].first
    stage, _ = shop.window.workspace.stage("Alderway/no_unit.csv", finding)
    assert stage is Stage.SENT
    assert "Sent to the maker" in page.panel.rows.rows[0].more


def test_what_the_maker_answered_stands_with_the_question(shop: Desk, qtbot: QtBot) -> None:
    page = open_file(shop, qtbot, "no_unit.csv")
    assert page.panel.reply.isHidden()
    shop.window.actions_["letter-en"].trigger()
    assert not page.panel.reply.isHidden()
    QTest.keyClicks(page.panel.reply.edit, "Centimetres")
    QTest.keyClick(page.panel.reply.edit, Qt.Key.Key_Return)
    assert "Alderway answered: Centimetres" in page.panel.rows.rows[0].more
    stage, _ = shop.window.workspace.stage("Alderway/no_unit.csv", page.panel.rows.rows[0].first)
    assert stage is Stage.ANSWERED


def test_the_menu_offers_what_the_column_may_give(shop: Desk, qtbot: QtBot) -> None:
    page = open_file(shop, qtbot, "clean.csv")
    page.source.view.setCurrentIndex(page.source.view.cells.index(1, 3))
    page.keys.menu.aboutToShow.emit()
    texts = [action.text() for action in page.keys.column_menu.actions()]
    at = texts.index("Hip: at the seat")
    page.keys.column_menu.actions()[at].trigger()
    assert page.case is not None
    assert page.understood.view.cells.shown(1, 3) is not None
    assert page.case.reading.charts[0].sizes[0].ranges[2].definition == "seat"


def test_the_letter_is_written_where_the_person_says(
    shop: Desk, qtbot: QtBot, tmp_path: Path
) -> None:
    open_file(shop, qtbot, "no_unit.csv")
    shop.chart.asker = Answers([tmp_path / "letter.html"])
    shop.window.actions_["letter-page-en"].trigger()
    assert b"<html" in (tmp_path / "letter.html").read_bytes()
    assert "letter.html" in shop.window.notice.says.text()


def test_the_name_in_the_head_stands_under_the_answers(shop: Desk, qtbot: QtBot) -> None:
    page = open_file(shop, qtbot, "no_unit.csv")
    page.head.by.edit.setText("Ada")
    page.head.by.edit.editingFinished.emit()
    QTest.keyClick(page.panel.list, Qt.Key.Key_1)
    (answer,) = {one.by for one in shop.window.workspace.record("Alderway/no_unit.csv").answers}
    assert answer == "Ada"


def test_the_models_keep_to_qts_rules(shop: Desk, qtbot: QtBot) -> None:
    page = open_file(shop, qtbot, "wrong.csv")
    for model in (
        page.source.view.cells,
        page.understood.view.cells,
        page.panel.rows,
        shop.window.charts.files,
    ):
        QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Fatal)
    QTest.keyClick(page.panel.list, Qt.Key.Key_1)
    shop.window.actions_["undo"].trigger()


def test_the_colours_change_and_the_file_stays_open(shop: Desk, qtbot: QtBot) -> None:
    open_file(shop, qtbot, "wrong.csv")
    shop.window.actions_["scheme-dark"].trigger()
    assert shop.window.charts.opened == "Alderway/wrong.csv"
