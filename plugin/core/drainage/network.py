"""How much ground drains through each vertex, and the channels and ridges where much does, as lines."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Tuple

import numpy as np

from ..progress import Progress, silent
from .boundaries import watersheds
from .fates import Fates, find_first_vertices
from .flow import Flow
from .ponds import Ponds
from .steps import first_stretches


@dataclass(frozen=True)
class Drained:
    """``area``: (n,) m² in plan that drains through each vertex, its own included; ``next``: (n,) vertex to which its
    water comes next, itself where it ends or leaves. ``through``: (n,) the saddle over which water of a hollow
    that lets it pass goes on, -1 for other vertices."""

    area: np.ndarray
    next: np.ndarray
    through: np.ndarray


@dataclass(frozen=True)
class Lines:
    """k lines: ``xyz`` (p, 3) metres from ``origin``, and height; line i is ``xyz[start[i]:start[i + 1]]``, in the
    order of the water. ``area``: (k,) m² that drains through its ``last`` vertex (k,); nan and -1 for ridges."""

    xyz: np.ndarray
    start: np.ndarray
    area: np.ndarray
    last: np.ndarray
    origin: np.ndarray

    def __len__(self) -> int:
        return len(self.area)

    def line(self, i: int) -> np.ndarray:
        """Places (q, 3) of line i in metres of the CRS."""
        xyz = self.xyz[self.start[i] : self.start[i + 1]].copy()
        xyz[:, :2] += self.origin
        return xyz


def drained_areas(
    flow: Flow,
    ponds: Optional[Ponds] = None,
    overflow: bool = False,
    progress: Progress = silent,
    firsts: Optional[Fates] = None,
) -> Drained:
    """Add up the ground along the way of its water, exactly.

    ``firsts``: what ``find_first_vertices`` finds for ``flow``, where it is known already; for all functions here.

    Pits keep their water without ``ponds``. With them, hollows that do not count as ponds let it pass, with
    ``overflow`` all do: from the pit straight across the water to the brim and on.
    """
    return _drained(firsts or find_first_vertices(flow, progress), ponds, overflow)


def channel_lines(
    flow: Flow,
    min_area: float,
    ponds: Optional[Ponds] = None,
    overflow: bool = False,
    progress: Progress = silent,
    firsts: Optional[Fates] = None,
) -> Lines:
    """Lines of the water where at least ``min_area`` m² drain: from heads and confluences to the next or the end.

    ``ponds``, ``overflow``: which hollows let water pass, as in ``drained_areas``.
    """
    return _lines(flow, drained_areas(flow, ponds, overflow, progress, firsts), min_area)[0]


def ridge_lines(
    flow: Flow,
    min_area: float,
    ponds: Optional[Ponds] = None,
    overflow: bool = False,
    progress: Progress = silent,
    firsts: Optional[Fates] = None,
) -> Lines:
    """Lines between the grounds of different channels, those of ``channel_lines`` with the same settings.

    That is exactly where water parts. Left out is what divides the ground of a channel from that of the one it
    runs into, which is no ridge. All ground that drains to none of the channels counts as one. ``area`` is nan.
    """
    firsts = firsts or find_first_vertices(flow, progress)
    drained = _drained(firsts, ponds, overflow)
    lines, of_vertex = _lines(flow, drained, min_area)
    goal = np.where(of_vertex >= 0, np.arange(len(of_vertex)), drained.next)
    while True:
        farther = goal[goal]
        if np.array_equal(farther, goal):
            break
        goal = farther
    # Grounds by the number of their line, counted from 1; 0 is all the rest.
    ground = np.zeros(firsts.count, np.int64)
    ground[: len(goal)] = of_vertex[goal] + 1
    one, other, segments = watersheds(firsts, ground[firsts.end])
    into = np.append(-1, of_vertex[lines.last] + 1)
    into[into == 0] = -1
    return _joined(flow, segments[(into[one] != other) & (into[other] != one)])


def rim_outlets(
    flow: Flow,
    min_area: float,
    ponds: Optional[Ponds] = None,
    overflow: bool = False,
    progress: Progress = silent,
    firsts: Optional[Fates] = None,
) -> np.ndarray:
    """Mask (n,) of vertices through which at least ``min_area`` m² drain, and from which water leaves over an edge of
    the rim without coming to another vertex. ``ponds``, ``overflow``: as in ``drained_areas``."""
    firsts = firsts or find_first_vertices(flow, progress)
    leaves = (firsts.vertex == firsts.rim) & ~flow.on_rim
    outlets: np.ndarray = leaves & (_drained(firsts, ponds, overflow).area >= min_area)
    return outlets


def _drained(firsts: Fates, ponds: Optional[Ponds], overflow: bool) -> Drained:
    flow, n = firsts.flow, len(firsts.vertex)
    area = np.bincount(firsts.end, firsts.area, firsts.count)[:n]
    after = np.where(firsts.vertex < n, firsts.vertex, np.arange(n))
    through = np.full(n, -1, np.int64)
    if ponds is not None:
        passages = ponds.passages(flow, overflow)
        through, after = passages.saddle, np.where(passages.to >= 0, passages.to, after)
    return Drained(_summed(area, after), after, through)


def _summed(area: np.ndarray, after: np.ndarray) -> np.ndarray:
    """Sum (n,) of ``area`` over all vertices from which one comes to each by going ``after`` (n,), itself at an end."""
    total = area.astype(float)
    jump = np.where(after == np.arange(len(after)), -1, after)
    while True:
        # By now a total holds all that is fewer steps away than a jump is long; add what is up to twice as far.
        on = np.flatnonzero(jump >= 0)
        if len(on) == 0:
            return total
        total = total + np.bincount(jump[on], total[on], len(total))
        jump[on] = jump[jump[on]]


def _lines(flow: Flow, drained: Drained, min_area: float) -> Tuple[Lines, np.ndarray]:
    """The lines, and the line (n,) that each vertex is on (at a confluence the one that begins there), -1 none."""
    n = len(drained.area)
    carries = (drained.area >= min_area) & (drained.area > 0)
    moves = carries & (drained.next != np.arange(n))
    come = np.bincount(drained.next[moves], minlength=n)
    # Water that leaves over a rim edge or into an inlet has a last stretch, though no next vertex.
    goes_on = carries & ~flow.on_rim & (flow.vertex_sink < 0)
    goes_on &= (flow.down_vertex >= 0) | (flow.down_edge >= 0) | (drained.through >= 0)
    heads = np.flatnonzero(goes_on & (come != 1))
    stretches, number = _stretches(flow, drained, np.flatnonzero(goes_on)), np.cumsum(goes_on) - 1
    goes, moving, single, on = (a.tolist() for a in (drained.next, moves, come == 1, goes_on))
    of_vertex = np.full(n, -1, np.int64)
    parts: List[np.ndarray] = []
    ends: List[int] = []
    for head in heads.tolist():
        at, line, passed = head, [flow.tin.vertices[head : head + 1]], [head]
        while on[at]:
            line.append(stretches[number[at]])
            if not moving[at]:
                break
            at = goes[at]
            if not single[at]:
                break
            passed.append(at)
        of_vertex[passed] = len(parts)
        parts.append(np.concatenate(line))
        ends.append(at)
    last = np.array(ends, np.int64)
    return _packed(flow, parts, drained.area[last], last), of_vertex


def _packed(flow: Flow, parts: List[np.ndarray], area: np.ndarray, last: np.ndarray) -> Lines:
    start = np.append(0, np.cumsum([len(p) for p in parts])).astype(np.int64)
    return Lines(np.concatenate(parts) if parts else np.empty((0, 3)), start, area, last, flow.tin.origin)


def _joined(flow: Flow, segments: np.ndarray) -> Lines:
    """Segments (s, 2, 3) joined to lines as long as can be without a branch; rings are closed."""
    places, number = np.unique(segments.reshape(-1, 3), axis=0, return_inverse=True)
    ends = number.reshape(-1, 2)
    degree = np.bincount(ends.ravel(), minlength=len(places))
    order = np.argsort(ends.ravel(), kind="stable")
    first = (np.cumsum(degree) - degree).tolist()
    beside, sides, fork, many = (order // 2).tolist(), ends.tolist(), (degree != 2).tolist(), degree.tolist()
    left = [True] * len(segments)
    parts: List[np.ndarray] = []
    for start in [*np.flatnonzero(degree != 2).tolist(), *np.flatnonzero(degree == 2).tolist()]:
        for begin in beside[first[start] : first[start] + many[start]]:
            going, at, line = [begin] if left[begin] else [], start, [start]
            while going:
                left[going[0]] = False
                a, b = sides[going[0]]
                at = b if a == at else a
                line.append(at)
                going = [] if fork[at] else [s for s in beside[first[at] : first[at] + 2] if left[s]]
            if len(line) > 1:
                parts.append(places[line])
    return _packed(flow, parts, np.full(len(parts), np.nan), np.full(len(parts), -1, np.int64))


def _stretches(flow: Flow, drained: Drained, vertex: np.ndarray) -> Tuple[np.ndarray, ...]:
    """Places (q, 3) after each ``vertex`` (k,) up to the one its water comes to next."""
    result = first_stretches(flow, vertex)
    for i in np.flatnonzero(drained.through[vertex] >= 0):
        way = [drained.through[vertex[i]], drained.next[vertex[i]]]
        result[i] = flow.tin.vertices[way if way[0] != way[1] else way[:1]]
    return tuple(result)
