"""The list of questions: its model, and the delegate that paints whole sentences."""

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
from PySide6.QtGui import QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem

from ui.drawing.marks import paint_mark
from ui.dress import Dress
from ui.questions_page.question_rows import QuestionRow, Weight
from ui.theme import Ink, Look, Mark
from ui.words import Words

Index = QModelIndex | QPersistentModelIndex

_DISPLAY: Final = Qt.ItemDataRole.DisplayRole.value
_ACCESSIBLE: Final = Qt.ItemDataRole.AccessibleTextRole.value
_NOWHERE: Final = QModelIndex()
_FLAGS: Final = (Qt.AlignmentFlag.AlignLeft | Qt.TextFlag.TextWordWrap).value
_LOOKS: Final = {
    Weight.ERROR: Look(Ink.STOP, Mark.CROSS),
    Weight.DANGER: Look(Ink.STOP, Mark.STOP),
    Weight.QUESTION: Look(Ink.NEAR, Mark.HALF),
    Weight.SETTLED: Look(Ink.GOOD, Mark.FULL),
    Weight.GIVEN: Look(Ink.GOOD, Mark.FULL),
    Weight.NOTE: Look(Ink.UNKNOWN, Mark.RING),
}


class QuestionModel(QAbstractListModel):
    """Holds the rows; computes nothing."""

    def __init__(self, words: Words, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._words = words
        self._rows: Sequence[QuestionRow] = ()

    def show_rows(self, rows: Sequence[QuestionRow]) -> None:
        """Put ``rows`` in the place of what was shown."""
        self.beginResetModel()
        self._rows = rows
        self.endResetModel()

    def row(self, number: int) -> QuestionRow | None:
        """The row at ``number``, None beyond the end."""
        return self._rows[number] if 0 <= number < len(self._rows) else None

    @property
    def rows(self) -> Sequence[QuestionRow]:
        """All rows in their order."""
        return self._rows

    def head(self, row: QuestionRow) -> str:
        """What kind of row it is, in words."""
        return self._words.wording.say("questions", f"weight-{row.weight.value}")

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        """One row a question."""
        return 0 if parent.isValid() else len(self._rows)

    def data(self, index: Index, role: int = _DISPLAY) -> object:
        """The sentence; with its kind and its acts for a screen reader."""
        row = self.row(index.row())
        if row is None:
            return None
        if role == _DISPLAY:
            return row.sentence
        if role != _ACCESSIBLE:
            return None
        acts = [
            self._words.wording.say("questions", "act-spoken", number=number, act=act.text)
            for number, act in enumerate(row.acts, 1)
        ]
        return "\n".join([self.head(row), row.sentence, *acts])


class QuestionDelegate(QStyledItemDelegate):
    """A mark and its word, the sentence in full, and how it stands."""

    def __init__(self, model: QuestionModel, dress: Dress, parent: QListView) -> None:
        super().__init__(parent)
        self._model = model
        self._dress = dress
        self._view = parent

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """As high as its sentence needs."""
        del option
        row = self._model.row(index.row())
        wide = self._wide()
        if row is None:
            return QSize(round(wide), 0)
        px = self._dress.unit
        high = self._dress.type_.line + 18 * px + self._high(row.sentence, wide, plain=True)
        if row.more:
            high += self._high(row.more, wide, plain=False) + 2 * px
        return QSize(round(wide), round(high))

    def _wide(self) -> float:
        """The room there is beside a scroll bar, whether it is shown or not."""
        return float(self._view.width() - self._view.verticalScrollBar().sizeHint().width())

    def _high(self, text: str, wide: float, *, plain: bool) -> float:
        type_ = self._dress.type_
        metrics = QFontMetricsF(type_.plain if plain else type_.small)
        room = QRectF(0, 0, wide - 38 * self._dress.unit, 10_000)
        return metrics.boundingRect(room, _FLAGS, text).height()

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """One row."""
        row = self._model.row(index.row())
        if row is None:
            return
        painter.save()
        box, px = QRectF(option.rect), self._dress.unit
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        colours, look = self._dress.colours, _LOOKS[row.weight]
        ground = colours[Ink.CHOSEN if chosen else Ink.GROUND]
        painter.fillRect(box, ground)
        painter.fillRect(QRectF(box.left(), box.bottom() - 1, box.width(), 1), colours[Ink.RULE])
        if chosen:
            bar = QRectF(box.left(), box.top(), 3.5 * px, box.height() - 1)
            painter.fillRect(bar, colours[Ink.ACCENT])
        side = 10 * px
        top = box.top() + 7 * px
        line = self._dress.type_.line
        sign = QRectF(box.left() + 12 * px, top + (line - side) / 2, side, side)
        paint_mark(painter, sign, look.mark, colours[look.ink], ground)
        self._write(painter, box.adjusted(30 * px, 7 * px, -8 * px, 0), row, look.ink)
        if option.state & QStyle.StateFlag.State_HasFocus and chosen:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(colours[Ink.FOCUS], 2 * px))
            painter.drawRect(box.adjusted(px, px, -px, -px - 1))
        painter.restore()

    def _write(self, painter: QPainter, box: QRectF, row: QuestionRow, ink: Ink) -> None:
        dress, line = self._dress, self._dress.type_.line
        head = QRectF(box.left(), box.top(), box.width(), line)
        dress.small_strong.left(painter, head, self._model.head(row), dress.colours[ink])
        quiet = row.weight in (Weight.SETTLED, Weight.GIVEN, Weight.NOTE)
        text = box.adjusted(0, line + 2 * dress.unit, 0, 0)
        text.setWidth(self._wide() - 38 * dress.unit)
        painter.setFont(dress.type_.plain)
        painter.setPen(dress.colours[Ink.QUIET if quiet else Ink.TEXT])
        painter.drawText(text, _FLAGS, row.sentence)
        if row.more:
            below = self._high(row.sentence, self._wide(), plain=True) + 2 * dress.unit
            painter.setFont(dress.type_.small)
            painter.setPen(dress.colours[Ink.TEXT if quiet else Ink.QUIET])
            painter.drawText(text.adjusted(0, below, 0, 0), _FLAGS, row.more)
