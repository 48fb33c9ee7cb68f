"""What every test stands on: no screen, no real settings, and any warning is a failure."""

from __future__ import annotations

import logging
import os
from collections.abc import Iterator

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import pytest
from hypothesis import HealthCheck, settings

settings.register_profile("quick", max_examples=60, deadline=None)
settings.register_profile(
    "long", max_examples=2000, deadline=None, suppress_health_check=[HealthCheck.too_slow]
)
settings.load_profile(os.environ.get("HARMONIZER_HYPOTHESIS", "quick"))


@pytest.fixture(autouse=True)
def no_warning_is_logged(caplog: pytest.LogCaptureFixture) -> Iterator[None]:
    """A log record at WARNING or above fails the test that made it."""
    yield
    loud = [
        record
        for phase in ("setup", "call")
        for record in caplog.get_records(phase)
        if record.levelno >= logging.WARNING
    ]
    assert not loud, [record.getMessage() for record in loud]
