"""Back lengths longer than a back: the garment's, unless the chart says a body was measured."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Dimension
from tests.charts.read_text import asked_at, questions, ranges


@pytest.mark.parametrize(
    ("note", "dimension"),
    [
        ("Body measurements in cm.", Dimension.BACK_LENGTH),
        ("All measurements in cm.", Dimension.OTHER),
        ("Garment measurements in cm.", Dimension.OTHER),
    ],
)
def test_it_is_asked_about_and_kept(note: str, dimension: Dimension) -> None:
    page = (
        "<table><tr><th>Size<th>Chest<th>Back length</tr><tr><td>S<td>92<td>64</tr>"
        f"<tr><td>M<td>98<td>68</tr><tr><td>L<td>104<td>78</tr></table><p>{note}</p>"
    )
    reading = read_bytes(page.encode(), "jackets.html")
    backs = [one for one in ranges(reading) if one.heading == "Back length"]
    assert [(one.dimension, one.value) for one in backs] == [
        (dimension, 64),
        (dimension, 68),
        (dimension, 78),
    ]
    assert questions(reading) == ["heading-two-readings"]
    assert len(asked_at(reading, "heading-two-readings")) == 3
