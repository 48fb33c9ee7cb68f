"""From the phrases of a heading to what its column is: one reading, or several to choose from."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Final, NamedTuple

from charts.headings.heights import at_a_place
from charts.headings.parts import Hit
from charts.headings.reading import Role
from charts.headings.words import Meaning
from charts.schema import Dimension

Candidate = tuple[Role, Dimension | None]
_DISTANCE: Final = frozenset(
    {"to", "bis", "zu", "tot", "till", "til", "do", "a", "al", "hasta", "ate", "naar"}
)
_AROUND: Final = frozenset(
    (
        *("circumference", "girth", "umfang", "tour", "tour de", "contorno", "contorno de"),
        *(
            "circonference",
            "perimetro",
            "circonferenza",
            "omtrek",
            "omvang",
            "omfang",
            "omkrets",
            "obwod",
            "obvod",
        ),
    )
)
_ALONG: Final = frozenset({Dimension.ARM_LENGTH, Dimension.BACK_LENGTH, Dimension.INSEAM})
_ENDS: Final = {"low_end": Role.LOW_END, "high_end": Role.HIGH_END}
_KEPT_APART: Final = {"tolerance": Role.TOLERANCE, "step": Role.STEP}
_LABEL: Final = (Role.LABEL, None)
_OTHER: Final = (Role.MEASURE, Dimension.OTHER)
_ELSEWHERE: Final = (Meaning(Role.MEASURE, Dimension.OTHER),)


class Meant(NamedTuple):
    """What the phrases of a heading come to.

    ``meanings`` are the readings of the first candidate; ``used`` the phrases that named it.
    ``beside_thing`` is the measure that stands beside a word that makes it no measurement.
    """

    role: Role
    meanings: tuple[Meaning, ...] = ()
    candidates: tuple[Candidate, ...] = ()
    used: frozenset[str] = frozenset()
    beside_thing: Dimension | None = None


def meant(
    hits: Sequence[Hit],
    *,
    has_unit: bool,
    language: str | None,
    capitals: bool = False,
    listed: bool = False,
) -> Meant:
    """The reading of a heading; ``language`` prefers that language's reading of its words.

    ``capitals``: the heading is printed in capitals, so that DE is a label system and no "from".
    ``listed``: a sign parts its words, so that none of them is a place of another.
    """
    cores = [hit for hit in hits if _can_measure(hit)]
    if not cores:
        return _without_measure(hits, capitals=capitals)
    if _refused(hits):
        perhaps = _measured(hits, cores, has_unit=True, language=language).candidates
        return Meant(Role.OTHER, beside_thing=perhaps[0][1])
    heights = () if listed else _height_at_a_place(hits, cores, language)
    if heights:
        return _of_height(heights, hits, cores)
    cores = _before_a_place(hits, cores)
    if not cores:
        return Meant(Role.UNKNOWN)
    found = _measured(hits, cores, has_unit=has_unit, language=language)
    if _around_a_length(hits, found) or _is_distance(hits, cores) or _names_a_thing(hits):
        return found._replace(role=Role.MEASURE, meanings=_ELSEWHERE, candidates=(_OTHER,))
    if len(found.candidates) == 1 and found.role is Role.MEASURE and _has_unknown(hits):
        if found.candidates[0] == _OTHER:
            return Meant(Role.UNKNOWN)
        found = found._replace(candidates=(found.candidates[0], _OTHER))
    return found._replace(role=_end_of(hits) or found.role)


def _height_at_a_place(
    hits: Sequence[Hit], cores: Sequence[Hit], language: str | None
) -> tuple[Candidate, ...]:
    return at_a_place(hits, [_candidates(_in_language(core, language)) for core in cores])


def _of_height(heights: tuple[Candidate, ...], hits: Sequence[Hit], cores: Sequence[Hit]) -> Meant:
    """The reading of such a height; a word that nobody knows may make it another measure."""
    if _has_unknown(hits) and _OTHER not in heights:
        heights = (*heights, _OTHER)
    meanings = tuple(Meaning(*one) for one in heights)
    used = frozenset(core.phrase for core in cores)
    return Meant(heights[0][0], meanings, heights, used)


def _can_measure(hit: Hit) -> bool:
    return hit.entry is not None and any(one.role is Role.MEASURE for one in hit.entry.columns)


def _is(hit: Hit, part: str) -> bool:
    return hit.entry is not None and part in hit.entry.parts


def _refused(hits: Sequence[Hit]) -> bool:
    """A strap, a cylinder, a price beside a body word: no measurement of a rider."""
    return any(_is(hit, "refuse") or _is_other_only(hit) for hit in hits)


def _is_other_only(hit: Hit) -> bool:
    if hit.entry is None or hit.entry.parts or not hit.entry.columns:
        return False
    return all(one.role is Role.OTHER for one in hit.entry.columns)


def _before_a_place(hits: Sequence[Hit], cores: list[Hit]) -> list[Hit]:
    """The measures that are not the place of another one: "hip 20 cm below waist" is a hip."""
    for at, hit in enumerate(hits[:-1]):
        end = at == 0 and any(_is(hit, part) for part in _ENDS)
        if _is(hit, "location") and hit.phrase not in _DISTANCE and not end:
            return [core for core in cores if hits.index(core) < at]
    return cores


def _has_unknown(hits: Sequence[Hit]) -> bool:
    """A word that may make it a measure of something else: "packed height"."""
    return any(
        hit.entry is None and len(hit.phrase) > 1 and not hit.phrase[0].isdigit() for hit in hits
    )


def _is_distance(hits: Sequence[Hit], cores: list[Hit]) -> bool:
    """Waist to knee: a way between two points, no girth at the first of them."""
    for before, between, after in zip(hits, hits[1:], hits[2:], strict=False):
        way = between.phrase in _DISTANCE and _is(between, "location")
        if way and before in cores and (after in cores or after.entry is None):
            return True
    return False


def _names_a_thing(hits: Sequence[Hit]) -> bool:
    return any(_is(hit, "thing") for hit in hits)


def _around_a_length(hits: Sequence[Hit], found: Meant) -> bool:
    """Sleeve circumference: a girth of what is measured along elsewhere, and no length."""
    around = any(hit.phrase in _AROUND for hit in hits)
    return around and {dimension for _, dimension in found.candidates} <= _ALONG


def _measured(
    hits: Sequence[Hit], cores: Sequence[Hit], *, has_unit: bool, language: str | None
) -> Meant:
    """What the measuring words have in common; where nothing, each of them is a candidate."""
    sets = [_candidates(_in_language(core, language)) for core in cores]
    shared = [one for one in sets[0] if all(one in other for other in sets[1:])]
    candidates = shared or list(dict.fromkeys(one for several in sets for one in several))
    if _LABEL in candidates and any(_is_label_only(hit) for hit in hits):
        candidates = [_LABEL]
    if has_unit:
        candidates.sort(key=lambda one: one[0] is not Role.MEASURE)
    meanings = tuple(
        meaning
        for core in cores
        for meaning in _in_language(core, language)
        if (meaning.role, meaning.dimension) in candidates
    )
    several = tuple(candidates) if len(candidates) > 1 else ()
    used = frozenset(core.phrase for core in cores)
    return Meant(candidates[0][0], meanings, several or (candidates[0],), used)


def _candidates(meanings: Iterable[Meaning]) -> list[Candidate]:
    return list(dict.fromkeys((one.role, one.dimension) for one in meanings))


def _in_language(hit: Hit, language: str | None) -> list[Meaning]:
    """The readings of a phrase, those of ``language`` alone where it has one."""
    columns = [] if hit.entry is None else hit.entry.columns
    own = [one for one in columns if one.language == language]
    # A word that stands for the end of a range or a size elsewhere is no second measure here.
    return own or [one for one in columns if one.role is not Role.OTHER] or columns


def _is_label_only(hit: Hit) -> bool:
    if hit.entry is None or not hit.entry.columns:
        return False
    return all(one.role is Role.LABEL for one in hit.entry.columns)


def _end_of(hits: Sequence[Hit]) -> Role | None:
    """Min, max, from, to at one end of the heading; both together are a whole range."""
    for part, role in _KEPT_APART.items():
        if any(_is(hit, part) for hit in hits):
            return role
    outer = [hits[0], hits[-1]] if len(hits) > 1 else []
    found = {
        role
        for part, role in _ENDS.items()
        for place, hit in enumerate(outer)
        if _is(hit, part) and (place == 1 or not _is(hit, "filler"))
    }
    inner = {role for part, role in _ENDS.items() for hit in hits[1:-1] if _is(hit, part)}
    return found.pop() if len(found) == 1 and not inner - found else None


def _without_measure(hits: Sequence[Hit], *, capitals: bool) -> Meant:
    """A label, an article number, a unit, an end of a range: the phrase that is no mere part."""
    named = [hit for hit in hits if hit.entry is not None and hit.entry.columns]
    first = min(named, key=lambda hit: bool(hit.entry and hit.entry.parts), default=None)
    if first is not None and first.entry is not None:
        if _refused(hits) and first.entry.columns[0].role is not Role.OTHER:
            return Meant(Role.OTHER, used=frozenset(hit.phrase for hit in hits))
        role = _role_of(first, capitals=capitals)
        if role is Role.OTHER and _is(first, "filler") and _of_a_garment(hits):
            return Meant(Role.UNKNOWN)
        ends = _both_ends(named)
        return Meant(Role.UNKNOWN if ends else role, used=frozenset({first.phrase}))
    for part, role in (*_KEPT_APART.items(), *_ENDS.items()):
        if any(_is(hit, part) for hit in hits):
            return Meant(role)
    if any(_is(hit, "refuse") for hit in hits):
        return Meant(Role.OTHER)
    return Meant(Role.BAND if any(hit.entry and hit.entry.bands for hit in hits) else Role.UNKNOWN)


def _of_a_garment(hits: Sequence[Hit]) -> bool:
    """Whether words say that a garment was measured: "finished measurement" does not say where."""
    return any(_is(hit, "finished") or _is(hit, "flat") for hit in hits)


def _role_of(hit: Hit, *, capitals: bool) -> Role:
    """The role of a word; DE and A in capitals are a label system and a letter, no end."""
    roles = [one.role for one in hit.entry.columns] if hit.entry else []
    ends = [role for role in roles if role in _ENDS.values()]
    others = [role for role in roles if role not in _ENDS.values()]
    if capitals and len(hit.phrase) == 1:
        return others[0] if others else Role.UNKNOWN
    return (others + ends if capitals else ends + others)[0]


def _both_ends(named: Sequence[Hit]) -> bool:
    roles = {one.role for hit in named if hit.entry for one in hit.entry.columns}
    return {Role.LOW_END, Role.HIGH_END} <= roles and len(named) > 1
