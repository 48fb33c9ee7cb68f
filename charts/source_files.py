"""Which files stand behind files and folders: what to open, under which name, in what order.

A folder is taken recursively and in one stable order whatever the disk says. Files that are no
supplier's chart are passed over: hidden ones, other programs' lock files and temporary files, our
own notes beside the charts, and charts that we wrote ourselves.
"""

from __future__ import annotations

import os
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from charts.readers.passed_over import is_passed_over
from charts.writers.own_files import is_ours

_WINDOWS_HIDDEN: Final = 0x2


@dataclass(frozen=True, slots=True)
class SourceFile:
    """One file to open. ``name`` is relative to the source it was found under, with slashes."""

    path: Path
    name: str

    @property
    def folder(self) -> str:
        """The part of the name before the file's own, "" for a file taken by itself."""
        return self.name.rpartition("/")[0]


def find(sources: Sequence[Path]) -> tuple[tuple[SourceFile, ...], tuple[str, ...]]:
    """The files behind ``sources``, each once, by name; and the folders that would not open.

    A source that is not there is kept as a file, so that opening it gives its finding.
    """
    closed: list[str] = []
    paths: dict[str, tuple[Path, Path]] = {}
    for source in sources:
        for path in _files(source, closed):
            paths.setdefault(os.path.normcase(path.resolve()), (source, path))
    found = sorted(_named(list(paths.values())), key=lambda file: file.name)
    return tuple(found), tuple(closed)


def _files(source: Path, closed: list[str]) -> Iterator[Path]:
    if not source.is_dir():
        yield source
        return

    def note(fault: OSError) -> None:
        closed.append(Path(fault.filename).as_posix())

    for folder, inner, names in os.walk(source, onerror=note):
        inner[:] = sorted(name for name in inner if not _passed_over(Path(folder, name)))
        for name in names:
            path = Path(folder, name)
            if not _passed_over(path) and not is_ours(path):
                yield path


def _passed_over(path: Path) -> bool:
    return is_passed_over(path.name) or _hidden_on_windows(path)


def _hidden_on_windows(path: Path) -> bool:
    try:
        return bool(getattr(path.lstat(), "st_file_attributes", 0) & _WINDOWS_HIDDEN)
    except OSError:
        return False


def _named(files: Sequence[tuple[Path, Path]]) -> Iterator[SourceFile]:
    """Names relative to the sources; where two files would share one, folders go before it."""
    depths = [
        len(path.relative_to(source).parts) if source.is_dir() else 1 for source, path in files
    ]
    whole = [path.absolute().parts for _, path in files]  # a link keeps its own name
    while True:
        names = ["/".join(parts[-depth:]) for parts, depth in zip(whole, depths, strict=True)]
        count = Counter(names)
        deeper = [
            depth + 1 if count[name] > 1 and depth < len(parts) else depth
            for name, depth, parts in zip(names, depths, whole, strict=True)
        ]
        if deeper == depths:
            break
        depths = deeper
    for (_, path), name in zip(files, names, strict=True):
        yield SourceFile(path, name)
