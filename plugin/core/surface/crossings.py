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
from pathlib import Path
from typing import Iterable, List, Optional, Tuple

import numpy as np

from ..linework.constraints import Constraints
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .cells import candidate_pairs
from .network import Network
from .predicates import orientation
from .tin import GRID
from .touching import passing, share_along

CROSSING_LINES = Text(
    "crossing_lines",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: lines with different heights cross or meet at {count} places, the first at E {easting:.3f} N "
        "{northing:.3f}: {first} at {first_height:.3f} m and {second} at {second_height:.3f} m. "
        "Mend the lines, or choose a rule for crossings (mean, first).",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "{file}: lines with different heights cross or meet at E {easting:.3f} N {northing:.3f}: {first} at "
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
_ROUNDS = 60
_TOLD = 5e-4  # heights are told in millimetres: a smaller difference (m) where lines touch could not be seen


class CrossingRule(Enum):
    """Height where two lines cross. ``REFUSE`` takes the mean only within the tolerance."""

    REFUSE = "refuse"
    MEAN = "mean"
    FIRST = "first"


@dataclass(frozen=True)
class Conflict:
    """Two lines that cross or meet: place in the CRS (m), the height of each there, and their labels.

    Or a line and a survey point on it, whose label is its line in the survey's file.
    """

    easting: float
    northing: float
    first: str
    second: str
    first_height: float
    second_height: float

    @property
    def difference(self) -> float:
        return abs(self.first_height - self.second_height)


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
    told = _Told(network.origin, constraints, file, point_lines)
    network = _at_shared_places(network, rule, told)
    touches = network.touches[np.isfinite(network.z[network.touches[:, 1]])]  # lines without heights shape nothing
    network = replace(network, touches=np.empty((0, 2), np.int64))
    for _ in range(_ROUNDS):
        passed = _passed(network, touches)
        first, second = _apart(network, passed, *crossing_pairs(network))
        crossing = _cross_at(network, first, second)
        there = len(network.x)
        network, vertex = with_vertices(network, crossing.x, crossing.y, np.full(len(first), np.nan))
        meets = _meetings(network, first, second, vertex, passed)
        told.crossings(network, first, second, crossing)
        told.meetings(network, meets, there)
        if rule is CrossingRule.REFUSE:
            told.refuse(tolerance)
        if len(meets.segment) == 0:
            return Snapped(network, tuple(told.conflicts), tuple(told.on_points))
        network = _with_heights(network, meets, rule)
        network = with_splits(network, meets.segment, meets.along, meets.vertex)
        touches = np.empty((0, 2), np.int64)
    last = network.segments[meets.segment[0], 0]
    east, north = np.array([network.x[last], network.y[last]]) * GRID + network.origin
    raise SurveyError(RESTLESS, file=file, easting=float(east), northing=float(north))


@dataclass(frozen=True)
class _Meetings:
    """Segments that are to be split: ``segment``, ``vertex``, ``along`` (0..1) and the segment's ``height`` there."""

    segment: np.ndarray
    vertex: np.ndarray
    along: np.ndarray
    height: np.ndarray


def _passed(network: Network, touches: np.ndarray) -> np.ndarray:
    """Pairs (p, 2) of segments and vertices whose cells they run through, or which they met as given (``touches``)."""
    known = np.isfinite(network.z)
    known[network.segments] = True
    passed = np.column_stack(passing(network.x, network.y, network.segments, np.flatnonzero(known)))
    return np.unique(np.concatenate([passed, touches]), axis=0)


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
) -> _Meetings:
    """Crossings (segments ``first``, ``second`` at ``vertex``), what is ``passed``, and who passes the crossings."""
    more = np.column_stack(passing(network.x, network.y, network.segments, np.unique(vertex)))
    crossed = [np.column_stack([each, vertex]) for each in (first, second)]
    segment, at = np.unique(np.concatenate([passed, more, *crossed]), axis=0).T
    ends = network.segments[segment]
    other = np.all(ends != at[:, None], axis=1)
    segment, at, ends = segment[other], at[other], ends[other]
    along = share_along(network.x, network.y, ends, at)
    z = network.z[ends]
    return _Meetings(segment, at, along, z[:, 0] + along * (z[:, 1] - z[:, 0]))


def _owners(network: Network) -> np.ndarray:
    """The line (n,) that stands first of those that end at each vertex; -1 for survey points."""
    owner = np.full(len(network.x), np.iinfo(np.int64).max)
    for end in network.segments.T:
        np.minimum.at(owner, end, network.line)
    owner[network.source >= 0] = -1
    return owner


def _with_heights(network: Network, meets: _Meetings, rule: CrossingRule) -> Network:
    """The heights of the vertices where segments meet, by ``rule``; survey points keep theirs."""
    owner = _owners(network)
    own = np.unique(meets.vertex[np.isfinite(network.z[meets.vertex])])
    vertex = np.concatenate([own, meets.vertex])
    line = np.concatenate([owner[own], network.line[meets.segment]])
    height = np.concatenate([network.z[own], meets.height])
    passes = np.arange(len(vertex)) >= len(own)  # a line's own vertex speaks for it before what lies between its vertices
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


def _at_shared_places(network: Network, rule: CrossingRule, told: _Told) -> Network:
    """Vertices of several lines at one place: they have the mean; ``FIRST`` gives them that of the first line."""
    if len(network.shared) == 0:
        return network
    vertex, line, height = network.shared[:, 0].astype(np.int64), network.shared[:, 1].astype(np.int64), network.shared[:, 2]
    start = np.flatnonzero(np.append(True, np.diff(vertex) != 0))
    first = np.repeat(start, np.diff(np.append(start, len(vertex))))
    off = np.abs(height - height[first])
    apart = np.flatnonzero(off > _TOLD)
    told.pairs(network, vertex[apart], line[first[apart]], height[first[apart]], line[apart], height[apart])
    if rule is not CrossingRule.FIRST:
        return network
    z = network.z.copy()
    z[vertex[start]] = height[start]
    return replace(network, z=z)


class _Told:
    """What is told of places where lines meet."""

    def __init__(
        self, origin: np.ndarray, constraints: Constraints, file: str, point_lines: Optional[np.ndarray]
    ) -> None:
        self.conflicts: List[Conflict] = []
        self.on_points: List[Conflict] = []
        self._origin, self._constraints, self._file, self._point_lines = origin, constraints, file, point_lines

    def crossings(self, network: Network, first: np.ndarray, second: np.ndarray, at: _CrossAt) -> None:
        lines = network.line[first], network.line[second]
        self._add(self.conflicts, at.x, at.y, map(self._line, lines[0]), at.first_height, map(self._line, lines[1]), at.second_height)

    def pairs(
        self, network: Network, vertex: np.ndarray, line: np.ndarray, height: np.ndarray, other: np.ndarray, its: np.ndarray
    ) -> None:
        x, y = network.x[vertex], network.y[vertex]
        self._add(self.conflicts, x, y, map(self._line, line), height, map(self._line, other), its)

    def meetings(self, network: Network, meets: _Meetings, there: int) -> None:
        """Segments that touch vertices numbered below ``there`` at other heights."""
        off = np.abs(meets.height - network.z[meets.vertex]) > _TOLD
        some = np.flatnonzero(off & (meets.vertex < there))
        vertex, line, height = meets.vertex[some], network.line[meets.segment[some]], meets.height[some]
        of_point = network.source[vertex] >= 0
        lines = np.flatnonzero(~of_point)
        self.pairs(
            network, vertex[lines], _owners(network)[vertex[lines]], network.z[vertex[lines]], line[lines], height[lines]
        )
        vertex, line, height = vertex[of_point], line[of_point], height[of_point]
        point = map(self._point, network.source[vertex])
        self._add(
            self.on_points, network.x[vertex], network.y[vertex], map(self._line, line), height, point, network.z[vertex]
        )

    def refuse(self, tolerance: float) -> None:
        worst = [c for c in self.conflicts if c.difference > tolerance]
        if worst:
            raise SurveyError(CROSSING_LINES, file=self._file, count=len(worst), **vars(worst[0]))

    def _add(
        self, to: List[Conflict], x: np.ndarray, y: np.ndarray, first: Iterable[str], height: np.ndarray,
        second: Iterable[str], its: np.ndarray,
    ) -> None:  # fmt: skip
        east, north = (x * GRID + self._origin[0]).tolist(), (y * GRID + self._origin[1]).tolist()
        to += map(Conflict, east, north, first, second, height.tolist(), its.tolist())

    def _line(self, number: int) -> str:
        known = 0 <= number < len(self._constraints.lines)
        return (self._constraints.lines[number].label or f"#{number + 1}") if known else "-"

    def _point(self, number: int) -> str:
        line = number + 1 if self._point_lines is None else int(self._point_lines[number])
        return f"{Path(self._file).name}:{line}"


def crossing_pairs(network: Network) -> Tuple[np.ndarray, np.ndarray]:
    """Numbers of segments that properly cross, the earlier first, sorted, each pair once."""
    s, t = network.segments.T
    x, y = network.x, network.y
    if len(s) < 2:
        return np.empty(0, np.int64), np.empty(0, np.int64)
    found = []
    ends_x, ends_y = np.column_stack([x[s], x[t]]), np.column_stack([y[s], y[t]])
    for i, j in candidate_pairs(ends_x, ends_y, ends_x, ends_y, _cell(ends_x, ends_y)):
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
    """Crossings: the place on the grid and both heights."""

    x: np.ndarray
    y: np.ndarray
    first_height: np.ndarray
    second_height: np.ndarray


def _cross_at(network: Network, first: np.ndarray, second: np.ndarray) -> _CrossAt:
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
    return _CrossAt(*place, z[a] + t * (z[b] - z[a]), z[c] + u * (z[d] - z[c]))


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
