"""The corner of a section that lends its sizes or headings to the next: ``Women | S | M``.

Below a title of its own, ``Men``, the next section has the row and not what its corner says: a
name that stands between is nearer to the figures than the corner above it.
"""

from __future__ import annotations

import re
from typing import Final

from charts.dimensions import Role
from charts.layout.fields import Table
from charts.layout.looks import look
from charts.layout.view import At
from charts.schema import Basis

_WORD: Final = re.compile(r"[^\W\d_]+(?:['’]s?)?")


def titles_below(table: Table, corner: At) -> list[At]:
    """The titles of a table that stand below the row of its sizes, the nearest first."""
    below = [at for at in (*table.over, *table.titles) if at.row > corner.row]
    return sorted(below, key=lambda at: -at.row)


def outlasts(corner: At, titles: list[At]) -> bool:
    """Whether what a corner says of whose measures follow holds below these titles as well.

    ``Body`` holds for ``Men`` after ``Women``; a ``Vest`` below it is no body, nor is anything
    else that is named. What is said of garments is not undone by the name of the next garment.
    """
    said = look(corner.text).heading.basis
    own = {look(at.text).heading.basis for at in titles} - {Basis.UNKNOWN}
    if own:
        return own == {said}
    return said is not Basis.BODY or all(_only_people(at.text) for at in titles)


def _only_people(title: str) -> bool:
    words = [look(word) for word in _WORD.findall(title.partition("(")[0])]
    named = any(word.band is not None for word in words)
    return named and all(word.band or word.heading.role is Role.LABEL for word in words)
