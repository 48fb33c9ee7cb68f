"""What may be answered to a question: the acts ready made, each with the code of its words.

A page shows ``words(choice, wording)`` and, when it is chosen, hands
``answers(choice, finding, by, on)`` to the workspace. What needs typing (a cell that
reads otherwise, another edge) is made from ``charts.answers`` directly.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from datetime import date
from types import MappingProxyType
from typing import Final

from charts.answers import (
    Act,
    Answer,
    AsPrinted,
    CellReads,
    Corrected,
    LeftOut,
    Meaning,
    Part,
    Question,
    Scope,
    Taken,
)
from charts.answers_columns import JOINT
from charts.asked_values import printed_around, values_of
from charts.blocks_back import turned_back
from charts.choice import Choice, choice, settled_words, words
from charts.dimensions import find_units, read_heading
from charts.findings import DANGER, Candidate, Finding
from charts.grouping import GROUP
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension, FileReading

__all__ = [
    "Choice",
    "alike",
    "answers",
    "choices",
    "in_danger_order",
    "same_choice",
    "settled_words",
    "words",
]

Maker = Callable[[Finding, FileReading], Iterator[Choice]]
_CELL: Final = "cell"
_GIRTHS: Final = "girths"
"""The case of a question about three unknown headings together, told by their figures."""
_BASES: Final = (Basis.FINISHED, Basis.BODY, Basis.FLAT)


def choices(finding: Finding, reading: FileReading) -> tuple[Choice, ...]:
    """The acts that may answer ``finding``, the likeliest first; none for what is no question."""
    if finding.values.get("case") == GROUP:
        return tuple(_of_a_group(finding, reading))
    if not finding.candidates and finding.values.get("case") == _CELL:
        return tuple(_of_a_cell(finding, reading))
    maker = _MAKERS.get(finding.code, _of_a_cell)
    if finding.values.get("case") == _CELL:
        maker = _of_a_cell
    return tuple(maker(finding, reading))


def answers(chosen: Choice, finding: Finding, by: str, on: date) -> tuple[Answer, ...]:
    """The choice as signed answers to ``finding``, to be taken as one act."""
    return tuple(Answer(act, by, on, Question.of(finding)) for act in chosen.acts)


def alike(finding: Finding, reading: FileReading) -> tuple[Finding, ...]:
    """The questions of a file that are the same one at other places, ``finding`` among them.

    They ask the same of the same heading and offer the same kinds of reading.
    """
    return tuple(one for one in reading.findings if _kind(one) == _kind(finding))


def same_choice(chosen: Choice, finding: Finding, reading: FileReading) -> Choice | None:
    """The choice of the same words for an alike question; None when it is not offered there."""
    for other in choices(finding, reading):
        if (other.code, other.values) == (chosen.code, chosen.values):
            return other
    return None


def _kind(finding: Finding) -> tuple[object, ...]:
    whys = tuple(candidate.why for candidate in finding.candidates)
    said = (finding.values.get("heading", ""), finding.values.get("unit", ""))
    text = finding.values.get("text", "") if finding.values.get("case") == _CELL else ""
    return finding.code, finding.level, said, text, whys


def _columns(finding: Finding, reading: FileReading) -> dict[str, tuple[str, ...]]:
    """The headings a finding bears on, by the area of their table."""
    found: dict[str, dict[str, None]] = {}
    for chart, one in values_of(finding, reading):
        headings = found.setdefault(chart.place, {})
        headings |= dict.fromkeys(one.heading.split(JOINT))
    if not found:
        return {finding.place: (finding.values.get("heading", ""),)}
    return {place: tuple(headings) for place, headings in found.items()}


def _as_printed(finding: Finding, reading: FileReading) -> Choice:
    return choice("as-printed", *_of_print(finding, reading))


def _of_print(finding: Finding, reading: FileReading) -> Iterator[AsPrinted]:
    """The print confirmed at the place of the question, or of each of its parts."""
    printed = printed_around(finding, reading)
    for part in finding.parts or (finding,):
        one = Question.of(part)
        yield AsPrinted(one.place, one.code, one.heading, one.text, printed)


def _taken(finding: Finding, candidate: Candidate) -> Choice:
    act = Taken(finding.place, finding.code, candidate.why, candidate.text)
    return choice("take", act, candidate=candidate, text=candidate.text)


def _meaning(
    finding: Finding,
    reading: FileReading,
    *,
    unit: Unit | None = None,
    dimension: Dimension | None = None,
    definition: Definition | None = None,
    basis: Basis | None = None,
) -> tuple[Act, ...]:
    """What the columns of a question mean, one act a table."""
    return tuple(
        Meaning(Scope.COLUMN, place, headings, unit, dimension, definition, basis)
        for place, headings in _columns(finding, reading).items()
    )


def _of_a_cell(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    """Its readings; the print itself where no reading says what the print is."""
    for candidate in finding.candidates:
        yield _taken(finding, candidate)
    if not any(candidate.why == "as-printed" for candidate in finding.candidates):
        yield _as_printed(finding, reading)
    text = finding.values.get("text", "")
    if finding.values.get("case") == _CELL and text:
        yield choice("not-given", Corrected((CellReads(finding.place, text, ""),)))


def _of_a_group(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    """The readings that all its cells offer, each for all of them; or the print of all."""
    for candidate in finding.candidates:
        own = [_like(candidate, finding, part) for part in finding.parts]
        acts = [
            Taken(part.place, part.code, one.why, one.text)
            for part, one in zip(finding.parts, own, strict=True)
        ]
        yield choice("take-all", *acts, candidate=candidate, text=candidate.text)
    if not any(candidate.why == "as-printed" for candidate in finding.candidates):
        yield choice("as-printed-all", *_of_print(finding, reading))


def _like(candidate: Candidate, finding: Finding, part: Finding) -> Candidate:
    """The reading of one part that stands where ``candidate`` stands among those of its reason."""
    alike_there = [one for one in finding.candidates if one.why == candidate.why]
    alike_here = [one for one in part.candidates if one.why == candidate.why]
    return alike_here[min(alike_there.index(candidate), len(alike_here) - 1)]


def _unit(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    for candidate in finding.candidates:
        for unit in find_units(candidate.text)[:1]:
            acts = _meaning(finding, reading, unit=unit)
            yield choice("unit", *acts, unit=unit.value, text=candidate.text)


def _swapped(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    """Each column of the table in the unit that fits it, or each as its heading says."""
    del reading
    for candidate in finding.candidates:
        if candidate.why in ("column-fits", "as-printed"):
            act = Taken(finding.place, finding.code, candidate.why, candidate.text)
            case = finding.values.get("case", "")
            what = case if case in ("row", "months") else candidate.why
            yield choice(f"swapped-{what}", act, text=candidate.text)


def _date(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    del reading
    for candidate in finding.candidates:
        if candidate.why == "as-printed":
            reads = Corrected((CellReads(finding.place, candidate.text, candidate.text),))
            yield choice("as-printed", reads)
        else:
            yield _taken(finding, candidate)


def _dimension(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    for candidate in finding.candidates:
        if candidate.text in set(Dimension):
            acts = _meaning(finding, reading, dimension=Dimension(candidate.text))
            yield choice("dimension", *acts, dimension=candidate.text)
    yield from _none_of_them(finding, reading)


def _near(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    """An unknown heading: the known ones it resembles, or no measure of ours."""
    if finding.values.get("case") == _GIRTHS:
        yield _as_printed(finding, reading)
    for candidate in finding.candidates:
        meant = read_heading(candidate.text)
        if meant.dimension is not None:
            acts = _meaning(
                finding, reading, dimension=meant.dimension, definition=meant.definition
            )
            yield choice("heading", *acts, text=candidate.text, dimension=meant.dimension.value)
    yield from _none_of_them(finding, reading)


def _none_of_them(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    yield choice("other-measure", *_meaning(finding, reading, dimension=Dimension.OTHER))
    left = [
        LeftOut(Part.COLUMN, part.place, part.values.get("heading", ""))
        for part in finding.parts or (finding,)
    ]
    yield choice("leave-out-column", *left)


def _basis(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    for basis in _BASES:
        yield choice(basis.value, *_meaning(finding, reading, basis=basis))


def _halves(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    yield choice(Basis.FLAT.value, *_meaning(finding, reading, basis=Basis.FLAT))
    yield _as_printed(finding, reading)


def _label(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    """A label that may be mistyped: what it was meant to be, or just what it is."""
    text = finding.values.get("text", "")
    place = finding.place
    for candidate in finding.candidates:
        reads = Corrected((CellReads(place, text, candidate.text),))
        yield choice("label", reads, text=candidate.text)
    yield _as_printed(finding, reading)


def _figure(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    """A figure off its column: its likely readings in the unit they are given in, or the print."""
    text = finding.values.get("text", "")
    for candidate in finding.candidates:
        other = f"{candidate.text} {candidate.unit or ''}".strip()
        reads = Corrected((CellReads(finding.place, text, other),))
        yield choice("reads", reads, text=other)
    yield _as_printed(finding, reading)


def _block(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    back = turned_back([one for _, one in values_of(finding, reading)])
    if back is not None:
        yield choice("turn-back", back)
    yield _as_printed(finding, reading)


def _unused(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    yield from _none_of_them(finding, reading)


def _no_table(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    del finding, reading
    yield choice("not-a-chart", LeftOut(Part.FILE))


def _confirmed(finding: Finding, reading: FileReading) -> Iterator[Choice]:
    yield _as_printed(finding, reading)


_MAKERS: Final[Mapping[str, Maker]] = MappingProxyType(
    {
        "unit-missing": _unit,
        "units-swapped": _swapped,
        "was-a-date": _date,
        "heading-two-readings": _dimension,
        "heading-unknown": _near,
        "basis-doubtful": _basis,
        "laid-flat": _halves,
        "label-mistyped": _label,
        "step-broken": _figure,
        "rotated": _block,
        "column-unused": _unused,
        "no-table": _no_table,
        "units-disagree": _of_a_cell,
        "text-order": _confirmed,
        "label-repeated": _confirmed,
        "order-broken": _confirmed,
        "columns-shifted": _confirmed,
    }
)


def in_danger_order(findings: Sequence[Finding]) -> list[Finding]:
    """The findings, the most dangerous kind of question first, else in their order."""
    return sorted(findings, key=lambda finding: DANGER.get(finding.code, len(DANGER)))
