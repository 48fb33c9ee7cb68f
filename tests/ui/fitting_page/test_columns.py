"""Columns follow the room: the first three always stay, tapes are as many as fit."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ui.fitting_page.columns import TAPE_COLUMNS, Column, plan


def test_at_1094_pixels_four_tapes_and_the_notes_fit() -> None:
    """What is left beside the readings on a screen of 1366."""
    laid = plan(1094.0, 1.0, notes=True)
    assert laid.tapes == tuple(TAPE_COLUMNS)
    assert sum(laid.widths.values()) == pytest.approx(1094, abs=4)


def test_all_tapes_are_equally_wide() -> None:
    laid = plan(1400.0, 1.0, notes=False)
    assert len({laid.widths[tape] for tape in laid.tapes}) == 1


def test_where_four_tapes_do_not_fit_some_are_left_out_and_nothing_scrolls_sideways() -> None:
    """At 200 % a screen of 1366 has 683 pixels."""
    laid = plan(605.0, 1.0, notes=False)
    assert 1 <= len(laid.tapes) < 4
    assert sum(laid.widths.values()) <= 605


def test_the_tapes_left_out_come_in_from_the_right() -> None:
    first = plan(605.0, 1.0, notes=False)
    last = plan(605.0, 1.0, notes=False, first_tape=3)
    assert first.tapes[0] is Column.CHEST
    assert last.tapes[-1] is Column.BACK


@given(
    width=st.floats(420, 3000),
    unit=st.floats(0.8, 2.5),
    notes=st.booleans(),
    first=st.integers(0, 3),
)
def test_the_first_columns_always_stay(width: float, unit: float, notes: bool, first: int) -> None:
    laid = plan(width * unit, unit, notes=notes, first_tape=first)
    assert {Column.MODEL, Column.SIZE, Column.VERDICT} <= set(laid.widths)
    assert notes or Column.NOTE not in laid.widths
    assert laid.tapes
    assert list(laid.widths) == sorted(laid.widths)
