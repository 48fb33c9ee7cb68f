"""What is compared with what in a sentence about limits, and which of its clauses says what.

"A size that does not exceed your chest" makes the figure the smaller of the two, where "your chest
must not exceed the figure" makes it the larger. The words are common ones of the languages, from
memory, unchecked by native speakers.
"""

from __future__ import annotations

import re
from typing import Final

from charts.schema import Kind

OTHER_END: Final = {Kind.AT_MOST: Kind.AT_LEAST, Kind.AT_LEAST: Kind.AT_MOST}
_FILLER: Final = (
    r"(?:as|large|big|equal|to|the|than|greater|égale?s?|à|aux?|il|la|le|al|a|o|gleich|so|gro(?:ß|ss)"
    r"|wie|groot|als|gelijk|aan|igual|ao|seu|lige|så|stort?|rovn|równ\w*|jak|jako|der|dem|den)"
)
_WEARERS: Final = re.compile(
    rf"\s+(?:{_FILLER}\s+){{0,3}}"
    r"(?:your|you|the (?:wearer|rider|body)|ihre?[mnrs]?\b|deine?[mnrs]?\b|eure?[mnrs]?\b"
    r"|dem eigenen|votre|vos\b|ton\b|ta\b|uw\b|jouw|je\b|tuo|tua|vostr[ao]|su\b|tu\b|tus\b"
    r"|sus\b|seu|sua|teu|v[oô]tre|din\b|ditt?\b|dine?\b|ert\b|twoj\w*|tw[oó]j|pa[nń]s\w*|vaš\w*|váš|sv[ůé]\w*)",
    re.IGNORECASE,
)
_IF: Final = re.compile(
    r"\b(?:if|when|where|wenn|falls|sofern|ist|liegt|si|als|indien|se|om|hvis|jeśli|gdy|pokud|když)\b",
    re.IGNORECASE,
)
_PAST_THE_FIGURE: Final = re.compile(
    r"(?:larger|bigger|greater|more|higher|above|over|exceeds?|exceeding|größer|höher|mehr|über"
    r"|supérieure?s?|plus (?:grande?|élevée?)|dépasse|groter|meer|hoger|boven|maggiore|superiore"
    r"|mayor|superior|maior|större|mer|högre|större|mere|høyere|højere|więk\w+|přesahuje|větší)"
    r"(?:\s+(?:than|als|que|à|di|a|än|end|enn|niż|od|než|to|the|this|that|these|any|der|die|das|den"
    r"|dem|le|la|l['’]|au|aux|il|lo|el|o|do|de|het|given|shown|angegeben\w*|du|che)\b)*\s+"
    r"(?:figure|number|value|chart|table|listed|given|shown|indicated|measurements? (?:given|shown)"
    r"|zahl|wert|angabe|angegeben|tabelle|chiffre|valeur|indiqué|getal|waarde|aangegeven|valore"
    r"|indicat|cifra|valor|tabla|indicad|siffra|värde|angiv|angitt|tal(?:let)?\b|værdi|verdi|wartoś"
    r"|podan|hodnot|uveden)",
    re.IGNORECASE,
)
_SOMETHING_BETTER: Final = re.compile(
    r"\bm[aá][xk][iy]?[ms]\w*\s+(?:\w+\s+)?(?:comfort|komfort|confort|comodid|protec|schutz|beweg"
    r"|freedom|mobil|support|safety|sicher|perform|flexib|precis|accura|genau|exactit|warmth|breath"
    r"|visib|secur|veilig|bescherm|vrijheid|beschutting|protezion|segur|skydd|beskyt|ochron|ochran)",
    re.IGNORECASE,
)
"""As much as can be of something that nobody measures here: maximum comfort."""
_OVER_CLOTHES: Final = re.compile(
    r"\b(?:over|above) (?:your|the wearer['’]?s?) (?:\w+ ){0,2}"
    r"(?:cloth|jacket|shirt|wear\b|underwear|garment|coat|sweater|jumper|outfit|kit\b|head|shoulder)",
    re.IGNORECASE,
)
_TIMES: Final = re.compile(
    r"(?:at least|mindestens|mindst|minst(?:ens|e)?|au moins|almeno|al menos|pelo menos|co najmniej"
    r"|przynajmniej|alespoň|vähintään)\s+"
    r"(?:as (?:import|good|well)|once|twice|two|three|one\b|ein|zwei|drei|to\b|tre\b|två|twee|drie"
    r"|deux|trois|une?\b|due\b|dos\b|una?\b|dv[aě]|dwa|dwukr|kaksi|kerran)",
    re.IGNORECASE,
)
"""How often, or how much something matters: "measure at least twice"."""
_DENIED: Final = re.compile(
    r"\b(?:not|no|keine?n?|nicht|pas (?:des|les|de)|geen|niet(?: de)?|non (?:sono|è)|no son|inte"
    r"|ikke|nie są|nejsou|não são)\s+(?:\w+\s+)?(?:m[aá][xk][iy]?m|m[ií]nim|upper|lower|höchst"
    r"|mindest|obergrenz|untergrenz)",
    re.IGNORECASE,
)
_SET: Final = (
    r"(?:laced|tied|tightened|fastened|cinched|buckled|loosened|adjusted|geschnürt|gebunden|verstellt"
    r"|eingestellt|lacée?s?|serrée?s?|réglée?s?|attachée?s?|atad[oa]s?|ajustad[oa]s?|apertad[oa]s?"
    r"|allacciat[oaie]|legat[oaie]|regolat[oaie]|aangetrokken|ingesteld|z?a?wiązan\w*|ściągnięt\w*"
    r"|zaciągnięt\w*|wyregulowan\w*|svázan\w*|zavázan\w*|utažen\w*|snörda?|snört|snøret|snørt)"
)
_END: Final = (
    r"(?:(?:to|at|on|auf|im|in|à|au|al|a|ao|no|na|do|tot|op|til|till)\s+)?(?:(?:the|its|das|dem|het|le|il"
    r"|o|el|su|son|sein|ihr|zijn|det)\s+)?(?:m[aá][xk][iy]?[ms]\w*|m[ií]nim\w*|max\b|min\b)"
)
_STATE: Final = re.compile(rf"\b{_SET}\s+{_END}|\b{_END}\s+{_SET}\b", re.IGNORECASE)
"""How far the garment itself is laced or let out for measuring: "laced to the minimum"."""
_CLAUSE: Final = re.compile(r"\s*[;,]\s+|\s+[–—|]\s+")


def of_the_wearer(text: str, end: int) -> bool:
    """Whether the words behind a comparison, from ``end`` on, are the wearer and no figure."""
    return _WEARERS.match(text, end) is not None


def past_the_figure(text: str) -> bool:
    """``If your chest is larger than the figure, take the next size up``: an upper limit."""
    return _IF.search(text) is not None and _PAST_THE_FIGURE.search(text) is not None


def conditional(text: str) -> bool:
    """Whether a sentence says what holds if, not what holds."""
    return _IF.search(text) is not None


def no_limit(text: str) -> bool:
    """Whether a word for a limit bounds comfort or a state, goes over clothes, or is denied."""
    nothing = (_SOMETHING_BETTER, _OVER_CLOTHES, _TIMES, _DENIED, _STATE)
    return any(one.search(text) for one in nothing)


def clauses(text: str) -> list[str]:
    """The parts of a sentence that may each say something else: "maximum in cm, min. in kg"."""
    return [part for part in _CLAUSE.split(text) if part.strip()]
