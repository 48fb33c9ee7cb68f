"""The cautions of a sheet: always the same ones, and what the rider's own readings add."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from charts.cautions import GENERAL
from charts.wording import LANGUAGES, Wording
from harmonizer.cautions import cautions_for
from harmonizer.rider import BodyFigure, Measure, Reading, Rider, TakenBy

CHEST = Reading(Measure.CHEST, Decimal(92), on=date(2027, 2, 11))
WAIST = Reading(Measure.WAIST, Decimal(76), on=date(2026, 11, 3), taken_by=TakenBy.SELF)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("taker", TakenBy)
@pytest.mark.parametrize("readings", [(), (CHEST,)])
def test_every_sheet_carries_the_general_ones_and_who_measured(
    language: str, taker: TakenBy, readings: tuple[Reading, ...]
) -> None:
    said = cautions_for(Rider("R", readings, taken_by=taker), Wording(language))
    assert len(set(said)) == len(GENERAL) + 1


def test_the_oldest_day_and_the_least_sure_tape_hold_for_the_sheet() -> None:
    rider = Rider("R", (CHEST, WAIST), taken_by=TakenBy.FITTER)
    assert cautions_for(rider, Wording())[1] == (
        "Computed from readings the rider took alone, at least in part, since 3 Nov 2026."
    )


def test_a_childs_sheet_says_that_it_holds_until_the_next_check() -> None:
    said = cautions_for(Rider("R", figure=BodyFigure.CHILD), Wording())
    assert said[-1] == "A child grows: this holds until the next check only."


@pytest.mark.parametrize("language", LANGUAGES)
def test_nothing_is_promised(language: str) -> None:
    said = " ".join(cautions_for(Rider("R", (CHEST,)), Wording(language))).casefold()
    assert not [word for word in ("safe", "guarante", "sicher", "garant") if word in said]
