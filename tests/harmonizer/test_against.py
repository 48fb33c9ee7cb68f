"""Any size held against any other: which stands before, why, and what each gives."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.model_facts import ModelFacts
from charts.schema import FileReading
from charts.wording import LANGUAGES, Wording
from harmonizer.against import Against, against, place_in_order
from harmonizer.choice_reasons import why_not
from harmonizer.explain import sentence
from harmonizer.fit import fit
from harmonizer.rider import Rider
from tests.harmonizer.by_hand import CHART_A, RIDER_R, model, rider, row, rows_chart, table
from tests.harmonizer.random_charts import models, riders

A = rows_chart(CHART_A)


def said(found: Against) -> list[str]:
    lines = [found.order, *found.verdicts, *(one for _, one in found.dimensions)]
    lines += [found.chance] if found.chance else []
    return [sentence(one, Wording()) for one in lines]


def test_rider_r_in_m_against_l() -> None:
    """By hand: waist 84 is 2 above M's 82, back 43 is 1.0 below L's 44."""
    sheet = fit(RIDER_R, table(A))
    assert said(against(row(sheet, "M"), row(sheet, "L"))) == [
        "Not L: its back starts at 44 cm, so the vest would be long by 1 cm.",
        "M: just outside: waist tight 2 cm; length to check in the saddle.",
        "L: does not fit: chest loose 3 cm; vest too long, 1 cm, do not offer.",
        "Chest: 3 cm to spare; L: loose by 3 cm.",
        "Waist: tight by 2 cm; L: 4 cm to spare.",
        "Hip: 3 cm to spare; L: loose by 1 cm.",
        "Back: 1 cm over its shortest back; L: too long by 1 cm.",
        "Of 10 such readings, 8 lie in M, 0 in L.",
    ]


def test_the_one_behind_is_told_what_stands_before_it() -> None:
    sheet = fit(RIDER_R, table(A))
    first = said(against(row(sheet, "L"), row(sheet, "M")))[0]
    assert first == (
        "Not L: its back starts at 44 cm, so the vest would be long by 1 cm. M stands before it."
    )


def test_sizes_of_two_models_are_named_with_their_models() -> None:
    sheet = fit(RIDER_R, table(model("Elm", A), model("Oak", A)))
    elm, oak = row(sheet, "M", name="Elm"), row(sheet, "L", name="Oak")
    lines = said(against(elm, oak))
    assert lines[1].startswith("Elm M: ")
    assert lines[2].startswith("Oak L: ")
    assert all("; Oak L: " in line for line in lines[3:7])


def test_how_sure_they_are_is_not_compared_over_different_counts() -> None:
    """A product of fewer chances is larger by nature, so different counts are not compared."""
    whole = {"M": ((88, 96), (74, 84), (94, 104), (40, 46))}
    bare = {"M": ((88, 96), (74, 84), (94, 104))}
    who = rider(chest=92, waist=79, hip=99, back_length=43)
    sheet = fit(who, table(model("Elm", rows_chart(whole)), model("Oak", rows_chart(bare))))
    found = against(row(sheet, "M", name="Elm"), row(sheet, "M", name="Oak"))
    assert found.chance is not None
    assert found.chance.code == "against-counts"
    assert said(found)[-1].endswith("4 of four dimensions checked, 3 in Oak M.")
    assert "Back: 3 cm over its shortest back; Oak M: not compared." in said(found)


def test_what_neither_gives_is_not_spoken_of() -> None:
    sheet = fit(rider(chest=93), table(A))
    found = against(row(sheet, "M"), row(sheet, "S"))
    assert [dimension.value for dimension, _ in found.dimensions] == ["chest"]


@given(who=riders(), made=st.tuples(models("Elm"), models("Oak")))
def test_every_pair_is_explained_both_ways_with_one_order(
    who: Rider, made: tuple[tuple[FileReading, ModelFacts], ...]
) -> None:
    sheet = fit(who, table(*made))
    rows = sheet.rows[:6]
    for one in rows:
        for other in rows:
            if one.at == other.at:
                continue
            found, back = against(one, other), against(other, one)
            leads = place_in_order(one) < place_in_order(other)
            assert (found.ahead is None) is leads
            assert found.why == back.why == (why_not(one, other) if leads else why_not(other, one))
            for language in LANGUAGES:
                reasons = [found.order, *found.verdicts, *(one for _, one in found.dimensions)]
                for text in (sentence(reason, Wording(language)) for reason in reasons):
                    assert "{" not in text
                    assert "None" not in text


@pytest.mark.parametrize(
    ("chest", "says"),
    [("98.05", "just tight;"), ("89.95", "just loose;"), (98, "0 cm to spare;")],
)
def test_an_overshoot_under_a_millimetre_is_just_over(chest: str, says: str) -> None:
    sheet = fit(rider(chest=chest, back_length=43), table(A))
    assert says in said(against(row(sheet, "M"), row(sheet, "S")))[3]
