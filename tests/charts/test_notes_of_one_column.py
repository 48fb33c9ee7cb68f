"""Notes that speak of one column, or of some rows: whose measures the others are stays as it is."""

from __future__ import annotations

import pytest

from charts.columns.marks import marked_parts, marks_on
from charts.columns.named_in import named_in
from charts.findings import Level
from charts.importer import FileReading, read_bytes
from charts.schema import Basis

B, F, U = Basis.BODY, Basis.FINISHED, Basis.UNKNOWN
ENGLISH = "Size;Chest;Waist;Back length\nS;84;68;42\nM;90;74;43\nL;96;80;44\n"
GERMAN = ENGLISH.replace("Size;Chest;Waist;Back length", "Größe;Brust;Taille;Rückenlänge")


def read(table: str, *notes: str) -> FileReading:
    lines = "".join(f'"{note}"\n' for note in notes)
    return read_bytes((table + lines).encode(), "chart.csv")


def bases(reading: FileReading) -> list[Basis]:
    return [one.basis for one in reading.charts[0].sizes[0].ranges]


def asked(reading: FileReading) -> list[str]:
    """The headings whose values carry the question about the basis."""
    ids = {one.id for one in reading.findings if one.code == "basis-doubtful"}
    return [
        one.heading for one in reading.charts[0].sizes[0].ranges if not ids.isdisjoint(one.findings)
    ]


@pytest.mark.parametrize(
    ("note", "due"),
    [
        ("Body measurements in cm; back length of the vest", [B, B, F]),
        (
            "Chest and waist are body measurements; back length is the garment. All in cm.",
            [B, B, F],
        ),
        ("Body measurements: chest, waist. Garment measurements: back length. In cm", [B, B, F]),
        ("Chest: body. Waist, back length: product. Unit: cm", [B, F, F]),
        ("Body chest and vest length in cm", [B, U, F]),
        ("Garment measurements in cm except chest and waist (body)", [B, B, F]),
        (
            "Except for the back length (of the vest), all are body measurements in cm",
            [B, B, F],
        ),
        ("Garment measurements in cm (except body height)", [F, F, F]),
    ],
)
def test_a_clause_that_names_columns_speaks_of_these(note: str, due: list[Basis]) -> None:
    assert bases(read(ENGLISH, note)) == due


@pytest.mark.parametrize(
    ("headings", "note"),
    [
        ("Größe;Brust;Taille;Rückenlänge", "Körpermaße in cm; Rückenlänge = fertige Weste"),
        (
            "Größe;Brust;Taille;Rücken",
            "Brust und Taille am Körper gemessen, Rücken an der Weste (cm)",
        ),
        ("Taille;Poitrine;Ceinture;Longueur dos", "Mesures du corps en cm, longueur dos du gilet"),
        ("Maat;Borst;Middel;Rug", "Lichaamsmaten in cm, behalve de rug (maat van de vest)"),
        (
            "Taglia;Torace;Vita;Schiena",
            "Torace e vita: misure del corpo; schiena: misura del gilet. In cm",
        ),
        (
            "Talla;Pecho;Cintura;Espalda",
            "Medidas del cuerpo en cm, excepto la espalda que es del chaleco",
        ),
        ("Tamanho;Peito;Cintura;Costas", "Medidas do corpo em cm; costas: medida do colete"),
        ("Storlek;Bröst;Midja;Rygglängd", "Kroppsmått i cm. Rygglängd avser västens längd."),
        ("Størrelse;Bryst;Talje;Ryglængde", "Kropsmål i cm. Ryglængde er vestens mål."),
        (
            "Rozmiar;Klatka;Talia;Plecy",
            "Klatka i talia - wymiary ciała, plecy - długość kamizelki, cm",
        ),
        ("Velikost;Hrudník;Pas;Délka zad", "Míry těla v cm; délka zad je délka vesty"),
    ],
)  # common words of eleven languages, from memory, unchecked by native speakers
def test_it_does_in_eleven_languages(headings: str, note: str) -> None:
    table = ENGLISH.replace("Size;Chest;Waist;Back length", headings)
    assert bases(read(table, note)) == [B, B, F]


@pytest.mark.parametrize(
    ("headings", "notes", "due"),
    [
        ("Size;Chest;Waist;Back length*", ("All in cm", "* of the finished vest"), [U, U, F]),
        ("Size;Chest**;Waist**;Back*", ("cm; * garment, ** body",), [B, B, F]),
        ("Size;Chest¹;Waist¹;Back²", ("¹ body, cm", "² vest, cm"), [B, B, F]),
        (
            "Size;Chest (A);Waist (B);Back (C)",
            ("A, B: body measurements in cm. C: of the vest.",),
            [B, B, F],
        ),
        ("Größe;Brust;Taille;Rückenlänge†", ("Körpermaße in cm", "† Maß der Weste"), [B, B, F]),
    ],
)
def test_a_note_behind_a_mark_speaks_of_what_bears_it(
    headings: str, notes: tuple[str, ...], due: list[Basis]
) -> None:
    table = ENGLISH.replace("Size;Chest;Waist;Back length", headings)
    assert bases(read(table, *notes)) == due


@pytest.mark.parametrize(
    "note",
    [
        "* Body measurements in cm",
        "Measure your body at the chest and waist, in cm: these are body measurements.",
        "Body measurements in cm: chest at the widest part, waist at the narrowest.",
        "Body measurements in cm, size of the vest by chest.",
    ],
)
def test_a_note_of_everything_still_speaks_of_everything(note: str) -> None:
    assert bases(read(ENGLISH, note)) == [B, B, B]


def test_half_of_one_column_leaves_the_others_whole() -> None:
    halves = "Taglia;Petto;Vita;Lunghezza\n42;44;68;60\n44;46;72;61\n46;48;76;62\n"
    reading = read(halves, "misure del capo in cm, petto misurato piatto (metà)")
    assert bases(reading)[:2] == [Basis.FLAT, F]


@pytest.mark.parametrize(
    "note",
    [
        "Body measurements in cm except the back length",
        "All except back length are body measurements, in cm",
        "Körpermaße in cm, außer Rückenlänge",
    ],
)
def test_an_exception_that_says_nothing_more_is_asked_about(note: str) -> None:
    table = GERMAN if "maße" in note else ENGLISH
    reading = read(table, note)
    assert bases(reading)[:2] == [B, B]
    assert asked(reading) == [table.split("\n")[0].split(";")[-1]]


def test_an_exception_of_a_measure_that_the_table_has_not_changes_nothing() -> None:
    table = GERMAN.replace("Rückenlänge", "Länge")
    assert bases(read(table, "Fertigmaße in cm (außer Körpergröße)")) == [F, F, F]


def test_a_heading_that_holds_a_word_for_a_side_is_not_of_it_for_that() -> None:
    table = ENGLISH.replace("Size;Chest;Waist;Back length", "Size;body length;chest laid flat")
    reading = read_bytes(
        f"Size chart (body length / chest laid flat)\n{table}".encode(), "chart.csv"
    )
    assert asked(reading) == []


def test_what_is_said_of_some_rows_is_asked_about() -> None:
    starred = ENGLISH.replace("\nL;", "\nL*;")
    assert asked(read(starred, "All cm", "* garment measurement")) == [
        "Chest",
        "Waist",
        "Back length",
    ]
    assert asked(read(ENGLISH, "cm; S: chest is that of the garment")) == ["Chest"]
    everywhere = ENGLISH.replace("\nS;", "\nS*;").replace("\nM;", "\nM*;").replace("\nL;", "\nL*;")
    assert bases(read(everywhere, "* garment measurements in cm")) == [F, F, F]


def test_what_is_said_of_one_band_is_not_said_of_another() -> None:
    tables = "Ladies\nSize;Chest\nS;84\nM;88\n\nGents\nSize;Chest\nS;92\nM;98\n"
    tables += "Gents: body measurements, cm\n"
    ladies, gents = read_bytes(tables.encode(), "chart.csv").charts
    assert {one.basis for size in gents.sizes for one in size.ranges} == {B}
    assert {one.basis for size in ladies.sizes for one in size.ranges} == {U}
    assert bases(read("Men\n" + ENGLISH, "All cm. Women: garment measurements")) == [U, U, U]


def test_one_word_names_all_columns_that_have_it_and_a_full_name_only_its_own() -> None:
    headings = ("Contorno pecho", "Contorno cintura", "Largo")
    assert named_in("Contornos corporales", headings) == {"Contorno pecho", "Contorno cintura"}
    assert named_in("el contorno de pecho", headings) == {"Contorno pecho"}
    assert named_in("Body measurements", ("Body height", "Chest")) == frozenset()


def test_marks_are_found_behind_names_and_before_notes() -> None:
    assert marks_on("Chest**") == {"**"}
    assert "2" in marks_on("Back²")
    assert marks_on("84 * 90") == frozenset()
    assert marked_parts("cm; * garment, ** body") == (
        ("", "cm; "),
        ("*", "garment, "),
        ("**", "body"),
    )
    assert marked_parts("3 * 4 cm") == (("", "3 * 4 cm"),)


def test_a_sentence_without_blanks_speaks_of_the_column_that_it_holds() -> None:
    text = (
        "尺码,身高,胸围,衣长,胸宽\nS,155-165cm,82-86cm,66cm,52cm\nM,160-170cm,86-90cm,68cm,54cm\n"
    )
    reading = read_bytes(f"{text}\n手工测量。胸宽为平铺测量。\n".encode(), "a.csv")
    first = {one.heading: one.basis for one in reading.charts[0].sizes[0].ranges}
    assert first["胸宽"] is Basis.FLAT
    assert first["胸围"] is not Basis.FLAT
    assert not [one for one in reading.findings if one.level is Level.QUESTION]
