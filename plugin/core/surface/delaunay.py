"""The Delaunay triangulation of many points: pieces, sewn, then flipped until exactly right.

Qhull's cost a point grows with the size of one call, so the points are cut into tiles of about equal
number (larger ones where the points are in strings or on curves, so that most would be on the tiles' rims).
The tiles' hulls are disjoint convex polygons; the gaps between them are triangulated from
the hulls' corners alone, with the hulls' sides as constraints. The whole is then a valid
triangulation, and Lawson's flips with exact predicates make it the Delaunay triangulation; with
the rule for ties in ``Mesh.unlawful`` it is the same one however it was cut.
"""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from typing import List, Optional, Sequence, Tuple, Union

import numpy as np

from ..progress import Progress, part, silent
from .insert import insert_segments
from .mesh import Mesh, following
from .parts import connected_parts
from .pieces import triangulate_piece

#: Points of one tile where nothing else suits better, the least and the most; the most is about the cheapest for Qhull
#: and the seams together. Of fewer points are made so many tiles, so that all threads have work.
_LEAST_TILE, _MOST_TILE, _TILES = 2000, 5000, 20
_THREADS = 2  # Qhull runs without Python's lock; more threads gain little
_WHOLE = 12_000  # up to so many points one call is cheaper than tiles and seams
_FIRST = 16  # one tile in so many is triangulated first, to see whether tiles of this size suit the points
# Share of a tile's triangles to be changed by its neighbours from which larger tiles are cheaper, and the share that
# these should have: it falls with the square root of their points.
_MOST_UNSETTLED, _WANTED_UNSETTLED = 0.3, 0.25
_NONE = np.empty(0, np.int32)


def triangulate(x: np.ndarray, y: np.ndarray, tile_points: Optional[int] = None, progress: Progress = silent) -> Mesh:
    """The Delaunay triangulation of distinct points (int64 ``x``, ``y`` in [0, predicates.LIMIT)).

    The mesh has no triangles if all points are on one line. Cocircular points follow the rule in
    :meth:`Mesh.unlawful`; the result does not depend on ``tile_points``, by default what suits the points.
    """
    order, mesh = _sewn(x, y, tile_points, part(progress, 0.0, 0.9))
    vertex = order.astype(np.int32)[mesh.vertex]
    progress(1.0, "surface")
    return Mesh(x, y, vertex, mesh.twin)


def _sewn(x: np.ndarray, y: np.ndarray, tile_points: Optional[int], progress: Progress) -> Tuple[np.ndarray, Mesh]:
    """The points in an order (n,) of their own and their triangulation, numbered in that order."""
    usual = tile_points or min(max(_LEAST_TILE, len(x) // _TILES), _MOST_TILE)
    size, order = usual, np.arange(len(x))
    while True:
        if len(x) <= (tile_points or max(_WHOLE, 2 * size)):
            x, y = x[order], y[order]  # after the order of tiles: what is near in plan is near in memory
            return order, Mesh(x, y, *_triangulate_tile(x, y, size > usual))
        order, bounds = _tiles(x, y, size)
        tx, ty = x[order], y[order]
        pieces = _triangulate_tiles(tx, ty, bounds, tile_points is None, progress)
        if not isinstance(pieces, float):
            break
        size = int(size * (pieces / _WANTED_UNSETTLED) ** 2)
    tiles, room, alone = _side_by_side(tx, ty, bounds, pieces)
    mesh, added = _close_gaps(tiles, room, alone, tile_points)
    mesh.legalise(added)
    return order, mesh


def _tiles(x: np.ndarray, y: np.ndarray, tile_points: int) -> Tuple[np.ndarray, np.ndarray]:
    """Cut points into columns by x and each column into tiles by y: order (n,) and tile starts (k + 1,)."""
    columns = max(2, round((len(x) / tile_points) ** 0.5))
    order = _sorted_by(x, np.arange(len(x)))
    cuts = _cuts(x[order], columns)
    if np.any(x[order[cuts[1:-1]]] == x[order[cuts[1:-1] - 1]]):  # a string that has to be cut: in order of y
        order = _sorted_by(x, _sorted_by(y, np.arange(len(x))))
    column = np.empty(len(x), np.uint16)
    column[order] = np.repeat(np.arange(columns, dtype=np.uint16), np.diff(cuts))
    order = _sorted_by(y, order)
    order = order[np.argsort(column[order], kind="stable")]
    bounds = [np.zeros(1, np.int64)]
    for start, end in zip(cuts[:-1], cuts[1:]):
        bounds.append(start + _cuts(y[order[start:end]], columns)[1:])
    return order, np.concatenate(bounds)


def _sorted_by(value: np.ndarray, order: np.ndarray) -> np.ndarray:
    """An ``order`` (n,) sorted by ``value`` (n,), in [0, 2**32); what is equal stays in it.

    By halves of 16 bits, which numpy sorts by counting: less than half the time of one sort.
    """
    value = value.astype(np.uint32)
    for half in ((value & 0xFFFF).astype(np.uint16), (value >> 16).astype(np.uint16)):
        order = order[np.argsort(half[order], kind="stable")]
    return order


def _cuts(value: np.ndarray, parts: int) -> np.ndarray:
    """Where to cut rising ``value`` (n,) into about equal ``parts``: starts (parts + 1,).

    Each cut is made at the widest step near its place, so that strings of points stay whole.
    """
    even = np.linspace(0, len(value), parts + 1).astype(np.int64)
    reach = len(value) // (4 * parts)
    for i in range(1, parts):
        near = value[even[i] - reach - 1 : even[i] + reach + 1]
        even[i] += np.argmax(np.diff(near)) - reach
    return even


def _triangulate_tile(x: np.ndarray, y: np.ndarray, on_curves: bool = False) -> Tuple[np.ndarray, np.ndarray]:
    """Half-edges ``(vertex, twin)`` of the Delaunay triangulation of one tile's points."""
    mesh = Mesh(x, y, *triangulate_piece(x, y, on_curves))
    mesh.legalise()
    return mesh.vertex, mesh.twin


def _triangulate_tiles(
    x: np.ndarray, y: np.ndarray, bounds: np.ndarray, choosy: bool, progress: Progress
) -> Union[List[Tuple[np.ndarray, np.ndarray]], float]:
    """The pieces of all tiles; if it is ``choosy`` and too small a tile, only the share of :func:`_unsettled`."""
    tiles = [slice(start, end) for start, end in zip(bounds[:-1], bounds[1:])]
    pieces: List[Tuple[np.ndarray, np.ndarray]] = [(_NONE, _NONE)] * len(tiles)
    first = range(0, len(tiles), _FIRST)
    rest = sorted(set(range(len(tiles))) - set(first))
    pool = ThreadPoolExecutor(_THREADS)
    try:
        done = 0
        for some in (first, rest):
            for i, piece in zip(some, pool.map(lambda i: _triangulate_tile(x[tiles[i]], y[tiles[i]]), some)):
                pieces[i] = piece
                done += 1
                progress(done / len(tiles), "surface")
            if choosy and some is first:
                unsettled = float(np.mean([_unsettled(x[tiles[i]], y[tiles[i]], pieces[i][0]) for i in first]))
                if unsettled > _MOST_UNSETTLED:
                    return unsettled
    finally:  # Python 3.9 is the first with cancel_futures: a cancelled run must not go on in the background
        pool.shutdown(wait=True, cancel_futures=True)
    return pieces


def _unsettled(x: np.ndarray, y: np.ndarray, vertex: np.ndarray) -> float:
    """Share of a tile's triangles that its neighbours may change: their circles reach beyond the tile."""
    if len(vertex) == 0:
        return 1.0
    place = x[vertex.reshape(-1, 3)].astype(float) + 1j * y[vertex.reshape(-1, 3)]
    a, b, c = place.T
    b, c = b - a, c - a
    centre = (b * np.abs(c) ** 2 - c * np.abs(b) ** 2) / (b * c.conj() - b.conj() * c)
    radius, centre = np.abs(centre), centre + a
    within = (centre.real - radius >= x.min()) & (centre.real + radius <= x.max())
    within &= (centre.imag - radius >= y.min()) & (centre.imag + radius <= y.max())
    return 1.0 - float(np.mean(within))


def _side_by_side(
    x: np.ndarray, y: np.ndarray, bounds: np.ndarray, pieces: Sequence[Tuple[np.ndarray, np.ndarray]]
) -> Tuple[Mesh, np.ndarray, np.ndarray]:
    """All tiles as one mesh, gaps between them; the array (2, 6 n) that begins with its vertices and twins and has room
    for all triangles of ``x, y`` (n,); and the points of tiles without triangles.
    """
    room, alone = np.empty((2, 6 * len(x)), np.int32), [np.empty(0, np.int64)]
    vertex, twin = room
    offset = 0
    for start, end, (piece, piece_twin) in zip(bounds[:-1], bounds[1:], pieces):
        if len(piece) == 0:
            alone.append(np.arange(start, end))
        own = slice(offset, offset + len(piece))
        np.add(piece, np.int32(start), out=vertex[own])
        np.add(piece_twin, np.int32(offset), out=twin[own])
        twin[own][piece_twin < 0] = -1
        offset += len(piece)
    return Mesh(x, y, vertex[:offset], twin[:offset]), room, np.concatenate(alone)


def _close_gaps(
    tiles: Mesh, room: np.ndarray, alone: np.ndarray, tile_points: Optional[int]
) -> Tuple[Mesh, np.ndarray]:
    """Add the triangles between the tiles' hulls, in the ``room`` behind theirs; ``alone``: points of tiles without
    triangles.

    Also returns the half-edges of the added triangles: all that may be unlawful.
    """
    rim = np.flatnonzero(tiles.twin < 0)
    start, end = tiles.vertex[rim], tiles.end(rim)
    joints = np.unique(np.concatenate([start, alone]))
    if 2 * len(joints) > len(tiles.x):
        tile_points = len(joints)  # tiling again would not make it smaller
    between = triangulate(tiles.x[joints], tiles.y[joints], tile_points)
    a, b = np.searchsorted(joints, start), np.searchsorted(joints, end)
    insert_segments(between, np.column_stack([a, b]), np.ones(len(a), np.uint8), lawful=False)  # the caller sees to it
    inside = _half_edges(between, a, b)
    keep = ~region_of(between, inside)
    number = np.cumsum(keep) - 1 + tiles.triangle_count
    slots = (3 * np.flatnonzero(keep)[:, None] + np.arange(3)).ravel()
    moved = np.full(len(between.vertex), -1, np.int32)
    moved[slots] = (3 * number[slots // 3] + slots % 3).astype(np.int32)
    outside = between.twin[inside]  # the gap's side of each hull edge
    moved_outside = np.where(outside >= 0, moved[outside], -1)
    first, last = len(tiles.vertex), len(tiles.vertex) + len(slots)
    vertex, twin = room[:, :last]
    vertex[first:] = joints[between.vertex[slots]]
    twin[first:] = np.where(between.twin[slots] >= 0, moved[between.twin[slots]], -1)
    twin[rim] = moved_outside
    sewn = moved_outside >= 0
    twin[moved_outside[sewn]] = rim[sewn]
    return Mesh(tiles.x, tiles.y, vertex, twin), np.arange(first, last, dtype=np.int32)


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
