"""What a person said of a file, one answer as one sentence, with who said it and when. No Qt."""

from __future__ import annotations

from collections.abc import Iterator

from charts.answers import (
    Act,
    Answer,
    AsPrinted,
    Corrected,
    Edge,
    LeftOut,
    Meaning,
    Taken,
    TextForm,
    Turned,
)
from charts.day_words import day_words
from charts.schema import Basis, Definition, Dimension
from charts.wording import Wording

_SEPARATORS = {";": "semicolon", ",": "comma", "\t": "tab", "|": "bar"}


def act_words(act: Act, wording: Wording) -> str:
    """What an act says, with its place."""

    def say(code: str, **values: object) -> str:
        return wording.say("questions", f"given-{code}", **values)

    match act:
        case Taken(place=place, text=text):
            return say("taken" if text else "taken-plain", place=place, text=text)
        case AsPrinted(place=place):
            return say("as-printed", place=place)
        case Meaning():
            return _meaning_words(act, wording)
        case Corrected():
            return _corrected_words(act, wording)
        case LeftOut(part=part, place=place):
            return say(f"left-out-{part.value}", place=place)
        case Edge(place=place, becomes=becomes):
            return say("edge", place=place, becomes=becomes)
        case Turned(place=place):
            return say("turned", place=place)
        case TextForm():
            return _form_words(act, wording)


def said_words(answer: Answer, wording: Wording) -> str:
    """Who gave an answer and when: a person, or the maker's habits."""
    day = day_words(answer.on, wording) if answer.on else wording.say("season", "day-not-known")
    if answer.habit:
        return wording.say("questions", "given-by-habit", day=day)
    return wording.say("questions", "given-by", by=answer.by, day=day)


def place_of(act: Act) -> str:
    """Where in the source an act looks; "" for the whole file."""
    match act:
        case Corrected(cells):
            return cells[0].place
        case TextForm():
            return ""
    return act.place


def _meaning_words(act: Meaning, wording: Wording) -> str:
    between = wording.say("questions", "between-words")
    said = between.join(_meant(act, wording))
    headings = between.join(act.headings)
    code = f"given-meaning-{act.scope.value}"
    return wording.say("questions", code, place=act.place, headings=headings, said=said)


def _meant(act: Meaning, wording: Wording) -> Iterator[str]:
    """Each thing an act says of columns: the measure, where it is taken, the unit, whose it is."""
    if act.dimension is not None or act.definition is not None:
        yield _measure(act.dimension, act.definition, wording)
    if act.unit is not None:
        yield wording.say("season", f"unit-{act.unit.value}")
    if act.basis is Basis.UNKNOWN:
        yield wording.say("questions", "form-basis-unknown")
    elif act.basis is not None:
        yield wording.say("season", f"choice-{act.basis.value}")


def _measure(dimension: Dimension | None, definition: Definition | None, wording: Wording) -> str:
    name = wording.say("combined", f"dimension-{dimension.value}") if dimension else ""
    if definition is None or (definition is Definition.UNKNOWN and name):
        return name
    code = "form-basis-unknown" if definition is Definition.UNKNOWN else f"definition-{definition}"
    where = wording.say("questions", code)
    if not name:
        return where
    return wording.say("questions", "column-where", dimension=name, where=where)


def _corrected_words(act: Corrected, wording: Wording) -> str:
    first = act.cells[0]
    values = {"place": first.place, "printed": first.printed, "text": first.text}
    if len(act.cells) > 1:
        return wording.say("questions", "given-cells", count=len(act.cells), **values)
    code = "cell-blank" if not first.printed else "cell-out" if not first.text else "cell"
    return wording.say("questions", f"given-{code}", **values)


def _form_words(act: TextForm, wording: Wording) -> str:
    mark = _SEPARATORS.get(act.separator or "", "")
    parted = wording.say("questions", f"separator-{mark}") if mark else act.separator or ""
    code = "both" if act.encoding and parted else "letters" if act.encoding else "columns"
    return wording.say(
        "questions", f"given-form-{code}", encoding=act.encoding or "", separator=parted
    )
