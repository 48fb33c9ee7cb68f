"""A table before and after damage: what of its expectation stands where in its text."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from random import Random
from typing import Any, Final

from judging import Expected, Json, Verdict
from text_blocks import Block, Cell, blocks_of

from charts.cell_text import clean

BASES: Final = ["body", "unknown", "finished", "flat"]

Entry = dict[str, Any]


@dataclass(frozen=True, slots=True)
class Case:
    """A table that is read rightly, before it is damaged."""

    expected: Expected
    text: str
    suffix: str
    verdict: Verdict
    charts: int
    also: Json

    def blocks(self) -> tuple[Block, ...]:
        """Its plain tables."""
        return blocks_of(self.text, self.suffix)

    def entries(self) -> list[Entry]:
        """Its expectation, where any question is welcome and no place is told."""
        dropped = ("place", "also")
        return [
            {**{key: one[key] for key in one if key not in dropped}, "ask": "may"}
            for one in self.expected.entries
        ]

    def labels(self) -> set[str]:
        """The labels of its sizes."""
        return {str(one.value.label or "") for one in self.verdict.judged if one.value is not None}

    def sideways(self, block: Block) -> bool:
        """Whether the sizes stand in the heading, so that a column is a size."""
        return len({cell.text for cell in block.head} & self.labels()) > 1

    def under(self, heading: str) -> set[int]:
        """Which entries were read under ``heading``."""
        due = clean(heading).lower()
        if len(due) < 3:
            return set()
        return {
            at
            for at, one in enumerate(self.verdict.judged)
            if one.value is not None
            and due != str(one.value.label).lower()
            and due in clean(str(one.value.reading["heading"] or "")).lower()
        }

    def in_two_units(self, hit: set[int]) -> bool:
        """Whether an entry is printed twice, so that its second unit stays when one is damaged."""
        values = [self.verdict.judged[at].value for at in hit]
        return any(one is not None and one.reading["also_published"] for one in values)

    def in_row(self, row: Sequence[Cell]) -> set[int]:
        """Which entries stand in a row of cells: its label and its figures."""
        texts = {clean(cell.text) for cell in row}
        return {
            at
            for at, one in enumerate(self.verdict.judged)
            if one.value is not None
            and clean(str(one.value.reading["published"])) in texts
            and clean(str(one.value.label or "")) in texts
        }


@dataclass(frozen=True, slots=True)
class Damaged:
    """The damaged text, what is right now, and what was done."""

    text: str
    entries: list[Entry]
    what: str


def seen(case: Case, at: int) -> bool:
    """Whether a place of the text is read by a person: it is not inside the marks of a page."""
    return case.suffix != ".html" or case.text.rfind("<", 0, at) <= case.text.rfind(">", 0, at)


def shuffled(several: Sequence[Any], chance: Random) -> Iterator[Any]:
    """Several things in an order that chance decides."""
    return iter(chance.sample(list(several), len(several)))


def listed(one: Any) -> list[Any]:
    """What may be one thing or a list of them, as a list."""
    return list(one) if isinstance(one, list) else [one]


def dimensions(case: Case, hit: set[int]) -> set[str]:
    """The dimensions that entries were read as."""
    return {value.reading["dimension"] for at in hit if (value := case.verdict.judged[at].value)}


def published_at(case: Case, at: int) -> str:
    """What is printed for an entry."""
    value = case.verdict.judged[at].value
    return str(value.reading["published"]) if value else ""


def label_of(case: Case, at: int) -> str:
    """The label an entry was read under."""
    value = case.verdict.judged[at].value
    return clean(str(value.label or "")) if value else ""


def other_labels(case: Case, at: int) -> list[str]:
    """What else the size of an entry is called."""
    value = case.verdict.judged[at].value
    return [] if value is None else list(case.also.get(value.label or "", ()))


def cut(case: Case, cell: Cell) -> str:
    """A cell as it stands in the text, marks included."""
    return case.text[cell.start : cell.end]


def row_words(row: Sequence[Cell]) -> str:
    """A row for a person to read."""
    return " | ".join(cell.text for cell in row)
