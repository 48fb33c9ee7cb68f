"""What we write we can read: quantities written in every notation, unit, word and decimal mark."""

from __future__ import annotations

from decimal import ROUND_HALF_UP, Decimal
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from charts.notation import Expected, Quantity, Reading, read_cell
from charts.quantities import FAMILY, Family, Figure, Unit
from charts.schema import Dimension, Kind
from charts.vocabulary import tables, vocabulary

PLAIN_UNITS = (Unit.MM, Unit.CM, Unit.IN, Unit.KG, Unit.LB)
RANGE_MARKS = ("-", " - ", "– ", " –", "—", "~", " \u2212 ")
ONE = Decimal(1)


def words(key: str) -> tuple[str, ...]:
    """The words of one list of the cells, in all languages."""
    return tuple(sorted({word for _, several in tables("cell", key) for word in several}))


def unit_words(unit: Unit) -> tuple[str, ...]:
    table: Any = vocabulary("units")[unit.value]
    named = [word for key in ("words", "figure", "bracket") for word in table.get(key, ())]
    marks = list(table.get("marks", ()))
    return tuple(dict.fromkeys([*marks, *(f" {word}" for word in named), *named]))


def spelled(figure: Figure, mark: str, *, fractions: bool) -> str:
    """A figure as a chart prints it, in decimals or in fractions of an inch."""
    whole, rest = divmod(figure.value, ONE)
    if fractions and rest:
        parts = ONE / figure.step
        return f"{whole} {rest * parts:.0f}/{parts:.0f}"
    return f"{figure.value.quantize(figure.step):f}".replace(".", mark)


STEPS = st.sampled_from([ONE, Decimal("0.1"), Decimal("0.01")])
INCH_STEPS = st.sampled_from([Decimal("0.5"), Decimal("0.25"), Decimal("0.125")])


@st.composite
def figures(draw: st.DrawFn, steps: st.SearchStrategy[Decimal] = STEPS) -> Figure:
    """A figure from 20 to 250 with the step it is printed to."""
    step = draw(steps)
    count = draw(st.integers(int(20 / step), int(250 / step)))
    return Figure(count * step, step)


def reduced(figure: Figure) -> Figure:
    """A fraction is printed in its lowest terms: 34 1/2 and not 34 4/8."""
    for step in (ONE, Decimal("0.5"), Decimal("0.25")):
        if figure.value % step == 0:
            return Figure(figure.value, step)
    return figure


def reads_as(text: str, wanted: Quantity, expected: Expected | None = None) -> None:
    reading = read_cell(text, expected or Expected())
    assert reading.reading is Reading.READ, (text, reading)
    found = reading.quantity
    assert found is not None
    got = (found.kind, found.low, found.high, found.value, found.unit, found.tolerance)
    due = (wanted.kind, wanted.low, wanted.high, wanted.value, wanted.unit, wanted.tolerance)
    assert got == due, text
    assert (found.low_included, found.high_included, found.circa) == (
        wanted.low_included,
        wanted.high_included,
        wanted.circa,
    ), text


@st.composite
def units_written(draw: st.DrawFn) -> tuple[Unit | None, str]:
    """A unit with one of its spellings, or none."""
    unit = draw(st.sampled_from([None, *PLAIN_UNITS]))
    return (None, "") if unit is None else (unit, draw(st.sampled_from(unit_words(unit))))


MARKS = st.sampled_from([".", ","])


@given(figures(), units_written(), MARKS)
def test_a_single_value_is_read_back(
    value: Figure, unit: tuple[Unit | None, str], mark: str
) -> None:
    text = spelled(value, mark, fractions=False) + unit[1]
    reads_as(text, Quantity(Kind.SINGLE, text, value=value, unit=unit[0]))


@given(figures(INCH_STEPS), st.sampled_from(unit_words(Unit.IN)))
def test_a_fraction_of_an_inch_is_read_back(value: Figure, word: str) -> None:
    value = reduced(value)
    text = spelled(value, ".", fractions=True) + word
    reads_as(text, Quantity(Kind.SINGLE, text, value=value, unit=Unit.IN))


@given(
    figures(),
    figures(),
    units_written(),
    MARKS,
    st.sampled_from([*RANGE_MARKS, *(f" {word} " for word in words("to"))]),
)
def test_a_range_is_read_back_with_every_mark_and_word(
    one: Figure, two: Figure, unit: tuple[Unit | None, str], mark: str, between: str
) -> None:
    low, high = sorted((one, two), key=lambda figure: figure.value)
    ends = [spelled(figure, mark, fractions=False) for figure in (low, high)]
    text = between.join(ends) + unit[1]
    excluded = any(word in between for word in ("unter", "not including"))
    wanted = Quantity(Kind.RANGE, text, low, high, unit=unit[0], high_included=not excluded)
    reads_as(text, wanted)


@given(figures(), units_written(), st.sampled_from(words("at_most") + words("below")))
def test_a_word_for_the_highest_is_read_back(
    high: Figure, unit: tuple[Unit | None, str], word: str
) -> None:
    text = f"{word} {spelled(high, '.', fractions=False)}{unit[1]}"
    included = word in words("at_most")
    reads_as(text, Quantity(Kind.AT_MOST, text, high=high, unit=unit[0], high_included=included))


@given(figures(), units_written(), st.sampled_from(words("at_least") + words("above")))
def test_a_word_for_the_lowest_is_read_back(
    low: Figure, unit: tuple[Unit | None, str], word: str
) -> None:
    text = f"{word} {spelled(low, '.', fractions=False)}{unit[1]}"
    included = word in words("at_least")
    reads_as(text, Quantity(Kind.AT_LEAST, text, low=low, unit=unit[0], low_included=included))


@given(figures(), units_written(), st.sampled_from(words("or_more")))
def test_a_word_for_more_behind_the_figure_is_read_back(
    low: Figure, unit: tuple[Unit | None, str], word: str
) -> None:
    text = f"{spelled(low, '.', fractions=False)}{unit[1]} {word}"
    included = word not in words("above")  # "60 felett" is over 60, as "felett 60" would be
    reads_as(text, Quantity(Kind.AT_LEAST, text, low=low, unit=unit[0], low_included=included))


@given(figures(), units_written(), st.sampled_from(words("circa")))
def test_a_word_for_about_is_read_back(
    value: Figure, unit: tuple[Unit | None, str], word: str
) -> None:
    text = f"{word} {spelled(value, '.', fractions=False)}{unit[1]}"
    reads_as(text, Quantity(Kind.SINGLE, text, value=value, unit=unit[0], circa=True))


@given(figures(), st.integers(1, 5), units_written(), st.sampled_from(["±", "+/-", " ± "]))
def test_a_tolerance_is_read_back(
    value: Figure, tolerance: int, unit: tuple[Unit | None, str], mark: str
) -> None:
    text = f"{spelled(value, '.', fractions=False)}{mark}{tolerance}{unit[1]}"
    around = Figure(Decimal(tolerance), ONE)
    reads_as(text, Quantity(Kind.SINGLE, text, value=value, unit=unit[0], tolerance=around))


@given(
    st.integers(3, 6),
    st.integers(0, 10),
    st.sampled_from(
        ["{f}'{i}\"", "{f}’{i}”", "{f} ft {i} in", "{f}ft{i}in", "{f}'-{i}\"", "{f}' {i}"]
    ),
)
def test_feet_and_inches_are_read_back(feet: int, inches: int, form: str) -> None:
    text = form.format(f=feet, i=inches)
    value = Figure(Decimal(12 * feet + inches), ONE)
    reads_as(
        text, Quantity(Kind.SINGLE, text, value=value, unit=Unit.IN), Expected(Dimension.HEIGHT)
    )


@given(
    st.integers(4, 25),
    st.integers(0, 13),
    st.sampled_from(
        ["{s}st {p}lb", "{s} st {p} lbs", "{s}st{p}lb", "{s} stone {p} pounds", "{s} st {p}"]
    ),
)
def test_stones_and_pounds_are_read_back(stones: int, pounds: int, form: str) -> None:
    text = form.format(s=stones, p=pounds)
    value = Figure(Decimal(14 * stones + pounds), ONE)
    reads_as(
        text, Quantity(Kind.SINGLE, text, value=value, unit=Unit.LB), Expected(Dimension.WEIGHT)
    )


def rounded_cm(inches: int) -> int:
    return int((Decimal(inches) * Decimal("2.54")).quantize(ONE, ROUND_HALF_UP))


@given(
    st.integers(20, 60),
    st.integers(1, 6),
    st.sampled_from(
        [
            '{a}-{b}" ({c}-{d} cm)',
            "{c} - {d} cm / {a} - {b} in",
            '{a}-{b}"<br>{c}-{d}cm',
            "{c} cm ({a} in) to {d} cm ({b} in)",
            '{a}"/{c}cm - {b}"/{d}cm',
            "{c}-{d}cm; {a}-{b}in",
        ]
    ),
)
def test_a_range_in_both_units_is_read_back_in_centimetres(low: int, width: int, form: str) -> None:
    high = low + width
    text = form.format(a=low, b=high, c=rounded_cm(low), d=rounded_cm(high))
    reading = read_cell(text)
    assert reading.reading is Reading.READ, text
    assert reading.quantity is not None
    assert reading.also is not None
    for found, ends, unit in (
        (reading.quantity, (rounded_cm(low), rounded_cm(high)), Unit.CM),
        (reading.also, (low, high), Unit.IN),
    ):
        assert found.low is not None
        assert found.high is not None
        assert (found.low.value, found.high.value, found.unit) == (*ends, unit)


def test_every_family_of_units_is_written_here() -> None:
    assert {FAMILY[unit] for unit in PLAIN_UNITS} == {Family.LENGTH, Family.MASS}
