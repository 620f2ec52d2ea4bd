"""Triangulate one piece: any valid triangulation of the convex hull of some points.

Qhull does it fast in floating point; its result is accepted only if it can be proved right in whole
numbers. So Qhull need not mind its own rounding, which costs it up to five times as long where points lie in
strings or on circles. What it leaves out or gets wrong (thin triangles at the rim, points it takes for
coplanar) is mended, or the piece is triangulated again, with more care or by an exact sweep. Which triangles
come out does not matter here: the caller flips them to the one Delaunay triangulation.
"""

from __future__ import annotations

import re
from typing import List, Tuple

import numpy as np
from scipy.spatial import Delaunay, QhullError

from .mesh import following, twins_of
from .predicates import orientation

_NONE = np.empty(0, np.int32)
# Qhull's options. Q0: no merging of facets. Po: give out what there is, which is safe only where nothing but the last
# check for convexity has failed before. Then its usual care.
_PLAIN, _FORCED, _CAREFUL = "Qt Qbb Q0", "Qt Qbb Q0 Po", "Qt Qbb Qc Qz Q12"
_ON_CURVES = " Qf"  # each point to the facet it is farthest from: on curves up to three times as fast, else slower
_NOT_CONVEX = "QH6115"
_FAULT = re.compile(r"QH6\d{3}")  # Qhull's numbers of errors; those of warnings begin with 7


def triangulate_piece(x: np.ndarray, y: np.ndarray, on_curves: bool = False) -> Tuple[np.ndarray, np.ndarray]:
    """Half-edges ``(vertex, twin)`` of a triangulation of the convex hull of distinct points ``x, y`` (int64).

    Every point is a vertex; no triangle has zero area. Empty when the points are on one line. ``on_curves`` only says
    what is faster.
    """
    ways = [_CAREFUL, _PLAIN]
    while ways:
        way = ways.pop()
        try:
            vertex, twin = _by_qhull(x, y, way + _ON_CURVES * on_curves)
            if is_triangulation(x, y, vertex, twin, positive=True):
                return vertex, twin
            vertex, twin = _fill_rim(x, y, vertex, twin)
            if is_triangulation(x, y, vertex, twin):
                return vertex, twin
        except QhullError as error:
            if way == _PLAIN and set(_FAULT.findall(str(error))) == {_NOT_CONVEX}:
                ways.append(_FORCED)
        except ValueError:
            pass
    return (_NONE, _NONE) if on_one_line(x, y) else sweep(x, y)


def on_one_line(x: np.ndarray, y: np.ndarray) -> bool:
    """Whether distinct points are collinear (or fewer than three)."""
    if len(x) < 3:
        return True
    zero, one, rest = np.zeros(len(x) - 2, int), np.ones(len(x) - 2, int), np.arange(2, len(x))
    return not np.any(orientation(x, y, zero, one, rest))


def _by_qhull(x: np.ndarray, y: np.ndarray, way: str) -> Tuple[np.ndarray, np.ndarray]:
    """Qhull's triangles without those of no area, all counter-clockwise; whatever else may be wrong with them."""
    # From the middle, where squares are small: Qhull rounds least there, and fails on fewer curves.
    points = np.column_stack([v - (v.min() + v.max()) // 2 for v in (x, y)]).astype(np.float64)
    found = Delaunay(points, qhull_options=way)
    corner, opposite = found.simplices, found.neighbors
    area = orientation(x, y, corner[:, 0], corner[:, 1], corner[:, 2])
    if np.all(area > 0):
        return corner.ravel(), _twins_from_neighbours(corner, opposite)
    turned = area < 0
    corner = np.where(turned[:, None], corner[:, ::-1], corner)[area != 0]
    vertex = np.ascontiguousarray(corner).ravel()
    return vertex, twins_of(vertex)


def _twins_from_neighbours(corner: np.ndarray, opposite: np.ndarray) -> np.ndarray:
    """Twins from Qhull's neighbours, which are numbered by the corner opposite to the edge."""
    beyond = opposite[:, [2, 0, 1]].ravel()  # across the edge that starts at corner 0, 1, 2
    start, end = corner.ravel(), corner[:, [1, 2, 0]].ravel()
    first = np.int32(3) * beyond
    slot = (start[first + 1] == end) + np.int32(2) * (start[first + 2] == end)
    return np.where(beyond >= 0, first + slot, np.int32(-1))


def is_triangulation(
    x: np.ndarray, y: np.ndarray, vertex: np.ndarray, twin: np.ndarray, positive: bool = False
) -> bool:
    """Prove that half-edges tile the convex hull of all points ``x, y`` without overlap.

    Every triangle is positive, twins match, every point is used, and the rim is one convex closed
    polygon run through once. Then each place inside is covered as often as the rim winds around it: once.
    ``positive``: that the triangles are is known.
    """
    corner = vertex.reshape(-1, 3)
    if len(corner) == 0 or not np.all(np.bincount(vertex, minlength=len(x))):
        return False
    if not positive and np.any(orientation(x, y, corner[:, 0], corner[:, 1], corner[:, 2]) <= 0):
        return False
    ends = corner[:, [1, 2, 0]].ravel()
    inner = np.flatnonzero(twin >= 0)
    mates = twin[inner]
    if np.any(twin[mates] != inner) or np.any(vertex[mates] != ends[inner]) or np.any(ends[mates] != vertex[inner]):
        return False
    rim = np.flatnonzero(twin < 0)
    try:
        cycle = _cycle(vertex[rim], ends[rim])
    except ValueError:
        return False
    return _is_convex(x[cycle], y[cycle])


def _cycle(start: np.ndarray, end: np.ndarray) -> np.ndarray:
    """Order edges start -> end into one closed walk; its vertices. Raises ValueError if they are not one."""
    if len(start) == 0 or np.bincount(start).max() > 1:
        raise ValueError("the rim touches itself, or there is none")
    onward = np.full(max(start.max(), end.max()) + 1, -1, np.int64)
    onward[start] = end
    after = onward.tolist()
    first = vertex = int(start[0])
    walk = []
    for _ in range(len(start)):
        walk.append(vertex)
        vertex = after[vertex]
        if vertex < 0:
            raise ValueError("the rim is not closed")
        if vertex == first:
            break
    if vertex != first or len(walk) < len(start):
        raise ValueError("the rim has several parts")
    return np.array(walk)


def _is_convex(x: np.ndarray, y: np.ndarray) -> bool:
    around = np.arange(-2, len(x))  # each corner but with the last two before the first
    dx, dy = np.diff(x[around]), np.diff(y[around])
    turn, onward = dx[:-1] * dy[1:] - dy[:-1] * dx[1:], dx[:-1] * dx[1:] + dy[:-1] * dy[1:]
    if np.any(turn < 0) or np.any((turn == 0) & (onward <= 0)):
        return False
    upward = (dy > 0) | ((dy == 0) & (dx > 0))
    return int(np.count_nonzero(upward[1:] & ~upward[:-1])) == 1  # the direction turns round exactly once


def _fill_rim(x: np.ndarray, y: np.ndarray, vertex: np.ndarray, twin: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Close the pockets of the rim that Qhull left open; the caller proves the result."""
    rim = np.flatnonzero(twin < 0)
    cycle = _cycle(vertex[rim], vertex[following(rim)])
    lowest = int(np.lexsort((y[cycle], x[cycle]))[0])
    xs, ys = x.tolist(), y.tolist()
    stack: List[int] = []
    added: List[int] = []
    for c in [*np.roll(cycle, -lowest).tolist(), int(cycle[lowest])]:
        while len(stack) > 1:
            a, b = stack[-2], stack[-1]
            if (xs[b] - xs[a]) * (ys[c] - ys[a]) - (ys[b] - ys[a]) * (xs[c] - xs[a]) >= 0:
                break
            added += [a, c, b]
            stack.pop()
        stack.append(c)
    whole = np.concatenate([vertex, np.array(added, vertex.dtype)])
    return whole, twins_of(whole)


def sweep(x: np.ndarray, y: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Exact triangulation of distinct points that are not all on one line, by a sweep from west to east.

    Each point is joined to all hull edges it sees. Half-edges ``(vertex, twin)``.
    """
    order = np.lexsort((y, x)).tolist()
    xs, ys = x.tolist(), y.tolist()

    def area(a: int, b: int, c: int) -> int:
        return (xs[b] - xs[a]) * (ys[c] - ys[a]) - (ys[b] - ys[a]) * (xs[c] - xs[a])

    line = 2  # the first points may be on one line
    while area(order[0], order[1], order[line]) == 0:
        line += 1
    tip, chain = order[line], order[:line]
    triangles: List[int] = []
    for a, b in zip(chain, chain[1:]):
        triangles += [a, b, tip] if area(a, b, tip) > 0 else [b, a, tip]
    turn = area(chain[0], chain[1], tip) > 0
    lower, upper = [*chain, tip], [chain[0], tip]
    if not turn:
        lower, upper = upper, lower
    for p in order[line + 1 :]:
        for hull, side in ((lower, 1), (upper, -1)):
            while len(hull) > 1 and side * area(hull[-2], hull[-1], p) < 0:
                triangles += [hull[-1], hull[-2], p] if side > 0 else [hull[-2], hull[-1], p]
                hull.pop()
            hull.append(p)
    vertex = np.array(triangles, np.int32)
    return vertex, twins_of(vertex)
