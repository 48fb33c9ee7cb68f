"""The workspace without a screen: read, fit, combine, letter. Results go to standard output.

Exit status: 0 done; 1 done, but questions are open or nothing fits; 2 the input could not be used.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Iterable, Sequence
from datetime import UTC, datetime
from pathlib import Path
from types import MappingProxyType
from typing import Any, Final

from charts.finding_sentences import sentence_of
from charts.findings import Level
from charts.in_house import InHouseChart
from charts.json_form import document
from charts.sources import PASTED, Loaded, LoadedFile
from charts.wording import Wording
from charts.writers.registry import WRITERS, check_ending
from charts.writers.whole_file import NotWrittenError
from harmonizer.explain import sentence
from harmonizer.fit_json import fit_document
from harmonizer.fit_sheet import FitSheet
from harmonizer.plausibility import Check, checks
from harmonizer.rider import Rider
from harmonizer.rider_before import dated, last_time
from harmonizer.rider_file import RiderFileError, read_rider
from harmonizer.settings import DEFAULTS, Settings
from harmonizer.settings_file import FILE_NAME as SETTINGS_NAME
from harmonizer.settings_file import SettingsFileError, read_settings
from harmonizer.shop.shop_folder import ShopFolder
from harmonizer.states import Verdict
from harmonizer.workspace import Workspace
from ui.arguments import Request
from ui.fit_report import fit_report
from ui.letter_files import write_letters
from ui.read_report import read_report
from ui.terminal_text import terminal_width
from ui.words import Words

DONE: Final = 0
DONE_WITH_QUESTIONS: Final = 1
NOT_USABLE: Final = 2

_SERVES: Final = frozenset(
    {Verdict.FITS, Verdict.EDGE, Verdict.CHECK_LENGTH, Verdict.LENGTH_UNKNOWN}
)


class _Stop(Exception):  # noqa: N818 - an end of the work with its sentence, no fault of ours
    """The input cannot be used; the message is for the person."""


def run(request: Request) -> int:
    """Do what was asked for and return the exit status."""
    wording = Wording(request.language)
    try:
        match request.verb:
            case "read":
                return _read(request, wording)
            case "fit":
                return _fit(request, wording)
            case "letter":
                return _letter(request, wording)
            case _:
                return _combine(request, wording)
    except _Stop as stop:
        _complain(str(stop))
        return NOT_USABLE


def _read(request: Request, wording: Wording) -> int:
    workspace, loaded = _loaded(request, wording)
    readings = workspace.charts()
    unusable = _none_usable(request, loaded)
    if request.as_json:
        _print_json(document(readings, wording))
    elif not unusable:
        _print_lines(read_report(readings, wording, terminal_width()))
    if unusable:
        _complain_of_files(loaded.files, wording)
        return NOT_USABLE
    return _status(loaded)


def _fit(request: Request, wording: Wording) -> int:
    rider = _rider(Path(request.rider or ""), wording)
    workspace, loaded = _loaded(request, wording)
    _complain_of_files(loaded.files, wording)
    if _none_usable(request, loaded):
        return NOT_USABLE
    sheet = workspace.fit(rider)
    asked = _asked_of(workspace, rider)
    if request.as_json:
        _print_json(fit_document(sheet, wording, asked))
        for one in asked:
            _complain(wording.say("faces", "asked", question=sentence(one.reason, wording)))
    else:
        words, width = Words(request.language), terminal_width()
        every = request.every_size
        _print_lines(fit_report(sheet, words, width, every_size=every, asked=asked))
        _say_what_is_open(loaded, wording)
    return _status(loaded) if _something_fits(sheet) else DONE_WITH_QUESTIONS


def _asked_of(workspace: Workspace, rider: Rider) -> tuple[Check, ...]:
    """What is asked about the readings, among it a change since the last visit."""
    today = datetime.now(UTC).astimezone().date()
    before = last_time(rider, workspace.kept_of(rider.name), today)
    return checks(dated(rider, today), before, workspace.settings)


def _combine(request: Request, wording: Wording) -> int:
    out = Path(request.out or "")
    try:
        check_ending(out, _WRITERS)
        workspace, loaded = _loaded(request, wording)
        _complain_of_files(loaded.files, wording)
        if _none_usable(request, loaded):
            return NOT_USABLE
        chart = workspace.combine(out, wording, _WRITERS)
        said = _said_of(out, chart, wording)
    except NotWrittenError as fault:
        raise _Stop(
            wording.say("faces", fault.code, path=str(fault.path), reason=fault.reason)
        ) from fault
    _print_lines([said])
    _say_what_is_open(loaded, wording)
    return _status(loaded) if chart.rows else DONE_WITH_QUESTIONS


def _letter(request: Request, wording: Wording) -> int:
    workspace, loaded = _loaded(request, wording)
    _complain_of_files(loaded.files, wording)
    if _none_usable(request, loaded):
        return NOT_USABLE
    try:
        written = write_letters(workspace, Path(request.out or ""), wording)
    except NotWrittenError as fault:
        raise _Stop(
            wording.say("faces", fault.code, path=str(fault.path), reason=fault.reason)
        ) from fault
    _print_lines([str(path) for path in written] or [wording.say("faces", "no-letters")])
    return _status(loaded)


def _wall_pdf(chart: InHouseChart, wording: Wording) -> bytes:
    """The wall sheet; only this kind of file needs what draws."""
    try:
        from ui.wall_sheet.headless import wall_pdf  # noqa: PLC0415 - no other verb needs Qt

        return wall_pdf(chart, wording)
    except ImportError as fault:
        if fault.name is not None and not fault.name.startswith("PySide6"):
            raise
        raise _Stop(wording.say("faces", "wall-not-possible", reason=str(fault))) from fault


_WALL: Final = ".pdf"
_WRITERS: Final = MappingProxyType({**WRITERS, _WALL: _wall_pdf})


def _said_of(out: Path, chart: InHouseChart, wording: Wording) -> str:
    """What was written; a wall sheet is counted from now on."""
    values = {"path": str(out), "count": len(chart.rows)}
    if out.suffix.lower() != _WALL:
        return wording.say("faces", "combined", **values)
    from ui.wall_sheet.headless import keep_edition  # noqa: PLC0415 - no other verb needs Qt

    number = keep_edition(chart, wording).number
    return wording.say("faces", "combined-wall", number=number, **values)


def _loaded(request: Request, wording: Wording) -> tuple[Workspace, Loaded]:
    """Everything the sources hold; stops at a source that is not there or holds nothing."""
    paths = [Path(source) for source in request.sources if source != PASTED]
    for path in paths:
        if not path.exists():
            raise _Stop(wording.say("faces", "source-not-there", path=str(path)))
    pasted = _standard_input(wording) if PASTED in request.sources else None
    workspace = _of_shop(request, wording)
    loaded = workspace.load(paths, pasted=pasted, wording=wording, known=workspace.known())
    if not loaded.files:
        raise _Stop(wording.say("faces", "source-empty", path=request.sources[0]))
    workspace.take(loaded)
    return workspace, loaded


def _of_shop(request: Request, wording: Wording) -> Workspace:
    """A workspace that knows what the shop has said before, if one is named."""
    workspace = Workspace()
    if request.shop is not None:
        if not Path(request.shop).is_dir():
            raise _Stop(wording.say("faces", "shop-not-there", path=request.shop))
        for refused in workspace.open_shop(ShopFolder(Path(request.shop))).refused:
            _complain(refused.say(wording))
        if request.verb == "fit":
            workspace.open_settings(_settings_of(Path(request.shop), wording))
    return workspace


def _settings_of(shop: Path, wording: Wording) -> Settings:
    """The shop's own figures; by others than the shop's nothing may be compared in its name."""
    path = shop / SETTINGS_NAME
    try:
        return read_settings(path.read_text(encoding="utf-8-sig"))
    except FileNotFoundError:
        return DEFAULTS
    except SettingsFileError as fault:
        values = {"path": str(path), "line": fault.line, "reason": fault.say(wording)}
        raise _Stop(wording.say("faces", "settings-not-usable", **values)) from fault
    except (OSError, UnicodeDecodeError) as fault:
        raise _Stop(wording.say("faces", "settings-not-readable", path=str(path))) from fault


def _standard_input(wording: Wording) -> bytes:
    if sys.stdin.isatty():
        _complain(wording.say("faces", "paste-now"))
    return sys.stdin.buffer.read()


def _rider(path: Path, wording: Wording) -> Rider:
    try:
        return read_rider(path.read_text(encoding="utf-8-sig"), path.stem)
    except RiderFileError as fault:
        values = {"path": str(path), "line": fault.line, "reason": fault.say(wording)}
        raise _Stop(wording.say("faces", "rider-not-usable", **values)) from fault
    except FileNotFoundError as fault:
        raise _Stop(wording.say("faces", "rider-not-there", path=str(path))) from fault
    except (OSError, UnicodeDecodeError) as fault:
        raise _Stop(wording.say("faces", "rider-not-readable", path=str(path))) from fault


def _none_usable(request: Request, loaded: Loaded) -> bool:
    """Whether every file was named by itself and not one of them could be read."""
    folders = any(source != PASTED and Path(source).is_dir() for source in request.sources)
    return not folders and all(file.unusable for file in loaded.files)


def _status(loaded: Loaded) -> int:
    levels = {finding.level for file in loaded.files for finding in file.reading.findings}
    return DONE_WITH_QUESTIONS if levels & {Level.QUESTION, Level.ERROR} else DONE


def _something_fits(sheet: FitSheet) -> bool:
    return bool(sheet.rows) and sheet.rows[0].verdict in _SERVES


def _complain_of_files(files: Iterable[LoadedFile], wording: Wording) -> None:
    """One line for every file that gave no chart because it could not be read."""
    for file in files:
        if file.unusable:
            errors = [each for each in file.reading.findings if each.level is Level.ERROR]
            said = sentence_of(errors[0], wording)
            if file.reading.file not in said:
                said = wording.say("faces", "file-problem", file=file.reading.file, text=said)
            _complain(said)


def _say_what_is_open(loaded: Loaded, wording: Wording) -> None:
    levels = [finding.level for file in loaded.files for finding in file.reading.findings]
    if count := levels.count(Level.QUESTION):
        _complain(wording.say("faces", "questions-open", count=count))


def _complain(line: str) -> None:
    sys.stderr.write(f"{line}\n")


def _print_lines(lines: Sequence[str]) -> None:
    sys.stdout.write("\n".join(lines) + "\n")


def _print_json(content: dict[str, Any]) -> None:
    """UTF-8 whatever the code page, and nothing but the document."""
    text = json.dumps(content, ensure_ascii=False, indent=1, allow_nan=False)
    sys.stdout.flush()
    sys.stdout.buffer.write(text.encode("utf-8", "replace") + b"\n")
    sys.stdout.buffer.flush()
