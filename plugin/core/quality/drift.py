"""How far heights wander over minutes, from the places a walk visits twice.

The wandering part of the error is taken for a first-order Gauss-Markov process: what it is at two times agrees the
more the closer they are. Each place visited twice observes a difference of it. Its standard deviation and its
correlation time are weighed by their likelihood; what comes out is not a parameter of the receiver but how much the
error did wander in this very survey: the mean square of it about its mean, which the survey tells much better.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np

from ..progress import Progress, silent
from .encounters import Encounters
from .noise import MAD, robust_sigma

#: Correlation times (s) that are tried, and standard deviations as multiples of the noise of one point.
_TIMES = (20.0, 45.0, 100.0, 220.0, 500.0)
_SIZES = (0.05, *np.geomspace(0.12, 6.0, 16).tolist())
#: Standard deviations of what is new at every place, as multiples of the noise of one point, and how likely each is.
_GROUND = ((0.0, 0.55), (0.35, 0.2), (0.7, 0.15), (1.4, 0.1))
_MOST = 240  # differences used; of more, these are spread over all
_PLACES = 150  # times at which the wandering is asked
_WILD = 3.3  # usual departures from what all others say
_CALM = 0.5  # the least that departures, in standard deviations, are taken to be usually
_APART = 4.0  # standard deviations from the middle of all
_SHARE = 0.15  # of the differences that may be left out as wild
_NOTHING = 1e-12  # of the likelihood: what counts for nothing


@dataclass(frozen=True)
class Drift:
    """``square``: mean square (m²) of what wanders, about its mean over the survey; ``variance``: of that number (m⁴).
    ``used``: mask (e,) of the differences it rests on.
    """

    square: float
    variance: float
    used: np.ndarray


def estimate_drift(meetings: Encounters, time: np.ndarray, noise: float, progress: Progress = silent) -> Drift:
    """What wanders, over the points of a survey recorded at ``time`` (q,), seconds, from e places visited twice.

    ``noise``: of a single point (m), the scale of the prior: the standard deviation of what wanders is half-normal of
    that scale (a weakly informative prior for a variance component, as discussed by Gelman 2006, Bayesian Analysis
    1(3), 515-534; from memory), its correlation time evenly likely from 20 to 500 s in logarithm. Differences that
    stand against all others (ground that breaks, a fault nobody found) are left out one by one.
    """
    chosen = _plausible(meetings.difference, noise)
    if len(chosen) > _MOST:
        chosen = chosen[np.linspace(0, len(chosen) - 1, _MOST).astype(np.int64)]
    places = np.quantile(time, (np.arange(_PLACES) + 0.5) / _PLACES)
    allowed = int(_SHARE * len(chosen))
    while True:
        progress(0.0, "quality")
        said = _Posterior(meetings.take(chosen), time, places, noise)
        worst, score = said.wildest()
        if score <= _WILD or not allowed:
            break
        allowed -= 1
        chosen = np.delete(chosen, worst)
    used = np.zeros(len(meetings), bool)
    used[chosen] = True
    return Drift(*said.square(), used)


def _plausible(difference: np.ndarray, noise: float) -> np.ndarray:
    """Indices of the differences but for those far from the middle of all, unless these are many."""
    wild = np.abs(difference - np.median(difference)) > _APART * np.hypot(robust_sigma(difference), noise)
    few = np.count_nonzero(wild) <= _SHARE * len(difference)
    result: np.ndarray = np.flatnonzero(~wild) if few else np.arange(len(difference))
    return result


class _Posterior:
    """What the differences say of the wandering at ``places`` (p,), seconds: the mean over a grid of the process's
    standard deviation and correlation time and of what is new at every place, weighed by likelihood and prior.
    """

    def __init__(self, met: Encounters, time: np.ndarray, places: np.ndarray, noise: float) -> None:
        grid: List[Tuple[_Process, float]] = []
        log: List[float] = []
        for seconds in _TIMES:
            alike = _Likeness(met, time, places, seconds)
            for ground, likely in _GROUND:
                process = _Process(met.difference, met.variance + (ground * noise) ** 2, alike)
                for size in _SIZES:
                    grid.append((process, (size * noise) ** 2))
                    log.append(process.likelihood((size * noise) ** 2) + np.log(size * likely) - size**2 / 2)
        self._grid, self._log, self._places = grid, np.array(log), len(places)
        process, size = grid[int(np.argmax(log))]
        self._scores = process.scores(size)

    def square(self) -> Tuple[float, float]:
        """Mean square (m²) of what wanders, and the variance of that number (m⁴)."""
        share = np.exp(self._log - self._log.max())
        share /= share.sum()
        square, variance = np.zeros(len(share)), np.zeros(len(share))
        heavy = np.flatnonzero(share > _NOTHING)
        for k in heavy.tolist():
            process, size = self._grid[k]
            mean, around = process.wandering(size)
            square[k] = (mean @ mean + np.trace(around)) / self._places
            variance[k] = (2 * np.sum(around**2) + 4 * mean @ around @ mean) / self._places**2
        usual = float(share @ square)
        return usual, float(share[heavy] @ (variance + (square - usual) ** 2)[heavy])

    def wildest(self) -> Tuple[int, float]:
        """The difference that departs most from what the others say, in departures as they usually are."""
        worst = int(np.argmax(self._scores))
        usual = float(np.clip(MAD * np.median(self._scores), _CALM, 1.0))
        return worst, float(self._scores[worst]) / usual


class _Likeness:
    """Correlations for one correlation time: of the differences (e, e), of the ``places`` with the differences (p, e),
    and of the places about their mean (p, p).
    """

    def __init__(self, met: Encounters, time: np.ndarray, places: np.ndarray, seconds: float) -> None:
        def alike(a: np.ndarray, b: np.ndarray) -> np.ndarray:
            result: np.ndarray = np.exp(-np.abs(a[:, None] - b) / seconds)
            return result

        first, second = time[met.first], time[met.second]
        self.differences = alike(first, first) - alike(first, second) - alike(second, first) + alike(second, second)
        self.asked = alike(places, second) - alike(places, first)
        own = alike(places, places)
        self.own = own - own.mean(axis=0) - own.mean(axis=1)[:, None] + own.mean()


class _Process:
    """The process of one correlation time, for any variance of it: one eigendecomposition serves all."""

    def __init__(self, difference: np.ndarray, noise: np.ndarray, alike: _Likeness) -> None:
        """``difference``: (e,) metres, each with the variance ``noise`` (e,) beside what wanders."""
        scale = 1 / np.sqrt(noise)
        value, self._vector = np.linalg.eigh(alike.differences * np.outer(scale, scale))
        self._value = np.maximum(value, 0.0)
        self._seen = self._vector.T @ (difference * scale)
        asked = alike.asked * scale @ self._vector
        self._asked = asked - asked.mean(axis=0)
        self._own = alike.own
        self._whole = -0.5 * float(np.sum(np.log(noise)))

    def likelihood(self, variance: float) -> float:
        """Its logarithm, but for a constant."""
        spread = 1 + variance * self._value
        return self._whole - 0.5 * float(np.sum(np.log(spread) + self._seen**2 / spread))

    def wandering(self, variance: float) -> Tuple[np.ndarray, np.ndarray]:
        """What wanders at the places, about its mean: expected value (p,) and covariance (p, p)."""
        spread = 1 + variance * self._value
        mean = variance * self._asked @ (self._seen / spread)
        return mean, variance * self._own - variance**2 * (self._asked / spread) @ self._asked.T

    def scores(self, variance: float) -> np.ndarray:
        """How far (e,) each difference lies from what the others say, in standard deviations of that."""
        spread = 1 + variance * self._value
        own = np.sqrt(np.sum(self._vector**2 / spread, axis=1))
        result: np.ndarray = np.abs(self._vector @ (self._seen / spread)) / own
        return result
