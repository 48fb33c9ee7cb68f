"""The form about a model: what its chart does not say. ``models.toml`` is its export.

A form holds what was typed, word for word, under dotted keys ("weight_floor", "definitions.hip",
"adjusters.chest.in"); what is typed is checked by the same grammar that reads the charts. The
export keeps the typed words, and reads back as the same facts.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType
from typing import Any, Final

from charts.model_facts import (
    Rule,
    VestKind,
    WornOver,
    definitions_of,
    foam_fault,
    read_model_facts,
)
from charts.quantities import Family
from charts.reason import Reason
from charts.schema import Basis, Dimension
from charts.toml_writing import Plain, table_text
from charts.typed_quantity import read_quantity
from charts.wording import Wording

Form = Mapping[str, str]
"""What was typed, by key; a key that was left empty may be missing."""


class Entry(StrEnum):
    """How a field is filled in."""

    TEXT = "text"
    CHOICE = "choice"
    MASS = "mass"
    LENGTH = "length"
    PART = "part"  # a part of one, as "0.40" or "40 %"
    FLAG = "flag"  # "yes" or nothing
    WORDS = "words"  # names parted by commas


@dataclass(frozen=True, slots=True)
class FormField:
    """One field of the form. ``choices`` are the words it may hold, in the order of the file."""

    key: str
    entry: Entry
    choices: tuple[str, ...] = ()


_DEFINED: Final = (Dimension.CHEST, Dimension.WAIST, Dimension.HIP, Dimension.BACK_LENGTH)
_ADJUSTED: Final = (Dimension.CHEST, Dimension.WAIST, Dimension.HIP, Dimension.BACK_LENGTH)
_YES: Final = "yes"


def _fields() -> Iterator[FormField]:
    for key in ("supplier", "model", "file", "chart", "season"):
        yield FormField(key, Entry.TEXT)
    yield FormField("also", Entry.WORDS)
    yield FormField("kind", Entry.CHOICE, tuple(VestKind))
    yield FormField("level", Entry.TEXT)
    yield FormField("weight_floor", Entry.MASS)
    yield FormField("weight_ceiling", Entry.MASS)
    yield FormField("between_sizes", Entry.CHOICE, tuple(Rule))
    yield FormField("between_sizes_source", Entry.TEXT)
    yield FormField("worn_over", Entry.CHOICE, tuple(WornOver))
    yield FormField("basis", Entry.CHOICE, tuple(Basis))
    yield FormField("foam_thickness", Entry.LENGTH)
    yield FormField("foam_thickness_source", Entry.TEXT)
    for dimension in _DEFINED:
        choices = tuple(sorted(each.value for each in definitions_of(dimension)))
        yield FormField(f"definitions.{dimension}", Entry.CHOICE, choices)
    for dimension in _ADJUSTED:
        yield FormField(f"adjusters.{dimension}.in", Entry.LENGTH)
        yield FormField(f"adjusters.{dimension}.out", Entry.LENGTH)
    yield FormField("elastic.relaxed", Entry.LENGTH)
    yield FormField("elastic.part", Entry.LENGTH)
    yield FormField("elastic.extension", Entry.PART)
    yield FormField("elastic.reserve", Entry.LENGTH)
    yield FormField("recalled", Entry.FLAG)
    yield FormField("superseded", Entry.FLAG)
    yield FormField("out_of_stock", Entry.WORDS)


def _rare_fields() -> Iterator[FormField]:
    """What a file may say though the form does not ask for it: kept when it is exported."""
    for dimension in Dimension:
        for way in ("in", "out"):
            if dimension not in _ADJUSTED:
                yield FormField(f"adjusters.{dimension}.{way}", Entry.LENGTH)


FIELDS: Final = tuple(_fields())
_ALL: Final = (*FIELDS, *_rare_fields())
_BY_KEY: Final = MappingProxyType({field.key: field for field in _ALL})
_ELASTIC: Final = ("elastic.relaxed", "elastic.part", "elastic.extension")


def problems(form: Form) -> Mapping[str, Reason]:
    """What is wrong with a form, by key: each field by itself, then the fields together."""
    found = {key: reason for key in form if (reason := problem(key, form[key])) is not None}
    if not form.get("model", "").strip():
        found["model"] = Reason("value-missing")
    for key, reason in _together(form):
        found.setdefault(key, reason)
    return found


def problem(key: str, text: str) -> Reason | None:
    """What is wrong with one field's text; None for a good or an empty one.

    Raises KeyError for a key that the form does not have.
    """
    field, typed = _BY_KEY[key], text.strip()
    if not typed:
        return None
    match field.entry:
        case Entry.CHOICE if typed not in field.choices:
            values = {"given": typed, "choices": ", ".join(field.choices)}
            return Reason("not-a-choice", values)
        case Entry.MASS | Entry.LENGTH:
            family = Family.MASS if field.entry is Entry.MASS else Family.LENGTH
            read = read_quantity(typed, family)
            return read if isinstance(read, Reason) else None
        case Entry.PART if part_of(typed) is None:
            return Reason("not-a-number")
        case Entry.FLAG if typed != _YES:
            return Reason("not-a-choice", {"given": typed, "choices": _YES})
    return None


def name_of(key: str, wording: Wording) -> str:
    """A field's name as a person reads it; a rare one is named by its key."""
    code = f"field-{key.replace('.', '-')}"
    return wording.say("season", code) if wording.has("season", code) else key


def say(key: str, reason: Reason, wording: Wording) -> str:
    """What is wrong with a field, with the field's own name."""
    values = {**reason.values, "key": name_of(key, wording)}
    return Reason(reason.code, values).say(wording, "facts")


def part_of(text: str) -> str | None:
    """A part of one as it is written in the file: "40 %" is "0.4"; None when it is none."""
    from decimal import Decimal, InvalidOperation

    plain = text.replace(",", ".").strip()
    percent = plain.endswith("%")
    try:
        number = Decimal(plain.removesuffix("%").strip())
    except InvalidOperation:
        return None
    if not number.is_finite():
        return None
    part = number / 100 if percent else number
    return f"{part.normalize():f}" if 0 < part < 10 else None


def export(forms: Sequence[Form]) -> str:
    """The whole ``models.toml`` of some forms, as typed.

    Raises ValueError when a form has problems: what is exported can always be read.
    """
    for form in forms:
        if problems(form):
            raise ValueError(f"a form with problems: {sorted(problems(form))}")
    return "format = 1\n\n" + "".join(_model_text(form) for form in forms)


def forms_in(text: str, name: str) -> tuple[Form, ...]:
    """The forms of a ``models.toml``, with what is written there word for word.

    Raises FactsFileError with the line and the reason when it cannot be used.
    """
    import tomllib

    read_model_facts(text, name)
    entries: list[dict[str, Any]] = tomllib.loads(text, parse_float=str).get("model", [])
    return tuple(MappingProxyType(dict(_typed(entry))) for entry in entries)


def _together(form: Form) -> Iterator[tuple[str, Reason]]:
    """What two fields say against each other."""
    masses = [
        read_quantity(form.get(key, ""), Family.MASS) for key in ("weight_floor", "weight_ceiling")
    ]
    floor, ceiling = (None if isinstance(each, Reason) else each.value for each in masses)
    if floor is not None and ceiling is not None and floor >= ceiling:
        yield "weight_ceiling", Reason("ceiling-below-floor")
    if form.get("between_sizes", "").strip() and not form.get("between_sizes_source", "").strip():
        yield "between_sizes_source", Reason("value-missing")
    yield from _about_foam(form)
    elastic = [key for key in (*_ELASTIC, "elastic.reserve") if form.get(key, "").strip()]
    for key in _ELASTIC if elastic else ():
        if key not in elastic:
            yield key, Reason("value-missing")


def _about_foam(form: Form) -> Iterator[tuple[str, Reason]]:
    """What is wrong with a foam's thickness beside the vest's kind, and without its source."""
    text = form.get("foam_thickness", "").strip()
    read = read_quantity(text, Family.LENGTH)
    if not text or isinstance(read, Reason):
        return
    kind = form.get("kind", "").strip()
    reason = foam_fault(read.value, text, VestKind(kind) if kind in set(VestKind) else None)
    if reason is not None:
        yield "foam_thickness", reason
    if not form.get("foam_thickness_source", "").strip():
        yield "foam_thickness_source", Reason("value-missing")


def _model_text(form: Form) -> str:
    tables: dict[str, dict[str, Plain | None]] = {}
    head: dict[str, Plain | None] = {}
    for field in _ALL:
        text = form.get(field.key, "").strip()
        if not text:
            continue
        table, _, rest = field.key.partition(".")
        if not rest:
            head[table] = _value(field, text)
        elif table == "adjusters":
            dimension, _, way = rest.partition(".")
            ways = tables.setdefault(table, {}).setdefault(dimension, {})
            if isinstance(ways, dict):
                ways[way] = text
        else:
            tables.setdefault(table, {})[rest] = _value(field, text)
    parts = [table_text("[[model]]", head)]
    parts += [table_text(f"[model.{name}]", values) for name, values in tables.items()]
    return "".join(parts)


def _value(field: FormField, text: str) -> Plain:
    from decimal import Decimal

    match field.entry:
        case Entry.FLAG:
            return True
        case Entry.WORDS:
            return [word.strip() for word in text.split(",") if word.strip()]
        case Entry.PART:
            return Decimal(part_of(text) or "0")
    return text


def _typed(entry: Mapping[str, Any], before: str = "") -> Iterator[tuple[str, str]]:
    """Every value of a table under its dotted key, as it is written."""
    for key, value in entry.items():
        whole = f"{before}{key}"
        if isinstance(value, dict):
            yield from _typed(value, f"{whole}.")
        elif isinstance(value, list):
            yield whole, ", ".join(value)
        elif isinstance(value, bool):
            yield from ((whole, _YES),) if value else ()
        else:
            yield whole, str(value)
