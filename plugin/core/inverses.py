"""Inverses of many small matrices at once: a routine of linear algebra for each of them takes far longer to call."""

from __future__ import annotations

import numpy as np


def inverses(matrices: np.ndarray) -> np.ndarray:
    """Inverse (k, n, n) of each of the ``matrices`` (k, n, n), symmetric and positive definite.

    Elimination after Gauss and Jordan, which such matrices need no pivots for. Not finite where one is singular.
    """
    left = np.array(matrices.transpose(1, 2, 0), dtype=float, order="C")
    with np.errstate(divide="ignore", invalid="ignore"):
        for k in range(len(left)):
            pivot = 1 / left[k, k]
            row, column = left[k] * pivot, left[:, k].copy()
            row[k], column[k], left[:, k] = pivot, 0.0, 0.0
            left -= column[:, None] * row
            left[k] = row
    return np.ascontiguousarray(left.transpose(2, 0, 1))
