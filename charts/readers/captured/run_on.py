"""Rows whose fields ran on: ``SizeXSSMLXL`` over ``Chest (in.)26.5 - 2727 - 28``.

Sizes are parted where letters make rising sizes in one way only. Ranges are parted where each
begins with the figure that the last ended with, and there are as many as sizes. A person compares
them all the same; where a measure cannot be parted so, no line of the block is read.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from decimal import Decimal
from itertools import pairwise
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.value_runs import Named, labels_in, named_values, rises
from charts.schema import Dimension

_FEWEST: Final = 3
_MOST_ROWS: Final = 40
_LONGEST: Final = 300
_LONGEST_LABEL: Final = 6
_RUN: Final = re.compile(r"(?P<name>[^\d]{0,30}[^\W\d_A-Z]\s?)?(?P<run>[SMLX2-9]{3,30})")
_LABEL: Final = re.compile(r"[2-9]XS|[2-9]XL|X{0,5}[SL]|M")
_RAN_ON: Final = re.compile(r"(?P<name>[^\W\d_][^\d]{0,60}(?:[^\W\d_]|[)\].:]))(?P<body>\d.*)")
_JOINT: Final = re.compile(r"\s*[-–—]\s*")
_FIGURE: Final = re.compile(r"\d{2,3}(?:[.,]\d{1,2})?")


@dataclass(slots=True)
class _Walk:
    """What has been put together so far.

    ``parted`` counts rows whose fields ran on, ``whole`` holds lines that nothing parts, ``lost``
    tells that one of these gives a measure of the body.
    """

    count: int
    rows: list[list[LineCell]] = field(default_factory=list)
    whole: list[Line] = field(default_factory=list)
    parted: int = 0
    lost: bool = False
    used: int = 1


def run_on_table(lines: Sequence[Line]) -> LineTable | None:
    """The table whose sizes ``lines`` begin with; None where neither sizes nor rows ran on."""
    if not lines or len(lines[0].text) > _LONGEST:
        return None
    glued = glued_labels(lines[0].text)
    sizes = glued or labels_in(lines[0].text)
    if sizes is None or len(sizes.parts) < _FEWEST:
        return None
    walk = _Walk(len(sizes.parts))
    for at, line in enumerate(lines[1:_MOST_ROWS], start=2):
        if line.text.strip():
            if not _take(walk, line):
                break
            walk.used = at
    if not walk.parted and (glued is None or not (walk.rows or walk.lost)):
        return None
    if walk.lost:
        filled = [one for one in lines[: walk.used] if one.text.strip()]
        return LineTable([[LineCell(one.text, one.number)] for one in filled], walk.used, lost=True)
    above = [[LineCell(one.text.strip(), one.number)] for one in walk.whole]
    head = [LineCell(text, lines[0].number) for text in (sizes.name, *sizes.parts)]
    return LineTable([*above, head, *walk.rows], walk.used, inferred=True)


def _take(walk: _Walk, line: Line) -> bool:
    """Whether a line is one of the block's: parted already, ran on, or beyond parting."""
    text = line.text.strip()
    named = named_values(text)
    if named is not None and named.name and len(named.parts) == walk.count:
        walk.rows.append([LineCell(one, line.number) for one in (named.name, *named.parts)])
        return True
    found = _RAN_ON.fullmatch(text) if len(text) <= _LONGEST else None
    if found is None:
        return False
    ranges = ranges_that_ran_on(found["body"], walk.count)
    if ranges:
        walk.parted += 1
        walk.rows.append([LineCell(one, line.number) for one in (found["name"], *ranges)])
        return True
    heading = read_heading(found["name"])
    measures = heading.role is Role.MEASURE and heading.dimension is not Dimension.AGE
    walk.lost = walk.lost or measures
    walk.whole.append(line)
    return True


def ranges_that_ran_on(text: str, count: int) -> tuple[str, ...]:
    """``48 - 5252 - 56`` as 48-52 and 52-56; none where a range begins with another figure."""
    first, *inner, last = _JOINT.split(text.strip()) if _JOINT.search(text) else ("",) * 2
    ends = [one[: len(one) // 2] for one in inner]
    if len(inner) != count - 1 or any(end * 2 != one for end, one in zip(ends, inner, strict=True)):
        return ()
    figures = [first, *ends, last]
    if not all(map(_FIGURE.fullmatch, figures)):
        return ()
    numbers = [Decimal(one.replace(",", ".")) for one in figures]
    rising = all(low < high for low, high in pairwise(numbers))
    return tuple(f"{low} - {high}" for low, high in pairwise(figures)) if rising else ()


def glued_labels(text: str) -> Named | None:
    """``SizeXSSMLXL``: a word for sizes or none, and sizes that can be parted in one way only."""
    found = _RUN.fullmatch(text.strip())
    if found is None:
        return None
    name = (found["name"] or "").strip()
    if name and read_heading(name).role is not Role.LABEL:
        return None
    ways = [way for way in _ways(found["run"]) if len(way) >= _FEWEST and rises(way)]
    return Named(name, ways[0]) if len(ways) == 1 else None


def _ways(run: str) -> Iterator[tuple[str, ...]]:
    """All ways to cut ``run`` into sizes."""
    if not run:
        yield ()
    for end in range(1, min(len(run), _LONGEST_LABEL) + 1):
        if _LABEL.fullmatch(run, 0, end):
            yield from ((run[:end], *rest) for rest in _ways(run[end:]))
