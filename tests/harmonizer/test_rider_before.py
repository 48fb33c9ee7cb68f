"""Last time's readings: set apart in a rider's file, looked up by day, and asked about."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.schema import Definition
from charts.wording import LANGUAGES, Wording
from harmonizer.cautions import cautions_for
from harmonizer.explain import sentence
from harmonizer.plausibility import Check, checks
from harmonizer.repeats import settled
from harmonizer.rider import BodyFigure, Measure, Reading, Rider, TakenBy
from harmonizer.rider_before import APART_DAYS, dated, last_time, parted
from harmonizer.rider_file import read_rider
from harmonizer.settings import DEFAULTS
from tests.harmonizer.by_hand import reading, rider

NOW = date(2027, 2, 11)
SUMMER = date(2026, 8, 3)
TWO_VISITS = """
format = 1
name = "Rider 7"
taken_by = "fitter"
[[reading]]
dimension = "chest"
text = "96 cm"
on = 2027-02-11
[[reading]]
dimension = "chest"
text = "35 in"
on = 2026-08-03
[[reading]]
dimension = "waist"
text = "76 cm"
on = 2026-08-03
"""
READINGS = st.lists(
    st.builds(
        Reading,
        st.sampled_from([Measure.CHEST, Measure.WAIST]),
        st.integers(60, 120).map(Decimal),
        definition=st.sampled_from([Definition.UNKNOWN, Definition.CHEST_WIDEST]),
        on=st.none() | st.dates(SUMMER, NOW),
    ),
    max_size=6,
)


def took(measure: str, value: float | str, on: date | None, **more: object) -> Reading:
    return replace(reading(measure, value, **more), on=on)


def asked(now: Rider, before: Rider | None) -> dict[str, Check]:
    return {one.reason.code: one for one in checks(now, before)}


def test_a_files_older_reading_is_history_and_the_only_one_of_its_kind_holds() -> None:
    who = read_rider(TWO_VISITS, "rider")
    assert [(one.measure, one.on) for one in who.readings] == [
        (Measure.CHEST, NOW),
        (Measure.WAIST, SUMMER),
    ]
    assert [(one.measure, one.text) for one in who.earlier] == [(Measure.CHEST, "35 in")]
    (chest, waist) = settled(who, DEFAULTS)
    assert (chest.value, waist.value) == (96.0, 76.0)


def test_the_sheet_dates_from_what_is_used_and_not_from_the_visit_before() -> None:
    who = read_rider(
        TWO_VISITS.replace('"waist"', '"hip"').replace("2026-08-03\n[[", "2026-01-02\n[["), "rider"
    )
    assert who.earlier[0].on == date(2026, 1, 2)
    assert "since 3 Aug 2026" in cautions_for(who, Wording())[1]


@given(READINGS)
def test_no_reading_is_lost_and_only_a_newer_one_replaces(readings: list[Reading]) -> None:
    now, earlier = parted(readings)
    assert sorted(map(repr, (*now, *earlier))) == sorted(map(repr, readings))
    assert all(one.on is not None for one in earlier)
    for old in earlier:
        newer = [one for one in readings if one.measure is old.measure and one.on and old.on]
        assert any((one.on - old.on).days > APART_DAYS for one in newer)  # type: ignore[operator]  # days were asked for above
    measures = {one.measure for one in readings}
    assert {one.measure for one in now} == measures


@pytest.mark.parametrize(("days", "apart"), [(28, False), (29, True)])
def test_a_tape_held_again_within_four_weeks_is_a_repeat(days: int, apart: bool) -> None:
    old = took("chest", 92, NOW - timedelta(days=days))
    assert bool(parted([took("chest", 93, NOW), old])[1]) is apart


def test_two_definitions_are_no_visits_of_one_another() -> None:
    si = took("back_length", 43, NOW, definition=Definition.BACK_C7_SI)
    waist = took("back_length", 41, SUMMER, definition=Definition.BACK_C7_WAIST)
    assert parted([si, waist]) == ((si, waist), ())
    assert parted([took("back_length", 43, NOW), waist])[1] == (waist,)


def test_the_newest_reading_before_the_present_one_is_looked_up() -> None:
    kept = [
        took("chest", value, on) for value, on in ((88, SUMMER), (89, date(2026, 11, 1)), (96, NOW))
    ]
    for now in (took("chest", 96, NOW), took("chest", 96, None)):
        before = last_time(rider(readings=(now,)), kept, NOW)
        assert before is not None
        assert [one.value for one in before.readings] == [89]
    assert last_time(rider(readings=(took("chest", 96, SUMMER),)), kept, NOW) is None


def test_what_is_not_read_yet_shows_the_newest_of_all() -> None:
    before = last_time(rider(waist=76), [took("chest", 96, NOW)], NOW)
    assert before is not None
    assert [one.measure for one in before.readings] == [Measure.CHEST]
    assert last_time(rider(waist=76), [], NOW) is None


@pytest.mark.parametrize(
    ("measure", "then", "now", "asks"),
    [
        ("chest", 92, 98, False),
        ("chest", 92, "98.1", True),
        ("waist", 80, "73.9", True),
        ("hip", 101, 95, False),
        ("back_length", 43, 45, False),
        ("back_length", 43, "45.1", True),
        ("back_length", 43, "40.9", True),
    ],
)
def test_a_change_of_more_than_six_and_of_the_back_more_than_two_is_asked_about(
    measure: str, then: float, now: float | str, asks: bool
) -> None:
    """More than 6 cm of girth, more than 2 cm of back: the house's own limits, no source."""
    before = rider(readings=(took(measure, then, SUMMER),))
    found = asked(rider(readings=(took(measure, now, NOW),)), before)
    assert set(found) == ({"changed-since"} if asks else set())
    if asks:
        values = found["changed-since"].reason.values
        assert (values["other"], values["day"]) == (float(then), SUMMER)


@given(st.integers(400, 1400), st.integers(-100, 100))
def test_a_change_is_asked_about_whichever_way_it_goes(tenths: int, change: int) -> None:
    one = rider(readings=(took("chest", str(Decimal(tenths) / 10), SUMMER),))
    other = rider(readings=(took("chest", str(Decimal(tenths + change) / 10), NOW),))
    both = [
        any(k.startswith("changed") for k in asked(*pair)) for pair in ((one, other), (other, one))
    ]
    assert both == [abs(change) > 60] * 2


@pytest.mark.parametrize(
    ("then", "now", "days", "code"),
    [
        (34, "36.5", 180, "grown-since"),
        (34, "36.5", 90, "grown-since"),
        (34, "36.5", 89, "changed-since"),  # nobody grows that much in weeks
        (36.5, 34, 180, "changed-since"),  # and nobody shrinks
    ],
)
def test_growth_of_a_child_is_told_from_a_slip(
    then: float, now: float | str, days: int, code: str
) -> None:
    earlier = rider(readings=(took("back_length", then, NOW - timedelta(days=days)),))
    child = rider(readings=(took("back_length", now, None),), figure=BodyFigure.CHILD)
    assert set(asked(dated(child, NOW), earlier)) == {code}
    grown_up = replace(child, figure=BodyFigure.WOMAN)
    assert set(asked(dated(grown_up, NOW), earlier)) == {"changed-since"}


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_question_gives_both_readings_and_the_day(language: str) -> None:
    before = rider(readings=(took("back_length", 34, SUMMER),))
    for figure in (BodyFigure.CHILD, BodyFigure.WOMAN):
        now = rider(readings=(took("back_length", "36.5", NOW),), figure=figure)
        (check,) = checks(now, before)
        said = sentence(check.reason, Wording(language))
        assert "34 cm" in said
        assert Wording(language).cm(36.5) in said
        assert "2026" in said
        assert ("wachsen" in said or "grown" in said) is (figure is BodyFigure.CHILD)


def test_who_took_it_then_is_who_the_file_says() -> None:
    who = replace(read_rider(TWO_VISITS, "rider"), taken_by=TakenBy.SELF)
    before = last_time(who, (), NOW)
    assert before is not None
    assert before.taken_by is TakenBy.SELF
    assert before.earlier == ()
