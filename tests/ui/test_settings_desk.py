"""The shop's figures in the window: one key away, in force at once, kept, undone, never lost."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from charts.schema import Dimension
from harmonizer.rider import Measure
from harmonizer.settings import DEFAULTS
from harmonizer.settings_file import read_settings
from harmonizer.states import GirthState
from tests.ui.test_commands import CHART, RIDER, opened
from ui.desk import Desk
from ui.settings_page.figure_control import FigureLine


@pytest.fixture
def kept(desk: Desk, tmp_path: Path) -> Path:
    path = tmp_path / "shop" / "settings.toml"
    desk.settings.keep_in(path)
    return path


def line(desk: Desk, key: str) -> FigureLine:
    control = desk.window.settings.rows[key].control
    assert isinstance(control, FigureLine)
    return control


def type_over(desk: Desk, key: str, text: str) -> None:
    edit = line(desk, key).edit
    edit.setFocus()
    edit.selectAll()
    QTest.keyClicks(edit, text)
    QTest.keyClick(edit, Qt.Key.Key_Return)


def test_one_key_leads_to_the_page_and_escape_back_to_the_page_before(desk: Desk) -> None:
    QTest.keyClick(desk.frame, Qt.Key.Key_2, Qt.KeyboardModifier.ControlModifier)
    QTest.keyClick(desk.frame, Qt.Key.Key_Comma, Qt.KeyboardModifier.ControlModifier)
    assert desk.window.page == "settings"
    assert QApplication.focusWidget() is line(desk, "edge_band").edit
    assert desk.window.actions_["page-settings"].isChecked()
    assert desk.window.top.pages.key == ""
    QTest.keyClick(line(desk, "edge_band").edit, Qt.Key.Key_Escape)
    assert desk.window.page == "charts"
    assert desk.window.top.pages.key == "charts"


def test_the_strip_of_pages_keeps_its_place_in_the_tab_order(desk: Desk) -> None:
    desk.settings.show()
    proxy = desk.window.top.pages.focusProxy()
    assert proxy is not None
    assert proxy.focusPolicy() is Qt.FocusPolicy.StrongFocus


def test_the_fitting_page_follows_a_figure_at_once(
    desk: Desk, qtbot: QtBot, tmp_path: Path
) -> None:
    (tmp_path / "harrier.csv").write_text(CHART, encoding="utf-8")
    (tmp_path / "rider.toml").write_text(RIDER, encoding="utf-8")
    opened(desk, qtbot, tmp_path / "harrier.csv", tmp_path / "rider.toml")

    def chest() -> object:
        sheet, row = desk.window.fitting.sheet, desk.window.fitting.table.chosen_row()
        assert sheet is not None
        assert row is not None
        return sheet.fit_row(row).dimensions[Dimension.CHEST].state

    assert chest() is GirthState.INSIDE
    desk.settings.show()
    type_over(desk, "edge_band", "4")
    assert chest() is GirthState.EDGE
    assert desk.window.fitting.readings.draft.reading(Measure.CHEST) is not None


def test_a_changed_figure_is_on_disk_at_once(desk: Desk, kept: Path) -> None:
    desk.settings.show()
    type_over(desk, "hand_width", "8.5")
    assert read_settings(kept.read_text(encoding="utf-8")).hand_width == 8.5
    assert str(kept) in desk.window.settings.kept.text()


def test_undo_takes_a_figure_back_from_within_its_own_line(desk: Desk, kept: Path) -> None:
    desk.settings.show()
    type_over(desk, "hand_width", "8.5")
    edit = line(desk, "hand_width").edit
    QTest.keyClick(edit, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert desk.window.workspace.settings == DEFAULTS
    assert edit.text() == "9"
    assert read_settings(kept.read_text(encoding="utf-8")) == DEFAULTS
    modifiers = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    QTest.keyClick(edit, Qt.Key.Key_Z, modifiers)
    assert desk.window.workspace.settings.hand_width == 8.5


def test_what_was_kept_is_in_force_from_the_start_and_is_no_step_to_undo(
    desk: Desk, tmp_path: Path
) -> None:
    path = tmp_path / "settings.toml"
    path.write_text("format = 1\nhand_width = 8.0\n", encoding="utf-8")
    desk.settings.keep_in(path)
    assert desk.window.workspace.settings == replace(DEFAULTS, hand_width=8.0)
    assert not desk.window.workspace.can_undo
    desk.settings.show()
    assert line(desk, "hand_width").edit.text() == "8"


def test_a_file_of_a_newer_version_is_said_and_left_alone(desk: Desk, tmp_path: Path) -> None:
    path = tmp_path / "settings.toml"
    path.write_text("format = 2\n", encoding="utf-8")
    desk.settings.keep_in(path)
    assert "newer version" in desk.window.notice.says.text()
    desk.settings.show()
    type_over(desk, "hand_width", "8.5")
    assert "left alone" in desk.window.notice.says.text()
    assert desk.window.workspace.settings.hand_width == 8.5
    assert path.read_text(encoding="utf-8") == "format = 2\n"


def test_another_look_keeps_the_page_its_figures_and_where_they_are_kept(
    desk: Desk, qtbot: QtBot, kept: Path
) -> None:
    desk.settings.show()
    type_over(desk, "hand_width", "8.5")
    desk.view.larger()
    qtbot.waitUntil(lambda: bool(desk.window.settings.rows))
    assert desk.window.page == "settings"
    assert line(desk, "hand_width").edit.text() == "8.5"
    assert str(kept) in desk.window.settings.kept.text()
