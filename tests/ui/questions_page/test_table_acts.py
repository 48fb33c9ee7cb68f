"""Acts that a person gives to a part of a sheet, made from the cell the keyboard is on."""

from __future__ import annotations

import pytest

from charts.answers import Answer, CellReads, Corrected, Edge, LeftOut, Part, Turned
from charts.importer import read_bytes
from charts.regions import SheetRegions, regions
from ui.questions_page.table_acts import TableAct, act_at, reads, table_near

CHART = (
    b"Harrier 2027,,\n\nSize,Chest (cm),Waist (cm)\n"
    b"S,84-92,68-76\nM,90-98,74-82\nL,96-104,80-90\nXL,102-110,86-96\n"
)


@pytest.fixture(scope="module")
def one() -> SheetRegions:
    return regions(CHART, "alder/harrier.csv")[0]


def test_the_nearest_table_is_meant(one: SheetRegions) -> None:
    assert table_near(one, (0, 0)) == "A3:C7"


@pytest.mark.parametrize(
    ("kind", "at", "becomes"),
    [
        (TableAct.BOTTOM, (5, 1), "A3:C6"),
        (TableAct.RIGHT, (4, 1), "A3:B7"),
        (TableAct.LEFT, (4, 1), "B3:C7"),
    ],
)
def test_an_edge_moves_to_the_chosen_cell(
    one: SheetRegions, kind: TableAct, at: tuple[int, int], becomes: str
) -> None:
    assert act_at(kind, one, at) == Edge("A3:C7", becomes)


def test_an_edge_that_stays_where_it_is_is_no_act(one: SheetRegions) -> None:
    assert act_at(TableAct.BOTTOM, one, (6, 0)) is None


def test_a_moved_edge_is_read_at_once(one: SheetRegions) -> None:
    act = act_at(TableAct.BOTTOM, one, (5, 1))
    assert act is not None
    reading = read_bytes(CHART, "alder/harrier.csv", "alder", [Answer(act, "Ada")])
    assert [size.label for size in reading.charts[0].sizes] == ["S", "M", "L"]


def test_a_row_is_left_out_by_what_it_prints_first(one: SheetRegions) -> None:
    assert act_at(TableAct.OUT_ROW, one, (4, 2)) == LeftOut(Part.ROW, "A5", "M")


def test_a_table_is_turned_round(one: SheetRegions) -> None:
    assert act_at(TableAct.TURN, one, (4, 2)) == Turned("A3:C7")


def test_a_sheet_without_a_name_cannot_be_left_out(one: SheetRegions) -> None:
    assert act_at(TableAct.OUT_SHEET, one, (4, 2)) is None


def test_a_cell_reads_otherwise(one: SheetRegions) -> None:
    act = reads(one, (3, 1), "85-92")
    assert act == Corrected((CellReads("B4", "84-92", "85-92"),))
    assert reads(one, (3, 1), "84-92") is None
    assert reads(one, (1, 1), "84-92") is None


def test_a_source_of_lines_has_no_edges_to_move() -> None:
    mail = (
        b"Dear shop,\n\nSize S: chest 84-92 cm | waist 68-76 cm\n"
        b"Size M: chest 92-98 cm | waist 76-82 cm\nSize L: chest 98-104 cm | waist 82-90 cm\n"
    )
    (lines,) = regions(mail, "alder/mail.txt")
    assert lines.sheet.place(3, 0).startswith("line ")
    assert act_at(TableAct.BOTTOM, lines, (3, 0)) is None
    assert act_at(TableAct.OUT_COLUMN, lines, (3, 1)) is None
