"""The triangulated surface that all later stages ask."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any, Optional, Tuple

import numpy as np

#: Plan coordinates are whole numbers of this length (m); geometry is decided on those integers.
GRID = 1e-4


@dataclass(frozen=True)
class Tin:
    """A triangulated irregular network; immutable.

    ``vertices``: (n, 3) float64, metres from ``origin`` in plan, height as surveyed.
    ``triangles``: (m, 3) int32 vertex numbers, counter-clockwise.
    ``neighbours``: (m, 3) int32; entry [t, i] is the triangle across edge i of t, -1 at the rim.
    Edge i of a triangle runs from its corner i to its corner (i + 1) % 3.
    ``edge_kind``: (m, 3) uint8 bit set of ``LineKind`` of each edge, 0 for a plain edge.
    ``grid``: (n, 2) int64, plan coordinates in units of ``GRID`` from ``origin``.
    ``origin``: (2,) float64 easting and northing of the local zero, metres.
    ``vertex_source``: (n,) int64 index of the survey point of each vertex, -1 where a line gave it.
    ``crs``: pyproj CRS or None.
    """

    vertices: np.ndarray
    triangles: np.ndarray
    neighbours: np.ndarray
    edge_kind: np.ndarray
    grid: np.ndarray
    origin: np.ndarray
    vertex_source: np.ndarray
    crs: Optional[Any] = None

    @property
    def bounds(self) -> Tuple[float, float, float, float]:
        """West, south, east, north of the vertices in the CRS, metres."""
        low = self.vertices[:, :2].min(axis=0) + self.origin
        high = self.vertices[:, :2].max(axis=0) + self.origin
        return float(low[0]), float(low[1]), float(high[0]), float(high[1])

    @property
    def height_range(self) -> Tuple[float, float]:
        """Lowest and highest height of a vertex that a triangle uses, metres."""
        heights = self.vertices[np.unique(self.triangles), 2]
        return float(heights.min()), float(heights.max())

    @property
    def plan_area(self) -> float:
        """Area in plan, square metres."""
        return float(self.plan_areas().sum())

    def plan_areas(self) -> np.ndarray:
        """Area (m,) of each triangle in plan, square metres."""
        corner = self.vertices[:, :2].T[:, self.triangles.T]  # coordinate, corner, triangle: long rows are fast
        u, v = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
        area: np.ndarray = 0.5 * (u[0] * v[1] - u[1] * v[0])
        return area

    def edge_lengths(self) -> np.ndarray:
        """Length (m, 3) of each triangle's edges in plan, metres; edge i runs from corner i to the next."""
        corner = self.vertices[self.triangles, :2]
        step = np.roll(corner, -1, axis=1) - corner
        length: np.ndarray = np.hypot(step[:, :, 0], step[:, :, 1])
        return length

    def corners(self) -> np.ndarray:
        """Corner coordinates (m, 3, 3): triangle, corner, local x, y and height."""
        return self.vertices[self.triangles]

    def part(self, keep: np.ndarray) -> Tin:
        """Some of its triangles, by a mask (m,), and their vertices; neighbours left out count as none."""
        number = np.full(len(keep) + 1, -1, np.int32)
        number[:-1][keep] = np.arange(np.count_nonzero(keep), dtype=np.int32)
        used, corner = np.unique(self.triangles[keep], return_inverse=True)
        return replace(
            self,
            vertices=self.vertices[used],
            triangles=corner.reshape(-1, 3).astype(np.int32),
            neighbours=number[self.neighbours[keep]],
            edge_kind=self.edge_kind[keep],
            grid=self.grid[used],
            vertex_source=self.vertex_source[used],
        )
