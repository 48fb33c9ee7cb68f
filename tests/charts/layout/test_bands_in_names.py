"""Names of sizes that carry a band: Girls 08, W-S."""

from __future__ import annotations

from charts.schema import FileReading
from tests.charts.read_text import asked_at, ranges, table, values


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


def test_tables_beside_each_other_may_each_have_an_empty_corner_and_names_of_their_own() -> None:
    reading = table(
        """
        | Length (cm) | Chest (cm) | | Length (cm) | Chest (cm)
        W-S | 66 | 84-88 | M-S | 72 | 92-96
        W-M | 68 | 88-92 | M-M | 74 | 96-100
        W-L | 70 | 92-96 | M-L | 77 | 100-104
        """
    )
    assert [chart.place for chart in reading.charts] == ["A1:C4", "D1:F4"]
    assert _names(reading) == ["W-S", "W-M", "W-L", "M-S", "M-M", "M-L"]
    assert values(reading)["W-S chest"] == (84, 88)
    assert values(reading)["M-S chest"] == (92, 96)
    assert len(ranges(reading)) == 12


def test_figures_in_a_second_empty_corner_begin_no_table() -> None:
    reading = table(
        """
        | Chest (cm) | Waist (cm) | | Chest (cm) | Waist (cm)
        S | 84-88 | 68-72 | 12 | 33-34 | 27-28
        M | 88-92 | 72-76 | 14 | 34-36 | 28-30
        """
    )
    assert len(reading.charts) == 1


def test_names_behind_a_word_that_all_share_name_the_sizes() -> None:
    reading = table(" | Chest (cm) | Waist (cm)\nKid-S | 60-65 | 50-54\nKid-M | 65-70 | 54-58")
    assert _names(reading) == ["Kid-S", "Kid-M"]
    reading = table(" | Chest (cm) | Waist (cm)\nKid-S | 60-65 | 50-54\nDog-S | 65-70 | 54-58")
    assert _names(reading) == []
