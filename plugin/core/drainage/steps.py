"""The way of water step by step, many paths at a time: over a triangle, along an edge, from a vertex."""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum
from typing import Iterator, List, Optional, Tuple

import numpy as np

from ..surface.locate import weights_in
from ..surface.mesh import following
from .flow import CROSS, RIM, SINK, VERTEX, Flow

#: A path nearer to a vertex than this (m) is on it.
SNAP = 1e-10


class PathEnd(IntEnum):
    """Where a path ends."""

    OUTSIDE = 0  #: its start is not on the surface
    PIT = 1
    RIM = 2
    INLET = 3
    UNDECIDED = 4  #: heights so nearly equal that rounding would lead it in a circle


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


def find_ends(flow: Flow, state: State, stops: Optional[np.ndarray] = None) -> Ends:
    """Ends of paths that go on from ``state``; a path also ends, as a PIT, at a vertex of the mask ``stops`` (n,)."""
    ended = no_ends(len(state.vertex))
    for active, after, ends in steps(flow, np.arange(len(state.vertex)), state):
        if stops is not None:
            there = np.flatnonzero((ends.end < 0) & (after.vertex >= 0) & stops[after.vertex])
            ends.end[there], ends.vertex[there] = PathEnd.PIT, after.vertex[there]
        note_ends(ended, active, ends)
    return ended


def follow_vertices(flow: Flow, vertex: np.ndarray) -> Ends:
    """Ends (k,) of water that comes to each ``vertex`` (k,)."""
    none = np.full(len(vertex), -1, np.int64)
    return find_ends(flow, State(np.asarray(vertex, np.int64), none, np.zeros(len(vertex))))


def begin_at(flow: Flow, triangle: np.ndarray, local: np.ndarray) -> Tuple[State, Ends]:
    """Where paths that begin at ``local`` (k, 2) in ``triangle`` (k,) go first."""
    triangle = _steeper_side(flow, triangle, local)
    weight = weights_in(flow.tin, triangle, local)
    corner = np.take_along_axis(flow.tin.triangles[triangle], np.argmax(weight, axis=1)[:, None], axis=1)[:, 0]
    at_corner = weight.max(axis=1) == 1
    edge, along = _leave(flow, triangle, np.sum(weight * flow.stream[triangle], axis=1))
    vertex = np.where(flow.level[triangle], flow.corner[triangle], -1)
    ends = no_ends(len(triangle))
    taken = (flow.sink[triangle] >= 0) & ~at_corner
    ends.end[taken], ends.inlet[taken] = PathEnd.INLET, flow.sink[triangle[taken]]
    first, there = _from_vertices(flow, corner[at_corner].astype(np.int64), arrived=False)
    for into, value in ((vertex, first.vertex), (edge, first.edge), (along, first.along)):
        into[at_corner] = value
    note_ends(ends, np.flatnonzero(at_corner), there)
    return State(vertex, edge, along), ends


def _steeper_side(flow: Flow, triangle: np.ndarray, local: np.ndarray) -> np.ndarray:
    """The triangle (k,) to which a place belongs; of two that fall away from an edge the steeper."""
    tin = flow.tin
    weight = weights_in(tin, triangle, local)
    edge = 3 * triangle + np.argmin(weight[:, [2, 0, 1]], axis=1)
    other = flow.twin[edge]
    on_edge = weight.min(axis=1) == 0
    ridge = on_edge & (other >= 0) & ~flow.out.ravel()[edge] & ~flow.out.ravel()[other]
    there = np.where(ridge, other // 3, triangle)
    steeper = flow.slope[there] > flow.slope[triangle]
    even = np.flatnonzero(ridge & (flow.slope[there] == flow.slope[triangle]))
    here_at, there_at = (tin.grid[tin.triangles[t[even]]].sum(axis=1) for t in (triangle, there))
    steeper[even] = (there_at[:, 0] < here_at[:, 0]) | (
        (there_at[:, 0] == here_at[:, 0]) & (there_at[:, 1] < here_at[:, 1])
    )
    return np.where(ridge & steeper, there, triangle)


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
    ends = no_ends(len(vertex))
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
    ends = no_ends(len(edge))
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


def snapped(flow: Flow, state: State) -> State:
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


def steps(flow: Flow, active: np.ndarray, state: State) -> Iterator[Tuple[np.ndarray, State, Ends]]:
    """All paths a step on, again and again: their numbers, states and, where they have ended, ends."""
    state = snapped(flow, state)
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
        after = snapped(flow, after)
        yield active, after, ends
        on = np.flatnonzero(ends.end < 0)
        active, state, highest = active[on], after.take(on), highest[on]


def _step(flow: Flow, state: State) -> Tuple[State, Ends]:
    after = State(np.full_like(state.vertex, -1), np.full_like(state.edge, -1), np.zeros(len(state.along)))
    ends = no_ends(len(state.vertex))
    at_vertex, at_edge = np.flatnonzero(state.vertex >= 0), np.flatnonzero(state.vertex < 0)
    for which, (moved, there) in (
        (at_vertex, _from_vertices(flow, state.vertex[at_vertex], arrived=True)),
        (at_edge, _over_edges(flow, state.edge[at_edge], state.along[at_edge])),
    ):
        after.vertex[which], after.edge[which], after.along[which] = moved.vertex, moved.edge, moved.along
        note_ends(ends, which, there)
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


def no_ends(count: int) -> Ends:
    """Of paths that all go on."""
    return Ends(*(np.full(count, -1, np.int64) for _ in range(3)))


def note_ends(into: Ends, which: np.ndarray, ends: Ends) -> None:
    """Enter the ends (q,) of paths ``which`` (q,) that do not go on."""
    done = ends.end >= 0
    for name in ("end", "vertex", "inlet"):
        getattr(into, name)[which[done]] = getattr(ends, name)[done]


def first_stretches(flow: Flow, vertex: np.ndarray) -> List[np.ndarray]:
    """Places (q, 3) that water at each ``vertex`` (k,) passes up to the next vertex, or to where it ends.

    Metres from the TIN's origin, and heights; without the vertex itself, empty for a pit.
    """
    state, ends = _from_vertices(flow, np.asarray(vertex, np.int64), arrived=False)
    active = np.flatnonzero(ends.end < 0)
    state = snapped(flow, state.take(active))
    numbers, places = [np.empty(0, np.int64)], [np.empty((0, 3))]
    while len(active):
        numbers.append(active)
        places.append(place_of(flow, state))
        on = np.flatnonzero(state.vertex < 0)
        state, ends = _over_edges(flow, state.edge[on], state.along[on])
        active = active[on][ends.end < 0]
        state = snapped(flow, state.take(np.flatnonzero(ends.end < 0)))
    number, place = np.concatenate(numbers), np.concatenate(places)
    order = np.argsort(number, kind="stable")
    return np.split(place[order], np.cumsum(np.bincount(number, minlength=len(vertex)))[:-1])
