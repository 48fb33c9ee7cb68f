"""Sizes and figures in one rhythm of brackets: ``S (M) L`` over ``Chest: 86 (91) 97 cm``.

Patterns for knitting and sewing are printed so, with all sizes in one line and for each measure as
many figures. Counts must agree; a line in another rhythm makes the whole to be compared.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.supplies import is_supply
from charts.readers.captured.value_runs import is_size, rises
from charts.size_labels import LabelKind, read_label

_FEWEST: Final = 3
_LINES_BETWEEN: Final = 8
_LONGEST_WORD: Final = 30
_LONGEST_LINE: Final = 400
_LABELS: Final = re.compile(
    r"(?P<name>[^\d()\[\]]*?)\s*[:=]?\s*(?P<labels>(?:(?:\d\S*\s[^\W\d_]+|\S+)\s*)?[(\[].*)"
)
_BRACKETS: Final = re.compile(r"[()\[\]]")
_PARTS: Final = re.compile(r"[\s,;:()\[\]]+")
_CUTS: Final = re.compile(r"[,;:()\[\]]+")
_EITHER: Final = re.compile(r"\s(?:OR|or|ODER|oder|OU|ou)\s")
_FIGURE: Final = r"\d{1,6}(?:[.,]\d{1,3})?(?:\s?[½¼¾⅛⅜⅝⅞])?"
_VALUE: Final = rf"(?>{_FIGURE}(?:\s?[-–]\s?{_FIGURE})?)"  # whole, never cut to make a line fit
_BRACKET: Final = rf"\s*[(\[]\s*{_VALUE}(?:\s*[,;:]\s+{_VALUE})*\s*[)\]]"
SERIES: Final = (
    rf"(?:{_VALUE}{_BRACKET}|{_BRACKET}\s*{_VALUE})(?:{_BRACKET}|(?:[,;]?\s+|(?<=[)\]])){_VALUE})*"
)
_SERIES: Final = re.compile(SERIES)
UNIT: Final = r"\s*(?:cm\b|mm\b|in(?:ch(?:es)?)?\b|kg\b|lbs?\b|[\"”“″])"
ABOUT: Final = (
    r"(?:(?:(?:approx|appr|ca|circa|cca|env|aprox|n|ok)\.?|approximately|approximativement|about"
    r"|around|etwa|ungefähr|rund|environ|unos|aproximadamente|cirka|omtrent|omkring|ungefär|noin"
    r"|ongeveer|około|asi|около)\s+)"
)
"""A word for rounded figures, said once of all of a row."""
_FOREIGN: Final = ("n", "unos")
"""Such words that are read in no cell, where they could be others."""
_ROW: Final = re.compile(
    r"\s*(?P<title>[^\d:()]{2,30}:\s+(?=[^\d:]{2,70}:))?"
    rf"(?P<name>[^\d:]{{0,70}}?)\s*:?\s*(?P<about>{ABOUT})?(?P<first>{SERIES})(?P<unit>{UNIT})?"
    rf"(?:\s*(?:/|(?P<open>\[))\s*(?P<second>{SERIES})(?P<other>{UNIT})(?(open)\s*\]))?"
    r"\s*[.;]?(?=\s|\Z|,\s*[^\W\d_])",
    re.IGNORECASE,
)
_ROW_NAMED_BEHIND: Final = re.compile(
    rf"\s*(?P<title>(?!))?(?P<about>{ABOUT})?(?P<first>{SERIES})(?P<unit>{UNIT})"
    rf"(?:\s*(?:/|(?P<open>\[))\s*(?P<second>{SERIES})(?P<other>{UNIT})(?(open)\s*\]))?"
    r"\s+(?:(?:of|de|di|da|do|du|d'|av|af|an)\s+)?"
    r"(?P<name>[^\W\d_][^\d:()]{2,60}?(?:\s*\([^\d()]{2,80}\))?)\s*[.;]?\Z",
    re.IGNORECASE,
)
"""``86 (91) 97 cm of chest (finished)``: the unit is printed, or it could be anything."""
_BEHIND: Final = re.compile(r"\s*\(.*")
_INCHES: Final = re.compile(r"(?:[\"”“″]|in(?:ch(?:es)?)?)\s*\Z", re.IGNORECASE)
_ONE_UNIT: Final = re.compile(rf"{_VALUE}{UNIT}", re.IGNORECASE)
_END_OF_BRACKET: Final = re.compile(rf"\s*[\d½¼¾ (),.]+{UNIT}\s*\]", re.IGNORECASE)
_NOTE: Final = re.compile(r"\s*,\s*[^\W\d_][^\d()]{2,80}|\s*\([^\W\d_][^\d()]{2,80}\)\.?")
_YEARS: Final = re.compile(r"\d{1,2}(?:[-–/]\d{1,2})?")
ONE: Final = re.compile(_VALUE)
_LIKE_A_ROW: Final = re.compile(r"\d\s*[(\[]\s*\d")


@dataclass(slots=True)
class _Walk:
    """What has been put together so far; ``used`` counts the lines that are spoken for."""

    count: int
    before: list[Line] = field(default_factory=list)
    rows: list[list[LineCell]] = field(default_factory=list)
    name: Line | None = None
    used: int = 0
    uneven: bool = False


def bracket_table(lines: Sequence[Line]) -> LineTable | None:
    """The table whose sizes ``lines`` begin with; None where no measure has as many figures."""
    first, sizes = _sizes_first(lines)
    if sizes is None:
        return None
    walk = _Walk(len(sizes) - 1)
    for at, line in enumerate(lines[first:], start=first + 1):
        if not line.text.strip() or _closes(lines[at - 2], line):
            walk.used = at if walk.used == at - 1 and line.text.strip() else walk.used
        elif not _step(walk, _closed(line, lines[at : at + 1]), at):
            break
    if not walk.rows:
        return None
    titles = [[LineCell(one.text.strip(), one.number)] for one in walk.before]
    return LineTable([*titles, sizes, *walk.rows], walk.used, inferred=walk.uneven)


def _sizes_first(lines: Sequence[Line]) -> tuple[int, list[LineCell] | None]:
    """How many lines the sizes take up, and these; their word may stand on a line of its own."""
    sizes = _sizes(lines[0]) if lines else None
    word = lines[0].text.strip().rstrip(":").rstrip() if lines and sizes is None else ""
    if not word or len(word) > _LONGEST_WORD or read_heading(word).role is not Role.LABEL:
        return 1, sizes
    below = next((at for at, line in enumerate(lines) if at and line.text.strip()), 0)
    bare = _sizes(lines[below]) or _plain(lines[below]) if 0 < below <= _FEWEST else None
    if bare is None or bare[0].text:
        return 1, None
    return below + 1, [LineCell(word, lines[0].number), *bare[1:]]


def _plain(line: Line) -> list[LineCell] | None:
    """Sizes below their word that are listed with commas and no brackets: ``S, M, L.``."""
    if len(line.text) > _LONGEST_WORD * 2 or "," not in line.text:
        return None
    labels = bracketed_labels(line.text.strip().rstrip("."))
    return [LineCell(text, line.number) for text in ("", *labels)] if labels else None


def _closes(before: Line, line: Line) -> bool:
    """Whether a line is the end of a bracket that was broken: ``67¼ inches]``."""
    opened = before.text.count("[") - before.text.count("]")
    return opened == 1 and _END_OF_BRACKET.match(line.text) is not None


def _closed(line: Line, after: Sequence[Line]) -> Line:
    """The line with the end of its bracket, where that was broken over to the next one."""
    if not after or not _closes(line, after[0]):
        return line
    return Line(f"{line.text.rstrip()} {after[0].text.strip()}", line.number)


def _sizes(line: Line) -> list[LineCell] | None:
    """The word for sizes, "" for none, and the sizes; None where anything else stands there."""
    found = _LABELS.fullmatch(line.text.strip()) if len(line.text) <= _LONGEST_LINE else None
    if found is None or not _BRACKETS.search(found["labels"]):
        return None
    name = found["name"].strip()
    labels = bracketed_labels(found["labels"])
    if not labels and not name:  # "Size: (XS) S": the first size is in brackets itself
        name, _, rest = found["labels"].partition(" ")
        name, labels = name.rstrip(":="), bracketed_labels(rest)
    if name and read_heading(name).role is not Role.LABEL:
        return None
    if not labels:
        return None
    return [LineCell(text, line.number) for text in (name, *labels)]


def bracketed_labels(text: str) -> list[str]:
    """The sizes that ``text`` lists with some in brackets; none where anything else is there."""
    labels = _aged([part for part in _PARTS.split(text) if part])
    if not all(map(is_size, labels)):
        labels = _of_words(text)
    sizes = len(labels) >= _FEWEST and all(map(is_size, labels)) and rises(labels)
    return labels if sizes else []


def _of_words(text: str) -> list[str]:
    """``3-6 months (1-2 years, 3-4 years) OR 62 (86, 98)``: sizes of two words, told once more."""
    first, *others = _EITHER.split(text)
    labels = [part.strip() for part in _CUTS.split(first) if part.strip()]
    counts = {sum(any(map(str.isdigit, part)) for part in _CUTS.split(one)) for one in others}
    return labels if counts <= {len(labels)} else []


def _aged(labels: list[str]) -> list[str]:
    """``1-2 (2-3) 3-4 years``: the word behind all sizes belongs to each of them."""
    if len(labels) <= _FEWEST or not labels[-1].isalpha() or is_size(labels[-1]):
        return labels
    aged = [f"{one} {labels[-1]}" for one in labels[:-1]]
    read = [read_label(one) for one in aged if _YEARS.fullmatch(one.split()[0])]
    ages = [one for one in read if one is not None and one.kind is LabelKind.AGE]
    return aged if len(ages) == len(aged) else labels


def _step(walk: _Walk, line: Line, at: int) -> bool:
    """Whether ``line`` belongs to the table or may stand between it and its sizes."""
    found = _rows(line.text)
    if found:
        return _add(walk, found, line, at)
    many = len(ONE.findall(line.text)) >= walk.count and not _tells_supply(line.text)
    walk.uneven = walk.uneven or (many and _LIKE_A_ROW.search(line.text) is not None)
    if walk.name is not None:
        walk.before += [] if walk.rows else [walk.name]
        walk.name = None
        if walk.rows:
            return False
    if line.text.rstrip().endswith(":") and not any(map(str.isdigit, line.text)):
        walk.name = line
        return True
    walk.before += [] if walk.rows else [line]
    return not walk.rows and len(walk.before) <= _LINES_BETWEEN


def _tells_supply(text: str) -> bool:
    """Whether all figures in the rhythm of the sizes are of what has to be bought."""
    series = list(_SERIES.finditer(text[:_LONGEST_LINE]))
    return bool(series) and all(is_supply(text[one.end() :]) for one in series)


def _rows(text: str) -> list[re.Match[str]]:
    """The measures in a line with their figures; none where anything else stands in it.

    Words behind a comma or in brackets may end the line: they tell how one measure is taken.
    """
    found: list[re.Match[str]] = []
    end = 0
    text = text.strip()
    behind = _ROW_NAMED_BEHIND.match(text) if len(text) <= _LONGEST_LINE else None
    if behind is not None:
        name = read_heading(_BEHIND.sub("", behind["name"]))
        return [behind] if name.role is Role.MEASURE else []
    while end < len(text) <= _LONGEST_LINE:
        one = _ROW.match(text, end)
        if one is None:
            return found if len(found) == 1 and _NOTE.fullmatch(text, end) else []
        found.append(one)
        end = one.end()
    return found


def _add(walk: _Walk, found: Sequence[re.Match[str]], line: Line, at: int) -> bool:
    if _same_again(walk, found):
        walk.used = at
        return True
    counts = {
        len(ONE.findall(series))
        for one in found
        for series in (one["first"], one["second"])
        if series
    }
    named = all(one["name"].strip() for one in found)
    if counts != {walk.count} or not (named or (walk.name is not None and len(found) == 1)):
        walk.uneven = True
        return False
    if named:
        _take_titles(walk, found, line)
    note = line.text.strip()[found[-1].end() :] if len(found) == 1 else ""
    for one in found:
        name = LineCell(f"{one['name'].strip()}{note}", line.number)
        if walk.name is not None:
            name = LineCell(f"{walk.name.text.strip().rstrip(':')}{note}", walk.name.number)
        walk.rows.append([name, *(LineCell(text, line.number) for text in _cells(one))])
    walk.name, walk.used = None, at
    return True


def _take_titles(walk: _Walk, found: Sequence[re.Match[str]], line: Line) -> None:
    """Put ``Measurements:`` before measures that have names of their own above them."""
    titles = [walk.name.text.strip()] if walk.name is not None else []
    titles += [one["title"].strip() for one in found if one["title"]]
    number = walk.name.number if walk.name is not None else line.number
    if walk.rows:
        walk.rows += [[LineCell(title, number)] for title in titles]
    else:
        walk.before += [Line(title, number) for title in titles]
    walk.name = None


def _same_again(walk: _Walk, found: Sequence[re.Match[str]]) -> bool:
    """Put ``14 (15)”`` below ``35 (38) cm`` beside it, as the same in the other unit."""
    one = found[0]
    if len(found) > 1 or one["name"].strip() or walk.name is not None or not walk.rows:
        return False
    cells = [] if one["second"] or not one["unit"] else _cells(one)
    if not cells:
        return False
    name, *last = walk.rows[-1]
    kinds = {bool(_INCHES.search(cell.text)) for cell in last}, {bool(_INCHES.search(cells[0]))}
    whole = len(cells) == walk.count and all(_ONE_UNIT.fullmatch(cell.text) for cell in last)
    if not whole or kinds[0] == kinds[1]:
        return False
    pairs = zip(last, cells, strict=True)
    walk.rows[-1] = [name, *(LineCell(f"{was.text} / {text}", was.line) for was, text in pairs)]
    return True


def rounding(about: str) -> str:
    """The word before rounded figures as each of them has it, "" for none."""
    word = about.strip()
    return f"{'ca.' if word.lower().rstrip('.') in _FOREIGN else word} " if word else ""


def _cells(found: re.Match[str]) -> list[str]:
    """Each figure with the unit that stands once behind all, and in its second unit."""
    about = rounding(found["about"] or "")
    first = [f"{about}{text}{found['unit'] or ''}" for text in ONE.findall(found["first"])]
    if not found["second"]:
        return first
    second = [f"{text}{found['other']}" for text in ONE.findall(found["second"])]
    return [f"{one} / {other}" for one, other in zip(first, second, strict=True)]
