"""Units that the girths and heights of the same sizes refute: asked, and not on sound charts."""

from __future__ import annotations

import pytest

from tests.charts.read_text import asked_at, figures, questions, ranges, table

STRETCHED = {
    "inseam": ("Size | Waist (cm) | Inseam | Hip\nS | 71 | 30 | 92\nM | 76 | 31 | 97", 76.2),
    "inside leg of children": (
        "Age | Waist (cm) | Inside leg\n4 | 53 | 18\n6 | 55 | 21\n8 | 58 | 24",
        45.72,
    ),
    "sleeve": ("Size | Chest (cm) | Sleeve\nS | 92 | 33\nM | 100 | 34\nL | 108 | 35", 83.82),
    "thigh in a chart in inches": (
        "Size | Waist (in) | Thigh | Knee\n28 | 28 | 54 | 38\n30 | 30 | 56 | 39\n32 | 32 | 58 | 40",
        54.0,
    ),
    "calf": ("Size | Chest | Calf\nS | 88 cm | 14\nM | 94 cm | 15\nL | 100 cm | 16", 35.56),
    "leg beside a height": (
        "Size | Height | Inside leg\n8 | 128 cm | 24\n10 | 140 cm | 26\n12 | 152 cm | 28",
        60.96,
    ),
}
PRINTED = {
    "inseam": "Size | Chest (cm) | Inseam (cm)\nS | 84-90 | 30\nM | 90-96 | 31\nL | 96-104 | 32",
    "sleeve by a note": (
        "Size | Chest | Sleeve\nS | 84-90 | 32\nM | 90-96 | 33\nL | 96-104 | 34\nAll sizes in cm"
    ),
    "jacket by a note": (
        "Size | Chest | Body length\nS | 104 | 27\nM | 110 | 28\nL | 118 | 29\nMeasurements in cm"
    ),
    "rise and outseam": (
        "Size | Hip | Rise | Outseam\nS | 92 | 10 | 40\nM | 98 | 10.5 | 41\nL | 104 | 11 | 42\ncm"
    ),
    "weight beside a height": (
        "Size | Height (cm) | Weight (lbs)\nS | 158-166 | 50-60\nM | 164-172 | 58-70"
        "\nL | 170-178 | 68-82"
    ),
    "weight in pounds under kg": (
        "Size | Height (cm) | Weight (kg)\nS | 155-163 | 110-130\nM | 160-168 | 130-150"
        "\nL | 168-176 | 150-170\nXL | 176-184 | 170-190"
    ),
    "weight beside a girth": (
        "Size | Chest | Weight\nS | 34-36 | 50-60\nM | 36-38 | 58-70\nL | 38-40 | 68-82\nin / lb"
    ),
}
SOUND = {
    "a leg in cm": "Size | Waist (cm) | Inseam (cm)\nS | 71 | 76\nM | 76 | 78\nL | 81 | 80",
    "a child's leg": (
        "Size | Height (cm) | Inseam (cm)\n92 | 92 | 37\n104 | 104 | 44\n116 | 116 | 51"
    ),
    "large girths": "Size | Hip (cm) | Inseam (cm)\n4XL | 140 | 80\n5XL | 148 | 80\n6XL | 156 | 80",
    "a short sleeve beside a length": (
        "Size | Chest (cm) | Length (cm) | Sleeve (cm)\nS | 100 | 70 | 21\nM | 106 | 72 | 22"
        "\nL | 112 | 74 | 23"
    ),
    "legs of shorts": (
        "Cycling shorts\nSize | Waist (cm) | Inseam (cm)\nS | 71 | 24\nM | 76 | 25\nL | 81 | 26"
    ),
    "a thigh": "Size | Hip (cm) | Thigh (cm)\nS | 92 | 54\nM | 98 | 57\nL | 104 | 60",
    "children's pounds": (
        "Size | Height (cm) | Weight (lbs)\n4 | 104 | 38\n6 | 116 | 46\n8 | 128 | 58\n10 | 140 | 75"
    ),
    "a heavy person": (
        "Size | Height (cm) | Weight (kg)\nXL | 175-180 | 100-115\n2XL | 178-183 | 110-125"
        "\n3XL | 180-185 | 120-135"
    ),
}
UNITS = {"unit-missing", "units-swapped"}


@pytest.mark.parametrize("name", STRETCHED)
def test_a_unit_taken_from_the_neighbours_is_asked_where_the_girths_refute_it(name: str) -> None:
    text, first = STRETCHED[name]
    reading = table(text)
    assert questions(reading) == ["unit-missing"]
    asked = asked_at(reading, "unit-missing")
    read = [figures(one) for one in ranges(reading) if one.place in asked]
    assert read[0] == first
    assert len(asked) % len(reading.charts[0].sizes) == 0


@pytest.mark.parametrize("name", PRINTED)
def test_a_printed_unit_is_asked_where_the_girths_refute_it(name: str) -> None:
    reading = table(PRINTED[name])
    assert questions(reading) == ["units-swapped"]
    columns = 2 if name == "rise and outseam" else 1
    sizes = len(reading.charts[0].sizes)
    assert len(asked_at(reading, "units-swapped")) == columns * sizes


@pytest.mark.parametrize("name", SOUND)
def test_sound_proportions_are_asked_nothing_about_their_units(name: str) -> None:
    assert UNITS.isdisjoint(questions(table(SOUND[name])))
