"""What a chart does not say of its model: ``models.toml`` beside one supplier's files."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from enum import StrEnum
from types import MappingProxyType
from typing import ClassVar, Final

from charts.quantities import Family
from charts.reason import Reason
from charts.schema import Basis, Definition, Dimension
from charts.toml_text import Entries, TomlFileError
from charts.typed_quantity import read_quantity


class VestKind(StrEnum):
    """How a vest protects, which decides what is worn under it."""

    FOAM = "foam"
    INFLATABLE = "inflatable"


class Rule(StrEnum):
    """Which of two sizes the maker says to take when a rider lies between them."""

    SMALLER = "smaller"
    LARGER = "larger"


class WornOver(StrEnum):
    """What the chart's body figures were taken over."""

    LIGHT_SHIRT = "light shirt"
    FOAM = "foam"
    WARM_LAYERS = "warm layers"


@dataclass(frozen=True, slots=True)
class Adjuster:
    """How far the maker's adjusters take a dimension in and let it out, in cm."""

    take_in: Decimal = Decimal(0)
    let_out: Decimal = Decimal(0)


@dataclass(frozen=True, slots=True)
class Elastic:
    """The elastic of a chest: relaxed girth, elastic part and least reserve in cm.

    ``extension`` is the usable part of the elastic's own length, 0.40 for 40 %.
    """

    relaxed: Decimal
    part: Decimal
    extension: Decimal
    reserve: Decimal | None = None


@dataclass(frozen=True, slots=True)
class ModelFacts:
    """One model. ``folder`` is where the facts stood; masses in kg; None where nothing is said.

    ``also`` are other models for which the same chart and all of this holds. ``foam_thickness`` is
    a foam's own, in cm, and ``foam_thickness_source`` where the maker says it.
    """

    model: str
    folder: str = ""
    supplier: str | None = None
    file: str | None = None
    chart: str | None = None
    season: str | None = None
    kind: VestKind | None = None
    level: str | None = None
    weight_floor: Decimal | None = None
    weight_ceiling: Decimal | None = None
    between_sizes: Rule | None = None
    between_sizes_source: str | None = None
    definitions: Mapping[Dimension, Definition] = field(default_factory=dict)
    basis: Basis | None = None
    worn_over: WornOver | None = None
    foam_thickness: Decimal | None = None
    foam_thickness_source: str | None = None
    adjusters: Mapping[Dimension, Adjuster] = field(default_factory=dict)
    elastic: Elastic | None = None
    recalled: bool = False
    superseded: bool = False
    out_of_stock: tuple[str, ...] = ()
    also: tuple[str, ...] = ()


class FactsFileError(TomlFileError):
    """A ``models.toml`` that cannot be used, with the line and the reason."""

    topic: ClassVar[str] = "facts"


_DEFINED: Final[Mapping[Dimension, frozenset[Definition]]] = MappingProxyType(
    {
        Dimension.CHEST: frozenset({Definition.CHEST_WIDEST, Definition.CHEST_UNDER_ARM}),
        Dimension.WAIST: frozenset(
            {
                Definition.WAIST_NATURAL,
                Definition.WAIST_MID,
                Definition.WAIST_NAVEL,
                Definition.WAIST_TROUSER,
            }
        ),
        Dimension.HIP: frozenset({Definition.HIP_BELOW_BELT, Definition.HIP_SEAT}),
        Dimension.BACK_LENGTH: frozenset(
            {
                Definition.BACK_C7_SI,
                Definition.BACK_C7_WAIST,
                Definition.BACK_C7_SEAT,
                Definition.BACK_SHOULDER_WAIST,
                Definition.BACK_WAIST_SHOULDER_WAIST,
            }
        ),
    }
)


THICKEST_FOAM_CM: Final = Decimal(6)


def definitions_of(dimension: Dimension) -> frozenset[Definition]:
    """The definitions that ``dimension`` can have; none where it needs none."""
    return _DEFINED.get(dimension, frozenset())


def read_model_facts(text: str, name: str) -> tuple[ModelFacts, ...]:
    """The models of one ``models.toml``; ``name`` is its path, whose folder the files stand in.

    Raises FactsFileError with the line and the reason.
    """
    file = Entries.of_file(text, FactsFileError)
    folder = name.replace("\\", "/").rpartition("/")[0]
    seen: set[tuple[str | None, str | None]] = set()
    models = []
    for entry in file.tables("model"):
        facts = _model(entry, folder)
        if (facts.file, facts.chart) in seen:
            raise entry.wrong("chart" if facts.chart else "file", "same-chart-twice")
        seen.add((facts.file, facts.chart))
        models.append(facts)
    file.close()
    return tuple(models)


def _model(entry: Entries, folder: str) -> ModelFacts:
    model = entry.text("model")
    if model is None:
        raise entry.wrong(None, "model-missing")
    facts = ModelFacts(
        model=model,
        folder=folder,
        supplier=entry.text("supplier"),
        file=entry.text("file"),
        chart=entry.text("chart"),
        season=entry.text("season"),
        kind=entry.choice("kind", VestKind),
        level=entry.text("level"),
        weight_floor=_mass(entry, "weight_floor"),
        weight_ceiling=_mass(entry, "weight_ceiling"),
        between_sizes=entry.choice("between_sizes", Rule),
        between_sizes_source=entry.text("between_sizes_source"),
        definitions=_definitions(entry.table("definitions")),
        basis=entry.choice("basis", Basis),
        worn_over=entry.choice("worn_over", WornOver),
        foam_thickness=_foam_thickness(entry),
        foam_thickness_source=entry.text("foam_thickness_source"),
        adjusters=_adjusters(entry.table("adjusters")),
        elastic=_elastic(entry.table("elastic")),
        recalled=entry.flag("recalled"),
        superseded=entry.flag("superseded"),
        out_of_stock=entry.words("out_of_stock"),
        also=entry.words("also"),
    )
    entry.close()
    return facts


def _mass(entry: Entries, key: str) -> Decimal | None:
    return _quantity(entry, key, Family.MASS)


def _quantity(entry: Entries, key: str, family: Family) -> Decimal | None:
    text = entry.text(key)
    if text is None:
        return None
    read = read_quantity(text, family)
    if isinstance(read, Reason):
        raise entry.wrong(key, read.code, **read.values)
    return read.value


def _foam_thickness(entry: Entries) -> Decimal | None:
    key = "foam_thickness"
    found = _quantity(entry, key, Family.LENGTH)
    reason = foam_fault(found, entry.text(key) or "", entry.choice("kind", VestKind))
    if reason is not None:
        raise entry.wrong(key, reason.code, **reason.values)
    return found


def foam_fault(thickness: Decimal | None, text: str, kind: VestKind | None) -> Reason | None:
    """Why a thickness in cm, typed as ``text``, is none of a foam vest; None where it may be one.

    More than 6 cm is taken for a slip of the unit. Common practice, no source.
    """
    if thickness is None:
        return None
    if kind is VestKind.INFLATABLE:
        return Reason("only-of-foam")
    if not 0 < thickness <= THICKEST_FOAM_CM:
        return Reason("no-foam-thickness", {"text": text, "most": f"{THICKEST_FOAM_CM} cm"})
    return None


def _length(entry: Entries, key: str) -> Decimal:
    found = _quantity(entry, key, Family.LENGTH)
    if found is None:
        raise entry.wrong(key, "value-missing")
    return found


def _dimension(entry: Entries, key: str) -> Dimension:
    if key not in set(Dimension):
        raise entry.wrong(key, "unknown-key", choices=", ".join(Dimension))
    return Dimension(key)


def _definitions(entry: Entries) -> Mapping[Dimension, Definition]:
    found: dict[Dimension, Definition] = {}
    for key in entry.written:
        dimension = _dimension(entry, key)
        definition = entry.choice(key, Definition)
        allowed = definitions_of(dimension)
        if definition is None or definition not in allowed:
            choices = ", ".join(sorted(allowed))
            raise entry.wrong(key, "not-a-choice", given=str(definition), choices=choices)
        found[dimension] = definition
    return MappingProxyType(found)


def _adjusters(entry: Entries) -> Mapping[Dimension, Adjuster]:
    found: dict[Dimension, Adjuster] = {}
    for key in entry.written:
        dimension = _dimension(entry, key)
        ways = entry.table(key)
        take_in = _quantity(ways, "in", Family.LENGTH) or Decimal(0)
        let_out = _quantity(ways, "out", Family.LENGTH) or Decimal(0)
        ways.close()
        found[dimension] = Adjuster(take_in, let_out)
    return MappingProxyType(found)


def _elastic(entry: Entries) -> Elastic | None:
    if not len(entry):
        return None
    extension = entry.number("extension")
    if not extension:
        raise entry.wrong("extension", "not-a-number")
    elastic = Elastic(
        relaxed=_length(entry, "relaxed"),
        part=_length(entry, "part"),
        extension=extension,
        reserve=_quantity(entry, "reserve", Family.LENGTH),
    )
    entry.close()
    return elastic
