"""The smallest files of each kind, to be filled with harm."""

from __future__ import annotations

import io
import zipfile
from collections.abc import Iterator, Mapping
from email.message import EmailMessage
from typing import Final

Files = Iterator[tuple[str, bytes]]
"""Each hostile file with its name, made when it is asked for."""
Parts = Mapping[str, str | bytes]
MEGABYTE: Final = 1024 * 1024
CHART: Final = "Size;Chest (cm);Waist (cm)\nS;84-88;68-72\nM;89-93;73-77\nL;94-98;78-82\n"
MAIN: Final = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
LINKED: Final = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
WORD: Final = "http://schemas.openxmlformats.org/wordprocessingml/2006/main"
OPEN: Final = "urn:oasis:names:tc:opendocument:xmlns:"


def zipped(parts: Parts) -> bytes:
    """An archive of some files."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, data in parts.items():
            archive.writestr(name, data)
    return out.getvalue()


def swollen(name: str, megabytes: int, around: Parts, piece: bytes = b" ") -> bytes:
    """An archive with one file that is nothing but ``piece`` again and again."""
    out = io.BytesIO()
    block = piece * (MEGABYTE // len(piece))
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as archive:
        for other, data in around.items():
            archive.writestr(other, data)
        with archive.open(name, "w", force_zip64=True) as part:
            for _ in range(megabytes):
                part.write(block)
    return out.getvalue()


def workbook(rows: str, head: str = "", links: str = "") -> dict[str, str | bytes]:
    """The parts of a workbook whose one sheet holds ``rows``; ``head`` stands before its root."""
    return {
        "xl/workbook.xml": f'<workbook xmlns="{MAIN}" xmlns:r="{LINKED}"><sheets>'
        '<sheet name="A" sheetId="1" r:id="r1"/></sheets></workbook>',
        "xl/_rels/workbook.xml.rels": f'<Relationships xmlns="x"><Relationship Id="r1" '
        f'Type="{LINKED}/worksheet" Target="worksheets/a.xml"/>{links}</Relationships>',
        "xl/worksheets/a.xml": f'{head}<worksheet xmlns="{MAIN}"><sheetData>{rows}</sheetData>'
        "</worksheet>",
    }


def text_cell(place: str, text: str) -> str:
    """A cell that holds its own text."""
    return f'<c r="{place}" t="inlineStr"><is><t>{text}</t></is></c>'


def row(number: int, *cells: str) -> str:
    """A row of a worksheet."""
    return f'<row r="{number}">{"".join(cells)}</row>'


def document(body: str, head: str = "") -> dict[str, str | bytes]:
    """The parts of a word-processor document."""
    return {
        "[Content_Types].xml": "<Types/>",
        "word/document.xml": f'{head}<w:document xmlns:w="{WORD}"><w:body>{body}</w:body>'
        "</w:document>",
    }


def paragraph(text: str) -> str:
    """A paragraph of a document."""
    return f"<w:p><w:r><w:t>{text}</w:t></w:r></w:p>"


def open_sheet(rows: str, head: str = "") -> dict[str, str | bytes]:
    """The parts of an open spreadsheet."""
    return {
        "mimetype": "application/vnd.oasis.opendocument.spreadsheet",
        "content.xml": f'{head}<office:document-content xmlns:office="{OPEN}office:1.0" '
        f'xmlns:table="{OPEN}table:1.0" xmlns:text="{OPEN}text:1.0" '
        'xmlns:xlink="http://www.w3.org/1999/xlink"><office:body><office:spreadsheet>'
        f'<table:table table:name="A">{rows}</table:table>'
        "</office:spreadsheet></office:body></office:document-content>",
    }


def open_cell(text: str, more: str = "") -> str:
    """A cell of an open spreadsheet."""
    return f"<table:table-cell {more}><text:p>{text}</text:p></table:table-cell>"


def open_row(*cells: str, more: str = "") -> str:
    """A row of an open spreadsheet."""
    return f"<table:table-row {more}>{''.join(cells)}</table:table-row>"


def letter(*attached: tuple[str, bytes], text: str = "Please find the chart attached.") -> bytes:
    """A letter with files."""
    message = EmailMessage()
    message["From"], message["To"] = "office@maker.example", "buyer@shop.example"
    message["Subject"], message["Message-ID"] = "Size charts", "<1@maker.example>"
    message.set_content(text)
    for name, data in attached:
        message.add_attachment(data, maintype="application", subtype="octet-stream", filename=name)
    return bytes(message)
