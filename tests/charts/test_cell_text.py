"""The text of a cell is made plain before it is read."""

from __future__ import annotations

import pytest

from charts.cell_text import clean


@pytest.mark.parametrize(
    ("text", "plain"),
    [
        ("&lt; 79&nbsp;cm", "< 79 cm"),
        ("&amp;frac12;", "1/2"),
        ("34½", "34 1/2"),
        ("34&frac12;–36", "34 1/2-36"),
        ("34<sup>1</sup>/<sub>2</sub>", "34 1/2"),
        ("34 <SUP>1</SUP>&frasl;<SUB>2</SUB>", "34 1/2"),
        ("34¹⁄₂", "34 1/2"),
        ("34 1⁄2", "34 1/2"),
        ("L<sup>1</sup>", "L"),
        ("35<sup>1/2</sup>", "35 1/2"),
        ('34-36"<br>86-91cm', '34-36"\n86-91cm'),
        ("34-36 <br /> 86-91", "34-36\n86-91"),
        ("  38\u00a0–\u200940 ", "38 - 40"),
        ("82\u200b-\u200b86", "82-86"),
        ("5’4”", "5'4\""),
        ("5′4″", "5'4\""),
        ("38''", '38"'),
        ("length***", "length"),
        ("L¹", "L"),
        ("(35-36)", "35-36"),
        ("(a) (b)", "(a) (b)"),
        ("GrÃ¶ÃŸe", "Größe"),
        ("82â€“86", "82-86"),
        ("34Â½", "34 1/2"),
        ("Ru\u0308ckenla\u0308nge", "Rückenlänge"),
        ("170～180cm", "170~180cm"),
        ("８６〜９１", "86~91"),
        ("（ｃｍ）", "cm"),
        ("胸囲【㎝】", "胸囲[cm]"),
        ("体重（㎏）：５０", "体重(kg):50"),
        ("86ー91", "86-91"),
        ("ロング", "ロング"),
        ("ｳｴｽﾄ", "ウエスト"),
        ("〜90", "\u205390"),
        ("90～", "90\u2053"),
        ("~90", "~90"),
        ("86\r\n91", "86\n91"),
    ],
)
def test_a_cell_is_made_plain(text: str, plain: str) -> None:
    assert clean(text) == plain


@pytest.mark.parametrize(
    "dash", "\u2010\u2011\u2012\u2013\u2014\u2015\u2212\x96", ids=lambda dash: f"{ord(dash):04x}"
)
def test_every_dash_becomes_a_hyphen(dash: str) -> None:
    assert clean(f"82{dash}86") == "82-86"


def test_a_text_longer_than_a_cell_is_cut() -> None:
    assert len(clean("a" * 5000)) == 2000


@pytest.mark.parametrize(
    "text", ["34-36", "86 - 91 cm", "5'4\"", "S/M", "X-Large", "< 79 cm", "~82"]
)
def test_what_is_plain_already_stays_as_it_is(text: str) -> None:
    assert clean(text) == text


def test_the_mark_of_a_note_goes_before_a_word_as_behind_it() -> None:
    assert [clean(text) for text in ("*XL", "XL*", "† 84-88 cm", "* *")] == [
        "XL",
        "XL",
        "84-88 cm",
        "",
    ]
