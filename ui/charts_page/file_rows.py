"""The files as rows: whose they are, for which models, what they gave, how they stand. No Qt."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from charts.finding_sentences import sentence_of
from charts.findings import Level
from charts.schema import FileReading
from charts.sources import LoadedFile
from harmonizer.shop.season import FileRecord, FileState, State
from harmonizer.workspace import Workspace
from ui.file_states import LOOK_OF, facts_of, maker_of, name_of, state_words
from ui.theme import Look
from ui.words import Words

WANTING: Final = frozenset({State.QUESTIONS, State.READY})
_ORDER: Final = tuple(LOOK_OF)


@dataclass(frozen=True, slots=True)
class FileRow:
    """One file. ``maker`` and ``models`` are names, ``gave`` counts, ``says`` is its state."""

    file: str
    maker: str
    models: str
    name: str
    gave: str
    says: str
    state: State

    @property
    def look(self) -> Look:
        """The colour and sign of its state."""
        return LOOK_OF[self.state]

    @property
    def sentence(self) -> str:
        """What a screen reader says of the row."""
        parts = (self.maker, self.models, self.name, self.gave, self.says)
        return ". ".join(part for part in parts if part)


def file_rows(workspace: Workspace, words: Words) -> tuple[FileRow, ...]:
    """One row a file: what wants a person first, then by maker and name."""
    rows = [
        _row(file, state, workspace.record(state.file), words)
        for file, state in zip(workspace.files, workspace.states(), strict=True)
    ]
    return tuple(sorted(rows, key=lambda row: (_ORDER.index(row.state), row.maker, row.file)))


def _row(file: LoadedFile, state: FileState, record: FileRecord, words: Words) -> FileRow:
    reading = file.reading
    says = state_words(state, record, words)
    problem = next((one for one in reading.findings if one.level is Level.ERROR), None)
    if state.state is State.NOT_READABLE and problem is not None:
        says = sentence_of(problem, words.wording)
    return FileRow(
        reading.file,
        maker_of(file),
        _models(file),
        name_of(reading.file, words),
        _gave(reading, words),
        says,
        state.state,
    )


def _models(file: LoadedFile) -> str:
    facts = [each.model for each in facts_of(file)]
    said = [chart.model.text for chart in file.reading.charts if chart.model is not None]
    return ", ".join(dict.fromkeys(facts or said))


def _gave(reading: FileReading, words: Words) -> str:
    sizes = sum(len(chart.sizes) for chart in reading.charts)
    return words("file-gave", count=len(reading.charts), sizes=sizes) if reading.charts else ""
