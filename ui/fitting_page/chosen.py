"""The reasons for one row in whole sentences, and where its figures stand. No Qt.

What is said here is painted with the verdicts; what takes longer to say follows in a moment
(``advice_lines``). Every sentence is the engine's.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from charts.schema import Dimension
from charts.wording import Wording
from harmonizer.explain import sentence
from harmonizer.fit_row import FitRow
from harmonizer.gates import UNDECIDED
from harmonizer.row_reasons import chance_reasons, gate_reasons
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.rows import TAPES, ModelRow
from ui.theme import GATE_LOOK, GIRTH_LOOKS, LENGTH_LOOKS, Ink, Look, Mark
from ui.words import Words

QUIET: Final = Look(Ink.UNKNOWN, Mark.RING)
"""The mark of a sentence that tells no state."""


@dataclass(frozen=True, slots=True)
class ReasonLine:
    """One sentence with the mark of its state."""

    text: str
    look: Look


@dataclass(frozen=True, slots=True)
class ChosenReasons:
    """What is said of the chosen row. ``file`` and ``place`` lead to its figures."""

    heading: str
    lines: tuple[ReasonLine, ...]
    source: str
    file: str
    place: str


def reasons_for(sheet: FittingSheet, row: ModelRow, words: Words) -> ChosenReasons:
    """What the verdict of the best size of ``row`` rests on, and how sure it is."""
    fit_row = sheet.fit_row(row)
    offer = fit_row.offer
    lines = (*gate_lines(fit_row, words.wording), *dimension_lines(fit_row, words.wording))
    return ChosenReasons(
        heading=words("reasons-heading", model=row.model, size=sheet.size_of(row.at)),
        lines=(*lines, *_chance(fit_row, words.wording)),
        source=words("reasons-source", file=offer.file, place=offer.place),
        file=offer.file,
        place=offer.place,
    )


def gate_lines(row: FitRow, wording: Wording) -> Iterator[ReasonLine]:
    """Why the size is not offered, or what could not be decided."""
    for gate, reason in zip(row.gates, gate_reasons(row), strict=True):
        yield ReasonLine(sentence(reason, wording), QUIET if gate in UNDECIDED else GATE_LOOK)


def dimension_lines(row: FitRow, wording: Wording) -> Iterator[ReasonLine]:
    """One sentence a dimension."""
    for dimension, fit in row.dimensions.items():
        yield ReasonLine(sentence(fit.reason, wording), look_of(row, dimension))


def look_of(row: FitRow, dimension: Dimension) -> Look:
    """How the state of one dimension is shown."""
    if dimension not in TAPES:
        return QUIET
    looks = LENGTH_LOOKS if dimension is Dimension.BACK_LENGTH else GIRTH_LOOKS
    return looks[row.dimensions[dimension].state.value]


def _chance(row: FitRow, wording: Wording) -> Iterator[ReasonLine]:
    """How sure the size is; how many dimensions that covers is said where it is not all."""
    for reason in chance_reasons(row):
        if reason.code != "chance-checked" or row.checked < len(TAPES):
            yield ReasonLine(sentence(reason, wording), QUIET)
