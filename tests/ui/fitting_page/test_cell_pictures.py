"""Cells are copied from what was painted, and never show anything else."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter

from tests.ui.shop import usual_fit
from ui.dress import Dress
from ui.fitting_page.cell_painter import CellPainter
from ui.fitting_page.cell_pictures import CellPictures
from ui.fitting_page.columns import Column
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.model_groups import ModelGroups
from ui.fitting_page.row_painter import words_in
from ui.fitting_page.rows import ModelRow
from ui.fitting_page.tape_cells import Spot
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


def test_a_cell_is_painted_once_and_copied_after_that(dress: Dress) -> None:
    hand, pictures = Hand(dress), CellPictures()
    for _ in range(5):
        hand.image(pictures)
    assert hand.painted == 1


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
