"""A value in both units: the maker's figure exactly as printed, the other one converted."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

import pytest

from charts.quantities import CANONICAL, FAMILY, Family, Unit, canonical
from charts.schema import Dimension, Kind, PrintedBothWays, Range, UnitFrom
from charts.wording import Wording
from charts.writers.figures import Printed, metric, other, printed_unit

ENGLISH = Wording("en")
DIMENSIONS = {
    Family.LENGTH: Dimension.CHEST,
    Family.MASS: Dimension.WEIGHT,
    Family.AGE: Dimension.AGE,
}


def value(of: Unit = Unit.CM, step: str = "1", **given: Any) -> Range:
    """A value whose figures are given in the unit ``of``, which is printed."""
    figures = {
        name: canonical(Decimal(given.pop(name)), of)
        for name in ("low", "high", "value", "tolerance")
        if name in given
    }
    family = FAMILY[of]
    fields: dict[str, Any] = {
        "dimension": DIMENSIONS[family],
        "heading": "Chest",
        "kind": Kind.RANGE,
        "published": "",
        "place": "B2",
        "unit": CANONICAL[family],
        "unit_from": UnitFrom.HEADING,
        "published_unit": of,
        "low_step": canonical(Decimal(step), of),
        "high_step": canonical(Decimal(step), of),
    }
    return Range(**(fields | figures | given))


def both(given: Range) -> tuple[Printed, Printed | None]:
    return metric(given, ENGLISH), other(given, ENGLISH)


def test_a_range_in_cm_is_exact_there_and_converted_to_quarter_inches() -> None:
    shown = both(value(low="86.5", high="91", step="0.5"))
    assert shown == (Printed("86.5–91", True), Printed("34–35 3/4", False))


def test_a_range_in_inches_is_exact_there_and_converted_to_half_centimetres() -> None:
    shown = both(value(Unit.IN, low="34", high="36"))
    assert shown == (Printed("86.5–91.5", False), Printed("34–36", True))


def test_eighths_of_an_inch_stay_eighths() -> None:
    shown = other(value(Unit.IN, "0.125", low="34.375", high="36"), ENGLISH)
    assert shown == Printed("34 3/8–36", True)


def test_each_end_keeps_its_own_step() -> None:
    ends = {"low_step": Decimal("2.54"), "high_step": Decimal("1.27")}
    shown = other(value(Unit.IN, low="26", high="29.5", **ends), ENGLISH)
    assert shown == Printed("26–29 1/2", True)


def test_tenths_of_an_inch_stay_tenths() -> None:
    shown = other(value(Unit.IN, "0.1", low="33.5", high="34.7"), ENGLISH)
    assert shown == Printed("33.5–34.7", True)


def test_millimetres_are_the_makers_own_centimetres() -> None:
    assert metric(value(Unit.MM, low="860", high="915"), ENGLISH) == Printed("86–91.5", True)


def test_pounds_are_exact_and_kilograms_converted() -> None:
    shown = both(value(Unit.LB, low="95", high="110"))
    assert shown == (Printed("43–50", False), Printed("95–110", True))


def test_two_printed_units_are_both_the_makers_own() -> None:
    also = PrintedBothWays("34-36", Unit.IN, Decimal(34), Decimal(36), None, "B2", Decimal(1))
    shown = both(value(low="87", high="91", also_published=also))
    assert shown == (Printed("87–91", True), Printed("34–36", True))


def test_a_unit_that_is_not_printed_is_known_by_the_digits() -> None:
    unprinted = value(Unit.IN, low="34", high="36", published="34-36", published_unit=None)
    assert printed_unit(unprinted) is Unit.IN
    assert other(unprinted, ENGLISH) == Printed("34–36", True)


@pytest.mark.parametrize(
    ("given", "shown"),
    [
        ({"kind": Kind.AT_MOST, "high": "84"}, "up to 84"),
        ({"kind": Kind.AT_MOST, "high": "84", "high_included": False}, "under 84"),
        ({"kind": Kind.AT_LEAST, "low": "110"}, "from 110"),
        ({"kind": Kind.AT_LEAST, "low": "110", "low_included": False}, "over 110"),
        ({"kind": Kind.SINGLE, "value": "92"}, "92"),
        ({"kind": Kind.SINGLE, "value": "92", "tolerance": "2"}, "92 ± 2"),
        ({"kind": Kind.SINGLE, "value": "92", "circa": True}, "about 92"),
        ({"low": "84", "high": "88", "high_included": False}, "84 to under 88"),
        ({"low": "84", "high": "88", "low_included": False}, "over 84 to 88"),
    ],
)
def test_every_kind_of_value_has_its_words(given: dict[str, Any], shown: str) -> None:
    assert metric(value(**given), ENGLISH).text == shown


def test_what_could_not_be_read_is_quoted_and_never_converted() -> None:
    unread = value(kind=Kind.UNREAD, published="3O-4O")
    assert both(unread) == (Printed("“3O-4O”", True), None)


def test_ages_have_no_second_unit() -> None:
    assert both(value(Unit.YEARS, low="8", high="10")) == (Printed("8–10", True), None)


def test_german_figures_have_a_decimal_comma() -> None:
    german = metric(value(low="86.5", high="91", step="0.5"), Wording("de"))
    assert german.text == "86,5–91"
