"""Which reading is worth taking again, below the readings."""

from __future__ import annotations

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from charts.wording import Wording
from harmonizer.fit_sheet import FitSheet
from ui.appearance import Type
from ui.controls.strokes import px
from ui.fitting_page.advice_lines import again_sentence
from ui.fitting_page.reasons_panel import SOON_MS


class AgainLine(QWidget):
    """Hidden while no reading is worth it; worked out once the verdicts are on the screen."""

    def __init__(self, wording: Wording, type_: Type, parent: QWidget) -> None:
        super().__init__(parent)
        self._wording = wording
        self._fit: FitSheet | None = None
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(SOON_MS)
        self._soon.timeout.connect(self.say_now)
        caption = QLabel(wording.say("advice", "again-caption"), self)
        caption.setFont(type_.small_strong)
        self.says = QLabel(self)
        self.says.setFont(type_.small)
        self.says.setWordWrap(True)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, px(self, 5), 0, 0)
        column.setSpacing(px(self, 2))
        column.addWidget(caption)
        column.addWidget(self.says)
        self.hide()

    def follow(self, fit: FitSheet | None) -> None:
        """Speak of this comparison, or of none, in a moment."""
        self._fit = fit
        self._soon.start()

    def say_now(self) -> None:
        """Say it without waiting."""
        self._soon.stop()
        said = again_sentence(self._fit, self._wording)
        self.says.setText(said)
        self.setAccessibleName(said)
        self.setVisible(bool(said))
