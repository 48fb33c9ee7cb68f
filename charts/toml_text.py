"""TOML a person wrote: read strictly, and every complaint names the line it is about."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping, Sequence
from datetime import date, datetime
from decimal import Decimal
from enum import StrEnum
from typing import Any, ClassVar, Final, TypeVar

from charts.reason import Reason
from charts.wording import Wording

Choice = TypeVar("Choice", bound=StrEnum)
Step = str | int

FORMAT: Final = 1
_HEADER: Final = re.compile(r"^\s*\[\[?\s*([^\]]+?)\s*\]")
_ERROR_LINE: Final = re.compile(r"\(at line (\d+), column \d+\)")


class TomlFileError(Exception):
    """A file that cannot be used, with the line and the reason.

    Attributes:
        line: The line counted from 1.
        reason: What is wrong, to be said in the topic of the file's kind.
    """

    topic: ClassVar[str] = "rider"

    def __init__(self, line: int, reason: Reason) -> None:
        super().__init__(line, reason)
        self.line = line
        self.reason = reason

    def say(self, wording: Wording) -> str:
        """The reason as a sentence, without the line."""
        return self.reason.say(wording, self.topic)

    def __str__(self) -> str:
        return f"{self.line}: {self.say(Wording())}"


class Entries:
    """One table of a TOML file; what is asked of it is checked, what is never asked is refused."""

    def __init__(
        self,
        text: str,
        values: Mapping[str, Any],
        path: tuple[Step, ...],
        error: type[TomlFileError],
    ) -> None:
        self._text = text
        self._values = values
        self._path = path
        self._error = error
        self._asked: set[str] = set()

    @classmethod
    def of_file(cls, text: str, error: type[TomlFileError]) -> Entries:
        """The whole file; raises ``error`` when it is not TOML or of a newer format."""
        try:
            values = tomllib.loads(text, parse_float=Decimal)
        except tomllib.TOMLDecodeError as wrong:
            line = _ERROR_LINE.search(str(wrong))
            at = int(line.group(1)) if line else max(1, len(text.splitlines()))
            raise error(at, Reason("not-toml")) from wrong
        entries = cls(text, values, (), error)
        form = entries.get("format")
        if form != FORMAT or isinstance(form, bool):
            raise entries.wrong("format", "format-missing" if form is None else "format-newer")
        return entries

    def __contains__(self, key: str) -> bool:
        return key in self._values

    def __len__(self) -> int:
        return len(self._values)

    @property
    def written(self) -> tuple[str, ...]:
        """The keys in the order they were written."""
        return tuple(self._values)

    def get(self, key: str) -> Any:
        """The value as TOML gave it, or None."""
        self._asked.add(key)
        return self._values.get(key)

    def text(self, key: str) -> str | None:
        """A piece of text that is not blank, or None."""
        value = self.get(key)
        if value is None:
            return None
        if not isinstance(value, str) or not value.strip():
            raise self.wrong(key, "not-text")
        return value.strip()

    def exact(self, key: str) -> str:
        """A piece of text just as it is written, "" where nothing is said."""
        value = self.get(key)
        if value is not None and not isinstance(value, str):
            raise self.wrong(key, "not-text")
        return value or ""

    def choice(self, key: str, kinds: type[Choice]) -> Choice | None:
        """One of the words of ``kinds``, or None."""
        word = self.text(key)
        if word is None:
            return None
        if word not in set(kinds):
            raise self.wrong(key, "not-a-choice", given=word, choices=", ".join(kinds))
        return kinds(word)

    def number(self, key: str) -> Decimal | None:
        """A number of zero or more, or None."""
        value = self.get(key)
        if value is None:
            return None
        if isinstance(value, bool) or not isinstance(value, int | Decimal):
            raise self.wrong(key, "not-a-number")
        number = Decimal(value)
        if not number.is_finite() or number < 0:
            raise self.wrong(key, "not-a-number")
        return number

    def flag(self, key: str) -> bool:
        """True or false; false where nothing is said."""
        value = self.get(key)
        if value is not None and not isinstance(value, bool):
            raise self.wrong(key, "not-a-flag")
        return bool(value)

    def day(self, key: str) -> date | None:
        """A calendar day, or None."""
        value = self.get(key)
        if value is not None and (not isinstance(value, date) or isinstance(value, datetime)):
            raise self.wrong(key, "not-a-day")
        return value

    def words(self, key: str) -> tuple[str, ...]:
        """A list of texts, empty where nothing is said."""
        value = self.get(key)
        if value is None:
            return ()
        if not isinstance(value, list) or not all(isinstance(word, str) for word in value):
            raise self.wrong(key, "not-a-list")
        return tuple(value)

    def table(self, key: str) -> Entries:
        """A table within this one, empty where there is none."""
        value = self.get(key)
        if value is not None and not isinstance(value, dict):
            raise self.wrong(key, "not-a-table")
        return Entries(self._text, value or {}, (*self._path, key), self._error)

    def tables(self, key: str) -> Sequence[Entries]:
        """A list of tables, empty where there is none."""
        value = self.get(key)
        if value is None:
            return ()
        if not isinstance(value, list) or not all(isinstance(entry, dict) for entry in value):
            raise self.wrong(key, "not-a-list-of-tables")
        return [
            Entries(self._text, entry, (*self._path, key, place), self._error)
            for place, entry in enumerate(value)
        ]

    def close(self) -> None:
        """Refuse the first key that nobody asked for: a misspelt key must not go unnoticed."""
        for key in self._values:
            if key not in self._asked:
                raise self.wrong(key, "unknown-key", choices=", ".join(sorted(self._asked)))

    def wrong(self, key: str | None, code: str, /, **values: object) -> TomlFileError:
        """The error to raise about ``key``, or about this table itself."""
        path = self._path if key is None else (*self._path, key)
        return self._error(line_of(self._text, path), Reason(code, {"key": key or "", **values}))


def line_of(text: str, path: Sequence[Step]) -> int:
    """The line, from 1, on which the value at ``path`` stands, or its nearest parent that is found.

    A path holds the table's keys and, after the key of a list of tables, the place in that list.
    """
    for end in range(len(path), 0, -1):
        line = _exact_line(text, path[:end])
        if line is not None:
            return line
    return 1


def _exact_line(text: str, path: Sequence[Step]) -> int | None:
    wanted = tuple(path)
    here: tuple[Step, ...] = ()
    counts: dict[str, int] = {}
    for number, line in enumerate(text.splitlines(), 1):
        header = _HEADER.match(line)
        if header:
            here = _header_path(header.group(1), line.lstrip().startswith("[["), counts)
        elif wanted[:-1] == here and re.match(rf'\s*"?{re.escape(str(wanted[-1]))}"?\s*[=.]', line):
            return number
        if header and here == wanted:
            return number
    return None


def _header_path(name: str, repeated: bool, counts: dict[str, int]) -> tuple[Step, ...]:
    if repeated:
        counts[name] = counts.get(name, -1) + 1
        return (name, counts[name])
    steps: list[Step] = []
    for part in name.split("."):
        steps.append(part.strip())
        if part.strip() in counts:
            steps.append(counts[part.strip()])
    return tuple(steps)
