"""A sentence of sizes and the figures of one measure, both in one rhythm of brackets.

``Sizes S (M) L (XL) are for a bust of about 84 (90) 96 (104) cm.``: as many figures as sizes, and
one measure named between them. What the words say beside it was not understood, so it is asked.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.brackets import ONE, SERIES, UNIT, bracketed_labels
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.sentences import measure_among
from charts.readers.captured.values import OPEN_ENDED
from charts.size_labels import LabelKind, read_label

_SAID: Final = re.compile(
    rf"(?P<word>[^\W\d_]{{2,20}})\s+(?P<sizes>[^\s(\[]+\s*[(\[].*?)\s(?P<between>[^\d()\[\]]{{4,80}}?)"
    rf"\s*(?P<values>{SERIES})(?P<unit>{UNIT})(?P<after>[^\d]{{0,80}})",
    re.IGNORECASE,
)
_WORD: Final = re.compile(r"[^\W\d_]+")
_LONGEST_LINE: Final = 400
_OWN_KINDS: Final = (LabelKind.AGE, LabelKind.ALPHA)


def bracket_sentence_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that the first line tells; None when sizes and figures do not come out even."""
    text = lines[0].text.strip() if lines else ""
    if not 0 < len(text) <= _LONGEST_LINE or text.count("(") + text.count("[") < 2:
        return None
    found = _SAID.fullmatch(text)
    sizes, between = _sizes(found) if found is not None else ([], "")
    if found is None or not sizes:
        return None
    figures = [f"{one}{found['unit']}" for one in ONE.findall(found["values"])]
    name = measure_among(between)
    opened = any(map(OPEN_ENDED.fullmatch, _WORD.findall(f"{between} {found['after']}")))
    if name is None or opened or len(figures) != len(sizes):
        return None
    rows = ((found["word"], *sizes), (name, *figures))
    number = lines[0].number
    return LineTable([[LineCell(one, number) for one in row] for row in rows], 1, inferred=True)


def _sizes(found: re.Match[str]) -> tuple[list[str], str]:
    """The sizes, and the words behind them without the unit of ages that all sizes share.

    The word in front names sizes, or they can be nothing else: ages in years, or letters.
    """
    first, _, rest = found["between"].strip().partition(" ")
    for text, between in ((f"{found['sizes']} {first}", rest), (found["sizes"], found["between"])):
        labels = bracketed_labels(text)
        kinds = {label.kind for one in labels if (label := read_label(one)) is not None}
        own = len(kinds) == 1 and kinds <= set(_OWN_KINDS)
        if labels and (own or read_heading(found["word"]).role is Role.LABEL):
            return labels, between
    return [], ""
