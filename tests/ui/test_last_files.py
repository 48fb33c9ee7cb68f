"""What was open is known the next day: offered at the start, opened under the same names."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from harmonizer.shop.season import State
from harmonizer.stock import read_stock
from tests.ui.test_commands import opened
from ui.desk import Desk, make_desk
from ui.frame import Frame
from ui.last_files import read_last
from ui.preferences import Preferences
from ui.theme import Scheme, Theme

CLEAN = "Size,Chest (cm),Waist (cm)\nS,84-92,68-76\nM,92-98,76-82\nL,98-104,82-90\n"
FILE = "Alderway/good.csv"


@pytest.fixture
def season(tmp_path: Path) -> Path:
    folder = tmp_path / "season"
    (folder / "Alderway").mkdir(parents=True)
    (folder / "Alderway" / "good.csv").write_text(CLEAN, encoding="utf-8")
    return folder


@pytest.fixture
def kept(tmp_path: Path) -> Path:
    return tmp_path / "kept" / "screen.json"


def started(qapp: QApplication, qtbot: QtBot, kept: Path) -> Desk:
    frame = Frame(Theme(Scheme.LIGHT))
    qtbot.addWidget(frame)
    desk = make_desk(qapp, frame, Preferences("en", Scheme.LIGHT), kept)
    frame.show()
    return desk


def a_day(qapp: QApplication, qtbot: QtBot, kept: Path, season: Path) -> None:
    desk = started(qapp, qtbot, kept)
    opened(desk, qtbot, season)
    desk.window.workspace.approve(FILE, "Ann", date(2027, 2, 11))
    desk.last.keep()
    desk.shop.keep()
    desk.window.operations.close()


def test_a_first_start_offers_nothing(qapp: QApplication, qtbot: QtBot, kept: Path) -> None:
    desk = started(qapp, qtbot, kept)
    assert desk.window.notice.isHidden()
    assert not desk.window.actions_["open-last"].isEnabled()


def test_one_press_opens_what_was_open_under_the_same_names(
    qapp: QApplication, qtbot: QtBot, kept: Path, season: Path
) -> None:
    a_day(qapp, qtbot, kept, season)
    desk = started(qapp, qtbot, kept)
    assert desk.window.notice.says.text() == "One file was open last time."
    assert not desk.window.workspace.files, "nothing is opened unasked"
    with qtbot.waitSignal(desk.window.operations.finished, timeout=20000):
        desk.window.notice.onward.click()
    assert [file.reading.file for file in desk.window.workspace.files] == [FILE]
    assert desk.window.workspace.state(FILE).state is State.APPROVED
    assert desk.window.notice.isHidden()


def test_a_file_that_is_gone_by_then_is_named(
    qapp: QApplication, qtbot: QtBot, kept: Path, season: Path
) -> None:
    a_day(qapp, qtbot, kept, season)
    (season / "Alderway" / "good.csv").unlink()
    desk = started(qapp, qtbot, kept)
    with qtbot.waitSignal(desk.window.operations.finished, timeout=20000):
        desk.window.actions_["open-last"].trigger()
    assert "good.csv is not there any more" in desk.window.notice.says.text()


def test_the_offer_goes_when_anything_else_is_opened(
    qapp: QApplication, qtbot: QtBot, kept: Path, season: Path
) -> None:
    a_day(qapp, qtbot, kept, season)
    (season / "other.csv").write_text(CLEAN.replace("84", "83"), encoding="utf-8")
    desk = started(qapp, qtbot, kept)
    assert not desk.window.notice.isHidden()
    opened(desk, qtbot, season / "other.csv")
    assert desk.window.notice.isHidden()


def test_an_old_stock_list_is_spoken_of_when_the_charts_are_there(
    qapp: QApplication, qtbot: QtBot, kept: Path, season: Path
) -> None:
    a_day(qapp, qtbot, kept, season)
    first = started(qapp, qtbot, kept)
    lines = read_stock("good S in stock")
    first.window.workspace.take_stock(lines, date(2026, 1, 2))
    first.shop.keep()
    desk = started(qapp, qtbot, kept)
    assert "last time" in desk.window.notice.says.text()
    with qtbot.waitSignal(desk.window.operations.finished, timeout=20000):
        desk.window.notice.onward.click()
    assert "stock list of 2 Jan 2026" in desk.window.notice.says.text()


def test_starting_without_opening_forgets_nothing(
    qapp: QApplication, qtbot: QtBot, kept: Path, season: Path
) -> None:
    a_day(qapp, qtbot, kept, season)
    for _ in range(2):
        desk = started(qapp, qtbot, kept)
        QApplication.processEvents()
        assert len(desk.last.last) == 1


@pytest.mark.parametrize(
    "text", ["", "[]", "{", '{"format": 2}', '{"format": 1, "files": 3}',
             '{"format": 1, "files": [1, ["a"], ["a", 2]]}'],
)  # fmt: skip
def test_what_cannot_be_understood_is_nothing(tmp_path: Path, text: str) -> None:
    (tmp_path / "open.json").write_text(text, encoding="utf-8")
    assert read_last(tmp_path / "open.json") == ()
