"""A small combined chart made by hand: two invented makers, both units, one open question."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from charts.findings import Candidate, Finding
from charts.in_house import AskedOf, InHouseChart, InHouseRow, Withheld, WithheldModel
from charts.model_facts import Adjuster, ModelFacts, Rule, VestKind
from charts.quantities import Unit, canonical
from charts.schema import (
    Basis,
    Definition,
    Dimension,
    Kind,
    PrintedBothWays,
    Range,
    UnitFrom,
)

WRITTEN_ON = date(2026, 11, 3)
MADE_ON = date(2027, 2, 11)


def closed(
    dimension: Dimension,
    low: str,
    high: str,
    unit: Unit = Unit.CM,
    place: str = "B4",
    **more: object,
) -> Range:
    """A closed range as printed in ``unit``, to whole figures."""
    low_exact, high_exact = canonical(Decimal(low), unit), canonical(Decimal(high), unit)
    step = canonical(Decimal(1), unit)
    given: dict[str, object] = {
        "published": f"{low}-{high}",
        "published_unit": unit,
        "low_step": step,
        "high_step": step,
    }
    to = Unit.KG if unit in (Unit.KG, Unit.LB) else Unit.CM
    return Range(
        dimension=dimension,
        heading=dimension.value,
        kind=Kind.RANGE,
        place=place,
        unit=to,
        unit_from=UnitFrom.HEADING,
        low=low_exact,
        high=high_exact,
        **(given | more),  # type: ignore[arg-type]  # named fields of a Range
    )


def row(size: str, *values: Range, **more: object) -> InHouseRow:
    """One row of an invented maker's vest."""
    measures: dict[Dimension, tuple[Range, ...]] = {}
    for value in values:
        measures[value.dimension] = (*measures.get(value.dimension, ()), value)
    given: dict[str, object] = {
        "supplier": "Tarnwhistle",
        "model": "Fellrunner",
        "band": "women",
        "length": None,
        "file": "tarnwhistle/ladies.xlsx",
        "place": "Women!A3:F9",
        "dated": WRITTEN_ON,
        "season": "spring 2027",
    }
    return InHouseRow(
        size=size,
        measures=measures,
        **(given | more),  # type: ignore[arg-type]  # named fields of a InHouseRow
    )


FACTS = ModelFacts(
    model="Fellrunner",
    kind=VestKind.INFLATABLE,
    level="3",
    weight_floor=canonical(Decimal(70), Unit.LB),
    between_sizes=Rule.LARGER,
    between_sizes_source="instructions p. 4",
    adjusters={Dimension.CHEST: Adjuster(Decimal(4), Decimal(4))},
)

QUESTION = Finding(
    "f3",
    "unit-missing",
    "Women!B2",
    {"heading": "Chest", "unit": "in", "other": "cm"},
    (Candidate("34-36 in", "cm", Decimal("86.36"), Decimal("91.44")),),
)


@pytest.fixture
def chart() -> InHouseChart:
    """Two makers, three rows; one value in question, one model recalled."""
    back = {"definition": Definition.BACK_C7_SI}
    finished = {"basis": Basis.FINISHED, "place": "G4"}
    both = PrintedBothWays("34-36", Unit.IN, Decimal(34), Decimal(36), None, "B4", Decimal(1))
    return InHouseChart(
        rows=(
            row(
                "M",
                closed(Dimension.CHEST, "34", "36", Unit.IN, findings=("f3",)),
                closed(Dimension.WAIST, "28", "30", Unit.IN),
                closed(Dimension.BACK_LENGTH, "16", "17", Unit.IN, **back),
                closed(Dimension.BACK_LENGTH, "22", "23", Unit.IN, **finished),
                length="Short",
                facts=FACTS,
                open_questions=frozenset({"f3"}),
            ),
            row("L", closed(Dimension.CHEST, "36", "39", Unit.IN), length="Short", facts=FACTS),
            row(
                "=cmd|' /C calc'!A0",
                closed(Dimension.CHEST, "86", "91", also_published=both),
                closed(Dimension.WEIGHT, "60", "75", Unit.KG),
                supplier="Ventarroya",
                model="Airebruna",
                band="men",
                file="ventarroya/correo.txt",
                place="line 4",
                season=None,
            ),
        ),
        made_on=MADE_ON,
        questions=(AskedOf("tarnwhistle/ladies.xlsx", QUESTION),),
        withheld=(WithheldModel("Tarnwhistle", "Oldcoat", Withheld.RECALLED),),
    )
