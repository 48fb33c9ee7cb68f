"""Units named in headings, captions and notes, as published tables name them."""

from __future__ import annotations

import pytest

from charts.quantities import Unit
from charts.unit_words import find_units

CM, IN, MM, M, KG, LB, ST = Unit.CM, Unit.IN, Unit.MM, Unit.M, Unit.KG, Unit.LB, Unit.ST


@pytest.mark.parametrize(
    ("text", "units"),
    [
        ("Chest (cm)", (CM,)),
        ("Chest (in)", (IN,)),
        ("Chest (Inches)", (IN,)),
        ("Pecho cm", (CM,)),
        ("Stature en cm", (CM,)),
        ("Обхват груди, в см", (CM,)),
        ("DE/EU (in cm)", (CM,)),
        ("Man Size(cm)", (CM,)),
        ("TO FIT CHEST SIZE INCHES", (IN,)),
        ("Unité : cm", (CM,)),
        ('All measurements in inches • Measurements may vary ±1"', (IN,)),
        ("All measurements are expressed in cm", (CM,)),
        ("Toutes les mesures sont en cm", (CM,)),
        ("INCH-POUND", (IN, LB)),
        ("Kids (in)", (IN,)),
        ("Chest (in/cm)", (IN, CM)),
        ("Chest in/cm", (IN, CM)),
        ("Chest (1) in", (IN,)),
        ("Chest in or cm", (IN, CM)),
        ("Weight (lbs / kg)", (LB, KG)),
        ("Weight (st)", (ST,)),
        ("Weight (lb/st)", (LB, ST)),
        ("Weight in stone", (ST,)),
        ("Weight st/lb", (ST, LB)),
        ("Weight (st-lb)", (ST, LB)),
        ("Weight st lbs", (ST, LB)),
        ("Height (ft-in)", (Unit.FT, IN)),
        ("Height (m)", (M,)),
        ("Height in m", (M,)),
        ("All sizes in mm.", (MM,)),
        ("in", (IN,)),
        ("Chest in", (IN,)),
        ('Chest (")', (IN,)),
        ("Age (years)", (Unit.YEARS,)),
    ],
)
def test_the_units_of_a_text(text: str, units: tuple[Unit, ...]) -> None:
    assert find_units(text) == units


@pytest.mark.parametrize(
    "text",
    ["Umfang in Ruhe", "In stock", "Size M", "M", "S - XL", "for children from 3 to 12 years",
     'High Hip 4" below waist', "Foot", "Fuß", "ST", "measured in the middle", "t/m",
     ""],
)  # fmt: skip
def test_no_unit_where_none_is_meant(text: str) -> None:
    assert find_units(text) == ()


def test_in_before_a_unit_is_a_preposition() -> None:
    assert find_units("Umfang in cm") == (CM,)
