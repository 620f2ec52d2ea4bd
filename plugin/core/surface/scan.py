"""Which cell centres of a square grid lie in which triangle: scanline conversion of many triangles at once.

Coordinates are counted in cells: cell (column c, row r) has its centre at (c, r), rows upwards. A
centre belongs to a triangle by the half-open rule of scanline conversion: an edge covers the
rows low <= r < high, and a row's centres run from the left edge (included) to the right edge
(excluded). The place where an edge meets a row is computed from the edge alone, lower end first, so
two triangles get the same number for their common edge: between them no centre is missed.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Iterator, List, Tuple

import numpy as np

_TRIANGLES = 1 << 16  # triangles handled at once: their arrays stay in the processor's cache
_PIECES = 1 << 18  # rows of triangles handled at once

# Which corners are at or below the row, as bits: the edge that goes up through the row (on the right of a
# counter-clockwise triangle) and the one that comes down (on its left), as numbers of their lower and upper corner.
_RIGHT_LOW = np.array([0, 0, 1, 1, 2, 0, 2, 0], np.int32)
_RIGHT_HIGH = np.array([0, 1, 2, 2, 0, 1, 0, 0], np.int32)
_LEFT_LOW = np.array([0, 0, 1, 0, 2, 2, 1, 0], np.int32)
_LEFT_HIGH = np.array([0, 2, 0, 2, 1, 1, 0, 0], np.int32)


@dataclass(frozen=True)
class Spans:
    """k runs of cell centres, each in one triangle and one row.

    ``triangle``, ``row``, ``first``: (k,) the triangle's number, the row (upwards) and the first column;
    ``count``: (k,) number of centres, at least 1. ``left``, ``right``: (k,) float64 columns where the
    triangle's edges meet the row; ``left_height``, ``right_height``: (k,) float64 heights there.
    """

    triangle: np.ndarray
    row: np.ndarray
    first: np.ndarray
    count: np.ndarray
    left: np.ndarray
    right: np.ndarray
    left_height: np.ndarray
    right_height: np.ndarray

    def parts(self, cells: int) -> Iterator[Spans]:
        """The same runs in parts of about ``cells`` centres (at least one run each)."""
        ends = np.cumsum(self.count)
        if len(ends) == 0 or ends[-1] <= cells:
            yield self
            return
        cuts = np.searchsorted(ends, np.arange(cells, int(ends[-1]) + cells, cells), "left") + 1
        start = 0
        for cut in np.unique(np.minimum(cuts, len(ends))):
            columns = {name: value[start:cut] for name, value in vars(self).items()}
            yield Spans(**columns)
            start = int(cut)

    def cells(self) -> Tuple[np.ndarray, np.ndarray]:
        """For each centre the number of its run and its column."""
        if len(self.count) == 0 or self.count.max() == 1:
            return np.arange(len(self.count)), self.first
        of = np.repeat(np.arange(len(self.count)), self.count)
        begin = np.cumsum(self.count) - self.count
        return of, np.arange(len(of)) - begin[of] + self.first[of]


def scan_triangles(
    place: np.ndarray, height: np.ndarray, triangles: np.ndarray, columns: int, rows: int
) -> Iterator[Tuple[int, Spans]]:
    """The runs of centres of a grid of ``columns`` x ``rows`` cells under counter-clockwise ``triangles`` (m, 3).

    ``place``: (n,) complex128 of the corners, column + 1j row in cells as above; ``height``: (n,) float64.
    Yields the number of triangles done and their runs, part by part.
    """
    next_row = np.ceil(place.imag).clip(0, rows).astype(np.int32)  # the lowest row at or above each corner
    next_column = np.ceil(place.real).clip(0, columns).astype(np.int32)
    for start in range(0, len(triangles), _TRIANGLES):
        part = triangles[start : start + _TRIANGLES]
        corner_row, corner_column = np.take(next_row, part), np.take(next_column, part)
        low, count = _range(corner_row)
        near = np.flatnonzero((count > 0) & (_range(corner_column)[1] > 0))
        for which, row in _rows(near, low, count):
            yield start + len(part), _spans(place, height, part, corner_row, which, row, start, columns)


def _range(corner: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Least value of each row of ``corner`` (k, 3), and how far its greatest value is above."""
    a, b, c = corner.T
    low = np.minimum(np.minimum(a, b), c)
    return low, np.maximum(np.maximum(a, b), c) - low


def _rows(which: np.ndarray, low: np.ndarray, count: np.ndarray) -> Iterator[Tuple[np.ndarray, np.ndarray]]:
    """Pairs (triangle of ``which``, row) with low <= row < low + count, in parts of bounded size."""
    for some in _bounded(which, count):
        times = count[some]
        first = np.repeat(low[some] - (np.cumsum(times, dtype=np.int32) - times), times)
        yield np.repeat(some, times), first + np.arange(len(first), dtype=np.int32)


def _bounded(which: np.ndarray, count: np.ndarray) -> List[np.ndarray]:
    """``which`` in parts whose ``count`` sums to about ``_PIECES``."""
    ends = np.cumsum(count[which], dtype=np.int64)
    if len(ends) == 0:
        return []
    cuts = np.searchsorted(ends, np.arange(_PIECES, int(ends[-1]), _PIECES), "left") + 1
    return [part for part in np.split(which, np.unique(cuts)) if len(part)]


def _spans(
    place: np.ndarray, height: np.ndarray, triangles: np.ndarray, corner_row: np.ndarray,
    which: np.ndarray, row: np.ndarray, start: int, columns: int,
) -> Spans:  # fmt: skip
    """The runs of the pairs (triangle ``which``, ``row``) that have a centre; ``start`` is added to their numbers."""
    corner, at_or_above = triangles.ravel(), corner_row.ravel()
    base = 3 * which
    case = np.zeros(len(which), np.uint8)
    for i in range(3):
        case |= (np.take(at_or_above, base + i) <= row).view(np.uint8) << i
    left_low, left_high = (np.take(corner, base + np.take(end, case)) for end in (_LEFT_LOW, _LEFT_HIGH))
    right_low, right_high = (np.take(corner, base + np.take(end, case)) for end in (_RIGHT_LOW, _RIGHT_HIGH))
    left, left_share = _crossing(np.take(place, left_low), np.take(place, left_high), row)
    right, right_share = _crossing(np.take(place, right_low), np.take(place, right_high), row)
    first, stop = _column(left, columns), _column(right, columns)
    some = np.flatnonzero(stop > first)
    return Spans(
        which[some] + start,
        row[some],
        first[some],
        (stop - first)[some],
        left[some],
        right[some],
        _between(height, left_low[some], left_high[some], left_share[some]),
        _between(height, right_low[some], right_high[some], right_share[some]),
    )


def _crossing(low: np.ndarray, high: np.ndarray, row: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Column where edges from ``low`` to ``high`` (complex, (k,)) meet the row, and the share 0..1 of the way up."""
    share = (row - low.imag) / (high.imag - low.imag)
    x0, x1 = low.real, high.real
    # Rounding must not carry the place beyond the edge's ends: the triangles were chosen by those.
    return np.minimum(np.maximum(x0 + share * (x1 - x0), np.minimum(x0, x1)), np.maximum(x0, x1)), share


def _column(place: np.ndarray, columns: int) -> np.ndarray:
    """The first column whose centre is at or east of each place, within 0..columns."""
    column: np.ndarray = np.minimum(np.maximum(np.ceil(place), 0), columns).astype(np.int32)
    return column


def _between(height: np.ndarray, low: np.ndarray, high: np.ndarray, share: np.ndarray) -> np.ndarray:
    z0: np.ndarray = np.take(height, low)
    return z0 + share * (np.take(height, high) - z0)
