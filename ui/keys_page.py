"""The page of keys as a table: every act that has a key, by the menu or the place it belongs to."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from html import escape

from PySide6.QtGui import QAction, QKeySequence

from ui.actions import ACTIONS, MENUS, Actions
from ui.key_facts import FURTHER_KEYS
from ui.words import Words

Line = tuple[str, str]
"""The keys, and what they do."""


def keys_page(actions: Actions, table: Sequence[QAction], words: Words) -> str:
    """All keys as rich text. ``table`` are the acts of the menu over a source."""
    parts = [_group(title, lines) for title, lines in _groups(actions, table, words) if lines]
    return "".join(parts)


def _groups(
    actions: Actions, table: Sequence[QAction], words: Words
) -> Iterator[tuple[str, list[Line]]]:
    say = words.wording.say
    for menu in MENUS:
        here = [actions[fact.key] for fact in ACTIONS if fact.menu == menu]
        yield _bare(words(f"menu-{menu}")), [_line(one, words) for one in here if one.shortcuts()]
    places = dict.fromkeys(fact.place for fact in FURTHER_KEYS)
    for place in places:
        facts = [fact for fact in FURTHER_KEYS if fact.place == place]
        lines = [
            (_keys(fact.keys, words, span=fact.span), say("keys", fact.code)) for fact in facts
        ]
        yield say("keys", f"place-{place}"), lines
        if place == "file":
            keyed = [_line(one, words) for one in table if one.shortcuts()]
            yield say("keys", "place-table"), keyed


def _line(action: QAction, words: Words) -> Line:
    keys = [key.toString() for key in action.shortcuts()]
    return _keys(keys, words), _bare(action.text())


def _keys(keys: Iterable[str], words: Words, *, span: bool = False) -> str:
    """The keys by the names that the desktop's language has for them."""
    names = dict.fromkeys(key_name(key) for key in keys)
    return words.wording.say("keys", "to" if span else "between").join(names)


def key_name(key: str) -> str:
    """One key as it is printed on the keyboard; both keys that send a line are called Enter."""
    native = QKeySequence.SequenceFormat.NativeText
    return QKeySequence(key.replace("Return", "Enter")).toString(native)


def _bare(text: str) -> str:
    return text.replace("&", "").rstrip("…")


def _group(title: str, lines: Sequence[Line]) -> str:
    style = "padding-right: 24px"
    rows = "".join(
        f'<tr><td style="{style}"><b>{escape(keys)}</b></td><td>{escape(does)}</td></tr>'
        for keys, does in lines
    )
    return f"<h3>{escape(title)}</h3><table>{rows}</table>"
