"""Small files with signs, encodings and figures that nobody expects."""

from __future__ import annotations

from tests.charts.hostile.making import (
    CHART,
    Files,
    open_cell,
    open_row,
    open_sheet,
    row,
    text_cell,
    workbook,
    zipped,
)


def strange_signs() -> Files:
    """Controls, directions, marks and several encodings in one file."""
    controls = "".join(map(chr, (*range(1, 9), *range(14, 32), 127)))
    yield "controls.csv", CHART.replace("S;", f"S{controls};").encode()
    yield "zeros.csv", CHART.replace("S;", "S\0\0;").encode()
    yield (
        "right-to-left.csv",
        "\u202eמידה;חזה (cm)\nS;\u200f84-88\nM;\u202b89-93\u202c\nL;94-98\n".encode(),
    )
    yield "arabic.csv", "المقاس;الصدر (cm)\nS;٨٤-٨٨\nM;٨٩-٩٣\nL;٩٤-٩٨\n".encode()
    mixed = "Größe;Brust (cm)\nS;84–88\n".encode() + "M;89–93\nL;94–98\nGrün;1\n".encode("cp1252")
    yield "mixed.csv", mixed
    yield "wide.csv", CHART.encode("utf-16") + CHART.encode()
    yield "surrogates.csv", CHART.replace("S;", "S\ud800;").encode("utf-8", "surrogatepass")
    yield "overlong.csv", CHART.encode().replace(b"S;", b"S\xc0\xaf\xf8\x88\x80\x80\x80;")
    yield "marks.csv", CHART.replace("S;", "S" + "\u0301" * 20_000 + ";").encode()
    yield "wide.html", b"\xff\xfe" + "<table><tr><td>S<td>84".encode("utf-16-be")
    yield "raised.csv", CHART.replace("84", "⁸⁴").replace("89", "¹²³").encode()
    yield "circled.csv", CHART.replace("84", "⑧④").replace("M", "Ⓜ").encode()


def strange_figures() -> Files:
    """Numbers beyond all numbers, and formulas that nobody calculated."""
    cells = (
        '<c r="A1"><v>1e999999</v></c><c r="B1"><v>nan</v></c><c r="C1"><v>-1e-400</v></c>'
        '<c r="D1" t="s"><v>99999999999</v></c><c r="E1" s="99999"><v>45000</v></c>'
    )
    yield "numbers.xlsx", zipped(workbook(f'<row r="1">{cells}</row>'))
    many = "9" * 5_000
    yield "numbers.csv", f"Size;Chest (cm)\nS;1e999999\nM;{many}\nL;1/0\nXL;٣\n".encode()
    lost = '<c r="B2"><f>40+44</f></c>'
    heads = row(1, text_cell("A1", "Size"), text_cell("B1", "Chest (cm)"))
    yield "lost.xlsx", zipped(workbook(heads + row(2, text_cell("A2", "S"), lost)))
    formula = '<table:table-cell table:formula="of:=40+44"/>'
    titles = open_row(open_cell("Size"), open_cell("Chest (cm)"))
    yield "lost.ods", zipped(open_sheet(titles + open_row(open_cell("S"), formula)))


def nothing_much() -> Files:
    """Empty files, empty archives, letters without sense."""
    yield "empty.csv", b""
    yield "blank.txt", b" \n\t\n" * 1_000
    yield "empty.zip", zipped({})
    yield "folders.zip", zipped({"a/": "", "b/": ""})
    head = b"From: a@b.example\nTo: c@d.example\nMessage-ID: <1@b>\nMIME-Version: 1.0\n"
    yield "no-boundary.eml", head + b"Content-Type: multipart/mixed\n\nno boundary\n"
    yield "charset.eml", head + b"Content-Type: text/plain; charset=none-such\n\nS 84\n"
    yield (
        "coded.eml",
        head + b"Subject: =?bad?q?x\nContent-Type: application/pdf; name*=utf-9''%ff%fe\n"
        b"Content-Transfer-Encoding: base64\n\n!!!!====\n",
    )
    yield "headers.eml", head + b"X: y\n" * 200_000
