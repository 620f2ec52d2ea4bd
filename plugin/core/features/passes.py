"""The walk as straight legs: points in recording order, cut at gaps and sharp turns."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np

from ..points.pointset import PointSet

#: A step longer than so many median steps is a gap: the rover did not store between.
GAP_STEPS = 4.0
#: Points whose steps are so many times as long as their distance would be were they strewn evenly are in no order.
FAR_STEPS = 10.0
#: Steps shorter than this share of the median step are no progress.
STILL_SHARE = 0.2
#: A turn sharper than this (cosine of 50 degrees) ends a leg.
CORNER = 0.64
#: Points handled at once, so that their columns stay in the processor's cache.
CHUNK = 1 << 14


@dataclass(frozen=True)
class Passes:
    """q points in recording order, in legs.

    ``index``: (q,) their place in the point set. ``x, y, z``: (q,) local metres. ``s``: (q,) metres walked.
    ``first, last``: (q,) bounds [first, last) of each point's leg; ``leg``: (q,) its number. ``ex, ey``: (q,) direction
    of walking. ``spacing``: median step, metres. ``origin``: (3,) of the local coordinates.
    """

    index: np.ndarray
    x: np.ndarray
    y: np.ndarray
    z: np.ndarray
    s: np.ndarray
    leg: np.ndarray
    first: np.ndarray
    last: np.ndarray
    ex: np.ndarray
    ey: np.ndarray
    spacing: float
    origin: np.ndarray

    def __len__(self) -> int:
        return len(self.x)


def median_step(step: np.ndarray) -> float:
    """Median of the steps (k,) that are progress; nan without any."""
    step = step[step > 0.02]
    if not len(step):
        return float("nan")
    moving = step[step > STILL_SHARE * np.median(step)]
    return float(np.median(moving))


def in_order(passes: Passes) -> bool:
    """Whether the points follow each other as on a walk: a step is not much longer than the way to the nearest point
    would be were all strewn evenly over the site.
    """
    area = float(np.ptp(passes.x) * np.ptp(passes.y))
    return passes.spacing <= FAR_STEPS * np.sqrt(area / len(passes)) or area == 0.0


def make_passes(points: PointSet) -> Passes:
    """The legs of the points that are not rejected and have finite coordinates."""
    index = np.flatnonzero(points.used & np.isfinite(points.easting + points.northing + points.height))
    xyz = np.column_stack([points.easting[index], points.northing[index], points.height[index]])
    origin = np.floor(np.median(xyz[:: 1 + len(xyz) // 1000], axis=0)) if len(xyz) else np.zeros(3)
    x, y, z = (xyz - origin).T.copy()
    step = np.hypot(np.diff(x), np.diff(y))
    spacing = median_step(step)
    moved = np.append(True, step > STILL_SHARE * spacing) if len(x) else np.empty(0, bool)
    index, x, y, z = index[moved], x[moved], y[moved], z[moved]
    step = np.hypot(np.diff(x), np.diff(y))
    new = np.append(True, step > GAP_STEPS * spacing) if len(x) else np.empty(0, bool)
    new |= _corners(x, y, new)
    s = np.append(0.0, np.cumsum(step)) if len(x) else np.empty(0)
    leg, first, last = _bounds(new)
    ex, ey = _directions(x, y, first, last)
    return Passes(index, x, y, z, s, leg, first, last, ex, ey, spacing, origin)


def _bounds(new: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Number, first and end of the run of each point, where ``new`` (q,) starts runs."""
    starts = np.flatnonzero(new)
    leg = np.cumsum(new) - 1
    ends = np.append(starts[1:], len(new)).astype(np.int64)
    return leg, starts[leg], ends[leg]


def _corners(x: np.ndarray, y: np.ndarray, gap: np.ndarray) -> np.ndarray:
    """Mask (q,) of the points where the walk turns sharply: the sharpest of each turn."""
    q = len(x)
    cosine = np.ones(q)
    if q < 5:
        return np.zeros(q, bool)
    ax, ay = x[2:-2] - x[:-4], y[2:-2] - y[:-4]
    bx, by = x[4:] - x[2:-2], y[4:] - y[2:-2]
    long = np.maximum(np.hypot(ax, ay) * np.hypot(bx, by), 1e-12)
    cosine[2:-2] = (ax * bx + ay * by) / long
    for shift in (-1, 0, 1, 2):  # a gap between the five points is no turn
        cosine[2:-2][gap[2 + shift : q - 2 + shift]] = 1.0
    least = np.minimum(np.append(1.0, cosine[:-1]), np.append(cosine[1:], 1.0))
    result: np.ndarray = (cosine < CORNER) & (cosine <= least)
    return result


def _directions(x: np.ndarray, y: np.ndarray, first: np.ndarray, last: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Unit vectors of walking, from up to two points behind to two ahead within the leg; of lone points any."""
    at = np.arange(len(x))
    a, b = np.maximum(at - 2, first), np.minimum(at + 2, last - 1)
    dx, dy = x[b] - x[a], y[b] - y[a]
    long = np.hypot(dx, dy)
    alone = long < 1e-9
    long = np.where(alone, 1.0, long)
    return np.where(alone, 1.0, dx / long), dy / long


def noise_at(passes: Passes) -> Tuple[float, np.ndarray]:
    """Standard deviation of a height that is new at every point, over all and about each point (q,), metres.

    From the ranks of the departures from the line through both neighbours: a third of them are so small that steps do
    not spoil them, once those are left out that clearly are none of noise. About a point it is the noise over all, or
    that of the block of points it stands in where this is rougher.
    """
    q = len(passes)
    i = np.arange(1, q - 1)
    i = i[(i - 1 >= passes.first[i]) & (i + 1 < passes.last[i])] if q > 2 else np.empty(0, np.int64)
    if len(i) < 20:
        return float("nan"), np.full(q, np.nan)
    back, ahead = passes.s[i] - passes.s[i - 1], passes.s[i + 1] - passes.s[i]
    share = back / (back + ahead)
    departure = passes.z[i] - (1 - share) * passes.z[i - 1] - share * passes.z[i + 1]
    size = np.abs(departure) / np.sqrt(1 + share**2 + (1 - share) ** 2)
    over_all = float(np.quantile(size, _RANK)) / _RANK_SIGMA
    for _ in range(2):
        over_all = float(np.quantile(size[size <= _CLEAR * over_all], _RANK)) / _RANK_SIGMA if over_all > 0 else 0.0
    over_all = max(over_all, _LEAST)
    whole = len(size) // _BLOCK * _BLOCK
    if whole < 2 * _BLOCK:
        return over_all, np.full(q, over_all)
    blocks = np.quantile(size[:whole].reshape(-1, _BLOCK), _RANK, axis=1) / _RANK_SIGMA
    wide = (np.append(blocks[0], blocks[:-1]) + blocks + np.append(blocks[1:], blocks[-1])) / 3
    middle = i[:whole].reshape(-1, _BLOCK).mean(axis=1)
    return over_all, np.interp(np.arange(q), middle, np.maximum(wide, over_all))


_LEAST = 0.002  # m; no receiver repeats better, and made-up heights without noise have no lines
_RANK = 0.35
_RANK_SIGMA = 0.4538  # the 0.35 quantile of the absolute value of a standard normal variable
_BLOCK = 64
_CLEAR = 2.8  # standard deviations
