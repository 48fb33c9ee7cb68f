"""The fitting page as a fitter uses it: typed on the telephone, without mouse or dialog."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from charts.schema import Dimension
from harmonizer.fit import fit
from harmonizer.range_table import RangeTable
from harmonizer.rider import Measure, Rider
from tests.ui.shop import rider_of, shop_table
from ui.desk import Desk
from ui.fitting_page.page import FittingPage
from ui.fitting_page.rows import Band, BandRow, ModelRow


def stocked(page: FittingPage, models: int = 12) -> RangeTable:
    """Give the page a shop of its own."""
    table = shop_table(models)

    def compare(rider: Rider) -> object:
        return fit(rider, table)

    page.show_shop(table, compare)  # type: ignore[arg-type]  # the fit's own type, seen as object here
    return table


def typed(text: str) -> int:
    """Type into whatever has the keyboard; returns the number of keys pressed."""
    where = QApplication.focusWidget()
    assert isinstance(where, QWidget)
    QTest.keyClicks(where, text)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    return len(text) + 1


def models(page: FittingPage) -> list[str]:
    sheet = page.sheet
    assert sheet is not None
    rows = [sheet.row(at) for at in range(len(sheet))]
    return [row.key for row in rows if isinstance(row, ModelRow)]


def test_the_page_opens_with_the_cursor_in_chest(desk: Desk) -> None:
    field = desk.window.fitting.readings.fields[Measure.CHEST]
    assert QApplication.focusWidget() is field.line.edit


def test_four_numbers_to_the_first_verdict_in_at_most_forty_keys(desk: Desk) -> None:
    page = desk.window.fitting
    stocked(page)
    keys = sum(typed(text) for text in ("36 1/2 in", "76", "99", "43"))
    assert keys <= 40
    row = page.table.chosen_row()
    assert row is not None
    assert row.girths.text.startswith("girths")
    assert row.length.text


def test_enter_moves_on_to_the_next_reading(desk: Desk) -> None:
    fields = desk.window.fitting.readings.fields
    typed("93")
    assert QApplication.focusWidget() is fields[Measure.WAIST].line.edit


def test_while_a_value_is_typed_the_rows_are_dimmed_and_keep_their_place(desk: Desk) -> None:
    page = desk.window.fitting
    stocked(page)
    typed("93")
    before = models(page)
    QTest.keyClicks(QApplication.focusWidget(), "7")
    assert page.table.rows.dimmed
    assert models(page) == before
    QTest.keyClicks(QApplication.focusWidget(), "6")
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    assert not page.table.rows.dimmed


def test_a_whole_plausible_value_counts_after_a_moment(desk: Desk, qtbot: QtBot) -> None:
    page = desk.window.fitting
    stocked(page)
    with qtbot.waitSignal(page.readings.changed, timeout=3000):
        QTest.keyClicks(QApplication.focusWidget(), "93")
    assert page.sheet is not None


def test_without_a_back_length_the_girths_are_useful_and_the_length_is_not_known(
    desk: Desk,
) -> None:
    page = desk.window.fitting
    stocked(page)
    for text in ("93", "76", "99"):
        typed(text)
    sheet = page.sheet
    assert sheet is not None
    assert sheet.counts[Band.TRY] > 0
    row = page.table.chosen_row()
    assert row is not None
    assert row.length.text == "length not known"


def test_escape_in_a_field_takes_back_what_does_not_count_yet(desk: Desk) -> None:
    page = desk.window.fitting
    stocked(page)
    typed("93")
    field = page.readings.fields[Measure.CHEST]
    field.line.edit.setFocus()
    field.line.edit.selectAll()
    QTest.keyClicks(field.line.edit, "8")
    QTest.keyClick(field.line.edit, Qt.Key.Key_Escape)
    assert field.line.edit.text() == "93 cm"
    assert not page.table.rows.dimmed


def test_nothing_that_fits_unfolds_the_nearest_and_says_so(desk: Desk) -> None:
    page = desk.window.fitting
    stocked(page)
    for text in ("150", "150", "160"):
        typed(text)
    assert page.sheet is not None
    assert page.sheet.counts[Band.TRY] == 0
    assert models(page)
    assert "Nothing can be tried" in page.banner.text()


def test_a_band_folds_and_unfolds_by_the_keyboard(desk: Desk) -> None:
    page = desk.window.fitting
    stocked(page)
    for text in ("93", "76", "99", "43"):
        typed(text)
    assert page.sheet is not None
    at = page.sheet.band_rows[0]
    shown = len(models(page))
    page.table.setFocus()
    page.table.setCurrentIndex(page.table.rows.index(at, 0))
    QTest.keyClick(page.table, Qt.Key.Key_Return)
    row = page.sheet.row(at)
    assert isinstance(row, BandRow)
    assert row.folded
    assert len(models(page)) < shown
    QTest.keyClick(page.table, Qt.Key.Key_Space)
    assert len(models(page)) == shown


class TestTryingAValue:
    """The rider's line moved by key or mouse, what was measured kept."""

    @pytest.fixture
    def page(self, desk: Desk) -> FittingPage:
        page = desk.window.fitting
        stocked(page)
        for text in ("93", "76", "99", "43"):
            typed(text)
        page.table.setFocus()
        page.table.go_to_tape(Dimension.CHEST)
        return page

    def test_shift_and_an_arrow_move_the_line_by_half_a_centimetre(self, page: FittingPage) -> None:
        QTest.keyClick(page.table, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
        assert page.sheet is not None
        assert page.sheet.heads[Dimension.CHEST].rider_cm == 93.5
        assert page.sheet.heads[Dimension.CHEST].centre_cm == 93.0

    def test_the_order_is_frozen_and_the_verdicts_follow(self, page: FittingPage) -> None:
        before = models(page)
        first = page.table.chosen_row()
        page.try_value(Dimension.CHEST, 104.0)
        assert models(page) == before
        after = page.table.chosen_row()
        assert first is not None
        assert after is not None
        assert (after.size, after.girths) != (first.size, first.girths)

    def test_the_banner_says_what_is_tried_and_what_was_measured(self, page: FittingPage) -> None:
        page.try_value(Dimension.CHEST, 95.0)
        assert "95" in page.banner.text()
        assert "93" in page.banner.text()

    def test_escape_puts_it_back(self, page: FittingPage) -> None:
        page.try_value(Dimension.CHEST, 95.0)
        QTest.keyClick(page.table, Qt.Key.Key_Escape)
        assert not page.is_trying
        assert page.banner.text() == ""
        assert page.sheet is not None
        assert page.sheet.heads[Dimension.CHEST].rider_cm == 93.0

    def test_the_line_can_be_dragged(self, page: FittingPage) -> None:
        head, left, width = page.table.tapes()[0]
        assert head.centre_cm == 93.0
        viewport = page.table.viewport()
        row = page.table.visualRect(page.table.currentIndex())
        middle = round(left + (width - 2) / 2)
        start = row.center()
        start.setX(middle)
        end = row.center()
        end.setX(middle + 30)
        QTest.mousePress(viewport, Qt.MouseButton.LeftButton, pos=start)
        QTest.mouseMove(viewport, end)
        QTest.mouseRelease(viewport, Qt.MouseButton.LeftButton, pos=end)
        assert page.is_trying
        assert page.sheet is not None
        rider = page.sheet.heads[Dimension.CHEST].rider_cm
        assert rider is not None
        assert rider > 94.0

    def test_a_new_reading_ends_the_trial(self, page: FittingPage) -> None:
        page.try_value(Dimension.CHEST, 95.0)
        field = page.readings.fields[Measure.WAIST].line.edit
        field.setFocus()
        field.selectAll()
        typed("77")
        assert not page.is_trying


class TestOpenRiders:
    """Calls that are parked come back as they were left."""

    def test_a_parked_call_comes_back_with_its_readings(self, desk: Desk) -> None:
        page = desk.window.fitting
        typed("93")
        page.new_rider()
        assert page.readings.fields[Measure.CHEST].line.edit.text() == ""
        typed("101")
        page.go_rider(0)
        assert page.readings.fields[Measure.CHEST].line.edit.text() == "93 cm"
        page.next_rider()
        assert page.readings.fields[Measure.CHEST].line.edit.text() == "101 cm"

    def test_a_new_rider_while_the_present_one_is_blank_opens_none(self, desk: Desk) -> None:
        page = desk.window.fitting
        page.new_rider()
        assert len(page.calls.drafts) == 1

    def test_riders_from_files_stand_beside_the_one_on_the_line(self, desk: Desk) -> None:
        page = desk.window.fitting
        typed("93")
        page.open_riders([rider_of(chest=88.0), rider_of(chest=104.0)])
        assert len(page.calls.drafts) == 3
        assert page.calls.at == 1
