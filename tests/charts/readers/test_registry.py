"""A source is what it holds, whatever its name says."""

from __future__ import annotations

import io
import json
import zipfile

import pytest

from charts.finding_sentences import sentence_of
from charts.readers.registry import readers
from charts.wording import LANGUAGES, Wording
from tests.charts.readers.reading import book_of, paste, read, saved

TABLE = "<table><tr><td>Size<td>Chest</tr><tr><td>S<td>86-91</tr></table>"
CSV = "Size;Chest\nS;86-91\nM;92-97\n"
OLD_OFFICE = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(504)
PICTURES = {
    "png": b"\x89PNG\r\n\x1a\n" + bytes(20),
    "jpg": b"\xff\xd8\xff\xe0" + bytes(20),
    "gif": b"GIF89a" + bytes(20),
    "webp": b"RIFF\x10\0\0\0WEBPVP8 " + bytes(8),
    "bmp": b"BM\x36\0\x0c\0\0\0\0\0\x36\0\0\0\x28\0\0\0" + bytes(30),
    "tiff": b"II*\0" + bytes(20),
    "heic": b"\0\0\0\x18ftypheic" + bytes(20),
    "svg": b"<?xml version='1.0'?>\n<svg xmlns='http://www.w3.org/2000/svg'><text>86</text></svg>",
}


def zipped(**parts: str) -> bytes:
    stream = io.BytesIO()
    with zipfile.ZipFile(stream, "w") as archive:
        for name, content in parts.items():
            archive.writestr(name.replace("__", "/").replace("_x_", "."), content)
    return stream.getvalue()


def test_every_kind_of_source_has_a_reader_of_its_own() -> None:
    kinds = [reader.kind for reader in readers()]
    assert len(set(kinds)) == len(kinds)
    assert {"workbook", "delimited text", "web page", "Markdown", "pasted text", "picture"} <= {
        *kinds
    }


def test_lines_are_not_gone_through_where_another_reader_is_certain() -> None:
    slow = [reader for reader in readers() if reader.is_slow_to_claim]
    assert [reader.kind for reader in slow] == ["pasted text"]
    assert [*readers()][-1:] == slow


@pytest.mark.parametrize("name", ["a.xlsx", "a.xls", "a.csv", "a.html", "a", "a.PDF"])
def test_a_web_page_is_a_web_page_under_any_name(name: str) -> None:
    assert read(TABLE, name).rows() == [["Size", "Chest"], ["S", "86-91"]]


@pytest.mark.parametrize("name", ["a.xlsx", "a.csv", "a.html", "a", "a.txt"])
def test_a_workbook_is_a_workbook_under_any_name(name: str) -> None:
    book, _ = book_of(["Size", "Chest"], ["S", "86-91"])
    assert read(saved(book), name).rows() == [["Size", "Chest"], ["S", "86-91"]]


@pytest.mark.parametrize("name", ["a.xlsx", "a.xls", "a.csv", "a.html", "a", "a.txt"])
def test_delimited_text_is_delimited_text_under_any_name(name: str) -> None:
    found = read(CSV, name)
    assert found.rows()[1] == ["S", "86-91"]
    assert found.codes == []


@pytest.mark.parametrize(("ending", "data"), PICTURES.items())
def test_a_picture_is_said_to_be_one(ending: str, data: bytes) -> None:
    assert read(data, f"chart.{ending}").codes == ["picture"]
    assert read(data, "chart.xlsx").codes == ["picture"]


def test_a_workbook_that_holds_only_a_picture_is_a_picture() -> None:
    book, _ = book_of()
    stream = io.BytesIO(saved(book))
    with zipfile.ZipFile(stream, "a") as archive:
        archive.writestr("xl/media/image1.png", PICTURES["png"])
    assert read(stream.getvalue(), "a.xlsx").codes == ["picture"]


def test_an_encrypted_workbook_is_locked() -> None:
    data = OLD_OFFICE + "EncryptedPackage".encode("utf-16-le") + bytes(600)
    assert read(data, "chart.xlsx").codes == ["locked"]


def test_a_zip_with_a_password_is_locked() -> None:
    book, _ = book_of(["Size"])
    data = bytearray(saved(book))
    for mark, flags in ((b"PK\3\4", 6), (b"PK\1\2", 8)):
        at = data.find(mark)
        while at >= 0:
            data[at + flags] |= 1
            at = data.find(mark, at + 4)
    assert read(bytes(data), "chart.xlsx").codes == ["locked"]


@pytest.mark.parametrize(
    ("data", "kind"),
    [
        (b"{\\rtf1 Size}", "RTF"),
        (zipped(**{"[Content_Types]_x_xml": "<t/>", "xl__workbook_x_bin": "x"}), "XLSB"),
        (json.dumps({"sizes": [{"chest": 86}]}).encode(), "JSON"),
        (b"<?xml version='1.0'?><chart><size>S</size></chart>", "XML"),
        (b"\x1f\x8b\x08" + bytes(20), "GZ"),
    ],
)
def test_a_kind_that_is_not_read_is_named(data: bytes, kind: str) -> None:
    found = read(data, "chart.xlsx")
    assert found.codes == ["unreadable"]
    assert found.findings[0].values["what"] == kind


@pytest.mark.parametrize("data", [b"", b" \r\n\t", bytes(4096), b"\xef\xbb\xbf"])
def test_an_empty_file_is_said_to_be_empty(data: bytes) -> None:
    assert read(data, "chart.csv").codes == ["empty-file"]


def test_an_empty_workbook_is_said_to_be_empty() -> None:
    assert read(saved(book_of()[0]), "chart.xlsx").codes == ["empty-file"]


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_finding_of_a_reader_is_a_sentence_without_gaps(language: str) -> None:
    book, sheet = book_of(["Size", "=1+1"], ["S", 1])
    sheet.row_dimensions[2].hidden = True
    sources = [
        read(b"", "a.csv"),
        paste(""),
        read(PICTURES["png"], "a.png"),
        read(b"\0\1\2\3" * 50, "a.xlsx"),
        read(b"{\\rtf1 Size}", "a.rtf"),
        read(b"\0\1\2\3" * 50, "a.dat"),
        read(b"PK\3\4 half", "a.xlsx"),
        read(b"1,2\n" * 400_000, "a.csv"),
        read(b"x" * (41 << 20), "a.csv"),
        read(OLD_OFFICE + "EncryptionInfo".encode("utf-16-le") + bytes(9), "a.xlsx"),
        read(saved(book), "a.xlsx"),
        read("GrÃ¶ÃŸe;Brust\nS;86\nM;92\n", "a.csv"),
        read("<html><p>Hello", "a.html"),
        paste("SMALLMEDIUMLARGEXLARGE"),
    ]
    findings = [finding for source in sources for finding in source.findings]
    assert {finding.code for finding in findings} >= {
        "empty-file", "picture", "not-what-it-says", "unreadable", "truncated", "too-large",
        "locked", "formula-without-value", "hidden-left-out", "text-repaired", "no-table",
        "separator-lost",
    }  # fmt: skip
    for finding in findings:
        sentence = sentence_of(finding, Wording(language))
        assert sentence.endswith(".")
        assert "{" not in sentence
        assert "()" not in sentence
