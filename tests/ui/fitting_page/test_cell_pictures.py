"""Cells are copied from what was painted, and never show anything else."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter

from charts.schema import Dimension
from harmonizer.fit import fit
from harmonizer.rider import Rider
from tests.ui.shop import rider_of, usual_fit
from ui.dress import Dress
from ui.fitting_page.cell_painter import CellPainter
from ui.fitting_page.cell_pictures import CellPictures
from ui.fitting_page.columns import Column
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.model_groups import ModelGroups
from ui.fitting_page.row_painter import words_in
from ui.fitting_page.rows import ModelRow, TapeCell, TapeHead
from ui.fitting_page.tape_cells import Spot, TapeCells
from ui.words import Words

BOX = QRectF(7, 5, 140, 32)


def some_row() -> ModelRow:
    found = usual_fit(6)
    sheet = FittingSheet(found, ModelGroups.of(found.table), Words("en"), frozenset())
    row = sheet.row(1)
    assert isinstance(row, ModelRow)
    return row


class Hand:
    """Paints one cell of words, and counts how often it is asked to."""

    def __init__(self, dress: Dress) -> None:
        self.cells = CellPainter(dress)
        self.row = some_row()
        self.painted = 0

    def __call__(self, spot: Spot) -> None:
        self.painted += 1
        self.cells.ground(spot, Column.VERDICT)
        self.cells.verdict(spot, self.row)

    def image(
        self, pictures: CellPictures | None, ratio: float = 1.0, chosen: bool = False
    ) -> QImage:
        image = QImage(round(160 * ratio), round(48 * ratio), QImage.Format.Format_RGB32)
        image.setDevicePixelRatio(ratio)
        image.fill(0xFFFFFFFF)
        painter = QPainter(image)
        spot = Spot(painter, BOX, chosen)
        if pictures is None:
            self(spot)
        else:
            pictures.paint(spot, words_in(self.row, Column.VERDICT), self)
        painter.end()
        return image


def test_a_copied_cell_looks_like_a_painted_one(dress: Dress) -> None:
    hand, pictures = Hand(dress), CellPictures()
    hand.image(pictures)
    assert hand.image(pictures) == hand.image(None)


def test_a_cell_seen_twice_is_copied_after_that(dress: Dress) -> None:
    hand, pictures = Hand(dress), CellPictures()
    for _ in range(5):
        hand.image(pictures)
    assert hand.painted == 2


def test_a_chosen_row_has_a_picture_of_its_own(dress: Dress) -> None:
    hand, pictures = Hand(dress), CellPictures()
    hand.image(pictures)
    assert hand.image(pictures, chosen=True) == hand.image(None, chosen=True)


def test_where_pixels_are_a_broken_share_of_ours_each_cell_is_painted(dress: Dress) -> None:
    hand, pictures = Hand(dress), CellPictures()
    for _ in range(3):
        assert hand.image(pictures, ratio=1.25) == hand.image(None, ratio=1.25)
    assert hand.painted == 6


def test_cells_of_one_row_are_told_apart() -> None:
    row = some_row()
    assert words_in(row, Column.MODEL) != words_in(row, Column.SIZE)


@pytest.mark.parametrize("chest", [82.0, 88.0, 92.0, 92.5, 93.5, 97.0, 103.5])
def test_a_tape_in_two_parts_looks_like_a_whole_one(dress: Dress, chest: float) -> None:
    """While the line moves the bars are copied and the rest is painted over them."""
    table = usual_fit(14).table
    groups, tapes = ModelGroups.of(table), TapeCells(dress)
    words = Words("en")

    def rider(of_chest: float) -> Rider:
        return rider_of(chest=of_chest, waist=76.0, hip=99.0, back_length=43.0)

    first = FittingSheet(fit(rider(92.0), table), groups, words, frozenset())
    tried = fit(rider(chest), table)
    sheet = FittingSheet(tried, groups, words, frozenset(), measured=first)
    head, parted = sheet.heads[Dimension.CHEST], 0
    for number in range(len(sheet)):
        row = sheet.row(number)
        if isinstance(row, ModelRow):
            cell = row.cells[Dimension.CHEST]
            whole = painted(partial(tapes.paint, head=head, cell=cell))
            if tapes.bars_in(head, cell) is not None:
                parted += 1
                assert painted(partial(in_two_parts, tapes, head, cell)) == whole
    assert parted > 5


def in_two_parts(tapes: TapeCells, head: TapeHead, cell: TapeCell, spot: Spot) -> None:
    tapes.paint_bars(spot, head, cell)
    tapes.paint_meeting(spot, head, cell, "")


def painted(paint: Callable[[Spot], None]) -> QImage:
    image = QImage(160, 48, QImage.Format.Format_RGB32)
    image.fill(0xFFFFFFFF)
    painter = QPainter(image)
    paint(Spot(painter, BOX))
    painter.end()
    return image
