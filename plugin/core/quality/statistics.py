"""Statistics of height and plan differences that accuracy statements rest on."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np
from scipy import stats

#: Errors are at most this many RMSE in 95 % of cases, in height (FGDC-STD-007.3-1998, 3.2.1).
NSSDA_VERTICAL = 1.9600
#: The same in plan as a radius, where both axes are alike (FGDC-STD-007.3-1998, 3.2.1; there from memory).
NSSDA_HORIZONTAL = 1.7308
#: Factor for the mean of two unlike axes, whose ratio is 0.6 or more (FGDC-STD-007.3-1998, appendix 3-A; from memory).
NSSDA_UNLIKE = 2.4477
_UNLIKE_RATIO = 0.6
_ALIKE = 1e-9

#: Median absolute deviation to standard deviation for normal errors.
_NORMAL = 1.4826


@dataclass(frozen=True)
class HeightStatistics:
    """Differences of n heights, metres.

    ``mean``: the bias; ``deviation``: sample standard deviation (n - 1), nan for n = 1. ``rmse``: root mean square,
    rmse² = mean² + deviation² (n - 1) / n. ``rmse_interval``: where the true RMSE lies at 95 %, see
    :func:`rmse_interval`. ``accuracy_95``: 1.9600 rmse (NSSDA), good for normal errors without much bias.
    ``percentile_95`` of the absolute differences and ``nmad`` (normalised median absolute deviation, Höhle and Höhle
    2009) bear outliers and suppose no distribution. ``bias_p``: two-sided p of Student's t test that the mean is 0.
    """

    count: int
    mean: float
    deviation: float
    rmse: float
    rmse_interval: Tuple[float, float]
    accuracy_95: float
    median: float
    percentile_95: float
    nmad: float
    smallest: float
    largest: float
    bias_p: float

    @property
    def biased(self) -> bool:
        """The mean differs from 0 by more than chance gives in one case of twenty."""
        return bool(self.bias_p < 0.05)


@dataclass(frozen=True)
class PlanStatistics:
    """Differences in plan of n marks, metres. ``rmse_h``: root of rmse_east² + rmse_north².

    ``accuracy_95``: radius by NSSDA; nan where the axes are too unlike for its formulas (ratio below 0.6).
    """

    count: int
    mean_east: float
    mean_north: float
    rmse_east: float
    rmse_north: float
    rmse_h: float
    accuracy_95: float


def height_statistics(difference: np.ndarray) -> HeightStatistics:
    """Statistics of differences (n,) in metres, n at least 1, all finite. Raises ValueError for none."""
    d = np.asarray(difference, float)
    if len(d) == 0 or not np.all(np.isfinite(d)):
        raise ValueError("differences must be finite, and one at least")
    n = len(d)
    mean, rmse = float(d.mean()), float(np.sqrt(np.mean(d**2)))
    deviation = float(d.std(ddof=1)) if n > 1 else float("nan")
    median = float(np.median(d))
    return HeightStatistics(
        count=n,
        mean=mean,
        deviation=deviation,
        rmse=rmse,
        rmse_interval=rmse_interval(rmse, n),
        accuracy_95=NSSDA_VERTICAL * rmse,
        median=median,
        percentile_95=float(np.percentile(np.abs(d), 95)),
        nmad=_NORMAL * float(np.median(np.abs(d - median))),
        smallest=float(d.min()),
        largest=float(d.max()),
        bias_p=_bias_p(mean, deviation, n),
    )


def rmse_interval(rmse: float, count: int, confidence: float = 0.95) -> Tuple[float, float]:
    """Where the true RMSE lies, from that of ``count`` differences: n rmse² / σ² is chi-square with n degrees.

    True for independent normal errors about 0; with a bias the interval is somewhat wider than it need be.
    """
    tail = (1 - confidence) / 2
    low, high = (float(stats.chi2.ppf(p, count)) for p in (1 - tail, tail))
    return rmse * (count / low) ** 0.5, rmse * (count / high) ** 0.5


def plan_statistics(east: np.ndarray, north: np.ndarray) -> PlanStatistics:
    """Statistics of differences in plan (n,), (n,) in metres, n at least 1. Raises ValueError for none."""
    if len(east) == 0:
        raise ValueError("one difference at least is needed")
    x, y = (float(np.sqrt(np.mean(np.asarray(d, float) ** 2))) for d in (east, north))
    return PlanStatistics(
        len(east), float(np.mean(east)), float(np.mean(north)), x, y, float(np.hypot(x, y)), nssda_radius(x, y)
    )


def nssda_radius(rmse_east: float, rmse_north: float) -> float:
    """Radius (m) that holds 95 % of the errors in plan, by FGDC-STD-007.3-1998; nan for axes it has no formula for."""
    small, large = sorted((rmse_east, rmse_north))
    if large - small <= _ALIKE * large:
        return NSSDA_HORIZONTAL * float(np.hypot(small, large))
    return NSSDA_UNLIKE * 0.5 * (small + large) if small >= _UNLIKE_RATIO * large else float("nan")


def _bias_p(mean: float, deviation: float, count: int) -> float:
    if count < 2:
        return float("nan")
    if deviation == 0:
        return 1.0 if mean == 0 else 0.0
    return float(2 * stats.t.sf(abs(mean) / (deviation / count**0.5), count - 1))
