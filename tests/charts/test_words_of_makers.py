"""How makers head their columns: new words, words cut short, slips of typing, words spelled out.

Every word of the vocabulary is tried in ``test_vocabulary``; here stand the classes. The words are
common words of the languages, from memory, unchecked by native speakers.
"""

from __future__ import annotations

import pytest

from charts.dimensions import Role, read_heading
from charts.headings.near import near_headings
from charts.schema import Dimension
from tests.charts.read_text import questions, ranges, table

SHORT = {
    Dimension.CHEST: """Brustumf.; Tour poitr.; T. poitrine; Circ. torace; C. pecho; Obv. hrudi;
        Obw. kl. piersiowej; chest circ.""",
    Dimension.WAIST: "Taillenumf. (cm); Cont. cint.; Circ. vita; Tr. de taille; Obw. pasa",
    Dimension.HIP: "Hüftumf. in cm; T. hanches; Obv. boků; Circ. fianchi",
    Dimension.BACK_LENGTH: "Rückenl.; dł. pleców; Lungh. schiena; Rückenlg.",
    Dimension.WEIGHT: "Gew.; Peso corp.",
    Dimension.INSEAM: "Schrittl.; dł. nogawki",
    Dimension.ARM_LENGTH: "L. manche; dl. rukávu",
}
FOUND = {
    Dimension.CHEST: "périmètre thoracique; borstkasomtrek; overvidde; obvod poprsí; rider chest",
    Dimension.WAIST: "livvidde; Hosenbund; broekwijdte; obvod talie; waistline; Pas (cm)",
    Dimension.HIP: "glúteos; säte; bekken; obvod hýždí; pośladki",
    Dimension.BACK_LENGTH: "C7 à coccyx; délka páteře; rughoogte; ryggens längd; neck to tailbone",
    Dimension.NECK: "Kragenumfang; boordmaat; halsomkreds; obvod límce",
    Dimension.INSEAM: """grenlängd; inderben; vnitřní šev; Beininnenlänge; interior da perna;
        inside seem length""",
    Dimension.UNDERBUST: "underbystvidd; podprsí; abaixo do peito; onderwijdte",
    Dimension.SHOULDER_BREADTH: "axelvidd; šíře ramen; barki; Schulterweite",
}
SPELLED_OUT = {
    "Rückenlaenge": Dimension.BACK_LENGTH,
    "Koerpergrösse": Dimension.HEIGHT,
    "BRUST UMFANG": Dimension.CHEST,
}


def by_word(
    lists: dict[Dimension, str],
) -> list[tuple[Dimension, str]]:
    return [(due, word.strip()) for due, words in lists.items() for word in words.split(";")]


@pytest.mark.parametrize(("due", "word"), by_word(SHORT))
def test_words_cut_short_with_a_full_stop_are_made_whole(due: Dimension, word: str) -> None:
    assert read_heading(word).dimension is due


@pytest.mark.parametrize("word", ["B.", "T.", "C."])
def test_a_letter_that_may_be_many_words_is_none_of_them(word: str) -> None:
    assert read_heading(word).role is Role.UNKNOWN


@pytest.mark.parametrize(("due", "word"), by_word(FOUND))
def test_a_word_of_the_trade_is_found(due: Dimension, word: str) -> None:
    assert read_heading(word).dimension is due


@pytest.mark.parametrize(("word", "due"), SPELLED_OUT.items())
def test_spelled_out_dots_within_a_word_are_no_hindrance(word: str, due: Dimension) -> None:
    assert read_heading(word).dimension is due


@pytest.mark.parametrize(
    ("word", "near"),
    [
        ("Chest measuremnet", "chest measurement"),
        ("max chesst", "chest"),
        ("collr size", "collar size"),
        ("heigth range", "height range"),
        ("délka zaadního dílu", "délka zadního dílu"),
        ("Nacken bis Tailel", "Nacken bis Taille"),
    ],
)
def test_a_slip_beside_known_words_is_offered_and_not_taken_as_what_stands_beside(
    word: str, near: str
) -> None:
    heading = read_heading(word)
    assert heading.role is Role.UNKNOWN
    offered = near_headings(heading)
    assert offered, word
    first = near.split(maxsplit=1)[0]
    assert any(one.startswith(first) for one in offered), offered


@pytest.mark.parametrize(
    "heading", ["Chest measure", "Wymiar klatki piersiowej", "Misura torace", "Medida do peito"]
)
def test_a_word_for_measure_beside_a_chest_leaves_it_a_chest(heading: str) -> None:
    reading = table(f"Size | {heading} (cm)\nS | 86-92\nM | 92-98\nL | 98-104")
    assert {one.dimension for one in ranges(reading)} == {Dimension.CHEST}


def test_a_belly_is_asked_about_waist_or_something_else() -> None:
    reading = table("Size | Chest (cm) | Belly (cm)\nS | 86 | 76\nM | 92 | 82\nL | 98 | 88")
    assert questions(reading) == ["heading-two-readings"]


@pytest.mark.parametrize("heading", ["Länge Rückenteil Mitte", "Aarm lengte", "Longueur milieu"])
def test_a_length_of_something_unknown_is_asked_about_where_no_back_is_given(heading: str) -> None:
    reading = table(f"Size | Chest (cm) | {heading} (cm)\nS | 86 | 40\nM | 92 | 42\nL | 98 | 44")
    assert len(questions(reading)) == 1


def test_beside_a_back_length_such_a_length_is_its_own() -> None:
    text = "Size | Chest (cm) | Back length (cm) | Länge Reißverschluss (cm)\n"
    reading = table(text + "S | 86 | 40 | 41\nM | 92 | 42 | 43\nL | 98 | 44 | 45")
    assert questions(reading) == []
