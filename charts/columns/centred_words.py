"""Words for whom the sizes are that stand beside the middle or the end of their rows, not merged.

`` | S``, ``Women | M``, `` | L``, `` | S``, ``Men | M``: read downwards, each word would lose its
first rows to the word before. Where the sizes begin anew, so does its group.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from charts.columns.words import Surroundings
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look


@dataclass(frozen=True, slots=True)
class Held:
    """The word that holds for each row, and the question where it may hold for other rows."""

    words: tuple[str | None, ...]
    findings: tuple[str, ...] = ()


def held_in_rows(fields: Sequence[Field], around: Surroundings) -> Held:
    """The words of the first of ``fields``: down to the next, or where the sizes begin anew.

    A word beside the first row is at the head of its group, as are the others then.
    """
    labels, lines = around.table.of(FieldKind.LABEL), around.table.lines
    down = filled_down(fields, lines)
    if not fields:
        return Held(down)
    printed = [cell[0].text if cell else None for cell in fields[0].cells]
    rows = [number for number, word in enumerate(printed) if word]
    starts = _starts(labels, lines)
    if not rows or not rows[0] or not labels or set(rows) <= set(starts):
        return Held(down)
    ends = [*starts[1:], lines]
    groups = [
        (start, end, {word for word in printed[start:end] if word})
        for start, end in zip(starts, ends, strict=True)
    ]
    if any(len(said) != 1 for _, _, said in groups):
        return Held(down, _asked(fields[0], around))
    spread = [word for start, end, said in groups for word in said for _ in range(start, end)]
    return Held(tuple(spread), _asked(fields[0], around))


def filled_down(fields: Sequence[Field], lines: int) -> tuple[str | None, ...]:
    """A band or a model in a column of its own holds down to the next one."""
    if not fields:
        return (None,) * lines
    held: str | None = None
    found: list[str | None] = []
    for cell in fields[0].cells:
        held = cell[0].text if cell else held
        found.append(held)
    return tuple(found)


def _asked(field: Field, around: Surroundings) -> tuple[str, ...]:
    first = next(cell[0] for cell in field.cells if cell)
    key = f"anew {around.table.area}"
    place = around.place(first.row, first.column)
    return (around.log.add("columns-shifted", place, key=key, case="anew"),)


def _starts(labels: Sequence[Field], lines: int) -> list[int]:
    """The rows in which sizes begin anew: a name again, a step back, or a name of another kind."""
    whole = [one for one in labels if all(one.cells)]
    if not whole:
        return [0]
    names = [cell[0].text.strip().casefold() for cell in whole[0].cells]
    steps = [_step(one, other) for one, other in pairwise(names)]
    onward = -1 if steps.count(-1) > steps.count(1) else 1
    starts = [0]
    for number in range(1, lines):
        again = names[number] in names[starts[-1] : number]
        if again or steps[number - 1] not in {0, onward}:
            starts.append(number)
    return starts


def _step(before: str, name: str) -> int | None:
    """1 to a larger size, -1 to a smaller one, 0 where nothing tells, None to another kind."""
    one, other = look(before).label, look(name).label
    if one is None or other is None or one.order == other.order:
        return 0
    if one.order[:2] != other.order[:2]:
        return None
    return 1 if one.order < other.order else -1
