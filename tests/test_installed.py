"""The product as a shop has it: built into a wheel, run from a folder that holds nothing."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

CHECKOUT = Path(__file__).resolve().parent.parent


@pytest.fixture(scope="session")
def installed(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the unpacked wheel, as an installer would lay it."""
    built = tmp_path_factory.mktemp("wheel")
    subprocess.run(
        [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(built)],
        cwd=CHECKOUT,
        check=True,
        capture_output=True,
    )
    (wheel,) = built.glob("*.whl")
    place = tmp_path_factory.mktemp("site")
    with zipfile.ZipFile(wheel) as packed:
        packed.extractall(place)
    return place


def ran(installed: Path, folder: Path, *words: str) -> subprocess.CompletedProcess[str]:
    """One run of the installed product in ``folder``; only the wheel is on the path."""
    surroundings = os.environ | {
        "PYTHONPATH": str(installed),
        "PYTHONSAFEPATH": "1",
        "PYTHONDONTWRITEBYTECODE": "1",
        "QT_QPA_PLATFORM": "offscreen",
    }
    return subprocess.run(
        [sys.executable, *words],
        cwd=folder,
        env=surroundings,
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )


def test_the_wheel_and_not_the_checkout_is_what_runs(installed: Path, tmp_path: Path) -> None:
    done = ran(installed, tmp_path, "-c", "import charts; print(charts.__file__)")
    assert Path(done.stdout.strip()).parent == installed / "charts"


def test_the_wheel_carries_the_resources_it_reads(installed: Path, tmp_path: Path) -> None:
    asked = "from charts.resource_files import resources; print(resources())"
    done = ran(installed, tmp_path, "-c", asked)
    assert Path(done.stdout.strip()) == installed / "charts" / "resources"


def test_the_installed_product_reads_and_compares_the_demo(installed: Path, tmp_path: Path) -> None:
    demo = installed / "charts" / "resources" / "demo"
    rider = demo / "riders" / "rider-01.toml"
    done = ran(
        installed,
        tmp_path,
        "-m",
        "ui",
        "fit",
        "--rider",
        str(rider),
        str(demo / "charts"),
        "--json",
    )
    assert done.returncode in (0, 1), done.stderr
    rows = json.loads(done.stdout)["rows"]
    assert len({row["model"] for row in rows}) >= 12


def test_the_installed_product_draws_its_pages(installed: Path, tmp_path: Path) -> None:
    pictures = tmp_path / "pictures"
    done = ran(installed, tmp_path, "-m", "ui", "demo", "--picture", str(pictures))
    assert done.returncode == 0, done.stderr
    assert all(picture.stat().st_size > 20_000 for picture in pictures.glob("*.png"))
    assert list(pictures.glob("*.png"))
