"""Whether two points were stored in the same way: by the rover itself, one after another, or by a hand for its own
sake."""

from __future__ import annotations

import re
from typing import List, Optional, Tuple

import numpy as np

from ..points.digits import MOST, Digits
from ..points.pointset import PointSet

_DIGITS = re.compile(r"\d+")
#: Numbers of points stored one after another differ by no more, beside what lies between them in the file.
_NEXT = 10
_LF, _ZERO = 10, 48
#: So many names are looked at together.
_AT_ONCE = 1 << 16
#: Longer numbers do not fit 64 bits.
_MOST_DIGITS = 19


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
    """Indices (n,) of points by the numbers in their names (n,); None where these are no numbering of one form, or are
    in that order already.
    """
    numbers = _last_numbers(name.tolist())
    if numbers is None or bool((numbers[1:] > numbers[:-1]).all()):
        return None
    order = np.argsort(numbers, kind="stable")
    sorted_ones = numbers[order]
    return order if bool((sorted_ones[1:] > sorted_ones[:-1]).all()) else None


def _last_numbers(names: List[str]) -> Optional[np.ndarray]:
    """The last number (n,) of each name, where all are alike but for their numbers; None where they are not."""
    found: List[np.ndarray] = []
    form = b""
    for at in range(0, len(names), _AT_ONCE):
        one, numbers = _form_and_numbers(names[at : at + _AT_ONCE])
        form = form or one
        if numbers is None or one != form:
            return None
        found.append(numbers)
    return np.concatenate(found) if found else None


def _form_and_numbers(names: List[str]) -> Tuple[bytes, Optional[np.ndarray]]:
    """The form that all names have, a zero byte in place of each number, and the last number (n,) uint64 of each; None
    where their forms differ or have no number, or one too long.

    All characters are looked at together: what is left of them without digits is one form again and again.
    """
    text = np.frombuffer(("\n".join(names) + "\n").encode("utf-8", "surrogatepass"), np.uint8)
    digit = (text - np.uint8(_ZERO)) < 10
    begins = digit.copy()
    begins[1:] &= ~digit[:-1]
    form = np.where(begins, np.uint8(0), text)[~digit | begins]
    first = form[: int(np.argmax(form == _LF)) + 1]
    count = int((first == 0).sum())
    if not count or len(form) != len(first) * len(names) or (form.reshape(len(names), -1) != first).any():
        return b"", None
    begin = np.flatnonzero(begins)[count - 1 :: count]
    end = np.flatnonzero(digit[:-1] & ~digit[1:])[count - 1 :: count] + 1
    size, digits = end - begin, Digits(text)
    if int(size.max()) > _MOST_DIGITS:
        return b"", None
    numbers = digits.read(end, np.minimum(size, MOST))[0]
    if int(size.max()) > MOST:
        numbers += digits.read(np.maximum(end - MOST, 0), np.maximum(size - MOST, 0))[0] * np.uint64(10**MOST)
    return first.tobytes(), numbers


def _number(name: str) -> int:
    """The last number in a name; 0 for none."""
    found = _DIGITS.findall(name)
    return int(found[-1]) if found else 0
