"""The keys that stand in no menu: what each does, and where. Everything else is in ``ui.actions``.

No Qt. Keys are written as Qt reads them; two of one fact do the same or the opposite.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final


@dataclass(frozen=True, slots=True)
class KeyFact:
    """Keys that work at one place. ``place`` and ``code`` lead to the words of the topic keys.

    ``span`` says that the keys are the first and the last of several.
    """

    place: str
    code: str
    keys: tuple[str, ...]
    span: bool = False


FURTHER_KEYS: Final = (
    KeyFact("readings", "count", ("Enter",)),
    KeyFact("readings", "take-back-typed", ("Esc",)),
    KeyFact("models", "columns", ("Left", "Right")),
    KeyFact("models", "move-line", ("Shift+Left", "Shift+Right")),
    KeyFact("models", "fold", ("Enter", "Space")),
    KeyFact("models", "put-back", ("Esc",)),
    KeyFact("reasons", "pull", ("Up", "Down")),
    KeyFact("reasons", "let-go", ("Enter",)),
    KeyFact("files", "open", ("Enter",)),
    KeyFact("file", "questions", ("Up", "Down")),
    KeyFact("file", "answer", ("1", "9"), span=True),
    KeyFact("file", "take-back", ("Del", "Backspace")),
    KeyFact("file", "type-cell", ("F2",)),
    KeyFact("file", "back", ("Esc",)),
    KeyFact("typed", "next-cell", ("Tab",)),
    KeyFact("settings", "figure", ("Enter",)),
    KeyFact("settings", "back", ("Esc",)),
    KeyFact("choices", "step", ("Left", "Right", "Up", "Down")),
    KeyFact("choices", "press", ("Enter", "Space")),
)
