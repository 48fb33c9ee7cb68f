"""Whatever a file holds: findings instead of an exception, in little time and memory."""

from __future__ import annotations

import random
import time
import tracemalloc
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Final

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.readers.registry import readers
from charts.readers.source import Claim, Source
from tests.charts.readers.reading import Read, book_of, paste, read, saved, with_part

SECONDS: Final = 2.0
MEGABYTES: Final = 500
SHEET: Final = "xl/worksheets/sheet1.xml"
ENDINGS: Final = ("xlsx", "xls", "csv", "tsv", "txt", "html", "md", "pdf", "png", "ods", "docx", "")


@contextmanager
def in_little_time_and_memory() -> Iterator[None]:
    tracemalloc.start()
    before = time.process_time()
    yield
    spent = time.process_time() - before
    _, peak = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    # Tracing memory makes Python three to four times slower.
    assert spent < SECONDS * 4
    assert peak < MEGABYTES * 1024 * 1024


def chart_book() -> bytes:
    book, sheet = book_of(
        ["Vest", None, None], ["Size", "Chest", "Waist"], ["S", 86.5, "=B3-15"], ["M", 92, "77-82"]
    )
    sheet.merge_cells("A1:C1")
    sheet["B3"].number_format = '0.0" cm"'
    return saved(book)


SAMPLES: Final = {
    "book.xlsx": chart_book(),
    "page.html": (
        "<!DOCTYPE html><html><body><h2>Größe</h2><table><tr><th rowspan=2>Size<th>Chest</tr>"
        "<tr><td>34<sup>1</sup>/<sub>2</sub></tr></table><p>in inches</p></body></html>"
    ).encode(),
    "boxes.html": b"<div><div><p>Size<p>Chest</div><div><p>S<p>86-91</div></div><!-- x -->" * 3,
    "semicolon.csv": 'Größe;Brust\nS;"86–91"\nM;92–97\n'.encode(),
    "old.csv": "Größe;Brust\nS;86–91\n".encode("cp1252"),
    "wide.csv": "Größe\tBrust\nS\t86–91\n".encode("utf-16"),
    "guide.md": b"# Vest\n\n| Size | Chest |\n|---|---|\n| S | 86-91 |\n\n* note\n",
    "mail.txt": b"Talla S: Pecho 84-90 cm | Peso 50 kg\nTalla M: Pecho 90-96 cm | Peso 60 kg\n",
    "cells.txt": b"SIZE\nCHEST\nS\n86-91\nM\n92-97\n",
    "columns.txt": b"Size    Chest\nS       86-91\nM       92-97\n",
}


@pytest.mark.parametrize("name", SAMPLES)
def test_cut_anywhere_a_source_gives_sheets_or_findings(name: str) -> None:
    data = SAMPLES[name]
    for end in range(0, len(data), 10):
        found = read(data[:end], name)
        assert found.sheets or found.findings, end


def test_a_cut_workbook_is_one_error() -> None:
    data = SAMPLES["book.xlsx"]
    for end in range(10, len(data) - 22, 10):
        assert read(data[:end], "book.xlsx").codes == ["truncated"], end


@pytest.mark.parametrize("ending", ENDINGS)
def test_random_bytes_under_any_ending_are_said(ending: str) -> None:
    chance = random.Random(ending)  # noqa: S311 - repeatable noise, not a secret
    for size in (1, 2, 3, 10, 100, 1_000, 30_000):
        found = read(chance.randbytes(size), f"chart.{ending}")
        assert found.sheets or found.findings
        if size > 100:
            assert len(found.findings) == 1


@given(st.binary(max_size=300), st.sampled_from(ENDINGS))
def test_any_bytes_are_read_or_said(data: bytes, ending: str) -> None:
    found = read(data, f"chart.{ending}")
    assert found.sheets or found.findings


@given(st.text(max_size=300))
def test_any_text_is_read_or_said(text: str) -> None:
    found = paste(text)
    assert found.sheets or found.findings


@given(st.sampled_from(sorted(SAMPLES)), st.integers(0, 2**32))
def test_damaged_anywhere_a_source_gives_sheets_or_findings(name: str, seed: int) -> None:
    chance = random.Random(seed)  # noqa: S311 - repeatable damage, not a secret
    data = bytearray(SAMPLES[name])
    for _ in range(chance.choice([1, 3, 10])):
        data[chance.randrange(len(data))] = chance.choice(b'<>/"=0A&; \0\n|:-\xff')
    found = read(bytes(data), name)
    assert found.sheets or found.findings or is_archive(bytes(data), name)


def is_archive(data: bytes, name: str) -> bool:
    """Whether the files inside are all there is: a damaged name can make that of a workbook."""
    kinds = [one for one in readers() if one.claims(Source(data, name)) is Claim.CERTAIN]
    return any(reader.kind == "archive" for reader in kinds)


@given(st.sampled_from([SHEET, "xl/styles.xml", "xl/workbook.xml"]), st.integers(0, 2**32))
def test_damaged_inside_a_workbook_gives_sheets_or_findings(part: str, seed: int) -> None:
    chance = random.Random(seed)  # noqa: S311 - repeatable damage, not a secret

    def damaged(xml: str) -> str:
        signs = list(xml)
        for _ in range(chance.choice([1, 2, 5])):
            signs[chance.randrange(len(signs))] = chance.choice('<>"/=0A&; 9-')
        return "".join(signs)

    found = read(with_part(SAMPLES["book.xlsx"], part, damaged), "book.xlsx")
    assert found.sheets or found.findings


def rows_xml(rows: int, columns: int) -> str:
    from openpyxl.utils import get_column_letter

    letters = [get_column_letter(column) for column in range(1, columns + 1)]
    cells = "".join(
        f'<row r="{row}">'
        + "".join(f'<c r="{letter}{row}"><v>{row}</v></c>' for letter in letters)
        + "</row>"
        for row in range(1, rows + 1)
    )
    space = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
    return f'<worksheet xmlns="{space}"><sheetData>{cells}</sheetData></worksheet>'


def swollen_book(part: str, content: str | bytes) -> Read:
    data = with_part(SAMPLES["book.xlsx"], part, lambda _: content)
    with in_little_time_and_memory():
        return read(data, "book.xlsx")


LAUGHS: Final = (
    '<?xml version="1.0"?><!DOCTYPE l [<!ENTITY a "ha">'
    + "".join(f'<!ENTITY {chr(98 + n)} "{("&" + chr(97 + n) + ";") * 10}">' for n in range(12))
    + "]>"
)


@pytest.mark.parametrize(
    ("rows", "columns"), [(400_000, 1), (10, 16_384)], ids=["many rows", "every column"]
)
def test_a_sheet_far_larger_than_a_chart_is_refused(rows: int, columns: int) -> None:
    assert swollen_book(SHEET, rows_xml(rows, columns)).codes == ["too-large"]


def test_a_row_over_every_column_is_read() -> None:
    assert swollen_book(SHEET, rows_xml(1, 16_384)).sheet.place(0, 16_383) == "Women!XFD1"


def test_one_sheet_too_large_does_not_cost_the_others() -> None:
    book, _ = book_of(["Size", "Chest"])
    book.create_sheet("Prices").append([1])
    huge = rows_xml(70_000, 1)
    data = with_part(saved(book), "xl/worksheets/sheet2.xml", lambda _: huge)
    found = read(data, "book.xlsx")
    assert [sheet.name for sheet in found.sheets] == ["Women"]
    assert [(finding.code, finding.place) for finding in found.findings] == [
        ("too-large", "Prices")
    ]


@pytest.mark.parametrize("part", [SHEET, "xl/styles.xml", "xl/workbook.xml"])
def test_a_part_that_swells_when_unpacked_is_refused_by_its_size(part: str) -> None:
    assert swollen_book(part, b"<worksheet>" + b" " * (300 << 20)).codes == ["too-large"]


@pytest.mark.parametrize(
    "entities",
    [LAUGHS, '<?xml version="1.0"?><!DOCTYPE l [<!ENTITY m SYSTEM "file:///etc/passwd">]>'],
)
def test_entities_are_never_looked_up(entities: str) -> None:
    data = with_part(
        SAMPLES["book.xlsx"], SHEET, lambda xml: entities + xml.replace("77-82", "&m;")
    )
    assert read(data, "book.xlsx").codes == ["truncated"]
    page = f"{entities}<html><table><tr><td>&m;<td>86</tr></table></html>"
    for row in read(page, "page.html").rows():
        assert all("root:" not in text and "haha" not in text for text in row)


TEXTS: Final = {
    "a million rows": b"S,86\n" * 1_000_000,
    "ten megabytes in one cell": b"Size,Chest\nS," + b"x" * 10_000_000,
    "five megabytes in one cell": b"Size,Chest\nS," + b"x" * 5_000_000,
    "one endless quotation": b'Size,Chest\nS,"' + b"x\n" * 1_000_000,
    "fifty megabytes": b"S,86\n" * 10_000_000,
    "only separators": b";" * 3_000_000,
    "only line ends": b"\n" * 3_000_000 + b"x",
    "many tables": b"<table><tr><td>1<td>2</table>" * 100_000,
    "a table never closed": b"<table>" + b"<tr><td>1<td>2" * 100_000,
    "spans without end": b"<table>" + b"<td rowspan=65000 colspan=1000>x" * 5_000,
    "boxes in boxes": b"<div>" * 500_000,
    "headings without end": b"<html>" + b"<h1>x</h1>" * 300_000,
    "sentences without end": b"S: chest 86-91, waist 71-76\n" * 100_000,
    "bars without end": b"|a|1|\n" * 300_000,
}


@pytest.mark.parametrize("name", ["a.csv", "a.txt", "a.html", "a.md"])
@pytest.mark.parametrize("data", TEXTS.values(), ids=TEXTS.keys())
def test_a_text_far_larger_than_a_chart_is_one_finding(data: bytes, name: str) -> None:
    with in_little_time_and_memory():
        found = read(data, name)
    assert len(found.findings) == 1


@pytest.mark.parametrize("sign", ["\0", "\x07", "\u200f", "\ufeff", "\u202e", "\x0b"])
def test_signs_that_break_other_readers_do_no_harm(sign: str) -> None:
    for text in (
        f"Size{sign};Chest\nS;86{sign}-91\nM;92-97\n",
        f"<table><tr><td>Size<td>Chest{sign}</tr><tr><td>S<td>86{sign}-91</tr></table>",
    ):
        rows = read(text, "a.csv").rows()
        assert rows[0][0].strip() == "Size"
