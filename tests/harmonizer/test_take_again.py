"""Which reading is worth taking again."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import stats

from charts.wording import LANGUAGES, Wording
from harmonizer.explain import sentence
from harmonizer.fit import fit
from harmonizer.rider import TakenBy
from harmonizer.settings import DEFAULTS
from harmonizer.state_span import Lie, span_of_state
from harmonizer.take_again import (
    WORTH_A_CALL,
    chance_of_change,
    said,
    take_again,
    worth_measuring_first,
)
from tests.harmonizer.by_hand import CHART_A, CHEST, model, rider, row, rows_chart, table

A = rows_chart(CHART_A)


def lie(x: float, u: float = 1.5) -> Lie:
    """A chest in 90-98."""
    return Lie(x, u, DEFAULTS.u_girth_fitter, 90.0, 98.0, (0.0, 0.0), (90.0, 98.0), 1.0)


@pytest.mark.parametrize(
    ("x", "span"),
    [
        (94.0, (91.0, 97.0)),
        (90.5, (90.0, 91.0)),
        (97.5, (97.0, 98.0)),
        (98.5, (98.0, 99.0)),
        (105.0, (99.0, np.inf)),
        (80.0, (-np.inf, 89.0)),
    ],
)
def test_span_of_a_girths_state(x: float, span: tuple[float, float]) -> None:
    assert span_of_state(lie(x), 0, DEFAULTS) == pytest.approx(span)


def test_span_of_a_length_uses_a_fitters_pass_line() -> None:
    back = Lie(43.0, 2.7, 1.0, 42.0, 46.0, (0.0, 0.0), (42.0, 46.0), 0.0)
    assert span_of_state(back, 3, DEFAULTS) == pytest.approx((42.0, 43.645))


def test_the_chance_is_that_of_a_normal_reading_leaving_its_span() -> None:
    """Against scipy.stats.norm: s squared is u squared minus the fitter's."""
    s = np.sqrt(1.5**2 - 0.8**2)
    leaving = 1.0 - (stats.norm.cdf((97 - 96.5) / s) - stats.norm.cdf((91 - 96.5) / s))
    assert chance_of_change(lie(96.5), 0, DEFAULTS) == pytest.approx(leaving)


def test_nothing_is_offered_where_a_fitter_read_everything_twice() -> None:
    assert take_again(fit(rider(chest=98, waist=82, hip=104, back_length=42), table(A))) is None


def test_the_reading_at_a_border_is_offered() -> None:
    who = rider(TakenBy.HELPER, chest=98, waist=78, hip=100)
    again = take_again(fit(who, table(A)))
    assert again is not None
    assert again.dimension is CHEST
    assert again.chance > 0.5
    assert again.then >= again.now


def test_a_hard_miss_is_not_measured_again_but_a_close_one_is() -> None:
    sheet = fit(rider(TakenBy.SELF, chest=100, waist=78, hip=100), table(A))
    m = row(sheet, "M")
    chance = stats.norm.cdf((99 - 100) / 3.0) - stats.norm.cdf((89 - 100) / 3.0)
    assert worth_measuring_first(sheet, 0, m) is bool(chance >= WORTH_A_CALL)
    far = fit(rider(TakenBy.FITTER, chest=110, waist=78, hip=100), table(A))
    assert not worth_measuring_first(far, 0, row(far, "M"))
    close = fit(rider(TakenBy.SELF, chest="99.5", waist=78, hip=100), table(A))
    assert worth_measuring_first(close, 0, row(close, "M"))


@pytest.mark.parametrize("language", LANGUAGES)
def test_it_is_said_in_words(language: str) -> None:
    again = take_again(fit(rider(TakenBy.HELPER, chest=98, waist=78, hip=100), table(A)))
    assert again is not None
    assert all(sentence(one, Wording(language)) for one in said(again))


def test_a_size_worth_settling_is_named_with_its_model() -> None:
    """Of many models a bare letter says nothing."""
    who = rider(TakenBy.HELPER, chest=93, waist=84, hip=101, back_length=43)
    again = take_again(fit(who, table(model("Elm", A))))
    assert again is not None
    assert " Elm " in sentence(said(again)[0], Wording())
