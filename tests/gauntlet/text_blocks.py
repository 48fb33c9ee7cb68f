"""Tables in the text of a file as cells with their place in the text, so that one can be edited."""

from __future__ import annotations

import html
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import takewhile
from typing import Final

_TABLE: Final = re.compile(r"<table\b(?:(?!<table\b).)*?</table>", re.DOTALL | re.IGNORECASE)
_ROW: Final = re.compile(r"<tr\b.*?(?=<tr\b|</table>)", re.DOTALL | re.IGNORECASE)
_HTML_CELL: Final = re.compile(r"<(t[dh])\b[^>]*>(.*?)</\1>", re.DOTALL | re.IGNORECASE)
_SPANNED: Final = re.compile(r"(?:col|row)span\s*=\s*['\"]?(?!1\b)\d", re.IGNORECASE)
_BLANKS: Final = re.compile(r" {2,}(?=\S)")
_FENCE: Final = re.compile(r"[\s|:+\-=]*")


@dataclass(frozen=True, slots=True)
class Cell:
    """One cell: what stands in it, and where; ``outer`` is what goes when the cell is dropped."""

    text: str
    start: int
    end: int
    outer: tuple[int, int]


@dataclass(frozen=True, slots=True)
class Block:
    """Rows of equally many cells under one row of headings."""

    head: tuple[Cell, ...]
    body: tuple[tuple[Cell, ...], ...]

    def column(self, at: int) -> tuple[Cell, ...]:
        """The cells below a heading."""
        return tuple(row[at] for row in self.body)


def blocks_of(text: str, suffix: str) -> tuple[Block, ...]:
    """The plain tables of ``text``: those with joined cells or rows of unequal length are left."""
    if suffix == ".html":
        runs = [_html_rows(found) for found in _TABLE.finditer(text)]
    else:
        runs = list(_runs(_lines(text, suffix)))
    return tuple(block for run in runs if (block := _block(run)) is not None)


def edited(text: str, edits: Sequence[tuple[int, int, str]]) -> str:
    """``text`` with spans replaced; the spans do not overlap."""
    for start, end, new in sorted(edits, reverse=True):
        text = text[:start] + new + text[end:]
    return text


def figures(cell: Cell) -> bool:
    """Whether a cell holds a figure."""
    return any(one.isdigit() for one in cell.text)


def _block(rows: Sequence[tuple[Cell, ...]]) -> Block | None:
    """The first row that can be one of headings, with the rows of figures below it."""
    for at, head in enumerate(rows):
        body = tuple(takewhile(_of_figures, rows[at + 1 :]))
        named = sum(bool(cell.text) and not figures(cell) for cell in head[1:])
        if len(body) > 1 and named * 2 > len(head) - 1 and len({*map(len, (head, *body))}) == 1:
            return Block(head, body)
    return None


def _of_figures(row: Sequence[Cell]) -> bool:
    return sum(map(figures, row[1:])) * 2 >= len(row) - 1


def _html_rows(table: re.Match[str]) -> list[tuple[Cell, ...]]:
    if _SPANNED.search(table[0]):
        return []
    found = []
    for row in _ROW.finditer(table[0]):
        base = table.start() + row.start()
        cells = tuple(
            Cell(
                " ".join(html.unescape(re.sub(r"<[^>]*>", " ", one[2])).split()),
                base + one.start(2),
                base + one.end(2),
                (base + one.start(), base + one.end()),
            )
            for one in _HTML_CELL.finditer(row[0])
        )
        if cells:
            found.append(cells)
    return found


def _lines(text: str, suffix: str) -> Iterator[tuple[Cell, ...]]:
    delimiter = max(";,\t", key=text.count)
    at = 0
    for line in text.splitlines(keepends=True):
        bare = line.rstrip("\r\n")
        if suffix in (".csv", ".tsv"):
            yield _delimited(bare, at, delimiter)
        elif not (_FENCE.fullmatch(bare) and "-" in bare):
            yield _typed(bare, at)
        at += len(line)


def _typed(line: str, at: int) -> tuple[Cell, ...]:
    if "\t" in line:
        return _delimited(line, at, "\t")
    if line.count("|") >= 2:
        inner = re.fullmatch(r"(\s*\|?)(.*?)(\|?\s*)", line)
        return _delimited(inner[2], at + inner.end(1), "|") if inner else ()
    cells, start = [], len(line) - len(line.lstrip())
    for gap in [*_BLANKS.finditer(line, start), None]:
        end = gap.start() if gap else len(line.rstrip())
        after = gap.end() if gap else end
        cells.append(Cell(line[start:end], at + start, at + end, (at + start, at + after)))
        start = after
    return tuple(cells)


def _delimited(line: str, at: int, delimiter: str) -> tuple[Cell, ...]:
    field = re.compile(rf'("(?:[^"]|"")*"|[^{delimiter}]*)({re.escape(delimiter)}|$)')
    cells, start = [], 0
    while start <= len(line):
        found = field.match(line, start)
        if found is None:
            return ()
        bare = found[1].strip()
        left = start + found[1].index(bare) if bare else start
        text = bare[1:-1] if len(bare) > 1 and bare[0] == bare[-1] == '"' else bare
        cells.append(
            Cell(text, at + left, at + left + len(bare), (at + found.start(), at + found.end()))
        )
        start = found.end()
        if not found[2]:
            break
    return tuple(cells)


def _runs(lines: Iterator[tuple[Cell, ...]]) -> Iterator[list[tuple[Cell, ...]]]:
    run: list[tuple[Cell, ...]] = []
    for cells in lines:
        if run and len(cells) != len(run[0]):
            yield run
            run = []
        if len(cells) > 2:
            run.append(cells)
    yield run
