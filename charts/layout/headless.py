"""A column without a heading that names the sizes where no word for size does."""

from __future__ import annotations

from collections.abc import Sequence

from charts.layout.fields import Field, FieldKind
from charts.layout.kinds import Content
from charts.layout.looks import look


def headless(fields: Sequence[Field]) -> int | None:
    """The one column without a heading among headed measures, when it repeats nothing.

    Further in its figures may be a measure whose heading was lost: it names the sizes there only
    when it can be nothing else.
    """
    bare = _bare(fields)
    first = next((n for n, field in enumerate(fields) if any(field.cells)), None)
    if bare is None or bare == first:
        return bare
    return bare if Content.of(fields[bare].cells).all_sure else None


def headless_inside(fields: Sequence[Field]) -> int | None:
    """Figures under no heading between two headed measures, where nothing else names the sizes.

    Behind the last heading a row may have slipped under it instead.
    """
    bare = _bare(fields)
    last = next((n for n, field in reversed(list(enumerate(fields))) if any(field.cells)), None)
    return bare if bare != last else None


def _bare(fields: Sequence[Field]) -> int | None:
    bare = [n for n, field in enumerate(fields) if not field.heads and any(field.cells)]
    values = [field for field in fields if field.kind is FieldKind.VALUES]
    if len(bare) != 1 or len(values) < 2 or fields[bare[0]].kind is not FieldKind.VALUES:
        return None
    texts = [cell[0].text.strip() for cell in fields[bare[0]].cells if cell]
    named = all(look(text).label is not None for text in texts)
    return bare[0] if named and len(set(texts)) == len(texts) else None
