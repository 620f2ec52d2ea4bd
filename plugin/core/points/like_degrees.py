"""Whether columns of numbers may be degrees, or number the points."""

from __future__ import annotations

import numpy as np

from .angles import unpacked
from .features import Column
from .said_units import RUNS

_DEGREE_DECIMALS = 5
#: Numbers of points seldom go up by more.
_LEAP = 20.0


def numbered(column: Column) -> bool:
    """Whether a column numbers points or lines: it only grows, and not by leaps as a run of digits of an angle does."""
    return column.counts and float(np.median(np.diff(column.good))) <= _LEAP


def like_degrees(first: Column, second: Column) -> bool:
    """Whether numbers may be degrees: small, with many decimals, close together."""
    for column, most in ((first, 360.0), (second, 180.0)):
        good = column.good
        if not len(good) or column.beyond(most) or column.span > 2.0:
            return False
    return min(first.decimals, second.decimals) >= _DEGREE_DECIMALS and not (
        mostly_beyond(first, 90.0) and mostly_beyond(second, 90.0)
    )


def like_parts_of_degrees(first: Column, second: Column) -> bool:
    """Whether whole numbers may be degrees times ten million or more, or degrees, minutes and seconds in a run of
    digits, and close together.
    """
    columns = (first, second)
    if not all(column.whole and not numbered(column) and len(column.good) > 2 for column in columns):
        return False
    if any(column.span > max(2e7, 0.02 * abs(column.middle)) for column in columns):
        return False
    if all(1e6 < abs(column.middle) <= 1.8e9 for column in columns):
        return True
    runs = [form for form in RUNS if all(np.isfinite(unpacked(column.good, form)).mean() > 0.95 for column in columns)]
    return bool(runs) and all(1e6 < abs(column.middle) <= 1.8e12 for column in columns)


def mostly_beyond(column: Column, limit: float) -> bool:
    good = column.good
    return bool(len(good)) and bool((np.abs(good) > limit).mean() > 0.5)
