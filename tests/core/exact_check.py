"""Independent checks of triangulations, in Python's whole numbers: nothing here uses the code under test."""

from __future__ import annotations

from typing import Dict, Iterable, List, Sequence, Set, Tuple

import numpy as np

Point = Tuple[int, int]
Edge = Tuple[int, int]


def turn(a: Point, b: Point, c: Point) -> int:
    """Twice the signed area of a, b, c."""
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def circle(a: Point, b: Point, c: Point, d: Point) -> int:
    """> 0 if d is inside the circle through the counter-clockwise a, b, c; 0 on it."""
    ax, ay, bx, by, cx, cy = a[0] - d[0], a[1] - d[1], b[0] - d[0], b[1] - d[1], c[0] - d[0], c[1] - d[1]
    a2, b2, c2 = ax * ax + ay * ay, bx * bx + by * by, cx * cx + cy * cy
    return a2 * (bx * cy - cx * by) - b2 * (ax * cy - cx * ay) + c2 * (ax * by - bx * ay)


def as_points(x: Iterable[int], y: Iterable[int]) -> List[Point]:
    return [(int(a), int(b)) for a, b in zip(x, y)]


def as_triangles(corner: np.ndarray) -> List[Tuple[int, int, int]]:
    return [tuple(t) for t in np.asarray(corner).reshape(-1, 3).tolist()]  # type: ignore[misc]


def triangle_set(corner: np.ndarray) -> Set[Tuple[int, ...]]:
    return {tuple(t) for t in np.sort(np.asarray(corner).reshape(-1, 3), axis=1).tolist()}


def place_set(x: np.ndarray, y: np.ndarray, corner: np.ndarray) -> Set[Tuple[Point, ...]]:
    """Triangles as sorted places: the same however the points are numbered."""
    points = as_points(x, y)
    return {tuple(sorted(points[v] for v in t)) for t in as_triangles(corner)}


def hull_double_area(points: Sequence[Point]) -> int:
    """Twice the area of the convex hull (monotone chain)."""
    ordered = sorted(set(points))
    chain: List[Point] = []
    for row in (ordered, ordered[::-1]):
        start = len(chain)
        for p in row:
            while len(chain) >= start + 2 and turn(chain[-2], chain[-1], p) <= 0:
                chain.pop()
            chain.append(p)
        chain.pop()
    return sum(p[0] * q[1] - p[1] * q[0] for p, q in zip(chain, chain[1:] + chain[:1]))


class Checked:
    """A triangulation of all ``points``, proved valid on construction.

    Every triangle is counter-clockwise and has area; every directed edge occurs once, so that the
    triangles on its two sides do not overlap; edges with one side lie on the hull; every point is a
    corner; the areas sum to the hull's. So each place in the hull is covered equally often: once.
    """

    def __init__(self, points: Sequence[Point], triangles: Sequence[Tuple[int, int, int]]) -> None:
        self.points = points
        self.apex: Dict[Edge, int] = {}
        area = 0
        for a, b, c in triangles:
            double = turn(points[a], points[b], points[c])
            assert double > 0, f"triangle {a, b, c} has double area {double}"
            area += double
            for edge, apex in (((a, b), c), ((b, c), a), ((c, a), b)):
                assert edge not in self.apex, f"edge {edge} is used twice in one direction"
                self.apex[edge] = apex
        assert {v for edge in self.apex for v in edge} == set(range(len(points))), "a point is in no triangle"
        assert area == hull_double_area(points), "the areas do not sum to the hull's"
        xy = np.array(points, object if max(map(max, points)) >= 1 << 30 else np.int64)
        for a, b in self.apex:
            if (b, a) not in self.apex:
                (ax, ay), (bx, by) = points[a], points[b]
                side = (bx - ax) * (xy[:, 1] - ay) - (by - ay) * (xy[:, 0] - ax)
                assert np.all(side >= 0), f"edge {a, b} has one side but is not on the hull"

    def is_edge(self, a: int, b: int) -> bool:
        return (a, b) in self.apex or (b, a) in self.apex

    def chain(self, a: int, b: int) -> List[Edge]:
        """The segment a, b cut at the points on it, each part as (lower, higher) number; each must be an edge."""
        p, q = self.points[a], self.points[b]
        x, y = np.array(self.points, np.int64).T  # below 2**30: exact
        ux, uy = q[0] - p[0], q[1] - p[1]
        along = ux * (x - p[0]) + uy * (y - p[1])
        on = np.flatnonzero((ux * (y - p[1]) == uy * (x - p[0])) & (along >= 0) & (along <= ux * ux + uy * uy))
        on = on[np.argsort(along[on])].tolist()
        parts = [(min(e), max(e)) for e in zip(on, on[1:])]
        for edge in parts:
            assert self.is_edge(*edge), f"part {edge} of segment {a, b} is no edge"
        return parts

    def check_delaunay(self, fixed: Set[Edge] = frozenset()) -> int:  # type: ignore[assignment]
        """Each inner edge not in ``fixed`` (lower, higher) is locally Delaunay; returns the number of ties.

        Of the diagonals of four cocircular points the one through the westernmost, then southernmost, is right.
        """
        points, ties = self.points, 0
        for (a, b), c in self.apex.items():
            if a > b or (b, a) not in self.apex or (a, b) in fixed:
                continue
            d = self.apex[b, a]
            sign = circle(points[a], points[b], points[c], points[d])
            assert sign <= 0, f"edge {a, b}: {d} is inside the circle of {a, b, c}"
            if sign == 0:
                ties += 1
                first = min((a, b, c, d), key=lambda v: points[v])
                assert first in (a, b), f"tie of {a, b, c, d} not drawn from the westernmost"
        return ties


def proper_crossings(points: Sequence[Point], segments: Sequence[Edge]) -> Set[Edge]:
    """Numbers (i < j) of the segments that cross strictly inside both, by brute force."""
    found = set()
    for j, (c, d) in enumerate(segments):
        for i in range(j):
            a, b = segments[i]
            p, q, r, s = points[a], points[b], points[c], points[d]
            if turn(p, q, r) * turn(p, q, s) < 0 and turn(r, s, p) * turn(r, s, q) < 0:
                found.add((i, j))
    return found
