"""The parts of a zipped document, never more than a stated size of each."""

from __future__ import annotations

import io
import struct
import zipfile
import zlib
from collections.abc import Iterator
from typing import Final

from charts.readers.source import MEGABYTE, UnusableSourceError, too_many
from charts.remembered import remembered

ZIP_MARK: Final = b"PK\3\4"
_CHUNK: Final = 4 * MEGABYTE
_MOST_PARTS: Final = 5_000
_ENCRYPTED: Final = 0x1
_BROKEN: Final = (
    zipfile.BadZipFile,
    zlib.error,
    EOFError,
    OSError,
    struct.error,
    NotImplementedError,
    RuntimeError,
    ValueError,
    OverflowError,
)
"""What the standard library raises on a damaged archive."""


@remembered  # every reader of zipped kinds looks into the same file, one after the other
def package_of(data: bytes) -> Package:
    """The package of a file. Raises UnusableSourceError when it is damaged, locked or absurd."""
    return Package(data)


class Package:
    """A zipped document. Names of parts are compared without case, and with forward slashes.

    Raises UnusableSourceError when the archive is damaged, locked or absurd.
    """

    def __init__(self, data: bytes) -> None:
        try:
            self._archive = zipfile.ZipFile(io.BytesIO(data))
        except _BROKEN as problem:
            raise UnusableSourceError("truncated") from problem
        infos = self._archive.infolist()
        if len(infos) > _MOST_PARTS:
            raise too_many(len(infos))
        self._parts = {_normal(info.filename): info for info in infos}

    def __contains__(self, part: str) -> bool:
        return _normal(part) in self._parts

    @property
    def names(self) -> tuple[str, ...]:
        """The parts' names in lower case."""
        return tuple(self._parts)

    def files(self) -> Iterator[tuple[str, int, int]]:
        """Every file's name as printed, its bytes in the archive, and its bytes unpacked."""
        for info in self._parts.values():
            if not info.is_dir():
                yield info.filename, info.compress_size, info.file_size

    def read(self, part: str, limit: int) -> bytes:
        """The bytes of ``part``, b"" when there is no such part; at most ``limit`` of them."""
        return b"".join(self.chunks(part, limit))

    def chunks(self, part: str, limit: int) -> Iterator[bytes]:
        """``part`` piece by piece, so that a swollen part never stands in memory whole."""
        info = self._parts.get(_normal(part))
        if info is None:
            return
        if info.flag_bits & _ENCRYPTED:
            raise UnusableSourceError("locked")
        if info.file_size > limit:
            raise UnusableSourceError("too-large", f"{info.file_size // MEGABYTE} MB")
        try:
            with self._archive.open(info) as stream:
                while chunk := stream.read(_CHUNK):
                    yield chunk
        except _BROKEN as problem:
            raise UnusableSourceError("truncated") from problem


def _normal(name: str) -> str:
    return name.replace("\\", "/").lstrip("/").lower()
