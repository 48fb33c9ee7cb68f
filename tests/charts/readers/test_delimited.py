"""Delimited text keeps its rows, whatever separates its fields."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.readers.delimited import evenly_separated, parsed_rows, separator_of
from charts.sheet import Addressing
from tests.charts.readers.reading import read, rows_of

CHART = [["Size", "Chest (cm)", "Waist (cm)"], ["S", "86-91", "71-76"], ["M", "92-97", "77-82"]]


def joined(rows: list[list[str]], separator: str) -> str:
    return "\n".join(separator.join(row) for row in rows) + "\n"


@pytest.mark.parametrize("separator", [";", "\t", "|", ","])
def test_the_separator_is_the_one_that_gives_even_rows(separator: str) -> None:
    found = read(joined(CHART, separator)).sheet
    assert rows_of(found) == CHART
    assert found.addressing is Addressing.PLAIN
    assert found.place(2, 1) == "B3"


def test_the_lines_of_a_drawn_box_are_no_cells() -> None:
    rule = "+------+------------+------------+"
    text = f"{rule}\n| | S | M |\n{rule}\n| Chest (cm) | 86-91 | 92-97 |\n{rule}\n"
    assert read(text).rows() == [["", "", "S", "M"], ["", "Chest (cm)", "86-91", "92-97"]]
    assert read("Size;Chest\nS;86-91\nM;---\n").rows()[2] == ["M", "---"]


def test_a_decimal_comma_separates_nothing() -> None:
    text = "Größe;Brust;Rücken\nS;84,5-88,5;39,5\nM;88,5-92,5;41,0\n"
    assert read(text).rows()[1] == ["S", "84,5-88,5", "39,5"]


def test_titles_and_notes_do_not_disturb_the_vote() -> None:
    text = (
        "Vest, women, spring\n"
        "All measures, as always, are taken close to the body, not over a jacket.\n\n"
        "Size;Chest\nS;86-91\nM;92-97\n\nSizes vary, a little, from batch to batch.\n"
    )
    assert separator_of(text) == ";"


def test_the_separator_that_a_file_names_is_taken_and_its_line_is_no_row() -> None:
    found = read("sep=,\nSize;x,Chest\nS,86-91\n")
    assert found.rows() == [["Size;x", "Chest"], ["S", "86-91"]]
    assert found.sheet.place(2, 1) == "B3"


def test_decimal_commas_that_a_scan_tore_off_separate_nothing() -> None:
    torn = "Height\n146, 152\n\n143, 0-154, 9\n88, 92\n\n86, 0-93, 9\n96, 100\n\n94, 0-101, 9\n"
    assert separator_of(torn) is None
    assert separator_of("Size, Chest\nS, 86-90\nM, 90-94\n") == ","


def test_commas_between_the_sizes_of_a_bracket_separate_nothing() -> None:
    text = "FIO\n10 (12, 13) zorbos, cor 3 (50g/95m).\n\nMEDIDAS\n83,5 (93, 103) cm de peito\n"
    assert separator_of(text) is None
    assert separator_of('Size,"Chest (86, 90)"\nS,86-90\nM,90-94\n') == ","


def test_several_tables_with_blank_lines_between_keep_their_places() -> None:
    found = read("Men\nSize,Chest\nS,36-38\n\nWomen\nSize,Chest\nS,34-35\n").sheet
    assert found.filled_rows == (0, 1, 2, 4, 5, 6)
    assert found.place(6, 1) == "B7"


def test_a_quoted_field_may_run_over_lines_and_rows_know_their_line() -> None:
    found = read('Size,Chest\nS,"34-36""\n86-91 cm"\nM,38\n').sheet
    assert found.text(1, 1) == '34-36"\n86-91 cm'
    assert found.line_of_row == {0: 1, 1: 2, 2: 4}


def test_a_price_in_quotation_marks_above_a_chart_is_one_field() -> None:
    titles = 'Colete Vento\n"R$ 329,00 R$ 279,00 em 5x"\n'
    text = titles + "Tamanho,Busto,Peso\nP,82-88,45-55\nM,88-96,55-70\n"
    assert [len(row.fields) for row in parsed_rows(text, ",")] == [1, 1, 3, 3, 3]


def test_inch_marks_are_no_quotation_marks() -> None:
    text = 'Size\tChest\tWaist\nS\t34"-36"\t28"\nM\t"38-40\t32"\nL\t42"\t36"\n'
    assert read(text).rows()[2] == ["M", '"38-40', '32"']


def test_labels_stay_as_they_are_written() -> None:
    assert read("Size,Label\n08,NA\n10-12,None\n00,n/a\n").rows()[1:] == [
        ["08", "NA"],
        ["10-12", "None"],
        ["00", "n/a"],
    ]


def test_signs_nobody_sees_are_left_out() -> None:
    found = read("Size;Chest\nS;86\u200f\u2013\u200b91\nM;92\x07-97\n")
    assert found.rows()[1:] == [["S", "86–91"], ["M", "92-97"]]


def test_a_last_row_that_breaks_off_is_left_out_and_said() -> None:
    found = read("Size,Chest,Waist\nS,86-91,71-76\nM,92-97,77-82\nL,98-1")
    assert found.rows()[-1] == ["M", "92-97", "77-82"]
    assert found.codes == ["truncated"]


def test_a_short_row_that_ends_its_line_is_kept() -> None:
    found = read("Size,Chest,Waist\nS,86-91,71-76\nM,92-97,77-82\nL,98-103\n")
    assert found.rows()[-1] == ["L", "98-103", ""]
    assert found.codes == []


@given(
    st.sampled_from([";", "\t", "|", ","]),
    st.lists(
        st.tuples(st.integers(30, 60), st.integers(61, 120), st.integers(121, 210)),
        min_size=2,
        max_size=12,
    ),
)
def test_any_even_table_comes_back_as_it_was(
    separator: str, numbers: list[tuple[int, int, int]]
) -> None:
    rows = [["Size", "Chest", "Height"]]
    rows += [[str(at), f"{a}-{b}", str(c)] for at, (a, b, c) in enumerate(numbers, start=1)]
    assert rows_of(read(joined(rows, separator)).sheet) == rows


def test_a_tab_separates_however_many_commas_the_cells_hold() -> None:
    rows = [
        ["Small, 4-9", "", "", ""],
        ["Sizes, EU", "S", "M", "L"],
        ["Waist, cm", "52-57", "57-62", "59-64"],
        ["Big, 12+", "", "", ""],
        ["Waist, cm", "72-77", "77-82", "103+"],
    ]
    assert separator_of(joined(rows, "\t")) == "\t"


def test_the_separator_within_quotation_marks_is_the_one_of_the_file() -> None:
    head = 'Size,"Chest, cm","Heights, cm"\n'
    rows = '44;46,88-92,"158-164, 170-176"\n48;50,96-100,"158-164, 176"\n'
    assert separator_of(head + rows) == ","


def test_even_rows_of_a_table_are_no_sentences() -> None:
    rows = [
        ["Size", "Baby", "Junior", "Adult L"],
        ["Weight", "less than 15 kg", "over 30 kg up to 45 kg", "70 kg+"],
        ["Chest", "up to 55 cm", "60-80 cm", "100 cm and above"],
    ]
    found = read(joined(rows, ","), "vest.csv")
    assert found.rows() == rows
    assert found.sheet.addressing is Addressing.PLAIN


def test_sentences_with_commas_are_no_even_rows() -> None:
    assert not evenly_separated("S: chest 88 cm, waist 70, hip 94\nM: chest 92, waist 74, hip 98\n")
    assert not evenly_separated("S 34,5 36,5\nM 38,5 40,5\nL 42,5 44,5\n")


def test_a_few_even_rows_among_more_plain_lines_part_none_of_those() -> None:
    rows = "Size\tBand (cm)\nA\t64-68\nB\t69-73\n".replace("\t", ";x;")
    lines = "\n".join(f"{size}\nChest 8{at}-9{at} cm" for at, size in enumerate("SML"))
    assert evenly_separated(rows)
    assert not evenly_separated(rows + lines)


def test_titles_and_notes_with_all_the_separators_of_a_row_are_rows() -> None:
    rows = "Size,Chest,Hip\nS,84,90\nM,88,94\nL,92,98\n"
    notes = "".join(f"{letter}. Measured loosely all around,,\n" for letter in "ABCDEF")
    assert evenly_separated(rows + notes)
    assert not evenly_separated(rows + notes.replace(",,", ""))
