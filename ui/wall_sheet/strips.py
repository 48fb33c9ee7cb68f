"""Rows of a table as strips of a page, dealt to pages without tearing what belongs together."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from ui.wall_sheet.ink import Mark, lowered
from ui.wall_sheet.type_setting import Setting


@dataclass(frozen=True, slots=True)
class Strip:
    """One row over the whole width. ``keep``: the next strip stays on its page.

    ``again`` is put above this strip where a page begins with it.
    """

    setting: Setting
    keep: bool = False
    again: Setting | None = None


def dealt(strips: Sequence[Strip], room: float) -> Iterator[list[Mark]]:
    """The marks of each page, from the top 0 down; one too tall for any page has its own."""
    page: list[Mark] = []
    top = 0.0
    for number, strip in enumerate(strips):
        if top and top + _kept_together(strips, number) > room:
            yield page
            page, top = [], 0.0
        if not top and strip.again is not None:
            page += strip.again.marks
            top += strip.again.height
        page += lowered(strip.setting.marks, top)
        top += strip.setting.height
    if page:
        yield page


def _kept_together(strips: Sequence[Strip], first: int) -> float:
    """The height of the strip and of all that must stand on the same page."""
    height = 0.0
    for strip in strips[first:]:
        height += strip.setting.height
        if not strip.keep:
            break
    return height
