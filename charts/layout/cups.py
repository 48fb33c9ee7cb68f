"""Cups: a girth in several columns, one for each cup. A size is then its number with the cup.

``Bust A-C cup | Bust D-F cup``, ``Bust`` over ``A/B | C/D``, a column of cups beside the numbers.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from itertools import pairwise
from typing import Final

from charts.cell_text import clean
from charts.dimensions import HeadingReading, Role
from charts.layout.fields import Field, FieldKind
from charts.layout.heads import combined
from charts.layout.kinds import Content
from charts.layout.looks import look
from charts.layout.second_names import Group, joined, pairs_of, repeated
from charts.layout.view import At
from charts.schema import Dimension

CUP_GIRTHS: Final = ((Role.MEASURE, Dimension.CHEST), (Role.MEASURE, Dimension.UNDERBUST))
"""What figures under a cup can be when no word says it, the likelier first."""

_WORD: Final = r"(?:cup|körbchen(?:größe)?|bonnet|copa|coppa|kupa|kupstorlek|miseczka)s?"
_CUP: Final = r"(?:A{1,3}|B|C|D{1,3}|E{1,3}|F{1,2}|G{1,2}|H{1,2}|J{1,2}|K)"
_CUPS: Final = rf"{_CUP}(?:\s?(?:[-/+&,]|to|bis|und|and)\s?{_CUP})*"
_IN_TEXT: Final = re.compile(
    rf"(?P<before>(?i:\b{_WORD})[\s:.-]*)?(?<![\w'])(?P<cups>{_CUPS})(?![\w'])"
    rf"(?P<behind>[\s-]*(?i:{_WORD}\b))?"
)
_ALONE: Final = re.compile(rf"(?i:{_WORD})\s?(?i:sizes?|größe)?")
_EMPTY: Final = re.compile(r"[(\[]\s*[)\]]|^[\s,:/|-]+|[\s,:/|-]+$")
_BRACKET: Final = re.compile(r"\s*\([^()]*\)\s*$")
_PLAIN_NUMBER: Final = re.compile(r"\d{2,3}")
_WIDEST_STEP: Final = Decimal(6)
"""More than from one cup to the next but one in cm (common practice, no source)."""
_NAMES: Final = frozenset({FieldKind.LABEL, FieldKind.LENGTH, FieldKind.BAND, FieldKind.IDENTITY})
_GIRTHS: Final = frozenset({Dimension.CHEST, Dimension.UNDERBUST})


@dataclass(frozen=True, slots=True)
class Cup:
    """The cups that a text names, what else it says, and whether it has the word for a cup."""

    letters: str
    rest: str
    said: bool


def _place(letters: str) -> int:
    """Where the first of some cups stands: AA before A, DD between D and E."""
    first = re.match(_CUP, letters)
    more = len(first[0]) - 1 if first else 0
    return (ord(letters[0]) - ord("A")) * 10 + (-more if letters[0] == "A" else more)


def cup_in(text: str) -> Cup | None:
    """The cups named in a heading; None where there are none, or letters twice."""
    plain = clean(text).replace("\n", " ")
    found = list(_IN_TEXT.finditer(plain))
    worded = [one for one in found if one["before"] or one["behind"]] or found
    if len(worded) != 1:
        return None
    match = worded[0]
    rest = _EMPTY.sub("", plain[: match.start()] + " " + plain[match.end() :]).strip()
    said = bool(match["before"] or match["behind"])
    return Cup(re.sub(r"\s", "", match["cups"]), " ".join(rest.split()), said)


def are_cups(texts: Sequence[str]) -> bool:
    """Whether texts are nothing but cups, rising from A or B unless the word for one is there."""
    found = [cup_in(text) for text in texts]
    cups = [one for one in found if one is not None and not one.rest]
    if len(cups) != len(texts) or len(cups) < 2:
        return False
    places = [_place(one.letters) for one in cups]
    rising = all(a < b for a, b in pairwise(places))
    return rising and (any(one.said for one in cups) or cups[0].letters[0] in "AB")


def with_cup(size: At, cup: str) -> At:
    """The cell of a size named with its cup too: 75B, S A-C; a bracket behind the number goes.

    A size that ends in its cup has its name already.
    """
    name = _BRACKET.sub("", size.text.strip())
    if _ends_in(size.text, cup):
        return size
    joint = "" if _PLAIN_NUMBER.fullmatch(name) and cup.isalpha() else " "
    return replace(size, cell=replace(size.cell, text=f"{name}{joint}{cup}"))


def _ends_in(name: str, cup: str) -> bool:
    """Whether the cup stands behind the number of a size: 75 B, 80-D, 34/75B, 36 (C)."""
    own = re.search(rf"(?<=\d)[\s/(-]*({_CUP})\s*\)?\s*$", clean(name), re.IGNORECASE)
    return own is not None and own[1].casefold() == cup.casefold()


def with_cups(fields: Sequence[Field]) -> list[Field]:
    """The fields with one line for each size and cup, where columns stand for cups."""
    fields = _with_cup_column(fields)
    columns = _cups_of(fields)
    groups = _groups(fields, columns)
    if not groups or not any(field.kind is FieldKind.LABEL for field in fields):
        return fields
    cups = list(dict.fromkeys(cup.letters for cup, _ in columns.values()))
    pairs = pairs_of(len(fields[0].cells), cups, groups)
    kept = [field for number, field in enumerate(fields) if number not in columns]
    found = [repeated(field, pairs, with_cup) for field in kept]
    under = _under_given(kept)
    return found + [joined(group, pairs, _heading(group, under=under)) for group in groups]


def _groups(
    fields: Sequence[Field], columns: Mapping[int, tuple[Cup, tuple[At, ...]]]
) -> list[Group]:
    """The columns of one girth by their cups; none where a group is no row of growing cups."""
    found: dict[str, Group] = {}
    for number, (cup, names) in columns.items():
        group = found.setdefault(" ".join(at.text.strip().lower() for at in names), {})
        if cup.letters in group:
            return []
        group[cup.letters] = replace(fields[number], heads=names)
    if len(found) == 2 and "" in found:
        # ``Cup A | Bust B | C | D``: words that stand over the whole row of cups
        named = next(name for name in found if name)
        if not found[""].keys() & found[named].keys():
            heads = next(iter(found[named].values())).heads
            bare = {cup: replace(one, heads=heads) for cup, one in found.pop("").items()}
            found[named] |= bare
    groups = list(found.values())
    return groups if all(len(one) > 1 and _grows(one) for one in groups) else []


def _grows(group: Group) -> bool:
    by_cup = [group[cup].cells for cup in sorted(group, key=_place)]
    steps = [
        (one[line][0], other[line][0])
        for one, other in pairwise(by_cup)
        for line in range(len(one))
        if one[line] and other[line]
    ]
    return growing(steps)


def growing(steps: Iterable[tuple[At, At]]) -> bool:
    """Whether a girth grows with the cup in almost every step from one to the next."""
    ends = [(_lowest(one), _lowest(other)) for one, other in steps]
    known = [(low, high) for low, high in ends if low is not None and high is not None]
    return sum(low < high for low, high in known) >= 0.8 * len(known)


def leaping(steps: Iterable[tuple[At, At]]) -> bool:
    """Whether most steps are wider than a cup, in cm or in inches: the letters are no cups."""
    ends = [(_lowest(one), _lowest(other)) for one, other in steps]
    known = [high - low for low, high in ends if low is not None and high is not None]
    return bool(known) and 2 * sum(step > _WIDEST_STEP for step in known) > len(known)


def _lowest(at: At) -> Decimal | None:
    quantity = look(at.text).reading.quantity
    ends = (quantity.low, quantity.value, quantity.high) if quantity is not None else ()
    return next((end.value for end in ends if end is not None), None)


def _under_given(fields: Sequence[Field]) -> bool:
    return any(field.heading.dimension is Dimension.UNDERBUST for field in fields)


def _heading(group: Group, *, under: bool) -> HeadingReading:
    found = combined(next(iter(group.values())).heads)
    return bust_heading(found, under=under) if found.dimension is None else found


def bust_heading(heading: HeadingReading, *, under: bool) -> HeadingReading:
    """What figures under cups are when nothing names them.

    The bust; or as well the girth under it, unless that has figures of its own (``under``).
    """
    either = () if under else CUP_GIRTHS
    return replace(heading, role=Role.MEASURE, dimension=Dimension.CHEST, candidates=either)


def _with_cup_column(fields: Sequence[Field]) -> list[Field]:
    """A column headed ``Cup`` with letters in it: joined to the sizes beside it."""
    labels = [field for field in fields if field.kind is FieldKind.LABEL]
    column = next((field for field in fields if _holds_cups(field)), None)
    sizes = next((field for field in labels if field is not column), None)
    if column is None or sizes is None:
        return list(fields)
    held: At | None = None
    cells = []
    for size, cup in zip(sizes.cells, column.cells, strict=True):
        held = size[0] if size else held
        letters = cup[0].text.strip() if cup else ""
        cells.append((with_cup(held, letters),) if held is not None else ())
    joined = replace(sizes, cells=tuple(cells))
    return [joined if field is sizes else field for field in fields if field is not column]


def _holds_cups(field: Field) -> bool:
    if _ALONE.fullmatch(field.printed_heading.strip()) is None:
        return False
    cups = [cup_in(cell[0].text) for cell in field.cells if cell]
    return bool(cups) and all(cup is not None and not cup.rest for cup in cups)


def _cups_of(fields: Sequence[Field]) -> dict[int, tuple[Cup, tuple[At, ...]]]:
    """The columns of figures that stand for a cup, with what else their headings say."""
    found: dict[int, tuple[Cup, tuple[At, ...]]] = {}
    under = _under_given(fields)
    for number, field in enumerate(fields):
        content = Content.of(field.cells)
        parted = _parted(field.heads)
        if field.kind in _NAMES or not content.most(content.values) or parted is None:
            continue
        cup, names = parted
        left = found.get(number - 1)
        if left is not None and not names and _place(left[0].letters) < _place(cup.letters):
            names = left[1]
        dimension = combined(names).dimension
        told = cup.said or under or (not names and len(cup.letters) > 1)
        if dimension in _GIRTHS or (dimension is None and told):
            found[number] = cup, names
    return found


def _parted(heads: Sequence[At]) -> tuple[Cup, tuple[At, ...]] | None:
    cups = [(at, cup) for at in heads if (cup := cup_in(at.text)) is not None]
    if len(cups) != 1:
        return None
    (holder, cup) = cups[0]
    renamed = replace(holder, cell=replace(holder.cell, text=cup.rest))
    names = tuple(renamed if at is holder else at for at in heads)
    worded = [at for at in names if _ALONE.fullmatch(at.text.strip())]
    kept = tuple(at for at in names if at.text.strip() and at not in worded)
    return replace(cup, said=cup.said or bool(worded)), kept
