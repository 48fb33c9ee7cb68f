"""Price lists, order forms and stock lists: they arrive among the charts and are none.

A sheet is left out as one only where two kinds of trade headings (price, code, quantity) stand in
one row, and nothing in the whole sheet measures a body: where measures stand, it is read.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache
from typing import Final

from charts.layout.looks import look
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


def is_trade_list(sheet: Sheet) -> bool:
    """Whether ``sheet`` lists prices, codes or quantities and no measure of a body."""
    if not any(_heads_trade(sheet, row) for row in sheet.filled_rows[:_LOOKED_AT]):
        return False
    texts = [cell.text for cell in sheet.cells.values()]
    figures = sum(bool(_MEASURE.fullmatch(text) or _RANGE.fullmatch(text)) for text in texts)
    return figures <= _FEW and not _names_measures(sheet)


def _heads_trade(sheet: Sheet, row: int) -> bool:
    kinds = {kind for _, cell in sheet.row(row) if (kind := _kind(cell.text))}
    return len(kinds) > 1


def _kind(text: str) -> str:
    """What a heading counts: price, code or quantity; "" for any other text."""
    return _headings().get(_without_currency(normal(text)), "") if len(text) <= _LONGEST else ""


def _without_currency(words: str) -> str:
    return " ".join(word for word in words.split() if word not in _CURRENCIES)


_CURRENCIES: Final = frozenset(
    ("eur", "euro", "usd", "gbp", "chf", "sek", "dkk", "nok", "pln", "czk", "per", "pro", "je")
)


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
    return any(look(text).measures for text in texts)
