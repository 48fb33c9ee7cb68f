"""The best size for each of many riders: the same as the first row of each rider's own sheet."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from charts.model_facts import Elastic, ModelFacts
from charts.schema import FileReading
from harmonizer.body import allowance_of
from harmonizer.crowd.best import Crowd, best_sizes
from harmonizer.fit import fit
from harmonizer.repeats import settled
from harmonizer.rider import BodyFigure, Measure, Rider, TakenBy
from harmonizer.settings import DEFAULTS
from tests.harmonizer.by_hand import CHART_A, model, rider, rows_chart, table
from tests.harmonizer.random_charts import models, riders

FOUR = (Measure.CHEST, Measure.WAIST, Measure.HIP, Measure.BACK_LENGTH)


def crowd_of(many: list[Rider], figure: BodyFigure | None = None) -> Crowd:
    """The riders as arrays."""
    readings = np.full((4, len(many)), np.nan)
    u = np.ones((4, len(many)))
    weight = np.full(len(many), np.nan)
    for column, who in enumerate(many):
        for one in settled(who, DEFAULTS):
            if one.measure in FOUR:
                row = FOUR.index(one.measure)
                readings[row, column], u[row, column] = one.value, one.u or 1.0
            if one.measure is Measure.WEIGHT:
                weight[column] = one.value
    allowance = np.array([allowance_of(who, settled(who, DEFAULTS)) for who in many])
    return Crowd(readings, u, allowance, weight, figure)


def agrees_with_fit(many: list[Rider], *made: tuple[FileReading, ModelFacts]) -> None:
    compiled = table(*made)
    best = best_sizes(crowd_of(many, many[0].figure), compiled)
    for column, who in enumerate(many):
        sheet = fit(who, compiled)
        assert best.offers[column] == sheet.order[0]
        assert best.verdicts[column] == sheet.verdicts[sheet.order[0]]


@given(
    many=st.lists(riders(), min_size=1, max_size=6),
    made=st.tuples(models("Elm"), models("Oak")),
)
@settings(max_examples=150)
def test_every_rider_gets_the_first_row_of_fit(
    many: list[Rider], made: tuple[tuple[FileReading, ModelFacts], ...]
) -> None:
    agrees_with_fit(many, *made)


@given(many=st.lists(riders(), min_size=1, max_size=5), made=models("Elm"))
def test_elastic_counts_for_the_crowd_too(
    many: list[Rider], made: tuple[FileReading, ModelFacts]
) -> None:
    reading, facts = made
    elastic = Elastic(Decimal(88), Decimal(30), Decimal("0.4"), Decimal(3))
    agrees_with_fit(
        many, (reading, replace(facts, elastic=elastic)), model("B", rows_chart(CHART_A))
    )


def test_another_band_comes_after_on_equal_verdict() -> None:
    women = model("Elm", rows_chart(CHART_A, band="women"))
    men = model("Oak", rows_chart(CHART_A, band="men"))
    who = rider(chest=94, waist=78, hip=100, back_length="43.0", figure=BodyFigure.MAN)
    agrees_with_fit([who], women, men)
    assert fit(who, table(women, men)).rows[0].offer.model == "Oak"


def test_riders_far_from_every_size_get_the_nearest() -> None:
    many = [
        rider(chest=chest, waist=60, hip=140, back_length=60, taken_by=TakenBy.HELPER)
        for chest in (50, 70, 130, 160)
    ]
    agrees_with_fit(many, model("Elm", rows_chart(CHART_A)))


def test_no_offers_at_all_leave_everyone_without() -> None:
    best = best_sizes(crowd_of([rider(chest=90)]), table())
    assert best.offers.tolist() == [-1]
