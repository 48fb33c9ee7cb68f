"""The house keeps its shape: format, lint, types, import contracts, and what stands at the top."""

from __future__ import annotations

import shutil
import subprocess
import sys
from pathlib import Path

import pytest

CHECKOUT = Path(__file__).resolve().parent.parent
TOP = {
    "README.md",
    "DEVELOPERS.md",
    "pyproject.toml",
    "harmonizer",
    "ui",
    "charts",
    "tests",
    "resources",
}


def checked(*command: str) -> str:
    """The output of a checker run on the checkout; fails with that output."""
    done = subprocess.run(command, cwd=CHECKOUT, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


def tracked_files() -> list[str]:
    return checked("git", "ls-files").splitlines()


def is_a_checkout() -> bool:
    return (CHECKOUT / ".git").exists() and shutil.which("git") is not None


def test_every_file_is_formatted() -> None:
    checked(sys.executable, "-m", "ruff", "format", "--check", ".")


def test_the_linter_finds_nothing() -> None:
    checked(sys.executable, "-m", "ruff", "check", ".")


def test_the_types_are_strict_and_hold() -> None:
    checked(sys.executable, "-m", "mypy")


def test_imports_run_one_way() -> None:
    linter = Path(sys.executable).with_name("lint-imports")
    assert "0 broken" in checked(str(linter), "--no-cache")


@pytest.mark.skipif(not is_a_checkout(), reason="without git there is no list of tracked files")
def test_the_visible_top_level_is_the_agreed_one() -> None:
    visible = {name.split("/")[0] for name in tracked_files() if not name.startswith(".")}
    assert visible == TOP


@pytest.mark.skipif(not is_a_checkout(), reason="without git there is no list of tracked files")
def test_no_room_is_a_drawer_for_odds_and_ends() -> None:
    drawers = {
        "utils",
        "util",
        "helpers",
        "helper",
        "manager",
        "managers",
        "base",
        "misc",
        "common",
    }
    assert not [name for name in tracked_files() if Path(name).stem in drawers]
