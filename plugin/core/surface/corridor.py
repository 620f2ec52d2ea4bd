"""The part of a large TIN that lines may meet, so that what is asked along them costs no more than that part."""

from __future__ import annotations

from dataclasses import replace
from typing import Sequence, Tuple

import numpy as np
from scipy.ndimage import binary_dilation

from .cells import runs
from .tin import Tin

_SMALL = 20_000  # triangles; fewer are not worth sorting out
_MOST_CELLS = 1000  # of a row
_MOST_PLACES = 20_000_000


def corridor(tin: Tin, lines: Sequence[np.ndarray]) -> Tin:
    """``tin`` with its triangles near ``lines`` ((k, 2) each, metres of the CRS) only; vertices keep their numbers.

    All triangles within a cell of a line stay (cells are some edges wide, see below), and with them every triangle
    around a vertex that near. So whatever is asked on the lines has the same answer, and a vertex on a line is on the
    new rim only where it was on the old one. Triangles longer than a cell always stay.
    """
    if len(tin.triangles) <= _SMALL or not lines:
        return tin
    low, high = tin.vertices[:, :2].min(axis=0), tin.vertices[:, :2].max(axis=0)
    extent = float((high - low).max())
    cell = max(4.0 * float(np.sqrt(2.0 * np.prod(high - low) / len(tin.triangles))), extent / _MOST_CELLS)
    places = _places(lines, cell / 2, tin.origin + low - 3 * cell)
    if len(places) > _MOST_PLACES or not np.all(np.isfinite(places)):
        return tin
    shape = np.ceil((high - low) / cell).astype(int) + 7
    at = np.floor(places / cell)
    at = at[np.all((at >= 0) & (at < shape), axis=1)].astype(np.int64)
    passed = np.zeros(shape, bool)
    passed[at[:, 0], at[:, 1]] = True
    # One ring of cells for those passed between two places, one for the reach of a triangle's edges.
    near = binary_dilation(passed, np.ones((3, 3), bool), iterations=2)
    x, y = (np.ascontiguousarray(tin.vertices[:, axis] - low[axis] + 3 * cell) for axis in (0, 1))
    vertex = near[(x / cell).astype(np.int64), (y / cell).astype(np.int64)]
    keep = np.zeros(len(tin.triangles), bool)
    for corner in tin.triangles.T:
        keep |= vertex[corner]
    keep |= _longer(x, tin.triangles, cell) | _longer(y, tin.triangles, cell)
    return _part(tin, np.flatnonzero(keep))


def _places(lines: Sequence[np.ndarray], spacing: float, zero: np.ndarray) -> np.ndarray:
    """Places (p, 2) from ``zero`` along all segments, no farther apart than ``spacing``."""
    starts, ends = _segments(lines)
    span = np.hypot(*(ends - starts).T)
    if not np.all(np.isfinite(span)) or span.sum() / spacing > _MOST_PLACES:
        return np.full((1, 2), np.nan)
    count = np.ceil(span / spacing).astype(np.int64) + 1
    segment = np.repeat(np.arange(len(count)), count)
    step = runs(np.zeros_like(count), count)
    share = step / np.maximum(count[segment] - 1, 1)
    found: np.ndarray = starts[segment] + share[:, None] * (ends - starts)[segment] - zero
    return found


def _segments(lines: Sequence[np.ndarray]) -> Tuple[np.ndarray, np.ndarray]:
    plan = [np.asarray(line, float).reshape(len(line), -1)[:, :2] for line in lines]
    return np.concatenate([p[:-1] for p in plan]), np.concatenate([p[1:] for p in plan])


def _longer(value: np.ndarray, triangles: np.ndarray, cell: float) -> np.ndarray:
    a, b, c = (value[corner] for corner in triangles.T)
    span: np.ndarray = np.maximum(np.maximum(a, b), c) - np.minimum(np.minimum(a, b), c) > 0.7 * cell
    return span


def _part(tin: Tin, keep: np.ndarray) -> Tin:
    number = np.full(len(tin.triangles) + 1, -1, np.int32)  # the last entry answers for "no neighbour"
    number[keep] = np.arange(len(keep), dtype=np.int32)
    neighbours = number[tin.neighbours[keep]]
    return replace(tin, triangles=tin.triangles[keep], neighbours=neighbours, edge_kind=tin.edge_kind[keep])
