"""What a reader is: how sure it is of a source, and how it turns it into sheets.

A reader is one module of this package that holds a ``READER``; the registry finds it by itself.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from enum import IntEnum
from functools import cached_property
from typing import Final

from charts.findings import FindingLog
from charts.readers.text_encoding import Decoded, decoded
from charts.sheet import Sheet

PASTED: Final = "-"
"""The name of a pasted text."""
TEXT_ENDINGS: Final = ("csv", "tsv", "tab", "txt", "text", "asc", "log", "prn", "dat", "")
MARKDOWN_ENDINGS: Final = ("md", "markdown")
MEGABYTE: Final = 1024 * 1024
LARGEST_FILE: Final = 40 * MEGABYTE
"""Bytes of a file. Size charts with photographs in them reach about 20 MB."""
LONGEST_CELL: Final = 32_767
"""Characters of a cell: the limit of spreadsheet programs themselves."""
LARGEST_TEXT: Final = 6 * MEGABYTE
"""Bytes of a text source; a saved page with its pictures in line reaches some MB."""
MOST_LINES: Final = 8_000
"""Lines of a text, or words of a page, that are looked through for tables in sentences."""
MOST_TABLES: Final = 300
"""Tables of a page; a shop's longest page of charts has some dozens."""
MOST_CELLS: Final = 60_000
"""Filled cells of a sheet. A chart has some hundreds, a price list some tens of thousands."""


class Claim(IntEnum):
    """How sure a reader is that a source is of its kind. The surest reader takes it."""

    NONE = 0
    LEFTOVER = 1  # anything nobody else wants
    LIKELY = 2  # looks like it
    RECOGNISED = 3  # carries the mark of a kind that cannot be read yet
    CERTAIN = 4  # carries the mark of its kind


class UnusableSourceError(Exception):
    """Nothing can be read of a source. Reader and registry only: it ends as one finding.

    Attributes:
        code: the finding's code.
        what: how much there is of what is too much ("52 MB") or its kind ("PDF"), "" else.
        case: which of several sentences of the code says it, "" for the only one.
    """

    def __init__(self, code: str, what: str = "", case: str = "") -> None:
        super().__init__(code)
        self.code = code
        self.what = what
        self.case = case


def too_many(count: int) -> UnusableSourceError:
    """A source with ``count`` cells, lines or characters where a chart has some hundreds."""
    return UnusableSourceError("too-large", str(count), "many")


class Source:
    """One file or one pasted text, before anybody knows what it is.

    Attributes:
        data: the bytes as they came.
        name: the file's name, "-" for pasted text.
    """

    def __init__(self, data: bytes, name: str) -> None:
        self.data = data
        self.name = name

    @property
    def ending(self) -> str:
        """The ending of the name in lower case without its dot, "" when there is none."""
        _, dot, ending = self.name.rpartition(".")
        return ending.lower() if dot else ""

    @cached_property
    def decoded(self) -> Decoded | None:
        """The text of the bytes and how it was found; None when they are no text."""
        return decoded(self.data) if len(self.data) <= LARGEST_TEXT else None

    @property
    def text(self) -> str:
        """The text of the bytes, "" when they are no text or too many."""
        return self.decoded.text if self.decoded is not None else ""

    def opened_text(self, log: FindingLog) -> str:
        """The text, with what was wrong with its bytes in ``log``."""
        found = self.decoded
        if found is None:
            return ""
        if found.cut:
            log.add("truncated", self.name, name=self.name, what="")
        if found.repaired:
            before, after = found.repaired
            log.add("text-repaired", self.name, name=self.name, before=before, after=after)
        return found.text


@dataclass(frozen=True, slots=True)
class InnerFile:
    """A file that lies inside another one.

    ``name`` is what the outer file calls it, with slashes; it is shown and never opened.
    ``problem`` says why its bytes could not be taken out.
    """

    name: str
    data: bytes = b""
    problem: UnusableSourceError | None = None


@dataclass(frozen=True, slots=True)
class Reader:
    """One kind of source. ``claims`` looks at the content and never raises.

    ``open`` raises UnusableSourceError when nothing can be read; what is wrong with a part of
    the source goes to the log. ``unpack`` gives the files inside a source that holds some, one
    after the other, so that they never stand in memory together. ``is_slow_to_claim``: it looks at
    the lines one by one, so it is asked only where no other reader is certain.
    """

    kind: str
    claims: Callable[[Source], Claim]
    open: Callable[[Source, FindingLog], tuple[Sheet, ...]]
    unpack: Callable[[Source, FindingLog], Iterator[InnerFile]] | None = None
    is_slow_to_claim: bool = False
