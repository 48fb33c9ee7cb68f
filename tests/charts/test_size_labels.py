"""Size labels: normal form, order, second axis, suggestions."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.size_labels import LabelKind, SizeLabel, read_label, read_length


def label(text: str) -> SizeLabel:
    found = read_label(text)
    assert found is not None, text
    return found


@pytest.mark.parametrize(
    ("texts", "normal"),
    [
        ("XS|xs|X-Small|X/Small|X Small|Extra Small|XSmall|x-small", "XS"),
        ("S|s|Small|SMALL|Klein|Pequeño|Mały", "S"),
        ("M|m|Medium|MD|Mittel|Mediano", "M"),
        ("L|Large|LG|Groß|Grande", "L"),
        ("XL|X-Large|X Large|Extra Large|XLarge", "XL"),
        ("2XL|XXL|2X-Large|XX/Large|XX-Large|2 XL|Extra Extra Large", "2XL"),
        ("3XL|XXXL|3X-Large|XXX Large", "3XL"),
        ("4XL|XXXXL", "4XL"),
        ("7XL|7X-Large", "7XL"),
        ("2XS|XXS|XX-Small", "2XS"),
        ("3XS|XXXS", "3XS"),
    ],
)
def test_one_normal_form_for_every_spelling_of_a_letter_size(texts: str, normal: str) -> None:
    found = {
        (label(text).kind, label(text).normal, label(text).doubtful) for text in texts.split("|")
    }
    assert found == {(LabelKind.ALPHA, normal, None)}


@pytest.mark.parametrize(
    ("text", "normal"), [("M:", "M"), ("L:", "L"), ("2XL :", "2XL"), ("38:", "38")]
)
def test_a_colon_behind_a_size_only_says_that_figures_follow(text: str, normal: str) -> None:
    assert (label(text).normal, label(text).doubtful, label(text).length) == (normal, None, None)


@pytest.mark.parametrize(
    ("text", "kind", "normal"),
    [
        ("PP", LabelKind.ALPHA, "PP"),
        ("GG", LabelKind.ALPHA, "GG"),
        ("S/M", LabelKind.COMBINED, "S/M"),
        ("ML", LabelKind.COMBINED, "M/L"),
        ("L/XL", LabelKind.COMBINED, "L/XL"),
        ("XXL/XXXL", LabelKind.COMBINED, "2XL/3XL"),
        ("Adult XL–XXXL", LabelKind.COMBINED, "XL/3XL"),
        ("34", LabelKind.NUMBER, "34"),
        ("08", LabelKind.NUMBER, "8"),
        ("0", LabelKind.NUMBER, "0"),
        ("00", LabelKind.NUMBER, "00"),
        ("10¼", LabelKind.NUMBER, "10.25"),
        ("37.5", LabelKind.NUMBER, "37.5"),
        ("5/6", LabelKind.NUMBER, "5/6"),
        ("10-12", LabelKind.NUMBER, "10-12"),
        ("6X", LabelKind.NUMBER, "6X"),
        ("EU 38", LabelKind.NUMBER, "38"),
        ("UK12", LabelKind.NUMBER, "12"),
        ("Gr. 38", LabelKind.NUMBER, "38"),
        ("36R", LabelKind.NUMBER_LENGTH, "36R"),
        ("89ST", LabelKind.NUMBER_LENGTH, "89ST"),
        ("40 extra short", LabelKind.NUMBER_LENGTH, "40 extra short"),
        ("14S +", LabelKind.NUMBER_LENGTH, "14S+"),
        ("14T -", LabelKind.NUMBER_LENGTH, "14T-"),
        ("104", LabelKind.HEIGHT, "104"),
        ("134/140", LabelKind.HEIGHT, "134/140"),
        ("165/80A", LabelKind.CODE, "165/80A"),
        ("180-94", LabelKind.CODE, "180-94"),
        ("7080/8494", LabelKind.CODE, "7080/8494"),
        ("0010", LabelKind.CODE, "0010"),
        ("24/0", LabelKind.CODE, "24/0"),
        ("14W", LabelKind.CODE, "14W"),
        ("3-4 Years", LabelKind.AGE, "3-4 years"),
        ("6-7Years", LabelKind.AGE, "6-7 years"),
        ("12 ans", LabelKind.AGE, "12 years"),
        ("6-12 Monate", LabelKind.AGE, "6-12 months"),
        ("Age 14+", LabelKind.AGE, "14+ years"),
        ("2T", LabelKind.AGE, "2T"),
        ("Frühchen", LabelKind.AGE, "newborn"),
        ("Infant", LabelKind.WORD, "infant"),
        ("Adult", LabelKind.WORD, "adult"),
        ("One Size", LabelKind.WORD, "one size"),
        ("Einheitsgröße", LabelKind.WORD, "one size"),
        ("NA", LabelKind.WORD, "NA"),
        ("None", LabelKind.WORD, "None"),
    ],
)
def test_the_kinds_of_labels(text: str, kind: LabelKind, normal: str) -> None:
    found = label(text)
    assert (found.kind, found.normal, found.doubtful) == (kind, normal, None)


@pytest.mark.parametrize(
    "rising",
    [
        "3XS|XXS|XS|S|M|L|XL|XXL|3XL|XXXXL|5XL",
        "XS|S|S/M|M|M/L|L|L/XL|XL",
        "PP|P|M|G|GG|XGG",
        "36|38|40|42|104",
        "000|00|0|2|4|10|12",
        "00 (XS)|0|2|4",
        "36S|36R|36L|38S|38R|38L",
        "5/6|7/8|9/10|11/12",
        "Youth 6-8|Youth 8-10|Youth 10-12",
        "3-6 months|6-12 months|18-24 months|2T|3T|4-5 years|6-7 years|14 years",
        "9-10 years|11-12 years|Adult S|Adult M",
        "Infant|Child|Youth|Adult",
        "Youth S|Youth M|Youth XL|Adult S|Adult M",
        "YXS|YS|YM|YL|S|M",
        "CXS|CS|CL|S",
        "152|164|XS|S",
        "92|98|104|110|116",
        "S Short|S|S Long|M Short|M|M Long",
        "165/80A|165/84A|170/88A",
        "S (6-7)|M (8-9)|L (10-12)",
        "extra short|short|regular|long|extra long",
        "88|94|98|102|106",
    ],
)
def test_labels_sort_as_their_wearers_do(rising: str) -> None:
    orders = [label(text).order for text in rising.split("|")]
    assert orders == sorted(orders)
    assert len(set(orders)) == len(orders)


def test_two_spellings_of_one_size_stand_at_the_same_place() -> None:
    assert label("XXL").order == label("2X-Large").order
    assert label("S").order == label("Adult Small").order


@pytest.mark.parametrize(
    ("text", "length"),
    [
        ("36R", "regular"),
        ("74L", "long"),
        ("6T", "tall"),
        ("6MP", "petite"),
        ("3jp", "petite"),
        ("40 extra short", "extra short"),
        ("XL Long", "long"),
        ("M/Long", "long"),
        ("L Kurz", "short"),
        ("MT", "tall"),
        ("XLT", "tall"),
        ("S", None),
        ("38", None),
    ],
)
def test_the_second_axis_in_the_label(text: str, length: str | None) -> None:
    assert label(text).length == length


@pytest.mark.parametrize(
    ("text", "normal", "also"),
    [
        ("S (6-7)", "S", ("6-7",)),
        ("00 (XS)", "00", ("XS",)),
        ("X-Large (46-49)", "XL", ("46-49",)),
        ("S (160/84A)", "S", ("160/84A",)),
        ("Small (Age 7-10)", "S", ("Age 7-10",)),
        ("38 (M)", "38", ("M",)),
        ("M/38", "M", ("38",)),
        ("L (bis 60 kg)", "L", ()),
    ],
)
def test_a_second_label_in_brackets_is_kept_beside(
    text: str, normal: str, also: tuple[str, ...]
) -> None:
    found = label(text)
    assert (found.text, found.normal, found.also) == (text, normal, also)


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("St", "S"),
        ("Sma 11", "Small"),
        ("Reqular", "Regular"),
        ("Lonq", "Long"),
        ("Meduim", "Medium"),
        ("Lagre", "Large"),
        ("170104A", "170/104A"),
        ("L1", "L"),
        ("2X", "2XL"),
        ("12-Oct", "10-12"),
    ],
)
def test_a_mistyped_label_gets_a_suggestion_and_is_not_changed(typed: str, meant: str) -> None:
    found = label(typed)
    assert (found.text, found.doubtful) == (typed, meant)


@pytest.mark.parametrize(
    "text",
    ["", "–", "?", "*", "86-91 cm", '34"', "5'4\"", "< 79", "Chest", "Brustumfang", "black",
     "Shorts", "4099990000017", "189,00", "12.99", "2027", "cm", "CM", "one two three",
     "If your waist is equal or below the number take that size"],
)  # fmt: skip
def test_what_cannot_be_a_label_is_none(text: str) -> None:
    assert read_label(text) is None


@pytest.mark.parametrize(
    ("text", "length"),
    [
        ("Short", "short"),
        ("Kurz", "short"),
        ("R", "regular"),
        ("L", "long"),
        ("XS", "extra short"),
        ("extra long", "extra long"),
        ("Lång", "long"),
        ("corto", "short"),
        ("Krótki", "short"),
        ("Petite", "petite"),
        ("Tall", "tall"),
        ("Chest", None),
    ],
)
def test_the_words_of_the_second_axis(text: str, length: str | None) -> None:
    assert read_length(text) == length


@given(
    st.integers(0, 6),
    st.sampled_from("SL"),
    st.sampled_from(["{x}{l}", "{x}-{w}", "{x} {w}", "{x}/{w}", "{n}X{l}", "{n}X-{w}", "{n}x {w}"]),
    st.booleans(),
)
def test_every_spelling_of_a_letter_size_that_is_written_is_read_back(
    count: int,
    letter: str,
    form: str,
    lower: bool,
) -> None:
    if not count:
        form = "{l}"
    word = {"S": "Small", "L": "Large"}[letter]
    text = form.format(x="X" * count, n=count, l=letter, w=word)
    found = label(text.lower() if lower else text)
    due = letter if not count else f"X{letter}" if count == 1 else f"{count}X{letter}"
    assert (found.kind, found.normal) == (LabelKind.ALPHA, due)


@given(st.integers(0, 200), st.integers(0, 200))
def test_numbers_sort_as_numbers(one: int, two: int) -> None:
    assert (label(str(one)).order < label(str(two)).order) == (one < two)


def test_a_heading_that_resembles_a_label_is_none() -> None:
    assert read_label("Klatka (cm)") is None


@pytest.mark.parametrize(("text", "meant"), [("4O", "40"), ("1O4", "104"), ("I2", "12")])
def test_a_letter_for_a_figure_is_a_slip(text: str, meant: str) -> None:
    assert label(text).doubtful == meant


@pytest.mark.parametrize("text", ["1L", "40", "0"])
def test_a_figure_with_a_length_behind_it_is_none(text: str) -> None:
    assert label(text).doubtful is None


@pytest.mark.parametrize("text", ["M/38", "M - 38", "38 / M", "38 - M"])
def test_letters_and_a_number_are_one_size_whichever_comes_first(text: str) -> None:
    assert (label(text).normal, label(text).also) == ("M", ("38",))


def test_four_digits_behind_letters_are_an_article() -> None:
    assert read_label("WL-3301") is None


def test_two_sizes_without_a_sign_between_them_are_one() -> None:
    assert label("1X2X").normal == label("1X/2X").normal == "1X/2X"


@pytest.mark.parametrize(
    ("text", "also"),
    [
        ("M / 38 / 12", ("38", "12")),
        ("12 | 38 | M", ("12", "38")),
        ("2XL / 18 / 14", ("18", "14")),
        ("M - EU 38 - UK 12", ("EU 38", "UK 12")),
    ],
)
def test_letters_between_the_numbers_of_several_countries_name_one_size(
    text: str, also: tuple[str, ...]
) -> None:
    assert label(text).also == also
    assert label(text).kind is LabelKind.ALPHA


@pytest.mark.parametrize("text", ["M-38-12", "88 / 68 / 92", "S / M / 38", "M / 1200 / 12"])
def test_codes_of_articles_and_three_girths_name_no_size(text: str) -> None:
    assert read_label(text) is None


@pytest.mark.parametrize("text", ["38 EU / 10 UK", "38 (EU) / 10 (UK)", "EU 38 / UK 10 / US 8"])
def test_numbers_of_several_countries_name_one_size_by_the_first(text: str) -> None:
    found = label(text)
    assert (found.normal, len(found.also)) == ("38", text.count("/"))


def test_a_cup_behind_a_number_is_no_country() -> None:
    assert label("80 D").kind is LabelKind.CODE
