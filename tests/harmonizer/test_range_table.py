"""How charts become arrays: tolerances, adjusters, basis, and the vest's own length."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from charts.model_facts import Adjuster, VestKind, WornOver
from charts.schema import Basis, Dimension
from harmonizer.fit import fit
from harmonizer.settings import DEFAULTS
from harmonizer.states import GirthState, LengthState
from tests.harmonizer.by_hand import (
    BACK,
    CHART_A,
    CHEST,
    HIP,
    WAIST,
    chart,
    fitted,
    model,
    rider,
    row,
    rows_chart,
    single,
    size,
    span,
    table,
)


def test_near_is_never_more_than_half_the_published_width() -> None:
    narrow = chart(size("M", span(CHEST, 90, 91), span(WAIST, 74, 78)))
    at = fitted(rider(chest="91.5", waist=80), narrow, label="M").dimensions
    assert (at[CHEST].state, at[WAIST].state) == (GirthState.NEAR, GirthState.NEAR)
    beyond = fitted(rider(chest="91.6", waist="80.1"), narrow, label="M").dimensions
    assert (beyond[CHEST].state, beyond[WAIST].state) == (GirthState.MISS, GirthState.MISS)


def test_waist_and_hip_of_an_inflatable_may_be_out_by_two() -> None:
    air = model("Elm", rows_chart(CHART_A), kind=VestKind.INFLATABLE)
    within = fitted(rider(chest=94, waist=84, hip=106), air, label="M").dimensions
    assert (within[WAIST].state, within[HIP].state) == (GirthState.NEAR, GirthState.NEAR)
    out = fitted(rider(chest=94, waist="84.1", hip="106.1"), air, label="M").dimensions
    assert (out[WAIST].state, out[HIP].state) == (GirthState.MISS, GirthState.MISS)
    foam = model("Elm", rows_chart(CHART_A), kind=VestKind.FOAM)
    assert fitted(rider(chest=94, waist=86), foam, label="M").dimensions[WAIST].state == "near"


def test_the_chest_has_its_own_tolerance_on_every_vest() -> None:
    air = model("Elm", rows_chart(CHART_A), kind=VestKind.INFLATABLE)
    wider = replace(DEFAULTS, chest_tolerance=3.0)
    sheet = fit(rider(chest=101), table(air), wider)
    assert row(sheet, "M").dimensions[CHEST].state is GirthState.NEAR


def test_an_adjuster_never_makes_a_back_shorter() -> None:
    ways = {BACK: Adjuster(Decimal(3), Decimal(2))}
    made = model("Elm", rows_chart(CHART_A), adjusters=ways)
    back = fitted(rider(chest=94, back_length=41), made, label="M").dimensions[BACK]
    assert (back.reach_low, back.reach_high) == (42.0, 47.0)
    assert back.state is LengthState.TOO_LONG


def test_the_tolerance_comes_on_top_of_an_adjuster() -> None:
    ways = {CHEST: Adjuster(Decimal(4), Decimal(4))}
    made = model("Elm", rows_chart({"M": ((88, 96),)}), adjusters=ways)
    assert fitted(rider(chest=101), made, label="M").dimensions[CHEST].state is GirthState.NEAR
    assert fitted(rider(chest="101.1"), made, label="M").dimensions[CHEST].state is GirthState.MISS


def test_the_basis_of_a_silent_chart_comes_from_the_instructions() -> None:
    silent = chart(size("M", span(CHEST, 90, 98, basis=Basis.UNKNOWN)))
    assert "basis" in fitted(rider(chest=94), silent, label="M").dimensions[CHEST].assumed
    body = model("Elm", silent, basis=Basis.BODY)
    assert "basis" not in fitted(rider(chest=94), body, label="M").dimensions[CHEST].assumed
    finished = model("Elm", silent, basis=Basis.FINISHED)
    chest = fitted(rider(chest=94), finished, label="M").dimensions[CHEST]
    assert (chest.state, chest.reason.code) == (GirthState.NOT_CHECKED, "finished")


@pytest.mark.parametrize(("basis", "own"), [(Basis.FINISHED, True), (Basis.FLAT, False)])
def test_only_a_finished_length_serves_the_saddle(basis: Basis, own: bool) -> None:
    made = chart(size("M", span(CHEST, 90, 98), single(BACK, 50, basis=basis)))
    found = fitted(rider(chest=94, c7_above_seat=62), made, label="M")
    assert (found.clearance is not None) is own


def test_a_chest_in_a_true_gap_lies_between_two_sizes() -> None:
    gap = chart(size("S", span(CHEST, 84, 88)), size("M", span(CHEST, 91, 95)))
    sheet = fit(rider(chest=89), table(gap))
    assert row(sheet, "S").between_sizes
    assert row(sheet, "M").between_sizes
    outside = fit(rider(chest=96), table(gap))
    assert not row(outside, "M").between_sizes


def test_a_measured_allowance_replaces_two_pi_t() -> None:
    made = rows_chart(CHART_A)
    who = rider(chest=91, chest_over_layers=95, winter_mm=Decimal(12))
    assert fitted(who, made, label="M").dimensions[CHEST].layers == pytest.approx(4.0)
    smaller = rider(chest=91, chest_over_layers=90)
    assert fitted(smaller, made, label="M").dimensions[CHEST].layers == 0.0


def test_a_chart_for_warm_layers_is_compared_with_them_on_both_sides() -> None:
    warm = model("Elm", rows_chart(CHART_A), worn_over=WornOver.WARM_LAYERS)
    who = rider(chest=87, winter_mm=Decimal(6))
    chest = fitted(who, warm, label="M").dimensions[CHEST]
    assert chest.lower_margin == pytest.approx(0.77, abs=0.005)
    assert chest.upper_margin == pytest.approx(7.23, abs=0.005)


def test_a_high_hip_is_in_no_lane() -> None:
    made = chart(size("M", span(CHEST, 90, 98), span(Dimension.OTHER, 80, 90)))
    assert Dimension.OTHER not in table(made).dimensions
