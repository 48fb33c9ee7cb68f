"""Every act in words: whole sentences in both languages, with its place and no name of a code."""

from __future__ import annotations

from datetime import date

import pytest

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
    Scope,
    Taken,
    TextForm,
    Turned,
)
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension
from charts.wording import LANGUAGES, Wording
from ui.questions_page.given_words import act_words, place_of, said_words

EN = Wording("en")
ACTS: tuple[tuple[Act, str], ...] = (
    (Taken("B4", "was-a-date", "day-month", "9-12"), "B4: taken as 9-12."),
    (AsPrinted("B4", "impossible"), "B4: right as printed."),
    (
        Meaning(Scope.COLUMN, "A1:C4", ("Chest",), unit=Unit.CM),
        "A1:C4, column Chest: centimetres.",
    ),
    (
        Meaning(
            Scope.COLUMN, "A1:C4", ("Back",), dimension=Dimension.BACK_LENGTH,
            definition=Definition.BACK_C7_SI,
        ),
        "A1:C4, column Back: Back length: neck bone to dimples.",
    ),
    (
        Meaning(Scope.TABLE, "A1:C4", basis=Basis.FINISHED),
        "A1:C4, where the table says nothing: Finished measures of the vest.",
    ),
    (Meaning(Scope.FILE, unit=Unit.IN), "Wherever the file says nothing: inches."),
    (Corrected((CellReads("B4", "12", "102"),)), "B4: printed 12, read as 102."),
    (Corrected((CellReads("B4", "", "102"),)), "B4: blank, read as 102."),
    (Corrected((CellReads("B4", "12", ""),)), "B4: 12 left out."),
    (
        Corrected((CellReads("B4", "1", "2"), CellReads("B5", "3", "4"))),
        "2 cells, the first B4: printed 1, read as 2.",
    ),
    (LeftOut(Part.ROW, "A4"), "A4: this row left out."),
    (LeftOut(Part.SHEET, "Old"), "Sheet Old left out."),
    (Edge("A1:C4", "A2:C4"), "A1:C4: the table is A2:C4."),
    (Turned("A1:C4"), "A1:C4: the table is read the other way round."),
    (TextForm(separator=";"), "The file's columns are parted by semicolons."),
    (TextForm(encoding="cp1252"), "The file is written in cp1252."),
)  # fmt: skip


@pytest.mark.parametrize(("act", "said"), ACTS)
def test_an_act_is_one_sentence(act: Act, said: str) -> None:
    assert act_words(act, EN) == said


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_act_has_words_and_no_code_among_them(language: str) -> None:
    wording = Wording(language)
    acts = [
        *(act for act, _ in ACTS),
        *(LeftOut(part, "A1") for part in Part),
        *(TextForm("utf-16", mark) for mark in (";", ",", "\t", "|")),
        *(Meaning(scope, "A1", ("X",), unit) for scope in Scope for unit in Unit),
        *(Meaning(Scope.COLUMN, "A1", ("X",), basis=basis) for basis in Basis),
        *(Meaning(Scope.COLUMN, "A1", ("X",), dimension=one) for one in Dimension),
        *(Meaning(Scope.COLUMN, "A1", ("X",), definition=one) for one in Definition),
    ]
    for act in acts:
        said = act_words(act, wording)
        assert said.endswith(".")
        assert "_" not in said
        assert "  " not in said
        place = place_of(act)
        assert place in said or (isinstance(act, (Meaning, LeftOut)) and "A1" not in said)


def test_it_is_said_who_answered_and_when() -> None:
    act = Turned("A1:C4")
    assert said_words(Answer(act, "Ann", date(2027, 2, 11)), EN) == "Ann, 11 Feb 2027"
    by_habit = Answer(act, "Ann", date(2027, 2, 11), habit=3)
    assert said_words(by_habit, EN) == "The maker's habits, 11 Feb 2027"
    assert said_words(Answer(act, "Ann"), EN) == "Ann, day not known"
