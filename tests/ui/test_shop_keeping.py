"""What is said of files is kept: the next start knows it, and the second season needs no act."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from harmonizer.shop.season import State
from tests.ui.test_commands import opened
from ui.desk import Desk, make_desk
from ui.frame import Frame
from ui.preferences import Preferences
from ui.theme import Scheme, Theme

NO_UNIT = "Size,Chest,Waist\nS,84-92,68-76\nM,92-98,76-82\nL,98-104,82-90\n"


@pytest.fixture
def kept(tmp_path: Path) -> Path:
    return tmp_path / "kept" / "screen.json"


@pytest.fixture
def charts(tmp_path: Path) -> Path:
    folder = tmp_path / "Alderway"
    folder.mkdir()
    (folder / "sizes_2027.csv").write_text(NO_UNIT, encoding="utf-8")
    return tmp_path


def started(qapp: QApplication, qtbot: QtBot, kept: Path) -> Desk:
    frame = Frame(Theme(Scheme.LIGHT))
    qtbot.addWidget(frame)
    desk = make_desk(qapp, frame, Preferences("en", Scheme.LIGHT), kept)
    frame.show()
    return desk


def answered_and_approved(desk: Desk, qtbot: QtBot, charts: Path) -> None:
    opened(desk, qtbot, charts / "Alderway" / "sizes_2027.csv")
    desk.window.show_page("charts")
    desk.window.charts.open_file("sizes_2027.csv")
    desk.window.charts.questions.panel.take(0)
    desk.window.actions_["approve"].trigger()
    desk.shop.keep()


def test_the_next_start_knows_what_was_said(
    qapp: QApplication, qtbot: QtBot, kept: Path, charts: Path
) -> None:
    answered_and_approved(started(qapp, qtbot, kept), qtbot, charts)
    desk = started(qapp, qtbot, kept)
    opened(desk, qtbot, charts / "Alderway" / "sizes_2027.csv")
    assert desk.window.workspace.state("sizes_2027.csv").state is State.APPROVED


def test_a_file_is_kept_by_itself_after_each_act(
    qapp: QApplication, qtbot: QtBot, kept: Path, charts: Path
) -> None:
    desk = started(qapp, qtbot, kept)
    opened(desk, qtbot, charts / "Alderway" / "sizes_2027.csv")
    desk.window.show_page("charts")
    desk.window.actions_["keep-aside"].trigger()
    qtbot.waitUntil(lambda: any((kept.parent / "season" / "files").glob("*.toml")))


def test_what_cannot_be_used_is_said_and_left_alone(
    qapp: QApplication, qtbot: QtBot, kept: Path
) -> None:
    damaged = kept.parent / "season" / "files" / "broken.toml"
    damaged.parent.mkdir(parents=True)
    damaged.write_text("format =", encoding="utf-8")
    desk = started(qapp, qtbot, kept)
    assert "broken.toml" in desk.window.notice.says.text()
    desk.shop.keep()
    assert damaged.read_text("utf-8") == "format ="
