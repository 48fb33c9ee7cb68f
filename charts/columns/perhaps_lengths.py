"""Heights that may be how long a garment is: they tell nothing of the figures beside them.

``Boy 105, 107, 109`` is asked about. Until a person has said that it is the wearer's height, a
girth beside it is neither the body's nor a child's.
"""

from __future__ import annotations

from charts.columns.meaning import Column
from charts.dimensions import Role
from charts.schema import Dimension

_A_LENGTH = (Role.MEASURE, Dimension.OTHER)


def may_be_a_length(column: Column) -> bool:
    """Whether a height is asked about as a garment's length; not what only a child is tall."""
    asked = bool(column.findings) and not column.doubted
    return (
        asked
        and column.dimension is Dimension.HEIGHT
        and _A_LENGTH in column.field.heading.candidates
    )
