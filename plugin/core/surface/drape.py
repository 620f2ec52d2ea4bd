"""Lay lines without heights on the surface: a vertex wherever they meet an edge of the triangulation."""

from __future__ import annotations

from dataclasses import replace
from typing import Tuple

import numpy as np

from .cells import candidate_pairs
from .locate import heights_in, triangles_at
from .mesh import Mesh, following
from .network import Network
from .predicates import orientation
from .splits import with_splits, with_vertices
from .tin import GRID

#: Bit on edges that have to stay while soft lines are inserted, so that the surface keeps its shape.
HELD = 128
#: Bit on the edges of the rim. A vertex on one is rounded to the grid, so that it may no longer be convex there.
RIM = 64


def drape_soft_lines(network: Network, mesh: Mesh) -> Network:
    """Give the soft segments of ``network`` the heights of ``mesh``, the surface of all that has heights.

    Their vertices take the surface's height; where they cross an edge they get a vertex on it. Parts outside the
    surface are left out. The hard lines come back as the marked edges of ``mesh``, split where a soft
    line crosses them; so do, with the bit ``HELD``, the sides of all triangles that a soft line enters.
    Without these the new vertices would draw other edges through the triangles around and change heights. The edges
    of the rim have the bit ``RIM``: what the new triangulation has beyond them is no part of the surface.
    """
    z = network.z.copy()
    bare = np.flatnonzero(np.isnan(z))
    tin, place = mesh.tin(z), np.column_stack([network.x[bare], network.y[bare]]) * GRID
    which, triangle = triangles_at(tin, place)  # none just beside the rim: vertices there would change the surface
    z[bare[which]] = heights_in(tin, triangle, place[which])
    network, half_edge = _with_edges(replace(network, z=z), mesh)
    edge_start = len(network.segments) - len(half_edge)
    cell = _cell(network, edge_start)
    segment, edge = _segments_over_edges(network, edge_start, cell)
    entered = np.concatenate([_beside(mesh, half_edge[edge - edge_start]), triangle])
    network = _hold(network, mesh, half_edge, entered)
    at_segment, at_vertex, at_along = _vertices_on_segments(network, mesh, edge_start, cell)
    along, along_edge = _parameters(network, segment, edge)
    a, b = network.segments[edge].T
    x = np.rint(network.x[a] + along_edge * (network.x[b] - network.x[a])).astype(np.int64)
    y = np.rint(network.y[a] + along_edge * (network.y[b] - network.y[a])).astype(np.int64)
    height = network.z[a] + along_edge * (network.z[b] - network.z[a])
    network, vertex = with_vertices(network, x, y, height)
    network = with_splits(
        network,
        np.concatenate([segment, edge, at_segment]),
        np.concatenate([along, along_edge, at_along]),
        np.concatenate([vertex, vertex, at_vertex]),
    )
    heights = network.z[network.segments]
    return network.part((network.kind != 0) & np.all(np.isfinite(heights), axis=1))


def _beside(mesh: Mesh, h: np.ndarray) -> np.ndarray:
    """The triangles on both sides of half-edges ``h``."""
    g = mesh.twin[h]
    return np.concatenate([h // 3, g[g >= 0] // 3])


def _hold(network: Network, mesh: Mesh, half_edge: np.ndarray, triangles: np.ndarray) -> Network:
    """Mark sides of ``triangles`` with ``HELD``, the rim with ``RIM``; ``half_edge``: those of the last segments."""
    entered = np.zeros(mesh.triangle_count, bool)
    entered[triangles] = True
    twin = mesh.twin[half_edge]
    side = entered[half_edge // 3] | ((twin >= 0) & entered[twin // 3])
    kind = network.kind.copy()
    kind[len(kind) - len(half_edge) :][side] |= HELD
    kind[len(kind) - len(half_edge) :][twin < 0] |= RIM
    return replace(network, kind=kind)


def _vertices_on_segments(
    network: Network, mesh: Mesh, edge_start: int, cell: float
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Soft segments that run through vertices of ``mesh``: segment, vertex, how far along (0..1)."""
    x, y = network.x, network.y
    s, t = network.segments[:edge_start].T
    vertices = np.unique(mesh.vertex).astype(np.int64)
    found = [np.empty((0, 2), np.int64)]
    ends_x, ends_y = np.column_stack([x[s], x[t]]), np.column_stack([y[s], y[t]])
    for i, j in candidate_pairs(ends_x, ends_y, x[vertices][:, None], y[vertices][:, None], cell):
        on = orientation(x, y, s[i], t[i], vertices[j]) == 0
        found.append(np.column_stack([i, vertices[j]])[on])
    segment, vertex = np.unique(np.concatenate(found), axis=0).T
    a, b = s[segment], t[segment]
    ux, uy = x[b] - x[a], y[b] - y[a]
    along = ((x[vertex] - x[a]) * ux + (y[vertex] - y[a]) * uy) / (ux * ux + uy * uy)
    between = (along > 0) & (along < 1)
    return segment[between], vertex[between], along[between]


def _with_edges(network: Network, mesh: Mesh) -> Tuple[Network, np.ndarray]:
    """The soft segments, then every edge of ``mesh`` as a segment (kind 0 where it is not marked); their half-edges."""
    soft = network.part(network.soft)
    h = np.flatnonzero((mesh.twin < 0) | (mesh.twin > np.arange(len(mesh.twin))))
    edges = np.column_stack([mesh.vertex[h], mesh.vertex[following(h)]]).astype(np.int64)
    joined = replace(
        soft,
        segments=np.concatenate([soft.segments, edges]),
        kind=np.concatenate([soft.kind, mesh.kind[h]]),
        line=np.concatenate([soft.line, np.full(len(h), -1, np.int64)]),
        soft=np.concatenate([soft.soft, np.zeros(len(h), bool)]),
    )
    return joined, h


def _cell(network: Network, edge_start: int) -> float:
    """A side of cells that suits the edges, the segments from ``edge_start`` on."""
    a, b = network.segments[edge_start:].T
    length = np.hypot(network.x[b] - network.x[a], network.y[b] - network.y[a])
    return float(max(np.median(length) * 2, 1.0))


def _segments_over_edges(network: Network, edge_start: int, cell: float) -> Tuple[np.ndarray, np.ndarray]:
    """Pairs (soft segment, edge) that cross; an edge may end on the segment, which gives no new vertex."""
    s, t = network.segments.T
    x, y = network.x, network.y
    ends_x, ends_y = np.column_stack([x[s], x[t]]), np.column_stack([y[s], y[t]])
    lines, edges = slice(0, edge_start), slice(edge_start, None)
    found = [np.empty((0, 2), np.int64)]
    for i, j in candidate_pairs(ends_x[lines], ends_y[lines], ends_x[edges], ends_y[edges], cell):
        j = j + edge_start
        side = [
            np.sign(orientation(x, y, *v))
            for v in ((s[i], t[i], s[j]), (s[i], t[i], t[j]), (s[j], t[j], s[i]), (s[j], t[j], t[i]))
        ]
        cross = (side[0] * side[1] < 0) & (side[2] * side[3] < 0)
        found.append(np.unique(np.column_stack([i, j])[cross], axis=0))
    pairs = np.unique(np.concatenate(found), axis=0)
    return pairs[:, 0], pairs[:, 1]


def _parameters(network: Network, first: np.ndarray, second: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Where two crossing segments cross: 0..1 along each."""
    (a, b), (c, d) = network.segments[first].T, network.segments[second].T
    x, y = network.x, network.y
    across = orientation(x, y, a, b, d) - orientation(x, y, a, b, c)
    along = orientation(x, y, c, d, a) - orientation(x, y, c, d, b)
    return orientation(x, y, c, d, a) / along, -orientation(x, y, a, b, c) / across
