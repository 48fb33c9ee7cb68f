"""A sheet laid out for a grid: its own addresses, joined cells, parts outlined and tagged."""

from __future__ import annotations

from charts.importer import read_bytes
from charts.places import Rectangle
from charts.regions import Taken, regions
from charts.wording import Wording
from ui.questions_page.source_shape import SourceShape, cells_asked, shape_of

CHART = (
    b"Harrier 2027,,,\nSize,Chest (cm),Waist (cm),Hip (cm)\n"
    b"S,84-92,68-76,90-98\nM,90-98,74-82,96-104\nL,96-104,80-90,102-110\n"
)
NO_UNIT = b"Size,Chest,Waist\nS,84-92,68-76\nM,90-98,74-82\nL,96-104,80-90\n"


def shape(data: bytes, name: str = "alder/harrier.csv") -> SourceShape:
    return shape_of(regions(data, name)[0], Wording("en"))


def test_rows_and_columns_carry_the_addresses_of_the_source() -> None:
    made = shape(CHART)
    assert [made.column_name(at) for at in range(4)] == ["A", "B", "C", "D"]
    assert [made.row_name(at) for at in range(5)] == ["1", "2", "3", "4", "5"]
    assert made.sheet.place(*made.there(2, 1)) == "B3"


def test_each_part_is_outlined_and_tagged_in_words() -> None:
    tags = {outline.tag: outline.cells for outline in shape(CHART).outlines}
    assert tags["sizes"] == Rectangle(2, 0, 4, 0)
    assert tags["Chest in centimetres"] == Rectangle(2, 1, 4, 1)
    assert tags["heading"] == Rectangle(1, 0, 1, 3)


def test_neighbours_that_say_the_same_share_one_outline() -> None:
    headings = [one for one in shape(CHART).outlines if one.taken is Taken.HEADING]
    assert len(headings) == 1


def test_a_lone_sentence_runs_on_over_the_empty_cells_beside_it() -> None:
    assert Rectangle(0, 0, 0, 3) in shape(CHART).joined


def test_a_part_whose_unit_is_open_is_marked_so() -> None:
    marked = {one.tag for one in shape(NO_UNIT).outlines if one.open}
    assert marked == {"Chest, unit to be confirmed", "Waist, unit to be confirmed"}


def test_a_row_in_which_a_part_begins_has_room_for_its_tag() -> None:
    made = shape(CHART)
    assert made.tagged_rows == {0, 1, 2}


def test_a_question_leads_to_its_place_and_to_every_value_it_bears_on() -> None:
    reading = read_bytes(NO_UNIT, "alder/harrier.csv", "alder")
    finding = next(one for one in reading.findings if one.code == "unit-missing")
    cells = cells_asked(finding, shape(NO_UNIT).sheet, reading)
    assert (0, 1) in cells
    assert {(row, column) for row in (1, 2, 3) for column in (1, 2)} <= set(cells)
