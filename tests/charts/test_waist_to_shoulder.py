"""Waist and shoulder named together are the way between them: a definition of the back length."""

from __future__ import annotations

import pytest

from charts.dimensions import read_heading
from charts.schema import Definition, Dimension


@pytest.mark.parametrize(
    "heading",
    [
        *("Waist-shoulder", "Waist–shoulder (cm)", "Taille-Schulter", "Taille–Schulter (cm)"),
        *("Vita–spalla (cm)", "taille-épaule", "Cintura-hombro", "Cintura–ombro", "Midja-axel"),
        *("Taille-schouder", "Talje-skulder", "Talia–ramię", "Pas-rameno"),
    ],
)
def test_the_two_together_are_a_back_length(heading: str) -> None:
    reading = read_heading(heading)
    assert (reading.dimension, reading.candidates) == (Dimension.BACK_LENGTH, ())
    assert reading.definition is Definition.BACK_SHOULDER_WAIST
