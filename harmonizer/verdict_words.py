"""The two words of a verdict, girths and length, and what a size is called: reasons, not text."""

from __future__ import annotations

import math
from typing import Final

from charts.reason import Reason
from charts.schema import Dimension
from harmonizer.dimension_fit import DimensionFit
from harmonizer.fit_row import FitRow
from harmonizer.lanes import GIRTH_DIMENSIONS
from harmonizer.rider import Observed
from harmonizer.states import SLACK, GirthState, LengthState

BACK: Final = Dimension.BACK_LENGTH


def size_name(row: FitRow, beside: FitRow | None = None) -> Reason:
    """The size, with its model where ``beside`` is of another, with its length where it has one."""
    offer = row.offer
    other_model = beside is not None and beside.offer.model != offer.model
    code = "size-name"
    values: dict[str, object] = {"size": offer.size}
    if other_model:
        code, values = f"{code}-model", values | {"model": offer.model}
    if offer.length:
        code, values = f"{code}-length", values | {"length": offer.length}
    return Reason(code, values)


def full_name(row: FitRow) -> Reason:
    """The size with its model, and with its length where it has one."""
    values: dict[str, object] = {"model": row.offer.model, "size": row.offer.size}
    if row.offer.length:
        return Reason("size-name-model-length", values | {"length": row.offer.length})
    return Reason("size-name-model", values)


def girth_words(row: FitRow) -> Reason:
    """The first word: how the girths lie, and by how much at the worst."""
    state = row.girth_verdict
    if state is GirthState.INSIDE:
        return Reason("girths-inside")
    if state is GirthState.NOT_CHECKED:
        return Reason("girths-nothing")
    worst = worst_girth(row)
    if state is GirthState.EDGE:
        return Reason("girths-edge", {"left": max(0.0, worst.margin or 0.0) if worst else 0.0})
    if worst is None or (worst.margin or 0.0) >= -SLACK:
        unchecked = row.dimensions[Dimension.CHEST].state is GirthState.NOT_CHECKED
        return Reason("girths-chest-unchecked" if unchecked else "girths-near-elastic")
    code = f"girths-{state.value}-{side_of(worst)}"
    return Reason(code, {"dimension": worst.dimension, "by": -(worst.margin or 0.0)})


def length_words(row: FitRow) -> Reason:
    """The second word: how long the vest is, and by how much it is out."""
    seen = row.seen
    if seen is not None:
        return Reason("length-seen-stop" if seen is Observed.STOP else "length-seen")
    state, back = row.length_verdict, row.dimensions[BACK]
    margin = back.upper_margin if state.value.endswith("short") else back.lower_margin
    if margin is None or (state is LengthState.TOO_LONG and margin >= 0):
        stopped = state is LengthState.TOO_LONG
        return Reason("length-seen-stop" if stopped else f"length-{state.value}")
    return Reason(f"length-{state.value}", {"by": -margin})


def worst_girth(row: FitRow) -> DimensionFit | None:
    """The girth that misses by most, measured in what it may; None where none was checked."""
    checked = [
        one
        for one in row.dimensions.values()
        if one.dimension in GIRTH_DIMENSIONS and one.state is not GirthState.NOT_CHECKED
    ]
    states = tuple(GirthState)
    return max(
        checked,
        key=lambda one: (states.index(GirthState(one.state)), -_least(one)),
        default=None,
    )


def _least(one: DimensionFit) -> float:
    return math.inf if one.margin is None else one.margin


def side_of(one: DimensionFit) -> str:
    """Whether the vest is ``tight`` or ``loose`` at the worse side of a girth."""
    upper = math.inf if one.upper_margin is None else one.upper_margin
    lower = math.inf if one.lower_margin is None else one.lower_margin
    return "tight" if upper <= lower else "loose"
