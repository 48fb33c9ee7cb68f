"""The rider as far as the call has come."""

from __future__ import annotations

from decimal import Decimal

from charts.quantities import Unit
from charts.schema import Definition
from harmonizer.rider import BodyFigure, Measure, Reading, Rider, TakenBy
from ui.fitting_page.calls import Calls
from ui.fitting_page.draft import Draft, other_system, text_of
from ui.fitting_page.typed import Standing, Typed, interpret

GIVEN = Rider(
    "Rider 7",
    (
        Reading(Measure.CHEST, Decimal("92.71"), "36 1/2 in", Unit.IN),
        Reading(Measure.WAIST, Decimal(76), "76", Unit.CM),
        Reading(Measure.WAIST, Decimal(77), "77", Unit.CM),
    ),
    figure=BodyFigure.WOMAN,
    taken_by=TakenBy.HELPER,
)


def values(draft: Draft, measure: Measure) -> list[Decimal]:
    return [reading.value for reading in draft.rider().of(measure)]


def test_what_a_file_gave_stays_until_it_is_typed_over() -> None:
    draft = Draft(GIVEN)
    assert values(draft, Measure.WAIST) == [76, 77]
    typed = draft.typing(Measure.WAIST, interpret("80", Measure.WAIST))
    assert values(typed, Measure.WAIST) == [80]
    assert values(typed, Measure.CHEST) == [Decimal("92.71")]


def test_an_emptied_field_takes_every_reading_of_that_measure_back() -> None:
    draft = Draft(GIVEN).typing(Measure.WAIST, Typed(Standing.EMPTY))
    assert values(draft, Measure.WAIST) == []


def test_a_typed_reading_has_the_definition_that_was_asked_for() -> None:
    draft = Draft().typing(Measure.WAIST, interpret("76", Measure.WAIST))
    reading = draft.reading(Measure.WAIST)
    assert reading is not None
    assert reading.definition is Definition.WAIST_NATURAL


def test_the_neck_bone_counts_only_for_a_helper() -> None:
    typed = Draft(GIVEN, c7_felt=True).typing(
        Measure.BACK_LENGTH, interpret("43", Measure.BACK_LENGTH)
    )
    helper = typed.reading(Measure.BACK_LENGTH)
    fitter = typed.with_given(taken_by=TakenBy.FITTER).reading(Measure.BACK_LENGTH)
    assert helper is not None
    assert helper.c7_felt
    assert fitter is not None
    assert not fitter.c7_felt


def test_the_units_spoken_so_far_are_those_of_the_first_length() -> None:
    assert Draft().spoken is None
    assert Draft(GIVEN).spoken is Unit.IN


def test_a_field_shows_the_clients_own_words_with_the_unit() -> None:
    shown = [text_of(reading) for reading in GIVEN.readings]
    assert shown == ["36 1/2 in", "76 cm", "77 cm"]


def test_the_other_system_is_shown_besides() -> None:
    assert [other_system(reading) for reading in GIVEN.readings[:2]] == [Unit.CM, Unit.IN]


def test_closing_the_last_call_leaves_a_nameless_one() -> None:
    calls = Calls()
    calls.keep(Draft(GIVEN))
    assert calls.close().given.name == ""
    assert len(calls.drafts) == 1


def test_a_parked_call_is_found_again() -> None:
    calls = Calls()
    calls.keep(Draft(GIVEN))
    calls.new()
    assert calls.at == 1
    assert calls.go(0).given.name == "Rider 7"
