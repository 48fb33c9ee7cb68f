"""Qt's own words (its dialogs, the names of keys) in the language of the program."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QLibraryInfo, QLocale, QTranslator
from PySide6.QtWidgets import QApplication

_NAME: Final = "words-of-qt"


def speak(application: QApplication, language: str) -> bool:
    """Let Qt speak ``language`` from now on; false where it has no such words and stays English."""
    for before in application.findChildren(QTranslator, _NAME):
        application.removeTranslator(before)
        before.deleteLater()
    translator = QTranslator(application)
    translator.setObjectName(_NAME)
    folder = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    if not translator.load(QLocale(language), "qtbase", "_", folder):
        translator.deleteLater()
        return False
    return application.installTranslator(translator)
