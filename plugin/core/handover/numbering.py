"""Vertices of a surface as the numbered points of a file, and back."""

from __future__ import annotations

from typing import Tuple

import numpy as np

from ..surface.tin import GRID, Tin


def plan_integers(tin: Tin, used: np.ndarray, metres: float, decimals: int) -> np.ndarray:
    """Plan coordinates (n, 2) int64 of the vertices ``used``, in the last decimal of a unit of ``metres``."""
    grid = tin.grid[used] + np.rint(tin.origin / GRID).astype(np.int64)
    if metres == 1.0 and GRID * 10**decimals == 1.0:  # the grid is the last decimal: nothing is rounded
        return grid
    return np.rint(grid * (GRID / metres * 10**decimals)).astype(np.int64)


def height_integers(tin: Tin, used: np.ndarray, metres: float, decimals: int) -> np.ndarray:
    """Heights (n,) int64 in the last decimal of a unit of ``metres``. Raises ValueError when one is not finite."""
    height = tin.vertices[used, 2]
    if not np.isfinite(height).all():
        raise ValueError("a vertex of the surface has no height")
    return np.rint(height / metres * 10**decimals).astype(np.int64)


def places_of(number: np.ndarray, wanted: np.ndarray) -> np.ndarray:
    """Where ``wanted`` (any shape) stand in the rising ``number`` (n,), -1 where they do not."""
    if len(number) == 0:
        return np.full(wanted.shape, -1)
    if number[-1] - number[0] == len(number) - 1:  # no gaps: nothing to search
        place = wanted - number[0]
        return np.where((place >= 0) & (place < len(number)), place, -1)
    place = np.minimum(np.searchsorted(number, wanted), len(number) - 1)
    return np.where(number[place] == wanted, place, -1)


def used_of(corners: np.ndarray, count: int) -> Tuple[np.ndarray, np.ndarray]:
    """Which of ``count`` points are ``corners`` (m, 3), rising, and the corners numbered among these, int32."""
    mask = np.zeros(count, bool)
    mask[corners] = True
    rank = np.cumsum(mask, dtype=np.int32) - np.int32(1)
    return np.flatnonzero(mask), rank[corners]
