"""Texts that happen to name for whom something is: a statement, an order, a way to another page.

``Women: size down`` and ``Also for men`` have no full stop, and name no table all the same.
The words are common words of the languages, from memory.
"""

from __future__ import annotations

import re
from typing import Final

_STATES: Final = re.compile(
    r"\b(?:not|no|also|see|is|are|isn|aren|should|must|may|can|could|will|would|please|if|choose"
    r"|measure (?:the|your|a|an|around|over|from|with)|run|runs|fit|fits|order|than"
    r"|nicht|kein|keine|auch|siehe|ist|sind|sollte|sollten|muss|müssen|kann|können|bitte|wenn|falls"
    r"|messen|wählen|fällt|fallen|gibt|haben|hat|als"
    r"|pas|aussi|voir|est|sont|doit|doivent|peut|peuvent|veuillez|si|mesurez|choisissez|existe"
    r"|niet|geen|ook|zie|zijn|moet|moeten|kunnen|als|meet|kies|valt"
    r"|non|anche|vedi|è|sono|deve|devono|può|possono|se|misurare|scegliere"
    r"|también|ver|véase|es|son|está|debe|deben|puede|pueden|mida|elija"
    r"|não|também|são|deve|devem|pode|podem|meça|escolha"
    r"|inte|ej|även|se|är|ska|bör|kan|mät|välj|ikke|også|er|skal|bør|mål|vælg|velg"
    r"|nie|także|też|patrz|jest|są|powinn\w*|może|mogą|jeśli|proszę"
    r"|není|nejsou|také|viz|je|jsou|musí|může|mohou|pokud|prosím)\b",
    re.IGNORECASE,
)
"""Words that make a statement of what would else be the name of a table."""
_NOT: Final = re.compile(
    r"\b(?:not|nicht|kein|keine|niet|geen|non|pas|não|inte|ikke|nie|není|except|ohne|sauf|excepto"
    r"|exceto|eccetto|behalve|außer|undtagen|utom|oprócz|kromě)\b",
    re.IGNORECASE,
)
_BIDS: Final = re.compile(
    r"\b(?:siz(?:e|es|ing) (?:up|down|smaller|larger|bigger)|should|(?:choose|order) (?:one|a)"
    r"|(?:go|run)(?:es|s)? (?:up|down|small|large|true)|wears|wearing|also|looking for|only in"
    r"|wear (?:an?|the|one|two|it|them|this|these|their|your|under|over|with|size [\dXSML]+|\d+"
    r"|X*[SML])"
    r"|(?:misst|wie|wo|sollte|muss|kann|hur|mäter|tar|bör|ska|hvordan|sådan|måler|skal) man"
    r"|man (?:misst|sollte|muss|kann|mäter|tar|bör|ska|måler|tager|skal)"
    r"|back to (?!school)|next page|on request"
    r"|sollten|(?:nummer|größe) (?:kleiner|größer)|(?:wählen|bestellen) eine?|trägt"
    r"|auch|zurück zu|fallen|auf anfrage"
    r"|(?:choisissez|prenez|commandez) une|porte (?:du|la|le|une?)|aussi|retour à"
    r"|taille (?:au-dessus|au-dessous|en dessous|de plus|de moins|supérieure|inférieure)"
    r"|ook|(?:kies|kiezen|bestel|bestellen) een|draagt|maat (?:kleiner|groter)"
    r"|anche|(?:scegliere|ordinare|prendere) una|indossa|taglia in (?:più|meno)"
    r"|también|(?:elija|elige|elegir|pida|pedir) una|talla (?:más|menos|mayor|menor)"
    r"|também|(?:escolha|escolher|peça|pedir) um"
    r"|(?:tamanho|número) (?:acima|abaixo|maior|menor|a mais|a menos)"
    r"|även|(?:välj|väljer|beställ|beställer) en|storlek (?:större|mindre|upp|ner)"
    r"|også|(?:vælg|velg|vælger|velger|bestil|bestill) en"
    r"|(?:str|størrelse) (?:større|mindre|op|opp|ned)"
    r"|także|też|również|nosi|rozmiar (?:większy|mniejszy|w górę|w dół)"
    r"|také|(?:číslo|velikost) (?:větší|menší|nahoru|dolů))\b",
    re.IGNORECASE,
)
"""Words that even without a full stop tell somebody what to take, or speak of another table."""

_ASKS_WHICH: Final = re.compile(
    r"\s*(?:which|what size|welche[rs]?|quelle?s?|quale|che taglia|qu[eé] talla|cuál|qual"
    r"|que tamanho|welke|vilken|hvilken|jaki\w*|jak[áýé])\b",
    re.IGNORECASE,
)
"""How a heading begins that asks what the table answers: ``Which size is right for your child?``"""


def asks_which(text: str) -> bool:
    """Whether a title is the question that its table answers, and no advice or way elsewhere."""
    return text.rstrip().endswith("?") and _ASKS_WHICH.match(text) is not None and not bids(text)


def states(text: str) -> bool:
    """Whether a text with a full stop says something, and is no long name of a table."""
    return _STATES.search(text) is not None or text.rstrip().endswith("?")


def bids(text: str) -> bool:
    """Whether a short text without a full stop says something of a band, and names no table."""
    return _BIDS.search(text) is not None or "=" in text


def denies(text: str) -> bool:
    """Whether a text says whom something is not for."""
    return _NOT.search(text) is not None
