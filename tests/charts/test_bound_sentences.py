"""Sentences that make single figures limits, in eleven languages, and those that do not.

The sentences are common ones of the languages, from memory, unchecked by native speakers.
"""

from __future__ import annotations

import pytest

from charts.schema import Dimension, Kind
from tests.charts.read_text import questions, ranges, table

SINGLES = "Size | Chest (cm) | Waist (cm)\nS | 84 | 70\nM | 90 | 76\nL | 96 | 82\n\n"
SPANS = "Size | Chest (cm)\nS | 84-90\nM | 90-96\nL | 96-102\n\n"
UPPER = [
    "Values are maximum.",
    "The figures are maximum body measurements.",
    "Measurements are the maximum for each size.",
    "The chest measurement shown is the largest chest the vest will fit.",
    "If your chest is equal to or below the number, take that size.",
    "Die Werte sind Höchstwerte.",
    "Passend bis zum angegebenen Brustumfang.",
    "Die Maße gelten bis zur angegebenen Größe.",
    "Angegeben ist jeweils der maximale Brustumfang.",
    "Si votre tour de poitrine est inférieur ou égal au chiffre, prenez cette taille.",
    "Les valeurs indiquées sont des maximums.",
    "Mesures maximales.",
    "Convient jusqu'au tour de poitrine indiqué.",
    "Passend tot de aangegeven borstomvang.",
    "De maten zijn maximale lichaamsmaten.",
    "De waarden zijn maximumwaarden.",
    "I valori indicano il massimo.",
    "Le misure indicate sono massime.",
    "Adatto fino alla misura indicata.",
    "La medida indica el máximo.",
    "Las medidas son máximas.",
    "Hasta el contorno indicado.",
    "Os valores indicam o máximo.",
    "As medidas são máximas.",
    "Måtten är maxmått.",
    "Måtten anger största mått.",
    "Passar upp till angivet mått.",
    "Målene er maksimumsmål.",
    "Passer op til det angivne mål.",
    "Podane wymiary są maksymalne.",
    "Wartości maksymalne.",
    "Pasuje do podanego obwodu.",
    "Uvedené míry jsou maximální.",
    "Maximální hodnoty.",
    "Uvedené rozměry jsou maximální.",
    "Mitat ovat enimmäismittoja.",
    "Das Maß gibt die Obergrenze der Größe an.",
    "Les chiffres sont des limites supérieures.",
    "De maten zijn bovengrenzen.",
    "Podane wymiary są górną granicą.",
    "Choose the size whose chest is at least your own.",
    "Wählen Sie die Größe, deren Brustumfang mindestens Ihrem eigenen entspricht.",
    "If your chest is larger than the figure, take the next size up.",
]
LOWER = [
    "The figures are minimum measurements.",
    "Die Werte sind Mindestmaße.",
    "Les valeurs indiquées sont des minimums.",
    "I valori indicano il minimo.",
    "La medida indica el mínimo.",
    "Måtten är minimimått.",
    "De waarden zijn minimumwaarden.",
    "Podane wymiary są minimalne.",
    "Mitat ovat vähimmäismittoja.",
    "De maten zijn ondergrenzen.",
    "Uvedené míry jsou dolní hranicí.",
]
LOWER_CHEST = [
    "Pick the largest size that does not exceed your chest.",
    "Choose the size whose chest is at most your own.",
    "Your chest must be at least the figure.",
]
NEITHER = [
    "Maximum rider weight 110 kg.",
    "All measurements in cm.",
    "Measure around the fullest part of the chest.",
    "Choose your size by chest.",
    "Wash at max. 30 degrees.",
    "Vest fits snugly.",
    "Alle Maße in cm.",
    "Maximale Belastung 120 kg",
    "Toutes les mesures en cm",
    "Pour un ajustement au plus près du corps.",
    "Delivery up to 5 days.",
    "Deliver within at most 3 weeks.",
    "Available up to size XXL.",
    "Measurements may vary up to 2 cm.",
    "Tolerance up to 1 cm.",
    "Maße können bis zu 2 cm abweichen.",
    "Le misure possono variare fino a 2 cm.",
    "In stock in sizes up to 4XL.",
    "Sizes run large.",
    "Medir desde la parte superior de la cabeza hasta la base de los pies.",
    "Measure from the crotch up to the waist.",
    "Mesurez du sol jusqu'à la taille.",
    "Vom Boden bis zum Schritt messen.",
    "For maximum comfort choose your chest size.",
    "Measurements were taken over your clothes.",
    "The figures are not maximum values.",
    "Die Maße sind keine Höchstmaße.",
    "Measure at least twice around your chest.",
    "If the chest figure is larger than your chest, choose the smaller size.",
]
BETWEEN = [
    "Choose the next size up if you are between two sizes.",
    "If between sizes, take the larger.",
    "Bei Zwischengrößen die nächstgrößere wählen.",
    "Liegt Ihr Maß zwischen zwei Größen, wählen Sie die größere.",
    "Entre deux tailles, choisissez la plus grande.",
    "Zit u tussen twee maten, kies dan de grotere maat.",
    "Se siete tra due taglie, scegliete la più grande.",
    "Si está entre dos tallas, elija la mayor.",
    "Se estiver entre dois tamanhos, escolha o maior.",
    "Ligger du mellan två storlekar, välj den större.",
    "Ligger du mellem to størrelser, vælg den største.",
    "Er du mellom to størrelser, velg den største.",
    "Jeśli jesteś między rozmiarami, wybierz większy.",
    "Pokud jste mezi dvěma velikostmi, zvolte větší.",
    "If you are between two sizes, choose the smaller.",
    "Bei Zwischengrößen die kleinere wählen.",
]


def kinds(sentence: str) -> set[Kind]:
    return {one.kind for one in ranges(table(f"Vest sizes\n{SINGLES}{sentence}"))}


@pytest.mark.parametrize("sentence", UPPER)
def test_a_sentence_makes_single_figures_upper_limits(sentence: str) -> None:
    assert Kind.AT_MOST in kinds(sentence)


@pytest.mark.parametrize("sentence", LOWER)
def test_a_sentence_makes_single_figures_lower_limits(sentence: str) -> None:
    assert kinds(sentence) == {Kind.AT_LEAST}


@pytest.mark.parametrize("sentence", NEITHER)
def test_a_limit_of_something_else_changes_no_figure(sentence: str) -> None:
    reading = table(f"Vest sizes\n{SINGLES}{sentence}")
    assert kinds(sentence) == {Kind.SINGLE}
    assert questions(reading) == []


@pytest.mark.parametrize("sentence", BETWEEN)
def test_what_a_body_between_two_sizes_takes_says_nothing_of_the_figures(sentence: str) -> None:
    reading = table(f"Vest sizes\n{SINGLES}{sentence}")
    assert kinds(sentence) == {Kind.SINGLE}
    assert questions(reading) == []


@pytest.mark.parametrize("sentence", BETWEEN[:3])
def test_ranges_need_no_such_sentence(sentence: str) -> None:
    assert questions(table(f"{SPANS}{sentence}")) == []


@pytest.mark.parametrize(
    "words",
    ["Tableau des tailles 84 à 96", "Größen 84 bis 96 im Überblick", "Maten 84 tot 96",
     "Tabla de tallas 84 hasta 96", "Rozmiary 84 do 96"],
)  # fmt: skip
def test_a_span_of_sizes_in_a_title_is_no_limit(words: str) -> None:
    found = ranges(table(f"{words}\n{SINGLES}"))
    assert {one.kind for one in found} == {Kind.SINGLE}


@pytest.mark.parametrize(
    "sentence",
    ["Wymiary podane gdy gorset jest związany na minimum.",
     "Measurements taken laced to the minimum.",
     "The figures are given with the straps adjusted to the maximum.",
     "Mesures prises avec le corset serré au maximum.", "Die Maße gelten auf Minimum geschnürt.",
     "Las medidas son con las correas ajustadas al mínimo."],
)  # fmt: skip
def test_how_far_a_garment_is_laced_for_measuring_is_no_limit(sentence: str) -> None:
    found = ranges(table(f"Vest sizes\n{SINGLES}{sentence}"))
    assert {one.kind for one in found} == {Kind.SINGLE}


def test_what_a_garment_adjusts_to_is_a_limit_still() -> None:
    found = ranges(table(f"Vest sizes\n{SINGLES}The vests adjust up to the values shown."))
    assert {one.kind for one in found} == {Kind.AT_MOST}


@pytest.mark.parametrize("sentence", LOWER_CHEST)
def test_a_figure_below_the_wearers_own_is_a_lower_limit(sentence: str) -> None:
    found = ranges(table(f"Vest sizes\n{SINGLES}{sentence}"))
    chests = {one.kind for one in found if one.dimension is Dimension.CHEST}
    assert chests == {Kind.AT_LEAST}


@pytest.mark.parametrize(
    ("sentence", "chest", "weight"),
    [
        ("Mesures maximales en cm ; poids maximal en kg", Kind.AT_MOST, Kind.AT_MOST),
        ("maximale maten in cm, min. gewicht in kg", Kind.AT_MOST, Kind.AT_LEAST),
        ("Minimum measurements in cm, maximum weight in kg", Kind.AT_LEAST, Kind.AT_MOST),
    ],
)
def test_each_clause_bounds_its_own_measures(sentence: str, chest: Kind, weight: Kind) -> None:
    sizes = "Size | Chest (cm) | Weight (kg)\nS | 88 | 60\nM | 96 | 75\nL | 104 | 90"
    found = ranges(table(f"{sizes}\n{sentence}"))
    kinds_of = {one.dimension: one.kind for one in found}
    assert kinds_of == {Dimension.CHEST: chest, Dimension.WEIGHT: weight}
