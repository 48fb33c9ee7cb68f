"""A page or a document as a row of headings, sentences and tables, and which words go with which.

Bands and units often stand only in a heading or in a comment above a table. A heading holds
down to the next of its level; a sentence under it holds for its first table, or for all tables
when a deeper heading follows it.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from itertools import takewhile
from typing import Final

from charts.readers.source import MOST_TABLES, too_many
from charts.readers.title_lines import (
    MOST_NAMES,
    begins_a_part,
    is_title,
    only_names,
    said_of_several,
    start_of_part,
)
from charts.sheet import Addressing, Cell, Sheet

_LONGEST_WORDS: Final = 600
_MOST_WORDS: Final = 12
SET_OFF: Final = 8
"""The level of a line that is set off like a heading and is none: below every heading."""


@dataclass(frozen=True, slots=True)
class PageTable:
    """The cells of one table of a page, with the words that belong to it alone."""

    cells: Mapping[tuple[int, int], Cell]
    rows: int
    columns: int
    hidden_rows: frozenset[int] = frozenset()
    hidden_columns: frozenset[int] = frozenset()
    hidden_cells: frozenset[tuple[int, int]] = frozenset()
    context: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    inferred: bool = False
    row_widths: Mapping[int, int] = field(default_factory=dict)


class Part(StrEnum):
    """What stands in an outline."""

    HEADING = "heading"
    WORDS = "words"
    TABLE = "table"


@dataclass(frozen=True, slots=True)
class Entry:
    """One heading, sentence or table. ``level`` is that of a heading, 0 the page's own title.

    ``within`` are the parts of the page that it stands in, from the outermost, each of which holds
    a table. ``block`` is the same for lines of one paragraph, 0 where a reader knows none.
    ``announces`` marks a comment in the source: it stands before what it names.
    """

    part: Part
    text: str = ""
    level: int = 0
    hidden: bool = False
    table: PageTable | None = None
    within: tuple[int, ...] = ()
    block: int = 0
    announces: bool = False

    def speaks_of(self, table: Entry) -> bool:
        """Whether a table stands in the part of the page to which a sentence belongs."""
        return self.part is Part.HEADING or self.within == table.within[: len(self.within)]


@dataclass(slots=True)
class _Section:
    level: int
    words: list[Entry] = field(default_factory=list)
    used: bool = False  # a table stood in it
    frame: list[Entry] = field(default_factory=list)  # said above the name of an earlier table

    def above_a_table(self) -> list[Entry]:
        """What has been said for the next table, which ends what holds for it alone."""
        own = [one for one in self.words if one.part is Part.WORDS]
        named = [one for one in self.words if one.part is Part.HEADING]
        said, texts = self.words[-_MOST_WORDS:], [one.text for one in own]
        if self.frame and only_names(texts):
            said = [*named, *self.frame, *own][-_MOST_WORDS:]
        else:
            self.frame = own[: said_of_several(texts)]
        self.words, self.used = named, True
        return said

    def given_up_to(self, heading: Entry) -> list[Entry]:
        """The sentences that stand above ``heading`` in its own part of the page: they are its."""
        if not heading.within:
            return []
        given = [one for one in self.words if _is_above(one, heading)]
        self.words = [one for one in self.words if not _is_above(one, heading)]
        return given

    def bare_names(self, last: Entry) -> list[Entry]:
        """The names of a section of which nothing but ``last``, a name, has been said.

        ``Women's wetsuits`` and, in letters as large, ``All sizes in inches``: the second names
        no other part of the page, both name what follows.
        """
        bare = all(one.part is Part.HEADING for one in self.words)
        return self.words[-MOST_NAMES:] if bare and last is self.words[-1] else []


def sheets_of(entries: Sequence[Entry]) -> tuple[Sheet, ...]:
    """A sheet for every table of the outline, numbered in its order: ``table 2!C4``."""
    count = sum(entry.part is Part.TABLE for entry in entries)
    if count > MOST_TABLES:
        raise too_many(count)
    sections = [_Section(0)]
    found: list[Sheet] = []
    spoken_for = 0
    in_parts = _in_parts(entries)
    for at, entry in enumerate(entries):
        if entry.part is Part.HEADING:
            above = [one for section in sections for one in section.given_up_to(entry)]
            while len(sections) > 1 and sections[-1].level >= entry.level:
                ended = sections.pop()
                names = ended.bare_names(entries[at - 1])
                unused = ended.level == SET_OFF and not (ended.used or names)
                if unused and entry.level < SET_OFF:
                    sections[-1].words += ended.words  # no part of the page of its own
                above = [*(ended.words if unused and entry.level == SET_OFF else names), *above]
            own = _announced(entries, at, spoken_for) if found else []
            sections.append(_Section(entry.level, [*above, *own, entry]))
        elif entry.part is Part.WORDS and at >= spoken_for:
            sections[-1].words.append(entry)
        elif entry.table is not None:
            said = [one for section in sections[:-1] for one in section.words[-_MOST_WORDS:]]
            said += sections[-1].above_a_table()
            before = [one for one in said if one.speaks_of(entry)]
            spoken_for = _end_of_notes(entries, at + 1, in_parts=in_parts)
            after = entries[at + 1 : spoken_for][:_MOST_WORDS]
            found.append(_sheet(entry, entry.table, before, after, len(found) + 1))
    return tuple(found)


def _announced(entries: Sequence[Entry], at: int, start: int) -> list[Entry]:
    """The comments right before a heading, behind what belongs to the table before it."""
    own = takewhile(lambda one: one.announces, reversed(entries[start:at]))
    return [one for one in [*own][::-1] if one.within == entries[at].within]


def _sheet(
    entry: Entry, table: PageTable, before: Iterable[Entry], after: Iterable[Entry], number: int
) -> Sheet:
    return Sheet(
        name=f"table {number}",
        addressing=Addressing.TABLE,
        cells=table.cells,
        rows=table.rows,
        columns=table.columns,
        context=(*_said(before, hidden=entry.hidden), *table.context),
        notes=(*table.notes, *_said(after, hidden=entry.hidden)),
        hidden_rows=table.hidden_rows,
        hidden_columns=table.hidden_columns,
        hidden_cells=table.hidden_cells,
        hidden=entry.hidden,
        inferred=table.inferred,
        row_widths=table.row_widths,
        comments={at: cell.comment for at, cell in table.cells.items() if cell.comment},
    )


def _end_of_notes(entries: Sequence[Entry], start: int, *, in_parts: bool) -> int:
    """Where the sentences after a table end; a title just before the next one is not among them.

    Nor is a comment right before a heading, or before the next table.
    """
    end, table = start, entries[start - 1]
    while end < len(entries) and entries[end].part is Part.WORDS:
        if not entries[end].speaks_of(table):
            return end
        end += 1
    while start < end < len(entries) and entries[end - 1].announces:
        end -= 1
    before_table = end < len(entries) and entries[end].part is Part.TABLE
    if not before_table or end == start:
        return end
    part = start_of_part([one.text for one in entries[start:end]]) if in_parts else None
    if is_title(entries[end - 1].text):
        first = _first_of_paragraph(entries, start, end - 1)
        names = entries[first:end]
        whole = len(names) <= MOST_NAMES and all(is_title(one.text) for one in names)
        end = first if whole and names[0].block != table.block else end - 1
    return end if part is None else min(end, start + part)


def _in_parts(entries: Sequence[Entry]) -> bool:
    """Whether the first table stands below a name that is a plain line and no heading."""
    at = next((at for at, one in enumerate(entries) if one.part is Part.TABLE), 0)
    above = takewhile(lambda one: one.part is Part.WORDS, reversed(entries[:at]))
    return begins_a_part([one.text for one in above][::-1])


def _first_of_paragraph(entries: Sequence[Entry], start: int, last: int) -> int:
    """The first line of a paragraph: a name and what is said below it name the same table."""
    first = last
    while first > start and entries[first - 1].block == entries[last].block != 0:
        first -= 1
    return first


def _is_above(words: Entry, heading: Entry) -> bool:
    return words.part is Part.WORDS and words.within == heading.within


def _said(entries: Iterable[Entry], *, hidden: bool) -> tuple[str, ...]:
    return tuple(one.text[:_LONGEST_WORDS] for one in entries if hidden or not one.hidden)
