"""How far each reading may be out by the tape it was taken with, beside its field. No Qt."""

from __future__ import annotations

from collections.abc import Mapping

from charts.wording import Wording
from harmonizer.explain import sentence
from harmonizer.repeats import settled, tape
from harmonizer.rider import Measure
from harmonizer.settings import DEFAULTS, Settings
from ui.fitting_page.draft import ASKED, Draft


def tape_words(
    draft: Draft, wording: Wording, settings: Settings = DEFAULTS
) -> Mapping[Measure, str]:
    """Whose tape it was and its spread, of every reading of which that is known, by measure."""
    return {
        one.measure: wording.say("advice", "tape", tape=sentence(known, wording))
        for one in settled(draft.rider(), settings)
        if one.measure in ASKED and (known := tape(one)) is not None
    }
