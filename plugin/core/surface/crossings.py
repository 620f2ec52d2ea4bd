"""Where lines cross, touch or pass each other, and what is done about it.

Iterated snap rounding on the plan grid (Hobby 1999, "Practical segment intersection with finite precision output";
Halperin and Packer 2002, "Iterated snap rounding"). Segments that cross get a vertex at the place rounded to the grid.
A segment that runs through the cell of a vertex is split there: the square of one grid unit about it (half a unit
each way). What met before anything was rounded, within half a unit, is joined too, so whether a line ends
on another is not left to rounding. All this is done again until nothing is left to do; then lines meet
at their vertices only, and none passes another's vertex within half a unit. Decided in whole numbers.

Heights: where lines meet the rule chosen says which counts, and every difference is told with both heights. A survey
point that a line passes keeps its height.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum
from typing import Optional, Tuple

import numpy as np

from ..linework.constraints import Constraints
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .boxes import box_pairs
from .meetings import TOLD, Conflict, Crossings, Meetings, Told, owners_of
from .network import Network
from .predicates import orientation
from .splits import with_splits, with_vertices
from .tin import GRID
from .touching import passing, share_along

RESTLESS = Text(
    "crossings_do_not_end",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: lines run so close together near E {easting:.3f} N {northing:.3f} that splitting "
        "them at their crossings makes new ones. Remove one of them.",
    ),
)
_ROUNDS = 60


class CrossingRule(Enum):
    """Height where two lines cross. ``REFUSE`` takes the mean only within the tolerance."""

    REFUSE = "refuse"
    MEAN = "mean"
    FIRST = "first"


@dataclass(frozen=True)
class Snapped:
    """Lines that meet at vertices only.

    ``conflicts``: every crossing, and the other places where lines meet at different heights. ``on_points``: lines
    that pass survey points at other heights; these have kept theirs.
    """

    network: Network
    conflicts: Tuple[Conflict, ...]
    on_points: Tuple[Conflict, ...]


def split_crossings(
    network: Network, constraints: Constraints, rule: CrossingRule, tolerance: float, file: str,
    point_lines: Optional[np.ndarray] = None,
) -> Snapped:  # fmt: skip
    """Split segments where they cross, meet or pass vertices; heights there as ``rule`` says.

    ``tolerance`` in metres. ``point_lines``: the line in the file of each survey point. Raises SurveyError under
    ``REFUSE`` when heights of lines differ by more.
    """
    told = Told(network.origin, constraints, file, point_lines)
    network = _at_shared_places(network, rule, told)
    fresh = 0  # segments numbered from here on have changed since what they meet was last looked for
    for _ in range(_ROUNDS if len(network.segments) else 0):
        passed = _passed(network, fresh)
        first, second = _apart(network, passed, *crossing_pairs(network, fresh))
        crossing = _cross_at(network, first, second)
        there = len(network.x)
        network, vertex = with_vertices(network, crossing.x, crossing.y, np.full(len(first), np.nan))
        meets = _meetings(network, first, second, vertex, passed)
        told.crossings(network, first, second, crossing)
        told.meetings(network, meets, there)
        if rule is CrossingRule.REFUSE:
            told.refuse(tolerance)
        if len(meets.segment) == 0:
            break
        fresh = len(network.segments) - len(np.unique(meets.segment))
        network = _with_heights(network, meets, rule)
        network = with_splits(network, meets.segment, meets.along, meets.vertex)
    else:
        if len(network.segments):
            east, north = (column[network.segments[-1, 0]] * GRID for column in (network.x, network.y))
            place = {"easting": float(east + network.origin[0]), "northing": float(north + network.origin[1])}
            raise SurveyError(RESTLESS, file=file, **place)
    return Snapped(network, tuple(told.conflicts), tuple(told.on_points))


def _passed(network: Network, fresh: int) -> np.ndarray:
    """Pairs (p, 2) of segments, from number ``fresh`` on, and vertices whose cells they run through."""
    if network.touches is not None:  # but vertices of lines without heights shape nothing
        return network.touches[np.isfinite(network.z[network.touches[:, 1]])]
    known = np.isfinite(network.z)
    known[network.segments] = True
    segment, vertex = passing(network.x, network.y, network.segments[fresh:], np.flatnonzero(known))
    return np.column_stack([segment + fresh, vertex])


def _apart(
    network: Network, passed: np.ndarray, first: np.ndarray, second: np.ndarray
) -> Tuple[np.ndarray, np.ndarray]:
    """The pairs of segments that cross, but for those of which one passes an end of the other: they meet there."""
    n = len(network.x)
    key = np.sort(passed[:, 0] * n + passed[:, 1])
    meets = np.zeros(len(first), bool)
    for one, other in ((first, second), (second, first)):
        for end in network.segments[other].T:
            wanted = one * n + end
            place = np.searchsorted(key, wanted)
            meets |= np.append(key, -1)[place] == wanted
    return first[~meets], second[~meets]


def _meetings(
    network: Network, first: np.ndarray, second: np.ndarray, vertex: np.ndarray, passed: np.ndarray
) -> Meetings:
    """Crossings (segments ``first``, ``second`` at ``vertex``), what is ``passed``, and who passes the crossings."""
    more = np.column_stack(passing(network.x, network.y, network.segments, np.unique(vertex)))
    crossed = [np.column_stack([each, vertex]) for each in (first, second)]
    segment, at = np.unique(np.concatenate([passed, more, *crossed]), axis=0).T
    ends = network.segments[segment]
    other = np.all(ends != at[:, None], axis=1)
    segment, at, ends = segment[other], at[other], ends[other]
    along = share_along(network.x, network.y, ends, at)
    z = network.z[ends]
    return Meetings(segment, at, along, z[:, 0] + along * (z[:, 1] - z[:, 0]))


def _with_heights(network: Network, meets: Meetings, rule: CrossingRule) -> Network:
    """The heights of the vertices where segments meet, by ``rule``; survey points keep theirs."""
    owner = owners_of(network)
    own = np.unique(meets.vertex[np.isfinite(network.z[meets.vertex])])
    vertex = np.concatenate([own, meets.vertex])
    line = np.concatenate([owner[own], network.line[meets.segment]])
    height = np.concatenate([network.z[own], meets.height])
    passes = np.arange(len(vertex)) >= len(
        own
    )  # a line's own vertex speaks for it before what lies between its vertices
    order = np.lexsort((height, passes, line, vertex))
    order = order[np.isfinite(height[order]) & (network.source[vertex[order]] < 0)]
    vertex, line, height = vertex[order], line[order], height[order]
    once = np.append(True, (np.diff(vertex) != 0) | (np.diff(line) != 0))[: len(vertex)]  # each line has one voice
    vertex, height = vertex[once], height[once]
    start = np.flatnonzero(np.append(True, np.diff(vertex) != 0)[: len(vertex)])
    z = network.z.copy()
    if rule is CrossingRule.FIRST:
        z[vertex[start]] = height[start]
    elif len(start):
        z[vertex[start]] = np.add.reduceat(height, start) / np.diff(np.append(start, len(vertex)))
    return replace(network, z=z)


def _at_shared_places(network: Network, rule: CrossingRule, told: Told) -> Network:
    """Vertices of several lines at one place: they have the mean; ``FIRST`` gives them that of the first line."""
    if len(network.shared) == 0:
        return network
    vertex, line, height = (
        network.shared[:, 0].astype(np.int64),
        network.shared[:, 1].astype(np.int64),
        network.shared[:, 2],
    )
    start = np.flatnonzero(np.append(True, np.diff(vertex) != 0))
    first = np.repeat(start, np.diff(np.append(start, len(vertex))))
    off = np.abs(height - height[first])
    apart = np.flatnonzero(off > TOLD)
    told.pairs(network, vertex[apart], line[first[apart]], height[first[apart]], line[apart], height[apart])
    if rule is not CrossingRule.FIRST:
        return network
    z = network.z.copy()
    z[vertex[start]] = height[start]
    return replace(network, z=z)


def crossing_pairs(network: Network, fresh: int = 0) -> Tuple[np.ndarray, np.ndarray]:
    """Numbers of segments that properly cross, the earlier first, sorted, each pair once.

    Only pairs of which the later is numbered ``fresh`` or above.
    """
    s, t = network.segments.T
    x, y = network.x, network.y
    if len(s) < 2:
        return np.empty(0, np.int64), np.empty(0, np.int64)
    found = [np.empty(0, np.int64)]
    low, high = (np.column_stack([side(v[s], v[t]) for v in (x, y)]) for side in (np.minimum, np.maximum))
    for i, j in box_pairs(low, high, low[fresh:], high[fresh:]):
        j = j + fresh
        forward = i < j
        i, j = i[forward], j[forward]
        i, j = (v[_cross(x, y, s[i], t[i], s[j], t[j])] for v in (i, j))
        found.append(i * len(s) + j)
    both = np.unique(np.concatenate(found))
    return both // len(s), both % len(s)


def _cross(x: np.ndarray, y: np.ndarray, a: np.ndarray, b: np.ndarray, c: np.ndarray, d: np.ndarray) -> np.ndarray:
    side = [np.sign(orientation(x, y, *v)) for v in ((a, b, c), (a, b, d), (c, d, a), (c, d, b))]
    mask: np.ndarray = (side[0] * side[1] < 0) & (side[2] * side[3] < 0)
    return mask


def _cross_at(network: Network, first: np.ndarray, second: np.ndarray) -> Crossings:
    (a, b), (c, d) = network.segments[first].T, network.segments[second].T
    x, y, z = network.x, network.y, network.z
    ux, uy, vx, vy = x[b] - x[a], y[b] - y[a], x[d] - x[c], y[d] - y[c]
    wx, wy = x[c] - x[a], y[c] - y[a]
    area, over, under = ux * vy - uy * vx, wx * vy - wy * vx, wx * uy - wy * ux
    t, u = over / area.astype(float), under / area.astype(float)
    place = []
    for start, step in ((x[a], ux), (y[a], uy)):
        exact = start + t * step
        whole = np.rint(exact).astype(np.int64)
        # near the middle between two grid lines a float can't tell: half up, in Python's whole numbers
        for k in np.flatnonzero(np.abs(np.abs(exact - whole) - 0.5) < 1e-3):
            top, bottom = int(over[k]) * int(step[k]), int(area[k])
            whole[k] = int(start[k]) + (2 * top + bottom) // (2 * bottom)
        place.append(whole)
    return Crossings(place[0], place[1], z[a] + t * (z[b] - z[a]), z[c] + u * (z[d] - z[c]))
