"""Pasting the stock list: noted in the rows, filtered by a chip, taken back by undo."""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from charts.day_words import day_words
from charts.wording import Wording
from harmonizer.stock import read_stock
from ui.desk import Desk, make_desk
from ui.fitting_page.rows import Band, ModelRow
from ui.frame import Frame
from ui.loading import Arrived, arrive, demo_paths
from ui.preferences import Preferences
from ui.questions_page.case import today
from ui.theme import Scheme, Theme


@pytest.fixture(scope="module")
def demo() -> Arrived:
    return arrive(demo_paths(), Wording("en"), lambda _message, _fraction: None)


@pytest.fixture
def shop(desk: Desk, demo: Arrived) -> Desk:
    desk.commands.take_in(demo)
    calls = desk.window.fitting.calls
    names = [draft.given.name for draft in calls.drafts]
    desk.window.fitting.go_rider(names.index("Wrenna Oskelby"))
    return desk


def paste(desk: Desk, text: str) -> str:
    QGuiApplication.clipboard().setText(text)
    desk.window.actions_["paste-stock"].trigger()
    return desk.window.notice.says.text()


def first(desk: Desk) -> ModelRow:
    sheet = desk.window.fitting.sheet
    assert sheet is not None
    row = sheet.row(sheet.first_model or 0)
    assert isinstance(row, ModelRow)
    return row


def named(row: ModelRow, words: str) -> str:
    return f"{row.maker} {row.model} {row.size} {row.length_option} {words}\n"


def test_without_a_list_there_is_no_filter_for_it(shop: Desk) -> None:
    assert shop.window.top.stock.isHidden()


def test_a_list_is_noted_in_the_row_and_brings_its_filter(shop: Desk) -> None:
    said = paste(shop, named(first(shop), "to order"))
    assert "one size" in said
    assert first(shop).note.startswith("to order")
    assert not shop.window.top.stock.isHidden()


def test_the_filter_puts_what_is_not_in_the_house_aside(shop: Desk) -> None:
    row = first(shop)
    paste(shop, named(row, "to order"))
    shop.window.top.stock.click()
    sheet = shop.window.fitting.sheet
    assert sheet is not None
    best = first(shop)
    assert (best.key, best.size, best.length_option) != (row.key, row.size, row.length_option)
    shop.window.top.stock.click()
    assert first(shop).key == row.key


def test_undo_takes_the_list_back(shop: Desk) -> None:
    before = first(shop).note
    paste(shop, named(first(shop), "to order"))
    shop.window.actions_["undo"].trigger()
    assert first(shop).note == before
    assert shop.window.top.stock.isHidden()


def test_what_is_not_understood_is_said_and_changes_nothing(shop: Desk) -> None:
    said = paste(shop, "Nobody knows M in stock")
    assert "Nobody knows M in stock" in said
    assert not shop.window.workspace.stock
    assert "no text" in paste(shop, "  ")


def test_unclear_lines_are_counted(shop: Desk) -> None:
    said = paste(shop, named(first(shop), "in stock") + "what M in stock\n")
    assert "One line is unclear" in said
    assert Band.TRY in shop.window.fitting.sheet.counts  # type: ignore[union-attr]  # a rider is on the line


def test_the_filter_says_of_which_day_the_list_is(shop: Desk) -> None:
    paste(shop, named(first(shop), "to order"))
    day = day_words(today(), Wording("en"))
    assert shop.window.top.stock.text() == f"in the house · {day}"
    assert day in shop.window.top.stock.accessibleDescription()


def test_where_there_is_no_room_the_day_is_left_out(shop: Desk) -> None:
    paste(shop, named(first(shop), "to order"))
    shop.frame.resize(760, 700)
    assert shop.window.top.stock.text() == "in the house"
    assert "stock list of" in shop.window.top.stock.toolTip()


def test_an_old_list_is_said_to_be_old(shop: Desk) -> None:
    lines = read_stock(named(first(shop), "to order"))
    shop.window.workspace.take_stock(lines, today() - timedelta(days=28))
    assert shop.window.top.stock.text().startswith("in the house? · ")
    assert "28 days old" in shop.window.top.stock.toolTip()


def test_the_list_is_taken_away_by_its_action_and_comes_back_by_undo(shop: Desk) -> None:
    drop = shop.window.actions_["drop-stock"]
    assert not drop.isEnabled()
    paste(shop, named(first(shop), "to order"))
    assert drop.isEnabled()
    drop.trigger()
    assert shop.window.workspace.stock == ()
    assert shop.window.top.stock.isHidden()
    shop.window.actions_["undo"].trigger()
    assert shop.window.workspace.stock


def test_the_next_start_has_the_list_and_says_when_it_is_old(
    qapp: QApplication, qtbot: QtBot, tmp_path: Path, demo: Arrived
) -> None:
    kept = tmp_path / "screen.json"

    def start() -> Desk:
        frame = Frame(Theme(Scheme.LIGHT))
        qtbot.addWidget(frame)
        return make_desk(qapp, frame, Preferences("en", Scheme.LIGHT), kept)

    desk = start()
    desk.window.workspace.take_stock(read_stock("Hedgetarrow M da"), today() - timedelta(days=1))
    desk.shop.keep()
    again = start()
    assert again.window.notice.isHidden()
    assert again.window.workspace.stock == desk.window.workspace.stock
    again.window.workspace.take_stock(again.window.workspace.stock, today() - timedelta(days=30))
    again.shop.keep()
    old = start()
    assert "30 days old" in old.window.notice.says.text()
    old.commands.take_in(demo)
    assert not old.window.top.stock.isHidden()
