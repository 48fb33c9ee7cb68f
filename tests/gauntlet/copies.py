"""Write the tables that have cells in other forms, and see whether they are still read.

``python tests/gauntlet/copies.py [--form F ...] [--only WORD] [--show] [--keep FOLDER]``.

A copy can lose what a table says without words: a sheet's or file's name, hidden cells, spans,
comments. What is silently wrong in a copy is therefore not always a fault of the importer; it is
always worth a look.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Final

import score
from copied_forms import FORMS, Drawn
from judging import STRUCTURAL, Expected, Outcome, Verdict, judge
from workbooks import WORKBOOKS, workbook_bytes

from charts.answering import Answering
from charts.answers_text import opened
from charts.findings import FindingLog
from charts.importer import read_bytes
from charts.json_form import document
from charts.schema import FileReading
from charts.sheet import Addressing, Sheet

MOST_ROWS: Final = 120
HEAD: Final = (
    f"{'form':<15}{'tables':>7}{'values':>8}{'right':>8}{'asked':>8}{'silent':>8}{'as met':>8}"
)


@dataclass(frozen=True, slots=True)
class Case:
    """A table that has cells and is read without a silent error."""

    expected: Expected
    drawn: tuple[Drawn, ...]
    verdict: Verdict


@dataclass(frozen=True, slots=True)
class Copied:
    """What came of one copy."""

    form: str
    case: Case
    verdict: Verdict

    @property
    def silent(self) -> int:
        """Values that are wrong or invented, or lost where nothing is asked about the whole."""
        spoken = any(one["code"] in STRUCTURAL for one in self.verdict.questions)
        lost = 0 if spoken else self.verdict.count(Outcome.MISSING)
        return self.verdict.count(Outcome.WRONG) + lost + len(self.verdict.extra)


def drawn_tables(data: bytes, name: str) -> tuple[Drawn, ...]:
    """The tables of a file as a person sees them; none where it has no cells or hides some."""
    sheets = opened(data, name, Answering(), FindingLog())
    if any(one.addressing in (Addressing.LINE, Addressing.PAGE) or one.hidden for one in sheets):
        return ()
    if any(len(one.filled_rows) > MOST_ROWS for one in sheets):
        return ()
    return tuple(_drawn(one) for one in sheets if one.cells)


def _drawn(sheet: Sheet) -> Drawn:
    columns = sorted({column for _, column in sheet.cells})
    rows: list[tuple[str, ...]] = []
    before = sheet.filled_rows[0]
    for row in sheet.filled_rows:
        if row > before + 1:
            rows.append(("",) * len(columns))
        rows.append(tuple(_printed(sheet, row, column) for column in columns))
        before = row
    named = (sheet.name,) if sheet.addressing is Addressing.SHEET else ()
    return Drawn(_tidy((*named, *sheet.context)), tuple(rows), _tidy(sheet.notes))


def _printed(sheet: Sheet, row: int, column: int) -> str:
    cell = sheet.cells.get((row, column))
    if cell is None or cell.shared_from not in (None, (row, column)):
        return ""
    return " ".join(cell.text.split())


def _tidy(words: Sequence[str]) -> tuple[str, ...]:
    return tuple(" ".join(one.split()) for one in words)


def cases(only: str = "") -> Iterator[Case]:
    """The tables that can be copied, whose names hold ``only``."""
    for expected in score.expectations(only):
        data = source_of(expected)
        drawn = drawn_tables(data, expected.source)
        verdict = judge(expected, _json(read_bytes(data, expected.source))) if drawn else None
        if verdict is not None and verdict.values and not verdict.silent:
            yield Case(expected, drawn, verdict)


def source_of(expected: Expected) -> bytes:
    """The bytes of a table."""
    if expected.name in WORKBOOKS:
        return workbook_bytes(expected.name)
    return (expected.folder / expected.source).read_bytes()


def _json(reading: FileReading) -> dict[str, object]:
    return dict(document([reading])["files"][0])


def copied(case: Case, form: str, keep: Path | None = None) -> Copied | None:
    """Write one table in a form and judge what is read of it; None where it cannot be."""
    written = FORMS[form](case.drawn)
    if written is None:
        return None
    name, data = written
    if keep is not None:
        keep.mkdir(parents=True, exist_ok=True)
        (keep / f"{case.expected.name}.{form}{Path(name).suffix}").write_bytes(data)
    entries = [
        {**{key: one[key] for key in one if key != "place"}, "ask": one.get("ask") or "may"}
        for one in case.expected.entries
    ]
    due = replace(case.expected, entries=tuple(entries), clean=False)
    return Copied(form, case, judge(due, _json(read_bytes(data, name))))


def _line(form: str, several: Sequence[Copied]) -> str:
    verdicts = [one.verdict for one in several]
    met = score.total([one.case.verdict for one in several])
    made = score.total(verdicts)
    asked = made.right_or_asked - made.right
    return (
        f"{form:<15}{made.files:>7}{made.values:>8}{made.right:>8.1f}{asked:>8.1f}"
        f"{sum(one.silent for one in several):>8}{met.right:>8.1f}"
    )


def main(arguments: Sequence[str]) -> int:
    """Print a line a form, and with ``--show`` every copy that is read less well."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--form", nargs="*", default=list(FORMS), choices=list(FORMS))
    parser.add_argument("--only", default="", help="tables whose name holds this")
    parser.add_argument("--show", action="store_true", help="every copy that is read less well")
    parser.add_argument("--keep", type=Path, help="a folder for the copies")
    given = parser.parse_args(arguments)
    several = list(cases(given.only))
    say = sys.stdout.write
    say(HEAD + "\n")
    for form in given.form:
        done = [one for case in several if (one := copied(case, form, given.keep)) is not None]
        say(_line(form, done) + "\n")
        for one in done if given.show else ():
            before, after = (of.count(Outcome.RIGHT) for of in (one.case.verdict, one.verdict))
            if one.silent or after < before:
                name = one.case.expected.name
                say(f"    {name}: right {before} -> {after}, silent {one.silent}\n")
    return 0


if __name__ == "__main__":
    raise SystemExit(main(sys.argv[1:]))
