"""Exact geometric predicates on whole-number plan coordinates.

All coordinates are int64 in units of ``tin.GRID``, not negative and below ``LIMIT``, so that every
difference fits 31 bits. Orientation is then exact in int64. The in-circle determinant needs up to
126 bits: a float filter with a proven error bound decides nearly all; where it can't, the
determinant is computed modulo 2**64, which is exact whenever the bound says it fits; the rest
(edges of kilometres, nearly cocircular) goes to Python's integers.
"""

from __future__ import annotations

import numpy as np

#: Coordinates must be in [0, LIMIT): 107 km at a grid of 0.1 mm.
LIMIT = 1 << 30

# Shewchuk (1997), "Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates":
# the error of the in-circle determinant with exact differences is at most (10 + 96 eps) eps times its
# permanent, and the permanent is at most (sum of the three squared distances)**2 / 3.
_INCIRCLE_BOUND = 5e-16
_FITS_INT64 = 2.0**61
_CHUNK = 1 << 15


def orientation(x: np.ndarray, y: np.ndarray, a: np.ndarray, b: np.ndarray, c: np.ndarray) -> np.ndarray:
    """Twice the signed area of each triangle a, b, c (vertex numbers, (k,)): exact int64, > 0 if counter-clockwise.

    In units of ``GRID`` squared; divided by the length of ab it is the distance of c to the left of ab.
    """
    xa, ya = x[a], y[a]
    return (x[b] - xa) * (y[c] - ya) - (y[b] - ya) * (x[c] - xa)


def in_circle(x: np.ndarray, y: np.ndarray, a: np.ndarray, b: np.ndarray, c: np.ndarray, d: np.ndarray) -> np.ndarray:
    """Exact sign (int8, (k,)) of d against the circle through a, b, c: 1 inside, 0 on it, -1 outside.

    ``a, b, c`` must be counter-clockwise; vertex numbers of shape (k,).
    """
    sign = np.empty(len(a), np.int8)
    for start in range(0, len(a), _CHUNK):
        part = slice(start, start + _CHUNK)
        sign[part] = _in_circle_chunk(x, y, a[part], b[part], c[part], d[part])
    return sign


def _in_circle_chunk(x, y, a, b, c, d):  # type: ignore[no-untyped-def]
    dx, dy = x[d], y[d]
    ax, ay, bx, by, cx, cy = x[a] - dx, y[a] - dy, x[b] - dx, y[b] - dy, x[c] - dx, y[c] - dy
    determinant, size = _determinant(*(value.astype(np.float64) for value in (ax, ay, bx, by, cx, cy)))
    error = _INCIRCLE_BOUND * size * size
    sign = (determinant > error).astype(np.int8) - (determinant < -error).astype(np.int8)
    unsure = np.flatnonzero(np.abs(determinant) <= error)
    if len(unsure):
        differences = [value[unsure] for value in (ax, ay, bx, by, cx, cy)]
        sign[unsure] = np.sign(_determinant(*differences)[0])
        for i in np.flatnonzero(error[unsure] > _FITS_INT64):
            exact = _determinant(*(int(value[i]) for value in differences))[0]
            sign[unsure[i]] = (exact > 0) - (exact < 0)
    return sign


def _determinant(ax, ay, bx, by, cx, cy):  # type: ignore[no-untyped-def]
    """The in-circle determinant and the sum of the squared distances, in the arithmetic of its arguments."""
    a2, b2, c2 = ax * ax + ay * ay, bx * bx + by * by, cx * cx + cy * cy
    return a2 * (bx * cy - cx * by) + b2 * (cx * ay - ax * cy) + c2 * (ax * by - bx * ay), a2 + b2 + c2
