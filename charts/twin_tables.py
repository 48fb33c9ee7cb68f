"""A table printed again in the other units, behind a switch or below: one chart, compared.

The second printing is set beside the first, figure by figure, and never makes sizes of its own.
A hidden table that repeats nothing and that no word tells apart is asked about.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from typing import Final, NamedTuple

from charts.asked_values import chart_asking, ranges_of, size_asking
from charts.columns.agreement import agreement_of, say_apart
from charts.columns.pairs import beside
from charts.dimensions import find_units
from charts.findings import FindingLog, Level, listed
from charts.grammar.agreement import Agreement
from charts.places import sheet_of
from charts.quantities import METRIC, Unit, factor
from charts.schema import Basis, Chart, Definition, Dimension, Range, Size, UnitFrom
from charts.sheet import Addressing, Sheet

_FEWEST: Final = 4
"""Values that two printings must share: fewer agree by chance."""
_IMPERIAL: Final = {"cm": Unit.IN, "kg": Unit.LB}
_MOST_DIGITS: Final = 4
_SYSTEMS: Final = frozenset(
    {"metric", "imperial", "metrisch", "imperiaal", "métrique", "impérial", "metrico", "imperiale"}
    | {"métrico", "metrický", "metryczne", "imperialny", "zoll", "zöllig"}
)
"""Words for a whole system of units (common words, from general knowledge)."""
Name = tuple[str | None, str | None]
_Named = tuple[Name, Dimension]


class _Key(NamedTuple):
    """What a value is a value of, in both printings."""

    size: Name
    dimension: Dimension
    definition: Definition
    basis: Basis


def twins_joined(charts: Sequence[Chart], sheets: Iterable[Sheet], log: FindingLog) -> list[Chart]:
    """The charts with each second printing set beside its first."""
    pages = _pages(sheets)
    found: list[Chart] = []
    for chart in charts:
        number = next((n for n, one in enumerate(found) if _twins(one, chart)), None)
        if number is None:
            found.append(chart)
        else:
            found[number] = _joined(found[number], chart, pages, log)
    _withdraw_proved(charts, found, log)
    return found


def strangers_asked(
    charts: Sequence[Chart], sheets: Iterable[Sheet], log: FindingLog
) -> tuple[Chart, ...]:
    """The charts with a question on hidden ones that no word tells from what is shown."""
    pages = _pages(sheets)
    return tuple(_stranger(one, charts, pages, log) for one in charts)


def _pages(sheets: Iterable[Sheet]) -> dict[str, bool]:
    """The tables of pages by name, and whether the page hides them."""
    return {one.name: one.hidden for one in sheets if one.addressing is Addressing.TABLE}


def _twins(one: Chart, other: Chart) -> bool:
    if not _same_words(one, other) or (one.place == other.place and _share_places(one, other)):
        return False
    mine, its = _values(one), _values(other)
    shared = mine.keys() & its.keys()
    if len(shared) < _FEWEST or 2 * len(shared) < len(mine):
        return False
    systems = {(_metric(mine[key]), _metric(its[key])) for key in shared}
    if systems not in ({(True, False)}, {(False, True)}):
        return False
    apart = sum(not _agree(mine[key], its[key]) for key in shared)
    return 2 * apart <= len(shared)


def _share_places(one: Chart, other: Chart) -> bool:
    """Whether charts of one place are of the same rows; below one line of sizes they need not."""
    mine, its = (
        {value.place for size in chart.sizes for value in size.ranges} for chart in (one, other)
    )
    return not mine.isdisjoint(its)


def _same_words(one: Chart, other: Chart) -> bool:
    """Whether nothing but their units tells two charts apart."""
    models = [chart.model.text if chart.model else None for chart in (one, other)]
    titles = [_without_units(chart.title) for chart in (one, other)]
    return one.band == other.band and models[0] == models[1] and titles[0] == titles[1]


def _without_units(title: str | None) -> str:
    words = (word.strip('()[].,:;/"–-') for word in (title or "").lower().split())
    return " ".join(word for word in words if word and not _of_units(word))


def _of_units(word: str) -> bool:
    """A unit, or a word for a whole system of them: ``Metric (cm)`` over one printing."""
    return word == "in" or word in _SYSTEMS or bool(find_units(word))


def _values(chart: Chart) -> dict[_Key, Range]:
    return {
        _Key((size.label, size.length), one.dimension, one.definition, one.basis): one
        for size in chart.sizes
        for one in size.ranges
        if one.low is not None or one.high is not None or one.value is not None
    }


def _unread(chart: Chart) -> dict[_Named, Range]:
    """The values without figures: what is asked of them bears on the other printing too."""
    return {
        ((size.label, size.length), one.dimension): one
        for size in chart.sizes
        for one in size.ranges
        if one.low is None and one.high is None and one.value is None
    }


def _metric(one: Range) -> bool:
    """Whether a value is printed in metric units; told by its step where no unit is printed."""
    if one.published_unit is not None:
        return one.published_unit in METRIC
    unit = _IMPERIAL.get(one.unit.value)
    step = one.low_step or one.high_step
    if unit is None or step is None:
        return True
    return len((step / factor(unit)).normalize().as_tuple().digits) > _MOST_DIGITS


def _agree(one: Range, other: Range) -> bool:
    return agreement_of(_beside(one, other)) in {Agreement.EXACT, Agreement.ROUNDED}


def _beside(one: Range, other: Range) -> Range:
    metric, inches = (one, other) if _metric(one) else (other, one)
    unit = inches.published_unit or _IMPERIAL[inches.unit.value]
    return beside(metric, replace(inches, published_unit=unit, findings=()))


def _joined(one: Chart, other: Chart, pages: dict[str, bool], log: FindingLog) -> Chart:
    """The first printing with the second beside it; sizes of the second alone are kept."""
    its = _values(other)
    known = {(size.label, size.length) for size in one.sizes}
    unread = _unread(other)
    sizes = [_both(size, its, unread, log) for size in one.sizes]
    hidden = pages.get(sheet_of(other.place), False)
    more = [size for size in other.sizes if (size.label, size.length) not in known]
    if more and hidden:
        ident = _ask(other, log)
        more = [size_asking(size, ident) for size in more]
    return replace(one, sizes=(*sizes, *more))


def _both(
    size: Size, its: Mapping[_Key, Range], unread: Mapping[_Named, Range], log: FindingLog
) -> Size:
    ranges = []
    for one in size.ranges:
        named = (size.label, size.length)
        other = its.get(_Key(named, one.dimension, one.definition, one.basis))
        if other is None and (lost := unread.get((named, one.dimension))) is not None:
            ranges.append(replace(one, findings=listed(*one.findings, *lost.findings)))
            continue
        ranges.append(one if other is None or one.also_published else _compared(one, other, log))
    return replace(size, ranges=tuple(ranges))


def _compared(one: Range, other: Range, log: FindingLog) -> Range:
    """The two printings of a value as one: each proves the unit of the other, or both are asked."""
    both = _beside(one, other)
    asked = (*one.findings, *_asked_anew(one, other, log))
    if agreement_of(both) in {Agreement.EXACT, Agreement.ROUNDED}:
        guessed = {code.id for code in log.findings if code.code == "unit-missing"}
        kept = listed(*(ident for ident in asked if ident not in guessed))
        proved = both.unit_from is UnitFrom.INFERRED
        source = UnitFrom.SIBLING if proved else both.unit_from
        return replace(both, findings=kept, unit_from=source)
    also = both.also_published
    ident = (say_apart(both, also, log),) if also is not None else ()
    return replace(both, findings=listed(*asked, *ident))


def _asked_anew(one: Range, other: Range, log: FindingLog) -> list[str]:
    """What the second printing asks, without what the first asks of the same heading."""
    said = {each.id: (each.code, each.values.get("heading")) for each in log.findings}
    known = {said[ident] for ident in one.findings if ident in said}
    return [ident for ident in other.findings if said.get(ident) not in known]


def _withdraw_proved(before: Sequence[Chart], now: Sequence[Chart], log: FindingLog) -> None:
    """Take back the questions, for a unit and asked twice, that bear on nothing any more."""
    bore = {ident for chart in before for one in ranges_of(chart) for ident in one.findings}
    bear = {ident for chart in now for one in ranges_of(chart) for ident in one.findings}
    for finding in log.findings:
        if finding.level is Level.QUESTION and finding.id in bore - bear:
            log.withdraw(finding.id)


def _stranger(
    chart: Chart, charts: Sequence[Chart], pages: dict[str, bool], log: FindingLog
) -> Chart:
    """A hidden table that no word tells from what is shown, with a question on its values."""
    if not pages.get(sheet_of(chart.place), False):
        return chart
    shown = [one for one in charts if not pages.get(sheet_of(one.place), False)]
    asked = {finding.id for finding in log.findings if finding.code == "label-repeated"}
    known = any(asked & set(one.findings) for one in ranges_of(chart))
    if known or not any(_same_words(one, chart) for one in shown):
        return chart
    return chart_asking(chart, _ask(chart, log))


def _ask(chart: Chart, log: FindingLog) -> str:
    return log.add("label-repeated", chart.place, key=f"hidden {chart.place}", case="hidden")
