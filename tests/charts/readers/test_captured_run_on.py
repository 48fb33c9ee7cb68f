"""Rows whose sizes and ranges ran on without a sign between them."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.run_on import glued_labels, ranges_that_ran_on
from tests.charts.read_text import questions, values
from tests.charts.readers.reading import paste

_GLUED = """Swimwear
SizeXSSMLXL
Numeric Size6-78-910-1214-1618-20
Chest (in.)26.5 - 2727 - 2828 - 30.530.5 - 3333 - 36
Waist (in.)24.5 - 2525 - 26.526.5 - 2828 - 29.529.5 - 30.5
"""


@pytest.mark.parametrize(
    ("text", "labels"),
    [
        ("SizeXSSMLXL", ("Size", ("XS", "S", "M", "L", "XL"))),
        ("XXSXSSML2XL3XL", ("", ("XXS", "XS", "S", "M", "L", "2XL", "3XL"))),
        ("SMALL", None),
        ("ChestXSSML", None),
        ("SLM", None),
    ],
)
def test_sizes_are_parted_where_they_rise(
    text: str, labels: tuple[str, tuple[str, ...]] | None
) -> None:
    assert glued_labels(text) == labels


@pytest.mark.parametrize(
    ("text", "count", "ranges"),
    [
        ("48 - 5252 - 5656 - 60", 3, ("48 - 52", "52 - 56", "56 - 60")),
        ("28-30.530.5-33", 2, ("28 - 30.5", "30.5 - 33")),
        ("48 - 5252 - 5656 - 60", 4, ()),
        ("48 - 5253 - 56", 2, ()),
        ("56 - 5252 - 48", 2, ()),
        ("48", 1, ()),
    ],
)
def test_ranges_are_parted_where_each_begins_with_the_end_of_the_last(
    text: str, count: int, ranges: tuple[str, ...]
) -> None:
    assert ranges_that_ran_on(text, count) == ranges


def test_what_arithmetic_parts_is_read_and_the_whole_asked_once() -> None:
    reading = read_pasted(_GLUED)
    assert questions(reading) == ["text-order"]
    found = values(reading)
    assert len(found) == 10
    assert found["M chest"] == pytest.approx((71.12, 77.47))
    assert found["XL waist"] == pytest.approx((74.93, 77.47))


def test_one_measure_beyond_parting_leaves_every_line_unread_and_asks() -> None:
    found = paste(_GLUED.replace("26.5 - 2727 - 28", "26.5 - 2729 - 30"))
    assert "separator-lost" in found.codes
    assert all(column == 0 for _, column in found.sheet.cells)
    assert read_pasted(_GLUED.replace("26.5 - 2727 - 28", "26.5 - 2729 - 30")).charts == ()


def test_glued_ranges_under_sizes_that_stand_apart_are_read_too() -> None:
    found = paste("Size S M L\nHip (cm)84-8888-9292-96\n")
    assert found.rows() == [["Size", "S", "M", "L"], ["Hip (cm)", "84 - 88", "88 - 92", "92 - 96"]]
    assert found.sheet.inferred


def test_ranges_that_ran_on_are_no_label_and_its_value() -> None:
    found = paste("Chest (in.)26.5 - 2727 - 28\nWaist (in.)24.5 - 2525 - 26\n")
    assert found.codes == ["separator-lost"]
