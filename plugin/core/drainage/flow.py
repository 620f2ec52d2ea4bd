"""Which way water leaves every triangle, edge and vertex of a TIN.

Water takes the steepest way down on the surface itself, as in S. Yu, M. van Kreveld, J. Snoeyink, "Drainage
queries in TINs: from local to global and back again", 1996 (cited from memory):

* on a triangle along the plane's gradient;
* on an edge into which both triangles fall (a channel) along the edge; over any other edge into the triangle beyond;
* at a vertex the steepest of all ways: an edge down, or the gradient of a triangle that starts into that triangle.
  Of equally steep ways an edge goes before a triangle, then the one that heads for the place farther west, then south;
* at a vertex with nothing lower around it: a pit;
* at the rim it leaves the surface.

Level ground (triangles and edges of one height) drains by the shortest way, measured in plan along its edges, to its
nearest vertex from which a way leads down or off the rim: from a level triangle straight to the corner with the
shortest such way, then along the edges; of equally short ways to the vertex farther west, then south. Level ground
without such a vertex is a pit, and stands for it the vertex farthest west, then south. Nothing of this depends
on the order of points or triangles.

Within a triangle, water keeps its *stream value*, the cross product of the way down with the place; so where a path
leaves a triangle is found from the values at the corners, and areas drained to parts of an edge are exact.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional, Tuple

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components, dijkstra

from ..surface.basins import height_order
from ..surface.mesh import following
from ..surface.tin import GRID, Tin

#: What a half-edge leads to, for water that leaves its triangle there (``Flow.beyond``).
CROSS, VERTEX, RIM, SINK = 0, 1, 2, 3


@dataclass(frozen=True)
class Flow:
    """The way of water on ``tin`` with n vertices and m triangles.

    ``stream``: (m, 3) stream value of each corner; water leaves over the edges along which it rises.
    ``out``: (m, 3) bool, those edges. ``slope``: (m,) fall over run of each triangle.
    ``level``: (m,) bool, triangles without a slope.
    ``twin``: (3 m,) opposite half-edge, -1 at the rim; half-edge 3 t + i runs from corner i of triangle t to i + 1.
    ``beyond``: (3 m,) uint8, for water that leaves over a half-edge: ``CROSS`` into the triangle of its twin, along a
    channel or level ground to the vertex ``target`` (3 m,), off the ``RIM``, or into the ``SINK`` of that number.
    ``corner``: (m,) vertex to which a level triangle drains, -1 for others.
    ``down_vertex``: (n,) next vertex of water at a vertex, -1 none; ``down_edge``: (n,) half-edge to which it crosses a
    triangle, -1 none; ``down_slope``: (n,) fall over run of that way, 0 on level ground. With neither it stays there.
    ``on_rim``: (n,) bool. ``sink``: (m,) number of the sink that takes all water of a triangle, -1 none;
    ``vertex_sink``: (n,) the same for vertices. ``rank``: (n,) place by height, then easting, then northing.
    ``way_rank``: (n,) place by height, then length of the way on level ground: it falls along every way.
    ``used``: (n,) bool, vertices of triangles.
    """

    tin: Tin
    stream: np.ndarray
    out: np.ndarray
    slope: np.ndarray
    level: np.ndarray
    twin: np.ndarray
    beyond: np.ndarray
    target: np.ndarray
    corner: np.ndarray
    down_vertex: np.ndarray
    down_edge: np.ndarray
    down_slope: np.ndarray
    on_rim: np.ndarray
    sink: np.ndarray
    vertex_sink: np.ndarray
    rank: np.ndarray
    way_rank: np.ndarray
    used: np.ndarray

    @property
    def pits(self) -> np.ndarray:
        """Vertices where water stays: nothing lower around, not on the rim, no sink."""
        stays = (self.down_vertex < 0) & (self.down_edge < 0) & self.used & ~self.on_rim & (self.vertex_sink < 0)
        return np.flatnonzero(stays)


@dataclass(frozen=True)
class Passages:
    """Pits that let water pass: ``saddle`` (n,) over which it leaves the hollow, and ``to`` (n,) the vertex past the
    brim to which it goes on; -1 for all other vertices."""

    saddle: np.ndarray
    to: np.ndarray


@dataclass(frozen=True)
class _Level:
    """Ways on level ground: ``distance`` (n,) to the nearest way down, metres; ``next``: (n,) vertex, -1 none."""

    distance: np.ndarray
    next: np.ndarray


def build_flow(tin: Tin, sink: Optional[np.ndarray] = None) -> Flow:
    """Find the way of water everywhere on ``tin``.

    ``sink``: (m,) int, number of the inlet that takes all water which reaches a triangle, -1 for none.
    """
    rank = height_order(tin)
    sink = np.full(len(tin.triangles), -1, np.int32) if sink is None else np.asarray(sink, np.int32)
    vertex_sink = _vertex_sinks(tin, sink)
    twin = _twins(tin)
    on_rim, used = np.zeros(len(rank), bool), np.zeros(len(rank), bool)
    used[tin.triangles] = True
    open_edge = np.flatnonzero(twin < 0)
    on_rim[tin.triangles.ravel()[open_edge]] = True
    on_rim[tin.triangles.ravel()[following(open_edge)]] = True
    stream, slope, level = _streams(tin)
    out = np.roll(stream, -1, axis=1) > stream
    way = _level_ways(tin, twin, rank, on_rim | (vertex_sink >= 0))
    down_vertex, down_edge, down_slope = _ways_down(tin, twin, rank, out, slope, level)
    flat = (down_vertex < 0) & (down_edge < 0) & ~on_rim
    down_vertex[flat] = way.next[flat]
    corner = np.full(len(level), -1, np.int64)
    corner[level] = _best_corner(tin.triangles[level], way.distance, rank)
    beyond, target = _beyond(tin, twin, stream, sink, corner, way.distance, rank)
    return Flow(
        tin, stream, out, slope, level, twin, beyond, target, corner, down_vertex, down_edge, down_slope, on_rim, sink,
        vertex_sink, rank, _way_rank(tin, way, rank), used,
    )  # fmt: skip


def _vertex_sinks(tin: Tin, sink: np.ndarray) -> np.ndarray:
    """The sink of each vertex (n,): the least number of those of its triangles."""
    taken = np.flatnonzero(sink >= 0)
    number = np.full(len(tin.vertices), np.iinfo(np.int32).max, np.int32)
    np.minimum.at(number, tin.triangles[taken].ravel(), np.repeat(sink[taken], 3))
    number[number == np.iinfo(np.int32).max] = -1
    return number


def _twins(tin: Tin) -> np.ndarray:
    """The opposite half-edge (3 m,) int32 of each, -1 at the rim."""
    vertex, beyond = tin.triangles.ravel(), tin.neighbours.ravel()
    end = np.roll(tin.triangles, -1, axis=1).ravel()
    inner = np.flatnonzero(beyond >= 0)
    across = tin.triangles[beyond[inner]]
    side = np.argmax(across == end[inner][:, None], axis=1)
    twin = np.full(len(vertex), -1, np.int32)
    twin[inner] = 3 * beyond[inner] + side.astype(np.int32)
    return twin


def _streams(tin: Tin) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Stream value of each corner (m, 3), slope (m,) and whether level (m,)."""
    # Each triangle is computed from its most south-western corner, so that its numbers do not depend on which is first.
    grid = tin.grid[tin.triangles]
    first = np.argmin(grid[:, :, 0] * (1 << 31) + grid[:, :, 1], axis=1)
    order = (first[:, None] + np.arange(3)) % 3
    del grid
    vertex = np.take_along_axis(tin.triangles, order, axis=1)
    x, y, z = tin.grid[:, 0], tin.grid[:, 1], tin.vertices[:, 2]
    (ex, ey, ez), (fx, fy, fz) = ([(c[vertex[:, k]] - c[vertex[:, 0]]) for c in (x, y, z)] for k in (1, 2))
    ex, ey, fx, fy = (c * GRID for c in (ex, ey, fx, fy))
    area = ex * fy - ey * fx
    east, north = (fz * ey - ez * fy) / area, (ez * fx - fz * ex) / area  # the way down
    level = (ez == 0) & (fz == 0)
    stream = np.zeros((len(vertex), 3))
    rows = np.arange(len(vertex))
    stream[rows, order[:, 1]] = east * ey - north * ex
    stream[rows, order[:, 2]] = east * fy - north * fx
    stream[level] = 0.0
    return stream, np.hypot(east, north), level


def _level_ways(tin: Tin, twin: np.ndarray, rank: np.ndarray, leaves: np.ndarray) -> _Level:
    """Shortest ways along level edges to a vertex that has a lower neighbour, ``leaves`` or stands for a pit."""
    n = len(rank)
    distance, after = np.zeros(n), np.full(n, -1, np.int64)
    one, other = _edges_once(tin, twin)
    z = tin.vertices[:, 2]
    goal = leaves.copy()
    goal[np.where(z[one] > z[other], one, other)[z[one] != z[other]]] = True
    even = z[one] == z[other]
    one, other = one[even], other[even]
    if len(one) == 0:
        return _Level(distance, after)
    names, number = np.unique(np.concatenate([one, other]), return_inverse=True)
    a, b = number.reshape(2, -1)
    length = np.hypot(*((tin.grid[one] - tin.grid[other]) * GRID).T)
    graph = coo_matrix((length, (a, b)), shape=(len(names),) * 2).tocsr()
    part = connected_components(graph, directed=False)[1]
    source = goal[names]
    source[_lowest_of_shut(part, source, rank[names])] = True
    reach = dijkstra(graph, directed=False, indices=np.flatnonzero(source), min_only=True)
    distance[names] = reach
    start, end = np.concatenate([a, b]), np.concatenate([b, a])
    through = reach[end] + np.concatenate([length, length])
    on_way = np.flatnonzero(~source[start] & (through <= reach[start] + 1e-9) & (reach[end] < reach[start]))
    on_way = on_way[np.lexsort((rank[names[end[on_way]]], start[on_way]))]
    first = on_way[np.append(True, np.diff(start[on_way]) != 0)] if len(on_way) else on_way
    after[names[start[first]]] = names[end[first]]
    return _Level(distance, after)


def _way_rank(tin: Tin, way: _Level, rank: np.ndarray) -> np.ndarray:
    result = rank.copy()
    result[np.lexsort((rank, way.distance, tin.vertices[:, 2]))] = np.arange(len(rank))
    return result


def _lowest_of_shut(part: np.ndarray, source: np.ndarray, rank: np.ndarray) -> np.ndarray:
    """Of each connected ``part`` without a ``source`` the member of least ``rank``."""
    order = np.lexsort((rank, part))
    first = order[np.append(True, np.diff(part[order]) != 0)]
    shut = np.bincount(part, source)[part[first]] == 0
    lowest: np.ndarray = first[shut]
    return lowest


def _edges_once(tin: Tin, twin: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    once = np.flatnonzero(twin < np.arange(len(twin)))
    vertex = tin.triangles.ravel()
    return vertex[once].astype(np.int64), vertex[following(once)].astype(np.int64)


def _ways_down(
    tin: Tin, twin: np.ndarray, rank: np.ndarray, out: np.ndarray, slope: np.ndarray, level: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Next vertex (n,), half-edge crossed to (n,) and slope (n,) of the steepest way from every vertex."""
    n, z = len(rank), tin.vertices[:, 2]
    one, other = _edges_once(tin, twin)
    falling = z[one] != z[other]
    high = np.where(z[one] > z[other], one, other)[falling]
    low = np.where(z[one] > z[other], other, one)[falling]
    steep = (z[high] - z[low]) / np.hypot(*((tin.grid[high] - tin.grid[low]) * GRID).T)
    # Water starts from corner i into a triangle when the edge opposite is the only one it leaves over.
    triangle, edge = np.nonzero(out & ~np.roll(out, -1, axis=1) & ~np.roll(out, 1, axis=1) & ~level[:, None])
    apex = tin.triangles[triangle, (edge + 2) % 3]
    best = np.zeros(n)
    np.maximum.at(best, high, steep)
    along = np.flatnonzero(steep == best[high])
    np.maximum.at(best, apex, slope[triangle])
    along = along[steep[along] == best[high[along]]]
    across = np.flatnonzero(slope[triangle] == best[apex])
    place = np.empty(n, np.int64)
    place[np.lexsort((tin.grid[:, 1], tin.grid[:, 0]))] = np.arange(n)
    down_vertex, down_edge = np.full(n, -1, np.int64), np.full(n, -1, np.int64)
    _enter_first(down_edge, apex[across], (3 * triangle + edge)[across], place[tin.triangles[triangle, edge]][across])
    _enter_first(down_vertex, high[along], low[along], place[low[along]])
    down_edge[down_vertex >= 0] = -1
    return down_vertex, down_edge, best


def _enter_first(into: np.ndarray, at: np.ndarray, value: np.ndarray, key: np.ndarray) -> None:
    """Set ``into[at]`` to the ``value`` of least ``key``."""
    order = np.lexsort((-key, at))  # the last one written stays
    into[at[order]] = value[order]


def _best_corner(triangles: np.ndarray, distance: np.ndarray, rank: np.ndarray) -> np.ndarray:
    order = np.lexsort((rank[triangles], distance[triangles]), axis=1)[:, :1]
    corner: np.ndarray = np.take_along_axis(triangles, order, axis=1)[:, 0].astype(np.int64)
    return corner


def _beyond(
    tin: Tin, twin: np.ndarray, stream: np.ndarray, sink: np.ndarray, corner: np.ndarray,
    distance: np.ndarray, rank: np.ndarray,
) -> Tuple[np.ndarray, np.ndarray]:  # fmt: skip
    """What each half-edge leads to, and its vertex or sink; see ``Flow``."""
    beyond = np.full(len(twin), CROSS, np.uint8)
    target = np.full(len(twin), -1, np.int64)
    across = twin // 3
    rim = twin < 0
    beyond[rim] = RIM
    # The triangle beyond takes the water unless its own leaves over the edge, or runs along it.
    enters = (np.roll(stream, -1, axis=1) - stream).ravel()[twin] < 0
    flat = ~rim & (corner[across] >= 0)
    channel = np.flatnonzero(~rim & ~enters & ~flat)
    beyond[channel] = VERTEX
    start = tin.triangles.ravel()[channel].astype(np.int64)
    end = tin.triangles.ravel()[following(channel)].astype(np.int64)
    z = tin.vertices[:, 2]
    lower = np.where(distance[start] != distance[end], distance[start] < distance[end], rank[start] < rank[end])
    lower = np.where(z[start] != z[end], z[start] < z[end], lower)
    target[channel] = np.where(lower, start, end)
    beyond[flat] = VERTEX
    target[flat] = corner[across[flat]]
    taken = ~rim & (sink[across] >= 0)
    beyond[taken] = SINK
    target[taken] = sink[across[taken]]
    return beyond, target
