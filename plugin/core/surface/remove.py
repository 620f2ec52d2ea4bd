"""Take points out of a finished triangulation: only the holes they leave are triangulated anew.

A triangle without a removed corner stays right. The others leave holes, whose triangles have corners on the holes' rims
only; so the vertices on the rims are triangulated by themselves with the rims as edges, and what lies inside
them fills the holes.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional

import numpy as np

from ..progress import Progress, part, silent
from .delaunay import region_of, triangulate
from .insert import insert_segments
from .mesh import Mesh


@dataclass(frozen=True)
class Holes:
    """What the removal of vertices leaves open in a mesh.

    ``vertex``: (b,) vertices on the rims of the holes; ``mesh``: their triangulation, which numbers them by place
    in ``vertex``, with the rims and lines as edges. ``triangles``: (t,) triangles of the old mesh that are gone;
    ``rim``: (r,) their half-edges on the rims; ``lines``: (l,) those of lines inside a hole, both sides.
    """

    vertex: np.ndarray
    mesh: Mesh
    triangles: np.ndarray
    rim: np.ndarray
    lines: np.ndarray

    def in_mesh(self, old: Mesh, half: np.ndarray) -> np.ndarray:
        """The half-edge of ``mesh`` for each of ``half``, -1 where nothing fills that side of it."""
        start, end = (np.searchsorted(self.vertex, v) for v in (old.vertex[half], old.end(half)))
        n, every = len(self.vertex), np.arange(len(self.mesh.vertex))
        key = self.mesh.vertex.astype(np.int64) * n + self.mesh.end(every)
        if not len(key):
            return np.full(len(start), -1, np.int64)
        order = np.argsort(key)
        wanted = start.astype(np.int64) * n + end
        place = order[np.minimum(np.searchsorted(key[order], wanted), len(key) - 1)]
        return np.where(key[place] == wanted, place, -1)


def holes_without(
    mesh: Mesh, gone: np.ndarray, triangles: Optional[np.ndarray] = None, progress: Progress = silent
) -> Holes:
    """The holes that vertices of mask ``gone`` (n,) leave in a Delaunay ``mesh``, whose lines end at none of them.

    ``triangles``: those that have one of them as corner (t,), rising, where they are known.
    """
    if triangles is None:
        triangles = np.unique(np.flatnonzero(gone[mesh.vertex]) // 3)
    open_ = np.zeros(mesh.triangle_count, bool)
    open_[triangles] = True
    half = (3 * triangles[:, None] + np.arange(3)).ravel()
    start, end, twin = mesh.vertex[half], mesh.end(half), mesh.twin[half]
    stays, outside = ~gone[start] & ~gone[end], (twin < 0) | ~open_[np.maximum(twin, 0) // 3]
    rim, lines = half[stays & outside], half[stays & ~outside & (mesh.kind[half] > 0)]
    edges = np.concatenate([rim, lines])
    vertex = np.unique(mesh.vertex[half])
    vertex = vertex[~gone[vertex]].astype(np.int64)
    inner = triangulate(mesh.x[vertex], mesh.y[vertex], progress=part(progress, 0.0, 0.6))
    if inner.triangle_count:
        ends = np.searchsorted(vertex, np.column_stack([mesh.vertex[edges], mesh.end(edges)]))
        insert_segments(inner, ends, np.ones(len(edges), np.uint8), part(progress, 0.6, 1.0))
    return Holes(vertex, inner, triangles, rim, lines)


def without_vertices(mesh: Mesh, gone: np.ndarray, progress: Progress = silent) -> Mesh:
    """The Delaunay triangulation without the vertices of mask ``gone`` (n,), which keep their numbers.

    Lines (edges whose kind is not 0) stay; none may end at a vertex that goes.
    """
    holes = holes_without(mesh, gone, progress=progress)
    if not len(holes.triangles):
        return mesh
    inside, lines = holes.in_mesh(mesh, holes.rim), holes.in_mesh(mesh, holes.lines)
    seeds = np.concatenate([inside, lines])
    seeds = seeds[seeds >= 0]
    keep = np.ones(mesh.triangle_count, bool)
    keep[holes.triangles] = False
    fill = np.full(holes.mesh.triangle_count, not keep.any())
    if len(seeds):
        fill = region_of(holes.mesh, seeds)
    count = int(np.count_nonzero(keep))
    old_place, new_place = _places(keep, 0), _places(fill, count)
    old, new = _half_edges(keep), _half_edges(fill)
    vertex = np.concatenate([mesh.vertex[old], holes.vertex[holes.mesh.vertex[new]].astype(mesh.vertex.dtype)])
    twin = np.concatenate([_moved(mesh.twin[old], old_place), _moved(holes.mesh.twin[new], new_place)])
    kind = np.concatenate([mesh.kind[old], np.zeros(len(new), np.uint8)])
    on_line = _moved(lines, new_place)
    kind[on_line[on_line >= 0]] = mesh.kind[holes.lines[on_line >= 0]]
    outside = _moved(mesh.twin[holes.rim], old_place)  # the side of the rim that stays
    filled = _moved(inside, new_place)
    meet = (outside >= 0) & (filled >= 0)
    twin[outside[outside >= 0]] = filled[outside >= 0]
    twin[filled[filled >= 0]] = outside[filled >= 0]
    kind[filled[meet]] = kind[outside[meet]]
    return Mesh(mesh.x, mesh.y, vertex, twin.astype(np.int32), kind)


def _half_edges(mask: np.ndarray) -> np.ndarray:
    result: np.ndarray = (3 * np.flatnonzero(mask)[:, None] + np.arange(3)).ravel()
    return result


def _places(mask: np.ndarray, start: int) -> np.ndarray:
    """Where the first half-edge of each triangle of ``mask`` (m,) goes when those are numbered from ``start`` on; -1
    for the others.
    """
    return np.where(mask, 3 * (np.cumsum(mask, dtype=np.int32) - 1 + start), -1)


def _moved(half: np.ndarray, place: np.ndarray) -> np.ndarray:
    """Half-edges, -1 for none, after their triangles went to ``place``; -1 where the triangle went nowhere."""
    if not len(place):
        return np.full(len(half), -1, np.int64)
    triangle = np.maximum(half, 0) // 3
    to = place[triangle]
    return np.where((half >= 0) & (to >= 0), to + (half - 3 * triangle), -1)
