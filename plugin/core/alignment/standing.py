"""Where water stands on a surface: to which height it rises before it finds a way out.

Over the rim, into an inlet, or over the lowest sill around, whatever that is: a kerb, a lowered kerb, the crown of the
road, the gutter itself. Exact for the triangles (:mod:`..surface.filling`).
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Tuple

import numpy as np

from ..surface.basins import height_order
from ..surface.filling import fill_surface, last_shut_node
from ..surface.locate import locate
from ..surface.tin import Tin


@dataclass(frozen=True)
class StandingWater:
    """Water on ``tin`` when all hollows are full, worked out when it is first asked for.

    ``inlets``: places (q, 2) of each, metres of the CRS, whose triangles take all water.
    """

    tin: Tin
    inlets: Tuple[np.ndarray, ...] = ()

    def at(self, xy: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        """Level (q,) of the water (m, -inf for none) that reaches the triangle at each place (q, 2), metres of the CRS,
        and the vertex (q,) over which it runs off, -1 for none.
        """
        triangle = locate(self.tin, np.asarray(xy, float).reshape(-1, 2))
        corner = self.tin.triangles[np.maximum(triangle, 0)]
        sill, height = self._sills[corner], self.tin.vertices[:, 2]
        level = np.where((triangle[:, None] >= 0) & (sill >= 0), height[np.maximum(sill, 0)], -np.inf)
        which, row = level.argmax(axis=1), np.arange(len(corner))
        return level[row, which], np.where(np.isfinite(level[row, which]), sill[row, which], -1)

    @cached_property
    def _sills(self) -> np.ndarray:
        """The vertex (n,) over which the water over each vertex runs off, -1 where none stands."""
        tin = self.tin
        rank = height_order(tin)
        leaves = np.zeros(len(rank), bool)
        triangle, edge = np.nonzero(tin.neighbours < 0)
        leaves[tin.triangles[triangle, edge]] = leaves[tin.triangles[triangle, (edge + 1) % 3]] = True
        for places in self.inlets:
            found = locate(tin, np.asarray(places, float).reshape(-1, 2))
            leaves[tin.triangles[found[found >= 0]]] = True
        filling = fill_surface(tin, rank, leaves)
        node = last_shut_node(filling)[filling.ground]
        shut = ~filling.open[node] & (filling.parent[node] >= 0)
        sill, height = np.where(shut, filling.saddle[node], 0), tin.vertices[:, 2]
        return np.where(shut & (height[sill] > height), sill, -1)
