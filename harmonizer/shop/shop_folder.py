"""The shop's folder: what was said of each file, habits, riders, stock, as readable files.

    files/<name>-<number>.toml        answers, approvals, letters of one file
    habits/<supplier>-<number>.toml   one supplier's habits
    riders/<name>-<number>.toml       one rider's readings, for the next visit
    stock.toml                        the stock list, with its day
    fittings.toml                     which sizes came out right, for the notes beside the models

Each is written whole or not at all, and only when it is different. What cannot be used (damaged,
or of a newer version of the program) is named and never written over; what another has put there
in the meantime is left alone.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Final, TypeVar

from charts.answers_toml import AnswersFileError
from charts.habits.kept import Habits
from charts.habits.toml import read_habits, write_habits
from charts.wording import Wording
from charts.writers.whole_file import NotWrittenError, write_whole
from harmonizer.outcomes import Outcome
from harmonizer.shop.outcome_toml import read_outcomes, write_outcomes
from harmonizer.shop.record_toml import read_record, write_record
from harmonizer.shop.rider_book import RiderRecord, reference
from harmonizer.shop.rider_toml import read_kept_rider, write_rider
from harmonizer.shop.season import FileRecord
from harmonizer.shop.stock_toml import StockList, read_stock_list, write_stock_list

_FILES: Final = "files"
_HABITS: Final = "habits"
_RIDERS: Final = "riders"
_NOT_IN_NAMES: Final = re.compile(r"[^\w]+")
_LONGEST: Final = 60
T = TypeVar("T", FileRecord, Habits, RiderRecord, StockList, tuple[Outcome, ...])
_STOCK: Final = "stock.toml"
_FITTINGS: Final = "fittings.toml"


@dataclass(frozen=True, slots=True)
class Refused:
    """A file of the shop's folder that cannot be used; ``fault`` is None when it will not open."""

    path: Path
    fault: AnswersFileError | None = None

    def say(self, wording: Wording) -> str:
        """What is wrong with it, in one sentence."""
        if self.fault is None:
            return wording.say("season", "shop-not-opened", path=self.path.name)
        reason = self.fault.say(wording)
        return wording.say(
            "season", "shop-not-used", path=self.path.name, line=self.fault.line, reason=reason
        )


@dataclass(frozen=True, slots=True)
class Shop:
    """Everything a shop's folder holds."""

    records: tuple[FileRecord, ...] = ()
    habits: tuple[Habits, ...] = ()
    riders: tuple[RiderRecord, ...] = ()
    stock: StockList = field(default_factory=StockList)
    fittings: tuple[Outcome, ...] = ()
    refused: tuple[Refused, ...] = ()


class ShopFolder:
    """One shop's folder on disk. It is made when something is first written to it."""

    def __init__(self, path: Path) -> None:
        self.path = path
        self._refused: set[Path] = set()
        self._ours: set[Path] = set()

    def read(self) -> Shop:
        """Everything in the folder; what cannot be used is listed and left alone."""
        refused: list[Refused] = []
        records = self._read(self._paths(_FILES), read_record, refused)
        habits = self._read(self._paths(_HABITS), read_habits, refused)
        riders = self._read(self._paths(_RIDERS), read_kept_rider, refused)
        stock = self._read(self._paths_of(_STOCK), read_stock_list, refused)
        fittings = self._read(self._paths_of(_FITTINGS), read_outcomes, refused)
        self._refused = {one.path for one in refused}
        return Shop(
            tuple(sorted(records, key=lambda one: one.name)),
            tuple(sorted(habits, key=lambda one: one.supplier)),
            tuple(sorted(riders, key=lambda one: one.name)),
            next(iter(stock), StockList()),
            next(iter(fittings), ()),
            tuple(refused),
        )

    def write(
        self,
        records: Iterable[FileRecord],
        habits: Iterable[Habits],
        riders: Iterable[RiderRecord] = (),
        stock: StockList | None = None,
        fittings: Sequence[Outcome] = (),
    ) -> tuple[Path, ...]:
        """Bring the folder to this state and return what was written or taken away.

        Raises NotWrittenError when a file cannot be written, or one of a newer version stands in
        its place; what was written before that stays, each file whole.
        """
        rooms = {
            _FILES: {one.name: write_record(one) for one in records},
            _HABITS: {one.supplier: write_habits(one) for one in habits},
            _RIDERS: {reference(one.name): write_rider(one) for one in riders},
        }
        changed: list[Path] = []
        for room, texts in rooms.items():
            wanted = {self.path / room / file_name(name): text for name, text in texts.items()}
            changed += self._write(wanted, self._paths(room))
        lists = {
            _STOCK: write_stock_list(stock) if stock and stock.lines else "",
            _FITTINGS: write_outcomes(fittings) if fittings else "",
        }
        for name, text in lists.items():
            kept = {self.path / name: text} if text else {}
            changed += self._write(kept, self._paths_of(name))
        return tuple(changed)

    def _read(
        self, paths: Iterable[Path], reader: Callable[[str], T], refused: list[Refused]
    ) -> list[T]:
        found: list[T] = []
        for path in paths:
            try:
                found.append(reader(path.read_text(encoding="utf-8")))
                self._ours.add(path)
            except AnswersFileError as fault:
                refused.append(Refused(path, fault))
            except (OSError, UnicodeDecodeError):
                refused.append(Refused(path))
        return found

    def _write(self, wanted: dict[Path, str], present: Iterable[Path]) -> list[Path]:
        changed = []
        for path, text in wanted.items():
            if path in self._refused:
                raise NotWrittenError("shop-newer", path)
            if not _holds(path, text):
                _make(path.parent)
                write_whole(path, text.encode())
                changed.append(path)
            self._ours.add(path)
        for path in (set(present) & self._ours) - wanted.keys() - self._refused:
            _take_away(path)
            changed.append(path)
        return changed

    def _paths_of(self, name: str) -> list[Path]:
        path = self.path / name
        try:
            return [path] if path.is_file() else []
        except OSError:
            return []

    def _paths(self, room: str) -> list[Path]:
        try:
            return sorted((self.path / room).glob("*.toml"))
        except OSError:
            return []


def file_name(name: str) -> str:
    """A file's name for anything's name: readable, legal everywhere, one for each name."""
    words = _NOT_IN_NAMES.sub("-", name.casefold()).strip("-")[:_LONGEST]
    return f"{words or 'file'}-{hashlib.sha256(name.encode()).hexdigest()[:8]}.toml"


def _holds(path: Path, text: str) -> bool:
    try:
        return path.read_bytes() == text.encode()
    except OSError:
        return False


def _take_away(path: Path) -> None:
    try:
        path.unlink(missing_ok=True)
    except OSError as fault:
        raise NotWrittenError("target-failed", path, fault.strerror or str(fault)) from fault


def _make(folder: Path) -> None:
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as fault:
        raise NotWrittenError("target-failed", folder, fault.strerror or str(fault)) from fault
