"""Takes hold of the rider's line in the table with the mouse, and says where it is dragged to."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Final

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QWidget

from charts.schema import Dimension
from ui.drawing.scale import Scale

_REACH: Final = 5.0

Lines = Callable[[], Mapping[Dimension, tuple[Scale, float]]]
"""The tapes shown: each with its scale and where the rider's line stands, in pixels."""


class LineGrip(QObject):
    """Watches a viewport; keeps a press on the line, the drag and the release to itself.

    Signals:
        moved(str, float): the line of this dimension is dragged to this reading in cm.
    """

    moved = Signal(str, float)

    def __init__(self, viewport: QWidget, lines: Lines) -> None:
        super().__init__(viewport)
        self._viewport = viewport
        self._lines = lines
        self._held: Dimension | None = None
        viewport.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """True where the event was about the line and is done with."""
        if isinstance(event, QMouseEvent):
            match event.type():
                case QEvent.Type.MouseButtonPress:
                    return self._press(event)
                case QEvent.Type.MouseMove:
                    return self._move(event.position().x())
                case QEvent.Type.MouseButtonRelease:
                    return self._release()
                case _:
                    pass
        return super().eventFilter(watched, event)

    def _press(self, event: QMouseEvent) -> bool:
        if event.button() is Qt.MouseButton.LeftButton:
            self._held = self._line_at(event.position().x())
        return self._held is not None

    def _move(self, x: float) -> bool:
        """Drag the line that is held; show where one can be taken hold of."""
        if self._held is None:
            near = self._line_at(x) is not None
            shape = Qt.CursorShape.SplitHCursor if near else Qt.CursorShape.ArrowCursor
            self._viewport.setCursor(shape)
            return False
        held = self._lines().get(self._held)
        if held is not None:
            scale, _ = held
            self.moved.emit(self._held.value, scale.cm_at(min(max(x, scale.left), scale.right)))
        return True

    def _release(self) -> bool:
        held, self._held = self._held, None
        return held is not None

    def _line_at(self, x: float) -> Dimension | None:
        """The tape whose line is within reach of ``x``."""
        reach = _REACH * self._viewport.fontMetrics().height() / 16.0
        for dimension, (_, line) in self._lines().items():
            if abs(line - x) <= reach:
                return dimension
        return None
