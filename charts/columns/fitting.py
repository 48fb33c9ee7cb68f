"""Whether the figures of a column can be what a reading of its heading would make of them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from decimal import Decimal

from charts.columns.said_of_some import said_of_all, said_of_some
from charts.columns.words import Surroundings, of_family
from charts.dimensions import plausible, usual
from charts.headings.whose import whose
from charts.layout.fields import Field
from charts.layout.looks import look
from charts.notation import Expected, read_cell
from charts.plausible_ranges import Limits
from charts.quantities import FAMILY, Family, Unit, factor
from charts.remembered import remembered
from charts.schema import Basis, Definition, Dimension

_LENGTH_UNITS = (Unit.CM, Unit.IN, Unit.MM, Unit.M)
_MASS_UNITS = (Unit.KG, Unit.LB)
_GARMENT_LENGTH_CM = (Decimal(20), Decimal(110))
"""What a vest or a coat is long (common practice, no source); a person is taller."""
_STRAYS = 5
"""Of so many figures one may have come from another column."""
_GIRTHS = frozenset({Dimension.CHEST, Dimension.HIP})
_ROUND_THE_BODY = frozenset({Dimension.CHEST, Dimension.WAIST, Dimension.HIP})
_GARMENTS = frozenset({Basis.FINISHED, Basis.FLAT})


def telling(dimension: Dimension, unit: Unit, definition: Definition) -> Limits | None:
    """The narrower limits that tell two readings apart. What a garment's length can be is ours."""
    if dimension is Dimension.OTHER:
        low, high = _GARMENT_LENGTH_CM
        return low / factor(unit), high / factor(unit)
    del definition
    return usual(dimension, unit)


def fits(
    one: Field,
    dimension: Dimension,
    unit: Unit | None = None,
    *,
    limits: Callable[[Dimension, Unit, Definition], Limits | None] = plausible,
) -> bool:
    """Whether every figure of a column can be one of ``dimension``, in its unit or in any.

    ``limits`` is what is plausible at all, or the usual values that tell false friends apart. A
    cell among many that prints a unit of something else is a stray, and no reading's.
    """
    printed = printed_figures(one)
    figures = [each for each in printed if not (each[1] and _of_other_kind(each[1], dimension))]
    units = _MASS_UNITS if dimension is Dimension.WEIGHT else _LENGTH_UNITS
    said = unit or next(iter(of_family((one.heading.unit,), FAMILY[units[0]])), None)
    definition = one.heading.definition
    if not figures or _STRAYS * (len(printed) - len(figures)) > len(printed):
        return False
    for trial in (said,) if said else units:
        if all(
            _within(limits(dimension, own or trial, definition), value) for value, own in figures
        ):
            return True
    return False


def _of_other_kind(unit: Unit, dimension: Dimension) -> bool:
    """Whether a cell prints a mass where a length is due, or the other way round."""
    if dimension in {Dimension.OTHER, Dimension.AGE}:
        return False
    return FAMILY[unit] is not (Family.MASS if dimension is Dimension.WEIGHT else Family.LENGTH)


def _within(limits: Limits | None, value: Decimal) -> bool:
    return limits is None or limits[0] <= value <= limits[1]


@remembered
def printed_figures(one: Field) -> list[tuple[Decimal, Unit | None]]:
    """Every figure of a column with the unit its cell prints, as far as cells can be read."""
    heading = one.heading
    expected = Expected(heading.dimension, basis=heading.basis, definition=heading.definition)
    found: list[tuple[Decimal, Unit | None]] = []
    for cell in one.cells:
        for at in cell:
            quantity = read_cell(at.text, expected).quantity
            if quantity is None:
                continue
            ends = (quantity.low, quantity.high, quantity.value)
            found += [(end.value, quantity.unit) for end in ends if end is not None]
    return found


def no_height(one: Field, around: Surroundings) -> bool:
    """Whether a column cannot be how tall people are.

    The nearest words say that garments were measured, or a girth beside it is larger throughout.
    """
    heading = one.printed_heading
    said = [whose(said_of_all(words, heading, around)).basis for words in around.words]
    particular = said_of_some(heading, around)
    if particular is not None:
        said.insert(0, particular.said.basis)
    if next((basis for basis in said if basis is not Basis.UNKNOWN), None) in _GARMENTS:
        return True
    return below_a_girth(one, around)


def below_a_girth(one: Field, around: Surroundings) -> bool:
    """Whether a girth beside a column is larger throughout: nobody is so tall."""
    own = [figure for figure, _ in printed_figures(one)]
    units = {one.heading.unit, *(unit for _, unit in printed_figures(one))}
    for other in around.table.fields:
        figures = printed_figures(other) if other.heading.dimension in _GIRTHS else []
        alike = {other.heading.unit, *(unit for _, unit in figures)} == units
        if own and figures and alike and max(own) < min(figure for figure, _ in figures):
            return True
    return False


def names_more(one: Field) -> bool:
    """Whether an unknown word as long as a word stands beside the known one."""
    return any(word.isalpha() and len(word) > 2 for word in one.heading.rest.split())


def is_back(one: Field) -> bool:
    """Whether every figure of a column is a usual length of a back."""
    return fits(one, Dimension.BACK_LENGTH, limits=telling)


def too_much_said(one: Field, dimensions: Sequence[Dimension]) -> bool:
    """Two girths, two measures and unknown words, or a sleeve to somewhere, are for a person."""
    if len(_ROUND_THE_BODY & set(dimensions)) > 1:
        return True  # "Waist/chest" over one range is either, whichever its figures fit
    several = len(dimensions) > 1 and Dimension.OTHER not in dimensions
    return (several and bool(one.heading.rest)) or (
        dimensions[:1] == [Dimension.ARM_LENGTH] and names_more(one)
    )


def all_masses(one: Field) -> bool:
    """Whether every figure of a column prints a unit of mass."""
    units = [
        quantity.unit
        for cell in one.cells
        for at in cell
        if (quantity := look(at.text).reading.quantity) is not None
    ]
    return bool(units) and all(unit in {Unit.KG, Unit.LB, Unit.ST} for unit in units)
