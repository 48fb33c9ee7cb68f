"""What refuses a size whatever its ranges say."""

from __future__ import annotations

from decimal import Decimal

import pytest

from charts.model_facts import VestKind
from harmonizer.fit_row import FitRow
from harmonizer.gates import Gate
from harmonizer.rider import Needs
from harmonizer.states import Verdict
from tests.harmonizer.by_hand import CHART_A, fitted, model, reading, rider, rows_chart

A = rows_chart(CHART_A)
BODY = {"chest": 94, "waist": 78, "hip": 100, "back_length": 44}


def offered(weight: str | None = None, needs: Needs | None = None, **facts: object) -> FitRow:
    who = rider(**BODY, **({"weight": weight} if weight else {}), needs=needs or Needs())
    return fitted(who, model("Elm", A, **facts), label="M")


@pytest.mark.parametrize(
    ("weight", "gate"),
    [
        ("29.9", Gate.UNDER_WEIGHT_FLOOR),
        ("30", Gate.WEIGH_FIRST),
        ("32", Gate.WEIGH_FIRST),
        (None, Gate.WEIGH_FIRST),
    ],
)
def test_an_inflatable_waits_for_the_scales(weight: str | None, gate: Gate) -> None:
    row = offered(weight, kind=VestKind.INFLATABLE, weight_floor=Decimal(30))
    assert row.verdict is Verdict.NOT_OFFERED
    assert row.gates == (gate,)


def test_two_kilograms_over_the_floor_are_enough() -> None:
    row = offered("32.1", kind=VestKind.INFLATABLE, weight_floor=Decimal(30))
    assert row.gates == ()
    assert row.verdict is Verdict.CHECK_LENGTH or row.verdict is Verdict.FITS


def test_foam_with_an_unknown_weight_is_named_and_offered() -> None:
    row = offered(kind=VestKind.FOAM, weight_floor=Decimal(30))
    assert row.gates == (Gate.WEIGHT_NOT_KNOWN,)
    assert row.verdict is not Verdict.NOT_OFFERED


def test_over_the_ceiling_is_not_offered() -> None:
    row = offered("120.1", kind=VestKind.INFLATABLE, weight_ceiling=Decimal(120))
    assert row.gates == (Gate.OVER_WEIGHT_CEILING,)
    assert offered("120", weight_ceiling=Decimal(120)).gates == ()


def test_the_level_asked_for_must_be_on_the_label() -> None:
    asked = Needs(level="Level 3")
    assert offered(needs=asked, level="3").gates == ()
    assert offered(needs=asked, level="2").gates == (Gate.LEVEL_DIFFERS,)
    unknown = offered(needs=asked)
    assert unknown.gates == (Gate.LEVEL_NOT_KNOWN,)
    assert unknown.verdict is not Verdict.NOT_OFFERED


def test_the_kind_asked_for_counts() -> None:
    asked = Needs(kind=VestKind.INFLATABLE)
    assert offered(needs=asked, kind=VestKind.FOAM).gates == (Gate.KIND_DIFFERS,)
    assert offered(needs=asked).gates == (Gate.KIND_NOT_KNOWN,)


def test_recalled_superseded_and_out_of_stock_are_not_offered() -> None:
    assert offered(recalled=True).gates == (Gate.RECALLED,)
    assert offered(superseded=True).gates == (Gate.SUPERSEDED,)
    assert offered(needs=Needs(in_stock=True), out_of_stock=("M",)).gates == (Gate.OUT_OF_STOCK,)
    assert offered(out_of_stock=("M",)).gates == ()


def test_a_weight_typed_in_pounds_is_compared_exactly() -> None:
    floor = Decimal(70) * Decimal("0.45359237")
    who = rider(**BODY, weight=reading("weight", Decimal("69.9") * Decimal("0.45359237")))
    vest = model("Elm", A, kind=VestKind.INFLATABLE, weight_floor=floor)
    assert fitted(who, vest, label="M").gates == (Gate.UNDER_WEIGHT_FLOOR,)
