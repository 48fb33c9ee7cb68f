"""Markdown to sheets: its tables with bars, and the headings and sentences around them.

Tables of blocks of code, and those without the rule below their heads, are tables all the same.
Tables are numbered in the order of the text, so a place is always ``table 2!C4``, also where
there is one table only.
"""

from __future__ import annotations

import html
import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Final

from charts.findings import FindingLog
from charts.readers.captured.bars import is_rule
from charts.readers.captured.lines import numbered
from charts.readers.captured.values import is_value
from charts.readers.html_lines import sheet_of_words
from charts.readers.html_tables import said_in_comment
from charts.readers.markdown_blocks import (
    MOST_LINES_OF_BLOCK,
    bars_without_rule,
    block_of_code,
    is_fence,
    is_indented,
)
from charts.readers.page_outline import SET_OFF, Entry, PageTable, Part, sheets_of
from charts.readers.plain_text import tidy
from charts.readers.raised_text import Piece, on_one_line
from charts.readers.source import (
    LONGEST_CELL,
    MARKDOWN_ENDINGS,
    MOST_CELLS,
    Claim,
    Reader,
    Source,
    too_many,
)
from charts.readers.title_lines import is_name
from charts.readers.word_tables import page_table, with_word_tables
from charts.sheet import Cell, Sheet

_ALIGNMENT: Final = re.compile(r"\s*\|?\s*:?-{1,200}:?\s*(?:\|\s*:?-{1,200}:?\s*)*\|?\s*")
_HEADING: Final = re.compile(r" {0,3}(#{1,6})\s+(.*?)\s*#*\s*")
_BOLD: Final = re.compile(r"\s*(?:\*\*[^*]+\*\*|__[^_]+__)\s*")
_UNDERLINE: Final = re.compile(r" {0,3}(=+|-{2,})\s*")
_COMMENT: Final = re.compile(r"\s*<!--(.*?)-->\s*", re.DOTALL)
_BAR: Final = re.compile(r"(?<!\\)\|")
_BREAK: Final = re.compile(r"<br\s*/?>", re.IGNORECASE)
_LEVEL: Final = re.compile(r"<(su[bp])>(.*?)</\1>", re.IGNORECASE)
_TAG: Final = re.compile(r"</?[a-zA-Z][^<>]*>")
_LINK: Final = re.compile(r"!?\[([^\]]*)\]\([^)]*\)")
_STRUCK: Final = re.compile(r"~~(.+?)~~")
_EMPHASIS: Final = re.compile(
    r"(?<!\\)(\*\*|__|`)(?=\S)(.+?)(?<=\S)\1|(?<![\\\w*])\*(?=\S)([^*]+)\*"
)
_ESCAPED: Final = re.compile(r"\\([\\`*_{}\[\]()#+.!|~<>\-])")


def _claims(source: Source) -> Claim:
    lines = source.text[:200_000].splitlines()
    found = any(_begins_table(lines, at) for at in range(len(lines) - 1))
    if found:
        return Claim.CERTAIN
    return Claim.LIKELY if lines and source.ending in MARKDOWN_ENDINGS else Claim.NONE


def _open(source: Source, log: FindingLog) -> tuple[Sheet, ...]:
    text = source.opened_text(log)
    lines = [line.text for line in numbered(text)]
    outline = list(_outline(lines))
    sheets = sheets_of(with_word_tables(outline)) or sheet_of_words(outline, source.name, log)
    if not sheets:
        log.add("no-table", source.name, name=source.name)
    return sheets


def _begins_table(lines: Sequence[str], at: int) -> bool:
    heading, rule = lines[at], lines[at + 1] if at + 1 < len(lines) else ""
    if "|" not in heading or "|" not in rule or len(rule) > LONGEST_CELL:
        return False
    names = _fields(heading)
    if len(names) == 1 and is_value(names[0]):
        return False  # "33 |" over "- |" begins a range whose hyphen has a cell of its own
    return _ALIGNMENT.fullmatch(rule) is not None and len(names) == len(_fields(rule))


def _outline(lines: Sequence[str]) -> Iterator[Entry]:
    at = 0
    fenced = False
    block = 1
    while at < len(lines):
        line = lines[at]
        block += not line.strip()
        if is_fence(line):
            fenced = not fenced
            at += 1
            continue
        table, used = _table_at(lines, at, in_code=fenced or is_indented(line))
        if table is not None:
            yield Entry(Part.TABLE, table=table, block=block)
            at += used
            continue
        following = lines[at + 1] if at + 1 < len(lines) else ""
        underlined = _UNDERLINE.fullmatch(following) if line.strip() else None
        yield from (replace(entry, block=block) for entry in _words(line, underlined))
        at += 2 if underlined else 1


def _table_at(lines: Sequence[str], at: int, *, in_code: bool) -> tuple[PageTable | None, int]:
    """The table that begins at a line, and how many lines it takes up."""
    end = at
    while end < len(lines) and "|" in lines[end]:
        end += 1
    if _begins_table(lines, at):
        return _table([lines[at], *lines[at + 2 : end]]), end - at
    rows = [line for line in lines[at:end] if not is_rule(line)]
    if bars_without_rule([_fields(line) for line in rows]):
        return _table(rows), end - at
    block = block_of_code(lines[at : at + MOST_LINES_OF_BLOCK]) if in_code else None
    return (page_table(block), block.used) if block is not None else (None, 1)


def _words(line: str, underlined: re.Match[str] | None) -> Iterator[Entry]:
    comment = _COMMENT.fullmatch(line)
    if comment is not None:
        if words := said_in_comment(comment[1]):
            yield Entry(Part.WORDS, words)
        return
    heading = _HEADING.fullmatch(line)
    if heading is not None:
        yield Entry(Part.HEADING, shown(heading[2])[0], len(heading[1]))
    elif underlined is not None:
        yield Entry(Part.HEADING, shown(line)[0], 1 if "=" in underlined[1] else 2)
    elif words := shown(line)[0]:
        named = _BOLD.fullmatch(line) is not None and is_name(words)
        yield Entry(Part.HEADING, words, SET_OFF) if named else Entry(Part.WORDS, words)


def _table(lines: Sequence[str]) -> PageTable:
    cells: dict[tuple[int, int], Cell] = {}
    widths: dict[int, int] = {}
    for row, line in enumerate(lines):
        fields = _fields(line)
        widths[row] = len(fields)
        for column, field in enumerate(fields):
            text, struck = shown(field)
            if text:
                cells[row, column] = Cell(text, heading=row == 0, struck=struck)
        if len(cells) > MOST_CELLS:
            raise too_many(len(cells))
    columns = max(widths.values(), default=0)
    return PageTable(cells, len(lines), columns, row_widths=widths)


def _fields(line: str) -> list[str]:
    fields = _BAR.split(line.strip())
    if len(fields) > 1 and not fields[0].strip():
        fields = fields[1:]
    if len(fields) > 1 and not fields[-1].strip():
        fields = fields[:-1]
    return fields


def shown(text: str) -> tuple[str, bool]:
    """A piece of Markdown as a person sees it, and whether a part of it is struck out."""
    left = _STRUCK.sub("", text)
    struck = left != text
    text = left if left.strip() else _STRUCK.sub(r"\1", text)
    text = _LINK.sub(r"\1", _BREAK.sub("\n", text))
    text = _EMPHASIS.sub(lambda found: found[2] or found[3], text)
    pieces = [
        Piece(part, raised=mark == "sup", lowered=mark == "sub") for mark, part in _levels(text)
    ]
    text = _TAG.sub("", on_one_line(pieces))
    return tidy(html.unescape(_ESCAPED.sub(r"\1", text))), struck


def _levels(text: str) -> Iterator[tuple[str, str]]:
    end = 0
    for found in _LEVEL.finditer(text):
        yield "", text[end : found.start()]
        yield found[1].lower(), found[2]
        end = found.end()
    yield "", text[end:]


READER: Final = Reader("Markdown", _claims, _open)
