"""How long one file may take. A chart is read in hundredths of a second."""

from __future__ import annotations

import time


class Patience:
    """Seconds of this thread's own work: a busy machine makes nobody impatient."""

    def __init__(self, seconds: float) -> None:
        self._seconds = seconds
        self._started = time.thread_time()

    @property
    def is_over(self) -> bool:
        """Whether more work was done than was allowed."""
        return time.thread_time() - self._started > self._seconds

    @property
    def allowed(self) -> str:
        """What was allowed, as a person reads it: "2 s"."""
        return f"{self._seconds:g} s"
