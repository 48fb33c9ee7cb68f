"""Mail: the best form of its text, what is attached, and what is only decoration."""

from __future__ import annotations

from email.message import EmailMessage

from charts.findings import FindingLog
from charts.readers.registry import inner_files
from tests.charts.hostile.making import CHART
from tests.charts.readers.reading import read

PAGE = (
    "<html><body><p>All in cm</p><table><tr><th>Size</th><th>Chest</th></tr>"
    "<tr><td>S</td><td>84-88</td></tr><tr><td>M</td><td>89-93</td></tr></table></body></html>"
)
PICTURE = b"\x89PNG\r\n\x1a\n" + b"0" * 100


def message(text: str = "Here it is.") -> EmailMessage:
    made = EmailMessage()
    made["From"], made["To"] = "office@maker.example", "buyer@shop.example"
    made["Subject"], made["Message-ID"] = "Größen", "<1@maker.example>"
    made.set_content(text)
    return made


def attached(letter: EmailMessage) -> list[str]:
    return [one.name for one in inner_files(bytes(letter), "a.eml", FindingLog())]


def test_of_a_page_and_its_plain_text_the_page_is_read() -> None:
    letter = message("Size Chest S 84-88 M 89-93")
    letter.add_alternative(PAGE, subtype="html")
    found = read(bytes(letter), "a.eml")
    assert found.rows() == [["Size", "Chest"], ["S", "84-88"], ["M", "89-93"]]
    assert found.sheet.context == ("All in cm",)


def test_a_plain_letter_is_read_by_its_lines_without_the_marks_of_an_answer() -> None:
    letter = message("> Size\tChest (cm)\n> S\t84-88\n> M\t89-93\n> L\t94-98\n")
    found = read(bytes(letter), "a.eml")
    assert found.rows()[1] == ["S", "84-88"]


def test_attached_files_keep_their_names_in_every_script() -> None:
    letter = message()
    letter.add_attachment(CHART.encode(), maintype="text", subtype="csv", filename="Größen Ä.csv")
    assert attached(letter) == ["Größen Ä.csv"]


def test_a_letter_sent_on_is_a_letter_inside() -> None:
    inner = message()
    inner.add_attachment(CHART.encode(), maintype="text", subtype="csv", filename="a.csv")
    outer = message()
    outer.add_attachment(inner)
    assert attached(outer) == ["file.eml"]


def test_a_logo_and_a_signature_are_no_charts() -> None:
    letter = message()
    letter.add_alternative(PAGE, subtype="html")
    letter.add_attachment(
        PICTURE, "image", "png", filename="logo.png", cid="<1>", disposition="inline"
    )
    letter.add_attachment(b"0", "application", "pkcs7-signature", filename="smime.p7s")
    assert attached(letter) == []


def test_a_picture_in_the_text_may_be_the_chart_where_nothing_else_is() -> None:
    letter = message("Here it is.")
    letter.add_attachment(
        PICTURE, "image", "png", filename="chart.png", cid="<1>", disposition="inline"
    )
    assert attached(letter) == ["chart.png"]


def test_a_page_saved_in_the_form_of_a_letter_is_read() -> None:
    saved = (
        "From: <Saved by a browser>\nSubject: Sizes\nMIME-Version: 1.0\nContent-Type: "
        'multipart/related; type="text/html"; boundary="b"\n\n--b\nContent-Type: text/html\n\n'
        f"{PAGE}\n--b\nContent-Type: text/css\nContent-Location: x.css\n\np {{}}\n--b--\n"
    )
    assert read(saved, "page.mht").rows()[1] == ["S", "84-88"]
    assert list(inner_files(saved.encode(), "page.mht", FindingLog())) == []


def test_a_pasted_letter_without_its_form_stays_a_pasted_text() -> None:
    text = "From: office\nTo: buyer\nMessage-ID: 1\n\nSize\tChest\nS\t84-88\nM\t89-93\n"
    assert read(text, "-").sheet.place(5, 1).startswith("line")
