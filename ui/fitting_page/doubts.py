"""What is to be asked about the readings of a draft, field by field. No Qt.

The engine's checks ask and correct nothing; here each becomes a question beside the field it is
about, with the reading as it stands and, where there is one, the other it may have been.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from decimal import Decimal
from typing import Final

from charts.quantities import Unit
from charts.wording import Wording
from harmonizer.explain import sentence
from harmonizer.plausibility import Check, Weight, checks
from harmonizer.rider import Measure
from harmonizer.rider_before import dated
from harmonizer.settings import DEFAULTS, Settings
from ui.fitting_page.draft import ASKED, Draft, text_of
from ui.fitting_page.past import NOTHING_BEFORE, LastTime, Past, last_reading
from ui.fitting_page.typed import Standing, Typed

_STEP: Final = Decimal("0.1")
_NO_ANSWER: Final = frozenset({"third-reading"})
"""What is no matter of right or wrong: it goes away by measuring, not by an answer."""
_SINCE: Final = frozenset({"changed", "changed-since", "grown", "grown-since"})
"""What is asked because it was otherwise last time."""


@dataclass(frozen=True, slots=True)
class Doubt:
    """One question about the reading of ``measure``.

    ``key`` is what is remembered when the reading is said to be right; ``text`` is the reading as
    it stands, ``other`` what it may have been; ``may_stay`` whether it can be said to be right.
    ``earlier`` is what was read last time, where that is what it may have been.
    """

    measure: Measure
    key: str
    asks: str
    text: str
    alarm: bool
    other: Typed | None = None
    may_stay: bool = True
    earlier: LastTime | None = None


def doubts_on(
    draft: Draft, wording: Wording, settings: Settings = DEFAULTS, past: Past = NOTHING_BEFORE
) -> Mapping[Measure, Doubt]:
    """The weightiest doubt of each field, without those that were said to be right."""
    found: dict[Measure, Doubt] = {}
    before = past.before(draft)
    rider = dated(draft.rider(), past.day())
    asked = sorted(checks(rider, before, settings), key=_weight)
    for check in asked:
        measure = _field_of(check, draft)
        if measure is None or measure in found:
            continue
        doubt = _doubt(check, measure, draft, wording)
        if check.reason.code in _SINCE:
            earlier = last_reading(before, draft, measure, wording, settings)
            doubt = replace(doubt, earlier=earlier, key=f"{doubt.key}:{check.reason.values['y']}")
        if doubt.key not in draft.confirmed:
            found[measure] = doubt
    return found


def _weight(check: Check) -> tuple[bool, bool]:
    """What names another reading first, then what is almost surely a mistake."""
    return "other" not in check.reason.values, check.weight is not Weight.ALARM


def _field_of(check: Check, draft: Draft) -> Measure | None:
    """The field to ask beside: of two measures the one that was asked for last."""
    fields = [one for one in check.measures if one in ASKED and draft.reading(one) is not None]
    if check.reason.code == "back-to-height":
        return Measure.BACK_LENGTH
    return max(fields, key=ASKED.index, default=None)


def _doubt(check: Check, measure: Measure, draft: Draft, wording: Wording) -> Doubt:
    values = [draft.reading(one) for one in check.measures]
    key = ":".join([check.reason.code, *(str(one.value) for one in values if one is not None)])
    reading = draft.reading(measure)
    return Doubt(
        measure=measure,
        key=key,
        asks=sentence(check.reason, wording),
        text=text_of(reading) if reading else "",
        alarm=check.weight is Weight.ALARM,
        other=_other(check),
        may_stay=check.reason.code not in _NO_ANSWER,
    )


def _other(check: Check) -> Typed | None:
    """The other reading as if it had been typed, to the millimetre."""
    value = check.reason.values.get("other")
    if not isinstance(value, float):
        return None
    figure = Decimal(repr(value)).quantize(_STEP).normalize()
    return Typed(Standing.PLAIN, f"{figure:f} cm", figure, Unit.CM, figure)
