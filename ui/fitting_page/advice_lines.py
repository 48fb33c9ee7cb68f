"""The engine's advice beyond one row's dimensions, as sentences for the page. No Qt."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Final

from charts.wording import Wording
from harmonizer.choice_reasons import why_not
from harmonizer.explain import sentence
from harmonizer.fit_row import FitRow
from harmonizer.fit_sheet import FitSheet
from harmonizer.no_fit import asks, measure_first, nearest_rows, nothing_fits
from harmonizer.rider import Measure, Observed
from harmonizer.row_reasons import assumed_reasons, between_reasons, reasons
from harmonizer.seasons import Seasons, both_seasons, side_by_side
from harmonizer.states import GirthState
from harmonizer.take_again import said, take_again
from harmonizer.verdict_words import full_name, girth_words, length_words, size_name
from ui.fitting_page.chosen import QUIET, ChosenReasons, ReasonLine, reasons_for
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.rows import ModelRow
from ui.theme import LENGTH_LOOKS
from ui.words import Words

_BESIDE: Final = frozenset(
    {
        "clearance",
        "clearance-not-known",
        "reserve-left",
        "reserve-not-known",
        "foam-chest-only",
        "came-out-smaller",
        "came-out-larger",
    }
)
"""What the engine says of a size beside its dimensions and the page says nowhere else."""

_CUT: Final = frozenset(
    {"waist-loose-here", "waist-tight-here", "hip-loose-here", "hip-tight-here"}
)
"""How a cut sits where the chest fits: said only of sizes whose girths do."""

_SEASON_WORDS: Final = ("summer_girths", "summer_length", "winter_girths", "winter_length")
_MISSED: Final = (GirthState.MISS, GirthState.NOT_CHECKED)

CLEARANCE_LOOKS: Final = {
    Observed.STOP: LENGTH_LOOKS["too_long"],
    Observed.CHECK: LENGTH_LOOKS["check"],
    Observed.RIGHT: LENGTH_LOOKS["clear"],
    Observed.SHORT: LENGTH_LOOKS["short"],
    Observed.FAR_TOO_SHORT: LENGTH_LOOKS["too_short"],
}


def again_sentence(fit: FitSheet | None, wording: Wording) -> str:
    """Which reading is worth taking again and what that would gain; "" where nothing is."""
    again = take_again(fit) if fit is not None else None
    if again is None:
        return ""
    lines = [sentence(reason, wording) for reason in said(again)]
    if len(lines) == 1:
        return lines[0]
    return wording.say("advice", "again-both", first=lines[0], second=lines[1])


def all_reasons(
    sheet: FittingSheet,
    row: ModelRow,
    words: Words,
    *,
    for_shop: bool = True,
    on_paper: bool = False,
) -> ChosenReasons:
    """Everything to be said of the best size of ``row``, made at once.

    On paper the seasons stand in a block of their own, and what is assumed in the legend.
    """
    said = reasons_for(sheet, row, words)
    family = Family(sheet.neighbours(row), None if on_paper else sheet.members(row))
    return with_advice(said, sheet.fit, row.at, words.wording, family, for_shop=for_shop)


@dataclass(frozen=True, slots=True)
class Family:
    """The offers beside one of a model, and all of the model; None where that is told elsewhere."""

    neighbours: Sequence[int] = ()
    members: Sequence[int] | None = ()


ALONE: Final = Family()


def with_advice(
    reasons_: ChosenReasons,
    fit: FitSheet,
    at: int,
    wording: Wording,
    family: Family = ALONE,
    *,
    for_shop: bool = True,
) -> ChosenReasons:
    """The reasons for the offer ``at`` with what is to be said of it beside its dimensions.

    What only the shop is to read, which size stands first and what its maker is to be asked for,
    is left out unless ``for_shop``. Seasons that differ, and a stop that wins over the maker's
    rule, stand before the dimensions.
    """
    row = fit.row_of(at)
    gates, own = len(row.gates), len(row.gates) + len(row.dimensions)
    differ, same = _seasons(fit, at, wording, family.members)
    lines = [
        *reasons_.lines[:gates],
        *differ,
        *_rule(row, wording, stopped=True),
        *reasons_.lines[gates:own],
        *same,
        *_beside(row, wording),
        *(_what_to_ask(fit, row, wording) if for_shop else ()),
        *reasons_.lines[own:],
        *_rule(row, wording, stopped=False),
        *_neighbours(row, family.neighbours, wording),
        *(_pair(fit, row, family.neighbours, wording) if for_shop else ()),
        *(_assumed(row, wording) if for_shop and family.members else ()),
    ]
    return replace(reasons_, lines=tuple(lines))


def nearest_sentence(fit: FitSheet, wording: Wording) -> str:
    """The three nearest sizes by name where nothing fits; "" where something does."""
    near = nearest_rows(fit) if _misses_all(fit) else []
    if not near:
        return ""
    mark = wording.say("settings", "list-mark")
    names = mark.join(sentence(full_name(row), wording) for row in near)
    return wording.say("advice", "nothing-fits", names=names)


def _misses_all(fit: FitSheet) -> bool:
    """Whether nothing fits; before a chest is read nothing can, and nobody is to be asked."""
    return bool(fit.rider.of(Measure.CHEST)) and nothing_fits(fit)


def _seasons(
    fit: FitSheet, at: int, wording: Wording, members: Sequence[int] | None
) -> tuple[list[ReasonLine], list[ReasonLine]]:
    """Both words of summer beside both words of winter, where layers go underneath.

    First what differs, with the size for each season where no size of the model serves both.
    """
    if members is None or not any(one.layers > 0 for one in fit.row_of(at).dimensions.values()):
        return [], []
    seasons = seasons_of(fit)
    summer, winter = (one.row_of(at) for one in (seasons.summer, seasons.winter))
    light, warm = (
        [sentence(words(one), wording) for words in (girth_words, length_words)]
        for one in (summer, winter)
    )
    spoken = dict(zip(_SEASON_WORDS, (*light, *warm), strict=True))
    # The same verdict by another figure is not the same: what is read decides.
    if light == warm:
        return [], [ReasonLine(wording.say("advice", "seasons-same", **spoken), QUIET)]
    differ = ReasonLine(wording.say("advice", "seasons-differ", **spoken), QUIET)
    return [*_size_of_season(seasons, members, wording), differ], []


def _size_of_season(
    seasons: Seasons, members: Sequence[int], wording: Wording
) -> Iterator[ReasonLine]:
    """Which size serves in summer and which over the layers, where that is not the same one."""
    sides = side_by_side(seasons, [members]) if members else ()
    serving = {one.serves: size_name(one.summer) for one in sides}
    summer, winter = serving.get((True, False)), serving.get((False, True))
    if summer is not None and winter is not None:
        sizes = {"summer": sentence(summer, wording), "winter": sentence(winter, wording)}
        yield ReasonLine(wording.say("advice", "seasons-sizes", **sizes), QUIET)


@lru_cache(maxsize=1)
def seasons_of(fit: FitSheet) -> Seasons:
    """Both seasons of one comparison; kept for the next row that is chosen of it."""
    return both_seasons(fit.rider, fit.table, fit.settings)


def _beside(row: FitRow, wording: Wording) -> list[ReasonLine]:
    """Saddle, reserve, cut, and how the model came out in this shop."""
    codes = _BESIDE if row.girth_verdict in _MISSED else _BESIDE | _CUT
    found = row.clearance
    saddle = CLEARANCE_LOOKS[found.band] if found is not None else QUIET
    return [
        ReasonLine(sentence(one, wording), saddle if one.code == "clearance" else QUIET)
        for one in reasons(row)
        if one.code in codes
    ]


def _what_to_ask(fit: FitSheet, row: FitRow, wording: Wording) -> list[ReasonLine]:
    """Where nothing fits: what to measure again first, and what to ask the maker for."""
    if not _misses_all(fit):
        return []
    found = (*measure_first(fit, row), *asks(fit, row))
    return [ReasonLine(sentence(one, wording), QUIET) for one in found]


def _rule(row: FitRow, wording: Wording, *, stopped: bool) -> Iterator[ReasonLine]:
    """Where the chest lies between two sizes: the maker's rule, or the stop that wins over it."""
    for reason in between_reasons(row):
        if (reason.code == "between-stop-wins") is stopped:
            look = LENGTH_LOOKS["too_long"] if stopped else QUIET
            yield ReasonLine(sentence(reason, wording), look)


def _neighbours(row: FitRow, neighbours: Sequence[int], wording: Wording) -> Iterator[ReasonLine]:
    """Why not the sizes and lengths beside this one."""
    for at in neighbours:
        why = why_not(row, FitRow(row.arrays, at))
        yield ReasonLine(sentence(why, wording), QUIET)


def _assumed(row: FitRow, wording: Wording) -> Iterator[ReasonLine]:
    """What the chart leaves unsaid and was taken as given: why a bar is drawn in dashes."""
    return (ReasonLine(sentence(one, wording), QUIET) for one in assumed_reasons(row))


def _pair(
    fit: FitSheet, row: FitRow, neighbours: Sequence[int], wording: Wording
) -> list[ReasonLine]:
    """Why the first and not the chosen one; for the first, why not the second."""
    if len(fit.rows) < 2:
        return []
    first, second = fit.rows[0], fit.rows[1]
    if row.at == first.at:
        told = second.at in neighbours
        return [] if told else [ReasonLine(sentence(why_not(first, second), wording), QUIET)]
    why = sentence(why_not(first, row), wording)
    top = sentence(size_name(first, row), wording)
    return [ReasonLine(wording.say("advice", "pair-first", why=why, first=top), QUIET)]
