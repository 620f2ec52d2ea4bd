"""The ground without the points in doubt: what the trusted points and coded lines around say about a place."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ..surface.delaunay import triangulate
from ..surface.insert import insert_segments
from ..surface.mesh import Mesh, following
from ..surface.parts import connected_parts
from ..surface.remove import holes_without, without_vertices
from ..surface.tin import GRID
from .walk import Walk, plain_tree

_MOST_STEPS = 400


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

    ``mesh``: vertices on the plan grid; ``number``: (p,) vertex of each point, those of the walk first, then the
    coded ones; ``first``: (n,) the first point at each vertex, -1 where none is left.
    """

    def __init__(self, mesh: Mesh, number: np.ndarray, z: np.ndarray, lines: np.ndarray) -> None:
        n = len(mesh.x)
        self.mesh, self.number, self._z, self._lines = mesh, number, z, lines
        self.first = np.full(n, -1, np.int64)
        self.first[number[::-1]] = np.arange(len(number))[::-1]
        self._count, self._total = np.bincount(number, minlength=n), np.bincount(number, z, n)

    def without(self, gone: np.ndarray) -> GroundNet:
        """The net without the points of mask ``gone`` (q,) of the walk; those that stay are numbered anew."""
        keep = np.append(~gone, np.ones(len(self.number) - len(gone), bool))
        number = self.number[keep]
        dead = np.bincount(number, minlength=len(self.first)) == 0
        dead &= self._count > 0
        on_line = np.any(dead[self.mesh.vertex] & (self.mesh.kind > 0))
        mesh = without_vertices(self.mesh, dead)
        if on_line:  # a line ran right through a point that is gone
            _draw(mesh, number, self._lines, int(np.count_nonzero(~gone)))
        return GroundNet(mesh, number, self._z[keep], self._lines)

    def ask(self, trusted: np.ndarray, asked: np.ndarray, xy: np.ndarray) -> Prediction:
        """Heights at points ``asked`` (k,) of the walk, at ``xy`` (k, 2), from the ``trusted`` (q,) and coded ones.

        No point asked may be trusted itself. ``xy``: local metres.
        """
        prediction = Prediction(*(np.full(len(asked), np.nan) for _ in range(3)))
        left_out = np.flatnonzero(~trusted)
        vertex = self.number[left_out]
        count, total = self._count.copy(), self._total.copy()
        np.subtract.at(count, vertex, 1)
        np.subtract.at(total, vertex, self._z[left_out])
        gone = np.zeros(len(count), bool)
        gone[vertex] = count[vertex] == 0
        own = self.number[asked]
        shared = ~gone[own]  # another point stands at the very place
        prediction.height[shared] = (total[own] / np.maximum(count[own], 1))[shared]
        prediction.gain[shared], prediction.reach[shared] = 1.0, 0.0
        inside = np.flatnonzero(~shared)
        holes = holes_without(self.mesh, self._around(gone, own[inside]))
        if len(inside) and holes.mesh.triangle_count:
            height = total[holes.vertex] / np.maximum(count[holes.vertex], 1)
            said = _Located(holes.mesh, height).at(xy[inside])
            for name in ("height", "gain", "reach"):
                getattr(prediction, name)[inside] = getattr(said, name)
        return prediction

    def _around(self, gone: np.ndarray, asked: np.ndarray) -> np.ndarray:
        """Those of the vertices ``gone`` (n,) that leave one hole with one of ``asked``."""
        start = np.flatnonzero(gone[self.mesh.vertex])
        a, b = self.mesh.vertex[start], self.mesh.end(start)
        joined = gone[b]
        number = np.cumsum(gone) - 1
        part = connected_parts(int(np.count_nonzero(gone)), number[a[joined]], number[b[joined]])
        wanted = np.zeros(len(part), bool)
        wanted[part[number[asked]]] = True
        result = gone.copy()
        result[gone] = wanted[part]
        return result


def ground_net(walk: Walk, coded: np.ndarray, lines: np.ndarray) -> GroundNet:
    """The net of the walk and of coded points (c, 3), local metres, not negative in plan.

    ``lines``: (k, 2) pairs of coded points joined by a line, which is an edge.
    """
    xyz = np.vstack([np.column_stack([walk.x, walk.y, walk.z]), coded])
    grid = np.rint(xyz[:, :2] / GRID).astype(np.int64)
    _, first, number = np.unique((grid[:, 0] << 31) | grid[:, 1], return_index=True, return_inverse=True)
    number = number.ravel()
    mesh = triangulate(*grid[first].T.copy())
    _draw(mesh, number, lines, len(walk))
    return GroundNet(mesh, number, xyz[:, 2], lines)


def _draw(mesh: Mesh, number: np.ndarray, lines: np.ndarray, walked: int) -> None:
    if len(lines) and mesh.triangle_count:
        # A line that crosses another one is left out here; building the surface reports it.
        insert_segments(mesh, number[lines + walked], np.ones(len(lines), np.uint8))


class _Located:
    """Heights at the vertices of a mesh, interpolated at places."""

    def __init__(self, mesh: Mesh, height: np.ndarray) -> None:
        self.mesh, self.x, self.y, self.z = mesh, mesh.x, mesh.y, height
        self._start = np.full(len(mesh.x), -1, np.int64)
        self._start[mesh.vertex] = np.arange(len(mesh.vertex))

    def at(self, xy: np.ndarray) -> Prediction:
        """Predict at places ``xy`` (k, 2) in the same local metres."""
        q = np.asarray(xy, float) / GRID
        height, gain, reach = (np.full(len(q), np.nan) for _ in range(3))
        triangle = self._locate(q)
        on = np.flatnonzero(triangle >= 0)
        corner = self.mesh.vertex.reshape(-1, 3)[triangle[on]]
        px, py = self.x[corner] - q[on, :1], self.y[corner] - q[on, 1:]
        weight = np.column_stack([_cross(px, py, a, b) for a, b in ((1, 2), (2, 0), (0, 1))])
        weight /= weight.sum(axis=1, keepdims=True)
        weight = np.clip(weight, 0, 1)
        height[on] = np.sum(weight * self.z[corner], axis=1)
        gain[on] = np.sum(weight**2, axis=1)
        reach[on] = np.sqrt(np.sum(weight * (px**2 + py**2), axis=1)) * GRID
        return Prediction(height, gain, reach)

    def _locate(self, q: np.ndarray) -> np.ndarray:
        """Triangle of each place, -1 outside: from the nearest vertex across the edges that face the place."""
        near = plain_tree(np.column_stack([self.x, self.y]).astype(float)).query(q)[1]
        edge = self._start[near]
        found = np.full(len(q), -1, np.int64)
        going = np.flatnonzero(edge >= 0)
        triangle = edge[going] // 3
        for _ in range(_MOST_STEPS):
            if not len(going):
                break
            side = np.column_stack([self._side(3 * triangle + k, q[going]) for k in range(3)])
            worst = np.argmin(side, axis=1)
            inside = side[np.arange(len(going)), worst] >= 0
            found[going[inside]] = triangle[inside]
            beyond = self.mesh.twin[3 * triangle + worst]
            on = ~inside & (beyond >= 0)
            going, triangle = going[on], beyond[on] // 3
        return found

    def _side(self, h: np.ndarray, q: np.ndarray) -> np.ndarray:
        """How far each place is to the left of each half-edge (twice the area over the edge's length)."""
        a, b = self.mesh.vertex[h], self.mesh.vertex[following(h)]
        ux, uy = (self.x[b] - self.x[a]).astype(float), (self.y[b] - self.y[a]).astype(float)
        area = ux * (q[:, 1] - self.y[a]) - uy * (q[:, 0] - self.x[a])
        result: np.ndarray = area / np.hypot(ux, uy)
        return result


def _cross(px: np.ndarray, py: np.ndarray, a: int, b: int) -> np.ndarray:
    result: np.ndarray = px[:, a] * py[:, b] - px[:, b] * py[:, a]
    return result


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
