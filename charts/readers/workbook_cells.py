"""The cells of a worksheet: the text a person sees in each and the value behind it."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta
from decimal import Decimal, InvalidOperation
from typing import TYPE_CHECKING, Final

from charts.readers.date_format import shown_date
from charts.readers.number_format import general, shown_number, shown_text
from charts.readers.plain_text import tidy
from charts.readers.raised_text import Piece, on_one_line
from charts.readers.sheet_xml import position
from charts.readers.source import LONGEST_CELL, too_many
from charts.readers.workbook_styles import Style, whole_number
from charts.sheet import Cell

if TYPE_CHECKING:
    from lxml.etree import _Element

_ESCAPED: Final = re.compile(r"_x([0-9A-Fa-f]{4})_")
_NOISE: Final = Decimal("1e-14")
_FIRST_MOMENT: Final = datetime(1899, 12, 31)  # noqa: DTZ001 - a workbook's times have no zone
_OFF: Final = ("0", "false")
_PLAIN: Final = Style()


@dataclass(frozen=True, slots=True)
class Surroundings:
    """What the cells of one sheet refer to: the book's strings and styles, its first day."""

    strings: Sequence[_Element]
    styles: Sequence[Style]
    from_1904: bool
    comments: Mapping[tuple[int, int], str]


def cells_of(root: _Element, around: Surroundings) -> Iterator[tuple[tuple[int, int], Cell]]:
    """Every cell of the worksheet ``root`` in which something is to be seen."""
    space = root.tag.removesuffix("worksheet")
    row = -1
    for row_element in root.iterfind(f"{space}sheetData/{space}row"):
        row = whole_number(row_element, "r", row + 2) - 1
        column = -1
        for element in row_element.iterfind(f"{space}c"):
            row, column = position(element.get("r", "")) or (row, column + 1)
            cell = _cell(element, space, around)
            if cell is not None:
                if len(cell.text) > LONGEST_CELL:
                    raise too_many(len(cell.text))
                comment = around.comments.get((row, column))
                yield (row, column), replace(cell, comment=comment) if comment else cell


def exact(text: str) -> Decimal | None:
    """A stored number as a decimal, the noise of floating point taken out.

    274.65999999999997 is 274.66; 33.85826771653543 stays. None for what is no number.
    """
    try:
        number = Decimal(text)
    except InvalidOperation:
        return None
    if not number.is_finite():
        return None
    if len(text) < 13:
        return number
    number = Decimal(f"{float(text):.15g}")
    short = Decimal(f"{float(text):.12g}")
    return short if abs(short - number) <= abs(number) * _NOISE else number


def _cell(element: _Element, space: str, around: Surroundings) -> Cell | None:
    kind = element.get("t", "n")
    at = whole_number(element, "s")
    style = around.styles[at] if at < len(around.styles) else _PLAIN
    if kind == "inlineStr":
        return _from_string(element.find(f"{space}is"), style)
    value = element.findtext(f"{space}v")
    if not value:
        calculated = kind == "str" or element.find(f"{space}f") is None
        return None if calculated else Cell("", formula_without_value=True)
    if kind == "s":
        number = int(value) if value.isascii() and value.isdigit() else -1
        known = 0 <= number < len(around.strings)
        return _from_string(around.strings[number] if known else None, style)
    if kind == "n":
        return number_cell(value, style, from_1904=around.from_1904)
    if kind == "b":
        return Cell("TRUE" if value == "1" else "FALSE", value == "1", style.number_format)
    if kind == "d":
        return _from_iso(value, style)
    text = tidy(_unescaped(value))
    return seen(Cell(shown_text(text, style.number_format), text, style.number_format), style)


def seen(cell: Cell, style: Style) -> Cell | None:
    """``cell`` with what its style says of it; None where nothing is to be seen."""
    if not cell.text:
        return None
    return replace(cell, struck=True) if style.struck else cell


def number_cell(value: str, style: Style, *, from_1904: bool) -> Cell | None:
    """A stored number as its format shows it; None where nothing is to be seen."""
    number = exact(value)
    if number is None:
        return seen(Cell(tidy(value), number_format=style.number_format), style)
    if style.dated:
        moment = _moment(number, style, from_1904=from_1904)
        text = general(number) if moment is None else shown_date(moment, style.number_format)
        return seen(Cell(text, number if moment is None else moment, style.number_format), style)
    text = shown_number(number, style.number_format)
    return seen(Cell(text, number, style.number_format), style)


def _moment(number: Decimal, style: Style, *, from_1904: bool) -> date | time | None:
    """The day or time behind a serial number; None outside the days a workbook knows."""
    from openpyxl.utils.datetime import MAC_EPOCH, WINDOWS_EPOCH, from_excel

    if number < 0:
        return None
    try:
        found = from_excel(
            float(number), MAC_EPOCH if from_1904 else WINDOWS_EPOCH, timedelta=style.span
        )
    except (OverflowError, ValueError):
        return None
    if isinstance(found, timedelta):
        return _FIRST_MOMENT + found
    return found if isinstance(found, date | time) else None


def _from_iso(value: str, style: Style) -> Cell | None:
    try:
        moment = datetime.fromisoformat(value.removesuffix("Z"))
    except ValueError:
        return seen(Cell(tidy(value), number_format=style.number_format), style)
    code = style.number_format if style.dated else "yyyy-mm-dd"
    return seen(Cell(shown_date(moment, code), moment, style.number_format), style)


def _from_string(element: _Element | None, style: Style) -> Cell | None:
    """A text, whole or in runs: raised runs keep their sense, struck-out ones are left out."""
    if element is None:
        return None
    space = element.tag[: element.tag.rfind("}") + 1]
    runs = element.findall(f"{space}r")
    code = style.number_format
    if not runs:
        text = tidy(_unescaped(element.findtext(f"{space}t") or ""))
        return seen(Cell(shown_text(text, code), text, code), style)
    gone = [run for run in runs if _is_struck(run, space)]
    text = tidy(on_one_line([_piece(run, space) for run in runs if run not in gone]))
    if gone:
        text = text or tidy("".join(_piece(run, space).text for run in gone))
        return Cell(text, text, code, struck=True) if text else None
    return seen(Cell(shown_text(text, code), text, code), style)


def _is_struck(run: _Element, space: str) -> bool:
    strike = run.find(f"{space}rPr/{space}strike")
    return strike is not None and strike.get("val", "1") not in _OFF


def _piece(run: _Element, space: str) -> Piece:
    level = run.find(f"{space}rPr/{space}vertAlign")
    kind = None if level is None else level.get("val")
    text = _unescaped(run.findtext(f"{space}t") or "")
    return Piece(text, kind == "superscript", kind == "subscript")


def _unescaped(text: str) -> str:
    return _ESCAPED.sub(lambda found: chr(int(found[1], 16)), text) if "_x" in text else text
