"""Letters to makers as files: one text and one page for every file with open questions."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

from charts.wording import Wording
from charts.writers.letter import letter_text
from charts.writers.letter_page import letter_page
from charts.writers.whole_file import NotWrittenError, write_whole
from harmonizer.shop.letters import letter_about
from harmonizer.shop.season import open_questions
from harmonizer.workspace import Workspace


def write_letters(workspace: Workspace, folder: Path, wording: Wording) -> tuple[Path, ...]:
    """Write the letters into ``folder``, which is made if only it is missing.

    A file that could not be read at all gets none: its maker would not know what to answer.
    Raises NotWrittenError.
    """
    today = datetime.now(UTC).astimezone().date()
    written: list[Path] = []
    for file in workspace.files:
        if not file.data or not file.reading.charts or not open_questions(file.reading):
            continue
        answers = workspace.record(file.reading.file).answers
        letter = letter_about(file, answers, today)
        _make(folder)
        name = file.reading.file.replace("/", "-")
        for ending, data in (
            ("txt", letter_text(letter, wording).encode()),
            ("html", letter_page(letter, wording)),
        ):
            path = folder / f"{name}.letter.{ending}"
            write_whole(path, data)
            written.append(path)
    return tuple(written)


def _make(folder: Path) -> None:
    try:
        folder.mkdir(exist_ok=True)
    except FileNotFoundError as fault:
        raise NotWrittenError("target-folder-missing", folder) from fault
    except (FileExistsError, NotADirectoryError) as fault:
        raise NotWrittenError("target-is-file", folder) from fault
    except OSError as fault:
        raise NotWrittenError("target-failed", folder, fault.strerror or str(fault)) from fault
