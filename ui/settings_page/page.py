"""The page of the shop's own figures: what is kept where, then every figure under its heading."""

from __future__ import annotations

from pathlib import Path
from typing import Final

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QPalette, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QScrollArea, QVBoxLayout, QWidget

from harmonizer.setting_checks import changed_keys
from harmonizer.settings import DEFAULTS, Settings, setting_facts
from ui.controls.buttons import FlatButton
from ui.dress import Dress
from ui.settings_page.figure_row import FigureRow
from ui.words import Words

_WIDEST: Final = 1260
_WIDE: Final = 1120


class SettingsPage(QWidget):
    """Every figure, changed in place; the rows are made when the page is first looked at.

    Attributes:
        rows: the figures by key, empty until the page has been shown.

    Signals:
        changed(object): other Settings are wanted.
        left(): Escape was pressed; the page before is wanted.
    """

    changed = Signal(object)
    left = Signal()

    def __init__(self, words: Words, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = words
        self._dress = dress
        self._settings = DEFAULTS
        self.rows: dict[str, FigureRow] = {}
        self.count = QLabel(self)
        self.kept = QLabel(self)
        self.all_back = FlatButton(self._say("all-back"), self)
        self._scroll = QScrollArea(self)
        self._inner = QWidget()
        self._column = QVBoxLayout(self._inner)
        self._build()
        self.show_place(None)
        self.show_settings(DEFAULTS)

    def _build(self) -> None:
        self._column.setSpacing(0)
        self._build_head()
        scroll = self._scroll
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setWidgetResizable(True)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(scroll)

    def _build_head(self) -> None:
        px, type_ = self._dress.type_.px, self._dress.type_
        title = QLabel(self._say("page-title"), self)
        title.setFont(type_.large)
        body = QLabel(self._say("page-body"), self)
        self.kept.setFont(type_.small)
        self.kept.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.count.setFont(type_.strong)
        self.all_back.clicked.connect(self._go_back)
        head = QVBoxLayout()
        head.setContentsMargins(px(14), 0, px(14), 0)
        head.setSpacing(px(4))
        for label in (title, body, self.kept):
            label.setWordWrap(label is not title)
            head.addWidget(label)
        line = QHBoxLayout()
        line.setSpacing(px(14))
        line.addWidget(self.count)
        line.addWidget(self.all_back)
        line.addStretch(1)
        head.addLayout(line)
        self._column.addLayout(head)

    def showEvent(self, event: QShowEvent) -> None:
        """Make the rows when they are first wanted."""
        if not self.rows:
            self._furnish()
        super().showEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Lay the rows for the room there is."""
        super().resizeEvent(event)
        px = self._dress.type_.px
        beside = max(px(14), self.width() - px(_WIDEST))
        self._column.setContentsMargins(px(14), px(10), beside, px(20))
        self._lay_rows()

    def _lay_rows(self) -> None:
        for row in self.rows.values():
            row.lay(wide=self.width() > self._dress.type_.px(_WIDE))

    def _furnish(self) -> None:
        heading = ""
        for key, fact in setting_facts().items():
            if fact.group != heading:
                heading = fact.group
                self._add_heading(heading)
            row = FigureRow(key, self._words, self._dress, self._inner)
            row.changed.connect(self.changed)
            row.show_settings(self._settings)
            self.rows[key] = row
            self._column.addWidget(row)
        self._column.addStretch(1)
        self._lay_rows()
        # Only now, so that the scroll area takes their height before anything is painted.
        self._scroll.setWidget(self._inner)

    def _add_heading(self, group: str) -> None:
        px = self._dress.type_.px
        label = QLabel(self._say(f"group-{group}"), self._inner)
        label.setFont(self._dress.type_.title)
        line = QHBoxLayout()
        line.setContentsMargins(px(14), px(16), px(14), px(3))
        line.addWidget(label)
        self._column.addLayout(line)

    def show_settings(self, settings: Settings) -> None:
        """Show what is in force."""
        self._settings = settings
        for row in self.rows.values():
            row.show_settings(settings)
        changed = len(changed_keys(settings, DEFAULTS))
        self.count.setText(
            self._words.wording.say("settings", "some-changed", count=changed)
            if changed
            else self._say("none-changed")
        )
        self.all_back.setVisible(bool(changed))

    def show_place(self, path: Path | None) -> None:
        """Say where the figures are kept."""
        if path is None:
            self.kept.setText(self._say("page-not-kept"))
        else:
            self.kept.setText(self._words.wording.say("settings", "page-kept", path=str(path)))

    def start(self) -> None:
        """Put the keyboard on the first figure."""
        first = next(iter(self.rows.values()), None)
        if first is not None:
            first.control.setFocus(Qt.FocusReason.OtherFocusReason)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape leaves the page."""
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
            return
        super().keyPressEvent(event)

    def _go_back(self) -> None:
        self.start()
        self.changed.emit(DEFAULTS)

    def _say(self, code: str) -> str:
        return self._words.wording.say("settings", code)
