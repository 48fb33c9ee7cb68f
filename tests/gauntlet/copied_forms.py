"""The cells of a table written in other forms: what a shop does that copies a chart by hand."""

from __future__ import annotations

import csv
import html as markup
import io
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Final

import openpyxl

Row = list[str]


@dataclass(frozen=True, slots=True)
class Drawn:
    """One table as a person sees it: the words above it, its rows of cells, the words below."""

    above: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    below: tuple[str, ...]

    @property
    def is_full(self) -> bool:
        """Whether no cell of a row that holds any is blank."""
        return all(all(row) for row in self.rows if any(row))

    @property
    def is_one_block(self) -> bool:
        """Whether no blank row parts it."""
        return all(any(row) for row in self.rows)


Copy = tuple[str, bytes]
"""The name of a file and what is in it."""
Form = Callable[[Sequence[Drawn]], Copy | None]


def _parts(tables: Sequence[Drawn]) -> Iterator[tuple[str, Sequence[Sequence[str]]]]:
    """What stands on the sheet from top to bottom, words said twice once: (kind, rows)."""
    said: set[str] = set()

    def fresh(words: Iterable[str]) -> list[list[str]]:
        new = [word for word in dict.fromkeys(words) if word not in said]
        said.update(new)
        return [[word] for word in new]

    for table in tables:
        yield "words", fresh(table.above)
        yield "table", table.rows
        yield "words", fresh(table.below)


def _lines(tables: Sequence[Drawn]) -> Iterator[Row]:
    for kind, rows in _parts(tables):
        yield from map(list, rows)
        if kind == "table":
            yield []


def _separated(separator: str, name: str) -> Form:
    def copied(tables: Sequence[Drawn]) -> Copy:
        text = io.StringIO()
        csv.writer(text, delimiter=separator, lineterminator="\n").writerows(_lines(tables))
        return name, text.getvalue().encode()

    return copied


def _workbook(tables: Sequence[Drawn]) -> Copy:
    book = openpyxl.Workbook()
    sheet = book.worksheets[0]
    for at, row in enumerate(_lines(tables), start=1):
        for column, text in enumerate(row, start=1):
            if text:
                cell = sheet.cell(at, column)
                cell.value = text
                cell.data_type = "s"  # "=86" and "1/2" are what is printed, no formula and no date
    data = io.BytesIO()
    book.save(data)
    return "copy.xlsx", data.getvalue()


def _page(tables: Sequence[Drawn]) -> Copy:
    lines = []
    for kind, rows in _parts(tables):
        if kind == "words":
            lines += [f"<p>{markup.escape(row[0])}</p>" for row in rows]
            continue
        cells = ["".join(f"<td>{markup.escape(text)}</td>" for text in row) for row in rows]
        lines += ["<table>", *(f"<tr>{row}</tr>" for row in cells), "</table>"]
    return "copy.html", "\n".join(lines).encode()


def _markdown(tables: Sequence[Drawn]) -> Copy:
    lines = []
    for kind, rows in _parts(tables):
        if kind == "words":
            lines += [line for row in rows for line in (row[0], "")]
            continue
        drawn = ["| " + " | ".join(one.replace("|", r"\|") for one in row) + " |" for row in rows]
        lines += [drawn[0], "|" + "---|" * len(rows[0]), *drawn[1:], ""]
    return "copy.md", "\n".join(lines).encode()


def _printed(
    place: Callable[[str, int, int], str],
) -> Form:
    """Columns of blanks; ``place`` puts a text of a column into its width."""

    def copied(tables: Sequence[Drawn]) -> Copy:
        lines = []
        for kind, rows in _parts(tables):
            if kind == "words":
                lines += [row[0] for row in rows]
                continue
            wide = [max(map(len, column)) + 2 for column in zip(*rows, strict=True)]
            lines += [
                "".join(place(text, at, wide[at]) for at, text in enumerate(row)).rstrip()
                for row in rows
            ]
            lines.append("")
        return "copy.txt", "\n".join(lines).encode()

    return copied


def _left(text: str, _column: int, width: int) -> str:
    return text.ljust(width)


def _right(text: str, column: int, width: int) -> str:
    return text.rjust(width) if column else text.ljust(width)


def _centre(text: str, _column: int, width: int) -> str:
    return text.center(width)


def _in_lines(write: Callable[[Sequence[str]], Iterable[str]], *, full: bool) -> Form:
    """Text of which ``write`` makes the lines of a row; None where blank cells would be lost."""

    def copied(tables: Sequence[Drawn]) -> Copy | None:
        if full and not all(table.is_full for table in tables):
            return None
        lines: list[str] = []
        for kind, rows in _parts(tables):
            for row in rows:
                lines += row if kind == "words" else write(row)
            if kind == "table":
                lines.append("")
        return "copy.txt", "\n".join(lines).encode()

    return copied


def _in_blanks(row: Sequence[str]) -> Iterable[str]:
    return [" ".join(filter(None, row))]


def _cell_a_line(row: Sequence[str]) -> Iterable[str]:
    return row


def _block(row: Sequence[str]) -> Iterable[str]:
    return [*filter(None, row), ""]


def _turned(form: Form) -> Form:
    def copied(tables: Sequence[Drawn]) -> Copy | None:
        if not all(table.is_one_block for table in tables):
            return None
        return form(
            [Drawn(one.above, tuple(zip(*one.rows, strict=True)), one.below) for one in tables]
        )

    return copied


SAME_CELLS: Final[dict[str, Form]] = {
    "commas": _separated(",", "copy.csv"),
    "semicolons": _separated(";", "copy.csv"),
    "tabs": _separated("\t", "copy.tsv"),
    "workbook": _workbook,
}
"""Forms in which every cell keeps its row and column: they can only be read the same."""

FORMS: Final[dict[str, Form]] = {
    **SAME_CELLS,
    "page": _page,
    "markdown": _markdown,
    "left": _printed(_left),
    "right": _printed(_right),
    "centred": _printed(_centre),
    "turned": _turned(_page),
    "turned-commas": _turned(_separated(",", "copy.csv")),
    "blanks": _in_lines(_in_blanks, full=True),
    "blanks-lost": _in_lines(_in_blanks, full=False),
    "cell-a-line": _in_lines(_cell_a_line, full=True),
    "blocks": _in_lines(_block, full=False),
}
