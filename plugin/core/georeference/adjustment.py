"""Least squares with redundancy numbers, and the test that asks which point does not fit.

Redundancy numbers and the test of single blunders ("data snooping"): W. Baarda, A testing procedure for
use in geodetic networks (1968); with an unknown standard deviation, the residuals are compared with one
estimated without the point in question (in the manner of A. J. Pope, The statistics of residuals and the
detection of outliers, 1976). All coordinates of a point are tested together.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Optional, Tuple

import numpy as np
from scipy import stats

#: Residuals below this, metres, are rounding of the file; no point is named for them.
NOTHING = 1e-5


class Verdict(Enum):
    """What the test says."""

    NO_REDUNDANCY = "no-redundancy"
    TOO_FEW_FIT = "too-few-fit"
    TOO_FEW_MISFIT = "too-few-misfit"
    TOO_FEW_UNKNOWN = "too-few-unknown"
    NONE_STANDS_OUT = "none-stands-out"
    POINT_NAMED = "point-named"
    SEVERAL_POSSIBLE = "several-possible"


@dataclass(frozen=True)
class Adjustment:
    """Result of a linear least-squares problem with m observations and u unknowns.

    ``unknowns`` (u,). ``residuals`` (m,): fitted minus observed. ``redundancy`` (m,): redundancy numbers,
    0..1, their sum is ``freedom`` = m - u. ``sigma`` (m,): a priori standard deviations or 1. ``known_sigma``:
    whether those are in the unit of the observations. ``sigma0``: a posteriori standard deviation of unit
    weight, nan for freedom 0. ``cofactors`` (u, u): of the unknowns. ``spread`` (m, m): cofactors of the
    residuals divided by their ``sigma``.
    """

    unknowns: np.ndarray
    residuals: np.ndarray
    redundancy: np.ndarray
    freedom: int
    sigma: np.ndarray
    known_sigma: bool
    sigma0: float
    cofactors: np.ndarray
    spread: np.ndarray

    @property
    def unit_sigma(self) -> float:
        """Standard deviation of unit weight to judge by: 1 where it is known a priori, else a posteriori."""
        return 1.0 if self.known_sigma else self.sigma0

    @property
    def normalised(self) -> np.ndarray:
        """Residuals (m,) over their standard deviations; nan where redundancy or freedom is 0."""
        with np.errstate(invalid="ignore", divide="ignore"):
            deviation = self.unit_sigma * self.sigma * np.sqrt(self.redundancy)
            return np.where(self.redundancy > 1e-9, self.residuals / deviation, np.nan)


@dataclass(frozen=True)
class PointTest:
    """``statistic`` and ``chance`` (n,) for each of n points, nan where a point cannot be tested.

    ``chance``: probability of a statistic as large if nothing is wrong. ``limit``: a point with a smaller chance
    does not fit. ``suspects``: indices of points, worst first: one for ``POINT_NAMED``, more for
    ``SEVERAL_POSSIBLE``. ``overall``: chance of the sum of squares, nan without a priori sigma.
    """

    statistic: np.ndarray
    chance: np.ndarray
    limit: float
    verdict: Verdict
    suspects: Tuple[int, ...]
    overall: float


def adjust(design: np.ndarray, observed: np.ndarray, sigma: Optional[np.ndarray] = None) -> Adjustment:
    """Unknowns x that make ``design`` (m, u) x fit ``observed`` (m,), by QR decomposition.

    ``sigma`` (m,): a priori standard deviations of the observations; equal and unknown where None. Raises
    numpy.linalg.LinAlgError when the unknowns are not determined.
    """
    m, u = design.shape
    deviation = np.ones(m) if sigma is None else np.asarray(sigma, float)
    weighted, wanted = design / deviation[:, None], observed / deviation
    size = np.sqrt((weighted**2).sum(axis=0))
    if m < u or not (size > 0).all():
        raise np.linalg.LinAlgError("not determined")
    q, r = np.linalg.qr(weighted / size)
    if np.abs(np.diag(r)).min() < 1e-10:
        raise np.linalg.LinAlgError("not determined")
    inverse = np.linalg.inv(r) / size[:, None]
    hat = q @ q.T
    spread = np.eye(m) - hat
    residuals = -(wanted - q @ (q.T @ wanted)) * deviation
    freedom = m - u
    squares = float(((residuals / deviation) ** 2).sum())
    sigma0 = float(np.sqrt(squares / freedom)) if freedom else np.nan
    redundancy = np.clip(np.diag(spread), 0.0, 1.0)
    return Adjustment(
        inverse @ (q.T @ wanted), residuals, redundancy, freedom, deviation, sigma is not None, sigma0,
        inverse @ inverse.T, spread,
    )  # fmt: skip


def snoop_points(adjustment: Adjustment, point: np.ndarray, significance: float = 0.01) -> PointTest:
    """Which point does not fit. ``point`` (m,): index 0..n-1 of the point each observation belongs to.

    ``significance``: chance of naming a good point of a faultless survey, shared by all points (Bonferroni).
    One wrong point is looked for; remove it and fit again to look for the next.
    """
    count = int(point.max()) + 1
    limit = significance / count
    reduced = adjustment.residuals / adjustment.sigma
    total = float(reduced @ reduced)
    overall = (
        float(stats.chi2.sf(total, adjustment.freedom)) if adjustment.known_sigma and adjustment.freedom else np.nan
    )
    statistic, chance = np.full(count, np.nan), np.full(count, np.nan)
    drops = np.zeros(count)
    ranks = np.zeros(count, int)
    for i in range(count):
        rows = np.flatnonzero(point == i)
        drops[i], ranks[i] = _drop(adjustment.spread[np.ix_(rows, rows)], reduced[rows])
        left = adjustment.freedom - ranks[i]
        if ranks[i] and left > 0:
            statistic[i], chance[i] = _test(drops[i], ranks[i], total, left, adjustment.known_sigma)
    verdict, suspects = _judge(adjustment, chance, drops, ranks, total, limit, overall, significance)
    return PointTest(statistic, chance, limit, verdict, suspects, overall)


def _drop(block: np.ndarray, reduced: np.ndarray) -> Tuple[float, int]:
    """By how much the sum of squares falls when these observations are left out, and of how many freedoms."""
    values, vectors = np.linalg.eigh(block)
    good = values > 1e-9
    along = vectors[:, good].T @ reduced
    return float((along**2 / values[good]).sum()), int(good.sum())


def _test(drop: float, rank: int, total: float, left: int, known: bool) -> Tuple[float, float]:
    if known:
        return drop / rank, float(stats.chi2.sf(drop, rank))
    rest = max(total - drop, 1e-14 * total) / left
    statistic = drop / rank / rest if rest > 0 else 0.0
    return statistic, float(stats.f.sf(statistic, rank, left))


def _judge(
    adjustment: Adjustment, chance: np.ndarray, drops: np.ndarray, ranks: np.ndarray, total: float, limit: float,
    overall: float, significance: float,
) -> Tuple[Verdict, Tuple[int, ...]]:  # fmt: skip
    if adjustment.freedom == 0:
        return Verdict.NO_REDUNDANCY, ()
    if not adjustment.known_sigma and np.abs(adjustment.residuals).max() < NOTHING:
        return Verdict.NONE_STANDS_OUT, ()
    if np.isnan(chance).all():
        if not adjustment.known_sigma:
            return Verdict.TOO_FEW_UNKNOWN, ()
        return (Verdict.TOO_FEW_MISFIT if overall < significance else Verdict.TOO_FEW_FIT), ()
    # Chances below the smallest number are all 0; the larger drop is then the worse point.
    order = sorted(range(len(chance)), key=lambda i: (2.0 if np.isnan(chance[i]) else chance[i], -drops[i]))
    if not chance[order[0]] < limit:
        return Verdict.NONE_STANDS_OUT, ()
    suspects = [order[0]]
    for i in order[1:]:
        if not chance[i] < limit:
            break
        # Another point is as likely the cause when the rest fits as well without it.
        rest = total - drops[i]
        freedom = adjustment.freedom - int(ranks[i])
        if not adjustment.known_sigma or stats.chi2.sf(rest, freedom) >= significance:
            suspects.append(i)
    return (Verdict.POINT_NAMED if len(suspects) == 1 else Verdict.SEVERAL_POSSIBLE), tuple(suspects)
