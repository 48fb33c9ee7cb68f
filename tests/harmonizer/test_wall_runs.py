"""The sizes of one model in one dimension: what is drawn, from where to where, and what is said."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as some

from charts.in_house import InHouseRow
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension, Kind, Range, UnitFrom
from harmonizer.settings import DEFAULTS
from harmonizer.wall_runs import Remark, Run, Span, Untold, WallCell, wall_cell

CHEST, BACK = Dimension.CHEST, Dimension.BACK_LENGTH


def ranged(low: str | None, high: str | None, **more: object) -> Range:
    given: dict[str, object] = {
        "dimension": CHEST,
        "heading": "Chest",
        "kind": Kind.RANGE,
        "published": f"{low}-{high}",
        "place": "B2",
        "unit": Unit.CM,
        "unit_from": UnitFrom.HEADING,
        "low": None if low is None else Decimal(low),
        "high": None if high is None else Decimal(high),
    }
    return Range(**(given | more))  # type: ignore[arg-type]  # named fields of a Range


def single(value: str, **more: object) -> Range:
    return ranged(None, None, kind=Kind.SINGLE, value=Decimal(value), **more)


def row(size: str, *values: Range, length: str | None = None, asked: str = "") -> InHouseRow:
    measures: dict[Dimension, tuple[Range, ...]] = {}
    for value in values:
        measures[value.dimension] = (*measures.get(value.dimension, ()), value)
    return InHouseRow(
        supplier="Tarnwhistle",
        model="Fellrunner",
        band="women",
        size=size,
        length=length,
        measures=measures,
        file="a.csv",
        place="A1:C9",
        dated=date(2026, 11, 3),
        open_questions=frozenset({asked} if asked else ()),
    )


def cell(*rows: InHouseRow, dimension: Dimension = CHEST) -> WallCell:
    return wall_cell(rows, dimension, DEFAULTS)


def test_a_range_is_drawn_from_its_printed_low_end_to_its_printed_high_end() -> None:
    found = cell(row("S", ranged("84", "88")), row("M", ranged("89", "93")))
    assert found == WallCell((Run((Span("S", 84.0, 88.0), Span("M", 89.0, 93.0))),), ())


@pytest.mark.parametrize(
    ("low", "high", "ends"), [(None, "80", (None, 80.0)), ("94", None, (94.0, None))]
)
def test_an_end_the_maker_does_not_give_stays_open(
    low: str | None, high: str | None, ends: tuple[float | None, float | None]
) -> None:
    (run,) = cell(row("S", ranged(low, high))).runs
    assert (run.spans[0].low_cm, run.spans[0].high_cm) == ends


def test_a_single_value_reaches_half_a_step_to_its_neighbours_and_says_so() -> None:
    (run,) = cell(*(row(size, single(size)) for size in ("80", "84", "90"))).runs
    assert run.spans == (
        Span("80", 78.0, 82.0, derived=True),
        Span("84", 82.0, 87.0, derived=True),
        Span("90", 87.0, 93.0, derived=True),
    )


def test_a_single_value_without_a_neighbour_is_said_and_not_drawn() -> None:
    assert cell(row("M", single("92"))) == WallCell((), (Remark(Untold.ALONE),))


@pytest.mark.parametrize("basis", [Basis.FINISHED, Basis.FLAT])
def test_a_measure_of_the_vest_never_stands_on_the_body_axis(basis: Basis) -> None:
    body, vest = ranged("42", "45", dimension=BACK), ranged("58", "60", dimension=BACK, basis=basis)
    found = cell(row("M", body, vest), row("L", vest), dimension=BACK)
    assert [span.label for run in found.runs for span in run.spans] == ["M"]
    assert found.remarks == (Remark(Untold(basis.value)),)


def test_what_could_not_be_read_is_said_with_its_sizes() -> None:
    unread = ranged(None, None, kind=Kind.UNREAD)
    found = cell(row("S", ranged("84", "88")), row("M", unread), row("L", unread))
    assert found.remarks == (Remark(Untold.UNREAD, ("M", "L")),)


def test_what_the_maker_does_not_give_is_said_and_never_filled_in() -> None:
    found = cell(row("S", ranged("84", "88")), row("M"), row("L", ranged("92", "96")))
    assert [span.label for span in found.runs[0].spans] == ["S", "L"]
    assert found.remarks == (Remark(Untold.NOT_GIVEN, ("M",)),)
    assert cell(row("S"), row("M")) == WallCell((), (Remark(Untold.NOT_GIVEN),))


def test_measures_between_different_points_are_never_one_run() -> None:
    to_waist = ranged("40", "43", dimension=BACK, definition=Definition.BACK_C7_WAIST)
    to_dimples = ranged("42", "45", dimension=BACK, definition=Definition.BACK_C7_SI)
    first, second = cell(row("M", to_waist, to_dimples), dimension=BACK).runs
    assert (first.definition, first.otherwise) == (Definition.BACK_C7_WAIST, True)
    assert (second.definition, second.otherwise) == (Definition.BACK_C7_SI, False)


def test_another_house_that_measures_otherwise_sees_the_other_one_marked() -> None:
    value = ranged("40", "43", dimension=BACK, definition=Definition.BACK_C7_WAIST)
    here = replace(DEFAULTS, default_back_length=Definition.BACK_C7_WAIST)
    (run,) = wall_cell([row("M", value)], BACK, here).runs
    assert not run.otherwise


def test_a_silent_chart_is_neither_signed_nor_marked_as_other() -> None:
    (run,) = cell(row("M", ranged("84", "88"))).runs
    assert (run.definition, run.otherwise) == (Definition.UNKNOWN, False)


def lengths(*backs: tuple[str, str, str, str]) -> list[InHouseRow]:
    return [
        row(size, ranged("84", "88"), ranged(low, high, dimension=BACK), length=length)
        for size, length, low, high in backs
    ]


def test_girths_that_do_not_depend_on_the_length_stand_once_a_size() -> None:
    rows = lengths(("S", "Short", "39", "41"), ("S", "Long", "44", "47"))
    (run,) = cell(*rows).runs
    assert [span.label for span in run.spans] == ["S"]


def test_lengths_that_do_not_depend_on_the_size_are_the_labels() -> None:
    rows = lengths(
        ("S", "Short", "39", "41"),
        ("S", "Long", "44", "47"),
        ("M", "Short", "39", "41"),
        ("M", "Long", "44", "47"),
    )
    (run,) = cell(*rows, dimension=BACK).runs
    assert run.spans == (Span("Short", 39.0, 41.0), Span("Long", 44.0, 47.0))
    assert run.length is None


def test_a_back_of_its_own_for_each_size_and_length_is_a_run_a_length() -> None:
    rows = lengths(
        ("S", "Short", "38", "40"),
        ("S", "Long", "43", "46"),
        ("M", "Short", "39", "41"),
        ("M", "Long", "44", "47"),
    )
    short, long = cell(*rows, dimension=BACK).runs
    assert (short.length, [span.label for span in short.spans]) == ("Short", ["S", "M"])
    assert (long.length, long.spans[1]) == ("Long", Span("M", 44.0, 47.0))


def test_an_open_question_marks_the_value_it_bears_on_and_no_other() -> None:
    doubtful = ranged("84", "88", findings=("f1",))
    back = ranged("42", "45", dimension=BACK)
    asked = row("M", doubtful, back, asked="f1")
    assert cell(asked).runs[0].spans[0].questioned
    assert not cell(asked, dimension=BACK).runs[0].spans[0].questioned


def test_a_question_about_the_row_itself_marks_all_its_values() -> None:
    asked = row("M", ranged("84", "88"), ranged("42", "45", dimension=BACK), asked="f1")
    assert cell(asked).runs[0].spans[0].questioned
    assert cell(asked, dimension=BACK).runs[0].spans[0].questioned


def test_a_settled_question_marks_nothing() -> None:
    assert not cell(row("M", ranged("84", "88", findings=("f1",)))).runs[0].spans[0].questioned


def test_one_label_with_two_ranges_is_drawn_twice() -> None:
    (run,) = cell(row("M", ranged("90", "96")), row("M", ranged("96", "104"))).runs
    assert [(span.label, span.low_cm) for span in run.spans] == [("M", 90.0), ("M", 96.0)]


@given(some.lists(some.sampled_from(["body", "finished", "unread", "none"]), min_size=1))
def test_no_size_is_lost_in_silence(kinds: list[str]) -> None:
    values = {
        "body": [ranged("84", "88")],
        "finished": [ranged("84", "88", basis=Basis.FINISHED)],
        "unread": [ranged(None, None, kind=Kind.UNREAD)],
        "none": [],
    }
    sizes = [str(number) for number in range(len(kinds))]
    rows = [row(size, *values[kind]) for size, kind in zip(sizes, kinds, strict=True)]
    found = cell(*rows)
    drawn = {span.label for run in found.runs for span in run.spans}
    said = {size for remark in found.remarks for size in (remark.sizes or sizes)}
    assert drawn | said == set(sizes)
    assert not drawn & said
