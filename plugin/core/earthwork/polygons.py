"""Many convex polygons at once: clipping, areas, integrals.

Polygons are arrays ``x, y`` of shape (k, m), counter-clockwise; a polygon with fewer than m corners
repeats its last one. Repeated corners add nothing to areas, so no masks are needed.
"""

from __future__ import annotations

from typing import Iterator, List, Tuple

import numpy as np

FLAT = 1e-7  # metres of height less than which are none: what rounding makes of surfaces that coincide


def settled(depth: np.ndarray) -> np.ndarray:
    """Depths (k, m), 0 where they are but for rounding: so coincident ground and even layers are so all over."""
    result: np.ndarray = np.where(np.abs(depth) < FLAT, 0.0, depth)
    return result


def across(combine: np.ufunc, values: np.ndarray) -> np.ndarray:
    """``combine`` (np.maximum, np.add ...) over the few columns of ``values`` (k, m): (k,).

    Column by column this is several times as fast as numpy's reduction over a short last axis.
    """
    result: np.ndarray = values[:, 0].copy()
    for column in range(1, values.shape[1]):
        combine(result, values[:, column], out=result)
    return result


def rows(values: np.ndarray, which: np.ndarray) -> np.ndarray:
    """Some rows of ``values`` (k, m), by number or mask, column by column in memory.

    Sums and products over many polygons with few corners each are several times as fast in that order.
    """
    if which.dtype == bool:
        which = np.flatnonzero(which)
    found = np.empty((values.shape[1], len(which)), values.dtype)
    for column in range(values.shape[1]):
        np.take(values[:, column], which, out=found[column], mode="clip")  # numbers are right: no need to check them
    return found.T


def clip(side: np.ndarray, *values: np.ndarray) -> Tuple[np.ndarray, ...]:
    """The parts of polygons where ``side`` >= 0; ``side`` (k, m) is a linear function at the corners.

    ``values``: arrays (k, m) of x, y and any other linear functions at the corners. Returns them at the corners of
    the parts, with as many columns as needed, m + 1 at most but for rounding; what is wholly outside has no
    area. (Sutherland and Hodgman, "Reentrant Polygon Clipping", 1974.)
    """
    k, m = side.shape
    inside = [side[:, column] >= 0 for column in range(m)]
    crosses = [inside[column] != inside[(column + 1) % m] for column in range(m)]
    place = np.zeros(k, np.int64)  # slot of the next corner of each part
    own: List[Tuple[np.ndarray, np.ndarray]] = []
    cut: List[Tuple[np.ndarray, np.ndarray, np.ndarray]] = []
    for column in range(m):
        kept = np.flatnonzero(inside[column])
        own.append((kept, place[kept]))
        place += inside[column]
        here = np.flatnonzero(crosses[column])  # a crossing on the way from this corner to the next
        ahead = (column + 1) % m
        from_here, from_ahead = side[here, column], side[here, ahead]
        cut.append((here, place[here], from_here / (from_here - from_ahead)))
        place += crosses[column]
    count = np.maximum(place, 1)
    width = max(3, int(count.max())) if k else 3
    short = [np.flatnonzero(count <= column) for column in range(1, width)]
    parts = []
    for value in values:
        part = np.zeros((width, k))
        for column in range(m):
            kept, slot = own[column]
            part[slot, kept] = value[kept, column]
            here, slot, t = cut[column]
            start = value[here, column]
            part[slot, here] = start + t * (value[here, (column + 1) % m] - start)
        for column, few in enumerate(short):
            part[column + 1, few] = part[column, few]
        parts.append(part.T)
    return tuple(parts)


def areas(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """Signed areas (k,)."""
    return 0.5 * across(np.add, _fan(x, y))


def integrals(x: np.ndarray, y: np.ndarray, f: np.ndarray) -> np.ndarray:
    """Integral (k,) over each polygon of the linear function with values ``f`` (k, m) at the corners."""
    third = f[:, :1] + f[:, 1:-1] + f[:, 2:]
    result: np.ndarray = across(np.add, _fan(x, y) * third) / 6
    return result


def moments(x: np.ndarray, y: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Areas (k,) and the integrals (k,) of x and of y over each polygon, counted from its corner 0."""
    dx, dy = x - x[:, :1], y - y[:, :1]
    return areas(x, y), integrals(x, y, dx), integrals(x, y, dy)


def positive_parts(
    f: np.ndarray, *values: np.ndarray
) -> Iterator[Tuple[np.ndarray, np.ndarray, Tuple[np.ndarray, ...]]]:
    """The parts of polygons where ``f`` (k, m), linear on each, is positive.

    Yields, for the polygons wholly so and for those cut at the line f = 0: their numbers, and ``f`` and ``values`` (as
    for :func:`clip`; x, y among them) at the corners of the parts.
    """
    above, below = across(np.maximum, f) > 0, across(np.minimum, f) < 0
    whole, split = np.flatnonzero(above & ~below), np.flatnonzero(above & below)
    if len(whole):
        yield whole, rows(f, whole), tuple(rows(value, whole) for value in values)
    if len(split):
        f = rows(f, split)
        cut = clip(f, f, *(rows(value, split) for value in values))
        yield split, cut[0], cut[1:]


def _fan(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """Twice the areas (k, m - 2) of the triangles from corner 0."""
    dx, dy = x[:, 1:] - x[:, :1], y[:, 1:] - y[:, :1]
    return dx[:, :-1] * dy[:, 1:] - dx[:, 1:] * dy[:, :-1]
