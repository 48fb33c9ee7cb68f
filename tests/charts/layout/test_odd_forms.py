"""Layouts beyond the catalogue: met in shops' tables, each as a table of its own."""

from __future__ import annotations

from charts.importer import read_bytes
from tests.charts.read_text import asked_at, questions, ranges, table, values

CHESTS = {"S chest": (84, 88), "M chest": (88, 92), "L chest": (92, 96)}


def test_a_headless_column_beside_a_measure_may_be_the_same_in_inches() -> None:
    reading = table(
        """
        Size | Chest (cm) | | Waist (cm) |
        S | 84-88 | 33-34.5 | 68-72 | 27-28.5
        M | 88-92 | 34.5-36 | 72-76 | 28.5-30
        L | 92-96 | 36-38 | 76-80 | 30-31.5
        """
    )
    assert values(reading)["M chest"] == (88, 92)
    assert values(reading)["M waist"] == (72, 76)
    assert questions(reading) == []
    assert ranges(reading)[0].also_published


def test_labels_across_may_carry_the_unit_of_their_column() -> None:
    reading = table(
        """
        Size | S (cm) | S (in) | M (cm) | M (in)
        Chest | 84-88 | 33-34.5 | 88-92 | 34.5-36
        Waist | 68-72 | 27-28.5 | 72-76 | 28.5-30
        """
    )
    assert values(reading)["S chest"] == (84, 88)
    assert values(reading)["M waist"] == (72, 76)
    assert questions(reading) == []


def test_the_closing_of_a_letter_is_no_band() -> None:
    reading = read_bytes(
        b"Hello,\n\nhere are the sizes:\n\nSize\tChest (cm)\tWaist (cm)\n"
        b"S\t84-88\t68-72\nM\t88-92\t72-76\nL\t92-96\t76-80\n\nKind regards\nThe shop\n",
        "answer.txt",
    )
    assert [chart.band for chart in reading.charts] == [None]
    assert values(reading)["L chest"] == (92, 96)


def test_rows_of_labels_may_stand_below_the_measures() -> None:
    reading = table(
        """
        Chest (cm) | 84-88 | 88-92 | 92-96
        UK | 10 | 12 | 14
        EU | 38 | 40 | 42
        Waist (cm) | 68-72 | 72-76 | 76-80
        """
    )
    (chart,) = reading.charts
    first = chart.sizes[0]
    assert [value.dimension.value for value in first.ranges] == ["chest", "waist"]
    assert first.label == "10"
    assert first.also


def test_one_row_in_another_unit_is_asked_about_alone() -> None:
    reading = table(
        """
        Size | Chest (cm) | Waist (cm)
        S | 84-88 | 68-72
        M | 34.5-36 | 28.5-30
        L | 92-96 | 76-80
        XL | 96-100 | 80-84
        """
    )
    bearing = {value.place for value in ranges(reading) if value.findings}
    assert bearing == {"B3", "C3"}


def test_lines_of_a_key_and_its_value_stand_before_the_table() -> None:
    reading = table(
        """
        Brand | Marlow
        Model | Drift
        Season | 2024
        |
        Size | Chest (cm)
        S | 84-88
        M | 88-92
        L | 92-96
        """
    )
    assert values(reading) == CHESTS
    assert questions(reading) == []
    model = reading.charts[0].model
    assert model is not None
    assert model.text == "Drift"


def test_a_row_above_may_say_whose_measures_they_are() -> None:
    reading = table(
        """
        Gender | Women
        Size | Chest (cm)
        S | 84-88
        M | 88-92
        L | 92-96
        """
    )
    assert [chart.band for chart in reading.charts] == ["women"]


def test_a_word_for_a_model_may_still_head_a_row_of_sizes() -> None:
    reading = table(
        """
        Model | S
        Chest (cm) | 84-88
        Waist (cm) | 64-68
        """
    )
    assert values(reading) == {"S chest": (84, 88), "S waist": (64, 68)}


def test_a_false_friend_is_read_in_the_language_of_its_neighbours() -> None:
    reading = table(
        """
        Size | Brust (cm) | Taille (cm) | Rückenlänge (cm)
        S | 84-88 | 68-72 | 40-42
        M | 88-92 | 72-76 | 41-43
        L | 92-96 | 76-80 | 42-44
        """
    )
    assert values(reading)["M waist"] == (72, 76)
    assert questions(reading) == []


def test_a_word_for_clothing_size_heads_the_labels() -> None:
    reading = table(
        """
        Kleidergröße | Brustumfang (cm)
        S | 84-88
        M | 88-92
        L | 92-96
        """
    )
    assert values(reading) == CHESTS
    assert questions(reading) == []


def test_the_upper_end_may_stand_before_the_lower() -> None:
    reading = table(
        """
        Size | Chest max (cm) | Chest min (cm)
        S | 88 | 84
        M | 92 | 88
        L | 96 | 92
        """
    )
    assert values(reading) == CHESTS
    assert questions(reading) == []


def test_a_sentence_below_may_say_whose_measures_they_are() -> None:
    reading = table(
        """
        Size | Chest (cm)
        S | 98
        M | 102
        L | 106
        All measurements are of the finished garment.
        """
    )
    assert {value.basis for value in ranges(reading)} == {"finished"}
    assert questions(reading) == []


def test_a_promise_of_both_units_settles_neither() -> None:
    reading = table(
        """
        Measurements in cm (in)
        Size | Chest | Waist
        S | 84 (33) | 68 (26.8)
        M | 88 (34.6) | 72 (28.3)
        L | 92 (36.2) | 76 (29.9)
        """
    )
    assert values(reading)["S chest"] == 84
    assert values(reading)["L waist"] == 76
    assert asked_at(reading, "units-disagree") == []


def test_a_figure_out_of_all_proportion_is_asked_about() -> None:
    reading = table(
        """
        Size | Chest (cm) | Waist (cm)
        S | 84-88 | 68-72
        M | 88-92 | 72-76
        L | 92-96 | 152-160
        XL | 96-100 | 80-84
        """
    )
    bearing = [value for value in ranges(reading) if value.place == "C4"]
    assert bearing
    assert bearing[0].findings


def test_headings_spread_over_lines_of_a_text_page_are_joined() -> None:
    text = (
        b"          Chest      Waist\n"
        b"Size      (cm)       (cm)\n"
        b"S         84-88      68-72\n"
        b"M         88-92      72-76\n"
        b"L         92-96      76-80\n"
    )
    reading = read_bytes(text, "page.txt")
    assert values(reading)["M chest"] == (88, 92)
    assert values(reading)["L waist"] == (76, 80)
    assert questions(reading) == []
