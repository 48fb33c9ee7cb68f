"""The list of files: its model, and the delegate that paints a row."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QRectF,
    QSize,
    Qt,
)
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from ui.charts_page.file_rows import FileRow
from ui.drawing.marks import paint_mark
from ui.dress import Dress
from ui.theme import Ink

Index = QModelIndex | QPersistentModelIndex

_DISPLAY: Final = Qt.ItemDataRole.DisplayRole.value
_ACCESSIBLE: Final = Qt.ItemDataRole.AccessibleTextRole.value
_TOOL_TIP: Final = Qt.ItemDataRole.ToolTipRole.value
_NOWHERE: Final = QModelIndex()


class FileModel(QAbstractListModel):
    """Holds the rows; computes nothing."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: Sequence[FileRow] = ()

    def show_rows(self, rows: Sequence[FileRow]) -> None:
        """Put ``rows`` in the place of what was shown."""
        self.beginResetModel()
        self._rows = rows
        self.endResetModel()

    def row(self, number: int) -> FileRow | None:
        """The row at ``number``, None beyond the end."""
        return self._rows[number] if 0 <= number < len(self._rows) else None

    def find(self, file: str) -> int:
        """Where the file of this name stands, -1 where it is not."""
        names = [row.reading.file for row in self._rows]
        return names.index(file) if file in names else -1

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        """One row a file."""
        return 0 if parent.isValid() else len(self._rows)

    def data(self, index: Index, role: int = _DISPLAY) -> object:
        """The name; what a screen reader says of the row."""
        row = self.row(index.row())
        if row is None:
            return None
        if role == _DISPLAY:
            return row.name
        return row.sentence if role in (_ACCESSIBLE, _TOOL_TIP) else None


class FileDelegate(QStyledItemDelegate):
    """Two lines a file: its name, and what it gave or what is the matter."""

    def __init__(self, model: FileModel, dress: Dress, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._model = model
        self.dress = dress

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Two lines and some air."""
        del index
        return QSize(option.rect.width(), self.dress.type_.px(50))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """One file."""
        row = self._model.row(index.row())
        if row is None:
            return
        painter.save()
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        box = QRectF(option.rect)
        self._paint_ground(painter, box, chosen)
        self._paint_lines(painter, box, row, chosen)
        if option.state & QStyle.StateFlag.State_HasFocus:
            self._paint_focus(painter, box)
        painter.restore()

    def _paint_ground(self, painter: QPainter, box: QRectF, chosen: bool) -> None:
        colours, px = self.dress.colours, self.dress.type_.px
        painter.fillRect(box, colours[Ink.CHOSEN if chosen else Ink.GROUND])
        painter.fillRect(QRectF(box.left(), box.bottom() - 1, box.width(), 1), colours[Ink.RULE])
        if chosen:
            bar = QRectF(box.left(), box.top(), px(3.5), box.height() - 1)
            painter.fillRect(bar, colours[Ink.ACCENT])

    def _paint_lines(self, painter: QPainter, box: QRectF, row: FileRow, chosen: bool) -> None:
        type_, colours = self.dress.type_, self.dress.colours
        side = float(type_.px(10))
        left = box.left() + type_.px(14)
        top = box.top() + type_.px(8)
        sign = QRectF(left, top + (type_.line - side) / 2, side, side)
        ground = colours[Ink.CHOSEN if chosen else Ink.GROUND]
        paint_mark(painter, sign, row.look.mark, colours[row.look.ink], ground)
        words = QRectF(left + side + type_.px(8), top, 0, type_.line)
        words.setRight(box.right() - type_.px(8))
        self._write(painter, words, row.name, strong=True)
        self._write(painter, words.translated(0, type_.line + 1), row.says, strong=False)

    def _write(self, painter: QPainter, box: QRectF, text: str, *, strong: bool) -> None:
        dress = self.dress
        letters = dress.strong if strong else dress.small
        letters.left(painter, box, text, dress.colours[Ink.TEXT if strong else Ink.QUIET])

    def _paint_focus(self, painter: QPainter, box: QRectF) -> None:
        wide = 2 * self.dress.unit
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(self.dress.colours[Ink.FOCUS], wide))
        painter.drawRect(box.adjusted(wide / 2, wide / 2, -wide / 2, -wide / 2 - 1))
