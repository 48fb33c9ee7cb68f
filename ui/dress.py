"""What the table is painted with: colours, fonts and the shape of a row, made once per look."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Self

from ui.appearance import Type
from ui.drawing.lettering import Lettering
from ui.drawing.row_shape import Density, RowShape, row_shape
from ui.drawing.tape_painter import Inks, TapePainter, inks
from ui.theme import Ink, Theme


@dataclass(frozen=True, slots=True)
class Dress:
    """Colours, fonts and measures; replaced as a whole when any of them changes."""

    theme: Theme
    colours: Inks
    type_: Type
    shape: RowShape
    density: Density
    tape: TapePainter
    tape_chosen: TapePainter
    strong: Lettering
    plain: Lettering
    small: Lettering
    small_strong: Lettering

    @classmethod
    def of(cls, theme: Theme, type_: Type, density: Density = Density.LOW) -> Self:
        """The dress for one theme, font size and density."""
        colours = inks(theme)
        shape = row_shape(type_.line, density)
        return cls(
            theme=theme,
            colours=colours,
            type_=type_,
            shape=shape,
            density=density,
            tape=TapePainter.of(colours, shape),
            tape_chosen=TapePainter.of(colours, shape, Ink.CHOSEN),
            strong=Lettering(type_.strong),
            plain=Lettering(type_.plain),
            small=Lettering(type_.small),
            small_strong=Lettering(type_.small_strong),
        )

    @property
    def unit(self) -> float:
        """A pixel at a line of 16; grows with the font."""
        return self.shape.unit
