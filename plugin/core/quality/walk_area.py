"""The area of a walking plan: chords across it, and ways inside it from one place to another."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import List, Sequence, Tuple

import numpy as np
from scipy.spatial import ConvexHull

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text

NO_AREA = Text(
    "plan.no_area",
    QT_TRANSLATE_NOOP(
        "core", "Ring {number} of the area encloses nothing: {count} corners; draw a polygon of three corners or more."
    ),
)
NOT_FINITE = Text(
    "plan.not_finite",
    QT_TRANSLATE_NOOP("core", "Ring {number} of the area has a corner without finite coordinates; draw it again."),
)
NO_RINGS = Text("plan.no_rings", QT_TRANSLATE_NOOP("core", "There is no area to walk; give a polygon."))


#: A place so near to a ring (m) lies on it.
_ON_RING = 1e-6


@dataclass(frozen=True)
class Chords:
    """k pieces of parallel lines inside an area, line by line, each along the lines' direction.

    ``line``: (k,) int64 number of the line; ``across``: (k,) its offset; ``start``, ``end``: (k,) along it; metres in
    the frame of :meth:`WalkArea.to_frame`.
    """

    line: np.ndarray
    across: np.ndarray
    start: np.ndarray
    end: np.ndarray

    def __len__(self) -> int:
        return len(self.line)

    def shortened(self, by: float, least: float) -> Chords:
        """Both ends drawn in by ``by``; chords shorter than ``least`` before that are left out."""
        keep = self.end - self.start >= max(least, 2.5 * by)
        return Chords(self.line[keep], self.across[keep], self.start[keep] + by, self.end[keep] - by)


class WalkArea:
    """Polygons with holes by the even-odd rule. Rings (k, 2) in metres; a repeated last corner is dropped.

    Raises SurveyError for no rings, rings that enclose nothing, coordinates that are not finite.
    """

    def __init__(self, rings: Sequence[np.ndarray]) -> None:
        if len(rings) == 0:
            raise SurveyError(NO_RINGS)
        cleaned = [_cleaned(np.asarray(ring, float)[:, :2], number) for number, ring in enumerate(rings, 1)]
        self.origin = np.concatenate(cleaned).min(axis=0)
        self.rings: List[np.ndarray] = [ring - self.origin for ring in cleaned]
        self._from = np.concatenate(self.rings)
        self._to = np.concatenate([np.roll(ring, -1, axis=0) for ring in self.rings])
        self._ring = np.repeat(np.arange(len(self.rings)), [len(ring) for ring in self.rings])
        self._first = np.cumsum([0] + [len(ring) for ring in self.rings])

    @property
    def area(self) -> float:
        """Square metres by the even-odd rule, for rings that do not cross."""
        total = 0.0
        for number, ring in enumerate(self.rings):
            depth = sum(bool(inside_ring(other, ring[:1])[0]) for k, other in enumerate(self.rings) if k != number)
            total += abs(_ring_area(ring)) * (-1) ** depth
        return total

    def longest_side(self) -> float:
        """Direction (degrees clockwise from grid north, 0 to 180) in which the area is narrowest across.

        For a rectangle or a triangle that is its longest side: it takes the fewest passes. Of equals, the smallest.
        """
        corner = self._from[ConvexHull(self._from).vertices]
        side = np.roll(corner, -1, axis=0) - corner
        normal = np.column_stack([-side[:, 1], side[:, 0]]) / np.hypot(*side.T)[:, None]
        width = np.ptp(normal @ corner.T, axis=1)
        bearing = np.degrees(np.arctan2(side[:, 0], side[:, 1])) % 180.0
        narrow = width <= width.min() * (1 + 1e-9)
        return float(bearing[narrow].min())

    def to_frame(self, xy: np.ndarray, direction: float) -> np.ndarray:
        """Local places (k, 2) as distance along ``direction`` and across it to the left."""
        return xy @ _axes(direction).T

    def from_frame(self, uv: np.ndarray, direction: float) -> np.ndarray:
        """The inverse of :meth:`to_frame`."""
        return uv @ _axes(direction)

    def extent(self, direction: float) -> Tuple[float, float, float, float]:
        """Least and greatest distance along ``direction``, then across it, metres."""
        along, across = self.to_frame(self._from, direction).T
        return float(along.min()), float(along.max()), float(across.min()), float(across.max())

    def chords(self, direction: float, across: np.ndarray) -> Chords:
        """The pieces inside the area of lines at offsets ``across`` (l,), rising; a corner on a line is above it."""
        a, b = self.to_frame(self._from, direction), self.to_frame(self._to, direction)
        low = np.searchsorted(across, np.minimum(a[:, 1], b[:, 1]), "left")
        high = np.searchsorted(across, np.maximum(a[:, 1], b[:, 1]), "left")
        edge = np.repeat(np.arange(len(a)), high - low)
        before = np.cumsum(high - low) - (high - low)
        line = np.arange(len(edge)) - before[edge] + low[edge]
        share = (across[line] - a[edge, 1]) / (b[edge, 1] - a[edge, 1])
        along = a[edge, 0] + share * (b[edge, 0] - a[edge, 0])
        order = np.lexsort((along, line))
        start, end = order[::2], order[1::2]
        return Chords(line[start], across[line[start]], along[start], along[end])

    def way(self, start: np.ndarray, end: np.ndarray) -> np.ndarray:
        """A way (k, 2) from one local place to another, both in the area or on its outline, that stays in it.

        Straight, but where that would leave the area it follows the ring it meets, the shorter way round, to where
        the straight line comes back in. Between parts of the area that do not touch it stays straight.
        """
        ring, share, edge = self._crossings(start, end)
        cut = np.concatenate([[0.0], share, [1.0]])
        middle = start + (cut[:-1] + cut[1:])[:, None] / 2 * (end - start)
        outside = ~self._contains(middle) & (np.diff(cut) * np.hypot(*(end - start)) > _ON_RING)
        parts = [start[None]]
        # Crossing k lies between the stretches k and k + 1 of the straight line.
        for first, last in _runs_of(outside):
            i, j = first - 1, last
            if i < 0 or j >= len(ring) or ring[i] != ring[j]:
                continue
            leave, enter = (start + share[k] * (end - start) for k in (i, j))
            parts.append(self._along_ring(int(ring[i]), leave, int(edge[i]), enter, int(edge[j])))
        parts.append(end[None])
        path = np.concatenate(parts)
        moved = np.append(True, np.hypot(*np.diff(path, axis=0).T) > 1e-9)
        moved[-1] = True
        return path[moved]

    def _contains(self, place: np.ndarray) -> np.ndarray:
        """Mask of the local places (q, 2) inside, by the even-odd rule."""
        (x0, y0), (x1, y1) = self._from.T, self._to.T
        x, y = place[:, :1], place[:, 1:]
        spans = (y0 <= y) != (y1 <= y)
        with np.errstate(divide="ignore", invalid="ignore"):
            beyond = x < x0 + (y - y0) * (x1 - x0) / (y1 - y0)
        mask: np.ndarray = np.count_nonzero(spans & beyond, axis=1) % 2 == 1
        return mask

    def _crossings(self, start: np.ndarray, end: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
        """Where a straight line crosses edges: ring, share of the way and edge, in the order of the way.

        Ends that lie on a ring count as crossings, at the shares 0 and 1.
        """
        d = end - start
        side_a, side_b = (_cross(d, each - start) for each in (self._from, self._to))
        edge = np.flatnonzero((side_a >= 0) != (side_b >= 0))
        a, along = self._from[edge], self._to[edge] - self._from[edge]
        share = _cross(a - start, along) / (d[0] * along[:, 1] - d[1] * along[:, 0])
        on = (share > 0) & (share < 1)
        first, last = self._edge_under(start), self._edge_under(end)
        edge = np.concatenate([first, edge[on], last])
        share = np.concatenate([np.zeros(len(first)), share[on], np.ones(len(last))])
        order = np.argsort(share, kind="stable")
        return self._ring[edge[order]], share[order], edge[order]

    def _edge_under(self, place: np.ndarray) -> np.ndarray:
        """The edge on which ``place`` lies, (1,), or none, (0,)."""
        along = self._to - self._from
        share = np.clip(np.sum((place - self._from) * along, axis=1) / np.sum(along * along, axis=1), 0, 1)
        gap = np.hypot(*(self._from + share[:, None] * along - place).T)
        nearest = int(np.argmin(gap))
        return np.array([nearest] if gap[nearest] <= _ON_RING else [], np.int64)

    def _along_ring(self, number: int, leave: np.ndarray, first: int, enter: np.ndarray, last: int) -> np.ndarray:
        """From ``leave`` on edge ``first`` of a ring to ``enter`` on edge ``last``, the shorter way round."""
        ring, base = self.rings[number], int(self._first[number])
        n, i, j = len(ring), first - base, last - base
        forth = [(i + 1 + k) % n for k in range((j - i) % n)]
        back = [(i - k) % n for k in range((i - j) % n)]
        if i == j:
            return np.array([leave, enter])
        ways = [np.vstack([leave, ring[way], enter]) for way in (forth, back)]
        return min(ways, key=path_length)


def path_length(path: np.ndarray) -> float:
    """Length of a chain of places (k, 2), metres."""
    return float(np.hypot(*np.diff(path, axis=0).T).sum())


def inside_ring(ring: np.ndarray, place: np.ndarray) -> np.ndarray:
    """Mask of the places (q, 2) inside one ring (k, 2)."""
    inside = np.zeros(len(place), bool)
    for (x0, y0), (x1, y1) in zip(ring.tolist(), np.roll(ring, -1, axis=0).tolist()):
        if y0 == y1:
            continue
        spans = (y0 <= place[:, 1]) != (y1 <= place[:, 1])
        inside ^= spans & (place[:, 0] < x0 + (place[:, 1] - y0) * (x1 - x0) / (y1 - y0))
    return inside


def _runs_of(mask: np.ndarray) -> List[Tuple[int, int]]:
    """First and last index of each run of True."""
    change = np.diff(np.concatenate([[0], mask.astype(np.int8), [0]]))
    return list(zip(np.flatnonzero(change == 1).tolist(), (np.flatnonzero(change == -1) - 1).tolist()))


def _axes(direction: float) -> np.ndarray:
    """Unit vectors along a grid bearing in degrees and to its left, as rows."""
    angle = math.radians(direction)
    east, north = math.sin(angle), math.cos(angle)
    return np.array([[east, north], [-north, east]])


def _cross(a: np.ndarray, b: np.ndarray) -> np.ndarray:
    result: np.ndarray = a[..., 0] * b[..., 1] - a[..., 1] * b[..., 0]
    return result


def _ring_area(ring: np.ndarray) -> float:
    return float(_cross(ring, np.roll(ring, -1, axis=0)).sum()) / 2


def _cleaned(ring: np.ndarray, number: int) -> np.ndarray:
    if not np.all(np.isfinite(ring)):
        raise SurveyError(NOT_FINITE, number=number)
    ring = ring[np.any(ring != np.roll(ring, -1, axis=0), axis=1)] if len(ring) > 1 else ring
    if len(ring) < 3 or abs(_ring_area(ring - ring[0])) < 1e-6:
        raise SurveyError(NO_AREA, number=number, count=len(ring))
    return ring
