"""One rider against every size, for people at a terminal: groups, best first, with the reasons."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import Final

from charts.quantities import METRIC, Unit
from harmonizer.cautions import cautions_for
from harmonizer.dimension_fit import DimensionFit
from harmonizer.explain import sentence
from harmonizer.fit_row import FitRow
from harmonizer.fit_sheet import FitSheet
from harmonizer.rider import Measure, Reading, Rider
from harmonizer.states import GirthState, LengthState
from ui.fitting_page.cells import margins_at
from ui.fitting_page.remarks import remarks_on
from ui.fitting_page.row_words import RowWords
from ui.fitting_page.rows import BAND_OF, TAPES, Band
from ui.terminal_text import aligned, wrapped
from ui.words import Words

_SERVES: Final = frozenset({Band.TRY, Band.JUST_OUTSIDE})
"""Bands whose rows give the reason for every dimension."""

_SEPARATOR: Final = " · "
_FEET: Final = ("'", "\N{PRIME}", '"', "\N{DOUBLE PRIME}")


def fit_report(sheet: FitSheet, words: Words, width: int) -> list[str]:
    """The lines of the report.

    Below the bands that serve, a model that has no row in them says once why; its other sizes
    have their line only. What is not offered says so in its line.
    """
    speak = RowWords(words)
    lines = [*_rider(sheet.rider, words, width), ""]
    explained: set[tuple[str | None, str]] = set()
    for band, group in groupby(sheet.rows, key=lambda row: BAND_OF[row.verdict.value]):
        rows = list(group)
        lines.append(words(f"group-{band.value.replace('_', '-')}", count=len(rows)))
        heads = aligned([_row(sheet, row, speak) for row in rows], indent=2)
        for row, head in zip(rows, heads, strict=True):
            lines.append(head)
            model = (row.offer.supplier, row.offer.model)
            if band in _SERVES or (model not in explained and band is not Band.NOT_OFFERED):
                lines += _reasons(row, words, width, whole=band in _SERVES)
            explained.add(model)
        lines.append("")
    if not sheet.rows:
        lines += [words.wording.say("faces", "nothing-to-compare"), ""]
    lines.append(words.wording.say("faces", "cautions"))
    for caution in cautions_for(sheet.rider, words.wording):
        lines += wrapped(caution, 2, width)
    return lines


def _rider(rider: Rider, words: Words, width: int) -> Iterator[str]:
    yield rider.name
    readings = [_reading(reading, words) for reading in rider.all_readings]
    yield from wrapped(_SEPARATOR.join(readings), 2, width)


def _reading(reading: Reading, words: Words) -> str:
    """One reading as it was given, and in cm or kg where that was another unit."""
    measure = reading.measure
    if measure.dimension is not None:
        name = words.wording.say("combined", f"dimension-{measure.dimension.value}")
    else:
        name = words.wording.say("faces", f"measure-{measure.value}")
    value = words.margin(float(reading.value))
    text = _with_unit(reading.text or value, reading.unit)
    if reading.unit is None or reading.unit in METRIC or reading.unit is Unit.YEARS:
        return words.wording.say("faces", "reading", dimension=name, text=text)
    code = "reading-kg" if measure is Measure.WEIGHT else "reading-cm"
    return words.wording.say("faces", code, dimension=name, text=text, value=value)


def _with_unit(text: str, unit: Unit | None) -> str:
    """``text`` with its unit, where the text itself carries none."""
    if unit is None or unit is Unit.YEARS or text.endswith(_FEET):
        return text
    return text if any(letter.isalpha() for letter in text) else f"{text} {unit.value}"


def _row(sheet: FitSheet, row: FitRow, speak: RowWords) -> Sequence[str]:
    offer, words = row.offer, speak.words
    size = offer.size
    if offer.length:
        size = words.wording.say("faces", "size-and-length", size=size, length=offer.length)
    remarks = [words(code, **values) for code, values in remarks_on(row, words)]
    return (
        offer.supplier or words.wording.say("combined", "not-given"),
        offer.model,
        words.wording.say("combined", f"band-{offer.band}") if offer.band else "",
        size,
        *_verdict(row, speak),
        _tightest(sheet, row, speak),
        _SEPARATOR.join(remarks),
    )


def _verdict(row: FitRow, speak: RowWords) -> tuple[str, str]:
    chest = row.dimensions[TAPES[0]].state is not GirthState.NOT_CHECKED
    girths = speak.girths(row.girth_verdict.value, chest).text
    return girths, speak.length(row.length_verdict.value).text


def _tightest(sheet: FitSheet, row: FitRow, speak: RowWords) -> str:
    """The dimension with the least margin, its margin and its word."""
    compared = [
        (fit.margin, fit)
        for dimension, fit in row.dimensions.items()
        if dimension in TAPES and fit.margin is not None
    ]
    if not compared:
        return speak.words("girths-not_checked")
    _, fit = min(compared, key=lambda pair: pair[0])
    margins = margins_at(sheet, fit.dimension, row.at)
    if margins is None:
        return ""
    number, _ = speak.number(fit.dimension, fit.state.value, margins)
    name = speak.words.wording.say("combined", f"dimension-{fit.dimension.value}")
    return speak.words.wording.say("faces", "tightest", dimension=name, number=number)


def _reasons(row: FitRow, words: Words, width: int, *, whole: bool) -> Iterator[str]:
    fits = list(row.dimensions.values())
    if not whole:
        fits = [max(fits[: len(TAPES)], key=_badness)]
    for fit in fits:
        yield from wrapped(sentence(fit.reason, words.wording), 6, width)


def _badness(fit: DimensionFit) -> float:
    """How far down its family a state stands, as a share; what was not compared tells least."""
    if fit.margin is None:
        return -1.0
    family: tuple[str, ...] = tuple(
        LengthState if isinstance(fit.state, LengthState) else GirthState
    )
    return family.index(fit.state) / len(family)
