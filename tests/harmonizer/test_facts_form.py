"""The form about a model: checked as it is typed, exported as the notes beside the charts."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.model_facts import FactsFileError, read_model_facts
from charts.resource_files import resources
from charts.wording import LANGUAGES, Wording
from harmonizer.facts_form import (
    FIELDS,
    Entry,
    FormField,
    export,
    forms_in,
    name_of,
    part_of,
    problem,
    problems,
    say,
)

DEMO = sorted((Path(str(resources())) / "demo" / "charts").rglob("models.toml"))
LENGTHS = st.sampled_from(["4 cm", "1 1/2 in", "35 mm", "0,5 cm"])
MASSES = {"weight_floor": st.sampled_from(["70 lb", "31,8 kg"]), "weight_ceiling": st.just("18 st")}
# A comma parts the names of a list, and blanks at the ends are not kept.
TEXTS = st.text(st.characters(exclude_categories=["C", "Z"], exclude_characters=","), min_size=1)


def typed(field: FormField) -> st.SearchStrategy[str]:
    match field.entry:
        case Entry.CHOICE:
            return st.sampled_from(field.choices)
        case Entry.MASS:
            return MASSES[field.key]
        case Entry.LENGTH:
            return LENGTHS
        case Entry.PART:
            return st.sampled_from(["0.40", "40 %", "0,4"])
        case Entry.FLAG:
            return st.just("yes")
    return TEXTS


ELASTIC = {"elastic.relaxed": "84 cm", "elastic.part": "30 cm", "elastic.extension": "40 %"}
FOAM = {"foam_thickness": "18 mm", "foam_thickness_source": "instructions p. 3"}
FORMS = st.fixed_dictionaries(
    {"model": TEXTS, "between_sizes_source": TEXTS},
    optional={
        field.key: typed(field)
        for field in FIELDS
        if not field.key.startswith(("elastic", "foam_thickness"))
        and field.key not in ("model", "between_sizes_source")
    },
)


@given(FORMS, st.booleans())
def test_what_is_exported_reads_back_as_what_was_typed(form: dict[str, str], elastic: bool) -> None:
    whole = form | (ELASTIC if elastic else {})
    whole |= FOAM if form.get("kind") != "inflatable" else {}
    assert problems(whole) == {}
    (again,) = forms_in(export([whole]), "models.toml")
    assert export([again]) == export([whole])
    kept = {key: text.strip() for key, text in whole.items() if key != "elastic.extension"}
    assert {key: again[key] for key in kept} == kept


@pytest.mark.parametrize("path", DEMO, ids=lambda path: path.parent.name)
def test_the_shops_own_notes_come_through_the_form_unchanged(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    forms = forms_in(text, "models.toml")
    assert all(problems(form) == {} for form in forms)
    assert read_model_facts(export(forms), "models.toml") == read_model_facts(text, "models.toml")


def test_what_a_file_says_beyond_the_form_is_kept() -> None:
    text = 'format = 1\n[[model]]\nmodel = "A"\n[model.adjusters]\nneck = { in = "1 cm" }\n'
    again = export(forms_in(text, "models.toml"))
    assert read_model_facts(again, "models.toml") == read_model_facts(text, "models.toml")


@pytest.mark.parametrize(
    ("key", "text", "code"),
    [
        ("weight_floor", "70", "no-unit"),
        ("weight_floor", "70 cm", "wrong-unit"),
        ("weight_floor", "30-40 kg", "not-one-value"),
        ("adjusters.chest.in", "four", "not-read"),
        ("kind", "airbag", "not-a-choice"),
        ("definitions.hip", "navel", "not-a-choice"),
        ("elastic.extension", "much", "not-a-number"),
        ("elastic.extension", "-0.4", "not-a-number"),
        ("recalled", "perhaps", "not-a-choice"),
    ],
)
def test_what_is_typed_wrongly_is_said_at_its_field(key: str, text: str, code: str) -> None:
    reason = problem(key, text)
    assert reason is not None
    assert reason.code == code
    for language in LANGUAGES:
        wording = Wording(language)
        assert f"{name_of(key, wording)}" in say(key, reason, wording)


@pytest.mark.parametrize(
    ("form", "key", "code"),
    [
        ({}, "model", "value-missing"),
        ({"weight_floor": "45 kg", "weight_ceiling": "95 lb"}, "weight_ceiling",
         "ceiling-below-floor"),
        ({"between_sizes": "larger"}, "between_sizes_source", "value-missing"),
        ({"elastic.reserve": "4 cm"}, "elastic.relaxed", "value-missing"),
        ({"foam_thickness": "18 mm"}, "foam_thickness_source", "value-missing"),
        ({"foam_thickness": "18 cm"}, "foam_thickness", "no-foam-thickness"),
        ({"foam_thickness": "18 mm", "kind": "inflatable"}, "foam_thickness", "only-of-foam"),
    ],
)  # fmt: skip
def test_fields_that_contradict_each_other_are_said(
    form: dict[str, str], key: str, code: str
) -> None:
    whole = {"model": "Alder"} | form if form else {}
    assert problems(whole)[key].code == code


def test_a_form_with_problems_is_not_exported() -> None:
    with pytest.raises(ValueError, match="weight_floor"):
        export([{"model": "Alder", "weight_floor": "70"}])


def test_notes_that_cannot_be_used_are_refused_with_their_line() -> None:
    with pytest.raises(FactsFileError) as raised:
        forms_in("format = 1\n[[model]]\nmodell = 'A'\n", "models.toml")
    assert raised.value.line == 2


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_field_has_a_name(language: str) -> None:
    names = [name_of(field.key, Wording(language)) for field in FIELDS]
    assert len(set(names)) == len(FIELDS)
    assert not {field.key for field in FIELDS} & set(names)


@pytest.mark.parametrize(
    ("text", "part"),
    [("40 %", "0.4"), ("0,40", "0.4"), ("0.385", "0.385"), ("0", None), ("nan", None), ("", None)],
)
def test_a_part_is_typed_as_a_share_or_per_cent(text: str, part: str | None) -> None:
    assert part_of(text) == part
