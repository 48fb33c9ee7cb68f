"""No figure of a chart may vanish: what no size has taken is asked about, and nothing else is."""

from __future__ import annotations

from charts.importer import read_bytes
from tests.charts.read_text import questions, ranges, table, values


def _page(*tables: str) -> bytes:
    bodies = []
    for text in tables:
        rows = [line.split("|") for line in text.strip().splitlines()]
        cells = ["".join(f"<td>{cell.strip()}</td>" for cell in row) for row in rows]
        bodies.append("<table>" + "".join(f"<tr>{row}</tr>" for row in cells) + "</table>")
    return ("<h1>Vests</h1>" + "".join(bodies)).encode()


def test_figures_in_a_column_of_remarks_are_asked_about() -> None:
    reading = table(
        """
        Size | Chest (cm) | Remark
        S | 84-88 | ask
        M | 88-92 | 56
        L | 92-96 | 58
        XL | 96-100 | ask
        XXL | 100-104 | ask
        """
    )
    (finding,) = [one for one in reading.findings if one.code == "text-order"]
    assert finding.place == "C3:C4"


def test_the_question_covers_the_whole_block_that_no_chart_has_taken() -> None:
    reading = table(
        """
        Size | Chest (cm) | Remark | Hint
        S | 84-88 | ask | see
        M | 88-92 | 56 | see
        L | 92-96 | 58 | see
        XL | 96-100 | ask | 44
        XXL | 100-104 | ask | see
        """
    )
    (finding,) = [one for one in reading.findings if one.code == "text-order"]
    assert finding.place == "C3:D5"


def test_the_question_about_a_table_that_gave_no_chart_covers_its_figures() -> None:
    lost = "Waist (cm) | Hip (cm)\nfrom 68 to 72 or so | 88-92\nmore or less | 92-96\nmany | 96-100"
    page = _page("Size | Chest (cm)\nS | 84-88\nM | 88-92", lost)
    reading = read_bytes(page, "page.html")
    (finding,) = [one for one in reading.findings if one.code == "text-order"]
    assert finding.place == "table 2!B2:B4"


def test_figures_under_words_of_their_own_are_not_read_under_the_sizes_of_another_table() -> None:
    reading = table(
        """
        Size | S | M | L
        Chest (cm) | 84-88 | 88-92 | 92-96

        Name | Alpenveilchen | Schneeball | Moosrose
        Waist (cm) | 68-72 | 72-76 | 76-80
        Hip (cm) | 88-92 | 92-96 | 96-100
        """
    )
    assert sorted(values(reading)) == ["L chest", "M chest", "S chest"]
    (finding,) = [one for one in reading.findings if one.code == "text-order"]
    assert finding.place == "B5:D6"


def test_one_figure_beside_a_chart_is_a_word_of_the_shop() -> None:
    reading = table("Size | Chest (cm) | Remark\nS | 84-88 | ask\nM | 88-92 | 56\nL | 92-96 | ask")
    assert questions(reading) == []


def test_sizes_of_another_thing_beside_a_chart_are_not_asked_about() -> None:
    reading = table(
        "Size | Chest (cm)\nS | 84-88\n\nUK | EU | US\n7 | 41 | 8\n8 | 42 | 9\n9 | 43 | 10"
    )
    assert questions(reading) == []


def test_a_table_of_measures_that_names_no_size_is_asked_about_beside_a_chart() -> None:
    lost = "Waist (cm) | Hip (cm)\nfrom 68 to 72 or so | 88-92\nmore or less | 92-96\nmany | 96-100"
    reading = read_bytes(_page("Size | Chest (cm)\nS | 84-88\nM | 88-92", lost), "page.html")
    assert "text-order" in questions(reading)
    prices = "Parcel | Euro\nat home | 4.90\non islands | 6.90\nabroad | 12.90"
    reading = read_bytes(_page("Size | Chest (cm)\nS | 84-88\nM | 88-92", prices), "page.html")
    assert questions(reading) == []


def test_tables_beside_each_other_in_a_page_are_no_boxes_of_a_table() -> None:
    first, second = "Size | Chest (cm)\nS | 84-88", "Size | Chest (cm)\nM | 88-92"
    page = _page(first, second).replace(b"<h1>Vests</h1>", b"")
    reading = read_bytes(page, "page.html")
    assert sorted(values(reading)) == ["M chest", "S chest"]
    assert "not-a-chart" not in {one.code for one in reading.findings}


def test_figures_joined_to_those_of_another_cell_are_not_asked_about() -> None:
    reading = table(
        """
        Size | S (cm) | S (in) | M (cm) | M (in)
        Chest | 84-88 | 33-34.5 | 88-92 | 34.5-36
        """
    )
    assert questions(reading) == []


def test_a_table_in_a_list_of_terms_is_a_table() -> None:
    first = _page("Size | Chest (cm)\nS | 84-88\nM | 88-92")
    page = b"<dl><dt>Vests</dt><dd>" + first.replace(b"<h1>Vests</h1>", b"") + b"</dd></dl>"
    assert sorted(values(read_bytes(page, "page.html"))) == ["M chest", "S chest"]


def test_ways_of_writing_that_cannot_be_read_say_nothing_of_the_other_cells() -> None:
    rows = "XS | 80<82\nS | 83-87\nM | 88-92 or 35-36\nL | 93<98\nXL | 99-105"
    reading = table(f"Size | Chest (cm)\n{rows}")
    assert questions(reading) == ["impossible"]
    found = {one.published: bool(one.findings) for one in ranges(reading)}
    assert found["83-87"] is found["99-105"] is False
    assert found["88-92 or 35-36"] is found["93<98"] is True


def test_a_table_that_is_wider_than_the_sizes_above_it_has_none_of_those() -> None:
    rows = [
        "Junior",
        "Size,S,M,L",
        "Waist (cm),57-61,61-65,65-69",
        "Height (cm),130-139,140-149,150-159",
        "",
        "Senior",
        "Waist (cm),69-75,72-79,82-92,87-98",
        "Height (cm),155-165,160-175,170-180,175-185",
    ]
    reading = read_bytes("\n".join(rows).encode(), "a.csv")
    assert len(values(reading)) == 6
    assert questions(reading) == ["text-order"]
    assert {one.place for one in reading.findings if one.code == "text-order"} == {"B7:E8"}


def test_measures_below_names_that_cannot_be_read_are_asked_about() -> None:
    reading = table(
        """
        Size | S | M | L
        Hip (cm) | 88-92 | 92-96 | 96-100

        Ladies
        cm | K1q/x | K2q/x | K3q/x
         | uk / us | uk / us | uk / us
        Bust | 80-84 | 84-88 | 88-92
        """
    )
    assert {one.split(" ")[1] for one in values(reading)} == {"hip"}
    assert [one.place for one in reading.findings if one.code == "text-order"] == ["B7:D7"]


def test_figures_behind_a_word_for_size_and_below_measures_are_asked_about() -> None:
    reading = table(
        """
        Size | S | M | L
        Hip (cm) | 88-92 | 92-96 | 96-100

        Ladies
         | Bust cm | Waist cm
        Size x-k1q/y | 80 | 62
        Size x-k2q/y | 84 | 66
        """
    )
    assert [one.place for one in reading.findings if one.code == "text-order"] == ["B6:C7"]
