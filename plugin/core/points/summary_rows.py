"""Rows at the end of a table that sum its points up, by their values: means, sums, the least and the largest."""

from __future__ import annotations

from typing import List, Sequence

import numpy as np

#: So many rows at the end are looked at; so many points must stand above them.
LAST = 8
_FEWEST = 10
_MOST_DIGITS = 9
_LOOKED_AT = 200


def summary_rows(coordinates: Sequence[np.ndarray]) -> List[int]:
    """Rows among the last whose coordinates (n,) all are, to the digits written, mean, sum, least or largest of those
    above the first such row.

    The least and the largest count only where one other row alone holds them, so that the corner of a grid stays.
    Sums and means count only where the numbers have decimals.
    """
    count = len(coordinates[0])
    for start in range(max(_FEWEST, count - LAST), count):
        if all(_sums_up(values, start, start) for values in coordinates):
            rest = range(start + 1, count)
            return [start, *(i for i in rest if all(_sums_up(values, start, i) for values in coordinates))]
    return []


def _sums_up(values: np.ndarray, start: int, row: int) -> bool:
    above, value = values[:start], float(values[row])
    low, high = float(above.min()), float(above.max())
    if not np.isfinite(value) or value < min(low, low * start) or value > max(high, high * start):
        return False
    if value in (low, high):
        return int(np.count_nonzero(above == value)) == 1
    digits = max(_digits(each) for each in above[:_LOOKED_AT].tolist())
    written = min(digits, _digits(value))
    if digits < 2:
        return False
    mean = float(above.mean())
    return abs(value - mean) <= 1.01 * 10.0**-written or abs(value - mean * start) <= 1.01 * start * 10.0**-digits


def _digits(value: float) -> int:
    """Decimals of a number."""
    return next((n for n in range(_MOST_DIGITS) if abs(round(value, n) - value) < 1e-10), _MOST_DIGITS)
