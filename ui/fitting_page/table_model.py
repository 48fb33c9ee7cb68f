"""The table's model: rows of a sheet, their words and what a screen reader says of them."""

from __future__ import annotations

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from ui.fitting_page.columns import TAPE_COLUMNS, Column
from ui.fitting_page.rows import Band, BandRow, ModelRow, Sheet
from ui.words import Words

Index = QModelIndex | QPersistentModelIndex

# Roles compared as plain numbers: an enum member costs more than the rest of the call.
_DISPLAY = Qt.ItemDataRole.DisplayRole.value
_ACCESSIBLE = Qt.ItemDataRole.AccessibleTextRole.value
_TOOL_TIP = Qt.ItemDataRole.ToolTipRole.value
_NOWHERE = QModelIndex()
_CAN_BE_CHOSEN = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
_HEADINGS = {
    Column.MODEL: "head-model",
    Column.SIZE: "head-size",
    Column.VERDICT: "head-verdict",
    Column.NOTE: "head-note",
}


class FittingModel(QAbstractTableModel):
    """Holds one sheet; computes nothing.

    Attributes:
        words: what the screen says, in the reader's language.
        dimmed: a reading is being typed, so what is shown is not yet about it.
        held: the model whose row others are compared with, None where there is none.
    """

    def __init__(self, words: Words, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.words = words
        self._sheet: Sheet | None = None
        self.dimmed = False
        self.held: str | None = None

    @property
    def sheet(self) -> Sheet | None:
        """What is shown, None before anything is."""
        return self._sheet

    def show_sheet(self, sheet: Sheet | None) -> bool:
        """Put ``sheet`` in the place of what was shown; true where the rows lie as before.

        A reading that only moves margins leaves the bands as they are: then the cells change and
        nothing else, which costs a view a fraction of a whole new model. Of the columns' heads
        the view is not told by a signal: at that it lays the whole table out anew.
        """
        before = self._sheet
        if before is None or sheet is None or not _laid_alike(before, sheet):
            self.beginResetModel()
            self._sheet = sheet
            self.endResetModel()
            return False
        self._sheet = sheet
        self.dataChanged.emit(self.index(0, 0), self.index(len(sheet) - 1, len(Column) - 1))
        return True

    def row(self, number: int) -> ModelRow | BandRow | None:
        """The row at ``number``, None beyond the end."""
        if self._sheet is None or not 0 <= number < len(self._sheet):
            return None
        return self._sheet.row(number)

    def heading_of(self, band: Band | None) -> int | None:
        """Where the heading of ``band`` stands, None where it does not."""
        if self._sheet is None or band is None:
            return None
        rows = ((at, self._sheet.row(at)) for at in self._sheet.band_rows)
        return next((at for at, row in rows if isinstance(row, BandRow) and row.band is band), None)

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        """The rows of the sheet; a cell has none below it."""
        return 0 if parent.isValid() or self._sheet is None else len(self._sheet)

    def columnCount(self, parent: Index = _NOWHERE) -> int:
        """Always the same columns; the view hides some."""
        return 0 if parent.isValid() else len(Column)

    def data(self, index: Index, role: int = _DISPLAY) -> object:
        """The words of a cell, and its sentence for a screen reader and as a tip."""
        if role not in (_DISPLAY, _ACCESSIBLE, _TOOL_TIP):
            return None
        row = self.row(index.row())
        if row is None:
            return None
        if isinstance(row, BandRow):
            return row.text if index.column() == 0 or role == _ACCESSIBLE else None
        column = Column(index.column())
        return _text(row, column) if role == _DISPLAY else self._sentence(row, column)

    def _sentence(self, row: ModelRow, column: Column) -> str | None:
        if self._sheet is None:
            return None
        if column is Column.NOTE:
            return row.note
        said = self._sheet.sentence(row, TAPE_COLUMNS.get(column))
        if row.key == self.held and column not in TAPE_COLUMNS:
            return self.words("row-sentence-held", row=said)
        return said

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = _DISPLAY) -> object:
        """The columns' titles; for a tape also the reading at its centre."""
        if orientation is not Qt.Orientation.Horizontal or role not in (_DISPLAY, _ACCESSIBLE):
            return None
        column = Column(section)
        if column in _HEADINGS:
            return self.words(_HEADINGS[column])
        head = self._sheet.heads.get(TAPE_COLUMNS[column]) if self._sheet else None
        if head is None:
            return self.words(f"dimension-{TAPE_COLUMNS[column].value}")
        return head.title if role == _DISPLAY else head.sentence

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Every cell can be walked to; nothing is edited in place."""
        if not index.isValid():
            return Qt.ItemFlag.NoItemFlags
        return _CAN_BE_CHOSEN


def _laid_alike(before: Sheet, after: Sheet) -> bool:
    """Whether two sheets have their headings and as many rows in the same places."""
    return (
        len(before) == len(after) > 0
        and list(before.band_rows) == list(after.band_rows)
        and before.has_notes == after.has_notes
    )


def _text(row: ModelRow, column: Column) -> str | None:
    dimension = TAPE_COLUMNS.get(column)
    if dimension is not None:
        cell = row.cells.get(dimension)
        return cell.number if cell else None
    match column:
        case Column.MODEL:
            return row.model
        case Column.SIZE:
            return row.size if not row.length_option else f"{row.size} {row.length_option}"
        case Column.NOTE:
            return row.note
        case _:
            return f"{row.girths.text}\n{row.length.text}"
