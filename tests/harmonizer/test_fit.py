"""The fast way against the same rules in plain Python, on random charts."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.model_facts import ModelFacts
from charts.schema import Dimension, FileReading
from harmonizer.fit import fit
from harmonizer.fit_row import FitRow
from harmonizer.fit_sheet import FitSheet
from harmonizer.layers import layer_allowance
from harmonizer.repeats import uncertainty
from harmonizer.rider import Rider
from harmonizer.settings import DEFAULTS
from tests.benchmarks.plain_rules import (
    VERDICT_ORDER,
    Judged,
    PlainRider,
    judge_all,
    plain_sizes,
)
from tests.harmonizer.by_hand import table
from tests.harmonizer.random_charts import models, riders


def plain(who: Rider) -> PlainRider:
    return PlainRider(
        readings={Dimension(one.measure.value): float(one.value) for one in who.readings},
        u={
            Dimension(one.measure.value): uncertainty(who, one, DEFAULTS) or 1.0
            for one in who.readings
        },
        layers=layer_allowance(float(who.winter_mm)),
    )


def says_the_same(row: FitRow, judged: Judged) -> None:
    for dimension, fit_of_one in row.dimensions.items():
        margins = judged.margins.get(dimension)
        if margins is None:
            assert fit_of_one.margin is None
            assert fit_of_one.state in ("not_checked", "not_known")
            continue
        assert fit_of_one.state == judged.states[dimension]
        for side, margin in zip(
            (fit_of_one.lower_margin, fit_of_one.upper_margin), margins, strict=True
        ):
            assert (math.inf if side is None else side) == pytest.approx(margin, abs=1e-9)
    assert row.verdict == judged.verdict
    assert row.girth_verdict == judged.girths
    assert row.length_verdict == judged.length
    assert row.checked == judged.checked
    assert row.penalty == pytest.approx(judged.penalty, rel=1e-9, abs=1e-9)
    assert row.probability == pytest.approx(judged.probability, abs=1e-9)


def in_order(sheet: FitSheet, judged: list[Judged]) -> None:
    """No row is worse than the one after it, ties of 1e-6 aside."""
    grades = [
        (VERDICT_ORDER.index(judged[at].verdict), -judged[at].checked, judged[at].penalty)
        for at in sheet.order
    ]
    for (*better, penalty), (*worse, after) in pairwise(grades):
        assert better <= worse
        assert better < worse or penalty <= after + 1.1e-6


@given(who=riders(), made=st.tuples(models("Elm"), models("Oak"), models("Yew")))
def test_arrays_say_what_the_plain_rules_say(
    who: Rider, made: tuple[tuple[FileReading, ModelFacts], ...]
) -> None:
    compiled = table(*made)
    sheet = fit(who, compiled)
    judged = judge_all(plain(who), plain_sizes(compiled))
    for at, one in enumerate(judged):
        says_the_same(sheet.row_of(at), one)
    in_order(sheet, judged)
