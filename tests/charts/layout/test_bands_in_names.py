"""Names of sizes that carry a band: Girls 08, W-S."""

from __future__ import annotations

from charts.schema import FileReading
from tests.charts.read_text import asked_at, ranges, table


def _names(reading: FileReading) -> list[str | None]:
    return [size.label for chart in reading.charts for size in chart.sizes]


def test_a_size_behind_a_band_names_its_column_even_where_it_repeats() -> None:
    reading = table(
        """
        | Girls 08 | Girls 08 | Girls 10
        Chest (cm) | 60-65 | 65-70 | 70-75
        Waist (cm) | 50-54 | 54-58 | 58-62
        """
    )
    assert _names(reading) == ["Girls 08", "Girls 08", "Girls 10"]
    assert asked_at(reading, "label-repeated") == ["B2", "B3", "C2", "C3"]
    assert len(ranges(reading)) == 6
