"""Riders from one visit to the next: keep what was read, look up last time's, forget a rider.

Each act is one step that can be taken back; what is kept is written by whoever keeps the shop.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from harmonizer.rider import Reading, Rider
from harmonizer.shop.history import History
from harmonizer.shop.rider_book import RiderRecord, record_of, reference, with_visit


class RiderWork(History):
    """What is kept of riders."""

    @property
    def book(self) -> tuple[RiderRecord, ...]:
        """The riders that are kept, by name."""
        return self._now.book

    def kept_of(self, name: str) -> tuple[Reading, ...]:
        """What is kept of the rider of this name; empty where nothing is."""
        record = record_of(self._now.book, name)
        return record.readings if record is not None else ()

    def keep_rider(self, rider: Rider, today: date) -> None:
        """Keep the readings of a named rider for the next visit."""
        if not reference(rider.name):
            return
        record = record_of(self._now.book, rider.name) or RiderRecord(" ".join(rider.name.split()))
        after = with_visit(record, rider, today)
        if after.readings:
            rest = [one for one in self._now.book if one is not record]
            book = tuple(sorted((*rest, after), key=lambda one: one.name))
            self._change(replace(self._now, book=book))

    def forget_rider(self, name: str) -> None:
        """Keep nothing of the rider of this name any more."""
        gone = reference(name)
        book = tuple(one for one in self._now.book if reference(one.name) != gone)
        self._change(replace(self._now, book=book))
