"""Lines of text laid out as a sheet: tables where they are sure, every other line as one cell."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from typing import Final

from charts.readers.captured.arranged import arranged_rows, arranged_table
from charts.readers.captured.arranging.tables import is_cell_a_line, is_counted_out
from charts.readers.captured.banded_columns import banded_column_table
from charts.readers.captured.bar_opened import bar_opened_table
from charts.readers.captured.bar_runs import bar_run_table
from charts.readers.captured.bars import bar_ended_table, barred_table, separated_table
from charts.readers.captured.blocks import block_table
from charts.readers.captured.bracket_paragraph import bracket_paragraph_table
from charts.readers.captured.bracket_sentence import bracket_sentence_table
from charts.readers.captured.bracketed_sizes import bracketed_size_table
from charts.readers.captured.brackets import bracket_table
from charts.readers.captured.cells import cell_table, streamed_table
from charts.readers.captured.choosing import choosing_table
from charts.readers.captured.clauses import clauses_table
from charts.readers.captured.crossed import crossed_table
from charts.readers.captured.gapped_heads import gapped_head_table
from charts.readers.captured.glued import glued_table
from charts.readers.captured.glued_ranges import glued_ranges_table
from charts.readers.captured.glued_rows import glued_rows_table
from charts.readers.captured.gutters import gutter_table
from charts.readers.captured.heads_apart import heads_apart
from charts.readers.captured.labels_last import labels_last_table
from charts.readers.captured.lines import Line, LineTable, narrowed
from charts.readers.captured.listed import listed_table
from charts.readers.captured.listed_across import listed_across_table
from charts.readers.captured.losses import goes_on, lossy_line
from charts.readers.captured.prose import prose_table
from charts.readers.captured.row_groups import begins_group, row_group_table
from charts.readers.captured.run_on import run_on_table
from charts.readers.captured.run_on_sizes import run_on_size_table
from charts.readers.captured.runs import run_below_sizes, run_table
from charts.readers.captured.sentences import sentence_table
from charts.readers.captured.series import series_table
from charts.readers.captured.shared_out.named_bands import with_bands
from charts.readers.captured.shared_out.table import shared_table
from charts.readers.captured.shared_out.two_names import with_two_names
from charts.readers.captured.shared_words import shared_words_table
from charts.readers.captured.single_blanks import (
    LINES_OF_TITLES,
    below_bands_table,
    single_column_table,
    single_row_table,
)
from charts.readers.captured.size_blocks import size_block_table
from charts.readers.captured.sizes_behind import sizes_behind_table
from charts.readers.captured.sizes_below import sizes_below_table
from charts.readers.captured.sizes_under import sizes_under_table
from charts.readers.captured.strokes import stroke_table
from charts.readers.captured.told import told_table
from charts.readers.captured.told_order import told_order_table
from charts.readers.captured.unit_seams import holds_seam, parted_at_units
from charts.readers.captured.unnamed_values import unnamed_values_table
from charts.readers.captured.value_runs import is_size, values_in
from charts.readers.captured.values import is_glued
from charts.readers.captured.wide_sizes import wide_sizes_table
from charts.readers.plain_text import tidy
from charts.readers.source import MOST_CELLS, too_many
from charts.sheet import Cell


def _prose_table(lines: Sequence[Line]) -> LineTable | None:
    """Names and their figures, unless whole rows of figures were taken for one figure each."""
    found = prose_table(lines)
    cells = (cell for row in found.rows for cell in row[1:]) if found is not None else ()
    return None if any(_is_row_of_figures(cell.text) for cell in cells) else found


def _is_row_of_figures(text: str) -> bool:
    """Whether a text is several values: ``82-86   66-70``, no ``86-91 cm  34-36 in`` of one."""
    values = values_in(text)
    plain = not any(map(str.isalpha, text)) and not any(sign in text for sign in _INCHES)
    return len(values) > _MOST_UNITS or (len(values) == _MOST_UNITS and plain)


def _arranged_rows(lines: Sequence[Line]) -> LineTable | None:
    """Rows put together by search, unless plain rows begin below the first headings."""
    found = arranged_rows(lines)
    if found is None:
        return None
    below = (
        find(lines[at:])
        for at in range(1, LINES_OF_TITLES)
        for find in (single_row_table, run_table)
    )
    return None if any(below) else found


_FINDERS: Final[tuple[Callable[[Sequence[Line]], LineTable | None], ...]] = (
    gutter_table,
    listed_table,
    size_block_table,
    bracketed_size_table,
    unnamed_values_table,
    sizes_behind_table,
    run_on_size_table,
    listed_across_table,
    told_order_table,
    shared_words_table,
    row_group_table,
    stroke_table,
    arranged_table,
    series_table,
    sizes_below_table,
    wide_sizes_table,
    glued_table,
    glued_rows_table,
    glued_ranges_table,
    run_on_table,
    bracket_table,
    bracket_sentence_table,
    bracket_paragraph_table,
    _prose_table,
    sentence_table,
    choosing_table,
    told_table,
    clauses_table,
    barred_table,
    bar_run_table,
    bar_opened_table,
    labels_last_table,
    bar_ended_table,
    separated_table,
    crossed_table,
    sizes_under_table,
    run_table,
    below_bands_table,
    banded_column_table,
    single_column_table,
    single_row_table,
    shared_table,
    block_table,
    cell_table,
    run_below_sizes,
    streamed_table,
    _arranged_rows,
    gapped_head_table,
)
_BY_COUNTING: Final = (run_table, block_table, cell_table, run_below_sizes, streamed_table)
"""What has nothing but the order of lines to tell the cells by."""
_BY_BLANKS: Final = (single_column_table, single_row_table, shared_table)
_BY_PLACE: Final = (gutter_table, banded_column_table, single_column_table)
"""What tells the columns by where they begin in the lines."""
_GLUED_TITLE: Final = re.compile(r"(?<=\d[./-]\d\d)(?=[^\W\d_]{4})")
"""Where a page's date ran into the title behind it: ``25/11/19GARMENT MEASUREMENTS``."""
_MOST_UNITS: Final = 2
"""So many values may be one, said in two units."""
_INCHES: Final = "\"”″“'’′"
_LINES_AHEAD: Final = 600  # a table of one cell a line has no more


@dataclass(slots=True)
class LineSheet:
    """Cells of a sheet under construction.

    ``tables`` counts the tables found, ``glued`` holds the lines whose fields ran together,
    ``lossy`` those of which a part came into no cell,
    ``unsure`` those whose cells can be put in order in two ways, and what differs;
    ``inferred`` tells that some table's rows and columns are to be compared with the source.
    """

    cells: dict[tuple[int, int], Cell] = field(default_factory=dict)
    line_of_row: dict[int, int] = field(default_factory=dict)
    line_of_cell: dict[tuple[int, int], int] = field(default_factory=dict)
    row_widths: dict[int, int] = field(default_factory=dict)
    rows: int = 0
    tables: int = 0
    inferred: bool = False
    glued: list[int] = field(default_factory=list)
    lossy: list[int] = field(default_factory=list)
    unsure: list[tuple[int, tuple[str, ...]]] = field(default_factory=list)

    @property
    def columns(self) -> int:
        """One more than the last column in use."""
        return max((column for _, column in self.cells), default=-1) + 1

    @property
    def ends_in_size(self) -> bool:
        """Whether the last row is a size alone: what follows it may be its figures."""
        text = self.cells.get((self.rows - 1, 0), Cell("")).text
        return self.rows - 1 not in self.row_widths and is_size(text)

    def add_row(self, texts: Sequence[tuple[str, int]], line: int) -> None:
        """Append a row of (text, line) cells that stands at ``line``."""
        for column, (text, its_line) in enumerate(texts):
            if text := tidy(text):
                self.cells[self.rows, column] = Cell(text)
                self.line_of_cell[self.rows, column] = its_line
        self.line_of_row[self.rows] = line
        if len(texts) > 1:
            self.row_widths[self.rows] = len(texts)
        self.rows += 1
        if len(self.cells) > MOST_CELLS:
            raise too_many(len(self.cells))


def laid_out(lines: Sequence[Line]) -> LineSheet:
    """The lines as a sheet, from top to bottom."""
    sheet = LineSheet()
    narrow = narrowed(lines)
    parted = parted_at_units(narrow)
    at = 0
    last: LineTable | None = None  # ends right above
    while at < len(lines):
        line = lines[at]
        ahead = slice(at, at + _LINES_AHEAD)
        first = begins_group(lines, at)
        table = _table_at(narrow[ahead], lines[ahead], first) if line.text.strip() else None
        if parted is not None and line.text.strip() and (table is None or holds_seam(table)):
            table = _parted_table(parted[ahead], first) or table
        if table is None:
            sheet.add_row([(_GLUED_TITLE.sub(" ", line.text), line.number)], line.number)
            if is_glued(line.text):
                sheet.glued.append(line.number)
            elif last is not None and goes_on(line, last):
                sheet.lossy.append(line.number)
            at, last = at + 1, None
            continue
        _head(sheet, lines[:at], table)
        strayed = table.inferred or (sheet.ends_in_size and is_cell_a_line(table))
        for row in table.rows:
            sheet.add_row([(cell.text, cell.line) for cell in row], row[-1].line)
        if table.rivals:
            sheet.unsure.append((table.rows[0][0].line, table.rivals))
        elif table.lost:
            sheet.glued.append(table.rows[0][0].line)
        else:
            sheet.tables += 1
        sheet.inferred = sheet.inferred or strayed
        if not table.lost and not table.rivals and (lossy := lossy_line(lines[at:], table)):
            sheet.lossy.append(lossy)
        at, last = at + table.used, table
    return sheet


def _head(sheet: LineSheet, before: Sequence[Line], table: LineTable) -> None:
    """Part the last line above a table into its headings where a blank line stands between."""
    found = heads_apart(before, table)
    if found is None or sheet.rows < (back := found[1] + 1):
        return
    row, number = sheet.rows - back, before[-back].number
    if row in sheet.row_widths or sheet.line_of_row[row] != number:
        return
    for column, text in enumerate(found[0]):
        if text:
            sheet.cells[row, column] = Cell(text)
            sheet.line_of_cell[row, column] = number
        else:
            sheet.cells.pop((row, column), None)
    sheet.row_widths[row] = len(found[0])


def _parted_table(lines: Sequence[Line], first: bool) -> LineTable | None:
    """The table of lines whose cells were parted behind their units, which a person compares."""
    table = _table_at(lines, lines, first)
    return None if table is None or holds_seam(table) else replace(table, inferred=True)


def _table_at(lines: Sequence[Line], as_placed: Sequence[Line], first: bool) -> LineTable | None:
    """The table that begins here; ``first`` tells whether rows between blank lines may."""
    for find in _FINDERS:
        if find is row_group_table and not first:
            continue
        table = find(as_placed if find in _BY_PLACE else lines)
        if table is not None:
            counted = find in _BY_COUNTING and is_counted_out(table)
            table = with_two_names(with_bands(table)) if find in _BY_BLANKS else table
            return replace(table, inferred=table.inferred or counted)
    return None
