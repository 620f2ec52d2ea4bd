"""Where lines cross, touch or pass each other, and what is done about it.

Iterated snap rounding on the plan grid (Hobby 1999, "Practical segment intersection with finite precision output";
Halperin and Packer 2002, "Iterated snap rounding"). Segments that cross get a vertex at the place rounded to the grid.
A segment that runs through the cell of a vertex is split there: the square of one grid unit about it (half a unit
each way). What met before anything was rounded, within half a unit, is joined too, so whether a line ends
on another is not left to rounding. All this is done again until nothing is left to do; then lines meet
at their vertices only, and none passes another's vertex within half a unit. Decided in whole numbers.

Heights: all lines that meet at a place, whether they end there, pass or cross, count alike, each once: the rule chosen
says which height counts. Each place is told once, with the two heights that differ most. A survey point that a
line passes or ends on keeps its height; it is told. Lines that differ there are told or refused as anywhere.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum
from typing import Optional, Tuple

import numpy as np

from ..linework.constraints import Constraints
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .boxes import box_pairs
from .meetings import Conflict, Crossings, Meetings, Told, own_voices
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
    that pass or end on survey points at other heights; these have kept theirs.
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
        told.meetings(network, meets, there)
        told.crossings(network, first, second, vertex, crossing)
        if rule is CrossingRule.REFUSE:
            told.refuse(network, tolerance)
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
    return Snapped(network, tuple(told.conflicts(network)), tuple(told.on_points))


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
    own = own_voices(network, np.unique(meets.vertex))
    passing_by = np.column_stack([meets.vertex, network.line[meets.segment], meets.height])
    passing_by = passing_by[network.source[meets.vertex] < 0]
    voices = np.vstack([own, passing_by[np.isfinite(passing_by[:, 2])]])
    # a line's own vertex speaks for it before what lies between its vertices
    passes = np.arange(len(voices)) >= len(own)
    order = np.lexsort((voices[:, 2], passes, voices[:, 1], voices[:, 0]))
    voices, passes = voices[order], passes[order]
    first = np.append(True, np.any(np.diff(voices[:, :2], axis=0) != 0, axis=1))[: len(voices)]
    voices = voices[first | ~passes]
    rest = network.shared[~np.isin(network.shared[:, 0], meets.vertex)]
    return replace(network, z=_by_rule(network.z, voices, rule), shared=np.vstack([rest, voices]))


def _by_rule(z: np.ndarray, voices: np.ndarray, rule: CrossingRule) -> np.ndarray:
    """Heights ``z`` (n,) with those that lines give: vertex, line and height (v, 3), in that order.

    The first line's lowest, or the mean of the lines, each with the mean of what it has there.
    """
    if len(voices) == 0:
        return z
    z = z.copy()
    if rule is CrossingRule.FIRST:
        start = np.flatnonzero(np.append(True, np.diff(voices[:, 0]) != 0))
        z[voices[start, 0].astype(np.int64)] = voices[start, 2]
        return z
    start = np.flatnonzero(np.append(True, np.any(np.diff(voices[:, :2], axis=0) != 0, axis=1)))
    height = np.add.reduceat(voices[:, 2], start) / np.diff(np.append(start, len(voices)))
    vertex, height = (column[np.lexsort((height, voices[start, 0]))] for column in (voices[start, 0], height))
    start = np.flatnonzero(np.append(True, np.diff(vertex) != 0))  # heights in order: a sum free of the order of lines
    z[vertex[start].astype(np.int64)] = np.add.reduceat(height, start) / np.diff(np.append(start, len(vertex)))
    return z


def _at_shared_places(network: Network, rule: CrossingRule, told: Told) -> Network:
    """Vertices of several lines at one place have their heights by ``rule``; survey points keep theirs."""
    told.on_survey_points(network, network.shared)
    told.voices(network.shared)
    between_lines = network.shared[network.source[network.shared[:, 0].astype(np.int64)] < 0]
    return replace(network, z=_by_rule(network.z, between_lines, rule))


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
