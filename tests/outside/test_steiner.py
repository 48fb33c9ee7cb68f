"""Layers against geometry: the outline of a convex body grows by 2 pi t at distance t.

Source: Steiner's formula; the outlines are made by shapely, an independent implementation.
"""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from harmonizer.layers import largest_girth, layer_allowance, stretch_used

corners = st.lists(
    st.tuples(st.integers(-20, 20), st.integers(-15, 15)), min_size=3, max_size=12, unique=True
)


@given(points=corners, millimetres=st.integers(1, 30))
def test_a_layer_around_a_convex_outline_adds_two_pi_t(
    points: list[tuple[int, int]], millimetres: int
) -> None:
    hull = shapely.MultiPoint(points).convex_hull
    if hull.geom_type != "Polygon":
        return
    grown = hull.buffer(millimetres / 10, quad_segs=256)
    assert grown.length - hull.length == pytest.approx(layer_allowance(millimetres), rel=1e-4)


def test_an_ellipse_like_a_chest() -> None:
    angle = np.linspace(0, 2 * np.pi, 4000, endpoint=False)
    chest = shapely.Polygon(np.column_stack([16 * np.cos(angle), 11 * np.sin(angle)]))
    grown = chest.buffer(0.6, quad_segs=256)
    assert grown.length - chest.length == pytest.approx(layer_allowance(6), rel=1e-3)


@pytest.mark.parametrize(
    ("millimetres", "cm"),
    [(1, 0.628), (2, 1.257), (4, 2.513), (5, 3.142), (10, 6.283), (15, 9.425)],
)
def test_derived_values_of_the_check_table(millimetres: float, cm: float) -> None:
    """Geometry; the table of check values, 7.2."""
    assert layer_allowance(millimetres) == pytest.approx(cm, abs=0.0005)


def test_stretch_of_the_worked_example() -> None:
    """[geo] G0 84, E0 30, e 0.40: Gmax 96; 90 uses 0.50."""
    relaxed, part, extension = np.array(84.0), np.array(30.0), np.array(0.40)
    assert largest_girth(relaxed, part, extension) == pytest.approx(96.0)
    assert stretch_used(np.array(90.0), relaxed, part, extension) == pytest.approx(0.50)
