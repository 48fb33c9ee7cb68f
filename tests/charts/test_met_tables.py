"""The six tables that were met in the wild read as a careful person reads them.

Source and treatment of the figures: ``met_tables/README.md``.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from charts.findings import Level
from charts.importer import read_bytes
from charts.schema import Basis, FileReading, Kind, Range, Size

HERE = Path(__file__).resolve().parent / "met_tables"
NAMES = sorted(path.name.removesuffix(".expected.json") for path in HERE.glob("*.expected.json"))
NEAR = 0.01
DIMENSIONS = {"garment_length": "other"}


def entries(name: str) -> list[dict[str, Any]]:
    text = (HERE / f"{name}.expected.json").read_text(encoding="utf-8")
    return list(json.loads(text))


def reading_of(name: str) -> FileReading:
    (path,) = [p for p in HERE.glob(f"{name}.*") if p.suffix in {".csv", ".tsv"}]
    return read_bytes(path.read_bytes(), path.name)


def values(reading: FileReading) -> Iterator[tuple[Size, Range]]:
    for chart in reading.charts:
        for size in chart.sizes:
            for value in size.ranges:
                yield size, value


def found(reading: FileReading, entry: dict[str, Any]) -> tuple[Size, Range]:
    dimension = DIMENSIONS.get(entry["dimension"], entry["dimension"])
    hits = [
        (size, value)
        for size, value in values(reading)
        if entry["size"] in {size.label, size.length} and value.dimension.value == dimension
    ]
    assert len(hits) == 1, (entry, hits)
    return hits[0]


def figure(entry: dict[str, Any], end: str) -> float | None:
    for unit in ("cm", "kg"):
        if f"{end}_{unit}" in entry:
            number = entry[f"{end}_{unit}"]
            return None if number is None else float(number)
    return None


def same(due: float | None, got: object) -> bool:
    return (due is None) is (got is None) and (due is None or abs(due - float(str(got))) < NEAR)


@pytest.mark.parametrize("name", NAMES)
def test_every_expected_value_is_read(name: str) -> None:
    reading = reading_of(name)
    for entry in entries(name):
        _, value = found(reading, entry)
        if "nominal" in entry:
            assert value.kind is Kind.SINGLE
            assert same(entry["nominal"], value.value), entry
        else:
            assert same(figure(entry, "low"), value.low), (entry, value)
            assert same(figure(entry, "high"), value.high), (entry, value)
        if entry.get("tolerance_cm") is not None:
            assert same(entry["tolerance_cm"], value.tolerance), entry


@pytest.mark.parametrize("name", NAMES)
def test_nothing_is_read_that_is_not_expected(name: str) -> None:
    assert len(list(values(reading_of(name)))) == len(entries(name))


@pytest.mark.parametrize("name", NAMES)
def test_ends_are_included_as_the_words_say(name: str) -> None:
    reading = reading_of(name)
    for entry in entries(name):
        _, value = found(reading, entry)
        for end, got in (("low", value.low_included), ("high", value.high_included)):
            if f"{end}_inclusive" in entry:
                assert got is entry[f"{end}_inclusive"], entry


@pytest.mark.parametrize("name", NAMES)
def test_a_question_is_attached_where_one_is_due(name: str) -> None:
    reading = reading_of(name)
    asked = {one.id for one in reading.findings if one.level is Level.QUESTION}
    for entry in entries(name):
        _, value = found(reading, entry)
        if {"ask", "conflict", "header_was"} & entry.keys():
            assert asked & set(value.findings), entry


@pytest.mark.parametrize("name", NAMES)
def test_the_second_printed_unit_stands_beside_the_reading(name: str) -> None:
    reading = reading_of(name)
    for entry in entries(name):
        _, value = found(reading, entry)
        for unit in ("in", "lb"):
            if f"alt_{unit}" not in entry:
                continue
            also = value.also_published
            assert also is not None, entry
            assert also.unit.value == unit
            due = entry[f"alt_{unit}"]
            if isinstance(due, list):
                assert same(due[0], also.low), entry
                assert same(due[1], also.high), entry
            else:
                assert same(due, also.value), entry


@pytest.mark.parametrize("name", NAMES)
def test_the_measure_is_the_bodys_unless_the_table_is_of_a_garment(name: str) -> None:
    reading = reading_of(name)
    for entry in entries(name):
        _, value = found(reading, entry)
        if entry.get("measure") == "flat_half_width":
            assert value.basis is Basis.FLAT
        elif entry.get("basis") == "garment":
            assert value.basis in {Basis.FINISHED, Basis.UNKNOWN}
        else:
            assert value.basis in {Basis.BODY, Basis.UNKNOWN}


def test_other_labels_are_kept_beside_the_key() -> None:
    reading = reading_of("21_club_kit_four_labels")
    for entry in entries("21_club_kit_four_labels"):
        size, _ = found(reading, entry)
        assert entry["alpha"] in {one.label for one in size.also}
    reading = reading_of("27_youth_tolerance_rows")
    for entry in entries("27_youth_tolerance_rows"):
        size, _ = found(reading, entry)
        assert entry["numeric_label"] in {one.label for one in size.also}


def test_a_width_table_and_a_length_table_are_two_charts() -> None:
    charts = reading_of("20_single_value_is_upper_bound").charts
    assert [[size.label is None for size in chart.sizes] for chart in charts] == [
        [False] * 8,
        [True] * 3,
    ]


def test_a_row_printed_twice_is_taken_once_and_said() -> None:
    reading = reading_of("12_wetsuit_feet_inches")
    assert [size.label for size in reading.charts[0].sizes] == ["4", "6", "6T", "8", "8T", "10"]
    assert "row-repeated" in {one.code for one in reading.findings}


def test_an_impossible_hip_is_kept_as_printed_without_a_figure() -> None:
    reading = reading_of("12_wetsuit_feet_inches")
    (value,) = [
        value
        for size, value in values(reading)
        if size.label == "8T" and value.dimension.value == "hip"
    ]
    assert value.kind is Kind.UNREAD
    assert value.published == '13"'


def test_a_missing_unit_is_asked_once_for_the_whole_column() -> None:
    reading = reading_of("12_wetsuit_feet_inches")
    missing = [one for one in reading.findings if one.code == "unit-missing"]
    assert len(missing) == 1
    assert {candidate.unit for candidate in missing[0].candidates} == {"kg"}
    assert [c.text.rpartition(" ")[2] for c in missing[0].candidates] == ["lb", "kg"]


def test_a_sentence_that_says_up_to_is_noted_where_it_stands() -> None:
    reading = reading_of("20_single_value_is_upper_bound")
    (note,) = [one for one in reading.findings if one.values.get("case") == "upper"]
    assert (note.code, note.place) == ("single-values", "A3")
