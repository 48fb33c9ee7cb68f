"""Files far larger than any chart, in rows, columns, cells and depth."""

from __future__ import annotations

from typing import Final

from tests.charts.hostile.making import (
    CHART,
    LINKED,
    MAIN,
    MEGABYTE,
    Files,
    document,
    letter,
    open_cell,
    open_row,
    open_sheet,
    paragraph,
    row,
    text_cell,
    workbook,
    zipped,
)

_LARGE: Final = 10 * MEGABYTE


def a_million_rows() -> Files:
    """A million rows, or as many as the kind of file can say."""
    yield "rows.csv", (CHART + "S;84-88;68-72\n" * 1_000_000).encode()
    yield "rows.tsv", ("S\t84-88\n" * 400_000).encode()
    yield "rows.html", f"<table>{'<tr><td>S<td>84-88</tr>' * 200_000}</table>".encode()
    yield "rows.md", ("| Size | Chest |\n|---|---|\n" + "| S | 84-88 |\n" * 300_000).encode()
    yield "rows.txt", ("S  84-88\n" * 500_000).encode()
    corner = row(1_048_576, text_cell("XFD1048576", "x"))
    yield "corner.xlsx", zipped(workbook(row(1, text_cell("A1", "Size")) + corner))
    yield "empty.xlsx", zipped(workbook('<row r="1"><c r="A1" s="1"/></row>' * 1_000_000))
    numbers = (row(n, f'<c r="A{n}"><v>{n}</v></c>') for n in range(1, 120_000))
    yield "rows.xlsx", zipped(workbook("".join(numbers)))
    all_rows = open_row(open_cell("84-88"), more='table:number-rows-repeated="1048576"')
    yield "rows.ods", zipped(open_sheet(all_rows))
    short = f"<w:tr><w:tc>{paragraph('84-88')}</w:tc></w:tr>"
    yield "rows.docx", zipped(document(f"<w:tbl>{short * 100_000}</w:tbl>"))
    yield "sheets.xlsx", zipped(_sheets(150))
    block = open_row(*[open_cell("84-88")] * 40) * 100
    yield "sheets.ods", zipped(open_sheet("</table:table><table:table>".join([block] * 60)))


def _sheets(count: int) -> dict[str, str | bytes]:
    """A workbook that shows one large sheet again and again."""
    rows = "".join(
        row(n, *(f'<c r="{column}{n}"><v>{n + 30}</v></c>' for column in "ABCDEFGH"))
        for n in range(1, 300)
    )
    names = "".join(f'<sheet name="S{n}" sheetId="{n}" r:id="r{n}"/>' for n in range(count))
    links = "".join(
        f'<Relationship Id="r{n}" Type="{LINKED}/worksheet" Target="worksheets/a.xml"/>'
        for n in range(count)
    )
    return {
        **workbook(rows),
        "xl/workbook.xml": f'<workbook xmlns="{MAIN}" xmlns:r="{LINKED}"><sheets>{names}'
        "</sheets></workbook>",
        "xl/_rels/workbook.xml.rels": f'<Relationships xmlns="x">{links}</Relationships>',
    }


def every_column() -> Files:
    """As many columns as a spreadsheet has, and spans over all of them."""
    line = ";".join("84-88" for _ in range(16_384))
    yield "columns.csv", "\n".join([line] * 3).encode()
    yield "columns.html", ("<table><tr>" + "<td>84-88" * 16_384 + "</table>").encode()
    yield "spans.html", ("<table>" + "<tr><td rowspan=9999 colspan=999>x" * 900).encode()
    cells = "".join(f'<c r="{_letters(n)}1"><v>90</v></c>' for n in range(16_384))
    yield "columns.xlsx", zipped(workbook(f'<row r="1">{cells}</row>'))
    over_all = 'table:number-columns-repeated="16384"'
    yield "columns.ods", zipped(open_sheet(open_row(open_cell("84-88", over_all)) * 8))
    span = 'table:number-columns-spanned="16384" table:number-rows-spanned="1048576"'
    yield "spans.ods", zipped(open_sheet(open_row(open_cell("S", span)) * 300))
    wide = '<w:tbl><w:tr><w:tc><w:tcPr><w:gridSpan w:val="9999999"/></w:tcPr>'
    yield "spans.docx", zipped(document(f"{wide}{paragraph('x')}</w:tc></w:tr></w:tbl>" * 200))


def _letters(column: int) -> str:
    text, number = "", column + 1
    while number:
        number, rest = divmod(number - 1, 26)
        text = chr(ord("A") + rest) + text
    return text


def one_large_cell() -> Files:
    """Ten megabytes in one cell, and cells as long as a spreadsheet's may be."""
    text = "84-88 / " * (_LARGE // 8)
    yield "ranges.html", f"<table><tr><td>Size<td>Chest<tr><td>S<td>{text}</table>".encode()
    yield "ranges.md", f"| Size | Chest |\n|---|---|\n| S | {text} |\n".encode()
    yield "ranges.txt", f"Size  Chest\nS  {text}\n".encode()
    yield "ranges.xlsx", zipped(workbook(row(1, text_cell("A1", text))))
    yield "ranges.ods", zipped(open_sheet(open_row(open_cell(text))))
    cell = f"<w:tbl><w:tr><w:tc>{paragraph(text)}</w:tc></w:tr></w:tbl>"
    yield "ranges.docx", zipped(document(cell))
    for name, sign in (("figures", "8"), ("words", "ab "), ("ranges", "84-88 / "), ("half", "½")):
        text = sign * (_LARGE // len(sign.encode()))
        yield f"{name}.csv", f"Size;Chest (cm)\nS;{text}\nM;88\nL;92\n".encode()
        yield f"{name}.eml", letter(text=f"Size\tChest\nS\t{text[: 4 * MEGABYTE]}\n")
    signs = ("8", "84-88/", "1 1/2 ", "( [", "up to ", "5'", "~ ± < ", "½", "-", "\"'", "a,b;c ")
    gap = " " * 300
    far = f"Size{gap}S{gap}M\nChest{gap}inches{gap}34-38{gap}36-40\ncm{gap}86-97{gap}91-101\n"
    yield "gaps.txt", f"{far}Waist: measure 6-8 cm below the arms, then double that.\n".encode()
    words = (_letters(7_919 * n % 390_000 + 18_278).lower() for n in range(1, 481))
    said = (
        f"{next(words)}: Chest {one} 12, xx {next(words)} 2, xx {next(words)} 3\n" for one in words
    )
    yield "words.txt", "".join(said).encode()
    for number, sign in enumerate(signs):
        cell = (sign * 32_000)[:32_000]
        rows = "".join(f"{size}\t{cell}{size}\n" for size in ("S", "M", "L", "XL", "XXL"))
        yield f"long-{number}.tsv", f"Size\tChest (cm)\n{rows}".encode()


def deep() -> Files:
    """Things in things in things."""
    yield "deep.html", ("<div>" * 60_000 + "<table><tr><td>x").encode()
    yield "tables.html", ("<table><tr><td>" * 2_000 + "x").encode()
    inner = "<w:tbl><w:tr><w:tc>" * 3_000 + "</w:tc></w:tr></w:tbl>" * 3_000
    yield "deep.docx", zipped(document(inner))
    yield "deep.ods", zipped(open_sheet("<table:table-row-group>" * 5_000))
    yield "deep.json", b"[" * 100_000
    parts = (
        b"Content-Type: multipart/mixed; boundary=b%d\nFrom: a@b\nTo: c@d\n"
        b"Message-ID: <1@x>\n\n--b%d\n" % (n, n)
        for n in range(400)
    )
    yield "deep.eml", b"".join(parts)
    yield "parts.eml", letter(*((f"{n}.csv", CHART.encode()) for n in range(400)))
