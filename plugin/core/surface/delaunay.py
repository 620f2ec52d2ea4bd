"""The Delaunay triangulation of many points: pieces, sewn, then flipped until exactly right.

Qhull's cost a point grows with the size of one call, so the points are cut into tiles of about equal
number. The tiles' hulls are disjoint convex polygons; the gaps between them are triangulated from
the hulls' corners alone, with the hulls' sides as constraints. The whole is then a valid
triangulation, and Lawson's flips with exact predicates make it the Delaunay triangulation; with
the rule for ties in ``Mesh.unlawful`` it is the same one however it was cut.
"""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from typing import List, Tuple

import numpy as np

from ..progress import Progress, part, silent
from .insert import insert_segments
from .mesh import Mesh, following
from .parts import connected_parts
from .pieces import triangulate_piece

#: Points of one tile; measured to be about the cheapest for Qhull and the seams together.
TILE_POINTS = 2000
_THREADS = 2  # Qhull runs without Python's lock; more threads gain little


def triangulate(x: np.ndarray, y: np.ndarray, tile_points: int = TILE_POINTS, progress: Progress = silent) -> Mesh:
    """The Delaunay triangulation of distinct points (int64 ``x``, ``y`` in [0, predicates.LIMIT)).

    The mesh has no triangles if all points are on one line. Cocircular points follow the rule in
    :meth:`Mesh.unlawful`; the result does not depend on ``tile_points``.
    """
    order, bounds = _tiles(x, y, tile_points)
    tx, ty = x[order], y[order]
    mesh = _sewn(tx, ty, bounds, tile_points, part(progress, 0.0, 0.6))
    mesh.legalise(progress=part(progress, 0.6, 0.9))
    vertex = order.astype(np.int32)[mesh.vertex]
    progress(1.0, "surface")
    return Mesh(x, y, vertex, mesh.twin)


def _tiles(x: np.ndarray, y: np.ndarray, tile_points: int) -> Tuple[np.ndarray, np.ndarray]:
    """Cut points into columns by x and each column into tiles by y: order (n,) and tile starts (k + 1,)."""
    n = len(x)
    columns = max(1, round((n / tile_points) ** 0.5))
    if columns == 1:
        return np.arange(n), np.array([0, n])
    order = np.argsort((x << 31) | y)
    cuts = np.linspace(0, n, columns + 1).astype(np.int64)
    bounds = [np.zeros(1, np.int64)]
    for start, end in zip(cuts[:-1], cuts[1:]):
        column = order[start:end]
        order[start:end] = column[np.argsort((y[column] << 31) | x[column])]
        bounds.append(np.linspace(start, end, columns + 1).astype(np.int64)[1:])
    return order, np.concatenate(bounds)


def _sewn(x: np.ndarray, y: np.ndarray, bounds: np.ndarray, tile_points: int, progress: Progress) -> Mesh:
    """Valid triangulation of all points from triangulated tiles ``bounds[i]:bounds[i + 1]``."""
    pieces = _triangulate_tiles(x, y, bounds, progress)
    vertex, twin, alone = [], [], []
    offset = 0
    for start, end, (piece, piece_twin) in zip(bounds[:-1], bounds[1:], pieces):
        if len(piece) == 0:
            alone.append(np.arange(start, end))
        vertex.append(piece + np.int32(start))
        twin.append(np.where(piece_twin >= 0, piece_twin + np.int32(offset), np.int32(-1)))
        offset += len(piece)
    tiles = Mesh(x, y, np.concatenate(vertex).astype(np.int32), np.concatenate(twin).astype(np.int32))
    if len(bounds) == 2:
        return tiles
    return _close_gaps(tiles, np.concatenate([*alone, np.empty(0, np.int64)]), tile_points)


def _triangulate_tiles(
    x: np.ndarray, y: np.ndarray, bounds: np.ndarray, progress: Progress
) -> List[Tuple[np.ndarray, np.ndarray]]:
    tiles = list(zip(bounds[:-1], bounds[1:]))
    if len(tiles) == 1:
        return [triangulate_piece(x, y)]
    pieces = []
    pool = ThreadPoolExecutor(_THREADS)
    try:
        for piece in pool.map(lambda tile: triangulate_piece(x[tile[0] : tile[1]], y[tile[0] : tile[1]]), tiles):
            pieces.append(piece)
            progress(len(pieces) / len(tiles), "surface")
    finally:  # Python 3.9 is the first with cancel_futures: a cancelled run must not go on in the background
        pool.shutdown(wait=True, cancel_futures=True)
    return pieces


def _close_gaps(tiles: Mesh, alone: np.ndarray, tile_points: int) -> Mesh:
    """Add the triangles between the tiles' hulls; ``alone``: points of tiles without triangles."""
    rim = np.flatnonzero(tiles.twin < 0)
    start, end = tiles.vertex[rim], tiles.end(rim)
    joints = np.unique(np.concatenate([start, alone]))
    if 2 * len(joints) > len(tiles.x):
        tile_points = len(joints)  # tiling again would not make it smaller
    between = triangulate(tiles.x[joints], tiles.y[joints], tile_points)
    a, b = np.searchsorted(joints, start), np.searchsorted(joints, end)
    insert_segments(between, np.column_stack([a, b]), np.ones(len(a), np.uint8))
    inside = _half_edges(between, a, b)
    keep = ~region_of(between, inside)
    number = np.cumsum(keep) - 1 + tiles.triangle_count
    slots = (3 * np.flatnonzero(keep)[:, None] + np.arange(3)).ravel()
    moved = np.full(len(between.vertex), -1, np.int32)
    moved[slots] = (3 * number[slots // 3] + slots % 3).astype(np.int32)
    outside = between.twin[inside]  # the gap's side of each hull edge
    moved_outside = np.where(outside >= 0, moved[outside], -1)
    gap_twin = np.where(between.twin[slots] >= 0, moved[between.twin[slots]], -1)
    vertex = np.concatenate([tiles.vertex, joints.astype(np.int32)[between.vertex[slots]]])
    twin = np.concatenate([tiles.twin, gap_twin]).astype(np.int32)
    twin[rim] = moved_outside
    sewn = moved_outside >= 0
    twin[moved_outside[sewn]] = rim[sewn]
    return Mesh(tiles.x, tiles.y, vertex, twin)


def _half_edges(mesh: Mesh, start: np.ndarray, end: np.ndarray) -> np.ndarray:
    """The half-edge from each ``start`` to each ``end``; all must be edges of the mesh."""
    n = len(mesh.x)
    key = mesh.vertex.astype(np.int64) * n + mesh.vertex[following(np.arange(len(mesh.vertex)))]
    order = np.argsort(key)
    found: np.ndarray = order[np.searchsorted(key[order], start.astype(np.int64) * n + end)]
    return found


def region_of(mesh: Mesh, seeds: np.ndarray) -> np.ndarray:
    """Mask of the triangles that can be reached from the triangles of half-edges ``seeds`` across free edges."""
    free = np.flatnonzero((mesh.twin >= 0) & (mesh.kind == 0))
    label = connected_parts(mesh.triangle_count, free // 3, mesh.twin[free] // 3)
    mask: np.ndarray = np.isin(label, label[seeds // 3])
    return mask
