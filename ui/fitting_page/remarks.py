"""What is to be noted of a row beside its tapes, the weightiest first. No Qt."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Final

import numpy as np
import numpy.typing as npt

from charts.schema import Dimension
from harmonizer.explain import sentence
from harmonizer.fit_arrays import FitArrays
from harmonizer.fit_row import FitRow
from harmonizer.fit_sheet import FitSheet
from harmonizer.not_compared import why_not_compared
from harmonizer.states import SLACK
from ui.fitting_page.rows import TAPES
from ui.words import Words

Remark = tuple[str, dict[str, object]]
Places = npt.NDArray[np.int64]

_UNITS: Final = {Dimension.WEIGHT: "unit-kg", Dimension.AGE: "unit-years"}


def remarks_on(row: FitRow, words: Words) -> list[Remark]:
    """Gates, why nothing was compared, open questions, another band, what else is off or adjusted.

    Last, how the model came out in this shop. Read from the arrays
    behind ``row``: every painted row asks for this.
    """
    sheet, at = row.arrays, row.at
    found: list[Remark] = [(f"gate-{gate.value}", {}) for gate in row.gates]
    why = why_not_compared(row)
    if why is not None:
        found.append(("note-as-said", {"note": sentence(why, words.wording)}))
    if row.open_questions:
        found.append(("note-questions", {"count": row.open_questions}))
    if sheet.other_band[at] and row.offer.band:
        found.append(("note-other-band", {"band": words(f"band-{row.offer.band}")}))
    if sheet.table.facts.stock and (stock := sheet.table.facts.stock[at]):
        found.append((f"note-{stock}", {}))
    for place in range(len(TAPES), len(sheet.dimensions)):
        lower, upper = float(sheet.lower[place, at]), float(sheet.upper[place, at])
        if not math.isnan(lower) and min(lower, upper) < 0:
            found.append(_off(sheet.dimensions[place], lower, upper, words))
    if sheet.between[at]:
        found.append(("note-between", {}))
    if sheet.table.adjustable:
        found.extend(_adjusted(row, words))
    if (own := row.experience) is not None:
        code = "note-came-out-smaller" if own.offset > 0 else "note-came-out-larger"
        found.append((code, {"by": words.margin(abs(own.offset)), "count": own.count}))
    return found


def any_adjusted(sheet: FitSheet, offers: Places) -> bool:
    """Whether any of ``offers`` serves by its adjuster alone."""
    return sheet.table.adjustable and bool(_serving(sheet, offers).any())


def _serving(arrays: FitArrays, at: Places | int) -> npt.NDArray[np.float64]:
    """The share in use of each tape's adjuster, 0 where the size is not reached all the same."""
    four = slice(0, len(TAPES))
    reached = np.fmin(arrays.lower[four, at], arrays.upper[four, at]) >= -SLACK
    return np.where(reached, np.nan_to_num(arrays.adjusters_used[four, at]), 0.0)


def _adjusted(row: FitRow, words: Words) -> Iterator[Remark]:
    """The adjuster that is used most, in the words of its reason."""
    used = _serving(row.arrays, row.at)
    place = int(used.argmax())
    values = row.dimensions[TAPES[place]].reason.values if used[place] > SLACK else {}
    figures = {name: values[name] for name in ("used", "way") if name in values}
    if len(figures) == 2:
        dimension = words(f"dimension-{TAPES[place].value}")
        said = {name: words.wording.margin(float(str(one))) for name, one in figures.items()}
        yield "note-adjuster", {"dimension": dimension, **said}


def _off(dimension: Dimension, lower: float, upper: float, words: Words) -> Remark:
    return (
        "note-above" if upper < lower else "note-below",
        {
            "dimension": words(f"dimension-{dimension.value}"),
            "by": words.margin(min(lower, upper)),
            "unit": words(_UNITS.get(dimension, "unit-cm")),
        },
    )
