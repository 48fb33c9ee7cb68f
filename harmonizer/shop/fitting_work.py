"""Which sizes came out right, one step of the workspace each, to be taken back like any other."""

from __future__ import annotations

from dataclasses import replace

from harmonizer.outcomes import Outcome
from harmonizer.shop.history import History


class FittingWork(History):
    """What a shop has found of its models."""

    @property
    def fittings(self) -> tuple[Outcome, ...]:
        """The outcomes that are kept, oldest first."""
        return self._now.fittings

    def keep_fitting(self, outcome: Outcome, instead_of: Outcome | None = None) -> None:
        """Keep one outcome, in the place of the very one that was said of this rider before."""
        now = self._now.fittings
        kept = tuple(outcome if one is instead_of else one for one in now)
        if instead_of is None or all(one is not instead_of for one in now):
            kept = (*now, outcome)
        self._change(replace(self._now, fittings=kept))
