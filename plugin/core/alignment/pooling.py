"""Slopes along a road as one estimate: neighbouring windows help each other.

A window's slope rests on its own few points. The slopes of windows one after another are taken as a smooth function of
the station, observed with the exact covariance of their noise: a smoothing spline by generalised least squares. How
smooth the road is comes from the slopes themselves (restricted likelihood), as an average over degrees of smoothness by
their likelihood. Standard deviations are those of the posterior (Wahba 1983, "Bayesian confidence intervals for the
cross-validated smoothing spline"); over a whole road their intervals hold as often as they say (Nychka 1988, "Bayesian
confidence intervals for smoothing splines").
"""

from __future__ import annotations

from typing import List, Tuple

import numpy as np

from ..surface.tin import Tin
from .slopes import LinearForms, Sigma

#: Fewer windows are left as they are; more than so many are taken in parts, which overlap.
_FEWEST, _MOST, _OVERLAP = 5, 100, 15
#: Roughness that is tried, as the standard deviation (ratio) of how much the change of slope changes from window to
#: window.
_ROUGH = np.geomspace(3e-5, 3e-2, 9)
#: Degrees of freedom of Student's distribution of these: few are much larger than the rest. Rounds to settle.
_TAIL, _ROUNDS = 2.0, 5


def pooled(forms: LinearForms, tin: Tin, sigma: Sigma) -> Tuple[np.ndarray, np.ndarray]:
    """Values and standard deviations (w,), (w,) of the slopes of w windows of one length, one after another, each with
    the help of its neighbours; nan where a window is not on the surface. No help reaches over such a window.

    ``sigma``: noise of the vertices' heights (m).
    """
    value, doubt = forms.values(tin), forms.sigmas(sigma)
    for begin, end in rows_of(np.isfinite(value)):
        for first, last, keep in _parts(begin, end):
            if last - first < _FEWEST:
                continue
            own = LinearForms(forms.weights[first:last], forms.covered[first:last])
            smooth, spread = _smoothed(value[first:last], own.covariance(sigma))
            value[keep], doubt[keep] = (
                smooth[keep.start - first : keep.stop - first],
                spread[keep.start - first : keep.stop - first],
            )
    return value, doubt


def rows_of(mask: np.ndarray) -> List[Tuple[int, int]]:
    """Begin and end of each run of a mask (w,)."""
    ends = np.flatnonzero(np.diff(np.concatenate([[0], mask.astype(np.int8), [0]]))).tolist()
    return list(zip(ends[::2], ends[1::2]))


def _parts(begin: int, end: int) -> List[Tuple[int, int, slice]]:
    """Begin and end of the parts of a row of windows, and which windows each part is to tell of."""
    if end - begin <= _MOST:
        return [(begin, end, slice(begin, end))]
    step = _MOST - 2 * _OVERLAP
    starts = list(range(begin, end - 2 * _OVERLAP, step))
    found = []
    for start in starts:
        stop = min(start + _MOST, end)
        inner = slice(start if start == begin else start + _OVERLAP, stop if stop == end else stop - _OVERLAP)
        found.append((start, stop, inner))
        if stop == end:
            break
    return found


def _smoothed(value: np.ndarray, covariance: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Posterior mean and standard deviation (w,) of smooth slopes whose noisy values (w,) have a ``covariance``."""
    count = len(value)
    least = 1e-6 * float(np.mean(np.diag(covariance))) + 1e-18
    precision = np.linalg.inv(covariance + least * np.eye(count))
    bends, seen = np.diff(np.eye(count), 2, axis=0), precision @ value
    found = [_of_roughness(value, precision, seen, bends, size) for size in _ROUGH]
    share = np.exp(np.array([each[0] for each in found]) - max(each[0] for each in found))
    share /= share.sum()
    means, variances = (np.array([each[k] for each in found]) for k in (1, 2))
    mean = share @ means
    return mean, np.sqrt(share @ (variances + (means - mean) ** 2))


def _of_roughness(
    value: np.ndarray, precision: np.ndarray, seen: np.ndarray, bends: np.ndarray, size: float
) -> Tuple[float, np.ndarray, np.ndarray]:
    """Logarithm of the likelihood, mean and variance (w,) where changes of slope are of one ``size`` but for few."""
    loose = np.ones(len(bends))
    for _ in range(_ROUNDS):
        weight = loose / size**2
        factor = np.linalg.cholesky(precision + bends.T @ (weight[:, None] * bends))
        inverse = np.linalg.inv(factor)
        mean = inverse.T @ (inverse @ seen)
        bent = (bends @ mean) ** 2 + np.sum((bends @ inverse.T) ** 2, axis=1)
        loose = (_TAIL + 1) / (_TAIL + bent / size**2)
    off = value - mean
    likely = -0.5 * float(off @ precision @ off) - float(np.sum(np.log(np.diag(factor))))
    likely -= float(np.sum(np.log(size) + 0.5 * (_TAIL + 1) * np.log1p((bends @ mean) ** 2 / (_TAIL * size**2))))
    return likely, mean, np.sum(inverse**2, axis=0)
