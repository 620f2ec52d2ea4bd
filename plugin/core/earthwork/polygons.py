"""Many convex polygons at once: clipping, areas, integrals.

Polygons are arrays ``x, y`` of shape (k, m), counter-clockwise; a polygon with fewer than m corners
repeats its last one. Repeated corners add nothing to areas, so no masks are needed.
"""

from __future__ import annotations

from typing import Iterator, Tuple

import numpy as np


def across(combine: np.ufunc, values: np.ndarray) -> np.ndarray:
    """``combine`` (np.maximum, np.add ...) over the few columns of ``values`` (k, m): (k,).

    Column by column this is several times as fast as numpy's reduction over a short last axis.
    """
    result: np.ndarray = values[:, 0].copy()
    for column in range(1, values.shape[1]):
        combine(result, values[:, column], out=result)
    return result


def clip(side: np.ndarray, *values: np.ndarray) -> Tuple[np.ndarray, ...]:
    """The parts of polygons where ``side`` >= 0; ``side`` (k, m) is a linear function at the corners.

    ``values``: arrays (k, m) of x, y and any other linear functions at the corners. Returns them at the corners of
    the parts, with as many columns as needed, m + 1 at most but for rounding; what is wholly outside has no
    area. (Sutherland and Hodgman, "Reentrant Polygon Clipping", 1974.)
    """
    k, m = side.shape
    inside = side >= 0
    crosses = inside != np.roll(inside, -1, axis=1)
    gives = inside.astype(np.int64) + crosses
    place = np.cumsum(gives, axis=1) - gives
    count = np.maximum(place[:, -1] + gives[:, -1], 1)
    width = max(3, int(count.max())) if k else 3
    own_row, own = np.nonzero(inside)
    own_slot = place[own_row, own]
    row, here = np.nonzero(crosses)  # the crossing on the way from a corner to the next
    ahead = np.where(here == m - 1, 0, here + 1)
    slot, t = place[row, here] + inside[row, here], side[row, here] / (side[row, here] - side[row, ahead])
    short = [np.flatnonzero(count <= column) for column in range(1, width)]
    parts = []
    for value in values:
        part = np.zeros((k, width))
        part[own_row, own_slot] = value[own_row, own]
        part[row, slot] = value[row, here] + t * (value[row, ahead] - value[row, here])
        for column, rows in enumerate(short):
            part[rows, column + 1] = part[rows, column]
        parts.append(part)
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
        yield whole, f[whole], tuple(value[whole] for value in values)
    if len(split):
        f = f[split]
        cut = clip(f, f, *(value[split] for value in values))
        yield split, cut[0], cut[1:]


def _fan(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """Twice the areas (k, m - 2) of the triangles from corner 0."""
    dx, dy = x[:, 1:] - x[:, :1], y[:, 1:] - y[:, :1]
    return dx[:, :-1] * dy[:, 1:] - dx[:, 1:] * dy[:, :-1]
