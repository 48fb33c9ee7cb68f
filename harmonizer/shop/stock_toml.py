"""The shop's stock list as TOML that a person can read, with its day, and back again unchanged."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from charts.answers_toml import FORMAT_LINE, AnswersFileError
from charts.toml_text import Entries
from charts.toml_writing import lines_of, value_text
from harmonizer.stock import StockLine, read_stock


@dataclass(frozen=True, slots=True)
class StockList:
    """A stock list and the day it was taken in; empty where there is none."""

    lines: tuple[StockLine, ...] = ()
    on: date | None = None


def write_stock_list(stock: StockList) -> str:
    """The whole file, one line of the list a line."""
    head = "\n".join(lines_of({"on": stock.on}))
    lines = "".join(f"  {value_text(line.text)},\n" for line in stock.lines)
    return f"{FORMAT_LINE}{head}\nlines = [\n{lines}]\n"


def read_stock_list(text: str) -> StockList:
    """The list of a file.

    Raises AnswersFileError with the line and the reason: no TOML, a newer format, an unknown key,
    no day or no lines.
    """
    file = Entries.of_file(text, AnswersFileError)
    on = file.day("on")
    if on is None:
        raise file.wrong("on", "value-missing")
    lines = read_stock("\n".join(file.words("lines")))
    if not lines:
        raise file.wrong("lines", "value-missing")
    file.close()
    return StockList(lines, on)


def days_old(on: date, today: date) -> int:
    """How many days ago a list was taken in; none where the clock went back."""
    return max((today - on).days, 0)


STALE_DAYS = 7
"""From this age a list is said to be old. A judgement: a shop sells within a week."""


def is_stale(stock: Sequence[StockLine], on: date | None, today: date) -> bool:
    """Whether a stock list is old enough to be doubted; one without a day is."""
    return bool(stock) and (on is None or days_old(on, today) >= STALE_DAYS)
