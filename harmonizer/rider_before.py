"""What was read of a rider before: a file's older readings set apart, and last time's looked up."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from typing import Final

from charts.schema import Definition
from harmonizer.rider import Measure, Reading, Rider

APART_DAYS: Final = 28
"""Readings of one measure further apart than this are no repeats but two visits, in days.

Common practice, no source: long enough for a tape held again the next day or week, too short for
a child to have grown.
"""


def parted(readings: Sequence[Reading]) -> tuple[tuple[Reading, ...], tuple[Reading, ...]]:
    """The readings that hold now, and those that a newer one of an other visit has replaced.

    A reading without a stated day is never older than another, and nothing is older than it: who
    gives both is asked about them as repeats.
    """
    earlier = [one for one in readings if any(_replaces(other, one) for other in readings)]
    return tuple(one for one in readings if one not in earlier), tuple(earlier)


def _replaces(newer: Reading, older: Reading) -> bool:
    if newer.on is None or older.on is None or not same_kind(newer, older):
        return False
    return (newer.on - older.on).days > APART_DAYS


def same_kind(one: Reading, other: Reading) -> bool:
    """Whether two readings are of one measure, and of one definition as far as they say."""
    if one.measure is not other.measure:
        return False
    unknown = Definition.UNKNOWN in (one.definition, other.definition)
    return unknown or one.definition is other.definition


def last_time(rider: Rider, kept: Sequence[Reading], today: date) -> Rider | None:
    """The same rider with what was read last time; None where nothing was.

    ``kept`` are the readings a shop has kept of the rider, each with its day and who took it. Each
    reading is looked up before its own day, one without a day before ``today``, and what has not
    been read yet at any time.
    """
    known = [one for one in (*rider.earlier, *kept) if one.on is not None]
    found: list[Reading] = []
    for measure in Measure:
        of_it = [one for one in known if one.measure is measure and _was_before(one, rider, today)]
        for definition in dict.fromkeys(one.definition for one in of_it):
            found += _newest([one for one in of_it if one.definition is definition])
    if not found:
        return None
    return replace(rider, readings=tuple(found), earlier=(), age=None, seen=())


def dated(rider: Rider, today: date) -> Rider:
    """The rider with ``today`` as the day of every reading that states none."""
    return replace(
        rider, readings=tuple(replace(one, on=one.on or today) for one in rider.readings)
    )


def _was_before(earlier: Reading, rider: Rider, today: date) -> bool:
    now = [one for one in rider.readings if one.measure is earlier.measure]
    if earlier.on is None:
        return False
    days = [one.on for one in now if one.on is not None]
    if days:
        return earlier.on < min(days)
    return not now or earlier.on != today


def _newest(readings: Sequence[Reading]) -> list[Reading]:
    """Those of the newest day, each once."""
    newest = max(one.on for one in readings if one.on is not None)
    return list(dict.fromkeys(one for one in readings if one.on == newest))
