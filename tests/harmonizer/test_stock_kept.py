"""The stock list is kept in the shop's folder with its day, as text that a person can read."""

from __future__ import annotations

from datetime import date, timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.answers_toml import AnswersFileError
from charts.wording import LANGUAGES, Wording
from charts.writers.whole_file import NotWrittenError
from harmonizer.shop.shop_folder import ShopFolder
from harmonizer.shop.stock_toml import (
    STALE_DAYS,
    StockList,
    is_stale,
    read_stock_list,
    write_stock_list,
)
from harmonizer.stock import read_stock
from harmonizer.workspace import Workspace

DAY = date(2026, 11, 30)
TEXT = 'Elm; M; in the house\nOak\tL\tto order\nwhat "this" is\n'
LINES = st.lists(
    st.text(st.characters(exclude_categories=["C", "Z"]), min_size=1).map(
        lambda word: f"{word} M da"
    ),
    min_size=1,
)


@given(LINES)
def test_a_list_reads_back_as_it_was_written(lines: list[str]) -> None:
    stock = StockList(read_stock("\n".join(lines)), DAY)
    assert read_stock_list(write_stock_list(stock)) == stock


def test_the_file_shows_its_day_and_one_line_a_line() -> None:
    text = write_stock_list(StockList(read_stock(TEXT), DAY))
    assert "on = 2026-11-30" in text
    assert '\n  "Elm; M; in the house",\n' in text


DATED = "format = 1\non = 2026-11-30\n"


@pytest.mark.parametrize(
    "text",
    ["format = 2\n", "format = 1\n", "on =", DATED, f"{DATED}lines = ['A M da']\nmore = 1\n"],
)
def test_a_list_that_cannot_be_used_is_refused_in_words(text: str) -> None:
    with pytest.raises(AnswersFileError) as raised:
        read_stock_list(text)
    assert all(raised.value.say(Wording(language)) for language in LANGUAGES)


def test_a_restart_knows_the_list_and_its_day(tmp_path: Path) -> None:
    folder = ShopFolder(tmp_path / "shop")
    first = Workspace()
    first.take_stock(read_stock(TEXT), DAY)
    first.save_shop(folder)
    second = Workspace()
    second.open_shop(ShopFolder(tmp_path / "shop"))
    assert (second.stock, second.stock_on) == (read_stock(TEXT), DAY)
    assert not second.can_undo


def test_a_list_taken_away_is_gone_after_a_restart_and_undo_brings_it_back(tmp_path: Path) -> None:
    folder = ShopFolder(tmp_path / "shop")
    workspace = Workspace()
    workspace.take_stock(read_stock(TEXT), DAY)
    workspace.save_shop(folder)
    workspace.take_stock(())
    assert workspace.stock_on is None
    workspace.save_shop(folder)
    assert ShopFolder(tmp_path / "shop").read().stock == StockList()
    workspace.undo()
    assert workspace.stock_on == DAY
    workspace.save_shop(folder)
    assert ShopFolder(tmp_path / "shop").read().stock.on == DAY


def test_a_damaged_list_is_named_and_never_written_over(tmp_path: Path) -> None:
    path = tmp_path / "shop" / "stock.toml"
    path.parent.mkdir()
    path.write_text("format = 9\n", encoding="utf-8")
    folder, workspace = ShopFolder(tmp_path / "shop"), Workspace()
    (refused,) = workspace.open_shop(folder).refused
    assert "stock.toml" in refused.say(Wording("en"))
    workspace.take_stock(read_stock(TEXT), DAY)
    with pytest.raises(NotWrittenError):
        workspace.save_shop(folder)
    assert path.read_text("utf-8") == "format = 9\n"


def test_without_a_day_a_list_is_of_today_and_the_day_is_part_of_the_step() -> None:
    workspace = Workspace()
    workspace.take_stock(read_stock(TEXT))
    assert workspace.stock_on is not None
    workspace.undo()
    assert workspace.stock_on is None


@pytest.mark.parametrize(
    ("days", "stale"), [(0, False), (STALE_DAYS - 1, False), (STALE_DAYS, True), (-3, False)]
)
def test_a_list_is_old_from_a_week_on(days: int, stale: bool) -> None:
    assert is_stale(read_stock(TEXT), DAY, DAY + timedelta(days=days)) is stale
    assert not is_stale((), DAY, DAY + timedelta(days=days))
