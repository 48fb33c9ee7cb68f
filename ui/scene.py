"""One picture of the demo: how the screen looks, and what a person does before it is taken."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

from harmonizer.outcomes import choice_of
from harmonizer.rider import Measure
from ui.desk import Desk
from ui.fitting_page.past import this_day
from ui.fitting_page.rows import ModelRow
from ui.preferences import Preferences
from ui.theme import Scheme

SIZE: Final = (1366, 768)
USUAL: Final = Preferences("en", Scheme.LIGHT)

Act = Callable[[Desk], None]


@dataclass(frozen=True, slots=True)
class Scene:
    """One picture: how the screen looks, and what is done before it is taken."""

    name: str
    act: Act
    preferences: Preferences = USUAL
    loaded: bool = True
    size: tuple[int, int] = SIZE


def rider(name: str) -> Act:
    """Put the rider of this name on the line."""

    def act(desk: Desk) -> None:
        calls = desk.window.fitting.calls
        names = [draft.given.name for draft in calls.drafts]
        desk.window.fitting.go_rider(names.index(name))

    return act


def then(*acts: Act) -> Act:
    """One after the other."""

    def act(desk: Desk) -> None:
        for one in acts:
            one(desk)

    return act


def choose(model: str) -> Act:
    """Choose the row of this model."""

    def act(desk: Desk) -> None:
        desk.window.fitting.table.choose(_key_of(desk, model))

    return act


def hold(model: str) -> Act:
    """Hold the row of this model, so that the chosen one is compared with it."""

    def act(desk: Desk) -> None:
        desk.window.fitting.hold(_key_of(desk, model))

    return act


def read(measure: Measure, text: str) -> Act:
    """Type another reading."""

    def act(desk: Desk) -> None:
        field = desk.window.fitting.readings.fields[measure]
        field.line.edit.setText(text)
        field.line.edit.textEdited.emit(text)
        field.count_now()

    return act


def in_winter(millimetres: str) -> Act:
    """Put so many millimetres of layers underneath."""

    def act(desk: Desk) -> None:
        winter = desk.window.fitting.readings.winter.edit
        winter.setText(millimetres)
        winter.editingFinished.emit()

    return act


def came_out(model: str, *sizes: tuple[str, int]) -> Act:
    """Of this model each size came out right so many times, as the shop's folder would have it."""

    def act(desk: Desk) -> None:
        workspace, key = desk.window.workspace, _key_of(desk, model)
        choice = choice_of(workspace.fit(desk.window.fitting.readings.draft.rider()), key)
        for size, times in sizes:
            outcome = choice.outcome(size, this_day())
            for _ in range(times):
                if outcome is not None:
                    workspace.keep_fitting(outcome)

    return act


def _key_of(desk: Desk, model: str) -> str:
    """The row of a model that is shown; the demo's own slip if it is not."""
    sheet = desk.window.fitting.sheet
    rows = [sheet.row(at) for at in range(len(sheet))] if sheet is not None else []
    return next(row.key for row in rows if isinstance(row, ModelRow) and row.model == model)
