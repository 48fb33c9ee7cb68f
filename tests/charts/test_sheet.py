"""A sheet tells what stands where, in the words of its source."""

from charts.sheet import Addressing, Cell, Sheet, column_letters


def sheet(addressing: Addressing, **extra: object) -> Sheet:
    cells = {(0, 0): Cell("Size"), (0, 27): Cell("Chest"), (1_048_575, 2): Cell("stray")}
    return Sheet("Women", addressing, cells, rows=1_048_576, columns=28, **extra)  # type: ignore[arg-type]  # each test gives one field


def test_a_place_is_written_the_way_its_source_is_addressed() -> None:
    assert sheet(Addressing.SHEET).place(0, 27) == "Women!AB1"
    assert sheet(Addressing.PLAIN).place(3, 2) == "C4"
    assert sheet(Addressing.TABLE).area((2, 0), (8, 5)) == "Women!A3:F9"
    assert sheet(Addressing.PLAIN).area((2, 0), (2, 0)) == "A3"


def test_a_line_is_that_of_the_cell_then_of_the_row_then_the_row_itself() -> None:
    lines = sheet(Addressing.LINE, line_of_row={1: 7}, line_of_cell={(1, 2): 9})
    assert [lines.place(1, 2), lines.place(1, 0), lines.place(4, 0)] == [
        "line 9",
        "line 7",
        "line 5",
    ]


def test_a_stray_cell_far_below_costs_nothing_to_walk_over() -> None:
    found = sheet(Addressing.SHEET)
    assert found.filled_rows == (0, 1_048_575)
    assert [(column, cell.text) for column, cell in found.row(0)] == [(0, "Size"), (27, "Chest")]
    assert list(found.row(5)) == []


def test_columns_are_lettered_as_in_a_workbook() -> None:
    assert [column_letters(number) for number in (0, 25, 26, 701, 702, 16383)] == [
        "A", "Z", "AA", "ZZ", "AAA", "XFD"
    ]  # fmt: skip
