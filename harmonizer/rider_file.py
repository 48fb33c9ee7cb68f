"""A rider's file: TOML in, one Rider out, or the line and the reason why not.

Values typed as text are read by the same grammar as a chart's cells; a value without a unit is
refused, never guessed.
"""

from __future__ import annotations

from datetime import UTC, date, datetime
from decimal import Decimal
from typing import ClassVar, Final

from charts.model_facts import VestKind, definitions_of
from charts.quantities import Unit
from charts.reason import Reason
from charts.schema import Definition
from charts.toml_text import Entries, TomlFileError
from charts.typed_quantity import TypedQuantity, read_quantity
from harmonizer.layers import layer_thickness_mm
from harmonizer.rider import (
    BodyFigure,
    Measure,
    Needs,
    Observed,
    Reading,
    Rider,
    SeenInSaddle,
    TakenBy,
)
from harmonizer.rider_before import parted

DAYS_A_YEAR: Final = Decimal("365.2425")
_C7_FELT: Final = "felt"


class RiderFileError(TomlFileError):
    """A rider's file that cannot be used, with the line and the reason."""

    topic: ClassVar[str] = "rider"


def read_rider(text: str, name: str, today: date | None = None) -> Rider:
    """The rider of one file; ``name`` is the file's, for a rider without one.

    ``today`` gives the age of a rider of whom only the day of birth is known and who was measured
    on no stated day. Raises RiderFileError with the line and the reason.
    """
    file = Entries.of_file(text, RiderFileError)
    layers = file.table("layers")
    given = (*_short(file.table("readings")), *_long(file), *_over_layers(layers))
    readings, earlier = parted(given)
    rider = Rider(
        name=file.text("name") or name,
        readings=readings,
        figure=file.choice("figure", BodyFigure),
        age=_age(file, readings, today),
        taken_by=file.choice("taken_by", TakenBy) or TakenBy.HELPER,
        needs=_needs(file.table("needs")),
        winter_mm=_winter(layers),
        seen=_seen(file),
        earlier=earlier,
    )
    layers.close()
    file.close()
    return rider


def _age(file: Entries, readings: tuple[Reading, ...], today: date | None) -> Decimal | None:
    age, born = file.number("age"), file.day("born")
    if age is not None or born is None:
        return age
    measured = max((one.on for one in readings if one.on), default=today or _today())
    if born > measured:
        raise file.wrong("born", "born-later")
    return Decimal((measured - born).days) / DAYS_A_YEAR


def _today() -> date:
    return datetime.now(tz=UTC).date()


def _needs(entry: Entries) -> Needs:
    needs = Needs(
        kind=entry.choice("kind", VestKind),
        level=entry.text("level"),
        in_stock=entry.flag("in_stock"),
    )
    entry.close()
    return needs


def _short(entry: Entries) -> list[Reading]:
    """The short form: one reading a measure, as text or as a table."""
    readings = []
    for key in entry.written:
        measure = _measure(entry, key, key)
        if isinstance(entry.get(key), dict):
            readings.append(_reading(entry.table(key), measure))
        else:
            value = _typed(entry, key, measure, None)
            readings.append(Reading(measure, value.value, value.text, value.unit))
    return readings


def _long(file: Entries) -> list[Reading]:
    """The long form: every reading with how it was taken."""
    readings = []
    for entry in file.tables("reading"):
        word = entry.text("dimension")
        if word is None:
            raise entry.wrong(None, "dimension-missing")
        readings.append(_reading(entry, _measure(entry, "dimension", word)))
    return readings


def _over_layers(layers: Entries) -> list[Reading]:
    """The chest over the winter layers, where it stands among the layers."""
    key = Measure.CHEST_OVER_LAYERS
    if key not in layers:
        return []
    if isinstance(layers.get(key), dict):
        return [_reading(layers.table(key), key)]
    value = _typed(layers, key, key, None)
    return [Reading(key, value.value, value.text, value.unit)]


def _winter(layers: Entries) -> Decimal:
    """The thickness of the winter layers in mm, as a figure or by name."""
    thickness = layers.number("winter_mm") or Decimal(0)
    known = layer_thickness_mm()
    for name in layers.words("worn"):
        if name not in known:
            raise layers.wrong("worn", "not-a-choice", given=name, choices=", ".join(known))
        thickness += known[name]
    return thickness


def _measure(entry: Entries, key: str, word: str) -> Measure:
    if word not in set(Measure) or word == Measure.AGE:
        known = ", ".join(one for one in Measure if one is not Measure.AGE)
        raise entry.wrong(key, "unknown-measure", given=word, choices=known)
    return Measure(word)


def _reading(entry: Entries, measure: Measure) -> Reading:
    unit = entry.choice("unit", Unit)
    key = "text" if "text" in entry else "value"
    value = _typed(entry, key, measure, unit)
    reading = Reading(
        measure=measure,
        value=value.value,
        text=value.text,
        unit=value.unit,
        definition=_definition(entry, measure),
        taken_by=entry.choice("taken_by", TakenBy),
        c7_felt=entry.text("c7") == _C7_FELT,
        posture=entry.text("posture"),
        over=entry.text("over"),
        on=entry.day("on"),
    )
    entry.close()
    return reading


def _typed(entry: Entries, key: str, measure: Measure, unit: Unit | None) -> TypedQuantity:
    """The value at ``key``: text as the client gave it, or a number with ``unit``."""
    given = entry.get(key)
    text = given if isinstance(given, str) else _number_text(entry, key)
    read = read_quantity(text, measure.family, unit, measure.dimension)
    if isinstance(read, Reason):
        raise entry.wrong(key, read.code, **read.values)
    if read.value <= 0:
        raise entry.wrong(key, "not-one-value", text=text)
    return read


def _number_text(entry: Entries, key: str) -> str:
    number = entry.number(key)
    if number is None:
        raise entry.wrong(key, "value-missing")
    return str(number)


def _definition(entry: Entries, measure: Measure) -> Definition:
    definition = entry.choice("definition", Definition) or Definition.UNKNOWN
    allowed = definitions_of(measure.dimension) if measure.dimension else frozenset()
    if definition is not Definition.UNKNOWN and definition not in allowed:
        choices = ", ".join(sorted(allowed))
        raise entry.wrong("definition", "not-a-choice", given=definition.value, choices=choices)
    return definition


def _seen(file: Entries) -> tuple[SeenInSaddle, ...]:
    seen = []
    for entry in file.tables("seen"):
        model, size = entry.text("model"), entry.text("size")
        observed = entry.choice("observed", Observed)
        if model is None or size is None or observed is None:
            raise entry.wrong(None, "seen-incomplete")
        seen.append(SeenInSaddle(model, size, observed, entry.text("length")))
        entry.close()
    return tuple(seen)
