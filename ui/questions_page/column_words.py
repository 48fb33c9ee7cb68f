"""What can be said of a whole column without being asked: its unit, its basis, where it measures.

No Qt.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from charts.answers import Act, Meaning, Scope
from charts.answers_columns import JOINT
from charts.asked_values import ranges_of
from charts.model_facts import definitions_of
from charts.quantities import FAMILY, Family, Unit
from charts.schema import Basis, Chart, Range
from charts.wording import Wording

_UNITS: Final = {
    Family.LENGTH: (Unit.CM, Unit.IN, Unit.MM),
    Family.MASS: (Unit.KG, Unit.LB),
    Family.AGE: (),
}
_BASES: Final = (Basis.FINISHED, Basis.BODY, Basis.FLAT)


@dataclass(frozen=True, slots=True)
class ColumnWord:
    """One thing to say of a column, in words, and the act that says it."""

    text: str
    act: Act


def column_words(
    charts: Sequence[Chart], place: str, wording: Wording, printed: str = ""
) -> tuple[ColumnWord, ...]:
    """What may be said of the column of the value that was read at ``place``; none elsewhere.

    ``printed`` tells it from the other values of its line, where places are lines.
    """
    for chart in charts:
        for one in ranges_of(chart):
            if one.place == place and printed in ("", one.published):
                return tuple(_words(chart, one, wording))
    return ()


def _words(chart: Chart, one: Range, wording: Wording) -> Iterator[ColumnWord]:
    headings = tuple(one.heading.split(JOINT))
    for unit in _UNITS[FAMILY[one.unit]]:
        if unit is not one.published_unit:
            name = wording.say("season", f"unit-{unit.value}")
            text = wording.say("questions", "column-unit", unit=name)
            yield ColumnWord(text, Meaning(Scope.COLUMN, chart.place, headings, unit=unit))
    for basis in _BASES if FAMILY[one.unit] is Family.LENGTH else ():
        if basis is not one.basis:
            text = wording.say("season", f"choice-{basis.value}")
            yield ColumnWord(text, Meaning(Scope.COLUMN, chart.place, headings, basis=basis))
    for where in sorted(definitions_of(one.dimension)):
        if where is not one.definition:
            name = wording.say("combined", f"dimension-{one.dimension.value}")
            said = wording.say("questions", f"definition-{where.value}")
            text = wording.say("questions", "column-where", dimension=name, where=said)
            meaning = Meaning(
                Scope.COLUMN, chart.place, headings, dimension=one.dimension, definition=where
            )
            yield ColumnWord(text, meaning)
