"""Find which of two sets of plan figures can touch, through a square grid of cells.

Figures are points, segments or triangles, given as corner coordinates of shape (k, c): c = 1, 2 or 3.
"""

from __future__ import annotations

from typing import Iterator, Optional, Tuple

import numpy as np

_PAIRS = 4_000_000  # candidate pairs handled at once: bounds the memory
_ROW = 1 << 31  # cells of a row are numbered within this
_WIDE = 16.0  # cells that a figure may be wide; for wider ones cells are so many times as large, and so on


def candidate_pairs(
    ax: np.ndarray, ay: np.ndarray, bx: np.ndarray, by: np.ndarray, cell: float
) -> Iterator[Tuple[np.ndarray, np.ndarray]]:
    """Pairs (i, j) of figures A[i] and B[j] that share a cell of side ``cell``; some pairs come more than once.

    No pair that touches is missed. ``ax, ay`` (k, c) and ``bx, by`` (l, d): corner coordinates, any float or
    int type, not negative. Figures much larger than ``cell`` are looked for in larger cells. Yields arrays in parts so
    that memory stays bounded.
    """
    level_a, level_b = _levels(ax, ay, cell), _levels(bx, by, cell)
    for level in np.unique(np.concatenate([level_a, level_b])).tolist():
        size = cell * _WIDE**level
        for which_a, which_b in ((level_a == level, level_b <= level), (level_a < level, level_b == level)):
            a, b = np.flatnonzero(which_a), np.flatnonzero(which_b)
            if len(a) == len(ax) and len(b) == len(bx):
                yield from _pairs_in_cells(ax, ay, bx, by, size)
            elif len(a) and len(b):
                for i, j in _pairs_in_cells(ax[a], ay[a], bx[b], by[b], size):
                    yield a[i], b[j]


def _levels(x: np.ndarray, y: np.ndarray, cell: float) -> np.ndarray:
    """How many times (k,) cells are to be made larger for each figure."""
    if len(x) == 0:
        return np.empty(0, np.int64)
    wide = np.maximum(x.max(axis=1) - x.min(axis=1), y.max(axis=1) - y.min(axis=1)) / cell
    level: np.ndarray = np.ceil(np.log(np.maximum(wide / _WIDE, 1.0)) / np.log(_WIDE)).astype(np.int64)
    return level


def _pairs_in_cells(
    ax: np.ndarray, ay: np.ndarray, bx: np.ndarray, by: np.ndarray, cell: float
) -> Iterator[Tuple[np.ndarray, np.ndarray]]:
    """As :func:`candidate_pairs`, all in cells of one size."""
    item, key = _cells(ax, ay, cell)
    order = np.argsort(key, kind="stable")
    item, key = item[order], key[order]
    if len(key) == 0:
        return
    touched, row, first, last = _rows(bx, by, cell, np.unique(key // _ROW))
    low = np.searchsorted(key, row * _ROW + first, "left")
    high = np.searchsorted(key, row * _ROW + last, "right")
    count = high - low
    some = np.flatnonzero(count)
    touched, low, count = touched[some], low[some], count[some]
    stops = np.searchsorted(np.cumsum(count), np.arange(_PAIRS, count.sum() + _PAIRS, _PAIRS), "left") + 1
    start = 0
    for stop in stops:
        part = slice(start, min(int(stop), len(count)))
        yield item[runs(low[part], count[part])], np.repeat(touched[part], count[part])
        start = part.stop


def runs(first: np.ndarray, count: np.ndarray) -> np.ndarray:
    """Concatenated ranges first[i], first[i] + 1, ... of length count[i], (sum of count,) int64."""
    ends = np.cumsum(count)
    total = int(ends[-1]) if len(ends) else 0
    return np.arange(total) + np.repeat(first - (ends - count), count)


def _cells(x: np.ndarray, y: np.ndarray, cell: float) -> Tuple[np.ndarray, np.ndarray]:
    """Every cell that each figure may meet: figure number and cell key."""
    item, row, first, last = _rows(x, y, cell)
    count = last - first + 1
    return np.repeat(item, count), np.repeat(row * _ROW, count) + runs(first, count)


def _rows(
    x: np.ndarray, y: np.ndarray, cell: float, occupied: Optional[np.ndarray] = None
) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """For each figure and each row of cells it meets: figure, row, first and last column (a little generous).

    ``occupied``: only these rows (r,), rising, so that the work does not grow with what few large figures span.
    """
    x, y = np.asarray(x, float) / cell, np.asarray(y, float) / cell
    low, high = np.floor(y.min(axis=1) - 1e-6), np.floor(y.max(axis=1) + 1e-6)
    if occupied is None:
        count = (high - low + 1).astype(np.int64)
        row = runs(low.astype(np.int64), count)
    else:
        begin = np.searchsorted(occupied, low, "left")
        count = np.searchsorted(occupied, high, "right") - begin
        row = occupied[runs(begin, count)]
    item = np.repeat(np.arange(len(x)), count)
    west, east = x.min(axis=1)[item], x.max(axis=1)[item]
    many = np.flatnonzero(count[item] > 1)
    if len(many) and x.shape[1] > 1:
        west[many], east[many] = _extent_in_strip(x[item[many]], y[item[many]], row[many])
    return item, row, np.floor(west - 1e-6).astype(np.int64), np.floor(east + 1e-6).astype(np.int64)


def _extent_in_strip(x: np.ndarray, y: np.ndarray, row: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Least and greatest x of each figure (k, c) within its strip row..row + 1 (in cells)."""
    west, east = np.full(len(x), np.inf), np.full(len(x), -np.inf)
    bottom, top = row - 1e-6, row + 1 + 1e-6
    for i in range(x.shape[1]):
        j = (i + 1) % x.shape[1]
        rise = y[:, j] - y[:, i]
        with np.errstate(divide="ignore", invalid="ignore"):
            enter, leave = (bottom - y[:, i]) / rise, (top - y[:, i]) / rise
        level = rise == 0
        enter, leave = np.where(level, 0.0, enter), np.where(level, 1.0, leave)
        begin, end = np.minimum(enter, leave).clip(0, 1), np.maximum(enter, leave).clip(0, 1)
        meets = (np.minimum(y[:, i], y[:, j]) <= top) & (np.maximum(y[:, i], y[:, j]) >= bottom)
        for t in (begin, end):
            at = x[:, i] + t * (x[:, j] - x[:, i])
            west = np.where(meets, np.minimum(west, at), west)
            east = np.where(meets, np.maximum(east, at), east)
    return west, east
