"""File readings as the document of ``read --json``: plain dictionaries, lists, texts, numbers."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Any, Final

from charts.finding_sentences import reason_of, sentence_of
from charts.findings import Candidate, Finding
from charts.schema import Chart, FileReading, PrintedBothWays, Range, Said, Size
from charts.wording import Wording

FORMAT: Final = 1


def document(readings: Sequence[FileReading], wording: Wording | None = None) -> dict[str, Any]:
    """The whole document of ``read --json`` for some files, sentences in one language."""
    speech = wording or Wording()
    return {"format": FORMAT, "files": [_file(reading, speech) for reading in readings]}


def _file(reading: FileReading, speech: Wording) -> dict[str, Any]:
    return {
        "file": reading.file,
        "charts": [_chart(chart) for chart in reading.charts],
        "findings": [_finding(finding, speech) for finding in reading.findings],
    }


def _chart(chart: Chart) -> dict[str, Any]:
    return {
        "place": chart.place,
        "title": chart.title,
        "supplier": _said(chart.supplier),
        "supplier_from": _from(chart.supplier),
        "model": _said(chart.model),
        "model_from": _from(chart.model),
        "band": chart.band,
        "notes": list(chart.notes),
        "sizes": [_size(size) for size in chart.sizes],
    }


def _said(said: Said | None) -> str | None:
    return said.text if said is not None else None


def _from(said: Said | None) -> str | None:
    """Where a name stood: in a title or column, or only in a sheet's, file's or folder's name."""
    return said.source if said is not None else None


def _size(size: Size) -> dict[str, Any]:
    return {
        "label": size.label,
        "length": size.length,
        "also": [{"label": one.label, "heading": one.heading} for one in size.also],
        "ranges": [_range(one) for one in size.ranges],
    }


def _range(one: Range) -> dict[str, Any]:
    return {
        "dimension": one.dimension.value,
        "heading": one.heading,
        "definition": one.definition.value,
        "basis": one.basis.value,
        "kind": one.kind.value,
        "low": _number(one.low),
        "high": _number(one.high),
        "value": _number(one.value),
        "unit": one.unit.value,
        "unit_from": one.unit_from.value,
        "circa": one.circa,
        "low_included": one.low_included,
        "high_included": one.high_included,
        "tolerance": _number(one.tolerance),
        "published": one.published,
        "published_unit": one.published_unit.value if one.published_unit else None,
        "also_published": _also(one.also_published),
        "place": one.place,
        "findings": list(one.findings),
    }


def _also(also: PrintedBothWays | None) -> dict[str, Any] | None:
    if also is None:
        return None
    return {
        "text": also.text,
        "unit": also.unit.value,
        "low": _number(also.low),
        "high": _number(also.high),
        "value": _number(also.value),
        "place": also.place,
    }


def _number(value: Decimal | None) -> float | int | None:
    """A JSON number; whole figures without a point. A float holds far more than 0.001 needs."""
    if value is None:
        return None
    return int(value) if value == value.to_integral_value() else float(value)


def _finding(finding: Finding, speech: Wording) -> dict[str, Any]:
    return {
        "id": finding.id,
        "level": finding.level.value,
        "code": finding.code,
        "place": finding.place,
        "text": sentence_of(finding, speech),
        "readings": [_reading(candidate, speech) for candidate in finding.candidates],
    }


def _reading(candidate: Candidate, speech: Wording) -> dict[str, Any]:
    return {
        "text": candidate.text,
        "unit": candidate.unit,
        "low": _number(candidate.low),
        "high": _number(candidate.high),
        "value": _number(candidate.value),
        "why": reason_of(candidate, speech),
    }
