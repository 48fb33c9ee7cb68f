"""Ties what a shop keeps of riders to the readings on the screen: keep, look up, forget."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject

from charts.wording import Wording
from harmonizer.rider import Rider
from harmonizer.workspace import Workspace
from ui.fitting_page.past import Past, this_day
from ui.fitting_page.readings_panel import ReadingsPanel


class RiderKeeping(QObject):
    """Every act is one step of the workspace, so that it can be taken back like any other.

    Attributes:
        day: says which day it is; tests put another one here.
    """

    def __init__(
        self, workspace: Workspace, wording: Wording, say: Callable[[str], None], parent: QObject
    ) -> None:
        super().__init__(parent)
        self.day = this_day
        self._keeps = False
        self._workspace = workspace
        self._wording = wording
        self._say = say
        self._panel: ReadingsPanel | None = None
        workspace.on_change.append(self._changed)

    def attach(self, panel: ReadingsPanel) -> None:
        """Serve these readings from now on."""
        self._panel = panel
        panel.keep_wanted.connect(self._keep)
        panel.forget_wanted.connect(self._forget)
        self.show()

    def may_keep(self) -> None:
        """There is a folder of a shop; without one nothing can be kept."""
        self._keeps = True
        self.show()

    def show(self) -> None:
        """Let the readings know what is kept."""
        if self._panel is not None:
            self._panel.take_past(Past(self._workspace.book, self._keeps, self.day))

    def _changed(self, parts: frozenset[str]) -> None:
        if "book" in parts:
            self.show()

    def _keep(self, rider: Rider) -> None:
        self._workspace.keep_rider(rider, self.day())

    def _forget(self, name: str) -> None:
        self._workspace.forget_rider(name)
        self._say(self._wording.say("rider_book", "forgotten", name=name))
