"""A table of words ready to be printed: what stands where, and what it is. No style, no format."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Role(StrEnum):
    """What a cell holds, which decides how it is printed."""

    NAME = "name"  # the first row of a model names it strongly
    REPEATED = "repeated"  # the same name in the rows below
    SIZE = "size"
    WORDS = "words"
    PUBLISHED = "published"
    CONVERTED = "converted"
    MISSING = "missing"


@dataclass(frozen=True, slots=True)
class TableCell:
    """One cell: its text, its role, and whether a question about it is open."""

    text: str
    role: Role = Role.WORDS
    open: bool = False


@dataclass(frozen=True, slots=True)
class TableColumn:
    """One column, ``width`` in characters.

    Neighbours with the same ``head`` share it when ``unit`` stands below it.
    """

    head: str
    width: float
    unit: str = ""


@dataclass(frozen=True, slots=True)
class TableRow:
    """One row of cells; ``starts_model`` where another model begins."""

    cells: tuple[TableCell, ...]
    starts_model: bool


@dataclass(frozen=True, slots=True)
class QuestionList:
    """The open questions as a table: heads, their widths in characters, rows of words."""

    title: str
    heads: tuple[str, ...]
    widths: tuple[float, ...]
    rows: tuple[tuple[str, ...], ...]


@dataclass(frozen=True, slots=True)
class Margins:
    """What stands above (left, middle, right) and below (left, right) every printed page.

    ``{today}``, ``{number}`` and ``{pages}`` stand for the day of printing, the page's number and
    how many there are; the writer puts in what its format has for them.
    """

    head: tuple[str, str, str]
    foot: tuple[str, str]


@dataclass(frozen=True, slots=True)
class InHouseTable:
    """The combined chart in words. ``frozen`` columns name the row and stay in sight."""

    sheet: str
    title: str
    subtitle: str
    key: str
    columns: tuple[TableColumn, ...]
    frozen: int
    rows: tuple[TableRow, ...]
    footnotes: tuple[str, ...]
    cautions: tuple[str, ...]
    margins: Margins
    questions: QuestionList | None
