"""Candidates of several passes chained into lines: the same side up, like sizes, a smooth course."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np
from scipy.spatial import cKDTree

from .candidates import STEP, Candidates

#: Neighbours looked at for each candidate, and kept to its left and to its right.
NEIGHBOURS, KEPT = 14, 4
#: Longest link, metres.
LONGEST_LINK = 14.0
#: Least sine of the angle between a pass and the line.
LEAST_SINE = 0.3
#: Sharpest turn of a chain (cosine), and the curvature (1/m) that costs one standard deviation.
LEAST_COSINE, CURVATURE = 0.2, 0.08
#: Rounds in which links hear how well those after them go on.
ROUNDS = 10
#: Decades that a link costs for each of its usual lengths it is longer than usual.
SKIP_COST = 1.2
_LN10 = np.log(10.0)


@dataclass(frozen=True)
class Links:
    """Directed links between candidates, sorted by where they start: from ``a`` to ``b``, ``ux, uy`` unit direction,
    ``long`` metres, ``back`` the number of the same link the other way, ``left`` of the pass of ``a``."""

    a: np.ndarray
    b: np.ndarray
    ux: np.ndarray
    uy: np.ndarray
    long: np.ndarray
    left: np.ndarray
    back: np.ndarray


def density(found: Candidates, walked: float) -> np.ndarray:
    """How many candidates of the same kind that stand out at least as much there are for each metre walked (m,)."""
    result = np.empty(len(found))
    for kind in np.unique(found.kind):
        same = np.flatnonzero(found.kind == kind)
        order = np.argsort(-found.t[same], kind="stable")
        rank = np.empty(len(same))
        rank[order] = np.arange(1, len(same) + 1)
        share = 0.5 if kind == STEP else 1.0  # a step the other way does not go on with this one
        result[same] = share * rank / walked
    return result


def make_links(found: Candidates) -> Links:
    """All links between candidates that could follow each other along a line."""
    pairs = [_pairs_of_kind(found, np.flatnonzero(found.kind == kind)) for kind in np.unique(found.kind)]
    a = np.concatenate([pair[0] for pair in pairs]) if pairs else np.empty(0, np.int64)
    b = np.concatenate([pair[1] for pair in pairs]) if pairs else np.empty(0, np.int64)
    return _directed(found, a, b)


def _pairs_of_kind(found: Candidates, which: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Pairs (a < b) of candidates ``which`` that are compatible."""
    if len(which) < 2:
        return np.empty(0, np.int64), np.empty(0, np.int64)
    xy = np.column_stack([found.x[which], found.y[which]])
    count = min(NEIGHBOURS + 1, len(which))
    tree = cKDTree(xy, compact_nodes=False, balanced_tree=False)
    away, near = tree.query(xy, k=count, distance_upper_bound=LONGEST_LINK)
    row, column = np.nonzero(np.isfinite(away[:, 1:]))
    a, b = which[row], which[near[row, column + 1]]
    long = away[row, column + 1]
    good = long > 0.05
    a, b, long = a[good], b[good], long[good]
    vx, vy = (found.x[b] - found.x[a]) / long, (found.y[b] - found.y[a]) / long
    side_a, side_b = _cross(found, a, vx, vy), _cross(found, b, vx, vy)
    good = (np.abs(side_a) > LEAST_SINE) & (np.abs(side_b) > LEAST_SINE) & _alike(found, a, b)
    side = found.side
    good &= side_a * side[a] * side_b * side[b] >= 0
    a, b, long, left = a[good], b[good], long[good], side_a[good] > 0
    # The nearest few on either side of the pass.
    order = np.lexsort((long, left, a))
    a, b, left = a[order], b[order], left[order]
    new = np.append(True, (np.diff(a) != 0) | (np.diff(left.astype(np.int8)) != 0)) if len(a) else np.empty(0, bool)
    start = np.flatnonzero(new)
    place = np.arange(len(a)) - np.repeat(start, np.diff(np.append(start, len(a))))
    a, b = a[place < KEPT], b[place < KEPT]
    low, high = np.minimum(a, b), np.maximum(a, b)
    key = np.unique(low * len(found) + high)
    return key // len(found), key % len(found)


def _cross(found: Candidates, a: np.ndarray, vx: np.ndarray, vy: np.ndarray) -> np.ndarray:
    return found.ex[a] * vy - found.ey[a] * vx


def _alike(found: Candidates, a: np.ndarray, b: np.ndarray) -> np.ndarray:
    """Mask of pairs whose sizes could be those of one line."""
    size_a, size_b = np.abs(found.size[a]), np.abs(found.size[b])
    doubt = np.hypot(size_a / found.t[a], size_b / found.t[b])
    return np.abs(size_a - size_b) <= 2.5 * doubt + 0.4 * np.maximum(size_a, size_b)


def _directed(found: Candidates, low: np.ndarray, high: np.ndarray) -> Links:
    a, b = np.append(low, high), np.append(high, low)
    back = np.append(np.arange(len(low)) + len(low), np.arange(len(low)))
    dx, dy = found.x[b] - found.x[a], found.y[b] - found.y[a]
    long = np.hypot(dx, dy)
    ux, uy = dx / long, dy / long
    left = found.ex[a] * uy - found.ey[a] * ux > 0
    order = np.argsort(a, kind="stable")
    place = np.empty(len(order), np.int64)
    place[order] = np.arange(len(order))
    return Links(a[order], b[order], ux[order], uy[order], long[order], left[order], place[back[order]])


def turns(found: Candidates, links: Links) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Pairs of directed links (into and out of a candidate), and what their turn costs in decades."""
    m = len(found)
    start = np.searchsorted(links.a, np.arange(m + 1))
    degree = np.diff(start)[links.b]
    into = np.repeat(np.arange(len(links.a)), degree)
    offset = np.arange(len(into)) - np.repeat(np.cumsum(degree) - degree, degree)
    out = start[links.b[into]] + offset
    # In on one side of the pass, out on the other.
    cosine = links.ux[into] * links.ux[out] + links.uy[into] * links.uy[out]
    good = (links.left[links.back[into]] != links.left[out]) & (cosine > LEAST_COSINE)
    into, out = into[good], out[good]
    sine = links.ux[into] * links.uy[out] - links.uy[into] * links.ux[out]
    angle = np.arctan2(sine, cosine[good])
    l1, l2 = links.long[into], links.long[out]
    place = [found.sigma[k] ** 2 for k in (links.a[into], links.b[into], links.b[out])]
    var = place[0] / l1**2 + place[1] * (1 / l1 + 1 / l2) ** 2 + place[2] / l2**2
    var = var + (CURVATURE * (l1 + l2) / 2) ** 2
    return into, out, angle**2 / (2 * var) / _LN10


def chain(found: Candidates, walked: float) -> List[np.ndarray]:
    """Lists of candidates that follow each other along a line, each at least three long."""
    if len(found) < 3:
        return []
    links = make_links(found)
    if not len(links.a):
        return []
    into, out, cost = turns(found, links)
    gain = np.clip(-np.log10(density(found, walked)), 0.3, 2.0)
    value = _values(links, gain, into, out, cost)
    kept = _mutual(len(found), links, value, into, out, cost)
    return _paths(len(found), links.a[kept], links.b[kept])


def _values(links: Links, gain: np.ndarray, into: np.ndarray, out: np.ndarray, cost: np.ndarray) -> np.ndarray:
    """What each directed link and the best chain after it are worth, in decades."""
    order = np.argsort(into, kind="stable")
    into, out, cost = into[order], out[order], cost[order]
    starts = np.flatnonzero(np.append(True, np.diff(into) != 0)) if len(into) else np.empty(0, np.int64)
    own = gain[links.b] - _skipped(len(gain), links)
    value = own.copy()
    for _ in range(ROUNDS):
        if not len(into):
            break
        after = np.maximum.reduceat(value[out] - cost, starts)
        value = own.copy()
        value[into[starts]] += np.maximum(after, 0)
    return value


def _skipped(m: int, links: Links) -> np.ndarray:
    """What each directed link costs for the passes it may skip, by the shortest link on the same side of its ends."""
    key = 2 * links.a + links.left
    shortest = np.full(2 * m, np.inf)
    np.minimum.at(shortest, key, links.long)
    usual = np.maximum(shortest[key], shortest[key[links.back]])
    result: np.ndarray = SKIP_COST * np.minimum(links.long / usual - 1, 3.0)
    return result


def _mutual(m: int, links: Links, value: np.ndarray, into: np.ndarray, out: np.ndarray, cost: np.ndarray) -> np.ndarray:
    """Numbers of directed links (one of each pair) that both their ends choose."""
    # A candidate chooses one link to the left and one to the right, or a single one at the end of a line.
    through = value[links.back[into]] + value[out] - cost
    middle = links.b[into]
    best = np.full(m, -1)
    order = np.lexsort((through, middle))
    last = np.flatnonzero(np.append(np.diff(middle[order]) != 0, True)) if len(order) else np.empty(0, np.int64)
    chosen = order[last]
    best[middle[chosen]] = chosen
    single_order = np.lexsort((value, links.a))
    single_last = np.flatnonzero(np.append(np.diff(links.a[single_order]) != 0, True))
    single = single_order[single_last]
    alone = np.full(m, -1)
    alone[links.a[single]] = single
    choice = np.zeros(len(links.a), bool)
    has = best >= 0
    worth = np.where(has, through[np.maximum(best, 0)] if len(through) else 0, -np.inf)
    double = has & (worth >= np.where(alone >= 0, value[np.maximum(alone, 0)], -np.inf))
    choice[links.back[into[best[double]]]] = True
    choice[out[best[double]]] = True
    choice[alone[~double & (alone >= 0)]] = True
    kept = np.flatnonzero(choice & choice[links.back])
    return kept[links.a[kept] < links.b[kept]]


def _paths(m: int, a: np.ndarray, b: np.ndarray) -> List[np.ndarray]:
    """Paths and rings (first repeated at the end) of links, at least three candidates long."""
    beside: List[List[int]] = [[] for _ in range(m)]
    for i, j in zip(a.tolist(), b.tolist()):
        beside[i].append(j)
        beside[j].append(i)
    seen = [False] * m
    result = []
    ends = [i for i in range(m) if len(beside[i]) == 1] + [i for i in range(m) if len(beside[i]) == 2]
    for first in ends:
        if seen[first]:
            continue
        path, here, before = [first], first, -1
        seen[first] = True
        while True:
            onward = [j for j in beside[here] if j != before]
            if not onward:
                break
            before, here = here, onward[0]
            if here == first:
                path.append(first)
                break
            path.append(here)
            seen[here] = True
        if len(path) >= 3:
            result.append(np.array(path))
    return result
