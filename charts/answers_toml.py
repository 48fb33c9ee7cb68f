"""Answers as TOML that a person can read, and back again unchanged."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from enum import StrEnum
from typing import ClassVar, Final

from charts.answers import (
    Act,
    Answer,
    AsPrinted,
    CellReads,
    Corrected,
    Edge,
    LeftOut,
    Meaning,
    Part,
    Question,
    Scope,
    Taken,
    TextForm,
    Turned,
)
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension
from charts.toml_text import Entries, TomlFileError
from charts.toml_writing import Plain, table_text

FORMAT_LINE: Final = "format = 1\n\n"


class AnswersFileError(TomlFileError):
    """A file of answers, habits or states that cannot be used, with the line and the reason."""

    topic: ClassVar[str] = "season"


class ActKind(StrEnum):
    """The name of each act in a file."""

    TAKEN = "taken"
    AS_PRINTED = "as printed"
    MEANING = "meaning"
    CORRECTED = "corrected"
    LEFT_OUT = "left out"
    EDGE = "edge"
    TURNED = "turned"
    TEXT_FORM = "text form"


def write_answers(answers: Sequence[Answer]) -> str:
    """A whole file of answers."""
    return FORMAT_LINE + "".join(answer_text(answer) for answer in answers)


def read_answers(text: str) -> tuple[Answer, ...]:
    """The answers of a whole file.

    Raises AnswersFileError with the line and the reason: no TOML, a newer format, an unknown key.
    """
    file = Entries.of_file(text, AnswersFileError)
    found = tuple(read_answer(entry) for entry in file.tables("answer"))
    file.close()
    return found


def answer_text(answer: Answer) -> str:
    """One ``[[answer]]``."""
    about = answer.about
    values: dict[str, Plain | None] = {"by": answer.by, "on": answer.on}
    if about is not None:
        asked = {"code": about.code, "place": about.place}
        more = {"heading": about.heading, "text": about.text}
        values["about"] = asked | {key: text for key, text in more.items() if text}
    values["habit"] = answer.habit or None
    return table_text("[[answer]]", act_values(answer.act) | values)


def read_answer(entry: Entries) -> Answer:
    """One ``[[answer]]`` back."""
    act = read_act(entry)
    about = entry.table("about")
    question = None
    if len(about):
        question = Question(*(about.exact(key) for key in ("code", "place", "heading", "text")))
        about.close()
    answer = Answer(act, entry.exact("by"), entry.day("on"), question, _habit(entry))
    entry.close()
    return answer


def _habit(entry: Entries) -> int:
    number = entry.number("habit")
    if number is not None and number != int(number):
        raise entry.wrong("habit", "not-a-number")
    return int(number or 0)


def act_values(act: Act) -> dict[str, Plain | None]:
    """The lines of an act."""
    match act:
        case Taken():
            return {
                "act": "taken",
                "place": act.place,
                "code": act.code,
                "why": act.why,
                "text": act.text,
            }
        case AsPrinted():
            return {
                "act": "as printed",
                "place": act.place,
                "code": act.code,
                "heading": act.heading,
                "text": act.text,
                "printed": act.printed,
            }
        case Meaning():
            return _meaning_values(act)
        case Corrected(cells):
            return {"act": "corrected", "cells": [_cell_values(cell) for cell in cells]}
        case LeftOut():
            return {"act": "left out", "part": act.part, "place": act.place, "text": act.text}
        case Edge(place, becomes):
            return {"act": "edge", "place": place, "becomes": becomes}
        case Turned(place):
            return {"act": "turned", "place": place}
        case TextForm(encoding, separator):
            return {"act": "text form", "encoding": encoding, "separator": separator}


def _meaning_values(act: Meaning) -> dict[str, Plain | None]:
    return {
        "act": "meaning",
        "scope": act.scope,
        "place": act.place,
        "headings": act.headings,
        "unit": act.unit,
        "dimension": act.dimension,
        "definition": act.definition,
        "basis": act.basis,
    }


def _cell_values(cell: CellReads) -> Mapping[str, Plain]:
    return {"place": cell.place, "printed": cell.printed, "text": cell.text}


def read_act(entry: Entries) -> Act:
    """The act that an entry's lines give."""
    kind = entry.choice("act", ActKind)
    if kind is None:
        raise entry.wrong("act", "value-missing")
    return _READERS[kind](entry)


def _taken(entry: Entries) -> Act:
    return Taken(*(entry.exact(key) for key in ("place", "code", "why", "text")))


def _as_printed(entry: Entries) -> Act:
    place, code, heading, text = (entry.exact(key) for key in ("place", "code", "heading", "text"))
    return AsPrinted(place, code, heading, text, entry.words("printed"))


def _meaning(entry: Entries) -> Act:
    scope = entry.choice("scope", Scope)
    if scope is None:
        raise entry.wrong("scope", "value-missing")
    return Meaning(
        scope,
        entry.exact("place"),
        entry.words("headings"),
        entry.choice("unit", Unit),
        entry.choice("dimension", Dimension),
        entry.choice("definition", Definition),
        entry.choice("basis", Basis),
    )


def _corrected(entry: Entries) -> Act:
    cells = []
    for cell in entry.tables("cells"):
        cells.append(CellReads(*(cell.exact(key) for key in ("place", "printed", "text"))))
        cell.close()
    if not cells:
        raise entry.wrong("cells", "value-missing")
    return Corrected(tuple(cells))


def _left_out(entry: Entries) -> Act:
    part = entry.choice("part", Part)
    if part is None:
        raise entry.wrong("part", "value-missing")
    return LeftOut(part, entry.exact("place"), entry.exact("text"))


def _edge(entry: Entries) -> Act:
    return Edge(entry.exact("place"), entry.exact("becomes"))


def _turned(entry: Entries) -> Act:
    return Turned(entry.exact("place"))


def _text_form(entry: Entries) -> Act:
    return TextForm(entry.exact("encoding") or None, entry.exact("separator") or None)


_READERS: Final = {
    ActKind.TAKEN: _taken,
    ActKind.AS_PRINTED: _as_printed,
    ActKind.MEANING: _meaning,
    ActKind.CORRECTED: _corrected,
    ActKind.LEFT_OUT: _left_out,
    ActKind.EDGE: _edge,
    ActKind.TURNED: _turned,
    ActKind.TEXT_FORM: _text_form,
}
