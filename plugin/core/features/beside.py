"""What lies to the left and right of a pass: the nearest other passes."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.spatial import cKDTree

from .passes import CHUNK, Passes

#: Every so many metres of the walk it is asked what lies beside.
EVERY = 2.5
#: Neighbours looked at, and how far they may lie (m).
NEIGHBOURS, FARTHEST = 16, 8.0
#: Passes so close (m) hide what lies farther away.
CLOSE = 1.0


@dataclass(frozen=True)
class Beside:
    """At h places of the walk what lies to the left (column 0) and right (column 1).

    ``at``: (h,) points of the walk. ``near``: (h, 2) points of other passes, -1 for none. ``away``: (h, 2) distance
    across, metres, inf for none. ``parallel``: (h, 2) cosine of the angle between the passes, unsigned.
    """

    at: np.ndarray
    near: np.ndarray
    away: np.ndarray
    parallel: np.ndarray


def look_beside(passes: Passes) -> Beside:
    """The nearest points of other passes on both sides, every few points of the walk."""
    q = len(passes)
    stride = max(1, round(EVERY / passes.spacing))
    at = np.arange(stride // 2, q, stride)
    none = Beside(at, np.full((len(at), 2), -1), np.full((len(at), 2), np.inf), np.zeros((len(at), 2)))
    if len(at) < 3:
        return none
    xy = np.column_stack([passes.x[at], passes.y[at]])
    tree = cKDTree(xy, compact_nodes=False, balanced_tree=False)
    count = min(NEIGHBOURS, len(at))
    far, which = tree.query(xy, k=count, distance_upper_bound=FARTHEST)
    rows = np.arange(len(at))
    for low in range(0, len(at), CHUNK):
        some = slice(low, low + CHUNK)
        _look(passes, at, far[some], which[some], rows[some], none)
    # Beside a pass that is walked close to another, the nearest say nothing of the far side.
    close = np.flatnonzero((none.away.min(axis=1) <= CLOSE) & np.isinf(none.away.max(axis=1)))
    if len(close):
        far, which = tree.query(xy[close], k=min(3 * NEIGHBOURS, len(at)), distance_upper_bound=FARTHEST)
        _look(passes, at, far, which, close, none)
    return none


def _look(passes: Passes, at: np.ndarray, far: np.ndarray, which: np.ndarray, rows: np.ndarray, found: Beside) -> None:
    """Puts into ``found`` what lies beside its rows ``rows`` (m,), by their neighbours (m, k) and distances."""
    i = at[rows]
    here = passes.s[i]
    for column in range(1, far.shape[1]):
        reach = far[:, column]
        j = at[np.minimum(which[:, column], len(at) - 1)]
        # The same pass comes back sooner on foot than a beeline and a half.
        other = np.isfinite(reach) & (np.abs(here - passes.s[j]) > 2.5 * reach + 2 * EVERY)
        own, row, j = i[other], rows[other], j[other]
        j, cosine = _abreast(passes, own, j)
        dx, dy = passes.x[j] - passes.x[own], passes.y[j] - passes.y[own]
        along = dx * passes.ex[own] + dy * passes.ey[own]
        across = passes.ex[own] * dy - passes.ey[own] * dx
        side = (across < 0).astype(np.int64)
        away = np.abs(across)
        fit = (np.abs(along) <= np.maximum(0.6 * away, 0.6 * passes.spacing)) & (away > 0.02)
        fit &= away < found.away[row, side]
        row, side = row[fit], side[fit]
        found.near[row, side] = j[fit]
        found.away[row, side] = away[fit]
        found.parallel[row, side] = np.abs(cosine[fit])


def _abreast(passes: Passes, i: np.ndarray, j: np.ndarray) -> tuple:
    """The points near ``j`` on their passes that lie abreast of ``i``, and the cosines of the passes' angles."""
    cosine = passes.ex[i] * passes.ex[j] + passes.ey[i] * passes.ey[j]
    along = (passes.x[j] - passes.x[i]) * passes.ex[i] + (passes.y[j] - passes.y[i]) * passes.ey[i]
    turned = np.where(np.abs(cosine) > 0.4, cosine, np.inf)
    shift = np.clip(np.rint(-along / turned / passes.spacing), -6, 6).astype(np.int64)
    return np.clip(j + shift, passes.first[j], passes.last[j] - 1), cosine
