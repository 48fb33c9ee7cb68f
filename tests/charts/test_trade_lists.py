"""Price lists and order forms are left out with a note; where a measure stands, nothing is."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from tests.charts.read_text import notes, questions, table

LISTS = {
    "price list": """
        Art. no | Description | EAN | RRP EUR | Stock
        1001 | Vest Fell S | 4001234567890 | 189,00 | 12
        1002 | Chest protector M | 4001234567891 | 189,00 | 3
        1003 | Vest L | 4001234567892 | 199,00 | 0
    """,
    "German price list": """
        Preisliste 2027
        Artikel-Nr. | Bezeichnung | Größe | Farbe | UVP € | VK | VE
        1001 | Weste Fell | S | schwarz | 189,00 | 99,50 | 5
        1002 | Weste Fell | M | schwarz | 189,00 | 99,50 | 5
        1003 | Weste Fell | L | rot | 199,00 | 102,00 | 5
    """,
    "order form": """
        Style no | Colour | S | M | L | XL | Total | Price
        1001 | black |  |  |  |  |  | 189.00
        1002 | navy |  |  |  |  |  | 189.00
    """,
    "French stock list": """
        Référence | Modèle | Prix public | Quantité
        1001 | Gilet | 189,00 | 4
        1002 | Gilet | 199,00 | 90
    """,
}
CHARTS = {
    "prices beside measures": """
        Size | Chest (cm) | Price | EAN
        S | 84-88 | 189,00 | 4001
        M | 89-93 | 189,00 | 4002
        L | 94-98 | 189,00 | 4003
    """,
    "measures under an unknown word": """
        Size | Xyz | Price | EAN
        S | 84-88 | 189,00 | 4001
        M | 89-93 | 189,00 | 4002
        L | 94-98 | 189,00 | 4003
    """,
    "measures in another spelling": """
        sku | size | chest_from_cm | chest_to_cm | price | stock
        R1 | S | 84 | 90 | 189,00 | 12
        R2 | M | 90 | 96 | 189,00 | 36
        R3 | L | 96 | 103 | 189,00 | 40
    """,
}


@pytest.mark.parametrize("name", LISTS)
def test_a_list_of_the_trade_is_left_out_without_a_question(name: str) -> None:
    reading = table(LISTS[name])
    assert reading.charts == ()
    assert (notes(reading), questions(reading)) == (["not-a-chart"], [])


@pytest.mark.parametrize("name", CHARTS)
def test_a_table_with_body_measures_is_never_left_out(name: str) -> None:
    reading = table(CHARTS[name])
    assert "trade" not in {one.values.get("case") for one in reading.findings}
    assert reading.charts


def test_a_list_with_a_cover_sheet_is_not_asked_about() -> None:
    page = (
        "<table><tr><td>Alder Lane Outfitters</td><td>Trade terms</td></tr><tr><td>Valid</td>"
        "<td>until further notice</td></tr></table><table><tr><td>Art. no</td><td>Price</td></tr>"
        "<tr><td>1001</td><td>189.00</td></tr><tr><td>1002</td><td>199.00</td></tr></table>"
    )
    reading = read_bytes(page.encode(), "list.html")
    assert questions(reading) == []
