"""The shop's own count of its wall sheets, so that a stale print on the wall is recognised.

The count goes up when anything on the sheet changes; printing the same sheet again keeps the
number. The book is a small TOML text that a person can read.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import ClassVar

from charts.toml_text import FORMAT, Entries, TomlFileError


@dataclass(frozen=True, slots=True)
class Edition:
    """One wall sheet: its number, the version of its content, and the day it was first made."""

    number: int
    version: str
    made_on: date

    @property
    def replaces(self) -> int | None:
        """The number of the sheet to be taken off the wall, None for the first."""
        return self.number - 1 if self.number > 1 else None


class EditionsFileError(TomlFileError):
    """A book of wall sheets that cannot be used, with the line and the reason."""

    topic: ClassVar[str] = "wall_sheet"


@dataclass(frozen=True, slots=True)
class EditionBook:
    """Every wall sheet so far, oldest first."""

    editions: tuple[Edition, ...] = ()

    def edition(self, version: str, today: date) -> Edition:
        """The sheet of this content: the last one where nothing has changed, else a new one."""
        last = self.editions[-1] if self.editions else None
        if last is not None and last.version == version:
            return last
        return Edition(last.number + 1 if last is not None else 1, version, today)

    def with_edition(self, edition: Edition) -> EditionBook:
        """The book after ``edition`` was printed; the same where it is the last one already."""
        if self.editions and self.editions[-1] == edition:
            return self
        return EditionBook((*self.editions, edition))


def read_editions(text: str) -> EditionBook:
    """The book as ``editions_text`` wrote it. Raises EditionsFileError."""
    file = Entries.of_file(text, EditionsFileError)
    editions: list[Edition] = []
    for entry in file.tables("edition"):
        number, version, made_on = (
            entry.number("number"),
            entry.text("version"),
            entry.day("made_on"),
        )
        if number is None or version is None or made_on is None:
            raise entry.wrong(None, "edition-incomplete")
        if number != int(number) or (editions and number <= editions[-1].number):
            raise entry.wrong("number", "edition-order")
        entry.close()
        editions.append(Edition(int(number), version, made_on))
    file.close()
    return EditionBook(tuple(editions))


def editions_text(book: EditionBook) -> str:
    """The book as TOML."""
    parts = [f"format = {FORMAT}\n"]
    parts += (
        f'\n[[edition]]\nnumber = {each.number}\nversion = "{each.version}"\n'
        f"made_on = {each.made_on.isoformat()}\n"
        for each in book.editions
    )
    return "".join(parts)
