"""Columns that are headed as no measure, over what only a measure is."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table


def priced(heading: str, cells: tuple[str, str, str]) -> str:
    rows = zip("SML", ("91-95", "95-99", "99-103"), cells, strict=True)
    return f"Size | Chest (cm) | {heading}\n" + "\n".join(" | ".join(row) for row in rows)


@pytest.mark.parametrize("heading", ["Price", "Colour", "Quantity", "Preis", "Prix"])
def test_ranges_of_lengths_that_are_not_used_are_asked_about(heading: str) -> None:
    reading = table(priced(heading, ("82-86 cm", "86-90 cm", "90-94 cm")))
    asked = [one for one in reading.findings if one.code == "column-unused"]
    assert [one.place for one in asked] == ["C2:C4"]


@pytest.mark.parametrize(
    "cells", [("89", "89", "94"), ("red", "blue", "2 pcs"), ("30 cm", "30 cm", "32 cm")]
)
def test_prices_colours_and_sizes_of_parcels_are_not(cells: tuple[str, str, str]) -> None:
    assert questions(table(priced("Price", cells))) == []
