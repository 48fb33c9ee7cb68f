"""A file with several charts: each has a row and a state of its own, by keys alone."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from harmonizer.shop.season import State
from tests.ui.test_commands import opened
from ui.charts_page.file_rows import file_rows
from ui.desk import Desk

TWO = (
    "Women\n\nSize;Chest;Waist\nS;84-92;68-76\nM;92-98;76-82\nL;98-104;82-90\n\n"
    "Men\n\nSize;Chest (cm);Waist (cm)\nS;94-98;80-84\nM;98-102;84-88\nL;102-108;88-94\n"
)
FILE = "Alderway/two.csv"
MEN = "A10:C13 men"


@pytest.fixture
def shop(desk: Desk, qtbot: QtBot, tmp_path: Path) -> Desk:
    (tmp_path / "Alderway").mkdir()
    (tmp_path / "Alderway" / "two.csv").write_text(TWO, encoding="utf-8")
    opened(desk, qtbot, tmp_path)
    desk.window.show_page("charts")
    return desk


def states(desk: Desk) -> list[State]:
    state = desk.window.workspace.state(FILE)
    return [state.state, *(one.state for one in state.charts)]


def test_the_charts_stand_below_their_file(shop: Desk) -> None:
    rows = file_rows(shop.window.workspace, shop.window.words)
    assert [(row.file, row.chart) for row in rows] == [
        (FILE, ""), (FILE, "A3:C6 women"), (FILE, MEN),
    ]  # fmt: skip
    assert [row.models for row in rows[1:]] == ["women", "men"]
    assert [row.says for row in rows] == [
        "1 open question", "1 open question", "Ready: look it over and approve it",
    ]  # fmt: skip


def test_one_chart_is_kept_aside_from_its_row_and_opened_again(shop: Desk) -> None:
    charts, actions = shop.window.charts, shop.window.actions_
    charts.table.choose(charts.files.find(FILE, MEN))
    assert not actions["reopen"].isEnabled()
    actions["keep-aside"].trigger()
    assert states(shop) == [State.QUESTIONS, State.QUESTIONS, State.ASIDE]
    assert charts.chosen_chart == MEN, "the same row stays chosen"
    assert not actions["keep-aside"].isEnabled()
    charts.table.choose(charts.files.find(FILE))
    assert actions["keep-aside"].isEnabled(), "the file's row stands for the whole"
    charts.table.choose(charts.files.find(FILE, MEN))
    actions["reopen"].trigger()
    assert states(shop)[2] is State.READY
    actions["undo"].trigger()
    assert states(shop)[2] is State.ASIDE


def test_enter_on_a_chart_opens_the_file_at_it_and_approves_it_alone(shop: Desk) -> None:
    charts, actions = shop.window.charts, shop.window.actions_
    charts.table.choose(charts.files.find(FILE, MEN))
    QTest.keyClick(charts.table, Qt.Key.Key_Return)
    head = charts.questions.head
    assert head.charts.isVisible()
    assert head.state.text() == "Ready: look it over and approve it"
    assert head.approve.text().startswith("Approve chart")
    actions["approve"].trigger()
    assert states(shop) == [State.QUESTIONS, State.QUESTIONS, State.APPROVED]
    assert charts.opened == FILE, "the other chart still wants a person"
    assert charts.chosen_chart == "A3:C6 women"
    assert head.state.text() == "1 open question"
    titles = [row.cells[0].text for row in charts.questions.understood.view.cells.rows]
    assert any("men" in title and "Approved by" in title for title in titles)


def test_the_last_chart_leads_back_to_the_files(shop: Desk) -> None:
    charts, actions = shop.window.charts, shop.window.actions_
    charts.table.choose(charts.files.find(FILE, MEN))
    QTest.keyClick(charts.table, Qt.Key.Key_Return)
    actions["approve"].trigger()
    QTest.keyClick(charts.questions.panel.list, Qt.Key.Key_1)
    actions["approve"].trigger()
    assert states(shop) == [State.APPROVED] * 3
    assert charts.opened == ""


def test_keys_go_from_chart_to_chart_and_back_to_the_whole_file(shop: Desk) -> None:
    charts, actions = shop.window.charts, shop.window.actions_
    assert not actions["next-chart"].isEnabled()
    charts.open_file(FILE)
    seen = []
    for _ in range(3):
        actions["next-chart"].trigger()
        seen.append(charts.chosen_chart)
    assert seen == ["A3:C6 women", MEN, ""]
    actions["chart-before"].trigger()
    assert charts.chosen_chart == MEN
    view = charts.questions.source.view
    assert view.framed, "the chart is brought into sight"


def test_a_file_partly_closed_says_how_much(shop: Desk) -> None:
    charts, actions = shop.window.charts, shop.window.actions_
    charts.table.choose(charts.files.find(FILE, MEN))
    actions["keep-aside"].trigger()
    row = charts.files.row(charts.files.find(FILE))
    assert row is not None
    assert row.says == "1 open question; 1 of 2 charts closed"


def test_a_file_of_one_chart_shows_no_choice(desk: Desk, qtbot: QtBot, tmp_path: Path) -> None:
    (tmp_path / "one.csv").write_text("Size;Chest (cm)\nS;84-92\nM;92-98\n", encoding="utf-8")
    opened(desk, qtbot, tmp_path)
    desk.window.show_page("charts")
    desk.window.charts.open_file("one.csv")
    assert not desk.window.charts.questions.head.charts.isVisible()
    assert not desk.window.actions_["next-chart"].isEnabled()
