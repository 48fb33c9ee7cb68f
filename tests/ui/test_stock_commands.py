"""Pasting the stock list: noted in the rows, filtered by a chip, taken back by undo."""

from __future__ import annotations

import pytest
from PySide6.QtGui import QGuiApplication

from charts.wording import Wording
from ui.desk import Desk
from ui.fitting_page.rows import Band, ModelRow
from ui.loading import Arrived, arrive, demo_paths


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
