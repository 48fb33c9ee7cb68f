"""From reasons to sentences: figures in the reader's form, names in the reader's language."""

from __future__ import annotations

from datetime import date
from typing import Final

from charts.day_words import day_words
from charts.quantities import Unit
from charts.reason import Reason
from charts.schema import Definition, Dimension
from charts.wording import Wording
from harmonizer.rider import Measure

TOPIC: Final = "reasons"
_READINGS: Final = frozenset({"x", "a", "b", "ra", "rb", "y", "reach", "other", "expected"})
_MASS_AND_AGE: Final = ("weight-", "age-")


def sentence(reason: Reason, wording: Wording, unit: Unit = Unit.CM) -> str:
    """``reason`` as one sentence.

    Readings and range ends to 0.5 cm, or to 1/4 where ``unit`` is inches; margins are in cm, to
    0.1, whatever the unit; kg and years to 0.1. A dimension's name has a form for within a
    sentence besides.
    """
    plain = reason.code.startswith(_MASS_AND_AGE)
    values = {
        key: wording.margin(value)
        if plain and isinstance(value, float)
        else _worded(key, value, wording, unit)
        for key, value in reason.values.items()
    }
    within = {
        f"{key}_inner": wording.say(TOPIC, f"inner-{value.value}")
        for key, value in reason.values.items()
        if isinstance(value, Dimension | Measure)
    }
    return wording.say(TOPIC, reason.code, **{"unit": unit.value, **values, **within})


def _worded(key: str, value: object, wording: Wording, unit: Unit) -> object:
    if isinstance(value, Reason):
        return sentence(value, wording, unit)
    if isinstance(value, Dimension | Measure):
        return wording.say(TOPIC, f"name-{value.value}")
    if isinstance(value, Definition):
        return wording.say(TOPIC, f"definition-{value.value}")
    if isinstance(value, date):
        return day_words(value, wording)
    if not isinstance(value, float):
        return value
    if key not in _READINGS:
        return wording.margin(value)
    return wording.inches(value) if unit is Unit.IN else wording.cm(value)
