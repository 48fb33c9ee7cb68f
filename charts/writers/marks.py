"""Footnote marks: which points a figure is measured between, and whose measure it is."""

from __future__ import annotations

from typing import Final

from charts.in_house import InHouseChart
from charts.schema import Basis, Definition, Dimension, Range
from charts.wording import Wording

_SIGNS: Final = ("†", "‡", "§", "¶", "#", "◊", "∆", "¤")
_WORTH_A_MARK: Final = (Basis.FINISHED, Basis.FLAT)


class Marks:
    """Gives each definition and basis its sign, in the order they are met."""

    def __init__(self, wording: Wording) -> None:
        self._wording = wording
        self._signs: dict[str, str] = {}

    @classmethod
    def of_chart(cls, chart: InHouseChart, wording: Wording) -> Marks:
        """The signs of everything on ``chart``, the same for its table and for its pictures."""
        marks = cls(wording)
        for row in chart.rows:
            for dimension in Dimension:
                for value in row.measures.get(dimension, ()):
                    marks.of(value)
        return marks

    def of(self, value: Range) -> str:
        """The signs of one value, "" when the maker says nothing of how it is measured."""
        return self.of_definition(value.definition) + self.of_basis(value.basis)

    def of_definition(self, definition: Definition) -> str:
        """The sign of the points measured between, "" where they are not said."""
        if definition is Definition.UNKNOWN:
            return ""
        return self._sign(f"definition-{definition.value}")

    def of_basis(self, basis: Basis) -> str:
        """The sign of a measure that is not the body's, else ""."""
        return self._sign(f"basis-{basis.value}") if basis in _WORTH_A_MARK else ""

    def footnotes(self) -> tuple[str, ...]:
        """One sentence for each sign given so far, in their order."""
        return tuple(
            self._wording.say("combined", "footnote", sign=sign, text=self._said(key))
            for key, sign in self._signs.items()
        )

    def _said(self, key: str) -> str:
        return self._wording.say("combined", key)

    def _sign(self, key: str) -> str:
        number = len(self._signs)
        sign = _SIGNS[number % len(_SIGNS)] * (number // len(_SIGNS) + 1)
        return self._signs.setdefault(key, sign)
