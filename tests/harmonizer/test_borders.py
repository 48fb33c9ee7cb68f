"""Where neighbouring sizes meet."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from charts.quantities import Unit
from charts.schema import Dimension, PrintedBothWays, Range
from harmonizer.borders import Reach, reaches
from tests.harmonizer.by_hand import BACK, CHEST, single, span


def ends(ranges: list[Range]) -> list[tuple[float, float] | None]:
    return [(one.reach_low, one.reach_high) if one else None for one in reaches(ranges)]


def test_a_gap_of_one_printed_step_closes_to_the_midpoint() -> None:
    assert ends([span(CHEST, 84, 88), span(CHEST, 89, 93)]) == [(84, 88.5), (88.5, 93)]


def test_the_published_ends_stay_as_printed() -> None:
    lower, upper = reaches([span(CHEST, 84, 88), span(CHEST, 89, 93)])
    assert isinstance(lower, Reach)
    assert isinstance(upper, Reach)
    assert (lower.high, upper.low) == (88, 89)


def test_the_coarser_step_of_the_two_figures_counts() -> None:
    fine = span(CHEST, 84, "88.5", step="0.5")
    assert ends([fine, span(CHEST, "89.5", 93)]) == [(84, 89), (89, 93)]


def test_a_shared_border_belongs_to_both() -> None:
    assert ends([span(CHEST, 84, 88), span(CHEST, 88, 92)]) == [(84, 88), (88, 92)]


def test_a_wider_gap_stays() -> None:
    assert ends([span(CHEST, 84, 88), span(CHEST, 91, 95)]) == [(84, 88), (91, 95)]


def test_an_overlap_stays() -> None:
    assert ends([span(CHEST, 84, 92), span(CHEST, 90, 98)]) == [(84, 92), (90, 98)]


def test_neighbours_are_found_in_any_order() -> None:
    assert ends([span(CHEST, 89, 93), span(CHEST, 84, 88)]) == [(88.5, 93), (84, 88.5)]


def test_equal_ranges_share_one_neighbour() -> None:
    twice = [span(CHEST, 84, 88), span(CHEST, 84, 88), span(CHEST, 89, 93)]
    assert ends(twice) == [(84, 88.5), (84, 88.5), (88.5, 93)]


def test_an_open_end_meets_its_neighbour() -> None:
    run = [span(CHEST, None, 84), span(CHEST, 85, 90), span(CHEST, 91, None)]
    assert ends(run) == [(float("-inf"), 84.5), (84.5, 90.5), (90.5, float("inf"))]


def test_a_single_value_reaches_half_way_to_each_neighbour() -> None:
    run = [single(CHEST, 84), single(CHEST, 88), single(CHEST, 94)]
    assert ends(run) == [(82, 86), (86, 91), (91, 97)]
    assert all(one.derived for one in reaches(run) if one)


def test_a_single_value_alone_is_not_checked() -> None:
    assert ends([single(CHEST, 88), single(CHEST, 88)]) == [None, None]


def test_a_back_length_is_never_widened_downwards() -> None:
    assert ends([span(BACK, 40, 42), span(BACK, 43, 45)]) == [(40, 42.5), (43, 45)]
    assert ends([single(BACK, 42), single(BACK, 44)]) == [(42, 43), (44, 45)]


def test_ages_reach_to_the_next_birthday() -> None:
    ages = [span(Dimension.AGE, 8, 9), span(Dimension.AGE, 10, 11)]
    assert ends(ages) == [(8, 10), (10, 12)]


def both(low: str, high: str, inches: tuple[str, str]) -> Range:
    printed = PrintedBothWays(
        text="",
        unit=Unit.IN,
        low=Decimal(inches[0]),
        high=Decimal(inches[1]),
        value=None,
        place="",
        low_step=Decimal(1),
        high_step=Decimal(1),
    )
    return replace(span(CHEST, low, high), also_published=printed)


def test_a_border_closes_if_it_closes_in_either_printed_unit() -> None:
    run = [both("86", "91", ("34", "36")), both("94", "99", ("37", "39"))]
    assert ends(run) == [(86, 92.5), (92.5, 99)]


def test_a_border_open_in_both_units_stays_open() -> None:
    run = [both("86", "91", ("34", "36")), both("97", "99", ("38", "39"))]
    assert ends(run) == [(86, 91), (97, 99)]


@pytest.mark.parametrize(("reading", "outside"), [("87.99", False), ("88", True)])
def test_an_excluded_end_is_outside(reading: str, outside: bool) -> None:
    (below,) = reaches([span(CHEST, 84, 88, high_included=False)])
    assert below is not None
    assert (float(reading) > below.reach_high + 0.0001) is outside
