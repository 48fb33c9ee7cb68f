"""``models.toml``: what a chart does not say of its model."""

from __future__ import annotations

from decimal import Decimal

import pytest

from charts.model_facts import (
    FactsFileError,
    Rule,
    VestKind,
    WornOver,
    read_model_facts,
)
from charts.schema import Basis, Definition, Dimension
from charts.wording import LANGUAGES, Wording

WHOLE = """\
format = 1
[[model]]
supplier = "Alderbrook"
model = "Alder 2"
file = "alder.xlsx"
chart = "Women"
season = "spring 2027"
kind = "inflatable"
level = "3"
weight_floor = "70 lb"
weight_ceiling = "120 kg"
between_sizes = "larger"
between_sizes_source = "instructions p. 4"
definitions = { hip = "below_belt", back_length = "c7_to_si" }
basis = "body"
worn_over = "light shirt"
[model.adjusters]
chest = { in = "4 cm", out = "1 in" }
[model.elastic]
relaxed = "84 cm"
part = "30 cm"
extension = 0.40
reserve = "4 cm"
"""


def test_a_whole_entry_is_read() -> None:
    (facts,) = read_model_facts(WHOLE, "alderbrook/models.toml")
    assert (facts.folder, facts.file, facts.chart) == ("alderbrook", "alder.xlsx", "Women")
    assert (facts.supplier, facts.model, facts.season) == ("Alderbrook", "Alder 2", "spring 2027")
    assert (facts.kind, facts.level) == (VestKind.INFLATABLE, "3")
    assert facts.weight_floor == Decimal("31.7514659")
    assert facts.weight_ceiling == Decimal(120)
    assert facts.between_sizes is Rule.LARGER
    assert facts.definitions[Dimension.BACK_LENGTH] is Definition.BACK_C7_SI
    assert (facts.basis, facts.worn_over) == (Basis.BODY, WornOver.LIGHT_SHIRT)
    assert facts.adjusters[Dimension.CHEST].let_out == Decimal("2.54")
    assert facts.elastic is not None
    assert facts.elastic.extension == Decimal("0.40")


def test_only_the_name_is_needed() -> None:
    (facts,) = read_model_facts('format = 1\n[[model]]\nmodel = "Elm"\n', "models.toml")
    assert (facts.model, facts.kind, facts.elastic, facts.weight_floor) == ("Elm", None, None, None)


@pytest.mark.parametrize(
    ("right", "wrong", "line", "code"),
    [
        ('kind = "inflatable"', 'kind = "airbag"', 8, "not-a-choice"),
        ('"70 lb"', '"70"', 10, "no-unit"),
        ('"70 lb"', '"70 cm"', 10, "wrong-unit"),
        ('"70 lb"', '"heavy"', 10, "not-read"),
        ('hip = "below_belt"', 'hip = "navel"', 14, "not-a-choice"),
        ('"4 cm", out', '"4", out', 18, "no-unit"),
        ("extension = 0.40", "extension = 0", 22, "not-a-number"),
        ('part = "30 cm"', 'parts = "30 cm"', 19, "value-missing"),
        ('model = "Alder 2"', "", 2, "model-missing"),
        ("level =", "levl =", 9, "unknown-key"),
    ],
)
def test_a_bad_line_gives_the_line_and_the_reason(
    right: str, wrong: str, line: int, code: str
) -> None:
    with pytest.raises(FactsFileError) as caught:
        read_model_facts(WHOLE.replace(right, wrong), "models.toml")
    assert (caught.value.line, caught.value.reason.code) == (line, code)
    assert str(caught.value)


def test_two_entries_of_one_chart_are_refused() -> None:
    twice = WHOLE + '[[model]]\nmodel = "Alder 3"\nfile = "alder.xlsx"\nchart = "Women"\n'
    with pytest.raises(FactsFileError) as caught:
        read_model_facts(twice, "models.toml")
    assert caught.value.reason.code == "same-chart-twice"
    assert caught.value.line == 27


FOAM = 'format = 1\n[[model]]\nmodel = "Alder"\nkind = "foam"\n'


def test_a_foams_thickness_is_kept_in_cm_with_its_source() -> None:
    text = FOAM + 'foam_thickness = "18 mm"\nfoam_thickness_source = "instructions p. 3"\n'
    (facts,) = read_model_facts(text, "models.toml")
    assert (facts.foam_thickness, facts.foam_thickness_source) == (
        Decimal("1.8"), "instructions p. 3",
    )  # fmt: skip


@pytest.mark.parametrize("thickness", ["18 cm", "18", "0 mm", "2 kg"])
def test_what_is_no_thickness_of_foam_is_refused_at_its_line(thickness: str) -> None:
    with pytest.raises(FactsFileError) as raised:
        read_model_facts(f'{FOAM}foam_thickness = "{thickness}"\n', "models.toml")
    assert raised.value.line == 5
    for language in LANGUAGES:
        assert "foam_thickness" in raised.value.say(Wording(language))


def test_an_inflatable_vest_has_no_foam() -> None:
    text = FOAM.replace("foam", "inflatable") + 'foam_thickness = "18 mm"\n'
    with pytest.raises(FactsFileError) as raised:
        read_model_facts(text, "models.toml")
    assert "said to be inflatable" in raised.value.say(Wording("en"))
