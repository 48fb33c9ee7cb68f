"""What the menus do: files in, the combined chart out, and what went wrong said in one line."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from harmonizer.rider import Measure
from ui.asking import Asker
from ui.desk import Desk
from ui.fitting_page.rows import Band
from ui.sheet_commands import SheetCommands

CHART = """Size,Chest (cm),Waist (cm),Hip (cm),Back length (cm)
S,84-92,68-76,90-98,40-43
M,90-98,74-82,96-104,42-45
L,96-104,80-90,102-110,44-47
"""
RIDER = """format = 1
name = "Rider 7"
figure = "woman"
taken_by = "fitter"
[readings]
chest = "93 cm"
waist = "76 cm"
hip = "99 cm"
back_length = "43 cm"
"""


class Answers(Asker):
    """Answers at once, as the test wishes."""

    def __init__(self, paths: list[Path]) -> None:
        self.paths = paths
        self.asked: list[str] = []

    def files(self, title: str, kinds: str, then: Callable[[list[Path]], None]) -> None:
        del kinds
        self.asked.append(title)
        then(self.paths)

    def folder(self, title: str, then: Callable[[list[Path]], None]) -> None:
        self.asked.append(title)
        then(self.paths)

    def target(self, title: str, kinds: str, name: str, then: Callable[[list[Path]], None]) -> None:
        del kinds, name
        self.asked.append(title)
        then(self.paths)


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    (tmp_path / "Alderway").mkdir()
    (tmp_path / "Alderway" / "harrier.csv").write_text(CHART, encoding="utf-8")
    (tmp_path / "rider.toml").write_text(RIDER, encoding="utf-8")
    return tmp_path


def opened(desk: Desk, qtbot: QtBot, *paths: Path) -> None:
    with qtbot.waitSignal(desk.window.operations.finished, timeout=20000):
        desk.commands.open_paths(list(paths))


def file_names(desk: Desk) -> list[str]:
    files = desk.window.charts.files
    rows = [files.row(at) for at in range(files.rowCount())]
    return [row.name for row in rows if row]


def test_a_chart_and_a_rider_give_a_verdict(desk: Desk, qtbot: QtBot, folder: Path) -> None:
    opened(desk, qtbot, folder / "Alderway", folder / "rider.toml")
    row = desk.window.fitting.table.chosen_row()
    assert row is not None
    assert row.size == "M"
    assert row.band is Band.TRY


def test_a_file_that_failed_is_a_row_with_its_problem_and_the_rest_is_open(
    desk: Desk, qtbot: QtBot, folder: Path
) -> None:
    (folder / "Alderway" / "empty.csv").write_bytes(b"")
    (folder / "Alderway" / "picture.xlsx").write_bytes(b"\x89PNG\r\n\x1a\n" + bytes(64))
    opened(desk, qtbot, folder / "Alderway")
    assert set(file_names(desk)) == {"empty.csv", "picture.xlsx", "harrier.csv"}
    assert "could not be read" in desk.window.notice.says.text()
    assert len(desk.window.workspace.offers) == 3


def test_files_dropped_on_the_window_are_opened(desk: Desk, qtbot: QtBot, folder: Path) -> None:
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(folder / "Alderway" / "harrier.csv"))])
    enter = QDragEnterEvent(
        QPoint(20, 20),
        Qt.DropAction.CopyAction,
        data,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    QApplication.sendEvent(desk.frame, enter)
    assert enter.isAccepted()
    drop = QDropEvent(
        QPointF(20, 20),
        Qt.DropAction.CopyAction,
        data,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    with qtbot.waitSignal(desk.window.operations.finished, timeout=20000):
        QApplication.sendEvent(desk.frame, drop)
    assert file_names(desk) == ["harrier.csv"]


def test_loading_can_be_undone_and_redone(desk: Desk, qtbot: QtBot, folder: Path) -> None:
    actions = desk.window.actions_
    assert not actions["undo"].isEnabled()
    opened(desk, qtbot, folder / "Alderway")
    actions["undo"].trigger()
    assert file_names(desk) == []
    assert actions["redo"].isEnabled()
    actions["redo"].trigger()
    assert file_names(desk) == ["harrier.csv"]


def test_the_combined_chart_is_written_where_the_person_says(
    desk: Desk, qtbot: QtBot, folder: Path
) -> None:
    opened(desk, qtbot, folder / "Alderway")
    target = folder / "combined.csv"
    desk.commands.asker = Answers([target])
    with qtbot.waitSignal(desk.window.operations.finished, timeout=20000):
        desk.window.actions_["export-combined"].trigger()
    assert target.stat().st_size > 100
    assert "combined.csv" in desk.window.notice.says.text()


def test_a_target_that_cannot_be_written_is_one_sentence(
    desk: Desk, qtbot: QtBot, folder: Path
) -> None:
    opened(desk, qtbot, folder / "Alderway")
    desk.commands.asker = Answers([folder / "nowhere" / "combined.csv"])
    with qtbot.waitSignal(desk.window.operations.finished, timeout=20000):
        desk.window.actions_["export-combined"].trigger()
    assert desk.window.notice.says.text().endswith(".")


def test_an_impossible_rider_file_is_a_line_and_a_reason(
    desk: Desk, qtbot: QtBot, folder: Path
) -> None:
    (folder / "rider.toml").write_text(RIDER.replace('"93 cm"', '"ninety"'), encoding="utf-8")
    opened(desk, qtbot, folder / "rider.toml")
    assert "line 6" in desk.window.notice.says.text()


def test_the_menu_asks_for_files_and_opens_them(desk: Desk, qtbot: QtBot, folder: Path) -> None:
    answers = Answers([folder / "Alderway" / "harrier.csv"])
    desk.commands.asker = answers
    with qtbot.waitSignal(desk.window.operations.finished, timeout=20000):
        desk.window.actions_["open-files"].trigger()
    assert len(answers.asked) == 1
    assert file_names(desk) == ["harrier.csv"]


def test_a_pasted_chart_is_read(desk: Desk, qtbot: QtBot) -> None:
    QApplication.clipboard().setText(CHART.replace(",", "\t"))
    with qtbot.waitSignal(desk.window.operations.finished, timeout=20000):
        desk.window.actions_["paste-chart"].trigger()
    assert file_names(desk) == ["Pasted text"]


def test_nothing_to_paste_is_said(desk: Desk) -> None:
    QApplication.clipboard().setText("  ")
    desk.window.actions_["paste-chart"].trigger()
    assert desk.window.notice.says.text() == "There is no text to paste."


def test_the_reply_is_copied_in_either_language(desk: Desk, qtbot: QtBot, folder: Path) -> None:
    opened(desk, qtbot, folder / "Alderway", folder / "rider.toml")
    desk.window.actions_["copy-reply-en"].trigger()
    english = QApplication.clipboard().text()
    desk.window.actions_["copy-reply-de"].trigger()
    german = QApplication.clipboard().text()
    assert "93 cm" in english
    assert "93 cm" in german
    assert "take precedence" in english
    assert "gehen diesem Blatt vor" in german


def test_the_page_is_saved_as_one_pdf(desk: Desk, qtbot: QtBot, folder: Path) -> None:
    opened(desk, qtbot, folder / "Alderway", folder / "rider.toml")
    target = folder / "sheet.pdf"
    SheetCommands(desk.window, Answers([target])).ask_pdf()
    data = target.read_bytes()
    assert data.startswith(b"%PDF")
    assert data.count(b"/Type /Page\n") == 1


def test_printing_waits_while_a_value_is_tried(desk: Desk, qtbot: QtBot, folder: Path) -> None:
    opened(desk, qtbot, folder / "Alderway", folder / "rider.toml")
    desk.window.fitting.try_current()
    desk.window.actions_["copy-reply-en"].trigger()
    assert "Esc" in desk.window.notice.says.text()


def test_one_key_shows_the_suppliers_cell(desk: Desk, qtbot: QtBot, folder: Path) -> None:
    opened(desk, qtbot, folder / "Alderway", folder / "rider.toml")
    desk.window.actions_["show-place"].trigger()
    assert desk.window.page == "charts"
    charts = desk.window.charts
    assert charts.opened.endswith("harrier.csv")
    (framed,) = charts.questions.source.view.framed
    cell = charts.questions.source.view.cells.cell(*framed)
    assert cell is not None
    assert cell.printed == "90-98"


def test_every_action_of_the_menus_does_something(desk: Desk) -> None:
    from PySide6.QtCore import SIGNAL

    from ui.actions import ACTIONS

    for fact in ACTIONS:
        action = desk.window.actions_[fact.key]
        assert action.receivers(SIGNAL("triggered(bool)")) > 0, fact.key


def test_no_two_actions_share_a_key() -> None:
    from ui.actions import ACTIONS

    keys = [fact.shortcut for fact in ACTIONS if fact.shortcut]
    assert len(set(keys)) == len(keys)


def test_a_change_of_colours_keeps_the_call(desk: Desk) -> None:
    from tests.ui.fitting_page.test_page import typed

    typed("93")
    desk.window.actions_["scheme-dark"].trigger()
    field = desk.window.fitting.readings.fields[Measure.CHEST]
    assert field.line.edit.text() == "93 cm"
    desk.window.actions_["rows-tall"].trigger()
    assert desk.window.dress.density.value == "tall"
