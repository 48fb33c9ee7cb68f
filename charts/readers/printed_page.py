"""One page of a PDF file to its words and rules, by pdfplumber, and from there to a sheet."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any, Final

from charts.readers.print_page import Piece, pieces_of
from charts.readers.print_prose import with_prose
from charts.readers.print_ruled import ruled_tables
from charts.readers.print_words import Word, known_letters

_SAME_RULE: Final = 1.5
_LEAST_KNOWN: Final = 0.7
_HOW: Final = {"x_tolerance_ratio": 0.15, "y_tolerance": 1.5, "extra_attrs": ["size"]}


def pieces_from(page: Any) -> list[Piece] | None:
    """The tables and sentences of a page of pdfplumber; None where its letters are unknown."""
    page = page.dedupe_chars(tolerance=1)
    words = list(_words(page))
    letters = sum(len(word.text) for word in words)
    unknown = sum(word.text.count("?") for word in words)
    if not words or unknown > (1 - _LEAST_KNOWN) * letters:
        return None
    return list(with_prose(pieces_of(words, ruled_tables(page, words), _rules(page))))


def _words(page: Any) -> Iterator[Word]:
    """The words of the page; those that stand on their side are laid down at their foot."""
    for one in page.filter(_is_level).extract_words(**_HOW, return_chars=True):
        yield from _pieces(one["chars"])
    for turned, direction in ((_reads_up, "btt"), (_reads_down, "ttb")):
        # Of letters on their side pdfplumber gives the width for the size.
        letters = page.filter(turned)
        for one in letters.extract_words(
            y_tolerance=1.5, keep_blank_chars=True, char_dir_rotated=direction
        ):
            size = float(one["x1"] - one["x0"])
            yield Word(
                known_letters(one["text"]),
                float(one["x0"]),
                float(one["x1"]),
                float(one["bottom"]) - size,
                float(one["bottom"]),
                size,
            )


def _pieces(letters: list[dict[str, Any]]) -> Iterator[Word]:
    """A word, cut where cells of a narrow table may have run into each other: ``(cm)Waist``."""
    start = 0
    for at in range(1, len(letters) + 1):
        if at == len(letters) or _may_begin(letters[at - 1]["text"], letters[at]["text"]):
            piece = letters[start:at]
            start = at
            yield Word(
                known_letters("".join(one["text"] for one in piece)),
                float(piece[0]["x0"]),
                float(piece[-1]["x1"]),
                float(min(one["top"] for one in piece)),
                float(max(one["bottom"] for one in piece)),
                float(piece[0]["size"]),
            )


def _may_begin(before: str, after: str) -> bool:
    closed = before[-1:] in ')]"″”' and after[:1].isalnum()
    return closed or (before[-1:].islower() and after[:1].isupper())


def _is_level(one: dict[str, Any]) -> bool:
    return one.get("object_type") != "char" or bool(one.get("upright", True))


def _reads_up(one: dict[str, Any]) -> bool:
    return _is_turned(one) and one["matrix"][1] > 0


def _reads_down(one: dict[str, Any]) -> bool:
    return _is_turned(one) and one["matrix"][1] <= 0


def _is_turned(one: dict[str, Any]) -> bool:
    return one.get("object_type") == "char" and not one.get("upright", True)


def _rules(page: Any) -> list[tuple[float, tuple[float, float]]]:
    """Lines across the page and the edges of shaded bands; pieces at one height are one."""
    found: list[tuple[float, tuple[float, float]]] = []
    for edge in sorted(page.horizontal_edges, key=lambda one: float(one["top"])):
        height, left, right = float(edge["top"]), float(edge["x0"]), float(edge["x1"])
        if found and height - found[-1][0] < _SAME_RULE:
            height, (first, last) = found.pop()
            left, right = min(left, first), max(right, last)
        found.append((height, (left, right)))
    return found
