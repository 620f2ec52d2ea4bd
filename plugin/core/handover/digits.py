"""Columns of numbers as text of equal width, and back: whole columns at a time.

Formatting or reading numbers one by one would take longer than the triangulation of a million points.
"""

from __future__ import annotations

from typing import List, Optional, Tuple

import numpy as np

_BLANK, _MINUS, _POINT, _ZERO = (ord(letter) for letter in " -.0")
#: So many digits are read exactly: the whole number and the power of ten have no rounding, so the quotient
#: is the double next to the decimal number (IEEE 754), as ``float`` gives it.
_MOST_DIGITS = 15


def to_digits(values: np.ndarray, decimals: int) -> np.ndarray:
    """Decimal text (n, width) uint8 of whole ``values / 10**decimals``, right-aligned after at least a blank."""
    rest = np.abs(values).astype(np.uint64)
    width = max(len(str(int(rest.max(initial=0)))), decimals + 1)
    digits = np.empty((len(values), width), np.uint8)
    ten = np.uint64(10)
    for place in range(width - 1, -1, -1):
        quotient = rest // ten
        digits[:, place] = rest - quotient * ten
        rest = quotient
    whole = digits[:, : width - decimals]
    leading = np.cumprod(whole[:, :-1] == 0, axis=1, dtype=np.uint8).astype(bool)
    digits += _ZERO
    whole[:, :-1][leading] = _BLANK
    point = [np.full((len(values), 1), _POINT, np.uint8)] if decimals else []
    sign = np.full((len(values), 2), _BLANK, np.uint8)
    text = np.hstack([sign, whole, *point, digits[:, width - decimals :]])
    negative = np.flatnonzero(values < 0)
    text[negative, 1 + leading[negative].sum(axis=1)] = _MINUS
    return text


def from_digits(text: np.ndarray) -> Optional[np.ndarray]:
    """The numbers (n, k) in ``text`` (n, width) uint8, None where it is not k columns such as ``to_digits`` writes.

    Columns are parted by blanks in the same places of all rows, right-aligned, and have their decimal point, if
    any, in one place. What is read is the double that ``float`` reads.
    """
    across = np.ascontiguousarray(text.T)
    solid = np.concatenate([[False], (across != _BLANK).any(axis=1), [False]])
    begin, end = np.flatnonzero(solid[1:] & ~solid[:-1]), np.flatnonzero(~solid[1:] & solid[:-1])
    columns: List[np.ndarray] = []
    for first, last in zip(begin.tolist(), end.tolist()):
        column = _column(across[first:last])
        if column is None:
            return None
        columns.append(column)
    return np.column_stack(columns) if columns else None


def _column(letters: np.ndarray) -> Optional[np.ndarray]:
    """The numbers (n,) of one column; ``letters``: (width, n) uint8."""
    digits, decimals = _without_point(letters)
    if not 1 <= len(digits) <= _MOST_DIGITS or decimals == len(digits):
        return None
    value = np.zeros(letters.shape[1], np.int64)
    begun = np.zeros(letters.shape[1], bool)  # a sign or digit has been met
    sign = np.ones(letters.shape[1])
    for place, row in enumerate(digits):
        digit = row - np.uint8(_ZERO)  # wraps round for what is below 0
        known = digit <= 9
        value *= 10
        if known.all():
            value += digit
            begun[:] = True
            continue
        minus = row == _MINUS
        if place >= len(digits) - decimals - 1 or np.any(~known & (begun | ~(minus | (row == _BLANK)))):
            return None
        value += np.where(known, digit, np.uint8(0))
        sign[minus] = -1.0
        begun |= known | minus
    number: np.ndarray = sign * (value / 10.0**decimals)
    return number


def _without_point(letters: np.ndarray) -> Tuple[np.ndarray, int]:
    """The rows of ``letters`` without that of the decimal points, and how many decimals stand behind it."""
    points = np.flatnonzero((letters == _POINT).any(axis=1))
    if len(points) != 1 or not (letters[points[0]] == _POINT).all():
        return letters, 0  # a stray point is found among the digits
    return np.delete(letters, points[0], axis=0), len(letters) - 1 - int(points[0])
