"""What a pure function made of the same objects before: it is asked again many times in a reading.

Tables, fields and sheets never change, and comparing them by value would cost more than the work.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from typing import Final, ParamSpec, TypeVar

Given = ParamSpec("Given")
Made = TypeVar("Made")

_MOST: Final = 2048
"""Results that are kept: more than the reading of an ordinary file asks for."""
_forgetting: Final[list[Callable[[], None]]] = []


def remembered(function: Callable[Given, Made]) -> Callable[Given, Made]:
    """The function, which answers from memory when it is given the very same objects again.

    For arguments by place that nobody changes, and results that nobody changes.
    """
    known: dict[tuple[int, ...], tuple[object, Made]] = {}
    _forgetting.append(known.clear)

    @wraps(function)
    def answer(*args: Given.args, **kwargs: Given.kwargs) -> Made:
        if kwargs:
            return function(*args, **kwargs)
        key = tuple(map(id, args))
        found = known.get(key)
        if found is not None:
            return found[1]
        made = function(*args, **kwargs)
        if len(known) >= _MOST:
            known.clear()
        known[key] = (args, made)  # the arguments are kept, so that no others take their place
        return made

    return answer


def forget() -> None:
    """Let go of all that is remembered: the sheets of a file that was read are not kept."""
    for forgotten in _forgetting:
        forgotten()
