"""The calls that are open: one rider on the line, others parked. No Qt."""

from __future__ import annotations

from collections.abc import Sequence

from ui.fitting_page.draft import Draft


class Calls:
    """Open riders in the order they came; one of them is on the line."""

    def __init__(self) -> None:
        self._drafts: list[Draft] = [Draft()]
        self._at = 0

    @property
    def drafts(self) -> Sequence[Draft]:
        """Every open rider."""
        return tuple(self._drafts)

    @property
    def at(self) -> int:
        """The place of the rider on the line."""
        return self._at

    @property
    def current(self) -> Draft:
        """The rider on the line."""
        return self._drafts[self._at]

    def keep(self, draft: Draft) -> None:
        """Remember what was typed for the rider on the line."""
        self._drafts[self._at] = draft

    def new(self) -> Draft:
        """A nameless rider on the line; the present one stays open. An empty one is used again."""
        for place, draft in enumerate(self._drafts):
            if _is_blank(draft):
                self._at = place
                return draft
        return self.add(Draft())

    def add(self, draft: Draft) -> Draft:
        """Put ``draft`` on the line beside the others."""
        if _is_blank(self.current):
            self._drafts[self._at] = draft
        else:
            self._drafts.append(draft)
            self._at = len(self._drafts) - 1
        return draft

    def go(self, place: int) -> Draft:
        """Put the rider at ``place`` on the line."""
        self._at = place % len(self._drafts)
        return self.current

    def close(self) -> Draft:
        """Take the rider on the line away; the one before comes on, or a nameless one."""
        del self._drafts[self._at]
        if not self._drafts:
            self._drafts.append(Draft())
        self._at = max(0, self._at - 1)
        return self.current


def _is_blank(draft: Draft) -> bool:
    return not draft.given.name and not draft.rider().readings
