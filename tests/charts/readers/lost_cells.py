"""Invented tables whose cells lost their places: the orders in which copies of texts give them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from charts.findings import Level
from charts.importer import read_pasted
from charts.schema import FileReading, Kind

Rows = Sequence[Sequence[str]]


@dataclass(frozen=True)
class Whole:
    """A table as it was: the headings, the rows, what each column behind the sizes measures."""

    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    dimensions: tuple[str, ...]

    @property
    def columns(self) -> list[tuple[str, ...]]:
        return list(zip(*self.rows, strict=True))

    @property
    def values(self) -> dict[tuple[str, str], str]:
        """Every figure by its size and what it measures."""
        return {
            (row[0], name): text
            for row in self.rows
            for name, text in zip(self.dimensions, row[1:], strict=True)
        }


def _whole(dimensions: str, *lines: str) -> Whole:
    heads, *rows = (tuple(line.split(" | ")) for line in lines)
    return Whole(heads, tuple(rows), tuple(dimensions.split()))


TABLES = {
    "inches": _whole(
        "chest waist hip",
        "Size | Chest (in) | Waist (in) | Hip (in)",
        "S | 34-36 | 28-30 | 35-37",
        "M | 37-39 | 31-33 | 38-40",
        "L | 40-42 | 34-36 | 41-43",
        "XL | 43-45 | 37-39 | 44-46",
    ),
    "german": _whole(
        "chest waist back_length",
        "Größe | Brustumfang (cm) | Taillenumfang (cm) | Rückenlänge (cm)",
        "XS | 82-86 | 64-68 | 40",
        "S | 87-91 | 69-73 | 42",
        "M | 92-96 | 74-78 | 44",
        "L | 97-101 | 79-83 | 46",
        "XL | 102-108 | 84-90 | 48",
    ),
    "ages": _whole(
        "height weight chest",
        "Âge | Stature (cm) | Poids (kg) | Tour de poitrine (cm)",
        "4 ans | 98-104 | 15-17 | 55",
        "6 ans | 110-116 | 19-22 | 59",
        "8 ans | 122-128 | 24-27 | 63",
        "10 ans | 134-140 | 29-33 | 68",
    ),
    "numbers": _whole(
        "chest waist hip",
        "Talla | Pecho | Cintura | Cadera",
        "36 | 84 | 64 | 90",
        "38 | 88 | 68 | 94",
        "40 | 92 | 72 | 98",
        "42 | 96 | 76 | 102",
        "44 | 100 | 80 | 106",
    ),
    "weights": _whole(
        "height weight",
        "Maat | Lengte (cm) | Gewicht (kg)",
        "S | 150-160 | 45-55",
        "M | 160-170 | 55-65",
        "L | 170-180 | 65-80",
        "XL | 180-190 | 80-95",
    ),
    "decimals": _whole(
        "chest waist hip",
        "Size | Bust (cm) | Waist (cm) | Hips (cm)",
        "6 | 80.5 | 62.5 | 88.5",
        "8 | 83 | 65 | 91",
        "10 | 88 | 70 | 96",
        "12 | 93 | 75 | 101",
        "14 | 98 | 80 | 106",
    ),
}


def _flat(rows: Rows) -> list[str]:
    return [cell for row in rows for cell in row]


def _across(table: Whole) -> list[tuple[str, ...]]:
    return [(head, *cells) for head, cells in zip(table.heads, table.columns, strict=True)]


def _dashes_apart(table: Whole) -> list[str]:
    lines: list[str] = list(table.heads)
    for text in _flat(table.rows):
        low, dash, high = text.partition("-")
        lines += [low, dash, high] if dash else [text]
    return lines


def _units_apart(table: Whole) -> list[str]:
    heads = [part for head in table.heads for part in head.replace(" (", "|(").split("|")]
    return [*heads, *_flat(table.rows)]


ORDERS: dict[str, Callable[[Whole], Sequence[str]]] = {
    "by rows": lambda one: [*one.heads, *_flat(one.rows)],
    "by columns": lambda one: _flat(_across(one)),
    "apart, by rows": lambda one: [
        *one.heads,
        *one.columns[0],
        *_flat([row[1:] for row in one.rows]),
    ],
    "apart, by columns": lambda one: [*one.heads, *_flat(one.columns)],
    "sizes first": lambda one: [
        one.heads[0],
        *one.columns[0],
        *one.heads[1:],
        *_flat([row[1:] for row in one.rows]),
    ],
    "sizes first, by columns": lambda one: [
        one.heads[0],
        *one.columns[0],
        *one.heads[1:],
        *_flat(one.columns[1:]),
    ],
    "headings last": lambda one: [*_flat(one.columns), *one.heads],
    "headings last, by lines": lambda one: [*map(" ".join, one.columns), *one.heads],
    "names behind": lambda one: _flat([(*row[1:], row[0]) for row in _across(one)]),
    "sizes behind": lambda one: [
        *one.heads[1:],
        one.heads[0],
        *_flat([(*row[1:], row[0]) for row in one.rows]),
    ],
    "units apart": _units_apart,
    "dashes apart": _dashes_apart,
    "titles before": lambda one: ["Jackets", "Fit notes", "", *one.heads, *_flat(one.rows)],
    "apart, titles and notes": lambda one: [
        "Jackets",
        "",
        *one.heads,
        *one.columns[0],
        *_flat([row[1:] for row in one.rows]),
        "",
        "Wash at thirty degrees and hang the jacket up to dry in the shade.",
    ],
}
"""How copies give the cells of a table, a cell a line."""


def text_of(lines: Sequence[str], *, apart: bool = False) -> str:
    """The lines as a text, with an empty one between all of them where ``apart``."""
    return ("\n\n" if apart else "\n").join(lines) + "\n"


def values_read(reading: FileReading, *, unasked: bool = False) -> dict[tuple[str, str], str]:
    """Every figure stored, by its size and what it measures; only ``unasked`` ones where said."""
    asked = {one.id for one in reading.findings if one.level is not Level.NOTE}
    return {
        (size.label or "", one.dimension.value): one.published.replace(" - ", "-")
        for chart in reading.charts
        for size in chart.sizes
        for one in size.ranges
        if one.kind is not Kind.UNREAD and not (unasked and asked & {*one.findings})
    }


def read_lines(lines: Sequence[str], *, apart: bool = False) -> FileReading:
    """What the importer makes of some lines."""
    return read_pasted(text_of(lines, apart=apart))
