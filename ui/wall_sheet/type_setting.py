"""Words set in lines: measured, broken between words, in one or several columns. No Qt."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from ui.wall_sheet.ink import Mark, Tone, Words, lowered
from ui.wall_sheet.paper import Face, Measure

SEPARATOR: Final = " · "
_NO_BREAK: Final = "\N{NO-BREAK SPACE}"


@dataclass(frozen=True, slots=True)
class Setter:
    """Sets words with one way of measuring them."""

    measure: Measure

    def at(self, x: float, y: float, text: str, face: Face, tone: Tone = Tone.INK) -> Words:
        """``text`` from ``x`` to the right, on the baseline ``y``."""
        return Words(x, y, text, face, self.measure(text, face), tone)

    def until(self, x: float, y: float, text: str, face: Face, tone: Tone = Tone.INK) -> Words:
        """``text`` that ends at ``x``."""
        wide = self.measure(text, face)
        return Words(x - wide, y, text, face, wide, tone)

    def around(self, x: float, y: float, text: str, face: Face, tone: Tone = Tone.INK) -> Words:
        """``text`` with its middle at ``x``."""
        wide = self.measure(text, face)
        return Words(x - wide / 2, y, text, face, wide, tone)

    def lines(self, text: str, face: Face, room: float) -> list[str]:
        """``text`` broken between words, and within a word only where it is wider than ``room``."""
        done: list[str] = []
        for paragraph in text.split("\n"):
            line = ""
            for word in self._pieces(paragraph, face, room):
                longer = f"{line} {word}" if line else word
                if line and self.measure(longer, face) > room:
                    done.append(line)
                    longer = word
                line = longer
            done.append(line)
        return done

    def listed(self, parts: Sequence[str], face: Face, room: float) -> list[str]:
        """``parts`` with a dot between, broken at the dots, inside a part only where it must be."""
        done: list[str] = []
        line = ""
        for part in parts:
            longer = f"{line}{SEPARATOR}{part}" if line else part
            if self.measure(longer, face) > room:
                done += [line] if line else []
                *full, longer = self.lines(part, face, room)
                done += full
            line = longer
        return [*done, line]

    def _pieces(self, paragraph: str, face: Face, room: float) -> Iterator[str]:
        for word in paragraph.split(" "):
            if self.measure(word, face) <= room:
                yield word
                continue
            piece = ""
            for letter in word:
                if piece and self.measure(piece + letter, face) > room:
                    yield piece
                    piece = ""
                piece += letter
            if piece:
                yield piece

    def fitting(self, text: str, faces: Sequence[Face], room: float) -> Face:
        """The first of ``faces`` in which ``text`` goes into ``room``, else the last."""
        return next((face for face in faces if self.measure(text, face) <= room), faces[-1])


@dataclass(frozen=True, slots=True)
class Setting:
    """Marks that begin at the top 0, and their height."""

    marks: tuple[Mark, ...]
    height: float


def stacked(*settings: Setting) -> Setting:
    """One below the other."""
    marks: list[Mark] = []
    top = 0.0
    for setting in settings:
        marks += lowered(setting.marks, top)
        top += setting.height
    return Setting(tuple(marks), top)


def in_columns(
    setter: Setter,
    texts: Sequence[str],
    face: Face,
    edges: tuple[float, float],
    columns: int,
    *,
    gap: float = 18.0,
) -> Setting:
    """Paragraphs in reading order down the columns, whose heights differ as little as may be.

    ``edges`` are the left and right end of all columns together.
    """
    wide = (edges[1] - edges[0] - gap * (columns - 1)) / columns
    broken = [setter.lines(text, face, wide) for text in texts]
    marks: list[Mark] = []
    tallest = 0
    for place, column in enumerate(_dealt(broken, columns)):
        x = edges[0] + place * (wide + gap)
        lines = [line for paragraph in column for line in paragraph]
        tallest = max(tallest, len(lines))
        marks += (
            setter.at(x, number * face.line + face.rise, line, face)
            for number, line in enumerate(lines)
        )
    return Setting(tuple(marks), tallest * face.line)


def run_on(
    setter: Setter,
    texts: Sequence[str],
    face: Face,
    edges: tuple[float, float],
    columns: int,
    *,
    gap: float = 18.0,
) -> Setting:
    """Sentences one after the other without a new line for each, where paper is scarce."""
    wide = (edges[1] - edges[0] - gap * (columns - 1)) / columns
    lines = setter.lines(" ".join(_bound(text) for text in texts), face, wide)
    each = -(-len(lines) // columns)
    marks = tuple(
        setter.at(
            edges[0] + (number // each) * (wide + gap),
            number % each * face.line + face.rise,
            line,
            face,
        )
        for number, line in enumerate(lines)
    )
    return Setting(marks, each * face.line)


def _bound(text: str) -> str:
    """A footnote's sign stays with the word after it."""
    sign, space, rest = text.partition(" ")
    return f"{sign}{_NO_BREAK}{rest}" if space and not sign.isalnum() else text


def _dealt(paragraphs: Sequence[list[str]], columns: int) -> Iterator[Sequence[list[str]]]:
    """The paragraphs column by column: the least height into which all of them go."""
    for most in range(1, sum(map(len, paragraphs)) + 1):
        found: list[list[list[str]]] = [[]]
        for paragraph in paragraphs:
            if sum(map(len, found[-1])) + len(paragraph) > most and found[-1]:
                found.append([])
            found[-1].append(paragraph)
        if len(found) <= columns and all(sum(map(len, each)) <= most for each in found):
            yield from found
            return
