"""Cells as met in real tables, each with its right reading, in ``cells_as_met.tsv``.

Source: about 90 public size tables and fragments of many trades in nine languages; figures of
commercial origin are moved a little, no name is kept. ``low_or_value`` and ``high`` are in
``unit`` (pounds for stones, cm for mm). A note "ask" allows a question.
"""

from __future__ import annotations

import csv
from decimal import Decimal
from pathlib import Path

import pytest

from charts.dimensions import Role, read_heading
from charts.notation import CellReading, Expected, Quantity, Reading, read_cell
from charts.quantities import Figure, Unit, converted
from charts.schema import Dimension, Kind
from charts.size_labels import read_label

Row = dict[str, str]
TABLE = Path(__file__).with_name("cells_as_met.tsv")
ROWS: list[Row] = list(
    csv.DictReader(TABLE.read_text(encoding="utf-8").splitlines(), delimiter="\t")
)
ASKED_WITH_REASON = {
    '82 - 87 cm / 33 - 34"': "33 in are 83.8 cm: 1.8 cm from what is printed beside them",
    "24 + 1 inch": "the plus may be a plus-minus that lost its minus",
}


def of_kind(*kinds: str) -> list[Row]:
    return [row for row in ROWS if row["kind"] in kinds]


def named(row: Row) -> str:
    return row["cell"] or "(empty)"


def read(row: Row) -> CellReading:
    """The cell in the light of its heading; the words of the note as the heading's own."""
    heading = read_heading(row["context"])
    known = heading.role in {Role.MEASURE, Role.TOLERANCE}
    dimension = heading.dimension if known else None
    return read_cell(row["cell"], Expected(dimension, heading.unit, heading.second_unit))


def in_unit(figure: Figure | None, quantity: Quantity, unit: str) -> Decimal | None:
    if figure is None:
        return None
    return converted(figure.value, quantity.unit or Unit(unit), Unit(unit))


def due(text: str) -> Decimal | None:
    return Decimal(text) if text else None


def test_all_the_cells_are_here() -> None:
    assert len(ROWS) == 94


@pytest.mark.parametrize("row", of_kind("range", "open", "value"), ids=named)
def test_a_quantity_is_read_as_it_was_meant(row: Row) -> None:
    reading = read(row)
    may_ask = "ask" in row["note"] or row["cell"] in ASKED_WITH_REASON
    assert reading.reading is Reading.READ or (may_ask and reading.reading is Reading.ASK)
    quantity = reading.quantity
    assert quantity is not None
    first = quantity.value if row["kind"] == "value" else quantity.low
    found = (in_unit(first, quantity, row["unit"]), in_unit(quantity.high, quantity, row["unit"]))
    assert found == (due(row["low_or_value"]), due(row["high"]))


@pytest.mark.parametrize("row", of_kind("range", "open"), ids=named)
def test_an_end_is_left_out_where_the_note_says_so(row: Row) -> None:
    quantity = read(row).quantity
    assert quantity is not None
    if "low exclusive" in row["note"] or (row["note"] == "exclusive" and quantity.low):
        assert not quantity.low_included
    if row["note"].startswith("exclusive") and quantity.high:
        assert not quantity.high_included
    if "high inclusive" in row["note"]:
        assert quantity.high_included


@pytest.mark.parametrize(
    "row",
    [row for row in ROWS if row["note"].startswith("alt ") and " in" in row["note"]],
    ids=named,
)
def test_the_other_unit_is_kept_beside(row: Row) -> None:
    also = read(row).also
    assert also is not None
    ends = [str(figure.value) for figure in (also.low, also.high, also.value) if figure]
    assert "-".join(ends) == row["note"].split(" ")[1]
    assert also.unit is Unit.IN


@pytest.mark.parametrize("row", of_kind("ask", "triple"), ids=named)
def test_what_cannot_be_decided_is_asked_or_left_unread(row: Row) -> None:
    reading = read(row)
    assert reading.reading in {Reading.ASK, Reading.UNREAD}
    assert reading.code is not None
    if row["low_or_value"]:
        offered = [
            in_unit(quantity.value, quantity, row["unit"]) for quantity, _ in reading.candidates
        ]
        assert Decimal(row["low_or_value"]) in offered


@pytest.mark.parametrize("row", of_kind("label"), ids=named)
def test_a_label_is_known_as_one(row: Row) -> None:
    assert read_label(row["cell"]) is not None


@pytest.mark.parametrize(("typed", "meant"), [("Reqular", "Regular"), ("St", "S")])
def test_a_mistyped_label_is_offered_what_it_may_be(typed: str, meant: str) -> None:
    label = read_label(typed)
    assert label is not None
    assert (label.text, label.doubtful) == (typed, meant)


@pytest.mark.parametrize("row", of_kind("blank"), ids=named)
def test_a_cell_without_content_is_blank(row: Row) -> None:
    assert read(row).reading is Reading.BLANK


@pytest.mark.parametrize("row", of_kind("tol"), ids=named)
def test_a_tolerance_is_told_from_a_range(row: Row) -> None:
    quantity = read(row).quantity
    assert quantity is not None
    assert quantity.tolerance == Figure(Decimal(1), Decimal(1))
    assert (quantity.low, quantity.high) == (None, None)
    assert (quantity.value and quantity.value.value) == due(row["low_or_value"])


def test_the_cell_s_own_unit_is_kept() -> None:
    kinds = {row["cell"]: read(row) for row in of_kind("value")}
    circa = kinds["~82cm"].quantity
    assert circa is not None
    assert circa.circa
    assert circa.kind is Kind.SINGLE


HEADINGS = [
    ('High Hip 4" below waist', Role.MEASURE, Dimension.OTHER, None),
    ("A Brustumfang", Role.MEASURE, Dimension.CHEST, None),
    ("Taille (cm)", Role.MEASURE, Dimension.WAIST, Unit.CM),
    ("1/2 Distanza seni", Role.MEASURE, Dimension.OTHER, None),
]


@pytest.mark.parametrize(("text", "role", "dimension", "unit"), HEADINGS)
def test_a_heading_is_understood(
    text: str, role: Role, dimension: Dimension, unit: Unit | None
) -> None:
    heading = read_heading(text)
    assert (heading.role, heading.dimension, heading.unit) == (role, dimension, unit)


def test_in_is_a_preposition_before_a_unit() -> None:
    assert read_heading("Umfang in cm").unit is Unit.CM


def test_hauteur_may_be_the_length_of_the_garment() -> None:
    assert (Role.MEASURE, Dimension.OTHER) in read_heading("Hauteur").candidates
