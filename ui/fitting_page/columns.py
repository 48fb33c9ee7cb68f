"""The table's columns and how wide they are. No Qt: widths are numbers from the room there is."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import IntEnum
from typing import Final

from charts.schema import Dimension
from ui.drawing.scale import Scale
from ui.fitting_page.rows import TAPES


class Column(IntEnum):
    """From left to right."""

    MODEL = 0
    SIZE = 1
    VERDICT = 2
    CHEST = 3
    WAIST = 4
    HIP = 5
    BACK = 6
    NOTE = 7


TAPE_COLUMNS: Final[Mapping[Column, Dimension]] = dict(
    zip((Column.CHEST, Column.WAIST, Column.HIP, Column.BACK), TAPES, strict=True)
)

# All measures in pixels at a line of 16: narrow where room is short, wide where there is plenty.
_NAMES: Final[Mapping[Column, tuple[float, float]]] = {
    Column.MODEL: (104.0, 236.0),
    Column.SIZE: (46.0, 80.0),
}
_NOTE: Final = 98.0
_VERDICT: Final = 138.0
_TAPE_LEAST: Final = 124.0
_TAPE_COMFORT: Final = 147.0
_TAPE_MOST: Final = 300.0
_ROOMY: Final = 3 * _TAPE_LEAST  # below this the column of notes goes
PAD_LEFT: Final = 10.0
PAD_RIGHT: Final = 12.0


@dataclass(frozen=True, slots=True)
class ColumnPlan:
    """Widths in whole pixels; a column that is not shown is not in it."""

    widths: Mapping[Column, int]

    @property
    def tapes(self) -> tuple[Column, ...]:
        """The tapes shown, from left to right."""
        return tuple(column for column in self.widths if column in TAPE_COLUMNS)


def plan(
    width: float,
    unit: float,
    *,
    notes: bool,
    first_tape: int = 0,
    verdict: float = _VERDICT,
) -> ColumnPlan:
    """Share ``width`` pixels; ``unit`` is a pixel at a line of 16 and grows with the font.

    The first three columns always stay; the notes give way before the tapes do. Where four tapes
    do not fit, as many as do are shown from ``first_tape`` on, so that nothing ever scrolls
    sideways. ``verdict`` is what the longest word of a verdict needs, at a line of 16.
    """
    if notes and width - sum(_fixed(width, unit, True, verdict).values()) < _ROOMY * unit:
        notes = False  # the reasons say the same, and the tapes need the room more
    fixed = _fixed(width, unit, notes, verdict)
    shown = _shown(width - sum(fixed.values()), unit, first_tape)
    widths = fixed | shown
    spare = int(width) - sum(widths.values())
    widths[Column.NOTE if notes else Column.MODEL] += max(0, spare)
    return ColumnPlan({column: widths[column] for column in sorted(widths)})


def _shown(room: float, unit: float, first_tape: int) -> dict[Column, int]:
    """As many tapes as fit ``room``, equally wide, from ``first_tape`` on."""
    fitting = int(room / (_TAPE_LEAST * unit) + 1e-6)
    count = max(1, min(len(TAPE_COLUMNS), fitting))
    first = min(first_tape, len(TAPE_COLUMNS) - count)
    each = int(min(room / count, _TAPE_MOST * unit))
    return dict.fromkeys(list(TAPE_COLUMNS)[first : first + count], each)


def _fixed(width: float, unit: float, notes: bool, verdict: float) -> dict[Column, int]:
    """The columns beside the tapes: what is left over comfortable tapes makes them wider."""
    note = (_NOTE if notes else 0.0) * unit + verdict * unit
    least = sum(narrow for narrow, _ in _NAMES.values()) * unit
    most = sum(wide for _, wide in _NAMES.values()) * unit
    spare = width - note - _TAPE_COMFORT * unit * len(TAPE_COLUMNS) - least
    share = max(0.0, min(1.0, spare / (most - least)))
    fixed = {
        column: int((narrow + (wide - narrow) * share) * unit)
        for column, (narrow, wide) in _NAMES.items()
    }
    fixed[Column.VERDICT] = int(verdict * unit)
    return fixed | ({Column.NOTE: int(_NOTE * unit)} if notes else {})


def tape_scale(
    left: float, width: float, unit: float, centre_cm: float, half_span_cm: float
) -> Scale:
    """The tape inside a column that starts at ``left`` and is ``width`` pixels wide.

    Its middle falls between two pixels, so that the rider's line there is sharp.
    """
    half = (width - (PAD_LEFT + PAD_RIGHT) * unit) / 2
    centre = round(left + PAD_LEFT * unit + half)
    return Scale(centre_cm, half_span_cm, centre - half, centre + half)


def beside(column: Column, step: int, *, notes: bool) -> Column | None:
    """The column one ``step`` left or right of ``column``, shown or not; None beyond the end."""
    columns = [one for one in Column if notes or one is not Column.NOTE]
    place = columns.index(column) + step
    return columns[place] if 0 <= place < len(columns) else None
