"""Nothing to go by is not the same as not fitting: where it is, and what it would take."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.model_facts import ModelFacts
from charts.schema import Basis, Chart, Definition, FileReading
from charts.wording import LANGUAGES, Wording
from harmonizer.explain import sentence
from harmonizer.fit import fit
from harmonizer.fit_row import FitRow
from harmonizer.not_compared import is_not_compared, not_compared, why_not_compared
from harmonizer.rider import Rider
from harmonizer.row_reasons import chance_reasons
from harmonizer.states import GirthState, LengthState, Verdict
from tests.harmonizer.by_hand import (
    BACK,
    CHART_A,
    CHEST,
    HIP,
    WAIST,
    chart,
    reading,
    rider,
    rows_chart,
    size,
    span,
    table,
)
from tests.harmonizer.random_charts import models, riders

UNDER_ARM, NAVEL = Definition.CHEST_UNDER_ARM, Definition.WAIST_NAVEL


def first(made: Chart, **readings: object) -> FitRow:
    return fit(rider(**readings), table(made)).rows[0]


def why(made: Chart, **readings: object) -> str:
    reason = why_not_compared(first(made, **readings))
    assert reason is not None
    for language in LANGUAGES:
        assert sentence(reason, Wording(language))
    return sentence(reason, Wording())


WHOLE = rows_chart({"M": CHART_A["M"]})
NO_WAIST = chart(size("M", span(CHEST, 90, 98), span(HIP, 96, 104)))
NO_CHEST = chart(size("M", span(WAIST, 74, 82), span(HIP, 96, 104)))
HIP_ONLY = chart(size("M", span(HIP, 96, 104), span(BACK, 42, 45)))
VEST = chart(
    size("M", span(CHEST, 90, 98, basis=Basis.FINISHED), span(WAIST, 74, 82, basis=Basis.FINISHED))
)
FLAT = chart(
    size("M", span(CHEST, 45, 49, basis=Basis.FLAT), span(WAIST, 37, 41, basis=Basis.FLAT))
)
ELSEWHERE = chart(
    size("M", span(CHEST, 90, 98, definition=UNDER_ARM), span(WAIST, 74, 82, definition=NAVEL))
)


@pytest.mark.parametrize(
    ("made", "readings", "said"),
    [
        (WHOLE, {"hip": 101, "back_length": 45}, "measure chest or waist"),
        (NO_WAIST, {"waist": 80, "hip": 101}, "measure the chest"),
        (NO_CHEST, {"chest": 93, "hip": 101}, "measure the waist"),
        (HIP_ONLY, {"chest": 93, "waist": 80, "hip": 101}, "no chest or waist in the chart"),
        (VEST, {"chest": 93, "waist": 80}, "chart is of the vest"),
        (FLAT, {"chest": 93, "waist": 80}, "chart is of the flat vest"),
        (ELSEWHERE, {"chest": 93, "waist": 80}, "chart cannot be compared"),
    ],
)
def test_it_is_said_what_it_would_take(made: Chart, readings: dict[str, object], said: str) -> None:
    assert why(made, **readings) == said


def test_the_agreed_words_for_machines_stay() -> None:
    """The verdict of such a size is still no, its girths not checked."""
    row = first(WHOLE, hip=101, back_length=45)
    assert (row.verdict, row.girth_verdict) == (Verdict.NO, GirthState.NOT_CHECKED)


@pytest.mark.parametrize(
    ("back", "verdict"),
    [(47, Verdict.NO), (41, Verdict.TOO_LONG)],
)
def test_a_vest_too_short_or_too_long_is_told_by_that(back: float, verdict: Verdict) -> None:
    row = first(WHOLE, hip=101, back_length=back)
    assert row.verdict is verdict
    assert not is_not_compared(row)
    assert why_not_compared(row) is None


def test_a_hip_that_misses_is_known_not_to_fit_whatever_is_not_known() -> None:
    assert is_not_compared(first(WHOLE, hip=108))  # 4.0 tight: just outside
    missing = first(WHOLE, hip="108.1")
    assert missing.girth_verdict is GirthState.NOT_CHECKED
    assert not is_not_compared(missing)


def test_a_length_that_is_probably_too_long_still_waits_for_the_girths() -> None:
    row = first(WHOLE, back_length="41.5")
    assert row.length_verdict is LengthState.LIKELY_LONG
    assert is_not_compared(row)


def test_a_size_that_misses_was_compared() -> None:
    row = first(WHOLE, chest=120)
    assert row.verdict is Verdict.NO
    assert not is_not_compared(row)


@given(who=riders(), made=st.tuples(models("Elm"), models("Oak")))
def test_one_and_all_agree_and_nothing_that_was_checked_is_among_them(
    who: Rider, made: tuple[tuple[FileReading, ModelFacts], ...]
) -> None:
    sheet = fit(who, table(*made))
    found = not_compared(sheet)
    for row in sheet.rows:
        assert is_not_compared(row) is bool(found[row.at])
        assert (why_not_compared(row) is not None) is bool(found[row.at])
        if found[row.at]:
            assert row.verdict is Verdict.NO
            for girth in (CHEST, WAIST):
                assert row.dimensions[girth].state is GirthState.NOT_CHECKED
            assert row.dimensions[HIP].state is not GirthState.MISS
        elif row.verdict is Verdict.NO:
            miss = GirthState.MISS in (row.girth_verdict, row.dimensions[HIP].state)
            assert miss or row.length_verdict is LengthState.TOO_SHORT


def test_nobody_is_told_how_sure_a_size_is_by_hip_and_back_alone() -> None:
    bare = first(WHOLE, hip=101, back_length=45)
    assert bare.probability is not None
    assert "chance-sure" not in {one.code for one in chance_reasons(bare)}
    whole = first(WHOLE, chest=93, hip=101, back_length=45)
    assert "chance-sure" in {one.code for one in chance_reasons(whole)}


def test_measuring_what_is_asked_for_compares_the_size() -> None:
    bare = rider(hip=101, back_length=45)
    assert is_not_compared(fit(bare, table(WHOLE)).rows[0])
    for measure, value in (("chest", 93), ("waist", 80)):
        fuller = replace(bare, readings=(*bare.readings, reading(measure, value)))
        assert not is_not_compared(fit(fuller, table(WHOLE)).rows[0])
