"""Charts that a web page writes as text: preformatted, in paragraphs, in lists of terms."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import questions, values

ROWS = ("S      82-86      66-70", "M      87-91      71-75", "L      92-96      76-80")
RIGHT = {
    "S chest": (82, 86),
    "S waist": (66, 70),
    "M chest": (87, 91),
    "M waist": (71, 75),
    "L chest": (92, 96),
    "L waist": (76, 80),
}
HEAD = "Size   Chest (cm)   Waist (cm)"


def page(body: str) -> FileReading:
    return read_bytes(f"<html><body>{body}</body></html>".encode(), "chart.html")


LINES = "\n".join((HEAD, *ROWS))
BARS = "Size | Chest (cm) | Waist (cm)\nS | 82-86 | 66-70\nM | 87-91 | 71-75\nL | 92-96 | 76-80"
FORMS = {
    "preformatted": f"<pre>{LINES}</pre>",
    "in a box, with a title": f"<div><h2>Vests</h2><pre>\n{LINES}\n</pre></div>",
    "bars": f"<pre>{BARS}</pre>",
    "broken lines": f"<p>{'<br>'.join((HEAD, *ROWS))}</p>",
    "hard blanks": f"<p>{'<br>'.join((HEAD, *ROWS))}</p>".replace(" ", "&nbsp;"),
    "a paragraph a row": "".join(f"<p>{line}</p>" for line in (HEAD, *ROWS)),
    "below a heading and a sentence": "<h1>Vests</h1><p>How to find your size.</p>"
    + "".join(f"<div>{line}</div>" for line in (HEAD, *ROWS))
    + "<p>Our vests come in three colours.</p>",
}


@pytest.mark.parametrize("body", FORMS.values(), ids=FORMS.keys())
def test_lines_of_a_page_are_read_like_those_of_a_text(body: str) -> None:
    reading = page(body)
    assert values(reading) == RIGHT
    assert questions(reading) == []


def test_preformatted_lines_beside_a_real_table_and_under_their_headings() -> None:
    table = "<tr><th>Size<th>Chest (cm)</tr><tr><td>S<td>92-97</tr><tr><td>M<td>98-103</tr>"
    reading = page(f"<h2>Women</h2><pre>{LINES}</pre><h2>Men</h2><table>{table}</table>")
    assert [chart.band for chart in reading.charts] == ["women", "men"]
    found = values(reading)
    assert found["women M waist"] == (71, 75)
    assert found["men M chest"] == (98, 103)


def test_the_unit_of_a_note_holds() -> None:
    lines = (
        "Größe Brustumfang Taillenumfang",
        "S 82-86 66-70",
        "M 87-91 71-75",
        "Alle Maße in cm.",
    )
    reading = page("".join(f"<p>{line}</p>" for line in lines))
    assert values(reading)["M waist"] == (71, 75)
    assert questions(reading) == []


@pytest.mark.parametrize("head", ["<h3>{}</h3>", "<h4>Size {}</h4>", "<p><b>{}</b></p>"])
def test_a_list_of_terms_under_the_heading_of_each_size(head: str) -> None:
    body = ""
    for size, chest, waist in (row.split() for row in ROWS):
        terms = f"<dt>Chest</dt><dd>{chest} cm</dd><dt>Waist</dt><dd>{waist} cm</dd>"
        body += f"{head.format(size)}<dl>{terms}</dl>"
    reading = page(body)
    assert values(reading) == RIGHT
    assert questions(reading) == []


def test_a_page_of_sentences_is_no_chart() -> None:
    reading = page(
        "<p>We ship in 3 days and take back within 30 days.</p><p>Call 0123 456 between 9-17.</p>"
        "<p>Founded in 1987, 12 people, 2 workshops.</p>"
    )
    assert reading.charts == ()
    assert "no-table" in {one.code for one in reading.findings}
