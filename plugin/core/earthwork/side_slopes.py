"""The slopes that rise or fall from the rim of a platform, as plane facets.

From each edge of the rim runs a facet with the slope's grade square to the edge. At an outward corner, the gap
between two facets is filled by a fan of facets around the corner (a cone) or by carrying both on until they meet (a
mitre; a fan where its foot would be more than 3.3 times as far out as theirs). At an inward corner from which the rim
falls (of fill) or rises (of cut) so that facets would end above or below each other, there is a fan too. Where facets
overlap, at inward corners
and between arms of the rim, the lowest counts for slopes of cut, the highest for slopes of fill: the one that is
reached first.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import List, NoReturn, Optional, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..surface.boxes import box_pairs

BAD_RUN = Text(
    "earthwork.slope_run",
    QT_TRANSLATE_NOOP("core", "A slope of {run} (metres out for each metre up) cannot be graded; give more than 0."),
)

TOO_TILTED = Text(
    "earthwork.platform_tilted",
    QT_TRANSLATE_NOOP(
        "core",
        "The platform is too steep near E {easting:.3f} N {northing:.3f}: slopes of {run:g} metres out for each metre "
        "up or down run under or over its own edges there. Give steeper side slopes, or tilt the platform less.",
    ),
)

NO_ROOM = Text(
    "earthwork.slopes_without_room",
    QT_TRANSLATE_NOOP(
        "core",
        "There is no room for the slopes near E {easting:.3f} N {northing:.3f}: those of one part of the platform, "
        "{run:g} metres out for each metre up or down, run under or over the edge of another part. Give steeper side "
        "slopes, or bring the parts farther apart or nearer in height.",
    ),
)

#: Metres below which a length is none.
SHORT = 1e-6
_FAN_STEP = np.radians(10.0)  # a facet of a fan is 0.4 % steeper in its middle than at its sides
_LEAST_MITRE = 0.3  # of the flatter grade that the line where two facets meet must have to be carried on to
_MOST_STEP = 0.05  # of a slope's height: more between two facets at an inward corner of a plane is refused
_EVEN = 1e-9  # gradients that differ less are one
_STEEPEST = 0.84  # fall of an edge, over the grade, up to which a fan around its end goes: to 80 degrees from square
_NO_ANGLE = 1e-6  # between two rays of a fan: less makes no facet


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

    @property
    def carried(self) -> float:
        """Metres from a corner of the platform to the farthest place to which facets around it are carried on."""
        fan = (self.x[:, 2] == self.x[:, 3]) & (self.y[:, 2] == self.y[:, 3])
        away = np.hypot(self.x[fan] - self.base[fan, :1], self.y[fan] - self.base[fan, 1:2])
        return float(away.max(initial=0.0))

    def boxes(self) -> Tuple[np.ndarray, np.ndarray]:
        """South-west and north-east corners (f, 2)."""
        return (
            np.column_stack([self.x.min(axis=1), self.y.min(axis=1)]),
            np.column_stack([self.x.max(axis=1), self.y.max(axis=1)]),
        )

    def inward(self, f: np.ndarray, edge: int, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        """Metres by which places (k, m) are inside an ``edge`` of facets ``f`` (k,)."""
        after = (edge + 1) % 4
        px, py = self.x[f, edge][:, None], self.y[f, edge][:, None]
        dx, dy = self.x[f, after][:, None] - px, self.y[f, after][:, None] - py
        result: np.ndarray = (dx * (y - py) - dy * (x - px)) / np.maximum(np.hypot(dx, dy), 1e-300)
        return result

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
                inside &= self.inward(f, edge, xy[p, :1], xy[p, 1:])[:, 0] >= -SHORT
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
    ring: np.ndarray, sloped: np.ndarray, runs: np.ndarray, sign: float, reach: float, style: Corner,
    origin: np.ndarray,
) -> Facets:  # fmt: skip
    """Facets out to ``reach`` metres from the edges of a ring (k, 3) where ``sloped`` (k,), the platform on its left.

    ``runs``: (k,) metres out for each metre up or down. ``origin``: (3,) of the ring in the CRS.
    Raises SurveyError for a plane so steep that they cannot meet.
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
    plane = of_one_plane(ring)
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
        edges = normal[before], normal[i], gradient[[before, i]], grade[[before, i]]
        found, step = (_corner(*edges, style), 0.0) if turn >= 0 else _inward(*edges)
        if step > (_MOST_STEP * np.abs(edges[3]).min() if plane else _NO_ANGLE) and (plane or not found):
            refuse_slopes(v + origin, float(runs[[before, i]].max()), True)
        for fan, slope in found:
            last = v[:2] + reach * fan[1]
            corners.append(np.array([v[:2], v[:2] + reach * fan[0], last, last]))
            bases.append(v)
            gradients.append(slope)
    xy = np.array(corners).reshape(-1, 4, 2)
    return Facets(sign, xy[:, :, 0], xy[:, :, 1], np.array(bases).reshape(-1, 3), np.array(gradients).reshape(-1, 2))


def refuse_slopes(place: np.ndarray, run: float, tilted: bool) -> NoReturn:
    """Refuse slopes for which a platform is too steep (``tilted``), or its parts too near to each other, at a ``place``
    (2,) or more in the CRS."""
    text = TOO_TILTED if tilted else NO_ROOM
    raise SurveyError(text, easting=float(place[0]), northing=float(place[1]), run=run)


Fan = Tuple[Tuple[np.ndarray, np.ndarray], np.ndarray]


def _meeting_line(before: np.ndarray, after: np.ndarray, gradient: np.ndarray) -> np.ndarray:
    """Direction (2,), outward, of the line along which the facets of two edges are of one height."""
    difference = gradient[1] - gradient[0]
    line = np.array([-difference[1], difference[0]])
    line *= np.sign(line @ (before + after)) / max(float(np.hypot(*line)), 1e-300)
    return line


def _carried(meeting: np.ndarray, gradient: np.ndarray, grade: np.ndarray) -> Optional[np.ndarray]:
    """The ray (2,), for a reach of 1, to which facets are carried on along the line where they meet; None where that
    comes to the ground, if at all, much farther out than they do."""
    flatter = float(np.abs(grade).min())
    rise = float(np.sign(grade[0]) * (gradient[0] @ meeting))
    return meeting * flatter / rise if rise > _LEAST_MITRE * flatter else None


def _inward(before: np.ndarray, after: np.ndarray, gradient: np.ndarray, grade: np.ndarray) -> Tuple[List[Fan], float]:
    """What carries facets on to the line where they meet at an inward corner of edges that rise or fall, and the step
    (m for each metre out) that there would be between them without a cone around the corner.

    Between level edges that line is well within both facets, and nothing is needed. At a crest just in the corner, and
    where a ditch begins there, the facet that counts would end above or below the other.
    """
    nearer = np.sign(grade[0]) * (gradient[1] - gradient[0])
    early = np.array([nearer @ before, -nearer @ after])  # by how much each still counts at its own end
    if np.all(early <= _EVEN):
        return [], 0.0
    meeting = _meeting_line(before, after, gradient)
    ray = _carried(meeting, gradient, grade)
    if meeting @ before > 0 and meeting @ after > 0 and ray is not None:
        if early[1] <= _EVEN and _cross(before, meeting) > 0:
            return [((before, ray), gradient[0])], 0.0
        if early[0] <= _EVEN and _cross(meeting, after) > 0:
            return [((ray, after), gradient[1])], 0.0
    return _inward_cone(before, after, gradient, grade, early > _EVEN), float(early.max())


def _inward_cone(
    before: np.ndarray, after: np.ndarray, gradient: np.ndarray, grade: np.ndarray, early: np.ndarray
) -> List[Fan]:
    """The fan around an inward corner from where the facet of the one edge is of the cone's height to where that of the
    other is; none if their grades differ. Along an edge nearly as steep as the slopes, or steeper (as where a ditch
    begins), there is no such place, and the fan ends short of the edge.

    A facet is of the cone's height square to its edge, and again at an angle from there of which half has the tangent
    of its edge's fall away from the corner over the grade. ``early``: (2,) bool, which facets end above the other.
    """
    away = [np.array([-n[1], n[0]]) for n in (before, after)]  # along the edges, the way that the ring goes
    fall = np.array([-(gradient[0] @ away[0]), gradient[1] @ away[1]]) / grade
    if abs(grade[0] - grade[1]) > _EVEN:
        return []
    first, turn = float(np.arctan2(before[1], before[0])), float(np.arctan2(_cross(before, after), before @ after))
    last, around = first + turn, np.maximum(2 * np.arctan(np.minimum(fall, _STEEPEST)), -turn)
    marks = [first - around[0], last] if early[1] else []
    marks += [first, last + around[1]] if early[0] else []
    rays = [np.array(marks[:1])]
    for one, other in zip(marks, marks[1:]):
        count = int(np.ceil((other - one) / _FAN_STEP - 1e-9))
        if other - one > _NO_ANGLE:
            rays.append(one + (other - one) * np.arange(1, count + 1) / count)
    angle = np.concatenate(rays)
    return _fan(np.column_stack([np.cos(angle), np.sin(angle)]), np.full(len(angle), grade[0]))


def of_one_plane(ring: np.ndarray) -> bool:
    """Whether a ring (k, 3) lies on one plane, as a pad's does."""
    local = ring - ring.mean(axis=0)
    rise = np.linalg.lstsq(local[:, :2], local[:, 2], rcond=None)[0]
    return float(np.abs(local[:, :2] @ rise - local[:, 2]).max()) < SHORT


def _corner(before: np.ndarray, after: np.ndarray, gradient: np.ndarray, grade: np.ndarray, style: Corner) -> List[Fan]:
    """Triangles at an outward corner: their two rays from it (for a reach of 1) and their gradients.

    A fan goes from the ``grade`` (2,) of one edge to that of the other evenly with the angle.
    """
    if style is Corner.MITRE:
        meeting = _meeting_line(before, after, gradient)
        between = _cross(before, meeting) >= 0 and _cross(meeting, after) >= 0
        ray = _carried(meeting, gradient, grade)
        if between and ray is not None:
            return [((before, ray), gradient[0]), ((ray, after), gradient[1])]
    start = np.arctan2(before[1], before[0])
    sweep = (np.arctan2(after[1], after[0]) - start) % (2 * np.pi)
    count = max(1, int(np.ceil(sweep / _FAN_STEP - 1e-9)))
    share = np.arange(count + 1) / count
    angle = start + sweep * share
    rays = np.column_stack([np.cos(angle), np.sin(angle)])
    rays[0], rays[-1] = before, after
    return _fan(rays, grade[0] + share * (grade[1] - grade[0]))


def _fan(rays: np.ndarray, rise: np.ndarray) -> List[Fan]:
    """The triangles between ``rays`` (k, 2): the plane between two of them rises so (k,) along both."""
    return [((rays[k], rays[k + 1]), np.linalg.solve(rays[k : k + 2], rise[k : k + 2])) for k in range(len(rays) - 1)]


def _cross(one: np.ndarray, other: np.ndarray) -> float:
    return float(one[0] * other[1] - one[1] * other[0])


def reach_needed(
    ring: np.ndarray, slopes: SideSlopes, boxes: Tuple[np.ndarray, np.ndarray], farther: float = 1.0
) -> float:
    """Metres from the ring (k, 3) within which slopes surely meet ground whose triangles have ``boxes``, (m, 3) each.

    ``farther``: times as far as slopes square to an edge those around corners may go. At most the extent of the ground.
    """
    low, high = ring[:, :2].min(axis=0), ring[:, :2].max(axis=0)
    least, greatest = boxes
    sides = (low - greatest[:, :2], least[:, :2] - high)
    outside = np.maximum.reduce([side[:, axis] for side in sides for axis in (0, 1)]).clip(0)
    order = np.argsort(outside)
    distance = outside[order]
    top = np.maximum.accumulate(greatest[order, 2])
    bottom = np.minimum.accumulate(least[order, 2])
    most = float(np.hypot(*np.maximum(high - least[:, :2].min(axis=0), greatest[:, :2].max(axis=0) - low))) + 1
    reach = 1.0
    while True:
        last = max(0, int(np.searchsorted(distance, reach * farther, "right")) - 1)
        rise, fall = top[last] - ring[:, 2].min(), ring[:, 2].max() - bottom[last]
        needed = max(slopes.cut_run * rise, slopes.fill_run * fall) * 1.01 + 0.5
        if needed <= reach or reach >= most:
            return min(reach, most)
        reach = needed
