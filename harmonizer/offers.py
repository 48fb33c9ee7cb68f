"""Rows to compare: one offer is one model in one size and one length.

A width table and a length table of one model are multiplied out here, each value keeping its own
cell. Names come from ``models.toml``, else from the chart, the sheet, the file or the folder.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import PurePosixPath
from typing import Final

from charts.findings import Level
from charts.model_facts import ModelFacts
from charts.schema import Chart, Dimension, FileReading, Range, Said, Size

Known = Mapping[int, ModelFacts | None]
"""What is written of each chart of a file, by the chart's id."""

_GIRTHS: Final = frozenset({Dimension.CHEST, Dimension.WAIST, Dimension.HIP})
_GUESSED_FROM: Final = frozenset({"file", "folder"})
_NO_SHEET_NAME: Final = ("sheet", "table", "page", "tabelle", "blatt", "feuil", "hoja", "line")


@dataclass(frozen=True, slots=True)
class Offer:
    """One model, size and length with everything its charts say of it.

    ``chart`` tells the charts of one load apart; sizes of one chart are neighbours. ``order`` is
    the place in the source. ``open_questions`` holds the ids of unanswered questions.
    """

    file: str
    chart: int
    order: int
    place: str
    model: str
    size: str
    ranges: tuple[Range, ...]
    length: str | None = None
    also: tuple[str, ...] = ()
    supplier: str | None = None
    season: str | None = None
    band: str | None = None
    facts: ModelFacts | None = None
    open_questions: tuple[str, ...] = ()

    @property
    def kind(self) -> str | None:
        """``foam``, ``inflatable``, or None where nobody says."""
        return self.facts.kind.value if self.facts and self.facts.kind else None


def model_key(offer: Offer) -> str:
    """What tells one row of the table from the others, whatever the order."""
    parts = (offer.supplier, offer.model, offer.band, offer.season, offer.facts and offer.kind)
    return "\x1f".join(part or "" for part in parts)


def offers(readings: Sequence[FileReading], facts: Sequence[ModelFacts] = ()) -> tuple[Offer, ...]:
    """Every model x size x length that ``readings`` offer, in source order."""
    found: list[Offer] = []
    number = 0
    for reading in readings:
        known = {id(chart): facts_of(reading.file, chart, facts) for chart in reading.charts}
        for chart, sizes in _joined(reading.charts, known):
            for of_model in _of_models(reading, chart, known[id(chart)], facts):
                first = len(found)
                for place, size in enumerate(sizes):
                    found.append(of_model.offer(size, number, first + place))
                number += 1
    return tuple(found)


@dataclass(frozen=True, slots=True)
class _Named:
    """One chart with the names and facts its offers carry."""

    reading: FileReading
    chart: Chart
    facts: ModelFacts | None
    supplier: str | None
    model: str
    season: str | None
    questions: frozenset[str]

    @classmethod
    def of(cls, reading: FileReading, chart: Chart, facts: ModelFacts | None) -> _Named:
        folder = PurePosixPath(reading.file).parent.name or None
        supplier, model, season = _names(chart, facts)
        asked = (item.id for item in reading.findings if item.level is Level.QUESTION)
        return cls(
            reading=reading,
            chart=chart,
            facts=facts,
            supplier=supplier or folder,
            model=model or _name_by_place(reading, chart),
            season=season,
            questions=frozenset(asked),
        )

    def offer(self, size: Size, number: int, order: int) -> Offer:
        findings = (ident for item in size.ranges for ident in item.findings)
        return Offer(
            file=self.reading.file,
            chart=number,
            order=order,
            place=self.chart.place,
            model=self.model,
            size=size.label or size.length or "",
            ranges=size.ranges,
            length=size.length if size.label else None,
            also=tuple(item.label for item in size.also),
            supplier=self.supplier,
            season=self.season,
            band=self.chart.band,
            facts=self.facts,
            open_questions=tuple(dict.fromkeys(one for one in findings if one in self.questions)),
        )


def _of_models(
    reading: FileReading, chart: Chart, known: ModelFacts | None, facts: Sequence[ModelFacts]
) -> Iterator[_Named]:
    """The chart once for every model it is for: those the shop wrote down, else those it names."""
    if known is not None:
        first = _Named.of(reading, chart, known)
        yield first
        yield from (replace(first, model=name) for name in known.also)
        return
    for name in chart.models or (None,):
        one = chart
        if name is not None and chart.model is not None:
            one = replace(chart, model=replace(chart.model, text=name))
        named = _Named.of(reading, one, facts_of(reading.file, one, facts) if name else None)
        yield replace(named, chart=chart)


def _names(chart: Chart, facts: ModelFacts | None) -> tuple[str | None, str | None, str | None]:
    """Supplier, model and season. What was written of a chart goes before what was guessed of it.

    A season that the chart itself prints stands, for last year's ``models.toml`` may still be
    there, unless the notes say the same and more ("2027", "spring 2027").
    """
    supplier, model, season = (
        said.text if said else None for said in (chart.supplier, chart.model, chart.season)
    )
    if facts is None:
        return supplier, model, season
    if chart.model is None or _guessed(chart.model) or not _same(chart.model.text, facts.model):
        model = facts.model
    guessed = chart.season is not None and _guessed(chart.season)
    if facts.season and (season is None or guessed or season in facts.season):
        season = facts.season
    return facts.supplier or supplier, model, season


def _guessed(said: Said) -> bool:
    return said.source in _GUESSED_FROM


def facts_of(file: str, chart: Chart, facts: Sequence[ModelFacts]) -> ModelFacts | None:
    """The one entry of ``models.toml`` that speaks of ``chart``, or None.

    An entry that names the chart goes before one that names the file only.
    """
    here = [entry for entry in facts if _speaks_of(entry, file, chart)]
    named = [entry for entry in here if entry.chart]
    if chart.model is not None and len(named or here) > 1:
        same = [entry for entry in named or here if _same(entry.model, chart.model.text)]
        return same[0] if len(same) == 1 else None
    chosen = named or here
    return chosen[0] if len(chosen) == 1 else None


def _speaks_of(entry: ModelFacts, file: str, chart: Chart) -> bool:
    path = PurePosixPath(file)
    if entry.file is None:
        in_folder = entry.folder in ("", str(path.parent))
        return in_folder and chart.model is not None and _same(entry.model, chart.model.text)
    if path != PurePosixPath(entry.folder) / entry.file:
        return False
    words = (chart.place, chart.title or "", chart.band or "")
    return entry.chart is None or any(_has_word(text, entry.chart) for text in words)


def _has_word(text: str, word: str) -> bool:
    """Whether ``word`` stands in ``text`` as a word: "men" does not stand in "women"."""
    return re.search(rf"(?<!\w){re.escape(word)}(?!\w)", text, re.IGNORECASE) is not None


def _same(one: str, other: str) -> bool:
    return " ".join(one.split()).casefold() == " ".join(other.split()).casefold()


def _name_by_place(reading: FileReading, chart: Chart) -> str:
    """The sheet's name where it tells the charts of a file apart, else the file's."""
    stem = PurePosixPath(reading.file).stem
    sheet = chart.place.rpartition("!")[0].strip("'")
    sheets = Counter(other.place.rpartition("!")[0].strip("'") for other in reading.charts)
    if not sheet or sheet.casefold().startswith(_NO_SHEET_NAME) or len(sheets) == 1:
        return stem
    return sheet


def _joined(charts: Sequence[Chart], known: Known) -> Iterator[tuple[Chart, Sequence[Size]]]:
    """The charts of one file with their sizes, length tables multiplied into their width tables."""
    partners = {
        id(table): _widths_for(table, charts, known) for table in charts if _is_length_table(table)
    }
    for chart in charts:
        if partners.get(id(chart)):
            continue
        sizes: Sequence[Size] = chart.sizes
        for table in charts:
            if any(chart is width for width in partners.get(id(table), ())):
                sizes = [joined for size in sizes for joined in _with_lengths(size, table)]
        yield chart, sizes


def _is_length_table(chart: Chart) -> bool:
    dimensions = {item.dimension for size in chart.sizes for item in size.ranges}
    return Dimension.BACK_LENGTH in dimensions and not dimensions & _GIRTHS


def _widths_for(table: Chart, charts: Sequence[Chart], known: Known) -> Sequence[Chart]:
    """The width tables that lack what ``table`` gives and do not contradict it."""
    widths = [chart for chart in charts if _lacks_length(chart) and _agree(table, chart, known)]
    labels = {size.label for size in table.sizes} - {None}
    if labels:
        widths = [chart for chart in widths if labels <= {size.label for size in chart.sizes}]
    sheet = table.place.rpartition("!")[0]
    near = [chart for chart in widths if chart.place.rpartition("!")[0] == sheet]
    return near or widths


def _lacks_length(chart: Chart) -> bool:
    dimensions = {item.dimension for size in chart.sizes for item in size.ranges}
    no_length = all(size.length is None for size in chart.sizes)
    return bool(dimensions & _GIRTHS) and Dimension.BACK_LENGTH not in dimensions and no_length


def _agree(table: Chart, chart: Chart, known: Known) -> bool:
    """Whether two tables may be of one model; what the shop wrote of both decides."""
    if table.band and chart.band and table.band != chart.band:
        return False
    one, other = known[id(table)], known[id(chart)]
    if one is not None and other is not None:
        return one is other
    return not (table.model and chart.model and not _same(table.model.text, chart.model.text))


def _with_lengths(size: Size, table: Chart) -> Iterator[Size]:
    """``size`` once for every length option of ``table`` that is meant for it."""
    options = [option for option in table.sizes if option.label in (None, size.label)]
    if not options:
        yield size
    for option in options:
        yield Size(size.label, size.ranges + option.ranges, option.length, size.also)
