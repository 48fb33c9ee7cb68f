"""Where the files that come with the product are found, in a checkout and in an installed wheel."""

from __future__ import annotations

from functools import cache
from importlib.resources import files
from importlib.resources.abc import Traversable
from pathlib import Path


@cache
def resources() -> Traversable:
    """The folder of vocabulary, reference figures, translations, fonts and the demo.

    Raises FileNotFoundError when the installation is incomplete.
    """
    installed = files("charts") / "resources"
    if installed.is_dir():
        return installed
    checkout = Path(__file__).resolve().parent.parent / "resources"
    if checkout.is_dir():
        return checkout
    raise FileNotFoundError("the product's own resources are missing: install it again")
