"""The figures on disk: readable, whole, and never lost to a version that cannot read them."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.schema import Definition
from charts.wording import LANGUAGES, Wording
from charts.writers.whole_file import NotWrittenError
from harmonizer.settings import DEFAULTS
from harmonizer.settings_file import (
    SettingsFile,
    SettingsFileError,
    read_settings,
    write_settings,
)

CHANGED = replace(DEFAULTS, hand_width=8.0, default_waist=Definition.WAIST_NAVEL)
WORDING = Wording()


def test_only_what_differs_is_written_each_with_what_it_is() -> None:
    assert write_settings(DEFAULTS) == "format = 1\n"
    assert write_settings(replace(DEFAULTS, hand_width=8.0)) == (
        "format = 1\n\n"
        "# Hand width. What the shop counts as one hand above the saddle.\n"
        "# Default: 9 cm.\n"
        "hand_width = 8.0\n"
    )


@pytest.mark.parametrize("language", LANGUAGES)
def test_figures_come_back_as_they_were_written(language: str) -> None:
    assert read_settings(write_settings(CHANGED, Wording(language))) == CHANGED


@given(st.floats(6.0, 14.0))
def test_every_hand_width_comes_back_to_the_last_digit(width: float) -> None:
    settings = replace(DEFAULTS, hand_width=width)
    assert read_settings(write_settings(settings)) == settings


@pytest.mark.parametrize(
    ("text", "line", "said"),
    [
        ("hand_width = 8", 1, "The line “format = 1” is missing at the top."),
        ("format = 2\n", 1, "It was written by a newer version of the program."),
        ("format = 1\nhand = 8\n", 2, "There is no figure called “hand”."),
        ("format = 1\n\nhand_width = 80\n", 3, "At most 14 cm: more is a slip of the keys."),
        ('format = 1\nhand_width = "8"\n', 2, "A number of zero or more belongs here."),
        ("format = 1\nhand_width = -8\n", 2, "A number of zero or more belongs here."),
        ('format = 1\ndefault_hip = "navel"\n', 2, "This is no way to measure here."),
        ('format = 1\ndefault_hip = "knee"\n', 2, "“knee” is no way to measure here."),
        ("format = 1\nhand_width = \n", 2, "A sign, quote or bracket is missing here."),
    ],
)
def test_a_file_that_cannot_be_used_names_its_line(text: str, line: int, said: str) -> None:
    with pytest.raises(SettingsFileError) as caught:
        read_settings(text)
    assert (caught.value.line, caught.value.say(WORDING)) == (line, said)


def test_two_figures_that_agree_only_together_can_be_read_together() -> None:
    text = "format = 1\nhands_check = 1.5\nhands_right = 1.6\n"
    assert read_settings(text).hands_check == 1.5


def test_no_file_means_the_defaults_and_the_first_change_makes_it(tmp_path: Path) -> None:
    file = SettingsFile(tmp_path / "new" / "settings.toml")
    assert file.read(WORDING).settings == DEFAULTS
    file.write(CHANGED, WORDING)
    assert SettingsFile(file.path).read(WORDING).settings == CHANGED


@pytest.mark.parametrize("content", [b"format = 9\n", b"\xff\xfe\x00", b"format = 1\nhand = 1"])
def test_what_could_not_be_used_is_said_and_never_written_over(
    tmp_path: Path, content: bytes
) -> None:
    path = tmp_path / "settings.toml"
    path.write_bytes(content)
    file = SettingsFile(path)
    opened = file.read(WORDING)
    assert opened.settings == DEFAULTS
    assert "settings.toml" in opened.refused
    with pytest.raises(NotWrittenError):
        file.write(CHANGED, WORDING)
    assert path.read_bytes() == content
