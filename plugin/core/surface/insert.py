"""Insert segments as edges of a triangulation, exactly and without new vertices.

All segments are handled side by side. Each round walks every waiting segment through the
triangles it crosses; those whose corridors share no triangle are made edges by flips inside their
corridors; the others wait for the next round. A segment that runs through a vertex is split there.

Flips inside a corridor end: a flip is made where the new diagonal does not cross the segment, or where
its farther end is nearer to the segment than the farther end of the old one, so the far ends sink for
good. There always is such an edge: of the fan of crossing edges at the corridor's farthest vertex one
has a strictly convex quadrilateral (else all their other ends would lie on that vertex's own side of
the segment). Lawson's flips then restore the constrained Delaunay property around.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np

from ..progress import Progress, silent
from .mesh import Mesh, following, preceding
from .predicates import orientation


@dataclass(frozen=True)
class Crossing:
    """A segment that can't become an edge since it crosses one: numbers of its vertices and of the edge's."""

    segment: Tuple[int, int]
    edge: Tuple[int, int]


@dataclass
class _Segments:
    """Waiting segments: start and end vertex and kind bits, each (k,)."""

    a: np.ndarray
    b: np.ndarray
    kind: np.ndarray

    def __len__(self) -> int:
        return len(self.a)

    def take(self, which: np.ndarray) -> _Segments:
        return _Segments(self.a[which], self.b[which], self.kind[which])


@dataclass
class _Corridors:
    """Triangles met by segments: ``triangle`` and the ``segment`` (number) each belongs to, (c,)."""

    segment: np.ndarray
    triangle: np.ndarray


def insert_segments(
    mesh: Mesh, segments: np.ndarray, kind: np.ndarray, progress: Progress = silent, lawful: bool = True
) -> List[Crossing]:
    """Make ``segments`` (k, 2) edges of ``mesh`` (a triangulated convex hull) and mark them with ``kind`` (k,) bits.

    ``lawful``: the mesh must be Delaunay but for marked edges, and is so again afterwards; else any triangulation
    will do, and what is flipped stays as it comes. A segment that crosses a marked edge is left out and returned.
    """
    distinct = segments[:, 0] != segments[:, 1]
    if not np.any(distinct):
        return []
    fan = _Fan(mesh)
    a, b = np.array(segments[distinct], np.int64).T
    waiting = _Segments(a, b, kind[distinct])
    crossings: List[Crossing] = []
    total = max(1, len(waiting))
    while len(waiting):
        waiting, first = _settle_present(mesh, fan, waiting)
        waiting, corridors, rest, blocked = _walk(mesh, waiting, first)
        crossings += blocked
        chosen = _disjoint(mesh, corridors, len(waiting))
        mesh.touched = []
        changed = _carve(mesh, waiting, corridors, chosen)
        if lawful:
            mesh.legalise(changed)
        fan.refresh(mesh.touched)
        mesh.touched = None
        waiting = _joined(waiting.take(~chosen), rest)
        progress(1.0 - min(len(waiting), total) / total, "lines")
    return crossings


class _Fan:
    """The triangles around each vertex, met by turning counter-clockwise."""

    def __init__(self, mesh: Mesh) -> None:
        self.mesh = mesh
        self.at = np.full(len(mesh.x), -1, np.int32)  # any half-edge that starts at the vertex
        self.rim = np.full(len(mesh.x), -1, np.int32)  # the rim's half-edge that starts there, where there is one
        self.at[mesh.vertex] = np.arange(len(mesh.vertex), dtype=np.int32)
        outer = np.flatnonzero(mesh.twin < 0)
        self.rim[mesh.vertex[outer]] = outer

    def refresh(self, touched: List[np.ndarray]) -> None:
        """Take up the flips that changed the triangles of half-edges ``touched``."""
        if touched:
            h = np.concatenate(touched)
            h = np.concatenate([h, following(h), preceding(h)])
            self.at[self.mesh.vertex[h]] = h
            outer = h[self.mesh.twin[h] < 0]
            self.rim[self.mesh.vertex[outer]] = outer

    def turn(self, h: np.ndarray) -> np.ndarray:
        """The next half-edge counter-clockwise around the vertex where ``h`` starts."""
        beyond = self.mesh.twin[preceding(h)]
        return np.where(beyond >= 0, beyond, self.rim[self.mesh.vertex[h]])


def _settle_present(mesh: Mesh, fan: _Fan, waiting: _Segments) -> Tuple[_Segments, np.ndarray]:
    """Mark what already is an edge; for the rest, the first edge each segment crosses (as seen from its start).

    A segment that leaves along an edge is marked there and goes on from that edge's end.
    """
    a, b, kind = waiting.a, waiting.b, waiting.kind
    h = fan.at[a]
    done: List[Tuple[np.ndarray, ...]] = []
    while len(a):
        p, q = mesh.end(h), mesh.apex(h)
        side_p, side_q = orientation(mesh.x, mesh.y, a, b, p), orientation(mesh.x, mesh.y, a, b, q)
        along_p = (side_p == 0) & _ahead(mesh, a, b, p)
        along_q = (side_q == 0) & _ahead(mesh, a, b, q) & ~along_p
        _mark(mesh, h[along_p], kind[along_p])
        _mark(mesh, preceding(h[along_q]), kind[along_q])
        found = (side_p < 0) & (side_q > 0)
        done.append((a[found], b[found], kind[found], following(h[found])))
        along = along_p | along_q
        onward = np.where(along, np.where(along_p, p, q), a)
        going = ~found & (onward != b)
        h = np.where(along, fan.at[onward], fan.turn(h))[going]
        a, b, kind = onward[going], b[going], kind[going]
    columns = [np.concatenate(c) for c in zip(*done)] if done else [a, b, kind, h]
    return _Segments(*columns[:3]), columns[3]


def _ahead(mesh: Mesh, a: np.ndarray, b: np.ndarray, v: np.ndarray) -> np.ndarray:
    x, y = mesh.x, mesh.y
    mask: np.ndarray = (x[b] - x[a]) * (x[v] - x[a]) + (y[b] - y[a]) * (y[v] - y[a]) > 0
    return mask


def _mark(mesh: Mesh, h: np.ndarray, kind: np.ndarray) -> None:
    g = mesh.twin[h]
    np.bitwise_or.at(mesh.kind, h, kind)
    np.bitwise_or.at(mesh.kind, g[g >= 0], kind[g >= 0])


def _walk(mesh: Mesh, waiting: _Segments, first: np.ndarray) -> Tuple[_Segments, _Corridors, _Segments, List[Crossing]]:
    """Follow each segment from its first crossed edge to its end or to a vertex on it.

    Returns the segments so shortened, their corridors, what is left of them beyond such vertices,
    and those that met a marked edge (they are dropped).
    """
    number, edge = np.arange(len(waiting)), first
    a, b = waiting.a, waiting.b.copy()
    met: List[Tuple[np.ndarray, np.ndarray]] = [(number, first // 3)]
    blocked_by = np.full(len(waiting), -1, np.int64)
    while len(number):
        barred = mesh.kind[edge] != 0
        blocked_by[number[barred]] = edge[barred]
        number, edge = number[~barred], edge[~barred]
        beyond = mesh.twin[edge]
        met.append((number, beyond // 3))
        apex = mesh.apex(beyond)
        side = orientation(mesh.x, mesh.y, a[number], waiting.b[number], apex)
        b[number[side == 0]] = apex[side == 0]
        edge = np.where(side > 0, following(beyond), preceding(beyond))[side != 0]
        number = number[side != 0]
    keep = blocked_by < 0
    crossings = [
        Crossing((int(a[i]), int(waiting.b[i])), (int(mesh.vertex[e]), int(mesh.end(e))))
        for i, e in zip(np.flatnonzero(~keep), blocked_by[~keep])
    ]
    segment, triangle = (np.concatenate(column) for column in zip(*met))
    new_number = np.cumsum(keep) - 1
    corridors = _Corridors(new_number[segment[keep[segment]]], triangle[keep[segment]])
    left = keep & (b != waiting.b)
    rest = _Segments(b[left], waiting.b[left], waiting.kind[left])
    return _Segments(a[keep], b[keep], waiting.kind[keep]), corridors, rest, crossings


def _disjoint(mesh: Mesh, corridors: _Corridors, count: int) -> np.ndarray:
    """Mask (count,) of segments whose corridors share no triangle; at least one if there are any."""
    # A scattered but repeatable precedence: in order of number, parallel lines would wait for each other in a row.
    rank = np.random.default_rng(count).permutation(count)
    by_rank = np.argsort(rank[corridors.segment], kind="stable")
    owner = mesh.triangle_scratch
    owner[corridors.triangle[by_rank]] = corridors.segment[by_rank]
    chosen = np.ones(count, bool)
    chosen[corridors.segment[owner[corridors.triangle] != corridors.segment]] = False
    return chosen


def _joined(first: _Segments, second: _Segments) -> _Segments:
    return _Segments(*(np.concatenate([getattr(first, c), getattr(second, c)]) for c in ("a", "b", "kind")))


def _carve(mesh: Mesh, waiting: _Segments, corridors: _Corridors, chosen: np.ndarray) -> np.ndarray:
    """Flip the corridors of the ``chosen`` segments until each segment is an edge; half-edges of changed triangles."""
    mine = chosen[corridors.segment]
    segment, triangle = corridors.segment[mine], corridors.triangle[mine].astype(np.int64)
    changed = (3 * triangle[:, None] + np.arange(3)).ravel()
    while len(triangle):
        crossed, of, active = _crossed_edges(mesh, waiting, segment, triangle)
        h, of_h = _edges_to_flip(mesh, waiting, crossed, of)
        mesh.flip(h)
        diagonal = preceding(h)
        start, end, a, b = mesh.vertex[diagonal], mesh.end(diagonal), waiting.a[of_h], waiting.b[of_h]
        finished = ((start == a) & (end == b)) | ((start == b) & (end == a))
        _mark(mesh, diagonal[finished], waiting.kind[of_h[finished]])
        segment, triangle = segment[active], triangle[active]
    return changed


@dataclass
class _Crossed:
    """Edges crossed by segments, by their half-edge ``h`` (k,) that runs to the segment's left.

    ``ends``: (4, k) its start and end, its apex and that of its twin; ``offset``: (4, k) how far these are to the
    left of the segment, that of the twin's apex not yet known.
    """

    h: np.ndarray
    ends: np.ndarray
    offset: np.ndarray

    def take(self, which: np.ndarray) -> _Crossed:
        return _Crossed(self.h[which], self.ends[:, which], self.offset[:, which])


def _crossed_edges(
    mesh: Mesh, waiting: _Segments, segment: np.ndarray, triangle: np.ndarray
) -> Tuple[_Crossed, np.ndarray, np.ndarray]:
    """The edges of ``triangle`` (c,) that its ``segment`` (c,) crosses, each once, their segments, and a mask (c,) of
    the triangles that still are crossed."""
    corner = mesh.vertex[3 * triangle + np.arange(3)[:, None]]
    offset = orientation(mesh.x, mesh.y, waiting.a[segment], waiting.b[segment], corner)
    right, left = offset < 0, offset > 0
    found = [np.flatnonzero(right[i] & left[(i + 1) % 3]) for i in range(3)]
    ends, known = (
        np.concatenate([rows[[i, (i + 1) % 3, (i + 2) % 3, 0]][:, found[i]] for i in range(3)], axis=1)
        for rows in (corner, offset)
    )
    h = np.concatenate([3 * triangle[found[i]] + i for i in range(3)])
    ends[3] = mesh.apex(mesh.twin[h])
    active = (right[0] | right[1] | right[2]) & (left[0] | left[1] | left[2])
    return _Crossed(h, ends, known), segment[np.concatenate(found)], active


def _edges_to_flip(mesh: Mesh, waiting: _Segments, crossed: _Crossed, of: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Of the edges ``crossed`` by segments ``of``, independent ones whose flip is progress; with their segments."""
    x, y = mesh.x, mesh.y
    start, end, apex, beyond = crossed.ends
    convex = np.flatnonzero((orientation(x, y, beyond, end, apex) > 0) & (orientation(x, y, apex, start, beyond) > 0))
    crossed, of = crossed.take(convex), of[convex]
    offset = crossed.offset
    offset[3] = orientation(x, y, waiting.a[of], waiting.b[of], crossed.ends[3])
    far = np.abs(offset)
    now, then = np.maximum(far[0], far[1]), np.maximum(far[2], far[3])
    chosen = (np.sign(offset[2]) * np.sign(offset[3]) >= 0) | (then < now)
    tie = np.flatnonzero((then == now) & ~chosen)
    if len(tie):
        farthest = _farthest_along(mesh, waiting, crossed.ends[:, tie], of[tie], far[:, tie] == now[tie])
        chosen[tie] = farthest[0] > farthest[1]
    h, of = crossed.h[chosen], of[chosen]
    free = mesh.independent(h)
    return h[free], of[free]


def _farthest_along(
    mesh: Mesh, waiting: _Segments, ends: np.ndarray, of: np.ndarray, among: np.ndarray
) -> Tuple[np.ndarray, np.ndarray]:
    """How far along its segment each edge and its other diagonal (``ends``, (4, k)) reach with the ends ``among``.

    Where both reach equally far, the vertex of higher number is taken to be the farther.
    """
    x, y = mesh.x, mesh.y
    a, b = waiting.a[of], waiting.b[of]
    along = (x[b] - x[a]) * (x[ends] - x[a]) + (y[b] - y[a]) * (y[ends] - y[a])
    along = np.where(among, along, np.iinfo(np.int64).min)
    number = np.where(among & (along == along.max(axis=0)), ends, -1)
    reach, least = along.max(axis=0), np.iinfo(np.int64).min
    edge = np.where(along[:2].max(axis=0) == reach, number[:2].max(axis=0), least)
    diagonal = np.where(along[2:].max(axis=0) == reach, number[2:].max(axis=0), least)
    return edge, diagonal
