"""A reading in another unit than it was given in, as words. No Qt."""

from __future__ import annotations

from charts.quantities import Unit, converted
from harmonizer.rider import Reading
from ui.words import Words


def figure_in(reading: Reading, unit: Unit, words: Words) -> str:
    """``reading`` in ``unit`` with the unit behind it: ``92.5 cm``, ``36 1/2 in``, ``133 lb``."""
    wording = words.wording
    match unit:
        case Unit.IN:
            figure = wording.inches(reading.value)
        case Unit.CM:
            figure = wording.cm(reading.value)
        case _:
            figure = wording.number(converted(reading.value, Unit.KG, unit), "0.5")
    return words("value-and-unit", value=figure, unit=unit.value)
