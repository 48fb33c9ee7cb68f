"""Numbers below sizes that span several columns each: 34 and 36 under one S are what tells them.

They have no heading, for what they are is plain to whoever reads S above them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import groupby, pairwise

from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.layout.view import At


def sizes_below(fields: Sequence[Field]) -> list[Field]:
    """The fields with a headless column of numbers beside merged sizes named as sizes too."""
    found = list(fields)
    for number, (above, below) in enumerate(pairwise(fields), 1):
        bare = below.kind is FieldKind.VALUES and not below.heads and all(below.cells)
        if bare and above.kind is FieldKind.LABEL and _each_parted(above, below):
            found[number] = replace(below, kind=FieldKind.LABEL)
    return found


def _each_parted(above: Field, below: Field) -> bool:
    """Whether every size is one cell over several numbers, which rise and name sizes."""
    if not all(above.cells):
        return False
    lines = zip(above.cells, below.cells, strict=True)
    runs = [
        [under[0] for _, under in run] for _, run in groupby(lines, lambda both: both[0][0].origin)
    ]
    return len(runs) > 1 and all(len(run) > 1 and _rise(run) for run in runs)


def _rise(run: Sequence[At]) -> bool:
    texts = [at.text.strip() for at in run]
    if not all(text.isdecimal() and len(text) < 4 and look(text).label for text in texts):
        return False
    return all(int(one) < int(after) for one, after in pairwise(texts))
