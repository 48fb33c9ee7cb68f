"""A fit sheet as the JSON document of the command line, format 1."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any, Final

from charts.wording import Wording
from harmonizer.dimension_fit import DimensionFit
from harmonizer.explain import sentence
from harmonizer.fit_row import FitRow
from harmonizer.fit_sheet import FitSheet
from harmonizer.plausibility import Check, checks
from harmonizer.rider import Reading, Rider
from harmonizer.setting_checks import changed_keys
from harmonizer.settings import DEFAULTS, Settings, setting_facts

FORMAT: Final = 1
DIGITS: Final = 6
"""Beyond this many places a figure is only noise of binary fractions."""


def fit_document(
    sheet: FitSheet, wording: Wording | None = None, asked: Iterable[Check] | None = None
) -> dict[str, Any]:
    """The whole document: the rider with what is asked about the readings, then every size.

    ``asked`` is what was found in the light of more than this rider's file. The shop's own figures
    stand in the document where they are not the defaults.
    """
    speak = wording or Wording()
    found = checks(sheet.rider, settings=sheet.settings) if asked is None else asked
    document: dict[str, Any] = {
        "format": FORMAT,
        "rider": {**rider_entry(sheet.rider), "questions": asked_entries(found, speak)},
    }
    if own := own_figures(sheet.settings):
        document["settings"] = own
    return {**document, "rows": [row_entry(row, speak) for row in sheet.rows]}


def own_figures(settings: Settings) -> dict[str, Any]:
    """The figures that are not at their defaults, by key, each beside its default."""
    saved, defaults, facts = settings.as_saved(), DEFAULTS.as_saved(), setting_facts()
    return {
        key: {"value": saved[key], "default": defaults[key], "unit": facts[key].unit}
        for key in changed_keys(settings, DEFAULTS)
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
        "earlier": [_reading_entry(rider, reading) for reading in rider.earlier],
    }


def asked_entries(found: Iterable[Check], wording: Wording) -> list[dict[str, Any]]:
    """What is to be asked about the readings themselves, each with the figure it may have been."""
    return [
        {
            "dimensions": list(one.measures),
            "code": one.reason.code,
            "level": one.weight,
            "text": sentence(one.reason, wording),
            "other": _other(one.reason.values.get("other")),
        }
        for one in found
    ]


def _other(value: object) -> float | None:
    return _figure(value) if isinstance(value, float) else None


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
