"""Typing a chart beside its picture: checked as it is typed, saved, opened, gone on with."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, QRect, Qt, QUrl
from PySide6.QtGui import QColor, QDropEvent, QImage
from PySide6.QtTest import QAbstractItemModelTester, QTest
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from tests.ui.test_commands import Answers
from tests.ui.test_commands import opened as files_opened
from ui.desk import Desk
from ui.typed_chart.dialog import TypedChartDialog
from ui.typed_picture.typed_file import TypedChart, save_typed

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints", extend=True)
ROWS = (("Size", "Chest (cm)"), ("S", "84-92"), ("M", "92-98"), ("L", "98-104"))


@pytest.fixture(autouse=True)
def put_away(desk: Desk) -> Iterator[None]:
    yield
    if desk.typing.dialog is not None:
        desk.typing.dialog.saved()
    QApplication.processEvents()


@pytest.fixture
def picture(tmp_path: Path) -> Path:
    image = QImage(400, 300, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    path = tmp_path / "photo.png"
    assert image.save(str(path))
    return path


def opened(desk: Desk) -> TypedChartDialog:
    desk.window.actions_["type-chart"].trigger()
    dialog = desk.typing.dialog
    assert dialog is not None
    return dialog


def fill(dialog: TypedChartDialog, rows: tuple[tuple[str, ...], ...] = ROWS) -> None:
    for row, texts in enumerate(rows):
        for column, text in enumerate(texts):
            dialog.grid.setData(dialog.grid.index(row, column), text)
    dialog.check()


def test_tab_goes_on_to_the_next_cell(desk: Desk) -> None:
    dialog = opened(desk)
    dialog.table.setCurrentIndex(dialog.grid.index(0, 0))
    dialog.table.edit(dialog.grid.index(0, 0))
    editor = dialog.table.findChild(QLineEdit)
    assert editor is not None
    QTest.keyClicks(editor, "Size")
    QTest.keyClick(editor, Qt.Key.Key_Tab)
    assert dialog.grid.texts == {(0, 0): "Size"}
    assert dialog.table.currentIndex().column() == 1


def test_the_grid_is_checked_as_a_file_would_be(desk: Desk) -> None:
    dialog = opened(desk)
    fill(dialog)
    assert dialog.says.text() == "Sizes read: 3. Open questions: 0."
    fill(dialog, (*ROWS[:3], ("L", "12")))
    assert dialog.says.text() == "Sizes read: 3. Open questions: 1."


def test_a_finding_leads_to_its_cell(desk: Desk) -> None:
    dialog = opened(desk)
    fill(dialog, (*ROWS[:3], ("L", "12")))
    at = next(at for at, row in enumerate(dialog.found.rows) if row.is_open)
    dialog._go_to(dialog.found.index(at))
    index = dialog.table.currentIndex()
    assert (index.row(), index.column()) == (3, 1)


def test_typing_is_checked_when_it_rests(desk: Desk, qtbot: QtBot) -> None:
    dialog = opened(desk)
    with qtbot.waitSignal(dialog._wait.timeout, timeout=5000):
        dialog.grid.setData(dialog.grid.index(0, 0), "Size")
    assert dialog.says.text().startswith("Sizes read: 0.")


def test_a_picture_is_dropped_turned_and_marked(desk: Desk, picture: Path) -> None:
    dialog = opened(desk)
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(picture))])
    drop = QDropEvent(
        QPointF(5, 5),
        Qt.DropAction.CopyAction,
        data,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    dialog.picture.dropEvent(drop)
    assert dialog.picture.path == str(picture)
    fill(dialog)
    dialog.picture.turn()
    dialog.table.setCurrentIndex(dialog.grid.index(1, 1))
    view = dialog.picture.viewport()
    dialog.picture.fit()
    middle = view.rect().center()
    box = QRect(middle - QPoint(30, 20), middle + QPoint(30, 20))
    QTest.mousePress(view, Qt.MouseButton.LeftButton, pos=box.topLeft())
    QTest.mouseMove(view, box.center())
    QTest.mouseMove(view, box.bottomRight())
    QTest.mouseRelease(view, Qt.MouseButton.LeftButton, pos=box.bottomRight())
    assert dialog.chart.turned == 90
    left, top, wide, high = dialog.chart.spots[1, 1]
    assert 0 < left < left + wide < 400
    assert 0 < top < top + high < 300


def test_what_is_no_picture_is_said(desk: Desk, tmp_path: Path) -> None:
    (tmp_path / "photo.png").write_bytes(b"no picture")
    dialog = opened(desk)
    dialog.show_picture(str(tmp_path / "photo.png"))
    assert dialog.says.text() == "This file cannot be shown as a picture."


def test_it_is_saved_opened_and_gone_on_with(
    desk: Desk, qtbot: QtBot, picture: Path, tmp_path: Path
) -> None:
    dialog = opened(desk)
    fill(dialog)
    dialog.show_picture(str(picture), 90)
    dialog._mark((10, 20, 30, 12))
    target = tmp_path / "typed.tsv"
    desk.typing.asker = Answers([target])
    with qtbot.waitSignal(desk.window.operations.finished, timeout=20000):
        dialog._save()
    QApplication.processEvents()
    assert len(desk.window.workspace.offers) == 3
    desk.window.show_page("charts")
    again = opened(desk)
    assert again.grid.texts[3, 1] == "98-104"
    assert (again.picture.path, again.picture.turned) == (str(picture), 90)
    assert again.chart.spots == {(0, 0): (10, 20, 30, 12)}


def test_a_picture_that_came_among_the_files_is_typed_from(
    desk: Desk, qtbot: QtBot, picture: Path
) -> None:
    files_opened(desk, qtbot, picture)
    desk.window.show_page("charts")
    assert opened(desk).picture.path == str(picture)


def test_a_folder_with_a_typed_chart_has_no_file_that_cannot_be_read(
    desk: Desk, qtbot: QtBot, tmp_path: Path, picture: Path
) -> None:
    folder = tmp_path / "alder"
    folder.mkdir()
    save_typed(folder / "typed.tsv", TypedChart({(0, 0): "Size"}, {}, str(picture)))
    files_opened(desk, qtbot, folder)
    assert [file.reading.file for file in desk.window.workspace.files] == ["typed.tsv"]


def test_what_is_not_saved_is_thrown_away_only_when_asked_twice(desk: Desk) -> None:
    dialog = opened(desk)
    fill(dialog)
    dialog.reject()
    assert dialog.isVisible()
    assert "not saved" in dialog.says.text()
    dialog.reject()
    assert not dialog.isVisible()


def test_the_grid_keeps_to_qts_rules_and_grows(desk: Desk) -> None:
    dialog = opened(desk)
    QAbstractItemModelTester(dialog.grid, QAbstractItemModelTester.FailureReportingMode.Fatal)
    rows, columns = dialog.grid.rowCount(), dialog.grid.columnCount()
    dialog.grid.setData(dialog.grid.index(rows - 1, columns - 1), "x")
    assert (dialog.grid.rowCount(), dialog.grid.columnCount()) == (rows + 1, columns + 1)
