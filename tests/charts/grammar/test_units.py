"""Units in the cell and two units of one quantity, as published tables print them."""

from __future__ import annotations

import pytest

from charts.notation import Expected, Reading, read_cell
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension
from tests.charts.told import candidates, told

CHEST, WAIST, HIP = Dimension.CHEST, Dimension.WAIST, Dimension.HIP
HEIGHT, WEIGHT, BACK = Dimension.HEIGHT, Dimension.WEIGHT, Dimension.BACK_LENGTH
CM, IN, KG, LB, ST, FT = Unit.CM, Unit.IN, Unit.KG, Unit.LB, Unit.ST, Unit.FT


@pytest.mark.parametrize(
    "mark",
    ['"', "”", "“", "″", "''", " in", " in.", "in", " ins", " inch", " inches", " Inches", " IN",
     " Zoll", " pouces", " tum", " cale", " pulgadas", " pulg.", " pollici", " palce"],
)  # fmt: skip
def test_the_marks_and_words_for_inches(mark: str) -> None:
    assert told(f"38{mark}") == "38 in"


@pytest.mark.parametrize(
    "mark", ["cm", " CM", " cms", " cm.", " centimetres", " Zentimeter", " см", " ซม.", " 厘米"]
)
def test_the_words_for_centimetres(mark: str) -> None:
    assert told(f"86{mark}") == "86 cm"


def test_a_point_without_decimals_before_the_unit_ends_the_figure() -> None:
    assert (told("113.cm"), told("50.lbs")) == ("113 cm", "50 lb")


@pytest.mark.parametrize(
    "mark", ["kg", " kgs", " kilos", " kilograms", " Kilogramm", " кг", " KG."]
)
def test_the_words_for_kilograms(mark: str) -> None:
    assert told(f"60{mark}") == "60 kg"


@pytest.mark.parametrize("mark", ["lb", " lbs", " lbs.", " LBS", " pounds"])
def test_the_words_for_pounds(mark: str) -> None:
    assert told(f"60{mark}") == "60 lb"


def test_a_german_pfund_is_no_pound() -> None:
    assert told("60 Pfund") == "unread unreadable"


def test_a_capital_m_is_a_letter_and_no_metre() -> None:
    assert told("12 M") == "unread unreadable"


def test_the_cell_beats_the_heading_and_says_so() -> None:
    reading = read_cell("45 - 65 lbs", Expected(WEIGHT, IN))
    assert reading.reading is Reading.READ
    assert reading.notes == ("cell-unit-beats-heading",)


def test_a_unit_that_agrees_with_the_heading_needs_no_word() -> None:
    assert read_cell("68 cm", Expected(WAIST, CM)).notes == ()
    assert read_cell("5'4\"", Expected(HEIGHT, FT)).notes == ()


def test_a_unit_that_cannot_measure_the_dimension_is_asked_about() -> None:
    assert told("60 kg", CHEST, CM) == "ask units-disagree 60 kg"


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("5'4\" - 5'6\"", "[64, 66] in"),
        ("4'11\" - 5'2\"", "[59, 62] in"),
        ("6’2”", "74 in"),
        ("5’11", "71 in"),
        ("5'-1\" - 5'-3\"", "[61, 63] in"),
        ("5' 4\"", "64 in"),
        ("5'4 1/2\"", "64.5 in"),
        ("5 ft 4 in", "64 in"),
        ("5ft4in", "64 in"),
        ("5 feet 4 inches", "64 in"),
        ("5'5\" to 5'6\" tall", "[65, 66] in"),
        ("5'4 - 5'6'", "[64, 66] in"),
        ("5'", "60 in"),
        ("5 - 6 ft", "[60, 72] in"),
        ('55 -  59"', "[55, 59] in"),
    ],
)
def test_feet_and_inches_are_inches(text: str, reading: str) -> None:
    assert told(text, HEIGHT) == reading


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("9st 7lb", "133 lb"),
        ("9 st 7", "133 lb"),
        ("10st 0lb", "140 lb"),
        ("8st 10lbs - 10st 10lbs", "[122, 150] lb"),
        ("12 stone", "168 lb"),
        ("9 - 10 st", "[126, 140] lb"),
    ],
)
def test_stones_and_pounds_are_pounds(text: str, reading: str) -> None:
    assert told(text, WEIGHT) == reading


def test_stones_stand_in_a_column_of_weights_only() -> None:
    assert told("89ST") == "unread unreadable"
    assert told("9st 7lb", CHEST) == "unread unreadable"


@pytest.mark.parametrize(
    ("text", "unit", "reading"),
    [
        ("5-4", None, "ask feet-or-range 64 in"),
        ("5-11", IN, "ask feet-or-range 71 in"),
        ("6-2", None, "ask feet-or-range 74 in"),
        ("5.4", FT, "ask feet-or-range 64 in"),
        ("5-4 - 5-6", None, "ask feet-or-range [64, 66] in"),
        ("5'-6", None, "ask feet-or-range 66 in"),
        ("5.4 ft", None, "ask feet-or-range"),
        ("5.2-5.5", FT, "ask feet-or-range [62, 65] in"),
        ("5-5.4", FT, "ask feet-or-range [60, 64] in"),
        ("5.7-5.11", FT, "ask feet-or-range [67, 71] in"),
        ("5.10-6.2", FT, "ask feet-or-range [70, 74] in"),
    ],
)
def test_feet_and_inches_without_marks_are_always_asked(
    text: str, unit: Unit | None, reading: str
) -> None:
    assert told(text, HEIGHT, unit) == reading


@pytest.mark.parametrize(("text", "unit"), [("9-7", ST), ("9.7", ST), ("9-7", None)])
def test_stones_and_pounds_without_marks_are_always_asked(text: str, unit: Unit | None) -> None:
    assert told(text, WEIGHT, unit) == "ask feet-or-range 133 lb"


@pytest.mark.parametrize(
    ("text", "unit", "joined", "plain"),
    [
        ("9.7", ST, "133 lb", "9.7"),
        ("9.10", ST, "136 lb", "9.1"),
        ("9.7 - 10.13", ST, "[133, 153] lb", "[9.7, 10.13] st"),
        ("under 9.7", ST, "[.., 133) lb", "[.., 9.7) st"),
        ("9.7+", ST, "[133, ..] lb", "[9.7, ..] st"),
        ("9.7 st", None, "133 lb", "9.7 st"),
    ],
)
def test_pounds_behind_a_point_come_before_tenths_of_a_stone(
    text: str, unit: Unit | None, joined: str, plain: str
) -> None:
    offered = [one.rpartition(" (")[0] for one in candidates(text, Expected(WEIGHT, unit))]
    assert offered == [joined, plain]


def test_no_pounds_stand_behind_a_point_that_is_a_fraction_or_too_large() -> None:
    assert candidates("9.75", Expected(WEIGHT, ST)) == ["9.75 st (as-printed)"]
    assert told("9 1/2", WEIGHT, ST) == "9.5"


def test_feet_without_marks_offer_the_range_where_it_rises() -> None:
    assert candidates("5-11", Expected(HEIGHT)) == [
        "71 in (feet-inches)",
        "[5, 11] (feet-or-range)",
    ]


def test_a_range_of_small_numbers_is_one_outside_of_heights() -> None:
    assert told("5-11") == "[5, 11]"


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ('34"-36" (86-91 cm)', "[86, 91] cm also [34, 36] in"),
        ("28 - 30 in (71-76 cm)", "[71, 76] cm also [28, 30] in"),
        ("55-67 inches (140-170 cm)", "[140, 170] cm also [55, 67] in"),
        ("86-91 cm (34-36 in)", "[86, 91] cm also [34, 36] in"),
        ("33 LBS/15 KG", "15 kg also 33 lb"),
        ('34-36"<br>86-91cm', "[86, 91] cm also [34, 36] in"),
        ("86-91cm | 34-36in", "[86, 91] cm also [34, 36] in"),
        ("100 cm = 39.4 in", "100 cm also 39.4 in"),
        ("34-36in 86-91cm", "[86, 91] cm also [34, 36] in"),
        ("117 cm (46 in) to 122 cm (48 in)", "[117, 122] cm also [46, 48] in"),
        ('36"/91cm - 38"/97cm', "[91, 97] cm also [36, 38] in"),
        ("5 ft 4 in (162.1 cm)", "162.1 cm also 64 in"),
        ("5'4\" - 5'6\" / 163 - 168 cm", "[163, 168] cm also [64, 66] in"),
        ("10st 0lb (63.5 kg)", "63.5 kg also 140 lb"),
        ('< 79 cm / < 31"', "[.., 79) cm also [.., 31) in"),
        ("less than or equal to 33 LBS/15 KG", "[.., 15] kg also [.., 33] lb"),
        ("Greater than 88 LBS/40 KG", "(40, ..] kg also (88, ..] lb"),
        ("Over 33 LBS/15 KG, less than or equal to 55 LBS/25 KG", "(15, 25] kg also (33, 55] lb"),
        ("86-91 cm (34-36)", "[86, 91] cm also [34, 36] in"),
        ("34-36 (86-91 cm)", "[86, 91] cm also [34, 36] in"),
    ],
)
def test_two_units_of_one_quantity_give_the_metric_one_with_the_other_beside(
    text: str, reading: str
) -> None:
    assert told(text) == reading


def test_rounding_between_the_units_is_noted() -> None:
    assert read_cell('34"-36" (86-91 cm)').notes == ("rounding-between-units",)
    assert read_cell("50 in (127 cm)").notes == ()


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ('80 - 85 cm / 32 - 33"', "ask units-disagree [80, 85] cm also [32, 33] in"),
        ("67-87 inches (max 205 cm)", "ask units-disagree [.., 205] cm also [67, 87] in"),
        ("40 in (112 cm)", "ask units-disagree 112 cm also 40 in"),
        ("100 lb / 50 kg", "ask units-disagree 50 kg also 100 lb"),
    ],
)
def test_units_that_contradict_each_other_are_asked_about(text: str, reading: str) -> None:
    assert told(text) == reading


@pytest.mark.parametrize("text", ["78-80cm / 30-32", "78-80cm (30-32)", '30-32" / 78-80'])
def test_a_bare_half_that_is_badly_converted_is_the_other_unit_and_asked_about(text: str) -> None:
    assert told(text, CHEST) == "ask units-disagree [78, 80] cm also [30, 32] in"


@pytest.mark.parametrize("text", ["78-80cm / 41-47", "70-80 kg / 11-12", "84 cm / 36"])
def test_a_bare_half_that_is_no_conversion_at_all_is_not_read(text: str) -> None:
    assert told(text, CHEST).startswith("unread")


def test_finer_print_allows_less_between_the_units() -> None:
    assert read_cell("34 1/8 in (86.7 cm)").reading is Reading.READ
    assert told("34 1/8 in (87.5 cm)") == "ask units-disagree 87.5 cm also 34.125 in"


def test_two_units_in_the_heading_are_taken_in_its_order_and_proven_by_the_ratio() -> None:
    assert told("34-36 / 86-91", CHEST, IN, CM) == "[86, 91] cm also [34, 36] in"
    assert told("34/86", CHEST, IN, CM) == "86 cm also 34 in"
    assert told("86-91 / 34-36", CHEST, IN, CM) == "ask units-swapped [86, 91] cm also [34, 36] in"
    assert told("34-36 / 99-104", CHEST, IN, CM).startswith("ask units-disagree")


def test_two_figures_without_a_unit_are_asked_about_even_when_the_ratio_tells() -> None:
    assert told("34-36 / 86-91", CHEST) == "ask unit-missing [86, 91] cm also [34, 36] in"
    assert told("70-80 / 154-176", WEIGHT) == "ask unit-missing [70, 80] kg also [154, 176] lb"


def test_one_figure_in_inches_and_in_centimetres_is_no_range() -> None:
    assert told("34/86") == "ask unit-missing 86 cm also 34 in"


def test_two_values_in_one_unit_are_no_quantity_in_two() -> None:
    assert told("84 cm, 88 cm") == "unread unreadable"
    assert told("5'4\" / 64 in") == "64 in"


def test_a_half_inch_as_a_decimal_is_rounded_to_the_half() -> None:
    assert told("34.5 in (87 cm)") == "87 cm also 34.5 in"


def test_whole_feet_are_printed_to_the_inch() -> None:
    quantity = read_cell("5'", Expected(HEIGHT)).quantity
    assert quantity is not None
    assert quantity.value is not None
    assert quantity.value.step == 1


def test_one_unit_in_the_heading_and_the_ratio_together_are_enough() -> None:
    assert told("86-91 (34-36)", CHEST, CM) == "[86, 91] cm also [34, 36] in"


@pytest.mark.parametrize(
    ("text", "dimension", "unit", "reading"),
    [
        ("575", BACK, CM, "ask impossible 575"),
        ('13"', HIP, None, "ask impossible 13 in"),
        ("34-36", CHEST, CM, "ask impossible [34, 36]"),
        ("18–20", CHEST, IN, "ask laid-flat [18, 20]"),
        ("300", WEIGHT, KG, "ask impossible 300"),
    ],
)
def test_what_a_body_cannot_be_is_asked_about(
    text: str, dimension: Dimension, unit: Unit | None, reading: str
) -> None:
    assert told(text, dimension, unit) == reading


def test_an_impossible_figure_is_offered_what_it_may_be() -> None:
    assert candidates("575", Expected(BACK, CM)) == ["57.5 (decimal-lost)", "575 mm (other-unit)"]
    assert candidates("34-36", Expected(CHEST, CM)) == [
        "[34, 36] in (other-unit)",
        "[34, 36] (half-girth)",
    ]


def test_half_a_girth_is_plausible_where_the_column_says_flat() -> None:
    flat = Expected(CHEST, IN, basis=Basis.FLAT)
    assert read_cell("18-20", flat).reading is Reading.READ


def test_a_waist_over_the_shoulder_may_be_longer_than_a_back() -> None:
    over = Expected(BACK, CM, definition=Definition.BACK_WAIST_SHOULDER_WAIST)
    assert read_cell("78-84", over).reading is Reading.READ
    assert told("78-84", BACK, CM) == "ask impossible [78, 84]"


@pytest.mark.parametrize("text", ["2/3", "3/6", "1 / 2"])
def test_bare_figures_so_small_are_no_kilograms_and_pounds(text: str) -> None:
    assert read_cell(text).reading is Reading.UNREAD
    assert read_cell("34/86").also is not None


def test_tolerances_without_a_figure_in_a_unit_of_something_else_are_asked_about() -> None:
    assert told("+/- 1 kg ± 2 kg", CHEST, CM) == "ask units-disagree ±1 kg"
