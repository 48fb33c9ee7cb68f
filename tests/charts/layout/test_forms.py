"""Every layout that was met in published tables, as a table of its own."""

from __future__ import annotations

import io

import openpyxl
from openpyxl.comments import Comment

from charts.importer import read_bytes
from tests.charts.read_text import asked_at, notes, questions, ranges, table, values

GIRLS = {
    "S chest": (84, 88), "S waist": (68, 72),
    "M chest": (88, 92), "M waist": (72, 76),
    "L chest": (92, 96), "L waist": (76, 80),
}  # fmt: skip


def test_sizes_run_down_the_rows() -> None:
    reading = table(
        """
        Size | Chest (cm) | Waist (cm)
        S | 84-88 | 68-72
        M | 88-92 | 72-76
        L | 92-96 | 76-80
        """
    )
    assert values(reading) == GIRLS
    assert questions(reading) == []


def test_sizes_run_across_the_columns() -> None:
    reading = table(
        """
        Size | S | M | L
        Chest (cm) | 84-88 | 88-92 | 92-96
        Waist (cm) | 68-72 | 72-76 | 76-80
        """
    )
    assert values(reading) == GIRLS
    assert questions(reading) == []


def test_sizes_stand_in_the_last_row() -> None:
    reading = table(
        """
        Chest (cm) | 84-88 | 88-92 | 92-96
        Waist (cm) | 68-72 | 72-76 | 76-80
        Size | S | M | L
        """
    )
    assert values(reading) == GIRLS
    assert questions(reading) == []


def test_the_corner_may_be_empty() -> None:
    reading = table(
        """
        | Chest (cm) | Waist (cm)
        S | 84-88 | 68-72
        M | 88-92 | 72-76
        L | 92-96 | 76-80
        """
    )
    assert values(reading) == GIRLS
    assert questions(reading) == []


def test_the_heading_of_the_sizes_may_be_missing_altogether() -> None:
    reading = table(
        """
        Chest (cm) | Waist (cm)
        S | 84-88 | 68-72
        M | 88-92 | 72-76
        L | 92-96 | 76-80
        """
    )
    assert values(reading) == GIRLS


def test_tables_stand_on_top_of_each_other_with_titles_between() -> None:
    reading = table(
        """
        Women
        Size | Chest (cm)
        S | 84-88
        M | 88-92

        Men
        Size | Chest (cm)
        S | 92-96
        M | 96-100
        """
    )
    assert values(reading) == {
        "women S chest": (84, 88),
        "women M chest": (88, 92),
        "men S chest": (92, 96),
        "men M chest": (96, 100),
    }
    assert questions(reading) == []


def test_a_band_between_the_rows_shares_the_heading_above() -> None:
    reading = table(
        """
        Size | Chest (cm)
        Women
        S | 84-88
        M | 88-92
        Men
        S | 92-96
        M | 96-100
        """
    )
    assert values(reading) == {
        "women S chest": (84, 88),
        "women M chest": (88, 92),
        "men S chest": (92, 96),
        "men M chest": (96, 100),
    }
    assert questions(reading) == []


def test_bands_between_rows_share_the_sizes_across_above() -> None:
    reading = table(
        """
        Size | S | M
        Women
        Chest (cm) | 84-88 | 88-92
        Waist (cm) | 68-72 | 72-76
        Men
        Chest (cm) | 92-96 | 96-100
        Waist (cm) | 80-84 | 84-88
        """
    )
    assert values(reading)["women M waist"] == (72, 76)
    assert values(reading)["men S chest"] == (92, 96)
    assert len(values(reading)) == 8


def test_tables_stand_side_by_side_with_an_empty_column_between() -> None:
    reading = table(
        """
        Women | | | Men |
        Size | Chest (cm) | | Size | Chest (cm)
        S | 84-88 | | S | 92-96
        M | 88-92 | | M | 96-100
        """
    )
    assert values(reading) == {
        "women S chest": (84, 88),
        "women M chest": (88, 92),
        "men S chest": (92, 96),
        "men M chest": (96, 100),
    }


def test_tables_stand_side_by_side_without_a_gap() -> None:
    reading = table(
        """
        Size | Chest (cm) | Size | Waist (cm)
        S | 84-88 | 1 | 68-72
        M | 88-92 | 2 | 72-76
        """
    )
    assert values(reading) == {
        "S chest": (84, 88),
        "M chest": (88, 92),
        "1 waist": (68, 72),
        "2 waist": (72, 76),
    }


def test_a_band_stands_in_the_first_column() -> None:
    reading = table(
        """
        | Size | Chest (cm)
        Women | S | 84-88
        | M | 88-92
        Men | S | 92-96
        | M | 96-100
        """
    )
    assert values(reading) == {
        "women S chest": (84, 88),
        "women M chest": (88, 92),
        "men S chest": (92, 96),
        "men M chest": (96, 100),
    }


def test_band_words_name_the_sizes_when_nothing_else_does() -> None:
    reading = table(
        """
        Group | Weight (kg)
        Child | 15-40
        Adult | 40-100
        """
    )
    assert values(reading) == {"Child weight": (15, 40), "Adult weight": (40, 100)}


def test_a_band_stands_over_the_columns() -> None:
    reading = table(
        """
        Size | Women's chest (cm) | Men's chest (cm)
        S | 84-88 | 92-96
        M | 88-92 | 96-100
        """
    )
    assert values(reading) == {
        "women S chest": (84, 88),
        "women M chest": (88, 92),
        "men S chest": (92, 96),
        "men M chest": (96, 100),
    }


def test_a_heading_of_two_rows_gives_dimension_and_unit() -> None:
    reading = table(
        """
        Size | Chest | | Waist |
        | cm | inch | cm | inch
        S | 86-91 | 34-36 | 71-76 | 28-30
        M | 91-96 | 36-38 | 76-81 | 30-32
        """
    )
    assert values(reading) == {
        "S chest": (86, 91),
        "S waist": (71, 76),
        "M chest": (91, 96),
        "M waist": (76, 81),
    }
    assert questions(reading) == []


def test_a_heading_of_two_rows_gives_the_two_ends() -> None:
    reading = table(
        """
        Size | Chest (cm) | | Waist (cm) |
        | from | to | from | to
        S | 84 | 88 | 68 | 72
        M | 88 | 92 | 72 | 76
        L | 92 | 96 | 76 | 80
        """
    )
    assert values(reading) == GIRLS
    assert questions(reading) == []


def test_the_two_ends_are_headed_by_themselves() -> None:
    reading = table(
        """
        Size | Chest min (cm) | Chest max (cm) | Waist min (cm) | Waist max (cm)
        S | 84 | 88 | 68 | 72
        M | 88 | 92 | 72 | 76
        L | 92 | 96 | 76 | 80
        """
    )
    assert values(reading) == GIRLS
    assert questions(reading) == []


def test_a_unit_row_stands_under_the_dimension() -> None:
    reading = table(
        """
        Size | S | M | L
        Chest | | |
        inches | 34-36 | 36-38 | 38-40
        cm | 86-91 | 91-97 | 97-102
        Waist | | |
        inches | 28-30 | 30-32 | 32-34
        cm | 71-76 | 76-81 | 81-86
        """
    )
    assert values(reading) == {
        "S chest": (86, 91), "S waist": (71, 76),
        "M chest": (91, 97), "M waist": (76, 81),
        "L chest": (97, 102), "L waist": (81, 86),
    }  # fmt: skip


def test_a_grid_of_height_and_weight_holds_the_sizes() -> None:
    reading = table(
        r"""
        Weight (kg) \ Height (cm) | 150-160 | 160-170 | 170-180
        45-55 | S | S | M
        55-65 | M | M | L
        """
    )
    assert values(reading)["S weight"] == (45, 55)
    assert values(reading)["S height"] == (150, 170)
    assert values(reading)["L height"] == (170, 180)
    assert "label-repeated" in questions(reading)  # M fills an uneven part of the grid


def test_a_grid_of_sizes_and_lengths_holds_the_back_length() -> None:
    reading = table(
        """
        Back length (cm) | Short | Regular | Long
        S | 38-40 | 40-42 | 42-44
        M | 40-42 | 42-44 | 44-46
        """
    )
    assert values(reading)["S Short back_length"] == (38, 40)
    assert values(reading)["M Long back_length"] == (44, 46)
    assert len(values(reading)) == 6


def test_a_table_of_lengths_is_a_chart_of_its_own() -> None:
    reading = table(
        """
        Size | Chest (cm)
        S | 84-88
        M | 88-92

        Length | Height (cm)
        Short | 150-160
        Regular | 160-170
        Long | 170-180
        """
    )
    assert values(reading)["Short height"] == (150, 160)
    assert [size.label for size in reading.charts[1].sizes] == [None, None, None]
    assert "second-axis" in notes(reading)


def test_one_row_per_size_and_dimension() -> None:
    reading = table(
        """
        Size | Measurement | Value | Unit
        S | Chest | 84-88 | cm
        S | Waist | 68-72 | cm
        M | Chest | 88-92 | cm
        M | Waist | 72-76 | cm
        L | Chest | 92-96 | cm
        L | Waist | 76-80 | cm
        """
    )
    assert values(reading) == GIRLS
    assert questions(reading) == []


def test_one_row_per_size_and_dimension_with_two_ends() -> None:
    reading = table(
        """
        Size | Measurement | From (cm) | To (cm)
        S | Chest | 84 | 88
        S | Waist | 68 | 72
        M | Chest | 88 | 92
        M | Waist | 72 | 76
        L | Chest | 92 | 96
        L | Waist | 76 | 80
        """
    )
    assert values(reading) == GIRLS


def test_several_models_stand_in_one_sheet_by_column() -> None:
    reading = table(
        """
        Model | Size | Chest (cm)
        Alder | S | 84-88
        Alder | M | 88-92
        Birch | S | 86-90
        Birch | M | 90-94
        """
    )
    assert [chart.model.text for chart in reading.charts if chart.model] == ["Alder", "Birch"]
    assert [len(chart.sizes) for chart in reading.charts] == [2, 2]
    assert questions(reading) == []


def test_several_models_stand_in_one_sheet_by_title() -> None:
    reading = table(
        """
        Alder vest
        Size | Chest (cm)
        S | 84-88
        M | 88-92

        Birch vest
        Size | Chest (cm)
        S | 86-90
        M | 90-94
        """
    )
    assert [chart.model.text for chart in reading.charts if chart.model] == ["Alder", "Birch"]


def test_a_row_may_be_shorter_than_its_heading() -> None:
    reading = table(
        """
        Size | Chest (cm) | Waist (cm)
        S | 84-88 | 68-72
        M | 88-92
        L | 92-96 | 76-80
        """
    )
    assert values(reading) == {key: ends for key, ends in GIRLS.items() if key != "M waist"}
    assert questions(reading) == ["columns-shifted"]
    assert asked_at(reading, "columns-shifted") == ["B3"]  # it may as well be the waist


def test_a_running_number_and_a_step_column_are_no_measures() -> None:
    reading = table(
        """
        No. | Size | Chest (cm) | Step
        1 | S | 84-88 | 4
        2 | M | 88-92 | 4
        3 | L | 92-96 | 4
        """
    )
    assert values(reading) == {key: ends for key, ends in GIRLS.items() if "chest" in key}
    assert questions(reading) == []


def test_tolerance_rows_go_to_the_row_they_name() -> None:
    reading = table(
        """
        Size | S | M
        Finished length (cm) | 50 | 52
        Finished length tolerance (cm) | +/- 1 | +/- 1
        """
    )
    tolerances = [
        value.tolerance for chart in reading.charts for s in chart.sizes for value in s.ranges
    ]
    assert tolerances == [1, 1]
    assert "tolerance-kept" in notes(reading)


def test_footnotes_and_stars_are_no_sizes() -> None:
    reading = table(
        """
        Size | Chest* (cm) | Waist** (cm)
        S | 84-88 | 68-72
        M | 88-92 | 72-76
        L | 92-96 | 76-80
        * Measured under the arms, over a light shirt, at the end of a breath.
        ** Measured at the narrowest place.
        """
    )
    assert values(reading) == GIRLS
    assert len(reading.charts[0].notes) == 2


def test_several_label_systems_leave_one_key_and_keep_the_others() -> None:
    reading = table(
        """
        Size | EU | Chest (cm)
        S | 36 | 84-88
        M | 38 | 88-92
        L | 40 | 92-96
        """
    )
    first = reading.charts[0].sizes[0]
    assert (first.label, [(one.label, one.heading) for one in first.also]) == ("S", [("36", "EU")])
    assert "label-key-chosen" in notes(reading)


def test_a_cell_a_line_is_laid_out_again() -> None:
    text = "SIZE\nCHEST (cm)\nWAIST (cm)\nS\n84-88\n68-72\nM\n88-92\n72-76\nL\n92-96\n76-80\n"
    reading = table(text)
    assert values(reading) == GIRLS
    assert reading.charts[0].sizes[0].ranges[0].place == "line 5"


def test_a_sentence_a_size_is_laid_out_again() -> None:
    reading = table(
        "Size S: Chest 84-88 cm; Waist 68-72 cm\nSize M: Chest 88-92 cm; Waist 72-76 cm"
    )
    assert values(reading) == {key: ends for key, ends in GIRLS.items() if key[0] != "L"}


def test_a_page_without_a_table_says_so() -> None:
    reading = table("Our vests are made by hand.\nAsk for a fitting.\n")
    assert reading.charts == ()
    assert questions(reading) == ["no-table"]


def test_french_ends_stand_under_a_measure_of_two_columns() -> None:
    reading = table(
        """
        Taille | Tour de poitrine (cm) de | à | Tour de taille (cm) de | à
        S | 84 | 88 | 68 | 72
        M | 88 | 92 | 72 | 76
        L | 92 | 96 | 76 | 80
        """
    )
    assert values(reading) == GIRLS
    assert questions(reading) == []


def test_french_ends_in_a_row_of_their_own_are_no_country() -> None:
    reading = table(
        """
        Taille | Tour de poitrine cm | Tour de poitrine cm | Tour de taille cm | Tour de taille cm
        | de | à | de | à
        S | 84 | 88 | 68 | 72
        M | 88 | 92 | 72 | 76
        L | 92 | 96 | 76 | 80
        """
    )
    assert values(reading) == GIRLS
    assert questions(reading) == []


def test_a_label_may_carry_the_riders_weight() -> None:
    reading = table(
        """
        Größe | Brustumfang (cm)
        S (bis 60 kg) | 84-88
        M (60-75 kg) | 88-92
        L (über 75 kg) | 92-96
        """
    )
    assert values(reading) == {
        "S weight": (None, 60), "S chest": (84, 88),
        "M weight": (60, 75), "M chest": (88, 92),
        "L weight": (75, None), "L chest": (92, 96),
    }  # fmt: skip
    assert questions(reading) == []


def test_letters_under_a_word_for_length_are_lengths() -> None:
    reading = table(
        """
        Size | Chest (cm)
        S | 84-88
        M | 88-92
        Length | Back length (cm)
        S | 38-40
        R | 40-42
        L | 42-44
        """
    )
    assert [size.length for size in reading.charts[1].sizes] == ["S", "R", "L"]
    assert [size.label for size in reading.charts[1].sizes] == [None, None, None]


def test_lengths_across_below_widths_across_are_a_table_of_their_own() -> None:
    reading = table(
        """
        Widths | S | M | L
        Chest (cm) | 84-88 | 88-92 | 92-96
        Lengths | Short | Regular | Long
        Back length (cm) | 38-40 | 40-42 | 42-44
        """
    )
    assert values(reading)["L chest"] == (92, 96)
    assert values(reading)["Long back_length"] == (42, 44)


def test_a_grid_may_name_its_measure_over_every_column() -> None:
    reading = table(
        """
        Height (cm) | Weight 40-50 kg | Weight 50-60 kg
        150-160 | S | M
        160-170 | M | L
        """
    )
    assert values(reading)["S weight"] == (40, 50)
    assert values(reading)["L height"] == (160, 170)


def test_a_grid_of_masses_without_a_word_is_of_weight() -> None:
    reading = table(
        """
        | 40-50 kg | 50-60 kg
        150-160 cm | S | M
        160-170 cm | S | L
        """
    )
    assert values(reading)["S weight"] == (40, 50)
    assert values(reading)["S height"] == (150, 170)
    assert questions(reading) == ["heading-two-readings"]


def test_cup_letters_and_numbers_name_a_size_together() -> None:
    reading = table(
        """
        Bust (cm)
        | A | B
        70 | 82-84 | 84-86
        75 | 87-89 | 89-91
        """
    )
    assert values(reading) == {
        "70A chest": (82, 84),
        "70B chest": (84, 86),
        "75A chest": (87, 89),
        "75B chest": (89, 91),
    }


def test_all_sizes_in_one_unit_may_be_followed_by_all_in_the_other() -> None:
    reading = table(
        """
        Size | S | M | S | M
        Chest | 86-91 cm | 91-97 cm | 34-36 in | 36-38 in
        """
    )
    assert values(reading) == {"S chest": (86, 91), "M chest": (91, 97)}
    assert questions(reading) == []


def test_a_row_in_inches_may_stand_below_its_row_in_centimetres() -> None:
    reading = table(
        """
        Size | Unit | Chest | Waist
        S | cm | 86-91 | 71-76
        | in | 34-36 | 28-30
        M | cm | 91-97 | 76-81
        | in | 36-38 | 30-32
        """
    )
    assert values(reading) == {
        "S chest": (86, 91),
        "S waist": (71, 76),
        "M chest": (91, 97),
        "M waist": (76, 81),
    }
    assert questions(reading) == []


def test_a_unit_column_stands_behind_each_measure() -> None:
    reading = table(
        """
        Size | Chest | Unit | Back length | Unit
        S | 84-88 | cm | 16-16.5 | in
        M | 88-92 | cm | 16.5-17 | in
        """
    )
    assert values(reading)["M chest"] == (88, 92)
    assert values(reading)["M back_length"] == (41.91, 43.18)
    assert questions(reading) == []


def test_groups_of_units_need_no_merged_cell() -> None:
    reading = table(
        """
        | cm | | inch |
        Size | Chest | Waist | Chest | Waist
        S | 86-91 | 71-76 | 34-36 | 28-30
        M | 91-97 | 76-81 | 36-38 | 30-32
        """
    )
    assert values(reading)["M waist"] == (76, 81)
    assert questions(reading) == []


def test_groups_of_bands_need_no_merged_cell() -> None:
    reading = table(
        """
        | Women | | Men |
        Size | Chest (cm) | Waist (cm) | Chest (cm) | Waist (cm)
        S | 84-88 | 68-72 | 92-96 | 78-82
        M | 88-92 | 72-76 | 96-100 | 82-86
        """
    )
    assert values(reading)["women M waist"] == (72, 76)
    assert values(reading)["men M waist"] == (82, 86)


def test_bands_stand_under_the_measures() -> None:
    reading = table(
        """
        Size | Chest (cm) | | Waist (cm) |
        | Women | Men | Women | Men
        S | 84-88 | 92-96 | 68-72 | 78-82
        M | 88-92 | 96-100 | 72-76 | 82-86
        """
    )
    assert values(reading)["women S waist"] == (68, 72)
    assert values(reading)["men M chest"] == (96, 100)


def test_reference_letters_before_the_names_are_no_part_of_them() -> None:
    reading = table(
        """
        Ref | Measure | S | M
        A | Chest (cm) | 84-88 | 88-92
        B | Waist (cm) | 68-72 | 72-76
        """
    )
    assert values(reading)["M chest"] == (88, 92)
    assert {value.kind for value in ranges(reading)} == {"range"}


def test_a_list_of_measures_in_a_cell_is_parted() -> None:
    cell = "<td>Chest: {}<br>Waist: {}</td>"
    page = (
        "<table><tr><th>Size</th><th>Measures</th></tr>"
        f"<tr><td>S</td>{cell.format('84-88 cm', '68-72 cm')}</tr>"
        f"<tr><td>M</td>{cell.format('88-92 cm', '72-76 cm')}</tr></table>"
    )
    reading = read_bytes(page.encode(), "list.html")
    assert values(reading)["M waist"] == (72, 76)


def test_a_row_of_figures_without_a_size_is_asked_about() -> None:
    reading = table(
        """
        Size | Chest (cm) | Waist (cm)
        S | 84-88 | 68-72
        | 90-91 | 70-71
        M | 88-92 | 72-76
        """
    )
    assert asked_at(reading, "blank-inside") == ["B3", "C3"]


def test_headings_that_slipped_by_one_column_are_asked_about_at_every_value() -> None:
    reading = table(
        """
        Size | Height (cm) | Chest (cm) | Waist (cm)
        S | 84-88 | 66-70 |
        M | 88-92 | 70-74 |
        L | 92-96 | 74-78 |
        """
    )
    assert questions(reading) == ["columns-shifted"]
    assert len(asked_at(reading, "columns-shifted")) == 6


def test_rows_longer_than_their_heading_are_asked_about_at_every_value() -> None:
    reading = table(
        """
        Size | Chest (cm) | Waist (cm)
        S | 84 | 5-88 | 5 | 68 | 5-72
        M | 88 | 5-92 | 5 | 72 | 5-76
        """
    )
    asked = asked_at(reading, "columns-shifted")
    assert len(asked) == len(ranges(reading)) > 0


def test_a_comment_on_a_size_may_name_the_band() -> None:
    book = openpyxl.Workbook()
    page = book.active
    assert page is not None
    for row in (("Size", "Chest (cm)"), ("S", "84-88"), ("M", "88-92"), ("S", "92-96")):
        page.append(row)
    page.append(("M", "96-100"))
    page["A2"].comment = Comment("Women", "")
    page["A4"].comment = Comment("Men", "")
    out = io.BytesIO()
    book.save(out)
    reading = read_bytes(out.getvalue(), "vests.xlsx")
    assert values(reading)["women M chest"] == (88, 92)
    assert values(reading)["men S chest"] == (92, 96)


def test_a_sheets_name_may_say_whose_measures_stand_on_it() -> None:
    book = openpyxl.Workbook()
    book.remove(book.worksheets[0])
    for title, chest in (("Body", 84), ("Garment", 100)):
        page = book.create_sheet(title)
        for row in (["Size", "Chest (cm)"], ["S", chest], ["M", chest + 4], ["L", chest + 8]):
            page.append(row)
    out = io.BytesIO()
    book.save(out)
    reading = read_bytes(out.getvalue(), "vests.xlsx")
    assert [value.basis for value in ranges(reading)] == ["body"] * 3 + ["finished"] * 3


def test_a_part_without_names_below_a_grid_is_read_by_itself_and_asked_about() -> None:
    reading = table(
        """
        Back length (cm) | S | M | L
        Short | 40 | 41 | 42
        Regular | 43 | 44 | 45

        40 | 38 | 39 | 40
        42 | 41 | 42 | 43
        """
    )
    assert [int(value.value) for value in ranges(reading) if value.value][:6] == [
        *(40, 43),
        *(41, 44),
        *(42, 45),
    ]
    below = [value for value in ranges(reading) if int(value.place[1:]) > 4]
    assert below
    assert all(value.findings for value in below)


def test_rows_that_all_could_be_headings_are_no_crash() -> None:
    """Five rows of names and ends, a figure behind each: nothing is left below the headings."""
    measured = [("XS", "Torace"), ("XS", "Vita"), ("S", "Torace"), ("S", "Vita"), ("M", "Torace")]
    rows = [f"Taglia {size},Misura {name},Da (cm) 80,A (cm) 86" for size, name in measured]
    assert not read_bytes("\n".join(rows).encode(), "chart.csv").charts
