"""What is to be noted of a row beside its tapes, the weightiest first. No Qt."""

from __future__ import annotations

import math
from typing import Final

from charts.schema import Dimension
from harmonizer.explain import sentence
from harmonizer.fit_row import FitRow
from harmonizer.not_compared import why_not_compared
from ui.fitting_page.rows import TAPES
from ui.words import Words

Remark = tuple[str, dict[str, object]]

_UNITS: Final = {Dimension.WEIGHT: "unit-kg", Dimension.AGE: "unit-years"}


def remarks_on(row: FitRow, words: Words) -> list[Remark]:
    """Gates, why nothing was compared, open questions, another band, what else is off.

    Read from the arrays behind ``row``: every painted row asks for this.
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
    return found


def _off(dimension: Dimension, lower: float, upper: float, words: Words) -> Remark:
    return (
        "note-above" if upper < lower else "note-below",
        {
            "dimension": words(f"dimension-{dimension.value}"),
            "by": words.margin(min(lower, upper)),
            "unit": words(_UNITS.get(dimension, "unit-cm")),
        },
    )
