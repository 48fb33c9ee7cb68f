"""What a person may say about a source, as frozen values. Nothing of the source is changed.

The doors, and where they are:

    read_bytes(data, name, folder, answers=...) -> FileReading       charts.importer
        a new reading: what was answered stands as settled (``Finding.settled``: what, text, by,
        on, habit; its level is then a note), nothing else is different. A cell that was read
        otherwise keeps its print in ``Range.published`` and says so in ``Range.corrected``
    choices(finding, reading) -> tuple[Choice, ...]                   charts.choices
        the acts that may be offered for a question, ready made; ``words(choice, wording)`` is
        what a person reads; ``answers(choice, finding, by, on)`` signs the acts
    alike(finding, reading) -> tuple[Finding, ...]                    charts.choices
        the equal questions of a file; ``same_choice(choice, other, reading)`` for each of them
    settled_words(finding, wording)                                   charts.choices
    in_danger_order(findings)                                         charts.choices
    regions(data, name, folder, answers) -> tuple[SheetRegions, ...]  charts.regions
        each sheet as it came, and what each part of it was taken for; ``words(region, wording)``
    write_answers(answers) -> str, read_answers(text)                 charts.answers_toml

What needs typing is made from the acts below: ``Corrected((CellReads(place, printed, text),))``
for a cell or a label, ``Edge(area, becomes)``, ``Turned(area)``, ``LeftOut(part, place)``,
``Meaning(scope, place, headings, unit=..., basis=...)``, ``TextForm(encoding, separator)``; each
is signed as ``Answer(act, by, on, about)``, where ``about`` is ``Question.of(finding)`` if it was
given to a question. ``place`` is always a place as findings, ranges and charts give it.

One act of a person is a sequence of answers, taken together and undone together:

    workspace.answer(file, answers)                 one step; undo and redo restore equal readings
    workspace.take(workspace.answered({file: answers, ...}))   the same, the pure part by itself
    workspace.withdraw(file, answers)               takes answers back whenever they were given
    workspace.approve(file, by, on, chart="")       ``chart`` is ``key_of(chart)``, "" the file
    workspace.keep_aside(file, by, on, chart="", why=""), workspace.reopen(file, chart="")
    workspace.sent(file, questions, on), workspace.replied(file, question, text, by, on)
    workspace.states() -> tuple[FileState, ...], workspace.state(file), workspace.stage(file, f)
    workspace.load(sources, progress, known=workspace.known()), then workspace.take(loaded)

``on_change`` is told "charts" when readings differ and "season" when marks, answers or letters do.

Answers speak of places and printed texts, never of what was understood, so that an answer that
no longer fits its file is noticed: it is said in a note (``answer-not-applied``) and has no effect.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import TypeVar

from charts.findings import Finding, Settled
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension, UnitFrom


class Scope(StrEnum):
    """How far a word about columns reaches. The nearer word holds: cell, heading, table, file."""

    COLUMN = "column"
    TABLE = "table"
    FILE = "file"


class Part(StrEnum):
    """What can be left out."""

    ROW = "row"
    COLUMN = "column"
    TABLE = "table"
    SHEET = "sheet"
    FILE = "file"


@dataclass(frozen=True, slots=True)
class Taken:
    """One of the readings that a question offered. ``why`` and ``text`` are the candidate's."""

    place: str
    code: str
    why: str
    text: str = ""


@dataclass(frozen=True, slots=True)
class AsPrinted:
    """What is printed is right: the question is settled and nothing is changed.

    ``heading`` and ``text`` are the question's own, ``printed`` what stands in the whole columns
    that it bears on: where another figure stands there by now it is another question.
    """

    place: str
    code: str
    heading: str = ""
    text: str = ""
    printed: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Meaning:
    """What columns mean. ``place`` is a table's area or a heading's cell, "" for the file.

    COLUMN speaks of the columns under ``headings`` (as printed) and goes before what is printed
    there. TABLE and FILE speak where nothing nearer is printed, of ``dimension`` only if given;
    FILE yields to titles and notes too.
    """

    scope: Scope
    place: str = ""
    headings: tuple[str, ...] = ()
    unit: Unit | None = None
    dimension: Dimension | None = None
    definition: Definition | None = None
    basis: Basis | None = None


@dataclass(frozen=True, slots=True)
class CellReads:
    """One cell: what is printed there ("" for a blank one) and what it is read as."""

    place: str
    printed: str
    text: str


@dataclass(frozen=True, slots=True)
class Corrected:
    """Printed cells or labels of one sheet that read otherwise. The print stays, struck through.

    Either all of them read so or none: half of a block turned back would be worse than the block.
    """

    cells: tuple[CellReads, ...]


@dataclass(frozen=True, slots=True)
class LeftOut:
    """A part of the source that is no part of its charts.

    ``place`` is any cell of the row, the cells of a column (or its heading), a table's area, or a
    sheet's name; ``text`` is what its first cell prints, "" when it does not matter.
    """

    part: Part
    place: str = ""
    text: str = ""


@dataclass(frozen=True, slots=True)
class Edge:
    """The table found at ``place`` has other edges: ``becomes`` is its true area."""

    place: str
    becomes: str


@dataclass(frozen=True, slots=True)
class Turned:
    """The table at ``place`` is to be read the other way: sizes across become sizes down."""

    place: str


@dataclass(frozen=True, slots=True)
class TextForm:
    """How a text file is written, where that was told wrongly. None leaves it to the reader."""

    encoding: str | None = None
    separator: str | None = None


Act = Taken | AsPrinted | Meaning | Corrected | LeftOut | Edge | Turned | TextForm
A = TypeVar("A", Taken, AsPrinted, Meaning, Corrected, LeftOut, Edge, Turned, TextForm)


@dataclass(frozen=True, slots=True)
class Question:
    """A question by what it is about, the same in every reading of the same file."""

    code: str
    place: str
    heading: str = ""
    text: str = ""

    @classmethod
    def of(cls, finding: Finding) -> Question:
        """The question that ``finding`` asks."""
        values = finding.values
        return cls(finding.code, finding.place, values.get("heading", ""), values.get("text", ""))


@dataclass(frozen=True, slots=True)
class Answer:
    """One thing said: the act, who said it and when, and the question it was given to.

    ``habit`` is the version of the supplier's habits that gave it, 0 when a person did.
    """

    act: Act
    by: str = ""
    on: date | None = None
    about: Question | None = None
    habit: int = 0

    @property
    def source(self) -> UnitFrom:
        """Where a unit comes from that this answer gives."""
        return UnitFrom.HABIT if self.habit else UnitFrom.PERSON

    def settled(self) -> Settled:
        """How this answer closes a question."""
        what, text = _said(self.act)
        why = self.act.why if isinstance(self.act, Taken) else ""
        return Settled(what, text, self.by, self.on, self.habit, why)


def _said(act: Act) -> tuple[str, str]:
    """The kind of an act and its own words, for the list of settled questions."""
    match act:
        case Taken(text=text):
            return "taken", text
        case AsPrinted():
            return "as-printed", ""
        case Meaning():
            said = (act.dimension, act.definition, act.basis, act.unit)
            return "meaning", " ".join(each.value for each in said if each is not None)
        case Corrected(cells):
            return "corrected", ", ".join(cell.text for cell in cells)
        case LeftOut(part=part):
            return "left-out", part.value
        case Edge(becomes=becomes):
            return "edge", becomes
        case Turned():
            return "turned", ""
        case TextForm(encoding, separator):
            return "text-form", " ".join(each for each in (encoding, separator) if each)
