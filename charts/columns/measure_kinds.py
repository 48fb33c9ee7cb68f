"""What a measure without a dimension of its own is, as far as its size beside a girth is known.

A thigh, a rise and a garment's length are all ``other``. Their words tell them apart, and only
whole headings that say nothing more are taken: half a knee is no knee.
"""

from __future__ import annotations

import re
from typing import Final

from charts.columns.meaning import Column
from charts.schema import Basis, Definition, Dimension
from charts.vocabulary import unaccented

_OF_DIMENSION: Final = {
    Dimension.HEIGHT: "height",
    Dimension.INSEAM: "inseam",
    Dimension.ARM_LENGTH: "arm_length",
    Dimension.SHOULDER_BREADTH: "shoulder_breadth",
}
_BACKS: Final = frozenset(
    {Definition.UNKNOWN, Definition.BACK_C7_WAIST, Definition.BACK_SHOULDER_WAIST}
)
_LENGTH: Final = (
    r"length|lange\b|longueur|lengte|lunghezza|\blargo\b|comprimento|dlugosc|delka|leng?de?\b"
    r"|langd|lungime|衣[长長]|着丈|总长|總長|длина"
)
_KINDS: Final = (
    (
        "thigh",
        r"thigh|schenkel|cuisse|\bdij|bovenbeen|coscia|muslo|\bcoxa|\blår|\blar\b|\budo|stehn",
    ),
    ("knee", r"\bknees?\b|\bknie|genou|ginocchi|rodilla|joelho|\bkna\b|\bknæ|\bkne\b|kolan|kolen"),
    (
        "calf",
        r"\bcal(?:f|ves)\b|\bwaden?|mollet|\bkuit|polpacci|pantorrilla|panturrilha|\bvad\b|lydk|lytk",
    ),
    (
        "ankle",
        r"\bankles?\b|knochel|\bfessel|cheville|\benkel|caviglia|tobillo|tornozelo|\bankel|kotnik",
    ),
    ("upper_arm", r"\bbiceps?\b|upper arm|oberarm|\bbovenarm|overarm|\bbicipit"),
    ("forearm", r"\bforearms?\b|unterarm|avant-bras|\bonderarm|avambracci|antebra|underarm"),
    ("wrist", r"\bwrists?\b|handgelenk|poignet|\bpols\b|\bpolso|muneca|\bhandled|nadgarst|zapest"),
    (
        "head",
        r"\bhead\b|\bkopf|\bhoofd|\btete\b|\btesta\b|\bcabeza|\bcabeca|\bhuvud|\bhoved|\bglow|\bhlav",
    ),
    ("foot", r"\b(?:foot|feet)\b|\bfu(?:ß|ss)|\bpied|\bvoet|\bpiede|\bpie\b"),
    ("outseam", r"outseam|out ?side (?:leg|seam)|out ?leg|side seam|seitenlange|au(?:ß|ss)enbein"),
    ("rise", r"\brise\b|leibhohe"),
    (
        "garment_length",
        _LENGTH,
    ),
)
"""The kinds, the first that fits, in text without accents. A length comes last."""
_OF_A_PART: Final = re.compile(
    r"sleeve|arm\b|arme?l|manche|mouw|manica|manga|rekaw|rukav|\barm|shoulder|schulter|hood|kapuz|zip"
    r"|leg\b|bein|jambe|crotch|inseam|schritt|collar|kragen|hem\b|saum|cuff|pocket|strap|gurt|belt"
    r"|hand|finger|foot|fu(?:ß|ss)|shoe|head|visor|skirt|slit|button|opening|drop|waist|taille|hip\b"
    r"|huft|bust|neck|hals|thumb|blade|pole|stick|rope|torso|crown|brim|tongue|tail|rein|cane"
)
"""Lengths of something that is shorter, or longer, than a garment from the neck down."""
_NOT_ROUND: Final = re.compile(
    r"½|1/2|\bhalf\b|\bhalbe?|\b(?:to|bis|au?|till|til|tot|do|hasta|fino|ate)\b|height|hohe|hauteur"
    r"|width|breite|largeur|breedte|larghezza|ancho|largura|szerok|sirk|bred|opening|offnung|\bflat\b"
    r"|length|lange\b|longueur|lengte|lunghezza|\blargo\b|dlugosc|delka|længde|langd|hem\b|inside"
)
_ROUND: Final = frozenset(
    {"thigh", "knee", "calf", "ankle", "upper_arm", "forearm", "wrist", "head"}
)
_LEGS_THAT_END_EARLY: Final = re.compile(
    r"shorts?\b|bermuda|\bkurze?[rn]?\b|caleçon|calecon|cuissard|\bcorta|\bcorto|korte broek|\bkort"
    r"|culotte|capri|knicker|brief|boxer|krotk|kratk|swim|bade|\b7/8|\b3/4|¾"
    r"|three[- ]quarter|t-?shirt|\btees?\b|\bpolo|sleeveless|kurzarm|halbarm|manches? courte"
    r"|manica corta|šortk|singlet|tank|cropp?(?:ed)?\b|bolero|jumpsuit|romper|legging",
    re.IGNORECASE,
)


def kind_of(column: Column) -> str | None:
    """The kind of measure whose share of a girth is known; None where the heading says less."""
    if column.basis is Basis.FLAT and column.dimension is Dimension.OTHER:
        return None
    if column.dimension is Dimension.BACK_LENGTH:
        return "back_length" if column.definition in _BACKS else None
    if column.dimension is not Dimension.OTHER or column.nameless:
        return _OF_DIMENSION.get(column.dimension)
    text = unaccented(column.heading)
    kind = next((kind for kind, pattern in _KINDS if re.search(pattern, text)), None)
    if kind in _ROUND and _NOT_ROUND.search(text):
        return None
    return None if kind == "garment_length" and _OF_A_PART.search(text) else kind


def ends_early(text: str) -> bool:
    """Whether words name clothes with short legs or sleeves, or none: shorts, a T-shirt."""
    return _LEGS_THAT_END_EARLY.search(text) is not None
