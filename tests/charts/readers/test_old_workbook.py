"""Workbooks of the old kind: the box they lie in, damaged ones, and what they hide."""

from __future__ import annotations

import struct
from pathlib import Path
from typing import Final

import pytest

from charts.readers.old_box import stream_of
from charts.readers.old_workbook_size import refuse_if_swollen
from charts.readers.source import UnusableSourceError
from tests.charts.readers.reading import read

DATA: Final = Path(__file__).resolve().parents[2] / "data"
NAME: Final = "Workbook".encode("utf-16-le")
ROOT: Final = "Root Entry".encode("utf-16-le")
START, SIZE = 116, 120
SMALL_TABLE: Final = 60


def book() -> bytearray:
    return bytearray((DATA / "formats.xls").read_bytes())


def test_a_cell_shows_what_its_format_shows_and_keeps_its_value() -> None:
    sheet = read(bytes(book()), "formats.xls").sheet
    assert [sheet.text(1, column) for column in range(5)] == [
        "S¹",
        '34 1/2"',
        "72 cm",
        "0.445 m",
        "4-Jun",
    ]
    assert str(sheet.cells[1, 1].stored) == "34.5"
    assert sheet.cells[2, 0].struck
    assert dict(sheet.comments) == {(0, 1): "under the arms"}


def test_hidden_rows_columns_and_sheets_are_left_out_and_said() -> None:
    found = read(bytes(book()), "formats.xls")
    assert [sheet.name for sheet in found.sheets] == ["Formats"]
    assert found.findings[0].values["places"] == "Formats!4:4, Formats!F:F, 2024"


def test_the_ending_does_not_matter() -> None:
    assert read(bytes(book()), "formats.xlsx").sheets


def test_a_small_stream_that_goes_in_a_ring_is_damaged_and_not_followed() -> None:
    data = book()
    entry = data.rindex(NAME)
    struct.pack_into("<iI", data, entry + START, 0, 1_000)
    (table,) = struct.unpack_from("<i", data, SMALL_TABLE)
    struct.pack_into("<ii", data, 512 + table * 512, 1, 0)
    with pytest.raises(UnusableSourceError):
        stream_of(bytes(data), ("Workbook",))
    assert read(bytes(data), "formats.xls").codes == ["truncated"]


def test_a_stream_that_goes_in_a_ring_is_damaged_and_not_followed() -> None:
    data = book()
    (first,) = struct.unpack_from("<i", data, data.rindex(ROOT) + START)
    (table,) = struct.unpack_from("<i", data, 76)
    struct.pack_into("<i", data, 512 + table * 512 + first * 4, first)
    assert read(bytes(data), "formats.xls").codes == ["truncated"]


def test_more_cells_than_any_chart_has_are_counted_and_refused() -> None:
    cell = struct.pack("<HH", 0x0203, 14) + bytes(14)
    many = struct.pack("<HH", 0x00BD, 6 + 6 * 1_000) + bytes(6 + 6 * 1_000)
    for records in (cell * 61_000, many * 61):
        with pytest.raises(UnusableSourceError) as refused:
            refuse_if_swollen(records)
        assert refused.value.code == "too-large"
    refuse_if_swollen(cell * 1_000)
