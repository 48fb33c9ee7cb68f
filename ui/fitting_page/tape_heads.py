"""The heads of the four tapes: the reading each is centred on, or the estimate in its place.

No Qt. An estimate is drawn only: it is no reading, and nothing is compared with it.
"""

from __future__ import annotations

from collections.abc import Mapping

from charts.schema import Dimension
from harmonizer.estimates import estimates
from harmonizer.fit_sheet import FitSheet
from ui.drawing.scale import BACK_HALF_SPAN_CM, GIRTH_HALF_SPAN_CM
from ui.fitting_page.rows import TAPES, Guess, TapeHead
from ui.words import Words

Heads = Mapping[Dimension, TapeHead]


def tape_heads(fit: FitSheet, words: Words, measured: Heads | None = None) -> Heads:
    """The four heads; while a value is tried those of what was ``measured`` keep their centre."""
    readings = {one: _reading(fit, one) for one in TAPES}
    missing = [one for one, reading in readings.items() if reading is None]
    expected = guesses(fit) if missing else {}
    return {
        one: _head(one, reading, words, expected.get(one), measured)
        for one, reading in readings.items()
    }


def guesses(fit: FitSheet) -> Mapping[Dimension, Guess]:
    """What height and weight let be expected, where it goes between the points the shop takes."""
    settings, rider = fit.settings, fit.rider
    return {
        dimension: Guess(one.mean, one.low, one.high)
        for one in estimates(rider.figure, fit.body.settled)
        if (dimension := one.measure.dimension) in TAPES
        and one.definition is settings.default_definition(dimension)
    }


def _head(
    dimension: Dimension,
    reading: float | None,
    words: Words,
    guess: Guess | None,
    measured: Heads | None,
) -> TapeHead:
    back = dimension is Dimension.BACK_LENGTH
    title = words("head-back" if back else f"dimension-{dimension.value}")
    centre = reading if measured is None else measured[dimension].centre_cm
    guess = guess if centre is None and reading is None else None
    text, brief, spoken = _words(reading, guess, title, words)
    return TapeHead(
        dimension=dimension,
        title=title,
        reading=text,
        centre_cm=centre,
        half_span_cm=BACK_HALF_SPAN_CM if back else GIRTH_HALF_SPAN_CM,
        remark=words("head-double-scale") if back else "",
        sentence=spoken,
        tried_cm=reading if reading != centre else None,
        guess=guess,
        brief=brief,
    )


def _words(
    reading: float | None, guess: Guess | None, title: str, words: Words
) -> tuple[str, str, str]:
    """What stands over a tape, the same where room is short, and what a screen reader says."""
    if guess is not None:
        ends = (guess.low_cm, guess.mean_cm, guess.high_cm)
        low, mean, high = (words.wording.number(one, "1") for one in ends)
        values = {"title": title, "low": low, "mean": mean, "high": high}
        codes = ("head-estimate", "head-estimate-brief", "head-estimate-sentence")
        text, brief, spoken = (words(code, **values) for code in codes)
        return text, brief, spoken
    text = (
        words("head-no-reading") if reading is None else words("head-reading", cm=words.cm(reading))
    )
    return text, text, words("head-sentence", title=title, reading=text)


def _reading(fit: FitSheet, dimension: Dimension) -> float | None:
    """The reading the tape is centred on: that of the shop's usual definition, else any."""
    usual = fit.settings.default_definition(dimension)
    readings = [one for one in fit.body.settled if one.measure.dimension is dimension]
    readings.sort(key=lambda one: one.definition is not usual)
    return readings[0].value if readings else None
