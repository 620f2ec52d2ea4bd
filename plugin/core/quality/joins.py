"""The step of height from one segment of the walk to a later one."""

from __future__ import annotations

from typing import Tuple

import numpy as np

from .fits import Sums, carried_to, offset_of
from .noise import Roughness
from .segments import Segments
from .walk import Walk

_WINDOWS = (3, 6, 12)
_BENT_WINDOW = 6
_BENT = 2.5  # standard deviations between a step over one plane and over two that make it a bend
_BEND = 0.5  # of the departure from straight lines: what curved ground does to a step seen from both sides


def steps_between(
    walk: Walk, sums: Sums, segments: Segments, before: np.ndarray, after: np.ndarray, sigma: float, rough: Roughness
) -> Tuple[np.ndarray, np.ndarray]:
    """Step (m) from the end of segments ``before`` to the start of ``after`` (k,) and its variance.

    From windows of up to 12 points on either side, of the length that shows it best.
    """
    trend = sums.trend(segments.start[after])
    best, variance = np.zeros(len(before)), np.full(len(before), np.inf)
    end, start = segments.end[before], segments.start[after]
    at_end, at_start = sums.before(end), sums.before(start)
    gap = np.hypot(walk.x[start] - walk.x[end - 1], walk.y[start] - walk.y[end - 1])
    over_gap = rough.at(np.maximum(gap - walk.spacing, 0) / 2)
    for window in _WINDOWS:
        # Curved ground cancels only between windows of like length.
        reach_a = np.minimum(window, 2 * (segments.end[after] - start) + 1)
        reach_b = np.minimum(window, 2 * (end - segments.start[before]) + 1)
        a = at_end - sums.before(np.maximum(end - reach_a, segments.start[before]))
        b = sums.before(np.minimum(start + reach_b, segments.end[after])) - at_start
        step, spread = offset_of(b, a, sigma, trend)
        apart = np.hypot(a[1] / a[0] - b[1] / b[0], a[2] / a[0] - b[2] / b[0])
        bend = _BEND * rough.at(apart / 2) + over_gap
        spread = spread + bend**2
        better = step**2 * variance > best**2 * spread  # the window that shows it best
        better |= ~np.isfinite(variance)
        best[better], variance[better] = step[better], spread[better]
    return _allow_bends(sums, segments, before, after, sigma, best, variance)


def _allow_bends(
    sums: Sums, segments: Segments, before: np.ndarray, after: np.ndarray, sigma: float, step: np.ndarray,
    variance: np.ndarray,
) -> Tuple[np.ndarray, np.ndarray]:  # fmt: skip
    """Where the slopes on both sides differ, the ground bends: the step is then that between two planes."""
    end, start = segments.end[before], segments.start[after]
    a = sums.over(np.maximum(end - _BENT_WINDOW, segments.start[before]), end)
    b = sums.over(start, np.minimum(start + _BENT_WINDOW, segments.end[after]))
    x, y = (sums.x[start] + sums.x[end - 1]) / 2, (sums.y[start] + sums.y[end - 1]) / 2
    (low, low_spread), (high, high_spread) = carried_to(a, x, y, sigma), carried_to(b, x, y, sigma)
    bent, spread = high - low, low_spread + high_spread
    bends = (a[0] >= 3) & (b[0] >= 3) & ((step - bent) ** 2 > _BENT**2 * spread) & (np.abs(bent) < np.abs(step))
    return np.where(bends, bent, step), np.where(bends, np.maximum(spread, variance), variance)
