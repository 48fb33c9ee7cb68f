"""A person's answers: what each of them does to a reading, and that it does nothing else."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from decimal import Decimal

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
    Question,
    Scope,
    Taken,
    TextForm,
    Turned,
)
from charts.asked_values import printed_around
from charts.findings import Finding, Level
from charts.importer import read_bytes
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension, FileReading, Kind, Range, UnitFrom

DAY = date(2027, 2, 11)
CLEAN = "Size;Chest (cm);Waist (cm)\nS;84-88;68-72\nM;89-93;73-77\nL;94-98;78-82\n"
BARE = "Size;Chest;Waist\nS;60;56\nM;65;58\nL;70;62\n"


def read(text: str, *acts: Act, about: Question | None = None) -> FileReading:
    answers = [Answer(act, "Ann", DAY, about) for act in acts]
    return read_bytes(text.encode(), "chart.csv", "north", answers)


def values(reading: FileReading) -> list[Range]:
    return [one for chart in reading.charts for size in chart.sizes for one in size.ranges]


def value(reading: FileReading, place: str) -> Range:
    return next(one for one in values(reading) if one.place == place)


def questions(reading: FileReading) -> list[Finding]:
    return [one for one in reading.findings if one.level is Level.QUESTION]


def settled(reading: FileReading) -> list[Finding]:
    return [one for one in reading.findings if one.settled is not None]


def figures(reading: FileReading) -> list[tuple[object, ...]]:
    return [
        (one.place, one.kind, one.low, one.high, one.value, one.unit, one.basis, one.definition)
        for one in values(reading)
    ]


def notes(reading: FileReading, code: str) -> list[Finding]:
    return [one for one in reading.findings if one.code == code]


def test_without_answers_nothing_is_different() -> None:
    assert read_bytes(CLEAN.encode(), "chart.csv", "north", ()) == read(CLEAN)


# A reading that was offered


def test_a_reading_taken_is_stored_with_its_own_unit_and_step() -> None:
    text = CLEAN.replace("89-93", "33 - 40 in (91-102 cm)")
    (asked,) = questions(read(text))
    reading = read(text, Taken("B3", asked.code, "as-printed", "33 - 40 in"))
    taken = value(reading, "B3")
    assert (taken.low, taken.high) == (Decimal("83.82"), Decimal("101.60"))
    assert (taken.published_unit, taken.low_step) == (Unit.IN, Decimal("2.54"))
    assert "units-disagree" not in [one.code for one in questions(reading)]


def test_a_question_that_was_answered_stays_listed_with_who_and_when() -> None:
    text = CLEAN.replace("89-93", "33 - 40 in (91-102 cm)")
    (asked,) = questions(read(text))
    act = Taken("B3", asked.code, "as-printed", "91-102 cm")
    reading = read(text, act, about=Question.of(asked))
    (closed,) = settled(reading)
    assert (closed.code, closed.place, closed.level) == (asked.code, "B3", Level.NOTE)
    assert closed.settled is not None
    assert (closed.settled.by, closed.settled.on, closed.settled.text) == ("Ann", DAY, "91-102 cm")
    assert closed.id in value(reading, "B3").findings


def test_a_height_that_became_a_date_is_read_in_the_order_that_was_taken() -> None:
    text = "Size;Height;Chest (cm)\nS;04-May;84-88\nM;06-May;89-93\nL;08-May;94-98\n"
    asked = next(one for one in questions(read(text)) if one.code == "was-a-date")
    reading = read(text, Taken(asked.place, "was-a-date", "month-day"))
    heights = [one.value for one in values(reading) if one.dimension is Dimension.HEIGHT]
    assert heights == [Decimal("162.56"), Decimal("167.64"), Decimal("172.72")]  # 5'4" 5'6" 5'8"
    other = read(text, Taken(asked.place, "was-a-date", "day-month"))
    first = next(one for one in values(other) if one.dimension is Dimension.HEIGHT)
    assert first.value == Decimal("134.62")  # 4'5"


def test_a_blank_is_the_same_as_above_once_it_is_said() -> None:
    text = CLEAN.replace("89-93", "")
    (asked,) = questions(read(text))
    reading = read(text, Taken(asked.place, "blank-inside", "same-as-above", "84-88"))
    filled = value(reading, "B3")
    assert (filled.low, filled.high, filled.published) == (Decimal(84), Decimal(88), "")
    assert filled.corrected is not None
    assert (filled.corrected.text, filled.corrected.by) == ("84-88", "Ann")
    assert questions(reading) == []


# As printed


def as_printed(reading: FileReading) -> list[Act]:
    found: list[Act] = []
    for asked in questions(reading):
        question = Question.of(asked)
        printed = printed_around(asked, reading)
        of = (question.place, question.code, question.heading, question.text)
        found.append(AsPrinted(*of, printed))
    return found


BROKEN = CLEAN.replace("M;89-93", "M;83-87")


def test_as_printed_settles_a_question_and_changes_no_value() -> None:
    assert [one.code for one in questions(read(BROKEN))] == ["order-broken"]
    reading = read(BROKEN, *as_printed(read(BROKEN)))
    assert questions(reading) == []
    assert figures(reading) == figures(read(BROKEN))


@pytest.mark.parametrize("other", ["82-86", "85-84"])
def test_as_printed_of_another_figure_settles_nothing(other: str) -> None:
    reading = read(BROKEN.replace("83-87", other), *as_printed(read(BROKEN)))
    assert "order-broken" in [one.code for one in questions(reading)]
    assert len(notes(reading, "answer-not-applied")) == 1


def test_a_turned_block_that_is_right_as_printed_is_stored() -> None:
    text = "Size;Chest (cm);Waist (cm)\nS;104;90\nM;98;84\nL;92;78\nXL;86;72\n"
    before = read(text)
    assert {one.kind for one in values(before)} == {Kind.UNREAD}
    reading = read(text, *as_printed(before))
    assert [one.value for one in values(reading)][:2] == [Decimal(104), Decimal(90)]


# What columns mean


def test_the_unit_of_columns_is_taken_from_the_person() -> None:
    reading = read(BARE, Meaning(Scope.COLUMN, "A1:C4", ("Chest", "Waist"), Unit.CM))
    assert questions(reading) == []
    assert {(one.unit_from, one.published_unit) for one in values(reading)} == {
        (UnitFrom.PERSON, Unit.CM)
    }


def test_the_other_unit_gives_the_other_figures() -> None:
    text = "Size;Chest;Waist\nS;34;28\nM;36;30\nL;38;32\n"
    reading = read(text, Meaning(Scope.COLUMN, "A1:C4", ("Chest", "Waist"), Unit.IN))
    assert value(reading, "B2").value == Decimal("86.36")
    assert questions(reading) == []


def test_a_unit_said_of_one_column_leaves_the_other_asked() -> None:
    before = read(BARE)
    reading = read(BARE, Meaning(Scope.COLUMN, "A1:C4", ("Chest",), Unit.CM))
    assert [value(reading, place).value for place in ("C2", "C3", "C4")] == [
        value(before, place).value for place in ("C2", "C3", "C4")
    ]


def test_a_unit_that_the_figures_contradict_is_asked_cell_by_cell() -> None:
    reading = read(CLEAN, Meaning(Scope.COLUMN, "A1:C4", ("Chest (cm)",), Unit.IN))
    assert value(reading, "B2").kind is Kind.UNREAD
    assert "impossible" in {one.code for one in questions(reading)}


def test_a_unit_of_the_file_yields_to_what_is_printed() -> None:
    reading = read(CLEAN, Meaning(Scope.FILE, unit=Unit.IN))
    assert figures(reading) == figures(read(CLEAN))
    assert len(notes(reading, "answer-not-applied")) == 1


def test_a_unit_of_the_file_holds_where_none_is_printed() -> None:
    reading = read(BARE, Meaning(Scope.FILE, unit=Unit.CM))
    assert questions(reading) == []
    assert value(reading, "B2").unit_from is UnitFrom.PERSON


@pytest.mark.parametrize("basis", [Basis.FINISHED, Basis.BODY, Basis.FLAT])
def test_a_basis_said_of_a_column_closes_its_question(basis: Basis) -> None:
    text = "Size;Chest width (cm);Length (cm)\nS;94;60\nM;98;62\nL;102;64\n"
    before = read(text)
    doubted = [one for one in questions(before) if one.code == "basis-doubtful"]
    assert doubted
    headings = ("Chest width (cm)", "Length (cm)")
    reading = read(text, Meaning(Scope.COLUMN, "A1:C4", headings, basis=basis))
    assert "basis-doubtful" not in {one.code for one in questions(reading)}
    assert {one.basis for one in values(reading)} == {basis}


def test_finished_measures_of_a_table_spare_the_riders_own_height() -> None:
    text = "Size;Chest (cm);Height (cm)\nS;94;160\nM;98;168\nL;102;176\n"
    reading = read(text, Meaning(Scope.TABLE, "A1:C4", basis=Basis.FINISHED))
    assert value(reading, "B2").basis is Basis.FINISHED
    assert value(reading, "C2").basis is Basis.BODY


def test_hip_at_the_widest_is_said_once_for_a_file() -> None:
    text = CLEAN.replace("Waist", "Hip")
    said = Meaning(Scope.FILE, dimension=Dimension.HIP, definition=Definition.HIP_SEAT)
    reading = read(text, said)
    hips = [one for one in values(reading) if one.dimension is Dimension.HIP]
    assert {one.definition for one in hips} == {Definition.HIP_SEAT}
    chests = [one for one in values(reading) if one.dimension is Dimension.CHEST]
    assert {one.definition for one in chests} == {Definition.UNKNOWN}


def test_an_unknown_heading_is_named() -> None:
    text = CLEAN.replace("Waist (cm)", "Zorbel (cm)")
    before = read(text)
    assert [one.code for one in questions(before)] == ["heading-unknown"]
    said = Meaning(Scope.COLUMN, "C1", ("Zorbel (cm)",), dimension=Dimension.WAIST)
    reading = read(text, said)
    assert questions(reading) == []
    assert value(reading, "C2").dimension is Dimension.WAIST
    assert value(reading, "C2").heading == "Zorbel (cm)"


# Cells that read otherwise


def test_a_corrected_cell_keeps_its_print_with_who_said_so() -> None:
    reading = read(CLEAN, Corrected((CellReads("B3", "89-93", "90-94"),)))
    changed = value(reading, "B3")
    assert (changed.low, changed.high, changed.published) == (Decimal(90), Decimal(94), "89-93")
    assert changed.corrected is not None
    assert (changed.corrected.text, changed.corrected.by, changed.corrected.on) == (
        "90-94",
        "Ann",
        DAY,
    )


def test_a_correction_runs_through_the_same_checks() -> None:
    reading = read(CLEAN, Corrected((CellReads("B3", "89-93", "98-94"),)))
    assert "order-broken" in {one.code for one in questions(reading)}


def test_a_correction_of_another_print_is_not_applied_and_said() -> None:
    reading = read(CLEAN, Corrected((CellReads("B3", "88-92", "90-94"),)))
    assert figures(reading) == figures(read(CLEAN))
    (note,) = notes(reading, "answer-not-applied")
    assert (note.place, note.values["by"], note.values["text"]) == ("B3", "Ann", "88-92")


def test_a_label_is_corrected_and_its_print_kept() -> None:
    reading = read(CLEAN.replace("\nM;", "\nW;"), Corrected((CellReads("A3", "W", "M"),)))
    size = reading.charts[0].sizes[1]
    assert size.label == "M"
    assert size.corrected is not None
    assert size.corrected.printed == "W"


def test_a_value_taken_out_is_kept_among_the_corrections() -> None:
    reading = read(CLEAN, Corrected((CellReads("C4", "78-82", ""),)))
    assert "C4" not in {one.place for one in values(reading)}
    assert [(one.place, one.printed) for one in reading.corrections] == [("C4", "78-82")]


def test_a_blank_cell_can_be_given_a_value() -> None:
    text = CLEAN.replace("L;94-98;78-82", "L;94-98;")
    reading = read(text, Corrected((CellReads("C4", "", "78-82"),)))
    assert (value(reading, "C4").low, value(reading, "C4").published) == (Decimal(78), "")
    assert questions(reading) == []


def test_one_end_of_a_range_in_two_cells_is_corrected() -> None:
    text = "Size;Chest from (cm);Chest to (cm)\nS;84;88\nM;89;39\nL;94;98\n"
    reading = read(text, Corrected((CellReads("C3", "39", "93"),)))
    joined = value(reading, "B3:C3")
    assert (joined.high, joined.published) == (Decimal(93), "89 | 39")
    assert joined.corrected is not None


# Parts left out


def test_a_row_left_out_is_no_size() -> None:
    text = CLEAN.replace("M;89-93;73-77", "new;;\nM;89-93;73-77")
    reading = read(CLEAN, LeftOut(Part.ROW, "A3", "M"))
    assert [size.label for size in reading.charts[0].sizes] == ["S", "L"]
    assert [chart.place for chart in read(text, LeftOut(Part.ROW, "A3", "new")).charts] == ["A1:C5"]


def test_a_row_that_is_another_row_by_now_stays() -> None:
    reading = read(CLEAN, LeftOut(Part.ROW, "A3", "XL"))
    assert figures(reading) == figures(read(CLEAN))
    assert len(notes(reading, "answer-not-applied")) == 1


def test_a_column_left_out_measures_nothing() -> None:
    reading = read(CLEAN, LeftOut(Part.COLUMN, "C1", "Waist (cm)"))
    assert {one.dimension for one in values(reading)} == {Dimension.CHEST}


def test_a_table_left_out_leaves_the_others() -> None:
    text = CLEAN + "\nSize;Hip (cm)\nS;90-94\nM;95-99\nL;100-104\n"
    reading = read(text, LeftOut(Part.TABLE, "A1:C4"))
    assert [chart.place for chart in reading.charts] == ["A6:B9"]


def test_a_file_left_out_is_no_chart_and_asks_nothing() -> None:
    text = "Invoice 12\nThank you for your order of twelve vests.\n"
    assert [one.code for one in questions(read(text))] == ["no-table"]
    reading = read(text, LeftOut(Part.FILE))
    assert (reading.charts, questions(reading)) == ((), [])
    assert [one.code for one in settled(reading)] == ["no-table"]


# Edges and turns


def test_an_edge_moved_in_leaves_a_row_out_of_the_table() -> None:
    reading = read(CLEAN, Edge("A1:C4", "A1:C3"))
    assert [size.label for size in reading.charts[0].sizes] == ["S", "M"]
    assert reading.charts[0].place == "A1:C3"


def test_an_edge_moved_out_takes_a_row_in() -> None:
    text = CLEAN + "\nXL;99-103;83-87\n"
    assert [size.label for size in read(text).charts[0].sizes][-1] in ("L", "XL")
    reading = read(CLEAN, Edge("A1:C4", "A1:B4"))
    assert {one.dimension for one in values(reading)} == {Dimension.CHEST}


def test_an_edge_of_a_table_that_is_not_there_is_said() -> None:
    reading = read(CLEAN, Edge("A9:C12", "A9:C11"))
    assert figures(reading) == figures(read(CLEAN))
    assert len(notes(reading, "answer-not-applied")) == 1


def test_a_table_turned_round_is_read_the_other_way() -> None:
    text = "Size;34;36;38\nChest (cm);84;88;92\nWaist (cm);68;72;76\n"
    across = read(text)
    turned = read(text, Turned(across.charts[0].place))
    again = read(text, Turned(across.charts[0].place), Turned(across.charts[0].place))
    assert figures(again) == figures(across)
    assert figures(turned) != figures(across)


def test_a_table_turned_round_twice_gives_what_it_gave_at_first() -> None:
    text = "Size;Waist (cm);Bust A-C cup (cm);Bust D-F cup (cm)\nS;66-70;84-88;89-94\n"
    text += "M;71-75;89-93;95-100\n"
    first = read(text)
    again = read(text, Turned(first.charts[0].place), Turned(first.charts[0].place))
    assert figures(again) == figures(first)
    assert [one.code for one in again.findings] == [one.code for one in first.findings]


# How a text is written


def test_another_separator_parts_a_text_otherwise() -> None:
    text = "Size,x|Chest (cm)\nS,1|84\nM,2|88\nL,3|92\n"
    reading = read(text, TextForm(separator="|"))
    assert [one.place for one in values(reading)] == ["B2", "B3", "B4"]


def test_another_encoding_gives_other_letters() -> None:
    data = "Größe;Brust (cm);Höhe (cm)\nS;84–88;160\nM;89–93;168\n".encode("cp850", "replace")
    wrong = read_bytes(data, "a.csv", "", [Answer(TextForm("cp1252"))])
    right = read_bytes(data, "a.csv", "", [Answer(TextForm("cp850"))])
    assert wrong != right
    assert {one.dimension for one in values(right)} >= {Dimension.CHEST}


def test_an_encoding_that_cannot_be_is_not_applied_and_said() -> None:
    reading = read("é".encode("cp1252").decode("cp1252") + CLEAN, TextForm("no-such-code"))
    assert len(notes(reading, "answer-not-applied")) == 1


def test_answers_that_speak_of_nothing_change_nothing() -> None:
    acts: Sequence[Act] = (
        Taken("Z9", "impossible", "girth"),
        Meaning(Scope.COLUMN, "A1:C4", ("Zorbel",), Unit.IN),
        LeftOut(Part.COLUMN, "F1"),
        Turned("X1:Z9"),
    )
    reading = read(CLEAN, *acts)
    assert figures(reading) == figures(read(CLEAN))
    assert len(notes(reading, "answer-not-applied")) == len(acts)


def test_cells_of_one_correction_change_together_or_not_at_all() -> None:
    both = (CellReads("B3", "89-93", "90-94"), CellReads("B4", "95-98", "95-99"))
    reading = read(CLEAN, Corrected(both))
    assert figures(reading) == figures(read(CLEAN))
    assert len(notes(reading, "answer-not-applied")) == 1


def test_a_correction_that_cannot_be_read_keeps_the_print_too() -> None:
    reading = read(CLEAN, Corrected((CellReads("B3", "89-93", "12.5"),)))
    changed = value(reading, "B3")
    assert (changed.kind, changed.published) == (Kind.UNREAD, "89-93")
    assert changed.corrected is not None


def test_an_edge_moved_over_another_table_takes_its_place() -> None:
    text = f"{CLEAN}\nSize;Hip (cm)\nS;90-94\nM;95-99\nL;100-104\n"
    assert [chart.place for chart in read(text).charts] == ["A1:C4", "A6:B9"]
    reading = read(text, Edge("A6:B9", "A2:C4"))
    assert all(chart.place != "A1:C4" for chart in reading.charts)


def test_an_edge_moved_within_a_table_leaves_the_others_alone() -> None:
    text = f"{CLEAN}\nSize;Hip (cm)\nS;90-94\nM;95-99\nL;100-104\n"
    reading = read(text, Edge("A6:B9", "A6:B8"))
    assert [chart.place for chart in reading.charts] == ["A1:C4", "A6:B8"]
    assert reading.charts[0] == read(text).charts[0]


def test_what_is_cut_off_above_a_table_is_its_title() -> None:
    text = "Fellgarrow;\nSize;Chest (cm)\nS;84-88\nM;89-93\nL;94-98\n"
    reading = read(text, Edge("A2:B5", "A2:B4"))
    assert reading.charts[0].title == "Fellgarrow"
