"""The in-house chart: every offer as its maker gives it, in the order of the trade."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from decimal import Decimal

from charts.findings import Finding
from charts.in_house import InHouseChart
from charts.model_facts import ModelFacts
from charts.quantities import Unit
from charts.schema import (
    Basis,
    Chart,
    Definition,
    Dimension,
    FileReading,
    Kind,
    Range,
    Said,
    Size,
    UnitFrom,
)
from harmonizer.combined import combined
from harmonizer.offers import offers

DAY = date(2027, 2, 11)


def chest(place: str = "B2", dimension: Dimension = Dimension.CHEST, **more: object) -> Range:
    given: dict[str, object] = {"low": Decimal(84), "high": Decimal(88)}
    return Range(
        dimension=dimension,
        heading=dimension.value,
        kind=Kind.RANGE,
        published="84-88",
        place=place,
        unit=Unit.CM,
        unit_from=UnitFrom.HEADING,
        **(given | more),  # type: ignore[arg-type]  # named fields of a Range
    )


def chart(*sizes: Size, place: str = "A1:C9", **more: object) -> Chart:
    given: dict[str, object] = {
        "supplier": Said("Tarnwhistle", "A1"),
        "model": Said("Fellrunner", "A1"),
    }
    return Chart(
        place,
        None,
        sizes,
        **(given | more),  # type: ignore[arg-type]  # named fields of a Chart
    )


def made(*readings: FileReading, facts: tuple[ModelFacts, ...] = ()) -> InHouseChart:
    return combined(readings, offers(readings, facts), {}, DAY)


def file(*charts: Chart, name: str = "a.csv", findings: tuple[Finding, ...] = ()) -> FileReading:
    return FileReading(name, charts, findings)


def sized(*labels: str) -> tuple[Size, ...]:
    return tuple(Size(label, (chest(),)) for label in labels)


def test_letters_stand_in_the_order_of_sizes_and_not_of_the_alphabet() -> None:
    rows = made(file(chart(*sized("XL", "S", "XXL", "L", "XS", "M")))).rows
    assert [row.size for row in rows] == ["XS", "S", "M", "L", "XL", "XXL"]


def test_numbers_stand_in_their_order() -> None:
    rows = made(file(chart(*sized("104", "98", "110")))).rows
    assert [row.size for row in rows] == ["98", "104", "110"]


def test_labels_that_nobody_can_order_keep_the_order_of_the_source() -> None:
    rows = made(file(chart(*sized("Kestrel", "Buzzard", "Merlin")))).rows
    assert [row.size for row in rows] == ["Kestrel", "Buzzard", "Merlin"]


def test_makers_and_models_stand_in_the_order_of_their_names() -> None:
    second = chart(*sized("S"), supplier=Said("Alderway", "A1"), model=Said("zephyr", "A1"))
    third = chart(*sized("S"), supplier=Said("Alderway", "A1"), model=Said("Breeze", "A1"))
    rows = made(file(chart(*sized("S"))), file(second, third, name="b.csv")).rows
    assert [row.model for row in rows] == ["Breeze", "zephyr", "Fellrunner"]


def test_every_size_comes_once_in_every_length_and_names_both_areas() -> None:
    back = chest("B22", Dimension.BACK_LENGTH)
    lengths = [Size(None, (back,), length=word) for word in ("Long", "Short", "Regular")]
    width = chart(Size("M", (chest(),)))
    rows = made(file(width, chart(*lengths, place="A20:B23"))).rows
    assert [(row.size, row.length) for row in rows] == [
        ("M", "Short"),
        ("M", "Regular"),
        ("M", "Long"),
    ]
    assert {row.place for row in rows} == {"A1:C9, A20:B23"}


def test_a_dimension_the_maker_does_not_give_is_absent() -> None:
    (row,) = made(file(chart(*sized("M")))).rows
    assert set(row.measures) == {Dimension.CHEST}


def test_two_definitions_of_one_dimension_are_both_kept() -> None:
    backs = (
        chest("B2", Dimension.BACK_LENGTH, definition=Definition.BACK_C7_SI),
        chest("C2", Dimension.BACK_LENGTH, definition=Definition.BACK_C7_WAIST),
    )
    (row,) = made(file(chart(Size("M", backs)))).rows
    assert row.measures[Dimension.BACK_LENGTH] == backs


def test_the_instructions_speak_only_where_the_chart_is_silent() -> None:
    facts = ModelFacts(
        model="Fellrunner",
        file="a.csv",
        basis=Basis.BODY,
        definitions={Dimension.CHEST: Definition.CHEST_UNDER_ARM},
    )
    said = chest(definition=Definition.CHEST_WIDEST, basis=Basis.FINISHED)
    rows = made(file(chart(Size("S", (chest(),)), Size("M", (said,)))), facts=(facts,)).rows
    (silent,), (spoken,) = (row.measures[Dimension.CHEST] for row in rows)
    assert (silent.definition, silent.basis) == (Definition.CHEST_UNDER_ARM, Basis.BODY)
    assert spoken == said


def test_recalled_and_superseded_models_are_left_out_and_named() -> None:
    recalled = ModelFacts(model="Fellrunner", file="a.csv", recalled=True)
    old = ModelFacts(model="Fellwalker", file="b.csv", superseded=True)
    walker = chart(*sized("M"), model=Said("Fellwalker", "A1"))
    whole = made(file(chart(*sized("M"))), file(walker, name="b.csv"), facts=(recalled, old))
    assert whole.rows == ()
    assert [(each.model, each.why.value) for each in whole.withheld] == [
        ("Fellrunner", "recalled"),
        ("Fellwalker", "superseded"),
    ]


def test_models_kept_aside_are_named_and_a_recall_is_said_before_that() -> None:
    shown, held = file(chart(*sized("M"))), file(chart(*sized("L"), model=Said("Fellwalker", "A1")))
    recalled = ModelFacts(model="Oldcoat", file="c.csv", recalled=True)
    old = file(chart(*sized("S"), model=Said("Oldcoat", "A1")), name="c.csv")
    aside = offers((held, old), (recalled,))
    whole = combined((shown,), offers((shown,)), {}, DAY, aside)
    assert [row.model for row in whole.rows] == ["Fellrunner"]
    assert [(each.model, each.why.value) for each in whole.withheld] == [
        ("Fellwalker", "held"),
        ("Oldcoat", "recalled"),
    ]


def test_a_model_left_out_makes_another_version() -> None:
    shown = file(chart(*sized("M")))
    held = file(chart(*sized("L"), model=Said("Fellwalker", "A1")), name="b.csv")
    offered = offers((shown,))
    before = combined((shown,), offered, {}, DAY)
    after = combined((shown,), offered, {}, DAY, offers((held,)))
    assert before.rows == after.rows
    assert before.version != after.version


def test_questions_stand_with_the_dangerous_ones_first() -> None:
    asked = (Finding("f1", "label-mistyped", "A2"), Finding("f2", "unit-missing", "B1"))
    whole = made(file(chart(*sized("M")), findings=asked))
    assert [each.finding.code for each in whole.questions] == ["unit-missing", "label-mistyped"]


def test_a_question_marks_the_rows_whose_values_it_bears_on() -> None:
    asked = Finding("f1", "unit-missing", "B1")
    sizes = (Size("S", (chest(findings=("f1",)),)), Size("M", (chest(),)))
    rows = made(file(chart(*sizes), findings=(asked,))).rows
    assert [row.open_questions for row in rows] == [frozenset({"f1"}), frozenset()]


def test_a_file_that_could_not_be_read_is_named() -> None:
    broken = FileReading("b.pdf", (), (Finding("f1", "unreadable", "b.pdf"),))
    whole = made(file(chart(*sized("M"))), broken)
    assert [each.file for each in whole.not_read] == ["b.pdf"]
    assert whole.questions == ()


def test_the_version_does_not_depend_on_the_day() -> None:
    readings = (file(chart(*sized("M"))),)
    whole = made(*readings)
    later = combined(readings, offers(readings), {"a.csv": DAY}, date(2028, 1, 1))
    assert replace(later, made_on=DAY).version == whole.version
