"""Files that arrive put among those at hand: a path stands once, a name stands once."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from charts.sources import FACTS_FILE, LoadedFile
from harmonizer.shop.season import FileRecord


@dataclass(frozen=True, slots=True)
class Shelved:
    """The files of both, by name; ``names`` gives each arriving name as it stands now."""

    files: tuple[LoadedFile, ...]
    names: dict[str, str]


def shelved(present: Sequence[LoadedFile], arriving: Sequence[LoadedFile]) -> Shelved:
    """The files of both; of one path the newer reading."""
    paths = {file.path.resolve(): file for file in arriving if file.path is not None}
    beside = {path.parent: file.facts for path, file in paths.items()}
    kept = [
        file if file.path is None else file.beside(beside.get(file.path.resolve().parent))
        for file in present
        if file.path is None or not (file.path.resolve() in paths or _mended(file.path, beside))
    ]
    taken = {file.reading.file for file in kept}
    names: dict[str, str] = {}
    for file in arriving:
        name = _free_name(file, taken)
        taken.add(name)
        names[file.reading.file] = name
        kept.append(file if name == file.reading.file else file.renamed(name))
    return Shelved(tuple(sorted(kept, key=lambda file: file.reading.file)), names)


def _mended(path: Path, read: Collection[Path]) -> bool:
    """Whether notes that could not be used were read anew with the files beside them.

    They arrive again where they still cannot be used.
    """
    return path.name == FACTS_FILE and path.resolve().parent in read


def recorded(
    present: Sequence[FileRecord], arriving: Sequence[FileRecord], names: dict[str, str]
) -> tuple[FileRecord, ...]:
    """What was said of both, by name; what arrives of a file goes before what stood of it."""
    renamed = [replace(one, name=names.get(one.name, one.name)) for one in arriving]
    new = {one.name for one in renamed}
    kept = [one for one in present if one.name not in new]
    kept += [one for one in renamed if not one.empty]
    return tuple(sorted(kept, key=lambda record: record.name))


def _free_name(file: LoadedFile, taken: set[str]) -> str:
    """The file's name, with as many folders before it as tell it from those that are taken."""
    name = file.reading.file
    parts = file.whole_way
    depth = name.count("/") + 1
    while name in taken and depth < len(parts):
        depth += 1
        name = "/".join(parts[-depth:])
    number = 2
    while name in taken:
        name = f"{file.reading.file} {number}"
        number += 1
    return name
