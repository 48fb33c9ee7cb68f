"""Supplier, model and season of a chart, each from the nearest place that says it, with the place.

Nothing is made up: words that any chart has ("size chart", "ladies", "cm") name no model, and
where nothing else stands the model stays unsaid.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import cache
from typing import Final

from charts.dimensions import Role, find_units, read_band, read_heading
from charts.resource_files import resources
from charts.schema import Chart, Said
from charts.several_models import models_in

_SEASON: Final = re.compile(
    r"\b((?:spring|summer|autumn|fall|winter|frühjahr|frühling|sommer|herbst|printemps|été|automne"
    r"|hiver|primavera|verano|otoño|invierno|ss|aw|fw|fs|hw)[ /_-]*(?:20)?\d\d(?:[/_-]\d\d)?"
    r"|20[23]\d(?:[/-](?:20)?\d\d)?)\b",
    re.IGNORECASE,
)
_NAMED: Final = re.compile(
    r"^(?:(?P<maker>supplier|maker|brand|manufacturer|hersteller|marke|lieferant|fabricant|marque)"
    r"\s*(?:name)?\s*[:=]"
    r"|(?P<model>model|modell|modèle|modelo|modello|style|article|artikel)\s*(?:name)?\s*[:=]?)"
    r"\s+(?P<name>\S.*)$",
    re.IGNORECASE,
)
_WORD: Final = re.compile(r"[^\W_]+(?:['’][^\W_]+)*")
_NUMBERED: Final = re.compile(r"[a-z]{0,2}\d+|v\d+")
_LONGEST_TITLE: Final = 90
"""Characters beyond which a text is a sentence (common practice, no source)."""
_MOST_WORDS: Final = 4
"""Words of a name; more of them say something."""
_NAMES_A_COLUMN: Final = frozenset({Role.MEASURE, Role.LABEL, Role.UNIT, Role.TOLERANCE})


@cache
def _common_words() -> frozenset[str]:
    source = resources() / "vocabulary" / "identity.toml"
    return frozenset(tomllib.loads(source.read_text(encoding="utf-8"))["common"])


def identified(chart: Chart, titles: Sequence[str], sheet: str, file: str, folder: str) -> Chart:
    """``chart`` with what its titles, its sheet, its file and its folder say of it.

    ``titles`` are the texts above the table, the nearest first.
    """
    models = () if chart.model else models_in(titles, file, own_words)
    maker = chart.supplier or _supplier(titles, folder)
    several = Said(" / ".join(one.text for one in models), models[0].source) if models else None
    return replace(
        chart,
        supplier=maker,
        model=chart.model or several or _model(titles, sheet, file, maker),
        models=tuple(one.text for one in models),
        season=chart.season or _season((*titles, *chart.notes), sheet, file, folder),
    )


def _supplier(titles: Sequence[str], folder: str) -> Said | None:
    for of_model, name in _named(titles):
        if not of_model:
            return Said(name, "title")
    first = folder.strip("/").split("/")[0]
    return Said(first, "folder") if first else None


def _model(titles: Sequence[str], sheet: str, file: str, maker: Said | None) -> Said | None:
    for of_model, name in _named(titles):
        if of_model:
            return Said(name, "title")
    stem = file.rpartition("/")[2].rpartition(".")[0]
    sources = [*((title, "title") for title in titles), (sheet, "sheet"), (stem, "file")]
    for text, source in sources:
        name = _without(own_words(text), maker)
        if name:
            return Said(name, source)
    return None


def _without(name: str, maker: Said | None) -> str:
    """A model's name without its maker's: what is left of "Pinderlow Pipwhirr" is the model."""
    if maker is None:
        return name
    return " ".join(word for word in name.split() if word.lower() != maker.text.lower())


def _named(titles: Sequence[str]) -> Iterator[tuple[bool, str]]:
    """Names that titles give with a word for what they name; True for a model's."""
    for title in titles:
        match = _NAMED.match(title.strip())
        if match:
            yield bool(match["model"]), match["name"].strip()


def own_words(text: str) -> str:
    """The words of a title that not every chart has; "" when none is left, or in a sentence."""
    if len(text) > _LONGEST_TITLE or text.rstrip().endswith((".", "!", "?")):
        return ""
    if read_heading(text).role is Role.NOTE:
        return ""  # "How to measure", "Remarks"
    before, colon, after = text.partition(": ")
    if colon:
        says = "" if read_heading(after).role is Role.MEASURE else own_words(after)
        names = [name for name in (own_words(before), says) if name]
        return names[0] if len(names) == 1 else ""
    kept = [word for word in _WORD.findall(_SEASON.sub(" ", text)) if _is_own(word)]
    kept = [word for word in kept if read_heading(word).role not in _NAMES_A_COLUMN] or kept
    named = any(character.isalpha() for character in "".join(kept))
    return " ".join(kept) if named and len(kept) <= _MOST_WORDS else ""


def _is_own(word: str) -> bool:
    plain = word.lower()
    if plain in _common_words() or read_band(word) is not None or find_units(word):
        return False
    return not _NUMBERED.fullmatch(plain)


def _season(texts: Sequence[str], sheet: str, file: str, folder: str) -> Said | None:
    sources = [*((text, "title") for text in texts), (sheet, "sheet"), (file, "file")]
    for text, source in (*sources, (folder, "folder")):
        match = _SEASON.search(text.replace("_", " "))
        if match:
            return Said(match[1], source)
    return None
