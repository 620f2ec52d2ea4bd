"""The ground without the points in doubt: what the trusted points and coded lines around say about a place."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional, Tuple

import numpy as np

from ..progress import Progress, part, silent
from ..surface.delaunay import triangulate
from ..surface.insert import insert_segments
from ..surface.locate import locate, weights_in
from ..surface.mesh import Mesh, preceding
from ..surface.parts import connected_parts
from ..surface.remove import Holes, holes_without, without_vertices
from ..surface.tin import GRID
from .walk import Walk, plain_tree


@dataclass(frozen=True)
class Prediction:
    """Heights from linear interpolation at k places, nan where there is no triangle.

    ``gain``: variance of the height in units of the variance of one point. ``reach``: root of the weighted mean
    square distance to the corners (m), which scales the error that curved ground gives.
    """

    height: np.ndarray
    gain: np.ndarray
    reach: np.ndarray


class GroundNet:
    """The triangulation of all points of a walk and of the coded ones, to be asked at places whose points are left out.

    ``mesh``: vertices on the plan grid, counted from ``low`` (2,) in grid units; ``number``: (p,) vertex of each point,
    those of the walk first, then the coded ones; ``first``: (n,) the first point at each vertex, -1 where none is left.
    """

    def __init__(
        self, mesh: Mesh, number: np.ndarray, z: np.ndarray, lines: np.ndarray, low: np.ndarray,
        kept: Optional[np.ndarray] = None,
    ) -> None:  # fmt: skip
        """``kept``: (p,) bool, points that are still in the net; all by default."""
        n = len(mesh.x)
        self.mesh, self.number, self._z, self._lines, self._low, self._kept = mesh, number, z, lines, low, kept
        self.first = np.full(n, -1, np.int64)
        self.first[number[::-1]] = np.arange(len(number))[::-1]
        own, height = (number, z) if kept is None else (number[kept], z[kept])
        self._count, self._total = np.bincount(own, minlength=n), np.bincount(own, height, n)
        self._spoke: Optional[np.ndarray] = None  # a half-edge that starts at each vertex, once somebody asks

    def without(self, gone: np.ndarray, progress: Progress = silent) -> GroundNet:
        """The net without the points of mask ``gone`` (q,) of the walk; those that stay are numbered anew."""
        if not gone.any():
            return self
        keep = np.append(~gone, np.ones(len(self.number) - len(gone), bool))
        number = self.number[keep]
        mesh, on_line = self._mesh_of(number, progress)
        if on_line:
            _draw(mesh, number, self._lines, int(np.count_nonzero(~gone)))
        return GroundNet(mesh, number, self._z[keep], self._lines, self._low)

    def emptied(self, gone: np.ndarray, progress: Progress = silent) -> GroundNet:
        """The net without the points of mask ``gone`` (q,) of the walk, where all keep their numbers.

        Whoever asks often while these are not trusted asks this one: they are taken out once. It can be asked only.
        """
        if not gone.any():
            return self
        keep = np.append(~gone, np.ones(len(self.number) - len(gone), bool))
        mesh, on_line = self._mesh_of(self.number[keep], progress)
        if on_line:
            _draw(mesh, self.number, self._lines, len(gone))
        return GroundNet(mesh, self.number, self._z, self._lines, self._low, keep)

    def _mesh_of(self, number: np.ndarray, progress: Progress) -> Tuple[Mesh, bool]:
        """The mesh without the vertices that are not in ``number``, and whether a line ran right through one."""
        dead = np.bincount(number, minlength=len(self.first)) == 0
        dead &= self._count > 0
        on_line = bool(np.any(dead[self.mesh.vertex] & (self.mesh.kind > 0)))
        return without_vertices(self.mesh, dead, progress), on_line

    def ask(self, trusted: np.ndarray, asked: np.ndarray, xy: np.ndarray, progress: Progress = silent) -> Prediction:
        """Heights at points ``asked`` (k,) of the walk, at ``xy`` (k, 2), from the ``trusted`` (q,) and coded ones.

        No point asked may be trusted itself. ``xy``: local metres.
        """
        prediction = Prediction(*(np.full(len(asked), np.nan) for _ in range(3)))
        left_out = np.flatnonzero(~trusted if self._kept is None else ~trusted & self._kept[: len(trusted)])
        vertex, of = np.unique(self.number[left_out], return_inverse=True)
        taken = _Taken(vertex, np.bincount(of.ravel()), np.bincount(of.ravel(), self._z[left_out]))
        gone = np.zeros(len(self._count), bool)
        gone[vertex[taken.count == self._count[vertex]]] = True
        own = self.number[asked]
        shared = ~gone[own]  # another point stands at the very place
        prediction.height[shared] = self._height(own[shared], taken)
        prediction.gain[shared], prediction.reach[shared] = 1.0, 0.0
        inside = np.flatnonzero(~shared)
        if not len(inside):
            return prediction
        around, spokes = self._around(gone, own[inside])
        progress(0.2, "quality")
        holes = holes_without(self.mesh, around, np.unique(spokes // 3), part(progress, 0.2, 0.7))
        progress(0.7, "quality")
        if holes.mesh.triangle_count:
            start = self._beside(own[inside], spokes, gone, holes)
            said = _predict(holes.mesh, self._height(holes.vertex, taken), xy[inside] - self._low * GRID, start)
            for name in ("height", "gain", "reach"):
                getattr(prediction, name)[inside] = getattr(said, name)
        return prediction

    def _beside(self, asked: np.ndarray, spokes: np.ndarray, gone: np.ndarray, holes: Holes) -> np.ndarray:
        """A triangle (k,) of the holes' mesh at a vertex near each of ``asked``, -1 where none is known.

        ``spokes``: half-edges that start at vertices ``gone`` (n,).
        """
        a, b = self.mesh.vertex[spokes], self.mesh.end(spokes)
        near = np.where(gone, -1, np.arange(len(gone)))
        while True:  # from the rims of the holes inwards
            here = np.flatnonzero(near[b] >= 0)
            if not len(here):
                break
            near[a[here]] = near[b[here]]
            lacking = near[a] < 0
            a, b = a[lacking], b[lacking]
        at = np.full(len(holes.vertex) + 1, -1, np.int64)  # the last answers for none
        at[holes.mesh.vertex] = np.arange(len(holes.mesh.vertex)) // 3
        result: np.ndarray = at[np.where(near[asked] >= 0, np.searchsorted(holes.vertex, near[asked]), -1)]
        return result

    def _height(self, vertex: np.ndarray, taken: _Taken) -> np.ndarray:
        """Mean height (k,) of the points at each vertex, but for those taken out."""
        count, total = self._count[vertex], self._total[vertex]
        place = np.minimum(np.searchsorted(taken.vertex, vertex), len(taken.vertex) - 1)
        some = taken.vertex[place] == vertex
        count[some] -= taken.count[place[some]]
        total[some] -= taken.total[place[some]]
        result: np.ndarray = total / np.maximum(count, 1)
        return result

    def _around(self, gone: np.ndarray, asked: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        """Mask (n,) of those of the vertices ``gone`` (n,) that leave one hole with one of ``asked``, and the
        half-edges that start at these.
        """
        vertex = np.flatnonzero(gone)
        spokes = self._spokes(vertex)
        a, b = self.mesh.vertex[spokes], self.mesh.end(spokes)
        joined = gone[b]
        part = connected_parts(len(vertex), *(np.searchsorted(vertex, v[joined]) for v in (a, b)))
        wanted = np.zeros(len(vertex), bool)
        wanted[part[np.searchsorted(vertex, asked)]] = True
        result = np.zeros(len(gone), bool)
        result[vertex] = wanted[part]
        return result, spokes[result[a]]

    def _spokes(self, vertex: np.ndarray) -> np.ndarray:
        """The half-edges that start at the vertices (k,), met by turning counter-clockwise around each."""
        mesh = self.mesh
        if self._spoke is None:
            self._spoke = np.full(len(mesh.x), -1, np.int32)
            self._spoke[mesh.vertex] = np.arange(len(mesh.vertex), dtype=np.int32)
            rim = np.flatnonzero(mesh.twin < 0)
            self._spoke[mesh.vertex[rim]] = rim  # from there the turn meets all of them
        first = self._spoke[vertex]
        first = first[first >= 0]
        now, found = first, [first]
        while len(now):
            onward = mesh.twin[preceding(now)]
            going = (onward >= 0) & (onward != first)
            now, first = onward[going], first[going]
            found.append(now)
        return np.concatenate(found)


@dataclass(frozen=True)
class _Taken:
    """Points taken out of a net: at ``vertex`` (k,), which rise, how many and the sum of their heights."""

    vertex: np.ndarray
    count: np.ndarray
    total: np.ndarray


def ground_net(walk: Walk, coded: np.ndarray, lines: np.ndarray, progress: Progress = silent) -> GroundNet:
    """The net of the walk and of coded points (c, 3), local metres.

    ``lines``: (k, 2) pairs of coded points joined by a line, which is an edge.
    """
    xyz = np.vstack([np.column_stack([walk.x, walk.y, walk.z]), coded])
    grid = np.rint(xyz[:, :2] / GRID).astype(np.int64)
    low = np.minimum(grid.min(axis=0), 0)  # lines may reach beyond the walk, on the other side of its origin
    grid -= low
    _, first, number = np.unique((grid[:, 0] << 31) | grid[:, 1], return_index=True, return_inverse=True)
    number = number.ravel()
    x, y = grid[first].T.copy()
    mesh = triangulate(x, y, progress=progress)
    _draw(mesh, number, lines, len(walk), progress)
    return GroundNet(mesh, number, xyz[:, 2], lines, low)


def _draw(mesh: Mesh, number: np.ndarray, lines: np.ndarray, walked: int, progress: Progress = silent) -> None:
    if len(lines) and mesh.triangle_count:
        # A line that crosses another one is left out here; building the surface reports it.
        insert_segments(mesh, number[lines + walked], np.ones(len(lines), np.uint8), progress)


def _predict(mesh: Mesh, height: np.ndarray, xy: np.ndarray, start: np.ndarray) -> Prediction:
    """At places ``xy`` (k, 2), local metres, between the ``height`` (n,) of a mesh's vertices.

    ``start``: a triangle (k,) near each place, -1 for none.
    """
    tin = mesh.tin(height)
    said = Prediction(*(np.full(len(xy), np.nan) for _ in range(3)))
    triangle = locate(tin, xy, start)
    on = np.flatnonzero(triangle >= 0)
    weight = weights_in(tin, triangle[on], xy[on])
    corner = tin.vertices[tin.triangles[triangle[on]]]
    away = np.sum((corner[:, :, :2] - xy[on, None]) ** 2, axis=2)
    said.height[on] = np.sum(weight * corner[:, :, 2], axis=1)
    said.gain[on] = np.sum(weight**2, axis=1)
    said.reach[on] = np.sqrt(np.sum(weight * away, axis=1))
    return said


def pass_distance(x: np.ndarray, y: np.ndarray, order: np.ndarray, apart: int) -> float:
    """Third quartile of the distance (m) from a point to the nearest one recorded at least ``apart`` places
    earlier or later.

    nan where no point has such a neighbour; taken from at most 2,000 points spread over the survey.
    """
    n = len(x)
    if n <= apart:
        return float("nan")
    sample = np.unique(np.linspace(0, n - 1, min(n, 2000)).astype(np.int64))
    xy = np.column_stack([x, y])
    distance, neighbour = plain_tree(xy).query(xy[sample], k=min(n, 4 * apart))
    other = np.abs(order[neighbour] - order[sample][:, None]) > apart
    nearest = np.where(other, distance, np.inf).min(axis=1)
    nearest = nearest[np.isfinite(nearest)]
    return float(np.percentile(nearest, 75)) if len(nearest) else float("nan")
