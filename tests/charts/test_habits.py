"""A supplier's habits: what was confirmed holds for the next file, what values raise does not."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.answers import Answer, LeftOut, Meaning, Part, Question, Scope, TextForm
from charts.answers_toml import AnswersFileError
from charts.choices import answers, choices
from charts.findings import LEVELS, Finding, Level
from charts.habits.applied import departures, habit_answers, text_answers
from charts.habits.kept import (
    Habits,
    HeadingHabit,
    LabelHabit,
    Look,
    TableLook,
    TextHabit,
    learned,
    pattern_of,
    supplier_of,
)
from charts.habits.toml import read_habits, write_habits
from charts.importer import read_bytes
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension, FileReading

DAY = date(2027, 2, 11)
BARE = "Size;Chest;Waist\nS;60;56\nM;65;58\nL;70;62\n"
NAME = "north/chart_2027.csv"
NEXT = "north/chart_2028.csv"


def read(text: str, given: Sequence[Answer] = (), name: str = NAME) -> FileReading:
    return read_bytes(text.encode(), name, "north", given)


def questions(reading: FileReading) -> list[Finding]:
    return [one for one in reading.findings if one.level is Level.QUESTION]


def first_choices(reading: FileReading, index: int = 0) -> list[Answer]:
    given: list[Answer] = []
    for asked in questions(reading):
        given += answers(choices(asked, reading)[index], asked, "Ann", DAY)
    return given


def taught(text: str, index: int = 0, extra: Sequence[Answer] = ()) -> Habits:
    """The habits after one file was answered with its choices of one index, and approved."""
    given = [*first_choices(read(text), index), *extra]
    return learned(Habits("north"), read(text, given), given, "Ann", DAY)


def applied(text: str, habits: Habits, name: str = NEXT) -> FileReading:
    given = habit_answers(read(text, name=name), habits)
    return read(text, given, name)


def test_a_unit_confirmed_once_is_not_asked_again() -> None:
    habits = taught(BARE)
    reading = applied(BARE.replace("60", "61"), habits)
    assert questions(reading) == []
    (closed,) = [one for one in reading.findings if one.settled is not None]
    assert closed.settled is not None
    assert (closed.settled.by, closed.settled.habit) == ("Ann", 1)


def test_the_habits_of_one_supplier_are_not_another_ones() -> None:
    assert supplier_of(read(BARE)) == "north"
    assert supplier_of(FileReading("chart.csv")) == ""


@pytest.mark.parametrize(
    "figures",
    [
        BARE.replace("60", "160").replace("65", "165").replace("70", "170"),
        "Size;Chest;Waist\nS;34;28\nM;36;30\nL;38;32\n",
    ],
)
def test_a_unit_is_asked_again_where_the_figures_lie_elsewhere(figures: str) -> None:
    habits = taught(BARE)
    reading = applied(figures, habits)
    assert questions(reading) != []
    cases = {one.values.get("case") for one in departures(reading, habits)}
    assert "figures" in cases


def test_a_unit_that_the_figures_do_not_allow_is_asked_again() -> None:
    inches = "Size;Chest;Waist\nS;34;28\nM;36;30\nL;38;32\n"
    habits = taught(inches)
    assert {one.unit for one in habits.headings} == {Unit.IN}
    assert questions(applied("Size;Chest;Waist\nS;86;71\nM;91;76\nL;97;81\n", habits)) != []


def test_a_heading_named_once_is_known_from_then_on() -> None:
    text = "Size;Zorbel (cm);Hip (cm)\nS;84-88;90-94\nM;89-93;95-99\nL;94-98;100-104\n"
    asked = questions(read(text))[0]
    said = Meaning(Scope.COLUMN, "B1", ("Zorbel (cm)",), dimension=Dimension.CHEST)
    given = [Answer(said, "Ann", DAY, Question.of(asked))]
    habits = learned(Habits("north"), read(text, given), given, "Ann", DAY)
    reading = applied(text.replace("84-88", "83-87"), habits)
    assert questions(reading) == []
    first = reading.charts[0].sizes[0].ranges[0]
    assert (first.dimension, first.low) == (Dimension.CHEST, Decimal(83))


def test_finished_measures_confirmed_once_hold_for_the_next_file() -> None:
    text = "Size;Chest width (cm);Length (cm)\nS;94;60\nM;98;62\nL;102;64\n"
    assert "basis-doubtful" in {one.code for one in questions(read(text))}
    habits = taught(text)
    reading = applied(text.replace("94", "95"), habits)
    assert "basis-doubtful" not in {one.code for one in questions(reading)}
    doubted = {one.values["heading"] for one in questions(read(text))}
    found = [one for size in reading.charts[0].sizes for one in size.ranges]
    assert {one.basis for one in found if one.heading in doubted} == {Basis.FINISHED}


def test_a_definition_said_of_a_file_holds_for_the_next_though_nobody_asks() -> None:
    text = "Size;Hip (cm)\nS;90-94\nM;95-99\nL;100-104\n"
    said = Meaning(Scope.FILE, dimension=Dimension.HIP, definition=Definition.HIP_SEAT)
    habits = taught(text, extra=[Answer(said, "Ann", DAY)])
    reading = applied(text, habits)
    assert {one.definition for size in reading.charts[0].sizes for one in size.ranges} == {
        Definition.HIP_SEAT
    }


@pytest.mark.parametrize("index", [0, 1])
def test_a_name_of_a_size_is_read_as_it_was_read_before(index: int) -> None:
    text = "Size;Chest (cm)\nXS;78-83\nSt;84-88\nM;89-93\nL;94-98\n"
    assert [one.code for one in questions(read(text))] == ["label-mistyped"]
    reading = applied(text, taught(text, index))
    assert questions(reading) == []
    assert reading.charts[0].sizes[1].label == ("S", "St")[index]


def test_a_name_that_breaks_the_step_of_the_others_is_asked_every_time() -> None:
    habits = Habits("north", 1, "Ann", DAY, labels=(LabelHabit("35", "35"),))
    by_letters = Finding("f1", "label-mistyped", "A3", {"text": "35", "first": "34"})
    by_step = Finding("f2", "label-mistyped", "B3", {"text": "35", "heading": "", "first": "34"})
    (answer,) = habit_answers(FileReading(NEXT, findings=(by_letters, by_step)), habits)
    assert answer.about == Question.of(by_letters)


def test_a_range_that_became_a_date_is_turned_back_as_before() -> None:
    text = "Size;Age;Chest (cm)\nS;8-9;60-64\nM;12-Oct;65-69\nL;13-14;70-74\n"
    assert [one.code for one in questions(read(text))] == ["was-a-date"]
    assert questions(applied(text, taught(text))) == []


def test_a_height_that_became_a_date_is_asked_every_time() -> None:
    text = "Size;Height;Chest (cm)\nS;04-May;84-88\nM;06-May;89-93\nL;08-May;94-98\n"
    habits = taught(text)
    assert "was-a-date" in {one.code for one in questions(applied(text, habits))}


BROKEN = {
    "impossible": "Size;Chest (cm)\nS;84-88\nM;12.5\nL;94-98\n",
    "order-broken": "Size;Chest (cm);Hip (cm)\nS;84-88;90\nM;83-87;95\nL;94-98;99\n",
    "rotated": "Size;Chest (cm);Waist (cm)\nS;104;90\nM;98;84\nL;92;78\nXL;86;72\n",
    "units-swapped": "Size;Chest (in);Waist (in)\nS;84;68\nM;89;73\nL;94;78\n",
    "units-disagree": "Size;Chest\nS;34 in (86 cm)\nM;36 in (97 cm)\nL;38 in (97 cm)\n",
    "label-repeated": "Size;Chest (cm)\nS;84\nM;89\nM;94\nXL;99\n",
    "double-range": "Size;Chest (in)\nS;30-33\nM;33- 35 to 36-38\nL;38-40\n",
    "blank-inside": "Size;Chest (cm);Hip (cm)\nS;84;90\nM;;95\nL;94;99\n",
}


@pytest.mark.parametrize("code", sorted(BROKEN))
def test_what_the_values_raise_is_never_closed_by_a_habit(code: str) -> None:
    text = BROKEN[code]
    assert code in {one.code for one in questions(read(text))}
    for index in (0, -1):
        habits = taught(text, index)
        assert code in {one.code for one in questions(applied(text, habits))}


def test_only_questions_about_words_can_be_closed() -> None:
    reading = FileReading(
        NEXT,
        findings=tuple(
            Finding(f"f{number}", code, "B2", {"heading": "Chest", "text": "12"})
            for number, (code, level) in enumerate(LEVELS.items(), 1)
            if level is Level.QUESTION
        ),
    )
    habits = Habits(
        "north",
        3,
        "Ann",
        DAY,
        (HeadingHabit("Chest", Unit.CM, Dimension.CHEST, None, Basis.FINISHED, False, True),),
        (LabelHabit("12", "12"),),
        files_left_out=(pattern_of(NEXT),),
    )
    closed = {one.about.code for one in habit_answers(reading, habits) if one.about}
    assert closed <= {
        "unit-missing",
        "heading-two-readings",
        "heading-unknown",
        "column-unused",
        "basis-doubtful",
        "label-mistyped",
        "was-a-date",
        "no-table",
    }


@pytest.mark.parametrize(
    ("text", "case"),
    [
        (BARE.replace("Waist", "Hip"), "heading-new"),
        (BARE.replace(";Waist", "").replace(";56", "").replace(";58", "").replace(";62", ""),
         "heading-gone"),
        (BARE + "\nSize;Hip (cm)\nS;90\nM;95\nL;99\n", "table-new"),
    ],
)  # fmt: skip
def test_a_departure_is_named(text: str, case: str) -> None:
    cases = {one.values["case"] for one in departures(read(text, name=NEXT), taught(BARE))}
    assert case in cases


def test_another_printed_unit_is_a_departure() -> None:
    text = "Size;Chest\nS;84 cm\nM;89 cm\nL;94 cm\n"
    inches = "Size;Chest\nS;33 in\nM;35 in\nL;37 in\n"
    (note,) = departures(read(inches, name=NEXT), taught(text))
    assert (note.values["case"], note.values["unit"], note.values["other"]) == ("unit", "in", "cm")


def test_a_file_that_looks_the_same_departs_in_nothing() -> None:
    assert departures(read(BARE, name=NEXT), taught(BARE)) == ()


def test_a_file_that_was_no_chart_is_none_next_time() -> None:
    text = "Invoice 12\nThank you for your order of twelve vests.\n"
    habits = taught(text)
    assert habits.files_left_out == ("chart_#.csv",)
    assert questions(applied(text + "Yours\n", habits)) == []


def test_how_a_text_is_written_is_known_before_it_is_read() -> None:
    form = Answer(TextForm("cp850", ";"), "Ann", DAY)
    habits = taught(BARE, extra=[form])
    assert [one.act for one in text_answers(NEXT, habits)] == [TextForm("cp850", ";")]
    assert text_answers("north/other.csv", habits) == ()


def test_a_column_left_out_stays_out() -> None:
    text = BARE.replace("Waist", "Zorbel")
    asked = next(one for one in questions(read(text)) if one.code == "heading-unknown")
    out = Answer(LeftOut(Part.COLUMN, asked.place, "Zorbel"), "Ann", DAY, Question.of(asked))
    given = [out]
    habits = learned(Habits("north"), read(text, given), given, "Ann", DAY)
    assert "heading-unknown" not in {one.code for one in questions(applied(text, habits))}


def test_a_version_rises_only_with_a_change() -> None:
    habits = taught(BARE)
    given = first_choices(read(BARE))
    again = learned(habits, read(BARE, given), given, "Bob", date(2028, 1, 1))
    assert (again.version, again.by) == (1, "Ann")
    other = BARE.replace("70", "71")
    later = learned(habits, read(other, given), given, "Bob", date(2028, 1, 1))
    assert (later.version, later.by) == (2, "Bob")


def test_what_a_habit_answered_is_not_learned_again() -> None:
    habits = taught(BARE)
    given = habit_answers(read(BARE, name=NEXT), habits)
    assert learned(Habits("north"), read(BARE, given), given, "Ann", DAY).headings == ()


# As text

TEXTS = st.text(st.characters(exclude_categories=["Cs"]), max_size=12)
NUMBERS = st.decimals(0, 300, places=3)
TABLES = st.lists(st.tuples(TEXTS, TEXTS), max_size=3).map(
    lambda pairs: (tuple(pair[0] for pair in pairs), tuple(pair[1] for pair in pairs))
)
HABITS = st.builds(
    Habits,
    TEXTS,
    st.integers(0, 99),
    TEXTS,
    st.none() | st.dates(),
    st.lists(
        st.builds(
            HeadingHabit,
            TEXTS,
            st.none() | st.sampled_from(Unit),
            st.none() | st.sampled_from(Dimension),
            st.none() | st.sampled_from(Definition),
            st.none() | st.sampled_from(Basis),
            st.booleans(),
            st.booleans(),
            st.none() | NUMBERS,
            st.none() | NUMBERS,
        ),
        max_size=3,
    ).map(tuple),
    st.lists(st.builds(LabelHabit, TEXTS, TEXTS), max_size=2).map(tuple),
    st.lists(TEXTS, max_size=2).map(tuple),
    st.lists(TEXTS, max_size=2).map(tuple),
    st.lists(
        st.builds(TextHabit, TEXTS, st.builds(TextForm, st.none() | TEXTS.filter(bool))),
        max_size=2,
    ).map(tuple),
    st.lists(
        st.builds(
            Look,
            TEXTS,
            st.lists(
                st.builds(lambda sheet, both: TableLook(sheet, *both), TEXTS, TABLES), max_size=2
            ).map(tuple),
        ),
        max_size=2,
    ).map(tuple),
)


@given(HABITS)
def test_habits_come_back_from_their_text(habits: Habits) -> None:
    assert read_habits(write_habits(habits)) == habits


def test_habits_of_a_newer_version_are_refused() -> None:
    with pytest.raises(AnswersFileError) as raised:
        read_habits("format = 2\nsupplier = 'north'\n")
    assert raised.value.reason.code == "format-newer"
