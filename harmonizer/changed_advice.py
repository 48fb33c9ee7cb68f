"""A new chart against the old one: whose advice changes. Only a changed verdict counts."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from harmonizer.fit import fit
from harmonizer.fit_row import FitRow
from harmonizer.range_table import RangeTable
from harmonizer.rider import Rider
from harmonizer.settings import DEFAULTS, Settings
from harmonizer.states import Verdict


@dataclass(frozen=True, slots=True)
class Changed:
    """One size whose verdict for one rider is another now; None where it was or is not offered."""

    rider: Rider
    model: str
    size: str
    length: str | None
    before: Verdict | None
    after: Verdict | None


def changed_advice(
    riders: Sequence[Rider], old: RangeTable, new: RangeTable, settings: Settings = DEFAULTS
) -> Iterator[Changed]:
    """Every size of every rider whose verdict changes from ``old`` to ``new``."""
    for rider in riders:
        before, after = _verdicts(rider, old, settings), _verdicts(rider, new, settings)
        for key in dict.fromkeys((*before, *after)):
            if before.get(key) is not after.get(key):
                yield Changed(rider, *key, before=before.get(key), after=after.get(key))


def _verdicts(
    rider: Rider, table: RangeTable, settings: Settings
) -> dict[tuple[str, str, str | None], Verdict]:
    return {_key(row): row.verdict for row in fit(rider, table, settings).rows}


def _key(row: FitRow) -> tuple[str, str, str | None]:
    return row.offer.model, row.offer.size, row.offer.length
