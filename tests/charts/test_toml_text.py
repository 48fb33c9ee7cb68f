"""TOML a person wrote: every complaint names its line."""

from __future__ import annotations

import pytest

from charts.toml_text import Entries, TomlFileError, line_of

TEXT = """\
format = 1
name = "Rider 7"
[readings]
chest = "92 cm"
hip = { value = 99, unit = "cm" }
[[reading]]
dimension = "waist"
[[reading]]
dimension = "hip"
[reading.note]
by = "x"
"""


@pytest.mark.parametrize(
    ("path", "line"),
    [
        (("name",), 2),
        (("readings", "chest"), 4),
        (("readings", "hip", "unit"), 5),
        (("readings",), 3),
        (("reading", 0, "dimension"), 7),
        (("reading", 1, "dimension"), 9),
        (("reading", 1), 8),
        (("reading", 1, "note", "by"), 11),
        (("nowhere",), 1),
    ],
)
def test_line_of_an_entry(path: tuple[str | int, ...], line: int) -> None:
    assert line_of(TEXT, path) == line


def complaint(text: str) -> TomlFileError:
    with pytest.raises(TomlFileError) as caught:
        read_name(text)
    return caught.value


def read_name(text: str) -> str | None:
    entries = Entries.of_file(text, TomlFileError)
    name = entries.text("name")
    entries.close()
    return name


def test_broken_toml_names_its_line() -> None:
    wrong = complaint('format = 1\nname = "Rider\n')
    assert (wrong.line, wrong.reason.code) == (2, "not-toml")


def test_an_end_too_early_names_the_last_line() -> None:
    wrong = complaint("format = 1\nneeds = [")
    assert (wrong.line, wrong.reason.code) == (2, "not-toml")


def test_a_newer_format_is_refused() -> None:
    assert complaint("format = 2\n").reason.code == "format-newer"


def test_a_missing_format_is_named() -> None:
    assert complaint('name = "x"\n').reason.code == "format-missing"


def test_a_misspelt_key_does_not_go_unnoticed() -> None:
    wrong = complaint('format = 1\n\nnaem = "Rider 7"\n')
    assert (wrong.line, wrong.reason.code) == (3, "unknown-key")
    assert "name" in str(wrong)


def test_a_wrong_type_is_named() -> None:
    assert complaint("format = 1\nname = 7\n").reason.code == "not-text"
