"""What is said of a stock list by its day: fresh, or too old to be trusted. No Qt."""

from __future__ import annotations

from datetime import date
from typing import Final

from charts.day_words import day_words
from charts.wording import Wording
from harmonizer.shop.stock_toml import STALE_DAYS, days_old

_TOPIC: Final = "stock"


def stock_words(on: date | None, today: date, wording: Wording) -> tuple[str, str]:
    """What the filter for the stock list is called, with its day, and what is to be known of it."""
    if on is None:
        return wording.say(_TOPIC, "filter"), wording.say(_TOPIC, "of-no-day")
    day, age = day_words(on, wording), days_old(on, today)
    if age < STALE_DAYS:
        return wording.say(_TOPIC, "filter-of", day=day), wording.say(_TOPIC, "of-day", day=day)
    return wording.say(_TOPIC, "filter-old", day=day), old_words(on, today, wording)


def old_words(on: date, today: date, wording: Wording) -> str:
    """That a list is old, and what to do."""
    day, age = day_words(on, wording), days_old(on, today)
    return wording.say(_TOPIC, "old", day=day, count=age)
