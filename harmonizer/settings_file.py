"""The shop's own figures as a readable file: only what differs from the defaults stands in it.

Written whole or not at all. A file that cannot be used (damaged, of a newer version, with a figure
that cannot be) is named with its line and never written over.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from pathlib import Path
from typing import ClassVar, Final

from charts.schema import Definition
from charts.toml_text import Entries, TomlFileError
from charts.toml_writing import value_text
from charts.wording import Wording
from charts.writers.whole_file import NotWrittenError, write_whole
from harmonizer.setting_checks import CHOICES, TOPIC, changed_figure, changed_keys, refusal
from harmonizer.setting_words import default_of, effect, name, refused, whole
from harmonizer.settings import DEFAULTS, Settings, setting_facts

FILE_NAME: Final = "settings.toml"


class SettingsFileError(TomlFileError):
    """A file of settings that cannot be used, with the line and the reason."""

    topic: ClassVar[str] = TOPIC

    def say(self, wording: Wording) -> str:
        """The reason as a sentence, without the line."""
        return refused(self.reason, wording)


def write_settings(settings: Settings, wording: Wording | None = None) -> str:
    """A whole file: each changed figure below what it is and what its default was."""
    speak = wording or Wording()
    parts = ["format = 1\n"]
    for key in changed_keys(settings, DEFAULTS):
        default = whole(key, default_of(key), speak)
        said = speak.say(TOPIC, "file-default", default=default)
        value = value_text(_plain(getattr(settings, key)))
        title = speak.say(TOPIC, "file-title", name=name(key, speak), effect=effect(key, speak))
        parts.append(f"\n# {title}\n# {said}\n{key} = {value}\n")
    return "".join(parts)


def read_settings(text: str) -> Settings:
    """The figures of a file; what does not stand in it has its default.

    Raises SettingsFileError with the line and the reason: no TOML, a newer format, a figure that
    is none or cannot be.
    """
    file = Entries.of_file(text, SettingsFileError)
    settings = DEFAULTS
    given = [key for key in setting_facts() if key in file]
    for key in given:
        settings = changed_figure(settings, key, _read(file, key))
    for key in given:
        wrong = refusal(settings, key)
        if wrong is not None:
            raise file.wrong(key, wrong.code, **wrong.values)
    file.close()
    return settings


def _read(file: Entries, key: str) -> float | Definition:
    if key in CHOICES:
        word = file.choice(key, Definition)
        return word or Definition.UNKNOWN
    return float(file.number(key) or 0)


def _plain(value: float | Definition) -> str | Decimal:
    return value.value if isinstance(value, Definition) else Decimal(repr(value))


@dataclass(frozen=True, slots=True)
class Opened:
    """What a file of settings gave; ``refused`` says in one sentence why it gave nothing."""

    settings: Settings
    refused: str = ""


class SettingsFile:
    """The file of one shop's figures. It is made when something is first changed."""

    def __init__(self, path: Path) -> None:
        self.path = path
        self._refused = False

    def read(self, wording: Wording) -> Opened:
        """What stands in the file; the defaults where there is none or it cannot be used."""
        self._refused = False
        try:
            return Opened(read_settings(self.path.read_text(encoding="utf-8-sig")))
        except FileNotFoundError:
            return Opened(DEFAULTS)
        except SettingsFileError as fault:
            values = {"line": fault.line, "reason": fault.say(wording)}
            said = wording.say(TOPIC, "file-not-used", path=self.path.name, **values)
        except (OSError, UnicodeDecodeError):
            said = wording.say(TOPIC, "file-not-opened", path=self.path.name)
        self._refused = True
        return Opened(DEFAULTS, said)

    def write(self, settings: Settings, wording: Wording) -> None:
        """Bring the file to these figures.

        Raises NotWrittenError when it cannot be written, or when what stands there could not be
        used and so may not be lost.
        """
        if self._refused:
            raise NotWrittenError("settings-left-alone", self.path)
        try:
            self.path.parent.mkdir(parents=True, exist_ok=True)
        except OSError as fault:
            raise NotWrittenError("target-failed", self.path, fault.strerror or "") from fault
        write_whole(self.path, write_settings(settings, wording).encode())
