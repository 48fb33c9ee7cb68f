"""A supplier's habits as TOML that a person can read, and back again unchanged."""

from __future__ import annotations

from charts.answers import TextForm
from charts.answers_toml import FORMAT_LINE, AnswersFileError
from charts.habits.kept import (
    Habits,
    HeadingHabit,
    LabelHabit,
    Look,
    TableLook,
    TextHabit,
)
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension
from charts.toml_text import Entries
from charts.toml_writing import Plain, lines_of, table_text


def write_habits(habits: Habits) -> str:
    """A whole file of one supplier's habits."""
    head: dict[str, Plain | None] = {
        "supplier": habits.supplier,
        "version": habits.version,
        "by": habits.by,
        "on": habits.on,
        "sheets_left_out": habits.sheets_left_out,
        "files_left_out": habits.files_left_out,
    }
    parts = [FORMAT_LINE, "\n".join((*lines_of(head), "", ""))]
    parts += [table_text("[[heading]]", _heading(one)) for one in habits.headings]
    parts += [table_text("[[label]]", _label(one)) for one in habits.labels]
    parts += [table_text("[[text]]", _text(one)) for one in habits.texts]
    for look in habits.looks:
        parts.append(table_text("[[look]]", {"file": look.file}))
        parts += [table_text("[[look.table]]", _table(one)) for one in look.tables]
    return "".join(parts)


def read_habits(text: str) -> Habits:
    """The habits of a whole file.

    Raises AnswersFileError with the line and the reason: no TOML, a newer format, an unknown key.
    """
    file = Entries.of_file(text, AnswersFileError)
    habits = Habits(
        supplier=file.exact("supplier"),
        version=_whole(file, "version"),
        by=file.exact("by"),
        on=file.day("on"),
        headings=tuple(_read_heading(entry) for entry in file.tables("heading")),
        labels=tuple(_read_label(entry) for entry in file.tables("label")),
        sheets_left_out=file.words("sheets_left_out"),
        files_left_out=file.words("files_left_out"),
        texts=tuple(_read_text(entry) for entry in file.tables("text")),
        looks=tuple(_read_look(entry) for entry in file.tables("look")),
    )
    file.close()
    return habits


def _heading(one: HeadingHabit) -> dict[str, Plain | None]:
    return {
        "heading": one.heading,
        "unit": one.unit,
        "dimension": one.dimension,
        "definition": one.definition,
        "basis": one.basis,
        "left_out": one.left_out or None,
        "dates": one.dates or None,
        "low": one.low,
        "high": one.high,
    }


def _label(one: LabelHabit) -> dict[str, Plain | None]:
    return {"printed": one.printed, "reads": one.reads}


def _text(one: TextHabit) -> dict[str, Plain | None]:
    form = one.form
    return {"file": one.file, "encoding": form.encoding, "separator": form.separator}


def _table(one: TableLook) -> dict[str, Plain | None]:
    return {"sheet": one.sheet, "headings": one.headings, "units": one.units}


def _whole(entry: Entries, key: str) -> int:
    number = entry.number(key)
    if number is not None and number != int(number):
        raise entry.wrong(key, "not-a-number")
    return int(number or 0)


def _read_heading(entry: Entries) -> HeadingHabit:
    one = HeadingHabit(
        heading=entry.exact("heading"),
        unit=entry.choice("unit", Unit),
        dimension=entry.choice("dimension", Dimension),
        definition=entry.choice("definition", Definition),
        basis=entry.choice("basis", Basis),
        left_out=entry.flag("left_out"),
        dates=entry.flag("dates"),
        low=entry.number("low"),
        high=entry.number("high"),
    )
    entry.close()
    return one


def _read_label(entry: Entries) -> LabelHabit:
    one = LabelHabit(entry.exact("printed"), entry.exact("reads"))
    entry.close()
    return one


def _read_text(entry: Entries) -> TextHabit:
    form = TextForm(entry.exact("encoding") or None, entry.exact("separator") or None)
    one = TextHabit(entry.exact("file"), form)
    entry.close()
    return one


def _read_look(entry: Entries) -> Look:
    tables = tuple(_read_table(each) for each in entry.tables("table"))
    one = Look(entry.exact("file"), tables)
    entry.close()
    return one


def _read_table(entry: Entries) -> TableLook:
    headings, units = entry.words("headings"), entry.words("units")
    if len(headings) != len(units):
        raise entry.wrong("units", "not-a-list")
    one = TableLook(entry.exact("sheet"), headings, units)
    entry.close()
    return one
