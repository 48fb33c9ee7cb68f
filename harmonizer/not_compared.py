"""Sizes of which nothing could be compared: where they are, and what it would take. No verdict.

The verdict of such a size is *no*, "nothing to go by"; but nothing is known against it either, so a
person must not read that it does not fit.
"""

from __future__ import annotations

from typing import Final

import numpy as np
import numpy.typing as npt

from charts.reason import Reason
from charts.schema import Dimension
from harmonizer.comparison import BACK, HIP
from harmonizer.fit_arrays import FitArrays
from harmonizer.fit_row import FitRow
from harmonizer.states import MISS, NOT_CHECKED, TOO_SHORT, VERDICTS, Verdict

_NO: Final = VERDICTS.index(Verdict.NO)
_OF_THE_CHART: Final = frozenset({"not-listed", "unread", "finished", "laid-flat"})


def not_compared(sheet: FitArrays) -> npt.NDArray[np.bool_]:
    """Which sizes say *no* only because neither chest nor waist could be checked.

    A vest that is too short, too long or refused is told by that, and one whose hip misses by that,
    whatever its other girths.
    """
    nothing = (sheet.verdicts == _NO) & (sheet.girths == NOT_CHECKED)
    known = (sheet.states[BACK] == TOO_SHORT) | (sheet.states[HIP] == MISS)
    return np.asarray(nothing & ~known)


def is_not_compared(row: FitRow) -> bool:
    """The same of one size."""
    sheet, at = row.arrays, row.at
    nothing = sheet.verdicts[at] == _NO and sheet.girths[at] == NOT_CHECKED
    known = sheet.states[BACK, at] == TOO_SHORT or sheet.states[HIP, at] == MISS
    return bool(nothing and not known)


def why_not_compared(row: FitRow) -> Reason | None:
    """What it would take to compare a size: a reading, else what its chart lacks.

    None where something was compared.
    """
    if not is_not_compared(row):
        return None
    codes = {
        girth: row.dimensions[girth].reason.code for girth in (Dimension.CHEST, Dimension.WAIST)
    }
    wanted = [girth for girth, code in codes.items() if code == "no-reading"]
    if len(wanted) > 1:
        return Reason("uncompared-both")
    if wanted:
        return Reason("uncompared-one", {"dimension": wanted[0]})
    first, second = codes.values()
    if first == second and first in _OF_THE_CHART:
        return Reason(f"uncompared-{first}")
    return Reason("uncompared-chart")
