"""Which survey point each vertex of a surface came from, found again by place: a mesh file does not say."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from ..points.pointset import PointSet
from .tin import GRID, Tin


def with_sources(tin: Tin, points: PointSet) -> Tin:
    """``tin`` with ``vertex_source`` set to the first used point of ``points`` at the place of each vertex.

    A place is the same when it is equal on the plan grid or one step of it aside: a file in feet, or another
    local origin, may round the other way. -1 where there is none.
    """
    used = np.flatnonzero(points.used)
    place = np.column_stack([points.easting[used], points.northing[used]]) - tin.origin
    step = np.rint(place / GRID)
    near = np.all(np.isfinite(step) & (step >= -1) & (step < 1 << 30), axis=1)
    used, step = used[near], step[near].astype(np.int64)
    source = np.full(len(tin.vertices), -1, np.int64)
    key = _keys(step)
    order = np.argsort(key, kind="stable")
    key, used = key[order], used[order]
    # The exact place first, then the eight around it.
    for aside in sorted(np.ndindex(3, 3), key=lambda d: abs(d[0] - 1) + abs(d[1] - 1)):
        open_ = np.flatnonzero(source < 0)
        if len(key) == 0 or len(open_) == 0:
            break
        wanted = _keys(tin.grid[open_] + (np.array(aside) - 1))
        at = np.minimum(np.searchsorted(key, wanted), len(key) - 1)
        source[open_] = np.where(key[at] == wanted, used[at], -1)
    return replace(tin, vertex_source=source)


def _keys(step: np.ndarray) -> np.ndarray:
    key: np.ndarray = ((step[:, 0] + 2) << 31) | (step[:, 1] + 2)
    return key
