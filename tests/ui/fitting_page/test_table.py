"""The table: its model behaves, its rows are as high as asked, every cell paints and speaks."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtTest import QTest
from pytestqt.modeltest import ModelTester
from pytestqt.qtbot import QtBot

from tests.ui.shop import usual_fit
from ui import appearance
from ui.drawing.row_shape import Density
from ui.dress import Dress
from ui.fitting_page.columns import Column
from ui.fitting_page.fit_rows import FOLDED_AT_FIRST, FittingSheet
from ui.fitting_page.model_groups import ModelGroups
from ui.fitting_page.rows import ModelRow
from ui.fitting_page.table import FittingTable
from ui.fitting_page.table_model import FittingModel
from ui.theme import Ink, Scheme, Theme
from ui.words import Words


def sheet_of(models: int, words: Words, **changes: float) -> FittingSheet:
    found = usual_fit(models, **changes)
    return FittingSheet(found, ModelGroups.of(found.table), words, FOLDED_AT_FIRST)


@pytest.fixture
def table(qtbot: QtBot, words: Words, dress: Dress) -> FittingTable:
    table = FittingTable(words, dress)
    qtbot.addWidget(table)
    table.resize(1094, 480)
    table.show_sheet(sheet_of(16, words, winter_mm=6.0))
    with qtbot.waitExposed(table):
        table.show()
    return table


def ink_in(image: QImage, box: QRect, colour: QColor) -> int:
    """How many pixels in ``box`` have ``colour``."""
    scale = image.devicePixelRatio()
    return sum(
        image.pixelColor(round(x * scale), round(y * scale)) == colour
        for x in range(box.left(), box.right())
        for y in range(box.top(), box.bottom())
    )


def test_the_model_keeps_every_rule_of_a_model(qtmodeltester: ModelTester, words: Words) -> None:
    model = FittingModel(words)
    model.show_sheet(sheet_of(8, words))
    qtmodeltester.check(model)


def test_an_empty_model_keeps_them_too(qtmodeltester: ModelTester, words: Words) -> None:
    qtmodeltester.check(FittingModel(words))


def test_the_accessible_text_of_every_tape_is_its_sentence(
    table: FittingTable, words: Words
) -> None:
    role = Qt.ItemDataRole.AccessibleTextRole
    sheet = table.rows.sheet
    assert sheet is not None
    for at in range(len(sheet)):
        if isinstance(sheet.row(at), ModelRow):
            for column in (Column.MODEL, Column.CHEST, Column.BACK):
                said = table.rows.index(at, column).data(role)
                assert isinstance(said, str)
                assert said.endswith(".")


@pytest.mark.parametrize(
    ("density", "high"), [(Density.LOW, 32), (Density.MIDDLE, 48), (Density.TALL, 64)]
)
def test_rows_are_as_high_as_the_density_says(
    qtbot: QtBot, words: Words, density: Density, high: int
) -> None:
    type_ = appearance.fonts()
    table = FittingTable(words, Dress.of(Theme(Scheme.LIGHT), type_, density))
    qtbot.addWidget(table)
    table.show_sheet(sheet_of(8, words))
    first = table.rows.sheet.first_model if table.rows.sheet else None
    assert first is not None
    assert table.rowHeight(first) == pytest.approx(high * type_.line / 16, abs=1)


def test_touch_targets_of_the_tall_density_reach_44_pixels() -> None:
    """Source: WCAG 2.1, success criterion 2.5.5, 44 by 44."""
    dress = Dress.of(Theme(Scheme.LIGHT), appearance.fonts(), Density.TALL)
    assert dress.shape.height >= 44


def test_twelve_rows_stand_on_a_screen_of_1366_by_768(make: object) -> None:
    from tests.ui.fitting_page.test_page import stocked, typed

    desk = make(size=(1366, 768))  # type: ignore[operator]  # the fixture makes a desk
    page = desk.window.fitting
    stocked(page, 40)
    for text in ("93", "76", "99", "43"):
        typed(text)
    rows = range(len(page.sheet))
    high = page.table.viewport().height()
    table = page.table
    whole = [
        at
        for at in rows
        if isinstance(page.sheet.row(at), ModelRow)
        and table.rowViewportPosition(at) + table.rowHeight(at) <= high
    ]
    assert len(whole) >= 12


def test_the_riders_line_runs_through_every_row(table: FittingTable, dress: Dress) -> None:
    image = table.viewport().grab().toImage()
    _, left, width = table.tapes()[0]
    line = dress.colours[Ink.RIDER]
    sheet = table.rows.sheet
    assert sheet is not None
    for at in range(min(8, len(sheet))):
        top = table.rowViewportPosition(at)
        box = QRect(round(left), top + 2, round(width), table.rowHeight(at) - 4)
        assert ink_in(image, box, line) >= box.height() - 1


def test_rows_typed_over_are_fainter(table: FittingTable, dress: Dress) -> None:
    first = table.rows.sheet.first_model if table.rows.sheet else None
    assert first is not None
    box = table.visualRect(table.rows.index(first + 1, Column.MODEL))
    dark = dress.colours[Ink.TEXT]
    before = ink_in(table.viewport().grab().toImage(), box, dark)
    table.set_dimmed(True)
    after = ink_in(table.viewport().grab().toImage(), box, dark)
    assert before > 0
    assert after == 0


def test_the_chosen_model_stays_chosen_when_the_rows_move(
    table: FittingTable, words: Words
) -> None:
    at = table.rows.sheet.first_model if table.rows.sheet else None
    assert at is not None
    table.setFocus()
    QTest.keyClick(table, Qt.Key.Key_Down)
    chosen = table.chosen_row()
    assert chosen is not None
    table.show_sheet(sheet_of(16, words, chest=95.0))
    again = table.chosen_row()
    assert again is not None
    assert again.key == chosen.key


def test_the_arrows_reach_every_tape_also_where_not_all_fit(
    table: FittingTable, qtbot: QtBot
) -> None:
    table.resize(560, 400)
    table.setFocus()
    first = table.rows.sheet.first_model if table.rows.sheet else None
    assert first is not None
    table.setCurrentIndex(table.rows.index(first, Column.MODEL))
    for _ in range(6):
        QTest.keyClick(table, Qt.Key.Key_Right)
    assert table.currentIndex().column() == Column.BACK
    assert not table.isColumnHidden(Column.BACK)
    assert not table.isColumnHidden(Column.MODEL)


@pytest.mark.parametrize("scheme", [Scheme.LIGHT, Scheme.DARK, Scheme.FORCED])
def test_every_scheme_paints(qtbot: QtBot, words: Words, scheme: Scheme) -> None:
    dress = Dress.of(Theme(scheme), appearance.fonts())
    table = FittingTable(words, dress)
    qtbot.addWidget(table)
    table.resize(1094, 300)
    table.show_sheet(sheet_of(6, words))
    image = table.viewport().grab().toImage()
    assert ink_in(image, QRect(0, 0, 200, 200), dress.colours[Ink.TEXT]) > 20
