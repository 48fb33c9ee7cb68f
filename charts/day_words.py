"""A day in words."""

from __future__ import annotations

from datetime import date

from charts.wording import Wording


def day_words(day: date, wording: Wording) -> str:
    """A day with its month in letters, so that nobody takes the month for the day."""
    month = wording.say("days", f"month-{day.month}")
    return wording.say("days", "day", day=day.day, month=month, year=day.year)
