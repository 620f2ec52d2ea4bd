"""How unlikely it is that so orderly a line comes from candidates strewn at random.

An "a contrario" measure (Desolneux, Moisan and Morel 2008, From Gestalt Theory to Image Analysis). Candidates of the
same kind that stand out as much are strewn as densely as they are about each one; each inner node of a line counts by
the chance that one of them falls as near to the course that its neighbours foretell. The product, times the number of
ways in which a line may start, is the number of such lines expected by chance.
"""

from __future__ import annotations

from typing import List

import numpy as np

from .candidates import STEP, Candidates, Nearest
from .courses import Course, listed
from .nodes import Nodes

#: Candidates that tell how densely they are strewn.
CROWD = 14
#: Least distance from the course that counts, in standard deviations of the place.
LEAST_OFF = 0.8
#: Most decades that one node counts, and what its free choice among neighbours costs.
MOST, CHOICE = 2.5, 0.8
#: What the choice of an arc instead of a straight course costs; the sharpest arc (1/m) that neighbours foretell.
ARC, SHARPEST = 0.3, 0.4
#: Ways in which a line may start at each candidate.
STARTS = 8.0


def crowds(found: Candidates, nearest: Nearest) -> np.ndarray:
    """Candidates of the same kind that stand out as much for each square metre about each (m,)."""
    result = np.full(len(found), np.nan)
    for kind in np.unique(found.kind):
        same = np.flatnonzero(found.kind == kind)
        count = min(CROWD + 1, len(same))
        if count < 3:
            continue
        away = nearest.away[same, count - 1]
        rank = np.empty(len(same))
        rank[np.argsort(-found.t[same], kind="stable")] = np.arange(1, len(same) + 1)
        half = 0.5 if kind == STEP else 1.0  # steps the other way do not count
        result[same] = half * count / (np.pi * np.maximum(away, 1.0) ** 2) * np.maximum(rank / len(same), 0.1)
    return result


def evidence_of(nodes: Nodes, crowd: np.ndarray, courses: List[Course]) -> np.ndarray:
    """Evidence (lines,) of each course in decades."""
    start = np.log10(STARTS * max(int(np.count_nonzero(~nodes.along)), 1))
    every = listed(courses)
    told = np.bincount(every.of, weights=nodes.decades[every.k], minlength=len(courses))
    # A ring goes on beyond its ends.
    rounds = [np.concatenate([c.nodes[-2:], c.nodes, c.nodes[:2]]) if c.closed else c.nodes for c in courses]
    every = listed([Course(k) for k in rounds])
    across = ~nodes.along[every.k]
    k, of = every.k[across], every.of[across]
    if len(k) >= 3:
        inner = of[2:] == of[:-2]
        closed = np.array([course.closed for course in courses], bool)
        inner &= ~closed[of[1:-1]] | ((of == np.roll(of, 2)) & (of == np.roll(of, -2)))[1:-1]
        decades = _decades(nodes, crowd, k, of)
        told = told + np.bincount(of[1:-1][inner], weights=decades[inner], minlength=len(courses))
    result: np.ndarray = told - start
    return result


def _decades(nodes: Nodes, crowd: np.ndarray, k: np.ndarray, of: np.ndarray) -> np.ndarray:
    """What each of the nodes ``k`` of courses ``of`` but the first and last tells beside its neighbours.

    They foretell a straight course or, from two on either side, an arc, whose choice costs.
    """
    x, y = nodes.x[k], nodes.y[k]
    l1, l2 = _reach(x, y, 0, 1), _reach(x, y, 1, 2)
    chord = np.maximum(_reach(x, y, 0, 2), 0.1)
    off = _doubled_area(x, y, 0, 1, 2) / chord  # to the right
    straight = unlikely(nodes, crowd, k[1:-1], np.abs(off), (l1 + l2) / 2)
    bent = np.zeros(len(off))
    if len(k) >= 5:
        arc = (_curvature(x, y, 0, 1, 3) + _curvature(x, y, 1, 3, 4)) / 2
        whole = (of[4:] == of[:-4]) & (np.abs(arc) < SHARPEST)
        aside = np.abs(off[1:-1] - arc * (l1 * l2)[1:-1] / 2)
        bent[1:-1] = np.where(whole, unlikely(nodes, crowd, k[2:-2], aside, (l1 + l2)[1:-1] / 2) - ARC, 0.0)
    # A node that lies on another pass than the one before tells; the same pass twice does not.
    new = nodes.leg[k[1:-1]] != nodes.leg[k[:-2]]
    return np.where(new, np.maximum(straight, bent) - CHOICE, 0.0)


def unlikely(nodes: Nodes, crowd: np.ndarray, k: np.ndarray, off: np.ndarray, reach: np.ndarray) -> np.ndarray:
    """Decades (n,) against a candidate strewn at random falling as near as ``off`` to a course ``reach`` long."""
    near = np.maximum(off, LEAST_OFF * nodes.sigma[k])
    expected = np.nan_to_num(crowd[k], nan=1.0) * 2 * near * reach
    result: np.ndarray = np.minimum(-np.log10(-np.expm1(-np.maximum(expected, 1e-9))), MOST)
    return result


def _window(values: np.ndarray, shift: int, last: int) -> np.ndarray:
    """The values ``shift`` places on from the first of every ``last`` + 1 in a row."""
    return values[shift : len(values) - last + shift]


def _reach(x: np.ndarray, y: np.ndarray, a: int, b: int, last: int = 2) -> np.ndarray:
    """Distances from the ``a``-th to the ``b``-th of every three (or ``last`` + 1) nodes in a row."""
    x1, x2, y1, y2 = (_window(v, at, last) for v in (x, y) for at in (a, b))
    return np.hypot(x2 - x1, y2 - y1)


def _doubled_area(x: np.ndarray, y: np.ndarray, a: int, b: int, c: int, last: int = 2) -> np.ndarray:
    """Twice the area of the triangles of three nodes of every ``last`` + 1 in a row, positive to the left."""
    ax, bx, cx, ay, by, cy = (_window(v, at, last) for v in (x, y) for at in (a, b, c))
    return (bx - ax) * (cy - by) - (by - ay) * (cx - bx)


def _curvature(x: np.ndarray, y: np.ndarray, a: int, b: int, c: int) -> np.ndarray:
    """Curvature (1/m), positive to the left, of the circle through three nodes of every five in a row."""
    sides = _reach(x, y, a, b, 4) * _reach(x, y, b, c, 4) * _reach(x, y, a, c, 4)
    return 2 * _doubled_area(x, y, a, b, c, 4) / np.maximum(sides, 1e-3)
