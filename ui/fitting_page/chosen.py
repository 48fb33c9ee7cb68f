"""The reasons for one row in whole sentences, and where its figures stand. No Qt."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from charts.schema import Dimension
from harmonizer.explain import sentence
from harmonizer.fit_row import FitRow
from harmonizer.row_reasons import chance_reasons
from harmonizer.states import VERDICTS, Verdict
from ui.fitting_page.cells import margins_at
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.rows import TAPES, ModelRow
from ui.theme import GATE_LOOK, GIRTH_LOOKS, LENGTH_LOOKS, Ink, Look, Mark
from ui.words import Words

_QUIET: Final = Look(Ink.UNKNOWN, Mark.RING)
_STANDING: Final = (Verdict.FITS, Verdict.EDGE, Verdict.CHECK_LENGTH, Verdict.LENGTH_UNKNOWN)


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
    """The reasons for the best size of ``row``, most telling first."""
    fit_row = sheet.fit_row(row)
    lines = [ReasonLine(words(f"because-{gate.value}"), GATE_LOOK) for gate in fit_row.gates]
    lines.extend(_dimensions(fit_row, words))
    lines.extend(_chance(fit_row, words))
    if fit_row.between_sizes:
        lines.append(ReasonLine(_between(fit_row, words), _QUIET))
    lines.extend(_neighbours(sheet, row, words))
    offer = fit_row.offer
    return ChosenReasons(
        heading=words("reasons-heading", model=row.model, size=sheet.size_of(row.at)),
        lines=tuple(lines),
        source=words("reasons-source", file=offer.file, place=offer.place),
        file=offer.file,
        place=offer.place,
    )


def _dimensions(row: FitRow, words: Words) -> list[ReasonLine]:
    lines = []
    for dimension, fit in row.dimensions.items():
        looks = LENGTH_LOOKS if dimension is Dimension.BACK_LENGTH else GIRTH_LOOKS
        look = looks[fit.state.value] if dimension in TAPES else _QUIET
        lines.append(ReasonLine(sentence(fit.reason, words.wording), look))
    return lines


def _chance(row: FitRow, words: Words) -> list[ReasonLine]:
    """How sure the size is; how many dimensions that covers is said where it is not all."""
    said = [
        reason
        for reason in chance_reasons(row)
        if reason.code != "chance-checked" or row.checked < len(TAPES)
    ]
    return [ReasonLine(sentence(reason, words.wording), _QUIET) for reason in said]


def _between(row: FitRow, words: Words) -> str:
    """That the chest lies between two sizes, and what the maker says about it."""
    facts = row.offer.facts
    if facts is None or facts.between_sizes is None:
        return words("between-no-rule")
    code = f"between-{facts.between_sizes.value}"
    if facts.between_sizes_source:
        return words(f"{code}-source", source=facts.between_sizes_source)
    return words(code)


def _neighbours(sheet: FittingSheet, row: ModelRow, words: Words) -> list[ReasonLine]:
    """Why not the size before and the size after."""
    members = sheet.members(row)
    place = members.index(row.at)
    found = []
    for other in (place - 1, place + 1):
        if 0 <= other < len(members):
            text = _not_size(sheet, members[other], words)
            if text:
                found.append(ReasonLine(text, _QUIET))
    return found


def _not_size(sheet: FittingSheet, at: int, words: Words) -> str:
    """Why the offer ``at`` is not the one, by the dimension that misses by most."""
    fit = sheet.fit
    if VERDICTS[fit.verdicts[at]] in _STANDING:
        return words("also-possible", size=sheet.size_of(at))
    worst: tuple[float, str, Dimension] | None = None
    for dimension in TAPES:
        margins = margins_at(fit, dimension, at)
        least = margins.least if margins else None
        if margins is None or least is None or least >= 0:
            continue
        side = "above" if margins.tight_side else "below"
        if worst is None or least < worst[0]:
            worst = (least, side, dimension)
    if worst is None:
        return ""
    back = worst[2] is Dimension.BACK_LENGTH
    code = {"above": "short", "below": "long"} if back else {"above": "tight", "below": "loose"}
    return words(
        f"not-size-{code[worst[1]]}",
        size=sheet.size_of(at),
        by=words.margin(worst[0]),
        dimension=words(f"at-{worst[2].value}"),
    )
