"""Printed pages: ruled and unruled tables, headings over several columns, pages that hold none."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from charts.importer import read_bytes
from charts.patience import Patience
from charts.readers import printed_document
from tests.charts.read_text import questions, values
from tests.charts.readers.paper import Page, paper, table, width_of
from tests.charts.readers.reading import read, rows_of

ROWS = (
    ("Size", "Chest (cm)", "Waist (cm)", "Hip (cm)"),
    ("S", "84-88", "68-72", "92-96"),
    ("M", "89-93", "73-77", "97-101"),
    ("L", "94-99", "78-83", "102-107"),
    ("XL", "100-106", "84-90", "108-114"),
)
COLUMNS = (60, 90, 90, 90)
HEIGHT = 18


def rules(page: Page, *, across: bool, down: bool) -> Page:
    """The rules of ROWS at their usual place."""
    left, top, width = 60, 100, sum(COLUMNS)
    for number in range(len(ROWS) + 1) if across else ():
        page.rule(left, top + number * HEIGHT, left + width, top + number * HEIGHT)
    for number in range(len(COLUMNS) + 1) if down else ():
        x = left + sum(COLUMNS[:number])
        page.rule(x, top, x, top + len(ROWS) * HEIGHT)
    return page


def printed(page: Page) -> list[list[str]]:
    (sheet,) = read(paper(page), "page.pdf").sheets
    return rows_of(sheet)


def as_lists(rows: Sequence[Sequence[str]]) -> list[list[str]]:
    return [list(row) for row in rows]


def centred(page: Page, top: float, texts: Sequence[tuple[float, str]]) -> Page:
    for middle, text in texts:
        page.centred(middle, top, text)
    return page


@pytest.mark.parametrize(
    ("across", "down"), [(False, False), (True, False), (False, True), (True, True)]
)
def test_rows_and_columns_are_found_whatever_is_ruled(across: bool, down: bool) -> None:
    page = rules(table(Page(), ROWS, columns=COLUMNS), across=across, down=down)
    assert printed(page) == as_lists(ROWS)


def test_the_first_page_is_read_however_slow_the_machine_is(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(printed_document, "_LONGEST_S", 0.0)
    assert printed(table(Page(), ROWS, columns=COLUMNS)) == as_lists(ROWS)


def test_no_page_waits_for_the_libraries_to_load(monkeypatch: pytest.MonkeyPatch) -> None:
    done: list[str] = []

    class Noted(Patience):
        def __init__(self, seconds: float) -> None:
            done.append("patience")
            super().__init__(seconds)

    def load() -> None:
        done.append("libraries")

    monkeypatch.setattr(printed_document, "load_libraries", load)
    monkeypatch.setattr(printed_document, "Patience", Noted)
    assert printed(table(Page(), ROWS, columns=COLUMNS)) == as_lists(ROWS)
    assert done == ["libraries", "patience"]


def test_shaded_rows_are_rows() -> None:
    page = Page()
    for number in range(1, len(ROWS), 2):
        page.shade(60, 100 + number * HEIGHT, sum(COLUMNS), HEIGHT)
    assert printed(table(page, ROWS, columns=COLUMNS)) == as_lists(ROWS)


def test_a_place_names_the_page_and_the_cell() -> None:
    reading = read_bytes(paper(Page(), table(Page(), ROWS, columns=COLUMNS)), "page.pdf")
    first = reading.charts[0].sizes[0].ranges[0]
    assert (first.place, first.published) == ("page 2!B2", "84-88")


def test_a_heading_over_two_columns_stands_in_both() -> None:
    page = centred(Page(), 100, [(145, "Chest"), (245, "Waist")]).text(63, 109, "Size")
    centred(page, 118, [(120, "from"), (170, "to"), (220, "from"), (270, "to")])
    for number, (size, *ends) in enumerate(
        (
            ("S", "84", "88", "68", "72"),
            ("M", "89", "93", "73", "77"),
            ("L", "94", "99", "78", "83"),
        )
    ):
        top = 136 + number * HEIGHT
        page.text(63, top, size)
        centred(page, top, list(zip((120, 170, 220, 270), ends, strict=True)))
    assert printed(page)[:2] == [
        ["Size", "Chest", "Chest", "Waist", "Waist"],
        ["", "from", "to", "from", "to"],
    ]


@pytest.mark.parametrize("label_at", [0, 6], ids=["beside the first line", "at half height"])
def test_cells_of_two_lines_are_one_row(label_at: int) -> None:
    page = table(Page(), [("Size", "Chest")], columns=(80, 120))
    for number, size in enumerate(("S", "M", "L")):
        top = 130 + number * 32
        page.text(63, top + label_at, size)
        page.text(143, top, f"{84 + 5 * number}-{88 + 5 * number} cm")
        page.text(143, top + 12, f"{33 + 2 * number}-{35 + 2 * number} in")
    assert printed(page)[1:] == [
        ["S", "84-88 cm\n33-35 in"],
        ["M", "89-93 cm\n35-37 in"],
        ["L", "94-98 cm\n37-39 in"],
    ]


def test_a_raised_fraction_and_a_raised_mark_keep_their_sense() -> None:
    page = table(Page(), [("Size", "Chest (in)")], columns=(80, 120))
    for number, size in enumerate(("S", "M", "L")):
        top = 120 + number * HEIGHT
        page.text(63, top, size).text(63 + width_of(size, 10), top - 3, "1", 6)
        after = 143 + width_of("34", 10)
        page.text(143, top, f"{34 + number}").text(after, top - 3, "1", 6)
        page.text(after + width_of("1", 6), top, "/").text(after + 6.2, top + 4, "2", 6)
    assert printed(page)[1:] == [["S¹", "34 1/2"], ["M¹", "35 1/2"], ["L¹", "36 1/2"]]


def test_columns_a_hairs_breadth_apart_are_two() -> None:
    rows = (("Size", "Age", "Height"), ("S", "4-May", "104-116"), ("M", "6-Jul", "116-128"))
    page = Page()
    for number, row in enumerate((*rows, ("L", "8-Sep", "128-140"))):
        top = 100 + number * HEIGHT
        page.text(60, top, row[0]).text(150 - width_of(row[1], 10), top, row[1])
        page.text(152, top, row[2])
    assert printed(page)[1] == ["S", "4-May", "104-116"]


def test_headings_that_stand_on_their_side_are_laid_down() -> None:
    page = table(Page(), ROWS[1:], columns=COLUMNS, top=104)
    for number, heading in enumerate(ROWS[0]):
        page.upwards(72 + sum(COLUMNS[:number]), 100, heading)
    assert printed(page) == as_lists(ROWS)


def test_two_ruled_tables_side_by_side_keep_their_own_titles() -> None:
    rows = (("Size", "Chest (cm)"), ("S", "84-88"), ("M", "89-93"), ("L", "94-99"))
    page = Page().text(60, 80, "Women").text(320, 80, "Men")
    for left in (60, 320):
        table(page, rows, left=left, columns=(60, 90))
        for number in range(5):
            page.rule(left, 100 + number * HEIGHT, left + 150, 100 + number * HEIGHT)
        for x in (left, left + 60, left + 150):
            page.rule(x, 100, x, 100 + 4 * HEIGHT)
    reading = read_bytes(paper(page), "page.pdf")
    assert [chart.band for chart in reading.charts] == ["women", "men"]


def test_a_table_that_goes_on_over_the_page_keeps_its_headings() -> None:
    first = table(Page(), ROWS[:3], columns=COLUMNS, top=760)
    second = table(Page(), ROWS[3:], columns=COLUMNS, top=60)
    found = values(read_bytes(paper(first, second), "page.pdf"))
    assert found["XL hip"] == (108, 114)
    assert len(found) == 12


def test_sentences_of_a_page_become_rows() -> None:
    page = Page()
    for number, (size, low) in enumerate((("S", 84), ("M", 89), ("L", 94))):
        page.text(
            60, 60 + number * 15, f"Size {size}: chest {low}-{low + 4} cm, waist {low - 16} cm"
        )
    found = values(read_bytes(paper(page), "page.pdf"))
    assert found["M chest"] == (89, 93)
    assert found["M waist"] == 73


def test_of_a_catalogue_only_the_pages_with_charts_are_taken_apart() -> None:
    words = [Page().text(60, 60, "Our new vests are made in many colours.") for _ in range(9)]
    reading = read_bytes(
        paper(*words[:5], table(Page(), ROWS, columns=COLUMNS), *words[5:]), "catalogue.pdf"
    )
    assert [chart.place for chart in reading.charts] == ["page 6!A1:D5"]
    (note,) = [one for one in reading.findings if one.code == "not-a-chart"]
    assert note.place == "page 1–5, 7–10"


def test_pages_without_text_have_to_be_typed() -> None:
    reading = read_bytes(paper(Page().shade(0, 0, 500, 700)), "scan.pdf")
    assert [(one.code, one.values["case"]) for one in reading.findings] == [("picture", "pages")]


def test_a_pictured_page_beside_a_chart_is_noted() -> None:
    picture = Page().shade(0, 0, 500, 700)
    reading = read_bytes(paper(table(Page(), ROWS, columns=COLUMNS), picture), "page.pdf")
    assert [(one.code, one.place) for one in reading.findings if one.values.get("case")] == [
        ("not-a-chart", "page 2")
    ]
    assert questions(reading) == ["text-order"]


def test_a_file_that_breaks_off_says_so() -> None:
    whole = paper(table(Page(), ROWS, columns=COLUMNS))
    reading = read_bytes(whole[: whole.rfind(b"xref\n0")], "page.pdf")
    assert "truncated" in [one.code for one in reading.findings]
