"""The triangles of a surface, corner by corner: boxes, planes, and on which side of their edges places are."""

from __future__ import annotations

from typing import Tuple

import numpy as np

from ..surface.tin import Tin
from .polygons import across, rows


class Triangles:
    """Corners (m, 3), boxes and slopes of the triangles of a TIN, in metres from ``base``."""

    def __init__(self, tin: Tin, base: np.ndarray) -> None:
        self.base = base
        corner = tin.vertices.T[:, tin.triangles.T]  # (3, 3, m): each corner's coordinates side by side in memory
        self.x = corner[0].T + (tin.origin[0] - base[0])
        self.y = corner[1].T + (tin.origin[1] - base[1])
        self.z = corner[2].T
        self.low = np.column_stack([across(np.minimum, value) for value in (self.x, self.y)])
        self.high = np.column_stack([across(np.maximum, value) for value in (self.x, self.y)])
        dx, dy, dz = (value[:, 1:] - value[:, :1] for value in (self.x, self.y, self.z))
        area = dx[:, 0] * dy[:, 1] - dx[:, 1] * dy[:, 0]
        self.slope_x = (dz[:, 0] * dy[:, 1] - dz[:, 1] * dy[:, 0]) / area
        self.slope_y = (dx[:, 0] * dz[:, 1] - dx[:, 1] * dz[:, 0]) / area

    def height(self, t: np.ndarray, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        """Height of the planes of triangles ``t`` (k,) at places (k, m)."""
        dx, dy = x - self.x[:, 0][t][:, None], y - self.y[:, 0][t][:, None]
        result: np.ndarray = self.z[:, 0][t][:, None] + self.slope_x[t, None] * dx + self.slope_y[t, None] * dy
        return result


def side_of(t: Triangles, which: np.ndarray, edge: int, x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """Which side of an edge of triangles ``which`` (k,) places (k, m) are on: positive inside."""
    after = (edge + 1) % 3
    px, py = t.x[:, edge][which][:, None], t.y[:, edge][which][:, None]
    qx, qy = t.x[:, after][which][:, None], t.y[:, after][which][:, None]
    result: np.ndarray = (qx - px) * (y - py) - (qy - py) * (x - px)
    return result


def not_apart(a: Triangles, b: Triangles, i: np.ndarray, j: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """The pairs of triangles ``i`` (k,) of one surface and ``j`` (k,) of another that no edge of either keeps apart."""
    for one, other, flip in ((a, b, False), (b, a, True)):
        for edge in range(3):
            p, q = (j, i) if flip else (i, j)
            near = across(np.maximum, side_of(one, p, edge, rows(other.x, q), rows(other.y, q))) > 0
            i, j = i[near], j[near]
    return i, j
