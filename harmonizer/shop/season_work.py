"""The season's work on the files at hand: answer, approve, keep aside, write to makers.

Each act is one step that can be taken back. The pure part of an act (reading a file again) is a
method of its own, so that it may run beside the screen: ``take(answered(...))``.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import UTC, date, datetime
from pathlib import Path

from charts.answers import Answer, Question
from charts.findings import Finding
from charts.sources import Loaded, LoadedFile
from harmonizer.shop.arrival import Arrival, Known, read_again, still_valid
from harmonizer.shop.closing import learned_at_closing
from harmonizer.shop.history import Contents, History
from harmonizer.shop.season import (
    Asked,
    FileRecord,
    FileState,
    Mark,
    Stage,
    key_of,
    stage_of,
    state_of,
)
from harmonizer.shop.shelf import recorded, shelved
from harmonizer.shop.shop_folder import Shop, ShopFolder
from harmonizer.shop.stock_toml import StockList


class SeasonWork(History):
    """What a buyer does with the files of a season."""

    # What is known

    def record(self, file: str) -> FileRecord:
        """What was said of the file of this name; an empty record where nothing was."""
        held = self._now.file(file)
        return self._now.record(file) or FileRecord(file, held.digest if held else "")

    def known(self) -> Known:
        """What is needed to read arriving files in the light of what was said before."""
        today = datetime.now(UTC).astimezone().date()
        return Known(self._now.files, self._now.records, self._now.habits, today)

    def states(self) -> tuple[FileState, ...]:
        """The state of every file at hand and of its charts, by name."""
        return tuple(
            state_of(file.reading, self._now.record(file.reading.file)) for file in self._now.files
        )

    def state(self, file: str) -> FileState:
        """The state of the file of this name. Raises KeyError where there is none."""
        return state_of(self._held(file).reading, self._now.record(file))

    def stage(self, file: str, finding: Finding) -> tuple[Stage, Asked | None]:
        """Where a question of a file stands: open, sent, answered or settled."""
        return stage_of(finding, self._now.record(file))

    # The shop's folder

    def open_shop(self, folder: ShopFolder) -> Shop:
        """Take what a shop has said before, ahead of the files it was said of; no step to undo.

        What could not be used is in the result; files that are loaded from now on are read in the
        light of the rest.
        """
        shop = folder.read()
        now = replace(self._now, records=shop.records, habits=shop.habits, book=shop.riders)
        now = replace(now, stock=shop.stock.lines, stock_on=shop.stock.on)
        self._become(replace(now, fittings=shop.fittings))
        return shop

    def save_shop(self, folder: ShopFolder) -> tuple[Path, ...]:
        """Bring the shop's folder to what is said now; the files that changed.

        Raises NotWrittenError.
        """
        now = self._now
        stock = StockList(now.stock, now.stock_on)
        return folder.write(now.records, now.habits, now.book, stock, now.fittings)

    # Files in

    def take(self, loaded: Loaded) -> None:
        """Take what was loaded; a file that is already here is replaced by its new reading."""
        if loaded.files:
            self._change(_with(self._now, loaded))

    # Answers

    def answered(self, answers: Mapping[str, Sequence[Answer]]) -> Arrival:
        """The files read again with more answers, by name; touches nothing.

        A question that was answered before is answered anew.
        """
        return self._with_answers(
            {file: _joined(self.record(file).answers, more) for file, more in answers.items()}
        )

    def answer(self, file: str, answers: Sequence[Answer]) -> None:
        """Take one act of a person: its answers hold for the file from now on."""
        self.take(self.answered({file: answers}))

    def withdrawn(self, file: str, answers: Sequence[Answer]) -> Arrival:
        """The file read again without some of its answers; touches nothing."""
        kept = tuple(one for one in self.record(file).answers if one not in answers)
        return self._with_answers({file: kept})

    def withdraw(self, file: str, answers: Sequence[Answer]) -> None:
        """Take answers back that were given at any time; their questions stand again."""
        self.take(self.withdrawn(file, answers))

    # Marks

    def approve(self, file: str, by: str, on: date, chart: str = "") -> None:
        """Approve a chart by its key, or the whole file, as it is read now.

        A chart of the file that was kept aside by itself stays aside. What was answered in the
        file becomes its supplier's habits in the same step, once each of its charts is closed.
        """
        record = self.record(file)
        approved = (*self._others(record.approved, file, chart), Mark(by, on, chart))
        aside = record.aside
        aside = self._others(aside, file, chart) if chart else tuple(m for m in aside if m.chart)
        digest = self._held(file).digest
        self._mark(replace(record, digest=digest, approved=approved, aside=aside), by, on)

    def keep_aside(self, file: str, by: str, on: date, chart: str = "", why: str = "") -> None:
        """Keep a chart, or the whole file, from being compared and printed."""
        record = self.record(file)
        aside = (*self._others(record.aside, file, chart), Mark(by, on, chart, why))
        approved = self._others(record.approved, file, chart)
        self._mark(replace(record, aside=aside, approved=approved), by, on)

    def reopen(self, file: str, chart: str = "") -> None:
        """Take approval and keeping aside from a chart or from the whole file."""
        record = self.record(file)
        approved = self._others(record.approved, file, chart)
        aside = self._others(record.aside, file, chart)
        self._record(replace(record, approved=approved, aside=aside))

    # Letters

    def sent(self, file: str, questions: Iterable[Question], on: date) -> None:
        """Note that questions went to the maker on a day."""
        record = self.record(file)
        for question in questions:
            record = _asked(record, question, sent=on)
        self._record(record)

    def replied(self, file: str, question: Question, text: str, by: str, on: date) -> None:
        """Note what came back, from whom and when; the chart itself changes by answers only."""
        self._record(_asked(self.record(file), question, answer=text, by=by, on=on))

    # Inside

    def _held(self, file: str) -> LoadedFile:
        held = self._now.file(file)
        if held is None:
            raise KeyError(file)
        return held

    def _with_answers(self, answers: Mapping[str, tuple[Answer, ...]]) -> Arrival:
        files, records = [], []
        for name, given in answers.items():
            before = self._held(name)
            after = read_again(before, given)
            record = replace(self.record(name), answers=given, digest=before.digest)
            files.append(after)
            records.append(still_valid(record, before.reading, after.reading))
        return Arrival(tuple(files), tuple(records), again=True)

    def _record(self, record: FileRecord) -> None:
        records = recorded(self._now.records, [record], {})
        self._change(replace(self._now, records=records))

    def _mark(self, record: FileRecord, by: str, on: date) -> None:
        """Take a record with other marks; a file that is closed by them teaches its habits."""
        reading = self._held(record.name).reading
        records = recorded(self._now.records, [record], {})
        habits = learned_at_closing(self._now.habits, reading, record, by, on)
        self._change(replace(self._now, records=records, habits=habits))

    def _others(self, marks: tuple[Mark, ...], file: str, chart: str) -> tuple[Mark, ...]:
        """The marks of the other charts; none where ``chart`` is "", the whole file.

        A mark on the whole file is one on each of its charts: the others keep it.
        """
        if not chart:
            return ()
        keys = [key_of(each) for each in self._held(file).reading.charts]
        each = (
            replace(one, chart=key) for one in marks for key in ([one.chart] if one.chart else keys)
        )
        return tuple(one for one in each if one.chart != chart)


def _with(contents: Contents, loaded: Loaded) -> Contents:
    if isinstance(loaded, Arrival) and loaded.again:
        return _read_anew(contents, loaded)
    shelf = shelved(contents.files, loaded.files)
    arriving = loaded.records if isinstance(loaded, Arrival) else ()
    records = recorded(contents.records, arriving, shelf.names)
    return replace(contents, files=shelf.files, records=records)


def _read_anew(contents: Contents, loaded: Arrival) -> Contents:
    """The files at hand with some of them in their new readings; what is gone stays gone."""
    new = {file.reading.file: file for file in loaded.files}
    files = tuple(new.get(file.reading.file, file) for file in contents.files)
    return replace(contents, files=files, records=recorded(contents.records, loaded.records, {}))


def _joined(before: Sequence[Answer], more: Sequence[Answer]) -> tuple[Answer, ...]:
    """The answers of both; an answer to the same question takes the place of the earlier one."""
    asked = {answer.about for answer in more} - {None}
    return (*(answer for answer in before if answer.about not in asked), *more)


def _asked(
    record: FileRecord,
    question: Question,
    *,
    sent: date | None = None,
    answer: str = "",
    by: str = "",
    on: date | None = None,
) -> FileRecord:
    before = next((one for one in record.asked if one.question == question), Asked(question))
    after = replace(before, sent=sent) if sent else replace(before, answer=answer, by=by, on=on)
    rest = tuple(one for one in record.asked if one.question != question)
    return replace(record, asked=(*rest, after))
