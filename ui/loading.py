"""What is loaded beside the screen: charts and riders' files, told apart and read. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from charts.resource_files import resources
from charts.sources import FACTS_FILE, Loaded, Progress
from charts.wording import Wording
from harmonizer.rider import Rider
from harmonizer.rider_file import RiderFileError, read_rider
from harmonizer.shop.arrival import Known
from harmonizer.workspace import Workspace

_RIDER_ENDING: Final = ".toml"


@dataclass(frozen=True, slots=True)
class Arrived:
    """Everything that some paths gave. ``refused`` are sentences about riders' files."""

    charts: Loaded
    riders: tuple[Rider, ...]
    refused: tuple[str, ...]
    asked_charts: bool


def arrive(
    paths: Sequence[Path],
    wording: Wording,
    progress: Progress,
    pasted: str | None = None,
    known: Known | None = None,
) -> Arrived:
    """Read charts and riders' files; safe on any thread; ``progress`` may raise Cancelled.

    ``known`` spares unchanged files and applies what was said of them before.
    """
    charts = [path for path in paths if not is_rider_file(path)]
    riders: list[Rider] = []
    refused: list[str] = []
    for path in paths:
        if is_rider_file(path):
            _take_rider(path, wording, riders, refused)
    text = pasted.encode() if pasted is not None else None
    wanted = bool(charts) or text is not None
    loaded = Workspace.load(charts, progress, text, wording, known) if wanted else Loaded()
    return Arrived(loaded, tuple(riders), tuple(refused), wanted)


def is_rider_file(path: Path) -> bool:
    """Whether a path names a rider's file rather than a chart."""
    return path.suffix.lower() == _RIDER_ENDING and path.name != FACTS_FILE and not path.is_dir()


def demo_paths() -> list[Path]:
    """The demo's folder of charts and its riders' files."""
    demo = Path(str(resources() / "demo"))
    return [demo / "charts", *sorted((demo / "riders").glob(f"*{_RIDER_ENDING}"))]


def _take_rider(path: Path, wording: Wording, riders: list[Rider], refused: list[str]) -> None:
    try:
        riders.append(read_rider(path.read_text(encoding="utf-8-sig"), path.stem))
    except RiderFileError as fault:
        refused.append(
            wording.say(
                "faces",
                "rider-not-usable",
                path=path.name,
                line=fault.line,
                reason=fault.say(wording),
            )
        )
    except (OSError, UnicodeDecodeError):
        refused.append(wording.say("faces", "rider-not-readable", path=path.name))
