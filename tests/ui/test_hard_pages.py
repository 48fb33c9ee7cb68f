"""The cases that strain the fitting page, drawn; no meaning is lost to other eyes."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QApplication

from tests.ui.hard_pages import DEUTAN, GREY, HARD_PAGES, PROTAN, Filter, HardPage, draw, seen_by


@pytest.mark.parametrize("page", HARD_PAGES, ids=lambda page: page.name)
def test_every_hard_page_is_drawn_whole(
    application: QApplication, page: HardPage, tmp_path: Path
) -> None:
    image = QImage(str(draw(application, page, tmp_path)))
    assert (image.width(), image.height()) == (1366, 768)
    shown = {image.pixel(x, y) for x in range(0, 1366, 8) for y in range(0, 768, 8)}
    assert len(shown) > 4


@pytest.mark.parametrize("eyes", [PROTAN, DEUTAN, GREY], ids=["protan", "deutan", "grey"])
def test_white_stays_white_in_every_filter(eyes: Filter) -> None:
    """Each row of a published matrix adds up to one: no filter tints a neutral colour."""
    assert np.allclose(eyes.sum(axis=1), 1.0, atol=2e-6)
    image = QImage(3, 2, QImage.Format.Format_RGB32)
    image.fill(QColor(255, 255, 255))
    assert seen_by(image, eyes).pixelColor(2, 1) == QColor(255, 255, 255)


def test_a_protan_eye_takes_red_for_a_dark_colour() -> None:
    """Source: Machado et al. 2009: full protanopia leaves about 15 % of linear red in red."""
    image = QImage(1, 1, QImage.Format.Format_RGB32)
    image.fill(QColor(255, 0, 0))
    seen = seen_by(image, PROTAN).pixelColor(0, 0)
    assert (seen.red(), seen.green(), seen.blue()) == (109, 95, 0)
