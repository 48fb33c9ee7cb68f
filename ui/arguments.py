"""What was asked for on the command line. Every complaint is one of our own sentences."""

from __future__ import annotations

import argparse
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType
from typing import Final, NoReturn

from charts.wording import LANGUAGES

VERBS: Final = ("read", "fit", "combine", "letter", "demo")
_OPTIONS: Final[Mapping[str | None, frozenset[str]]] = MappingProxyType(
    {
        None: frozenset(),
        "read": frozenset({"json", "shop"}),
        "fit": frozenset({"json", "rider", "shop", "all"}),
        "combine": frozenset({"out", "shop"}),
        "letter": frozenset({"out", "shop"}),
        "demo": frozenset({"picture"}),
    }
)


class UsageError(Exception):
    """A command that cannot be understood.

    Attributes:
        code: key of the sentence in the topic "faces".
        values: what the sentence names.
    """

    def __init__(self, code: str, **values: str) -> None:
        super().__init__(code, values)
        self.code = code
        self.values = values


@dataclass(frozen=True, slots=True)
class Request:
    """One command. ``verb`` is None for the window.

    ``language_named`` tells a language that was asked for from the one taken for want of it.
    """

    verb: str | None
    sources: tuple[str, ...] = ()
    rider: str | None = None
    out: str | None = None
    picture: str | None = None
    shop: str | None = None
    as_json: bool = False
    every_size: bool = False
    language: str = "en"
    language_named: bool = False
    help: bool = False


def language_of(words: Sequence[str]) -> str:
    """The language asked for, English until a known one is named; never complains."""
    for place, word in enumerate(words):
        name, _, value = word.partition("=")
        if name == "--language":
            value = value or "".join(words[place + 1 : place + 2])
            if value in LANGUAGES:
                return value
    return LANGUAGES[0]


def understood(words: Sequence[str]) -> Request:
    """The request that ``words`` are; raises UsageError."""
    given, unknown = _parser().parse_known_intermixed_args(list(words))
    if given.help:
        return Request(None, language=language_of(words), help=True)
    if unknown:
        raise UsageError("usage-unknown-option", option=unknown[0])
    if given.language not in (None, *LANGUAGES):
        raise UsageError("usage-language", languages=", ".join(LANGUAGES))
    verb = given.words[0] if given.words else None
    if verb is not None and verb not in VERBS:
        raise UsageError("usage-unknown-verb", word=verb)
    for option in ("json", "rider", "out", "picture", "shop", "all"):
        if getattr(given, option) and option not in _OPTIONS[verb]:
            raise UsageError("usage-option-elsewhere", option=f"--{option}", verb=verb or "")
    request = Request(
        verb=verb,
        sources=tuple(given.words[1:]),
        rider=given.rider,
        out=given.out,
        picture=given.picture,
        shop=given.shop,
        as_json=given.json,
        every_size=given.all,
        language=given.language or LANGUAGES[0],
        language_named=given.language is not None,
    )
    _check_whole(request)
    return request


def _check_whole(request: Request) -> None:
    if request.verb == "demo" and request.sources:
        raise UsageError("usage-demo-takes-none", word=request.sources[0])
    if request.verb in ("read", "fit", "combine", "letter") and not request.sources:
        raise UsageError("usage-no-source", verb=request.verb)
    if request.verb == "fit" and not request.rider:
        raise UsageError("usage-no-rider")
    if request.verb == "combine" and not request.out:
        raise UsageError("usage-no-out")
    if request.verb == "letter" and not request.out:
        raise UsageError("usage-no-letters")


class _Parser(argparse.ArgumentParser):
    """argparse without its own English: whatever it would print becomes a UsageError."""

    def error(self, message: str) -> NoReturn:
        del message
        raise UsageError("usage-not-understood")


def _parser() -> _Parser:
    parser = _Parser(prog="harmonizer", add_help=False, allow_abbrev=False)
    parser.add_argument("words", nargs="*")
    parser.add_argument("-h", "--help", action="store_true")
    parser.add_argument("--json", action="store_true")
    parser.add_argument("--all", action="store_true")
    parser.add_argument("--rider")
    parser.add_argument("--out")
    parser.add_argument("--picture")
    parser.add_argument("--shop")
    parser.add_argument("--language")
    return parser
