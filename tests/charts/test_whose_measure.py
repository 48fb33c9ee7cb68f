"""Whose measure a column gives, where a title and a heading say different things."""

from __future__ import annotations

from datetime import date
from typing import Final

import pytest

from charts.choices import answers, choices
from charts.dimensions import read_heading
from charts.headings.whose import whose
from charts.importer import read_bytes
from charts.quantities import Unit
from charts.schema import Basis, Dimension
from tests.charts.read_text import asked_at, questions, ranges, table

SIZES = "S;84\nM;90\nL;96\n"
HALVES = "S;48\nM;51\nL;54\n"


def basis(title: str, heading: str, sizes: str = SIZES) -> Basis:
    reading = read_bytes(f"{title}\n{heading}\n{sizes}".encode(), "chart.csv")
    return reading.charts[0].sizes[0].ranges[0].basis


@pytest.mark.parametrize(
    ("title", "heading"),
    [
        ("Finished garment measurements in cm", "Size;Chest girth"),
        ("Fertigmaße in cm", "Größe;Brustumfang"),
        ("Mesures du vêtement fini, en cm", "Taille;Tour de poitrine"),
        ("Medidas de la prenda en cm", "Talla;Contorno de pecho"),
        ("Wymiary odzieży w cm", "Rozmiar;Obwód klatki"),
    ],
)
def test_a_title_of_the_garment_beats_a_heading_that_only_says_girth(
    title: str, heading: str
) -> None:
    assert basis(title, heading) is Basis.FINISHED


def test_a_title_of_the_body_is_believed_even_when_it_names_the_vest() -> None:
    title = "Body dimensions for sizes of the vest, in cm"
    assert basis(title, "Size;Chest circumference") is Basis.BODY


def test_a_heading_that_names_the_body_itself_stands() -> None:
    assert basis("Finished garment measurements in cm", "Size;To fit chest") is Basis.BODY


def test_a_tolerance_in_brackets_does_not_silence_the_words_around_it() -> None:
    title = "Misure del capo steso in cm (tolleranza di produzione indicata)"
    assert basis(title, "Taglia;Larghezza torace", HALVES) is Basis.FLAT
    assert basis("Tolerance 1 cm laid flat", "Size;Chest", HALVES) is Basis.UNKNOWN


@pytest.mark.parametrize(
    ("sentence", "due"),
    [
        ("Measurements are of the garment and may vary by ±1 cm.", Basis.FINISHED),
        ("Die Maße sind Fertigmaße, Toleranz 1 cm.", Basis.FINISHED),
        ("Mesures du vêtement, avec une tolérance de 1 cm.", Basis.FINISHED),
        ("Vests are made within 1 cm of what is ordered.", Basis.UNKNOWN),
    ],
)
def test_what_a_sentence_says_before_its_tolerance_counts(sentence: str, due: Basis) -> None:
    page = "<table><tr><td>Size<td>Chest (cm)<tr><td>S<td>96<tr><td>M<td>102"
    reading = read_bytes(f"{page}</table><p>{sentence}</p>".encode(), "chart.html")
    assert {one.basis for one in ranges(reading)} == {due}


# Common words of eleven languages, from memory, unchecked by native speakers.
PHRASES = {
    "finished": """
        Garment measurements in cm; Product measurements; Finished garment measurements;
        All measurements are of the garment; Measurements are of the finished vest;
        Fertigmaße in cm; Maße am fertigen Teil; Kleidungsmaße; Maße des Kleidungsstücks;
        Produktmaße (cm); Mesures du vêtement; Mesures produit fini en cm;
        Dimensions du gilet fini; Maten van het kledingstuk; Productmaten in cm;
        Misure del capo; Misure del capo finito (cm); Medidas de la prenda;
        Medidas del producto terminado; Medidas da peça; Medidas da peça pronta (cm);
        Plaggets mått; Plaggmått i cm; Mått på plagget; Plagmål; Plaggmål i cm; Tøjets mål;
        Wymiary produktu; Wymiary gotowego wyrobu; Rozměry oděvu; Rozměry výrobku v cm;
        All measurements are garment measurements, not body measurements.;
        All garments are measured individually to help you compare.;
        Please check the garment measurements before you order.;
        Die Maße sind Fertigmaße, keine Körpermaße.;
        Les mesures indiquées sont celles du vêtement fini.""",
    "flat": """
        Laid flat; Measured laid flat, pit to pit; à plat; Mesures prises à plat; in piano;
        Misure prese in piano; en plano; Medidas de la prenda en plano; na płasko;
        Wymiary mierzone na płasko; naplocho; plat gemeten; Plat liggend gemeten;
        flach liegend gemessen; liggande plant; fladt; seam to seam;
        Measured with the garment lying flat.; Peça esticada sobre superfície plana""",
    "body": """
        Body measurements; To fit; Körpermaße in cm; Körpermaße, keine Fertigmaße;
        Mensurations en cm; Mesures prises sur le corps; Lichaamsmaten; Kroppsmått; Kropsmål;
        Misure del corpo; Medidas corporales; Medidas do corpo; Wymiary ciała; Tělesné míry;
        These are body measurements, not garment measurements.; Size chart to fit body (cm);
        Measurements of the wearer; Not garment measurements""",
    "open": """
        Measure a jacket you own laid flat and compare.;
        Measure a jacket that fits you and compare with the figures.;
        Messen Sie eine gut passende Jacke flach liegend.;
        Mesurez un vêtement à plat qui vous va.; Kledingmaten in cm;
        Misura un capo in piano che già possiedi.; Body and garment measurements""",
    "none": """
        Size chart; Keep the tape flat.; Choose the size that fits you.; All sizes in cm;
        Größentabelle; Guide des tailles; Measure around the chest.; Maattabel; Vest 3;
        Tabla de tallas""",
}


@pytest.mark.parametrize(
    ("due", "text"),
    [(due, text.strip()) for due, texts in PHRASES.items() for text in texts.split(";")],
)
def test_a_title_or_a_sentence_says_whose_measures_follow(due: str, text: str) -> None:
    said = whose(text)
    found = "open" if said.open else said.basis.value
    assert found == ("unknown" if due == "none" else due)


@pytest.mark.parametrize(
    ("title", "heading", "figures"),
    [
        ("Finished garment measurements in cm", "To fit chest", (104, 110, 116)),
        ("Body measurements in cm", "Pit to pit", (50, 53, 56)),
        ("Kledingmaten in cm", "Borstomtrek", (104, 110, 116)),
        ("Measure a jacket you own laid flat and compare. All in cm.", "Chest", (104, 110, 116)),
        ("Garment measurements in cm. Choose by your body measurements.", "Chest", (104, 110, 116)),
    ],
)
def test_words_that_contradict_a_heading_or_each_other_are_asked_about_once(
    title: str, heading: str, figures: tuple[int, ...]
) -> None:
    rows = "\n".join(f"{size} | {n}" for size, n in zip("SML", figures, strict=True))
    reading = table(f"{title}\n\nSize | {heading}\n{rows}")
    assert questions(reading) == ["basis-doubtful"]
    assert len(asked_at(reading, "basis-doubtful")) == 3


def test_an_answer_closes_the_question_of_contradicting_words() -> None:
    text = "Finished garment measurements in cm\nSize;To fit chest\nS;104\nM;110\nL;116\n"
    before = read_bytes(text.encode(), "chart.csv")
    (asked,) = before.findings
    act = next(one for one in choices(asked, before) if one.code == Basis.FINISHED.value)
    after = read_bytes(text.encode(), "chart.csv", answers=answers(act, asked, "A", date.min))
    assert {value.basis for value in ranges(after)} == {Basis.FINISHED}
    assert all(finding.settled for finding in after.findings)


def test_two_headings_that_say_what_each_gives_are_not_asked_about() -> None:
    text = "Garment measurements in cm\n\nSize | To fit chest | Finished chest"
    reading = table(text + "\nS | 86 | 104\nM | 92 | 110\nL | 98 | 116")
    assert questions(reading) == []
    assert [one.basis for one in ranges(reading)[:2]] == [Basis.BODY, Basis.FINISHED]


def test_the_making_of_a_vest_is_not_what_its_figures_are() -> None:
    note = "Tolerances. All finished dimensions shall be within 1/4 inch."
    reading = table(f"Body dimensions in cm\n\nSize | Chest\nS | 86\nM | 92\nL | 98\n\n{note}")
    assert questions(reading) == []
    assert ranges(reading)[0].basis is Basis.BODY


@pytest.mark.parametrize(
    ("heading", "due"),
    [
        ("Taillenumfang am fertigen Teil", Basis.FINISHED),
        ("Bröst plaggmått", Basis.FINISHED),
        ("Talia gotowego wyrobu", Basis.FINISHED),
        ("Poitrine (à plat)", Basis.FLAT),
        ("Pecho (medida corporal)", Basis.BODY),
    ],
)
def test_the_same_phrases_say_it_in_a_heading(heading: str, due: Basis) -> None:
    assert read_heading(heading).basis is due


def test_a_waist_in_polish_and_czech_is_no_step_of_a_french_pattern() -> None:
    reading = table("Velikost | Hrudník (cm) | Pas\nS | 86 | 70\nM | 92 | 76\nL | 98 | 82")
    assert [one.dimension for one in ranges(reading)[:2]] == [Dimension.CHEST, Dimension.WAIST]


def test_what_one_table_says_of_all_measures_holds_for_the_next_one() -> None:
    page = (
        "# Vests\n\n## Women\n\n| Size | Bust (cm) |\n|---|---|\n| S | 86-89 |\n| M | 90-93 |\n\n"
        "All measures are those of the body, not of the garment.\n\n"
        "## Men\n\n| Size | Bust (cm) |\n|---|---|\n| S | 90-93 |\n| M | 94-97 |\n"
    )
    reading = read_bytes(page.encode(), "a.md")
    assert [value.basis for value in ranges(reading)] == [Basis.BODY] * 4
    assert questions(reading) == []


def test_what_one_table_says_of_itself_holds_for_no_other() -> None:
    page = (
        "## Women\n\n| Size | Bust (cm) |\n|---|---|\n| S | 86-89 |\n| M | 90-93 |\n\n"
        "These are measures of the body, not of the garment.\n\n"
        "## Men\n\n| Size | Bust (cm) |\n|---|---|\n| S | 90-93 |\n| M | 94-97 |\n"
    )
    bases = [value.basis for value in ranges(read_bytes(page.encode(), "a.md"))]
    assert bases == [Basis.BODY, Basis.BODY, Basis.UNKNOWN, Basis.UNKNOWN]


@pytest.mark.parametrize("note", ["Alle mål i cm", "Mått i cm", "Girths in cm"])
def test_a_word_for_measure_is_no_word_for_the_body(note: str) -> None:
    reading = table(f"{note}\n\nSize | Hips\nS | 92\nM | 96\nL | 100")
    assert {one.basis for one in ranges(reading)} == {Basis.UNKNOWN}


GARMENT = """
Taglia | S | M | L
CM larghezza spalle | 44 | 45 | 46
CM circonferenza torace | 103 | 107 | 111
CM lunghezza capo | 75 | 77 | 79
CM lunghezza manica | 62 | 65 | 66
"""


def test_a_girth_beside_shoulders_sleeves_and_a_length_may_be_the_garments() -> None:
    reading = table(GARMENT)
    chests = [value for value in ranges(reading) if value.dimension is Dimension.CHEST]
    assert {value.basis for value in chests} == {Basis.UNKNOWN}
    assert {value.place for value in chests} <= set(asked_at(reading, "basis-doubtful"))


def test_beside_a_height_the_same_girth_is_asked_about_and_without_the_garments_the_bodys() -> None:
    reading = table(GARMENT + "CM statura | 165 | 170 | 175\n")
    chests = [value for value in ranges(reading) if value.dimension is Dimension.CHEST]
    assert {value.place for value in chests} <= set(asked_at(reading, "basis-doubtful"))
    bodies = GARMENT.replace("CM lunghezza capo | 75 | 77 | 79\n", "")
    reading = table(bodies + "CM statura | 165 | 170 | 175\n")
    chests = [value for value in ranges(reading) if value.dimension is Dimension.CHEST]
    assert {value.basis for value in chests} == {Basis.BODY}


def test_a_sentence_gives_the_unit_of_widths_that_are_halves() -> None:
    reading = read_bytes(
        b"<p>All measurements are in inches. Garments are measured flat from armpit to armpit.</p>"
        b"<table><tr><th>Size</th><th>S</th><th>M</th></tr>"
        b"<tr><td>Chest Width</td><td>18.5</td><td>20.5</td></tr></table>",
        "a.html",
    )
    assert [(value.basis, value.published_unit) for value in ranges(reading)] == [
        (Basis.FLAT, Unit.IN),
        (Basis.FLAT, Unit.IN),
    ]
    assert questions(reading) == []


@pytest.mark.parametrize(
    "note",
    [
        "Prüfe vor dem Verkauf die tatsächlichen Produktmaße.",
        "Please check the actual garment measurements before you order.",
        "Vérifiez les mesures réelles du vêtement.",
    ],
)
def test_actual_measures_that_are_to_be_looked_up_stand_elsewhere(note: str) -> None:
    assert basis(note, "Size;Chest") is Basis.UNKNOWN


def test_a_chart_of_garment_sizes_says_nothing_of_whose_measures_they_are() -> None:
    assert basis("Women's garment sizing chart", "Size;Bust (cm)") is Basis.UNKNOWN
    assert basis("Women's garment measurements", "Size;Bust (cm)") is Basis.FINISHED


def test_an_unknown_word_beside_a_measure_is_asked_about_and_makes_it_no_other_measure() -> None:
    reading = table("Size | Chest Width (1 inch below AH) (in)\nJS | 18.75\nJM | 20\nJL | 21.25\n")
    assert {value.dimension for value in ranges(reading)} == {Dimension.CHEST}
    assert "heading-two-readings" in questions(reading)


def test_two_measures_and_an_unknown_word_in_one_heading_are_asked_about() -> None:
    text = "Størrelse | Kropslængde u.arm til sk. (cm)\nS | 35\nM | 36\nL | 37\n"
    assert questions(table(text)) == ["heading-two-readings"]


@pytest.mark.parametrize(
    "text",
    [
        "The chest is the girth of the hoodie itself.",
        "All measurements are of the garment itself",
        "Brustumfang ist der Umfang des Kleidungsstücks selbst.",
        "Die Maße des Pullovers selbst",
        "Borstomvang is de omtrek van de sweater zelf, gemeten net onder de oksels.",
        "Le tour de poitrine est celui du vêtement lui-même.",
        "El contorno es el de la prenda misma.",
        "La circonferenza del capo stesso",
        "O contorno é da própria peça",
        "Bröstvidden är måttet på själva plagget",
        "Mål af selve trøjen",
        "Obwód samej bluzy",
        "Obvod samotné mikiny",
    ],
)
def test_measures_of_the_garment_itself_are_finished(text: str) -> None:
    assert whose(text).basis is Basis.FINISHED


def test_a_garment_itself_beside_no_measure_says_nothing() -> None:
    assert whose("The colour of the product itself may vary.").basis is Basis.UNKNOWN


def test_a_denied_garment_itself_is_the_body() -> None:
    said = whose("Not the girth of the garment itself but of the wearer")
    assert said.basis is Basis.BODY


SPECIFICATIONS: Final = """Specifications,,,
Stretch Slim Fits,,,
Size (cm),6,8,10
Bust,91,96,101
Waist,76,81,86
,,,
To Fit Guide,,,
Size (cm),6,8,10
Bust,81,86,91
Waist,71,76,81
"""


@pytest.mark.parametrize("name", ["guide.csv", "to_fit_guide.csv"])
def test_beside_a_table_to_fit_another_one_is_asked_about(name: str) -> None:
    reading = read_bytes(SPECIFICATIONS.encode(), name)
    first, second = reading.charts
    doubtful = {one.id for one in reading.findings if one.code == "basis-doubtful"}
    assert doubtful
    for size in first.sizes:
        assert all(doubtful & set(one.findings) for one in size.ranges)
    for size in second.sizes:
        assert {one.basis for one in size.ranges} == {Basis.BODY}
        assert not any(doubtful & set(one.findings) for one in size.ranges)


def test_body_protectors_are_what_is_sold_and_say_nothing_of_the_other_table() -> None:
    text = SPECIFICATIONS.replace("To Fit Guide", "Body protectors")
    reading = read_bytes(text.encode(), "vests.csv")
    assert "basis-doubtful" not in [one.code for one in reading.findings]
    bases = {one.basis for chart in reading.charts for size in chart.sizes for one in size.ranges}
    assert bases == {Basis.UNKNOWN}


def test_a_cut_that_is_called_a_fit_says_nothing_of_the_body() -> None:
    text = "Stretch Slim Fits,,\nSize (cm),S,M\nBust,91,96\nWaist,76,81\n"
    (chart,) = read_bytes(text.encode(), "cut.csv").charts
    assert {one.basis for size in chart.sizes for one in size.ranges} == {Basis.UNKNOWN}


def test_measure_your_body_makes_no_breadth_of_a_shirt_the_bodys() -> None:
    text = (
        "Meça seu corpo e compare com a tabela.\n"
        "Tamanho|Busto (cm)|Largura (cm)\nP|84-88|49\nM|88-96|52\nG|96-104|56\n"
    )
    (chart,) = read_bytes(text.encode(), "camisetas.txt").charts
    bases = {one.dimension: one.basis for size in chart.sizes for one in size.ranges}
    assert bases[Dimension.CHEST] is Basis.BODY
    assert bases[Dimension.OTHER] is not Basis.BODY


@pytest.mark.parametrize("heading", ["Longueur", "Longitud", "Comprimento", "Lunghezza", "Largo"])
def test_a_length_that_nothing_is_measured_by_is_not_asked_whose_it_is(heading: str) -> None:
    reading = table(f"EU | UK | {heading} (cm)\n38 | 5 | 24.2\n39 | 6 | 24.9\n40 | 6.5 | 25.5")
    assert questions(reading) == []


@pytest.mark.parametrize("heading", ["Largeur", "Ancho", "Largura", "Larghezza"])
def test_a_breadth_without_a_name_is_asked_whose_it_is(heading: str) -> None:
    reading = table(f"EU | {heading} (cm)\nS | 49\nM | 52\nL | 55")
    assert "basis-doubtful" in questions(reading)


@pytest.mark.parametrize(
    ("text", "basis", "sign"),
    [
        ("Plaggets bröstmått", Basis.FINISHED, True),
        ("Tøjets brystmål", Basis.FINISHED, True),
        ("Produktens bröstmått", Basis.BODY, True),
        ("Brustumfang (Produkt)", Basis.BODY, True),
        ("Torace prodotto", Basis.UNKNOWN, True),
    ],
)
def test_the_garment_s_own_in_other_cases_is_a_sign(text: str, basis: Basis, sign: bool) -> None:
    reading = read_heading(text)
    assert (reading.basis, reading.garment_sign) == (basis, sign)


@pytest.mark.parametrize(
    ("text", "basis", "open_"),
    [
        ("Chest measured flat and doubled", Basis.FINISHED, False),
        ("flach liegend gemessen, verdoppelt", Basis.FINISHED, False),
        ("laid flat, not doubled", Basis.FLAT, False),
        ("Vest laid flat, width x2", Basis.UNKNOWN, True),
        ("Misure del capo steso ×2", Basis.UNKNOWN, True),
    ],
)
def test_what_lies_flat_may_have_been_doubled(text: str, basis: Basis, open_: bool) -> None:
    assert whose(text) == (basis, open_)


@pytest.mark.parametrize(
    ("title", "own", "made"),
    [
        ("Garment measurements (cm)", "Your chest girth", "Finished garment chest"),
        ("Розміри виробу (см)", "Ваш обхват грудей", "Обхват грудей виробу"),
    ],
)
def test_a_title_of_the_garment_speaks_of_the_column_that_is_headed_so(
    title: str, own: str, made: str
) -> None:
    rows = "S;84-92;108\nM;93-100;114\nL;101-110;122\n"
    reading = read_bytes(f"{title}\nSize;{own};{made}\n{rows}".encode(), "chart.csv")
    bases = {str(one.place)[0]: one.basis for one in ranges(reading)}
    assert bases == {"B": Basis.BODY, "C": Basis.FINISHED}
    assert not questions(reading)


@pytest.mark.parametrize(
    "text",
    [
        "Maß | S | M | L | Tol.\nBrustumfang (cm) | 96 | 102 | 108 | ± 1",
        "Taille | Tour de poitrine (cm) | Tolérance\nS | 96 | ± 1\nM | 102 | ± 1\nL | 108 | ± 1",
    ],
)
def test_a_girth_with_a_tolerance_is_no_bodys_whatever_it_is_called(text: str) -> None:
    assert {one.basis for one in ranges(table(text))} == {Basis.FINISHED}


def test_a_column_that_says_body_stays_the_bodys_beside_a_tolerance() -> None:
    reading = table(
        "Größe | Körpermaß Brustumfang (cm) | Brustumfang Weste (cm) | Toleranz\n"
        "S | 88 | 98 | ± 1\nM | 94 | 104 | ± 1"
    )
    assert [one.basis for one in ranges(reading)] == [Basis.BODY, Basis.FINISHED] * 2
