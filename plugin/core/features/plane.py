"""Plane geometry of courses and the ways between them."""

from __future__ import annotations

import numpy as np


def segments_cross(a: np.ndarray, b: np.ndarray, c: np.ndarray, d: np.ndarray) -> np.ndarray:
    """Mask (n,) of the segments from a to b (n, 2) that cross those from c to d; any may be one for all, (1, 2)."""

    def side(p: np.ndarray, q: np.ndarray, r: np.ndarray) -> np.ndarray:
        u, v = q - p, r - p
        result: np.ndarray = u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]
        return result

    result: np.ndarray = (side(a, b, c) * side(a, b, d) < 0) & (side(c, d, a) * side(c, d, b) < 0)
    return result
