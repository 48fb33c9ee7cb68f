"""The cautions of a sheet about one rider: the general ones, who measured and when, children's."""

from __future__ import annotations

from charts.cautions import GENERAL, TOPIC
from charts.day_words import day_words
from charts.wording import Wording
from harmonizer.rider import BodyFigure, Rider, TakenBy


def cautions_for(rider: Rider, wording: Wording) -> tuple[str, ...]:
    """Every caution as a sentence, in the order in which it is printed."""
    said = [wording.say(TOPIC, code) for code in GENERAL]
    said.insert(1, _measured(rider, wording))
    if rider.figure is BodyFigure.CHILD:
        said.append(wording.say(TOPIC, "child"))
    return tuple(said)


def _measured(rider: Rider, wording: Wording) -> str:
    """By whom and since when: the least sure tape and the oldest day hold for the whole sheet."""
    takers = [rider.taker(reading) for reading in rider.all_readings] or [rider.taken_by]
    weakest = max(takers, key=tuple(TakenBy).index)
    days = sorted(reading.on for reading in rider.all_readings if reading.on is not None)
    if not days:
        return wording.say(TOPIC, f"measured-{weakest.value}")
    return wording.say(TOPIC, f"measured-{weakest.value}-on", day=day_words(days[0], wording))
