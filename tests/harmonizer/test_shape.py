"""The rider's shape against the cut."""

from __future__ import annotations

import pytest

from harmonizer.row_reasons import reasons
from harmonizer.shape import shape_of
from tests.harmonizer.by_hand import CHART_A, fitted, rider, rows_chart

A = rows_chart(CHART_A)


def test_a_rider_in_every_middle_has_the_shape_of_the_cut() -> None:
    shape = shape_of(fitted(rider(chest=94, waist=78, hip=100), A, label="M"))
    assert (shape.waist, shape.hip) == pytest.approx((0.0, 0.0))


@pytest.mark.parametrize(
    ("waist", "hip", "code"),
    [
        (73, 100, "waist-loose-here"),
        (83, 100, "waist-tight-here"),
        (78, 105, "hip-tight-here"),
        (78, 95, "hip-loose-here"),
        (74, 104, None),
    ],
)
def test_a_difference_over_four_centimetres_is_said(
    waist: float, hip: float, code: str | None
) -> None:
    """D is chest minus waist, E hip minus chest; up to 4 cm either way is neutral [set]."""
    row = fitted(rider(chest=94, waist=waist, hip=hip), A, label="M")
    said = {one.code for one in reasons(row)} & {
        "waist-loose-here",
        "waist-tight-here",
        "hip-tight-here",
        "hip-loose-here",
    }
    assert said == ({code} if code else set())


def test_what_is_not_checked_has_no_shape() -> None:
    shape = shape_of(fitted(rider(chest=94), A, label="M"))
    assert (shape.waist, shape.hip) == (None, None)
