"""The in-house chart of everything loaded: one row per model, size and length, as the makers say.

Rows are put in order and nothing else: no value is averaged, merged between makers or filled in.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import date
from math import inf
from types import MappingProxyType
from typing import Final

from charts.findings import DANGER, Finding, Level
from charts.in_house import AskedOf, InHouseChart, InHouseRow, Withheld, WithheldModel
from charts.model_facts import ModelFacts
from charts.schema import Basis, Definition, Dimension, FileReading, Range
from charts.size_labels import read_label, read_length
from harmonizer.offers import Offer

_BANDS: Final = ("women", "men", "unisex", "girls", "boys", "kids", "baby")
_LENGTHS: Final = ("extra short", "short", "regular", "long", "extra long")


def combined(
    readings: Sequence[FileReading],
    offers: Sequence[Offer],
    dates: Mapping[str, date],
    made_on: date,
    aside: Sequence[Offer] = (),
) -> InHouseChart:
    """Every offer as a row, in the order of makers, models, sizes and lengths.

    ``dates`` says when each file was last written. Recalled and superseded models are left out
    and named, as are those of the offers kept ``aside``.
    """
    by_file = {reading.file: reading for reading in readings}
    rows = [
        _row(offer, by_file[offer.file], dates.get(offer.file, made_on))
        for offer in sorted(offers, key=_order)
        if _withheld(offer) is None
    ]
    return InHouseChart(
        rows=tuple(rows),
        made_on=made_on,
        questions=open_questions(readings),
        not_read=_found(
            readings, lambda reading, level: not reading.charts and level is Level.ERROR
        ),
        withheld=_withheld_models(offers, aside),
    )


def open_questions(readings: Iterable[FileReading]) -> tuple[AskedOf, ...]:
    """What is open in every file, dangerous first, else in the order of the files.

    Questions, and errors in files that gave charts all the same.
    """
    return _found(
        readings,
        lambda reading, level: (
            level is Level.QUESTION or (level is Level.ERROR and bool(reading.charts))
        ),
    )


def _found(
    readings: Iterable[FileReading], wanted: Callable[[FileReading, Level], bool]
) -> tuple[AskedOf, ...]:
    found = [
        AskedOf(reading.file, finding)
        for reading in readings
        for finding in reading.findings
        if wanted(reading, finding.level)
    ]
    return tuple(sorted(found, key=lambda asked: _danger(asked.finding)))


def _danger(finding: Finding) -> int:
    return DANGER.get(finding.code, len(DANGER))


def _withheld_models(offers: Sequence[Offer], aside: Sequence[Offer]) -> tuple[WithheldModel, ...]:
    found = {each for offer in (*offers, *aside) if (each := _withheld(offer)) is not None}
    gone = {(each.supplier, each.model) for each in found}
    found |= {
        WithheldModel(offer.supplier, offer.model, Withheld.HELD)
        for offer in aside
        if (offer.supplier, offer.model) not in gone
    }
    return tuple(sorted(found, key=lambda each: (each.supplier or "", each.model)))


def _withheld(offer: Offer) -> WithheldModel | None:
    facts = offer.facts
    if facts is None or not (facts.recalled or facts.superseded):
        return None
    why = Withheld.RECALLED if facts.recalled else Withheld.SUPERSEDED
    return WithheldModel(offer.supplier, offer.model, why)


def _row(offer: Offer, reading: FileReading, dated: date) -> InHouseRow:
    measures: dict[Dimension, tuple[Range, ...]] = {}
    for value in offer.ranges:
        said = _as_the_maker_says(value, offer.facts)
        measures[value.dimension] = (*measures.get(value.dimension, ()), said)
    return InHouseRow(
        supplier=offer.supplier,
        model=offer.model,
        band=offer.band,
        size=offer.size or None,
        length=offer.length,
        measures=MappingProxyType(measures),
        file=offer.file,
        place=", ".join(_areas(offer, reading)),
        dated=dated,
        season=offer.season,
        also=offer.also,
        facts=offer.facts,
        open_questions=frozenset(offer.open_questions),
    )


def _as_the_maker_says(value: Range, facts: ModelFacts | None) -> Range:
    """A definition or basis from the maker's instructions where the chart itself is silent."""
    if facts is None:
        return value
    if value.definition is Definition.UNKNOWN and value.dimension in facts.definitions:
        value = replace(value, definition=facts.definitions[value.dimension])
    if value.basis is Basis.UNKNOWN and facts.basis is not None:
        value = replace(value, basis=facts.basis)
    return value


def _areas(offer: Offer, reading: FileReading) -> list[str]:
    """The areas of the file that the row's values come from: two for a width and a length table."""
    cells = {value.place for value in offer.ranges}
    return [
        chart.place
        for chart in reading.charts
        if chart.place == offer.place
        or any(value.place in cells for size in chart.sizes for value in size.ranges)
    ]


def _order(offer: Offer) -> tuple[object, ...]:
    label = read_label(offer.size)
    return (
        (offer.supplier is None, (offer.supplier or "").casefold()),
        offer.model.casefold(),
        _BANDS.index(offer.band) if offer.band in _BANDS else len(_BANDS),
        offer.file,
        label.order if label is not None else (inf,),
        _length_order(offer.length),
        offer.order,
    )


def _length_order(length: str | None) -> int:
    if length is None:
        return -1
    word = read_length(length)
    return _LENGTHS.index(word) if word in _LENGTHS else len(_LENGTHS)
