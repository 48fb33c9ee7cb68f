"""One cell a line, a blank line between the rows: the blank lines tell the cells of each row."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.row_groups import row_group_table
from tests.charts.read_text import questions, values
from tests.charts.readers.reading import paste

_ROWS = "S|82-86|66-70 // M|87-91|71-75 // L|92-96|76-80"
_BOTH = {
    "S chest": (82, 86), "S waist": (66, 70),
    "M chest": (87, 91), "M waist": (71, 75),
    "L chest": (92, 96), "L waist": (76, 80),
}  # fmt: skip


def lines(text: str) -> str:
    """``a|b // c`` as one cell a line, with a blank line for each pair of strokes."""
    return "\n\n".join(group.strip().replace("|", "\n") for group in text.split("//")) + "\n"


def rows(text: str) -> list[list[str]]:
    found = row_group_table(numbered(lines(text)))
    return [] if found is None else [[cell.text for cell in row] for row in found.rows]


@pytest.mark.parametrize(
    "head",
    [
        "Size|Chest (cm)|Waist (cm)",
        "Chest (cm)|Waist (cm)",
        "Air vest|Size|Chest (cm)|Waist (cm)",
        "Air vest // Size|Chest (cm)|Waist (cm)",
        "Measure the widest part of the chest over what you ride in|Size|Chest (cm)|Waist (cm)",
    ],
)
def test_rows_between_blank_lines_need_no_comparing(head: str) -> None:
    reading = read_pasted(lines(f"{head} // {_ROWS}"))
    assert values(reading) == _BOTH
    assert not questions(reading)


def test_words_prices_and_codes_stand_in_their_rows() -> None:
    table = "Item|Size|Chest (cm)|Colour|Price // 701|S|82-86|black|89,00 // 702|M|87-91|navy|89,00"
    assert rows(table)[2] == ["702", "M", "87-91", "navy", "89,00"]
    assert values(read_pasted(lines(table))) == {"S chest": (82, 86), "M chest": (87, 91)}


def test_sizes_across_may_be_numbers_and_have_second_names() -> None:
    table = (
        "Riding jacket // Größe|36|38|40 // Brust (cm)|82-86|87-91|92-96 // International|S|M|L"
        " // Hüfte (cm)|90-94|95-99|100-104"
    )
    assert [row[0] for row in rows(table)][1:] == [
        "Größe",
        "Brust (cm)",
        "International",
        "Hüfte (cm)",
    ]


def test_a_band_between_the_rows_and_a_new_heading_part_them() -> None:
    text = "Size|Chest (cm)|Waist (cm) // Women // S|82-86|66-70 // M|87-91|71-75 // Men"
    found = values(read_pasted(lines(f"{text} // S|90-95|76-81 // M|96-101|82-87")))
    assert found["women S chest"] == (82, 86)
    assert found["men S chest"] == (90, 95)
    two = f"Size|Chest (cm)|Waist (cm) // {_ROWS} // Belts // Size|Waist (cm) // S|70 // M|75"
    assert len(rows(two)) == 4


@pytest.mark.parametrize("unit", ["cm", "in cm"])
def test_a_unit_alone_below_the_sizes_does_not_part_them_from_the_figures(unit: str) -> None:
    table = rows(f"Age|2-3 yrs|4-5 yrs // {unit} // Height|98|110 // Chest|55|59")
    assert [row[0] for row in table] == [unit, "Age", "Height", "Chest"]


def test_rows_of_unlike_many_cells_are_not_put_together() -> None:
    assert not rows("Size|Chest (cm)|Waist (cm) // S|82-86|66-70 // M|87-91|71-75 // L|76-80")
    assert not rows("Age|Size|Chest (cm)|Waist (cm) // S|82-86|66-70 // M|87-91|71-75")
    assert not rows("Size|Height|Chest (cm) // S|82-86 // M|87-91 // L|92-96")


@pytest.mark.parametrize(
    ("heads", "upper"),
    [
        ("Size|Chest|Waist // cm|in|cm|in", ["Size", "Chest", "Chest", "Waist", "Waist"]),
        ("Chest|Waist // Size|from|to|from|to", ["", "Chest", "Chest", "Waist", "Waist"]),
        ("Men|Women // Size|Chest|Size|Chest|Hip", ["Men", "Men", "Women", "Women", "Women"]),
    ],
)
def test_names_over_several_columns_are_spread_out(heads: str, upper: list[str]) -> None:
    table = rows(f"{heads} // S|82|32|66|26 // M|87|34|71|28 // L|92|36|76|30")
    assert table[0] == upper


def test_names_over_unlike_words_are_compared_once() -> None:
    cells = "S|82|86|66|26 // M|87|91|71|28"
    found = row_group_table(numbered(lines(f"Size|Chest|Waist // from|to|cm|in // {cells}")))
    assert found is not None
    assert found.inferred
    assert not rows(f"Size|Chest|Waist|Hip // cm|in|cm|in // {cells}")


def test_no_table_begins_below_names_that_were_left_out() -> None:
    text = lines("Men|Women|Kids // Size|Chest|Size|Chest|Hip // S|82|S|66|26 // M|87|M|71|28")
    assert not any(row[:2] == ["Size", "Chest"] for row in paste(text).rows())


def test_all_sizes_then_all_names_are_no_rows() -> None:
    assert not rows("S|M|L // Chest|Waist|Hip // 82|66|90 // 87|71|95 // 92|76|100")
