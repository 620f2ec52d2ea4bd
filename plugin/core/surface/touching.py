"""Which vertices segments touch: those they run through on the plan grid, and those they meet as they were given."""

from __future__ import annotations

from typing import Iterator, Tuple

import numpy as np

from .boxes import box_pairs
from .cells import runs
from .predicates import orientation

_MARKS = 1 << 24  # cells are marked by a number within this
_REACH = 3  # grid units about a vertex that are looked at: half a cell, and what rounding moves


def passing(x: np.ndarray, y: np.ndarray, segments: np.ndarray, vertices: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Pairs (segment, vertex) where one of ``segments`` (k, 2) runs through the cell of one of ``vertices`` (v,).

    ``x, y``: (n,) int64. The cell of a vertex is the square of one grid unit about it with its west and south sides,
    so each place is in one cell. Ends of the segment itself don't count. Exact; each pair once, sorted.
    """
    found = [np.empty(0, np.int64)]
    for i, v in _candidates(x, y, segments, x[vertices], y[vertices]):
        v = vertices[v]
        some = _runs_through(x, y, segments[i], v)
        found.append(i[some] * len(x) + v[some])
    pairs = np.unique(np.concatenate(found))
    return pairs // len(x), pairs % len(x)


def met(
    x: np.ndarray, y: np.ndarray, segments: np.ndarray, ends: np.ndarray, given: np.ndarray, vertex: np.ndarray
) -> np.ndarray:
    """Pairs (q, 2) of segments and vertices: as in :func:`passing`, or that met before anything was rounded.

    That is within half a grid unit. ``given``: (p, 2) float places in grid units and ``vertex`` (p,) what became of
    each. ``ends``: (k, 2) the places where each of ``segments`` (k, 2) begins and ends. Each pair once, sorted.
    """
    found = [np.empty(0, np.int64)]
    for i, p in _candidates(x, y, segments, x[vertex], y[vertex]):
        start = given[ends[i, 0]]
        u, w = given[ends[i, 1]] - start, given[p] - start
        square, along = np.sum(u * u, axis=1), np.sum(u * w, axis=1)
        beside = u[:, 0] * w[:, 1] - u[:, 1] * w[:, 0]
        near = (4 * beside * beside <= square) & (along > 0) & (along < square)
        near &= (vertex[p] != segments[i, 0]) & (vertex[p] != segments[i, 1])
        near |= _runs_through(x, y, segments[i], vertex[p])
        found.append(np.unique(i[near] * len(x) + vertex[p[near]]))
    pairs = np.unique(np.concatenate(found))
    return np.column_stack([pairs // len(x), pairs % len(x)])


def _runs_through(x: np.ndarray, y: np.ndarray, segments: np.ndarray, v: np.ndarray) -> np.ndarray:
    """Mask (k,) of segments (k, 2) that run through the cell of their vertex ``v`` (k,), not one of their ends."""
    a, b = segments.T
    ux, uy = x[b] - x[a], y[b] - y[a]
    left, reach = 2 * orientation(x, y, a, b, v), np.abs(ux) + np.abs(uy)
    # at most through a corner of the cell: only the south-west one belongs to it
    inside = (left < reach) | ((left == reach) & (ux >= 0) & (uy <= 0))
    inside &= (left > -reach) | ((left == -reach) & (ux <= 0) & (uy >= 0))
    for c in (x, y):
        inside &= (np.minimum(c[a], c[b]) <= c[v]) & (c[v] <= np.maximum(c[a], c[b]))
    mask: np.ndarray = inside & (v != a) & (v != b)
    return mask


def share_along(x: np.ndarray, y: np.ndarray, segments: np.ndarray, vertex: np.ndarray) -> np.ndarray:
    """How far along its segment (k, 2), 0..1, the foot of each ``vertex`` (k,) is."""
    a, b = segments.T
    ux, uy = (x[b] - x[a]).astype(float), (y[b] - y[a]).astype(float)
    share: np.ndarray = ((x[vertex] - x[a]) * ux + (y[vertex] - y[a]) * uy) / (ux * ux + uy * uy)
    return share.clip(0.0, 1.0)


def _candidates(
    x: np.ndarray, y: np.ndarray, segments: np.ndarray, px: np.ndarray, py: np.ndarray
) -> Iterator[Tuple[np.ndarray, np.ndarray]]:
    """Pairs (segment, place) that may be as near as ``_REACH``, each once, in parts; ``px, py`` (p,) int64."""
    if len(segments) == 0 or len(px) == 0:
        return
    ends_x, ends_y = x[segments], y[segments]
    length = np.hypot(ends_x[:, 1] - ends_x[:, 0], ends_y[:, 1] - ends_y[:, 0])
    near = np.flatnonzero(_marked(ends_x, ends_y, _power(max(length.mean() / 8, length.sum() / 1e6)), px, py))
    low = np.column_stack([ends.min(axis=1) for ends in (ends_x, ends_y)]) - _REACH
    high = np.column_stack([ends.max(axis=1) for ends in (ends_x, ends_y)]) + _REACH
    place = np.column_stack([px[near], py[near]])
    for i, j in box_pairs(low, high, place, place):
        yield i, near[j]


def _power(length: float) -> int:
    """The power of two that is as long or a little shorter, at least 16."""
    return int(2 ** np.floor(np.log2(max(length, 16.0))))


def _marked(ends_x: np.ndarray, ends_y: np.ndarray, cell: int, px: np.ndarray, py: np.ndarray) -> np.ndarray:
    """Mask (p,) of places that may be near a segment: a quick look that spares most of many points the long one."""
    longest = np.maximum(np.abs(ends_x[:, 1] - ends_x[:, 0]), np.abs(ends_y[:, 1] - ends_y[:, 0]))
    count = 2 + 2 * longest // cell  # places along each segment, no two farther apart than half a cell each way
    share = runs(np.zeros(len(count), np.int64), count) / np.repeat(count - 1, count)
    along = [
        (np.floor((np.repeat(e[:, 0], count) + share * np.repeat(e[:, 1] - e[:, 0], count)) / cell)).astype(np.int64)
        for e in (ends_x, ends_y)
    ]
    mark = np.zeros(_MARKS, bool)
    for east in (-1, 0, 1):
        for north in (-1, 0, 1):
            mark[_number(along[0] + east, along[1] + north)] = True
    bits = cell.bit_length() - 1
    return np.take(mark, _number(px >> bits, py >> bits))


def _number(column: np.ndarray, row: np.ndarray) -> np.ndarray:
    number: np.ndarray = (column * 73_856_093 + row * 19_349_663) & (_MARKS - 1)
    return number
