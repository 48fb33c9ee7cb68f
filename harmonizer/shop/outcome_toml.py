"""Which sizes came out right, as TOML that a person can read, and back again unchanged."""

from __future__ import annotations

from collections.abc import Iterable
from decimal import Decimal
from typing import Final

from charts.answers_toml import FORMAT_LINE, AnswersFileError
from charts.toml_text import Entries
from charts.toml_writing import Plain, table_text
from harmonizer.outcomes import Outcome

_NEEDED: Final = ("model", "chest", "predicted", "fitted")


def write_outcomes(outcomes: Iterable[Outcome]) -> str:
    """The whole file, one table a fitting, oldest first."""
    return "".join((FORMAT_LINE, *(table_text("[[fitting]]", _entry(o)) for o in outcomes)))


def read_outcomes(text: str) -> tuple[Outcome, ...]:
    """Every fitting of a file.

    Raises AnswersFileError with the line and the reason: no TOML, a newer format, an unknown key,
    a value missing.
    """
    file = Entries.of_file(text, AnswersFileError)
    found = tuple(_outcome(entry) for entry in file.tables("fitting"))
    file.close()
    return found


def _entry(one: Outcome) -> dict[str, Plain | None]:
    return {
        "maker": one.maker,
        "model": one.model,
        "band": one.band,
        "season": one.season,
        "chest": one.chest,
        "predicted": one.predicted,
        "fitted": one.fitted,
        "cm": one.cm,
        "on": one.on,
    }


def _outcome(entry: Entries) -> Outcome:
    texts = {key: entry.exact(key) for key in ("maker", "band", "season", *_NEEDED)}
    cm, on = _difference(entry), entry.day("on")
    if on is None:
        raise entry.wrong("on", "value-missing")
    missing = next((key for key in _NEEDED if not texts[key]), None)
    if missing is not None:
        raise entry.wrong(missing, "value-missing")
    entry.close()
    return Outcome(**texts, cm=cm, on=on)


def _difference(entry: Entries) -> Decimal:
    """A length in cm, below 0 where the smaller size fitted."""
    value = entry.get("cm")
    if value is None:
        raise entry.wrong("cm", "value-missing")
    if isinstance(value, bool) or not isinstance(value, int | Decimal):
        raise entry.wrong("cm", "not-a-number")
    number = Decimal(value)
    if not number.is_finite():
        raise entry.wrong("cm", "not-a-number")
    return number
