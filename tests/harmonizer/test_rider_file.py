"""A rider's file: the short form, the long form, and every way it can go wrong."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from charts.model_facts import VestKind
from charts.quantities import Unit
from charts.schema import Definition
from charts.wording import Wording
from harmonizer.rider import BodyFigure, Measure, TakenBy
from harmonizer.rider_file import RiderFileError, read_rider

WHOLE = """\
format = 1
name = "Rider 7"
figure = "woman"
age = 34
taken_by = "fitter"
needs = { kind = "inflatable", level = "3" }
[readings]
chest = "36 1/2 in"
hip = { value = 99, unit = "cm", definition = "below_belt" }
back_length = { value = 43, unit = "cm", definition = "c7_to_si", taken_by = "helper", c7 = "felt" }
weight = "9 st 7"
[[reading]]
dimension = "waist"
text = "76"
unit = "cm"
definition = "natural"
taken_by = "helper"
posture = "standing"
over = "light shirt"
on = 2027-02-11
[layers]
winter_mm = 6
"""


def test_a_whole_file_is_read() -> None:
    who = read_rider(WHOLE, "rider7.toml")
    assert (who.name, who.figure, who.age) == ("Rider 7", BodyFigure.WOMAN, Decimal(34))
    assert (who.needs.kind, who.needs.level) == (VestKind.INFLATABLE, "3")
    assert who.winter_mm == 6
    (chest,) = who.of(Measure.CHEST)
    assert (chest.value, chest.text, chest.unit) == (Decimal("92.71"), "36 1/2 in", Unit.IN)
    assert who.taker(chest) is TakenBy.FITTER
    (back,) = who.of(Measure.BACK_LENGTH)
    assert (back.value, back.definition, back.c7_felt) == (43, Definition.BACK_C7_SI, True)
    assert who.taker(back) is TakenBy.HELPER
    (waist,) = who.of(Measure.WAIST)
    assert (waist.value, waist.posture, waist.on) == (76, "standing", date(2027, 2, 11))


def test_stones_and_pounds_are_exact() -> None:
    (weight,) = read_rider(WHOLE, "rider7.toml").of(Measure.WEIGHT)
    assert weight.value == Decimal("60.32778521")
    assert weight.text == "9 st 7"


def test_nobody_named_means_a_helper() -> None:
    who = read_rider('format = 1\n[readings]\nchest = "92 cm"\n', "x.toml")
    assert who.taken_by is TakenBy.HELPER
    assert who.name == "x.toml"


def test_the_chest_over_the_layers_may_stand_among_the_layers() -> None:
    text = 'format = 1\n[readings]\nchest = "92 cm"\n[layers]\nchest_over_layers = "95 cm"\n'
    (over,) = read_rider(text, "x.toml").of(Measure.CHEST_OVER_LAYERS)
    assert over.value == 95


def test_the_age_comes_from_the_day_of_birth_at_the_day_of_measuring() -> None:
    who = read_rider(WHOLE.replace("age = 34", "born = 1992-02-11"), "x.toml")
    assert who.age is not None
    assert float(who.age) == pytest.approx(35.0, abs=0.01)


@pytest.mark.parametrize(
    ("right", "wrong", "line", "code"),
    [
        ('"36 1/2 in"', '"36"', 8, "no-unit"),
        ('"36 1/2 in"', "36", 8, "no-unit"),
        ('"36 1/2 in"', '"36-38 in"', 8, "not-one-value"),
        ('"36 1/2 in"', '"36 kg"', 8, "wrong-unit"),
        ('"36 1/2 in"', '"medium"', 8, "not-read"),
        ("value = 99", "value = 0", 9, "not-one-value"),
        ("value = 99", "value = 9000", 9, "no-body"),
        ("value = 99", "value = -3", 9, "not-a-number"),
        ('definition = "below_belt"', 'definition = "navel"', 9, "not-a-choice"),
        ('text = "76"', 'text = "7x"', 14, "not-read"),
        ('dimension = "waist"', 'dimension = "wrist"', 13, "unknown-measure"),
        ('dimension = "waist"', "", 12, "dimension-missing"),
        ("winter_mm", "wintermm", 22, "unknown-key"),
        ('figure = "woman"', 'figure = "lady"', 3, "not-a-choice"),
        ("on = 2027-02-11", 'on = "yesterday"', 20, "not-a-day"),
        ("age = 34", "born = 2030-01-01", 4, "born-later"),
        ("format = 1", "format = 2", 1, "format-newer"),
        ("[layers]", "[layers", 21, "not-toml"),
    ],
)
def test_a_bad_line_gives_the_line_and_the_reason(
    right: str, wrong: str, line: int, code: str
) -> None:
    with pytest.raises(RiderFileError) as caught:
        read_rider(WHOLE.replace(right, wrong), "rider7.toml")
    assert (caught.value.line, caught.value.reason.code) == (line, code)
    for language in ("en", "de"):
        assert caught.value.say(Wording(language))


@pytest.mark.parametrize("chest", ['"36 cm"', '{ value = 36, unit = "cm" }'])
def test_a_chest_in_the_wrong_unit_is_taken_as_given_to_be_asked_about(chest: str) -> None:
    who = read_rider(f"format = 1\n[readings]\nchest = {chest}\n", "x.toml")
    assert [one.value for one in who.of(Measure.CHEST)] == [Decimal(36)]


def test_layers_may_be_named() -> None:
    text = 'format = 1\n[readings]\nchest = "92 cm"\n[layers]\nworn = ["jumper", "padded_jacket"]\n'
    assert read_rider(text, "x.toml").winter_mm == 15
    with pytest.raises(RiderFileError) as caught:
        read_rider(text.replace("jumper", "cardigan"), "x.toml")
    assert (caught.value.line, caught.value.reason.code) == (5, "not-a-choice")


def test_what_was_seen_in_the_saddle_is_read() -> None:
    text = (
        'format = 1\n[readings]\nchest = "92 cm"\n'
        '[[seen]]\nmodel = "Elm"\nsize = "M"\nobserved = "right"\n'
    )
    (seen,) = read_rider(text, "x.toml").seen
    assert (seen.model, seen.size, seen.observed.value) == ("Elm", "M", "right")
    with pytest.raises(RiderFileError) as caught:
        read_rider(text.replace('size = "M"\n', ""), "x.toml")
    assert caught.value.reason.code == "seen-incomplete"
