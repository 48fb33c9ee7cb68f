"""What each part of a sheet was taken for: every filled cell has its words, and the right ones."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from charts.answers import Answer, CellReads, Corrected, LeftOut, Meaning, Part, Scope
from charts.quantities import Unit
from charts.regions import Region, SheetRegions, Taken, regions, words
from charts.resource_files import resources
from charts.wording import LANGUAGES, Wording

DEMO = Path(str(resources())) / "demo" / "charts"
TEXT = (
    "Fellgarrow\n\nSize;EU;Chest (in);Waist;Price\nS;38;33-35;68-72;120\n"
    "M;40;35-37;73-77;120\nL;42;37-39;78-82;130\n\nMeasure over a light shirt.\n"
)
FILES = [path for path in sorted(DEMO.rglob("*")) if path.is_file() and path.suffix != ".toml"]


def of(text: str, *given: Answer) -> SheetRegions:
    (one,) = regions(text.encode(), "chart.csv", "north", given)
    return one


def at(found: SheetRegions, place: str) -> list[Region]:
    column, row = ord(place[0]) - ord("A"), int(place[1:]) - 1
    return [region for region in found.regions if region.cells.holds(row, column)]


def said(found: SheetRegions, place: str, language: str = "en") -> str:
    (region,) = at(found, place)
    return words(region, Wording(language))


@pytest.mark.parametrize(
    ("place", "text"),
    [
        ("A1", "title"),
        ("A3", "heading"),
        ("A4", "sizes"),
        ("B5", "sizes"),
        ("C4", "Chest in inches"),
        ("D6", "Waist in centimetres"),
        ("E4", "left out"),
        ("A8", "note"),
    ],
)
def test_each_part_says_what_it_was_taken_for(place: str, text: str) -> None:
    assert said(of(TEXT.replace("Waist", "Waist (cm)")), place) == text


def test_a_unit_nobody_printed_is_shown_as_open() -> None:
    bare = "Size;Chest;Waist\nS;60;56\nM;65;58\nL;70;62\n"
    assert said(of(bare), "B2") == "Chest, unit to be confirmed"
    told = Answer(Meaning(Scope.FILE, unit=Unit.CM), "Ann", date(2027, 2, 11))
    assert said(of(bare, told), "B2") == "Chest in centimetres"


def test_a_block_that_was_not_read_is_shown_as_such() -> None:
    turned = "Size;Chest (cm);Waist (cm)\nS;104;90\nM;98;84\nL;92;78\nXL;86;72\n"
    (region,) = at(of(turned), "B2")
    assert region.taken is Taken.NOT_READ


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_every_filled_cell_of_the_demo_lies_in_a_region(path: Path) -> None:
    for one in regions(path.read_bytes(), path.name, path.parent.name):
        uncovered = [
            place
            for place in one.sheet.cells
            if not any(region.cells.holds(*place) for region in one.regions)
        ]
        assert uncovered == []


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_every_region_has_words(path: Path, language: str) -> None:
    wording = Wording(language)
    found = regions(path.read_bytes(), path.name, path.parent.name)
    assert all(words(region, wording) for one in found for region in one.regions)
    assert any(one.regions for one in found)


def test_a_merged_title_is_outlined_whole() -> None:
    path = DEMO / "pinderlow" / "pinderlow_2027.xlsx"
    youth = next(one for one in regions(path.read_bytes(), path.name) if "Youth" in one.sheet.name)
    title = next(region for region in youth.regions if region.taken is Taken.TITLE)
    assert (title.cells.left, title.cells.right) == (0, 7)


def test_a_second_unit_in_its_own_column_is_named_by_its_own_unit() -> None:
    text = "Size;Chest (cm);Chest (in)\nS;84-88;33-34½\nM;89-93;35-36½\nL;94-98;37-38½\n"
    found = of(text)
    assert [said(found, place) for place in ("B2", "C2")] == [
        "Chest in centimetres",
        "Chest in inches",
    ]


def test_a_sheet_left_out_says_so_as_a_whole() -> None:
    found = of(TEXT, Answer(LeftOut(Part.FILE), "Ann"))
    assert found.left_out
    assert said(found, "C4") == "left out"


def test_a_corrected_cell_keeps_its_print_for_the_page() -> None:
    found = of(TEXT, Answer(Corrected((CellReads("C5", "35-37", "35-38"),)), "Ann"))
    cell = found.sheet.cells[4, 2]
    assert (cell.text, cell.printed) == ("35-38", "35-37")


def test_a_date_that_was_turned_back_is_shown_as_the_source_shows_it() -> None:
    data = b"Size,Age,Chest (cm)\nS,8-9,60-64\nM,12-Oct,64-68\nL,13-14,68-72\n"
    (one,) = regions(data, "alder/kids.csv")
    assert one.sheet.text(2, 1) == "12-Oct"
