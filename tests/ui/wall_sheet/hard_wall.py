"""A combined chart with everything that is hard to draw; makers and models are invented."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

from charts.findings import Finding
from charts.in_house import AskedOf, InHouseChart, InHouseRow, Withheld, WithheldModel
from charts.model_facts import ModelFacts, VestKind
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension, Kind, Range, UnitFrom

DAY = date(2027, 2, 11)
CHEST, WAIST, HIP, BACK = (
    Dimension.CHEST,
    Dimension.WAIST,
    Dimension.HIP,
    Dimension.BACK_LENGTH,
)


def value(
    dimension: Dimension, low: float | None, high: float | None = None, **more: object
) -> Range:
    """A range in cm; one end None is open; ``single=True`` makes ``low`` a single value."""
    single = more.pop("single", False)
    given: dict[str, object] = {
        "dimension": dimension,
        "heading": dimension.value,
        "published": f"{low}-{high}",
        "place": "B2",
        "unit": Unit.CM,
        "unit_from": UnitFrom.HEADING,
        "published_unit": Unit.CM,
        "basis": Basis.BODY,
        "low_step": Decimal(1),
        "high_step": Decimal(1),
    }
    if single:
        given |= {"kind": Kind.SINGLE, "value": Decimal(str(low))}
    else:
        kind = Kind.AT_MOST if low is None else Kind.AT_LEAST if high is None else Kind.RANGE
        ends = (None if end is None else Decimal(str(end)) for end in (low, high))
        given |= dict(zip(("kind", "low", "high"), (kind, *ends), strict=True))
    return Range(**(given | more))  # type: ignore[arg-type]  # named fields of a Range


def row(size: str | None, *values: Range, **more: object) -> InHouseRow:
    """One row; its model is Fellrunner unless another is named."""
    measures: dict[Dimension, tuple[Range, ...]] = {}
    for each in values:
        measures[each.dimension] = (*measures.get(each.dimension, ()), each)
    given: dict[str, object] = {
        "supplier": "Tarnwhistle",
        "model": "Fellrunner",
        "band": "women",
        "length": None,
        "file": "tarnwhistle/ladies.xlsx",
        "place": "Women!A3:F9",
        "dated": date(2026, 11, 3),
        "season": "spring 2027",
    }
    return InHouseRow(
        size=size,
        measures=measures,
        **(given | more),  # type: ignore[arg-type]  # named fields of a InHouseRow
    )


def _open_ends() -> list[InHouseRow]:
    return [
        row("XS", value(CHEST, None, 80), value(WAIST, None, 62), value(BACK, 39, 42)),
        row("S", value(CHEST, 80, 86), value(WAIST, 62, 70), value(BACK, 40.5, 43.5)),
        row("M", value(CHEST, 86, 94), value(WAIST, 70, 78), value(BACK, 42, 45)),
        row("L", value(CHEST, 94, None), value(WAIST, 78, None), value(BACK, 43.5, None)),
    ]


def _singles() -> list[InHouseRow]:
    named = {"model": "Holloway", "facts": ModelFacts(model="Holloway", kind=VestKind.FOAM)}
    seat = {"definition": Definition.HIP_SEAT}
    finished = {"basis": Basis.FINISHED}
    return [
        row(
            str(size),
            value(CHEST, size * 2, single=True),
            value(HIP, size * 2 + 8, size * 2 + 12, **seat),
            value(BACK, 50 + size / 4, single=True, **finished),
            **named,
        )
        for size in (40, 42, 44, 46)
    ]


def _two_backs() -> list[InHouseRow]:
    named = {"model": "Twoback", "band": "men", "facts": ModelFacts(model="Twoback", level="3")}
    to_waist = {"definition": Definition.BACK_C7_WAIST}
    to_dimples = {"definition": Definition.BACK_C7_SI}
    return [
        row(
            size,
            value(CHEST, low, low + 8, findings=("f1",) if size == "M" else ()),
            value(BACK, 40 + low / 10, 43 + low / 10, **to_waist),
            value(BACK, 38 + low / 10, 42 + low / 10, **to_dimples),
            open_questions=frozenset({"f1"}) if size == "M" else frozenset(),
            **named,
        )
        for size, low in (("S", 84), ("M", 90), ("L", 96))
    ]


def _lengths() -> list[InHouseRow]:
    named = {"model": "Longfellow of the seventeen lengths", "band": "girls", "season": None}
    return [
        row(size, value(CHEST, low, low + 6), value(BACK, back, back + 3), length=word, **named)
        for size, low in (("122", 60), ("134", 64))
        for word, back in (("Short", low / 2), ("Long", low / 2 + 4))
    ]


def hard_chart() -> InHouseChart:
    """Open ends, single values, two definitions, lengths, a question, all kinds left out."""
    alone = row("One", value(CHEST, 92, single=True), model="Onesize", band=None)
    question = AskedOf(
        "tarnwhistle/ladies.xlsx",
        Finding("f1", "order-broken", "Women!B4", {"text": "90-98", "heading": "Chest"}),
    )
    return InHouseChart(
        rows=(*_open_ends(), *_singles(), *_two_backs(), *_lengths(), alone),
        made_on=DAY,
        questions=(question,),
        not_read=(AskedOf("scan.pdf", Finding("f2", "empty-file", "", {"name": "scan.pdf"})),),
        withheld=(
            WithheldModel("Tarnwhistle", "Oldcoat", Withheld.RECALLED),
            WithheldModel("Ventarroya", "Airevieja", Withheld.SUPERSEDED),
            WithheldModel(None, "Heldback", Withheld.HELD),
        ),
    )
