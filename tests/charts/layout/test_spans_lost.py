"""Headings whose spans were lost when a table was copied, or saved as delimited text."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import questions, values


def lines(*rows: str) -> FileReading:
    """A table whose cells stand behind strokes here, read as one copied with tabs."""
    return read_bytes("\n".join(row.replace("|", "\t") for row in rows).encode(), "a.tsv")


def by_band(reading: FileReading) -> dict[str, set[str]]:
    """Which measures are stored for whom."""
    return {
        str(chart.band): {str(one.dimension) for size in chart.sizes for one in size.ranges}
        for chart in reading.charts
    }


BOTH = {"S chest": (84, 88), "S waist": (68, 72), "M chest": (88, 92), "M waist": (72, 76)}


@pytest.mark.parametrize(
    "rows",
    [
        (
            "Size|Chest|Waist",
            "cm|in|cm|in",
            "S|84-88|33-34.5|68-72|27-28.5",
            "M|88-92|34.5-36|72-76|28.5-30",
        ),
        ("Size|Chest (cm)|Waist (cm)", "min|max|min|max", "S|84|88|68|72", "M|88|92|72|76"),
        ("Größe|Brust (cm)|Taille (cm)", "von|bis|von|bis", "S|84|88|68|72", "M|88|92|72|76"),
        ("Size|Body measurements (cm)", "Chest|Waist", "S|84-88|68-72", "M|88-92|72-76"),
    ],
)
def test_headings_that_spanned_columns_stand_over_them_again(rows: tuple[str, ...]) -> None:
    reading = lines(*rows)
    assert values(reading) == BOTH
    assert questions(reading) == []


@pytest.mark.parametrize(
    ("above", "below"),
    [
        ("Größe|Damen|Herren", "Brust (cm)|Taille (cm)|Brust (cm)|Taille (cm)"),
        ("Size|Women|Men", "Chest (cm)|Waist (cm)|Chest (cm)|Waist (cm)"),
        ("Taille|Femme|Homme", "Poitrine (cm)|Taille (cm)|Poitrine (cm)|Taille (cm)"),
    ],
)
def test_bands_that_spanned_columns_part_women_from_men(above: str, below: str) -> None:
    reading = lines(above, below, "S|84-88|68-72|90-94|78-82", "M|88-92|72-76|94-98|82-86")
    assert by_band(reading) == {"women": {"chest", "waist"}, "men": {"chest", "waist"}}
    assert questions(reading) == []


@pytest.mark.parametrize(
    ("above", "below", "rows"),
    [
        ("Size|EU|Women|Men", "Chest (cm)|Hip (cm)|Chest (cm)|Waist (cm)", ("36|", "")),
        ("Size|Women|Men|Notes", "Chest (cm)|Hip (cm)|Chest (cm)|Waist (cm)", ("", "|new")),
    ],
)
def test_what_more_than_counting_has_to_tell_is_asked_about(
    above: str, below: str, rows: tuple[str, str]
) -> None:
    front, behind = rows
    reading = lines(
        above,
        below,
        f"S|{front}84-88|90-94|92-96|80-84{behind}",
        f"M|{front}88-92|94-98|96-100|84-88{behind}",
    )
    assert by_band(reading) == {"women": {"chest", "hip"}, "men": {"chest", "waist"}}
    assert questions(reading) == ["text-order"]


def test_an_age_over_both_rows_takes_no_share_of_the_units() -> None:
    reading = lines(
        "Size|Age|Chest|Waist",
        "cm|in|cm|in",
        "S|8|64-68|25-27|58-62|23-24.5",
        "M|10|68-72|27-28.5|62-64|24.5-25",
    )
    assert values(reading)["S chest"] == (64, 68)
    assert values(reading)["M waist"] == (62, 64)
    assert questions(reading) == ["text-order"]


def test_a_row_of_headings_as_wide_as_the_figures_is_left_where_it_stands() -> None:
    reading = lines("Size|Chest|Waist", "|cm|cm", "S|84-88|68-72", "M|88-92|72-76")
    assert values(reading) == BOTH
    assert questions(reading) == []


GROUPS = ("Size|Women||Men|", "|Chest (cm)|Hip (cm)|Chest (cm)|Waist (cm)")


def test_columns_between_two_bands_are_the_first_ones() -> None:
    reading = lines(*GROUPS, "S|84-88|90-94|92-96|80-84", "M|88-92|94-98|96-100|84-88")
    assert by_band(reading) == {"women": {"chest", "hip"}, "men": {"chest", "waist"}}
    assert questions(reading) == []


def test_a_heading_that_begins_beside_the_bands_is_everybodys() -> None:
    reading = lines(
        "Size|Women|||Men||Height (cm)",
        "|Chest (cm)|Waist (cm)|Hip (cm)|Chest (cm)|Waist (cm)|",
        "S|84-88|68-72|90-94|92-96|80-84|160-170",
        "M|88-92|72-76|94-98|96-100|84-88|170-180",
    )
    women = {"chest", "waist", "hip", "height"}
    assert by_band(reading) == {"women": women, "men": {"chest", "waist", "height"}}


@pytest.mark.parametrize("name", ["Vest", "Lengths"])
def test_a_lost_corner_is_seen_below_a_wider_table_too(name: str) -> None:
    reading = lines(
        "Size|Chest (cm)|Waist (cm)|Hip (cm)|Weight (kg)",
        "A|70-80|60-70|80-90|50-60",
        "B|80-90|70-80|90-100|60-70",
        "",
        name,
        "XS|S|M",
        "Bust (cm)|75-78|80-83|87-92",
        "Waist (cm)|56-58|61-64|67-71",
    )
    found = values(reading)
    assert found["XS chest"] == (75, 78)
    assert found["M waist"] == (67, 71)


@pytest.mark.parametrize("behind", ["", "||"])
def test_measures_over_pairs_of_ends_may_have_lost_their_first_cell(behind: str) -> None:
    reading = lines(
        "Brust (cm)||Taille (cm)||Hüfte (cm)" + behind,
        "Größe|von|bis|von|bis|von|bis",
        "36|82|85|65|68|90|93",
        "38|86|89|69|72|94|97",
    )
    assert values(reading) == {
        "36 chest": (82, 85),
        "36 waist": (65, 68),
        "36 hip": (90, 93),
        "38 chest": (86, 89),
        "38 waist": (69, 72),
        "38 hip": (94, 97),
    }
    assert questions(reading) == []


def test_blanks_that_make_up_the_width_of_a_row_hide_no_lost_span() -> None:
    reading = read_bytes(
        b"| Size | Women | Men | | |\n|---|---|---|---|---|\n"
        b"| Chest (cm) | Waist (cm) | Chest (cm) | Waist (cm) | |\n"
        b"| S | 84-88 | 68-72 | 90-94 | 78-82 |\n| M | 88-92 | 72-76 | 94-98 | 82-86 |\n",
        "a.md",
    )
    assert by_band(reading) == {"women": {"chest", "waist"}, "men": {"chest", "waist"}}
    assert questions(reading) == []
