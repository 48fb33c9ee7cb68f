"""The answers given to one file while it is read: who is asked, and which found what they meant."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from charts.answers import A, Act, Answer, AsPrinted, Meaning, Question, Scope, Taken
from charts.corrections import Correction
from charts.findings import Candidate, Finding, Settled
from charts.quantities import FAMILY, Family, Unit
from charts.schema import Basis


class Answering:
    """The answers given to one file, and which of them found what they speak of.

    Attributes:
        answers: all of them, in the order in which they were given.
        corrections: the cells that were read otherwise.
        chosen: why a reading was taken, by the id of the question that offered it.
    """

    def __init__(self, answers: Sequence[Answer] = ()) -> None:
        self.answers = tuple(answers)
        self.corrections: list[Correction] = []
        self.chosen: dict[str, str] = {}
        self._used: set[int] = set()

    def of(self, kind: type[A]) -> Iterator[tuple[Answer, A]]:
        """The answers of one kind, in the order in which they were given, each with its act."""
        for answer in self.answers:
            if isinstance(answer.act, kind):
                yield answer, answer.act

    def use(self, answer: Answer) -> None:
        """Note that ``answer`` found what it speaks of."""
        self._used.add(id(answer))

    def unuse(self, answer: Answer) -> None:
        """Note that ``answer`` does not fit what it found."""
        self._used.discard(id(answer))

    def unit(self, family: Family) -> tuple[Answer, Unit] | tuple[None, None]:
        """The unit of the whole file where none is printed, with the answer that gives it."""
        for answer, act in self.of(Meaning):
            if act.scope is Scope.FILE and act.unit is not None and FAMILY[act.unit] is family:
                self.use(answer)
                return answer, act.unit
        return None, None

    def emptied(self, place: str) -> bool:
        """Whether a person said that the cell at ``place`` gives nothing."""
        return any(one.place == place and not one.text for one in self.corrections)

    @property
    def basis(self) -> Basis:
        """Whose measures the whole file gives where it does not say so itself."""
        for answer, act in self.of(Meaning):
            if act.scope is Scope.FILE and act.basis is not None and act.dimension is None:
                self.use(answer)
                return act.basis
        return Basis.UNKNOWN

    @property
    def used(self) -> tuple[Answer, ...]:
        """The answers that had their effect."""
        return tuple(answer for answer in self.answers if id(answer) in self._used)

    @property
    def unused(self) -> tuple[Answer, ...]:
        """The answers that speak of nothing in this file."""
        return tuple(answer for answer in self.answers if id(answer) not in self._used)

    def settles(self, finding: Finding) -> Settled | None:
        """How the question of ``finding`` is closed by a word that changes nothing; or None."""
        asked = Question.of(finding)
        for answer in self.answers:
            if _confirms(answer.act, asked, finding.candidates):
                self.use(answer)
                if isinstance(answer.act, Taken):
                    self.chosen[finding.id] = answer.act.why
                return answer.settled()
        return None


def _confirms(act: Act, asked: Question, offered: Sequence[Candidate]) -> bool:
    """Whether an act says that what is asked about is right as it was read.

    A reading that was taken of another print than stands there now confirms nothing.
    """
    match act:
        case AsPrinted(place, code, heading, text, _):
            return Question(code, place, heading, text) == asked
        case Taken(place, code, why, text):
            still = any((one.why, one.text) == (why, text or one.text) for one in offered)
            return (code, place) == (asked.code, asked.place) and (still or not offered)
    return False
