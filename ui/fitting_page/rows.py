"""What the table shows, row by row: plain values, neither Qt nor the engine's arrays."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Final, Protocol

from charts.schema import Dimension
from ui.drawing.tape import Crossing, Side, SizeSpan
from ui.theme import Ink, Look

SEPARATOR: Final = " · "
"""Between the parts of a line that are no sentence."""

TAPES: Final = (Dimension.CHEST, Dimension.WAIST, Dimension.HIP, Dimension.BACK_LENGTH)


class Band(StrEnum):
    """The groups of the table, in the order in which a fitter wants them."""

    TRY = "try"
    JUST_OUTSIDE = "just_outside"
    NOT_COMPARED = "not_compared"
    LONG = "long"
    NO = "no"
    NOT_OFFERED = "not_offered"


BANDS: Final = tuple(Band)

BAND_OF: Final[Mapping[str, Band]] = {
    "fits": Band.TRY,
    "edge": Band.TRY,
    "check_length": Band.TRY,
    "length_unknown": Band.TRY,
    "near": Band.JUST_OUTSIDE,
    "likely_long": Band.LONG,
    "too_long": Band.LONG,
    "no": Band.NO,
    "not_offered": Band.NOT_OFFERED,
}


@dataclass(frozen=True, slots=True)
class VerdictWord:
    """One of the two words of a verdict, with its mark."""

    text: str
    look: Look


@dataclass(frozen=True, slots=True)
class TapeCell:
    """One dimension of one row.

    ``number`` is the tightest margin with its word, ``brief`` the same where room is short.
    Without a picture (no reading, or nothing that may be compared) ``spans`` is empty and
    ``number`` says why, or what the chart gives; so it does where the sizes are only drawn beside
    what is ``estimated``.
    """

    number: str
    brief: str
    ink: Ink
    crossing: Crossing = Crossing.UNCHECKED
    spans: tuple[SizeSpan, ...] = ()
    layers_cm: float = 0.0
    cap: Side | None = None
    strong: bool = False
    estimated: bool = False


@dataclass(frozen=True, slots=True)
class ModelRow:
    """One model with its best size for this rider. ``at`` is the best size's row in the fit.

    ``make`` is the maker and the kind, ``edition`` the chart's season; ``length_option`` is the
    size's place on the second axis, ``also`` the next size that can be tried. ``stopped``: the
    note says why the model is not offered. ``note_brief`` stands for the note where it has no room.
    """

    key: str
    at: int
    band: Band
    maker: str
    model: str
    wearer: str
    make: str
    edition: str
    size: str
    length_option: str
    also: str
    girths: VerdictWord
    length: VerdictWord
    cells: Mapping[Dimension, TapeCell]
    note: str
    stopped: bool = False
    note_brief: str = ""


@dataclass(frozen=True, slots=True)
class BandRow:
    """The heading of a group with the number of models in it."""

    band: Band
    count: int
    folded: bool
    text: str


@dataclass(frozen=True, slots=True)
class Guess:
    """What height and weight let be expected of a measure nobody took, with 19 riders in 20."""

    mean_cm: float
    low_cm: float
    high_cm: float


@dataclass(frozen=True, slots=True)
class TapeHead:
    """The head of one tape: ``centre_cm`` is the reading, None before there is one.

    ``tried_cm`` is where the rider's line stands while another value is tried. ``guess`` is what
    is drawn in grey in the place of a missing reading; it is never one. ``brief`` stands for
    ``reading`` where room is short.
    """

    dimension: Dimension
    title: str
    reading: str
    centre_cm: float | None
    half_span_cm: float
    remark: str = ""
    sentence: str = ""
    tried_cm: float | None = None
    guess: Guess | None = None
    brief: str = ""

    @property
    def middle_cm(self) -> float | None:
        """What the tape is centred on: the reading, else its estimate."""
        if self.centre_cm is None and self.guess is not None:
            return self.guess.mean_cm
        return self.centre_cm

    @property
    def rider_cm(self) -> float | None:
        """Where the rider's line stands."""
        return self.centre_cm if self.tried_cm is None else self.tried_cm


class Sheet(Protocol):
    """Everything the table shows; rows are made when they are first painted."""

    @property
    def heads(self) -> Mapping[Dimension, TapeHead]:
        """The head of every tape."""
        ...

    @property
    def summary(self) -> tuple[str, str]:
        """How much was compared, in two lines."""
        ...

    @property
    def has_notes(self) -> bool:
        """Whether any row has something to note beside the tapes."""
        ...

    @property
    def band_rows(self) -> Sequence[int]:
        """Where the headings of bands stand."""
        ...

    @property
    def first_model(self) -> int | None:
        """Where the first row of a model stands, None where there is none."""
        ...

    def __len__(self) -> int:
        """The number of rows, headings among them, folded ones left out."""
        ...

    def row(self, number: int) -> ModelRow | BandRow:
        """The row at ``number``, 0 at the top."""
        ...

    def both_sides(self, row: ModelRow, dimension: Dimension) -> str:
        """What is left at either end of the best size, for the cell that has the focus."""
        ...

    def sentence(self, row: ModelRow, dimension: Dimension | None = None) -> str:
        """What a screen reader says of a row, or of one of its tapes."""
        ...

    def find(self, key: str) -> int | None:
        """Where the model ``key`` stands, None where it is not shown."""
        ...
