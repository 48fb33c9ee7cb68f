"""A supplier's habits: what a person confirmed of one file, said so that it holds for the next.

Kept by heading, label, sheet name and file-name pattern. What only the values can tell (a figure
out of order, an impossible one, a turned block, exchanged units) is no habit and always asked.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal
from typing import Final

from charts.answers import Answer, AsPrinted, Corrected, LeftOut, Meaning, Part, Scope, Taken
from charts.answers import TextForm as WrittenAs
from charts.answers_columns import JOINT
from charts.asked_values import ranges_of
from charts.places import sheet_of
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension, FileReading, Range

_DIGITS: Final = re.compile(r"\d+")
LABELS: Final = ""
"""The heading under which a habit of the sizes' own names is kept."""


@dataclass(frozen=True, slots=True)
class HeadingHabit:
    """What columns under one heading mean with this supplier; None where nothing was said.

    ``dates`` says that a range which a spreadsheet turned into a date is its day and month, the
    smaller first. ``low`` and ``high`` span the figures seen, in cm, kg or years: far outside it,
    nothing that was said holds.
    """

    heading: str
    unit: Unit | None = None
    dimension: Dimension | None = None
    definition: Definition | None = None
    basis: Basis | None = None
    left_out: bool = False
    dates: bool = False
    low: Decimal | None = None
    high: Decimal | None = None

    @property
    def says(self) -> bool:
        """Whether anything was said of the heading, beyond what was seen under it."""
        said = (self.unit, self.dimension, self.definition, self.basis)
        return self.left_out or self.dates or any(each is not None for each in said)


@dataclass(frozen=True, slots=True)
class LabelHabit:
    """A size's name as printed, and as it is read; the same where the print is right."""

    printed: str
    reads: str


@dataclass(frozen=True, slots=True)
class TextHabit:
    """How the text files of one name pattern are written."""

    file: str
    form: WrittenAs


@dataclass(frozen=True, slots=True)
class TableLook:
    """One table as it looked: its sheet's pattern, its headings and the units printed for them."""

    sheet: str
    headings: tuple[str, ...]
    units: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Look:
    """How the files of one name pattern looked when the last of them was approved."""

    file: str
    tables: tuple[TableLook, ...]


@dataclass(frozen=True, slots=True)
class Habits:
    """Everything confirmed of one supplier. ``version`` rises with every change."""

    supplier: str
    version: int = 0
    by: str = ""
    on: date | None = None
    headings: tuple[HeadingHabit, ...] = ()
    labels: tuple[LabelHabit, ...] = ()
    sheets_left_out: tuple[str, ...] = ()
    files_left_out: tuple[str, ...] = ()
    texts: tuple[TextHabit, ...] = ()
    looks: tuple[Look, ...] = ()

    def heading(self, printed: str) -> HeadingHabit | None:
        """What is known of a heading."""
        return next((one for one in self.headings if one.heading == printed), None)

    def look(self, file: str) -> Look | None:
        """How files of this name's pattern looked."""
        return next((one for one in self.looks if one.file == pattern_of(file)), None)


def supplier_of(reading: FileReading) -> str:
    """Who a file is from, as habits are kept: by its charts, else by its first folder."""
    named = [chart.supplier.text for chart in reading.charts if chart.supplier is not None]
    first = reading.file.partition("/")[0] if "/" in reading.file else ""
    return " ".join((named[0] if named else first).casefold().split())


def pattern_of(name: str) -> str:
    """A file's or a sheet's name without what changes from season to season: its numbers."""
    return _DIGITS.sub("#", name.rpartition("/")[2].casefold().strip())


def learned(
    habits: Habits, reading: FileReading, answers: Sequence[Answer], by: str, on: date
) -> Habits:
    """The habits with what a person confirmed of one file, and with how it looks.

    A new version only where something is different from before.
    """
    new = habits
    for answer in answers:
        if not answer.habit:
            new = _with_answer(new, answer, reading)
    new = _with_spans(new, reading)
    look = look_of(reading)
    if look.tables:
        others = tuple(one for one in new.looks if one.file != look.file)
        new = replace(new, looks=tuple(sorted((*others, look), key=lambda one: one.file)))
    return new if new == habits else replace(new, version=habits.version + 1, by=by, on=on)


def look_of(reading: FileReading) -> Look:
    """How a file looks: each table with its headings and printed units."""
    tables: dict[TableLook, None] = {}
    for chart in reading.charts:
        units: dict[str, str] = {}
        for one in ranges_of(chart):
            units.setdefault(one.heading, one.published_unit.value if one.published_unit else "")
        sheet = pattern_of(sheet_of(chart.place))
        tables[TableLook(sheet, tuple(units), tuple(units.values()))] = None
    return Look(pattern_of(reading.file), tuple(tables))


def headings_of(one: Range) -> list[str]:
    """The headings a value stands under; two where its ends stand in two columns."""
    return one.heading.split(JOINT)


def _with_answer(habits: Habits, answer: Answer, reading: FileReading) -> Habits:
    asked = answer.about
    match answer.act:
        case Meaning() as meaning:
            for heading in _spoken_of(meaning, reading):
                habits = _with_heading(habits, heading, meaning)
        case Taken(code="was-a-date", why="day-month", text=text) if asked is not None:
            heading = LABELS if asked.heading == text else asked.heading
            habits = _updated(habits, replace(_known(habits, heading), dates=True))
        case Corrected(cells) if asked is not None and asked.code == "label-mistyped":
            habits = _with_label(habits, LabelHabit(cells[0].printed, cells[0].text))
        case AsPrinted(code="label-mistyped", text=text):
            habits = _with_label(habits, LabelHabit(text, text))
        case LeftOut(part, place, text):
            habits = _with_left_out(habits, part, place, text, reading.file)
        case WrittenAs() as form:
            kept = tuple(one for one in habits.texts if one.file != pattern_of(reading.file))
            habits = replace(habits, texts=(*kept, TextHabit(pattern_of(reading.file), form)))
    return habits


def _spoken_of(meaning: Meaning, reading: FileReading) -> Iterator[str]:
    """The headings a meaning was said of: those it names, or those it came true under."""
    if meaning.scope is Scope.COLUMN:
        yield from meaning.headings
        return
    for chart in reading.charts:
        if meaning.place not in ("", chart.place):
            continue
        for one in ranges_of(chart):
            said = (meaning.basis, meaning.definition, meaning.unit)
            found = (one.basis, one.definition, one.published_unit)
            if any(a is not None and a == b for a, b in zip(said, found, strict=True)):
                yield from headings_of(one)


def _with_heading(habits: Habits, heading: str, meaning: Meaning) -> Habits:
    before = _known(habits, heading)
    after = replace(
        before,
        unit=meaning.unit or before.unit,
        dimension=meaning.dimension or before.dimension,
        definition=meaning.definition or before.definition,
        basis=meaning.basis or before.basis,
    )
    return _updated(habits, after)


def _known(habits: Habits, heading: str) -> HeadingHabit:
    return habits.heading(heading) or HeadingHabit(heading)


def _updated(habits: Habits, one: HeadingHabit) -> Habits:
    rest = tuple(other for other in habits.headings if other.heading != one.heading)
    return replace(habits, headings=tuple(sorted((*rest, one), key=lambda each: each.heading)))


def _with_label(habits: Habits, label: LabelHabit) -> Habits:
    rest = tuple(one for one in habits.labels if one.printed != label.printed)
    return replace(habits, labels=(*rest, label))


def _with_left_out(habits: Habits, part: Part, place: str, text: str, file: str) -> Habits:
    if part is Part.SHEET:
        sheets = dict.fromkeys((*habits.sheets_left_out, pattern_of(place)))
        return replace(habits, sheets_left_out=tuple(sheets))
    if part is Part.FILE:
        files = dict.fromkeys((*habits.files_left_out, pattern_of(file)))
        return replace(habits, files_left_out=tuple(files))
    if part is Part.COLUMN and text:
        return _updated(habits, replace(_known(habits, text), left_out=True))
    return habits


def _with_spans(habits: Habits, reading: FileReading) -> Habits:
    """The figures seen under every heading something was said of."""
    for habit in habits.headings:
        seen = list(figures_under(habit.heading, reading))
        if habit.says and seen:
            habits = _updated(habits, replace(habit, low=min(seen), high=max(seen)))
    return habits


def figures_under(heading: str, reading: FileReading) -> Iterator[Decimal]:
    """Every figure that stands under a heading, in cm, kg or years."""
    for chart in reading.charts:
        for one in ranges_of(chart):
            if heading in headings_of(one):
                yield from (end for end in (one.low, one.high, one.value) if end is not None)
