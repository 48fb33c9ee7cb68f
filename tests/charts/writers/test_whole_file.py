"""A target is written whole or not at all, and every failure says what to do."""

from __future__ import annotations

import errno
import os
from pathlib import Path

import pytest

from charts.wording import LANGUAGES, Wording
from charts.writers.whole_file import NotWrittenError, write_whole


def refused(path: Path) -> str:
    with pytest.raises(NotWrittenError) as caught:
        write_whole(path, b"new")
    for language in LANGUAGES:
        assert Wording(language).say("faces", caught.value.code, path=path, reason="")
    return caught.value.code


def failing(number: int) -> OSError:
    return OSError(number, os.strerror(number))


def test_the_new_content_replaces_the_old_and_nothing_else_is_left(tmp_path: Path) -> None:
    target = tmp_path / "Größen 2027.xlsx"
    target.write_bytes(b"old")
    write_whole(target, b"new")
    assert target.read_bytes() == b"new"
    assert list(tmp_path.iterdir()) == [target]


def test_a_missing_folder_is_not_made(tmp_path: Path) -> None:
    assert refused(tmp_path / "no" / "chart.xlsx") == "target-folder-missing"


def test_a_folder_is_no_target(tmp_path: Path) -> None:
    assert refused(tmp_path) == "target-is-folder"


def test_a_target_open_elsewhere_keeps_its_old_content(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    target = tmp_path / "chart.xlsx"
    target.write_bytes(b"old")

    def locked(self: Path, other: Path) -> Path:
        raise PermissionError(errno.EACCES, "open elsewhere")

    monkeypatch.setattr(Path, "replace", locked)
    assert refused(target) == "target-locked"
    assert {path: path.read_bytes() for path in tmp_path.iterdir()} == {target: b"old"}


@pytest.mark.parametrize(
    ("number", "code"),
    [
        (errno.ENOSPC, "target-disk-full"),
        (errno.EACCES, "target-forbidden"),
        (errno.EIO, "target-failed"),
    ],
)
def test_a_failure_while_writing_leaves_no_half_file(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, number: int, code: str
) -> None:
    target = tmp_path / "chart.xlsx"
    target.write_bytes(b"old")

    def fails(descriptor: int) -> None:
        raise failing(number)

    monkeypatch.setattr(os, "fsync", fails)
    assert refused(target) == code
    assert {path: path.read_bytes() for path in tmp_path.iterdir()} == {target: b"old"}


def test_a_link_is_followed_and_kept(tmp_path: Path) -> None:
    real, link = tmp_path / "real.csv", tmp_path / "link.csv"
    real.write_bytes(b"old")
    try:
        link.symlink_to(real)
    except OSError:
        pytest.skip("this system makes no links for us")
    write_whole(link, b"new")
    assert link.is_symlink()
    assert real.read_bytes() == b"new"
