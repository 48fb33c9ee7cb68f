"""Which rider is on the line, who else is open, and what kind of vest is asked for."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from charts.model_facts import VestKind
from harmonizer.rider import Needs, Rider
from ui.dress import Dress
from ui.fitting_page.calls import Calls
from ui.fitting_page.draft import Draft
from ui.fitting_page.readings_panel import ReadingsPanel
from ui.words import Words


class RidersOnTheLine(QWidget):
    """What the strip of riders, the filters and the menus do to the fitting page.

    Attributes:
        calls: the open riders.
        readings: what is typed.
    """

    def __init__(self, words: Words, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.calls = Calls()
        self.readings = ReadingsPanel(words, dress.type_, self)

    def show_draft(self, draft: Draft) -> None:
        """Put another rider on the line."""
        raise NotImplementedError

    def refresh(self) -> None:
        """Compare the rider on the line and show what came out."""
        raise NotImplementedError

    def take_calls(self, calls: Calls) -> None:
        """Go on with calls that another page held."""
        self.calls = calls
        self.show_draft(calls.current)

    def new_rider(self) -> None:
        """A nameless rider on the line; the present one is parked."""
        self.readings.count_all()
        self.show_draft(self.calls.new())
        self.readings.start()

    def next_rider(self) -> None:
        """The next open rider on the line."""
        self.go_rider(self.calls.at + 1)

    def go_rider(self, place: int) -> None:
        """The rider at ``place`` of the strip on the line."""
        self.readings.count_all()
        self.show_draft(self.calls.go(place))

    def close_rider(self) -> None:
        """Take the rider on the line away."""
        self.show_draft(self.calls.close())

    def open_riders(self, riders: list[Rider]) -> None:
        """Put riders from files beside those that are open; the first of them on the line."""
        first: int | None = None
        for rider in riders:
            self.calls.add(Draft(rider))
            first = self.calls.at if first is None else first
        if first is not None:
            self.show_draft(self.calls.go(first))

    def ask_kind(self, kind: VestKind | None) -> None:
        """Offer only vests of this kind."""
        needs = self.readings.draft.given.needs
        self._ask(Needs(kind, needs.level, needs.in_stock))

    def ask_level(self, level: str) -> None:
        """Offer only vests of this level; "" for any."""
        needs = self.readings.draft.given.needs
        self._ask(Needs(needs.kind, level or None, needs.in_stock))

    def ask_stock(self, in_house: bool) -> None:
        """Offer only sizes that are in the house, by the stock list."""
        needs = self.readings.draft.given.needs
        self._ask(Needs(needs.kind, needs.level, in_house))

    def _ask(self, needs: Needs) -> None:
        self.readings.draft = self.readings.draft.with_given(needs=needs)
        self.refresh()
