"""A foam vest and an inflatable one over it: sizes and verdicts in one statement. No Qt."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from charts.model_facts import VestKind
from harmonizer.fit_sheet import FitSheet
from harmonizer.offers import model_key
from harmonizer.pair import FoamUnder, any_kind, foam_under, over_foam
from harmonizer.range_table import RangeTable
from harmonizer.rider import Rider
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.model_groups import ModelGroups
from ui.fitting_page.pair_choice import PairChoice
from ui.fitting_page.rows import ModelRow
from ui.words import Words

Compare = Callable[[Rider], FitSheet]
_TOPIC = "pair"


@dataclass(frozen=True, slots=True)
class Pair:
    """Two models compared as they are worn: ``over`` is the fit of the rider in the foam.

    ``over`` and ``foam`` are None where nothing is known of the foam: then the inflatable has no
    size yet. ``noted`` is the foam's thickness where nobody typed another.
    """

    choice: PairChoice
    under: FitSheet
    over: FitSheet | None
    foam: FoamUnder | None
    noted: NotedFoam | None = None


@dataclass(frozen=True, slots=True)
class NotedFoam:
    """A foam's thickness as the shop noted it for the model, and where the maker says it."""

    thickness_mm: float
    source: str = ""


def noted_foam(choice: PairChoice, table: RangeTable) -> NotedFoam | None:
    """What is noted of the chosen foam's thickness; None where nothing is."""
    for offer in table.offers:
        facts = offer.facts
        if (
            facts is not None
            and facts.foam_thickness is not None
            and model_key(offer) == choice.foam
        ):
            return NotedFoam(float(facts.foam_thickness * 10), facts.foam_thickness_source or "")
    return None


def kind_of(sheet: FittingSheet, row: ModelRow) -> VestKind | None:
    """The kind of the model of ``row``, None where nobody says."""
    facts = sheet.fit.table.offers[row.at].facts
    return facts.kind if facts else None


def compared_pair(choice: PairChoice, rider: Rider, compare: Compare) -> Pair:
    """The foam on the rider, and the inflatable on the rider in that foam."""
    under = compare(any_kind(rider))
    noted = noted_foam(choice, under.table) if choice.thickness_mm is None else None
    thickness = noted.thickness_mm if noted is not None else choice.thickness_mm
    foam = foam_under(under.body.settled, choice.over_foam_cm, thickness)
    over = compare(over_foam(rider, foam)) if foam is not None else None
    return Pair(choice, under, over, foam, noted)


def pair_lines(pair: Pair, groups: ModelGroups, words: Words) -> tuple[str, ...]:
    """The statement: the foam, the inflatable over it, how the foam was counted, cautions."""
    under = _row(pair.under, pair.choice.foam, groups, words)
    if under is None:
        return ()
    lines = [_said(words, "foam-line", *under)]
    if not pair.choice.inflatable:
        return (*lines, words.wording.say(_TOPIC, "choose-inflatable"))
    if pair.over is None or pair.foam is None:
        return (*lines, words.wording.say(_TOPIC, "foam-not-known"), *_cautions(words))
    over = _row(pair.over, pair.choice.inflatable, groups, words)
    if over is None:
        return ()
    lines += [_said(words, "inflatable-line", *over), _counted(pair.foam, pair.noted, words)]
    return (*lines, *_cautions(words))


def _counted(foam: FoamUnder, noted: NotedFoam | None, words: Words) -> str:
    """What the foam was taken to add, and on whose word."""
    values: dict[str, object] = {"adds": words.margin(foam.adds_cm)}
    code = "counted-measured" if foam.measured else "counted-thickness"
    if noted is not None and not foam.measured:
        code = "counted-thickness-said" if noted.source else "counted-thickness-noted"
        values |= {"thickness": words.margin(noted.thickness_mm), "source": noted.source}
    return words.wording.say(_TOPIC, code, **values)


def _row(
    fit: FitSheet, key: str, groups: ModelGroups, words: Words
) -> tuple[FittingSheet, ModelRow] | None:
    sheet = FittingSheet(fit, groups, words, frozenset())
    at = sheet.find(key)
    row = sheet.row(at) if at is not None else None
    return (sheet, row) if isinstance(row, ModelRow) else None


def _said(words: Words, code: str, sheet: FittingSheet, row: ModelRow) -> str:
    values = {
        "maker": row.maker,
        "model": row.model,
        "size": sheet.size_of(row.at),
        "girths": row.girths.text,
        "length": row.length.text,
    }
    if row.stopped:
        return words.wording.say(_TOPIC, f"{code}-stopped", note=row.note, **values)
    return words.wording.say(_TOPIC, code, **values)


def _cautions(words: Words) -> tuple[str, ...]:
    codes = ("caution-outermost", "caution-makers", "caution-together")
    return tuple(words.wording.say(_TOPIC, code) for code in codes)
