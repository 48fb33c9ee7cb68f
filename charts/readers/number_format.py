"""A stored number as its workbook shows it: ``96`` with the format ``0" cm"`` is "96 cm".

Only what size charts use is drawn: literals, 0 # ?, fractions, per cent, scaling commas,
sections and conditions. Thousands are never grouped and the decimal mark is a point, because
both depend on the machine that shows them and "1,250" would read two ways.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction
from functools import lru_cache
from typing import Final

_TOKENS: Final = re.compile(
    r"""(?P<quoted>"{3,}|"[^"]*"?)|\\(?P<escaped>.)|[_*].|\[(?P<bracket>[^\]]*)\]
    |(?P<general>General|Standard)|(?P<exponent>E[+-])|(?P<digit>[0#?])|(?P<mark>[.,%/@;])
    |(?P<plain>.)""",
    re.IGNORECASE | re.VERBOSE | re.DOTALL,
)
_CONDITION: Final = re.compile(r"(<=|>=|<>|<|>|=)\s*(-?\d+(?:[.,]\d+)?)")
_SHOWN_DIGITS: Final = 11  # characters of a number in the format General, its point included
_LARGEST: Final = Decimal("1e15")  # beyond it a workbook itself has no exact digits
_MOST_PLACES: Final = 12


@dataclass(frozen=True, slots=True)
class _Token:
    kind: str  # literal, digit, point, comma, percent, slash, text, general, exponent
    text: str


@dataclass(frozen=True, slots=True)
class _Section:
    tokens: tuple[_Token, ...] = ()
    condition: tuple[str, Decimal] | None = None

    def has(self, kind: str) -> bool:
        return any(token.kind == kind for token in self.tokens)


_MARKS: Final = {".": "point", ",": "comma", "%": "percent", "/": "slash", "@": "text"}


def shown_number(value: Decimal, code: str) -> str:
    """``value`` as the number format ``code`` shows it."""
    if not _is_shown(value):
        return str(value)
    section, unsigned = _chosen(value, _sections(code))
    if section is None or _places(section.tokens) > _MOST_PLACES:
        return general(value)
    sign = "-" if value < 0 and not unsigned else ""
    text = _drawn(abs(value), section)
    return sign + text if any(character.isdigit() for character in text) else text


def shown_text(text: str, code: str) -> str:
    """A stored text as ``code`` shows it: only a section with @ changes it."""
    if "@" not in code or code == "@":
        return text
    section = next((one for one in _sections(code) if one.has("text")), None)
    if section is None:
        return text
    return "".join(text if token.kind == "text" else token.text for token in section.tokens)


def general(value: Decimal) -> str:
    """``value`` in the format General: at most eleven characters, no needless zeros."""
    if not _is_shown(value):
        return str(value)
    if value == value.to_integral_value():
        return f"{value.to_integral_value():f}"
    places = max(1, _SHOWN_DIGITS - 1 - len(str(abs(int(value)))))
    text = f"{value.quantize(Decimal(1).scaleb(-places), ROUND_HALF_UP):f}"
    return text.rstrip("0").rstrip(".")


def _is_shown(value: Decimal) -> bool:
    """Whether a workbook could show ``value`` with all its digits."""
    return value.is_finite() and abs(value) < _LARGEST


@lru_cache(maxsize=512)
def _sections(code: str) -> tuple[_Section, ...]:
    sections = [_Section()]
    for match in _TOKENS.finditer(code):
        kind, text = match.lastgroup, match[0]
        if text == ";" and kind == "mark":
            sections.append(_Section())
            continue
        section = sections[-1]
        condition = section.condition
        if kind == "bracket":
            asked = _CONDITION.match(match["bracket"])
            if asked:
                condition = (asked[1], Decimal(asked[2].replace(",", ".")))
        tokens = (*section.tokens, *_token(kind, match))
        sections[-1] = _Section(tokens, condition)
    return tuple(sections)


def _token(kind: str | None, match: re.Match[str]) -> tuple[_Token, ...]:
    text = match[0]
    if kind == "quoted":
        return (_Token("literal", '"' if text.startswith('"""') else text.strip('"')),)
    if kind == "escaped":
        return (_Token("literal", match["escaped"]),)
    if kind == "bracket":
        money = match["bracket"].startswith("$")
        return (_Token("literal", match["bracket"][1:].split("-")[0]),) if money else ()
    if kind == "mark":
        return (_Token(_MARKS[text], text),)
    if kind in ("digit", "general", "exponent"):
        return (_Token(kind, text),)
    return (_Token("literal", text),) if kind == "plain" else ()


def _chosen(value: Decimal, sections: tuple[_Section, ...]) -> tuple[_Section | None, bool]:
    """The section for ``value`` and whether it says the sign itself."""
    numeric = [one for one in sections if not one.has("text")] or [_Section()]
    if any(one.condition for one in numeric):
        for one in numeric:
            if one.condition is None or _holds(value, one.condition):
                return one, False
        return None, False
    if len(numeric) == 1:
        plain_text = sections[0].has("text")
        return (None if plain_text else numeric[0]), False
    if value < 0:
        return numeric[1], True
    return (numeric[2] if value == 0 and len(numeric) > 2 else numeric[0]), False


def _holds(value: Decimal, condition: tuple[str, Decimal]) -> bool:
    sign, bound = condition
    return {
        "<": value < bound,
        "<=": value <= bound,
        ">": value > bound,
        ">=": value >= bound,
        "=": value == bound,
        "<>": value != bound,
    }[sign]


def _drawn(value: Decimal, section: _Section) -> str:
    if section.has("general"):
        return "".join(
            general(value) if token.kind == "general" else token.text for token in section.tokens
        )
    if not section.has("digit"):
        return "".join(token.text for token in section.tokens).strip()
    tokens = section.tokens
    value = value * 100 ** sum(token.kind == "percent" for token in tokens)
    value = value / 1000 ** _scaling_commas(tokens)
    tokens = tuple(token for token in tokens if token.kind != "comma")
    slash = next((at for at, token in enumerate(tokens) if token.kind == "slash"), None)
    if slash and _is_digit(tokens[slash - 1]):
        return _fraction(value, tokens, slash).strip()
    if section.has("exponent"):
        return f"{value:.{max(0, _places(tokens))}E}"
    return _decimal(value, tokens).strip()


def _is_digit(token: _Token) -> bool:
    return token.kind == "digit" or (token.kind == "literal" and token.text in "0123456789")


def _scaling_commas(tokens: tuple[_Token, ...]) -> int:
    """Commas right after the last digit: each divides by a thousand."""
    kinds = [token.kind for token in tokens]
    after_last = len(kinds) - kinds[::-1].index("digit")
    count = 0
    while kinds[after_last + count : after_last + count + 1] == ["comma"]:
        count += 1
    return count


def _places(tokens: tuple[_Token, ...]) -> int:
    kinds = [token.kind for token in tokens]
    if "point" not in kinds:
        return 0
    end = kinds.index("exponent") if "exponent" in kinds else len(kinds)
    return kinds[kinds.index("point") : end].count("digit")


def _decimal(value: Decimal, tokens: tuple[_Token, ...]) -> str:
    places = _places(tokens)
    rounded = f"{value.quantize(Decimal(1).scaleb(-places), ROUND_HALF_UP):f}"
    whole, _, part = rounded.partition(".")
    point = next((at for at, token in enumerate(tokens) if token.kind == "point"), len(tokens))
    before = _filled_whole(whole, tokens[:point])
    after = _filled_part(part, tokens[point + 1 :])
    if point == len(tokens):
        return before
    return f"{before}.{after}" if after[:1].isdigit() else before + after


def _filled_whole(whole: str, tokens: tuple[_Token, ...]) -> str:
    """Digits go in from the right; the first placeholder takes all that are left."""
    digits = "" if whole == "0" else whole
    left = sum(token.kind == "digit" for token in tokens)
    drawn: list[str] = []
    for token in reversed(tokens):
        if token.kind != "digit":
            drawn.append(token.text)
            continue
        left -= 1
        taken, digits = (digits[-1:], digits[:-1]) if left else (digits, "")
        drawn.append(taken or ("0" if token.text == "0" else ""))
    return "".join(reversed(drawn))


def _filled_part(part: str, tokens: tuple[_Token, ...]) -> str:
    digits = iter(part)
    asked = [(token, next(digits) if token.kind == "digit" else "") for token in tokens]
    while_zero = True
    drawn: list[str] = []
    for token, digit in reversed(asked):
        if token.kind != "digit":
            drawn.append(token.text)
            continue
        while_zero = while_zero and digit == "0" and token.text != "0"
        drawn.append("" if while_zero else digit)
    return "".join(reversed(drawn))


def _fraction(value: Decimal, tokens: tuple[_Token, ...], slash: int) -> str:
    start, end = slash, slash + 1
    while start and tokens[start - 1].kind == "digit":
        start -= 1
    while end < len(tokens) and _is_digit(tokens[end]):
        end += 1
    mixed = any(token.kind == "digit" for token in tokens[:start])
    whole = int(value) if mixed else 0
    top, bottom = _nearest(value - whole, "".join(t.text for t in tokens[slash + 1 : end]))
    if top == bottom and mixed:
        whole, top = whole + 1, 0
    front = _filled_whole(str(whole), tokens[:start]) if whole or not mixed else ""
    if mixed and not whole:
        front = "".join(token.text for token in tokens[:start] if token.kind == "literal")
    tail = "".join(token.text for token in tokens[end:] if token.kind != "digit")
    if mixed and not top:
        return f"{front.rstrip() or '0'}{tail}"
    return f"{front}{top}/{bottom}{tail}"


def _nearest(value: Decimal, bottom_code: str) -> tuple[int, int]:
    if any(character in "123456789" for character in bottom_code):
        bottom = int("".join(c for c in bottom_code if c in "0123456789"))
        return int((value * bottom).quantize(Decimal(1), ROUND_HALF_UP)), bottom
    found = Fraction(value).limit_denominator(10 ** min(5, max(1, len(bottom_code))) - 1)
    return found.numerator, found.denominator
