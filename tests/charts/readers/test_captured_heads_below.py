"""Runs of sizes and figures whose headings stand below them, whose ages are broken over lines."""

from __future__ import annotations

from textwrap import dedent

import pytest

from charts.importer import read_pasted
from charts.readers.captured.value_runs import values_in
from charts.schema import Basis
from tests.charts.readers.reading import paste

_BELOW = dedent("""\
    Vest.
    S M L XL

    48 51 54 57

    SIZE

    CHEST (CM)

    Jersey.
    S M L

    93 98 103

    SIZE

    CHEST (CM)

    Size Guide
    """)


def test_headings_on_the_lines_below_sizes_and_figures_name_them_and_are_asked_about() -> None:
    rows = [list(filter(None, row)) for row in paste(_BELOW).rows()]
    assert [row for row in rows if row] == [
        ["Vest."],
        ["SIZE", "S", "M", "L", "XL"],
        ["CHEST (CM)", "48", "51", "54", "57"],
        ["Jersey."],
        ["SIZE", "S", "M", "L"],
        ["CHEST (CM)", "93", "98", "103"],
        ["Size Guide"],
    ]
    assert [one.code for one in read_pasted(_BELOW).findings].count("text-order") == 1


@pytest.mark.parametrize("follows", ["S 84", "WAIST (CM)", "S", "2T 80 90"])
def test_headings_with_figures_of_their_own_below_are_no_headings_of_what_is_above(
    follows: str,
) -> None:
    rows = paste(f"S M L\n\n48 51 54\n\nSIZE\nCHEST (CM)\n{follows}\n").rows()
    assert ["CHEST (CM)", "48", "51", "54"] not in rows
    assert ["", "48", "51", "54"] in rows


def test_ages_broken_over_lines_are_one_age_for_each_size() -> None:
    rows = paste(
        dedent("""\
        Talla 6 7 12 14

        Edad 6 años 7 años 11/12
        años

        13/14
        años

        Altura (cm) 116 122 152 164
        Pecho (cm) 63 66 80 85
        """)
    ).rows()
    assert rows == [
        ["Talla", "6", "7", "12", "14"],
        ["Edad", "6 años", "7 años", "11/12 años", "13/14 años"],
        ["Altura (cm)", "116", "122", "152", "164"],
        ["Pecho (cm)", "63", "66", "80", "85"],
    ]


def test_ages_that_are_fewer_than_the_sizes_end_the_table() -> None:
    text = "Talla 6 7 12\nEdad 6 años 11/12\naños\nAltura (cm) 116 122 152\n"
    assert ["Edad", "6 años", "11/12 años"] not in paste(text).rows()
    assert {one.code for one in read_pasted(text).findings}


def test_heights_in_metres_are_values_like_those_in_centimetres() -> None:
    assert values_in("1,55 m 1.65 m 96 cm") == ("1,55 m", "1.65 m", "96 cm")
    assert values_in("90 m") == ()
    assert values_in("1,55 more") == ()


def test_a_title_that_a_date_ran_into_says_whose_measures_they_are() -> None:
    text = "1 of 125/11/19GARMENT MEASUREMENTS\n\nS M L\n\nChest (cm) 101 109 118\n"
    (chart,) = read_pasted(text).charts
    assert [one.basis for size in chart.sizes for one in size.ranges] == [Basis.FINISHED] * 3
    assert paste("Size 2/36REG 36REGULAR").rows() == [["Size 2/36REG 36REGULAR"]]
