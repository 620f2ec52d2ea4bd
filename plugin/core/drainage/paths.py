"""Paths of steepest descent, many at a time, and arrows of the way of water."""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum
from typing import Iterator, List, Optional, Sequence, Tuple

import numpy as np

from ..progress import Progress, silent
from ..surface.ask import slope_and_aspect
from ..surface.locate import barycentric, heights_in, locate
from ..surface.mesh import following
from ..surface.tin import Tin
from .flow import CROSS, RIM, SINK, VERTEX, Flow, Passages
from .level_ground import mean_gradients
from .rings import inside

#: A path nearer to a vertex or, at its start, to an edge than this (m) is on it.
SNAP = 1e-10


class PathEnd(IntEnum):
    """Where a path ends."""

    OUTSIDE = 0  #: its start is not on the surface
    PIT = 1
    RIM = 2
    INLET = 3
    UNDECIDED = 4  #: heights so nearly equal that rounding would lead it in a circle


@dataclass(frozen=True)
class FlowPaths:
    """k paths, in the order of their starts.

    ``xyz``: (p, 3) float64, metres from ``origin`` in plan, and height; path i is ``xyz[start[i]:start[i + 1]]``.
    ``end``: (k,) int8 ``PathEnd``. ``vertex``: (k,) int64 the pit or the vertex of the rim, -1 where it leaves
    over a rim edge or isn't at a vertex. ``inlet``: (k,) int64 number of the inlet, -1 none.
    """

    xyz: np.ndarray
    start: np.ndarray
    end: np.ndarray
    vertex: np.ndarray
    inlet: np.ndarray
    origin: np.ndarray

    def __len__(self) -> int:
        return len(self.end)

    def path(self, i: int) -> np.ndarray:
        """Places (q, 3) of path i: easting, northing, height in metres of the CRS."""
        xyz = self.xyz[self.start[i] : self.start[i + 1]].copy()
        xyz[:, :2] += self.origin
        return xyz

    @property
    def length(self) -> np.ndarray:
        """Length in plan (k,) of each path, metres."""
        step = np.hypot(*np.diff(self.xyz[:, :2], axis=0).T)
        total = np.append(np.append(0.0, np.cumsum(step)), 0.0)
        last = np.maximum(self.start[1:] - 1, 0)
        return np.where(np.diff(self.start) > 0, total[last] - total[np.minimum(self.start[:-1], last)], 0.0)


@dataclass(frozen=True)
class State:
    """Where k paths are: at ``vertex`` (k,), or, where that is -1, leaving over ``edge`` (k,), a half-edge, at the
    share ``along`` (k,) of it."""

    vertex: np.ndarray
    edge: np.ndarray
    along: np.ndarray

    def take(self, which: np.ndarray) -> State:
        return State(self.vertex[which], self.edge[which], self.along[which])


@dataclass(frozen=True)
class Ends:
    """Ends of k paths, as in ``FlowPaths``; ``end`` is -1 for a path that goes on."""

    end: np.ndarray
    vertex: np.ndarray
    inlet: np.ndarray


def trace_paths(
    flow: Flow, xy: np.ndarray, passages: Optional[Passages] = None, progress: Progress = silent
) -> FlowPaths:
    """Follow water from places ``xy`` (k, 2), metres of the CRS, to a pit, the rim or an inlet.

    A path that comes to the rim ends there; one that begins at a vertex of the rim with a way down the surface takes
    it. The rules are those of :mod:`.flow`. ``passages``: pits at which paths do not end but go straight to the saddle
    of the hollow and on, see ``Ponds.passages``. ``progress`` is called with stage ``"paths"``.
    """
    xy = np.asarray(xy, float).reshape(-1, 2)
    triangle = locate(flow.tin, xy)
    on = np.flatnonzero(triangle >= 0)
    local, triangle = xy[on] - flow.tin.origin, triangle[on]
    trace = _Trace(flow, len(xy))
    trace.ended.end[:] = PathEnd.OUTSIDE
    trace.pass_by(on, np.column_stack([local, heights_in(flow.tin, triangle, local)]))
    state, ends = _begin(flow, triangle, local)
    _note(trace.ended, on, ends)
    going = np.flatnonzero(ends.end < 0)
    trace.follow(on[going], state.take(going))
    while passages is not None:
        pit = trace.ended.vertex
        held = np.flatnonzero((trace.ended.end == PathEnd.PIT) & (pit >= 0))
        held = held[passages.to[pit[held]] >= 0]
        if len(held) == 0:
            break
        progress(1 - len(held) / len(on), "paths")
        trace.pass_by(held, flow.tin.vertices[passages.saddle[pit[held]]])
        none = np.full(len(held), -1, np.int64)
        state = State(passages.to[pit[held]], none, np.zeros(len(held)))
        trace.ended.vertex[held] = -1
        trace.follow(held, state)
    return _assembled(flow.tin, np.concatenate(trace.numbers), np.concatenate(trace.places), trace.ended)


class _Trace:
    """Paths in the making: the places they pass and their ends."""

    def __init__(self, flow: Flow, count: int) -> None:
        self.flow, self.ended = flow, _no_ends(count)
        self.numbers: List[np.ndarray] = []
        self.places: List[np.ndarray] = []

    def pass_by(self, number: np.ndarray, place: np.ndarray) -> None:
        self.numbers.append(number)
        self.places.append(place)

    def follow(self, number: np.ndarray, state: State) -> None:
        """Follow paths ``number`` (q,) from ``state`` to their ends."""
        state = _snapped(self.flow, state)
        self.pass_by(number, place_of(self.flow, state))
        for active, after, ends in _steps(self.flow, number, state):
            _note(self.ended, active, ends)
            moved = np.flatnonzero(ends.end < 0)
            self.pass_by(active[moved], place_of(self.flow, after.take(moved)))


def find_ends(flow: Flow, state: State, stops: Optional[np.ndarray] = None) -> Ends:
    """Ends of paths that go on from ``state``; a path also ends, as a PIT, at a vertex of the mask ``stops`` (n,)."""
    ended = _no_ends(len(state.vertex))
    for active, after, ends in _steps(flow, np.arange(len(state.vertex)), state):
        if stops is not None:
            there = np.flatnonzero((ends.end < 0) & (after.vertex >= 0) & stops[after.vertex])
            ends.end[there], ends.vertex[there] = PathEnd.PIT, after.vertex[there]
        _note(ended, active, ends)
    return ended


def follow_vertices(flow: Flow, vertex: np.ndarray) -> Ends:
    """Ends (k,) of water that comes to each ``vertex`` (k,)."""
    none = np.full(len(vertex), -1, np.int64)
    return find_ends(flow, State(np.asarray(vertex, np.int64), none, np.zeros(len(vertex))))


def along_lines(lines: Sequence[np.ndarray], spacing: float) -> np.ndarray:
    """Places (k, 2) along lines, each (q, 2), every ``spacing`` metres from their beginnings, and their ends."""
    places = [np.empty((0, 2))]
    for line in lines:
        line = np.asarray(line, float).reshape(len(line), -1)[:, :2]
        if len(line) == 0:
            continue
        at = np.append(0.0, np.cumsum(np.hypot(*np.diff(line, axis=0).T)))
        stations = np.append(np.arange(0.0, at[-1] * (1 - 1e-12), spacing), at[-1])
        places.append(np.column_stack([np.interp(stations, at, line[:, axis]) for axis in (0, 1)]))
    return np.concatenate(places)


def in_polygons(polygons: Sequence[Sequence[np.ndarray]], spacing: float) -> np.ndarray:
    """Places (k, 2) of a square grid of ``spacing`` metres inside polygons, each a list of rings (q, 2).

    The grid passes through whole multiples of the spacing, so that neighbouring polygons share it.
    """
    places = [np.empty((0, 2))]
    for rings in polygons:
        outer = np.concatenate([np.asarray(ring, float)[:, :2] for ring in rings])
        low, high = np.ceil(outer.min(axis=0) / spacing), np.floor(outer.max(axis=0) / spacing)
        axes = [np.arange(low[axis], high[axis] + 1) * spacing for axis in (0, 1)]
        grid = np.stack(np.meshgrid(*axes), axis=-1).reshape(-1, 2)
        places.append(grid[inside(grid, rings)])
    return np.unique(np.concatenate(places), axis=0)


@dataclass(frozen=True)
class FlowArrows:
    """``xy``: (k, 2) metres of the CRS; ``direction``: (k,) degrees clockwise from grid north, the way down;
    ``slope``: (k,) fall over run."""

    xy: np.ndarray
    direction: np.ndarray
    slope: np.ndarray


def flow_arrows(tin: Tin, spacing: float, window: float = 0.0) -> FlowArrows:
    """The way down and the slope at the places of a square grid of ``spacing`` metres; none on level ground.

    ``window``: metres over which the gradient is averaged, as for ``level_ground.mean_gradients``; 0 takes that of
    the triangle alone, which in a dense survey is much the noise of its points.
    """
    west, south, east, north = tin.bounds
    ring = np.array([[west, south], [east, south], [east, north], [west, north]])
    xy = in_polygons([[ring + spacing * np.sign(ring - ring.mean(axis=0))]], spacing)
    triangle = locate(tin, xy)
    xy, triangle = xy[triangle >= 0], triangle[triangle >= 0]
    slope, aspect = slope_and_aspect(mean_gradients(tin, window)[triangle])
    some = np.flatnonzero(slope > 0)
    return FlowArrows(xy[some], aspect[some], slope[some])


# ------------------------------------------------------------------------------------------- starts


def _begin(flow: Flow, triangle: np.ndarray, local: np.ndarray) -> Tuple[State, Ends]:
    """Where paths that begin at ``local`` (k, 2) in ``triangle`` (k,) go first."""
    triangle = _steeper_side(flow, triangle, local)
    weight = _weights(flow.tin, triangle, local)
    corner = np.take_along_axis(flow.tin.triangles[triangle], np.argmax(weight, axis=1)[:, None], axis=1)[:, 0]
    at_corner = np.hypot(*(flow.tin.vertices[corner, :2] - local).T) < SNAP
    edge, along = _leave(flow, triangle, np.sum(weight * flow.stream[triangle], axis=1))
    vertex = np.where(flow.level[triangle], flow.corner[triangle], -1)
    ends = _no_ends(len(triangle))
    taken = (flow.sink[triangle] >= 0) & ~at_corner
    ends.end[taken], ends.inlet[taken] = PathEnd.INLET, flow.sink[triangle[taken]]
    first, there = _from_vertices(flow, corner[at_corner].astype(np.int64), arrived=False)
    for into, value in ((vertex, first.vertex), (edge, first.edge), (along, first.along)):
        into[at_corner] = value
    _note(ends, np.flatnonzero(at_corner), there)
    return State(vertex, edge, along), ends


def _steeper_side(flow: Flow, triangle: np.ndarray, local: np.ndarray) -> np.ndarray:
    """The triangle (k,) to which a place belongs; of two that fall away from an edge the steeper."""
    tin = flow.tin
    weight = _weights(tin, triangle, local)
    corner = tin.vertices[tin.triangles[triangle]][:, :, :2]
    side = np.roll(corner, -1, axis=1) - corner
    double_area = side[:, 0, 0] * side[:, 1, 1] - side[:, 0, 1] * side[:, 1, 0]
    off = np.roll(weight, -2, axis=1) * double_area[:, None] / np.hypot(side[:, :, 0], side[:, :, 1])
    edge = 3 * triangle + np.argmin(off, axis=1)
    other = flow.twin[edge]
    ridge = (off.min(axis=1) < SNAP) & (other >= 0) & ~flow.out.ravel()[edge] & ~flow.out.ravel()[other]
    there = np.where(ridge, other // 3, triangle)
    steeper = flow.slope[there] > flow.slope[triangle]
    even = np.flatnonzero(ridge & (flow.slope[there] == flow.slope[triangle]))
    here_at, there_at = (tin.grid[tin.triangles[t[even]]].sum(axis=1) for t in (triangle, there))
    steeper[even] = (there_at[:, 0] < here_at[:, 0]) | (
        (there_at[:, 0] == here_at[:, 0]) & (there_at[:, 1] < here_at[:, 1])
    )
    return np.where(ridge & steeper, there, triangle)


def _weights(tin: Tin, triangle: np.ndarray, local: np.ndarray) -> np.ndarray:
    weight = barycentric(tin.vertices[tin.triangles[triangle], :2], local).clip(0.0)
    result: np.ndarray = weight / weight.sum(axis=1, keepdims=True)
    return result


# -------------------------------------------------------------------------------------------- steps


def _leave(flow: Flow, triangle: np.ndarray, stream: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Half-edge (k,) over which water of a ``stream`` value leaves its triangle, and the share along it (k,)."""
    value, out = flow.stream[triangle], flow.out[triangle]
    follow = value[:, [1, 2, 0]]
    miss = np.where(out, np.maximum(value - stream[:, None], stream[:, None] - follow), np.inf)
    side = np.argmin(miss, axis=1)
    rows = np.arange(len(triangle))
    begin, end = value[rows, side], follow[rows, side]
    with np.errstate(invalid="ignore", divide="ignore"):
        along = (stream - begin) / (end - begin)
    return 3 * triangle.astype(np.int64) + side, along.clip(0.0, 1.0)


def _from_vertices(flow: Flow, vertex: np.ndarray, arrived: bool) -> Tuple[State, Ends]:
    """The way on from each ``vertex`` (k,); water that ``arrived`` at the rim ends there."""
    ends = _no_ends(len(vertex))
    after, edge = flow.down_vertex[vertex], flow.down_edge[vertex]
    across = np.flatnonzero(edge >= 0)
    along = np.zeros(len(vertex))
    along[across] = start_along(flow, edge[across])
    stays = (after < 0) & (edge < 0)
    rim = flow.on_rim[vertex] & (stays | arrived)
    ends.end[stays] = PathEnd.PIT
    ends.end[rim] = PathEnd.RIM
    ends.vertex[stays | rim] = vertex[stays | rim]
    caught = flow.vertex_sink[vertex] >= 0
    ends.end[caught], ends.vertex[caught], ends.inlet[caught] = PathEnd.INLET, -1, flow.vertex_sink[vertex[caught]]
    return State(after, edge, along), ends


def start_along(flow: Flow, edge: np.ndarray) -> np.ndarray:
    """Share (k,) along half-edges ``edge`` where water from the vertex opposite comes to them."""
    triangle, side = edge // 3, edge % 3
    begin, end, apex = (flow.stream[triangle, (side + i) % 3] for i in range(3))
    along: np.ndarray = ((apex - begin) / (end - begin)).clip(0.0, 1.0)
    return along


def _over_edges(flow: Flow, edge: np.ndarray, along: np.ndarray) -> Tuple[State, Ends]:
    """The way on of water that leaves over ``edge`` (k,)."""
    ends = _no_ends(len(edge))
    beyond, target = flow.beyond[edge], flow.target[edge]
    ends.end[beyond == RIM] = PathEnd.RIM
    sink = beyond == SINK
    ends.end[sink], ends.inlet[sink] = PathEnd.INLET, target[sink]
    vertex = np.where(beyond == VERTEX, target, -1)
    after, share = edge.copy(), along.copy()
    cross = np.flatnonzero(beyond == CROSS)
    twin = flow.twin[edge[cross]]
    triangle, side = twin // 3, twin % 3
    begin, end = flow.stream[triangle, side], flow.stream[triangle, (side + 1) % 3]
    after[cross], share[cross] = _leave(flow, triangle, end + along[cross] * (begin - end))
    return State(vertex, after, share), ends


def _snapped(flow: Flow, state: State) -> State:
    """``state`` with paths that leave a triangle at one of its vertices put there."""
    edge = np.flatnonzero(state.vertex < 0)
    number = state.edge[edge]
    vertices = flow.tin.triangles.ravel()
    ends = np.stack([vertices[number], vertices[following(number)]])
    length = np.hypot(*(flow.tin.vertices[ends[1], :2] - flow.tin.vertices[ends[0], :2]).T)
    away = np.stack([state.along[edge], 1 - state.along[edge]]) * length
    near = np.argmin(away, axis=0)
    at = away.min(axis=0) < SNAP
    vertex = state.vertex.copy()
    vertex[edge[at]] = ends[near, np.arange(len(edge))][at]
    return State(vertex, state.edge, state.along)


def _steps(flow: Flow, active: np.ndarray, state: State) -> Iterator[Tuple[np.ndarray, State, Ends]]:
    """All paths a step on, again and again: their numbers, states and, where they have ended, ends."""
    state = _snapped(flow, state)
    highest = np.full(len(active), np.iinfo(np.int64).max)  # rank of the last vertex
    left = 2 * len(flow.tin.triangles) + 1000
    while len(active):
        after, ends = _step(flow, state)
        # Water never comes to a vertex higher than the last. Where rounding says so, heights are equal to rounding.
        back = np.flatnonzero((state.vertex >= 0) & (ends.end < 0))
        rank = flow.way_rank[state.vertex[back]]
        again = back[rank >= highest[back]]
        highest[back] = rank
        ends.end[again] = PathEnd.UNDECIDED
        left -= 1
        if left == 0:
            ends.end[ends.end < 0] = PathEnd.UNDECIDED
        after = _snapped(flow, after)
        yield active, after, ends
        on = np.flatnonzero(ends.end < 0)
        active, state, highest = active[on], after.take(on), highest[on]


def _step(flow: Flow, state: State) -> Tuple[State, Ends]:
    after = State(np.full_like(state.vertex, -1), np.full_like(state.edge, -1), np.zeros(len(state.along)))
    ends = _no_ends(len(state.vertex))
    at_vertex, at_edge = np.flatnonzero(state.vertex >= 0), np.flatnonzero(state.vertex < 0)
    for which, (moved, there) in (
        (at_vertex, _from_vertices(flow, state.vertex[at_vertex], arrived=True)),
        (at_edge, _over_edges(flow, state.edge[at_edge], state.along[at_edge])),
    ):
        after.vertex[which], after.edge[which], after.along[which] = moved.vertex, moved.edge, moved.along
        _note(ends, which, there)
    return after, ends


def place_of(flow: Flow, state: State) -> np.ndarray:
    """Places (k, 3) of ``state``, metres from the TIN's origin, and heights."""
    vertices = flow.tin.triangles.ravel()
    begin = np.where(state.vertex >= 0, state.vertex, vertices[state.edge])
    end = np.where(state.vertex >= 0, state.vertex, vertices[following(state.edge)])
    start = flow.tin.vertices[begin]
    share = np.where(state.vertex >= 0, 0.0, state.along)[:, None]
    place: np.ndarray = start + share * (flow.tin.vertices[end] - start)
    return place


def _no_ends(count: int) -> Ends:
    return Ends(*(np.full(count, -1, np.int64) for _ in range(3)))


def _note(into: Ends, which: np.ndarray, ends: Ends) -> None:
    done = ends.end >= 0
    for name in ("end", "vertex", "inlet"):
        getattr(into, name)[which[done]] = getattr(ends, name)[done]


def _assembled(tin: Tin, number: np.ndarray, place: np.ndarray, ends: Ends) -> FlowPaths:
    """Paths from the places of all steps in order, without places that come twice."""
    order = np.argsort(number, kind="stable")
    number, place = number[order], place[order]
    far = np.hypot(*np.diff(place[:, :2], axis=0).T) >= SNAP
    keep = np.append(True, far | (np.diff(number) != 0))[: len(number)]
    start = np.append(0, np.cumsum(np.bincount(number[keep], minlength=len(ends.end))))
    return FlowPaths(place[keep], start, ends.end.astype(np.int8), ends.vertex, ends.inlet, tin.origin)


def first_stretches(flow: Flow, vertex: np.ndarray) -> List[np.ndarray]:
    """Places (q, 3) that water at each ``vertex`` (k,) passes up to the next vertex, or to where it ends.

    Metres from the TIN's origin, and heights; without the vertex itself, empty for a pit.
    """
    state, ends = _from_vertices(flow, np.asarray(vertex, np.int64), arrived=False)
    active = np.flatnonzero(ends.end < 0)
    state = _snapped(flow, state.take(active))
    numbers, places = [np.empty(0, np.int64)], [np.empty((0, 3))]
    while len(active):
        numbers.append(active)
        places.append(place_of(flow, state))
        on = np.flatnonzero(state.vertex < 0)
        state, ends = _over_edges(flow, state.edge[on], state.along[on])
        active = active[on][ends.end < 0]
        state = _snapped(flow, state.take(np.flatnonzero(ends.end < 0)))
    number, place = np.concatenate(numbers), np.concatenate(places)
    order = np.argsort(number, kind="stable")
    return np.split(place[order], np.cumsum(np.bincount(number, minlength=len(vertex)))[:-1])
