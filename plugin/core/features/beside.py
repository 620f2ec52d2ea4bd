"""What lies to the left and right of a pass: the nearest other passes."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.spatial import cKDTree

from .passes import Passes

#: Every so many metres of the walk it is asked what lies beside.
EVERY = 2.0
#: Neighbours looked at, and how far they may lie (m).
NEIGHBOURS, FARTHEST = 16, 8.0


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
    stride = max(1, int(round(EVERY / passes.spacing)))
    at = np.arange(stride // 2, q, stride)
    none = Beside(at, np.full((len(at), 2), -1), np.full((len(at), 2), np.inf), np.zeros((len(at), 2)))
    if len(at) < 3:
        return none
    xy = np.column_stack([passes.x[at], passes.y[at]])
    tree = cKDTree(xy, compact_nodes=False, balanced_tree=False)
    count = min(NEIGHBOURS, len(at))
    far, which = tree.query(xy, k=count, distance_upper_bound=FARTHEST)
    for column in range(1, count):
        ok = np.flatnonzero(np.isfinite(far[:, column]))
        i, j = at[ok], at[which[ok, column]]
        # The same pass comes back sooner on foot than a beeline and a half.
        other = np.abs(passes.s[i] - passes.s[j]) > 2.5 * far[ok, column] + 2 * EVERY
        ok, i, j = ok[other], i[other], j[other]
        j, cosine = _abreast(passes, i, j)
        dx, dy = passes.x[j] - passes.x[i], passes.y[j] - passes.y[i]
        along = dx * passes.ex[i] + dy * passes.ey[i]
        across = passes.ex[i] * dy - passes.ey[i] * dx
        side = (across < 0).astype(np.int64)
        fit = (np.abs(along) <= np.maximum(0.6 * np.abs(across), 0.6 * passes.spacing)) & (np.abs(across) > 0.02)
        fit &= np.abs(across) < none.away[ok, side]
        ok, side, j, across, cosine = ok[fit], side[fit], j[fit], across[fit], cosine[fit]
        none.near[ok, side] = j
        none.away[ok, side] = np.abs(across)
        none.parallel[ok, side] = np.abs(cosine)
    return none


def _abreast(passes: Passes, i: np.ndarray, j: np.ndarray) -> tuple:
    """The points near ``j`` on their passes that lie abreast of ``i``, and the cosines of the passes' angles."""
    cosine = passes.ex[i] * passes.ex[j] + passes.ey[i] * passes.ey[j]
    along = (passes.x[j] - passes.x[i]) * passes.ex[i] + (passes.y[j] - passes.y[i]) * passes.ey[i]
    turned = np.where(np.abs(cosine) > 0.4, cosine, np.inf)
    shift = np.clip(np.rint(-along / turned / passes.spacing), -6, 6).astype(np.int64)
    return np.clip(j + shift, passes.first[j], passes.last[j] - 1), cosine
