"""Whether two points were stored in the same way: by the rover itself, one after another, or by a hand for its own
sake."""

from __future__ import annotations

import re
from typing import Optional

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


def number_order(name: np.ndarray) -> Optional[np.ndarray]:
    """Indices (n,) of points by the numbers in their names (n,); None where these are no numbering of one form."""
    joined = "\n".join(map(str, name.tolist()))
    form = _DIGITS.sub("#", joined)
    first = form.partition("\n")[0]
    if "#" not in first or form != "\n".join([first] * len(name)):
        return None
    numbers = np.array(_DIGITS.findall(joined)[first.count("#") - 1 :: first.count("#")], float)
    return np.argsort(numbers, kind="stable") if len(np.unique(numbers)) == len(numbers) else None


def _number(name: str) -> int:
    """The last number in a name; 0 for none."""
    found = _DIGITS.findall(name)
    return int(found[-1]) if found else 0
