"""What is called plausible holds every body that was measured, and no slip of unit.

Source: ANSUR II (public domain), 4,082 men and 1,986 women, smallest and largest of each
dimension, computed from the published data files; in mm, weight in kg.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from charts.plausible_ranges import plausible
from charts.quantities import Unit
from charts.schema import Definition, Dimension

SMALLEST_AND_LARGEST_MM = {
    Dimension.CHEST: (695, 1469),
    Dimension.WAIST: (611, 1379),
    Dimension.HIP: (737, 1341),
    Dimension.HEIGHT: (1409, 1993),
    Dimension.BACK_LENGTH: (345, 598),
    Dimension.NECK: (275, 514),
}
WEIGHT_KG = (Decimal("35.8"), Decimal("144.2"))


@pytest.mark.parametrize("dimension", SMALLEST_AND_LARGEST_MM)
@pytest.mark.parametrize("unit", [Unit.CM, Unit.MM])
def test_every_measured_body_is_plausible(dimension: Dimension, unit: Unit) -> None:
    limits = plausible(dimension, unit)
    assert limits is not None
    smallest, largest = (
        Decimal(value) / (10 if unit is Unit.CM else 1)
        for value in SMALLEST_AND_LARGEST_MM[dimension]
    )
    assert limits[0] < smallest
    assert largest < limits[1]


@pytest.mark.parametrize("dimension", SMALLEST_AND_LARGEST_MM)
def test_every_measured_body_is_plausible_in_inches(dimension: Dimension) -> None:
    limits = plausible(dimension, Unit.IN)
    assert limits is not None
    smallest, largest = (
        Decimal(value) / Decimal("25.4") for value in SMALLEST_AND_LARGEST_MM[dimension]
    )
    assert limits[0] < smallest
    assert largest < limits[1]


def test_every_measured_weight_is_plausible() -> None:
    limits = plausible(Dimension.WEIGHT, Unit.KG)
    assert limits is not None
    assert limits[0] < WEIGHT_KG[0]
    assert WEIGHT_KG[1] < limits[1]


def test_every_measured_waist_over_the_shoulder_is_plausible() -> None:
    """ANSUR II derived dimension D41, mean plus and minus four standard deviations, in mm."""
    limits = plausible(Dimension.BACK_LENGTH, Unit.CM, Definition.BACK_WAIST_SHOULDER_WAIST)
    assert limits is not None
    assert limits[0] < (Decimal("938.569") - 4 * Decimal("57.041")) / 10
    assert (Decimal("1042.461") + 4 * Decimal("60.871")) / 10 < limits[1]


@pytest.mark.parametrize("dimension", SMALLEST_AND_LARGEST_MM)
def test_a_body_in_millimetres_is_never_a_plausible_one_in_centimetres(
    dimension: Dimension,
) -> None:
    limits = plausible(dimension, Unit.CM)
    assert limits is not None
    assert SMALLEST_AND_LARGEST_MM[dimension][0] > limits[1]
