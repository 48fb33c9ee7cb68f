"""A size in the corner of sizes across is one that has no figures, and is asked about."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table, values


@pytest.mark.parametrize(
    "sizes", ["Size 36 | 38 | 40", "Size S | M | L", "Größe: XS | S | M", "Taille S | M | L"]
)
def test_a_size_in_the_corner_is_asked_about(sizes: str) -> None:
    reading = table(f"{sizes}\nChest (cm) | 82-86 | 87-91\nWaist (cm) | 66-70 | 71-75")
    assert questions(reading) == ["columns-shifted"]


@pytest.mark.parametrize("corner", ["Size", "Size EU", "Size (UK)", "Größe 2027"])
def test_a_corner_that_names_no_size_is_not(corner: str) -> None:
    reading = table(f"{corner} | 38 | 40\nChest (cm) | 82-86 | 87-91\nWaist (cm) | 66-70 | 71-75")
    assert values(reading)["38 chest"] == (82, 86)
    assert "columns-shifted" not in questions(reading)
