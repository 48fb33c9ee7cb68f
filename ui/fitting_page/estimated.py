"""What height and weight let be expected where a reading is missing: grey, and never a reading.

No Qt. Only estimates between the very points that the field asks for; adults only.
"""

from __future__ import annotations

from collections.abc import Mapping

from charts.wording import Wording
from harmonizer.estimates import Estimate, estimates
from harmonizer.repeats import settled
from harmonizer.rider import Measure
from harmonizer.settings import DEFAULTS, Settings
from ui.fitting_page.draft import ASKED, Draft, asked_definition


def estimated(
    draft: Draft, wording: Wording, settings: Settings = DEFAULTS
) -> Mapping[Measure, str]:
    """The estimate of every missing reading with the range of 19 riders in 20, by measure."""
    rider = draft.rider()
    found = estimates(rider.figure, settled(rider, settings))
    return {
        one.measure: _said(one, wording)
        for one in found
        if one.measure in ASKED
        and draft.reading(one.measure) is None
        and one.definition is asked_definition(one.measure, settings)
    }


def _said(one: Estimate, wording: Wording) -> str:
    low, mean, high = (wording.number(value, "1") for value in (one.low, one.mean, one.high))
    return wording.say("advice", "estimate", low=low, mean=mean, high=high)
