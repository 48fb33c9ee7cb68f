"""Blocks of one size each: the size on its own line, and its measures on the lines below."""

from __future__ import annotations

from textwrap import dedent

import pytest

from charts.importer import read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.size_blocks import size_block_table
from charts.readers.captured.size_names import size_line
from charts.schema import FileReading
from tests.charts.read_text import questions, values


def _read(text: str) -> FileReading:
    return read_pasted(dedent(text))


def _blocks(*sizes: str, unit: str = "") -> str:
    """A block for each size, each chest four larger than the one before."""
    return "\n\n".join(
        f"{size}\nChest (cm): {82 + 4 * at} - {85 + 4 * at}{unit}\nWaist (cm): {66 + 4 * at}"
        for at, size in enumerate(sizes)
    )


def _of(reading: FileReading, dimension: str) -> dict[str, object]:
    return {key: told for key, told in values(reading).items() if key.endswith(dimension)}


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("36", "38"),
        ("104", "110"),
        ("S", "M"),
        ("Junior S", "Junior M"),
        ("13-14 years", "15-16 years"),
        ("36/38", "40/42"),
        ("134 cm", "140 cm"),
    ],
)
def test_every_block_under_a_band_is_a_size(first: str, second: str) -> None:
    sizes = f"Size {first}", f"Size {second}"
    reading = _read(f"Women\n\n{_blocks(*sizes)}\n\nMen\n\n{_blocks(*sizes)}")
    chest = {chart.band: [one.label for one in chart.sizes] for chart in reading.charts}
    assert chest == {"women": [first, second], "men": [first, second]}
    assert questions(reading) == []


def test_a_bracket_is_the_second_name_and_no_height_of_a_block_names_it() -> None:
    reading = _read("""\
        Rozmiar XS (34)
        Wzrost [cm]: 158 – 163
        Obwód pasa [cm]: 62 – 67

        Rozmiar S (36)
        Wzrost [cm]: 164 – 169
        Obwód pasa [cm]: 67 – 72
        """)
    assert values(reading) == {
        "XS height": (158, 163),
        "XS waist": (62, 67),
        "S height": (164, 169),
        "S waist": (67, 72),
    }
    (chart,) = reading.charts
    assert [[one.label for one in size.also] for size in chart.sizes] == [["34"], ["36"]]
    assert questions(reading) == []


@pytest.mark.parametrize("sign", [":", ";", ".", " -", ""])
def test_a_sign_behind_the_size_is_none_of_it(sign: str) -> None:
    reading = _read(f"Size S{sign}\n- Chest: 82-86 cm\nSize M{sign}\n- Chest: 87-91 cm\n")
    assert values(reading) == {"S chest": (82, 86), "M chest": (87, 91)}


def test_units_may_be_told_once_for_all_blocks() -> None:
    reading = _read("""\
        Medidas em cm

        Tamanho 104
        Contorno do peito: 54 a 59

        Tamanho 116
        Contorno do peito: 59 a 64
        """)
    assert values(reading) == {"104 chest": (54, 59), "116 chest": (59, 64)}


def test_figures_may_stand_below_their_names_down_to_the_last_size() -> None:
    reading = _read("""\
        Maat S

        Borstomvang
        82-86 cm

        Taille
        66-70 cm

        Maat M

        Borstomvang
        87-91 cm

        Taille
        71-75 cm
        """)
    assert _of(reading, "chest") == {"S chest": (82, 86), "M chest": (87, 91)}
    assert _of(reading, "waist") == {"S waist": (66, 70), "M waist": (71, 75)}
    assert questions(reading) == []


@pytest.mark.parametrize(
    "between", ["  ", ", ", " / ", " | ", " - ", " and ", "; ", ". "], ids=lambda text: text.strip()
)
def test_all_measures_may_stand_in_one_line(between: str) -> None:
    reading = _read(
        f"Size S\nChest 82-86 cm{between}Waist 66-70 cm\n"
        f"Size M\nChest 87-91 cm{between}Waist 71-75 cm\n"
    )
    expected = {"S chest": (82, 86), "S waist": (66, 70), "M chest": (87, 91), "M waist": (71, 75)}
    assert values(reading) == expected


def test_a_word_for_sizes_may_be_that_of_a_measure_too() -> None:
    reading = _read("""\
        Taille 36
        Poitrine : 82 à 86 cm
        Taille : 66 à 70 cm

        Taille 38
        Poitrine : 87 à 91 cm
        Taille : 71 à 75 cm
        """)
    assert values(reading) == {
        "36 chest": (82, 86),
        "36 waist": (66, 70),
        "38 chest": (87, 91),
        "38 waist": (71, 75),
    }


def test_letters_with_a_number_are_a_size_of_the_same_list() -> None:
    sizes = ("Taille XS", "Taille L", "Taille 2XL")
    reading = _read("\n\n".join(f"{size}\nPoitrine : 8{at} cm" for at, size in enumerate(sizes)))
    assert values(reading) == {"XS chest": 80, "L chest": 81, "2XL chest": 82}


def test_what_stands_for_a_figure_costs_no_size() -> None:
    reading = _read("""\
        Größe 48
        Oberweite 94-98 cm
        Taille 80-84 cm
        Größe 50
        Oberweite auf Anfrage
        Taille 85-88 cm
        Größe 52
        Oberweite: -
        Taille 89-92 cm
        """)
    assert _of(reading, "waist") == {
        "48 waist": (80, 84),
        "50 waist": (85, 88),
        "52 waist": (89, 92),
    }
    assert "impossible" in questions(reading)


def test_other_names_of_a_size_are_kept_beside_it() -> None:
    reading = _read("XS\nEU: 34\nChest: 79-82 cm\n\nS\nEU: 36\nChest: 83-87 cm\n")
    (chart,) = reading.charts
    assert [(one.label, [also.label for also in one.also]) for one in chart.sizes] == [
        ("XS", ["34"]),
        ("S", ["36"]),
    ]


@pytest.mark.parametrize("size", ["Size: One size", "One size", "Taille unique"])
def test_the_only_size_may_stand_alone(size: str) -> None:
    reading = _read(f"{size}\nChest: 80-120 cm\nWeight: 45-100 kg\n")
    label = size.removeprefix("Size: ")
    assert values(reading) == {f"{label} chest": (80, 120), f"{label} weight": (45, 100)}


def test_the_only_size_may_have_all_its_measures_in_its_line() -> None:
    reading = _read("One size: chest 80-120 cm, weight 45-100 kg")
    assert values(reading) == {"One size chest": (80, 120), "One size weight": (45, 100)}
    assert questions(reading) == []


@pytest.mark.parametrize(
    "text",
    [
        "Size: M\nHeight: 178 cm\nWeight: 70 kg\n",  # what a model is like
        "Size 36\nChest: on request\n",
        "Taille 36\nPoitrine 82\nTaille 66\nHanches 90\n",
        "S\nshipped in 2 days\nM\nshipped in 3 days\n",
        "Size S M L\nChest 82 86 90\nWaist 66 70 74\n",
        "S 82 66\nM 86 70\n",
    ],
)
def test_what_is_no_list_of_blocks_is_none(text: str) -> None:
    assert size_block_table(numbered(text)) is None


@pytest.mark.parametrize(
    ("text", "size"),
    [
        ("Size 36", "36"),
        ("**Größe XS (34):**", "XS (34)"),
        ("## EU size 48", "48"),
        ("Talla: única", "única"),
        ("Size guide", None),
        ("Size 36 38", None),
        ("Size 140 cm 146 cm", None),
        ("Chest 82", None),
        ("82-86 cm", None),
        ("Women", None),
    ],
)
def test_a_size_alone_is_told_from_other_lines(text: str, size: str | None) -> None:
    found = size_line(text)
    assert (found.size if found is not None else None) == size


def test_the_colon_of_the_word_for_sizes_is_not_that_of_the_list() -> None:
    reading = _read(
        "Rozmiar: 36; Klatka piersiowa: 82-86 cm; Talia: 66-70 cm\n"
        "Rozmiar: 38; Klatka piersiowa: 87-91 cm; Talia: 71-75 cm\n"
    )
    assert _of(reading, "chest") == {"36 chest": (82, 86), "38 chest": (87, 91)}
    assert questions(reading) == []


@pytest.mark.parametrize("joint", [" / ", " - ", " | "])
def test_numbers_of_several_countries_before_the_measure_name_the_size(joint: str) -> None:
    said = (("S", "36", "8", "83-87"), ("M", "38", "10", "87-91"), ("L", "40", "12", "91-95"))
    lines = [f"{s}\nEU {eu}{joint}UK {uk}{joint}Bust {bust} cm" for s, eu, uk, bust in said]
    reading = read_pasted("\n".join(lines))
    assert values(reading) == {"S chest": (83, 87), "M chest": (87, 91), "L chest": (91, 95)}
    assert questions(reading) == []


def test_a_size_that_is_named_twice_is_asked_about() -> None:
    reading = _read(_blocks("Size S", "Size M", "Size M", "Size XL"))
    assert [one.label for one in reading.charts[0].sizes] == ["S", "M", "M", "XL"]
    assert questions(reading) == ["label-repeated"]


def test_the_list_of_other_people_begins_with_its_first_size() -> None:
    sizes = "Size S", "Size M", "Size L"
    reading = _read(f"{_blocks(*sizes)}\n\n{_blocks(*sizes)}")
    assert [[one.label for one in chart.sizes] for chart in reading.charts] == [["S", "M", "L"]] * 2


def test_a_name_of_a_size_that_is_a_unit_too_cuts_no_list() -> None:
    reading = _read(f"Children\n{_blocks('Size CS', 'Size CM', 'Size CL')}")
    assert [chart.band for chart in reading.charts] == ["kids"]
    assert [one.label for one in reading.charts[0].sizes] == ["CS", "CM", "CL"]
