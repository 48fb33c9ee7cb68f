"""When nothing fits: the nearest sizes, what misses, and what to ask the maker for."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

import numpy as np

from charts.reason import Reason
from harmonizer.comparison import BACK as BACK_ROW
from harmonizer.comparison import CHEST
from harmonizer.dimension_fit import DimensionFit
from harmonizer.fit_row import FitRow
from harmonizer.fit_sheet import FitSheet
from harmonizer.lanes import GIRTH_DIMENSIONS, MAIN
from harmonizer.states import GIRTHS, LENGTHS, SLACK, GirthState, LengthState, Verdict
from harmonizer.take_again import worth_measuring_first
from harmonizer.verdict_words import BACK, full_name, side_of, size_name

NEAREST: Final = 3
_CHEST_FITS: Final = (GirthState.INSIDE, GirthState.EDGE)
_BACK_FITS: Final = (LengthState.CLEAR, LengthState.CHECK)
STANDING: Final = (Verdict.FITS, Verdict.EDGE, Verdict.CHECK_LENGTH, Verdict.LENGTH_UNKNOWN)
"""What can be tried as it stands."""


@dataclass(frozen=True, slots=True)
class Nearest:
    """One of the nearest sizes: what misses, what to ask its maker for, what to measure again."""

    row: FitRow
    misses: tuple[Reason, ...]
    asks: tuple[Reason, ...]
    measure_first: tuple[Reason, ...]


def nothing_fits(sheet: FitSheet) -> bool:
    """Whether no size reads *length unknown* or better."""
    return len(sheet.rows) == 0 or sheet.rows[0].verdict not in STANDING


def nearest(sheet: FitSheet) -> tuple[Nearest, ...]:
    """The three nearest sizes, best first, of as many models as there are; empty if one fits."""
    if not nothing_fits(sheet):
        return ()
    return tuple(
        Nearest(
            row=row,
            misses=tuple(misses(row)),
            asks=tuple(asks(sheet, row)),
            measure_first=tuple(measure_first(sheet, row)),
        )
        for row in nearest_rows(sheet)
    )


def nearest_rows(sheet: FitSheet) -> list[FitRow]:
    """The first rows of a sheet, best first, of as many models as there are."""
    best: dict[tuple[str | None, str], FitRow] = {}
    for row in sheet.rows:
        best.setdefault((row.offer.supplier, row.offer.model), row)
        if len(best) == NEAREST:
            break
    chosen = list(best.values())
    taken = {row.at for row in chosen}
    for row in sheet.rows[:NEAREST]:
        if len(chosen) < NEAREST and row.at not in taken:
            chosen.append(row)
    return chosen


def misses(row: FitRow) -> Iterator[Reason]:
    """What keeps a size from fitting, dimension by dimension."""
    name = full_name(row)
    if row.verdict is Verdict.NOT_OFFERED:
        yield Reason("nearest-refused", {"size": name})
    for one in row.dimensions.values():
        if one.dimension in MAIN:
            yield from _miss(name, one)


def _miss(name: Reason, one: DimensionFit) -> Iterator[Reason]:
    if one.margin is None:
        if one.lower_margin is None and one.upper_margin is None:
            yield Reason("nearest-unchecked", {"size": name, "dimension": one.dimension})
        return
    if one.margin >= -SLACK:
        if one.state is GirthState.NEAR:
            yield Reason("nearest-elastic", {"size": name})
        return
    values = {"size": name, "dimension": one.dimension, "by": -one.margin}
    side = side_of(one)
    if one.dimension is BACK:
        side = {"tight": "short", "loose": "long"}[side]
    yield Reason(f"nearest-{side}", values)


def asks(sheet: FitSheet, row: FitRow) -> Iterator[Reason]:
    """What the maker could still have: another length, another size, the missing figures."""
    model = row.offer.model
    conflict = _conflict(sheet, row)
    if conflict is not None:
        yield conflict
    for one in row.dimensions.values():
        if one.dimension not in MAIN or one.reading is None:
            continue
        values = {"model": model, "dimension": one.dimension, "x": one.reading}
        if one.margin is None and one.published_low is None and one.published_high is None:
            yield Reason("ask-figures", {"model": model, "dimension": one.dimension})
        elif one.dimension is BACK:
            yield from _ask_length(row, one, model)
        elif one.margin is not None and one.margin < -SLACK:
            tight = side_of(one) == "tight"
            yield Reason("ask-larger" if tight else "ask-smaller", values)


def _ask_length(row: FitRow, back: DimensionFit, model: str) -> Iterator[Reason]:
    values = {"model": model, "size": size_name(row), "x": back.reading}
    if row.length_verdict in (LengthState.TOO_LONG, LengthState.LIKELY_LONG):
        yield Reason("ask-shorter", values)
    elif row.length_verdict in (LengthState.TOO_SHORT, LengthState.SHORT):
        yield Reason("ask-longer", values)


def _conflict(sheet: FitSheet, row: FitRow) -> Reason | None:
    """The chest asks for one size, the back for another: the short torso, mostly."""
    places = _of_chart(sheet, row.offer.chart)
    chest = [at for at in places if GIRTHS[sheet.states[CHEST, at]] in _CHEST_FITS]
    back = [at for at in places if LENGTHS[sheet.states[BACK_ROW, at]] in _BACK_FITS]
    if not chest or not back or set(chest) & set(back):
        return None
    first, other = (size_name(sheet.row_of(at)) for at in (chest[0], back[0]))
    return Reason("no-size-of-model", {"model": row.offer.model, "chest": first, "back": other})


def _of_chart(sheet: FitSheet, chart: int) -> list[int]:
    """The offers of one chart, best first; by arrays, for a table may hold thousands."""
    own = np.array([offer.chart == chart for offer in sheet.table.offers], np.bool_)
    places: list[int] = sheet.order[own[sheet.order]].tolist()
    return places


def measure_first(sheet: FitSheet, row: FitRow) -> Iterator[Reason]:
    """Girths that miss and yet may well be within tolerance: to be read again before anything."""
    for place, dimension in enumerate(MAIN):
        if dimension in GIRTH_DIMENSIONS and worth_measuring_first(sheet, place, row):
            values = {"dimension": dimension, "size": full_name(row)}
            yield Reason("measure-first", values)
