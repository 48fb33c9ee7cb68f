"""One row held, every other compared with it: by key, by mouse, from the row's menu."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QContextMenuEvent, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from charts.schema import Dimension
from tests.ui.fitting_page.test_fit_rows import laid_out, model_rows
from tests.ui.fitting_page.test_page import stocked
from tests.ui.shop import rider_of, usual_fit
from ui.desk import Desk
from ui.fitting_page.columns import Column
from ui.fitting_page.draft import Draft
from ui.fitting_page.page import FittingPage
from ui.fitting_page.rows import ModelRow
from ui.fitting_page.said import held_beside, said_of
from ui.words import Words


@pytest.fixture
def page(desk: Desk) -> FittingPage:
    page = desk.window.fitting
    stocked(page)
    page.show_draft(Draft(rider_of(chest=92.7, waist=76.0, hip=99.0, back_length=43.0)))
    page.table.setFocus()
    return page


def rows_of(page: FittingPage) -> list[ModelRow]:
    sheet = page.sheet
    assert sheet is not None
    return [row for at in range(len(sheet)) if isinstance(row := sheet.row(at), ModelRow)]


def lines_of(page: FittingPage) -> list[str]:
    page.reasons.say_more()
    return page.reasons.sentences.accessibleDescription().split("\n")


def middle(page: FittingPage, row: ModelRow, column: Column = Column.VERDICT) -> QPoint:
    assert page.sheet is not None
    at = page.sheet.find(row.key)
    assert at is not None
    return page.table.visualRect(page.table.rows.index(at, column)).center()


def test_one_key_holds_the_chosen_row_and_the_arrows_walk_the_others(
    desk: Desk, page: FittingPage
) -> None:
    first, second = rows_of(page)[:2]
    desk.window.actions_["hold"].trigger()
    assert page.held == first.key
    assert lines_of(page)[0].startswith("Held for comparing")
    QTest.keyClick(page.table, Qt.Key.Key_Down)
    said = lines_of(page)
    assert page.reasons.heading.text() == (
        f"{second.model} {second.size} against {first.model} {first.size}"
    )
    assert said[0].endswith(f"{first.model} {first.size} stands before it.")
    assert said[1].startswith(f"{second.model} {second.size}: ")
    assert said[2].startswith(f"{first.model} {first.size}: ")
    assert said[4].startswith("Chest: ")
    assert f"; {first.model} {first.size}: " in said[4]


def test_the_same_key_on_the_same_row_lets_go(desk: Desk, page: FittingPage) -> None:
    desk.window.actions_["hold"].trigger()
    desk.window.actions_["hold"].trigger()
    assert page.held is None
    assert "against" not in page.reasons.heading.text()


def test_escape_lets_go_when_nothing_is_tried(page: FittingPage) -> None:
    page.hold(rows_of(page)[1].key)
    page.try_value(Dimension.CHEST, 95.0)
    QTest.keyClick(page.table, Qt.Key.Key_Escape)
    assert page.held is not None
    QTest.keyClick(page.table, Qt.Key.Key_Escape)
    assert page.held is None


def test_ctrl_and_a_press_hold_a_row_and_move_no_choice(page: FittingPage) -> None:
    first, second = rows_of(page)[:2]
    control = Qt.KeyboardModifier.ControlModifier
    spot = middle(page, second)
    QTest.mouseClick(page.table.viewport(), Qt.MouseButton.LeftButton, control, spot)
    assert page.held == second.key
    chosen = page.table.chosen_row()
    assert chosen is not None
    assert chosen.key == first.key
    lines_of(page)
    assert page.reasons.heading.text().startswith(f"{first.model} {first.size} against ")


def menu_at(page: FittingPage, reason: QContextMenuEvent.Reason, spot: QPoint) -> QMenu:
    """What opens where a menu is asked for; an offscreen platform cannot show it."""
    opened: list[QMenu] = []
    page.table.row_hold.opens = lambda menu, _place: opened.append(menu)
    viewport = page.table.viewport()
    by_mouse = reason is QContextMenuEvent.Reason.Mouse
    if by_mouse:
        QTest.mousePress(viewport, Qt.MouseButton.RightButton, pos=spot)
    event = QContextMenuEvent(reason, spot, viewport.mapToGlobal(spot))
    QApplication.sendEvent(viewport if by_mouse else page.table, event)
    (menu,) = opened
    return menu


def test_the_rows_menu_holds_and_lets_go(page: FittingPage) -> None:
    first, second = rows_of(page)[:2]
    for held, says in ((second.key, "Hold"), (None, "Let go")):
        menu = menu_at(page, QContextMenuEvent.Reason.Mouse, middle(page, second))
        action = menu.actions()[0]
        assert action.text().replace("&", "").startswith(says)
        action.trigger()
        assert page.held == held
    chosen = page.table.chosen_row()
    assert chosen is not None
    assert chosen.key == first.key


def test_the_menu_key_is_about_the_current_row(page: FittingPage) -> None:
    spot = middle(page, rows_of(page)[3])
    menu_at(page, QContextMenuEvent.Reason.Keyboard, spot).actions()[0].trigger()
    assert page.held == rows_of(page)[0].key


def test_a_held_row_is_marked_by_shape_and_said_to_a_screen_reader(page: FittingPage) -> None:
    second = rows_of(page)[1]
    box = page.table.visualRect(
        page.table.rows.index(page.sheet.find(second.key) or 0, Column.MODEL)  # type: ignore[union-attr]  # shown
    )

    def picture() -> QImage:
        return page.table.viewport().grab(box).toImage()

    def bar(image: QImage) -> set[int]:
        return {image.pixel(1, y) for y in range(image.height() - 2)}

    plain = picture()
    assert len(bar(plain)) == 1
    page.hold(second.key)
    held = picture()
    assert len(bar(held)) > 1, "the bar is broken, so that it is not that of the chosen row"
    right = range(held.width() - 18, held.width() - 4)
    assert any(held.pixel(x, y) != plain.pixel(x, y) for x in right for y in range(14))
    at = page.table.rows.index(page.sheet.find(second.key) or 0, Column.MODEL)  # type: ignore[union-attr]  # shown
    assert "Held for comparing." in str(at.data(Qt.ItemDataRole.AccessibleTextRole.value))


def test_a_held_model_that_is_folded_away_is_still_compared_with() -> None:
    sheet = laid_out(usual_fit(12))
    first, last = model_rows(sheet)[0], model_rows(sheet)[-1]
    folded = laid_out(usual_fit(12), frozenset({last.band}))
    assert folded.find(last.key) is None
    assert held_beside(folded, first, last.key) == last.at


def test_in_german_too() -> None:
    sheet = laid_out(usual_fit(8))
    first, second = model_rows(sheet)[:2]
    said = said_of(sheet, second, first.key, Words("de")).soon()
    assert " gegen " in said.heading
    assert said.lines[0].text.endswith(" steht davor.")


def test_another_rider_holds_nothing(page: FittingPage) -> None:
    page.hold(rows_of(page)[1].key)
    page.show_draft(Draft(replace(rider_of(chest=100.0), name="Another")))
    assert page.held is None
