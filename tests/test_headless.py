"""Everything but the window works where there is no Qt at all."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

CHECKOUT = Path(__file__).resolve().parent.parent

CHART = "Size;Chest (cm);Waist (cm)\nS;84-88;68-72\nM;89-93;73-77\nL;94-98;78-82\n"
RIDER = 'format = 1\nname = "Rider 7"\n[readings]\nchest = "91 cm"\n'

SCRIPT = """
import sys
sys.modules["PySide6"] = None  # an import of it fails from here on
from ui.__main__ import main
folder = sys.argv[1]
for words in (
    ["read", folder],
    ["read", folder, "--json"],
    ["fit", "--rider", folder + "/r.toml", folder],
    ["fit", "--rider", folder + "/r.toml", folder, "--json"],
    *(["combine", folder, "--out", folder + "/out." + kind] for kind in ("xlsx", "csv", "html")),
):
    status = main(words)
    assert status in (0, 1), (words, status)
loaded = [name for name in sys.modules if name.startswith(("PySide6.", "shiboken6"))]
assert not loaded, loaded
"""


def test_importing_comparing_and_exporting_never_touch_qt(tmp_path: Path) -> None:
    (tmp_path / "a.csv").write_text(CHART, encoding="utf-8")
    (tmp_path / "r.toml").write_text(RIDER, encoding="utf-8")
    done = subprocess.run(
        [sys.executable, "-W", "error", "-c", SCRIPT, str(tmp_path)],
        cwd=CHECKOUT,
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert {path.suffix for path in tmp_path.glob("out.*")} == {".xlsx", ".csv", ".html"}


def test_the_window_says_in_one_line_why_it_cannot_open() -> None:
    script = 'import sys; sys.modules["PySide6"] = None; from ui.__main__ import main; '
    done = subprocess.run(
        [sys.executable, "-c", script + "sys.exit(main([]))"],
        cwd=CHECKOUT,
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )
    assert done.returncode == 2
    assert done.stderr.count("\n") == 1
    assert "apt-get install" in done.stderr
