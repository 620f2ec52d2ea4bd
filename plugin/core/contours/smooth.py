"""Contours smoothed for the sheet within a stated distance, without ever crossing anything.

Every point of a traced contour lies on an edge of the TIN and gets a corridor: a piece of that edge
around the point, at most ``max_shift`` to either side, that reaches less than half way to the next
contour on the edge and less than the whole way to the edge's ends. Points on breaklines, on the rim
and on vertices have a corridor of no length: they stay. First the points slide along their edges
within the corridors to straighten the line, then each segment, which lies in one triangle, becomes a
cubic Bézier curve whose control points stay in the convex hull of the corridors at its two ends (the
segment's *cell*); a curve lies in the convex hull of its control points.

Why nothing crosses. Corridors on an edge are disjoint and in the order of the contours. Hence the
corridors of two segments in a triangle do not interleave around its rim, some straight line parts
them, and their cells are disjoint. Cells in different triangles meet on a shared edge at most, which
every line passes in its own corridor. So different segments, of one contour or of two, have nothing
in common but the point in which one follows the other. A curve does not cross itself because its
control polygon advances along the chord with each of its three legs, so the curve does too. And as
no corridor reaches an end of an edge, every survey point keeps its side of every contour.

Why the distance holds. All of a cell is within ``max_shift`` of the exact segment, because its
corners are and the distance to a segment is a convex function. The other way about: take of each
control point the nearest point of the exact segment, and these four with the same weights as the
curve; that point runs along all of the exact segment and stays within ``max_shift`` of the curve.

The polyline that is written is inscribed in the curve, for which the same holds word by word. All of
this is exact but for the rounding of coordinates (some 1e-12 m), against which the corridors keep
their distances; those shorter than a micrometre are taken as points.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import List, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..progress import Progress, silent
from ..surface.tin import Tin
from .lines import Contours

#: Share of the way to the next contour on the edge (less than half), and to the edge's end, that a corridor takes.
TO_NEXT_CONTOUR = 0.45
TO_END = 0.9
#: Share of the way to the rim of its cell that a control point takes.
TO_CELL_RIM = 0.9
#: A corridor shorter than this (m) is a point.
SHORTEST_CORRIDOR = 1e-6
#: Rounds of sliding; in each a step that straightens and one back that keeps bends from shrinking.
ROUNDS = 12
#: The two steps as shares of the way to the straight line through the neighbours: Taubin's choice of a
#: low-pass filter, G. Taubin, "A signal processing approach to fair surface design", SIGGRAPH 1995.
STRAIGHTEN, SPREAD = 0.5, -0.52
#: Rings with fewer points do not slide, only get round: straightening would draw them together.
SMALLEST_RING = 9
#: The written line follows the curve to this share of ``max_shift``.
FINENESS = 0.05
MOST_PIECES = 16
#: Points worked on at a time: small enough for the processor's cache. Whole lines only.
BLOCK = 1 << 14

BAD_SHIFT = Text(
    "contours.max_shift",
    QT_TRANSLATE_NOOP(
        "core", "The largest shift for smoothing contours is {max_shift} m; give a number of metres from 0 up."
    ),
)


@dataclass(frozen=True)
class SmoothContours:
    """``contours``: the smoothed lines, one for each line given. ``max_shift``: metres, as asked for.

    ``achieved_shift``: metres, the distance that no point of a smoothed line exceeds from its exact line,
    nor the other way about.
    """

    contours: Contours
    max_shift: float
    achieved_shift: float


@dataclass(frozen=True)
class _Slots:
    """Points with their corridors, line by line; k of them.

    A ring has its last point once more in front and its first once more at the end, so that the
    neighbours of every point that slides lie beside it. ``start``: (c + 1,) where lines begin,
    ``closed``: (c,). ``at``: (2, k) exact places; ``along``: (2, k) unit vectors of the edges, from the
    higher to the lower end; ``low``, ``high``: (k,) corridors in metres along them from ``at``.
    """

    start: np.ndarray
    closed: np.ndarray
    at: np.ndarray
    along: np.ndarray
    low: np.ndarray
    high: np.ndarray


def smooth_contours(contours: Contours, tin: Tin, max_shift: float, progress: Progress = silent) -> SmoothContours:
    """The ``contours`` traced on ``tin``, smoothed by at most ``max_shift`` metres in plan.

    Each point of a smoothed line is within ``max_shift`` of the exact one and the other way about.
    Lines never cross or touch each other, themselves or a breakline where the exact ones do not, keep
    every vertex of the TIN on its side, and stay on the surface. Rings stay closed, ends at the rim
    stay in place, bends at breaklines stay bends. Lines keep their number, order and attributes; a ring
    starts at the same TIN edge as before.

    Raises ``SurveyError`` for a shift that is not a finite number from 0 up, ``ValueError`` for
    contours that do not know their edges (smoothed before); ``progress`` is called with stage
    ``"contours"``.
    """
    if not (math.isfinite(max_shift) and max_shift >= 0):
        raise SurveyError(BAD_SHIFT, max_shift=max_shift)
    if contours.edge is None:
        raise ValueError("contours can be smoothed once, as they were traced")
    parts: List[Tuple[np.ndarray, np.ndarray]] = []
    achieved = 0.0
    for first, last in _blocks(contours.start):
        progress(contours.start[first] / max(len(contours.xy), 1), "contours")
        slots = _corridors(contours, tin, first, last, max_shift)
        slide = _slide(slots)
        xy, size, shift = _draw_curves(slots, slide, FINENESS * max_shift)
        parts.append((xy, size))
        achieved = max(achieved, shift)
    progress(1.0, "contours")
    xy = np.concatenate([part[0] for part in parts]) if parts else np.empty((0, 2))
    start = np.concatenate([[0], np.cumsum(np.concatenate([part[1] for part in parts]))]) if parts else contours.start
    smoothed = replace(contours, xy=xy, start=start.astype(np.int64), edge=None)
    return SmoothContours(smoothed, float(max_shift), achieved)


def _blocks(start: np.ndarray) -> List[Tuple[int, int]]:
    """Ranges of lines with about ``BLOCK`` points each."""
    lines = len(start) - 1
    if lines == 0:
        return []
    bounds = np.unique(np.searchsorted(start, np.arange(0, start[-1], BLOCK), side="left"))
    bounds = np.unique(np.concatenate([[0], bounds[bounds < lines], [lines]]))
    return list(zip(bounds[:-1].tolist(), bounds[1:].tolist()))


# ------------------------------------------------------------------------------------- corridors


def _corridors(contours: Contours, tin: Tin, first: int, last: int, max_shift: float) -> _Slots:
    """The points of lines ``first``..``last`` with their corridors."""
    begin, end = contours.start[first:last], contours.start[first + 1 : last + 1]
    closed = contours.closed[first:last]
    size = end - begin + closed
    start = np.concatenate([[0], np.cumsum(size)])
    point = np.arange(start[-1]) + np.repeat(begin - start[:-1] - closed, size)
    rings = np.flatnonzero(closed)
    point[start[rings]] = end[rings] - 2
    half_edge = contours.edge[point]  # type: ignore[index]
    upper, lower = _edge_ends(tin, half_edge, np.repeat(contours.level[first:last], size))
    edge = (lower - upper).T
    length = np.hypot(edge[0], edge[1])
    drop = -edge[2]
    share = (upper[:, 2] - np.repeat(contours.level[first:last], size)) / drop
    interval = contours.options.interval * contours.options.unit.metres
    most = np.minimum(max_shift, TO_NEXT_CONTOUR * interval / drop * length)
    low = -np.minimum(most, TO_END * share * length)
    high = np.minimum(most, TO_END * (1.0 - share) * length)
    fixed = tin.edge_kind.reshape(-1)[half_edge] != 0
    fixed |= tin.neighbours.reshape(-1)[half_edge] < 0
    fixed |= (share <= 0.0) | (high - low < SHORTEST_CORRIDOR)
    ends = ~closed
    fixed[start[:-1][ends]] = True
    fixed[start[1:][ends] - 1] = True
    low[fixed] = 0.0
    high[fixed] = 0.0
    return _Slots(start, closed, contours.xy[point].T.copy(), edge[:2] / length, low, high)


def _edge_ends(tin: Tin, half_edge: np.ndarray, level: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Coordinates (k, 3) of the ends of edges at or above and below ``level``."""
    corner = half_edge % 3
    following = half_edge + np.where(corner == 2, -2, 1)
    corners = tin.triangles.reshape(-1)
    one, other = np.take(corners, half_edge), np.take(corners, following)
    rising = tin.vertices[one, 2] < level
    upper, lower = np.where(rising, other, one), np.where(rising, one, other)
    return np.take(tin.vertices, upper, axis=0), np.take(tin.vertices, lower, axis=0)


# --------------------------------------------------------------------------------------- sliding


def _slide(slots: _Slots) -> np.ndarray:
    """How far each point slides along its edge, (k,) metres: ``low`` <= slide <= ``high``."""
    slide = np.zeros(len(slots.low))
    if len(slide) < 3 or not np.any(slots.low < slots.high):
        return slide
    x, y = slots.at
    ex, ey = slots.along
    size = np.diff(slots.start)
    slides = np.repeat(~slots.closed | (size >= SMALLEST_RING + 2), size)[1:-1]
    low, high = np.where(slides, slots.low[1:-1], 0.0), np.where(slides, slots.high[1:-1], 0.0)
    rings = np.flatnonzero(slots.closed)
    front, back = slots.start[rings], slots.start[rings + 1] - 1
    inner_ex, inner_ey, inner = ex[1:-1], ey[1:-1], slide[1:-1]
    for _ in range(ROUNDS):
        for step in (STRAIGHTEN, SPREAD):
            px, py = x + slide * ex, y + slide * ey
            dx, dy = px[2:] - px[:-2], py[2:] - py[:-2]
            # To the straight line through the neighbours. They lie on either side of the edge, so that
            # the divisor is negative: the lower end of the edge is on the line's right.
            off = dx * (py[:-2] - py[1:-1])
            off -= dy * (px[:-2] - px[1:-1])
            dx *= inner_ey
            dy *= inner_ex
            dx -= dy
            off /= np.minimum(dx, -1e-12, out=dx)
            off *= step
            off += inner
            np.minimum(np.maximum(off, low, out=off), high, out=inner)
            slide[front], slide[back] = slide[back - 1], slide[front + 1]
    return slide


# ---------------------------------------------------------------------------------------- curves


def _draw_curves(slots: _Slots, slide: np.ndarray, tolerance: float) -> Tuple[np.ndarray, np.ndarray, float]:
    """The smoothed lines: points (p, 2), number of points of each line (c,), largest shift (m)."""
    points = slots.at + slide * slots.along
    segment = _segments(slots)
    line = np.searchsorted(slots.start, segment, side="right") - 1
    tangent = _tangents(slots, points)
    tolerance = max(tolerance, 1e-9)
    bent = _bent(points, tangent, segment, tolerance)
    curves = _Curves(points, segment[bent], *_control_points(slots, points, tangent, segment[bent]))
    pieces = np.ones(len(segment), dtype=np.int64)
    pieces[bent] = curves.pieces(tolerance)
    size = np.bincount(line, weights=pieces, minlength=len(slots.closed)).astype(np.int64) + 1
    # Line by line: the first point of every piece, and the end of the last.
    row = np.repeat(np.arange(len(segment)), pieces)
    number = np.arange(len(row)) - np.repeat(np.cumsum(pieces) - pieces, pieces)
    place = np.arange(len(row)) + line[row]
    inner = number > 0
    xy = np.empty((int(size.sum()), 2))
    xy[place[~inner]] = points[:, segment].T
    xy[np.cumsum(size) - 1] = points[:, slots.start[1:] - 1].T
    row = row[inner]
    on_curve = curves.at(np.searchsorted(bent, row), number[inner] / pieces[row])
    xy[place[inner]] = on_curve.T
    off = _distance_to_segments(on_curve, slots.at[:, segment[row]], slots.at[:, segment[row] + 1])
    return xy, size, float(max(np.abs(slide).max(initial=0.0), off.max(initial=0.0)))


def _segments(slots: _Slots) -> np.ndarray:
    """Slots (s,) from which a segment runs to the next: neither the last of a line nor the first of a ring."""
    real = np.ones(len(slots.low), dtype=bool)
    real[slots.start[1:] - 1] = False
    real[slots.start[:-1][slots.closed]] = False
    return np.flatnonzero(real)


class _Curves:
    """Cubic Bézier curves over segments, with their inner control points ``leave`` and ``arrive`` (2, s)."""

    def __init__(self, points: np.ndarray, segment: np.ndarray, leave: np.ndarray, arrive: np.ndarray) -> None:
        self.begin, self.end = points[:, segment], points[:, segment + 1]
        self.leave, self.arrive = leave, arrive

    def pieces(self, tolerance: float) -> np.ndarray:
        """Into how many chords (s,) of equal steps to part each curve so that they keep to it."""
        # How far the control points are to the left of the chord; where they are on it, the curve is straight.
        chord = (self.end - self.begin) / np.maximum(_length(self.end - self.begin), 1e-300)
        leave, arrive = _cross(chord, self.leave - self.begin), _cross(chord, self.arrive - self.begin)
        bend = np.maximum(np.abs(arrive - 2 * leave), np.abs(leave - 2 * arrive))
        # Across the chord, the n-th part of a cubic is at most 6 bend / (8 n²) off its own chord.
        return np.clip(np.ceil(np.sqrt(0.75 * bend / tolerance)), 1, MOST_PIECES).astype(np.int64)

    def at(self, curve: np.ndarray, t: np.ndarray) -> np.ndarray:
        """Points (2, k) of the curves numbered ``curve`` (k,) at parameters ``t`` (k,)."""
        u = 1.0 - t
        inner = 3 * u**2 * t * self.leave[:, curve] + 3 * u * t**2 * self.arrive[:, curve]
        return u**3 * self.begin[:, curve] + inner + t**3 * self.end[:, curve]


def _bent(points: np.ndarray, tangent: np.ndarray, segment: np.ndarray, tolerance: float) -> np.ndarray:
    """Which of the segments have tangents that may take their curve off the chord by the tolerance."""
    chord = points[:, segment + 1] - points[:, segment]
    # A control point is at most a third of the chord away, and bend at most three times as far as it.
    off = np.maximum(np.abs(_cross(chord, tangent[:, segment])), np.abs(_cross(chord, tangent[:, segment + 1])))
    return np.flatnonzero(0.75 * off > tolerance)


def _control_points(
    slots: _Slots, points: np.ndarray, tangent: np.ndarray, segment: np.ndarray
) -> Tuple[np.ndarray, np.ndarray]:
    """The two inner control points (2, s) of each segment's curve, in the segment's cell."""
    after = segment + 1
    begin, end = points[:, segment], points[:, after]
    third = _length(end - begin) / 3.0
    top, bottom = slots.at + slots.low * slots.along, slots.at + slots.high * slots.along
    sides = ((top[:, segment], top[:, after], 1.0), (bottom[:, segment], bottom[:, after], -1.0))
    out, back = tangent[:, segment], -tangent[:, after]
    reach_out, reach_back = third, third
    for corner, opposite, sign in sides:
        side = sign * (opposite - corner)
        reach_out = _reach(reach_out, side, corner, begin, out)
        reach_back = _reach(reach_back, side, corner, end, back)
    reach_out = _reach(reach_out, slots.along[:, after], end, begin, out)
    reach_back = _reach(reach_back, -slots.along[:, segment], begin, end, back)
    return begin + reach_out * out, end + reach_back * back


def _reach(reach: np.ndarray, side: np.ndarray, on_side: np.ndarray, place: np.ndarray, ray: np.ndarray) -> np.ndarray:
    """``reach`` (s,) shortened so that the ray from ``place`` stays on the right of a directed straight line."""
    room = np.maximum(-_cross(side, place - on_side), 0.0)
    speed = _cross(side, ray)
    return np.minimum(reach, TO_CELL_RIM * room / np.where(speed > 0, speed, np.inf) + np.where(speed > 0, 0.0, reach))


def _tangents(slots: _Slots, points: np.ndarray) -> np.ndarray:
    """Direction (2, k) of the curve at each point, halfway between its two chords; 0 where the line has a corner.

    Halfway, it makes less than a right angle with both chords, so curves advance along theirs.
    """
    tangent = np.zeros_like(points)
    chord = np.diff(points)
    chord = chord / np.maximum(_length(chord), 1e-300)
    tangent[:, 1:-1] = chord[:, :-1] + chord[:, 1:]
    size = _length(tangent)
    # Near a full turn back the direction means nothing.
    smooth = (slots.low < slots.high) & (size > 0.1)
    tangent = np.where(smooth, tangent / np.where(smooth, size, 1.0), 0.0)
    rings = np.flatnonzero(slots.closed)
    front, back = slots.start[rings], slots.start[rings + 1] - 1
    tangent[:, front], tangent[:, back] = tangent[:, back - 1], tangent[:, front + 1]
    return tangent


def _distance_to_segments(place: np.ndarray, a: np.ndarray, b: np.ndarray) -> np.ndarray:
    """Distance (s,) of each place from the segment a..b."""
    span = b - a
    square = np.sum(span**2, axis=0)
    share = np.clip(np.sum((place - a) * span, axis=0) / np.where(square > 0, square, 1.0), 0.0, 1.0)
    return _length(place - a - share * span)


def _cross(a: np.ndarray, b: np.ndarray) -> np.ndarray:
    return a[0] * b[1] - a[1] * b[0]


def _length(a: np.ndarray) -> np.ndarray:
    return np.hypot(a[0], a[1])
