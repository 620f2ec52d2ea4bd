"""How well heights repeat: noise along the walk, differences where it was walked twice, and what the receiver
claimed.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np
from scipy.stats import chi2

from .encounters import Encounters
from .noise import near_breaks, robust_sigma, white_residuals, white_sigma
from .walk import Walk

_CLEAR = 0.6  # of the noise: standard deviation of an encounter between two whole windows on even ground
_ENOUGH = 12


@dataclass(frozen=True)
class Repeatability:
    """Noise of a height (m). ``white``: what is new at every point, from ``white_freedom`` residuals along the passes.
    ``drift``: what wanders over a minute or more and so differs between visits. ``total``: both together, with
    ``freedom`` degrees of freedom and its 95 % interval ``low`` to ``high`` (chi-square). ``encounters``: places
    visited twice it rests on. nan where nothing can be said: without encounters there is no total.
    """

    white: float
    white_freedom: float
    drift: float
    total: float
    freedom: float
    low: float
    high: float
    encounters: int


@dataclass(frozen=True)
class RunRepeatability:
    """The same for one run: its ``run`` number, ``sigma`` (m) from ``freedom`` encounters and its 95 %
    interval, what the
    receiver ``claimed`` (m, root mean square), and whether that lies in the interval.
    """

    run: int
    sigma: float
    freedom: int
    low: float
    high: float
    claimed: float
    agrees: bool


def repeatability(walk: Walk, meetings: Encounters, good: np.ndarray) -> Repeatability:
    """Noise of the points ``good`` (q,) of the walk.

    The white part is the scatter about cubics through neighbours. Where two visits meet, their local planes
    differ by twice the variance of what wanders and the planes' own noise; taking that off gives the drift.
    """
    kept = walk.take(good)
    white, count = white_sigma(kept)
    # Neighbouring residuals share points: about a third of them are independent.
    white_freedom = count / 3.0
    calm = good & ~near_breaks(white_residuals(walk), white)
    met = meetings.take(calm[meetings.first] & calm[meetings.second])
    clear = met.variance < (_CLEAR * white) ** 2
    if np.count_nonzero(clear) >= _ENOUGH:
        met = met.take(clear)  # whole windows on even ground: the ground's own bends stay below the noise
    nan = float("nan")
    if len(met) < 3:
        return Repeatability(white, white_freedom, nan, nan, 0.0, nan, nan, len(met))
    spread = robust_sigma(np.append(met.difference, -met.difference)) ** 2
    own = float(np.median(met.variance))
    drift = max(spread - own, 0.0) / 2
    variance = white**2 + drift
    error = (2 * white**4 / max(white_freedom, 1.0)) + 2 * (spread / 2) ** 2 / len(met)
    freedom = 2 * variance**2 / error
    low, high = interval(np.sqrt(variance), freedom)
    return Repeatability(
        white, white_freedom, float(np.sqrt(drift)), float(np.sqrt(variance)), float(freedom), low, high, len(met)
    )


def interval(sigma: float, freedom: float) -> Tuple[float, float]:
    """95 % interval of a standard deviation with ``freedom`` degrees of freedom (chi-square)."""
    if not freedom > 0 or not np.isfinite(sigma):
        return float("nan"), float("nan")
    return (
        float(sigma * np.sqrt(freedom / chi2.ppf(0.975, freedom))),
        float(sigma * np.sqrt(freedom / chi2.ppf(0.025, freedom))),
    )


def by_run(
    meetings: Encounters, good: np.ndarray, run: np.ndarray, claimed: np.ndarray, whole: Repeatability
) -> Tuple[RunRepeatability, ...]:
    """Repeatability of each run from its encounters with others. ``run``: (q,) numbers, ``claimed``: (q,) m,
    nan unknown.

    A difference holds both visits; half of its variance is put down to each. The plane's share of the white noise
    is scaled up to that of one point.
    """
    met = meetings.take(good[meetings.first] & good[meetings.second])
    lost = 2 * whole.white**2 - met.variance  # of the white noise of two single points, averaged away by the planes
    squares = np.maximum(met.difference**2 + lost, 0) / 2
    result = []
    for number in np.unique(run).tolist():
        inside = (run[met.first] == number) | (run[met.second] == number)
        freedom = int(np.count_nonzero(inside))
        sigma = float(np.sqrt(squares[inside].mean())) if freedom else float("nan")
        low, high = interval(sigma, freedom)
        own = claimed[(run == number) & good]
        own = own[np.isfinite(own)]
        stated = float(np.sqrt(np.mean(own**2))) if len(own) else float("nan")
        result.append(RunRepeatability(number, sigma, freedom, low, high, stated, bool(low <= stated <= high)))
    return tuple(result)
