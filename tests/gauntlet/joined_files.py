"""Two files of one kind put after each other, each under its own title."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from random import Random
from typing import Any, Final

from damage_case import BASES, Case, Damaged
from judging import Expected

_TITLES: Final = (
    ("Men", {"band": "men"}, "Women", {"band": "women"}),
    ("Ladies' vests", {"band": "women"}, "Kids' vests", {"band": "kids"}),
    ("Herren", {"band": "men"}, "Damen", {"band": "women"}),
    ("", {}, "Women", {"band": "women"}),
    ("Homme", {"band": "men"}, "Enfant", {"band": "kids"}),
    ("Body measurements", {"basis": ["body"]}, "Garment measurements", {"basis": ["finished"]}),
    ("Garment measurements", {"basis": ["finished"]}, "Body measurements", {"basis": ["body"]}),
    ("Körpermaße", {"basis": ["body"]}, "Fertigmaße", {"basis": ["finished"]}),
)


def joined(
    case: Case, chance: Random, others: Sequence[Expected], find: Callable[[Expected], Case | None]
) -> Damaged | None:
    """``case`` and another table like it, neither of which has a title, a band or a basis."""
    if not _plain(case):
        return None
    for expected in chance.sample(list(others), len(others)):
        if not expected.source.endswith(case.suffix):
            continue
        other = find(expected)
        if other is not None and _plain(other) and _marks(other) == _marks(case):
            break
    else:
        return None
    first, of_first, second, of_second = chance.choice(_TITLES)
    text = _titled(case, first) + "\n\n" + _titled(other, second)
    entries = [*_entries(case, of_first), *_entries(other, of_second)]
    return Damaged(text, entries, f"{first!r}, then {second!r}: {other.expected.name}")


def _plain(case: Case) -> bool:
    titled = re.search(r"<h[1-6]|^#|<caption|<title", case.text, re.MULTILINE | re.IGNORECASE)
    return (
        titled is None
        and case.charts == 1
        and all(
            one.value is not None
            and one.value.band is None
            and one.value.reading["basis"] in BASES[:2]
            for one in case.verdict.judged
        )
    )


def _marks(case: Case) -> str:
    """What separates the cells of a delimited file."""
    return max(";,\t", key=case.text.count) if case.suffix in (".csv", ".tsv") else ""


def _titled(case: Case, title: str) -> str:
    text = case.text.strip()
    if not title:
        return text
    if case.suffix == ".html":
        return f"<h2>{title}</h2>\n{text}"
    return f"## {title}\n\n{text}" if case.suffix == ".md" else f"{title}\n{text}"


def _entries(case: Case, said: dict[str, Any]) -> list[dict[str, Any]]:
    found = []
    for one in case.entries():
        free = one["dimension"] in ("height", "weight", "age", "other")
        found.append({**one, **({"basis": BASES} if free and "basis" in said else said)})
    return found
