"""Answers as text: they come back unchanged, and a file that cannot be used says where and why."""

from __future__ import annotations

import tomllib
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.answers import (
    Act,
    Answer,
    AsPrinted,
    CellReads,
    Corrected,
    Edge,
    LeftOut,
    Meaning,
    Part,
    Question,
    Scope,
    Taken,
    TextForm,
    Turned,
)
from charts.answers_toml import AnswersFileError, read_answers, write_answers
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension
from charts.wording import LANGUAGES, Wording

# Half of a surrogate pair is no letter: no file in UTF-8 can hold one.
TEXTS = st.text(st.characters(exclude_categories=["Cs"]), max_size=20)
WORDS = TEXTS.filter(bool)


def optional(kinds: st.SearchStrategy[object]) -> st.SearchStrategy[object]:
    return st.none() | kinds


ACTS: st.SearchStrategy[Act] = st.one_of(
    st.builds(Taken, TEXTS, TEXTS, TEXTS, TEXTS),
    st.builds(AsPrinted, TEXTS, TEXTS, TEXTS, TEXTS, st.lists(TEXTS, max_size=3).map(tuple)),
    st.builds(
        Meaning,
        st.sampled_from(Scope),
        TEXTS,
        st.lists(TEXTS, max_size=3).map(tuple),
        optional(st.sampled_from(Unit)),
        optional(st.sampled_from(Dimension)),
        optional(st.sampled_from(Definition)),
        optional(st.sampled_from(Basis)),
    ),
    st.builds(
        Corrected,
        st.lists(st.builds(CellReads, TEXTS, TEXTS, TEXTS), min_size=1, max_size=3).map(tuple),
    ),
    st.builds(LeftOut, st.sampled_from(Part), TEXTS, TEXTS),
    st.builds(Edge, TEXTS, TEXTS),
    st.builds(Turned, TEXTS),
    st.builds(TextForm, optional(WORDS), optional(WORDS)),
)
QUESTIONS = st.builds(Question, WORDS, TEXTS, TEXTS, TEXTS)
ANSWERS = st.builds(
    Answer, ACTS, TEXTS, optional(st.dates()), optional(QUESTIONS), st.integers(0, 99)
)


@given(st.lists(ANSWERS, max_size=5).map(tuple))
def test_answers_come_back_from_their_text(answers: tuple[Answer, ...]) -> None:
    assert read_answers(write_answers(answers)) == answers


@given(st.lists(ANSWERS, max_size=3).map(tuple))
def test_the_text_is_toml_of_format_1_that_utf_8_can_hold(answers: tuple[Answer, ...]) -> None:
    text = write_answers(answers).encode().decode()
    assert tomllib.loads(text)["format"] == 1


def test_the_text_reads_as_a_person_would_write_it() -> None:
    answer = Answer(
        Meaning(Scope.COLUMN, "B1:E1", ("Bröst",), Unit.CM),
        "Ann",
        date(2027, 2, 11),
        Question("unit-missing", "B1", "Bröst"),
    )
    assert write_answers([answer]) == (
        'format = 1\n\n[[answer]]\nact = "meaning"\nscope = "column"\nplace = "B1:E1"\n'
        'headings = ["Bröst"]\nunit = "cm"\nby = "Ann"\non = 2027-02-11\n'
        'about = { code = "unit-missing", place = "B1", heading = "Bröst" }\n\n'
    )


@pytest.mark.parametrize(
    ("text", "line", "code"),
    [
        ("format = 1\n[[answer]]\nact = 'meaning'\nscope = 'room'\n", 4, "not-a-choice"),
        ("format = 2\n", 1, "format-newer"),
        ("[[answer]]\n", 1, "format-missing"),
        ("format = 1\n[[answer]\n", 2, "not-toml"),
        ("format = 1\n[[answer]]\nact = 'turned'\nplaace = 'A1'\n", 4, "unknown-key"),
        ("format = 1\n[[answer]]\nby = 'Ann'\n", 2, "value-missing"),
        ("format = 1\n[[answer]]\nact = 'corrected'\n", 2, "value-missing"),
        ("format = 1\n[[answer]]\nact = 'turned'\nhabit = 1.5\n", 4, "not-a-number"),
        ("format = 1\nother = 3\n", 2, "unknown-key"),
    ],
)
def test_a_file_that_cannot_be_used_says_where_and_why(text: str, line: int, code: str) -> None:
    with pytest.raises(AnswersFileError) as raised:
        read_answers(text)
    assert (raised.value.line, raised.value.reason.code) == (line, code)
    assert all(raised.value.say(Wording(language)) for language in LANGUAGES)
