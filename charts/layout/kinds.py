"""What a column holds, told from its heading and from its cells together."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache
from itertools import pairwise
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.fields import FieldKind
from charts.layout.looks import look
from charts.layout.view import At
from charts.schema import Dimension, Kind

_SKIPPED_ROLES: Final = frozenset({Role.STEP, Role.OTHER})


@dataclass(frozen=True, slots=True)
class Content:
    """How many cells of a column look like what. ``filled`` counts the cells that are not blank."""

    filled: int
    values: int
    figures: int
    labels: int
    sure_labels: int
    wordy_labels: int
    lengths: int
    any_lengths: int
    bands: int
    measures: int
    units: int
    unit_values: int
    tolerances: int
    running: bool
    numbered_measures: int = 0

    @staticmethod
    def of(cells: Sequence[tuple[At, ...]]) -> Content:
        """Count the cells of a column."""
        return _counted(tuple(at.text for cell in cells for at in cell[:1]))

    @property
    def all_sure(self) -> bool:
        """Whether every filled cell can be nothing but a size."""
        return self.sure_labels == self.filled

    def most(self, count: int) -> bool:
        """Whether ``count`` is more than half of the filled cells."""
        return 2 * count > self.filled > 0


@lru_cache(maxsize=8192)
def _counted(texts: tuple[str, ...]) -> Content:
    looks = [look(text) for text in texts]
    looks = [one for one in looks if not one.blank]
    return Content(
        filled=len(looks),
        values=sum(one.value and not one.wordy_label for one in looks),
        figures=sum(one.figures for one in looks),
        labels=sum(one.label is not None for one in looks),
        sure_labels=sum(one.sure_label for one in looks),
        wordy_labels=sum(one.wordy_label for one in looks),
        lengths=sum(one.length is not None and len(one.text) > 2 for one in looks),
        any_lengths=sum(one.length is not None and not one.value for one in looks),
        bands=sum(one.bare_band for one in looks),
        measures=sum(one.measures for one in looks),
        units=sum(one.heading.role is Role.UNIT and not one.value for one in looks),
        unit_values=sum(
            one.value and one.reading.quantity is not None and one.reading.quantity.unit is not None
            for one in looks
        ),
        tolerances=sum(one.reading.reading == "tolerance" for one in looks),
        running=_runs(texts),
        numbered_measures=sum(one.measures and any(map(str.isdigit, one.text)) for one in looks),
    )


def _runs(texts: Sequence[str]) -> bool:
    """1, 2, 3 ...: a running number, when it starts at 0 or 1 and has at least three steps."""
    numbers = []
    for text in texts:
        quantity = look(text).reading.quantity
        if quantity is None or quantity.kind is not Kind.SINGLE or quantity.value is None:
            return False
        numbers.append(quantity.value.value)
    steps = {after - before for before, after in pairwise(numbers)}
    return len(numbers) > 2 and steps == {Decimal(1)} and numbers[0] in {Decimal(0), Decimal(1)}


def kind_of(heading: HeadingReading, content: Content, column: int) -> FieldKind:
    """The kind of a column. ``column`` is its number in the view, for what stands first."""
    if content.filled == 0:
        return FieldKind.EMPTY
    if content.most(content.measures):
        # "53 cm armpit to armpit" under "Width" is a figure with its name, and none of the heads.
        figures = heading.role is Role.MEASURE and content.most(content.numbered_measures)
        return FieldKind.VALUES if figures else FieldKind.NAMES
    if _of_lengths(heading, content):
        return FieldKind.LENGTH
    if heading.role is Role.MEASURE:
        return _measure(heading, content)
    if heading.role in {Role.LOW_END, Role.HIGH_END}:
        return FieldKind.VALUES
    if heading.role is Role.TOLERANCE:
        return FieldKind.TOLERANCE
    if heading.role is Role.IDENTITY:
        return FieldKind.LABEL if content.most(content.wordy_labels) else FieldKind.IDENTITY
    if heading.role in _SKIPPED_ROLES:
        return FieldKind.LABEL if content.most(content.wordy_labels) else FieldKind.SKIPPED
    if heading.role is Role.LABEL:
        return _label(content)
    if heading.role is Role.UNIT and heading.unit is not None and content.most(content.values):
        return FieldKind.VALUES  # "inches" over 34-36 names no sizes
    return _by_content(content, column)


def _of_lengths(heading: HeadingReading, content: Content) -> bool:
    """Under a word for length the letters S, R and L are short, regular and long."""
    roles = {heading.role, *(role for role, _ in heading.candidates)}
    if content.any_lengths < content.filled:
        return False
    # XS, S, R, L, XL: the R can be no size, so all of them are lengths, whatever stands above.
    return Role.LENGTH_AXIS in roles or content.wordy_labels < content.filled


def _measure(heading: HeadingReading, content: Content) -> FieldKind:
    if content.most(content.wordy_labels):
        return FieldKind.LENGTH if content.most(content.lengths) else FieldKind.LABEL
    if heading.dimension is Dimension.OTHER and content.most(content.sure_labels):
        return FieldKind.LABEL  # "Glove size" over 6 (XS), 7 (S)
    if heading.dimension is Dimension.AGE and not content.most(content.values):
        return FieldKind.LABEL
    return FieldKind.VALUES if content.figures else FieldKind.NOTE


def _label(content: Content) -> FieldKind:
    """A heading says size; the cells may say otherwise."""
    if content.units == content.filled:
        return FieldKind.UNIT  # a merged "Size" over the row of sizes and the row of units
    if content.most(content.unit_values):
        return FieldKind.VALUES
    if content.most(content.lengths):
        return FieldKind.LENGTH
    return FieldKind.LABEL


def _by_content(content: Content, column: int) -> FieldKind:
    """A heading that says nothing: the cells alone decide."""
    if content.most(content.tolerances):
        return FieldKind.TOLERANCE
    if content.most(content.units):
        return FieldKind.UNIT
    if content.most(content.lengths):
        return FieldKind.LENGTH
    if content.bands == content.filled:
        return FieldKind.BAND
    if content.most(content.wordy_labels):
        return FieldKind.LABEL
    if content.running and column == 0:
        return FieldKind.SKIPPED
    if column == 0 and content.most(content.labels):
        return FieldKind.LABEL
    if content.most(content.sure_labels):
        return FieldKind.LABEL
    return FieldKind.VALUES if content.most(content.figures) else FieldKind.NOTE
