"""Reading a file opens no connection and writes nothing: held over every reader's test."""

from __future__ import annotations

import pytest


@pytest.fixture(autouse=True)
def nothing_is_written_or_fetched(monkeypatch: pytest.MonkeyPatch) -> None:
    """Reading a file opens no connection and writes nothing."""

    def refuse(*_args: object, **_more: object) -> None:
        raise AssertionError("a reader must not do this")

    monkeypatch.setattr("socket.socket.connect", refuse)
    monkeypatch.setattr("pathlib.Path.write_bytes", refuse)
    monkeypatch.setattr("pathlib.Path.write_text", refuse)
