"""What is said of a stock list by its day: fresh, or too old to be trusted. No Qt."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Final

from charts.day_words import day_words
from charts.wording import Wording
from harmonizer.shop.stock_toml import STALE_DAYS, days_old

_TOPIC: Final = "stock"


@dataclass(frozen=True, slots=True)
class StockWords:
    """The filter's name with the list's day, without it where there is no room, and all of it."""

    name: str
    short: str
    said: str


def stock_words(on: date | None, today: date, wording: Wording) -> StockWords:
    """What the filter for the stock list is called, and what is to be known of the list."""
    short = wording.say(_TOPIC, "filter")
    if on is None:
        return StockWords(short, short, wording.say(_TOPIC, "of-no-day"))
    day, age = day_words(on, wording), days_old(on, today)
    if age < STALE_DAYS:
        name, said = (wording.say(_TOPIC, code, day=day) for code in ("filter-of", "of-day"))
        return StockWords(name, short, said)
    name, short = wording.say(_TOPIC, "filter-old", day=day), wording.say(_TOPIC, "filter-doubted")
    return StockWords(name, short, old_words(on, today, wording))


def old_words(on: date, today: date, wording: Wording) -> str:
    """That a list is old, and what to do."""
    day, age = day_words(on, wording), days_old(on, today)
    return wording.say(_TOPIC, "old", day=day, count=age)
