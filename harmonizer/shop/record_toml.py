"""What was said of one file as TOML that a person can read, and back again unchanged."""

from __future__ import annotations

from charts.answers import Question
from charts.answers_toml import FORMAT_LINE, AnswersFileError, answer_text, read_answer
from charts.toml_text import Entries
from charts.toml_writing import Plain, lines_of, table_text
from harmonizer.shop.season import Asked, FileRecord, Mark


def write_record(record: FileRecord) -> str:
    """A whole file about one file."""
    head: dict[str, Plain | None] = {
        "name": record.name,
        "content": record.digest,
        "supplier": record.supplier,
    }
    parts = [FORMAT_LINE, "\n".join((*lines_of(head), "", ""))]
    parts += [table_text("[[approved]]", _mark(mark)) for mark in record.approved]
    parts += [table_text("[[aside]]", _mark(mark)) for mark in record.aside]
    parts += [table_text("[[asked]]", _asked(asked)) for asked in record.asked]
    parts += [answer_text(answer) for answer in record.answers]
    return "".join(parts)


def read_record(text: str) -> FileRecord:
    """What was said of one file.

    Raises AnswersFileError with the line and the reason: no TOML, a newer format, an unknown key.
    """
    file = Entries.of_file(text, AnswersFileError)
    name = file.exact("name")
    if not name:
        raise file.wrong("name", "value-missing")
    record = FileRecord(
        name,
        file.exact("content"),
        file.exact("supplier"),
        tuple(read_answer(entry) for entry in file.tables("answer")),
        tuple(_read_mark(entry) for entry in file.tables("approved")),
        tuple(_read_mark(entry) for entry in file.tables("aside")),
        tuple(_read_asked(entry) for entry in file.tables("asked")),
    )
    file.close()
    return record


def _mark(mark: Mark) -> dict[str, Plain | None]:
    return {
        "by": mark.by,
        "on": mark.on,
        "chart": mark.chart,
        "why": mark.why,
        "habit": mark.habit or None,
    }


def _read_mark(entry: Entries) -> Mark:
    on = entry.day("on")
    if on is None:
        raise entry.wrong("on", "value-missing")
    habit = entry.number("habit")
    if habit is not None and habit != int(habit):
        raise entry.wrong("habit", "not-a-number")
    mark = Mark(entry.exact("by"), on, entry.exact("chart"), entry.exact("why"), int(habit or 0))
    entry.close()
    return mark


def _asked(asked: Asked) -> dict[str, Plain | None]:
    of = asked.question
    return {
        "code": of.code,
        "place": of.place,
        "heading": of.heading,
        "text": of.text,
        "sent": asked.sent,
        "answer": asked.answer,
        "by": asked.by,
        "on": asked.on,
    }


def _read_asked(entry: Entries) -> Asked:
    question = Question(*(entry.exact(key) for key in ("code", "place", "heading", "text")))
    asked = Asked(
        question, entry.day("sent"), entry.exact("answer"), entry.exact("by"), entry.day("on")
    )
    entry.close()
    return asked
