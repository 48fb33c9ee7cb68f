"""A fit sheet as the JSON document of the command line, format 1."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any, Final

from charts.wording import Wording
from harmonizer.dimension_fit import DimensionFit
from harmonizer.explain import sentence
from harmonizer.fit_row import FitRow
from harmonizer.fit_sheet import FitSheet
from harmonizer.rider import Reading, Rider

FORMAT: Final = 1
DIGITS: Final = 6
"""Beyond this many places a figure is only noise of binary fractions."""


def fit_document(sheet: FitSheet, wording: Wording | None = None) -> dict[str, Any]:
    """The whole document: the rider, then every size, best first."""
    speak = wording or Wording()
    return {
        "format": FORMAT,
        "rider": rider_entry(sheet.rider),
        "rows": [row_entry(row, speak) for row in sheet.rows],
    }


def rider_entry(rider: Rider) -> dict[str, Any]:
    """The rider as compared: canonical values beside what was typed."""
    return {
        "name": rider.name,
        "figure": rider.figure,
        "age": None if rider.age is None else _figure(float(rider.age)),
        "taken_by": rider.taken_by,
        "needs": {"kind": rider.needs.kind, "level": rider.needs.level},
        "winter_mm": _figure(float(rider.winter_mm)),
        "readings": [_reading_entry(rider, reading) for reading in rider.readings],
    }


def _reading_entry(rider: Rider, reading: Reading) -> dict[str, Any]:
    return {
        "dimension": reading.measure,
        "value": _figure(float(reading.value)),
        "text": reading.text,
        "unit": reading.unit,
        "definition": reading.definition,
        "taken_by": rider.taker(reading),
        "on": reading.on.isoformat() if reading.on else None,
    }


def row_entry(row: FitRow, wording: Wording) -> dict[str, Any]:
    """One size of one model."""
    offer = row.offer
    return {
        "file": offer.file,
        "supplier": offer.supplier,
        "model": offer.model,
        "kind": offer.kind,
        "band": offer.band,
        "size": offer.size,
        "length": offer.length,
        "verdict": row.verdict,
        "girth_verdict": row.girth_verdict,
        "length_verdict": row.length_verdict,
        "checked": row.checked,
        "penalty": _figure(row.penalty),
        "probability": _figure(row.probability),
        "too_long_probability": _figure(row.too_long_probability),
        "between_sizes": row.between_sizes,
        "open_questions": row.open_questions,
        "gates": list(row.gates),
        "dimensions": _dimension_entries(row.dimensions.values(), wording),
    }


def _dimension_entries(fits: Iterable[DimensionFit], wording: Wording) -> dict[str, Any]:
    return {fit.dimension.value: _dimension_entry(fit, wording) for fit in fits}


def _dimension_entry(fit: DimensionFit, wording: Wording) -> dict[str, Any]:
    return {
        "state": fit.state,
        "lower_margin": _figure(fit.lower_margin),
        "upper_margin": _figure(fit.upper_margin),
        "margin": _figure(fit.margin),
        "position": _figure(fit.position),
        "probability": _figure(fit.probability),
        "assumed": list(fit.assumed),
        "reason": sentence(fit.reason, wording),
    }


def _figure(value: float | None) -> float | None:
    return None if value is None else round(value, DIGITS) + 0.0
