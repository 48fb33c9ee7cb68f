"""Lines of sizes with as many values below, parted by single blanks or put one a line."""

from __future__ import annotations

from decimal import Decimal
from textwrap import dedent

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.importer import read_pasted
from charts.readers.captured.value_runs import labels_in, named_values, values_in
from charts.schema import Dimension
from tests.charts.read_text import questions
from tests.charts.read_text import values as read_values
from tests.charts.readers.reading import paste, rows_of


@pytest.mark.parametrize(
    ("text", "values"),
    [
        ('26 - 32" 33 - 38" 39-44" 45-50"', ('26 - 32"', '33 - 38"', '39-44"', '45-50"')),
        ("66 - 81cm 82 - 96cm 97-112cm", ("66 - 81cm", "82 - 96cm", "97-112cm")),
        ("20 1/2 21 28½ 30", ("20 1/2", "21", "28½", "30")),
        ("5'4\" - 5'6\" 5'7\" 6'", ("5'4\" - 5'6\"", "5'7\"", "6'")),
        ("84 bis 90 up to 96 > 98 120 kg", ("84 bis 90", "up to 96", "> 98", "120 kg")),
        ('34-36" (86-91 cm) 38-40" (96-102 cm)', ('34-36" (86-91 cm)', '38-40" (96-102 cm)')),
        ("30.5cm(12in) 31", ("30.5cm(12in)", "31")),
        ('22" – 23" 24" +', ('22" – 23"', '24" +')),
        ("84 + 90", ()),
        ("84 90 x", ()),
        ("2/3 of 86", ()),
    ],
)
def test_a_line_is_cut_into_whole_values_or_not_at_all(text: str, values: tuple[str, ...]) -> None:
    assert values_in(text) == values


@given(
    st.lists(
        st.tuples(st.integers(20, 199), st.integers(1, 9), st.sampled_from(["-", " - ", "–"])),
        min_size=1,
        max_size=12,
    )
)
def test_ranges_with_blanks_inside_come_back_as_they_were_written(
    ends: list[tuple[int, int, str]],
) -> None:
    written = [f"{low}{joint}{low + more} cm" for low, more, joint in ends]
    assert list(values_in(" ".join(written))) == written


def test_labels_and_names_in_one_line() -> None:
    assert labels_in("International sizing XS S M") == ("International sizing", ("XS", "S", "M"))
    assert labels_in("S / M L X Large") == ("", ("S/M", "L", "X Large"))
    assert labels_in("US 4 6 8") == ("US", ("4", "6", "8"))
    assert labels_in("Chest 84 90 96") is None
    assert labels_in("84 90 96") is None
    assert labels_in("Size 40 38 36") is None
    assert named_values("Waist girth: 84 90") == ("Waist girth", ("84", "90"))
    assert named_values("Waist 2027") == ("Waist", ("2027",))


def test_sizes_over_two_lines_of_figures_in_two_units() -> None:
    reading = read_pasted('S/M L XL\nWaist 26 - 32" 33 - 38" 39-44"\n66-81cm 84-97cm 99-112cm\n')
    (chart,) = reading.charts
    assert [size.label for size in chart.sizes] == ["S/M", "L", "XL"]
    first = chart.sizes[0].ranges[0]
    assert first.dimension is Dimension.WAIST
    assert (first.low, first.high) == (Decimal(66), Decimal(81))
    assert first.also_published is not None


def test_a_count_that_does_not_agree_makes_no_row() -> None:
    found = paste("S M L\nChest 84 90\nWaist 70 76 82\n")
    assert found.sheet.columns == 1
    assert found.codes == ["no-table"]


def test_a_name_broken_over_lines_belongs_to_the_values_below_it_and_is_asked() -> None:
    found = paste("pp p m 1 2\nPerímetro\ndo\ntórax\n40 44 46 50 52\n")
    assert found.rows() == [
        ["", "pp", "p", "m", "1", "2"],
        ["Perímetro do tórax", "40", "44", "46", "50", "52"],
    ]
    assert found.sheet.inferred


_ALTERNATE = """\
    International sizing XS S
    US 4 6
    Bust

    85 cm

    33.5 in

    89 cm

    35 in
    Waist
    67 cm
    26.4 in
    71 cm
    27.9 in

    Bust: measure over the fullest part.
    """


def test_one_value_a_line_alternately_in_two_units_is_one_cell_in_both() -> None:
    text = dedent(_ALTERNATE).replace("XS S", "XS S M").replace("4 6", "4 6 8")
    assert paste(text).sheet.columns == 1  # three sizes, figures for two
    found = paste(dedent(_ALTERNATE).replace("International sizing", "Size"))
    assert found.rows()[:4] == [
        ["Size", "XS", "S"],
        ["US", "4", "6"],
        ["Bust", "85 cm\n33.5 in", "89 cm\n35 in"],
        ["Waist", "67 cm\n26.4 in", "71 cm\n27.9 in"],
    ]
    assert not found.sheet.inferred


@pytest.mark.parametrize(
    ("text", "rows"),
    [
        (
            "Taille Tour de poitrine Tour de taille\nS 84 - 90 68 - 74 cm\nM 90 - 96 74 - 80 cm\n",
            [["Taille", "Tour de poitrine", "Tour de taille"],
             ["S", "84 - 90", "68 - 74 cm"], ["M", "90 - 96", "74 - 80 cm"]],
        ),
        (
            "Size Chest (cm) Waist\n(cm)\nS 84 - 90 68 -\n74\nM 90 - 96 74 -\n80\n",
            [["Size", "Chest (cm)", "Waist (cm)"],
             ["S", "84 - 90", "68 - 74"], ["M", "90 - 96", "74 - 80"]],
        ),
        (
            "Größe Alter Brust\n92 1-2 Jahre 53-54 cm\n104 3-4 Jahre 56-57 cm\n",
            [["Größe", "Alter", "Brust"],
             ["92", "1-2 Jahre", "53-54 cm"], ["104", "3-4 Jahre", "56-57 cm"]],
        ),
        (
            "Größe Brust Länge\n36 84 cm 41,5 cm\n38 88 cm 42 cm\n",
            [["Größe", "Brust", "Länge"], ["36", "84 cm", "41,5 cm"], ["38", "88 cm", "42 cm"]],
        ),
    ],
)  # fmt: skip
def test_a_size_a_line_with_blanks_inside_its_values(text: str, rows: list[list[str]]) -> None:
    assert paste(text).rows() == rows


@pytest.mark.parametrize(
    "text",
    [
        "Ukubwa Moja Mbili Tatu\nS 84 - 90 68 - 74\nM 90 - 96 74 - 80\nL 96 - 99 80 - 84\n",
        "Size Chest Waist\n38 84 - 90 68 - 74\n36 90 - 96 74 - 80\n",
        "Size Chest Waist\nS 84 - 90 68 - 74\nM 90 - 96\n",
    ],
)
def test_headings_that_cannot_be_parted_and_rows_that_differ_stay_lines(text: str) -> None:
    found = paste(text)
    assert (found.sheet.columns, found.codes) == (1, ["no-table"])


def test_numbers_behind_an_unknown_word_over_as_many_figures_are_the_sizes_and_asked() -> None:
    found = paste("Ukubwa 38 40 42\nKifua 88 92 96\nKiuno 70 74 78\n")
    assert found.rows()[0] == ["Ukubwa", "38", "40", "42"]
    assert found.sheet.inferred
    assert paste("Ukubwa 38 40 42\nKifua 88 92\nKiuno 70 74 78\n").sheet.columns == 1


_QUOTED = ">> Size   Chest\n>> S      84-90 cm\n>> M      90-96 cm\n\nBest regards\n"


def test_signs_of_quoting_are_taken_away_and_lines_keep_their_numbers() -> None:
    found = paste("Hello,\n\n" + _QUOTED).sheet
    assert rows_of(found)[1:4] == [["Size", "Chest"], ["S", "84-90 cm"], ["M", "90-96 cm"]]
    assert found.place(4, 1) == "line 5"


def test_more_than_sixty_is_no_quoting() -> None:
    found = paste("Size\nWeight\nS\n> 50 kg\nM\n> 60 kg\nL\n> 70 kg\n")
    assert found.rows()[1:] == [["S", "> 50 kg"], ["M", "> 60 kg"], ["L", "> 70 kg"]]
    assert paste("> 50 kg\n> 60 kg\n> 70 kg\n").rows() == [["> 50 kg"], ["> 60 kg"], ["> 70 kg"]]


def test_a_drawn_frame_is_bars() -> None:
    found = paste("┌──┬──┐\n│Size│Chest│\n├──┼──┤\n│S│84-90│\n├──┼──┤\n│M│90-96│\n└──┴──┘\n")
    assert [row[1:] for row in found.rows()] == [
        ["Size", "Chest"],
        ["S", "84-90"],
        ["M", "90-96"],
    ]


def test_values_in_brackets_each_are_cut_like_others() -> None:
    assert values_in("(34-35) (36-37) (38)") == ("(34-35)", "(36-37)", "(38)")
    assert named_values("Neck (cm) (34-35) (36-37)") == ("Neck (cm)", ("(34-35)", "(36-37)"))
    assert values_in("(34-35) 36-37") == ()


_BLOCKS = dedent("""\
    Mens Shirts
      XS S M
    To Fit Neck (cm) (34-35) (36-37) (38-39)
    To Fit Chest (cm) 86 91 96

    Womens Sizes
      6 8 10 12
    Bust (cm) 82 88 92 98
    Waist (cm) 58 63 68 73
    """)


def test_every_block_of_a_text_is_a_chart_even_under_bare_numbers_once_asked() -> None:
    reading = read_pasted(_BLOCKS)
    labels = [[size.label for size in chart.sizes] for chart in reading.charts]
    assert labels == [["XS", "S", "M"], ["6", "8", "10", "12"]]
    last = reading.charts[1].sizes[3].ranges
    assert [(one.dimension, one.value) for one in last] == [
        (Dimension.CHEST, Decimal(98)),
        (Dimension.WAIST, Decimal(73)),
    ]
    assert [one.code for one in reading.findings].count("text-order") == 1


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("6 8 10 12", "6 8 10"),
        ("6 8 10 12", "6 12 8 10"),
        ("Waist (cm) 58", "Waist (cm)"),
        ("Waist", "Stock"),
    ],
)
def test_bare_numbers_that_do_not_come_out_even_are_no_sizes(old: str, new: str) -> None:
    reading = read_pasted(_BLOCKS.replace(old, new))
    assert [len(chart.sizes) for chart in reading.charts] == [3]
    assert "text-order" in {one.code for one in reading.findings}


def test_bare_letters_below_named_sizes_are_their_other_names() -> None:
    text = "Talla 38 40 42\n\nS M L\n\nPecho (cm) 91 - 96 96 - 101 101 - 107\n"
    assert paste(text).rows() == [
        ["Talla", "38", "40", "42"],
        ["", "S", "M", "L"],
        ["Pecho (cm)", "91 - 96", "96 - 101", "101 - 107"],
    ]
    (chart,) = read_pasted(text).charts
    assert [{one.label, *(name.label for name in one.also)} for one in chart.sizes] == [
        {"38", "S"},
        {"40", "M"},
        {"42", "L"},
    ]


@pytest.mark.parametrize("ages", ["2/3 3/4 4/5", "2 4 6", "2-3 3-4 4-5"])
def test_ages_over_a_measure_with_as_many_figures_are_the_sizes(ages: str) -> None:
    text = f"Jodhpurs\n\nAge {ages}\nWaist Size 19’’ 20’’ 21’’\n"
    (chart,) = read_pasted(text).charts
    assert [size.label for size in chart.sizes] == ages.split()
    values = [one for size in chart.sizes for one in size.ranges]
    waists = [one.value for one in values if one.dimension is Dimension.WAIST]
    assert waists == [Decimal("48.26"), Decimal("50.8"), Decimal("53.34")]


@pytest.mark.parametrize(
    "below", ["Waist 19’’ 20’’", "Ages 8 9 10", "Price 19 20 21", "Waist of 19’’ to 21’’ fit"]
)
def test_ages_over_anything_else_are_no_sizes(below: str) -> None:
    assert paste(f"Age 2/3 3/4 4/5\n{below}\n").codes == ["no-table"]


_CUPS = dedent("""\
    XS S M L O/S 1X2X
    UK 0-2 6-8 10-12 14-16 6-16 18-22
    CUP A A-B B-C C-D B-C D-DD
    BUST 77cm-82cm 82cm-87cm 87cm-92cm 92cm-98cm 82cm-98cm 103cm-118cm
    """)


def test_one_size_for_all_and_a_line_of_cups_stand_among_sizes_of_letters() -> None:
    rows = paste(_CUPS).rows()
    assert [cell for cell in rows[0] if cell] == ["CUP A A-B B-C C-D B-C D-DD"]
    assert rows[1] == ["", "XS", "S", "M", "L", "O/S", "1X2X"]
    assert rows[3][::6] == ["BUST", "103cm-118cm"]


def test_letters_below_a_measure_are_no_cups() -> None:
    sizes, _, cups, bust = _CUPS.splitlines()
    rows = paste(f"{sizes}\n{bust}\n{cups}").rows()
    assert rows[0][1:3] == ["XS", "S"]
    assert rows[2][0] == cups


def test_numbers_with_the_letter_of_a_length_are_sizes_in_one_line() -> None:
    reading = read_pasted(
        "74R 79R 76L 81L 89ST\nChest (cm) 84 89 87 92 101\nWaist (cm) 74 79 76 81 89"
    )
    assert read_values(reading)["76L chest"] == 87
    assert read_values(reading)["89ST waist"] == 89


def test_weights_in_stones_are_no_stout_sizes() -> None:
    assert labels_in("9ST 10ST 11ST") is None


def test_fewer_names_than_sizes_are_left_out_and_said() -> None:
    text = "74R 79R 76L 81L\nImperial sizes 2 3\nChest (cm) 84 89 87 92\nWaist (cm) 74 79 76 81"
    reading = read_pasted(text)
    assert read_values(reading)["81L waist"] == 81
    assert "text-order" in questions(reading)


@pytest.mark.parametrize("names", ["Chest {0}\nWaist {1}\n", "Chest\n{0}\nWaist\n{1}\n"])
def test_a_line_may_give_all_sizes_in_cm_and_then_all_in_inches(names: str) -> None:
    figures = ("80-88 88-96 31½-34½ 34½-37¾", "64-72 72-80 25¼-28¼ 28¼-31½")
    reading = read_pasted("Size S M\n" + names.format(*figures))
    assert read_values(reading) == {
        "S chest": (80, 88),
        "M chest": (88, 96),
        "S waist": (64, 72),
        "M waist": (72, 80),
    }
    assert questions(reading) == []
    odd = names.format("80-88 88-96 31½-34½ 36-41", "64-72 72-80 25¼-28¼ 28¼-31½")
    assert "M chest" not in read_values(read_pasted("Size S M\n" + odd))
