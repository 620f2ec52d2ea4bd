"""Find which of two sets of plan figures can touch, through a square grid of cells.

Figures are points, segments or triangles, given as corner coordinates of shape (k, c): c = 1, 2 or 3.
"""

from __future__ import annotations

from typing import Iterator, Optional, Tuple

import numpy as np

_PAIRS = 4_000_000  # candidate pairs handled at once: bounds the memory
_ROW = 1 << 31  # cells of a row are numbered within this


def candidate_pairs(
    ax: np.ndarray, ay: np.ndarray, bx: np.ndarray, by: np.ndarray, cell: float
) -> Iterator[Tuple[np.ndarray, np.ndarray]]:
    """Pairs (i, j) of figures A[i] and B[j] that share a cell of side ``cell``; some pairs come more than once.

    No pair that touches is missed. ``ax, ay`` (k, c) and ``bx, by`` (l, d): corner coordinates, any float or
    int type, not negative. Yields arrays in parts so that memory stays bounded.
    """
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


def box_pairs(
    a_low: np.ndarray, a_high: np.ndarray, b_low: np.ndarray, b_high: np.ndarray, cell: float, pairs: int = _PAIRS
) -> Iterator[Tuple[np.ndarray, np.ndarray]]:
    """Pairs (i, j) of boxes A[i] and B[j] that overlap or touch, each once.

    ``*_low``, ``*_high``: south-west and north-east corners, (k, 2), not negative. For boxes of about the size of
    ``cell``. Yields arrays in parts of about ``pairs`` candidates, so that memory stays bounded.
    """
    item_a, key_a = _box_cells(a_low, a_high, cell)
    order = np.argsort(key_a, kind="stable")
    item_a, key_a = item_a[order], key_a[order]
    item_b, key_b = _box_cells(b_low, b_high, cell)
    order = np.argsort(key_b, kind="stable")  # near boxes together: memory is read in order
    item_b, key_b = item_b[order], key_b[order]
    low, high = np.searchsorted(key_a, key_b, "left"), np.searchsorted(key_a, key_b, "right")
    count = high - low
    # column by column in memory
    a_lows, a_highs, b_lows, b_highs = (np.ascontiguousarray(each.T) for each in (a_low, a_high, b_low, b_high))
    total = np.concatenate([[0], np.cumsum(count)])
    start = 0
    while start < len(count):
        stop = max(start + 1, int(np.searchsorted(total, total[start] + pairs, "right")) - 1)
        n = count[start:stop]
        i, j = item_a[runs(low[start:stop], n)], np.repeat(item_b[start:stop], n)
        corner = [np.maximum(a_side[i], b_side[j]) for a_side, b_side in zip(a_lows, b_lows)]
        far = [np.minimum(a_side[i], b_side[j]) for a_side, b_side in zip(a_highs, b_highs)]
        meet = np.flatnonzero((corner[0] <= far[0]) & (corner[1] <= far[1]))
        # A pair shares many cells; it counts in the one that holds the south-west corner of the common box.
        at_home = _key(np.column_stack([side[meet] for side in corner]), cell) == np.repeat(key_b[start:stop], n)[meet]
        found = meet[at_home]
        yield i[found], j[found]
        start = stop


def _key(place: np.ndarray, cell: float) -> np.ndarray:
    column, row = np.floor(place.T / cell).astype(np.int64)
    key: np.ndarray = row * _ROW + column
    return key


def _box_cells(low: np.ndarray, high: np.ndarray, cell: float) -> Tuple[np.ndarray, np.ndarray]:
    """Every cell each box meets: box number and cell key."""
    first, last = np.floor(low / cell).astype(np.int64), np.floor(high / cell).astype(np.int64)
    rows = last[:, 1] - first[:, 1] + 1
    item = np.repeat(np.arange(len(low)), rows)
    row = runs(first[:, 1], rows)
    columns = (last[:, 0] - first[:, 0] + 1)[item]
    return np.repeat(item, columns), np.repeat(row * _ROW, columns) + runs(first[item, 0], columns)
