"""Where the product starts: the window, the demo, or a verb of the command line."""

from __future__ import annotations

import os
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import Final

from charts.wording import Wording
from ui.arguments import Request, UsageError, language_of, understood
from ui.fault_file import written_down
from ui.terminal_text import make_printable

_NOT_USABLE: Final = 2
_INTERRUPTED: Final = 130  # 128 and the number of the signal, as shells count


def main(words: Sequence[str] | None = None) -> int:
    """Run one command and return its exit status. Nobody ever sees a traceback."""
    given = sys.argv[1:] if words is None else list(words)
    if sys.stdout is None:  # closed by whoever started us, or a windowed start on Windows
        sys.stdout = Path(os.devnull).open("w", encoding="utf-8")  # noqa: SIM115 - until the end
    for stream in (sys.stdout, sys.stderr):
        if stream is not None:
            make_printable(stream)
    wording = Wording(language_of(given))
    try:
        return start(given, wording)
    except UsageError as fault:
        _complain(wording.say("faces", fault.code, **fault.values))
    except KeyboardInterrupt:
        _complain(wording.say("faces", "interrupted"))
        return _INTERRUPTED
    except BrokenPipeError:
        # Whoever read our output has seen enough; Python would complain once more at its end.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except OSError as fault:
        _complain(wording.say("faces", "system-refused", reason=fault.strerror or str(fault)))
    except Exception as fault:  # noqa: BLE001 - the one place where a fault of ours meets a person
        path = written_down(type(fault), fault, fault.__traceback__)
        _complain(wording.say("faces", "our-fault", path=str(path)))
    return _NOT_USABLE


def start(words: Sequence[str], wording: Wording) -> int:
    """Do what ``words`` ask for; the heavy rooms are entered only by the verb that needs them."""
    request = understood(words)
    if request.help:
        sys.stdout.write(wording.say("faces", "help"))
        return 0
    if request.verb in (None, "demo"):
        return _window(request, wording)
    from ui.command_line import run  # noqa: PLC0415 - a window need not wait for the verbs

    return run(request)


def _window(request: Request, wording: Wording) -> int:
    try:
        from ui.app import draw_pages, open_window  # noqa: PLC0415 - the verbs need no Qt
    except ImportError as fault:
        if fault.name is not None and not fault.name.startswith("PySide6"):
            raise
        _complain(wording.say("faces", "window-not-possible", reason=str(fault)))
        return _NOT_USABLE
    if request.picture is None:
        language = request.language if request.language_named else None
        return open_window(demo=request.verb == "demo", language=language)
    try:
        pages = draw_pages(Path(request.picture))
    except (FileExistsError, NotADirectoryError):
        _complain(wording.say("faces", "target-is-file", path=request.picture))
        return _NOT_USABLE
    except OSError as fault:
        values = {"path": request.picture, "reason": fault.strerror or str(fault)}
        _complain(wording.say("faces", "target-failed", **values))
        return _NOT_USABLE
    sys.stdout.write("".join(f"{page}\n" for page in pages))
    return 0


def _complain(line: str) -> None:
    if sys.stderr is not None:
        sys.stderr.write(f"{line}\n")


if __name__ == "__main__":
    sys.exit(main())
