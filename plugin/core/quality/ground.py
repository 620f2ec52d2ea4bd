"""The ground without the points in doubt: what the trusted points and coded lines around say about a place."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.spatial import cKDTree

from ..surface.delaunay import triangulate
from ..surface.insert import insert_segments
from ..surface.mesh import Mesh, following
from ..surface.tin import GRID

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


class Ground:
    """A constrained triangulation of trusted points, to be asked at places that are not part of it."""

    def __init__(self, xyz: np.ndarray, segments: np.ndarray) -> None:
        """``xyz`` (n, 3): local metres, not negative in plan; ``segments`` (k, 2): coded lines between them."""
        grid = np.rint(xyz[:, :2] / GRID).astype(np.int64)
        key = (grid[:, 0] << 31) | grid[:, 1]
        _, first, number = np.unique(key, return_index=True, return_inverse=True)
        self.x, self.y = grid[first].T.copy()
        self.z = np.bincount(number, xyz[:, 2]) / np.bincount(number)
        self.mesh: Mesh = triangulate(self.x, self.y) if len(first) > 2 else Mesh(
            self.x, self.y, np.empty(0, np.int32), np.empty(0, np.int32)
        )  # fmt: skip
        if len(segments) and self.mesh.triangle_count:
            # A line that crosses another one is left out here; building the surface reports it.
            insert_segments(self.mesh, number[segments], np.ones(len(segments), np.uint8))
        self._start = np.full(len(first), -1, np.int64)
        self._start[self.mesh.vertex] = np.arange(len(self.mesh.vertex))

    def at(self, xy: np.ndarray) -> Prediction:
        """Predict at places ``xy`` (k, 2) in the same local metres."""
        q = np.asarray(xy, float) / GRID
        height, gain, reach = (np.full(len(q), np.nan) for _ in range(3))
        if not self.mesh.triangle_count or not len(q):
            return Prediction(height, gain, reach)
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
        near = cKDTree(np.column_stack([self.x, self.y]).astype(float)).query(q)[1]
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
    distance, neighbour = cKDTree(xy).query(xy[sample], k=min(n, 4 * apart))
    other = np.abs(order[neighbour] - order[sample][:, None]) > apart
    nearest = np.where(other, distance, np.inf).min(axis=1)
    nearest = nearest[np.isfinite(nearest)]
    return float(np.percentile(nearest, 75)) if len(nearest) else float("nan")
