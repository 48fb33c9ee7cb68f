"""One quantity of a cell: a range, a single value, a tolerance, or an end left open.

Each function takes the token to begin at and gives the draft with the token after it, or None.
They are tried in turn; the caller sees to it that the whole cell is used up.
"""

from __future__ import annotations

from decimal import Decimal
from typing import Final

from charts.grammar.numbers import Doubt, Value
from charts.grammar.senses import (
    ABOVE,
    AND,
    AT_LEAST,
    AT_MOST,
    BELOW,
    BETWEEN,
    CIRCA,
    COMMA,
    DASH,
    FILLER,
    FROM,
    LEAST,
    MOST,
    OR_LESS,
    OR_MORE,
    PLUS,
    PLUS_MINUS,
    RANGE_MARK,
    SLASH,
    TILDE,
    TO,
)
from charts.grammar.settle import Draft
from charts.grammar.tokens import Cell
from charts.grammar.values import value, with_unit
from charts.schema import Kind
from charts.unit_words import MONTHS

Parsed = tuple[Draft, int] | None
_MEASURING: Final = frozenset({"cm", "kg"})
_NO_TOLERANCE: Final = Decimal(30)
"""What no tolerance in cm or kg comes near (common practice, no source)."""
_TAKING_MORE: Final = frozenset({"ft", "st", "m", "years", MONTHS})
"""Units behind which a second number may follow, and ages, which are labels as often."""
_SLASH_LEAST: Final = Decimal(20)
_SLASH_MOST: Final = Decimal(1000)


def quantity(cell: Cell, at: int) -> Parsed:
    """The quantity that begins at a token."""
    read = _begun(cell, at)
    if read is None:
        return None
    draft, after = read
    return draft, after + bool(cell.senses[after] & FILLER)


def _begun(cell: Cell, at: int) -> Parsed:
    sense = cell.senses[at]
    if first := value(cell, at):
        return _after_value(cell, *first)
    if sense & CIRCA and (parsed := _circa(cell, at)):
        return parsed
    if sense & (FROM | BETWEEN) and (parsed := _from_to(cell, at)):
        return parsed
    if sense & (MOST | LEAST):
        return _open(cell, at)
    if sense & PLUS:
        return _least_by_plus(cell, at)
    if sense & PLUS_MINUS:
        return _lone_tolerance(cell, at)
    return None


def _after_value(cell: Cell, first: Value, at: int) -> Parsed:
    """What a value turns out to be by what stands behind it."""
    sense = cell.senses[at]
    if sense & (RANGE_MARK | SLASH) and (parsed := _to_second(cell, first, at)):
        return parsed
    if sense & PLUS_MINUS:
        return _with_tolerance(cell, first, at)
    if sense & PLUS and value(cell, at + 1) is None:
        return _with_plus(cell, first, at + 1)
    if sense & OR_MORE:
        return Draft(Kind.AT_LEAST, low=first, low_included=not sense & ABOVE), at + 1
    if sense & OR_LESS:
        return Draft(Kind.AT_MOST, high=first, high_included=not sense & BELOW), at + 1
    return Draft(Kind.SINGLE, value=first), at


def _with_plus(cell: Cell, first: Value, at: int) -> Parsed:
    """95+ and 95+ kg: the unit may stand behind the sign."""
    unit = cell.units[at]
    if unit is None or unit in _TAKING_MORE or first.unit is not None or first.whole:
        return Draft(Kind.AT_LEAST, low=first), at
    return Draft(Kind.AT_LEAST, low=with_unit(first, unit)), at + 1


def _to_second(cell: Cell, first: Value, at: int) -> Parsed:
    """The rest of a range whose lower end and separator are known."""
    below = cell.senses[at] & (DASH | TO) and cell.senses[at + 1] & BELOW
    second = value(cell, at + 1 + bool(below))
    if second is None:
        return None
    upper, after = second
    if cell.senses[at] & SLASH and not _slash_range(cell, first, upper):
        return None
    included = not (below or cell.senses[at] & BELOW)
    draft = Draft(Kind.RANGE, low=first, high=upper, high_included=included)
    if cell.senses[after] & PLUS_MINUS:
        return _with_tolerance_of_range(cell, draft, after)
    return draft, after


def _slash_range(cell: Cell, first: Value, upper: Value) -> bool:
    """86/90: both above 20, rising but not to the double, and no second unit in the heading.

    38/97 is no range: it is one figure in inches and in cm.
    """
    if cell.expected.second_unit is not None or (first.unit and first.unit != upper.unit):
        return False
    low, high = first.figure.value, upper.figure.value
    return _SLASH_LEAST < low < high < min(2 * low, _SLASH_MOST)


def _with_tolerance(cell: Cell, first: Value, at: int) -> Parsed:
    second = value(cell, at + 1)
    if second is None:
        return Draft(Kind.UNREAD, tolerance=first), at + 1
    return Draft(Kind.SINGLE, value=first, tolerance=second[0]), second[1]


def _with_tolerance_of_range(cell: Cell, draft: Draft, at: int) -> Parsed:
    second = value(cell, at + 1)
    return None if second is None else (draft._replace(tolerance=second[0]), second[1])


def _lone_tolerance(cell: Cell, at: int) -> Parsed:
    """A row of its own: +/- 1. Kind UNREAD with nothing but a tolerance.

    ``± 97 cm`` allows nothing so far off: the sign says about, as it does in Dutch.
    """
    second = value(cell, at + 1)
    if second is None:
        return None
    if second[0].unit in _MEASURING and second[0].figure.value >= _NO_TOLERANCE:
        return _circa(cell, at)
    return Draft(Kind.UNREAD, tolerance=second[0]), second[1]


def _circa(cell: Cell, at: int) -> Parsed:
    """~82cm is about 82; a tilde between two values is a range and never comes here."""
    first = value(cell, at + 1)
    if first is None:
        return None
    draft, after = _after_value(cell, *first) or (None, at)
    if draft is None or draft.kind not in {Kind.SINGLE, Kind.RANGE}:
        return None
    return draft._replace(circa=True), after


def _from_to(cell: Cell, at: int) -> Parsed:
    """Read "from 34 to 36", "between 34 and 36"; "from" alone is left to the open ends."""
    first = value(cell, at + 1)
    if first is None:
        return None
    lower, after = first
    joined = AND if cell.senses[at] & BETWEEN else 0
    if not cell.senses[after] & (RANGE_MARK | joined):
        return None
    if cell.senses[after] & joined and not cell.senses[after] & RANGE_MARK:
        second = value(cell, after + 1)
        return None if second is None else (Draft(Kind.RANGE, lower, second[0]), second[1])
    return _to_second(cell, lower, after)


def _open(cell: Cell, at: int) -> Parsed:
    """A word or sign in front of a value; two of them make both ends."""
    sense = cell.senses[at]
    first = value(cell, at + 1)
    if first is None:
        return None
    limit, after = first
    if sense & LEAST:
        return _said_again(cell, _least(cell, limit, after, included=bool(sense & AT_LEAST)))
    if cell.senses[after] & (RANGE_MARK | PLUS_MINUS) and value(cell, after + 1):
        return None
    return Draft(Kind.AT_MOST, high=limit, high_included=bool(sense & AT_MOST)), after


def _said_again(cell: Cell, parsed: Parsed) -> Parsed:
    """``ab 70 kg aufwärts``: the word behind says the open end once more."""
    if parsed is None or parsed[0].kind is not Kind.AT_LEAST:
        return parsed
    draft, after = parsed
    return (draft, after + 1) if cell.senses[after] & OR_MORE else parsed


def _least(cell: Cell, limit: Value, at: int, *, included: bool) -> Parsed:
    """> 80, > 80 and < 90, over 80 to 90."""
    behind = at + bool(cell.senses[at] & (COMMA | AND | DASH))
    behind += bool(cell.senses[behind] & AND) and behind > at
    if cell.senses[behind] & MOST and (second := value(cell, behind + 1)):
        both = Draft(
            Kind.RANGE,
            low=limit,
            high=second[0],
            low_included=included,
            high_included=not cell.senses[behind] & BELOW,
        )
        return both, second[1]
    if cell.senses[at] & TO and (parsed := _to_second(cell, limit, at)):
        return parsed[0]._replace(low_included=included), parsed[1]
    if cell.senses[at] & (DASH | TILDE | PLUS_MINUS) and value(cell, at + 1):
        return None
    return Draft(Kind.AT_LEAST, low=limit, low_included=included), at


def _least_by_plus(cell: Cell, at: int) -> Parsed:
    """+16 kg: at least 16."""
    first = value(cell, at + 1)
    return None if first is None else (Draft(Kind.AT_LEAST, low=first[0]), first[1])


def lost_plus_minus(cell: Cell, at: int) -> Parsed:
    """24 + 1, 24 / + 1: the ± lost its minus; always asked."""
    first = value(cell, at)
    if first is None:
        return None
    nominal, after = first
    after += bool(cell.senses[after] & SLASH)
    if not cell.senses[after] & PLUS:
        return None
    second = value(cell, after + 1)
    if second is None:
        return None
    doubt = Doubt("separator-lost", "plus-minus")
    draft = Draft(Kind.SINGLE, value=nominal, tolerance=second[0], doubt=doubt)
    return draft, second[1]
