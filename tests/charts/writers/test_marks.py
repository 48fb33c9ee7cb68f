"""Footnote marks: one sign a meaning, and never two meanings for one sign."""

from __future__ import annotations

from dataclasses import replace

from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension, Kind, Range, UnitFrom
from charts.wording import LANGUAGES, Wording
from charts.writers.marks import Marks

VALUE = Range(
    dimension=Dimension.CHEST,
    heading="Chest",
    kind=Kind.UNREAD,
    published="?",
    place="B2",
    unit=Unit.CM,
    unit_from=UnitFrom.HEADING,
)


def test_what_the_maker_does_not_say_has_no_sign() -> None:
    marks = Marks(Wording())
    assert [marks.of(VALUE), marks.of(replace(VALUE, basis=Basis.BODY))] == ["", ""]
    assert marks.footnotes() == ()


def test_a_definition_and_a_finished_measure_each_have_theirs() -> None:
    marks = Marks(Wording())
    finished = replace(VALUE, definition=Definition.BACK_C7_SI, basis=Basis.FINISHED)
    assert marks.of(finished) == "†‡"
    assert marks.of(replace(finished, basis=Basis.BODY)) == "†"
    assert len(marks.footnotes()) == 2


def test_every_definition_there_is_has_a_sign_and_a_sentence_of_its_own() -> None:
    for language in LANGUAGES:
        marks = Marks(Wording(language))
        known = [each for each in Definition if each is not Definition.UNKNOWN]
        signs = [marks.of(replace(VALUE, definition=each)) for each in known]
        assert len(set(signs)) == len(known)
        assert len({note.split(" ", 1)[1] for note in marks.footnotes()}) == len(known)
