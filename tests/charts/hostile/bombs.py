"""Small files that unpack to large ones."""

from __future__ import annotations

from typing import Final

from tests.charts.hostile.making import (
    CHART,
    Files,
    document,
    open_cell,
    open_row,
    open_sheet,
    paragraph,
    swollen,
    text_cell,
    workbook,
    zipped,
)

LAUGHS: Final = (
    '<!DOCTYPE r [<!ENTITY a "ha">'
    + "".join(
        f'<!ENTITY {name} "{f"&{before};" * 10}">'
        for before, name in zip("abcdefghi", "bcdefghij", strict=True)
    )
    + "]>"
)
"""Ten entities, each ten times the one before it."""
_OPEN_MARK: Final = {"mimetype": open_sheet("")["mimetype"]}


def bombs() -> Files:
    """Archives, documents and pages that swell."""
    yield "swollen.zip", swollen("big.csv", 120, {"chart.csv": CHART})
    without_sheet = workbook("")
    del without_sheet["xl/worksheets/a.xml"]
    yield "swollen.xlsx", swollen("xl/worksheets/a.xml", 170, without_sheet)
    yield "strings.xlsx", swollen("xl/sharedStrings.xml", 60, workbook(""))
    yield "swollen.docx", swollen("word/document.xml", 60, {"[Content_Types].xml": ""})
    yield "swollen.ods", swollen("content.xml", 60, _OPEN_MARK)
    yield "tags.ods", swollen("content.xml", 20, _OPEN_MARK, b"<a/>")
    yield "tags.docx", swollen("word/document.xml", 20, {"[Content_Types].xml": ""}, b"<a/>")
    yield "many.zip", zipped({f"{number}.csv": CHART for number in range(1_200)})
    yield "names.zip", zipped({f"{number}": "" for number in range(6_000)})
    yield "nested.zip", nested_archive(6)
    yield "broad.zip", zipped({f"{number}.zip": nested_archive(1) for number in range(60)})
    yield "laughs.xlsx", zipped(workbook(text_cell("A1", "&j;"), LAUGHS))
    yield "laughs.docx", zipped(document(paragraph("&j;"), LAUGHS))
    yield "laughs.ods", zipped(open_sheet(open_row(open_cell("&j;")), LAUGHS))
    yield "laughs.html", f"{LAUGHS}<html><table><tr><td>&j;</table>".encode()
    yield "laughs.svg", f"{LAUGHS}<svg>&j;</svg>".encode()
    yield "laughs.xml", f'<?xml version="1.0"?>{LAUGHS}<r>&j;</r>'.encode()


def nested_archive(depth: int) -> bytes:
    """An archive in an archive, ``depth`` of them around one chart."""
    data = zipped({"chart.csv": CHART})
    for _ in range(depth):
        data = zipped({"inner.zip": data})
    return data
