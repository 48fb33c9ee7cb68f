"""What the page says before there is anything to compare."""

from __future__ import annotations

from ui.controls.empty_state import EmptyState
from ui.words import Words


def offer_sources(empty: EmptyState, words: Words) -> None:
    """Offer the ways in which charts can be opened."""
    empty.offer(
        [
            ("open-files", words("empty-open")),
            ("open-folder", words("empty-folder")),
            ("demo", words("empty-demo")),
        ]
    )


def say_nothing_yet(empty: EmptyState, words: Words, models: int, sizes: int) -> None:
    """That no charts are open, or that the first reading is awaited."""
    if models:
        body = words("empty-ready-body", count=models, sizes=sizes)
        empty.say(words("empty-ready"), body)
    else:
        empty.say(words("empty-title"), words("empty-body"))
    empty.show_offers(not models)
