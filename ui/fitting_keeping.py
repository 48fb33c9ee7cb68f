"""Ties which size came out right on the fitting page to what the shop keeps of its models."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QObject

from charts.wording import Wording
from harmonizer.outcomes import Choice, Outcome, choice_of
from harmonizer.rider import Rider
from harmonizer.workspace import Workspace
from ui.fitting_page.page import FittingPage
from ui.fitting_page.past import this_day

_TOPIC = "fittings"


class FittingKeeping(QObject):
    """Every act is one step of the workspace, so that it can be taken back like any other.

    What is said twice of one rider and model until the program is closed counts once, the last
    time; which rider that was is kept nowhere.

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
        self._page: FittingPage | None = None
        self._said: dict[tuple[object, str], list[Outcome]] = {}

    def attach(self, page: FittingPage) -> None:
        """Serve this page from now on."""
        self._page = page
        page.came_out.choices = self.choice
        page.came_out.picked.connect(self._pick)
        page.came_out.refused.connect(self._say)

    def may_keep(self) -> None:
        """There is a folder of a shop; without one nothing can be kept."""
        self._keeps = True

    def choice(self, key: str) -> Choice | str:
        """The sizes of the model of this key for the rider on the line, or why none can be kept."""
        if not self._keeps:
            return self._wording.say(_TOPIC, "no-folder")
        choice = self._choice(key)
        model = choice.offers[0].model if choice.offers else ""
        if not choice.chest:
            return self._wording.say(_TOPIC, "no-chest", model=model)
        if choice.predicted is None:
            return self._wording.say(_TOPIC, "not-compared", model=model)
        return choice

    def _choice(self, key: str) -> Choice:
        """What was advised first: by the readings, before anything was seen in the saddle."""
        return choice_of(self._workspace.fit(replace(self._rider(), seen=())), key)

    def _rider(self) -> Rider:
        return Rider("") if self._page is None else self._page.readings.draft.rider()

    def _keep(self, outcome: Outcome, key: str) -> None:
        """Once for a rider and a model; by identity, for two riders may come out alike."""
        rider, held = self._rider(), self._workspace.fittings
        said = self._said.setdefault((rider.name or rider.readings, key), [])
        before = next((one for one in said if any(one is each for each in held)), None)
        if before != outcome:
            self._workspace.keep_fitting(outcome, before)
            said.append(outcome)

    def _pick(self, key: str, size: str) -> None:
        outcome = self._choice(key).outcome(size, self.day())
        if outcome is None:
            return
        self._keep(outcome, key)
        kept = sum(one.chart == outcome.chart for one in self._workspace.fittings)
        code = "kept-as-advised" if outcome.predicted == outcome.fitted else "kept-other"
        self._say(
            self._wording.say(
                _TOPIC,
                code,
                model=outcome.model,
                fitted=outcome.fitted,
                predicted=outcome.predicted,
                count=kept,
            )
        )
