"""Where the water of every part of every triangle ends: an exact division of the surface.

The water on one line of steepest descent stays together, so a triangle is divided along such lines only, into strips
between two stream values (:mod:`.flow`). Triangles are taken from the bottom up: once it is known how the water
that leaves over a triangle's edges ends, the strips of the triangle follow, and with them its upper edges. Areas
of strips are exact, and add up to the triangle's.

Where triangles pass water around in a circle (some of each one's water to the next, as a spiral does) there is no
bottom: at one edge of the circle, the one whose middle is lowest, ends are then found by following ``_SAMPLES`` paths
and halving between those that end elsewhere, so a strip narrower than 1 / ``_SAMPLES`` of that edge can be missed.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Tuple

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

from ..progress import Progress, silent
from ..surface.cells import runs
from ..surface.mesh import following
from .flow import CROSS, RIM, SINK, VERTEX, Flow
from .steps import Ends, PathEnd, State, find_ends, start_along

_SAMPLES, _HALVINGS = 32, 40
_NARROW = 1e-14  # share of an edge below which a strip is rounding


@dataclass(frozen=True)
class Fates:
    """Ends of all water, by numbers: a vertex (a pit or of the rim), ``rim`` (over a rim edge), ``nowhere`` (not
    decided for rounding, or no surface), ``first_inlet`` + number of the inlet.

    ``vertex``: (n,) end of water that comes to each vertex. Strips, p of them, by triangle, then stream value:
    ``triangle`` (p,), between the stream values ``low`` and ``high`` (p,), with their ``end`` (p,) and plan ``area``
    (p,), m². ``start``: (m + 1,) strips of triangle t are ``start[t]`` to ``start[t + 1]``. ``cuts``: circles opened.
    """

    flow: Flow
    vertex: np.ndarray
    triangle: np.ndarray
    low: np.ndarray
    high: np.ndarray
    end: np.ndarray
    area: np.ndarray
    start: np.ndarray
    cuts: int

    @property
    def rim(self) -> int:
        return len(self.vertex)

    @property
    def nowhere(self) -> int:
        return len(self.vertex) + 1

    @property
    def first_inlet(self) -> int:
        return len(self.vertex) + 2

    @property
    def count(self) -> int:
        """How many numbers of ends there are."""
        return self.first_inlet + int(self.flow.sink.max(initial=-1)) + 1


def find_fates(flow: Flow, progress: Progress = silent, stops: Optional[np.ndarray] = None) -> Fates:
    """Divide the surface by where its water ends; ``progress`` is called with stage ``"catchments"``.

    ``stops``: (n,) bool, vertices at which water ends too, such as the last ones before the rim.
    """
    return _swept(_Sweep(flow, np.zeros(len(flow.rank), bool) if stops is None else stops), progress)


def find_first_vertices(flow: Flow, progress: Progress = silent) -> Fates:
    """As ``find_fates``, but water ends at the first vertex it comes to, also along a channel.

    Then ``vertex`` (n,) is the next end of water at each vertex, for pits and on the rim the vertex itself.
    """
    return _swept(_Sweep(flow, np.ones(len(flow.rank), bool), to_first_vertex=True), progress)


def _swept(sweep: _Sweep, progress: Progress) -> Fates:
    ready = sweep.begin()
    while True:
        while len(ready):
            ready = sweep.settle(sweep.divide(ready))
        progress(0.9 * sweep.done / max(1, len(sweep.divided)), "catchments")
        open_edges = sweep.circles()
        if len(open_edges) == 0:
            break
        ready = sweep.settle(sweep.sample(open_edges))
    fates = sweep.result()
    progress(1.0, "catchments")
    return fates


class _Pool:
    """Growing columns."""

    def __init__(self, *types: type) -> None:
        self.size = 0
        self.columns: List[np.ndarray] = [np.empty(1 << 16, kind) for kind in types]

    def add(self, *values: np.ndarray) -> int:
        """Append rows; the number of the first."""
        first, self.size = self.size, self.size + len(values[0])
        if self.size > len(self.columns[0]):
            room = 2 * self.size
            self.columns = [np.concatenate([c[:first], np.empty(room - first, c.dtype)]) for c in self.columns]
        for column, value in zip(self.columns, values):
            column[first : self.size] = value
        return first


class _Sweep:
    """The state of the work: which edges and vertices are known, and the pieces of the known edges.

    The pieces of half-edge h, for water that leaves over it, are rows ``first[h]`` to ``first[h] + count[h]`` of
    ``pieces``: the share of the edge up to which each reaches, and its end. ``count`` is 0 while not known.
    """

    def __init__(self, flow: Flow, stops: np.ndarray, to_first_vertex: bool = False) -> None:
        self.flow, self.stops, self.to_first_vertex = flow, stops, to_first_vertex
        n, m = len(flow.rank), len(flow.level)
        self.rim, self.nowhere, self.first_inlet = n, n + 1, n + 2
        self.first, self.count = np.zeros(3 * m, np.int64), np.zeros(3 * m, np.int32)
        self.pieces, self.strips = _Pool(np.float64, np.int64), _Pool(np.int64, np.float64, np.float64, np.int64)
        self.divided = flow.level | (flow.sink >= 0)  # these have one end, and pass no water through
        self.done = self.cuts = 0
        self.out = flow.out.ravel() & ~np.repeat(self.divided, 3)
        self.vertex, self.root = self._vertices()

    # ---------------------------------------------------------------------------- what is known at once

    def _vertices(self) -> Tuple[np.ndarray, np.ndarray]:
        """End (n,) of each vertex, -1 not known; and the vertex (n,) on which it depends, itself if on an edge."""
        flow = self.flow
        n = len(flow.rank)
        end, after = np.full(n, -1, np.int64), flow.down_vertex.copy()
        edge = flow.down_edge
        crossing = np.flatnonzero(edge >= 0)
        beyond, target = flow.beyond[edge[crossing]], flow.target[edge[crossing]]
        after[crossing[beyond == VERTEX]] = target[beyond == VERTEX]
        end[crossing[beyond == RIM]] = self.rim
        end[crossing[beyond == SINK]] = self.first_inlet + target[beyond == SINK]
        pits = flow.pits
        end[pits] = pits
        end[self.stops] = np.flatnonzero(self.stops)
        end[flow.on_rim] = np.flatnonzero(flow.on_rim)
        caught = np.flatnonzero(flow.vertex_sink >= 0)
        end[caught] = self.first_inlet + flow.vertex_sink[caught]
        end[~flow.used] = self.nowhere
        if self.to_first_vertex:
            return np.where((flow.vertex_sink >= 0) | ~flow.used, end, np.arange(n)), np.arange(n)
        root = np.where((end >= 0) | (after < 0), np.arange(n), after)
        while True:
            farther = root[root]
            if np.array_equal(farther, root):
                return end, root
            root = farther

    def begin(self) -> np.ndarray:
        """Enter the edges known at once; triangles that can be divided."""
        flow = self.flow
        self.pending = self.out.reshape(-1, 3).sum(axis=1)
        out = np.flatnonzero(self.out)
        beyond, target = flow.beyond[out], flow.target[out]
        to_root = np.where(beyond == VERTEX, self.root[np.maximum(target, 0)], 0)
        end = np.where(beyond == VERTEX, self.vertex[to_root], -1)
        end = np.where(beyond == RIM, self.rim, end)
        end = np.where(beyond == SINK, self.first_inlet + target, end)
        waits = np.flatnonzero((beyond == VERTEX) & (end < 0))
        waits = waits[np.argsort(to_root[waits], kind="stable")]
        self.edge_of_root, self.roots = out[waits], to_root[waits]
        on_edge = np.flatnonzero((self.vertex < 0) & (self.root == np.arange(len(self.root))))
        on_edge = on_edge[np.argsort(flow.down_edge[on_edge], kind="stable")]
        self.vertex_on, self.edges_down = on_edge, flow.down_edge[on_edge]
        known = np.flatnonzero(end >= 0)
        self._enter(out[known], end[known])
        return self.settle(out[known])

    def _enter(self, edge: np.ndarray, end: np.ndarray) -> None:
        """Make the whole of each ``edge`` (k,) end at ``end`` (k,)."""
        self.first[edge] = self.pieces.add(np.ones(len(edge)), end) + np.arange(len(edge))
        self.count[edge] = 1

    # ----------------------------------------------------------------------------------------- the sweep

    def settle(self, edge: np.ndarray) -> np.ndarray:
        """Tell those that wait for each newly known ``edge``: vertices, edges to them, triangles; which are ready."""
        changed = []
        while len(edge):
            changed.append(edge // 3)
            vertex, on = _matches(self.edges_down, self.vertex_on, edge)
            self.vertex[vertex] = self._end_at(on, start_along(self.flow, on))
            edge, root = _matches(self.roots, self.edge_of_root, vertex)
            self._enter(edge, self.vertex[root])
        if not changed:
            return np.empty(0, np.int64)
        triangle = np.concatenate(changed)
        if len(triangle) > len(self.pending) // 8:
            self.pending -= np.bincount(triangle, minlength=len(self.pending))
        else:
            np.subtract.at(self.pending, triangle, 1)
        triangle = np.unique(triangle)
        return triangle[(self.pending[triangle] == 0) & ~self.divided[triangle]]

    def _end_at(self, edge: np.ndarray, along: np.ndarray) -> np.ndarray:
        """End (k,) of water over known half-edges ``edge`` (k,) at the share ``along`` (k,)."""
        reach, end = self.pieces.columns
        row, last = self.first[edge].copy(), self.first[edge] + self.count[edge] - 1
        while True:
            on = (row < last) & (reach[row] < along)
            if not np.any(on):
                return end[row]
            row[on] += 1

    def divide(self, triangle: np.ndarray) -> np.ndarray:
        """Divide triangles whose water is known at all edges it leaves by; half-edges beyond newly known."""
        self.divided[triangle] = True
        self.done += len(triangle)
        row, high, end = self._strips(triangle)
        number = np.bincount(row, minlength=len(triangle))
        begin = np.cumsum(number) - number
        stream = self.flow.stream[triangle]
        low = np.append(0.0, high[:-1])
        low[begin] = stream.min(axis=1)
        self.strips.add(triangle[row], low, high, end)
        twin = self.flow.twin.reshape(-1, 3)[triangle]
        entered = (twin >= 0) & self.out[twin] & (self.flow.beyond[twin] == CROSS)
        which, side = np.nonzero(entered)
        edge = twin[which, side]
        bottom, top = stream[which, (side + 1) % 3], stream[which, side]
        strip = runs(begin[which], number[which])
        of = np.repeat(np.arange(len(which)), number[which])
        width = (top - bottom)[of]
        upto = ((high[strip] - bottom[of]) / width).clip(0.0, 1.0)
        keep = upto - ((low[strip] - bottom[of]) / width).clip(0.0, 1.0) > _NARROW
        upto, of, end = upto[keep], of[keep], end[strip[keep]]
        upto[_last(of)] = 1.0
        pieces = np.bincount(of, minlength=len(which))
        self.first[edge] = self.pieces.add(upto, end) + np.cumsum(pieces) - pieces
        self.count[edge] = pieces
        return edge.astype(np.int64)

    def _strips(self, triangle: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
        """Strips of triangles (k,), from low to high stream values: row of the triangle, upper value, end."""
        out, stream = self.flow.out[triangle], self.flow.stream[triangle]
        both = out.sum(axis=1) == 2
        # With two edges to leave by, the one after the edge of entry has the lower values.
        first = np.where(both, (np.argmin(out, axis=1) + 1) % 3, np.argmax(out, axis=1))
        row = np.repeat(np.arange(len(triangle)), 1 + both)
        second = np.append(False, row[1:] == row[:-1])
        side = (first[row] + second) % 3
        edge = 3 * triangle[row] + side
        count = self.count[edge]
        piece = runs(self.first[edge], count)
        of = np.repeat(np.arange(len(edge)), count)
        begin, finish = stream[row, side], stream[row, (side + 1) % 3]
        reach, end = self.pieces.columns[0][piece], self.pieces.columns[1][piece]
        high = np.where(reach == 1.0, finish[of], begin[of] + reach * (finish - begin)[of])
        row = row[of]
        keep = np.append((row[1:] != row[:-1]) | (end[1:] != end[:-1]), True)
        return row[keep], high[keep], end[keep]

    # ------------------------------------------------------------------------------------------- circles

    def circles(self) -> np.ndarray:
        """Half-edges to open: one of each circle that depends on no other; none when all is known."""
        left = np.flatnonzero(~self.divided)
        if len(left) == 0:
            return left
        m = len(self.divided)
        edge = np.flatnonzero(self.out & (self.count == 0))
        to = np.where(self.flow.beyond[edge] == CROSS, self.flow.twin[edge] // 3, -1)
        through = np.flatnonzero(to < 0)
        to[through] = m + self.root[self.flow.target[edge[through]]]
        waits = self.vertex[self.vertex_on] < 0
        start = np.concatenate([edge // 3, m + self.vertex_on[waits]])
        stop = np.concatenate([to, self.flow.twin[self.edges_down[waits]] // 3])
        names, number = np.unique(np.concatenate([start, stop]), return_inverse=True)
        a, b = number.reshape(2, -1)
        graph = coo_matrix((np.ones(len(a), bool), (a, b)), shape=(len(names),) * 2)
        parts, part = connected_components(graph, connection="strong")
        closed = np.ones(parts, bool)
        closed[part[a[part[a] != part[b]]]] = False
        inner = np.flatnonzero((part[a] == part[b])[: len(edge)] & closed[part[a[: len(edge)]]])
        vertex = self.flow.tin.triangles.ravel()
        z = self.flow.tin.vertices[:, 2]
        middle = z[vertex[edge[inner]]] + z[vertex[following(edge[inner])]]
        inner = inner[np.lexsort((-middle, part[a[inner]]))]
        chosen: np.ndarray = edge[inner[_last(part[a[inner]])]]
        return chosen

    def sample(self, edge: np.ndarray) -> np.ndarray:
        """Find the pieces of half-edges by following paths; returns them."""
        self.cuts += len(edge)
        at = np.tile((np.arange(_SAMPLES) + 0.5) / _SAMPLES, len(edge))
        of = np.repeat(edge, _SAMPLES)
        end = self._sampled(of, at)
        change = np.flatnonzero((of[1:] == of[:-1]) & (end[1:] != end[:-1]))
        low, high = at[change], at[change + 1]
        for _ in range(_HALVINGS):
            middle = (low + high) / 2
            same = self._sampled(of[change], middle) == end[change]
            low, high = np.where(same, middle, low), np.where(same, high, middle)
        keep = _last(of)
        keep[change] = True
        reach = np.ones(len(of))
        reach[change] = (low + high) / 2
        pieces = np.bincount(np.searchsorted(np.sort(edge), of[keep]), minlength=len(edge))[
            np.argsort(np.argsort(edge))
        ]
        self.first[edge] = self.pieces.add(reach[keep], end[keep]) + np.cumsum(pieces) - pieces
        self.count[edge] = pieces
        return edge

    def _sampled(self, edge: np.ndarray, along: np.ndarray) -> np.ndarray:
        none = np.full(len(edge), -1, np.int64)
        state = State(none, edge.astype(np.int64), along)
        return end_numbers(self.flow, find_ends(self.flow, state, self.stops))

    # -------------------------------------------------------------------------------------------- result

    def result(self) -> Fates:
        flow = self.flow
        self.vertex = self.vertex[self.root]
        single = np.flatnonzero(flow.level | (flow.sink >= 0))
        sunk = flow.sink[single] >= 0
        end = np.where(sunk, self.first_inlet + flow.sink[single], self.vertex[flow.corner[single]])
        stream = flow.stream[single]
        self.strips.add(single, stream.min(axis=1), stream.max(axis=1), end)
        if self.to_first_vertex:
            self.vertex = self._next_ends()
        triangle, low, high, end = (column[: self.strips.size] for column in self.strips.columns)
        order = np.argsort(triangle, kind="stable")
        triangle, low, high, end = triangle[order], low[order], high[order], end[order]
        area = _strip_areas(flow, triangle, low, high)
        start = np.append(0, np.cumsum(np.bincount(triangle, minlength=len(flow.level))))
        return Fates(flow, self.vertex, triangle, low, high, end, area, start, self.cuts)

    def _next_ends(self) -> np.ndarray:
        """End (n,) to which water at each vertex comes next."""
        flow = self.flow
        after = self.vertex.copy()
        moves = np.flatnonzero((flow.down_vertex >= 0) & ~flow.on_rim & (flow.vertex_sink < 0))
        after[moves] = self.vertex[flow.down_vertex[moves]]
        moves = np.flatnonzero((flow.down_edge >= 0) & ~flow.on_rim & (flow.vertex_sink < 0))
        edge = flow.down_edge[moves]
        after[moves] = self._end_at(edge, start_along(flow, edge))
        return after


def end_numbers(flow: Flow, ends: Ends) -> np.ndarray:
    """Numbers of ends, as in ``Fates``, of paths."""
    n = len(flow.rank)
    number = np.where(ends.vertex >= 0, ends.vertex, n + 1)
    number[(ends.end == PathEnd.RIM) & (ends.vertex < 0)] = n
    inlet = ends.end == PathEnd.INLET
    number[inlet] = n + 2 + ends.inlet[inlet]
    return number


def _strip_areas(flow: Flow, triangle: np.ndarray, low: np.ndarray, high: np.ndarray) -> np.ndarray:
    """Plan area (p,) of strips; those of a triangle add up to its own."""
    corner = flow.tin.vertices[flow.tin.triangles][:, :, :2]
    u, v = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    whole = ((u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]) / 2)[triangle]
    a, b, c = np.sort(flow.stream, axis=1)[triangle].T
    area = whole.copy()
    some = np.flatnonzero((low > a) | (high < c))
    a, b, c, whole = a[some], b[some], c[some], whole[some]
    area[some] = whole * (_share_below(high[some], a, b, c) - _share_below(low[some], a, b, c))
    return area


def _share_below(value: np.ndarray, a: np.ndarray, b: np.ndarray, c: np.ndarray) -> np.ndarray:
    """Share (k,) of the area of triangles with stream values a <= b <= c that lies below ``value``."""
    with np.errstate(divide="ignore", invalid="ignore"):
        under = (value - a) ** 2 / ((b - a) * (c - a))
        over = 1 - (c - value) ** 2 / ((c - b) * (c - a))
    share: np.ndarray = np.where(value <= a, 0.0, np.where(value >= c, 1.0, np.where(value <= b, under, over)))
    return share


def _last(group: np.ndarray) -> np.ndarray:
    """Which members (k,) are the last of their run of equal ``group``."""
    return np.append(group[1:] != group[:-1], True)[: len(group)]


def _matches(key: np.ndarray, value: np.ndarray, wanted: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Of sorted ``key`` the ``value`` of all that are ``wanted``, and the wanted one of each."""
    low, high = np.searchsorted(key, wanted, "left"), np.searchsorted(key, wanted, "right")
    return value[runs(low, high - low)], np.repeat(wanted, high - low)
