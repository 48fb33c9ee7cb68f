"""What one offer is called in its row: whose it is, for whom, its size and length. No Qt."""

from __future__ import annotations

from harmonizer.offers import Offer
from ui.fitting_page.rows import SEPARATOR
from ui.words import Words


def wearer_of(offer: Offer, words: Words) -> str:
    """For whom the chart is; "" where it does not say."""
    return words(f"band-{offer.band}") if offer.band else ""


def make_of(offer: Offer, words: Words) -> str:
    """The maker and the kind."""
    kind = words(f"kind-{offer.kind}") if offer.kind else None
    return SEPARATOR.join(part for part in (offer.supplier, kind) if part)


def size_and_length(offer: Offer, words: Words) -> str:
    """The size, and the length where there are several."""
    if offer.length is None:
        return offer.size
    return words("size-and-length", size=offer.size, length=offer.length)


def also_words(best: Offer, second: Offer, words: Words) -> str:
    """What of the ``second`` offer differs from the ``best`` of the same model."""
    if second.length is not None and second.size == best.size:
        return words("also", size=second.length)
    if second.length == best.length:
        return words("also", size=second.size)
    return words("also", size=size_and_length(second, words))
