"""The shop's stock list, pasted as text: a model, a size and where it is, one size a line.

A line is understood whole or not at all. Which offers it speaks of is found by their names when
the charts are compared, so that a list stays good when further charts come in. A line that could
be two different offers is not used: it is said to be unclear.
"""

from __future__ import annotations

import tomllib
from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from functools import cache

import numpy as np

from charts.cell_text import clean
from charts.resource_files import resources
from harmonizer.offers import Offer
from harmonizer.range_table import RangeTable


class Stock(StrEnum):
    """Where a size is."""

    IN_HOUSE = "in_house"
    TO_ORDER = "to_order"
    NOT_THIS_SEASON = "not_this_season"


@dataclass(frozen=True, slots=True)
class StockLine:
    """One line: ``what`` names model and size, ``stock`` is None where the line says none."""

    text: str
    what: str
    stock: Stock | None


@dataclass(frozen=True, slots=True)
class StockMatch:
    """What a list says of some offers: one entry an offer, and the lines that could not be used."""

    standing: tuple[Stock | None, ...]
    unclear: tuple[StockLine, ...]

    @property
    def count(self) -> int:
        """How many offers the list speaks of."""
        return sum(one is not None for one in self.standing)


def read_stock(text: str) -> tuple[StockLine, ...]:
    """The lines of a pasted list; an empty line is none, a line without a standing is kept."""
    return tuple(_line(line.strip()) for line in text.splitlines() if _plain(line))


def matched(lines: Sequence[StockLine], offers: Sequence[Offer]) -> StockMatch:
    """What ``lines`` say of ``offers``; of two lines on one offer that differ neither holds."""
    names = _names(offers)
    said: dict[int, list[StockLine]] = defaultdict(list)
    unclear = []
    for line in lines:
        places = names.get(line.what, ())
        if line.stock is None or len(places) != 1:
            unclear.append(line)
        else:
            said[places[0]].append(line)
    standing: list[Stock | None] = [None] * len(offers)
    for at, of_one in said.items():
        if len({line.stock for line in of_one}) > 1:
            unclear.extend(of_one)
        else:
            standing[at] = of_one[0].stock
    return StockMatch(tuple(standing), tuple(unclear))


def stocked(table: RangeTable, lines: Sequence[StockLine]) -> RangeTable:
    """``table`` with what the list says; the list goes before what ``models.toml`` has."""
    if not lines:
        return table
    standing = matched(lines, table.offers).standing
    known = np.array([one is not None for one in standing], np.bool_)
    elsewhere = np.array([one not in (None, Stock.IN_HOUSE) for one in standing], np.bool_)
    out = np.where(known, elsewhere, table.facts.out_of_stock)
    return replace(table, facts=replace(table.facts, out_of_stock=out, stock=standing))


def _line(text: str) -> StockLine:
    plain = _plain(text)
    for words, stock in _endings().items():
        if plain.endswith(f" {words}"):
            return StockLine(text, plain.removesuffix(words).strip(), stock)
    return StockLine(text, plain, None)


def _plain(text: str) -> str:
    """``text`` in small letters, its separators as single blanks."""
    parts = clean(text).casefold()
    for mark in "\t;|,:·":
        parts = parts.replace(mark, " ")
    return " ".join(word for word in parts.split() if word not in ("-", "–", "="))


@cache
def _endings() -> Mapping[str, Stock]:
    """The words for each standing, the longest first: "nicht diese saison" before "da"."""
    source = resources() / "reference" / "stock_words.toml"
    words = tomllib.loads(source.read_text(encoding="utf-8"))["words"]
    known = {_plain(word): Stock(stock) for stock, many in words.items() for word in many}
    return {word: known[word] for word in sorted(known, key=len, reverse=True)}


def _names(offers: Sequence[Offer]) -> Mapping[str, tuple[int, ...]]:
    """The offers by every way a list may name them."""
    names: dict[str, set[int]] = defaultdict(set)
    for at, offer in enumerate(offers):
        for name in _names_of(offer):
            names[name].add(at)
    return {name: tuple(sorted(places)) for name, places in names.items()}


def _names_of(offer: Offer) -> Iterator[str]:
    models = [offer.model]
    if offer.band:
        models += [f"{offer.model} {offer.band}", f"{offer.band} {offer.model}"]
    if offer.supplier:
        models += [f"{offer.supplier} {model}" for model in tuple(models)]
    for size in (offer.size, *offer.also):
        whole = f"{size} {offer.length}" if offer.length else size
        for model in models:
            yield _plain(f"{model} {size}")
            yield _plain(f"{model} size {whole}")
            yield _plain(f"{model} größe {whole}")
            yield _plain(f"{model} {whole}")
