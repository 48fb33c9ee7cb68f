"""The wall sheet from the menu: drawn, shown, saved, printed, and counted only then."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtPrintSupport import QPrinter
from pytestqt.qtbot import QtBot

from charts.writers.own_files import is_ours
from tests.ui.conftest import MakeDesk
from ui.asking import Asker, Paths
from ui.desk import Desk
from ui.preferences import Preferences
from ui.theme import Scheme
from ui.wall_sheet.paper import PaperSize
from ui.wall_sheet.preview import PageView, Preview

# The platform of the tests has no window manager to be told the sizes of a dialog.
pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints", extend=True)

CLEAN = (
    "Size;Chest (cm);Waist (cm);Hip (cm);Back length (cm)\n"
    "S;84-92;68-76;90-98;40-43\nM;90-98;74-82;96-104;42-45\nL;96-104;80-90;102-110;44-47\n"
)


class Answering(Asker):
    """Answers at once, and remembers what it was asked."""

    def __init__(self, folder: Path, desk: Desk) -> None:
        super().__init__(desk.frame)
        self.folder = folder
        self.answer: str | None = None
        self.asked: list[str] = []

    def target(self, title: str, kinds: str, name: str, then: Paths) -> None:
        self.asked.append(f"{title}: {kinds}")
        then([self.folder / (self.answer or name)])

    def printer(self, then: Callable[[QPrinter], None]) -> None:
        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        printer.setOutputFileName(str(self.folder / (self.answer or "printed.pdf")))
        then(printer)


def opened(desk: Desk, folder: Path, qtbot: QtBot, content: str = CLEAN) -> Answering:
    """A desk with one chart and an asker of our own."""
    source = folder / "vest.csv"
    source.write_text(content, encoding="utf-8")
    desk.commands.open_paths([source])
    qtbot.waitUntil(lambda: bool(desk.window.workspace.offers))
    qtbot.waitUntil(lambda: not desk.window.operations.busy)
    asker = Answering(folder, desk)
    desk.wall.desk._asker = asker
    return asker


def preview(desk: Desk, qtbot: QtBot) -> Preview:
    desk.window.actions_["wall-sheet"].trigger()
    qtbot.waitUntil(lambda: desk.wall.desk.preview is not None)
    shown = desk.wall.desk.preview
    assert shown is not None
    qtbot.addWidget(shown)
    return shown


def press(shown: Preview, button: str, qtbot: QtBot) -> None:
    qtbot.mouseClick(shown.buttons[button], Qt.MouseButton.LeftButton)


def test_there_is_no_wall_sheet_of_nothing(desk: Desk, tmp_path: Path, qtbot: QtBot) -> None:
    assert not desk.window.actions_["wall-sheet"].isEnabled()
    opened(desk, tmp_path, qtbot)
    assert desk.window.actions_["wall-sheet"].isEnabled()


@pytest.mark.parametrize("language", ["en", "de"])
def test_the_pages_are_shown_before_anything_is_written(
    make: MakeDesk, tmp_path: Path, qtbot: QtBot, language: str
) -> None:
    desk = make(Preferences(language, Scheme.LIGHT))
    opened(desk, tmp_path, qtbot)
    shown = preview(desk, qtbot)
    assert len(shown.findChildren(PageView)) == len(shown.pages) > 1
    assert "1" in shown.said.text()
    assert [each.name for each in tmp_path.iterdir()] == ["vest.csv"]


def test_the_pages_are_drawn_and_not_blank(desk: Desk, tmp_path: Path, qtbot: QtBot) -> None:
    opened(desk, tmp_path, qtbot)
    view = preview(desk, qtbot).findChildren(PageView)[0]
    image = view.grab().toImage()
    tones = {image.pixel(x, y) for x in range(0, image.width(), 3) for y in range(0, 300, 3)}
    assert len(tones) > 20


def test_another_paper_shows_its_own_pages(desk: Desk, tmp_path: Path, qtbot: QtBot) -> None:
    opened(desk, tmp_path, qtbot)
    shown = preview(desk, qtbot)
    qtbot.keyClick(shown.papers, Qt.Key.Key_Right)
    assert shown.paper is PaperSize.A4
    assert shown.pages[0].paper.size is PaperSize.A4
    assert len(shown.area.findChildren(PageView)) == len(shown.pages)


@pytest.mark.parametrize(
    ("button", "name"), [("pdf", "wall sheet.pdf"), ("web", "wall sheet.html")]
)
def test_it_is_saved_under_the_name_that_was_given(
    desk: Desk, tmp_path: Path, qtbot: QtBot, button: str, name: str
) -> None:
    asker = opened(desk, tmp_path, qtbot)
    shown = preview(desk, qtbot)
    press(shown, button, qtbot)
    assert asker.asked[0].endswith(f"(*.{name.rpartition('.')[2]})")
    assert is_ours(tmp_path / name)
    assert shown.said.text() == f"{name} is written as no. 1."


def test_it_is_printed_and_the_number_counts_from_then_on(
    desk: Desk, tmp_path: Path, qtbot: QtBot
) -> None:
    opened(desk, tmp_path, qtbot)
    shown = preview(desk, qtbot)
    press(shown, "print", qtbot)
    assert shown.said.text() == "No. 1 is printed."
    assert (tmp_path / "printed.pdf").read_bytes().startswith(b"%PDF")
    shown.close()
    opened(desk, tmp_path, qtbot, CLEAN.replace("84-92", "83-92"))
    assert "no. 2" in preview(desk, qtbot).said.text()


def test_looking_alone_counts_nothing(desk: Desk, tmp_path: Path, qtbot: QtBot) -> None:
    opened(desk, tmp_path, qtbot)
    preview(desk, qtbot).close()
    opened(desk, tmp_path, qtbot, CLEAN.replace("84-92", "83-92"))
    assert "no. 1" in preview(desk, qtbot).said.text()


def test_a_suppliers_file_is_not_written_over(desk: Desk, tmp_path: Path, qtbot: QtBot) -> None:
    asker = opened(desk, tmp_path, qtbot)
    asker.answer = "vest.csv"
    shown = preview(desk, qtbot)
    press(shown, "pdf", qtbot)
    assert (tmp_path / "vest.csv").read_text(encoding="utf-8") == CLEAN
    assert "never overwritten" in shown.said.text()


def test_a_folder_that_is_not_there_is_said_and_nothing_is_counted(
    desk: Desk, tmp_path: Path, qtbot: QtBot
) -> None:
    asker = opened(desk, tmp_path, qtbot)
    asker.answer = "no/such/folder.pdf"
    shown = preview(desk, qtbot)
    press(shown, "pdf", qtbot)
    assert "folder" in shown.said.text()
    asker.answer = None
    press(shown, "pdf", qtbot)
    assert shown.said.text() == "wall sheet.pdf is written as no. 1."


def test_every_control_of_the_preview_has_a_name(desk: Desk, tmp_path: Path, qtbot: QtBot) -> None:
    opened(desk, tmp_path, qtbot)
    shown = preview(desk, qtbot)
    named = [*shown.buttons.values(), shown.papers, shown.area, *shown.findChildren(PageView)]
    assert all(each.accessibleName() or getattr(each, "text", str)() for each in named)
