"""Texts around a table that speak of women or men and are not its name."""

from __future__ import annotations

import pytest

from tests.charts.read_text import table
from tests.charts.test_band_names import SMALL, bands, page, web_table

ABOVE = """Women: size down; Ladies please order one size smaller; Men should choose one size up;
    Our model (woman) wears size S; Looking for women's sizes? Click here; Back to women's vests;
    Women's sizes below, men's on the next page; Damen bitte eine Nummer kleiner bestellen;
    Pour les femmes, une taille au-dessous; Femme : prenez une taille de plus;
    Dames: kies een maat kleiner; Donna: scegliere una taglia in meno; Mujer: una talla menos;
    Mulheres: um tamanho abaixo; Damer: välj en storlek mindre; Damer: vælg en størrelse mindre;
    Kobiety: o rozmiar mniejszy; Ženy: o číslo menší; Also for women; Auch für Damen;
    Women wear one size smaller; Need women's sizes?; Which jacket, also for women?;
    Women usually wear S; Women wear size 8; Size S = women's 8-10;
    So misst man richtig; Hur man mäter; Sådan måler man;
    Ce tableau donne les; La fiche de l'atelier donne des mesures en cm"""
BELOW = """Men's only in black; See men's chart; Siehe Herren; Also available: men's cut;
    Except men's sizes; Voir le guide homme; Ver tabla de hombre; Keep away from children;
    nur Damen: Brustweite über der Büste messen; Bust: for women, around the fullest part;
    Chest (men) / bust (women): around the fullest part; Hips: women only;
    Kids from 140 cm: size XS;
    Child sizes: XS-S; Damenmodell: 30 EUR Aufpreis; For men add 2 cm; Men: +2 cm;
    You may like our men's jacket Zorbo; Suitable for children"""
NAMES = """Choose your size: women; Please find our women's sizes below; Available sizes, women;
    See our women's size chart; Women's fit; Veste femme; Medidas da peça feminina;
    Taglie donna; Taglie donne; Back to school: ladies; Women's shop; Women's Wear;
    Which size is right for women?; Welche Größe passt Damen?;
    Ladies' riding wear sizes; Female Evening Wear Measurements; Prenez vos mesures - femme"""


@pytest.mark.parametrize("text", ABOVE.split(";"))
def test_what_is_said_of_women_above_a_table_does_not_name_it(text: str) -> None:
    assert bands(page(f"<h2>Vest</h2><p>{text.strip()}</p>{web_table(SMALL)}")) == [None]


@pytest.mark.parametrize("text", BELOW.split(";"))
def test_a_line_below_that_says_more_than_a_name_names_nobody(text: str) -> None:
    assert bands(table(f"{SMALL}\n{text.strip()}\n")) == [None]


@pytest.mark.parametrize("text", NAMES.split(";"))
def test_a_title_that_asks_to_read_on_names_its_table(text: str) -> None:
    assert bands(page(f"<h2>{text.strip()}</h2>{web_table(SMALL)}")) == ["women"]


def test_a_unisex_vest_stays_unisex_where_ladies_are_to_size_down() -> None:
    above = "<h2>Unisex vest</h2><p>Ladies size down</p>"
    assert bands(page(f"{above}{web_table(SMALL)}")) == ["unisex"]
    assert bands(table(f"Unisex (women order a size down)\n{SMALL}")) == ["unisex"]


@pytest.mark.parametrize("text", ["Women's cut", "Nur Damen", "Coupe femme", "Women's sizes"])
def test_a_note_that_is_nothing_but_a_name_names_the_table(text: str) -> None:
    assert bands(table(f"{SMALL}\n{text}\n")) == ["women"]


def test_links_below_to_tables_for_several_name_nobody() -> None:
    links = "<ul><li>Women's vest</li><li>Men's vest</li><li>Gloves</li></ul>"
    assert bands(page(f"<h2>Vest</h2>{web_table(SMALL)}{links}")) == [None]
    assert bands(page(f"<h2>Vest</h2>{web_table(SMALL)}<p>Women's | Men's | Help</p>")) == [None]


def test_the_name_of_a_shop_in_a_file_is_no_statement() -> None:
    assert bands(table(SMALL, "see womens also.csv")) == ["women"]
