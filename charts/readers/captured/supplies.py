"""What has to be bought for each size of a pattern: ``Yarn: 5 (6) 7 balls``, no measure of anybody.

Told by the word behind the figures, which no measure of a body or a garment has; metres of cloth
are left out, for girths may be printed in metres.
"""

from __future__ import annotations

import re
from typing import Final

_GOODS: Final = (
    r"balls?|skeins?|hanks?|cones?|reels?|spools?|buttons?|yards?|yds?|grams?|gr?|oz"
    r"|knäuel|stränge?|knöpfe|gramm|pelotes?|écheveaux|boutons|grammes|ovillos?|madejas?|botones"
    r"|gramos|gomitoli|matasse|grammi|bottoni|novelos|meadas|bollen|strengen|knopen|nøster|nøgler"
    r"|nystan|härvor|knapper|knappar|kerää|vyyhtiä|nappia|motk(?:i|ów)|guzik(?:i|ów)|klubíč?ek"
    r"|мотк(?:а|ов)|пугов(?:ицы|иц)|г"
)
_SUPPLY: Final = re.compile(rf"\s*(?:[x×*]\s*\d+\s*)?(?:{_GOODS})(?![^\W\d_])", re.IGNORECASE)


def is_supply(behind: str) -> bool:
    """Whether ``behind``, what follows the figures of a line, makes them yarn, cloth or buttons."""
    return _SUPPLY.match(behind) is not None
