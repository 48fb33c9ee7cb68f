"""Our own faults: written down whole, and told in one sentence that names the file."""

from __future__ import annotations

import sys
from types import TracebackType

from ui.fault_file import written_down
from ui.main_window import MainWindow


class FaultTeller:
    """Stands in the place of the interpreter's hook: no traceback ever reaches a person."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window

    def install(self) -> None:
        """Take over from now on, for slots and paint events as well."""
        sys.excepthook = self.tell

    def tell(
        self, kind: type[BaseException], fault: BaseException, trace: TracebackType | None
    ) -> None:
        """Write the fault down and say where."""
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, fault, trace)
            return
        path = written_down(kind, fault, trace)
        said = self._window.words.wording.say("faces", "our-fault", path=str(path))
        self._window.notice.say(said)
