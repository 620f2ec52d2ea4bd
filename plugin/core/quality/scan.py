"""Search along the walk for heights that step away from the ground and back.

Every hypothesis (these w points stand off by a; the heights step by a here) is a small least-squares fit: a plane
shared by both groups of points and an offset between them. A walker's track bends, so the plane keeps the slope of
the ground out of the offset wherever the track tells it, and the variance says so where it does not.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Tuple

import numpy as np

from .noise import robust_sigma
from .walk import Walk

#: Points that stand off together, and the points on either side they are compared with.
BUMPS: Tuple[Tuple[int, int], ...] = ((1, 4), (2, 4), (3, 5), (4, 6), (6, 6), (8, 8), (12, 8))
#: Points before and after a step.
STEPS: Tuple[int, ...] = (4, 8, 12)
#: Slopes the ground may have where the track does not tell (standard deviation).
SLOPE = 0.4


@dataclass(frozen=True)
class Hits:
    """h places where the heights step: ``start, end`` [start, end) of the points off, or ``start == end`` of a step.

    ``size`` (m): how far they are off, or the step from before to after. ``score``: size over its standard deviation.
    """

    start: np.ndarray
    end: np.ndarray
    size: np.ndarray
    score: np.ndarray

    def __len__(self) -> int:
        return len(self.start)


@dataclass(frozen=True)
class Trend:
    """Slope of the ground (k,) to the east ``x`` and north ``y``, and how far it may be off (``sigma``)."""

    x: np.ndarray
    y: np.ndarray
    sigma: np.ndarray

    def take(self, which: np.ndarray) -> Trend:
        return Trend(self.x[which], self.y[which], self.sigma[which])


def trend_of(walk: Walk) -> Trend:
    """Slope along the track at each point: the median of nine steps, so that a fault at a few points does not tell."""
    n = len(walk)
    if n < 10:
        return Trend(np.zeros(n), np.zeros(n), np.full(n, SLOPE))
    dx, dy = np.diff(walk.x), np.diff(walk.y)
    slope = np.diff(walk.z) / np.maximum(np.hypot(dx, dy), 0.5 * walk.spacing)
    around = np.lib.stride_tricks.sliding_window_view(slope, 9)
    middle = np.median(around, axis=1)
    # Seven of nine: two steps may be those of a fault, more of them are the ground's own bends.
    spread = np.partition(np.abs(around - middle[:, None]), 6, axis=1)[:, 6]
    run_x, run_y = walk.x[9:] - walk.x[:-9], walk.y[9:] - walk.y[:-9]
    run = np.maximum(np.hypot(run_x, run_y), 1e-9)
    path = np.convolve(np.hypot(dx, dy), np.ones(9), "valid")
    straight = (run > 0.93 * path) & (walk.piece[9:] == walk.piece[:-9])
    place = np.clip(np.arange(n) - 4, 0, n - 10)
    x, y, sigma = (np.empty(n) for _ in range(3))
    place = np.clip(np.arange(n) - 4, 0, n - 10)
    x[:], y[:] = (middle / run * run_x)[place], (middle / run * run_y)[place]
    sigma[:] = np.clip(0.83 * spread, 0.02, SLOPE)[place]
    bent = np.flatnonzero(~straight[place])
    for start in range(0, len(bent), 20_000):
        some = bent[start : start + 20_000]
        x[some], y[some], sigma[some] = _plane_around(walk, some)
    return Trend(x, y, sigma)


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
        self.x, self.y = x, y = walk.x - walk.x.mean(), walk.y - walk.y.mean()
        z = walk.z - np.median(walk.z)
        self._walk = walk
        self._trend: Optional[Trend] = None
        columns = (np.ones(len(x)), x, y, z, x * x, x * y, y * y, x * z, y * z)
        self.table = np.zeros((9, len(x) + 1))
        for row, column in zip(self.table, columns):
            np.cumsum(column, out=row[1:])

    @property
    def trend(self) -> Trend:
        """Slope along the track, worked out when first asked for."""
        if self._trend is None:
            self._trend = trend_of(self._walk)
        return self._trend

    def over(self, low: np.ndarray, high: np.ndarray) -> np.ndarray:
        """Sums (9, k) over windows [low, high)."""
        result: np.ndarray = self.table[:, high] - self.table[:, low]
        return result


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


def _bump(walk: Walk, sums: Sums, width: int, flank: int, sigma: float) -> Tuple[np.ndarray, np.ndarray]:
    start = np.arange(len(walk) - width + 1)
    end = start + width
    low = np.maximum(start - flank, walk.first[start])
    high = np.minimum(end + flank, walk.last[start])
    fits = (end <= walk.last[start]) & (high - low - width >= 2)
    inside = sums.over(start, end)
    outside = sums.over(low, np.maximum(high, low)) - inside
    offset, variance = offset_of(inside, outside, sigma)
    return np.where(fits, offset, 0.0), variance


def _step(walk: Walk, sums: Sums, reach: int, sigma: float) -> Tuple[np.ndarray, np.ndarray]:
    at = np.arange(len(walk))
    low = np.maximum(at - reach, walk.first)
    high = np.minimum(at + reach, walk.last)
    offset, variance = offset_of(sums.over(at, high), sums.over(low, at), sigma)
    return np.where((at - low >= 2) & (high - at >= 2), offset, 0.0), variance


def scan(walk: Walk, sigma: float, limit: float) -> Hits:
    """All hypotheses whose offset exceeds ``limit`` standard deviations (noise and usual roughness together)."""
    sums = Sums(walk)
    found: List[Tuple[np.ndarray, ...]] = []
    for width, flank in BUMPS:
        if len(walk) > width + 2:
            offset, variance = _bump(walk, sums, width, flank, sigma)
            found.append(_hits(offset, variance, width, limit))
    for reach in STEPS:
        if len(walk) > 4:
            offset, variance = _step(walk, sums, reach, sigma)
            found.append(_hits(offset, variance, 0, limit))
    if not found:
        return Hits(np.empty(0, np.int64), np.empty(0, np.int64), np.empty(0), np.empty(0))
    return Hits(*(np.concatenate(column) for column in zip(*found)))


def _hits(offset: np.ndarray, variance: np.ndarray, width: int, limit: float) -> Tuple[np.ndarray, ...]:
    score = offset / np.sqrt(variance)
    usual = robust_sigma(score[score != 0]) if np.any(score) else 1.0
    score = score / max(1.0, usual)
    at = np.flatnonzero(np.abs(score) > limit)
    return at, at + width, offset[at], score[at]


def strongest(hits: Hits, reach: int) -> Hits:
    """The hits that no stronger hit overlaps, bumps and steps alike; ``reach`` points around each are taken by it."""
    order = np.argsort(-np.abs(hits.score), kind="stable")
    start, end = hits.start[order].tolist(), hits.end[order].tolist()
    taken = bytearray(int(hits.end.max()) + 2 * reach + 2) if len(hits) else bytearray()
    kept: List[int] = []
    for k, a, b in zip(order.tolist(), start, end):
        low, high = max(0, a - reach), b + reach
        if any(taken[a : b + 1]):
            continue
        taken[low : high + 1] = b"\1" * (high + 1 - low)
        kept.append(k)
    which = np.array(kept, np.int64)
    return Hits(hits.start[which], hits.end[which], hits.size[which], hits.score[which])
