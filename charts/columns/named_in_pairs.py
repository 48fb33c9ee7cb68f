"""Names that say for whom a chart is only beside each other: ``Nữ`` and ``Nam``, ``Lei``, ``Lui``.

Such a word is another one elsewhere, so that it is in no list of whom a title names. As the whole
name of a chart it is believed where the other word of its pair names another chart of the source,
or where the headings speak its language; else it is asked about. A letter alone says nothing.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from functools import cache
from typing import Final, NamedTuple

from charts.asked_values import chart_asking, ranges_of
from charts.dimensions import read_band, read_heading
from charts.findings import FindingLog
from charts.headings.bands import CHILDREN, bands_named
from charts.places import sheet_of
from charts.schema import Chart
from charts.vocabulary import normal, spellings, vocabulary

_PEOPLE: Final = ("women", "men", "girls", "boys")
_OTHER: Final = {"women": "men", "men": "women", "girls": "boys", "boys": "girls"}
_SIDES: Final = 2
_AROUND: Final = frozenset({"sheet", "file", "folder"})
_SHORTEST: Final = 3
"""Letters of a word that is asked about alone: shorter ones are codes as well."""
_PLACE: Final = "…"
_MOST_WORDS: Final = 12
"""Words of a name; more of them say something (common practice, no source)."""


class _Word(NamedTuple):
    """What a name is in one language, by the number of its pair.

    ``beside`` is what else stands in the name; "…" is where the word stood: ``zorbo …``.
    """

    pair: int
    language: str
    band: str
    beside: str = ""


def named_in_pairs(charts: Sequence[Chart], log: FindingLog) -> list[Chart]:
    """The charts with whom the words of pairs name, and with a question where one stands alone."""
    meant = [[*_meant(chart)] for chart in charts]
    if not any(meant):
        return list(charts)
    names = {name for chart in charts for name in _names(chart)}
    said = {word for each in meant for word in each}
    if len({name for name in names if len(name) == 1}) != _SIDES:
        said = {word for word in said if word.language}  # more letters are those of a drawing
    plain = {read_band(name) for name in names} - {None}
    return [_told(*each, said, plain, log) for each in zip(charts, meant, strict=True)]


def _names(chart: Chart) -> Iterator[str]:
    """The names of a chart: its nearest title, its model, its sheet.

    Of a title for somebody the rest is no name: "Mother and baby" is not the mother's.
    """
    nearest = (chart.title or "").rpartition(" · ")[2]
    said = chart.model.source if chart.model else ""
    no_name = said in _AROUND or (said == "title" and bands_named(nearest))
    model = chart.model.text if chart.model and not no_name else ""
    for text in (nearest, model, sheet_of(chart.place)):
        if text:
            yield _folded(text)


def _folded(text: str) -> str:
    return normal(text) or text.strip(" :")


def _meant(chart: Chart) -> Iterator[_Word]:
    """What the words of its names are: the whole name first, then each word of a longer one."""
    names = [*dict.fromkeys(_names(chart))]
    for name in names:
        yield from _words().get(name, ())
    for words in (name.split() for name in names):
        for at, one in enumerate(words if 1 < len(words) <= _MOST_WORDS else ()):
            beside = " ".join((*words[:at], _PLACE, *words[at + 1 :]))
            of_words = (word for word in _words().get(one, ()) if word.language)
            yield from (word._replace(beside=beside) for word in of_words)


def _told(
    chart: Chart, meant: Sequence[_Word], said: set[_Word], plain: set[str | None], log: FindingLog
) -> Chart:
    if chart.band in CHILDREN:
        meant = [word for word in meant if word.band in CHILDREN]
    sure = {word.band for word in meant if _is_beside_its_other(word, said, plain)}
    if not sure and chart.band is None:
        return _told_alone(chart, [one for one in meant if one.language], log)
    return _of(chart, sure.pop(), meant) if len(sure) == 1 else chart


def _is_beside_its_other(word: _Word, said: set[_Word], plain: set[str | None]) -> bool:
    """Whether the other of its pair, or a plain word for the same people, is a name as well."""
    other = _OTHER[word.band]
    whole = not word.beside and bool(word.language)
    return word._replace(band=other) in said or (whole and other in plain)


def _told_alone(chart: Chart, meant: Sequence[_Word], log: FindingLog) -> Chart:
    """A whole name in the language of the headings is believed, a part of one asked about."""
    spoken = {read_heading(one.heading).language for one in ranges_of(chart)} - {None}
    own = [one for one in meant if one.language in spoken]
    whole = {word.band for word in own if not word.beside}
    if len(whole) == 1:
        return _of(chart, whole.pop(), meant)
    last = any(word.beside.endswith(_PLACE) for word in own)
    long = any(len(name) >= _SHORTEST for name in _names(chart) if name in _words())
    return _asked(chart, log) if last or long else chart


def _of(chart: Chart, band: str, meant: Sequence[_Word]) -> Chart:
    named = chart.model is not None and _words().get(_folded(chart.model.text), ())
    whole = named and any(not word.beside for word in meant)
    return replace(chart, band=band, model=None if whole else chart.model)


def _asked(chart: Chart, log: FindingLog) -> Chart:
    heading = (chart.title or (chart.model.text if chart.model else "")).strip()
    ident = log.add(
        "columns-shifted", chart.place, key=f"pair {chart.place}", case="people", heading=heading
    )
    return chart_asking(chart, ident)


@cache
def _words() -> Mapping[str, Sequence[_Word]]:
    found: dict[str, list[_Word]] = {}
    for number, pair in enumerate(vocabulary("pairs")["pair"]):
        for band in (one for one in _PEOPLE if one in pair):
            for spelling in (one for word in pair[band] for one in spellings(word) or {word}):
                found.setdefault(spelling, []).append(_Word(number, pair["language"], band))
    return found
