"""The factors between units, against published values and an independent library.

Sources: the pound is 0.453 592 37 kg in the Weights and Measures Act 1985, Schedule 1, Part V
(legislation.gov.uk); the inch is 2.54 cm by the international yard of 0.9144 m; the stone is 14
pounds, 6.350 293 18 kg (hobbyprojects.com). ``scipy.constants`` is the independent library.
The check values are arithmetic from these.
"""

from __future__ import annotations

from decimal import Decimal

import pytest
from scipy import constants

from charts.notation import Expected, read_cell
from charts.quantities import Unit, factor
from charts.schema import Dimension

IN_METRES = {
    Unit.MM: constants.milli,
    Unit.CM: constants.centi,
    Unit.M: 1.0,
    Unit.IN: constants.inch,
    Unit.FT: constants.foot,
}
IN_KILOGRAMS = {
    Unit.G: constants.gram,
    Unit.KG: 1.0,
    Unit.LB: constants.pound,
    Unit.ST: constants.stone,
}
PUBLISHED = {
    '28"': "71.12", '30"': "76.20", '32"': "81.28", '34"': "86.36", '36"': "91.44", '38"': "96.52",
    '40"': "101.60", '42"': "106.68", '44"': "111.76", '46"': "116.84", '48"': "121.92",
    '50"': "127.00", "4 ft 6 in": "137.16", "5 ft 0 in": "152.40", "5 ft 2 in": "157.48",
    "5 ft 4 in": "162.56", "5 ft 6 in": "167.64", "5 ft 8 in": "172.72", "5 ft 10 in": "177.80",
    "6 ft 0 in": "182.88", "6 ft 2 in": "187.96",
}  # fmt: skip
PUBLISHED_MASSES = {
    "7 st 0 lb": "44.45205226", "8 st 0 lb": "50.80234544", "9 st 7 lb": "60.32778521",
    "10 st 0 lb": "63.5029318", "11 st 4 lb": "71.66759446", "12 st 0 lb": "76.20351816",
    "150 lb": "68.0388555", "200 lb": "90.718474",
}  # fmt: skip


@pytest.mark.parametrize("unit", IN_METRES)
def test_lengths_agree_with_an_independent_library(unit: Unit) -> None:
    assert float(factor(unit)) == pytest.approx(IN_METRES[unit] * 100, rel=1e-12)


@pytest.mark.parametrize("unit", IN_KILOGRAMS)
def test_masses_agree_with_an_independent_library(unit: Unit) -> None:
    assert float(factor(unit)) == pytest.approx(IN_KILOGRAMS[unit], rel=1e-12)


def test_the_factors_are_exact_decimals() -> None:
    assert factor(Unit.IN) == Decimal("2.54")
    assert factor(Unit.LB) == Decimal("0.45359237")
    assert factor(Unit.ST) == Decimal("6.35029318")


def canonical_value(text: str, dimension: Dimension | None) -> Decimal:
    quantity = read_cell(text, Expected(dimension)).quantity
    assert quantity is not None
    assert quantity.value is not None
    assert quantity.unit is not None
    return quantity.value.in_canonical(quantity.unit).value


@pytest.mark.parametrize(("text", "wanted"), PUBLISHED.items())
def test_a_printed_length_comes_to_its_published_centimetres(text: str, wanted: str) -> None:
    assert canonical_value(text, None) == Decimal(wanted)


@pytest.mark.parametrize(("text", "wanted"), PUBLISHED_MASSES.items())
def test_a_printed_mass_comes_to_its_published_kilograms(text: str, wanted: str) -> None:
    assert canonical_value(text, Dimension.WEIGHT) == Decimal(wanted)
