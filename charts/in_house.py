"""The combined in-house chart as rows, before anybody prints it.

One row per model, size and length, with every value as its maker gave it. Nothing is averaged,
merged between makers or filled in; what a maker does not give is absent.
"""

from __future__ import annotations

import hashlib
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from charts.findings import Finding
from charts.model_facts import ModelFacts
from charts.schema import Dimension, Range


@dataclass(frozen=True, slots=True)
class InHouseRow:
    """One size of one model in one length.

    ``measures`` holds, per dimension, one range for each definition and basis the maker gives.
    ``open_questions`` are the ids of the questions of ``file`` that bear on this row.
    """

    supplier: str | None
    model: str | None
    band: str | None
    size: str | None
    length: str | None
    measures: Mapping[Dimension, tuple[Range, ...]]
    file: str
    place: str
    dated: date
    season: str | None = None
    also: tuple[str, ...] = ()
    facts: ModelFacts | None = None
    open_questions: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class AskedOf:
    """A finding and the file it belongs to."""

    file: str
    finding: Finding


class Withheld(StrEnum):
    """Why a model that has a chart is not on the wall."""

    RECALLED = "recalled"
    SUPERSEDED = "superseded"
    HELD = "held"


@dataclass(frozen=True, slots=True)
class WithheldModel:
    """A model left out on purpose; the foot of the chart names it."""

    supplier: str | None
    model: str
    why: Withheld


@dataclass(frozen=True, slots=True)
class InHouseChart:
    """The whole chart: rows in print order, what is open, and what could not be read.

    ``questions`` are the open questions of all files, dangerous first; ``not_read`` says of each
    file that gave nothing why; ``withheld`` are models left out on purpose.
    """

    rows: tuple[InHouseRow, ...]
    made_on: date
    questions: tuple[AskedOf, ...] = ()
    not_read: tuple[AskedOf, ...] = ()
    withheld: tuple[WithheldModel, ...] = ()

    @property
    def seasons(self) -> tuple[str, ...]:
        """The seasons printed in the charts, each once, in row order."""
        return tuple(dict.fromkeys(row.season for row in self.rows if row.season))

    @property
    def version(self) -> str:
        """A short number that changes whenever anything on the chart does: "3F9A-72C1".

        The same sources give the same number on every machine, so a stale print is recognised.
        """
        digest = hashlib.sha256()
        for row in self.rows:
            digest.update(repr(_content(row)).encode())
        for model in self.withheld:
            digest.update(repr((model.supplier, model.model, model.why.value)).encode())
        text = digest.hexdigest()[:8].upper()
        return f"{text[:4]}-{text[4:]}"


def _content(row: InHouseRow) -> tuple[object, ...]:
    measures = tuple((each.value, row.measures[each]) for each in sorted(row.measures))
    said = (row.supplier, row.model, row.band, row.size, row.length, row.also, row.season)
    return (said, measures, row.facts, sorted(row.open_questions), row.file, row.place)
