"""Girths at half of what a body measures: a garment laid flat, which the table does not say.

Nothing is doubled. The question bears on every value of every column that may be halves.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.band_words import band_around, measured_here
from charts.columns.fitting import printed_figures
from charts.columns.loose_backs import is_a_garments_length
from charts.columns.meaning import Column
from charts.columns.perhaps_lengths import may_be_a_length
from charts.columns.words import Surroundings
from charts.dimensions import Role, plausible
from charts.layout.fields import FieldKind
from charts.layout.looks import look
from charts.plausible_ranges import half_of_a_girth
from charts.quantities import canonical
from charts.schema import Basis, Definition, Dimension
from charts.size_labels import LabelKind

_GIRTHS: Final = frozenset({Dimension.CHEST, Dimension.WAIST, Dimension.HIP})
_FLAT_CM: Final = (Decimal(36), Decimal(67))
"""Chest figures in cm of adults' sizes that are halves laid flat."""
_NO_WHOLE: Final = Decimal("1.4")
"""A whole waist or hip is more than this times half a chest (common practice, no source)."""
_WIDEST: Final = Decimal(80)
"""Half of a chest is never more, however large the garment (common practice, no source)."""
_SMALLEST: Final = Decimal(52)
_LARGEST: Final = Decimal(76)
"""From a half no child's girth reaches to one no grown-up's does (common practice, no source)."""
_ADULT_HEIGHT_CM: Final = Decimal(150)
_GROWN: Final = frozenset({"women", "men", "unisex", None})
_SAID_GROWN: Final = frozenset({"women", "men"})


def halves_doubted(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with a question on the girths that are perhaps halves laid flat."""
    doubted = _below_any_body(_flat_doubted(columns, around), around)
    return _beside_flat(_longer_than_round(doubted, around), around)


def _longer_than_round(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """Chests in every size no larger than the garment is long: halves of a grown-up's vest.

    What is worn on the body goes round more than it is long, unless it is a dress or a coat.
    """
    if not may_be_grown(columns, around):
        return list(columns)
    lengths = [figures for one in columns if _is_long(one) and (figures := _in_cm(one))]
    chests = [one for one in columns if _narrow(one, lengths)]
    if not chests:
        return list(columns)
    widest = max(figure for one in chests for figure in _in_cm(one))
    return _asked(columns, chests[0], around, lambda one: _no_wider(one, widest))


def _is_long(column: Column) -> bool:
    """A length of the garment, or of a back, which nobody's chest is as narrow as."""
    named = (Role.MEASURE, Dimension.BACK_LENGTH) in column.field.heading.candidates
    back = named or column.field.heading.dimension is Dimension.BACK_LENGTH
    doubled = column.definition is Definition.BACK_WAIST_SHOULDER_WAIST
    return is_a_garments_length(column) or (back and not doubled)


def _narrow(column: Column, lengths: Sequence[Sequence[Decimal]]) -> bool:
    """Whether a chest of unsaid basis can be a half, and is no larger than a length beside it."""
    if column.dimension is not Dimension.CHEST or not _unsaid(column):
        return False
    figures = _in_cm(column)
    if not figures or min(figures) < _FLAT_CM[0] or max(figures) > _WIDEST:
        return False
    return any(
        len(beside) == len(figures)
        and all(round_it <= long for round_it, long in zip(figures, beside, strict=True))
        for beside in lengths
    )


def _unsaid(column: Column) -> bool:
    return column.basis in {Basis.UNKNOWN, Basis.FINISHED} and not column.laid_flat


def _no_wider(column: Column, widest: Decimal) -> bool:
    """A girth of unsaid basis that is no whole one beside half a chest."""
    figures = _in_cm(column) if column.dimension in _GIRTHS and _unsaid(column) else []
    return bool(figures) and max(figures) < _NO_WHOLE * widest


def _below_any_body(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """Girths that begin below any body's and end among halves: the larger ones are halves too.

    Beside the ages or the heights of children they are asked about one by one.
    """
    if worn_by_children(columns, around):
        return list(columns)
    small = [one for one in columns if among_halves(one) and not one.laid_flat]
    if not any(_too_small_for_a_body(one) for one in small):
        return list(columns)
    return _asked(columns, small[0], around, small.__contains__)


def worn_by_children(columns: Sequence[Column], around: Surroundings) -> bool:
    """Whether ages name the sizes, or a column of ages or children's heights stands beside."""
    return any(_of_children(column) for column in columns) or LabelKind.AGE in _labels(around)


def asked_as_half(column: Column, around: Surroundings) -> Column:
    """One column with the question whether its figures are halves."""
    return _asked([column], column, around, lambda _: True)[0]


def asked_as_halves(
    columns: Sequence[Column], is_half: Callable[[Column], bool], around: Surroundings
) -> list[Column]:
    """The columns with one question on those that are perhaps halves, of which there is one."""
    return _asked(columns, next(filter(is_half, columns)), around, is_half)


def among_halves(column: Column) -> bool:
    """Whether every figure of a girth that is not said to lie flat is one of halves."""
    if column.dimension not in _GIRTHS or column.basis is Basis.FLAT:
        return False
    figures = [(value, own or column.unit) for value, own in printed_figures(column.field)]
    limits = [(value, half_of_a_girth(column.dimension, unit)) for value, unit in figures if unit]
    return bool(limits) and all(
        half is not None and half[0] <= value <= half[1] for value, half in limits
    )


def _flat_doubted(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """Chests of adults' sizes at half a girth: asked for every girth of the table at once."""
    halves = [one for one in columns if one.dimension is Dimension.CHEST and _half(one)]
    if not halves or not _adults(columns, around):
        return list(columns)
    return _asked(columns, halves[0], around, _half)


def _beside_flat(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """Girths without a word beside one that is said to lie flat, and no larger: halves as well."""
    flat = [one for one in columns if one.dimension in _GIRTHS and one.basis is Basis.FLAT]
    widest = max((figure for one in flat for figure in _in_cm(one)), default=Decimal(0))
    doubted = [
        one
        for one in columns
        if one.dimension in _GIRTHS
        and one.basis in {Basis.UNKNOWN, Basis.FINISHED}
        and not one.laid_flat
        and 0 < max(_in_cm(one), default=Decimal(0)) < _NO_WHOLE * widest
    ]
    if not doubted:
        return list(columns)
    return _asked(columns, doubted[0], around, doubted.__contains__)


def _asked(
    columns: Sequence[Column],
    first: Column,
    around: Surroundings,
    is_half: Callable[[Column], bool],
) -> list[Column]:
    """The columns with one question, at the first of them, on those that may be halves."""
    ident = around.log.add("laid-flat", first.place, key=around.table.area, heading=first.heading)
    return [
        replace(column, laid_flat=True).asking(ident) if is_half(column) else column
        for column in columns
    ]


def _in_cm(column: Column) -> list[Decimal]:
    """Every figure of a column of lengths in cm; none where its unit is not known."""
    return [
        canonical(value, unit)
        for value, own in printed_figures(column.field)
        if (unit := own or column.unit) is not None
    ]


def _half(column: Column) -> bool:
    """A girth without a word for its basis, all of whose figures are at half an adult's."""
    if column.dimension not in _GIRTHS or column.basis is Basis.FLAT:
        return False
    if column.basis is Basis.BODY and not _too_small_for_a_body(column):
        return False
    low, high = _FLAT_CM
    figures = _in_cm(column)
    if not figures or min(figures) < low:
        return False
    return max(figures) <= high or (min(figures) <= _SMALLEST and max(figures) <= _LARGEST)


def _too_small_for_a_body(column: Column) -> bool:
    """Beside a height a girth is the body's, unless one of its figures can be no body's."""
    if column.field.heading.basis is Basis.BODY:
        return False
    for value, own in printed_figures(column.field):
        unit = own or column.unit
        limits = plausible(column.dimension, unit, column.definition) if unit else None
        if limits is not None and value < limits[0]:
            return True
    return False


def _adults(columns: Sequence[Column], around: Surroundings) -> bool:
    """Letters for sizes or a band of grown-ups, and nothing of children."""
    banded = band_around(around) in _SAID_GROWN and may_be_grown(columns, around)
    return banded or letters_of_grown_ups(columns, around)


def letters_of_grown_ups(columns: Sequence[Column], around: Surroundings) -> bool:
    """Letters for sizes, and nothing of children."""
    return LabelKind.ALPHA in _labels(around) and may_be_grown(columns, around)


def may_be_grown(
    columns: Sequence[Column], around: Surroundings, *, beside_ages: bool = False
) -> bool:
    """No children's band, no heights of children, and no ages but beside those of some lines."""
    table = around.table
    if LabelKind.AGE in _labels(around) and not beside_ages:
        return False
    near = (words for words in around.words if not measured_here(words, around))
    bands = {look(words.text).band for words in near}
    bands |= {
        look(cell[0].text).band for f in table.of(FieldKind.LABEL) for cell in f.cells if cell
    }
    aged = Dimension.AGE if beside_ages else None
    others = (column for column in columns if column.dimension is not aged)
    return bands <= _GROWN and not any(map(_of_children, others))


def _labels(around: Surroundings) -> set[LabelKind]:
    """The kinds of labels that the sizes of a table have."""
    return {
        one.label.kind
        for field in around.table.of(FieldKind.LABEL)
        for cell in field.cells
        if cell and (one := look(cell[0].text)).label is not None
    }


def _of_children(column: Column) -> bool:
    if column.dimension is Dimension.AGE:
        return True
    if column.dimension is not Dimension.HEIGHT or column.unit is None:
        return False
    if may_be_a_length(column):
        return False
    heights = [canonical(value, own or column.unit) for value, own in printed_figures(column.field)]
    return bool(heights) and max(heights) < _ADULT_HEIGHT_CM
