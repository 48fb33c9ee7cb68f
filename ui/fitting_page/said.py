"""What is said of the chosen row: at once with its verdict, and once the hand rests. No Qt."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial

from ui.fitting_page.advice_lines import all_reasons
from ui.fitting_page.against_lines import with_other
from ui.fitting_page.chosen import QUIET, ChosenReasons, ReasonLine, reasons_for
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.rows import ModelRow
from ui.words import Words


@dataclass(frozen=True, slots=True)
class Said:
    """What is painted with the verdict, and what takes its place soon after."""

    at_once: ChosenReasons
    soon: Callable[[], ChosenReasons]


def said_of(sheet: FittingSheet, row: ModelRow, held: str | None, words: Words) -> Said:
    """The reasons for the best size of ``row``; beside the model that is ``held``, if another."""
    at_once = reasons_for(sheet, row, words)
    beside = held_beside(sheet, row, held)
    if beside is not None:
        return Said(at_once, partial(with_other, at_once, sheet, row, beside, words))
    here = row.key == held
    soon = partial(_whole, sheet, row, words, here=here)
    return Said(_held_here(at_once, words) if here else at_once, soon)


def held_beside(sheet: FittingSheet, row: ModelRow, held: str | None) -> int | None:
    """The best size of the model that is ``held``, None where there is none beside ``row``."""
    return None if held in (None, row.key) else sheet.best_of(held or "")


def _whole(sheet: FittingSheet, row: ModelRow, words: Words, *, here: bool) -> ChosenReasons:
    """Of a value that is only tried nobody asks a maker, nor says which size stands first."""
    said = all_reasons(sheet, row, words, for_shop=not sheet.is_trial)
    return _held_here(said, words) if here else said


def _held_here(said: ChosenReasons, words: Words) -> ChosenReasons:
    """That others are compared with this row, before everything else."""
    line = ReasonLine(words.wording.say("advice", "held-here"), QUIET)
    return replace(said, lines=(line, *said.lines))
