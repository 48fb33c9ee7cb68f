"""Blocks of one size each: the size on a line of its own, its measures on the lines below.

``Size XS (34)`` over ``Chest (cm): 82 - 86`` and ``Waist (cm): 66 - 70``, then the next size. All
measures may stand in one line, or each figure on the line below its name. Two blocks that share a
measure make a table, and one where it is the only size or gives ranges.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, field
from itertools import islice
from typing import Final

from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.said import MONEY, pair_of, unbulleted
from charts.readers.captured.size_names import SizeLine, may_measure, size_line
from charts.readers.captured.values import is_blank, is_glued, is_value

_PARTS: Final = re.compile(
    r"\s{2,}|\t+|(?<=[^\W\d_])\.\s+(?=[^\W\d_]{3})|\s*[|;•·]\s*|,\s+(?=[^\W\d_]{2})"
    r"|\s+[/–—-]\s+(?=[^\W\d_]{3}|[A-Z]{2}\s?\d)"
    r"|\s+(?:and|und|et|y|e|en|och|og|oraz|i|a|ja)\s+(?=[^\W\d_]{3})"
)
_COLON: Final = re.compile(r"(?P<name>[^\d:=][^:=]*?)\s*[:=]\s*(?P<value>\S.*)")
_RANGE: Final = re.compile(r"\d\D*?(?:[-–—~]|\b(?:to|bis|à|a|al|tot|til|till|do|až|até)\b)\D*?\d")
_SHORT_NAME: Final = re.compile(r"(?P<word>\S.*?)\s*[:=]?\s+(?P<size>[A-Z]{1,4})")
_LONGEST_NAME: Final = 50
_LONGEST_ODD: Final = 20
"""What stands for a figure behind the name of a measure: ``Waist: on request``."""
_FEWEST_ALONE: Final = 2
_MOST_LINES: Final = 600

Pair = tuple[str, str, int]
"""A name, its figures, and the number of their line."""


@dataclass(slots=True)
class _Block:
    """One size and what is said of it."""

    size: SizeLine
    line: int
    pairs: list[Pair] = field(default_factory=list)

    @property
    def names(self) -> set[str]:
        return {name.lower() for name, _, _ in self.pairs}


def size_block_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that blocks at the beginning of ``lines`` make; None when they make none."""
    size = size_line(lines[0].text) if lines else None
    if size is None or not _says_more(lines, size):
        return None
    blocks, last = _blocks([line for line in lines[:_MOST_LINES] if line.text.strip()])
    if not blocks or not _go_together(blocks):
        return None
    used = next(at for at, line in enumerate(lines, start=1) if line.number == last)
    return LineTable(_rows(blocks), used)


def _says_more(lines: Sequence[Line], size: SizeLine) -> bool:
    """Whether something is said of the first size: told by the two lines below it."""
    below = list(islice((line for line in lines[1:] if line.text.strip()), 2))
    return any(_told(below, size, ()))


def _blocks(lines: Sequence[Line]) -> tuple[list[_Block], int]:
    """The blocks at the beginning, and the number of the last line of the last one."""
    blocks: list[_Block] = []
    at = last = 0
    while at < len(lines) and (size := _size_at(lines[at].text, blocks)) is not None:
        block = _Block(size, lines[at].number)
        at += 1
        known = {name for one in blocks for name in one.names}
        for pairs, count in _told(lines[at:], size, known):
            if block.names & {name.lower() for name, _, _ in pairs}:
                break
            block.pairs += pairs
            at += count
        if not block.pairs or not _follows(blocks, block):
            break
        blocks.append(block)
        last = lines[at - 1].number
    return blocks, last


def _size_at(text: str, blocks: Sequence[_Block]) -> SizeLine | None:
    """The size that a line names, by itself or behind the word of the sizes before it.

    ``Size CM`` below ``Size CS`` is a child's medium; alone it would say in what all is measured.
    """
    found = size_line(text)
    if found is not None or not blocks or not (word := blocks[0].size.word):
        return found
    name = _SHORT_NAME.fullmatch(text.strip().rstrip(":"))
    if name is None or name["word"].lower() != word.lower():
        return None
    return SizeLine(word, name["size"], blocks[0].size.joint)


def _told(
    lines: Sequence[Line], size: SizeLine, known: Collection[str]
) -> Iterator[tuple[list[Pair], int]]:
    """What each line below a size says, and how many lines it takes, up to the next size."""
    at = 0
    while at < len(lines):
        line = lines[at]
        here = size_line(line.text)
        if here is not None and here.is_like(size):
            return
        pairs = _pairs(line) or _odd(line, known)
        count = 1
        if not pairs and at + 1 < len(lines):
            pairs, count = _over_two(line, lines[at + 1]), 2
        if not pairs:
            return
        yield pairs, count
        at += count


def _pairs(line: Line) -> list[Pair]:
    """The named figures that a line consists of; none when anything else stands in it."""
    text = unbulleted(line.text)
    if is_glued(text) or MONEY.search(text):
        return []
    for parts in ([text], [part for part in _PARTS.split(text) if part and part.strip()]):
        found = [_pair(part.strip().rstrip(".;,")) for part in parts]
        if found and None not in found:
            return [(name, value, line.number) for one in found if one for name, value in [one]]
    return []


def _pair(text: str) -> tuple[str, str] | None:
    """A name and its figures, or what stands for them behind the colon of a measure."""
    pair = pair_of(text)
    if pair is not None and pair[0] and len(pair[0]) <= _LONGEST_NAME:
        return pair
    found = _COLON.fullmatch(text)
    if found is None or not _measures(found["name"]) or len(found["value"]) > _LONGEST_ODD:
        return None
    return found["name"].strip(), found["value"].strip()


def _odd(line: Line, known: Collection[str]) -> list[Pair]:
    """What stands for figures of a measure that other blocks have: ``Waist on request``."""
    text = unbulleted(line.text)
    for name in known:
        rest = text[len(name) :].strip(" :=")
        if text.lower().startswith(f"{name} ") and rest and len(rest) <= _LONGEST_ODD:
            return [(text[: len(name)], rest, line.number)]
    return []


def _over_two(name: Line, value: Line) -> list[Pair]:
    """A measure on one line and its figures on the next."""
    text, figures = unbulleted(name.text).rstrip(" :"), value.text.strip()
    if not _measures(text) or not (is_value(figures) or is_blank(figures)):
        return []
    return [(text, figures, value.number)]


def _measures(name: str) -> bool:
    return len(name) <= _LONGEST_NAME and may_measure(name)


def _follows(blocks: Sequence[_Block], block: _Block) -> bool:
    """Whether a block is the next size of the same list, told by measures that it shares."""
    if not any(_measures(name) for name in block.names):
        return False
    if not blocks:
        return True
    alike = block.size.is_like(blocks[0].size) or block.size.for_all
    again = block.size.size == blocks[0].size.size  # the list of other people begins
    return alike and not again and bool(block.names & blocks[0].names)


def _go_together(blocks: Sequence[_Block]) -> bool:
    """Several sizes; or one that says itself that it is one, and is no model's."""
    if len(blocks) > 1:
        return True
    alone = blocks[0]
    if alone.size.for_all:
        return True
    ranges = [_RANGE.search(value) is not None for _, value, _ in alone.pairs]
    return bool(alone.size.word) and len(ranges) >= _FEWEST_ALONE and all(ranges)


def _rows(blocks: Sequence[_Block]) -> list[list[LineCell]]:
    """The blocks as rows under the names of their measures."""
    spelled = {name.lower(): name for one in reversed(blocks) for name, _, _ in one.pairs}
    names = list(dict.fromkeys(name.lower() for one in blocks for name, _, _ in one.pairs))
    head = (blocks[0].size.word, *(spelled[name] for name in names))
    rows = [[LineCell(text, blocks[0].line) for text in head]]
    for one in blocks:
        told = {name.lower(): LineCell(value, line) for name, value, line in one.pairs}
        cells = [told.get(name, LineCell("", one.line)) for name in names]
        rows.append([LineCell(one.size.size, one.line), *cells])
    return rows
