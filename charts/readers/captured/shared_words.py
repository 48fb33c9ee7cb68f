"""Lines whose parts begin with the same words: ``S: Chest 84-88, Fit close, Price 89.00``.

What all lines say at one place is the name of a column, and what follows it is the cell: a figure,
a word, a price, a second name of the size. Where the lines are measures, sizes are what they share:
``Chest: 8 82-85, 10 86-89`` over ``Waist: 8 64-67, 10 68-71``. No list of names is needed.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import cache, lru_cache
from typing import Final, NamedTuple

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.prose import common_head
from charts.readers.captured.said import LONGEST_LABEL, LONGEST_LINE, unbulleted
from charts.readers.captured.size_names import may_measure
from charts.readers.captured.value_runs import is_size, rises, values_in
from charts.readers.captured.values import is_blank, is_value, without_limit
from charts.size_labels import read_label
from charts.vocabulary import tables

_LABEL: Final = re.compile(r"(?P<label>[^|;\t]{1,60}?)\s*(?::+|=)\s+(?P<parts>\S.*)")
_PART_ENDS: Final = (re.compile(r",\s+"), re.compile(r"\s*;\s*"), re.compile(r"\s*\|\s*"))
_ANY_END: Final = re.compile(r",\s|[;|]")
_MOST_WORDS_OF_A_NAME: Final = 4
_LINES_TO_A_NAME: Final = 2
_PARTS_TO_A_NAME: Final = 4
_MOST_LINES: Final = 200
_FEWEST: Final = 2
_FEWEST_ALONE: Final = 3
"""So many sizes behind one measure are a table without a second line."""
_MOST_WORDS: Final = 12
_SIGNS: Final = " <>≤≥~±(\"'"
_INCHES: Final = '"”″’′'
_JOINTS: Final = " :="

Words = tuple[str, ...]


class _Said(NamedTuple):
    label: str
    parts: tuple[Words, ...]
    line: int


class _Column(NamedTuple):
    name: str
    cells: tuple[str, ...]


def shared_words_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that ``lines`` begin with; None where the lines share no words, or no sizes."""
    for end in range(len(_PART_ENDS)) if lines else ():
        if _said(lines[0], end) is None or not any(map(_may_name, lines[:_LINES_TO_A_NAME])):
            continue
        said, used = _run(lines[:_MOST_LINES], end)
        found = _sizes_shared(said, used) or _names_shared(said, used)
        if found is not None:
            return found
    return None


@lru_cache(maxsize=4096)
def _may_name(line: Line) -> bool:
    """Whether a measure is named before the colon or where a part begins; cheap for most lines."""
    label, _, parts = line.text.partition(":")
    begins = [words for words in map(str.split, _ANY_END.split(parts)) if words]
    lettered = [words for words in begins[:_PARTS_TO_A_NAME] if words[0][0].isalpha()]
    return may_measure(label) or any(
        may_measure(" ".join(words[:count]))
        for words in lettered
        for count in range(1, min(_MOST_WORDS_OF_A_NAME, len(words)) + 1)
    )


def _run(lines: Sequence[Line], end: int) -> tuple[list[_Said], int]:
    """The lines that follow each other and have parts, and how many lines they take."""
    said: list[_Said] = []
    used = 0
    for at, line in enumerate(lines, start=1):
        if not line.text.strip():
            continue
        one = _said(line, end)
        if one is None or (said and not _first_words(said[:1]) & _first_words([one])):
            break
        said.append(one)
        used = at
    return said, used


def _said(line: Line, end: int) -> _Said | None:
    found = _label_and_parts(line.text, end)
    return None if found is None else _Said(*found, line.number)


@lru_cache(maxsize=4096)
def _label_and_parts(text: str, end: int) -> tuple[str, tuple[Words, ...]] | None:
    text = unbulleted(text).rstrip(" .;,|")
    found = _LABEL.fullmatch(text) if len(text) <= LONGEST_LINE else None
    if found is None or not any(map(str.isdigit, text)):
        return None
    parts = tuple(tuple(part.split()) for part in _PART_ENDS[end].split(found["parts"]))
    if len(parts) < _FEWEST or not all(parts):
        return None
    return found["label"].strip(), parts


def _first_words(said: Sequence[_Said]) -> set[str]:
    """The words with which a part of every line begins."""
    first, *others = ({part[0].lower() for part in one.parts} for one in said)
    return first.intersection(*others)


def _sizes_shared(said: Sequence[_Said], used: int) -> LineTable | None:
    """Measures, or names of sizes, over each other, with the same sizes behind each."""
    names = [one.label for one in said]
    if not any(map(may_measure, names)) or any(map(is_size, names)):
        return None
    alone = len(said) == 1
    if alone and (len(said[0].parts) < _FEWEST_ALONE or not _names_measure(names[0])):
        return None
    columns = _columns_of_sizes(said)
    if columns is None:
        return None
    sizes = [column.name for column in columns]
    lettered = not any(map(is_value, sizes))
    if not (lettered or rises(sizes)) or not _tell_apart(sizes, names, columns):
        return None
    return _table(names, said, columns, used, inferred=alone and not lettered)


def _tell_apart(sizes: Sequence[str], names: Sequence[str], columns: Sequence[_Column]) -> bool:
    """Whether the sizes are each another, or a line of second names for them tells them apart."""
    others = [
        [column.cells[at] for column in columns]
        for at, name in enumerate(names)
        if read_heading(name).role is Role.LABEL
    ]
    return any(len(set(row)) == len(row) for row in (sizes, *others))


def _names_measure(name: str) -> bool:
    return read_heading(name).role is Role.MEASURE


def _columns_of_sizes(said: Sequence[_Said]) -> list[_Column] | None:
    """A size that all lines begin a part with, and what stands behind it; None without one."""
    if len({len(one.parts) for one in said}) > 1:
        return None
    columns: list[_Column] = []
    for cells in zip(*(one.parts for one in said), strict=True):
        counts = range(1, min(_shared(cells), *map(len, cells)) + 1)
        split = (_split(cells, count) for count in counts if count < min(map(len, cells)))
        column = next((one for one in split if _is_column(one)), None)
        if column is None:
            return None
        columns.append(column)
    return columns


def _is_column(column: _Column) -> bool:
    """Whether a size stands over whole figures, blanks or sizes, and none over half a range."""
    size, _, second = column.name.partition(" ")
    named = is_size(column.name) or (is_size(size) and (not second or is_size(second)))
    label = read_label(column.name)
    if not (named or (label is not None and not second and not is_value(size))):
        return False
    return all(_is_one(text) or is_blank(text) or is_size(text) for text in column.cells)


def _is_one(text: str) -> bool:
    """Whether a text is one figure, in one unit or in two, and no second name before it."""
    bare = not any(map(str.isalpha, text)) and not any(sign in text for sign in _INCHES)
    return _begins_value(text) and not (bare and len(values_in(text)) > 1)


def _names_shared(said: Sequence[_Said], used: int) -> LineTable | None:
    """Sizes over each other, with the same names behind each and a cell to every name."""
    if len(said) < _FEWEST:
        return None
    firsts, names = _first_words(said) - _roughly(), _bare_names(said)
    said = [one._replace(parts=_rejoined(one.parts, firsts, names)) for one in said]
    if len({len(one.parts) for one in said}) > 1:
        return None
    columns = [_named_column(cells) for cells in zip(*(one.parts for one in said), strict=True)]
    named = [column for column in columns if column is not None]
    roles = [read_heading(column.name).role for column in named]
    if len(named) < len(columns) or Role.MEASURE not in roles:
        return None
    labels = [one.label for one in said]
    known = sum(read_label(one) is not None for one in labels)
    sized = Role.LABEL in roles or 2 * known >= len(labels)
    if not sized or any(len(one) > LONGEST_LABEL for one in labels):
        return None  # another column would be taken for the sizes
    head, labels = common_head(labels)
    return _table(labels, said, named, used, head=head)


@cache
def _roughly() -> frozenset[str]:
    """The words that say that a figure is none exactly, in all languages."""
    return frozenset(word.lower() for _, words in tables("cell", "circa") for word in words)


def _bare_names(said: Sequence[_Said]) -> set[Words]:
    """Parts that all lines have and that are names without a cell."""
    same = set(said[0].parts).intersection(*(one.parts for one in said))
    return {part for part in same if _is_bare_name(" ".join(part))}


def _is_bare_name(text: str) -> bool:
    named = read_heading(text).role in (Role.MEASURE, Role.LABEL)
    return named and not any(map(str.isdigit, text))


def _rejoined(parts: Sequence[Words], firsts: set[str], names: set[Words]) -> tuple[Words, ...]:
    """The parts, with those that no other line begins so put behind the one before.

    What follows a name without a cell belongs to it: ``Chest, cm 84-88``, ``Size, US 4``; and
    no name is "roughly", which says a figure again: ``Chest 38-43 cm, roughly 15-17 inches``.
    """
    found: list[Words] = []
    for part in parts:
        if found and (found[-1] in names or part[0].lower() not in firsts):
            found[-1] = (*found[-1][:-1], f"{found[-1][-1]},", *part)
        else:
            found.append(part)
    return tuple(found)


def _named_column(cells: Sequence[Words]) -> _Column | None:
    """The words that all cells begin with as the name of what follows them; None without any."""
    most = min(_shared(cells), min(map(len, cells)) - 1)
    ways = [_split(cells, count) for count in range(1, most + 1)]
    ways = [way for way in ways if any(map(str.isalpha, way.name))]
    if not ways:
        return None
    counts = [sum(_begins_value(text) or is_blank(text) for text in way.cells) for way in ways]
    best = max(counts)
    return ways[counts.index(best)] if best else ways[-1]


def _shared(cells: Sequence[Words]) -> int:
    """With how many words all cells begin."""
    count = 0
    for words in zip(*cells, strict=False):
        if len({word.lower() for word in words}) > 1 or count == _MOST_WORDS:
            break
        count += 1
    return count


def _split(cells: Sequence[Words], count: int) -> _Column:
    name = " ".join(cells[0][:count]).rstrip(_JOINTS)  # "S: 84" says S of 84
    return _Column(name, tuple(" ".join(words[count:]) for words in cells))


@lru_cache(maxsize=8192)
def _begins_value(text: str) -> bool:
    """Whether a text is a value from its beginning: no unit, joint or half of a name before it."""
    start = next((at for at, sign in enumerate(text) if sign.isnumeric()), None)
    if start is None or not is_value(text):
        return False
    before = text[:start].strip(_SIGNS)
    return not before or not without_limit(before)[0]


def _table(
    labels: Sequence[str],
    said: Sequence[_Said],
    columns: Sequence[_Column],
    used: int,
    *,
    head: str = "",
    inferred: bool = False,
) -> LineTable:
    rows = [[LineCell(text, said[0].line) for text in (head, *(one.name for one in columns))]]
    for at, (label, one) in enumerate(zip(labels, said, strict=True)):
        texts = (label, *(column.cells[at] for column in columns))
        rows.append([LineCell(text, one.line) for text in texts])
    return LineTable(rows, used, inferred=inferred)
