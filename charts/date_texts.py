"""Sizes and ranges that a spreadsheet program turned into dates: 10-12 shown as 12-Oct."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache
from typing import Final

from charts.vocabulary import unaccented, vocabulary

_LONGEST: Final = 30
_MONTHS: Final = 12
_DAYS: Final = 31
_NAMED: Final = re.compile(
    r"(?P<day>\d{1,2})\.?[ -]?(?P<name>[a-z]{3,10})\.?(?:[ -]?\d{2,4})?"
    r"|(?P<first>[a-z]{3,10})\.?[ -]?(?P<number>\d{1,2})"
)
_NUMBERED: Final = re.compile(
    r"(?P<year>20\d\d)-(?P<month>\d\d)-(?P<day>\d\d)(?:[ t]00:00(?::00)?)?"
    r"|(?P<one>\d{1,2})[./](?P<two>\d{1,2})[./](?:20)?\d\d"
)


@cache
def _months() -> Mapping[str, int]:
    names = vocabulary("months")["names"]
    return {name: number for number, row in enumerate(names, 1) for name in row}


def _month(name: str) -> int | None:
    return next((_months()[name[:cut]] for cut in (4, 3) if name[:cut] in _months()), None)


def month_and_day(text: str) -> tuple[int, int] | None:
    """The two numbers of a date in a cell, (month, day or short year); None when it is none."""
    folded = unaccented(text)
    if len(folded) > _LONGEST:
        return None
    if match := _NAMED.fullmatch(folded):
        month = _month(match["name"] or match["first"])
        return (month, int(match["day"] or match["number"])) if month else None
    if match := _NUMBERED.fullmatch(folded):
        if match["year"]:
            return int(match["month"]), int(match["day"])
        one, two = int(match["one"]), int(match["two"])
        # "28/30/32" are three figures to choose from: no month has that number.
        return (one, two) if min(one, two) <= _MONTHS and max(one, two) <= _DAYS else None
    return None
