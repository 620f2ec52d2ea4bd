"""What neighbouring points of a survey have in common: the receiver's slow errors.

Where the times of the points are known, or can be told from their order, drift is a first-order Gauss-Markov process
in time: what it is at two times t seconds apart agrees by exp(-t / ``drift_time``). Otherwise it is one offset within a
square of ground and independent from square to square.
"""

from __future__ import annotations

from typing import Optional

import numpy as np
from scipy.spatial import cKDTree

from ..surface.tin import Tin

WALKING = 1.2  # metres a second, of a walk whose times are not known (common practice, no source)
DRIFT_TIME = 90.0  # seconds (common practice of such receivers, no source)

_BINS = 10.0  # of a correlation time: within one, drift is one and the same
_STEP = 3.0  # times the median edge, up to which points that follow each other were walked
_SHARE = 0.9  # of the steps that must be so short


class DriftField:
    """Drift of standard deviation ``drift`` (m) of the vertices of a surface."""

    def __init__(
        self, tin: Tin, drift: float, length: float, time: Optional[np.ndarray], seconds: float = DRIFT_TIME
    ) -> None:
        """``length``: side of the squares, metres; ``time``: (n,) seconds of the vertices, nan where unknown, or
        None.
        """
        self.drift = drift
        if time is not None and np.any(np.isfinite(time)):
            group = np.floor(_all_known(tin, time) / (seconds / _BINS)).astype(np.int64)
            bins, self.group = np.unique(group, return_inverse=True)
            self._fade: Optional[np.ndarray] = np.exp(-np.diff(bins) / _BINS)
        else:
            square = np.floor((tin.vertices[:, :2] + tin.origin) / length).astype(np.int64)
            self.group = np.unique(square, axis=0, return_inverse=True)[1]
            self._fade = None
        self.group = self.group.ravel()
        self.count = int(self.group.max()) + 1 if len(self.group) else 0

    def variance(self, weights: np.ndarray) -> float:
        """Variance of the sum of drift times ``weights`` (n,)."""
        if self.drift == 0:
            return 0.0
        each = np.bincount(self.group, weights, self.count)
        total = float(each @ each)
        if self._fade is not None:
            before, twice = 0.0, 0.0
            for own, last, fade in zip(each[1:].tolist(), each[:-1].tolist(), self._fade.tolist()):
                before = (before + last) * fade
                twice += own * before
            total += 2 * twice
        return self.drift**2 * max(0.0, total)

    def draws(self, random: np.random.Generator, count: int) -> np.ndarray:
        """Drift (n, count) of the vertices, drawn ``count`` times."""
        if self.drift == 0:
            return np.zeros((len(self.group), count))
        each = random.standard_normal((self.count, count))
        if self._fade is not None:
            for k, fade in enumerate(self._fade.tolist(), 1):
                each[k] = fade * each[k - 1] + np.sqrt(1 - fade**2) * each[k]
        result: np.ndarray = self.drift * each[self.group]
        return result


def _all_known(tin: Tin, time: np.ndarray) -> np.ndarray:
    """Times (n,), those of the nearest point where a vertex has none."""
    known = np.isfinite(time)
    if np.all(known):
        return time
    xy = tin.vertices[:, :2]
    nearest = cKDTree(xy[known]).query(xy[~known])[1]
    found = np.array(time, float)
    found[~known] = time[known][nearest]
    return found


def walked_times(tin: Tin) -> Optional[np.ndarray]:
    """Times (n,) in seconds of vertices that follow each other as they were walked, at a walker's speed.

    A surface and its mesh file keep the points in the order of the survey. None where most of the steps from one to
    the next are long against the edges of the triangles: they come in some other order.
    """
    xy = tin.vertices[:, :2]
    if len(xy) < 3 or len(tin.triangles) == 0:
        return None
    edge = float(np.median(tin.edge_lengths()))
    step = np.hypot(*np.diff(xy, axis=0).T)
    if np.mean(step <= _STEP * edge) < _SHARE:
        return None
    return np.append(0.0, np.cumsum(step)) / WALKING
