"""Files the whole way: taken apart, their inner files too, and read into charts.

Run with a folder, it reads every file in it and prints the most memory it took, in MB.
"""

from __future__ import annotations

import sys
from pathlib import Path

from charts.importer import read_bytes
from charts.inner_files import parts_of, says_something
from charts.schema import FileReading


def readings(name: str, data: bytes) -> list[FileReading]:
    """All readings of a file, as a folder's loading makes them."""
    found = []
    for part in parts_of(data, name):
        reading = part.problem or read_bytes(part.data, part.name)
        if not part.outer or says_something(reading):
            found.append(reading)
    return found


def most_memory_mb() -> float:
    """The most memory this process has taken, where the system tells.

    Linux counts what the parent held when it forked in ``ru_maxrss``; its own peak is elsewhere.
    """
    status = Path("/proc/self/status")
    if status.exists():
        (peak,) = (row for row in status.read_text().splitlines() if row.startswith("VmHWM:"))
        return int(peak.split()[1]) / 1024
    import resource

    unit = 1024 * 1024 if sys.platform == "darwin" else 1024
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / unit


if __name__ == "__main__":
    for path in sorted(Path(sys.argv[1]).rglob("*")):
        if path.is_file():
            readings(path.name, path.read_bytes())
    print(most_memory_mb())  # noqa: T201 - its one answer
