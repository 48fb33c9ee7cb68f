"""The book of wall sheets on disk: which number comes next, and what was printed. No Qt."""

from __future__ import annotations

from pathlib import Path
from typing import Final

from charts.in_house import InHouseChart
from charts.wording import Wording
from charts.writers.whole_file import NotWrittenError, write_whole
from harmonizer.shop.editions import (
    Edition,
    EditionBook,
    EditionsFileError,
    editions_text,
    read_editions,
)

BOOK_NAME: Final = "wall-sheets.toml"


class EditionsFile:
    """The book at ``path``; without a path it is kept in memory only."""

    def __init__(self, path: Path | None) -> None:
        self._path = path
        self._unsaved = EditionBook()

    def edition(self, chart: InHouseChart, wording: Wording) -> Edition:
        """The number under which ``chart`` goes on the wall; the book is not changed.

        Raises NotWrittenError when there is a book that cannot be read.
        """
        return self._book(wording).edition(chart.version, chart.made_on)

    def keep(self, edition: Edition, wording: Wording) -> None:
        """Note that ``edition`` was printed or written. Raises NotWrittenError."""
        book = self._book(wording)
        noted = book.with_edition(edition)
        if self._path is None:
            self._unsaved = noted
        elif noted != book:
            try:
                self._path.parent.mkdir(parents=True, exist_ok=True)
                write_whole(self._path, editions_text(noted).encode())
            except (OSError, NotWrittenError) as fault:
                raise NotWrittenError("wall-book-not-kept", self._path) from fault

    def _book(self, wording: Wording) -> EditionBook:
        if self._path is None:
            return self._unsaved
        try:
            return read_editions(self._path.read_text(encoding="utf-8-sig"))
        except FileNotFoundError:
            return EditionBook()
        except EditionsFileError as fault:
            reason = wording.say(
                "wall_sheet", "book-line", line=fault.line, reason=fault.say(wording)
            )
            raise NotWrittenError("wall-book-unreadable", self._path, reason) from fault
        except (OSError, UnicodeDecodeError) as fault:
            reason = wording.say("wall_sheet", "book-not-text")
            raise NotWrittenError("wall-book-unreadable", self._path, reason) from fault
