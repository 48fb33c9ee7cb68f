"""An advice as it is kept: what was said, of whom, on which day and under which settings."""

from __future__ import annotations

from datetime import date
from typing import Any, Final

from charts.wording import Wording
from harmonizer.fit_json import fit_document
from harmonizer.fit_sheet import FitSheet
from harmonizer.settings import Settings, settings_from

FORMAT: Final = 1


def advice_document(sheet: FitSheet, on: date, wording: Wording | None = None) -> dict[str, Any]:
    """Everything needed to explain ``sheet`` a year later, ready to be stored as JSON.

    The fit is kept with its reasons as they were shown; the settings are those that were in force.
    """
    return {
        "format": FORMAT,
        "on": on.isoformat(),
        "settings": sheet.settings.as_saved(),
        "fit": fit_document(sheet, wording),
    }


def settings_of(document: dict[str, Any]) -> Settings:
    """The settings an advice was given under.

    Raises ValueError for a document of a newer format, KeyError for a setting that is none.
    """
    if document["format"] != FORMAT:
        raise ValueError(f"format {document['format']} is newer than {FORMAT}")
    return settings_from(document["settings"])
