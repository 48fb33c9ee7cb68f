"""One rider against every size, for people at a terminal: groups, best first, with the reasons."""

from __future__ import annotations

from collections.abc import Iterator, Sequence, Set
from typing import Final

from charts.quantities import METRIC, Unit
from harmonizer.cautions import cautions_for
from harmonizer.dimension_fit import DimensionFit
from harmonizer.explain import sentence
from harmonizer.fit_row import FitRow
from harmonizer.fit_sheet import FitSheet
from harmonizer.plausibility import Check, checks
from harmonizer.rider import Measure, Reading, Rider
from harmonizer.setting_words import figures_in_force
from harmonizer.states import GirthState, LengthState
from ui.fitting_page.cells import margins_at
from ui.fitting_page.model_groups import band_of
from ui.fitting_page.remarks import remarks_on
from ui.fitting_page.row_words import RowWords
from ui.fitting_page.rows import BANDS, TAPES, Band
from ui.terminal_text import aligned, wrapped
from ui.words import Words

_SERVES: Final = frozenset({Band.TRY, Band.JUST_OUTSIDE})
"""Bands whose rows all stand in the short answer."""

_SEPARATOR: Final = " · "
_FEET: Final = ("'", "\N{PRIME}", '"', "\N{DOUBLE PRIME}")

_Model = tuple[str | None, str]


def fit_report(
    sheet: FitSheet,
    words: Words,
    width: int,
    *,
    every_size: bool = False,
    asked: Sequence[Check] | None = None,
) -> list[str]:
    """The lines of the report; ``asked`` is what was found in the light of more than the file.

    The short answer fits a screen: the best row with all its reasons, the others that serve with
    what decides them, and of every other model its nearest size in one line. ``every_size`` gives
    every row its line, and every row that serves its reasons.
    """
    speak = RowWords(words)
    found = checks(sheet.rider, settings=sheet.settings) if asked is None else asked
    lines = [*_rider(sheet.rider, found, words, width), ""]
    shown: set[_Model] = set()
    for band, rows in _banded(sheet):
        kept = rows if every_size else _kept(band, rows, shown)
        lines.append(words(f"group-{band.value.replace('_', '-')}", count=len(rows)))
        heads = aligned([_row(sheet, row, speak) for row in kept], indent=2)
        for row, head in zip(kept, heads, strict=True):
            lines.append(head)
            best = row.at == sheet.rows[0].at
            lines += _reasons(row, band, words, width, whole=every_size or best)
        if folded := len(rows) - len(kept):
            lines.append(f"  {words.wording.say('faces', 'sizes-folded', count=folded)}")
        shown |= {_model_of(row) for row in kept}
        lines.append("")
    return [*lines, *_foot(sheet, words, width)]


def _foot(sheet: FitSheet, words: Words, width: int) -> Iterator[str]:
    """That there was nothing to compare, the shop's own figures, and the cautions."""
    if not sheet.rows:
        yield from (words.wording.say("faces", "nothing-to-compare"), "")
    for own in figures_in_force(sheet.settings, words.wording):
        yield from (*wrapped(own, 0, width), "")
    yield words.wording.say("faces", "cautions")
    for caution in cautions_for(sheet.rider, words.wording):
        yield from wrapped(caution, 2, width)


def _banded(sheet: FitSheet) -> Iterator[tuple[Band, list[FitRow]]]:
    """The bands that have rows, in the order of the window's table."""
    for band in BANDS:
        if rows := [row for row in sheet.rows if band_of(row) is band]:
            yield band, rows


def _kept(band: Band, rows: Sequence[FitRow], shown: Set[_Model]) -> list[FitRow]:
    """The rows of the short answer: all that serve, else the nearest of each model not yet shown.

    What is not offered is told for every model: a stop must not be hidden by another size.
    """
    if band in _SERVES:
        return list(rows)
    nearest = {_model_of(row): row for row in reversed(rows)}
    return [
        row
        for row in rows
        if row is nearest[_model_of(row)]
        and (band is Band.NOT_OFFERED or _model_of(row) not in shown)
    ]


def _model_of(row: FitRow) -> _Model:
    return (row.offer.supplier, row.offer.model)


def _rider(rider: Rider, asked: Sequence[Check], words: Words, width: int) -> Iterator[str]:
    yield rider.name
    readings = [_reading(reading, words) for reading in rider.all_readings]
    said = _SEPARATOR.join(readings) or words.wording.say("faces", "no-readings")
    yield from wrapped(said, 2, width)
    for check in asked:
        question = sentence(check.reason, words.wording)
        yield from wrapped(words.wording.say("faces", "asked", question=question), 2, width)


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


def _reasons(row: FitRow, band: Band, words: Words, width: int, *, whole: bool) -> Iterator[str]:
    """Every reason of a row that serves, or what decides it and what of it was not compared."""
    if band not in _SERVES:
        return
    fits = list(row.dimensions.values())
    if not whole:
        tapes = fits[: len(TAPES)]
        deciding = max(tapes, key=_badness)
        fits = [fit for fit in tapes if fit is deciding or _chart_lacks(fit)]
    for fit in fits:
        yield from wrapped(sentence(fit.reason, words.wording), 6, width)


def _chart_lacks(fit: DimensionFit) -> bool:
    """Whether nothing was compared for want of the chart; what the rider lacks is told once."""
    return fit.margin is None and fit.reason.code != "no-reading"


def _badness(fit: DimensionFit) -> tuple[float, float]:
    """How far down its family a state stands, as a share, then how little margin it leaves.

    What was not compared tells least.
    """
    if fit.margin is None:
        return -1.0, 0.0
    family: tuple[str, ...] = tuple(
        LengthState if isinstance(fit.state, LengthState) else GirthState
    )
    return family.index(fit.state) / len(family), -fit.margin
