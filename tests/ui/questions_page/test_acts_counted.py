"""The acts of a season counted at the keyboard: every key that a person presses is one act."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from charts.resource_files import resources
from harmonizer.shop.season import State
from tests.ui.test_commands import opened
from ui.desk import Desk
from ui.file_states import WANTING

DEMO = Path(str(resources() / "demo" / "charts"))


class Buyer:
    """Presses keys where the keyboard is, and counts them."""

    def __init__(self, desk: Desk) -> None:
        self.desk = desk
        self.acts = 0

    def press(
        self,
        key: Qt.Key,
        modifier: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier,
    ) -> None:
        self.acts += 1
        widget = QApplication.focusWidget()
        assert widget is not None
        QTest.keyClick(widget, key, modifier)

    def answer_all(self) -> None:
        """Take the first act of every question until none is open."""
        panel = self.desk.window.charts.questions.panel
        for _ in range(20):
            if panel.current is None or not panel.current.is_open:
                return
            self.press(Qt.Key.Key_1)
        raise AssertionError("questions that no act closes")


def test_the_demo_folder_is_approved_by_keys_alone_in_at_most_sixty_acts(
    desk: Desk, qtbot: QtBot
) -> None:
    opened(desk, qtbot, DEMO)
    desk.window.show_page("charts")
    desk.frame.activateWindow()
    charts, buyer = desk.window.charts, Buyer(desk)
    charts.table.setFocus()
    for _ in range(len(desk.window.workspace.files)):
        row = charts.files.row(charts.table.currentIndex().row())
        assert row is not None
        assert row.state in WANTING
        buyer.press(Qt.Key.Key_Return)
        buyer.answer_all()
        buyer.press(Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    states = {state.state for state in desk.window.workspace.states()}
    assert states == {State.APPROVED}
    assert buyer.acts <= 60


def test_a_clean_file_takes_two_keys(desk: Desk, qtbot: QtBot, tmp_path: Path) -> None:
    (tmp_path / "clean.csv").write_text(
        "Size,Chest (cm)\nS,84-92\nM,92-98\nL,98-104\n", encoding="utf-8"
    )
    opened(desk, qtbot, tmp_path / "clean.csv")
    desk.window.show_page("charts")
    desk.window.charts.table.setFocus()
    buyer = Buyer(desk)
    buyer.press(Qt.Key.Key_Return)
    buyer.press(Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert desk.window.workspace.state("clean.csv").state is State.APPROVED
    assert buyer.acts == 2
