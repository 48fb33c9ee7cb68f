"""Cells that a spreadsheet program turned into dates: found, and turned back as far as possible.

Month and day (or month and year) are the two numbers that were typed. In a range or an age the
smaller stands first, so the sorted pair is right under either order of dates; in a height of feet
and inches the order is lost.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from decimal import Decimal
from functools import lru_cache
from typing import Final

from charts.cell_text import clean
from charts.sheet import Cell, Sheet

_MONTHS: Final = {
    name: number
    for number, names in enumerate(
        (
            "jan janv ene gen januar january",
            "feb febr févr fev februar february",
            "mar mär mrz märz mars mrt march",
            "apr avr abr april",
            "may mai mei maj mag may",
            "jun juni juin june",
            "jul juli juil lug july",
            "aug août ago august",
            "sep sept set september",
            "oct okt ott oktober october",
            "nov november",
            "dec dez dic déc dezember december",
        ),
        start=1,
    )
    for name in names.split()
}
_MONTH: Final = "(" + "|".join(sorted(_MONTHS, key=len, reverse=True)) + r")\.?"
_DAY_MONTH: Final = re.compile(rf"(\d{{1,2}})\.?[-/ ]{_MONTH}", re.IGNORECASE)
_MONTH_NUMBER: Final = re.compile(rf"{_MONTH}[-/ ](\d{{1,2}})", re.IGNORECASE)
_ISO: Final = re.compile(r"(\d{4})-(\d\d)-(\d\d)(?:[ T]00:00(?::00)?)?")
_FULL: Final = re.compile(r"(\d{1,2})[./](\d{1,2})[./](\d{4})")
_SERIALS: Final = (36526, 55000)
"""Day numbers of a spreadsheet program that mean 2000 to 2050; no measure is as large."""
_EPOCH: Final = date(1899, 12, 30)


@dataclass(frozen=True, slots=True)
class Undone:
    """A date turned back: the text that was shown, and the two numbers as stored."""

    shown: str
    month: int
    other: int

    @property
    def range_text(self) -> str:
        """The two numbers as a range or an age, the smaller first."""
        low, high = sorted((self.month, self.other))
        return f"{low}-{high}"


def without_dates(sheet: Sheet) -> tuple[Sheet, Mapping[tuple[int, int], Undone]]:
    """The sheet with its dates turned back to pairs of numbers, and where that was done.

    A date that stands alone in its row is a date of issue and stays.
    """
    undone: dict[tuple[int, int], Undone] = {}
    serials = _serial_columns(sheet)
    for row in sheet.filled_rows:
        cells = list(sheet.row(row))
        if len(cells) < 2:
            continue
        for column, cell in cells:
            found = None if column in serials else undo(cell)
            if found is not None:
                undone[row, column] = found
    if not undone:
        return sheet, undone
    cells_now = {
        place: replace(cell, text=undone[place].range_text) if place in undone else cell
        for place, cell in sheet.cells.items()
    }
    return replace(sheet, cells=cells_now), undone


def _serial_columns(sheet: Sheet) -> set[int]:
    """Columns full of five-digit numbers: order numbers, no days gone wrong here and there."""
    counts: dict[int, list[bool]] = {}
    for (_, column), cell in sheet.cells.items():
        counts.setdefault(column, []).append(_from_serial(cell.text.strip()) is not None)
    return {column for column, hits in counts.items() if sum(hits) * 2 > len(hits)}


def undo(cell: Cell) -> Undone | None:
    """The two numbers behind a date, or None when the cell is none."""
    text = clean(cell.text)
    if isinstance(cell.stored, date | datetime):
        return Undone(text, cell.stored.month, _second_number(cell.stored, cell.number_format))
    if not text or not any(character.isdigit() for character in text):
        return None
    return _from_text(text)


def _second_number(stored: date | datetime, number_format: str) -> int:
    """Day, or the year where the format shows month and year only (12-14 became Dec-14)."""
    months_only = "y" in number_format.lower() and "d" not in number_format.lower()
    return stored.year % 100 if months_only and stored.day == 1 else stored.day


@lru_cache(maxsize=8192)
def _from_text(text: str) -> Undone | None:
    if match := _DAY_MONTH.fullmatch(text):
        return Undone(text, _MONTHS[match[2].lower()], int(match[1]))
    if match := _MONTH_NUMBER.fullmatch(text):
        return Undone(text, _MONTHS[match[1].lower()], int(match[2]))
    if match := _ISO.fullmatch(text):
        return Undone(text, int(match[2]), int(match[3]))
    if match := _FULL.fullmatch(text):
        return Undone(text, int(match[2]), int(match[1]))
    return _from_serial(text)


def _from_serial(text: str) -> Undone | None:
    if len(text) != 5 or not text.isdecimal() or not _SERIALS[0] <= int(text) <= _SERIALS[1]:
        return None
    day = _EPOCH + timedelta(days=int(text))
    return Undone(text, day.month, day.day)


def feet_and_inches(undone: Undone) -> tuple[Decimal, Decimal]:
    """Both heights in inches that the two numbers can mean: month first, then day first."""
    return (
        Decimal(12 * undone.month + undone.other),
        Decimal(12 * undone.other + undone.month),
    )
