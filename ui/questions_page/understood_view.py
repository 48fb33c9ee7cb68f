"""The table of a chart as it was understood: its model, its cells, its view."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QRectF,
    Qt,
    Signal,
)
from PySide6.QtGui import QFont, QPainter, QPen
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHeaderView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from ui.dress import Dress
from ui.questions_page.understood import Part, Shown, UnderstoodRow
from ui.theme import Ink

Index = QModelIndex | QPersistentModelIndex

_DISPLAY: Final = Qt.ItemDataRole.DisplayRole.value
_ACCESSIBLE: Final = Qt.ItemDataRole.AccessibleTextRole.value
_NOWHERE: Final = QModelIndex()
_HIGH: Final = {Part.TITLE: 30.0, Part.HEAD: 36.0, Part.SIZE: 38.0}
_SIDE: Final = 8.0


class UnderstoodModel(QAbstractTableModel):
    """Holds the rows; computes nothing."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.rows: Sequence[UnderstoodRow] = ()
        self._columns = 0

    def show_rows(self, rows: Sequence[UnderstoodRow]) -> None:
        """Put ``rows`` in the place of what was shown."""
        self.beginResetModel()
        self.rows = rows
        self._columns = max((len(row.cells) for row in rows), default=0)
        self.endResetModel()

    def shown(self, row: int, column: int) -> Shown | None:
        """The cell at a row and column, None where there is none."""
        cells = self.rows[row].cells if 0 <= row < len(self.rows) else ()
        return cells[column] if 0 <= column < len(cells) else None

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        """Titles, heads and sizes."""
        return 0 if parent.isValid() else len(self.rows)

    def columnCount(self, parent: Index = _NOWHERE) -> int:
        """The columns of the widest chart."""
        return 0 if parent.isValid() else self._columns

    def data(self, index: Index, role: int = _DISPLAY) -> object:
        """The figure; both of them for a screen reader."""
        shown = self.shown(index.row(), index.column())
        if shown is None or role not in (_DISPLAY, _ACCESSIBLE):
            return None
        if role == _ACCESSIBLE and shown.below:
            return f"{shown.text}, {shown.below}"
        return shown.text


class UnderstoodDelegate(QStyledItemDelegate):
    """Two lines a cell: the maker's figure, the converted one below."""

    def __init__(self, model: UnderstoodModel, dress: Dress, parent: QWidget) -> None:
        super().__init__(parent)
        self._model = model
        self._dress = dress
        self._struck = QFont(dress.type_.small)
        self._struck.setStrikeOut(True)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """One cell."""
        box, dress = QRectF(option.rect), self._dress
        part = self._model.rows[index.row()].part
        painter.save()
        ground = dress.colours[Ink.BAND if part is Part.HEAD else Ink.GROUND]
        painter.fillRect(box, ground)
        rule = dress.colours[Ink.RULE]
        painter.fillRect(QRectF(box.left(), box.bottom() - 1, box.width(), 1), rule)
        shown = self._model.shown(index.row(), index.column())
        inner = box.adjusted(_SIDE * dress.unit, 0, -_SIDE * dress.unit / 2, 0)
        if shown is not None:
            self._paint_cell(painter, inner, part, shown, first=index.column() == 0)
        if option.state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QPen(dress.colours[Ink.FOCUS], 1.5 * dress.unit))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(box.adjusted(1, 1, -2, -2))
        painter.restore()

    def _paint_cell(
        self, painter: QPainter, box: QRectF, part: Part, shown: Shown, *, first: bool
    ) -> None:
        dress = self._dress
        strong = part is not Part.SIZE or first or shown.asked
        letters = dress.strong if strong else dress.plain
        colour = dress.colours[Ink.NEAR if shown.asked else Ink.TEXT]
        upper, lower = _halves(box, dress, two=bool(shown.below))
        if shown.printed:
            painter.setFont(self._struck)
            painter.setPen(dress.colours[Ink.QUIET])
            painter.drawText(upper, Qt.AlignmentFlag.AlignVCenter.value, shown.printed)
            upper = upper.adjusted(dress.small.width(shown.printed) + 5 * dress.unit, 0, 0, 0)
        letters.left(painter, upper, f"{shown.text} ?" if shown.asked else shown.text, colour)
        if shown.below:
            dress.small.left(painter, lower, shown.below, dress.colours[Ink.QUIET])


def _halves(box: QRectF, dress: Dress, *, two: bool) -> tuple[QRectF, QRectF]:
    if not two:
        return box, box
    line = dress.type_.line
    top = box.top() + (box.height() - 2 * line) / 2
    upper = QRectF(box.left(), top, box.width(), line)
    return upper, upper.translated(0, line)


class UnderstoodView(QTableView):
    """The charts of one sheet, one below the other.

    Signals:
        went(str): the value that was read at this place is chosen.
    """

    went = Signal(str)

    def __init__(self, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._dress = dress
        self.cells = UnderstoodModel(self)
        self.setModel(self.cells)
        self.setItemDelegate(UnderstoodDelegate(self.cells, dress, self))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setShowGrid(False)
        self.setTabKeyNavigation(False)
        self.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        for header in (self.horizontalHeader(), self.verticalHeader()):
            header.hide()
            header.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
            header.setMinimumSectionSize(1)
        self.selectionModel().currentChanged.connect(self._current_changed)

    def show_rows(self, rows: Sequence[UnderstoodRow]) -> None:
        """Show these charts."""
        place = self.verticalScrollBar().value()
        self.clearSpans()
        self.cells.show_rows(rows)
        for at, row in enumerate(rows):
            self.setRowHeight(at, round(_HIGH[row.part] * self._dress.unit))
            if row.part is Part.TITLE and self.cells.columnCount() > 1:
                self.setSpan(at, 0, 1, self.cells.columnCount())
        for column in range(self.cells.columnCount()):
            self.setColumnWidth(column, round(self._width(column)))
        self.verticalScrollBar().setValue(place)

    def go_to(self, place: str) -> None:
        """Bring the chart at this place to the top."""
        for at, row in enumerate(self.cells.rows):
            if row.part is Part.TITLE and row.cells[0].place == place:
                self.scrollTo(self.cells.index(at, 0), QTableView.ScrollHint.PositionAtTop)

    def _width(self, column: int) -> float:
        dress = self._dress
        shown = [
            row.cells[column]
            for row in self.cells.rows
            if row.part is not Part.TITLE and column < len(row.cells)
        ]
        widths = [
            max(
                dress.strong.width(f"{one.text} ?") + dress.small.width(one.printed),
                dress.small.width(one.below),
            )
            for one in shown
        ]
        corrected = 8.0 if any(one.printed for one in shown) else 0.0
        return max(widths, default=0.0) + (2 * _SIDE + corrected) * dress.unit

    def _current_changed(self, current: QModelIndex, before: QModelIndex) -> None:
        del before
        shown = self.cells.shown(current.row(), current.column())
        if shown is not None and shown.place and self.hasFocus():
            self.went.emit(shown.place)
