"""Where the facets of side slopes begin, end, give way to each other, or hide each other and the rim."""

from __future__ import annotations

from typing import Tuple

import numpy as np

from ..surface.boxes import box_pairs
from .polygons import areas, clip
from .side_slopes import SHORT, Facets

_LOWER = 1e-7  # metres by which another facet must be nearer to hide one


def crease_lines(facets: Facets) -> np.ndarray:
    """Segments (s, 2, 2) in plan where the facet that counts begins, ends, or gives way to another."""
    if len(facets) == 0:
        return np.empty((0, 2, 2))
    xy = np.stack([facets.x, facets.y], axis=2)
    sides = np.stack([xy, np.roll(xy, -1, axis=1)], axis=2).reshape(-1, 2, 2)
    own = np.repeat(np.arange(len(facets)), 4)
    met, of = _meetings(facets)
    segments, own = np.concatenate([sides, met]), np.concatenate([own, of])
    long = np.hypot(*(segments[:, 1] - segments[:, 0]).T) > SHORT
    return _visible(facets, segments[long], own[long])


def _meetings(facets: Facets) -> Tuple[np.ndarray, np.ndarray]:
    """Segments where two overlapping facets are of one height, and the first facet of each."""
    low, high = facets.boxes()
    segments, own = [np.empty((0, 2, 2))], [np.empty(0, np.int64)]
    for i, j in box_pairs(low, high, low, high):
        i, j = i[i < j], j[i < j]
        x, y = facets.x[i], facets.y[i]
        for edge in range(4):
            x, y = clip(facets.inward(j, edge, x, y), x, y)
        some = areas(x, y) > SHORT**2 if len(i) else np.zeros(0, bool)
        i, j, x, y = i[some], j[some], x[some], y[some]
        if len(i) == 0:
            continue
        difference = facets.height(i, x, y) - facets.height(j, x, y)
        crossed = np.flatnonzero((difference.min(axis=1) < -_LOWER) & (difference.max(axis=1) > _LOWER))
        i, x, y, difference = i[crossed], x[crossed], y[crossed], difference[crossed]
        ahead = np.roll(difference, -1, axis=1)
        ends = []
        for changes in ((difference > 0) & (ahead <= 0), (difference <= 0) & (ahead > 0)):
            at, row = np.argmax(changes, axis=1), np.arange(len(i))
            after = (at + 1) % x.shape[1]
            t = difference[row, at] / (difference[row, at] - difference[row, after])
            ends.append(np.column_stack([v[row, at] + t * (v[row, after] - v[row, at]) for v in (x, y)]))
        segments.append(np.stack(ends, axis=1))
        own.append(i)
    return np.concatenate(segments), np.concatenate(own)


def _visible(facets: Facets, segments: np.ndarray, own: np.ndarray) -> np.ndarray:
    """The parts of segments, each on its ``own`` facet (s,), that no other facet hides."""
    s, _, begin, end = _hidden(facets, segments, own)
    clear = np.ones(len(segments), bool)
    clear[s] = False
    of, t0, t1 = _rest(s, begin, end)
    a, step = segments[of, 0], segments[of, 1] - segments[of, 0]
    parts = np.stack([a + t0[:, None] * step, a + t1[:, None] * step], axis=1)
    return np.concatenate([segments[clear], parts[(t1 - t0) * np.hypot(*step.T) > SHORT]])


def _hidden(
    facets: Facets, segments: np.ndarray, own: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Where facets hide segments, each on its ``own`` facet (s,): segment, facet, and from where to where (0..1)."""
    low, high = segments.min(axis=1), segments.max(axis=1)
    f_low, f_high = facets.boxes()
    hidden = [(own[:0], own[:0], low[:0, 0], low[:0, 0])]
    for s, f in box_pairs(low, high, f_low, f_high):
        s, f = s[own[s] != f], f[own[s] != f]
        x, y = segments[s][:, :, 0], segments[s][:, :, 1]
        begin, end = np.zeros(len(s)), np.ones(len(s))
        over = facets.sign * (facets.height(own[s], x, y) - facets.height(f, x, y)) - _LOWER
        for value in (*(facets.inward(f, edge, x, y) for edge in range(4)), over):
            begin, end = _positive_interval(value, begin, end)
        some = end - begin > 1e-9
        hidden.append((s[some], f[some], begin[some], end[some]))
    s, f, begin, end = (np.concatenate(column) for column in zip(*hidden))
    return s, f, begin, end


def _positive_interval(value: np.ndarray, begin: np.ndarray, end: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Narrow intervals of 0..1 to where the linear function with ``value`` (k, 2) at 0 and 1 is positive."""
    rise = value[:, 1] - value[:, 0]
    with np.errstate(divide="ignore", invalid="ignore"):
        root = -value[:, 0] / rise
    begin = np.where(rise > 0, np.maximum(begin, root), begin)
    end = np.where(rise < 0, np.minimum(end, root), end)
    end = np.where((rise == 0) & (value[:, 0] <= 0), begin, end)
    return begin, end


def _rest(of: np.ndarray, begin: np.ndarray, end: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """What intervals (k,) leave of the 0..1 they are ``of`` (k,): the number, beginning and end of each rest."""
    order = np.lexsort((begin, of))
    of, begin, end = of[order], begin[order], end[order]
    first = np.append(True, np.diff(of) != 0)[: len(of)]
    rank = 2.0 * np.cumsum(first)  # apart, so that one running maximum serves all
    covered = np.maximum.accumulate(end + rank) - rank
    before = np.where(first, 0.0, np.append(0.0, covered[:-1])[: len(of)])
    last = np.append(first[1:], True)[: len(of)]
    gap, after = np.flatnonzero(begin > before), np.flatnonzero(last & (covered < 1))
    beginnings, ends = np.append(before[gap], covered[after]), np.append(begin[gap], np.ones(len(after)))
    return np.append(of[gap], of[after]), beginnings, ends


def over_rim(facets: Facets, ring: np.ndarray, sloped: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Stretches (q, 2, 2) of a ring's edges under which (of cut) or over which (of fill) another facet runs, and which.

    ``ring``, ``sloped``: what the facets were made from.
    """
    edges = np.flatnonzero(sloped)  # of which the first facets are
    rim = np.stack([ring[edges, :2], np.roll(ring, -1, axis=0)[edges, :2]], axis=1)
    edge, facet, begin, end = _hidden(facets, rim, np.arange(len(edges)))
    start, step = rim[edge, 0], rim[edge, 1] - rim[edge, 0]
    return np.stack([start + begin[:, None] * step, start + end[:, None] * step], axis=1), facet
