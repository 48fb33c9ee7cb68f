"""An invented shop in memory: as many models as a test wants, with every state among them."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from charts.model_facts import ModelFacts, VestKind
from charts.quantities import Unit
from charts.schema import (
    Basis,
    Chart,
    Dimension,
    FileReading,
    Kind,
    Range,
    Said,
    Size,
    UnitFrom,
)
from harmonizer.fit import fit
from harmonizer.fit_sheet import FitSheet
from harmonizer.offers import offers
from harmonizer.range_table import RangeTable
from harmonizer.rider import BodyFigure, Measure, Reading, Rider, TakenBy

MAKERS = ("Alderway", "Brackenholt", "Corvane", "Dunmarrow", "Eskvale", "Fennimoor", "Gorsefold")
MODELS = (
    "Harrier",
    "Lapwing",
    "Merle",
    "Ostler",
    "Quarry",
    "Redstart",
    "Tolland",
    "Whinchat",
    "Cassel",
    "Linnet",
)
LABELS = ("XS", "S", "M", "L", "XL", "2XL")
_STEPS = {
    Dimension.CHEST: (78, 6, 8),
    Dimension.WAIST: (64, 6, 8),
    Dimension.HIP: (84, 6, 8),
    Dimension.BACK_LENGTH: (39, 1.5, 3.5),
}


def length_range(
    dimension: Dimension, low: float | None, high: float | None, basis: Basis = Basis.BODY
) -> Range:
    """One range in cm; an end that is None is open."""
    if low is None:
        kind = Kind.AT_MOST
    elif high is None:
        kind = Kind.AT_LEAST
    else:
        kind = Kind.RANGE
    return Range(
        dimension=dimension,
        heading=dimension.value,
        kind=kind,
        published=f"{low}–{high}",
        place="Women!C4",
        unit=Unit.CM,
        unit_from=UnitFrom.HEADING,
        basis=basis,
        low=None if low is None else Decimal(str(low)),
        high=None if high is None else Decimal(str(high)),
        low_step=Decimal(1),
        high_step=Decimal(1),
        published_unit=Unit.CM,
    )


def model_chart(
    maker: str,
    model: str,
    *,
    shift: float = 0.0,
    back_shift: float = 0.0,
    sizes: Sequence[str] = LABELS,
    band: str | None = "women",
    dimensions: Sequence[Dimension] = tuple(_STEPS),
    basis: Basis = Basis.BODY,
) -> Chart:
    """A chart of regular steps, shifted by a few cm."""
    made = []
    for place, label in enumerate(sizes):
        ranges = []
        for dimension in dimensions:
            first, step, wide = _STEPS[dimension]
            by = back_shift if dimension is Dimension.BACK_LENGTH else shift
            low = first + step * place + by
            ranges.append(length_range(dimension, low, low + wide, basis))
        made.append(Size(label, tuple(ranges)))
    return Chart(
        place="Women!A3:F9",
        title=model,
        sizes=tuple(made),
        supplier=Said(maker, "folder"),
        model=Said(model, "sheet"),
        season=Said("spring 2027", "title"),
        band=band,
    )


def shop_table(models: int, sizes: int = 6) -> RangeTable:
    """``models`` models of ``sizes`` sizes each, foam and inflatable by turns."""
    readings, facts = [], []
    labels = LABELS[:sizes] if sizes <= len(LABELS) else [str(number) for number in range(sizes)]
    for number in range(models):
        maker = MAKERS[number % len(MAKERS)]
        name = f"{MODELS[number % len(MODELS)]} {number // len(MODELS) + 1}"
        chart = model_chart(
            maker,
            name,
            shift=(number * 7 % 11) - 5.0,
            back_shift=(number * 5 % 7) - 3.0,
            sizes=labels,
            basis=Basis.UNKNOWN if number % 5 == 3 else Basis.BODY,
        )
        file = f"{maker.lower()}/{number}.csv"
        readings.append(FileReading(file, (chart,)))
        kind = VestKind.INFLATABLE if number % 2 else VestKind.FOAM
        facts.append(ModelFacts(model=name, folder=maker.lower(), kind=kind))
    return RangeTable.compiled(offers(readings, facts))


def rider_of(
    *,
    taken_by: TakenBy = TakenBy.FITTER,
    figure: BodyFigure | None = BodyFigure.WOMAN,
    winter_mm: float = 0.0,
    **readings: float,
) -> Rider:
    """A rider from readings in cm and kg by the measure's name."""
    return Rider(
        name="Rider 7",
        readings=tuple(
            Reading(
                Measure(name),
                Decimal(str(value)),
                str(value),
                Unit.KG if name == "weight" else Unit.CM,
            )
            for name, value in readings.items()
        ),
        figure=figure,
        taken_by=taken_by,
        winter_mm=Decimal(str(winter_mm)),
    )


def usual_fit(models: int = 20, **changes: float) -> FitSheet:
    """A usual rider against ``models`` models."""
    values = {"chest": 92.7, "waist": 76.0, "hip": 99.0, "back_length": 43.0} | changes
    winter = values.pop("winter_mm", 0.0)
    return fit(rider_of(winter_mm=winter, **values), shop_table(models))
