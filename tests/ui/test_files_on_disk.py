"""Files that change, move or break on the disk while they are open: said, read again, taken off."""

from __future__ import annotations

import os
import zipfile
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from charts.wording import Wording
from charts.writers.whole_file import NotWrittenError
from harmonizer.shop.season import State
from tests.ui.test_commands import opened
from ui.desk import Desk
from ui.kept_file import not_kept_words

CLEAN = "Size,Chest (cm),Waist (cm)\nS,84-92,68-76\nM,92-98,76-82\nL,98-104,82-90\n"
FILE = "Alderway/good.csv"


@pytest.fixture
def maker(tmp_path: Path) -> Path:
    folder = tmp_path / "season" / "Alderway"
    folder.mkdir(parents=True)
    (folder / "good.csv").write_text(CLEAN, encoding="utf-8")
    return folder


@pytest.fixture
def shop(desk: Desk, qtbot: QtBot, maker: Path) -> Desk:
    opened(desk, qtbot, maker.parent)
    desk.window.show_page("charts")
    return desk


def write(path: Path, text: str) -> None:
    """Another content, and another time of writing however coarse the disk's clock is."""
    before = path.stat().st_mtime_ns if path.exists() else 0
    path.write_text(text, encoding="utf-8")
    os.utime(path, ns=(before + 10**9, before + 10**9))


def come_back(desk: Desk) -> str:
    """The window is left for another program and come back to."""
    desk.window.notice.hide()
    QApplication.sendEvent(desk.frame, QEvent(QEvent.Type.WindowActivate))
    return "" if desk.window.notice.isHidden() else desk.window.notice.says.text()


def read_again(desk: Desk, qtbot: QtBot) -> None:
    with qtbot.waitSignal(desk.window.operations.finished, timeout=20000):
        desk.window.actions_["read-again"].trigger()


def low(desk: Desk) -> str:
    file = desk.window.workspace.contents.file(FILE)
    assert file is not None
    return file.reading.charts[0].sizes[0].ranges[0].published


def test_a_file_that_changed_is_said_once_and_read_again_by_a_key(
    shop: Desk, qtbot: QtBot, maker: Path
) -> None:
    assert come_back(shop) == ""
    write(maker / "good.csv", CLEAN.replace("84-92", "85-92"))
    assert "good.csv is not on the disk as it was read" in come_back(shop)
    assert come_back(shop) == "", "once is enough"
    assert low(shop) == "84-92", "nothing is read unasked"
    read_again(shop, qtbot)
    assert low(shop) == "85-92"
    assert come_back(shop) == ""


def test_a_changed_file_keeps_its_name_and_loses_its_approval(
    shop: Desk, qtbot: QtBot, maker: Path
) -> None:
    shop.window.charts.open_file(FILE)
    shop.window.actions_["approve"].trigger()
    assert shop.window.workspace.state(FILE).state is State.APPROVED
    write(maker / "good.csv", CLEAN.replace("84-92", "85-92"))
    read_again(shop, qtbot)
    assert [file.reading.file for file in shop.window.workspace.files] == [FILE]
    assert shop.window.workspace.state(FILE).state is State.READY
    shop.window.actions_["undo"].trigger()
    assert shop.window.workspace.state(FILE).state is State.APPROVED


def test_a_file_written_anew_with_the_same_content_is_not_spoken_of(
    shop: Desk, maker: Path
) -> None:
    write(maker / "good.csv", CLEAN)
    assert come_back(shop) == ""


def test_a_file_that_is_gone_is_said_and_is_taken_off_the_list(
    shop: Desk, qtbot: QtBot, maker: Path
) -> None:
    (maker / "good.csv").unlink()
    assert "good.csv" in come_back(shop)
    assert shop.window.workspace.offers, "what was read stays until somebody reads again"
    read_again(shop, qtbot)
    assert shop.window.workspace.state(FILE).state is State.NOT_READABLE
    shop.window.actions_["leave-out"].trigger()
    assert shop.window.workspace.files == ()
    assert "off the list" in shop.window.notice.says.text()
    shop.window.actions_["undo"].trigger()
    assert len(shop.window.workspace.files) == 1


def test_an_archive_is_watched_as_a_whole(desk: Desk, qtbot: QtBot, tmp_path: Path) -> None:
    path = tmp_path / "all.zip"

    def pack(text: str) -> None:
        with zipfile.ZipFile(path, "w") as archive:
            archive.writestr("one.csv", text)
            archive.writestr("two.csv", CLEAN.replace("84", "83"))

    pack(CLEAN)
    opened(desk, qtbot, path)
    names = [file.reading.file for file in desk.window.workspace.files]
    pack(CLEAN.replace("84-92", "86-92"))
    os.utime(path, (1, 1))
    assert "is not on the disk as it was read" in come_back(desk)
    read_again(desk, qtbot)
    assert [file.reading.file for file in desk.window.workspace.files] == names
    assert come_back(desk) == ""


def test_notes_put_right_are_no_problem_any_more(desk: Desk, qtbot: QtBot, maker: Path) -> None:
    notes = maker / "models.toml"
    notes.write_text('format = 1\n[[model]]\nmodell = "x"\n', encoding="utf-8")
    opened(desk, qtbot, maker.parent)
    assert len(desk.window.workspace.files) == 2
    notes.write_text(
        'format = 1\n[[model]]\nmodel = "Harrier"\nfile = "good.csv"\n', encoding="utf-8"
    )
    read_again(desk, qtbot)
    assert [file.reading.file for file in desk.window.workspace.files] == [FILE]
    assert [each.model for each in desk.window.workspace.facts] == ["Harrier"]


def test_one_bad_file_alone_says_why(desk: Desk, qtbot: QtBot, tmp_path: Path) -> None:
    (tmp_path / "broken.xlsx").write_bytes(b"PK\x03\x04 nonsense")
    opened(desk, qtbot, tmp_path / "broken.xlsx")
    assert "damaged" in desk.window.notice.says.text()
    assert "other files" not in desk.window.notice.says.text()


def test_the_page_of_a_broken_file_offers_nothing_that_cannot_be_done(
    desk: Desk, qtbot: QtBot, tmp_path: Path
) -> None:
    (tmp_path / "broken.xlsx").write_bytes(b"PK\x03\x04 nonsense")
    opened(desk, qtbot, tmp_path / "broken.xlsx")
    desk.window.show_page("charts")
    desk.window.charts.open_file("broken.xlsx")
    page = desk.window.charts.questions
    assert page.panel.title.text() == "It could not be read"
    assert not page.head.approve.isEnabled()
    assert not page.head.approve.urgent
    assert not page.source.table_button.isEnabled()
    assert not page.panel.line.isEnabled()


def test_where_nothing_can_be_kept_the_place_and_the_reason_are_said() -> None:
    fault = NotWrittenError("target-failed", Path("/shop/season/files"), "read-only")
    said = not_kept_words(fault, Wording("en"))
    assert said == (
        f"What was said could not be kept in {Path('/shop/season')} (read-only). "
        "It holds until the program is closed."
    )
    newer = NotWrittenError("shop-newer", Path("/shop/season/files/a.toml"))
    assert "a.toml" in not_kept_words(newer, Wording("en"))
