"""Starting: what is loaded by the time the window stands, and the binding's known fault."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

ROOT = Path(__file__).resolve().parents[2]
HEAVY = ("pandas", "openpyxl", "pint", "lxml", "scipy", "rapidfuzz")

FRAME = """
import sys
from PySide6.QtWidgets import QApplication
from ui.app import Opening
application = QApplication([])
opening = Opening(application, demo=False)
opening.frame.floor.painted.disconnect()
opening.frame.show()
application.processEvents()
opening.frame.grab()
"""
FURNISHED = (
    FRAME
    + """
opening.furnish()
application.processEvents()
opening.frame.grab()
"""
)


def loaded_after(program: str, home: Path) -> set[str]:
    """The top-level modules in a process of its own that ran ``program``."""
    told = "print(*sorted({name.partition('.')[0] for name in sys.modules}))"
    done = subprocess.run(
        [sys.executable, "-c", program + told],
        cwd=ROOT,
        env=os.environ | {"QT_QPA_PLATFORM": "offscreen", "HOME": str(home)},
        capture_output=True,
        text=True,
        check=True,
        timeout=90,
    )
    assert done.stderr == ""
    return set(done.stdout.split())


@pytest.mark.parametrize("program", [FRAME, FURNISHED])
def test_heavy_libraries_are_not_loaded_when_the_window_stands(
    program: str, tmp_path: Path
) -> None:
    assert not loaded_after(program, tmp_path).intersection(HEAVY)


def test_the_first_painted_frame_needs_neither_numbers_nor_charts(tmp_path: Path) -> None:
    assert not loaded_after(FRAME, tmp_path).intersection({"numpy", "charts", "harmonizer"})


@pytest.mark.parametrize(("language", "title"), [("de", "Anprobe"), ("en", "Fitting")])
def test_the_window_speaks_the_language_it_was_opened_in(
    language: str, title: str, tmp_path: Path
) -> None:
    opened = FURNISHED.replace("demo=False", f"demo=False, language={language!r}")
    told = "print('title', opening.desk.window.words('page-fitting'));"
    assert {"title", title} <= loaded_after(opened + told, tmp_path)


def test_the_binding_does_not_eat_references_to_none(qtbot: QtBot) -> None:
    """PySide6 6.12.0 on Python 3.11 loses one reference a call until the process aborts."""
    widget = QWidget()
    qtbot.addWidget(widget)
    before = sys.getrefcount(None)
    for _ in range(200):
        widget.setEnabled(True)
    assert abs(sys.getrefcount(None) - before) < 20
