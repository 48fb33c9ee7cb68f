"""Coverage against the joint shares computed from the raw ANSUR II survey (check values, 1.5).

Populations are drawn from the survey's means, deviations and correlations; the raw survey is not
normal, so the shares agree to about two in a hundred, not exactly.
"""

from __future__ import annotations

import numpy as np
import pytest

from harmonizer.coverage import best_set, coverage, empty_cells
from harmonizer.crowd.best import Crowd
from harmonizer.estimates import COLUMNS, population
from harmonizer.rider import BodyFigure
from tests.harmonizer.by_hand import CHART_A, model, rows_chart, table
from tests.outside.test_bdims_coverage import WOMENS

RIDERS = 40_000
NAMES = ("chest", "waist", "hip", "back_c7_si")


def drawn(figure: BodyFigure, back: str = "back_c7_si") -> np.ndarray:
    """Chest, waist, hip and a back of a drawn population, 4 x riders."""
    people = population(figure)
    assert people is not None
    spread = people.correlation * np.outer(people.sd, people.sd)
    bodies = np.random.default_rng(106).multivariate_normal(people.mean, spread, RIDERS)
    places = [people.keys.index(COLUMNS[name]) for name in (*NAMES[:3], back)]
    return bodies[:, places].T


def as_crowd(readings: np.ndarray) -> Crowd:
    return Crowd(readings, np.ones((4, 1)))


def share(figure: BodyFigure, ends: tuple[tuple[float, float], ...], readings: np.ndarray) -> float:
    """The share one size covers whose first dimensions have these ends."""
    known = np.full((4, readings.shape[1]), np.nan)
    known[: len(ends)] = readings[: len(ends)]
    # Without a length nothing reads fits or edge, so every rider gets one that is clear.
    known[3] = 43.0 if len(ends) < 4 else readings[3]
    wide = ends if len(ends) == 4 else (*ends, *((0, 400),) * (3 - len(ends)), (40, 60))
    known[len(ends) : 3] = 100.0
    made = rows_chart({"M": tuple((round(low, 4), round(high, 4)) for low, high in wide)})
    return coverage(as_crowd(known), table(made)).together


@pytest.mark.parametrize(
    ("figure", "ends", "published"),
    [
        (BodyFigure.MAN, ((92.2, 120.7), (76.8, 113.095)), 0.8574),
        (BodyFigure.MAN, ((92.2, 120.7), (76.8, 113.095), (89.9, 114.9)), 0.8297),
        (BodyFigure.WOMAN, ((82.425, 109.4), (71.0, 104.0)), 0.8505),
        (BodyFigure.WOMAN, ((82.425, 109.4), (71.0, 104.0), (90.125, 115.575)), 0.8142),
    ],
)
def test_ranges_from_p5_to_p95_together_cover_what_the_survey_says(
    figure: BodyFigure, ends: tuple[tuple[float, float], ...], published: float
) -> None:
    """Three ranges that each hold nine people in ten hold only about eight together."""
    assert share(figure, ends, drawn(figure)) == pytest.approx(published, abs=0.02)


@pytest.mark.parametrize(("count", "published"), [(1, 0.964), (2, 0.556), (3, 0.311), (4, 0.134)])
def test_the_invented_womens_chart_covers_what_the_fit_model_says(
    count: int, published: float
) -> None:
    """[pop] Section 3, from the raw data: 96.4, 55.6, 31.1 and 13.4 % of women.

    The chart follows the crowded middle of the survey, where a normal body is a little sparser.
    """
    readings = drawn(BodyFigure.WOMAN)
    readings[count:] = np.array([[100.0], [100.0], [100.0], [43.0]])[count:]
    rows = {}
    for label, ends in WOMENS.items():
        wide = (*ends[:count], *((0, 400),) * (3 - count), (40, 60))[:4] if count < 4 else ends
        rows[label] = wide
    found = coverage(as_crowd(readings), table(rows_chart(rows))).together
    assert found == pytest.approx(published, abs=0.04)


def test_the_best_set_of_models_is_the_one_that_covers_most() -> None:
    """Against trying every set by plain sums."""
    readings = drawn(BodyFigure.WOMAN)[:, :4000]
    charts = [
        model(
            f"Elm {step}",
            rows_chart(
                {
                    label: tuple((low + step, high + step) for low, high in ends)
                    for label, ends in CHART_A.items()
                }
            ),
        )
        for step in (-6, 0, 4, 8)
    ]
    found = coverage(as_crowd(readings), table(*charts))
    chosen, most = best_set(found, 2)
    pairs = {
        (one, other): (found.served[a] | found.served[b]).mean()
        for a, one in enumerate(found.models)
        for b, other in enumerate(found.models)
        if a < b
    }
    assert most == pytest.approx(max(pairs.values()))
    assert pairs[chosen] == pytest.approx(most)


def test_cells_that_nobody_serves_are_named() -> None:
    readings = np.array([[92.0, 92.0, 130.0], [78.0, 78, 110], [100.0, 100, 140], [43.0, 44, 50]])
    found = coverage(as_crowd(readings), table(rows_chart(CHART_A)))
    cells = empty_cells(found, readings[0].tolist(), readings[3].tolist(), (10.0, 5.0))
    assert cells == {(130.0, 50.0): 1}
