"""Which size of a model came out right, beside the one that was advised: the shop's own experience.

An outcome knows no rider: no name, no reading. It belongs to a model's chart as its chest figures
stand; where these change, the experience starts again.
"""

from __future__ import annotations

import hashlib
from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal

from charts.schema import Dimension, Kind, Range
from harmonizer.experience import Experience, experience
from harmonizer.fit_sheet import FitSheet
from harmonizer.not_compared import is_not_compared
from harmonizer.offers import Offer, model_key
from harmonizer.range_table import RangeTable

_NO_FIGURES = ""
_Chart = tuple[str, str, str, str]


@dataclass(frozen=True, slots=True)
class Outcome:
    """One fitting: the size ``predicted`` first, and the one that ``fitted``.

    ``cm`` is how far the chest centre of the one that fitted lies above the other's, 0 where the
    size was right first time. ``chest`` tells the chart's chest figures from others.
    """

    maker: str
    model: str
    band: str
    season: str
    chest: str
    predicted: str
    fitted: str
    cm: Decimal
    on: date

    @property
    def chart(self) -> _Chart:
        """The chart it belongs to; an edition with the same chest figures is the same chart."""
        return self.maker, self.model, self.band, self.chest


@dataclass(frozen=True, slots=True)
class Choice:
    """The sizes of one model, one of which came out right; ``predicted`` is the one advised.

    Sizes that differ by length alone are one: the experience is the chest's. ``doubled`` are names
    that two sizes with other chests bear: which of them fitted would be a guess.
    """

    offers: tuple[Offer, ...]
    chest: str
    predicted: Offer | None
    doubled: frozenset[str] = frozenset()

    def difference(self, size: str) -> Decimal | None:
        """How far the chest centre of ``size`` lies above the advised one's, in cm, or None."""
        first = self.predicted
        fitted = next((offer for offer in self.offers if offer.size == size), None)
        if first is None or fitted is None or self.chest == _NO_FIGURES:
            return None
        if self.doubled & {first.size, size}:
            return None
        return chest_difference(first, fitted)

    def outcome(self, size: str, on: date) -> Outcome | None:
        """The outcome of a day on which ``size`` fitted; None where no difference can be told."""
        first, above = self.predicted, self.difference(size)
        if first is None or above is None:
            return None
        maker, model, band, chest = _chart_of(first, self.chest)
        season = first.season or ""
        return Outcome(maker, model, band, season, chest, first.size, size, above, on)


def choice_of(sheet: FitSheet, key: str) -> Choice:
    """What can have come out right of the model of this key; no size advised, nothing compared."""
    members = {at: one for at, one in enumerate(sheet.table.offers) if model_key(one) == key}
    best = next((row for row in sheet.rows if row.at in members), None)
    sizes: dict[str, list[Offer]] = defaultdict(list)
    for offer in members.values():
        if offer.size:
            sizes[offer.size].append(offer)
    doubled = (
        label for label, own in sizes.items() if len({chest_figures([each]) for each in own}) > 1
    )
    return Choice(
        tuple(own[0] for own in sizes.values()),
        chest_figures(members.values()),
        None if best is None or is_not_compared(best) else best.offer,
        frozenset(doubled),
    )


def chest_difference(first: Offer, fitted: Offer) -> Decimal | None:
    """How far the chest centre of one size lies above the other's, cm; None where it has none.

    The same size is 0, whatever its ends.
    """
    if first.size == fitted.size:
        return Decimal(0)
    below, above = _centres(first), _centres(fitted)
    return next((above[one] - below[one] for one in below if one in above), None)


def chest_figures(offers: Iterable[Offer]) -> str:
    """A short text that differs where any chest figure of a model does; "" where it has none."""
    figures = sorted(
        {
            (offer.size, *(_plain(end) for end in (one.low, one.high, one.value)))
            for offer in offers
            for one in _chests(offer)
        }
    )
    if not figures:
        return _NO_FIGURES
    return hashlib.sha256(repr(figures).encode()).hexdigest()[:12]


def with_experience(table: RangeTable, outcomes: Sequence[Outcome]) -> RangeTable:
    """``table`` with what the shop has found of each model; no figure of it is different."""
    if not outcomes:
        return table
    found = _told(outcomes, table)
    models: dict[str, list[Offer]] = defaultdict(list)
    for offer in table.offers:
        models[model_key(offer)].append(offer)
    of_model = {key: _chart_of(own[0], chest_figures(own)) for key, own in models.items()}
    told = tuple(found.get(of_model[model_key(offer)]) for offer in table.offers)
    return replace(table, facts=replace(table.facts, experience=told))


def _told(outcomes: Sequence[Outcome], table: RangeTable) -> Mapping[_Chart, Experience]:
    """Of each chart the experience that is sure enough to be told."""
    above: dict[_Chart, list[float]] = defaultdict(list)
    for one in outcomes:
        above[one.chart].append(float(one.cm))
    found = {chart: experience(cm, table.settings) for chart, cm in above.items()}
    return {chart: one for chart, one in found.items() if one.shown}


def _chart_of(offer: Offer, chest: str) -> _Chart:
    return offer.supplier or "", offer.model, offer.band or "", chest


def _chests(offer: Offer) -> Iterable[Range]:
    return (
        one
        for one in offer.ranges
        if one.dimension is Dimension.CHEST and one.kind is not Kind.UNREAD
    )


def _centres(offer: Offer) -> Mapping[tuple[str, str], Decimal]:
    """The middle of each chest of a size that has one, in cm, by what is meant by it."""
    found: dict[tuple[str, str], Decimal] = {}
    for one in _chests(offer):
        middle = one.value
        if one.low is not None and one.high is not None:
            middle = (one.low + one.high) / 2
        if middle is not None:
            found.setdefault((one.definition.value, one.basis.value), middle)
    return found


def _plain(end: Decimal | None) -> str:
    """A figure as a text that is the same for 84 and 84.0."""
    return "" if end is None else f"{end.normalize():f}"
