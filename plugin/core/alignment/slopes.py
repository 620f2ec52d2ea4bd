"""Slopes along lines on a TIN as linear forms of its heights, and so with their exact standard deviation.

The slope of a line is that of the straight line which fits the surface's heights along it best (least squares over
the whole length, not over samples): b = integral of (s - m) z ds / integral of (s - m)^2 ds, m the middle. Between
two triangle edges z is linear in s and in the heights of three vertices, so b is a sum of heights with exact weights,
and its variance the sum of squared weights times the heights' variances (law of propagation of uncertainty, JCGM
100:2008, sections 5.1.2 and 5.2.2; exact as the function is linear). Noise is independent from point to point unless a
drift is given as well (:class:`HeightNoise`): a receiver's heights wander within minutes, and passes on either side
of a lane, walked at different times, then differ by more than the points' own noise. An offset that all share falls
out of a slope. Errors in plan are not part of it.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Sequence, Tuple, Union

import numpy as np
from scipy.sparse import csr_matrix

from ..messages import SurveyError
from ..surface.along import LaidLines, lay_lines
from ..surface.corridor import corridor
from ..surface.locate import locate, weights_in
from ..surface.tin import Tin
from .texts import NO_SIGMA


@dataclass(frozen=True)
class HeightNoise:
    """Noise of the vertices' heights: a part of its own for each, and a part that drifts in time.

    ``own``: standard deviation (m), one or (n,). ``drift``: standard deviation (m) of the part whose correlation
    between two vertices recorded t seconds apart is exp(-t / ``drift_time``) (first-order Gauss-Markov process).
    ``time``: (n,) seconds, nan where unknown: such a vertex drifts by itself.
    """

    own: Union[float, np.ndarray]
    drift: float
    drift_time: float
    time: np.ndarray


#: Times, in those over which drift forgets itself, whose exponentials are summed at once.
_BLOCK = 200.0
#: Times are rounded to so many parts of that time for covariances.
_FINE = 30.0

#: Noise of heights: a standard deviation (m) for all vertices, one for each (n,), or one with drift.
Sigma = Union[float, np.ndarray, HeightNoise]


@dataclass(frozen=True)
class LinearForms:
    """q sums of a TIN's heights: ``weights`` (q, n) sparse, ``covered`` (q,) share of each line on the surface.

    Values and sigmas are nan where not all is covered.
    """

    weights: csr_matrix
    covered: np.ndarray

    def values(self, tin: Tin) -> np.ndarray:
        """(q,) float64."""
        height = tin.vertices[:, 2]
        middle = float(height.mean())  # the weights of a slope sum to 0; so fewer digits are lost
        result = self.weights @ (height - middle) + middle * np.asarray(self.weights.sum(axis=1)).ravel()
        return np.where(self.whole, result, np.nan)

    def sigmas(self, sigma: Sigma) -> np.ndarray:
        """Standard deviations (q,) for heights with the noise ``sigma``.

        Raises SurveyError for a vertex without one.
        """
        own = sigma.own if isinstance(sigma, HeightNoise) else sigma
        variance = self.weights.multiply(self.weights) @ vertex_sigmas(own, self.weights.shape[1]) ** 2
        if isinstance(sigma, HeightNoise) and sigma.drift > 0:
            variance = variance + self._drift_variances(sigma)
        return np.where(self.whole, np.sqrt(variance), np.nan)

    def _drift_variances(self, noise: HeightNoise) -> np.ndarray:
        """Row by row, as each has its own few vertices; those of unknown time are put farther apart than any drift."""
        alone = ~np.isfinite(noise.time)
        found = np.zeros(self.weights.shape[0])
        for row in range(len(found)):
            part = slice(self.weights.indptr[row], self.weights.indptr[row + 1])
            weight, vertex = self.weights.data[part], self.weights.indices[part]
            own = alone[vertex]
            found[row] = np.sum(weight[own] ** 2) + _drifting(weight[~own], noise.time[vertex[~own]] / noise.drift_time)
        return noise.drift**2 * found

    def covariance(self, sigma: Sigma) -> np.ndarray:
        """Covariances (q, q) for heights with the noise ``sigma``, as :meth:`sigmas`; times are rounded a little."""
        own = sigma.own if isinstance(sigma, HeightNoise) else sigma
        variance = vertex_sigmas(own, self.weights.shape[1]) ** 2
        if not (isinstance(sigma, HeightNoise) and sigma.drift > 0):
            return np.asarray((self.weights.multiply(variance) @ self.weights.T).todense())
        known = np.isfinite(sigma.time)
        variance = variance + np.where(known, 0.0, sigma.drift**2)
        result = np.asarray((self.weights.multiply(variance) @ self.weights.T).todense())
        used = np.unique(self.weights.indices)
        used = used[known[used]]
        if len(used):
            moment, which = np.unique(np.round(_FINE * sigma.time[used] / sigma.drift_time), return_inverse=True)
            gather = csr_matrix((np.ones(len(used)), (np.arange(len(used)), which.reshape(-1))))
            mean = np.asarray((self.weights[:, used] @ gather).todense())
            result += sigma.drift**2 * mean @ np.exp(-np.abs(moment[:, None] - moment) / _FINE) @ mean.T
        return result

    @property
    def whole(self) -> np.ndarray:
        mask: np.ndarray = self.covered > 1 - 1e-5
        return mask

    def mean_by(self, group: np.ndarray, groups: int) -> LinearForms:
        """Means of the forms of each ``group`` (q,); those not wholly covered are left out.

        ``covered`` is 1 for a group with any form left.
        """
        use = np.flatnonzero(self.whole)
        count = np.bincount(group[use], minlength=groups)
        share = 1.0 / count[group[use]]
        gather = csr_matrix((share, (group[use], use)), shape=(groups, len(group)))
        return LinearForms(csr_matrix(gather @ self.weights), (count > 0).astype(float))


def _drifting(weight: np.ndarray, time: np.ndarray) -> float:
    """Sum over all pairs (i, j) of ``weight`` (k,) i times j times exp(-the time (k,) between them).

    In order of time the sum over all earlier ones is one running sum; as exponentials of times overflow, in blocks,
    each of which begins with what the one before hands on.
    """
    if not len(weight):
        return 0.0
    order = np.argsort(time, kind="stable")
    weight, time = weight[order], time[order]
    before, total, block = 0.0, 0.0, (time - time[0]) // _BLOCK
    starts = np.append(np.flatnonzero(np.append(True, np.diff(block) > 0)), len(time))
    for a, b in zip(starts[:-1].tolist(), starts[1:].tolist()):
        if a:
            before *= float(np.exp(time[a - 1] - time[a]))
        since = time[a:b] - time[a]
        grown = np.cumsum(weight[a:b] * np.exp(since))
        earlier = (before + grown - weight[a:b] * np.exp(since)) * np.exp(-since)
        total += float(np.sum(weight[a:b] * (weight[a:b] + 2 * earlier)))
        before = float((before + grown[-1]) * np.exp(-since[-1]))
    return max(total, 0.0)


def vertex_sigmas(sigma: Union[float, np.ndarray], n: int) -> np.ndarray:
    """``sigma`` for each of ``n`` vertices; raises SurveyError where it is missing or negative."""
    values = np.broadcast_to(np.asarray(sigma, float), (n,))
    bad = ~(np.isfinite(values) & (values >= 0))
    if np.any(bad):
        raise SurveyError(NO_SIGMA, count=int(np.count_nonzero(bad)))
    return values


def slope_forms(tin: Tin, lines: Sequence[np.ndarray]) -> LinearForms:
    """The least-squares slope (rise over run, up along the line positive) of each line (k, 2) on the surface."""
    length = np.array([float(np.sum(np.hypot(*np.diff(np.asarray(line), axis=0).T))) for line in lines])
    tin = corridor(tin, lines)  # its vertices keep their numbers
    laid = lay_lines(tin, lines)
    piece, line = _pieces(laid)
    triangle = locate(tin, (laid.xyz[piece, :2] + laid.xyz[piece + 1, :2]) / 2)
    inside = triangle >= 0  # all, but for slivers between edges that rounding has moved off the surface
    piece, line, triangle = piece[inside], line[inside], triangle[inside]
    if len(piece) == 0:
        return LinearForms(csr_matrix((len(lines), len(tin.vertices))), np.zeros(len(lines)))
    u, v = (laid.distance[piece + k] - length[line] / 2 for k in (0, 1))
    covered = np.bincount(line, v - u, len(lines)) / np.where(length > 0, length, 1.0)
    # z runs from z_u to z_v: the integrals of s times the two hat functions over [u, v]
    scale = (12.0 / length**3)[line]
    at_u, at_v = scale * (v - u) * (2 * u + v) / 6, scale * (v - u) * (u + 2 * v) / 6
    rows, columns, data = [], [], []
    for k, weight in ((0, at_u), (1, at_v)):
        corner = tin.triangles[triangle]
        share = weights_in(tin, triangle, laid.xyz[piece + k, :2] - tin.origin)
        rows.append(np.repeat(line, 3))
        columns.append(corner.ravel())
        data.append((share * weight[:, None]).ravel())
    entries = (np.concatenate(data), (np.concatenate(rows), np.concatenate(columns)))
    return LinearForms(csr_matrix(entries, shape=(len(lines), len(tin.vertices))), covered)


def height_forms(tin: Tin, xy: np.ndarray) -> LinearForms:
    """The heights at places (q, 2)."""
    triangle = locate(tin, xy)
    on = np.flatnonzero(triangle >= 0)
    corner = tin.triangles[triangle[on]]
    share = weights_in(tin, triangle[on], np.asarray(xy, float)[on] - tin.origin)
    entries = (share.ravel(), (np.repeat(on, 3), corner.ravel()))
    return LinearForms(csr_matrix(entries, shape=(len(xy), len(tin.vertices))), (triangle >= 0).astype(float))


def _pieces(laid: LaidLines) -> Tuple[np.ndarray, np.ndarray]:
    """Number of the first place of every piece, and its line."""
    inner = np.ones(len(laid.distance), bool)
    inner[laid.start[1:] - 1] = False
    piece = np.flatnonzero(inner)
    return piece, np.repeat(laid.line, np.diff(laid.start))[piece]
