"""A desk for tests of the command line: files, commands, and what each run printed."""

from __future__ import annotations

import json
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from ui.__main__ import main

CLEAN = (
    "Size;Chest (cm);Waist (cm);Hip (cm);Back length (cm)\n"
    "S;84-92;68-76;90-98;40-43\nM;90-98;74-82;96-104;42-45\nL;96-104;80-90;102-110;44-47\n"
)
DOUBTFUL = CLEAN.replace("Waist (cm)", "Wombat (cm)")
RIDER = (
    'format = 1\nname = "Rider 7"\ntaken_by = "fitter"\n[readings]\nchest = "93 cm"\n'
    'waist = "80 cm"\nhip = "101 cm"\nback_length = "45 cm"\n'
)


@dataclass(frozen=True)
class Ran:
    """One run: its exit status and what it printed."""

    status: int
    out: str
    err: str

    @property
    def document(self) -> dict[str, Any]:
        return json.loads(self.out)


class Desk:
    """A folder of files and a way to give commands on them."""

    def __init__(self, folder: Path, capture: pytest.CaptureFixture[str]) -> None:
        self.folder = folder
        self.capture = capture

    def file(self, name: str, content: str | bytes = CLEAN) -> str:
        path = self.folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content if isinstance(content, bytes) else content.encode())
        return str(path)

    def run(self, *words: str) -> Ran:
        status = main(words)
        printed = self.capture.readouterr()
        assert "Traceback" not in printed.out + printed.err
        return Ran(status, printed.out, printed.err)


def one_line(ran: Ran, *parts: str) -> None:
    """Standard output is empty, standard error is one line that names all ``parts``."""
    assert ran.out == ""
    assert ran.err.count("\n") == 1
    for part in parts:
        assert part in ran.err
