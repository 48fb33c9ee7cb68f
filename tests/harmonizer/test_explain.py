"""Every reason is a whole sentence in both languages, of the vest on the rider."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.model_facts import Adjuster, Elastic, ModelFacts, Rule, VestKind
from charts.quantities import Unit
from charts.reason import Reason
from charts.schema import FileReading
from charts.wording import LANGUAGES, Wording, _topic
from harmonizer.choice_reasons import why_not
from harmonizer.explain import sentence
from harmonizer.fit import fit
from harmonizer.fit_row import FitRow
from harmonizer.no_fit import nearest
from harmonizer.repeats import tape
from harmonizer.rider import Rider, TakenBy
from harmonizer.row_reasons import reasons
from harmonizer.take_again import said, take_again
from harmonizer.verdict_words import girth_words, length_words
from tests.harmonizer.by_hand import (
    CHART_A,
    RIDER_R,
    WAIST,
    fitted,
    model,
    rider,
    row,
    rows_chart,
    table,
)
from tests.harmonizer.random_charts import models, riders

A = rows_chart(CHART_A)
ENGLISH = Wording()


def english(reason: Reason) -> str:
    return sentence(reason, ENGLISH)


def everything(of_row: FitRow) -> tuple[Reason, ...]:
    return (*reasons(of_row), girth_words(of_row), length_words(of_row))


@given(who=riders(), made=st.tuples(models("Elm"), models("Oak")))
def test_everything_that_can_be_said_is_said_in_both_languages(
    who: Rider, made: tuple[tuple[FileReading, ModelFacts], ...]
) -> None:
    sheet = fit(who, table(*made))
    found = [one for of_row in sheet.rows for one in everything(of_row)]
    found += [why_not(sheet.rows[0], other) for other in sheet.rows[1:]]
    for near in nearest(sheet):
        found += [*near.misses, *near.asks, *near.measure_first]
    again = take_again(sheet)
    found += said(again) if again else ()
    found += [one for one in map(tape, sheet.body.settled) if one]
    for language in LANGUAGES:
        for unit in (Unit.CM, Unit.IN):
            for one in found:
                text = sentence(one, Wording(language), unit)
                assert text
                assert "{" not in text
                assert "inf" not in text.casefold().split()
                assert "nan" not in text.casefold().split()


def test_the_two_words_of_rider_r_in_m() -> None:
    m = fitted(RIDER_R, A, label="M")
    assert english(girth_words(m)) == "just outside: waist tight 2 cm"
    assert english(length_words(m)) == "length to check in the saddle"


def test_the_sentences_of_rider_r_in_m() -> None:
    m = fitted(RIDER_R, A, label="M")
    *girths, back = (english(one.reason) for one in m.dimensions.values())
    assert girths == [
        "Chest 93 cm lies in 90 to 98, with 3 and 5 cm to spare.",
        "Waist 84 cm is 2 cm over 74 to 82: the vest is tight there.",
        "Hip 101 cm lies in 96 to 104, with 5 and 3 cm to spare.",
    ]
    assert back.startswith("Back 43 cm is only 1 cm above the shortest back this size is made for")
    assert back.endswith("check in the saddle before the sale.")


def test_what_adjusters_and_borders_reach_is_said_beside_the_print() -> None:
    ways = {WAIST: Adjuster(Decimal(3), Decimal(3))}
    made = model("Elm", A, adjusters=ways)
    waist = fitted(rider(chest=94, waist=78), made, label="M").dimensions[WAIST]
    assert english(waist.reason) == (
        "Waist 78 cm lies in 74 to 82, which reaches 71 to 85: 7 and 7 cm to spare."
    )
    out = fitted(rider(chest=94, waist=84), made, label="M").dimensions[WAIST]
    assert out.reason.code == "adjuster-let-out"
    over = fitted(rider(chest=94, waist=86), made, label="M").dimensions[WAIST]
    assert english(over.reason) == (
        "Waist 86 cm is over 74 to 82 and 1 cm over what that reaches, 85: the vest is tight there."
    )


def test_readings_in_inches_margins_in_cm() -> None:
    chest = fitted(rider(chest="92.71"), A, label="M").dimensions
    said_in_inches = sentence(next(iter(chest.values())).reason, ENGLISH, Unit.IN)
    assert said_in_inches.startswith("Chest 36 1/2 in lies in 35 1/2 to 38 1/2")
    assert said_in_inches.endswith("with 2.7 and 5.3 cm to spare.")


@pytest.mark.parametrize(
    ("label", "said_of_it"),
    [
        ("L", "Not L: its back starts at 44 cm, so the vest would be long by 1 cm."),
        ("S", "Not S: its waist ends at 76 cm, so the vest would be tight by 8 cm."),
    ],
)
def test_why_m_and_not_its_neighbours(label: str, said_of_it: str) -> None:
    sheet = fit(RIDER_R, table(A))
    assert english(why_not(row(sheet, "M"), row(sheet, label))) == said_of_it


def test_why_this_and_not_that_of_one_verdict() -> None:
    who = rider(chest=91, waist=75, hip=97, back_length=43)
    sheet = fit(who, table(A))
    first, second = sheet.rows[0], sheet.rows[1]
    assert english(why_not(first, second)).startswith(second.offer.size)


def test_the_makers_rule_is_named() -> None:
    rows = {
        "M": ((88, 96), (74, 84), (94, 104), (40, 46)),
        "L": ((92, 104), (76, 90), (96, 110), (40, 46)),
    }
    who = rider(chest=94, waist=80, hip=100, back_length=43)
    sheet = fit(who, table(model("Elm", rows_chart(rows), between_sizes=Rule.LARGER)))
    assert why_not(row(sheet, "L"), row(sheet, "M")).code == "not-rule-larger"


def test_another_model_is_named_with_its_model() -> None:
    sheet = fit(RIDER_R, table(model("Elm", A), model("Oak", A)))
    elm, oak = row(sheet, "M", name="Elm"), row(sheet, "L", name="Oak")
    assert english(why_not(elm, oak)).startswith("Not Oak L: ")


def test_an_overshoot_under_a_millimetre_reads_just_over() -> None:
    chest = fitted(rider(chest="98.05"), A, label="M").dimensions
    assert "just over" in english(next(iter(chest.values())).reason)


def test_the_tape_is_said_with_its_uncertainty() -> None:
    body = fit(rider(chest=93), table(A)).body
    found = tape(body.settled[0])
    assert found is not None
    assert english(found) == "a fitter's tape, read twice, ± 1.6 cm, 19 times in 20"


def test_the_reserve_of_an_inflatable_is_said() -> None:
    elastic = Elastic(Decimal(84), Decimal(30), Decimal("0.40"))
    stretchy = model("Elm", A, kind=VestKind.INFLATABLE, elastic=elastic)
    said_of_it = [english(one) for one in reasons(fitted(rider(chest=90), stretchy, label="S"))]
    assert any(one.startswith("The elastic leaves 6 cm; 50 % of its stretch") for one in said_of_it)
    plain = model("Elm", A, kind=VestKind.INFLATABLE)
    codes = {one.code for one in reasons(fitted(rider(chest=90), plain, label="S"))}
    assert "reserve-not-known" in codes


def test_no_sentence_promises_protection() -> None:
    for language, words in {"en": ("safe", "guarantee"), "de": ("sicherheit", "garant")}.items():
        for text in map(str, _topic(language, "reasons").values()):
            assert not any(word in text.casefold() for word in words), text


def test_a_helpers_reading_speaks_in_natural_frequencies() -> None:
    m = fitted(rider(TakenBy.HELPER, chest="97.5", waist=78, hip=100), A, label="M")
    chance = next(one for one in reasons(m) if one.code == "chance-sure")
    assert english(chance) == "Of 10 such readings, 8 lie in M: likely."
