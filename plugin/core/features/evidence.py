"""How unlikely it is that so orderly a line comes from candidates strewn at random.

An "a contrario" measure (Desolneux, Moisan and Morel 2008, From Gestalt Theory to Image Analysis). Candidates of the
same kind that stand out as much are strewn as densely as they are about each one; each inner node of a line counts by
the chance that one of them falls as near to the course that its neighbours foretell. The product, times the number of
ways in which a line may start, is the number of such lines expected by chance.
"""

from __future__ import annotations

from typing import List

import numpy as np
from scipy.spatial import cKDTree

from .candidates import STEP
from .courses import Course, listed
from .nodes import Nodes

#: Candidates that tell how densely they are strewn.
CROWD = 14
#: Least distance from the course that counts, in standard deviations of the place.
LEAST_OFF = 0.8
#: Most decades that one node counts, and what its free choice among neighbours costs.
MOST, CHOICE = 2.5, 0.8
#: Ways in which a line may start at each candidate.
STARTS = 8.0


def crowds(nodes: Nodes) -> np.ndarray:
    """Candidates of the same kind that stand out as much for each square metre about each (n,), nan for runs."""
    result = np.full(len(nodes), np.nan)
    for kind in np.unique(nodes.kind):
        same = np.flatnonzero((nodes.kind == kind) & ~nodes.along)
        if len(same) < 3:
            continue
        xy = np.column_stack([nodes.x[same], nodes.y[same]])
        count = min(CROWD + 1, len(same))
        away = cKDTree(xy, compact_nodes=False, balanced_tree=False).query(xy, k=count)[0][:, -1]
        rank = np.empty(len(same))
        rank[np.argsort(-nodes.t[same], kind="stable")] = np.arange(1, len(same) + 1)
        half = 0.5 if kind == STEP else 1.0  # steps the other way do not count
        result[same] = half * count / (np.pi * np.maximum(away, 1.0) ** 2) * np.maximum(rank / len(same), 0.1)
    return result


def evidence_of(nodes: Nodes, crowd: np.ndarray, courses: List[Course]) -> np.ndarray:
    """Evidence (lines,) of each course in decades."""
    start = np.log10(STARTS * max(int(np.count_nonzero(~nodes.along)), 1))
    every = listed(courses)
    told = np.bincount(every.of, weights=nodes.decades[every.k], minlength=len(courses))
    across = ~nodes.along[every.k]
    k, of = every.k[across], every.of[across]
    if len(k) >= 3:
        inner = of[2:] == of[:-2]
        decades = _decades(nodes, crowd, k)
        told = told + np.bincount(of[1:-1][inner], weights=decades[inner], minlength=len(courses))
    result: np.ndarray = told - start
    return result


def _decades(nodes: Nodes, crowd: np.ndarray, k: np.ndarray) -> np.ndarray:
    """What each of the nodes ``k`` but the first and last tells beside its neighbours."""
    x, y = nodes.x[k], nodes.y[k]
    l1 = np.hypot(x[1:-1] - x[:-2], y[1:-1] - y[:-2])
    l2 = np.hypot(x[2:] - x[1:-1], y[2:] - y[1:-1])
    chord = np.maximum(np.hypot(x[2:] - x[:-2], y[2:] - y[:-2]), 0.1)
    off = np.abs((x[2:] - x[:-2]) * (y[1:-1] - y[:-2]) - (y[2:] - y[:-2]) * (x[1:-1] - x[:-2])) / chord
    off = np.maximum(off, LEAST_OFF * nodes.sigma[k[1:-1]])
    expected = np.nan_to_num(crowd[k[1:-1]], nan=1.0) * 2 * off * (l1 + l2) / 2
    chance = -np.expm1(-np.maximum(expected, 1e-9))
    # A node that lies on another pass than the one before tells; the same pass twice does not.
    new = nodes.leg[k[1:-1]] != nodes.leg[k[:-2]]
    return np.where(new, np.minimum(-np.log10(chance), MOST) - CHOICE, 0.0)
