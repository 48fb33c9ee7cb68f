"""How sure a reading is stands in words at its field: whose tape, how far out, how often."""

from __future__ import annotations

from dataclasses import replace

import pytest

from charts.wording import Wording
from harmonizer.rider import Measure, TakenBy
from harmonizer.settings import DEFAULTS
from tests.ui.shop import rider_of
from ui.desk import Desk
from ui.fitting_page.draft import Draft
from ui.fitting_page.tape_words import tape_words

FITTER = "How sure: a fitter's tape, read twice, ± 1.6 cm, 19 times in 20."


@pytest.mark.parametrize(
    ("taker", "language", "said"),
    [
        (TakenBy.FITTER, "en", FITTER),
        (
            TakenBy.HELPER,
            "de",
            "Wie sicher: von einer Hilfsperson gemessen, ± 2,9 cm, in 19 von 20 Fällen.",
        ),
    ],
)
def test_a_reading_says_whose_tape_it_was_and_how_far_it_may_be_out(
    taker: TakenBy, language: str, said: str
) -> None:
    """1.96 times the standard uncertainty of the fit model's table: 0.8 and 1.5 cm."""
    draft = Draft(replace(rider_of(chest=93), taken_by=taker))
    assert tape_words(draft, Wording(language)) == {Measure.CHEST: said}


def test_what_has_no_tape_says_nothing_and_a_back_taken_alone_counts_for_nothing() -> None:
    alone = Draft(replace(rider_of(back_length=43, weight=70, height=170), taken_by=TakenBy.SELF))
    assert tape_words(alone, Wording()) == {}


def test_the_shops_own_figure_is_the_one_that_is_said() -> None:
    settings = replace(DEFAULTS, u_girth_fitter=1.0)
    said = tape_words(Draft(rider_of(chest=93)), Wording(), settings)
    assert "± 2 cm" in said[Measure.CHEST]


def test_the_field_tells_it_to_who_points_and_to_who_listens(desk: Desk) -> None:
    page = desk.window.fitting
    page.show_draft(Draft(rider_of(chest=93)))
    chest, waist = (page.readings.fields[one] for one in (Measure.CHEST, Measure.WAIST))
    assert chest.line.toolTip() == FITTER
    assert chest.line.edit.accessibleDescription() == f"{chest.hint.text()}. {FITTER}"
    assert waist.line.toolTip() == ""
    assert "tape" not in waist.line.edit.accessibleDescription()


def test_another_taker_for_this_reading_alone_changes_its_words(desk: Desk) -> None:
    page = desk.window.fitting
    page.show_draft(Draft(rider_of(chest=93)))
    page.readings.draft = page.readings.draft.turning_taker(Measure.CHEST)
    page.readings.take_settings(replace(DEFAULTS, hand_width=8.0))
    assert "read once, ± 2.2 cm" in page.readings.fields[Measure.CHEST].line.toolTip()
