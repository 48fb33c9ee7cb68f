"""What the screen says: the topic ``screen`` in the language of the reader."""

from __future__ import annotations

from typing import Final

from charts.wording import Wording

_MOST: Final = 4096
"""Distances that are remembered: rounding one costs more than all else about a painted figure."""


class Words:
    """Sentences and figures for the screen.

    Attributes:
        wording: the language's sentences and number forms, for topics other than ``screen``.
    """

    def __init__(self, language: str = "en") -> None:
        self.wording = Wording(language)
        self._margins: dict[float, str] = {}

    @property
    def language(self) -> str:
        """``en`` or ``de``."""
        return self.wording.language

    def __call__(self, code: str, /, **values: object) -> str:
        """The sentence of ``code`` with ``values`` put in."""
        return self.wording.say("screen", code, **values)

    def margin(self, value_cm: float) -> str:
        """A distance without its sign, to the millimetre: ``1.5``."""
        said = self._margins.get(value_cm)
        if said is None:
            if len(self._margins) >= _MOST:
                self._margins.clear()
            said = self._margins[value_cm] = self.wording.margin(abs(value_cm))
        return said

    def cm(self, value_cm: float) -> str:
        """A reading in cm to the half centimetre."""
        return self.wording.cm(value_cm)
