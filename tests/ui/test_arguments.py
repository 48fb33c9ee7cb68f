"""What a command means, and what is said of one that means nothing."""

from __future__ import annotations

import pytest

from charts.wording import LANGUAGES, Wording
from ui.arguments import Request, UsageError, language_of, understood


def asked(line: str) -> Request:
    return understood(line.split())


def complaint(line: str) -> str:
    with pytest.raises(UsageError) as caught:
        asked(line)
    for language in LANGUAGES:
        assert Wording(language).say("faces", caught.value.code, **caught.value.values)
    return caught.value.code


def test_nothing_at_all_asks_for_the_window() -> None:
    assert asked("") == Request(None)


def test_sources_and_options_may_stand_in_any_order() -> None:
    whole = Request("fit", ("a.csv", "north"), rider="r.toml", as_json=True)
    assert asked("fit --rider r.toml a.csv north --json") == whole
    assert asked("--json fit a.csv --rider=r.toml north") == whole


def test_what_a_shop_has_said_can_be_named_with_every_verb_that_reads() -> None:
    assert asked("read a.csv --shop s").shop == "s"
    assert asked("letter a.csv --out letters --shop s") == Request(
        "letter", ("a.csv",), out="letters", shop="s"
    )


def test_every_size_may_be_asked_for() -> None:
    assert asked("fit --rider r.toml a.csv --all").every_size
    assert not asked("fit --rider r.toml a.csv").every_size


def test_a_language_that_was_named_is_told_from_one_that_was_not() -> None:
    assert asked("demo --language en") == Request("demo", language_named=True)
    assert asked("demo") == Request("demo", language="en")


def test_a_dash_is_a_source() -> None:
    assert asked("read -").sources == ("-",)


def test_a_file_whose_name_starts_like_an_option_stands_behind_two_dashes() -> None:
    assert asked("read -- --odd.csv").sources == ("--odd.csv",)


@pytest.mark.parametrize("line", ["--help", "-h", "fit --help", "read --help --language de"])
def test_help_is_given_whatever_else_is_missing(line: str) -> None:
    assert asked(line).help


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("raed a.csv", "usage-unknown-verb"),
        ("read", "usage-no-source"),
        ("fit a.csv", "usage-no-rider"),
        ("fit --rider r.toml", "usage-no-source"),
        ("combine a.csv", "usage-no-out"),
        ("letter a.csv", "usage-no-letters"),
        ("letter --out letters", "usage-no-source"),
        ("letter a.csv --out letters --json", "usage-option-elsewhere"),
        ("demo --shop s", "usage-option-elsewhere"),
        ("read a.csv --out b.xlsx", "usage-option-elsewhere"),
        ("combine a.csv --out b.xlsx --json", "usage-option-elsewhere"),
        ("--json", "usage-option-elsewhere"),
        ("read a.csv --all", "usage-option-elsewhere"),
        ("read a.csv --jsno", "usage-unknown-option"),
        ("read a.csv -x", "usage-unknown-option"),
        ("fit a.csv --rider", "usage-not-understood"),
        ("read a.csv --json=yes", "usage-not-understood"),
        ("demo a.csv", "usage-demo-takes-none"),
        ("read a.csv --language fr", "usage-language"),
    ],
)
def test_every_mistake_has_a_sentence_of_its_own(line: str, code: str) -> None:
    assert complaint(line) == code


@pytest.mark.parametrize(
    ("line", "language"),
    [
        ("", "en"),
        ("read --language de", "de"),
        ("--language=de raed", "de"),
        ("--language fr", "en"),
        ("--language", "en"),
    ],
)
def test_a_mistake_is_told_in_the_language_asked_for(line: str, language: str) -> None:
    assert language_of(line.split()) == language
