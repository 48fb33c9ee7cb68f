"""Letters for whom a row is, F and M: no names of models, and told by which stand together.

M alone may be a man, mujer, mulher or a size. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Final

from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind, Table

_PLAIN: Final[tuple[Mapping[str, str], ...]] = (
    {"f": "women", "m": "men"},
    {"w": "women", "m": "men"},
    {"nữ": "women", "nam": "men"},  # words, but of other things elsewhere in Vietnamese
)
_UNDER_A_WORD: Final[tuple[Mapping[str, str], ...]] = (
    *_PLAIN,
    {"d": "women", "h": "men"},
    {"f": "women", "h": "men"},
    {"m": "women", "h": "men"},  # mujer, mulher; hombre, homem
    {"k": "women", "m": "men"},
    {"v": "women", "m": "men"},
    {"d": "women", "u": "men"},
    {"l": "women", "g": "men"},
    {"l": "women", "m": "men"},
    {"b": "boys", "g": "girls"},
)
"""What counts only under a heading such as "Gender": elsewhere the letters may be any code."""
_BOTH: Final = {"u": "unisex"}
_KINDS: Final = frozenset({FieldKind.IDENTITY, FieldKind.NOTE, FieldKind.LABEL})


def column_of_letters(table: Table) -> Field | None:
    """The column that holds letters for whom each row is, where no column has words for it."""
    if table.of(FieldKind.BAND):
        return None
    beside = (one for one in table.fields if one.kind in _KINDS)
    return next((one for one in beside if _letters_of(one)), None)


def bands_of_letters(field: Field, texts: Sequence[str | None]) -> list[str | None]:
    """The band of each row, ``texts`` being the letters of ``field``, filled down."""
    pair = _letters_of(field)
    return [pair.get(_letter(text)) if text else None for text in texts]


def _letters_of(field: Field) -> Mapping[str, str]:
    """The one pair that the letters of a column are; a U beside both is unisex."""
    letters = {_letter(cell[0].text) for cell in field.cells if cell}
    pairs = _UNDER_A_WORD if field.heading.role is Role.BAND else _PLAIN
    found = [pair for pair in pairs if letters == pair.keys()]
    if not found and letters & _BOTH.keys():
        found = [{**pair, **_BOTH} for pair in pairs if letters - _BOTH.keys() == pair.keys()]
    return found[0] if len(found) == 1 else {}


def _letter(text: str) -> str:
    return text.strip().lower().rstrip(".")
