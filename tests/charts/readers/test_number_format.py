"""A stored number is shown as its workbook shows it."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.readers.number_format import general, shown_number, shown_text

# Expected texts: the rules of ECMA-376 part 1, 18.8.31 (numFmts), worked out by hand.
SHOWN = [
    ("96", '0" cm"', "96 cm"),
    ("96", "0\\ \\c\\m", "96 cm"),
    ("38", '0"""', '38"'),
    ("38", '0\\"', '38"'),
    ("34.5", "# ?/?", "34 1/2"),
    ("34.5", "# ??/??", "34 1/2"),
    ("34.375", "# ?/8", "34 3/8"),
    ("34.5", "# ?/4", "34 2/4"),
    ("34", '# ?/?" in"', "34 in"),
    ("0.5", "# ?/?", "1/2"),
    ("0", "# ?/?", "0"),
    ("34.96", "# ?/?", "35"),
    ("1012", "00-00", "10-12"),
    ("0.35", "0%", "35%"),
    ("0.355", "0.0%", "35.5%"),
    ("1500", '[>=1000]0.0,"m";0" mm"', "1.5m"),
    ("500", '[>=1000]0.0,"m";0" mm"', "500 mm"),
    ("-3", "0;(0)", "(3)"),
    ("-3", "0.0", "-3.0"),
    ("0", '0;-0;"n/a"', "n/a"),
    ("5", ";;;", ""),
    ("34.5", "0.##", "34.5"),
    ("34", '0.0#" in"', "34.0 in"),
    ("43", '0.0" cm"', "43.0 cm"),
    ("96", '[Red]0" cm"', "96 cm"),
    ("34.5", "0", "35"),
    ("34.5", "[$€-407] 0.0", "€ 34.5"),
    ("56", 'General" mm"', "56 mm"),
    ("12345678", "0.00E+00", "1.23E+7"),
]


@pytest.mark.parametrize(("stored", "code", "shown"), SHOWN)
def test_a_number_is_shown_by_its_format(stored: str, code: str, shown: str) -> None:
    assert shown_number(Decimal(stored), code) == shown


def test_thousands_are_not_grouped_because_a_comma_would_read_two_ways() -> None:
    assert shown_number(Decimal(1250), "#,##0") == "1250"


def test_the_general_format_shows_eleven_characters_at_most() -> None:
    assert general(Decimal("33.85826771653543")) == "33.85826772"
    assert general(Decimal("34.50")) == "34.5"
    assert general(Decimal(4099990000017)) == "4099990000017"


def test_a_text_takes_the_words_of_its_text_section() -> None:
    assert shown_text("34-36", 'General;General;General;@" cm"') == "34-36 cm"
    assert shown_text("34-36", '0" cm"') == "34-36"
    assert shown_text("34-36", "@") == "34-36"


@given(st.decimals(0, 500, places=3), st.sampled_from(["0", "0.0", "0.000", "General"]))
def test_rounding_never_moves_a_number_by_more_than_half_a_step(value: Decimal, code: str) -> None:
    places = len(code.partition(".")[2]) if code != "General" else 9
    shown = Decimal(shown_number(value, code))
    assert abs(shown - value) <= Decimal(1).scaleb(-places) / 2


@given(st.text(max_size=30), st.decimals(allow_nan=True, allow_infinity=True))
def test_no_format_and_no_number_can_break_it(code: str, value: Decimal) -> None:
    assert isinstance(shown_number(value, code), str)
