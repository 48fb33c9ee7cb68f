"""What a shop keeps of a rider from one visit to the next: a few lengths, each with its day.

Kept is what the next visit is compared with and nothing else: no weight, no age, no figure, no
model. A rider is known by the name or reference that was typed.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Final

from harmonizer.rider import Measure, Reading, Rider

KEPT: Final = (
    Measure.CHEST,
    Measure.WAIST,
    Measure.HIP,
    Measure.BACK_LENGTH,
    Measure.HEIGHT,
)
"""What is kept: what a change is asked about, and the height, by which a child's growth is told."""

MOST_DAYS: Final = 4
"""Of each measure the readings of this many days are kept, the newest."""


@dataclass(frozen=True, slots=True)
class RiderRecord:
    """One rider's readings, oldest first; each has its day and who took it."""

    name: str
    readings: tuple[Reading, ...] = ()

    @property
    def last(self) -> date | None:
        """The newest day of all."""
        return max((one.on for one in self.readings if one.on is not None), default=None)


def reference(name: str) -> str:
    """A name or reference as it is looked up: capitals and spaces do not count."""
    return " ".join(name.split()).casefold()


def record_of(book: Iterable[RiderRecord], name: str) -> RiderRecord | None:
    """The record of the rider of this name; a blank name is nobody's."""
    wanted = reference(name)
    return next((one for one in book if wanted and reference(one.name) == wanted), None)


def to_keep(rider: Rider, today: date) -> tuple[Reading, ...]:
    """The readings of ``rider`` as they are kept; one without a day was read ``today``."""
    return tuple(
        replace(one, on=one.on or today, taken_by=rider.taker(one), posture=None, over=None)
        for one in (*rider.earlier, *rider.readings)
        if one.measure in KEPT
    )


def with_visit(record: RiderRecord, rider: Rider, today: date) -> RiderRecord:
    """The record with what was read now; the same measure on the same day is written over."""
    new = to_keep(rider, today)
    again = {(one.measure, one.on) for one in new}
    old = [one for one in record.readings if (one.measure, one.on) not in again]
    return replace(record, readings=_few((*old, *new)))


def _few(readings: Sequence[Reading]) -> tuple[Reading, ...]:
    kept: list[Reading] = []
    for measure in KEPT:
        of_it = [one for one in readings if one.measure is measure]
        days = sorted({one.on for one in of_it if one.on is not None})[-MOST_DAYS:]
        kept += [one for one in of_it if one.on in days]
    return tuple(sorted(kept, key=lambda one: one.on or date.min))
