"""Checks on what was typed: they ask, and correct nothing."""

from __future__ import annotations

from decimal import Decimal

import pytest

from charts.schema import Definition
from charts.wording import LANGUAGES, Wording
from harmonizer.estimates import estimates
from harmonizer.explain import sentence
from harmonizer.plausibility import Check, Weight, checks
from harmonizer.repeats import settled
from harmonizer.rider import BodyFigure, Measure, Rider
from harmonizer.settings import DEFAULTS
from tests.harmonizer.by_hand import reading, rider

NAVEL, SEAT = Definition.WAIST_NAVEL, Definition.HIP_SEAT


def woman(**more: object) -> Rider:
    return rider(height=168, weight=62, figure=BodyFigure.WOMAN, **more)


def asked(who: Rider, before: Rider | None = None) -> dict[str, Check]:
    found = checks(who, before)
    for one in found:
        for language in LANGUAGES:
            assert sentence(one.reason, Wording(language))
    return {one.reason.code: one for one in found}


def z_of(who: Rider, measure: Measure) -> float:
    known = settled(who, DEFAULTS)
    value = next(one.value for one in known if one.measure is measure)
    return next(one for one in estimates(who.figure, known) if one.measure is measure).z(value)


def test_a_plausible_rider_is_asked_nothing() -> None:
    assert asked(woman(chest=89, waist=76, hip=97, back_length=45)) == {}


def test_inch_slip() -> None:
    """[pop] Section 13: chest 36 is z -12.4 as cm and +0.62 as inches."""
    slip = asked(woman(chest=36))
    assert set(slip) == {"inches"}
    assert slip["inches"].reason.values["other"] == pytest.approx(91.44)
    assert z_of(woman(chest=36), Measure.CHEST) == pytest.approx(-12.4, abs=0.05)
    assert z_of(woman(chest="91.44"), Measure.CHEST) == pytest.approx(0.62, abs=0.005)


def test_digit_swap() -> None:
    """[pop] Section 13: waist 97 is z +3.83, 79 is z +0.12."""
    who = woman(waist=reading("waist", 97, definition=NAVEL))
    assert z_of(who, Measure.WAIST) == pytest.approx(3.83, abs=0.01)
    swapped = asked(who)["digits-swapped"]
    assert swapped.reason.values["other"] == 79.0


def test_a_natural_waist_is_asked_about_on_the_high_side_only() -> None:
    assert asked(woman(waist=62)) == {}
    assert "off-estimate" in asked(woman(waist=reading("waist", 62, definition=NAVEL)))
    assert asked(woman(waist=112))["off-estimate"].weight is Weight.ALARM


def test_figures_over_300_may_be_millimetres_and_over_160_inches() -> None:
    assert set(asked(woman(chest=890))) == {"millimetres"}
    assert asked(woman(chest=226))["cm-as-inches"].reason.values["other"] == pytest.approx(
        88.976, abs=0.001
    )


@pytest.mark.parametrize(
    ("back", "code"),
    [("42.0", None), ("41.9", Weight.ASK), ("38.6", Weight.ALARM), ("52.5", Weight.ASK)],
)
def test_back_to_height(back: str, code: Weight | None) -> None:
    found = asked(woman(back_length=back)).get("back-to-height")
    assert (found.weight if found else None) is code


def test_drops_only_for_the_definitions_the_bounds_are_of() -> None:
    odd = {"chest": 92, "hip": reading("hip", 130, definition=SEAT)}
    navel = rider(**odd, waist=reading("waist", 60, definition=NAVEL))
    natural = rider(**odd, waist=60)
    assert "drop" in asked(navel)
    assert "drop" not in asked(natural)


def test_two_equal_figures_may_be_a_copy() -> None:
    assert set(asked(rider(chest=92, hip=92))) == {"equal"}


def test_readings_too_far_apart_ask_for_a_third() -> None:
    twice = rider(readings=(reading("chest", 92), reading("chest", "93.5")))
    assert set(asked(twice)) == {"third-reading"}
    close = rider(readings=(reading("chest", 92), reading("chest", 93)))
    assert asked(close) == {}


def test_a_large_change_since_last_time_is_asked_about() -> None:
    before, now = rider(chest=92, back_length=43), rider(chest="98.1", back_length="45.1")
    changed = [one for one in checks(now, before) if one.reason.code == "changed"]
    assert [one.measures[0] for one in changed] == [Measure.CHEST, Measure.BACK_LENGTH]
    assert not checks(rider(chest=98, back_length=45), before)


def test_children_are_compared_with_themselves_only() -> None:
    child = rider(
        chest=58,
        waist=62,
        height=120,
        weight=22,
        back_length=31,
        figure=BodyFigure.CHILD,
        age=Decimal(7),
    )
    assert set(asked(child)) == {"drop"}
    assert estimates(child.figure, settled(child, DEFAULTS)) == ()
