"""Damage tables that are read rightly, and count what is then wrong and not asked.

``python tests/gauntlet/damage.py [--kind K] [--sample N] [--seed S] [--folder F ...] [--show]``.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from random import Random
from typing import Final

import score
from damage_case import Case, Damaged
from damages import KINDS
from joined_files import joined
from judging import STRUCTURAL, Expected, Judged, Outcome, Verdict, judge, load_expected

TEXTS: Final = frozenset({".html", ".md", ".csv", ".tsv", ".txt"})
LARGEST: Final = 60_000
"""Bytes of a file: a larger one takes long to read and shows nothing else."""
HEAD: Final = (
    f"{'kind':<14}{'tables':>8}{'hit':>6}{'values':>8}{'right':>8}{'asked':>8}{'silent':>8}"
)


@dataclass(frozen=True, slots=True)
class Tried:
    """What came of one damaged table."""

    case: Case
    damaged: Damaged
    verdict: Verdict
    wrong: tuple[str, ...]


class Cases:
    """The tables that are read without a silent error, read when they are first needed."""

    def __init__(self, folders: Sequence[Path]) -> None:
        found = (path for folder in folders for path in folder.glob("*.expected.json"))
        self.expected = sorted(map(load_expected, found), key=lambda one: one.name)
        self._known: dict[str, Case | None] = {}

    def case(self, expected: Expected) -> Case | None:
        """The table, or None where it is no text or is not read rightly as it stands."""
        if expected.name not in self._known:
            self._known[expected.name] = _case(expected)
        return self._known[expected.name]


def _case(expected: Expected) -> Case | None:
    path = expected.folder / expected.source
    if path.suffix not in TEXTS or not path.is_file() or path.stat().st_size > LARGEST:
        return None
    try:
        text = path.read_bytes().decode("utf-8")
    except UnicodeDecodeError:
        return None  # an edit could change how the whole file is decoded
    read = score.read_json(path, expected.source)
    verdict = judge(expected, read)
    also: dict[str, list[str]] = {}
    for chart in read["charts"]:
        for size in chart["sizes"]:
            also.setdefault(size["label"], []).extend(one["label"] for one in size["also"])
    if verdict.silent or not verdict.judged:
        return None
    return Case(expected, text, path.suffix, verdict, len(read["charts"]), also)


def tried(cases: Cases, kind: str, sample: int, seed: str) -> Iterator[Tried]:
    """Damage ``sample`` tables, in an order that the seed decides."""
    chance = Random(f"{kind} {seed}")  # noqa: S311 - a sample of invented tables
    several = chance.sample(cases.expected, len(cases.expected))
    done = 0
    for expected in several:
        case = cases.case(expected)
        own = Random(f"{kind} {seed} {expected.name}")  # noqa: S311 - as above
        damaged = case and (
            joined(case, own, [one for one in several if one is not expected], cases.case)
            if kind == "joined"
            else KINDS[kind](case, own)
        )
        if case is None or damaged is None or damaged.text == case.text:
            continue
        yield _judged(case, damaged)
        done += 1
        if done == sample:
            return


def _judged(case: Case, damaged: Damaged) -> Tried:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / case.expected.source
        path.write_bytes(damaged.text.encode("utf-8"))
        read = score.read_json(path, case.expected.source)
    due = replace(case.expected, entries=tuple(damaged.entries), clean=False)
    verdict = judge(due, read)
    spoken = any(one["code"] in STRUCTURAL for one in verdict.questions)
    doubted = {one.value.label for one in verdict.judged if one.value and one.value.questions}
    wrong = [
        f"{one.entry['size']} {one.entry['dimension']}: {one.why} {_read(one)}"
        for one in verdict.judged
        if one.outcome is Outcome.WRONG
        or (one.outcome is Outcome.MISSING and not spoken and not _in(doubted, one))
    ]
    wrong += [
        f"extra {one.label} {one.reading['dimension']} {one.reading['published']!r} "
        f"under {one.reading['heading']!r} ({one.band}, {one.reading['basis']})"
        for one in verdict.extra
    ]
    return Tried(case, damaged, verdict, tuple(wrong))


def _in(doubted: set[str | None], one: Judged) -> bool:
    """Whether another value of its size is asked about, and a person so looks at the row."""
    size = one.entry["size"]
    return bool(doubted & set(size if isinstance(size, list) else [size]))


def _read(one: Judged) -> str:
    if one.value is None:
        return ""
    reading = one.value.reading
    return f"(read {reading['published']!r} under {reading['heading']!r} at {reading['place']})"


def line(kind: str, several: Sequence[Tried]) -> str:
    """The figures of one kind of damage."""
    values = sum(one.verdict.values for one in several)
    right = sum(one.verdict.count(Outcome.RIGHT) for one in several)
    silent = sum(len(one.wrong) for one in several)
    hit = sum(bool(one.wrong) for one in several)
    return (
        f"{kind:<14}{len(several):>8}{hit:>6}{values:>8}{right:>8}"
        f"{max(values - right - silent, 0):>8}{silent:>8}"
    )


def main(arguments: Sequence[str]) -> int:
    """Print a line a kind of damage; with --show what is silently wrong."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--kind", default="", choices=["", *KINDS, "joined"])
    parser.add_argument("--sample", type=int, default=60, help="tables a kind")
    parser.add_argument("--seed", default="1")
    parser.add_argument("--folder", type=Path, nargs="*", default=[], help="further tables")
    parser.add_argument("--show", action="store_true", help="every value that is silently wrong")
    given = parser.parse_args(arguments)
    own = [path for path in score.HERE.iterdir() if path.name.startswith(("open", "closed"))]
    cases = Cases([*own, *given.folder])
    say = sys.stdout.write
    say(HEAD + "\n")
    for kind in [given.kind] if given.kind else [*KINDS, "joined"]:
        several = list(tried(cases, kind, given.sample, given.seed))
        say(line(kind, several) + "\n")
        sys.stdout.flush()
        for one in several if given.show else ():
            if one.wrong:
                say(f"  {one.case.expected.name}: {one.damaged.what}\n")
                say("".join(f"      {wrong}\n" for wrong in one.wrong[:6]))
    return 0


if __name__ == "__main__":
    raise SystemExit(main(sys.argv[1:]))
