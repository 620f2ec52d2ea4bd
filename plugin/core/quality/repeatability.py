"""How well heights repeat: noise along the walk, differences where it was walked twice, and what the receiver
claimed.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np
from scipy.stats import chi2

from ..progress import Progress, silent
from .drift import estimate_drift
from .encounters import Encounters
from .noise import white_sigma
from .walk import Walk

_FEWEST = 3  # places visited twice


@dataclass(frozen=True)
class Repeatability:
    """Noise of a height (m). ``white``: what is new at every point, from ``white_freedom`` residuals along the passes.
    ``drift``: what wanders over a minute or more and so differs between visits. ``total``: both together, with
    ``freedom`` degrees of freedom and its 95 % interval ``low`` to ``high`` (chi-square). ``encounters``: places
    visited twice it rests on. nan where nothing can be said: without encounters there is no total.

    ``drift`` and ``total`` describe this survey, not the receiver: the standard deviation of the errors its heights do
    have about their own mean, on even ground. What all its heights share (base station, geoid, pole) is not in them,
    nor what a pole beside its place makes of the height of a step.
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


def repeatability(
    walk: Walk, meetings: Encounters, broken: np.ndarray, time: np.ndarray, progress: Progress = silent
) -> Repeatability:
    """Noise of the points of a walk without faults.

    ``broken``: mask (q,) of the points before which the ground breaks; ``time``: (q,) seconds. The white part is the
    scatter about cubics through neighbours. What the heights of two visits differ by beyond that wanders with time
    (:mod:`.drift`).
    """
    white, count = white_sigma(walk, broken)
    # Neighbouring residuals share points: about a third of them are independent.
    white_freedom = count / 3.0
    nan = float("nan")
    if len(meetings) < _FEWEST or not white > 0:
        return Repeatability(white, white_freedom, nan, nan, 0.0, nan, nan, len(meetings))
    found = estimate_drift(meetings, time, white, progress)
    variance = white**2 + found.square
    error = 2 * white**4 / max(white_freedom, 1.0) + found.variance
    freedom = 2 * variance**2 / error
    low, high = interval(np.sqrt(variance), freedom)
    return Repeatability(
        white, white_freedom, float(np.sqrt(found.square)), float(np.sqrt(variance)), float(freedom), low, high,
        int(np.count_nonzero(found.used)),
    )  # fmt: skip


def interval(sigma: float, freedom: float) -> Tuple[float, float]:
    """95 % interval of a standard deviation with ``freedom`` degrees of freedom (chi-square)."""
    low, high = _intervals(np.array([sigma], float), np.array([freedom], float))
    return float(low[0]), float(high[0])


def _intervals(sigma: np.ndarray, freedom: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """95 % intervals (k,) of standard deviations ``sigma`` (k,), nan for those without freedom."""
    known = (freedom > 0) & np.isfinite(sigma)
    low, high = np.full(len(sigma), np.nan), np.full(len(sigma), np.nan)
    low[known] = sigma[known] * np.sqrt(freedom[known] / chi2.ppf(0.975, freedom[known]))
    high[known] = sigma[known] * np.sqrt(freedom[known] / chi2.ppf(0.025, freedom[known]))
    return low, high


def by_run(
    meetings: Encounters, run: np.ndarray, claimed: np.ndarray, whole: Repeatability
) -> Tuple[RunRepeatability, ...]:
    """Repeatability of each run from its encounters with others. ``run``: (q,) numbers, ``claimed``: (q,) m,
    nan unknown.

    A difference holds both visits; half of its variance is put down to each. The plane's share of the white noise
    is scaled up to that of one point.
    """
    met = meetings
    lost = 2 * whole.white**2 - met.variance  # of the white noise of two single points, averaged away by the planes
    squares = np.maximum(met.difference**2 + lost, 0) / 2
    numbers, of = np.unique(run, return_inverse=True)
    of = of.ravel()
    first, second = of[met.first], of[met.second]
    known = np.isfinite(claimed)
    stated = np.bincount(of[known], claimed[known] ** 2, len(numbers))
    count = np.bincount(of[known], minlength=len(numbers))
    # A meeting of a run with itself counts once for it.
    both = first != second
    visits = np.concatenate([first, second[both]])
    freedoms = np.bincount(visits, minlength=len(numbers))
    total = np.bincount(visits, np.concatenate([squares, squares[both]]), len(numbers))
    with np.errstate(invalid="ignore"):
        sigma, own = np.sqrt(total / freedoms), np.sqrt(stated / count)
    columns = (numbers, sigma, freedoms, *_intervals(sigma, freedoms), own)
    return tuple(
        RunRepeatability(number, spread, freedom, low, high, told, low <= told <= high)
        for number, spread, freedom, low, high, told in zip(*(column.tolist() for column in columns))
    )
