"""Lower and upper ends in lines of their own below one size; blocks headed by what they measure."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Kind
from tests.charts.read_text import questions, ranges, table, values

WHOLE = {"S chest": (84, 88), "S waist": (68, 72), "M chest": (88, 92), "M waist": (72, 76)}


@pytest.mark.parametrize(
    ("low", "high"), [("min", "max"), ("from", "to"), ("von", "bis"), ("de", "à"), ("Min.", "Max.")]
)
def test_ends_across_below_each_size_are_one_range(low: str, high: str) -> None:
    reading = table(
        f"""
        Size | S | | M |
         | {low} | {high} | {low} | {high}
        Chest (cm) | 84 | 88 | 88 | 92
        Waist (cm) | 68 | 72 | 72 | 76
        """
    )
    assert values(reading) == WHOLE
    assert questions(reading) == []
    assert ranges(reading)[0].place == "B3:C3"


def test_merged_sizes_over_their_ends() -> None:
    page = (
        "<table><tr><th rowspan=2></th><th colspan=2>S</th><th colspan=2>M</th></tr>"
        "<tr><th>min</th><th>max</th><th>min</th><th>max</th></tr>"
        "<tr><th>Chest (cm)</th><td>84</td><td>88</td><td>88</td><td>92</td></tr>"
        "<tr><th>Waist (cm)</th><td>68</td><td>72</td><td>72</td><td>76</td></tr></table>"
    )
    assert values(read_bytes(page.encode(), "page.html")) == WHOLE


def test_ends_below_a_unit_below_a_size() -> None:
    reading = table(
        """
        Size | S | | | | M | | |
         | cm | | in | | cm | | in |
         | min | max | min | max | min | max | min | max
        Chest | 84 | 88 | 33 | 34.5 | 88 | 92 | 34.5 | 36
        Waist | 68 | 72 | 27 | 28.5 | 72 | 76 | 28.5 | 30
        """
    )
    assert values(reading) == WHOLE
    assert all(one.also_published is not None for one in ranges(reading))


def test_ends_in_a_column_beside_the_sizes() -> None:
    reading = table(
        """
        Size | End | Chest (cm) | Waist (cm)
        S | max | 88 | 72
        S | min | 84 | 68
        M | min | 88 | 72
         | max | 92 | 76
        """
    )
    assert values(reading) == WHOLE


def test_an_end_without_its_partner_is_an_open_end() -> None:
    reading = table(
        """
        Size | S | | M |
         | min | max | min | max
        Chest (cm) | 84 | | 88 | 92
        Waist (cm) | 68 | 72 | | 76
        """
    )
    assert values(reading)["S chest"] == (84, None)
    assert values(reading)["M waist"] == (None, 76)
    assert {one.kind for one in ranges(reading)} == {Kind.AT_LEAST, Kind.AT_MOST, Kind.RANGE}


def test_ends_that_fall_are_asked_about() -> None:
    reading = table(
        """
        Size | S | | M |
         | min | max | min | max
        Chest (cm) | 88 | 84 | 88 | 92
        """
    )
    assert values(reading)["S chest"] is None
    assert questions(reading) == ["order-broken"]


def test_blocks_headed_by_what_they_measure_are_parted() -> None:
    reading = table(
        """
        Chest | S | M | L
        inches | 33-34.5 | 34.5-36 | 36-38
        cm | 84-88 | 88-92 | 92-96
        Waist | S | M | L
        inches | 27-28.5 | 28.5-30 | 30-31.5
        cm | 68-72 | 72-76 | 76-80
        """
    )
    assert values(reading)["L chest"] == (92, 96)
    assert values(reading)["L waist"] == (76, 80)
    assert questions(reading) == []
