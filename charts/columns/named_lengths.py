"""Lengths named a second time: ``Short | I-II`` gives no size, and ``Short | 24`` gives one."""

from __future__ import annotations

from collections.abc import Sequence

from charts.dimensions import Role
from charts.layout.fields import Field, Table
from charts.layout.kinds import Content


def name_lengths_again(labels: Sequence[Field], lengths: Sequence[Field], table: Table) -> bool:
    """Whether the columns of labels only call by another name what a first column calls a length.

    Each row is another length, under a word for lengths and before all else, and no label beside
    it is a size that is known: a table of lengths alone, as the other of widths alone has none.
    """
    if len(lengths) != 1 or not labels or not _says_length(lengths[0]):
        return False
    names = [cell[0].text.strip().lower() if cell else "" for cell in lengths[0].cells]
    if not all(names) or len(set(names)) < len(names):
        return False
    place = table.fields.index(lengths[0])
    return all(
        table.fields.index(one) > place and not Content.of(one.cells).labels for one in labels
    )


def _says_length(field: Field) -> bool:
    return Role.LENGTH_AXIS in {field.heading.role, *(role for role, _ in field.heading.candidates)}
