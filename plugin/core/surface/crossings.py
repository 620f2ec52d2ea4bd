"""Where lines cross, and what is done about it.

Exact: two segments cross if each has its ends strictly on both sides of the other. (A segment that
runs through a vertex, or ends on another segment, is no crossing; it is split at that vertex when
it is inserted.) The crossing point is rounded to the plan grid, which bends both segments by up to
0.07 mm; bent segments are checked again until none cross. Segments that keep crossing lie on each other
but for that rounding: they are joined at every vertex of one that the other passes within the
rounding, as in snap rounding (Hobby 1999, "Practical segment intersection with finite precision output").
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum
from typing import List, Tuple

import numpy as np

from ..linework.constraints import Constraints
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .boxes import box_pairs
from .cells import candidate_pairs
from .network import Network
from .predicates import orientation
from .tin import GRID

CROSSING_LINES = Text(
    "crossing_lines",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: {count} crossings of lines with different heights, the first at E {easting:.3f} N {northing:.3f}: "
        "{first} at {first_height:.3f} m and {second} at {second_height:.3f} m. "
        "Mend the lines, or choose a rule for crossings (mean, first).",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "{file}: lines with different heights cross at E {easting:.3f} N {northing:.3f}: {first} at "
        "{first_height:.3f} m and {second} at {second_height:.3f} m. Mend the lines, or choose a rule for "
        "crossings (mean, first).",
    ),
)
RESTLESS = Text(
    "crossings_do_not_end",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: lines run so close together near E {easting:.3f} N {northing:.3f} that splitting "
        "them at their crossings makes new ones. Remove one of them.",
    ),
)
_ROUNDS = 20


class CrossingRule(Enum):
    """Height where two lines cross. ``REFUSE`` takes the mean only within the tolerance."""

    REFUSE = "refuse"
    MEAN = "mean"
    FIRST = "first"


@dataclass(frozen=True)
class Conflict:
    """Two lines that cross: place in the CRS (m), the height of each there, and their labels."""

    easting: float
    northing: float
    first: str
    second: str
    first_height: float
    second_height: float


def split_crossings(
    network: Network, constraints: Constraints, rule: CrossingRule, tolerance: float, file: str
) -> Tuple[Network, Tuple[Conflict, ...]]:
    """Split segments where they cross, with a new vertex of the height that ``rule`` says.

    ``tolerance`` in metres. Returns all crossings met. Raises SurveyError under ``REFUSE`` when heights
    differ by more.
    """
    conflicts: List[Conflict] = []
    for attempt in range(_ROUNDS):
        first, second = crossing_pairs(network)
        if len(first) == 0:
            return network, tuple(conflicts)
        crossing = _cross_at(network, first, second)
        met = _conflicts(network, constraints, first, second, crossing)
        conflicts += met
        worst = [c for c in met if abs(c.first_height - c.second_height) > tolerance]
        if worst and rule is CrossingRule.REFUSE:
            c = worst[0]
            raise SurveyError(CROSSING_LINES, file=file, count=len(worst), **vars(c))
        crossed = np.unique(network.segments[np.concatenate([first, second])])
        added = len(network.x)
        network = _split(network, first, second, crossing, rule)
        if attempt > 0:
            network = _join_near(network, np.concatenate([crossed, np.arange(added, len(network.x))]))
    raise SurveyError(RESTLESS, file=file, easting=conflicts[-1].easting, northing=conflicts[-1].northing)


def crossing_pairs(network: Network) -> Tuple[np.ndarray, np.ndarray]:
    """Numbers of segments that properly cross, the earlier first, sorted, each pair once."""
    s, t = network.segments.T
    x, y = network.x, network.y
    if len(s) < 2:
        return np.empty(0, np.int64), np.empty(0, np.int64)
    found = []
    low, high = (np.column_stack([side(v[s], v[t]) for v in (x, y)]) for side in (np.minimum, np.maximum))
    for i, j in box_pairs(low, high, low, high):
        forward = i < j
        i, j = i[forward], j[forward]
        i, j = (v[_cross(x, y, s[i], t[i], s[j], t[j])] for v in (i, j))
        found.append(i * len(s) + j)
    both = np.unique(np.concatenate(found)) if found else np.empty(0, np.int64)
    return both // len(s), both % len(s)


def _cell(x: np.ndarray, y: np.ndarray) -> float:
    length = np.hypot(x[:, 1] - x[:, 0], y[:, 1] - y[:, 0])
    return float(max(length.mean(), 1.0))


def _cross(x: np.ndarray, y: np.ndarray, a: np.ndarray, b: np.ndarray, c: np.ndarray, d: np.ndarray) -> np.ndarray:
    side = [np.sign(orientation(x, y, *v)) for v in ((a, b, c), (a, b, d), (c, d, a), (c, d, b))]
    mask: np.ndarray = (side[0] * side[1] < 0) & (side[2] * side[3] < 0)
    return mask


@dataclass(frozen=True)
class _CrossAt:
    """Crossing places: parameters along both segments, whole-number place, both heights."""

    along_first: np.ndarray
    along_second: np.ndarray
    x: np.ndarray
    y: np.ndarray
    first_height: np.ndarray
    second_height: np.ndarray


def _cross_at(network: Network, first: np.ndarray, second: np.ndarray) -> _CrossAt:
    (a, b), (c, d) = network.segments[first].T, network.segments[second].T
    x, y, z = network.x, network.y, network.z
    ux, uy, vx, vy = x[b] - x[a], y[b] - y[a], x[d] - x[c], y[d] - y[c]
    wx, wy = x[c] - x[a], y[c] - y[a]
    area = (ux * vy - uy * vx).astype(float)
    t, u = (wx * vy - wy * vx) / area, (wx * uy - wy * ux) / area
    px, py = np.rint(x[a] + t * ux).astype(np.int64), np.rint(y[a] + t * uy).astype(np.int64)
    return _CrossAt(t, u, px, py, z[a] + t * (z[b] - z[a]), z[c] + u * (z[d] - z[c]))


def _conflicts(
    network: Network, constraints: Constraints, first: np.ndarray, second: np.ndarray, at: _CrossAt
) -> List[Conflict]:
    east, north = at.x * GRID + network.origin[0], at.y * GRID + network.origin[1]
    return [
        Conflict(
            float(east[k]), float(north[k]),
            _label(constraints, int(network.line[i])), _label(constraints, int(network.line[j])),
            float(at.first_height[k]), float(at.second_height[k]),
        )
        for k, (i, j) in enumerate(zip(first, second))
    ]  # fmt: skip


def _label(constraints: Constraints, line: int) -> str:
    return (constraints.lines[line].label or f"#{line + 1}") if line >= 0 else "-"


def _split(network: Network, first: np.ndarray, second: np.ndarray, at: _CrossAt, rule: CrossingRule) -> Network:
    if rule is CrossingRule.FIRST:  # the line that stands earlier in the constraints
        earlier = network.line[first] <= network.line[second]
        height = np.where(earlier, at.first_height, at.second_height)
    else:
        height = (at.first_height + at.second_height) / 2
    network, vertex = with_vertices(network, at.x, at.y, height)
    return with_splits(
        network,
        np.concatenate([first, second]),
        np.concatenate([at.along_first, at.along_second]),
        np.concatenate([vertex, vertex]),
    )


def _join_near(network: Network, vertices: np.ndarray) -> Network:
    """Split segments at those of ``vertices`` that they pass within half a grid step each way (0.07 mm)."""
    s, t = network.segments.T
    x, y = network.x, network.y
    ends_x, ends_y = np.column_stack([x[s], x[t]]) + 3, np.column_stack([y[s], y[t]]) + 3  # no place below 0
    around_x, around_y = x[vertices][:, None] + [1, 5, 3], y[vertices][:, None] + [2, 2, 6]  # triangles about them
    found = [np.empty((0, 2), np.int64)]
    for i, j in candidate_pairs(ends_x, ends_y, around_x, around_y, _cell(ends_x, ends_y)):
        v = vertices[j]
        ux, uy = (x[t[i]] - x[s[i]]).astype(float), (y[t[i]] - y[s[i]]).astype(float)
        beside = orientation(x, y, s[i], t[i], v).astype(float)
        along = ux * (x[v] - x[s[i]]) + uy * (y[v] - y[s[i]])
        square = ux * ux + uy * uy
        near = (2 * beside * beside <= square) & (along > 0) & (along < square) & (v != s[i]) & (v != t[i])
        found.append(np.column_stack([i, v])[near])
    segment, vertex = np.unique(np.concatenate(found), axis=0).T
    a, b = s[segment], t[segment]
    ux, uy = x[b] - x[a], y[b] - y[a]
    along = ((x[vertex] - x[a]) * ux + (y[vertex] - y[a]) * uy) / (ux * ux + uy * uy)
    return with_splits(network, segment, along, vertex)


def with_vertices(network: Network, x: np.ndarray, y: np.ndarray, z: np.ndarray) -> Tuple[Network, np.ndarray]:
    """Add vertices at grid places ``x, y`` (q,); a place that has one keeps it (and its height, if any).

    Returns the network and the vertex of each place. Several heights at a new place: the first counts.
    """
    key = np.concatenate([(network.x << 31) | network.y, (x << 31) | y])
    _, first, inverse = np.unique(key, return_index=True, return_inverse=True)
    new = np.sort(first[first >= len(network.x)])
    place = np.arange(len(key))
    place[new] = len(network.x) + np.arange(len(new))
    vertex = place[first][inverse.ravel()[len(network.x) :]]
    new -= len(network.x)
    added = replace(
        network,
        x=np.concatenate([network.x, x[new]]),
        y=np.concatenate([network.y, y[new]]),
        z=np.concatenate([network.z, z[new]]),
        source=np.concatenate([network.source, np.full(len(new), -1, np.int64)]),
    )
    bare = np.isnan(added.z[vertex])
    added.z[vertex[bare][::-1]] = z[bare][::-1]  # `added.z` is a new array: nothing given is changed
    return added, vertex


def with_splits(network: Network, segment: np.ndarray, along: np.ndarray, vertex: np.ndarray) -> Network:
    """Split ``segment`` numbers at ``vertex``, ordered by ``along`` (0..1); shapes (q,)."""
    touched = np.unique(segment)
    number = np.concatenate([segment, touched, touched])
    position = np.concatenate([along, np.full(len(touched), -1.0), np.full(len(touched), 2.0)])
    node = np.concatenate([vertex, network.segments[touched, 0], network.segments[touched, 1]])
    order = np.lexsort((position, number))
    number, node = number[order], node[order]
    step = (number[:-1] == number[1:]) & (node[:-1] != node[1:])
    pieces, of = np.column_stack([node[:-1], node[1:]])[step], number[:-1][step]
    keep = np.ones(len(network.segments), bool)
    keep[touched] = False
    columns = {
        name: np.concatenate([getattr(network, name)[keep], getattr(network, name)[of]])
        for name in ("kind", "line", "soft")
    }
    return replace(network, segments=np.concatenate([network.segments[keep], pieces]), **columns)
