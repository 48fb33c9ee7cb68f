"""How a file that we wrote is known again: it is never read as a supplier's chart.

Without this, a combined chart saved among the suppliers' files would come back as one more maker.
"""

from __future__ import annotations

import codecs
import io
import zipfile
import zlib
from pathlib import Path, PurePath
from typing import IO, Final

MARK: Final = "harmonizer-combined-chart"
"""Stands in a workbook's category, a PDF's creator and a web page's generator.

A csv is known by its head.
"""

CSV_HEAD: Final = "supplier,model,model_kind,level,band,season,size,also_called,length,dimension,"
_KINDS: Final = frozenset({".xlsx", ".csv", ".tsv", ".html", ".pdf"})
_HEAD: Final = 2000
_BROKEN: Final = (
    zipfile.BadZipFile,
    zlib.error,
    EOFError,
    KeyError,
    NotImplementedError,
    OSError,
    RuntimeError,
    ValueError,
)
"""What the standard library raises on a damaged workbook."""


def is_ours(path: Path) -> bool:
    """Whether the file at ``path`` carries our mark. What cannot be opened is not ours."""
    if path.suffix.lower() not in _KINDS:
        return False
    try:
        with path.open("rb") as file:
            return _is_marked(file)
    except OSError:
        return False


def is_ours_inside(name: str, data: bytes) -> bool:
    """Whether a file taken out of another one carries our mark."""
    return PurePath(name).suffix.lower() in _KINDS and _is_marked(io.BytesIO(data))


def _is_marked(file: IO[bytes]) -> bool:
    head = file.read(_HEAD)
    if head.startswith(b"PK"):
        try:
            with zipfile.ZipFile(file) as parts, parts.open("docProps/core.xml") as properties:
                return MARK.encode() in properties.read(_HEAD)
        except _BROKEN:
            return False
    columns = head.removeprefix(codecs.BOM_UTF8).replace(b"\t", b",")
    marked = MARK.encode() in head or MARK.encode("utf-16-be") in head
    return marked or columns.startswith(CSV_HEAD.encode())
