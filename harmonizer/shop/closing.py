"""What a file teaches of its supplier when the last of its charts is approved or kept aside."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from charts.habits.kept import Habits, learned, supplier_of
from charts.schema import FileReading
from harmonizer.shop.season import FileRecord, key_of


def learned_at_closing(
    habits: Sequence[Habits], reading: FileReading, record: FileRecord, by: str, on: date
) -> tuple[Habits, ...]:
    """The habits of all suppliers with what one closed file teaches; the same while it is open.

    How a file looks is learned only where every chart was approved: by its look the next one is
    approved unseen, and a chart that was kept aside must not come back by that.
    """
    supplier = supplier_of(reading)
    keys = [key_of(chart) for chart in reading.charts]
    aside = [record.kept_aside(key) is not None for key in keys]
    approved = [record.approval(key) is not None for key in keys]
    closed = all(one or other for one, other in zip(aside, approved, strict=True))
    if not supplier or not closed or (keys and all(aside)):
        return tuple(habits)
    before = next((one for one in habits if one.supplier == supplier), Habits(supplier))
    after = learned(before, reading, record.answers, by, on)
    if any(aside) and after != before:
        after = replace(after, looks=before.looks)
        bare = replace(after, version=before.version, by=before.by, on=before.on)
        after = before if bare == before else after
    if after == before:
        return tuple(habits)
    rest = [one for one in habits if one.supplier != supplier]
    return tuple(sorted((*rest, after), key=lambda one: one.supplier))
