"""The cells of an old workbook (.xls): the text a person sees in each and the value behind it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from functools import lru_cache
from typing import TYPE_CHECKING, Any, Final

from charts.readers.number_format import shown_text
from charts.readers.plain_text import tidy
from charts.readers.raised_text import Piece, on_one_line
from charts.readers.source import LONGEST_CELL, MOST_CELLS, too_many
from charts.readers.workbook_cells import number_cell, seen
from charts.readers.workbook_styles import Style, dated_style
from charts.sheet import Cell

if TYPE_CHECKING:
    from xlrd.book import Book
    from xlrd.sheet import Sheet as BookSheet

_TEXT, _NUMBER, _DATE, _TRUTH, _ERROR = 1, 2, 3, 4, 5
_RAISED, _LOWERED = 1, 2
_PLAIN: Final = Style()
Cells = Iterator[tuple[tuple[int, int], Cell]]


class BookCells:
    """Draws the cells of one book: its formats and fonts are looked up once."""

    def __init__(self, book: Book) -> None:
        self._book = book
        self._style = lru_cache(maxsize=None)(self._style_of)

    def of(self, sheet: BookSheet) -> Cells:
        """Every cell of ``sheet`` in which something is to be seen."""
        count = 0
        for row in range(sheet.nrows):
            for column in range(sheet.row_len(row)):
                cell = self._cell(sheet, row, column)
                if cell is None:
                    continue
                count += 1
                if count > MOST_CELLS or len(cell.text) > LONGEST_CELL:
                    raise too_many(max(count, len(cell.text)))
                note = sheet.cell_note_map.get((row, column))
                comment = tidy(str(note.text or "")) if note is not None else ""
                yield (row, column), replace(cell, comment=comment) if comment else cell

    def _cell(self, sheet: BookSheet, row: int, column: int) -> Cell | None:
        kind, value = sheet.cell_type(row, column), sheet.cell_value(row, column)
        if kind not in (_TEXT, _NUMBER, _DATE, _TRUTH, _ERROR):
            return None
        style = self._style(sheet.cell_xf_index(row, column))
        if kind == _TEXT:
            return self._text(value, sheet.rich_text_runlist_map.get((row, column)), style)
        if kind == _TRUTH:
            return Cell("TRUE" if value else "FALSE", bool(value), style.number_format)
        if kind == _ERROR:
            return seen(Cell(_error_text(value), number_format=style.number_format), style)
        return number_cell(repr(float(value)), style, from_1904=self._book.datemode == 1)

    def _style_of(self, number: int) -> Style:
        known = 0 <= number < len(self._book.xf_list)
        if not known:
            return _PLAIN
        xf = self._book.xf_list[number]
        number_format = self._book.format_map.get(xf.format_key)
        code = (number_format.format_str if number_format is not None else "") or "General"
        return dated_style(code, struck=self._is_struck(xf.font_index))

    def _is_struck(self, font: int) -> bool:
        fonts = self._book.font_list
        return 0 <= font < len(fonts) and bool(fonts[font].struck_out)

    def _text(self, value: str, runs: list[tuple[int, int]] | None, style: Style) -> Cell | None:
        code = style.number_format
        if not runs:
            text = tidy(value)
            return seen(Cell(shown_text(text, code), text, code), style)
        pieces: list[Piece] = []
        gone: list[str] = []
        for text, font in _pieces(value, runs):
            struck = style.struck if font is None else self._is_struck(font)
            if struck:
                gone.append(text)
            else:
                level = self._level(font)
                pieces.append(Piece(text, raised=level == _RAISED, lowered=level == _LOWERED))
        text = tidy(on_one_line(pieces)) or tidy("".join(gone))
        return Cell(text, text, code, struck=bool(gone)) if text else None

    def _level(self, font: int | None) -> int:
        fonts: list[Any] = self._book.font_list
        return int(fonts[font].escapement) if font is not None and 0 <= font < len(fonts) else 0


def _pieces(value: str, runs: list[tuple[int, int]]) -> Iterator[tuple[str, int | None]]:
    """The text in runs, each with the number of its font; the first has its cell's font."""
    if runs[0][0] > 0:
        yield value[: runs[0][0]], None
    for number, (start, font) in enumerate(runs):
        end = runs[number + 1][0] if number + 1 < len(runs) else len(value)
        if start < end:
            yield value[start:end], font


def _error_text(code: int) -> str:
    from xlrd import error_text_from_code

    return str(error_text_from_code.get(code, "#N/A"))
