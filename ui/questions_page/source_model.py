"""The sheet as a model: each cell as printed, true addresses at its heads."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from charts.corrections import Correction
from charts.sheet import Cell
from ui.questions_page.source_shape import SourceShape

Index = QModelIndex | QPersistentModelIndex

_DISPLAY: Final = Qt.ItemDataRole.DisplayRole.value
_TOOL_TIP: Final = Qt.ItemDataRole.ToolTipRole.value
_ACCESSIBLE: Final = Qt.ItemDataRole.AccessibleTextRole.value
_ALIGN: Final = Qt.ItemDataRole.TextAlignmentRole.value
_CENTRE: Final = Qt.AlignmentFlag.AlignCenter.value
_NOWHERE: Final = QModelIndex()
Said = Callable[[Correction], str]


class SourceModel(QAbstractTableModel):
    """Holds one sheet's shape; computes nothing."""

    def __init__(self, says: Said, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._says = says
        self.shape: SourceShape | None = None

    def show_shape(self, shape: SourceShape | None) -> None:
        """Put another sheet in the place of what was shown."""
        self.beginResetModel()
        self.shape = shape
        self.endResetModel()

    def cell(self, row: int, column: int) -> Cell | None:
        """The filled cell at a row and column of the grid."""
        if self.shape is None or not self._inside(row, column):
            return None
        return self.shape.sheet.cells.get(self.shape.there(row, column))

    def place(self, row: int, column: int) -> str:
        """The cell's place as a person writes it."""
        if self.shape is None or not self._inside(row, column):
            return ""
        return self.shape.sheet.place(*self.shape.there(row, column))

    def _inside(self, row: int, column: int) -> bool:
        return 0 <= row < self.rowCount() and 0 <= column < self.columnCount()

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        """The rows that are shown."""
        return 0 if parent.isValid() or self.shape is None else len(self.shape.rows)

    def columnCount(self, parent: Index = _NOWHERE) -> int:
        """The columns that are shown."""
        return 0 if parent.isValid() or self.shape is None else len(self.shape.columns)

    def data(self, index: Index, role: int = _DISPLAY) -> object:
        """What is printed; with its place for a screen reader."""
        if role not in (_DISPLAY, _TOOL_TIP, _ACCESSIBLE):
            return None
        cell = self.cell(index.row(), index.column())
        if role == _DISPLAY:
            return cell.printed if cell is not None and cell.shared_from is None else ""
        place = self.place(index.row(), index.column())
        if cell is None:
            return place
        said = self._says(cell.corrected) if cell.corrected is not None else cell.printed
        return f"{place}: {said}"

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = _DISPLAY) -> object:
        """Letters above, numbers at the left."""
        if self.shape is None or role not in (_DISPLAY, _ALIGN):
            return None
        if role == _ALIGN:
            return _CENTRE
        across = orientation is Qt.Orientation.Horizontal
        if section >= (self.columnCount() if across else self.rowCount()):
            return None
        return self.shape.column_name(section) if across else self.shape.row_name(section)
