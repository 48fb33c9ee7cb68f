"""What is kept of one rider as TOML that a person can read, and back again unchanged."""

from __future__ import annotations

from typing import Final

from charts.answers_toml import FORMAT_LINE, AnswersFileError
from charts.quantities import Unit
from charts.schema import Definition
from charts.toml_text import Entries
from charts.toml_writing import Plain, lines_of, table_text
from harmonizer.rider import Measure, Reading, TakenBy
from harmonizer.shop.rider_book import KEPT, RiderRecord

_FELT: Final = "felt"


def write_rider(record: RiderRecord) -> str:
    """A whole file about one rider."""
    parts = [FORMAT_LINE, "\n".join((*lines_of({"name": record.name}), "", ""))]
    parts += [table_text("[[reading]]", _entry(one)) for one in record.readings]
    return "".join(parts)


def read_kept_rider(text: str) -> RiderRecord:
    """What is kept of one rider.

    Raises AnswersFileError with the line and the reason: no TOML, a newer format, an unknown key.
    """
    file = Entries.of_file(text, AnswersFileError)
    name = file.exact("name")
    if not name.strip():
        raise file.wrong("name", "value-missing")
    record = RiderRecord(name, tuple(_reading(entry) for entry in file.tables("reading")))
    file.close()
    return record


def _entry(one: Reading) -> dict[str, Plain | None]:
    return {
        "dimension": one.measure.value,
        "on": one.on,
        "cm": one.value,
        "text": one.text,
        "unit": one.unit.value if one.unit else None,
        "definition": None if one.definition is Definition.UNKNOWN else one.definition.value,
        "taken_by": one.taken_by.value if one.taken_by else None,
        "c7": _FELT if one.c7_felt else None,
    }


def _reading(entry: Entries) -> Reading:
    measure, on, value = entry.choice("dimension", Measure), entry.day("on"), entry.number("cm")
    if measure is None or on is None or not value:
        given = {"dimension": measure, "on": on}
        missing = next((key for key, value in given.items() if value is None), "cm")
        raise entry.wrong(missing, "value-missing")
    if measure not in KEPT:
        choices = ", ".join(KEPT)
        raise entry.wrong("dimension", "not-a-choice", given=measure.value, choices=choices)
    reading = Reading(
        measure,
        value,
        entry.exact("text"),
        entry.choice("unit", Unit),
        entry.choice("definition", Definition) or Definition.UNKNOWN,
        entry.choice("taken_by", TakenBy),
        c7_felt=entry.exact("c7") == _FELT,
        on=on,
    )
    entry.close()
    return reading
