"""The models of one folder as forms: read from the file beside the charts, written back to it.

No Qt.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from types import MappingProxyType

from charts.model_facts import FactsFileError
from charts.sources import FACTS_FILE, LoadedFile
from charts.writers.whole_file import write_whole
from harmonizer.facts_form import Form, export, forms_in

__all__ = ["FactsFileError", "FolderForms", "folder_forms", "save_forms"]


@dataclass(frozen=True, slots=True)
class FolderForms:
    """The forms of a folder, and which of them the file at hand is first named in."""

    target: Path
    forms: tuple[Form, ...]
    first: int


def folder_forms(file: LoadedFile) -> FolderForms:
    """The forms beside a file; a new one for it where none names it.

    Raises FactsFileError when what stands there cannot be used, OSError when it will not open.
    """
    folder = file.path.parent if file.path is not None else Path()
    target = folder / FACTS_FILE
    known = file.path is not None and target.is_file()
    forms = forms_in(target.read_text(encoding="utf-8-sig"), target.name) if known else ()
    name = file.path.name if file.path is not None else ""
    at = next((at for at, form in enumerate(forms) if form.get("file") == name), None)
    if at is None:
        forms, at = (*forms, _new_form(file, name)), len(forms)
    return FolderForms(target, forms, at)


def save_forms(path: Path, forms: Sequence[Form]) -> None:
    """Write the forms as one file. Raises NotWrittenError; ValueError for a form with problems."""
    write_whole(path, export(forms).encode())


def _new_form(file: LoadedFile, name: str) -> Form:
    """What the charts of a file say themselves."""
    charts = file.reading.charts
    said = {
        "supplier": next((each.supplier.text for each in charts if each.supplier), ""),
        "model": next((each.model.text for each in charts if each.model), ""),
        "season": next((each.season.text for each in charts if each.season), ""),
        "file": name,
    }
    return MappingProxyType({key: text for key, text in said.items() if text})
