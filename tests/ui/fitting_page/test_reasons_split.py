"""How high the reasons are: what they need while the table has room, or what a person pulled."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from charts.schema import Dimension
from tests.ui.conftest import MakeDesk
from tests.ui.fitting_page.test_page import stocked
from tests.ui.shop import rider_of
from ui.desk import Desk
from ui.drawing.row_shape import Density
from ui.fitting_page.draft import Draft
from ui.fitting_page.page import FittingPage
from ui.fitting_page.reasons_split import ReasonsSplit, Room
from ui.preferences import Preferences, read_preferences, write_preferences
from ui.theme import Scheme

heights = st.integers(0, 900)


def caller() -> Draft:
    return Draft(rider_of(chest=92.7, waist=76.0, hip=99.0, back_length=43.0))


def told(desk: Desk, models: int = 3) -> FittingPage:
    """A page with everything said of the first row."""
    page = desk.window.fitting
    stocked(page, models)
    page.show_draft(caller())
    page.reasons.say_more()
    return page


def settled(page: FittingPage) -> int:
    for layout in (page.reasons.layout(), page.layout()):
        assert layout is not None
        layout.activate()
    return page.reasons.height()


@given(least=heights, most=heights, wanted=heights, spare=heights, present=heights | st.none())
def test_the_table_gives_only_what_it_does_not_need(
    least: int, most: int, wanted: int, spare: int, present: int | None
) -> None:
    high = Room(least, most, wanted, spare).height(present)
    assert least <= high <= max(least, min(most, spare))
    if least <= wanted <= min(most, spare) and present is None:
        assert high == wanted


@given(least=heights, most=heights, wanted=heights, other=heights, spare=heights)
def test_walking_the_rows_only_makes_them_higher(
    least: int, most: int, wanted: int, other: int, spare: int
) -> None:
    first = Room(least, most, wanted, spare).height(None)
    second = Room(least, most, other, spare).height(first)
    assert second >= first
    assert Room(least, most, wanted, spare).height(second) == second


def test_every_sentence_is_seen_while_the_table_has_room(desk: Desk) -> None:
    page = told(desk)
    assert settled(page) == page.reasons.wanted_height
    assert page.reasons.room.verticalScrollBar().maximum() == 0


def test_a_full_table_keeps_its_room(desk: Desk) -> None:
    page = told(desk, 30)
    share = round(page.split.height() * 0.3)
    assert settled(page) == min(desk.window.dress.type_.px(156), share)


def test_no_line_is_cut_by_the_lower_edge(desk: Desk) -> None:
    page = told(desk, 30)
    sentences = page.reasons.sentences
    for high in range(84, 240, 7):
        page.split.take_own(float(high))
        settled(page)
        bottom = page.reasons.room.viewport().height() - sentences.y()
        for box in sentences.boxes:
            first, last = sentences.whole_lines(box)
            line = box.height() / max(1, round(box.height() / sentences.dress.type_.line))
            assert first == 0
            assert last <= 0 or box.top() + last * line <= bottom + 2


def test_nothing_moves_while_a_value_is_tried(desk: Desk) -> None:
    page = told(desk)
    before = settled(page)
    page.try_value(Dimension.CHEST, 99.0)
    page.reasons.say_more()
    assert settled(page) == before


def test_a_pulled_height_wins_and_is_let_go_by_enter(desk: Desk) -> None:
    page = told(desk)
    needed = settled(page)
    handle = page.split.handle(1)
    handle.setFocus()
    QTest.keyClick(handle, Qt.Key.Key_Down)
    pulled = settled(page)
    assert pulled < needed
    page.show_draft(caller())
    page.reasons.say_more()
    assert settled(page) == pulled
    QTest.keyClick(handle, Qt.Key.Key_Return)
    assert settled(page) == needed
    assert page.split.own is None


def test_the_mouse_pulls_it_too_and_a_double_click_lets_go(desk: Desk) -> None:
    page = told(desk)
    needed = settled(page)
    handle = page.split.handle(1)
    middle = handle.rect().center()
    QTest.mousePress(handle, Qt.MouseButton.LeftButton, pos=middle)
    QTest.mouseMove(handle, middle + QPoint(0, 30))
    QTest.mouseRelease(handle, Qt.MouseButton.LeftButton, pos=middle)
    assert settled(page) != needed
    QTest.mouseDClick(handle, Qt.MouseButton.LeftButton, pos=middle)
    assert settled(page) == needed


@pytest.mark.parametrize("kept", [200.0, None])
def test_a_pulled_height_outlives_another_dress(desk: Desk, kept: float | None) -> None:
    desk.window.give_reasons(kept)
    desk.window.actions_["scheme-dark"].trigger()
    assert desk.window.fitting.split.own == kept


def test_a_pulled_height_is_kept_for_the_next_start(tmp_path: Path) -> None:
    file = tmp_path / "screen.json"
    write_preferences(file, Preferences(reasons=212.5))
    assert read_preferences(file).reasons == 212.5
    file.write_text('{"format": 1, "reasons": "high"}', encoding="utf-8")
    assert read_preferences(file).reasons is None
    file.write_text('{"format": 1, "reasons": 9}', encoding="utf-8")
    assert read_preferences(file).reasons == 84.0


def test_a_kept_height_holds_from_the_start(make: MakeDesk) -> None:
    desk = make(Preferences("en", Scheme.LIGHT, Density.LOW, reasons=230.0))
    page = told(desk)
    assert settled(page) == desk.window.dress.type_.px(230)


def test_the_handle_has_a_name_and_says_what_it_does(desk: Desk) -> None:
    split = desk.window.fitting.split
    assert isinstance(split, ReasonsSplit)
    assert split.handle(1).accessibleName() == "Height of the reasons"
    assert "as high as they need" in split.handle(1).accessibleDescription()
