"""A stored date or time as its workbook shows it: 12 October with ``d-mmm`` is "12-Oct".

Sizes and ranges that a spreadsheet program took for dates are shown as the person sees them;
which two numbers were typed is for the importer to ask.
"""

from __future__ import annotations

import re
from datetime import date, datetime, time
from typing import Final

_TOKENS: Final = re.compile(
    r"""(?P<quoted>"[^"]*"?)|\\(?P<escaped>.)|[_*].|\[(?P<span>h+|m+|s+)\]|\[[^\]]*\]
    |(?P<half>AM/PM|A/P)|(?P<year>y+|e+)|(?P<month>m+)|(?P<day>d+)|(?P<hour>h+)
    |(?P<second>s+(?:\.0+)?)|(?P<plain>.)""",
    re.IGNORECASE | re.VERBOSE | re.DOTALL,
)
_MONTHS: Final = (
    *("January", "February", "March", "April", "May", "June"),
    *("July", "August", "September", "October", "November", "December"),
)
_DAYS: Final = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
_FIRST_DAY: Final = date(1900, 1, 1)


def shown_date(value: date | time, code: str) -> str:
    """``value`` as the number format ``code`` shows it, with English names of months."""
    moment = _moment(value)
    section = code.split(";", maxsplit=1)[0]
    tokens = [(match.lastgroup or "", match[0]) for match in _TOKENS.finditer(section)]
    half_day = any(kind == "half" for kind, _ in tokens)
    drawn = [
        _drawn(moment, "minute" if _is_minute(tokens, at) else kind, text, half_day=half_day)
        for at, (kind, text) in enumerate(tokens)
    ]
    return "".join(drawn).strip() or moment.isoformat(" ")


def _moment(value: date | time) -> datetime:
    if isinstance(value, datetime):
        return value
    if isinstance(value, time):
        return datetime.combine(_FIRST_DAY, value)
    return datetime.combine(value, time())


def _is_minute(tokens: list[tuple[str, str]], at: int) -> bool:
    """An m is minutes after hours and before seconds, a month everywhere else."""
    if tokens[at][0] != "month" or len(tokens[at][1]) > 2:
        return False
    units = ("year", "month", "day", "hour", "second", "span")
    before = next((kind for kind, _ in reversed(tokens[:at]) if kind in units), "")
    after = next((kind for kind, _ in tokens[at + 1 :] if kind in units), "")
    return before in ("hour", "span") or after == "second"


def _drawn(moment: datetime, kind: str, text: str, *, half_day: bool) -> str:
    width = len(text)
    if kind == "month" and width > 2:
        name = _MONTHS[moment.month - 1]
        return {3: name[:3], 5: name[:1]}.get(width, name)
    if kind == "day" and width > 2:
        name = _DAYS[moment.weekday()]
        return name[:3] if width == 3 else name
    if kind == "year":
        return f"{moment.year % 100:02}" if width < 3 else f"{moment.year:04}"
    if kind == "half":
        return "AM" if moment.hour < 12 else "PM"
    hour = (moment.hour - 1) % 12 + 1 if half_day else moment.hour
    numbers = {"month": moment.month, "day": moment.day, "hour": hour, "span": moment.hour}
    numbers |= {"minute": moment.minute, "second": moment.second}
    if kind in numbers:
        return f"{numbers[kind]:0{2 if width >= 2 and kind != 'span' else 1}}"
    return _literal(kind, text)


def _literal(kind: str, text: str) -> str:
    if kind == "quoted":
        return text.strip('"')
    if kind == "escaped":
        return text[1:]
    return text if kind == "plain" else ""
