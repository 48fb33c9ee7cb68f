"""One row per size and dimension: turned into one field per dimension, one line per size."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind
from charts.layout.frames import Frame
from charts.layout.heads import combined
from charts.layout.looks import look
from charts.layout.view import At

_KEYS = (FieldKind.LABEL, FieldKind.LENGTH, FieldKind.BAND, FieldKind.IDENTITY)
_ENDS = (Role.LOW_END, Role.HIGH_END)
_VALUE_WORDS = frozenset(
    (
        *("value", "values", "wert", "werte", "valeur", "valeurs", "valor", "valores", "valore"),
        *("waarde", "värde", "værdi", "verdi", "wartość", "hodnota", "measurement", "measure"),
        *("maß", "mass", "mesure", "medida", "misura", "maat", "mått", "mål", "range"),
    )
)


@dataclass(slots=True)
class _Wide:
    """One field in the making: its heading cells, and its cells by line."""

    heads: tuple[At, ...]
    role: Role
    cells: dict[int, tuple[At, ...]] = field(default_factory=dict)


def widened(frame: Frame) -> Frame | None:
    """The frame with one line per size, when its rows name sizes and dimensions; else None."""
    names = [one for one in frame.fields if one.kind is FieldKind.NAMES]
    values = _values(frame)
    labels = [one for one in frame.fields if one.kind in {FieldKind.LABEL, FieldKind.LENGTH}]
    if len(names) != 1 or not labels or not 1 <= len(values) <= 3 or _heads_sizes(names[0]):
        return None
    if len(values) > 1 and _sizes_above(names[0], values):
        return None
    keys = [one for one in frame.fields if _names_rows(one)]
    rows = _keys_of_rows(keys, frame.lines)
    order = list(dict.fromkeys(rows))
    if len(order) == len(rows) and len(order) > 1 and not _one_dimension(names[0]):
        return None
    wide = _wide(frame, names[0], values, [order.index(row) for row in rows])
    fields = [_thinned(one, rows, order) for one in keys]
    fields += [_field(one, len(order)) for one in wide]
    return replace(frame, fields=tuple(fields), score=frame.score + 10, lines=len(order))


def _names_rows(one: Field) -> bool:
    """Whether a column tells the sizes apart; letters for whom, M and F, do so under their word."""
    lettered = one.kind is FieldKind.NOTE and one.heading.role is Role.BAND
    return one.kind in _KEYS or (lettered and one.heading.band is None)


def _values(frame: Frame) -> list[Field]:
    """The columns of figures: those under no word, or under a word for a value."""
    values = [one for one in frame.fields if one.kind is FieldKind.VALUES]
    if values:
        return values
    skipped = [one for one in frame.fields if one.kind is FieldKind.SKIPPED]
    return [one for one in skipped if _VALUE_WORDS & set(one.printed_heading.lower().split())]


def _heads_sizes(names: Field) -> bool:
    """Whether a word for size stands among the names: the sizes run across beside it."""
    heads = [look(cell[0].text).heading for cell in names.cells if cell]
    return any(one.role is Role.LABEL and not one.candidates for one in heads)


def _sizes_above(names: Field, values: Sequence[Field]) -> bool:
    """``Women | Chest | 82-86 | 87-91`` below S and M: the sizes run across."""
    if all(look(one.printed_heading).label for one in values):
        return True
    if names.cells[:1] != ((),):  # no row at all, or one that names its measure
        return False
    first = [one.cells[0][0].text if one.cells[0] else "" for one in values]
    return all(look(text).label for text in first)


def _one_dimension(names: Field) -> bool:
    return len({cell[0].text for cell in names.cells if cell}) == 1


def _keys_of_rows(keys: Sequence[Field], lines: int) -> list[tuple[str, ...]]:
    """What names the size of each row. A blank below a size means the same size in this form."""
    held = [""] * len(keys)
    found = []
    for line in range(lines):
        for number, one in enumerate(keys):
            held[number] = one.cells[line][0].text.strip() if one.cells[line] else held[number]
        found.append(tuple(held))
    return found


def _wide(frame: Frame, names: Field, values: Sequence[Field], sizes: Sequence[int]) -> list[_Wide]:
    """The fields of the wide table, in the order in which their dimensions are first named."""
    units = next((one for one in frame.fields if one.kind is FieldKind.UNIT), None)
    found: dict[tuple[str, str, int], _Wide] = {}
    for line, size in enumerate(sizes):
        if not names.cells[line]:
            continue
        heads = (names.cells[line][0], *(units.cells[line][:1] if units else ()))
        for number, value in enumerate(values):
            unit = heads[1].text if len(heads) > 1 else ""
            role = value.heading.role if value.heading.role in _ENDS else Role.MEASURE
            key = (heads[0].text.strip().lower(), unit, number)
            wide = found.setdefault(key, _Wide((*value.heads, *heads), role))
            if value.cells[line]:
                wide.cells.setdefault(size, value.cells[line][:1])
    return [one for one in found.values() if one.cells]


def _field(wide: _Wide, lines: int) -> Field:
    heading = combined(wide.heads)
    if wide.role in _ENDS:
        heading = replace(heading, role=wide.role)
    named = [at for at in wide.heads if look(at.text).measures]
    name = named[-1] if named else wide.heads[-1]
    cells = tuple(wide.cells.get(line, ()) for line in range(lines))
    return Field(FieldKind.VALUES, (name,), heading, cells)


def _thinned(
    key: Field, rows: Sequence[tuple[str, ...]], order: Sequence[tuple[str, ...]]
) -> Field:
    """A naming column with one cell per size: the first row of each."""
    firsts = [rows.index(one) for one in order]
    return replace(key, cells=tuple(key.cells[line] for line in firsts))
