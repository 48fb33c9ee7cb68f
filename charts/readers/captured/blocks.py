"""Blocks of cells set apart by empty lines: the sizes, the headings, then the figures of each size.

Some pages show their table in columns of boxes. Copied, each box becomes a block: first all sizes,
then all headings, then a block of figures for every size, twice where a switch shows both units.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.value_runs import is_cell_value, rises
from charts.readers.captured.values import is_blank
from charts.size_labels import read_label

_FEWEST: Final = 2
_MOST_LINES: Final = 400
_LONGEST: Final = 40
_LEAST: Final = 2.2  # 28 beside 11: whole figures far down the scale miss 2.54 by so much
_MOST: Final = 2.9


@dataclass(frozen=True, slots=True)
class _Block:
    """Neighbouring lines; ``end`` is the number of lines up to its last one."""

    lines: tuple[Line, ...]
    end: int

    @property
    def texts(self) -> list[str]:
        return [line.text for line in self.lines]


def block_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that blocks at the beginning of ``lines`` make; its order is always asked."""
    if not lines or not lines[0].text.strip() or len(lines[0].text.strip()) > _LONGEST:
        return None
    if all(line.text.strip() for line in lines[:_MOST_LINES]):
        return None  # one block
    found = _blocks(lines[:_MOST_LINES])
    first = next(found)
    sizes = _sizes(first)
    if sizes is None:
        return None
    blocks = [first, *found]
    if len(blocks) <= _FEWEST:
        return None
    return _of_headings_first(blocks, sizes) or _of_named_blocks(blocks, sizes)


def _blocks(lines: Sequence[Line]) -> Iterator[_Block]:
    here: list[Line] = []
    for at, line in enumerate(lines):
        if line.text.strip():
            here.append(_tidied(line))
        if here and (not line.text.strip() or at + 1 == len(lines)):
            yield _Block(tuple(here), at + bool(line.text.strip()))
            here = []


def _tidied(line: Line) -> Line:
    text = line.text.strip()
    return line if text == line.text else replace(line, text=text)


def _sizes(block: _Block) -> list[Line] | None:
    """The name of the sizes, "" for none, and the sizes."""
    first, *rest = block.lines
    named = read_heading(first.text).role in {Role.LABEL, Role.MEASURE} or not _is_size(first.text)
    labels = list(rest) if named else [first, *rest]
    if len(labels) < _FEWEST or not all(_is_size(one.text) for one in labels):
        return None
    texts = [one.text for one in labels]
    wordy = not any(map(is_cell_value, texts)) and len(set(texts)) == len(texts)
    if not wordy and not rises(texts):
        return None
    return [first if named else Line("", first.number), *labels]


def _is_size(text: str) -> bool:
    label = read_label(text)
    return label is not None and label.doubtful is None


def _of_headings_first(blocks: Sequence[_Block], sizes: Sequence[Line]) -> LineTable | None:
    """All headings in one block, then one block of figures for each size, or two."""
    heads = blocks[1]
    if len(heads.lines) < _FEWEST or any(map(is_cell_value, heads.texts)):
        return None
    figures = _figures(blocks[2:], len(heads.lines))
    count = len(sizes) - 1
    if len(figures) not in (count, 2 * count) or not _rise(figures):
        return None
    end = figures[-1].end
    head = [sizes[0], *heads.lines]
    if len(figures) > count:
        pairs = _in_two_units(figures)
        if pairs is None:
            return None
        figures, head = pairs, [sizes[0], *(one for one in heads.lines for _ in range(2))]
    rows = [(size, *block.lines) for size, block in zip(sizes[1:], figures, strict=True)]
    return _table([head, *rows], end)


def _of_named_blocks(blocks: Sequence[_Block], sizes: Sequence[Line]) -> LineTable | None:
    """A heading, in the block of its figures or before it, and one figure for each size."""
    count = len(sizes) - 1
    rows: list[Sequence[Line]] = [sizes]
    name: _Block | None = None
    end = 0
    for block in blocks[1:]:
        if name is None and len(block.lines) == 1 and not is_cell_value(block.texts[0]):
            name = block
            continue
        own = [*name.lines, *block.lines] if name is not None else list(block.lines)
        if len(own) != count + 1 or is_cell_value(own[0].text) or not _all_figures(own[1:]):
            break
        rows.append(own)
        name, end = None, block.end
    return _table(rows, end) if len(rows) > 1 and end else None


def _figures(blocks: Sequence[_Block], width: int) -> list[_Block]:
    found: list[_Block] = []
    for block in blocks:
        if len(block.lines) != width or not _all_figures(block.lines):
            break
        found.append(block)
    return found


def _all_figures(lines: Sequence[Line]) -> bool:
    return all(is_cell_value(one.text) or is_blank(one.text) for one in lines)


def _rise(blocks: Sequence[_Block]) -> bool:
    """Whether more columns rise from block to block than from line to line within the blocks."""
    columns = [[_first(text) for text in column] for column in zip(*_texts(blocks), strict=True)]
    rows = [[_first(text) for text in row] for row in _texts(blocks)]
    return _falls(columns) <= _falls(rows) or len(columns) != len(blocks)


def _texts(blocks: Sequence[_Block]) -> list[list[str]]:
    return [block.texts for block in blocks]


def _falls(lines: Sequence[Sequence[float]]) -> int:
    return sum(later < earlier for line in lines for earlier, later in pairwise(line))


def _first(text: str) -> float:
    """The first figure of a text, as printed; parts of a whole do not count here."""
    digits = ""
    for sign in text.replace(",", "."):
        if sign.isdigit() or (sign == "." and digits):
            digits += sign
        elif digits:
            break
    return float(digits.strip(".").partition(".")[0] or 0)


def _in_two_units(blocks: Sequence[_Block]) -> list[_Block] | None:
    """The figures of each size in both units side by side: in turn, or first all of one unit."""
    half = len(blocks) // 2
    for first, second in ((blocks[::2], blocks[1::2]), (blocks[:half], blocks[half:])):
        if _one_is_the_other(first, second):
            return [
                _Block(tuple(x for pair in zip(a.lines, b.lines, strict=True) for x in pair), b.end)
                for a, b in zip(first, second, strict=True)
            ]
    return None


def _one_is_the_other(first: Sequence[_Block], second: Sequence[_Block]) -> bool:
    """Whether the figures of one half are those of the other times 2.54, rounding aside."""
    pairs = [
        (_first(one), _first(other))
        for a, b in zip(_texts(first), _texts(second), strict=True)
        for one, other in zip(a, b, strict=True)
    ]
    ratios = [max(a, b) / min(a, b) for a, b in pairs if min(a, b) > 0]
    return bool(ratios) and all(_LEAST < ratio < _MOST for ratio in ratios)


def _table(rows: Sequence[Sequence[Line]], used: int) -> LineTable:
    cells = [[LineCell(one.text, one.number) for one in row] for row in rows]
    return LineTable(cells, used, inferred=True)
