"""Set the product up on a machine that has only Python, then run the demo or the tests.

    python3 resources/start.py demo      make the environment, open the window on the demo
    python3 resources/start.py tests     make the environment, run every check

Standard library only. The environment is made in ``.venv`` beside this folder and made again
when what it is made from has changed. On Debian and its relatives the system packages that are
missing are installed where this command may; elsewhere the exact line is printed.
"""

from __future__ import annotations

import argparse
import ctypes
import hashlib
import importlib
import importlib.util
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

CHECKOUT = Path(__file__).resolve().parent.parent
ENVIRONMENT = CHECKOUT / ".venv"
STAMP = ENVIRONMENT / "made-from.txt"
CONSTRAINTS = CHECKOUT / "resources" / "constraints.txt"
OLDEST = (3, 11)

# What Qt loads on Linux before any window opens, and the Debian package that brings it.
QT_LIBRARIES = {
    "libglib-2.0.so.0": "libglib2.0-0",
    "libEGL.so.1": "libegl1",
    "libGL.so.1": "libgl1",
    "libfontconfig.so.1": "libfontconfig1",
    "libxkbcommon.so.0": "libxkbcommon0",
    "libdbus-1.so.3": "libdbus-1-3",
}
# What a real window on an X display needs beyond that.
WINDOW_LIBRARIES = {
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-image.so.0": "libxcb-image0",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-render-util.so.0": "libxcb-render-util0",
    "libxcb-shape.so.0": "libxcb-shape0",
    "libxcb-xkb.so.1": "libxcb-xkb1",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
}


def main() -> int:
    """Make the environment and run what was asked for; the exit status is that of the run."""
    parser = argparse.ArgumentParser(description=__doc__, allow_abbrev=False)
    parser.add_argument("what", choices=["demo", "tests"])
    parser.add_argument("rest", nargs=argparse.REMAINDER, help="passed on, for example -k chest")
    wanted = parser.parse_args()
    if sys.version_info < OLDEST:
        return stop(f"Python {OLDEST[0]}.{OLDEST[1]} or newer is needed; this is {sys.version}.")
    try:
        install_system_packages()
        importlib.invalidate_caches()  # ensurepip may have arrived a moment ago
        make_environment()
    except (subprocess.CalledProcessError, OSError) as problem:
        return stop(f"The set-up did not finish: {problem}")
    return run_demo(wanted.rest) if wanted.what == "demo" else run_tests(wanted.rest)


def stop(sentence: str) -> int:
    """Say why nothing more can be done; the exit status for it."""
    print(sentence, file=sys.stderr)
    return 2


def has_display() -> bool:
    """Whether a window can be seen from here."""
    if not sys.platform.startswith("linux"):
        return True
    return bool(os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY"))


def missing_system_packages() -> list[str]:
    """Debian packages that Qt or the environment needs and that are not there."""
    if not sys.platform.startswith("linux"):
        return []
    wanted = dict(QT_LIBRARIES)
    if os.environ.get("DISPLAY"):
        wanted |= WINDOW_LIBRARIES
    missing = [package for library, package in wanted.items() if not loads(library)]
    if importlib.util.find_spec("ensurepip") is None and not environment_works():
        missing.append(f"python{sys.version_info.major}.{sys.version_info.minor}-venv")
    return missing


def loads(library: str) -> bool:
    """Whether the system can load a shared library by its name."""
    try:
        ctypes.CDLL(library)
    except OSError:
        return False
    return True


def install_system_packages() -> None:
    """Install what is missing where this command may, else print the line that does it."""
    missing = missing_system_packages()
    if not missing:
        return
    rights = [] if os.geteuid() == 0 else ["sudo", "-n"]
    may = shutil.which("apt-get") and (not rights or shutil.which("sudo"))
    line = f"sudo apt-get install {' '.join(missing)}"
    if not may:
        print(f"If the next steps fail, install these first:\n    {line}", file=sys.stderr)
        return
    quiet = os.environ | {"DEBIAN_FRONTEND": "noninteractive"}
    for step in (
        ["apt-get", "update", "-q"],
        ["apt-get", "install", "-q", "-y", "--no-install-recommends", *missing],
    ):
        done = subprocess.run([*rights, *step], env=quiet, check=False, stdout=sys.stderr)
        if done.returncode:
            print(f"That did not work. As an administrator:\n    {line}", file=sys.stderr)
            return


def environment_python() -> Path:
    """The environment's own Python."""
    if os.name == "nt":
        return ENVIRONMENT / "Scripts" / "python.exe"
    return ENVIRONMENT / "bin" / "python"


def environment_works() -> bool:
    """Whether the environment is there and made from what stands here now."""
    return (
        environment_python().exists()
        and STAMP.exists()
        and STAMP.read_text(encoding="utf-8") == made_from()
    )


def made_from() -> str:
    """What the environment depends on, as one line: interpreter, place and package lists."""
    lists = (CHECKOUT / "pyproject.toml").read_bytes() + CONSTRAINTS.read_bytes()
    return f"{sys.version} {CHECKOUT} {hashlib.sha256(lists).hexdigest()}"


def make_environment() -> None:
    """Make the environment with the pinned packages, unless it stands already."""
    if environment_works():
        return
    python = str(environment_python())
    if importlib.util.find_spec("ensurepip") is not None:
        subprocess.run([sys.executable, "-m", "venv", "--clear", str(ENVIRONMENT)], check=True)
        pip = [python, "-m", "pip"]
    else:
        # Debian without its venv package: an empty environment, filled by the system's pip.
        subprocess.run(
            [sys.executable, "-m", "venv", "--clear", "--without-pip", str(ENVIRONMENT)], check=True
        )
        pip = [sys.executable, "-m", "pip", "--python", python]
    wanted = ["install", "--quiet", "--constraint", str(CONSTRAINTS)]
    subprocess.run([*pip, *wanted, "--editable", f"{CHECKOUT}[test]"], check=True)
    STAMP.write_text(made_from(), encoding="utf-8")


def run_demo(rest: list[str]) -> int:
    """Open the window on the demo; without a display draw its pages and print one comparison."""
    product = [str(environment_python()), "-m", "ui"]
    if has_display():
        return subprocess.run([*product, "demo", *rest], cwd=CHECKOUT, check=False).returncode
    folder = Path(tempfile.gettempdir()) / "harmonizer-demo"
    print(f"There is no display here, so the pages are drawn into {folder}.")
    demo = CHECKOUT / "resources" / "demo"
    rider = demo / "riders" / "rider-01.toml"
    drawn = subprocess.run([*product, "demo", "--picture", str(folder)], cwd=CHECKOUT, check=False)
    compared = subprocess.run(
        [*product, "fit", "--rider", str(rider), str(demo / "charts")], cwd=CHECKOUT, check=False
    )
    # 1 says that questions are open, which the demo means to show.
    return drawn.returncode or (compared.returncode if compared.returncode > 1 else 0)


def run_tests(rest: list[str]) -> int:
    """Run every check: format, lint, types, import contracts and behaviour."""
    headless = os.environ | {"QT_QPA_PLATFORM": "offscreen"}
    command = [str(environment_python()), "-m", "pytest", "-n", "auto", *rest]
    return subprocess.run(command, cwd=CHECKOUT, env=headless, check=False).returncode


if __name__ == "__main__":
    sys.exit(main())
