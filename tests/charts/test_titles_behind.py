"""Names that stand below their tables are not believed for the next table without a question."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from tests.charts.read_text import questions, ranges

_FIRST = "Size | Height (cm) | Chest (cm)\nS | 165-170 | 88-92\nM | 170-175 | 93-97\n"
_SECOND = "Size | Height (cm) | Chest (cm)\nS | 155-160 | 80-84\nM | 160-165 | 85-89\n"


def read(*parts: str) -> list[str]:
    text = "\n".join(parts).replace(" | ", "\t")
    reading = read_bytes(text.encode(), "a.txt")
    below = [one.id for one in reading.findings if one.values.get("case") == "below"]
    assert all(ident in one.findings for ident in below for one in ranges(reading))
    assert len(ranges(reading)) == 8
    return questions(reading)


@pytest.mark.parametrize("last", ["Women", "Women's guide", "Metric"])
def test_a_name_left_over_below_the_last_table_shows_where_names_stand(last: str) -> None:
    assert read(_FIRST, "Men", _SECOND, last) == ["columns-shifted"]


@pytest.mark.parametrize(
    "parts",
    [
        (_FIRST, "Women", _SECOND),
        (_FIRST, "Women", _SECOND, "All measures in cm"),
        (_FIRST, "Women", _SECOND, "Kind regards"),
        ("Men", _FIRST, "Women", _SECOND, "Size guide"),
        ("Size guide", _FIRST, "Women", _SECOND, "Size guide"),
        (_FIRST, "Pullovers", _SECOND, "Size guide"),
    ],
)
def test_what_stands_below_an_ordinary_page_is_no_name(parts: tuple[str, ...]) -> None:
    assert read(*parts) == []
