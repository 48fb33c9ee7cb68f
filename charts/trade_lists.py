"""Price lists, order forms and stock lists: they arrive among the charts and are none.

A sheet is left out as one only where two kinds of trade headings (price, code, quantity) stand in
one row, and nothing in the whole sheet measures a body: where measures stand, it is read.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from functools import cache, lru_cache
from typing import Final

from charts.layout.looks import look
from charts.measure_words import speaks_of_measures
from charts.sheet import Sheet
from charts.vocabulary import normal, spellings, vocabulary

_LOOKED_AT: Final = 400
"""Rows whose words are looked at; headings stand above, and again after a page of such a list."""
_LONGEST: Final = 40
_MEASURE: Final = re.compile(
    r"\s*\d{2,3}(?:[.,]\d{1,2})?\s*(?:[-–—]\s*\d{2,3}(?:[.,]\d{1,2})?)?\s*"
    r"(?:cm|mm|kg|lbs?|in|inch(?:es)?|\"|”|″)\s*",
    re.IGNORECASE,
)
_RANGE: Final = re.compile(r"\s*\d{2,3}(?:[.,]\d{1,2})?\s*[-–—]\s*\d{2,3}(?:[.,]\d{1,2})?\s*")
_FEW: Final = 2
_HEADING_ROWS: Final = 2
"""Rows above and below that may be headings too."""


def is_trade_list(sheet: Sheet) -> bool:
    """Whether ``sheet`` lists prices, codes or quantities and no measure of a body."""
    rows = sheet.filled_rows[:_LOOKED_AT]
    heads = [row for row in rows if _heads_trade(sheet, row)]
    if not heads or any(_measures(sheet, rows, rows.index(row)) for row in heads):
        return False
    texts = [cell.text for cell in sheet.cells.values()]
    figures = sum(bool(_MEASURE.fullmatch(text) or _RANGE.fullmatch(text)) for text in texts)
    return figures <= _FEW and not _names_measures(sheet)


def _measures(sheet: Sheet, rows: Sequence[int], at: int) -> bool:
    """Whether a heading in these rows speaks of a measure, in whatever spelling."""
    around = rows[max(0, at - _HEADING_ROWS) : at + _HEADING_ROWS + 1]
    heads = [row for row in around if row == rows[at] or not _has_figures(sheet, row)]
    return any(speaks_of_measures(cell.text) for row in heads for _, cell in sheet.row(row))


def _has_figures(sheet: Sheet, row: int) -> bool:
    return any(sign.isdigit() for _, cell in sheet.row(row) for sign in cell.text)


def _heads_trade(sheet: Sheet, row: int) -> bool:
    kinds = {kind for _, cell in sheet.row(row) if (kind := _kind(cell.text))}
    return len(kinds) > 1


@lru_cache(maxsize=8192)
def _kind(text: str) -> str:
    """What a heading counts: price, code or quantity; "" for any other text."""
    if text.strip(" ()[]") in _SIGNS:
        return "price"
    return _headings().get(_without_currency(normal(text)), "") if len(text) <= _LONGEST else ""


def _without_currency(words: str) -> str:
    return " ".join(word for word in words.split() if word not in _CURRENCIES)


_CURRENCIES: Final = frozenset(
    ("eur", "euro", "usd", "gbp", "chf", "sek", "dkk", "nok", "pln", "czk", "per", "pro", "je")
)


_SIGNS: Final = frozenset("£€$")
"""A sign of money alone over a column heads its prices."""


@cache
def _headings() -> Mapping[str, str]:
    return {
        spelling: kind
        for kind, words in vocabulary("trade")["headings"].items()
        for word in words
        for spelling in spellings(word)
    }


def _names_measures(sheet: Sheet) -> bool:
    """Whether a cell of the first rows names what is measured on a body."""
    texts = {
        cell.text
        for row in sheet.filled_rows[:_LOOKED_AT]
        for _, cell in sheet.row(row)
        if len(cell.text) <= _LONGEST and not cell.text[:1].isdigit()
    }
    looks = (look(text) for text in texts)
    return any(one.heading.dimension is not None and not one.value for one in looks)
