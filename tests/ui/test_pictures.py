"""The demo's pages as pictures: drawn without a screen, each with something on it."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication

from charts.wording import Wording
from ui import appearance
from ui.loading import Arrived, arrive, demo_paths
from ui.pictures import SCENES, draw, draw_all
from ui.scene import SIZE


def colours(path: Path) -> int:
    """How many colours stand on every eighth point of a picture."""
    image = QImage(str(path))
    across, down = range(0, image.width(), 8), range(0, image.height(), 8)
    return len({image.pixel(x, y) for x in across for y in down})


@pytest.fixture(scope="module")
def demo() -> Arrived:
    return arrive(demo_paths(), Wording("en"), lambda _message, _fraction: None)


def test_the_demo_loads_whole(demo: Arrived) -> None:
    assert len(demo.charts.files) >= 8
    assert len(demo.riders) + len(demo.refused) == 12


@pytest.mark.parametrize("scene", SCENES, ids=lambda scene: scene.name)
def test_every_scene_is_a_picture_with_something_on_it(
    qapp: QApplication, demo: Arrived, tmp_path: Path, scene: object
) -> None:
    path = draw(qapp, scene, demo, tmp_path)  # type: ignore[arg-type]  # a Scene by parametrize
    assert path.stem == scene.name  # type: ignore[attr-defined]  # the same
    assert colours(path) > 4


def test_the_fitting_page_has_the_size_of_a_shops_screen(
    qapp: QApplication, demo: Arrived, tmp_path: Path
) -> None:
    image = QImage(str(draw(qapp, SCENES[0], demo, tmp_path)))
    assert (image.width(), image.height()) == SIZE


def test_a_folder_that_cannot_be_made_is_the_worlds_fault(tmp_path: Path) -> None:
    (tmp_path / "taken").write_text("", encoding="utf-8")
    with pytest.raises(OSError, match="taken"):
        draw_all(tmp_path / "taken")


def test_the_window_has_an_icon(qapp: QApplication) -> None:
    del qapp
    assert not appearance.window_icon().isNull()
