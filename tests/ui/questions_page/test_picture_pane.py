"""A typed chart on the questions page: its picture beside it, each value's place marked on it."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QGraphicsRectItem
from pytestqt.qtbot import QtBot

from tests.ui.test_commands import opened
from ui.desk import Desk
from ui.questions_page.page import QuestionsPage
from ui.typed_picture.typed_file import TypedChart, save_typed

TEXTS = {
    (0, 0): "Size", (0, 1): "Chest (cm)", (1, 0): "S", (1, 1): "84-92", (2, 0): "M", (2, 1): "12",
}  # fmt: skip
SPOTS = {(1, 1): (40, 30, 60, 20), (2, 1): (40, 60, 60, 20)}


@pytest.fixture
def typed(tmp_path: Path) -> Path:
    image = QImage(400, 300, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    assert image.save(str(tmp_path / "photo.png"))
    path = tmp_path / "typed" / "typed.tsv"
    path.parent.mkdir()
    chart = TypedChart(TEXTS, SPOTS, str(tmp_path / "photo.png"))
    save_typed(path, chart)
    return path


def page_of(desk: Desk, qtbot: QtBot, path: Path) -> QuestionsPage:
    opened(desk, qtbot, path)
    desk.window.show_page("charts")
    desk.window.charts.open_file(path.name)
    return desk.window.charts.questions


def standing_out(page: QuestionsPage) -> list[QRectF]:
    return [
        item.rect()
        for item in page.picture.view.scene().items()
        if isinstance(item, QGraphicsRectItem) and item.zValue() > 1
    ]


def test_the_picture_stands_beside_what_was_typed_from_it(
    desk: Desk, qtbot: QtBot, typed: Path
) -> None:
    page = page_of(desk, qtbot, typed)
    assert page.picture.isVisible()
    assert page.picture.view.path.endswith("photo.png")
    assert page.picture.missing.isHidden()
    assert not page.picture.view.acceptDrops(), "here it is only looked at"


def test_a_question_shows_where_its_value_stands_on_the_picture(
    desk: Desk, qtbot: QtBot, typed: Path
) -> None:
    page = page_of(desk, qtbot, typed)
    assert page.panel.current is not None
    assert page.panel.current.first.place == "B3"
    assert standing_out(page) == [QRectF(*SPOTS[2, 1])]


def test_going_through_the_cells_goes_through_the_picture(
    desk: Desk, qtbot: QtBot, typed: Path
) -> None:
    page = page_of(desk, qtbot, typed)
    page.source.view.setFocus()
    page.source.view.setCurrentIndex(page.source.view.cells.index(2, 1))
    QTest.keyClick(page.source.view, Qt.Key.Key_Up)
    assert standing_out(page) == [QRectF(*SPOTS[1, 1])]
    QTest.keyClick(page.source.view, Qt.Key.Key_Left)
    assert standing_out(page) == []


def test_a_press_on_the_picture_leads_to_the_cell(desk: Desk, qtbot: QtBot, typed: Path) -> None:
    page = page_of(desk, qtbot, typed)
    view = page.picture.view
    at = view.mapFromScene(QRectF(*SPOTS[1, 1]).center())
    QTest.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=at)
    current = page.source.view.currentIndex()
    assert (current.row(), current.column()) == (1, 1)
    assert page.panel.line.edit.text() == "84-92"


def test_a_picture_that_is_gone_is_said(desk: Desk, qtbot: QtBot, typed: Path) -> None:
    (typed.parent.parent / "photo.png").unlink()
    page = page_of(desk, qtbot, typed)
    assert page.picture.isVisible()
    assert "photo.png" in page.picture.missing.text()
    assert page.picture.view.isHidden()


def test_another_file_shows_no_picture(
    desk: Desk, qtbot: QtBot, typed: Path, tmp_path: Path
) -> None:
    page = page_of(desk, qtbot, typed)
    (tmp_path / "plain.csv").write_text("Size,Chest (cm)\nS,84-92\nM,92-98\n", encoding="utf-8")
    page = page_of(desk, qtbot, tmp_path / "plain.csv")
    assert page.picture.isHidden()
    page = page_of(desk, qtbot, typed)
    assert page.picture.isVisible()
    assert standing_out(page)
