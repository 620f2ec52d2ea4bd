"""Fewer vertices for the same ground: thin a surface to a stated vertical tolerance.

Greedy insertion (M. Garland and P. S. Heckbert, "Fast Polygonal Approximation of Terrains and Height
Fields", 1995), many points a round: begin with the vertices that must stay, triangulate, and add of each
triangle the vertex farthest above or below it, as long as that is beyond the tolerance and no neighbour has a
worse one. Only the vertices of triangles that are new in a round are measured again.

The vertices of the rim and of breaklines stay, so the outline, holes and lines are kept in plan and height.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..progress import Progress, silent
from .delaunay import triangulate
from .insert import insert_segments
from .locate import heights_at, heights_in, locate
from .mesh import Mesh, following
from .parts import connected_parts
from .tin import Tin

BAD_TOLERANCE = Text(
    "thin.tolerance",
    QT_TRANSLATE_NOOP("core", "The vertical tolerance is {tolerance} m; give a number of 0 or more."),
)

_ROUNDING = 1e-9  # metres: vertices of a plane aren't exactly on it
_RIM = 128  # a bit of an edge's kind, beside those of ``LineKind``, while the surface is thinned


@dataclass(frozen=True)
class Thinned:
    """A thinned surface and how well it keeps to the one it came from.

    ``kept``: (k,) int64 numbers of the vertices that stayed; vertex i of ``tin`` is vertex ``kept[i]`` of the original.
    ``tolerance``: as asked, metres. ``largest_difference``: greatest distance in height from any original vertex to
    the thinned surface, metres, checked on the finished surface; met at ``easting``, ``northing``.
    ``rms_difference``: root of the mean square of all those distances, metres. ``rounds``: of triangulation.
    """

    tin: Tin
    kept: np.ndarray
    tolerance: float
    largest_difference: float
    rms_difference: float
    easting: float
    northing: float
    rounds: int


def thin_surface(tin: Tin, tolerance: float, progress: Progress = silent) -> Thinned:
    """Drop vertices of ``tin`` as long as every one of them stays within ``tolerance`` metres of the new surface.

    The check is at the original vertices; between them, where an old edge crosses a new one, the two
    surfaces may be farther apart. Raises SurveyError for a tolerance below 0 or not a number.
    """
    if not (math.isfinite(tolerance) and tolerance >= 0):
        raise SurveyError(BAD_TOLERANCE, tolerance=tolerance)
    lines = _lines(tin)
    kept = np.zeros(len(tin.vertices), bool)
    kept[lines.ends] = True
    used = np.zeros(len(tin.vertices), bool)
    used[tin.triangles] = True
    over = _Vertices(np.full(len(used), -1, np.int64), np.zeros(len(used)))
    mesh, inside = _triangulated(tin, np.flatnonzero(kept), lines)
    corners, rest, rounds = mesh.vertex.reshape(-1, 3), np.flatnonzero(used & ~kept), 1
    _measure(tin, corners, inside, rest, over)
    while True:
        more = _worst(mesh, over, rest[over.off[rest] > tolerance + _ROUNDING])
        if len(more) == 0:
            break
        kept[more] = True
        mesh, inside = _triangulated(tin, np.flatnonzero(kept), lines)
        before, corners = corners, mesh.vertex.reshape(-1, 3)
        number = _same_triangles(before, corners, len(used))
        fresh = inside.copy()
        fresh[number[number >= 0]] = False
        rest = np.flatnonzero(used & ~kept)
        over.triangle[rest] = number[over.triangle[rest]]
        _measure(tin, corners, fresh, rest[over.triangle[rest] < 0], over)
        rounds += 1
        progress(1.0 - 0.95**rounds, "thin")  # how many rounds it takes shows only at the end
    thinned = _checked(tin, _tin(tin, mesh, inside), np.flatnonzero(kept), tolerance, rounds)
    progress(1.0, "thin")
    return thinned


@dataclass
class _Vertices:
    """Of each vertex: number of the ``triangle`` it is over, and how far ``off`` it is in height, metres."""

    triangle: np.ndarray
    off: np.ndarray


@dataclass(frozen=True)
class _Lines:
    """Edges that stay: ``ends`` (k, 2) vertices, a rim edge with the surface on its left; ``kind`` (k,) bits."""

    ends: np.ndarray
    kind: np.ndarray


def _lines(tin: Tin) -> _Lines:
    """The rim and the marked edges, each once."""
    rim = tin.neighbours < 0
    once = rim | ((tin.edge_kind != 0) & (tin.neighbours > np.arange(len(tin.triangles))[:, None]))
    triangle, side = np.nonzero(once)
    ends = np.column_stack([tin.triangles[triangle, side], tin.triangles[triangle, (side + 1) % 3]])
    kind = tin.edge_kind[triangle, side] | np.where(rim[triangle, side], _RIM, 0).astype(np.uint8)
    return _Lines(ends.astype(np.int64), kind)


def _triangulated(tin: Tin, kept: np.ndarray, lines: _Lines) -> Tuple[Mesh, np.ndarray]:
    """The constrained triangulation of the vertices ``kept`` (numbered as in ``tin``) and its triangles in the rim."""
    x, y = (np.ascontiguousarray(tin.grid[:, axis]) for axis in (0, 1))
    mesh = triangulate(x[kept], y[kept])
    mesh = Mesh(x, y, kept.astype(np.int32)[mesh.vertex], mesh.twin)
    if insert_segments(mesh, lines.ends, lines.kind):
        raise AssertionError("edges of one surface cross")
    start, end = mesh.vertex, mesh.vertex[following(np.arange(len(mesh.vertex)))]
    rim = lines.ends[lines.kind & _RIM != 0]
    n = len(x)
    inner = np.isin(start.astype(np.int64) * n + end, rim[:, 0] * n + rim[:, 1])
    free = np.flatnonzero((mesh.twin >= 0) & (mesh.kind & _RIM == 0))
    label = connected_parts(mesh.triangle_count, free // 3, mesh.twin[free] // 3)
    return mesh, np.isin(label, label[np.flatnonzero(inner) // 3])


def _same_triangles(before: np.ndarray, after: np.ndarray, n: int) -> np.ndarray:
    """Number in ``after`` of each triangle of ``before`` (m, 3), -1 where it is gone; ``n``: of vertices."""
    (first, last), (first_after, last_after) = (_turned(corners, n) for corners in (before, after))
    order = np.argsort(first_after)
    place = np.minimum(np.searchsorted(first_after[order], first), len(order) - 1)
    found = order[place]
    return np.where((first_after[found] == first) & (last_after[found] == last), found, -1)


def _turned(corners: np.ndarray, n: int) -> Tuple[np.ndarray, np.ndarray]:
    """Key of the edge that begins at the least vertex of each triangle, and the vertex opposite to it."""
    turn = (np.argmin(corners, axis=1)[:, None] + np.arange(3)) % 3
    a, b, c = np.take_along_axis(corners, turn, 1).astype(np.int64).T
    return a * n + b, c


def _local(tin: Tin, corners: np.ndarray) -> Tin:
    """Only the triangles ``corners``, without a rim; coordinates from the origin, so that nothing is rounded."""
    return replace(tin, triangles=corners, neighbours=np.zeros_like(corners), origin=np.zeros(2))


def _measure(tin: Tin, corners: np.ndarray, fresh: np.ndarray, vertices: np.ndarray, over: _Vertices) -> None:
    """Find out of ``vertices`` in which of the ``fresh`` triangles (mask) they are and how far off its plane."""
    number = np.flatnonzero(fresh)
    local = _local(tin, corners[number])
    found = locate(local, tin.vertices[vertices, :2])
    height = heights_in(local, found, tin.vertices[vertices, :2])
    over.triangle[vertices] = number[found]
    over.off[vertices] = np.abs(tin.vertices[vertices, 2] - height)


def _worst(mesh: Mesh, over: _Vertices, vertices: np.ndarray) -> np.ndarray:
    """Of each triangle the vertex among ``vertices`` farthest off, if it isn't less so than those of its neighbours.

    (Without that, a hilltop on an edge would be paid for twice: it takes a third more vertices.)
    """
    triangle, off = over.triangle[vertices], over.off[vertices]
    order = np.lexsort((vertices, -off, triangle))
    first = order[np.diff(triangle[order], prepend=-1) != 0]
    most = np.zeros(mesh.triangle_count + 1)  # the last entry answers for "no twin"
    most[triangle[first]] = off[first]
    around = mesh.twin.reshape(-1, 3)[triangle[first]]
    beside = most[np.where(around >= 0, around // 3, -1)].max(axis=1)
    return vertices[first[off[first] >= beside]]


def _tin(tin: Tin, mesh: Mesh, inside: np.ndarray) -> Tin:
    """The surface of the triangles ``inside`` of a mesh over the vertices of ``tin``."""
    corner = mesh.vertex.reshape(-1, 3)[inside]
    used = np.unique(corner)
    number = np.full(len(tin.vertices), -1, np.int32)
    number[used] = np.arange(len(used), dtype=np.int32)
    triangle = np.full(mesh.triangle_count + 1, -1, np.int32)  # the last entry answers for "no twin"
    triangle[:-1][inside] = np.arange(len(corner), dtype=np.int32)
    beyond = np.where(mesh.twin >= 0, mesh.twin // 3, mesh.triangle_count).reshape(-1, 3)[inside]
    return replace(
        tin,
        vertices=tin.vertices[used],
        triangles=number[corner],
        neighbours=triangle[beyond],
        edge_kind=mesh.kind.reshape(-1, 3)[inside] & np.uint8(_RIM - 1),
        grid=tin.grid[used],
        vertex_source=tin.vertex_source[used],
    )


def _checked(tin: Tin, thin: Tin, kept: np.ndarray, tolerance: float, rounds: int) -> Thinned:
    """Compare the finished surface with every original vertex."""
    vertices = tin.vertices[np.unique(tin.triangles)]
    height = heights_at(_local(thin, thin.triangles), vertices[:, :2])
    if np.any(np.isnan(height)):
        raise AssertionError("a vertex is outside the thinned surface, though its rim was kept")
    off = np.abs(height - vertices[:, 2])
    worst = int(np.argmax(off))
    easting, northing = (float(v) for v in vertices[worst, :2] + tin.origin)
    rms = float(np.sqrt(np.mean(off**2)))
    return Thinned(thin, kept, tolerance, float(off[worst]), rms, easting, northing, rounds)
