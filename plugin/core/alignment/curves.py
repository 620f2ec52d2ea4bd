"""Grades and vertical curves fitted to an existing profile.

Model: straight grades joined by parabolas that touch them (a vertical curve of length L about the point where its two
grades meet; common practice, and the definition of K = L / A, A the change of grade in percent). In heights:

    z(s) = z0 + g0 s + sum over curves of dg_i h(s - p_i, L_i)
    h(d, L) = 0 for d <= -L/2, (d + L/2)^2 / (2 L) within, d for d >= L/2

with p_i the meeting point, L_i the length and dg_i the change of grade. Method:

1. Segmentation: starting with one grade, the curve that lowers the weighted squares most is added, sought on a grid of
   meeting points and lengths (each trial is a linear least-squares step, by projection on what is left).
2. After each, all meeting points, lengths, grades and the height are adjusted together by robust least squares
   (soft-L1 loss: heights far off, such as a cover or a kerb crossed, count little). Curves do not overlap: the line is
   shared out among grades and curves, all of positive length.
3. The number of curves with the lowest Bayesian information criterion is kept, n ln(s^2) + k ln(n) with s robust, but
   not below ``floor``: departures smaller than that are not worth a curve. Then each curve is left out on trial.

Sigmas are those of the adjustment (inverse normal matrix times the residuals' variance). Neighbouring heights of a TIN
depend on the same points, so with a spacing below the points' they come out too small; see ``fit_curves``.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Tuple

import numpy as np
from scipy.optimize import least_squares

from ..confidence import NORMAL_95
from ..messages import SurveyError
from .profile import HeightLine
from .texts import TOO_FEW_HEIGHTS

_LEAST, _MOST = 8, 3000  # heights
_PLACES, _LENGTHS = 60, (0.02, 0.1, 0.25, 0.5, 0.9)  # grid of trials; lengths as shares of what is free
_MAD = 1.4826  # standard deviation of a normal distribution over its median absolute deviation
_LEAST_SHARE = 1e-4  # of the line: shortest grade or curve
#: Parameters with less effect than this share of the largest one's are not known, nor those whose effects are alike.
_NO_EFFECT, _SAME_EFFECT = 1e-9, 1e-7
_MOST_ALIKE = 0.98  # correlation of residuals from one to the next


@dataclass(frozen=True)
class VerticalCurve:
    """A parabola between two grades (ratios, rising with distance).

    ``begin``, ``end``: distances (m) where it leaves and meets the straight grades; ``meeting``, ``meeting_height``:
    where the grades would meet. ``k``: metres of length for each percent of change, with ``k_sigma``.
    ``extreme``: distance of its highest or lowest place, None where the grade does not change sign.
    """

    begin: float
    end: float
    meeting: float
    meeting_height: float
    grade_before: float
    grade_after: float
    k: float
    k_sigma: float
    extreme: Optional[float]

    @property
    def length(self) -> float:
        return self.end - self.begin

    @property
    def determined(self) -> bool:
        """Whether the heights tell K: its 95 % interval does not reach 0. Else nothing says that there is a curve."""
        return bool(self.k - NORMAL_95 * self.k_sigma > 0)

    @property
    def crest(self) -> bool:
        return self.grade_after < self.grade_before


@dataclass(frozen=True)
class StraightGrade:
    """A straight ``grade`` (ratio) from ``begin`` to ``end`` (m) with its standard deviation ``sigma``."""

    begin: float
    end: float
    grade: float
    sigma: float


@dataclass(frozen=True)
class FittedProfile:
    """Grades and curves in turn, beginning and ending with a grade.

    ``distance``, ``residual``: (n,) where heights were taken, and height less fit, metres. ``spread``: robust standard
    deviation of the residuals, metres; ``worst``: largest of them.
    """

    grades: Tuple[StraightGrade, ...]
    curves: Tuple[VerticalCurve, ...]
    begin_height: float
    distance: np.ndarray
    residual: np.ndarray
    spread: float

    @property
    def worst(self) -> float:
        return float(np.abs(self.residual).max())

    @property
    def rms(self) -> float:
        return float(np.sqrt(np.mean(self.residual**2)))

    def heights(self, distance: np.ndarray) -> np.ndarray:
        """Heights (q,) of the fit at distances (q,), metres."""
        from_begin = np.asarray(distance, float) - self.grades[0].begin
        result: np.ndarray = self.begin_height + self.grades[0].grade * from_begin
        for curve in self.curves:
            bend = _bend(np.asarray(distance, float) - curve.meeting, curve.length)
            result = result + (curve.grade_after - curve.grade_before) * bend
        return result


def fit_curves(
    profile: HeightLine, spacing: float, most: int = 12, floor: float = 0.005, begin: float = 0.0, end: float = np.inf
) -> FittedProfile:
    """Fit grades and vertical curves to the heights of ``profile`` between two distances.

    ``spacing`` (m): between the heights taken; take about the spacing of the survey's points (along a long line it
    is made wider, so that there are 3,000 heights at most). ``most``: curves at most;
    ``floor`` (m): departures not worth a curve. Parts off the surface are passed over. Raises SurveyError for fewer
    than 8 heights.
    """
    low, high = max(begin, float(profile.distance[0])), min(end, float(profile.distance[-1]))
    count = int(np.floor((high - low) / spacing)) + 1 if high > low and spacing > 0 else 0
    s = np.linspace(low, high, min(max(count, 0), _MOST))
    z = profile.heights(s)
    return fit_heights(s[np.isfinite(z)], z[np.isfinite(z)], most, floor)


def fit_heights(distance: np.ndarray, height: np.ndarray, most: int = 12, floor: float = 0.005) -> FittedProfile:
    """As :func:`fit_curves`, to heights (n,) at rising distances (n,), metres."""
    if len(distance) < _LEAST:
        raise SurveyError(TOO_FEW_HEIGHTS, count=len(distance), least=_LEAST)
    total = float(distance[-1] - distance[0])
    s, z = (distance - distance[0]) / total, height - height.mean()
    shares = np.ones(1)  # lengths of grade, curve, grade ... as shares of the whole
    best = _adjust(s, z, shares, floor)
    last = best
    for _ in range(min(most, len(s) // 4)):
        added = _with_another(s, z, last, floor)
        if added is None:
            break
        last = added
        if last.criterion < best.criterion - 2.0:
            best = last
        elif last.curves > best.curves + 1:
            break  # two in a row that were not worth it
    best = _without_idle(s, z, best, floor)
    return _result(best, distance, height, total)


@dataclass(frozen=True)
class _Fit:
    """``shares``: (2 m + 1,) of grades and curves in turn, sum 1; ``linear``: z0, g0, dg_1 ... dg_m."""

    shares: np.ndarray
    linear: np.ndarray
    residual: np.ndarray
    scale: float
    criterion: float

    @property
    def curves(self) -> int:
        return len(self.shares) // 2


def _bend(d: np.ndarray, length: float) -> np.ndarray:
    inside = np.clip(d + length / 2, 0.0, length)
    return inside**2 / (2 * length) + np.maximum(d - length / 2, 0.0)


def _knots(shares: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Meeting points and lengths (m,), (m,) of the curves, as shares of the line."""
    ends = np.cumsum(shares)
    return (ends[0:-1:2] + ends[1::2]) / 2, shares[1::2]


def _design(s: np.ndarray, shares: np.ndarray) -> np.ndarray:
    return np.column_stack([np.ones(len(s)), s] + [_bend(s - p, length) for p, length in zip(*_knots(shares))])


def _adjust(s: np.ndarray, z: np.ndarray, shares: np.ndarray, floor: float) -> _Fit:
    """Robust adjustment of all, starting from ``shares``; linear part first by reweighted least squares."""
    linear = _robust_linear(_design(s, shares), z, floor)
    if len(shares) > 1:
        for _ in range(2):  # the second time with the scale that the first has found
            scale = max(_spread(z - _design(s, shares) @ linear), floor / 2)
            shares, linear = _adjust_all(s, z, shares, linear, scale)
    residual = z - _design(s, shares) @ linear
    scale = _spread(residual)
    n, parameters = len(s), 2 + 3 * (len(shares) // 2)
    # A robust mean square: squares count up to 3 spreads
    square = float(np.mean(np.minimum(residual**2, (3 * max(scale, floor / 3)) ** 2)))
    criterion = n * np.log(max(square, floor**2)) + parameters * np.log(n)
    return _Fit(shares, linear, residual, scale, float(criterion))


def _adjust_all(
    s: np.ndarray, z: np.ndarray, shares: np.ndarray, linear: np.ndarray, scale: float
) -> Tuple[np.ndarray, np.ndarray]:
    m = len(shares)

    def residuals(x: np.ndarray) -> np.ndarray:
        part = x[:m] / x[:m].sum()
        result: np.ndarray = (_design(s, part) @ x[m:] - z) / scale
        return result

    start = np.concatenate([np.maximum(shares, 2 * _LEAST_SHARE), linear])
    low = np.concatenate([np.full(m, _LEAST_SHARE), np.full(len(linear), -np.inf)])
    high = np.concatenate([np.full(m, 2.0), np.full(len(linear), np.inf)])
    size = np.concatenate([np.full(m, 0.1), np.full(len(linear), max(float(np.ptp(z)), scale))])
    found = least_squares(residuals, start, bounds=(low, high), x_scale=size, loss="soft_l1", f_scale=1.5, max_nfev=60)
    shares = found.x[:m] / found.x[:m].sum()
    return shares, _robust_linear(_design(s, shares), z, scale)


def _robust_linear(design: np.ndarray, z: np.ndarray, floor: float) -> np.ndarray:
    """Soft-L1 regression by reweighting."""
    weight = np.ones(len(z))
    solution = np.zeros(design.shape[1])
    for _ in range(10):
        root = np.sqrt(weight)[:, None]
        solution = np.linalg.lstsq(design * root, z * root[:, 0], rcond=None)[0]
        residual = z - design @ solution
        weight = 1 / np.sqrt(1 + (residual / (1.5 * max(_spread(residual), floor / 2))) ** 2)
    return solution


def _spread(residual: np.ndarray) -> float:
    return _MAD * float(np.median(np.abs(residual)))


def _with_another(s: np.ndarray, z: np.ndarray, fit: _Fit, floor: float) -> Optional[_Fit]:
    """``fit`` with one curve more, where it lowers the squares most; None where there is no room."""
    weight = 1 / np.sqrt(1 + (fit.residual / (1.5 * max(fit.scale, floor / 2))) ** 2)
    root = np.sqrt(weight)
    basis = np.linalg.qr(_design(s, fit.shares) * root[:, None])[0]
    left = root * fit.residual
    left = left - basis @ (basis.T @ left)
    trials = _trials(fit.shares)
    if not trials:
        return None
    bends = np.column_stack([_bend(s - p, length) for p, length, _ in trials]) * root[:, None]
    bends -= basis @ (basis.T @ bends)
    square = np.sum(bends**2, axis=0)
    gain = np.where(square > 1e-12, (left @ bends) ** 2 / np.maximum(square, 1e-12), 0.0)
    best: Optional[_Fit] = None
    tried: List[float] = []
    for k in np.argsort(-gain)[:40]:
        p, _, shares = trials[k]
        if any(abs(p - q) < 0.05 for q in tried):
            continue
        tried.append(p)
        fitted = _adjust(s, z, shares, floor)
        if best is None or fitted.criterion < best.criterion:
            best = fitted
        if len(tried) == 3:
            break
    return best


def _trials(shares: np.ndarray) -> List[Tuple[float, float, np.ndarray]]:
    """Meeting point, length and shares of every trial: each grade, and each curve, is parted by another curve."""
    ends = np.cumsum(shares)
    found = []
    for p in (np.arange(_PLACES) + 0.5) / _PLACES:
        k = int(np.searchsorted(ends, p))
        begin = ends[k - 1] if k else 0.0
        if k % 2:
            # Within a curve: it becomes two that share its length, with a grade between them.
            own = shares[k]
            if own < 0.1:
                continue
            first = np.clip(p - begin, 0.2 * own, 0.8 * own)
            parts = [first * 0.9, 0.1 * own, (own - first) * 0.9]
            parted = np.concatenate([shares[:k], parts, shares[k + 1 :]])
            found.append((p, own / 2, parted / parted.sum()))
            continue
        free = 2 * min(p - begin, ends[k] - p)
        for part in _LENGTHS:
            length = part * free
            if length < 4 * _LEAST_SHARE:
                continue
            parts = [p - length / 2 - begin, length, ends[k] - p - length / 2]
            found.append((p, length, np.concatenate([shares[:k], parts, shares[k + 1 :]])))
    return found


def _without_idle(s: np.ndarray, z: np.ndarray, fit: _Fit, floor: float) -> _Fit:
    """Leave out curves one by one as long as the criterion falls."""
    while fit.curves:
        fewer = []
        for i in range(fit.curves):
            joined = fit.shares[2 * i : 2 * i + 3].sum()
            shares = np.concatenate([fit.shares[: 2 * i], [joined], fit.shares[2 * i + 3 :]])
            fewer.append(_adjust(s, z, shares, floor))
        best = min(fewer, key=lambda other: other.criterion)
        if best.criterion >= fit.criterion:
            break
        fit = best
    return fit


def _result(fit: _Fit, distance: np.ndarray, height: np.ndarray, total: float) -> FittedProfile:
    begin = float(distance[0])
    ends = begin + np.append(0.0, np.cumsum(fit.shares)) * total
    grade = np.cumsum(fit.linear[1:]) / total
    meeting, length = _knots(fit.shares)
    grade_sigma, k_sigma = _sigmas(fit, (distance - begin) / total, height, total)
    straight = tuple(
        StraightGrade(float(ends[2 * i]), float(ends[2 * i + 1]), float(grade[i]), float(grade_sigma[i]))
        for i in range(len(grade))
    )
    begin_height = float(fit.linear[0] + height.mean())
    curves = []
    for i in range(fit.curves):
        change = grade[i + 1] - grade[i]
        k = length[i] * total / (100 * abs(change)) if change else np.inf
        extreme = None
        if grade[i] * grade[i + 1] < 0:
            extreme = float(ends[2 * i + 1] - grade[i] / change * length[i] * total)
        at = float(meeting[i] * total)
        before = zip(meeting[:i], np.diff(grade)[:i])
        meeting_height = begin_height + grade[0] * at + sum(d * (at - p * total) for p, d in before)
        curves.append(
            VerticalCurve(
                float(ends[2 * i + 1]), float(ends[2 * i + 2]), begin + at, float(meeting_height), float(grade[i]),
                float(grade[i + 1]), float(k), float(k_sigma[i]), extreme,
            )
        )  # fmt: skip
    found = FittedProfile(straight, tuple(curves), begin_height, distance, np.zeros(0), 0.0)
    residual = height - found.heights(distance)
    return FittedProfile(straight, tuple(curves), begin_height, distance, residual, _spread(residual))


def _sigmas(fit: _Fit, s: np.ndarray, height: np.ndarray, total: float) -> Tuple[np.ndarray, np.ndarray]:
    """Standard deviations of the grades (m + 1,) and of K (m,)."""
    m = fit.curves
    meeting, length = _knots(fit.shares)

    def model(x: np.ndarray) -> np.ndarray:
        columns = [np.ones(len(s)), s] + [_bend(s - x[m + 2 + i], abs(x[2 * m + 2 + i])) for i in range(m)]
        result: np.ndarray = np.column_stack(columns) @ x[: m + 2]
        return result

    x = np.concatenate([fit.linear, meeting, length])
    step = 1e-6
    jacobian = np.column_stack([(model(x + step * e) - model(x - step * e)) / (2 * step) for e in np.eye(len(x))])
    freedom = max(1, len(s) - len(x))
    variance = fit.scale**2 * len(s) / freedom * _correlation(height - height.mean() - model(x))
    covariance = variance * np.linalg.pinv(jacobian.T @ jacobian, rcond=1e-13)
    by_grade = np.zeros((m + 1, len(x)))
    for i in range(m + 1):
        by_grade[i, 1 : i + 2] = 1 / total
    by_k = np.zeros((m, len(x)))
    for i in range(m):
        change = fit.linear[2 + i]
        k = length[i] * total**2 / (100 * abs(change)) if change else 0.0
        by_k[i, 2 + i] = -k / change if change else 0.0
        by_k[i, 2 * m + 2 + i] = k / length[i]
    sigma = [np.sqrt(np.maximum(np.einsum("ij,jk,ik->i", rows, covariance, rows), 0.0)) for rows in (by_grade, by_k)]
    unknown = _undetermined(jacobian)[2 + m :]
    sigma[1][unknown[:m] | unknown[m:]] = np.inf
    return sigma[0], sigma[1]


def _correlation(residual: np.ndarray) -> float:
    """How many times larger variances are since residuals (k,) in order are correlated.

    As of a first-order autoregressive process: (1 + r) / (1 - r), r the correlation from one to the next (Bartlett
    1935), made greater by what few values make it too small (Marriott and Pope 1954); 1 where r may be chance.
    """
    count, reach = len(residual), 3 * max(_spread(residual), 1e-12)
    limit = np.clip(residual, -reach, reach)  # a kerb crossed counts little
    square = float(np.sum(limit**2))
    r = float(np.sum(limit[1:] * limit[:-1])) / square if square > 0 else 0.0
    if r <= 2.0 / np.sqrt(count):
        return 1.0
    r = min(r + (1 + 4 * r) / count, _MOST_ALIKE)
    return (1 + r) / (1 - r)


def _undetermined(jacobian: np.ndarray) -> np.ndarray:
    """Mask (p,) of the parameters that heights with these derivatives (k, p) do not determine."""
    size = np.linalg.norm(jacobian, axis=0)
    lost = size <= _NO_EFFECT * size.max()
    _, values, directions = np.linalg.svd(jacobian / np.where(lost, 1.0, size))
    free = np.append(values, np.zeros(len(directions) - len(values))) <= _SAME_EFFECT * values[0]
    shared: np.ndarray = np.sum(directions[free] ** 2, axis=0) > 1e-6
    return lost | shared
