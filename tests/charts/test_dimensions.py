"""Headings: which column, what is measured, whose measure."""

from __future__ import annotations

import pytest

from charts.dimensions import Role, read_band, read_heading, usual
from charts.headings.near import near_headings
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension

CHEST, WAIST, HIP = Dimension.CHEST, Dimension.WAIST, Dimension.HIP
HEIGHT, WEIGHT, BACK, OTHER = (
    Dimension.HEIGHT,
    Dimension.WEIGHT,
    Dimension.BACK_LENGTH,
    Dimension.OTHER,
)
MEASURE, LABEL = Role.MEASURE, Role.LABEL


@pytest.mark.parametrize(
    ("text", "dimension", "unit"),
    [
        ("Chest (cm)", CHEST, Unit.CM),
        ("Brustumfang", CHEST, None),
        ("tour de poitrine (en cm)", CHEST, Unit.CM),
        ("Borstomtrek", CHEST, None),
        ("Circonferenza torace (cm)", CHEST, Unit.CM),
        ("Contorno de pecho", CHEST, None),
        ("Busto", CHEST, None),
        ("Bröstmått", CHEST, None),
        ("Brystmål", CHEST, None),
        ("Obwód klatki piersiowej", CHEST, None),
        ("Obvod přes prsa", CHEST, None),
        ("Обхват груди, в см", CHEST, Unit.CM),
        ("胸围", CHEST, None),
        ("obwód tali", WAIST, None),
        ("Quadril", HIP, None),
        ("Wzrost", HEIGHT, None),
        ("RECOMMENDED HEIGHT", HEIGHT, None),
        ("Weight (Approximate kilograms)", WEIGHT, Unit.KG),
        ("Koerpergroesse", HEIGHT, None),
        ("TO FIT CHEST SIZE", CHEST, None),
        ("Height (ft/in)", HEIGHT, Unit.FT),
    ],
)
def test_a_measure_is_known_in_every_language(
    text: str, dimension: Dimension, unit: Unit | None
) -> None:
    heading = read_heading(text)
    assert (heading.role, heading.dimension, heading.unit) == (MEASURE, dimension, unit)
    assert heading.rest == ""


@pytest.mark.parametrize(
    ("text", "dimension"),
    [
        ("A Brustumfang", CHEST),
        ("B Taillenumfang", WAIST),
        ("Hüftumfang (B) in cm", HIP),
        ("1. Chest", CHEST),
        ("(3) Hip", HIP),
        ("② Waist", WAIST),
        ("Chest1", CHEST),
        ("Chest<sup>1</sup>", CHEST),
        ("length*", OTHER),
    ],
)
def test_reference_letters_and_footnote_marks_are_stripped(text: str, dimension: Dimension) -> None:
    assert read_heading(text).dimension is dimension


def test_a_number_in_a_row_label_is_no_value_and_no_unit() -> None:
    heading = read_heading('High Hip 4" below waist')
    assert (heading.role, heading.dimension, heading.unit) == (MEASURE, OTHER, None)


def test_high_hip_is_not_hip() -> None:
    for text in ("high hip", "hohe Hüfte", "petites hanches", "contorno de cadera alta"):
        assert read_heading(text).dimension is OTHER


def test_two_units_stand_in_the_heading_s_order() -> None:
    heading = read_heading("Chest (in/cm)")
    assert (heading.unit, heading.second_unit) == (Unit.IN, Unit.CM)


@pytest.mark.parametrize(
    ("text", "definition"),
    [
        ("Back length", Definition.UNKNOWN),
        ("Rückenlänge", Definition.UNKNOWN),
        ("torso length", Definition.UNKNOWN),
        ("trunk length", Definition.UNKNOWN),
        ("spine", Definition.UNKNOWN),
        ("nape to waist", Definition.BACK_C7_WAIST),
        ("neck to waist", Definition.BACK_C7_WAIST),
        ("Back waist length", Definition.BACK_C7_WAIST),
        ("largo de talle", Definition.BACK_C7_WAIST),
        ("C7 to SI", Definition.BACK_C7_SI),
        ("Rückenlänge (C7 bis Kreuzbeingrübchen)", Definition.BACK_C7_SI),
        ("C7 to seat", Definition.BACK_C7_SEAT),
        ("Shoulder to waist", Definition.BACK_SHOULDER_WAIST),
        ("Waist to shoulder to waist", Definition.BACK_WAIST_SHOULDER_WAIST),
        ("Waist over the shoulder to waist", Definition.BACK_WAIST_SHOULDER_WAIST),
        ("Taille über Schulter zu Taille", Definition.BACK_WAIST_SHOULDER_WAIST),
        ("taille-épaule-taille", Definition.BACK_WAIST_SHOULDER_WAIST),
        ("vita-spalla-vita", Definition.BACK_WAIST_SHOULDER_WAIST),
        ("midja-axel-midja", Definition.BACK_WAIST_SHOULDER_WAIST),
    ],
)
def test_the_words_for_the_back_say_between_which_points(text: str, definition: Definition) -> None:
    heading = read_heading(text)
    assert (heading.dimension, heading.definition) == (BACK, definition)


@pytest.mark.parametrize(
    ("text", "definition"),
    [
        ("Waist (natural)", Definition.WAIST_NATURAL),
        ("Waist at navel", Definition.WAIST_NAVEL),
        ("Skirt Waist (to fit)", Definition.WAIST_TROUSER),
        ("Bundumfang", Definition.WAIST_TROUSER),
        ("Seat (hip)", Definition.HIP_SEAT),
        ("Gesäßumfang", Definition.HIP_SEAT),
        ("Hip below belt line", Definition.HIP_BELOW_BELT),
        ("Hip (fullest part)", Definition.HIP_SEAT),
        ("Chest under the arms", Definition.CHEST_UNDER_ARM),
        ("Chest (at fullest part)", Definition.CHEST_WIDEST),
    ],
)
def test_a_level_is_kept_where_the_words_say_it(text: str, definition: Definition) -> None:
    assert read_heading(text).definition is definition


@pytest.mark.parametrize(
    ("text", "basis", "sign"),
    [
        ("Chest", Basis.UNKNOWN, False),
        ("Chest girth", Basis.BODY, False),
        ("To fit chest", Basis.BODY, False),
        ("Brustumfang", Basis.BODY, False),
        ("Tour de taille", Basis.BODY, False),
        ("Contorno pecho", Basis.BODY, False),
        ("Obwód bioder", Basis.BODY, False),
        ("Body chest", Basis.BODY, False),
        ("Actual body chest", Basis.BODY, False),
        ("Actual chest", Basis.FINISHED, True),
        ("Finished vest chest", Basis.FINISHED, True),
        ("Finished back length (cm)", Basis.FINISHED, True),
        ("Chest (garment)", Basis.FINISHED, True),
        ("Chest Width (Laid Flat)", Basis.FLAT, True),
        ("1/2 chest", Basis.FLAT, True),
        ("½ Brustumfang", Basis.FLAT, True),
        ("pit to pit", Basis.FLAT, True),
        ("1/2 Distanza seni", Basis.FLAT, True),
        ("Chest width", Basis.UNKNOWN, True),
        ("bröstvidd", Basis.UNKNOWN, True),
        ("ancho de pecho", Basis.UNKNOWN, True),
        ("胸宽", Basis.UNKNOWN, True),
        ("brystvidde", Basis.UNKNOWN, True),
        ("Vest chest", Basis.UNKNOWN, True),
        ("Body Length", Basis.FINISHED, True),
    ],
)
def test_whose_measure_it_is_where_the_words_say_so(text: str, basis: Basis, sign: bool) -> None:
    heading = read_heading(text)
    assert (heading.basis, heading.garment_sign) == (basis, sign)


@pytest.mark.parametrize(
    ("text", "candidates"),
    [
        ("Taille", ((LABEL, None), (MEASURE, WAIST), (MEASURE, HEIGHT))),
        ("Taille (cm)", ((MEASURE, WAIST), (MEASURE, HEIGHT), (LABEL, None))),
        ("Größe", ((LABEL, None), (MEASURE, HEIGHT))),
        ("Hauteur", ((MEASURE, HEIGHT), (MEASURE, OTHER))),
        ("Lengte", ((MEASURE, HEIGHT), (MEASURE, OTHER), (Role.LENGTH_AXIS, None))),
        ("Längd", ((MEASURE, HEIGHT), (MEASURE, OTHER), (Role.LENGTH_AXIS, None))),
        ("Długość", ((MEASURE, OTHER), (Role.LENGTH_AXIS, None), (MEASURE, HEIGHT))),
        ("Chest / Waist", ((MEASURE, CHEST), (MEASURE, WAIST))),
    ],
)
def test_false_friends_come_as_candidates_the_likelier_first(
    text: str, candidates: tuple[tuple[Role, Dimension | None], ...]
) -> None:
    heading = read_heading(text)
    assert heading.candidates == candidates
    assert (heading.role, heading.dimension) == candidates[0]


def test_the_language_of_the_other_headings_settles_a_false_friend() -> None:
    for language in ("nl", "de"):
        heading = read_heading("Taille", language)
        assert (heading.role, heading.dimension, heading.candidates) == (MEASURE, WAIST, ())


def test_two_languages_side_by_side_settle_each_other() -> None:
    heading = read_heading("Größe / Size / Taille")
    assert (heading.role, heading.candidates) == (LABEL, ())


def test_the_usual_values_tell_a_height_from_a_waist_and_a_garment() -> None:
    height, waist = usual(HEIGHT, Unit.CM), usual(WAIST, Unit.CM)
    assert height is not None
    assert waist is not None
    assert not height[0] <= 61 <= height[1]
    assert not waist[0] <= 176 <= waist[1]


@pytest.mark.parametrize("text", ["Talle ARG", "Talle Brasil", "Taille Canada"])
def test_a_word_for_size_beside_a_country_is_no_measure(text: str) -> None:
    heading = read_heading(text)
    assert (heading.role, heading.candidates) == (Role.LABEL, ())


@pytest.mark.parametrize(
    ("text", "role"),
    [
        ("Länge, cm A", Role.MEASURE),
        ("Largo (A)", Role.MEASURE),
        ("Torace a", Role.HIGH_END),
        ("TORACE A", Role.HIGH_END),
    ],
)
def test_the_letter_of_a_drawing_is_no_end_of_a_range(text: str, role: Role) -> None:
    assert read_heading(text).role is role


def test_altezza_torace_is_the_height_of_a_point() -> None:
    heading = read_heading("Altezza torace")
    assert (heading.dimension, heading.candidates) == (OTHER, ())


@pytest.mark.parametrize(
    ("text", "role", "dimension"),
    [
        ("Chest min", Role.LOW_END, CHEST),
        ("Chest max cm", Role.HIGH_END, CHEST),
        ("Brust von", Role.LOW_END, CHEST),
        ("Poitrine maxi", Role.HIGH_END, CHEST),
        ("Height up to (cm)", Role.HIGH_END, HEIGHT),
        ("from", Role.LOW_END, None),
        ("to", Role.HIGH_END, None),
        ("bis", Role.HIGH_END, None),
        ("de", Role.LOW_END, None),
        ("à", Role.HIGH_END, None),
        ("Chest Tolerance", Role.TOLERANCE, CHEST),
        ("Tol.", Role.TOLERANCE, None),
        ("+/-", Role.TOLERANCE, None),
        ("Évol. 0.5", Role.STEP, None),
        ("Increment", Role.STEP, None),
    ],
)
def test_parts_of_a_range_keep_the_dimension_they_belong_to(
    text: str, role: Role, dimension: Dimension | None
) -> None:
    heading = read_heading(text)
    assert (heading.role, heading.dimension) == (role, dimension)


def test_both_ends_in_one_heading_are_a_whole_range() -> None:
    assert read_heading("Chest min - max").role is MEASURE
    assert read_heading("von - bis").role is Role.UNKNOWN


@pytest.mark.parametrize(
    "text",
    ["EAN", "RRP €", "Preis", "Stock", "Lagerbestand", "Colour", "Farbe", "Cylinder (g)",
     "Kartusche", "Strap length (cm)", "Chest strap (cm)", "Sattelgurt (cm)", "N°", "Nr.", "#",
     "Número", "Lp.", "Protector weight (g)", "Vest weight (g)", "Art.-Nr.", "Thickness (mm)"],
)  # fmt: skip
def test_columns_beside_the_measurements_are_refused(text: str) -> None:
    heading = read_heading(text)
    assert (heading.role, heading.dimension) == (Role.OTHER, None)


@pytest.mark.parametrize(
    "text", ["Packed height (cm)", "Shaft height", "Boot calf girth", "Karton Höhe"]
)
def test_a_measure_of_a_thing_is_no_measure_of_a_rider(text: str) -> None:
    heading = read_heading(text)
    assert heading.dimension in {OTHER, None}


def test_an_unknown_word_beside_a_measure_is_offered_as_something_else_too() -> None:
    heading = read_heading("Quux height")
    assert heading.candidates == ((MEASURE, HEIGHT), (MEASURE, OTHER))
    assert heading.rest == "quux"


@pytest.mark.parametrize("text", ["Waist to knee", "Chest to floor", "Waist to hip"])
def test_a_way_between_two_points_is_no_girth(text: str) -> None:
    heading = read_heading(text)
    assert (heading.dimension, heading.candidates) == (OTHER, ())


@pytest.mark.parametrize(
    "text",
    ["Supplier", "Maker", "Brand", "Model", "Season", "Edition", "Hersteller", "Lieferant", "Marke",
     "Modell", "Saison", "fournisseur", "modèle", "merk", "stagione", "proveedor", "tillverkare",
     "dostawca", "výrobce"],
)  # fmt: skip
def test_words_of_identity_are_known(text: str) -> None:
    assert read_heading(text).role is Role.IDENTITY


@pytest.mark.parametrize(
    "text",
    ["Size", "SIZE", "Konfektionsgröße", "Maat", "Taglia", "Talla", "Tamanho", "Storlek", "stl",
     "Størrelse", "Rozmiar", "Velikost", "EU", "UK", "DE", "INTL", "Numerical Sizes", "Gr. EU",
     "Internationale Größe", "尺码"],
)  # fmt: skip
def test_words_for_the_size_are_known(text: str) -> None:
    assert read_heading(text).role is LABEL


@pytest.mark.parametrize(
    ("text", "unit"), [("cm", Unit.CM), ("(in)", Unit.IN), ("INCHES", Unit.IN)]
)
def test_a_unit_alone_is_a_unit(text: str, unit: Unit) -> None:
    heading = read_heading(text)
    assert (heading.role, heading.unit) == (Role.UNIT, unit)


@pytest.mark.parametrize(
    ("text", "near"),
    [
        ("Brustumfnag", "Brustumfang"),
        ("Wiast girth", "waist girth"),
        ("Körpergröse", "Körpergröße"),
    ],
)
def test_an_unknown_heading_is_offered_near_ones_and_never_taken(text: str, near: str) -> None:
    heading = read_heading(text)
    assert (heading.role, heading.dimension) == (Role.UNKNOWN, None)
    assert near in near_headings(heading)


def test_nothing_near_is_offered_for_what_resembles_nothing() -> None:
    assert near_headings(read_heading("Zzyzx")) == ()


@pytest.mark.parametrize(
    ("text", "band"),
    [
        ("Women's chest (cm)", "women"),
        ("Konfektionsgröße Damen", "women"),
        ("Men", "men"),
        ("Herren", "men"),
        ("Girls'", "girls"),
        ("Bébé", "baby"),
        ("Youth", "kids"),
        ("Men's and Women's", "unisex"),
        ("Damen und Herren", "unisex"),
        ("Boys & Girls", "kids"),
        ("Kids girls", "girls"),
        ("Adult", None),
        ("Women and kids", None),
        ("Chest", None),
    ],
)
def test_the_band_of_a_text(text: str, band: str | None) -> None:
    assert read_band(text) == band
    assert read_heading(text).band == band


@pytest.mark.parametrize(
    ("words", "band"),
    [
        ("Kinderwesten", "kids"),
        ("Damenjacke", "women"),
        ("Herren-Hose", "men"),
        ("Barnväst", "kids"),
        ("Kinderschnitte", "kids"),
        ("Damenschnittmuster", "women"),
        ("Herreskjorter", "men"),
        ("Damesjurken", "women"),
        ("Flickklänningar", "girls"),
        ("kinderleicht", None),
        ("Kinderwagen", None),
        ("JUNIOR (J) AND JUNIOR PETITE (JP)", None),
        ("Junior", "kids"),
        ("Sicherheitswesten", None),
        ("Mannschaftsjacke", None),
    ],
)
def test_a_compound_may_name_who_wears_it(words: str, band: str | None) -> None:
    assert read_band(words) == band


@pytest.mark.parametrize(
    ("text", "dimension", "role", "unit"),
    [
        ("chestMin", Dimension.CHEST, Role.LOW_END, None),
        ("bodyHeightMaxCm", Dimension.HEIGHT, Role.HIGH_END, Unit.CM),
        ("WaistIn", Dimension.WAIST, Role.MEASURE, Unit.IN),
        ("riderWeight", Dimension.WEIGHT, Role.MEASURE, None),
    ],
)
def test_the_name_that_a_program_gives_a_column_is_its_words(
    text: str, dimension: Dimension, role: Role, unit: Unit | None
) -> None:
    reading = read_heading(text)
    assert (reading.dimension, reading.role, reading.unit) == (dimension, role, unit)
