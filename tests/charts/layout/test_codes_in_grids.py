"""Grids whose cells are codes, whose heads are lengths with heights, whose title is the measure."""

from __future__ import annotations

from charts.importer import read_bytes
from tests.charts.read_text import asked_at, questions, ranges, table, values


def test_codes_in_the_crossings_of_height_and_chest_name_the_sizes() -> None:
    reading = table(
        """
        Height / Chest | 80-86 cm | 86-92 cm
        152-162 cm | P1 | P2
        162-172 cm | P3 | P4
        """
    )
    assert values(reading)["P2 height"] == (152, 162)
    assert values(reading)["P3 chest"] == (80, 86)
    assert questions(reading) == []


def test_codes_may_begin_with_their_number() -> None:
    reading = table(
        """
        Tour de poitrine / Stature (en cm) | 156-164 | 164-172 | 172-180
        84-88 | 1C | 1M | -
        88-92 | 2C | 2M | 2XL
        """
    )
    found = values(reading)
    assert (found["2C chest"], found["2XL height"]) == ((88, 92), (172, 180))
    assert (len(found), questions(reading)) == (10, [])


def test_words_for_lengths_over_a_grid_stand_for_their_heights() -> None:
    reading = table(
        """
        Chest cm | Short 155-165 | Regular 165-175 | Tall (175-185)
        84-88 | S-S | S-R | S-T
        88-92 | M-S | M-R | M-T
        """
    )
    assert values(reading)["S-T chest"] == (84, 88)
    assert values(reading)["M-R height"] == (165, 175)
    assert questions(reading) == ["heading-two-readings"]


def test_the_title_over_a_grid_of_lengths_says_what_is_measured() -> None:
    reading = table(
        """
        Back length (cm)
        Size | Short | Regular | Long
        S | 38-40 | 40-42 | 42-44
        M | 40-42 | 42-44 | 44-46
        """
    )
    assert values(reading)["S Short back_length"] == (38, 40)
    assert questions(reading) == []


def test_units_that_changed_places_between_two_headings_are_put_right_and_asked_about() -> None:
    reading = table(
        """
        Size | Chest (in) | Chest (cm) | Waist (in) | Waist (cm)
        S | 86-91 | 34-36 | 69-74 | 27-29
        M | 91-97 | 36-38 | 74-79 | 29-31
        L | 97-102 | 38-40 | 79-84 | 31-33
        """
    )
    assert values(reading)["S chest"] == (86, 91)
    assert values(reading)["L waist"] == (79, 84)
    assert questions(reading) == ["units-swapped"]
    assert len(asked_at(reading, "units-swapped")) == len(ranges(reading)) == 6
    (finding,) = [one for one in reading.findings if one.code == "units-swapped"]
    assert [one.why for one in finding.candidates] == ["column-fits", "as-printed"]


def test_a_size_in_a_row_of_units_is_asked_about() -> None:
    reading = read_bytes(
        b"Size,Chest,Neck\nXS,,INCHES\nS,37-39,15\nM,39-41,16\nL,41-43,17\n", "sizes.csv"
    )
    lost = {one.id for one in reading.findings if one.code == "text-order"}
    assert lost
    assert all(lost & set(value.findings) for value in ranges(reading))


def test_two_girths_down_the_side_and_heights_across_name_the_sizes_inside() -> None:
    reading = table(
        """
        Chest (cm) | Hip (cm) | Height small below 165 cm | Height normal 165 to 172 cm
         | | Size | Size
        75-78 | 85-88 | 16 | 32
        79-82 | 89-92 | 17 | 34
        83-86 | 93-96 | - | 36
        """
    )
    found = values(reading)
    due: dict[str, object] = {
        "16 chest": (75, 78),
        "16 hip": (85, 88),
        "16 height": (None, 165),
        "36 height": (165, 172),
    }
    assert {key: found[key] for key in due} == due
    assert len(found) == 15
    assert questions(reading) == []


def test_lengths_for_two_heights_are_no_sizes() -> None:
    reading = table(
        """
        Size | Chest (cm) | Back length, height 165 cm | Back length, height 175 cm
        S | 84-88 | 40 | 44
        M | 88-92 | 41 | 45
        """
    )
    assert {size.label for chart in reading.charts for size in chart.sizes} == {"S", "M"}


def test_columns_of_the_same_sizes_that_are_not_understood_are_asked_about() -> None:
    reading = table(
        """
        Height | small | middling | big
        Weight | | |
        45-50 kg | S | S | M
        50-55 kg | S | M | L
        55-60 kg | M | L | L
        """
    )
    asked = {one.id for one in reading.findings if one.code == "label-repeated"}
    assert ranges(reading)
    assert all(asked & set(value.findings) for value in ranges(reading))
