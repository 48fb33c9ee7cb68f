"""The grid that is typed into: it grows as it is filled, and holds nothing but texts."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from charts.sheet import column_letters

Index = QModelIndex | QPersistentModelIndex
At = tuple[int, int]

_DISPLAY: Final = Qt.ItemDataRole.DisplayRole.value
_EDIT: Final = Qt.ItemDataRole.EditRole.value
_NOWHERE: Final = QModelIndex()
_ROWS: Final = 12
_COLUMNS: Final = 7
_MOST: Final = 200


class GridModel(QAbstractTableModel):
    """Texts by row and column; one empty row and column more than are filled."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.texts: dict[At, str] = {}
        self._rows, self._columns = _ROWS, _COLUMNS

    def show_texts(self, texts: Mapping[At, str]) -> None:
        """Put ``texts`` in the place of what was typed."""
        self.beginResetModel()
        self.texts = dict(texts)
        self._rows = max([_ROWS, *(row + 2 for row, _ in texts)])
        self._columns = max([_COLUMNS, *(column + 2 for _, column in texts)])
        self.endResetModel()

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        """The rows there are to type into."""
        return 0 if parent.isValid() else self._rows

    def columnCount(self, parent: Index = _NOWHERE) -> int:
        """The columns there are to type into."""
        return 0 if parent.isValid() else self._columns

    def data(self, index: Index, role: int = _DISPLAY) -> object:
        """What was typed."""
        if role not in (_DISPLAY, _EDIT):
            return None
        return self.texts.get((index.row(), index.column()), "")

    def setData(self, index: Index, value: object, role: int = _EDIT) -> bool:
        """Take what was typed into a cell; an empty text empties it."""
        if role != _EDIT or not index.isValid():
            return False
        at, text = (index.row(), index.column()), str(value).strip()
        if text:
            self.texts[at] = text
        else:
            self.texts.pop(at, None)
        self.dataChanged.emit(index, index)
        self._grow(at)
        return True

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Every cell may be typed into."""
        usual = super().flags(index)
        return usual | Qt.ItemFlag.ItemIsEditable if index.isValid() else usual

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = _DISPLAY) -> object:
        """Letters above, numbers at the left."""
        if role != _DISPLAY or section < 0:
            return None
        across = orientation is Qt.Orientation.Horizontal
        return column_letters(section) if across else str(section + 1)

    def _grow(self, at: At) -> None:
        if at[0] == self._rows - 1 and self._rows < _MOST:
            self.beginInsertRows(_NOWHERE, self._rows, self._rows)
            self._rows += 1
            self.endInsertRows()
        if at[1] == self._columns - 1 and self._columns < _MOST:
            self.beginInsertColumns(_NOWHERE, self._columns, self._columns)
            self._columns += 1
            self.endInsertColumns()
