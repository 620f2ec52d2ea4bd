"""Small least-squares fits to windows of the walk: a plane, and an offset between two groups of points over it.

A walker's track bends, so the plane keeps the slope of the ground out of the offset wherever the track tells it, and
the variance says so where it does not.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional, Tuple

import numpy as np

from .medians import CHUNK, rank_of
from .walk import Walk

#: Slopes the ground may have where the track does not tell (standard deviation).
SLOPE = 0.4


@dataclass(frozen=True)
class Trend:
    """Slope of the ground (k,) to the east ``x`` and north ``y``, and how far it may be off (``sigma``)."""

    x: np.ndarray
    y: np.ndarray
    sigma: np.ndarray


class _Trends:
    """Slope along the track: the median of nine steps, so that a fault at a few points does not tell.

    Worked out where it is asked for, once.
    """

    def __init__(self, walk: Walk) -> None:
        n = len(walk)
        self._walk = walk
        self._known = np.full(n, n < 10)
        self._x, self._y, self._sigma = np.zeros(n), np.zeros(n), np.full(n, SLOPE)

    def at(self, points: np.ndarray) -> Trend:
        """The trend at ``points`` (k,)."""
        fresh = points[~self._known[points]]
        if len(fresh):
            fresh = np.unique(fresh)
            self._known[fresh] = True
            for start in range(0, len(fresh), CHUNK):
                self._find(fresh[start : start + CHUNK])
        return Trend(self._x[points], self._y[points], self._sigma[points])

    def _find(self, points: np.ndarray) -> None:
        walk = self._walk
        start = np.clip(points - 4, 0, len(walk) - 10)
        index = start[:, None] + np.arange(10)
        x, y, z = (np.ascontiguousarray(c[index].T) for c in (walk.x, walk.y, walk.z))
        step = np.hypot(np.diff(x, axis=0), np.diff(y, axis=0))
        slope = np.diff(z, axis=0) / np.maximum(step, 0.5 * walk.spacing)
        middle = rank_of(list(slope), 4)
        # Seven of nine: two steps may be those of a fault, more of them are the ground's own bends.
        spread = rank_of([np.abs(each - middle) for each in slope], 6)
        run_x, run_y = x[9] - x[0], y[9] - y[0]
        run = np.maximum(np.hypot(run_x, run_y), 1e-9)
        self._x[points], self._y[points] = middle / run * run_x, middle / run * run_y
        self._sigma[points] = np.clip(0.83 * spread, 0.02, SLOPE)
        straight = (run > 0.93 * step.sum(axis=0)) & (walk.piece[start + 9] == walk.piece[start])
        bent = points[~straight]
        if len(bent):
            self._x[bent], self._y[bent], self._sigma[bent] = _plane_around(walk, bent)


def _median(values: np.ndarray, inside: np.ndarray) -> np.ndarray:
    """Median (k,) of the values (k, m) where ``inside``."""
    ordered = np.sort(np.where(inside, values, np.inf), axis=1)
    count = np.maximum(inside.sum(axis=1), 1)
    rows = np.arange(len(values))
    result: np.ndarray = (ordered[rows, (count - 1) // 2] + ordered[rows, count // 2]) / 2
    return np.where(np.isfinite(result), result, 0.0)


def _plane_around(walk: Walk, at: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Slope east and north (k,) and its standard deviation where the track turns: a plane through 21 points by least
    absolute departures.
    """
    index = at[:, None] + np.arange(-10, 11)
    inside = (index >= walk.first[at][:, None]) & (index < walk.last[at][:, None])
    index = np.clip(index, 0, len(walk) - 1)
    x, y = walk.x[index] - walk.x[at][:, None], walk.y[index] - walk.y[at][:, None]
    z = walk.z[index] - walk.z[at][:, None]
    weight = inside.astype(float)
    for _ in range(8):
        total = np.maximum(weight.sum(axis=1), 1e-9)
        dx, dy, dz = (v - ((weight * v).sum(axis=1) / total)[:, None] for v in (x, y, z))
        xx, xy, yy = (weight * dx * dx).sum(1), (weight * dx * dy).sum(1), (weight * dy * dy).sum(1)
        xz, yz = (weight * dx * dz).sum(1), (weight * dy * dz).sum(1)
        # A little of the mean square holds the slope back across a straight track.
        ridge = 0.002 * (xx + yy) + 1e-9
        whole = (xx + ridge) * (yy + ridge) - xy**2
        gx, gy = ((yy + ridge) * xz - xy * yz) / whole, ((xx + ridge) * yz - xy * xz) / whole
        away = np.abs(dz - gx[:, None] * dx - gy[:, None] * dy)
        middle = _median(away, inside)
        weight = inside / np.maximum(away, np.maximum(middle, 1e-4)[:, None] * 0.5)
    least = (xx + yy) / 2 - np.hypot((xx - yy) / 2, xy)  # of the eigenvalues: how much the track spreads across
    across = np.sqrt(np.maximum(least, 0) / np.maximum(weight.sum(1), 1e-9) * inside.sum(1))
    sigma = np.clip(3 * middle / np.maximum(across, 1e-6), 0.02, SLOPE)
    return gx, gy, sigma


class Sums:
    """Running sums of coordinates and their products, for fits over any window."""

    def __init__(self, walk: Walk) -> None:
        self.x, self.y = walk.x - walk.x.mean(), walk.y - walk.y.mean()
        self._trends = _Trends(walk)
        self.table = sums_of(self.x, self.y, walk.z - np.median(walk.z))

    def trend(self, points: np.ndarray) -> Trend:
        """Slope along the track at ``points`` (k,)."""
        return self._trends.at(points)

    def over(self, low: np.ndarray, high: np.ndarray) -> np.ndarray:
        """Sums (9, k) over windows [low, high)."""
        return self.before(high) - self.before(low)

    def before(self, points: np.ndarray) -> np.ndarray:
        """Sums (9, k) over all points before each of ``points``: two of them give a window."""
        result = np.empty((9, len(points)))
        result[0] = points
        for row, sums in zip(result[1:], self.table[1:]):
            row[:] = sums.take(points)
        return result


def sums_of(x: np.ndarray, y: np.ndarray, z: np.ndarray) -> np.ndarray:
    """Running sums (9, n + 1) of 1, x, y, z, xx, xy, yy, xz and yz, from 0."""
    table = np.zeros((9, len(x) + 1))
    for row, column in zip(table, (np.ones(len(x)), x, y, z, x * x, x * y, y * y, x * z, y * z)):
        np.cumsum(column, out=row[1:])
    return table


def offset_of(
    inside: np.ndarray, outside: np.ndarray, sigma: float, trend: Optional[Trend] = None
) -> Tuple[np.ndarray, np.ndarray]:
    """Offset of one group of points from the other over one plane: estimate and variance, each (k,).

    ``trend``: what is known of the plane's slope beforehand.
    """
    a, b = inside, outside
    count_a, count_b = np.maximum(a[0], 1.0), np.maximum(b[0], 1.0)
    ridge = (sigma / (SLOPE if trend is None else trend.sigma)) ** 2
    xx = a[4] - a[1] ** 2 / count_a + b[4] - b[1] ** 2 / count_b + ridge
    xy = a[5] - a[1] * a[2] / count_a + b[5] - b[1] * b[2] / count_b
    yy = a[6] - a[2] ** 2 / count_a + b[6] - b[2] ** 2 / count_b + ridge
    xz = a[7] - a[1] * a[3] / count_a + b[7] - b[1] * b[3] / count_b
    yz = a[8] - a[2] * a[3] / count_a + b[8] - b[2] * b[3] / count_b
    whole = np.maximum(xx * yy - xy * xy, ridge**2)
    dx, dy, dz = (a[k] / count_a - b[k] / count_b for k in (1, 2, 3))
    if trend is not None:
        xz = xz - (xx - ridge) * trend.x - xy * trend.y
        yz = yz - (yy - ridge) * trend.y - xy * trend.x
        dz = dz - dx * trend.x - dy * trend.y
    ux, uy = (yy * dx - xy * dy) / whole, (xx * dy - xy * dx) / whole
    offset = dz - ux * xz - uy * yz
    variance = sigma**2 * (1 / count_a + 1 / count_b + np.maximum(dx * ux + dy * uy, 0.0))
    return offset, variance


def carried_to(group: np.ndarray, x: np.ndarray, y: np.ndarray, sigma: float) -> Tuple[np.ndarray, np.ndarray]:
    """Height at places ``x, y`` (k,), carried there from one group of points by its own plane, and its variance."""
    count = np.maximum(group[0], 1.0)
    ridge = (sigma / SLOPE) ** 2
    xx, yy = group[4] - group[1] ** 2 / count + ridge, group[6] - group[2] ** 2 / count + ridge
    xy = group[5] - group[1] * group[2] / count
    xz, yz = group[7] - group[1] * group[3] / count, group[8] - group[2] * group[3] / count
    whole = np.maximum(xx * yy - xy * xy, ridge**2)
    dx, dy = x - group[1] / count, y - group[2] / count
    ux, uy = (yy * dx - xy * dy) / whole, (xx * dy - xy * dx) / whole
    variance = sigma**2 * (1 / count + np.maximum(dx * ux + dy * uy, 0.0))
    return group[3] / count + ux * xz + uy * yz, variance
