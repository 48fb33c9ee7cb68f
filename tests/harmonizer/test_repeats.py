"""One figure from several readings."""

from __future__ import annotations

import pytest

from charts.schema import Definition
from harmonizer.repeats import combined, settled, uncertainty
from harmonizer.rider import Measure, TakenBy
from harmonizer.settings import DEFAULTS
from tests.harmonizer.by_hand import reading, rider


def test_two_close_readings_give_their_mean() -> None:
    assert combined([92.0, 93.0], 1.0) == (92.5, False)


def test_two_readings_too_far_apart_ask_for_a_third() -> None:
    assert combined([92.0, 93.5], 1.0) == (92.75, True)


def test_a_back_may_differ_by_more() -> None:
    readings = (reading("back_length", 43), reading("back_length", "44.5"))
    (back,) = settled(rider(readings=readings), DEFAULTS)
    assert (back.value, back.third_needed) == (43.75, False)


def test_the_better_tape_replaces_the_worse() -> None:
    readings = (
        reading("chest", 90, taken_by=TakenBy.SELF),
        reading("chest", 93, taken_by=TakenBy.FITTER),
    )
    (chest,) = settled(rider(readings=readings), DEFAULTS)
    assert (chest.value, chest.taken_by) == (93.0, TakenBy.FITTER)


def test_different_definitions_stay_apart() -> None:
    readings = (
        reading("waist", 70, definition=Definition.WAIST_NATURAL),
        reading("waist", 84, definition=Definition.WAIST_NAVEL),
    )
    assert [one.value for one in settled(rider(readings=readings), DEFAULTS)] == [70.0, 84.0]


def test_a_silent_reading_takes_the_shops_definition_and_says_so() -> None:
    (hip,) = settled(rider(hip=99), DEFAULTS)
    assert (hip.definition, hip.assumed) == (Definition.HIP_BELOW_BELT, True)


def test_nobody_takes_a_back_length_alone() -> None:
    assert settled(rider(TakenBy.SELF, back_length=43), DEFAULTS) == ()


@pytest.mark.parametrize(
    ("taken_by", "felt", "girth", "waist", "back"),
    [
        (TakenBy.FITTER, False, 0.8, 0.8, 1.0),
        (TakenBy.FITTER_ONCE, False, 1.1, 1.1, 1.4),
        (TakenBy.HELPER, False, 1.5, 1.5, 2.7),
        (TakenBy.HELPER, True, 1.5, 1.5, 2.0),
        (TakenBy.SELF, False, 3.0, 5.0, None),
    ],
)
def test_uncertainty_by_who_read(
    taken_by: TakenBy, felt: bool, girth: float, waist: float, back: float | None
) -> None:
    who = rider(taken_by)
    of = {
        one: uncertainty(who, reading(one.value, 90, c7_felt=felt), DEFAULTS)
        for one in (Measure.CHEST, Measure.WAIST, Measure.BACK_LENGTH, Measure.HEIGHT)
    }
    assert list(of.values()) == [girth, waist, back, None]
