"""What was read of the rider on the line before: which reading beside which field. No Qt."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime

from charts.day_words import day_words
from charts.wording import Wording
from harmonizer.repeats import settled
from harmonizer.rider import Measure, Reading, Rider
from harmonizer.rider_before import last_time, same_kind
from harmonizer.settings import DEFAULTS, Settings
from harmonizer.shop.rider_book import RiderRecord, record_of, with_visit
from ui.fitting_page.draft import Draft, text_of


def this_day() -> date:
    """The day it is where the shop stands."""
    return datetime.now(UTC).astimezone().date()


@dataclass(frozen=True, slots=True)
class Past:
    """The shop's book, and whether anything may be put into it.

    ``day`` says which day it is.
    """

    book: tuple[RiderRecord, ...] = ()
    keeps: bool = False
    day: Callable[[], date] = this_day

    def record(self, draft: Draft) -> RiderRecord | None:
        """What is kept of the rider of this name."""
        return record_of(self.book, draft.given.name)

    def before(self, draft: Draft) -> Rider | None:
        """The rider as read last time, by the file or by the book."""
        record = self.record(draft)
        kept = record.readings if record is not None else ()
        return last_time(draft.rider(), kept, self.day())

    def can_keep(self, draft: Draft) -> bool:
        """Whether there is a shop to keep it, a name to find it by, and anything new to keep."""
        if not self.keeps or not draft.given.name.strip():
            return False
        record = self.record(draft) or RiderRecord(draft.given.name)
        return with_visit(record, draft.rider(), self.day()) != record


NOTHING_BEFORE = Past()


@dataclass(frozen=True, slots=True)
class LastTime:
    """One field's reading of last time: ``text`` as it was given then, ``day`` in words."""

    text: str
    day: str
    readings: tuple[Reading, ...]

    def beside(self, wording: Wording) -> str:
        """The short grey line beside the field."""
        return wording.say("rider_book", "beside", text=self.text, day=self.day)

    def sentence(self, wording: Wording) -> str:
        """The same for whoever hears it."""
        return wording.say("rider_book", "beside-sentence", text=self.text, day=self.day)


def last_reading(
    before: Rider | None,
    draft: Draft,
    measure: Measure,
    wording: Wording,
    settings: Settings = DEFAULTS,
) -> LastTime | None:
    """What was read of ``measure`` last time, as far as it may stand beside what is read now."""
    if before is None:
        return None
    now = draft.reading(measure)
    found = [one for one in before.of(measure) if now is None or same_kind(one, now)]
    days = [one.on for one in found if one.on is not None]
    if not found or not days:
        return None
    return LastTime(
        _text(before, found, wording, settings), day_words(max(days), wording), tuple(found)
    )


def _text(before: Rider, found: Sequence[Reading], wording: Wording, settings: Settings) -> str:
    """A single reading as it was given; of repeats what they came to."""
    if len(found) == 1:
        return text_of(found[0])
    one = settled(replace(before, readings=tuple(found)), settings)[0]
    return wording.say("rider_book", "in-cm", cm=wording.cm(one.value))
