"""Clean charts made by the dozen: one plan of figures, printed in every way suppliers print it.

A plan holds lengths in half inches, so that it can be printed exactly in inches or in centimetres
(x 2.54), and masses in kilograms.
"""

from __future__ import annotations

import csv
import io
import random
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal

Reading = tuple[str, str, Decimal | None, Decimal | None]
"""Label, dimension, low and high in cm or kg."""

WORDS: Mapping[str, Mapping[str, str]] = {
    "en": {
        "size": "Size", "chest": "Chest", "waist": "Waist", "hip": "Hips", "height": "Height",
        "weight": "Weight", "back_length": "Back length", "all": "All measurements in {units}",
        "to": "to",
    },
    "de": {
        "size": "Größe", "chest": "Brustumfang", "waist": "Taillenumfang", "hip": "Hüftumfang",
        "height": "Körpergröße", "weight": "Gewicht", "back_length": "Rückenlänge",
        "all": "Alle Maße in {units}", "to": "bis",
    },
    "fr": {
        "size": "Taille", "chest": "Tour de poitrine", "waist": "Tour de taille",
        "hip": "Tour de hanches", "height": "Stature", "weight": "Poids",
        "back_length": "Longueur dos", "all": "Toutes les mesures en {units}", "to": "à",
    },
    "nl": {
        "size": "Maat", "chest": "Borstomtrek", "waist": "Taille-omtrek", "hip": "Heupomtrek",
        "height": "Lichaamslengte", "weight": "Gewicht", "back_length": "Ruglengte",
        "all": "Alle maten in {units}", "to": "tot",
    },
    "it": {
        "size": "Taglia", "chest": "Circonferenza torace", "waist": "Circonferenza vita",
        "hip": "Circonferenza fianchi", "height": "Statura", "weight": "Peso",
        "back_length": "Lunghezza schiena", "all": "Tutte le misure in {units}", "to": "a",
    },
    "es": {
        "size": "Talla", "chest": "Contorno de pecho", "waist": "Contorno de cintura",
        "hip": "Contorno de cadera", "height": "Estatura", "weight": "Peso",
        "back_length": "Largo de espalda", "all": "Todas las medidas en {units}", "to": "a",
    },
    "pl": {
        "size": "Rozmiar", "chest": "Obwód klatki piersiowej", "waist": "Obwód talii",
        "hip": "Obwód bioder", "height": "Wzrost", "weight": "Waga",
        "back_length": "Długość pleców", "all": "Wszystkie wymiary w {units}", "to": "do",
    },
}  # fmt: skip

LABELS: Sequence[Sequence[str]] = (
    ("S", "M", "L", "XL"),
    ("XS", "S", "M", "L", "XL", "XXL"),
    ("XXS", "XS", "S", "M", "L", "XL", "2XL", "3XL"),
    ("Small", "Medium", "Large", "X-Large"),
    ("34", "36", "38", "40", "42", "44"),
    ("44", "46", "48", "50", "52"),
)
_CM_PER_INCH = Decimal("2.54")  # exact by definition
_FIRST = {"chest": 33, "waist": 26, "hip": 36, "height": 62, "weight": 50, "back_length": 16}
_STEP = {"chest": 2, "waist": 2, "hip": 2, "height": 1, "weight": 6, "back_length": 0}
_WIDTH = {"chest": 2, "waist": 2, "hip": 2, "height": 3, "weight": 8, "back_length": 1}


@dataclass(frozen=True)
class Plan:
    """Sizes, dimensions, and for each dimension its ranges in inches, of weight in kg."""

    labels: tuple[str, ...]
    ranges: Mapping[str, tuple[tuple[Decimal, Decimal], ...]]

    def readings(self) -> set[Reading]:
        """What a right reading of any printing gives."""
        found = set()
        for dimension, ranges in self.ranges.items():
            by = _by(dimension, metric=True)
            for label, (low, high) in zip(self.labels, ranges, strict=True):
                found.add((label, dimension, low * by, high * by))
        return found


@dataclass(frozen=True)
class Printing:
    """One way to print a plan."""

    language: str
    metric: bool
    turned: bool
    sizes_last: bool
    units: str  # heading, heading bare, cell, title, below
    separator: str
    comma: bool
    delimiter: str
    title: bool
    left: int
    first_heading: bool


def plan(chance: random.Random) -> Plan:
    """A plausible adult's chart: two to five dimensions, ranges that rise by a steady step."""
    labels = tuple(chance.choice(LABELS))
    count = chance.randint(2, 5)
    dimensions = ["chest", *chance.sample(sorted(set(_FIRST) - {"chest"}), count - 1)]
    ranges = {}
    for dimension in dimensions:
        half = Decimal(chance.choice((0, 50))) / 100
        first = Decimal(_FIRST[dimension] + chance.randint(0, 2)) + half
        step = Decimal(_STEP[dimension]) + Decimal(chance.choice((0, 50))) / 100
        width = Decimal(_WIDTH[dimension])
        lows = [first + step * number for number in range(len(labels))]
        ranges[dimension] = tuple((low, low + width) for low in lows)
    return Plan(labels, ranges)


def printing(chance: random.Random) -> Printing:
    """A way to print, chosen at random."""
    comma = chance.random() < 0.5
    turned = chance.random() < 0.5
    return Printing(
        language=chance.choice(sorted(WORDS)),
        metric=chance.random() < 0.5,
        turned=turned,
        sizes_last=turned and chance.random() < 0.3,
        units=chance.choice(("heading", "heading bare", "cell", "title", "below")),
        separator=chance.choice(("-", " - ", "–", " – ", "word")),
        comma=comma,
        delimiter=chance.choice((";", "\t")) if comma else chance.choice((";", "\t", ",")),
        title=chance.random() < 0.4,
        left=chance.choice((0, 0, 0, 1)),
        first_heading=chance.random() < 0.7,
    )


def printed(of: Plan, way: Printing) -> bytes:
    """The plan as delimited text, printed in one way."""
    rows = _table(of, way)
    if way.turned:
        rows = [list(row) for row in zip(*rows, strict=True)]
        if way.sizes_last:
            rows = [*rows[1:], rows[0]]
    rows = [[""] * way.left + row for row in rows]
    above = []
    if way.title:
        above.append(["Vest 7"])
    if way.units == "title":
        units = " / ".join(("cm" if way.metric else "inches", "kg"))
        above.append([WORDS[way.language]["all"].format(units=units)])
    out = io.StringIO()
    writer = csv.writer(out, delimiter=way.delimiter, lineterminator="\n")
    writer.writerows([*above, *([[]] if above else []), *rows])
    return out.getvalue().encode("utf-8")


def _table(of: Plan, way: Printing) -> list[list[str]]:
    words = WORDS[way.language]
    heads = [words["size"] if way.first_heading else ""]
    below = [""]
    for dimension in of.ranges:
        unit = _unit(dimension, way)
        name = words[dimension]
        if way.units == "heading":
            name = f"{name} ({unit})"
        elif way.units == "heading bare":
            name = f"{name} {unit}"
        heads.append(name)
        below.append(unit)
    rows = [heads, below] if way.units == "below" else [heads]
    for number, label in enumerate(of.labels):
        rows.append([label, *(_cell(of, dim, number, way) for dim in of.ranges)])
    return rows


def _unit(dimension: str, way: Printing) -> str:
    if dimension == "weight":
        return "kg"
    return "cm" if way.metric else "in"


def _by(dimension: str, *, metric: bool) -> Decimal:
    return _CM_PER_INCH if metric and dimension != "weight" else Decimal(1)


def _cell(of: Plan, dimension: str, number: int, way: Printing) -> str:
    by = _by(dimension, metric=way.metric)
    low, high = (_figure(end * by, way) for end in of.ranges[dimension][number])
    separator = f" {WORDS[way.language]['to']} " if way.separator == "word" else way.separator
    unit = f" {_unit(dimension, way)}" if way.units == "cell" else ""
    return f"{low}{separator}{high}{unit}"


def _figure(value: Decimal, way: Printing) -> str:
    text = f"{value.normalize():f}"
    return text.replace(".", ",") if way.comma else text
