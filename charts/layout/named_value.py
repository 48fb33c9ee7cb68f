"""Texts that name a measure and give its figures: ``Chest 82-86 cm``, ``82-86 cm chest``."""

from __future__ import annotations

import re
from typing import Final

from charts.dimensions import Role
from charts.layout.looks import look
from charts.quantities import FAMILY, Family, Unit

_JOINTS: Final = r"\s(?:and|und|et|y|e|en|i|och|og|oraz|a|&|\+)\s"
_PARTS: Final = re.compile(
    r"[;|\n]|,\s+(?=[^\W\d_])|(?<=[^\W\d_]),\s+(?=\d)|\s/\s"
    rf"|{_JOINTS}(?=[^\W\d_])|(?<=[^\W\d_]{{3}}){_JOINTS}(?=\d)"
)
_BRACKETED: Final = re.compile(r"(?P<front>[^()]+)\((?P<mass>[^()]*\d[^()]*)\)")
_FIGURE_FIRST: Final = re.compile(
    r"^(?P<value>.*[\d\"'”½¼¾]\s*(?:cm|mm|inch(?:es)?|in|kg|lbs?|st)?)\s+(?P<name>[^\d]+)$"
)
_NAME_FIRST: Final = re.compile(r"^(?P<name>[^\d<>~≤≥]+?)\s*+[:=]?\s*+(?P<value>[\d<>~≤≥].*)$")


def named_value(text: str) -> tuple[str, str] | None:
    """The name of the dimension and the figures of one part of a sentence."""
    text = text.strip().rstrip(".")
    if look(text).value:
        return "", text
    for form in (_NAME_FIRST, _FIGURE_FIRST):
        match = form.match(text)
        if match is None:
            continue
        name, value = match["name"].strip(), match["value"].strip()
        words = name.split()
        for kept in range(len(words), 0, -1):
            short, rest = " ".join(words[:kept]), " ".join(words[kept:])
            whole = f"{rest} {value}".strip() if form is _NAME_FIRST else value
            if look(whole).value and (look(short).measures or _measures_here(short, whole)):
                return short, whole
    return None


def _measures_here(name: str, value: str) -> bool:
    """``Taille 64-68 cm``: what can be a word for size measures where a unit stands behind it."""
    quantity = look(value).reading.quantity
    united = quantity is not None and quantity.unit not in {None, Unit.YEARS}
    return united and any(role is Role.MEASURE for role, _ in look(name).heading.candidates)


def named_parts(text: str) -> dict[str, str]:
    """The figures of a text by the names of their measures; empty when a part is anything else."""
    weighed = _BRACKETED.fullmatch(text.strip())
    if weighed is not None and (with_mass := _with_mass(weighed["front"], weighed["mass"])):
        return with_mass
    found: dict[str, str] = {}
    for part in _PARTS.split(text):
        if not part.strip():
            continue
        item = named_value(part)
        if item is None or not item[0]:
            return {}
        found[item[0]] = item[1]
    return found


def _with_mass(front: str, mass: str) -> dict[str, str]:
    """``Height 1.60 - 1.70 m (50-60 kg)``: the weight of who is so tall, named by its unit."""
    item = named_value(front)
    unit = _unit_of(mass)
    if item is None or not item[0] or unit is None or FAMILY[unit] is not Family.MASS:
        return {}
    own = _unit_of(item[1])
    if own is None or FAMILY[own] is not Family.LENGTH:
        return {}
    return {item[0]: item[1], unit.value: mass}


def _unit_of(value: str) -> Unit | None:
    quantity = look(value).reading.quantity
    return quantity.unit if quantity is not None else None
