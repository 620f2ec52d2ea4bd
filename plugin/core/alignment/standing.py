"""Where water stands on a surface: to which height it rises before it finds a way out.

Over the rim, into an inlet, or over the lowest sill around, whatever that is: a kerb, a lowered kerb, the crown of the
road, the gutter itself. Exact for the triangles (:mod:`..surface.filling`).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Sequence, Tuple

import numpy as np

from ..surface.basins import height_order
from ..surface.filling import fill_surface, last_shut_node
from ..surface.locate import locate
from ..surface.tin import Tin


@dataclass(frozen=True)
class StandingWater:
    """``level``: (n,) height (m) of the water over each vertex of ``tin`` when all hollows are full, -inf where none
    stands; ``sill``: (n,) the vertex over which it runs off, -1 for none.
    """

    tin: Tin
    level: np.ndarray
    sill: np.ndarray

    def at(self, xy: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        """Level (q,) of the water that reaches the triangle at each place (q, 2), and the vertex (q,) of its sill."""
        triangle = locate(self.tin, np.asarray(xy, float).reshape(-1, 2))
        corner = self.tin.triangles[np.maximum(triangle, 0)]
        wet = np.where(triangle[:, None] >= 0, self.level[corner], -np.inf)
        which = wet.argmax(axis=1)
        row = np.arange(len(corner))
        level, vertex = wet[row, which], corner[row, which]
        return level, np.where(np.isfinite(level), self.sill[vertex], -1)


def standing_water(tin: Tin, inlets: Sequence[np.ndarray] = ()) -> StandingWater:
    """Let water rise on ``tin``; ``inlets``: places (q, 2) of each, metres of the CRS, whose triangles take all of
    it."""
    rank = height_order(tin)
    leaves = np.zeros(len(rank), bool)
    triangle, edge = np.nonzero(tin.neighbours < 0)
    leaves[tin.triangles[triangle, edge]] = leaves[tin.triangles[triangle, (edge + 1) % 3]] = True
    for places in inlets:
        found = locate(tin, np.asarray(places, float).reshape(-1, 2))
        leaves[tin.triangles[found[found >= 0]]] = True
    filling = fill_surface(tin, rank, leaves)
    node = last_shut_node(filling)[filling.ground]
    shut = ~filling.open[node] & (filling.parent[node] >= 0)
    sill = np.where(shut, filling.saddle[node], -1)
    height = tin.vertices[:, 2]
    level = np.where(shut, height[np.maximum(sill, 0)], -np.inf)
    wet = shut & (level > height)
    return StandingWater(tin, np.where(wet, level, -np.inf), np.where(wet, sill, -1))
