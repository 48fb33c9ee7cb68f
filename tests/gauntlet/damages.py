"""Damage that really happens to size tables, each kind with the reading that is still right."""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import cache
from random import Random
from typing import Final

from damage_case import (
    BASES,
    Case,
    Damaged,
    Entry,
    cut,
    dimensions,
    label_of,
    listed,
    other_labels,
    published_at,
    row_words,
    seen,
    shuffled,
)
from text_blocks import edited, figures

from charts.cell_text import clean
from charts.headings.bands import BANDS
from charts.schema import Dimension
from charts.vocabulary import tables

BODY: Final = frozenset(Dimension) - {Dimension.OTHER}
UNKNOWN: Final = ("Zolmar", "Zeppa", "Fritz", "K7", "Tarn", "Zuschnitt Q")


Damage = Callable[[Case, Random], Damaged | None]


def band_word(case: Case, chance: Random) -> Damaged | None:
    """Every mention of one word for who wears it becomes a word that nobody knows."""
    spans = [found for found in _band_words().finditer(case.text) if seen(case, found.start())]
    if not spans:
        return None
    words = {found[0].lower() for found in spans}
    words -= {word for word in words if any(word in one.lower() for one in case.labels())}
    if not words:
        return None
    word = chance.choice(sorted(words))
    new = chance.choice(UNKNOWN)
    edits = [(*found.span(), new) for found in spans if found[0].lower() == word]
    entries = case.entries()
    for one in entries:
        if one.get("band") != "any":
            one["band"] = [*listed(one.get("band")), None]
    return Damaged(edited(case.text, edits), entries, f"{word} -> {new}")


def heading(case: Case, chance: Random) -> Damaged | None:
    """A heading of a body dimension is emptied or becomes a word that nobody knows."""
    for block in shuffled(case.blocks(), chance):
        for cell in shuffled(block.head[1:], chance):
            hit = case.under(cell.text)
            one_of_many = hit and len(hit) < len(case.expected.entries)
            if one_of_many and dimensions(case, hit) & BODY and not case.in_two_units(hit):
                new = chance.choice(["", *UNKNOWN])
                unit = re.search(r"\(.*?\)", cell.text)
                if unit and new and chance.random() < 0.5:
                    new = f"{new} {unit[0]}"
                text = edited(case.text, [(cell.start, cell.end, new)])
                return Damaged(text, _of_any_basis(case, hit), f"{cell.text} -> {new!r}")
    return None


def dropped(case: Case, chance: Random) -> Damaged | None:
    """A cell goes, so that the rest of its row stands one place further left."""
    for block in shuffled(case.blocks(), chance):
        for row in shuffled(block.body, chance):
            hit = case.in_row(row)
            places = [at for at in range(1, len(row) - 1) if row[at].text]
            if len(hit) < 2 or not places:
                continue
            cell = row[chance.choice(places)]
            entries = case.entries()
            for at in hit:
                if clean(published_at(case, at)) == clean(cell.text):
                    entries[at]["optional"] = True
            text = edited(case.text, [(*cell.outer, "")])
            return Damaged(text, entries, f"{cell.text} dropped from {row_words(row)}")
    return None


def label(case: Case, chance: Random) -> Damaged | None:
    """The label of a row is emptied, or is that of the row above."""
    for block in shuffled(case.blocks(), chance):
        at = chance.randrange(1, len(block.body))
        row, above = block.body[at], block.body[at - 1]
        hit, first = case.in_row(row), row[0]
        if not hit or not all(label_of(case, one) == clean(first.text) for one in hit):
            continue
        new = chance.choice(["", above[0].text])
        entries = case.entries()
        for index, one in enumerate(entries):
            names = [*listed(one.get("size")), *other_labels(case, index)]
            one["size"] = [*names, None, new] if index in hit else names
        for index in hit:
            if not other_labels(case, index):
                entries[index]["ask"] = True
        text = edited(case.text, [(first.start, first.end, new)])
        return Damaged(text, entries, f"label {first.text} -> {new!r}")
    return None


def units(case: Case, _chance: Random) -> Damaged | None:
    """Every unit of length and weight goes, wherever it stands."""
    edits = [(*one.span(), "") for one in _UNIT.finditer(case.text) if seen(case, one.start())]
    first = [row[0].text for block in case.blocks() for row in block.body]
    if not edits or any(map(_UNIT.search, [*first, *case.labels()])):
        return None
    return Damaged(edited(case.text, edits), case.entries(), f"{len(edits)} units")


def exchanged(case: Case, chance: Random) -> Damaged | None:
    """The headings of two neighbouring columns are exchanged."""
    for block in shuffled(case.blocks(), chance):
        pairs = list(zip(block.head[1:], block.head[2:], strict=False))
        for one, other in shuffled(pairs, chance):
            left, right = case.under(one.text), case.under(other.text)
            dims = [dimensions(case, left), dimensions(case, right)]
            if left & right or any(len(each) != 1 or not each <= BODY for each in dims):
                continue
            if any(case.text.count(cell.text) > 1 for cell in (one, other)):
                continue  # what other tables have under these words was not exchanged
            if dims[0] == dims[1]:
                continue
            entries = _of_any_basis(case, left | right)
            for at in left | right:
                entries[at] |= {"ask": True, "dimension": sorted(dims[0] | dims[1])}
            edits = [
                (one.start, one.end, cut(case, other)),
                (other.start, other.end, cut(case, one)),
            ]
            names = "/".join(sorted(word for each in dims for word in each))
            return Damaged(edited(case.text, edits), entries, names)
    return None


_COLUMNS: Final[dict[str, Callable[[int], str]]] = {
    "Price": lambda at: f"{24 + at // 2}.95",
    "Preis": lambda at: f"{39 + 2 * at} EUR",
    "EU": lambda at: str(34 + 2 * at),
    "No.": lambda at: str(1 + at),
    "Stock": lambda at: str((at * 37 + 12) % 60),
    "Art.": lambda at: str(40210 + at),
    "Zolm": lambda at: str(68 + 4 * at),
    "": lambda at: str(70 + 4 * at),
    "Sleeve lining": lambda at: str(44 + at),
    "Colour": lambda at: ("red", "blue", "black")[at % 3],
    "US": lambda at: str(4 + 2 * at),
}


def column(case: Case, chance: Random) -> Damaged | None:
    """A column of something else stands among the others."""
    blocks = case.blocks()
    if not blocks:
        return None
    block = chance.choice(blocks)
    if (
        len(block.head) < 3
        or case.sideways(block)
        or len({cell.text for cell in block.head}) < len(block.head)
    ):
        return None
    name = chance.choice(sorted(_COLUMNS))
    place = chance.randrange(1, len(block.head) - 1)
    edits = []
    for at, row in enumerate((block.head, *block.body)):
        left, right = row[place], row[place + 1]
        new = _COLUMNS[name](at - 1) if at else name
        whole = case.text[left.outer[0] : right.outer[0]]
        inner = left.start - left.outer[0], left.end - left.outer[0]
        edits.append((right.outer[0], right.outer[0], whole[: inner[0]] + new + whole[inner[1] :]))
    return Damaged(edited(case.text, edits), case.entries(), f"column {name!r} at {place + 1}")


def glued(case: Case, chance: Random) -> Damaged | None:
    """What stood between two cells of figures is lost."""
    if case.suffix in (".html", ".md"):
        return None
    for block in shuffled(case.blocks(), chance):
        row = chance.choice(block.body)
        places = [at for at in range(1, len(row) - 1) if figures(row[at]) and figures(row[at + 1])]
        if not places or not case.in_row(row) or case.in_two_units(case.in_row(row)):
            continue
        at = chance.choice(places)
        edits = [(row[at].end, row[at + 1].start, "")]
        what = f"{row[at].text}{row[at + 1].text}"
        entries = case.entries()
        gone = {clean(row[at].text), clean(row[at + 1].text)}
        for one in case.in_row(row):
            if clean(published_at(case, one)) in gone:
                entries[one]["optional"] = True
        return Damaged(edited(case.text, edits), entries, what)
    return None


_PROSE: Final = (
    "Our model is 178 cm tall and wears size M.",
    "Allow 2-3 cm of ease; orders before 12.30 leave within 24-48 hours.",
    "Bei Zwischengrößen bitte die größere wählen, Rückgabe binnen 30 Tagen.",
    "Le mannequin mesure 1,85 m et porte du L (tour de poitrine 98 cm).",
    "Lavar a 30 grados. Garantía de 24 meses desde 2019.",
    "Delivery 4.95, free from 60.00. Call 0800 100 200.",
    "Tolerance +/- 2 cm. Waist 76-81 is the most sold.",
)


def prose(case: Case, chance: Random) -> Damaged | None:
    """A line of prose with figures stands above, between or below the tables."""
    line = chance.choice(_PROSE)
    if case.suffix == ".csv":
        line = f'"{line}"'
    where = chance.choice(("above", "below"))
    text = _around(case, line, where)
    return text and Damaged(text, case.entries(), f"{where}: {line}")


_NOTES: Final = (
    ("finished", "Garment measurements"),
    ("finished", "All measurements are of the garment."),
    ("finished", "Maße des Kleidungsstücks"),
    ("finished", "Fertigmaße"),
    ("finished", "Mesures du vêtement"),
    ("finished", "Medidas de la prenda"),
    ("finished", "Misure del capo"),
    ("finished", "Maten van het kledingstuk"),
    ("finished", "Wymiary odzieży"),
    ("flat", "Measured laid flat"),
    ("flat", "Flach liegend gemessen"),
    ("flat", "Mesuré à plat"),
    ("flat", "Medido en plano"),
    ("flat", "Misurato in piano"),
    ("flat", "Plat gemeten"),
    ("body", "Body measurements"),
    ("body", "Körpermaße"),
    ("body", "Mensurations du corps"),
    ("body", "Medidas corporales"),
    ("body", "Lichaamsmaten"),
    ("body", "Misure del corpo"),
)


def basis(case: Case, chance: Random) -> Damaged | None:
    """A line above or below says what was measured."""
    said = {one.value.reading["basis"] for one in case.verdict.judged if one.value is not None}
    if case.charts != 1 or not said <= {"body", "unknown"}:
        return None
    due, line = chance.choice(_NOTES)
    where = chance.choice(("above", "below"))
    text = _around(case, line, where)
    entries = case.entries()
    for one in entries:
        free = {"height", "weight", "age", "other"} & set(listed(one["dimension"]))
        one["basis"] = BASES if free else [due]
        if "height" in free and due != "body":
            one["dimension"] = ["height", "other", "back_length"]  # a garment's length
    return text and Damaged(text, entries, f"{where}: {line}")


def _around(case: Case, line: str, where: str) -> str | None:
    if case.suffix == ".html":
        tables_at = [*re.finditer(r"<table\b|</table>", case.text, re.IGNORECASE)]
        if not tables_at:
            return None
        at = tables_at[0].start() if where == "above" else tables_at[-1].end()
        return edited(case.text, [(at, at, f"<p>{line}</p>\n")])
    gap = "\n" if case.suffix in (".csv", ".tsv") else "\n\n"
    if where == "above":
        return f"{line}{gap}{case.text}"
    return f"{case.text.rstrip()}{gap}{line}\n"


def _of_any_basis(case: Case, hit: set[int]) -> list[Entry]:
    entries = case.entries()
    for at in hit:
        entries[at].pop("definition", None)
        entries[at]["basis"] = BASES
    return entries


_UNIT: Final = re.compile(
    r"\s*[(\[]\s*(?:in\s)?(?:cm|cms|mm|in|inch(?:es)?|kg|lbs?|см|ins)\s*\.?\s*[)\]]"
    r"|\b(?:cm|cms|centimet(?:er|re)s?|zentimeter|centimètres?|centímetros|centimetri|см|inch(?:es)?"
    r"|pouces?|pulgadas|pollici|zoll|kg|kgs|kilos?|lbs?|palce|tum)\b\.?"
    r"|(?<=\d)\s*(?:cm|mm|kg|lbs?|in|[″”])(?!\w)",
    re.IGNORECASE,
)


@cache
def _band_words() -> re.Pattern[str]:
    words = {word for band in BANDS for _, lists in tables("bands", band) for word in lists}
    either = "|".join(map(re.escape, sorted(words, key=len, reverse=True)))
    return re.compile(rf"(?<!\w)(?:{either})(?:['’]s|s['’])?(?!\w)", re.IGNORECASE)


KINDS: Final[dict[str, Damage]] = {
    "band-word": band_word,
    "heading": heading,
    "dropped": dropped,
    "label": label,
    "units": units,
    "exchanged": exchanged,
    "column": column,
    "glued": glued,
    "prose": prose,
    "basis": basis,
}
