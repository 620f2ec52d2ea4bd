"""How noisy the heights are and how rough the ground is, from the walk itself."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional, Tuple

import numpy as np

from .medians import CHUNK
from .walk import Walk

#: Standard deviation (m) of one height where nothing tells it, and of it what points recorded within minutes share: RTK
#: in the open (common practice, no source).
USUAL_SIGMA, USUAL_DRIFT = 0.015, 0.007
MAD = 1.4826  # standard deviation of a normal distribution over its median absolute deviation
_CUT = 3.0
_CUT_SHARE = 0.9866  # standard deviation of a standard normal cut at 3
_LAGS = (1, 2, 4, 8, 16)
_STRAIGHT = 0.95  # of the path through five points: their chord
_LONG = 8.0  # median steps that four steps may make together
_SAMPLE = 60_000  # points of a large walk that tell how noisy it is and how rough the ground
_BLOCK = 1000  # of these follow each other


@dataclass(frozen=True)
class Roughness:
    """How far the ground departs from straight interpolation (m): ``size`` at half-widths ``reach`` (m), rising."""

    reach: np.ndarray
    size: np.ndarray

    def at(self, reach: np.ndarray) -> np.ndarray:
        """Departure (m, one standard deviation) for half-widths ``reach`` (m); quadratic beyond what was seen."""
        reach = np.maximum(np.asarray(reach, float), 1e-6)
        inner = np.exp(np.interp(np.log(reach), np.log(self.reach), np.log(np.maximum(self.size, 1e-9))))
        low, high = reach / self.reach[0], reach / self.reach[-1]
        outer = np.where(low < 1, self.size[0] * low**2, inner)
        result: np.ndarray = np.where(high > 1, self.size[-1] * high**1.5, outer)
        return result


def robust_sigma(values: np.ndarray) -> float:
    """Standard deviation of a normal core: MAD first, then what lies within 3 of it. nan for fewer than 3 values."""
    if len(values) < 3:
        return float("nan")
    centre = float(np.median(values))
    sigma = MAD * float(np.median(np.abs(values - centre)))
    for _ in range(3):
        core = np.abs(values - centre) <= _CUT * sigma
        if sigma == 0 or np.count_nonzero(core) < 3:
            return sigma
        centre = float(values[core].mean())
        sigma = float(values[core].std()) / _CUT_SHARE
    return sigma


def white_residuals(walk: Walk, every: int = 1) -> np.ndarray:
    """Each height less the cubic through its two neighbours on either side, scaled to the noise of one height (q,).

    nan where there are not two neighbours on either side, and outside each ``every``-th block of a thousand points. The
    cubic follows slope, curvature and uneven steps, so only what is new at every point is left.
    """
    result = np.full(len(walk), np.nan)
    at = np.arange(len(walk))
    i = np.flatnonzero((at // _BLOCK % every == 0) & (at - 2 >= walk.first) & (at + 2 < walk.last))
    for start in range(0, len(i), CHUNK):
        some = i[start : start + CHUNK]
        result[some] = _off_cubics(walk, some)
    return result


def _off_cubics(walk: Walk, i: np.ndarray) -> np.ndarray:
    """The residuals at points ``i`` (k,), nan where the track is not straight."""
    ahead_x, ahead_y = walk.x[i + 2] - walk.x[i - 2], walk.y[i + 2] - walk.y[i - 2]
    length = np.maximum(np.hypot(ahead_x, ahead_y), 1e-9)
    s = [
        ((walk.x[i + k] - walk.x[i]) * ahead_x + (walk.y[i + k] - walk.y[i]) * ahead_y) / length for k in (-2, -1, 1, 2)
    ]
    path = sum(np.hypot(walk.x[i + k + 1] - walk.x[i + k], walk.y[i + k + 1] - walk.y[i + k]) for k in range(-2, 2))
    # On a slope a turn looks like a bend of the ground; across a hole the ground does bend.
    straight = (length > _STRAIGHT * path) & (path > 3 * walk.spacing) & (path < _LONG * walk.spacing)
    ordered = straight & (s[0] < s[1]) & (s[1] < 0) & (s[2] > 0) & (s[3] > s[2])
    residual, gain = walk.z[i].copy(), np.ones(len(i))
    with np.errstate(divide="ignore", invalid="ignore"):
        for a in range(4):
            weight = np.ones(len(i))
            for b in range(4):
                if b != a:
                    weight = weight * s[b] / (s[b] - s[a])
            residual -= weight * walk.z[i + (-2, -1, 1, 2)[a]]
            gain += weight**2
        return np.where(ordered, residual / np.sqrt(gain), np.nan)


def usual_noise(walk: Walk) -> float:
    """Noise (m) that is new at every point; in large walks a sample of them tells, to half a percent."""
    return white_sigma(walk, every=-(-len(walk) // _SAMPLE) or 1)[0]


def white_sigma(walk: Walk, broken: Optional[np.ndarray] = None, every: int = 1) -> Tuple[float, int]:
    """Noise (m) that is new at every point, and how many residuals it rests on.

    ``broken``: mask (q,) of the points before which the ground is known to break. ``every``: as for
    :func:`white_residuals`.
    """
    residual = white_residuals(walk, every)
    known = np.isfinite(residual)
    if broken is not None:
        whole = known.copy()
        for shift in (1, 0, -1, -2):  # the cubic at i spans the breaks before i - 1 to i + 2
            whole &= ~np.roll(broken, shift)
        known = whole if np.count_nonzero(whole) >= 0.3 * np.count_nonzero(known) else known
    sigma = robust_sigma(residual[known])
    # A kerb or a fault spoils the residuals of its neighbours too, though less than would show.
    calm = known & ~near_breaks(residual, sigma)
    if np.count_nonzero(calm) >= 0.3 * np.count_nonzero(known):
        sigma = robust_sigma(residual[calm])
    return sigma, int(np.count_nonzero(calm))


def near_breaks(residual: np.ndarray, sigma: float) -> np.ndarray:
    """Mask (q,) of the points within three of one whose residual is no noise."""
    with np.errstate(invalid="ignore"):
        wild = np.abs(residual) > 3.7 * sigma
    mask = wild.copy()
    for shift in (1, 2, 3):
        mask[shift:] |= wild[:-shift]
        mask[:-shift] |= wild[shift:]
    return mask


def roughness(walk: Walk, sigma: float) -> Roughness:
    """Departure of the ground from a straight line between points 2 L apart along the passes, for several L."""
    reach, size = [], []
    here = np.arange(0, len(walk), -(-len(walk) // _SAMPLE) or 1)
    least = 0.05 * sigma
    for lag in _LAGS:
        i = here[(here - lag >= walk.first[here]) & (here + lag < walk.last[here])]
        if len(i) < 10:
            break
        back = np.hypot(walk.x[i] - walk.x[i - lag], walk.y[i] - walk.y[i - lag])
        ahead = np.hypot(walk.x[i + lag] - walk.x[i], walk.y[i + lag] - walk.y[i])
        whole = np.hypot(walk.x[i + lag] - walk.x[i - lag], walk.y[i + lag] - walk.y[i - lag])
        straight = whole > 0.95 * (back + ahead)
        if np.count_nonzero(straight) < 10:
            break
        i, back, ahead = i[straight], back[straight], ahead[straight]
        share = back / np.maximum(back + ahead, 1e-9)
        departure = walk.z[i] - (1 - share) * walk.z[i - lag] - share * walk.z[i + lag]
        spread = robust_sigma(departure) ** 2 - 1.5 * sigma**2
        least = max(least, np.sqrt(max(spread, 0.0)))
        reach.append(float(np.median(np.minimum(back, ahead))))
        size.append(least)
    if not reach:
        return Roughness(np.array([walk.spacing if walk.spacing > 0 else 1.0]), np.array([sigma]))
    return Roughness(np.array(reach), np.array(size))
