"""Footnote marks: which points a figure is measured between, and whose measure it is."""

from __future__ import annotations

from typing import Final

from charts.schema import Basis, Definition, Range
from charts.wording import Wording

_SIGNS: Final = ("†", "‡", "§", "¶", "#", "◊", "∆", "¤")
_WORTH_A_MARK: Final = (Basis.FINISHED, Basis.FLAT)


class Marks:
    """Gives each definition and basis its sign, in the order they are met."""

    def __init__(self, wording: Wording) -> None:
        self._wording = wording
        self._signs: dict[str, str] = {}

    def of(self, value: Range) -> str:
        """The signs of one value, "" when the maker says nothing of how it is measured."""
        keys = []
        if value.definition is not Definition.UNKNOWN:
            keys.append(f"definition-{value.definition.value}")
        if value.basis in _WORTH_A_MARK:
            keys.append(f"basis-{value.basis.value}")
        return "".join(self._sign(key) for key in keys)

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
