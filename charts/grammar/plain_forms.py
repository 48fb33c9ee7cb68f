"""The forms that most cells of most charts have, known at one look: 86, 86-90, 86.5 - 90 cm.

The grammar reads every one of them the same; it takes several times as long, since it is made for
cells in which a word may have several senses and a mark may be missing. A form stands here only
if its shape alone tells what it is, in whatever column.
"""

from __future__ import annotations

import re
from typing import Final

from charts.grammar.numbers import bare
from charts.grammar.settle import Draft
from charts.grammar.values import with_unit
from charts.schema import Kind

_FIGURE: Final = r"(\d{1,3}(?:[.,]\d\d?)?)"
"""Four digits may be two figures run together, three places the thousands of one."""
_FORM: Final = re.compile(
    rf"{_FIGURE}(?:(?: ?- ?| to | bis ){_FIGURE})?(?: ?(cm|kg|in))?",
    re.ASCII,
)
# An enum looks its members up anew at each mention.
_RANGE: Final = Kind.RANGE
_SINGLE: Final = Kind.SINGLE


def plain_form(plain: str, *, decimal_comma: bool) -> Draft | None:
    """The draft of a cleaned cell of a plain form, None for any other cell."""
    form = _FORM.fullmatch(plain)
    if form is None:
        return None
    first, second, unit = form.groups()
    value = bare(second or first, decimal_comma)
    low = bare(first, decimal_comma) if second else None
    if value is None or (second and low is None):
        return None
    if unit is not None:
        value = with_unit(value, unit)
    return Draft(_RANGE, low, value) if second else Draft(_SINGLE, value=value)
