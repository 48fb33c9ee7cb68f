"""The picture that a chart was typed from, beside its source: where each value stands on it."""

from __future__ import annotations

from collections.abc import Collection
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtGui import QPalette, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from ui.controls.buttons import FlatButton
from ui.dress import Dress
from ui.typed_picture.picture_view import PictureView
from ui.typed_picture.typed_file import At, TypedChart
from ui.words import Words


class PicturePane(QWidget):
    """Hidden where a file was not typed from a picture.

    Signals:
        picked(object): the cell of this At was pressed on the picture.
    """

    picked = Signal(object)

    def __init__(self, words: Words, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._say = words.wording.say
        self._chart = TypedChart()
        self._whole = True
        self.view = PictureView(dress, self, fixed=True)
        self.view.setAccessibleName(self._say("questions", "typed-picture"))
        self.view.picked.connect(self.picked)
        self.missing = QLabel(self)
        self._lay(dress)
        self.hide()

    def _lay(self, dress: Dress) -> None:
        px = dress.type_.px
        caption = QLabel(self._say("questions", "picture-caption"), self)
        caption.setFont(dress.type_.small_strong)
        caption.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        line = QHBoxLayout()
        line.setContentsMargins(px(12), px(3), px(8), px(3))
        line.setSpacing(px(6))
        line.addWidget(caption)
        line.addStretch(1)
        for sign, code, slot in (
            ("+", "typed-larger", self.enlarge),
            ("−", "typed-smaller", self.shrink),
            ("=", "typed-fit", self.fit),
        ):
            button = FlatButton(sign, self)
            button.setFont(dress.type_.small)
            button.setAccessibleName(self._say("questions", code))
            button.setToolTip(button.accessibleName())
            button.clicked.connect(slot)
            line.addWidget(button)
        self.missing.setWordWrap(True)
        self.missing.setContentsMargins(px(12), px(6), px(12), px(6))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(line)
        column.addWidget(self.missing)
        column.addWidget(self.view, 1)

    def show_chart(self, chart: TypedChart | None) -> None:
        """Show the picture of a typed chart; a file that is none has nothing to show."""
        if chart is None or not chart.picture:
            self._chart = TypedChart()
            self.hide()
            return
        if chart != self._chart:
            self._chart, self._whole = chart, True
            found = self.view.show_picture(chart.picture, chart.turned)
            self.view.setVisible(found)
            self.missing.setVisible(not found)
            name = Path(chart.picture).name
            self.missing.setText(self._say("questions", "picture-missing", name=name))
        self.show()

    def show_cells(self, cells: Collection[At]) -> None:
        """Let the places of these cells stand out."""
        if self.view.path:
            self.view.show_spots(self._chart.spots, cells)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The whole picture, until somebody enlarges it."""
        super().resizeEvent(event)
        if self._whole and self.view.path:
            self.view.fit()

    def enlarge(self) -> None:
        """One step larger."""
        self._whole = False
        self.view.enlarge()

    def shrink(self) -> None:
        """One step smaller."""
        self._whole = False
        self.view.shrink()

    def fit(self) -> None:
        """The whole picture."""
        self._whole = True
        self.view.fit()
