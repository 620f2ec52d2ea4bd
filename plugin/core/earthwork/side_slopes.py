"""The slopes that rise or fall from the rim of a platform, as plane facets.

From each edge of the rim runs a facet with the slope's grade square to the edge. At an outward corner, the gap
between two facets is filled by a fan of facets around the corner (a cone) or by carrying both on until they meet (a
mitre). Where facets overlap, at inward corners and between arms of the rim, the lowest counts for slopes of cut, the
highest for slopes of fill: the one that is reached first.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import List, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..surface.boxes import box_pairs
from .polygons import areas, clip

BAD_RUN = Text(
    "earthwork.slope_run",
    QT_TRANSLATE_NOOP("core", "A slope of {run} (metres out for each metre up) cannot be graded; give more than 0."),
)

_FAN_STEP = np.radians(10.0)  # a facet of a fan is 0.4 % steeper in its middle than at its sides
_LEAST_MITRE = 0.3  # cosine between a mitre and the nearer normal of its edges below which a corner is rounded
_LOWER = 1e-7  # metres by which another facet must be nearer to hide one
_SHORT = 1e-6


class Corner(Enum):
    """How slopes go around an outward corner."""

    ROUND = "round"
    MITRE = "mitre"


@dataclass(frozen=True)
class SideSlopes:
    """Metres out for each metre up (in cut) and down (in fill), and the shape of outward corners."""

    cut_run: float = 2.0
    fill_run: float = 2.0
    corner: Corner = Corner.ROUND

    def __post_init__(self) -> None:
        for run in (self.cut_run, self.fill_run):
            if not 0 < run < np.inf:
                raise SurveyError(BAD_RUN, run=run)


@dataclass(frozen=True)
class Facets:
    """f plane facets of the slopes of cut (``sign`` 1) or of fill (-1).

    ``x``, ``y``: (f, 4) corners in plan, counter-clockwise, the last repeated for a triangle. ``base``: (f, 3) a place
    on each and its height; ``gradient``: (f, 2).
    """

    sign: float
    x: np.ndarray
    y: np.ndarray
    base: np.ndarray
    gradient: np.ndarray

    def __len__(self) -> int:
        return len(self.base)

    def height(self, f: np.ndarray, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        """Height of facets ``f`` (k,) at places, (k,) or (k, m)."""
        shape = (len(f),) + (1,) * (np.ndim(x) - 1)
        bx, by, bz = (self.base[f, i].reshape(shape) for i in range(3))
        gx, gy = (self.gradient[f, i].reshape(shape) for i in range(2))
        result: np.ndarray = bz + gx * (x - bx) + gy * (y - by)
        return result

    def boxes(self) -> Tuple[np.ndarray, np.ndarray]:
        """South-west and north-east corners (f, 2)."""
        return (
            np.column_stack([self.x.min(axis=1), self.y.min(axis=1)]),
            np.column_stack([self.x.max(axis=1), self.y.max(axis=1)]),
        )

    def nearest(self, xy: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        """The facet (q,) that counts at each place (q, 2), -1 for none, and its height (nan)."""
        best, height = np.full(len(xy), -1, np.int64), np.full(len(xy), np.inf)
        if len(self) == 0 or len(xy) == 0:
            return best, np.full(len(xy), np.nan)
        low, high = self.boxes()
        order_p, order_f = [best[:0]], [best[:0]]
        for p, f in box_pairs(xy, xy, low, high):
            inside = np.ones(len(p), bool)
            for edge in range(4):
                inside &= _side(self, f, edge, xy[p, :1], xy[p, 1:])[:, 0] >= -_SHORT
            order_p.append(p[inside])
            order_f.append(f[inside])
        p, f = np.concatenate(order_p), np.concatenate(order_f)
        value = self.sign * self.height(f, xy[p, 0], xy[p, 1])
        order = np.lexsort((f, value, p))
        first = order[np.append(True, np.diff(p[order]) != 0)] if len(order) else order
        best[p[first]], height[p[first]] = f[first], self.sign * value[first]
        height[best < 0] = np.nan
        return best, height


def make_facets(
    ring: np.ndarray, sloped: np.ndarray, runs: np.ndarray, sign: float, reach: float, style: Corner
) -> Facets:
    """Facets out to ``reach`` metres from the edges of a ring (k, 3) where ``sloped`` (k,), the platform on its left.

    ``runs``: (k,) metres out for each metre up or down.
    """
    grade = sign / runs
    ahead = np.roll(ring, -1, axis=0) - ring
    length = np.hypot(ahead[:, 0], ahead[:, 1])
    along = ahead[:, :2] / length[:, None]
    normal = np.column_stack([along[:, 1], -along[:, 0]])  # outward
    gradient = along * (ahead[:, 2] / length)[:, None] + grade[:, None] * normal
    corners: List[np.ndarray] = []
    bases: List[np.ndarray] = []
    gradients: List[np.ndarray] = []
    found: List[Fan]
    for i in np.flatnonzero(sloped):
        a, b, n = ring[i, :2], np.roll(ring, -1, axis=0)[i, :2], normal[i] * reach
        corners.append(np.array([a, a + n, b + n, b]))
        bases.append(ring[i])
        gradients.append(gradient[i])
    for i in np.flatnonzero(sloped & np.roll(sloped, 1)):
        before, v = i - 1, ring[i]
        turn = along[before, 0] * along[i, 1] - along[before, 1] * along[i, 0]
        if abs(turn) <= 1e-9 and along[before] @ along[i] > 0:
            continue
        if turn < 0:
            found = _inward(normal[before], normal[i], gradient[[before, i]])
        else:
            found = _corner(normal[before], normal[i], gradient[[before, i]], grade[[before, i]], style)
        for fan, slope in found:
            last = v[:2] + reach * fan[1]
            corners.append(np.array([v[:2], v[:2] + reach * fan[0], last, last]))
            bases.append(v)
            gradients.append(slope)
    xy = np.array(corners).reshape(-1, 4, 2)
    return Facets(sign, xy[:, :, 0], xy[:, :, 1], np.array(bases).reshape(-1, 3), np.array(gradients).reshape(-1, 2))


Fan = Tuple[Tuple[np.ndarray, np.ndarray], np.ndarray]


def _meeting_line(before: np.ndarray, after: np.ndarray, gradient: np.ndarray) -> np.ndarray:
    """Direction (2,), outward, of the line along which the facets of two edges are of one height."""
    difference = gradient[1] - gradient[0]
    line = np.array([-difference[1], difference[0]])
    line *= np.sign(line @ (before + after)) / max(float(np.hypot(*line)), 1e-300)
    return line


def _inward(before: np.ndarray, after: np.ndarray, gradient: np.ndarray) -> List[Fan]:
    """What carries facets on to the line where they meet at an inward corner of edges that rise or fall.

    Between level edges that line is well within both facets, and nothing is needed.
    """
    meeting = _meeting_line(before, after, gradient)
    found: List[Fan] = []
    if before[0] * meeting[1] - before[1] * meeting[0] > 1e-9 and meeting @ before > _LEAST_MITRE:
        found.append(((before, meeting / (meeting @ before)), gradient[0]))
    if meeting[0] * after[1] - meeting[1] * after[0] > 1e-9 and meeting @ after > _LEAST_MITRE:
        found.append(((meeting / (meeting @ after), after), gradient[1]))
    return found


def _corner(before: np.ndarray, after: np.ndarray, gradient: np.ndarray, grade: np.ndarray, style: Corner) -> List[Fan]:
    """Triangles at an outward corner: their two rays from it (for a reach of 1) and their gradients.

    A fan goes from the ``grade`` (2,) of one edge to that of the other evenly with the angle.
    """
    if style is Corner.MITRE:
        meeting = _meeting_line(before, after, gradient)
        between = _cross(before, meeting) >= 0 and _cross(meeting, after) >= 0
        if between and max(meeting @ before, meeting @ after) > _LEAST_MITRE:
            return [
                ((before, meeting / (meeting @ before)), gradient[0]),
                ((meeting / (meeting @ after), after), gradient[1]),
            ]
    start = np.arctan2(before[1], before[0])
    sweep = (np.arctan2(after[1], after[0]) - start) % (2 * np.pi)
    count = max(1, int(np.ceil(sweep / _FAN_STEP - 1e-9)))
    share = np.arange(count + 1) / count
    angle = start + sweep * share
    rays = np.column_stack([np.cos(angle), np.sin(angle)])
    rays[0], rays[-1] = before, after
    rise = grade[0] + share * (grade[1] - grade[0])
    found: List[Fan] = []
    for k in range(count):  # the plane that rises so along both rays
        found.append(((rays[k], rays[k + 1]), np.linalg.solve(rays[k : k + 2], rise[k : k + 2])))
    return found


def _cross(one: np.ndarray, other: np.ndarray) -> float:
    return float(one[0] * other[1] - one[1] * other[0])


def crease_lines(facets: Facets) -> np.ndarray:
    """Segments (s, 2, 2) in plan where the facet that counts begins, ends, or gives way to another."""
    if len(facets) == 0:
        return np.empty((0, 2, 2))
    xy = np.stack([facets.x, facets.y], axis=2)
    sides = np.stack([xy, np.roll(xy, -1, axis=1)], axis=2).reshape(-1, 2, 2)
    own = np.repeat(np.arange(len(facets)), 4)
    met, of = _meetings(facets)
    segments, own = np.concatenate([sides, met]), np.concatenate([own, of])
    long = np.hypot(*(segments[:, 1] - segments[:, 0]).T) > _SHORT
    return _visible(facets, segments[long], own[long])


def _side(facets: Facets, f: np.ndarray, edge: int, x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """Metres by which places (k, m) are inside an edge of facets ``f`` (k,)."""
    after = (edge + 1) % 4
    px, py = facets.x[f, edge][:, None], facets.y[f, edge][:, None]
    dx, dy = facets.x[f, after][:, None] - px, facets.y[f, after][:, None] - py
    result: np.ndarray = (dx * (y - py) - dy * (x - px)) / np.maximum(np.hypot(dx, dy), 1e-300)
    return result


def _meetings(facets: Facets) -> Tuple[np.ndarray, np.ndarray]:
    """Segments where two overlapping facets are of one height, and the first facet of each."""
    low, high = facets.boxes()
    segments, own = [np.empty((0, 2, 2))], [np.empty(0, np.int64)]
    for i, j in box_pairs(low, high, low, high):
        i, j = i[i < j], j[i < j]
        x, y = facets.x[i], facets.y[i]
        for edge in range(4):
            x, y = clip(_side(facets, j, edge, x, y), x, y)
        some = areas(x, y) > _SHORT**2 if len(i) else np.zeros(0, bool)
        i, j, x, y = i[some], j[some], x[some], y[some]
        if len(i) == 0:
            continue
        difference = facets.height(i, x, y) - facets.height(j, x, y)
        crossed = np.flatnonzero((difference.min(axis=1) < -_LOWER) & (difference.max(axis=1) > _LOWER))
        i, x, y, difference = i[crossed], x[crossed], y[crossed], difference[crossed]
        ahead = np.roll(difference, -1, axis=1)
        ends = []
        for changes in ((difference > 0) & (ahead <= 0), (difference <= 0) & (ahead > 0)):
            at, row = np.argmax(changes, axis=1), np.arange(len(i))
            after = (at + 1) % x.shape[1]
            t = difference[row, at] / (difference[row, at] - difference[row, after])
            ends.append(np.column_stack([v[row, at] + t * (v[row, after] - v[row, at]) for v in (x, y)]))
        segments.append(np.stack(ends, axis=1))
        own.append(i)
    return np.concatenate(segments), np.concatenate(own)


def _visible(facets: Facets, segments: np.ndarray, own: np.ndarray) -> np.ndarray:
    """The parts of segments, each on its ``own`` facet (s,), that no other facet hides."""
    low, high = segments.min(axis=1), segments.max(axis=1)
    f_low, f_high = facets.boxes()
    hidden: List[Tuple[np.ndarray, np.ndarray, np.ndarray]] = []
    for s, f in box_pairs(low, high, f_low, f_high):
        s, f = s[own[s] != f], f[own[s] != f]
        x, y = segments[s][:, :, 0], segments[s][:, :, 1]
        begin, end = np.zeros(len(s)), np.ones(len(s))
        over = facets.sign * (facets.height(own[s], x, y) - facets.height(f, x, y)) - _LOWER
        for value in (*(_side(facets, f, edge, x, y) for edge in range(4)), over):
            begin, end = _positive_interval(value, begin, end)
        some = end - begin > 1e-9
        hidden.append((s[some], begin[some], end[some]))
    s, begin, end = (np.concatenate(c) for c in zip(*hidden)) if hidden else (own[:0], low[:0, 0], low[:0, 0])
    clear = np.ones(len(segments), bool)
    clear[s] = False
    of, t0, t1 = _rest(s, begin, end)
    a, step = segments[of, 0], segments[of, 1] - segments[of, 0]
    parts = np.stack([a + t0[:, None] * step, a + t1[:, None] * step], axis=1)
    return np.concatenate([segments[clear], parts[(t1 - t0) * np.hypot(*step.T) > _SHORT]])


def _positive_interval(value: np.ndarray, begin: np.ndarray, end: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Narrow intervals of 0..1 to where the linear function with ``value`` (k, 2) at 0 and 1 is positive."""
    rise = value[:, 1] - value[:, 0]
    with np.errstate(divide="ignore", invalid="ignore"):
        root = -value[:, 0] / rise
    begin = np.where(rise > 0, np.maximum(begin, root), begin)
    end = np.where(rise < 0, np.minimum(end, root), end)
    end = np.where((rise == 0) & (value[:, 0] <= 0), begin, end)
    return begin, end


def _rest(of: np.ndarray, begin: np.ndarray, end: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """What intervals (k,) leave of the 0..1 they are ``of`` (k,): the number, beginning and end of each rest."""
    order = np.lexsort((begin, of))
    of, begin, end = of[order], begin[order], end[order]
    first = np.append(True, np.diff(of) != 0)[: len(of)]
    rank = 2.0 * np.cumsum(first)  # apart, so that one running maximum serves all
    covered = np.maximum.accumulate(end + rank) - rank
    before = np.where(first, 0.0, np.append(0.0, covered[:-1])[: len(of)])
    last = np.append(first[1:], True)[: len(of)]
    gap, after = np.flatnonzero(begin > before), np.flatnonzero(last & (covered < 1))
    beginnings, ends = np.append(before[gap], covered[after]), np.append(begin[gap], np.ones(len(after)))
    return np.append(of[gap], of[after]), beginnings, ends


def reach_needed(ring: np.ndarray, slopes: SideSlopes, boxes: Tuple[np.ndarray, np.ndarray]) -> float:
    """Metres from the ring (k, 3) within which slopes surely meet ground whose triangles have ``boxes``, (m, 3) each.

    At most the extent of the ground.
    """
    low, high = ring[:, :2].min(axis=0), ring[:, :2].max(axis=0)
    least, greatest = boxes
    sides = (low - greatest[:, :2], least[:, :2] - high)
    outside = np.maximum.reduce([side[:, axis] for side in sides for axis in (0, 1)]).clip(0)
    order = np.argsort(outside)
    distance = outside[order]
    top = np.maximum.accumulate(greatest[order, 2])
    bottom = np.minimum.accumulate(least[order, 2])
    most = float(max((low - least[:, :2]).max(), (greatest[:, :2] - high).max())) + 1
    reach = 1.0
    while True:
        last = max(0, int(np.searchsorted(distance, reach, "right")) - 1)
        rise, fall = top[last] - ring[:, 2].min(), ring[:, 2].max() - bottom[last]
        needed = max(slopes.cut_run * rise, slopes.fill_run * fall) * 1.01 + 0.5
        if needed <= reach or reach >= most:
            return min(reach, most)
        reach = needed
