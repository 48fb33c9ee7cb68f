"""What the screen says: the topic ``screen`` in the language of the reader."""

from __future__ import annotations

from charts.wording import Wording


class Words:
    """Sentences and figures for the screen.

    Attributes:
        wording: the language's sentences and number forms, for topics other than ``screen``.
    """

    def __init__(self, language: str = "en") -> None:
        self.wording = Wording(language)

    @property
    def language(self) -> str:
        """``en`` or ``de``."""
        return self.wording.language

    def __call__(self, code: str, /, **values: object) -> str:
        """The sentence of ``code`` with ``values`` put in."""
        return self.wording.say("screen", code, **values)

    def margin(self, value_cm: float) -> str:
        """A distance without its sign, to the millimetre: ``1.5``."""
        return self.wording.margin(abs(value_cm))

    def cm(self, value_cm: float) -> str:
        """A reading in cm to the half centimetre."""
        return self.wording.cm(value_cm)
