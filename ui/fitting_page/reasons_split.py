"""The table above and the reasons below: how high the reasons are, and the handle between them.

By themselves the reasons take what they need as long as the table does not need the room. They
grow once the hand rests, and give back only for another rider or a table that wants it. A height
that a person pulled holds instead, until it is let go.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QRectF, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QSplitter, QSplitterHandle

from ui.dress import Dress
from ui.fitting_page.reasons_panel import ReasonsPanel
from ui.fitting_page.table import FittingTable
from ui.theme import Ink
from ui.words import Words

_USUAL: Final = 156.0
_LEAST: Final = 84.0
_TABLE_LEAST: Final = 150.0
_SHARE: Final = 0.3
_MOST: Final = 0.6
_NARROW: Final = 620.0
_HANDLE: Final = 6.0
_STEP: Final = 18.0
_GRIP: Final = (30.0, 2.0)


@dataclass(frozen=True, slots=True)
class Room:
    """Heights in pixels: at least, at most, what is wanted, and what the table leaves over."""

    least: int
    most: int
    wanted: int
    spare: int

    def height(self, present: int | None) -> int:
        """How high the reasons are; ``present`` is kept while there is room, None for anew."""
        top = max(self.least, min(self.most, self.spare))
        wanted = self.wanted if present is None else max(self.wanted, present)
        return min(max(wanted, self.least), top)


class ReasonsSplit(QSplitter):
    """Holds the table and the reasons, and shares the height among them.

    Signals:
        pulled(object): the reasons are to be so high from now on, in pixels at a line of 16;
            None for as high as they need.
    """

    pulled = Signal(object)

    def __init__(
        self, table: FittingTable, reasons: ReasonsPanel, dress: Dress, words: Words
    ) -> None:
        super().__init__(Qt.Orientation.Vertical)
        self.dress = dress
        self._table = table
        self._reasons = reasons
        self._own: float | None = None
        self._present: int | None = None
        self.setChildrenCollapsible(False)
        self.setHandleWidth(dress.type_.px(_HANDLE))
        self.addWidget(table)
        self.addWidget(reasons)
        self.setStretchFactor(0, 1)
        self.setStretchFactor(1, 0)
        reasons.setMinimumHeight(dress.type_.px(_LEAST))
        handle = self.handle(1)
        handle.setAccessibleName(words("reasons-handle"))
        handle.setAccessibleDescription(words("reasons-handle-tip"))
        handle.setToolTip(words("reasons-handle-tip"))
        self.splitterMoved.connect(self._moved)

    def createHandle(self) -> QSplitterHandle:
        """A handle that the keyboard can hold too."""
        return ReasonsHandle(self)

    @property
    def own(self) -> float | None:
        """The height a person pulled, in pixels at a line of 16; None where there is none."""
        return self._own

    def take_own(self, own: float | None) -> None:
        """Be as high as a person pulled it before; None for as high as is needed."""
        self._own = own
        self._present = None
        self.settle()

    def forget(self) -> None:
        """Another rider: what the reasons grew to for the last one is no matter."""
        self._present = None

    def settle(self) -> None:
        """Give the reasons their height, now that they are said in full."""
        if self.height() <= 0:
            return
        self._present = self._high()
        self.setSizes([max(self.height() - self.handleWidth() - self._present, 0), self._present])

    def take_room(self, width: int, height: int) -> None:
        """The page has this size now; where there is little room the drawing goes."""
        px = self.dress.type_.px
        self._reasons.check.setVisible(width > px(_NARROW) and height * _SHARE > px(_LEAST))
        self._present = None if self._present is None else self._room.height(self._present)
        self.settle()

    def _high(self) -> int:
        if self._own is None:
            return self._room.height(self._present)
        px = self.dress.type_.px
        most = self.height() - self.handleWidth() - px(_TABLE_LEAST)
        return max(px(_LEAST), min(px(self._own), most))

    @property
    def _room(self) -> Room:
        px, high = self.dress.type_.px, self.height()
        table = self._table.horizontalHeader().height() + self._table.verticalHeader().length()
        return Room(
            least=max(px(_LEAST), min(px(_USUAL), round(high * _SHARE))),
            most=round(high * _MOST),
            wanted=self._reasons.wanted_height,
            spare=high - self.handleWidth() - table,
        )

    def _moved(self) -> None:
        self._own = round(self._reasons.height() / self.dress.unit, 1)
        self.pulled.emit(self._own)

    def nudge(self, steps: int) -> None:
        """Pull the handle up by so many lines."""
        present = self._own if self._own is not None else self._reasons.height() / self.dress.unit
        self.take_own(present + steps * _STEP)
        self._own = round(self._reasons.height() / self.dress.unit, 1)
        self.pulled.emit(self._own)

    def let_go(self) -> None:
        """As high as needed again."""
        self.take_own(None)
        self.pulled.emit(None)


class ReasonsHandle(QSplitterHandle):
    """Pulled by the mouse or by Up and Down; a double click or Enter lets go."""

    def __init__(self, split: ReasonsSplit) -> None:
        super().__init__(Qt.Orientation.Vertical, split)
        self._split = split
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)

    def paintEvent(self, event: QPaintEvent) -> None:
        """A short stroke to take hold of; a longer, stronger one with the keyboard."""
        del event
        dress = self._split.dress
        wide, high = (side * dress.unit for side in _GRIP)
        ink = Ink.EDGE
        if self.hasFocus():
            wide, ink = float(self.width()), Ink.FOCUS
        painter = QPainter(self)
        middle = QRectF(self.rect()).center()
        stroke = QRectF(middle.x() - wide / 2, middle.y() - high / 2, wide, high)
        painter.fillRect(stroke, dress.colours[ink])
        painter.end()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """As high as needed again."""
        del event
        self._split.let_go()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Up and Down pull, Enter lets go."""
        steps = {Qt.Key.Key_Up: 1, Qt.Key.Key_Down: -1}.get(Qt.Key(event.key()))
        if steps is not None:
            self._split.nudge(steps)
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._split.let_go()
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Show the keyboard."""
        super().focusInEvent(event)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Show it no longer."""
        super().focusOutEvent(event)
        self.update()
