"""The chosen row held against another one, as sentences for the page and for paper. No Qt."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from charts.wording import Wording
from harmonizer.against import against
from harmonizer.explain import sentence
from harmonizer.fit_row import FitRow
from ui.fitting_page.chosen import QUIET, ChosenReasons, ReasonLine, gate_lines, look_of
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.rows import ModelRow
from ui.words import Words


def with_other(
    said: ChosenReasons, sheet: FittingSheet, row: ModelRow, held: int, words: Words
) -> ChosenReasons:
    """What is said of the best size of ``row`` beside the offer at ``held``."""
    one, other = sheet.fit_row(row), sheet.fit.row_of(held)
    heading = words.wording.say(
        "advice",
        "against-heading",
        model=row.model,
        size=sheet.size_of(row.at),
        other=other.offer.model,
        other_size=sheet.size_of(held),
    )
    # While a value is tried the rows stay where they were: then nobody is told who stands before.
    lines = against_lines(one, other, words.wording, ordered=not sheet.is_trial)
    return replace(said, heading=heading, lines=tuple(lines))


def against_lines(
    one: FitRow, other: FitRow, wording: Wording, *, ordered: bool = True
) -> Iterator[ReasonLine]:
    """Why the one and not the other, their verdicts, what each gives, and how sure that is."""
    found = against(one, other)
    yield ReasonLine(sentence(found.order if ordered else found.why, wording), QUIET)
    yield from gate_lines(one, wording)
    said = [*found.verdicts, *((found.chance,) if found.chance is not None else ())]
    yield from (ReasonLine(sentence(reason, wording), QUIET) for reason in said)
    for dimension, reason in found.dimensions:
        yield ReasonLine(sentence(reason, wording), look_of(one, dimension))
