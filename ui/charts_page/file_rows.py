"""The files as rows: whose they are, for which models, what they gave, how they stand. No Qt."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from charts.schema import FileReading
from charts.sources import LoadedFile
from harmonizer.shop.season import ChartState, FileRecord, FileState, State, key_of
from harmonizer.workspace import Workspace
from ui.chart_table import name_words
from ui.charts_page.first_question import FirstQuestion, first_question
from ui.file_states import (
    LOOK_OF,
    chart_name,
    chart_words,
    facts_of,
    fault_words,
    maker_of,
    name_of,
    state_words,
)
from ui.theme import Look
from ui.words import Words

_ORDER: Final = tuple(LOOK_OF)


@dataclass(frozen=True, slots=True)
class FileRow:
    """One file, or one of its several charts where ``chart`` is its key.

    ``maker`` and ``models`` are names, ``name`` is the file's or the chart's place in it, ``gave``
    counts, ``says`` is its state; ``first`` is which of its open questions comes first.
    """

    file: str
    maker: str
    models: str
    name: str
    gave: str
    says: str
    state: State
    chart: str = ""
    first: FirstQuestion | None = None

    @property
    def look(self) -> Look:
        """The colour and sign of its state."""
        return LOOK_OF[self.state]

    @property
    def sentence(self) -> str:
        """What a screen reader says of the row."""
        first = self.first.text if self.first is not None else ""
        parts = (self.maker, self.models, self.name, self.gave, self.says, first)
        return ". ".join(part for part in parts if part)


def file_rows(workspace: Workspace, words: Words) -> tuple[FileRow, ...]:
    """One row a file: what wants a person first, then by maker and name.

    Where a file has several charts, a row of each follows that of the whole.
    """
    whole = [
        (_row(file, state, workspace.record(state.file), words), state)
        for file, state in zip(workspace.files, workspace.states(), strict=True)
    ]
    whole.sort(key=lambda pair: (_ORDER.index(pair[0].state), pair[0].maker, pair[0].file))
    return tuple(row for pair in whole for row in _with_charts(*pair, workspace, words))


def _with_charts(
    row: FileRow, state: FileState, workspace: Workspace, words: Words
) -> Iterator[FileRow]:
    yield row
    if len(state.charts) > 1:
        record = workspace.record(row.file)
        yield from (_chart_row(row.file, each, record, words) for each in state.charts)


def _chart_row(file: str, state: ChartState, record: FileRecord, words: Words) -> FileRow:
    chart = state.chart
    return FileRow(
        file,
        "",
        chart_name(chart, words),
        chart.place,
        words.wording.say("questions", "chart-gave", count=len(chart.sizes)),
        chart_words(state, record, words),
        state.state,
        key_of(chart),
    )


def _row(file: LoadedFile, state: FileState, record: FileRecord, words: Words) -> FileRow:
    reading = file.reading
    says = state_words(state, record, words)
    if state.state is State.NOT_READABLE:
        says = fault_words(reading, words.wording) or says
    return FileRow(
        reading.file,
        maker_of(file),
        _models(file, words),
        name_of(reading.file, words),
        _gave(reading, words),
        says,
        state.state,
        first=first_question(state, words.wording) if state.state is State.QUESTIONS else None,
    )


def _models(file: LoadedFile, words: Words) -> str:
    """The models as the shop noted them, else as the charts say, with where that was taken from."""
    facts = [each.model for each in facts_of(file)]
    models = [chart.model for chart in file.reading.charts if chart.model is not None]
    said = [name_words(model, words.wording) for model in models]
    return ", ".join(dict.fromkeys(facts or said))


def _gave(reading: FileReading, words: Words) -> str:
    sizes = sum(len(chart.sizes) for chart in reading.charts)
    return words("file-gave", count=len(reading.charts), sizes=sizes) if reading.charts else ""
