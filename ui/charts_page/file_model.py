"""The table of files: its model, and the delegate that paints a cell."""

from __future__ import annotations

from collections.abc import Sequence
from enum import IntEnum
from typing import Final

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QRectF,
    Qt,
)
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from ui.charts_page.file_rows import FileRow
from ui.charts_page.first_question import DANGER_LOOK, FirstQuestion
from ui.drawing.marks import paint_mark
from ui.dress import Dress
from ui.theme import Ink
from ui.words import Words

Index = QModelIndex | QPersistentModelIndex

_DISPLAY: Final = Qt.ItemDataRole.DisplayRole.value
_ACCESSIBLE: Final = Qt.ItemDataRole.AccessibleTextRole.value
_TOOL_TIP: Final = Qt.ItemDataRole.ToolTipRole.value
_ALIGN: Final = Qt.ItemDataRole.TextAlignmentRole.value
_LEFT: Final = (Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter).value
INDENT: Final = 14.0
"""How far the words of a cell stand from its left edge, in pixels at a line of 16."""
_UPPER: Final = 0.52
"""The share of a row's height that its state has where a question stands below it."""
_NOWHERE: Final = QModelIndex()


class Column(IntEnum):
    """The columns, from left to right."""

    MAKER = 0
    MODELS = 1
    FILE = 2
    GAVE = 3
    STATE = 4


class FileModel(QAbstractTableModel):
    """Holds the rows; computes nothing."""

    def __init__(self, words: Words, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._words = words
        self._rows: Sequence[FileRow] = ()

    def show_rows(self, rows: Sequence[FileRow]) -> None:
        """Put ``rows`` in the place of what was shown."""
        self.beginResetModel()
        self._rows = rows
        self.endResetModel()

    def row(self, number: int) -> FileRow | None:
        """The row at ``number``, None beyond the end."""
        return self._rows[number] if 0 <= number < len(self._rows) else None

    def find(self, file: str, chart: str = "") -> int:
        """Where the file of this name, or one of its charts, stands; -1 where it is not."""
        names = [(row.file, row.chart) for row in self._rows]
        return names.index((file, chart)) if (file, chart) in names else -1

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        """One row a file, and one for each of several charts."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = _NOWHERE) -> int:
        """Maker, models, file, what it gave, its state."""
        return 0 if parent.isValid() else len(Column)

    def data(self, index: Index, role: int = _DISPLAY) -> object:
        """The words of a cell; the whole row for a screen reader."""
        row = self.row(index.row())
        if row is None:
            return None
        if role == _TOOL_TIP and index.column() == Column.STATE and row.first is not None:
            return row.first.sentence
        if role in (_DISPLAY, _TOOL_TIP):
            return (row.maker, row.models, row.name, row.gave, row.says)[index.column()]
        return row.sentence if role == _ACCESSIBLE else None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = _DISPLAY) -> object:
        """The names of the columns."""
        if orientation is not Qt.Orientation.Horizontal or not 0 <= section < len(Column):
            return None
        if role == _ALIGN:
            return _LEFT
        if role != _DISPLAY:
            return None
        name = Column(section).name.lower()
        return self._words.wording.say("questions", f"files-{name}")


class FileDelegate(QStyledItemDelegate):
    """One line a file, charts set in below it; the state with a sign before it."""

    def __init__(self, model: FileModel, dress: Dress, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._model = model
        self._dress = dress

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """One cell."""
        row = self._model.row(index.row())
        if row is None:
            return
        dress, box = self._dress, QRectF(option.rect)
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        ground = dress.colours[Ink.CHOSEN if chosen else Ink.GROUND]
        painter.save()
        painter.fillRect(box, ground)
        rule = QRectF(box.left(), box.bottom() - 1, box.width(), 1)
        painter.fillRect(rule, dress.colours[Ink.RULE])
        if chosen and index.column() == Column.MAKER:
            bar = QRectF(box.left(), box.top(), 3.5 * dress.unit, box.height() - 1)
            painter.fillRect(bar, dress.colours[Ink.ACCENT])
        self._paint_words(painter, box, index, row, ground)
        if option.state & QStyle.StateFlag.State_HasFocus:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(dress.colours[Ink.FOCUS], 1.5 * dress.unit))
            painter.drawRect(box.adjusted(1, 1, -2, -2))
        painter.restore()

    def _paint_words(
        self, painter: QPainter, box: QRectF, index: Index, row: FileRow, ground: QColor
    ) -> None:
        dress, column = self._dress, Column(index.column())
        inner = box.adjusted(INDENT * dress.unit, 0, -6 * dress.unit, 0)
        if column is Column.STATE and row.first is not None:
            self._paint_first(painter, inner, row.first, ground)
            inner = inner.adjusted(0, 2 * dress.unit, 0, -inner.height() * (1 - _UPPER))
        if column is Column.STATE:
            side = 10 * dress.unit
            sign = QRectF(inner.left(), inner.center().y() - side / 2, side, side)
            paint_mark(painter, sign, row.look.mark, dress.colours[row.look.ink], ground)
            inner.setLeft(inner.left() + side + 8 * dress.unit)
        if row.chart and column is Column.MODELS:
            inner.setLeft(inner.left() + INDENT * dress.unit)
        text = str(self._model.data(index))
        if column is Column.STATE and dress.strong.width(text) > inner.width():
            self._paint_in_two_lines(painter, inner, text)
            return
        strong = column in (Column.MAKER, Column.STATE) and not row.chart
        letters = dress.strong if strong else dress.plain
        quiet = column is Column.GAVE or (bool(row.chart) and column is Column.FILE)
        letters.left(painter, inner, text, dress.colours[Ink.QUIET if quiet else Ink.TEXT])

    def _paint_first(
        self, painter: QPainter, box: QRectF, first: FirstQuestion, ground: QColor
    ) -> None:
        """Which question comes first, below the state; a dangerous one with its sign."""
        dress = self._dress
        lower = box.adjusted(0, box.height() * _UPPER, 0, -2 * dress.unit)
        side = 10 * dress.unit
        if first.dangerous:
            sign = QRectF(lower.left(), lower.center().y() - side / 2, side, side)
            paint_mark(painter, sign, DANGER_LOOK.mark, dress.colours[DANGER_LOOK.ink], ground)
        ink = DANGER_LOOK.ink if first.dangerous else Ink.QUIET
        lower.setLeft(lower.left() + side + 8 * dress.unit)
        letters = dress.small_strong if first.dangerous else dress.small
        letters.left(painter, lower, first.text, dress.colours[ink])

    def _paint_in_two_lines(self, painter: QPainter, box: QRectF, text: str) -> None:
        """A long reason in small letters, so that it can be read without a pointer."""
        painter.setFont(self._dress.type_.small)
        painter.setPen(self._dress.colours[Ink.TEXT])
        flags = Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap
        painter.setClipRect(box)
        painter.drawText(box, flags.value, text)
