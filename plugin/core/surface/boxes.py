"""Find which of two sets of upright boxes meet, in bounded memory whatever their sizes.

Boxes go by their size to levels of a hierarchy of square grids, each eight times as coarse as the one before, so that
a box meets nine cells of its level at most. Two boxes are looked for on the level of the larger one. (The hierarchical
grid of B. Mirtich, "Efficient algorithms for two-phase collision detection", 1997; cited from memory.)
"""

from __future__ import annotations

from typing import Iterator, Tuple

import numpy as np

from .cells import runs

_PAIRS = 1_000_000  # candidate pairs handled at once: bounds the memory
_ROW = 1 << 31  # cells of a row are numbered within this
_FINEST = 1 << 29  # cells along a side of the whole, at most
_STEP = 8.0  # from level to level


def box_pairs(
    a_low: np.ndarray, a_high: np.ndarray, b_low: np.ndarray, b_high: np.ndarray, pairs: int = _PAIRS
) -> Iterator[Tuple[np.ndarray, np.ndarray]]:
    """Pairs (i, j) of boxes A[i] and B[j] that overlap or touch, each once.

    ``*_low``, ``*_high``: south-west and north-east corners, (k, 2); points are boxes of no size. Yields arrays in
    parts of about ``pairs`` candidates; memory is a small multiple of the boxes and of ``pairs``.
    """
    if len(a_low) == 0 or len(b_low) == 0:
        return
    low = np.minimum(a_low.min(axis=0), b_low.min(axis=0))
    extent = float((np.maximum(a_high.max(axis=0), b_high.max(axis=0)) - low).max())
    sizes = [(high - least).max(axis=1) for least, high in ((a_low, a_high), (b_low, b_high))]
    middle = min([float(np.median(size)) for size in sizes if np.any(size > 0)] or [1.0])
    cell: float = max(middle, extent / _FINEST, 1e-300)
    deepest = -int(np.floor(np.log(cell * _FINEST / max(extent, cell)) / np.log(_STEP)))
    with np.errstate(divide="ignore"):
        # up to twice the cell in size
        level_a, level_b = (np.ceil(np.log(size / (2 * cell)) / np.log(_STEP)).clip(deepest) for size in sizes)
    a, b = ((least - low, high - low) for least, high in ((a_low, a_high), (b_low, b_high)))
    for level in np.unique(np.concatenate([level_a, level_b])).tolist():
        own_a, own_b = np.flatnonzero(level_a == level), np.flatnonzero(level_b == level)
        size = cell * _STEP**level
        yield from _pairs_at(a, own_a, b, np.flatnonzero(level_b <= level), size, pairs)
        yield from _pairs_at(a, np.flatnonzero(level_a < level), b, own_b, size, pairs)


_Boxes = Tuple[np.ndarray, np.ndarray]


def _pairs_at(
    a: _Boxes, some_a: np.ndarray, b: _Boxes, some_b: np.ndarray, cell: float, pairs: int
) -> Iterator[Tuple[np.ndarray, np.ndarray]]:
    """Pairs of boxes of which none is much larger than ``cell``."""
    if len(some_a) == 0 or len(some_b) == 0:
        return
    (a_low, a_high), (b_low, b_high) = a, b
    item_a, key_a = _cells(a_low, a_high, some_a, cell)
    item_b, key_b = _cells(b_low, b_high, some_b, cell)
    if len(key_a) > 4 * len(key_b):  # a few large boxes among many small ones
        item_a, key_a = _among(item_a, key_a, key_b)
    elif len(key_b) > 4 * len(key_a):
        item_b, key_b = _among(item_b, key_b, key_a)
    order = np.argsort(key_a, kind="stable")
    item_a, key_a = item_a[order], key_a[order]
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
        # A pair shares several cells; it counts in the one that holds the south-west corner of the common box.
        at_home = _key(np.column_stack([side[meet] for side in corner]), cell) == np.repeat(key_b[start:stop], n)[meet]
        found = meet[at_home]
        if len(found):
            yield i[found], j[found]
        start = stop


def _key(place: np.ndarray, cell: float) -> np.ndarray:
    column, row = np.floor(place.T / cell).astype(np.int64)
    key: np.ndarray = row * _ROW + column
    return key


def _cells(low: np.ndarray, high: np.ndarray, some: np.ndarray, cell: float) -> Tuple[np.ndarray, np.ndarray]:
    """Every cell that each of ``some`` boxes meets: box number and cell key."""
    first, last = (np.floor(corner[some] / cell).astype(np.int64) for corner in (low, high))
    rows = last[:, 1] - first[:, 1] + 1
    item = np.repeat(np.arange(len(some)), rows)
    row = runs(first[:, 1], rows)
    columns = (last[:, 0] - first[:, 0] + 1)[item]
    return np.repeat(some[item], columns), np.repeat(row * _ROW, columns) + runs(first[item, 0], columns)


def _among(item: np.ndarray, key: np.ndarray, others: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """The cells of many boxes that are also cells of few."""
    names = np.unique(others)
    at = np.searchsorted(names, key)
    there = names[at.clip(max=len(names) - 1)] == key
    return item[there], key[there]
