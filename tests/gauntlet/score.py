"""Score the importer on the gauntlet: ``python tests/gauntlet/score.py [--only WORD] [--show]``."""

from __future__ import annotations

import argparse
import statistics
import sys
import tempfile
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

HERE: Final = Path(__file__).resolve().parent
for folder in (HERE, HERE.parents[1]):
    if str(folder) not in sys.path:
        sys.path.insert(0, str(folder))

import more_workbooks  # noqa: E402, F401 - it adds its builders to WORKBOOKS
from judging import (  # noqa: E402 - the folder is put on the path just above
    Expected,
    Json,
    Judged,
    Outcome,
    Value,
    Verdict,
    judge,
    load_expected,
)
from workbooks import WORKBOOKS, workbook_bytes  # noqa: E402 - found through the path set above


@dataclass(frozen=True, slots=True)
class Total:
    """The figures of several files together; shares are per cent."""

    files: int
    values: int
    right: float
    right_or_asked: float
    silent: int
    median_questions: float
    clean: int
    clean_asked: int


def expectations(only: str = "") -> tuple[Expected, ...]:
    """Every expectation whose name holds ``only``, open ones first."""
    paths = [*HERE.glob("open*/*.expected.json"), *HERE.glob("closed*/*.expected.json")]
    found = (load_expected(path) for path in paths if only in path.name)
    return tuple(sorted(found, key=lambda one: (one.closed, one.name)))


def read_json(path: Path, name: str) -> dict[str, Any]:
    """Read one file in process and give its element of ``files`` of ``read --json``."""
    from charts.importer import read_file
    from charts.json_form import document

    return dict(document([read_file(path, name)])["files"][0])


def verdicts(only: str = "") -> Iterator[Verdict]:
    """Read and judge every table whose name holds ``only``."""
    with tempfile.TemporaryDirectory() as scratch:
        for expected in expectations(only):
            path = expected.folder / expected.source
            if expected.name in WORKBOOKS:
                path = Path(scratch) / expected.source
                path.write_bytes(workbook_bytes(expected.name))
            yield judge(expected, read_json(path, expected.source))


def total(of: Sequence[Verdict]) -> Total:
    """Add up the verdicts of several files."""
    values = sum(one.values for one in of)
    right = sum(one.count(Outcome.RIGHT) for one in of)
    asked = sum(one.count(Outcome.ASKED) for one in of)
    clean = [one for one in of if one.expected.clean]
    return Total(
        files=len(of),
        values=values,
        right=100 * right / max(values, 1),
        right_or_asked=100 * (right + asked) / max(values, 1),
        silent=sum(one.silent for one in of),
        median_questions=statistics.median(len(one.questions) for one in of) if of else 0,
        clean=len(clean),
        clean_asked=sum(bool(one.unnecessary) for one in clean),
    )


def _lines(one: Verdict) -> str:
    return (
        f"{one.expected.name:<34}{'clean' if one.expected.clean else '':<6}{one.values:>6}"
        f"{one.count(Outcome.RIGHT):>6}{one.count(Outcome.ASKED):>6}"
        f"{one.count(Outcome.WRONG):>6}{one.count(Outcome.MISSING):>8}{len(one.extra):>6}"
        f"{len(one.questions):>6}{len(one.unnecessary):>7}"
    )


HEAD: Final = (
    f"{'file':<40}{'values':>6}{'right':>6}{'asked':>6}{'wrong':>6}{'missing':>8}{'extra':>6}"
    f"{'quest.':>7}{'unnec.':>6}"
)


def _differences(one: Verdict) -> Iterable[str]:
    shown = {Outcome.ASKED, Outcome.WRONG, Outcome.MISSING}
    for judged in one.judged:
        if judged.outcome in shown:
            codes = _codes(one, judged.value)
            yield f"    {judged.outcome:<8}{_entry(judged)}: {judged.why}{codes}"
        elif _misplaced(judged):
            yield f"    place   {_entry(judged)}: read at {_place(judged.value)}"
    for value in one.extra:
        reading = value.reading
        yield (
            f"    extra   {value.label} {reading['dimension']} {reading['published']!r} "
            f"under {reading['heading']!r} at {reading['place']}"
        )
    for finding in one.findings:
        mark = " (unnecessary)" if finding in one.unnecessary else ""
        where = f"{finding['code']} at {finding['place']}"
        yield f"    {finding['level']}{mark} {where}: {finding['text']}"


def _entry(judged: Judged) -> str:
    entry: Json = judged.entry
    return f"{entry.get('size')} {entry['dimension']} at {entry.get('place', '?')}"


def _codes(one: Verdict, value: Value | None) -> str:
    if value is None or not value.questions:
        return ""
    codes = sorted(item["code"] for item in one.questions if item["id"] in value.questions)
    return f" [{', '.join(codes)}]"


def _place(value: Value | None) -> str:
    return str(value.reading["place"]) if value is not None else ""


def _misplaced(judged: Judged) -> bool:
    due = judged.entry.get("place")
    return judged.value is not None and due is not None and due != _place(judged.value)


def _total_line(name: str, figures: Total) -> str:
    return (
        f"{name}: {figures.files} files, {figures.values} values, right {figures.right:.1f} %, "
        f"right or asked {figures.right_or_asked:.1f} %, silently wrong {figures.silent}, "
        f"median questions {figures.median_questions:g}, "
        f"clean charts with a question {figures.clean_asked} of {figures.clean}"
    )


def main(arguments: Sequence[str]) -> int:
    """Print a line a file and the totals; 1 when anything is silently wrong."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--only", default="", help="files whose name holds this")
    parser.add_argument("--show", action="store_true", help="every difference with its place")
    given = parser.parse_args(arguments)
    done = []
    say = sys.stdout.write
    say(HEAD + "\n")
    for one in verdicts(given.only):
        done.append(one)
        say(_lines(one) + "\n")
        if given.show:
            say("".join(line + "\n" for line in _differences(one)))
    opened = [one for one in done if not one.expected.closed]
    closed = [one for one in done if one.expected.closed]
    for name, part in (("open", opened), ("closed", closed), ("all", done)):
        say(_total_line(name, total(part)) + "\n")
    return int(total(done).silent > 0)


if __name__ == "__main__":
    raise SystemExit(main(sys.argv[1:]))
