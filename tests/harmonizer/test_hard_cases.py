"""The hard cases at a counter, one test each, named after it. Figures invented, worked by hand."""

from __future__ import annotations

from decimal import Decimal

import pytest

from charts.model_facts import Rule, VestKind
from charts.schema import Definition, Dimension
from charts.wording import LANGUAGES, Wording
from harmonizer.changed_advice import changed_advice
from harmonizer.explain import sentence
from harmonizer.fit import fit
from harmonizer.gates import Gate
from harmonizer.no_fit import nearest, nothing_fits
from harmonizer.rider import BodyFigure
from harmonizer.row_reasons import reasons
from harmonizer.seasons import both_seasons
from harmonizer.states import GirthState, LengthState, Verdict
from tests.harmonizer.by_hand import (
    BACK,
    CHART_A,
    CHEST,
    HIP,
    WAIST,
    chart,
    fitted,
    model,
    reading,
    rider,
    row,
    rows_chart,
    single,
    size,
    span,
    table,
)

A = rows_chart(CHART_A)


def codes(of_row) -> list[str]:
    return [one.code for one in reasons(of_row)]


def test_fits_nothing_anywhere() -> None:
    sheet = fit(rider(chest=120, waist=84, hip=101, back_length=43), table(A))
    found = nearest(sheet)
    assert nothing_fits(sheet)
    assert len(found) == 3
    assert found[0].misses
    assert {one.code for one in found[0].asks} >= {"ask-larger"}
    for language in LANGUAGES:
        for one in found:
            for said in (*one.misses, *one.asks, *one.measure_first):
                assert sentence(said, Wording(language))


def test_fits_two_sizes() -> None:
    who = rider(chest=91, waist=75, hip=97, back_length=43)
    sheet = fit(who, table(A))
    both = {one.offer.size: one for one in sheet.rows[:2]}
    assert set(both) == {"S", "M"}
    assert all(one.between_sizes for one in both.values())
    assert all(one.dimensions[CHEST].state in ("inside", "edge") for one in both.values())


def test_chest_says_l_and_back_says_s() -> None:
    who = rider(chest=100, waist=85, hip=106, back_length=41)
    sheet = fit(who, table(A))
    assert row(sheet, "L").verdict is Verdict.TOO_LONG
    assert row(sheet, "S").girth_verdict is GirthState.MISS
    asked = [one for near in nearest(sheet) for one in near.asks]
    conflict = next(one for one in asked if one.code == "no-size-of-model")
    said = sentence(conflict, Wording())
    assert "the chest asks for L" in said
    assert "the back for S" in said


def test_back_missing() -> None:
    sheet = fit(rider(chest=94, waist=78, hip=100), table(A))
    assert sheet.rows[0].verdict is Verdict.LENGTH_UNKNOWN
    assert sheet.rows[0].offer.size == "M"
    assert {one.verdict for one in sheet.rows}.isdisjoint({Verdict.FITS, Verdict.EDGE})
    assert sheet.rows[0].checked == 3


def test_makers_between_sizes_rule_against_the_length_stop() -> None:
    rows = {
        "M": ((90, 96), (74, 82), (96, 104), (42, 45)),
        "L": ((95, 104), (78, 90), (98, 110), (45, 47)),
    }
    who = rider(chest="95.5", waist=80, hip=101, back_length=44)
    facts = {"between_sizes": Rule.LARGER, "between_sizes_source": "instructions p. 4"}
    sheet = fit(who, table(model("Elm", rows_chart(rows), **facts)))
    assert sheet.rows[0].offer.size == "M"
    assert row(sheet, "L").verdict is Verdict.TOO_LONG
    said = {one.code for one in reasons(sheet.rows[0])}
    assert "between-stop-wins" in said


def test_makers_between_sizes_rule_orders_equal_verdicts() -> None:
    rows = {
        "M": ((88, 96), (74, 84), (94, 104), (40, 46)),
        "L": ((92, 104), (76, 90), (96, 110), (40, 46)),
    }
    who = rider(chest=94, waist=80, hip=100, back_length=43)
    first = {
        rule: fit(who, table(model("Elm", rows_chart(rows), between_sizes=rule))).rows[0].offer.size
        for rule in Rule
    }
    assert first == {Rule.LARGER: "L", Rule.SMALLER: "M"}


def test_child_under_the_weight_floor() -> None:
    who = rider(chest=70, waist=62, hip=74, back_length=34, weight=28, figure=BodyFigure.CHILD)
    rows = {"M": ((66, 74), (58, 66), (70, 78), (32, 36))}
    air = model("Elm Air", rows_chart(rows), kind=VestKind.INFLATABLE, weight_floor=Decimal("31.8"))
    foam = model("Elm Foam", rows_chart(rows), kind=VestKind.FOAM)
    sheet = fit(who, table(air, foam))
    assert [one.offer.model for one in sheet.rows] == ["Elm Foam", "Elm Air"]
    assert sheet.rows[1].gates == (Gate.UNDER_WEIGHT_FLOOR,)
    assert sheet.rows[0].verdict is not Verdict.NOT_OFFERED


def test_two_back_definitions_in_one_table() -> None:
    own = span(BACK, 42, 45, definition=Definition.BACK_C7_SI)
    tailors = span(BACK, 38, 40, definition=Definition.BACK_C7_WAIST)
    made = chart(size("M", span(CHEST, 90, 98), span(WAIST, 74, 82), tailors, own))
    who = rider(
        chest=94,
        waist=78,
        back_length=reading("back_length", 44, definition=Definition.BACK_C7_SI),
    )
    back = fitted(who, made, label="M").dimensions[BACK]
    assert back.definition is Definition.BACK_C7_SI
    assert back.lower_margin == pytest.approx(2.0)


def test_of_two_back_columns_that_can_be_checked_the_worse_holds() -> None:
    columns = [
        span(BACK, 42, 45, definition=Definition.BACK_C7_SI),
        span(BACK, 40, 43, definition=Definition.BACK_C7_WAIST),
    ]
    made = chart(size("M", span(CHEST, 90, 98), *columns))
    readings = (
        reading("chest", 94),
        reading("back_length", 44, definition=Definition.BACK_C7_SI),
        reading("back_length", 39, definition=Definition.BACK_C7_WAIST),
    )
    assert fitted(rider(readings=readings), made, label="M").length_verdict is LengthState.TOO_LONG


def test_another_back_definition_is_not_compared() -> None:
    made = chart(
        size("M", span(CHEST, 90, 98), span(BACK, 42, 45, definition=Definition.BACK_C7_WAIST))
    )
    back = fitted(rider(chest=94, back_length=44), made, label="M").dimensions[BACK]
    assert back.state is LengthState.NOT_KNOWN
    assert back.reason.code == "definitions-differ"
    said = sentence(back.reason, Wording())
    assert "C7 to the natural waist" in said
    assert "C7 to the sacro-iliac dimples" in said


def test_new_chart_between_advice_and_delivery() -> None:
    """M 90-98 becomes 88-96: newly in 89; newly out 97 and 98. By hand."""
    old = table(model("Elm", rows_chart({"M": ((90, 98), (70, 90))})))
    new = table(model("Elm", rows_chart({"M": ((88, 96), (70, 90))})))
    many = [
        rider(name=str(chest), chest=chest, waist=80) for chest in (87, 89, 91, 95, 96, 97, 98, 99)
    ]
    within = {Verdict.LENGTH_UNKNOWN}
    changed = list(changed_advice(many, old, new))
    assert [one.rider.name for one in changed if one.after in within] == ["89"]
    assert [one.rider.name for one in changed if one.before in within] == ["97", "98"]


def test_up_to_84() -> None:
    made = chart(size("XS", span(CHEST, None, 84)), size("S", span(CHEST, 85, 90)))
    chest = fitted(rider(chest=80), made, label="XS").dimensions[CHEST]
    assert chest.state is GirthState.INSIDE
    assert chest.lower_margin is None
    far = fitted(rider(chest="76.4"), made, label="XS").dimensions[CHEST]
    assert far.state is GirthState.INSIDE
    assert fitted(rider(chest="75.9"), made, label="XS").dimensions[CHEST].state is GirthState.EDGE


def test_110_and_more() -> None:
    made = chart(size("XL", span(CHEST, 104, 109)), size("XXL", span(CHEST, 110, None)))
    chest = fitted(rider(chest=112), made, label="XXL").dimensions[CHEST]
    assert chest.state is GirthState.INSIDE
    far = fitted(rider(chest=119), made, label="XXL").dimensions[CHEST]
    assert far.state is GirthState.EDGE
    assert far.reason.code == "far-from-end-from"


def test_single_values() -> None:
    made = chart(*(size(str(one), single(CHEST, one)) for one in (84, 88, 92)))
    chest = fitted(rider(chest=89), made, label="88").dimensions[CHEST]
    assert (chest.reach_low, chest.reach_high) == (86.0, 90.0)
    assert chest.state is GirthState.INSIDE
    assert "derived" in chest.assumed


def test_an_empty_back_column() -> None:
    found = fitted(
        rider(chest=94, waist=78, hip=100, back_length=44),
        rows_chart({"M": CHART_A["M"][:3]}),
        label="M",
    )
    assert found.verdict is Verdict.LENGTH_UNKNOWN
    assert found.dimensions[BACK].reason.code == "not-listed"


def test_a_back_open_below_is_check_at_best() -> None:
    made = chart(size("M", span(CHEST, 90, 98), span(BACK, None, 46)))
    back = fitted(rider(chest=94, back_length=40), made, label="M").dimensions[BACK]
    assert back.state is LengthState.CHECK
    assert back.reason.code == "back-no-lower-end"


def test_weight_only() -> None:
    made = chart(size("M", span(Dimension.WEIGHT, 55, 70)))
    found = fitted(rider(chest=94, weight=60), made, label="M")
    assert found.verdict is Verdict.NO
    assert found.girth_verdict is GirthState.NOT_CHECKED
    assert found.checked == 0
    assert found.dimensions[Dimension.WEIGHT].state is GirthState.INSIDE


def test_age_only() -> None:
    made = chart(size("8-9", span(Dimension.AGE, 8, 9)), size("10-11", span(Dimension.AGE, 10, 11)))
    who = rider(chest=64, age=Decimal("9.5"), figure=BodyFigure.CHILD)
    found = fitted(who, made, label="8-9")
    assert found.verdict is Verdict.NO
    assert found.dimensions[Dimension.AGE].state is GirthState.INSIDE
    assert fitted(who, made, label="10-11").dimensions[Dimension.AGE].state is GirthState.NEAR


def test_one_model_in_an_adult_and_a_youth_chart() -> None:
    adult = model("Elm", rows_chart({"S": CHART_A["S"]}, band="women"))
    youth = model("Elm Youth", rows_chart({"14": CHART_A["S"]}, band="girls"))
    who = rider(chest=88, waist=72, hip=94, back_length=42, figure=BodyFigure.WOMAN)
    sheet = fit(who, table(youth, adult))
    assert [one.offer.size for one in sheet.rows] == ["S", "14"]
    assert sheet.rows[1].other_band
    assert "other-band" in codes(sheet.rows[1])
    assert sheet.rows[0].verdict is sheet.rows[1].verdict


def test_winter_and_summer_verdicts_that_differ() -> None:
    who = rider(chest=96, waist=77, hip=99, back_length=44, winter_mm=Decimal(6))
    seasons = both_seasons(who, table(A))
    summer, winter = row(seasons.summer, "M"), row(seasons.winter, "M")
    assert summer.girth_verdict is GirthState.INSIDE
    assert winter.girth_verdict is GirthState.MISS
    assert summer.at in seasons.differing
    assert row(seasons.winter, "L").dimensions[CHEST].state is GirthState.INSIDE
    assert row(seasons.all_year, "M").girth_verdict is GirthState.MISS


def test_foam_and_inflatable_each_with_its_own_size() -> None:
    who = rider(chest=94, waist=78, hip=100, back_length=44, chest_over_foam=101)
    foam = model("Elm Foam", A, kind=VestKind.FOAM)
    air = model("Elm Air", A, kind=VestKind.INFLATABLE)
    sheet = fit(who, table(foam, air))
    assert row(sheet, "M", name="Elm Foam").dimensions[CHEST].state is GirthState.INSIDE
    assert row(sheet, "L", name="Elm Air").dimensions[CHEST].reading == pytest.approx(101)
    assert row(sheet, "L", name="Elm Air").dimensions[CHEST].state is GirthState.INSIDE
    assert row(sheet, "M", name="Elm Air").dimensions[CHEST].state is GirthState.MISS


def test_warm_layers_go_over_foam() -> None:
    who = rider(chest=96, waist=77, hip=99, back_length=44, winter_mm=Decimal(12))
    over_foam = fitted(who, model("Elm", A, kind=VestKind.FOAM), label="M")
    assert over_foam.dimensions[CHEST].layers == 0.0
    assert over_foam.dimensions[HIP].state is GirthState.INSIDE
    unknown = fitted(who, model("Elm", A), label="M")
    assert unknown.dimensions[CHEST].layers == pytest.approx(7.54, abs=0.005)
