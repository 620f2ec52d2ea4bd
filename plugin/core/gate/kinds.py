"""Whether two points were stored in the same way: by the rover itself, one after another, or by a hand for its own
sake."""

from __future__ import annotations

import re

import numpy as np

from ..points.pointset import PointSet

_DIGITS = re.compile(r"\d+")
#: Numbers of points stored one after another differ by no more, beside what lies between them in the file.
_NEXT = 10


def same_kind(points: PointSet, one: int, other: int) -> bool:
    """Whether points ``one`` and ``other`` share their code and the form of their names, numbers that follow on."""
    if str(points.code[one]) != str(points.code[other]):
        return False
    first, second = str(points.name[one]), str(points.name[other])
    if _DIGITS.sub("#", first) != _DIGITS.sub("#", second):
        return False
    a, b = _number(first), _number(second)
    return abs(a - b) <= _NEXT + abs(one - other)


def usual_kind(points: PointSet, one: int, others: np.ndarray) -> bool:
    """Whether point ``one`` has a code and a form of name that a tenth of ``others`` (k,) have, and its number is one
    of those they run through.
    """
    some = others[:: max(1, len(others) // 1000)]
    name = str(points.name[one])
    form = _DIGITS.sub("#", name)
    alike = [
        i for i in some.tolist() if points.code[i] == points.code[one] and _DIGITS.sub("#", str(points.name[i])) == form
    ]
    if len(alike) < 0.1 * len(some):
        return False
    numbers = [_number(str(points.name[i])) for i in alike]
    return min(numbers) - _NEXT <= _number(name) <= max(numbers) + _NEXT


def _number(name: str) -> int:
    """The last number in a name; 0 for none."""
    found = _DIGITS.findall(name)
    return int(found[-1]) if found else 0
