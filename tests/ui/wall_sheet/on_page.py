"""What the tests ask of a page: its words, its bars, and where they stand."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from ui.wall_sheet.ink import Bar, Page, Stroke, Words


@dataclass(frozen=True)
class Box:
    left: float
    top: float
    right: float
    bottom: float
    text: str = ""

    def meets(self, other: Box) -> bool:
        apart = self.right <= other.left or other.right <= self.left
        return not (apart or self.bottom <= other.top or other.bottom <= self.top)


def words(page: Page) -> list[Words]:
    return [mark for mark in page.marks if isinstance(mark, Words)]


def bars(page: Page) -> list[Bar]:
    return [mark for mark in page.marks if isinstance(mark, Bar)]


def box_of(each: Words) -> Box:
    """The height of capitals and figures is what must not meet; tails may reach a little lower."""
    return Box(each.x, each.y - each.face.capital, each.x + each.width, each.y, each.text)


def collisions(page: Page) -> Iterator[tuple[str, str]]:
    """Words that stand on words."""
    boxes = sorted((box_of(each) for each in words(page)), key=lambda box: box.top)
    for number, box in enumerate(boxes):
        for other in boxes[number + 1 :]:
            if other.top >= box.bottom:
                break
            if box.meets(other):
                yield box.text, other.text


def outside(page: Page) -> Iterator[str]:
    """Words and bars that leave the printed area."""
    paper = page.paper
    slack = 0.5
    for each in words(page):
        box = box_of(each)
        if not (
            paper.left - slack <= box.left
            and box.right <= paper.right + slack
            and paper.top <= box.top
            and box.bottom <= paper.bottom
        ):
            yield each.text
    for bar in bars(page):
        if bar.left < paper.left or bar.right > paper.right + slack:
            yield f"bar at {bar.left:.1f}"


def bar_of(page: Page, label: str, near: Words) -> Bar:
    """The bar of ``label`` in the line of the model named by ``near``, the leftmost."""
    found = [
        bar
        for bar in bars(page)
        for each in words(page)
        if each.text == label
        and bar.left <= each.x <= bar.right
        and bar.top <= each.y <= bar.bottom
        and abs(bar.top - (near.y - near.face.rise)) < 40
    ]
    return min(found, key=lambda bar: bar.left)


def word(page: Page, text: str) -> Words:
    return next(each for each in words(page) if each.text == text)


def cm_at(page: Page, x: float, below: Words) -> float:
    """What the ruler above ``x`` reads, from its two nearest printed figures.

    ``below`` is the block's name, which stands in the ruler's line.
    """
    figures = sorted(
        (each.x + each.width / 2, float(each.text))
        for each in words(page)
        if each.text.isdigit() and abs(each.y - below.y) < 8
    )
    rising = [(a, b) for a, b in pairwise(figures) if b[1] > a[1]]
    a, b = min(rising, key=lambda pair: abs((pair[0][0] + pair[1][0]) / 2 - x))
    return a[1] + (x - a[0]) * (b[1] - a[1]) / (b[0] - a[0])


def strokes(page: Page) -> list[Stroke]:
    return [mark for mark in page.marks if isinstance(mark, Stroke)]
