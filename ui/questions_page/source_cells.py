"""How one cell of a sheet is painted: hairlines, its text, a mark where a question hangs."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from ui.dress import Dress
from ui.questions_page.outlines import TAG_BAND
from ui.questions_page.source_model import Index, SourceModel
from ui.theme import Ink

SIDE: Final = 8.0
_FLAGS: Final = (
    Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap
)


class SourceDelegate(QStyledItemDelegate):
    """Paints cells as printed.

    Attributes:
        asked: cells of the grid with an open question.
        framed: cells of the grid that the chosen question is about.
    """

    def __init__(self, model: SourceModel, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model = model
        self._dress = dress
        self._struck = QFont(dress.type_.plain)
        self._struck.setStrikeOut(True)
        self.asked: frozenset[tuple[int, int]] = frozenset()
        self.framed: frozenset[tuple[int, int]] = frozenset()

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """One cell."""
        at = (index.row(), index.column())
        box = QRectF(option.rect)
        painter.save()
        self._paint_ground(painter, box, at)
        inner = box.adjusted(SIDE * self._dress.unit, 0, -SIDE * self._dress.unit, 0)
        shape = self._model.shape
        if shape is not None and at[0] in shape.tagged_rows:
            inner.setTop(inner.top() + TAG_BAND * self._dress.unit)
        self._paint_text(painter, inner, at)
        if option.state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QPen(self._dress.colours[Ink.FOCUS], 1.5 * self._dress.unit))
            painter.drawRect(box.adjusted(1, 1, -2, -2))
        painter.restore()

    def _paint_ground(self, painter: QPainter, box: QRectF, at: tuple[int, int]) -> None:
        colours = self._dress.colours
        painter.fillRect(box, colours[Ink.TRYING if at in self.framed else Ink.GROUND])
        rule = colours[Ink.RULE]
        painter.fillRect(QRectF(box.left(), box.bottom() - 1, box.width(), 1), rule)
        painter.fillRect(QRectF(box.right() - 1, box.top(), 1, box.height()), rule)

    def _paint_text(self, painter: QPainter, box: QRectF, at: tuple[int, int]) -> None:
        cell = self._model.cell(*at)
        if cell is None or cell.shared_from is not None:
            return
        dress, asked = self._dress, at in self.asked
        if cell.corrected is not None:
            self._paint_corrected(painter, box, cell.printed, cell.text)
            return
        colour = dress.colours[Ink.NEAR if asked else Ink.TEXT]
        if asked:
            sign = QRectF(box.right() - 6 * dress.unit, box.top(), 12 * dress.unit, box.height())
            dress.strong.left(painter, sign, "?", colour)
            box = box.adjusted(0, 0, -8 * dress.unit, 0)
        font = dress.type_.strong if cell.heading or asked else dress.type_.plain
        _write(painter, box, cell.printed, font, colour)

    def _paint_corrected(self, painter: QPainter, box: QRectF, printed: str, text: str) -> None:
        """The print stays, struck through, before what is read instead of it."""
        colours = self._dress.colours
        _write(painter, box, printed, self._struck, colours[Ink.QUIET])
        used = self._dress.plain.width(printed) + 6 * self._dress.unit
        rest = box.adjusted(used, 0, 0, 0)
        _write(painter, rest, text, self._dress.type_.strong, colours[Ink.TEXT])


def _write(painter: QPainter, box: QRectF, text: str, font: QFont, colour: QColor) -> None:
    painter.setFont(font)
    painter.setPen(colour)
    painter.drawText(box, _FLAGS.value, text)
