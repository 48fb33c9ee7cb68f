"""A supplier's habits on the next file: the answers they give, and what is different this time.

A habit answers a question only where it would be answered the same way again: the reading it
gives is among those offered, and the figures lie where they lay before.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from decimal import Decimal
from types import MappingProxyType
from typing import Final

from charts.answers import (
    Act,
    Answer,
    AsPrinted,
    CellReads,
    Corrected,
    LeftOut,
    Meaning,
    Part,
    Question,
    Scope,
    Taken,
)
from charts.asked_values import ranges_of, values_of
from charts.dimensions import find_units
from charts.findings import Finding, Level
from charts.habits.kept import (
    LABELS,
    Habits,
    HeadingHabit,
    TableLook,
    figures_under,
    headings_of,
    look_of,
    pattern_of,
)
from charts.places import sheet_of
from charts.quantities import canonical
from charts.schema import Basis, Definition, FileReading

_LESS: Final = Decimal("0.8")
_MORE: Final = Decimal("1.25")
"""How far figures may lie beyond those seen before: a size smaller or larger, not another unit."""

Closes = Callable[[Finding, FileReading, Habits], Iterator[Act]]


def text_answers(file: str, habits: Habits) -> tuple[Answer, ...]:
    """How a text file of this name is written, to be known before it is read."""
    found = [one.form for one in habits.texts if one.file == pattern_of(file)]
    return tuple(_signed(form, habits) for form in found)


def habit_answers(reading: FileReading, habits: Habits) -> tuple[Answer, ...]:
    """What the habits answer to the open questions of a file, and what they add unasked."""
    found = [_signed(act, habits) for act in _sheets(reading, habits)]
    for finding in reading.findings:
        closes = _CLOSING.get(finding.code)
        if finding.level is Level.QUESTION and closes is not None:
            asked = Question.of(finding)
            found += [_signed(act, habits, asked) for act in closes(finding, reading, habits)]
    found += [_signed(act, habits) for act in _unasked(reading, habits)]
    return tuple(found)


def departures(reading: FileReading, habits: Habits) -> tuple[Finding, ...]:
    """What is different from the files of this name that were approved before, as notes."""
    before = habits.look(reading.file)
    notes = list(_far_figures(reading, habits))
    if before is not None:
        notes += _compared(look_of(reading).tables, before.tables, reading)
    taken = max((int(finding.id[1:]) for finding in reading.findings), default=0)
    return tuple(
        Finding(f"f{number}", "habit-departure", place, MappingProxyType(dict(values)))
        for number, (place, values) in enumerate(notes, taken + 1)
    )


def _signed(act: Act, habits: Habits, about: Question | None = None) -> Answer:
    return Answer(act, habits.by, habits.on, about, habits.version)


def _sheets(reading: FileReading, habits: Habits) -> Iterator[Act]:
    sheets = dict.fromkeys(
        sheet_of(place)
        for place in (
            *(chart.place for chart in reading.charts),
            *(finding.place for finding in reading.findings),
        )
    )
    for sheet in sheets:
        if sheet and pattern_of(sheet) in habits.sheets_left_out:
            yield LeftOut(Part.SHEET, sheet)


def _columns(finding: Finding, reading: FileReading) -> dict[str, list[str]]:
    """The headings a question bears on, by table."""
    found: dict[str, dict[str, None]] = {}
    for chart, one in values_of(finding, reading):
        headings = found.setdefault(chart.place, {})
        headings |= dict.fromkeys(headings_of(one))
    return {place: list(headings) for place, headings in found.items()}


def _all_known(
    finding: Finding, reading: FileReading, habits: Habits
) -> Mapping[str, list[HeadingHabit]] | None:
    """The habits of every heading of a question by table; None when one is not known."""
    found: dict[str, list[HeadingHabit]] = {}
    for place, headings in _columns(finding, reading).items():
        known = [habits.heading(heading) for heading in headings]
        found[place] = [one for one in known if one is not None]
        if len(found[place]) < len(headings):
            return None
    return found or None


def _unit(finding: Finding, reading: FileReading, habits: Habits) -> Iterator[Act]:
    """One unit for all columns of the question, among those that their figures allow."""
    known = _all_known(finding, reading, habits)
    units = {one.unit for each in (known or {}).values() for one in each}
    unit = units.pop() if len(units) == 1 else None
    if known is None or unit is None:
        return
    printed = {each for one in finding.candidates for each in find_units(one.text)[:1]}
    taken = next(iter(find_units(finding.values.get("unit", ""))), unit)
    scale = canonical(Decimal(1), unit) / canonical(Decimal(1), taken)
    near = all(_near(one, reading, scale) for each in known.values() for one in each)
    if unit in printed and near:
        for place, each in known.items():
            yield Meaning(Scope.COLUMN, place, tuple(one.heading for one in each), unit)


def _near(habit: HeadingHabit, reading: FileReading, scale: Decimal = Decimal(1)) -> bool:
    """Whether the figures under a heading lie where they lay when it was confirmed."""
    if habit.low is None or habit.high is None:
        return True
    least, most = habit.low * _LESS, habit.high * _MORE
    return all(least <= end * scale <= most for end in figures_under(habit.heading, reading))


def _dimension(finding: Finding, reading: FileReading, habits: Habits) -> Iterator[Act]:
    heading = finding.values.get("heading", "")
    habit = habits.heading(heading)
    if habit is None or not _near(habit, reading):
        return
    if habit.left_out:
        yield LeftOut(Part.COLUMN, finding.place, heading)
    elif habit.dimension is not None:
        meant = (habit.dimension, habit.definition)
        yield Meaning(Scope.COLUMN, finding.place, (heading,), None, *meant)


def _basis(finding: Finding, reading: FileReading, habits: Habits) -> Iterator[Act]:
    known = _all_known(finding, reading, habits)
    for place, each in (known or {}).items():
        for one in each:
            if one.basis is not None and _near(one, reading):
                yield Meaning(Scope.COLUMN, place, (one.heading,), basis=one.basis)


def _label(finding: Finding, reading: FileReading, habits: Habits) -> Iterator[Act]:
    """A name of a size by its letters; one that breaks the step of the others is asked."""
    del reading
    if "heading" in finding.values:
        return
    text = finding.values.get("text", "")
    for one in habits.labels:
        if one.printed == text == one.reads:
            yield AsPrinted(finding.place, finding.code, "", text)
        elif one.printed == text:
            yield Corrected((CellReads(finding.place, text, one.reads),))


def _date(finding: Finding, reading: FileReading, habits: Habits) -> Iterator[Act]:
    """A range that became a date; never a height, whose order is lost in each cell anew."""
    whys = {candidate.why for candidate in finding.candidates}
    heading = LABELS if "as-printed" in whys else finding.values.get("heading", "")
    habit = habits.heading(heading)
    heights = "month-day" in whys
    if habit is not None and habit.dates and not heights and _near(habit, reading):
        text = next((one.text for one in finding.candidates if one.why == "day-month"), "")
        yield Taken(finding.place, finding.code, "day-month", text)


def _no_table(finding: Finding, reading: FileReading, habits: Habits) -> Iterator[Act]:
    del finding
    if pattern_of(reading.file) in habits.files_left_out:
        yield LeftOut(Part.FILE)


_CLOSING: Final[Mapping[str, Closes]] = MappingProxyType(
    {
        "unit-missing": _unit,
        "heading-two-readings": _dimension,
        "heading-unknown": _dimension,
        "column-unused": _dimension,
        "basis-doubtful": _basis,
        "label-mistyped": _label,
        "was-a-date": _date,
        "no-table": _no_table,
    }
)
"""The questions a habit may close. What the values themselves raise is not among them."""


def _unasked(reading: FileReading, habits: Habits) -> Iterator[Act]:
    """Definitions and bases that no question asks for: where the file still does not say them."""
    flat = {finding.id for finding in reading.findings if finding.code == "laid-flat"}
    for chart in reading.charts:
        seen: set[str] = set()
        for one in ranges_of(chart):
            for heading in set(headings_of(one)) - seen:
                seen.add(heading)
                habit = habits.heading(heading)
                if habit is None or flat & set(one.findings) or not _near(habit, reading):
                    continue
                definition = habit.definition if one.definition is Definition.UNKNOWN else None
                basis = habit.basis if one.basis is Basis.UNKNOWN else None
                if definition is not None or basis is not None:
                    yield Meaning(
                        Scope.COLUMN, chart.place, (heading,), definition=definition, basis=basis
                    )


def _far_figures(reading: FileReading, habits: Habits) -> Iterator[tuple[str, Mapping[str, str]]]:
    for habit in habits.headings:
        if habit.heading and not _near(habit, reading):
            place = next(
                chart.place
                for chart in reading.charts
                if any(habit.heading in headings_of(one) for one in ranges_of(chart))
            )
            yield place, {"case": "figures", "heading": habit.heading}


def _compared(
    now: tuple[TableLook, ...], before: tuple[TableLook, ...], reading: FileReading
) -> Iterator[tuple[str, Mapping[str, str]]]:
    """Tables that came or went, and in those that stayed headings and units that did."""
    rest = list(before)
    for table in now:
        old = max(rest, key=lambda one: _likeness(table, one), default=None)
        if old is None or _likeness(table, old) == (0, False):
            yield reading.file, {"case": "table-new", "heading": ", ".join(table.headings)}
            continue
        rest.remove(old)
        yield from _differences(table, old, reading)
    for gone in rest:
        yield reading.file, {"case": "table-gone", "heading": ", ".join(gone.headings)}


def _likeness(one: TableLook, other: TableLook) -> tuple[int, bool]:
    common = len(set(one.headings) & set(other.headings))
    return common, common > 0 and one.sheet == other.sheet


def _differences(
    now: TableLook, before: TableLook, reading: FileReading
) -> Iterator[tuple[str, Mapping[str, str]]]:
    was = dict(zip(before.headings, before.units, strict=True))
    here = dict(zip(now.headings, now.units, strict=True))
    for heading in here.keys() - was.keys():
        yield reading.file, {"case": "heading-new", "heading": heading}
    for heading in was.keys() - here.keys():
        yield reading.file, {"case": "heading-gone", "heading": heading}
    for heading in here.keys() & was.keys():
        if here[heading] != was[heading] and here[heading] and was[heading]:
            values = {"case": "unit", "unit": here[heading], "other": was[heading]}
            yield reading.file, values | {"heading": heading}
