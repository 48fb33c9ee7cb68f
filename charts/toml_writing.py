"""Plain values to TOML that a person can read and that reads back the same."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import date
from decimal import Decimal
from typing import Final

Plain = str | bool | int | Decimal | date | Sequence["Plain"] | Mapping[str, "Plain"]

_BARE: Final = frozenset("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_-")
_SHORT: Final[Mapping[str, str]] = {
    "\\": "\\\\",
    '"': '\\"',
    "\n": "\\n",
    "\r": "\\r",
    "\t": "\\t",
    "\b": "\\b",
    "\f": "\\f",
}


def value_text(value: Plain) -> str:
    """One value on one line: a text in quotes, a number, a day, a list, a table in line."""
    if isinstance(value, str):
        return f'"{"".join(_escaped(character) for character in value)}"'
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, Decimal):
        return f"{value:f}"
    if isinstance(value, int):
        return str(value)
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, Mapping):
        inner = ", ".join(f"{_key(key)} = {value_text(each)}" for key, each in value.items())
        return f"{{ {inner} }}" if inner else "{}"
    return f"[{', '.join(value_text(each) for each in value)}]"


def lines_of(values: Mapping[str, Plain | None]) -> Iterable[str]:
    """One line a value; what is None or empty is left out."""
    for key, value in values.items():
        if value is None or (isinstance(value, str | Sequence | Mapping) and not value):
            continue
        yield f"{_key(key)} = {value_text(value)}"


def table_text(head: str, values: Mapping[str, Plain | None]) -> str:
    """A table under ``head``, such as ``[[answer]]``, ending in a blank line."""
    return "\n".join((head, *lines_of(values), "", ""))


def _key(key: str) -> str:
    return key if key and set(key) <= _BARE else value_text(key)


def _escaped(character: str) -> str:
    if character in _SHORT:
        return _SHORT[character]
    code = ord(character)
    # Half of a surrogate pair is no letter and cannot be written in UTF-8 at all.
    if 0xD800 <= code <= 0xDFFF:
        return "\N{REPLACEMENT CHARACTER}"
    return f"\\u{code:04X}" if code < 0x20 or 0x7F <= code < 0xA0 else character
