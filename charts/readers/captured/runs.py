"""Sizes in one line, and for each measure as many values as there are sizes, however broken up.

``S/M L XL`` over ``26 - 32" 33 - 38" 39-44"``; a name on lines of its own and its values on the
next; or one value a line, in one unit or alternately in two. Counts must agree everywhere.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.first_numbers import LINES_LOOKED_AT, ages_first, numbers_first
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.names_below import begin_names, names_below
from charts.readers.captured.odd_cells import may_be_range, row_with_odd_cells
from charts.readers.captured.run_units import both_ways, other_unit, paired
from charts.readers.captured.value_runs import (
    counted_values,
    holds_place,
    is_size,
    labels_in,
    values_in,
)

_MOST_NAME_LINES: Final = 3
_LONGEST_NAME: Final = 40
_LINES_OF_AGES: Final = 12
_AGE: Final = re.compile(
    r"\d{1,2}(?:\s?[-–/]\s?\d{1,2})? (?:years|yrs|jahre|ans|años|anni|anos|jaar|år|lat)\b",
    re.IGNORECASE,
)
_AGES: Final = re.compile(
    rf"(?P<name>\D{{2,20}}?) (?P<ages>{_AGE.pattern}(?: {_AGE.pattern})+)", re.IGNORECASE
)
_CUP: Final = re.compile(r"[A-K]{1,2}(?:[-/][A-K]{1,2})?")


@dataclass(slots=True)
class _Walk:
    """What has been put together so far; ``used`` counts the lines that are spoken for."""

    lines: Sequence[Line]
    count: int
    rows: list[list[LineCell]]
    used: int
    names: list[Line] = field(default_factory=list)
    valued: int = 0
    inferred: bool = False


def run_table(lines: Sequence[Line]) -> LineTable | None:
    """The table whose sizes ``lines`` begin with; None when no line of values has as many."""
    sizes = (labels_in(lines[0].text) or ages_first(lines)) if lines else None
    guessed = numbers_first(lines) if sizes is None else None
    sizes = sizes or guessed
    if sizes is None:
        return None
    head = [LineCell(text, lines[0].number) for text in (sizes.name, *sizes.parts)]
    walk = _Walk(lines, len(sizes.parts), [head], 1)
    at = 1
    while (step := _step(walk, at)) > 0:
        at += step
    if not walk.valued:
        return None
    _take_heads_below(walk)
    return LineTable(walk.rows, walk.used, inferred=walk.inferred or guessed is not None)


def _take_heads_below(walk: _Walk) -> None:
    """``SIZE`` and ``CHEST (CM)`` on the lines below sizes and figures that have no names.

    Below one row of figures the word for sizes has to stand first.
    """
    rows = [row for row in walk.rows if len(row) > 1]
    if any(row[0].text for row in rows) or len(rows) != walk.valued + 1:
        return
    names = names_below(walk.lines, walk.used, walk.valued)
    if not names or (walk.valued == 1 and not names[0].text):
        # the headings of the next table, or of figures that were lost
        lone = walk.valued == 1 and begin_names(walk.lines[walk.used :])
        walk.inferred = walk.inferred or lone
        return
    for row, line in zip(rows, names, strict=True):
        row[0] = LineCell(line.text.strip(), line.number)
    walk.used = walk.lines.index(names[-1]) + 1
    walk.inferred = True


def run_below_sizes(lines: Sequence[Line]) -> LineTable | None:
    """The same with the sizes one a line: ``Size``, ``S``, ``M``, then a name and its values."""
    filled = [line for line in lines[:LINES_LOOKED_AT] if line.text.strip()]
    texts = [line.text.strip() for line in filled]
    first = next((at for at, text in enumerate(texts) if is_size(text)), len(texts))
    end = next((at for at in range(first, len(texts)) if not is_size(texts[at])), len(texts))
    if first > 1 or end - first < 2 or len(set(texts[first:end])) < end - first:
        return None
    if texts[:first] and read_heading(texts[0]).role is Role.MEASURE:
        return None
    name = [LineCell("".join(texts[:first]), filled[0].number)]
    head = name + [LineCell(line.text.strip(), line.number) for line in filled[first:end]]
    start = next(at for at, line in enumerate(lines, start=1) if line is filled[end - 1])
    walk = _Walk(lines, end - first, [head], start)
    at = start
    while (step := _step(walk, at)) > 0:
        at += step
    return LineTable(walk.rows, walk.used, inferred=True) if walk.valued > 1 else None


def _step(walk: _Walk, at: int) -> int:
    """How many lines belong to the table at ``at``; 0 where it ends."""
    if at >= len(walk.lines):
        return 0
    line = walk.lines[at]
    text = line.text.strip()
    if not text:
        return 1
    if (
        (taken := _other_labels(walk, line))
        or (taken := _cups(walk, line))
        or (taken := _broken_ages(walk, at))
        or (taken := _values_of_line(walk, line))
    ):
        walk.used = at + taken
        return taken
    if (taken := _values_a_line(walk, at) or _odd_row(walk, line)) > 0:
        walk.used = at + taken
        return taken
    if _begins_again(walk, text):
        return 0
    nameless = not any(sign.isdigit() for sign in text) and len(text) <= _LONGEST_NAME
    if nameless and len(walk.names) < _MOST_NAME_LINES and labels_in(text) is None:
        walk.names.append(line)
        return 1
    return 0


def _begins_again(walk: _Walk, text: str) -> bool:
    """Whether the word for the sizes stands before others: the sizes of the next table."""
    word = walk.rows[0][0].text
    return (
        bool(word and walk.valued) and text.startswith(f"{word} ") and " " in text[len(word) + 1 :]
    )


def _other_labels(walk: _Walk, line: Line) -> int:
    """``US 4 6 8`` or bare letters below ``Size 40 42 44``: the same sizes in another system.

    Nobody can tell of which sizes fewer ones are the names: their line is kept, and asked about.
    """
    found = labels_in(line.text)
    if found is None or walk.valued or len(found.parts) > walk.count:
        return 0
    if len(found.parts) < walk.count:
        if read_heading(found.name).role is not Role.LABEL:
            return 0
        walk.rows.insert(0, [LineCell(line.text.strip(), line.number)])
        walk.inferred = True
        return 1
    if not found.name and (len(walk.rows) > 1 or not walk.rows[0][0].text):
        return 0
    walk.rows.append([LineCell(text, line.number) for text in (found.name, *found.parts)])
    return 1


def _cups(walk: _Walk, line: Line) -> int:
    """``CUP A A-B B-C`` before the first measure: words above, which name no size."""
    name, *words = line.text.split()
    if len(words) != walk.count or not all(map(_CUP.fullmatch, words)):
        return 0
    if any(read_heading(row[0].text).role is Role.MEASURE for row in walk.rows):
        return 0
    if is_size(name) or read_heading(name).role is Role.LABEL:
        return 0
    walk.rows.insert(0, [LineCell(line.text.strip(), line.number)])
    return 1


def _broken_ages(walk: _Walk, at: int) -> int:
    """``Age 6 years 7 years 11/12`` and ``years`` on the next line: an age for each size."""
    text = ""
    ahead = range(at, min(at + _LINES_OF_AGES, len(walk.lines)))
    for number in ahead if not walk.valued else ():
        text = f"{text} {walk.lines[number].text.strip()}".strip()
        ages = _AGES.fullmatch(text)
        if ages is None or read_heading(ages["name"]).role is Role.UNKNOWN:
            continue
        parts = _AGE.findall(ages["ages"])
        if len(parts) == walk.count and _is_last(walk.lines, number):
            name = LineCell(ages["name"], walk.lines[at].number)
            walk.rows.append([name, *(LineCell(one, name.line) for one in parts)])
            return number + 1 - at
    return 0


def _is_last(lines: Sequence[Line], number: int) -> bool:
    """Whether the next filled line is no further piece of ages."""
    follows = next((one.text.strip() for one in lines[number + 1 :] if one.text.strip()), "")
    return _AGE.fullmatch(follows) is None and read_heading(follows).role is not Role.LABEL


def _values_of_line(walk: _Walk, line: Line) -> int:
    found = counted_values(line.text, walk.count)
    cells = [LineCell(text, line.number) for text in found.parts] if found is not None else []
    if found is None:
        found = counted_values(line.text, 2 * walk.count)
        parts = found.parts if found is not None else ()
        cells = both_ways([LineCell(text, line.number) for text in parts])
    if found is None or not cells:
        return 0
    if found.name:
        _end_names(walk)
    walk.inferred = walk.inferred or holds_place(found.name)
    _add(walk, found.name, line, cells)
    return 1


def _odd_row(walk: _Walk, line: Line) -> int:
    """A row in which something else than a figure stands in a cell."""
    found = row_with_odd_cells(line.text, walk.count, walk.lines[0].text)
    if found is None:
        return 0
    _end_names(walk)
    walk.inferred = walk.inferred or may_be_range(line.text, found.parts)
    _add(walk, found.name, line, [LineCell(text, line.number) for text in found.parts])
    return 1


def _values_a_line(walk: _Walk, at: int) -> int:
    """One value a line: as many as sizes, or twice as many where two units take turns."""
    cells: list[LineCell] = []
    last = at
    for number in range(at, len(walk.lines)):
        text = walk.lines[number].text.strip()
        if not text:
            continue
        if len(values_in(text)) != 1 or len(cells) == 2 * walk.count:
            break
        cells.append(LineCell(text, walk.lines[number].number))
        last = number
    pairs = paired(cells) if len(cells) == 2 * walk.count else cells
    if len(pairs) != walk.count or not walk.names:
        return 0
    _add(walk, "", walk.lines[at], pairs)
    walk.inferred = walk.inferred or pairs is cells
    return last + 1 - at


def _add(walk: _Walk, name: str, line: Line, cells: list[LineCell]) -> None:
    walk.inferred = walk.inferred or (len(walk.names) > 1 and not _said_twice(walk.names))
    head = LineCell(name, line.number)
    if walk.names:
        head = LineCell(" ".join(one.text.strip() for one in walk.names), walk.names[0].number)
    elif not name and walk.valued and other_unit(walk.rows[-1][1:], cells):
        head = walk.rows[-1][0]  # the second line of figures gives the same in another unit
    walk.rows.append([head, *cells])
    walk.names = []
    walk.valued += 1


def _said_twice(names: Sequence[Line]) -> bool:
    """``Tour de taille (cm)`` over ``Waist size``: one measure named whole in two languages."""
    headings = [read_heading(one.text.strip()) for one in names]
    plain = all(
        one.role is Role.MEASURE and not one.candidates and not one.rest for one in headings
    )
    return len(names) == 2 and plain and len({one.dimension for one in headings}) == 1


def _end_names(walk: _Walk) -> None:
    """Lines before a line that has a name of its own are titles."""
    walk.rows += [[LineCell(one.text.strip(), one.number)] for one in walk.names]
    walk.names = []
