"""Several sizes in one line, each with its measures: ``Size S: chest 82-86 cm. Size M: chest ...``.

The line is cut before each size; the pieces make a table where all name the same measures.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.choosing import WORN
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.prose import common_head
from charts.readers.captured.said import MONEY, Said, taken_apart
from charts.readers.captured.size_names import may_measure
from charts.readers.captured.value_runs import is_size
from charts.readers.captured.values import is_value

_START: Final = re.compile(
    r"(?:(?<=\A)|(?<=[.;,|:/·•])\s+|\s+[–—-]\s+)(?:(?P<word>[^\W\d_]{3,14}\.?)\s+)?"
    r"(?P<size>[^\s:=(),.;|]{1,9})(?=\s*[:=]\s*\S)"
)
_END: Final = " .;,|/·•–—-"
_MASS: Final = re.compile(r"\d\s?(?:kgs?|kilos?|lbs?|pounds?)\b", re.IGNORECASE)
_LONGEST: Final = 1_500
_LONGEST_INTRO: Final = 60
_FEWEST: Final = 2


def run_on_size_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that the first line is; None where its pieces do not say the same of each size."""
    if not lines or len(lines[0].text) > _LONGEST:
        return None
    line = lines[0]
    text = line.text.strip()
    starts = list(_starts(text))
    if len(starts) < _FEWEST or MONEY.search(text) or WORN.search(text):
        return None
    intro = text[: starts[0]].strip(_END + ":")
    if len(intro) > _LONGEST_INTRO or any(map(str.isdigit, intro)):
        return None
    ends = [*starts[1:], len(text)]
    pieces = [text[start:end].strip(_END) for start, end in zip(starts, ends, strict=True)]
    said = [taken_apart(replace(line, text=piece)) for piece in pieces]
    told = [one for one in said if one is not None and _is_told(one)]
    if len(told) < len(pieces) or len({one.label for one in told}) < len(told):
        return None
    if len({tuple(map(str.lower, one.names)) for one in told}) > 1:
        return None
    above = [[LineCell(intro, line.number)]] if intro else []
    return LineTable([*above, *_rows(told, line.number)], 1)


def _starts(text: str) -> Iterator[int]:
    """Where a size begins, by letters or behind a word for sizes."""
    for found in _START.finditer(text):
        worded = found["word"] and read_heading(found["word"]).role is Role.LABEL
        if found["word"] and not worded:
            continue
        if is_size(found["size"]) and (worded or not is_value(found["size"])):
            yield found.start("word") if worded else found.start("size")


def _is_told(one: Said) -> bool:
    """Whether all that is said of a size are measures by their names, or the wearer's mass."""
    return all(
        may_measure(name) if name else _MASS.search(value) is not None for name, value in one.pairs
    )


def _rows(told: Sequence[Said], number: int) -> list[list[LineCell]]:
    head, labels = common_head([one.label for one in told])
    texts = [(head, *told[0].names)] if any((head, *told[0].names)) else []
    for one, label in zip(told, labels, strict=True):
        texts.append((label, *(value for _, value in one.pairs)))
    return [[LineCell(text, number) for text in row] for row in texts]
