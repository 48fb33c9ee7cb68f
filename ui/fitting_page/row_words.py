"""The table's short words: a cell's number, the two words of a verdict, a row's note. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from charts.schema import Dimension
from harmonizer.gates import Gate
from ui.fitting_page.rows import VerdictWord
from ui.theme import GATE_LOOK, GIRTH_LOOKS, LENGTH_LOOKS
from ui.words import Words

_JUST_CM: Final = 0.1
_BRIEF_NOTES: Final = {
    "note-came-out-smaller": "note-smaller",
    "note-came-out-larger": "note-larger",
}
_BRIEF: Final = {"left-check": "left", "too-long": "likely-long"}


@dataclass(frozen=True, slots=True)
class Margins:
    """What is left at the two ends of a size, in cm; None where that end is open.

    ``winter`` says that layers are in the upper one.
    """

    lower: float | None
    upper: float | None
    winter: bool = False

    @property
    def tight_side(self) -> bool:
        """Whether the upper end is the nearer one."""
        if self.upper is None:
            return False
        return self.lower is None or self.upper < self.lower

    @property
    def least(self) -> float | None:
        """The nearer end's margin, None where both are open."""
        return self.upper if self.tight_side else self.lower


class RowWords:
    """Makes the table's short words in one language."""

    def __init__(self, words: Words) -> None:
        self.words = words

    def number(self, dimension: Dimension, state: str, margins: Margins) -> tuple[str, str]:
        """The tightest margin with its word, and the same where room is short."""
        least = margins.least
        if least is None:
            return self.words("open-both"), self.words("open-both")
        if dimension is Dimension.BACK_LENGTH:
            code, value = self._back(state, margins, least)
        else:
            code, value = self._girth(margins, least)
        text = self.words(code, margin=self.words.margin(value))
        if code in _BRIEF:
            return text, self.words(_BRIEF[code], margin=self.words.margin(value))
        if margins.winter and margins.tight_side:
            return self.words("in-winter", number=text), text
        return text, text

    def _girth(self, margins: Margins, least: float) -> tuple[str, float]:
        if least >= 0:
            return "left", least
        word = "tight" if margins.tight_side else "loose"
        return (f"just-{word}" if -least < _JUST_CM else word), least

    def _back(self, state: str, margins: Margins, least: float) -> tuple[str, float]:
        """A length speaks of the side that decides it: of the low end unless the vest is short."""
        low = margins.lower
        if state in ("short", "too_short"):
            return "short", margins.upper if margins.upper is not None else least
        if state in ("likely_long", "too_long"):
            return state.replace("_", "-"), low if low is not None else least
        if state == "check" and low is not None:
            return "left-check", low
        return "left", least

    def both_sides(self, dimension: Dimension, margins: Margins) -> str:
        """What is left at either end, for the cell that has the focus."""
        lower, upper = (
            self.words("no-end") if one is None else self.words.wording.margin(one)
            for one in (margins.lower, margins.upper)
        )
        code = "both-back" if dimension is Dimension.BACK_LENGTH else "both-girth"
        return self.words(code, lower=lower, upper=upper)

    def all_verdicts(self) -> list[str]:
        """Every word that can stand in a verdict."""
        girths = [self.words(f"girths-{state}") for state in GIRTH_LOOKS]
        lengths = [self.words(f"length-{state}") for state in LENGTH_LOOKS]
        return [*girths, *lengths, self.words("chest-not-checked")]

    def girths(self, state: str, chest_checked: bool) -> VerdictWord:
        """The first word of a verdict."""
        code = "chest-not-checked" if state == "near" and not chest_checked else f"girths-{state}"
        return VerdictWord(self.words(code), GIRTH_LOOKS[state])

    def length(self, state: str) -> VerdictWord:
        """The second word of a verdict."""
        return VerdictWord(self.words(f"length-{state}"), LENGTH_LOOKS[state])

    def gate(self, gate: Gate) -> VerdictWord:
        """Why a row is not offered, in the place of the second word."""
        return VerdictWord(self.words(f"gate-{gate.value}"), GATE_LOOK)

    def note_brief(self, remarks: Sequence[tuple[str, dict[str, object]]]) -> str:
        """The same where room is short; "" where the weightiest remark has no shorter form."""
        if not remarks or remarks[0][0] not in _BRIEF_NOTES:
            return ""
        code, values = remarks[0]
        return self.note([(_BRIEF_NOTES[code], values), *remarks[1:]])

    def note(self, remarks: Sequence[tuple[str, dict[str, object]]]) -> str:
        """The weightiest remark, with the number of others behind it."""
        if not remarks:
            return ""
        code, values = remarks[0]
        text = self.words(code, **values)
        if len(remarks) == 1:
            return text
        return self.words("note-and-more", note=text, more=len(remarks) - 1)
