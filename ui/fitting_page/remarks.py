"""What is to be noted of a row beside its tapes, the weightiest first. No Qt."""

from __future__ import annotations

from typing import Final

from charts.schema import Dimension
from harmonizer.dimension_fit import DimensionFit
from harmonizer.fit_row import FitRow
from ui.fitting_page.rows import TAPES
from ui.words import Words

Remark = tuple[str, dict[str, object]]

_OFF: Final = ("near", "miss")
_UNITS: Final = {Dimension.WEIGHT: "kg", Dimension.AGE: "years"}


def remarks_on(row: FitRow, words: Words) -> list[Remark]:
    """Gates, open questions, another band, further dimensions that are off, between two sizes."""
    found: list[Remark] = [(f"gate-{gate.value}", {}) for gate in row.gates]
    if row.open_questions:
        found.append(("note-questions", {"count": row.open_questions}))
    if row.other_band and row.offer.band:
        found.append(("note-other-band", {"band": words(f"band-{row.offer.band}")}))
    for dimension, fit in row.dimensions.items():
        if dimension not in TAPES and fit.state in _OFF:
            found.append(_off(dimension, fit, words))
    if row.between_sizes:
        found.append(("note-between", {}))
    return found


def _off(dimension: Dimension, fit: DimensionFit, words: Words) -> Remark:
    above = fit.upper_margin is not None and fit.upper_margin < 0
    margin = fit.upper_margin if above else fit.lower_margin
    return (
        "note-above" if above else "note-below",
        {
            "dimension": words(f"dimension-{dimension.value}"),
            "by": words.margin(margin or 0.0),
            "unit": _UNITS.get(dimension, "cm"),
        },
    )
