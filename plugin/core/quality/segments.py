"""Cut the walk into segments at every place where the heights seem to step."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Optional

import numpy as np

from .scan import Sums, offset_of, scan, strongest
from .walk import Walk

_ROUNDS = 8
_CLEAR = 5  # points around a strong hit in which weaker ones wait for the next round
_NEAR = 32  # points around a new edge that are searched again


@dataclass(frozen=True)
class Segments:
    """s stretches of the walk without a step inside: points [start, end) each, (s,) int64, in order.

    ``of``: (q,) segment of each point. ``joined``: (s,) bool, the segment before belongs to the same piece.
    """

    start: np.ndarray
    end: np.ndarray
    of: np.ndarray
    joined: np.ndarray

    def __len__(self) -> int:
        return len(self.start)


def cut(walk: Walk, sigma: float, limit: float, where: Optional[np.ndarray] = None) -> Segments:
    """Binary segmentation: the strongest steps first, then again within what they leave.

    A fit never reaches over a cut, so a big fault does not hide a small one beside it. ``where``: mask (q,) of the
    points to look at; all by default.
    """
    n = len(walk)
    edges = np.zeros(n + 1, bool)
    looked = np.ones(n, bool) if where is None else where
    for _ in range(_ROUNDS):
        index = np.flatnonzero(looked)
        if len(index) < 3:
            break
        hits = strongest(scan(_part(walk, edges, index), sigma, limit), _CLEAR)
        ends = np.concatenate([hits.start, hits.end - 1])
        places = np.concatenate([index[hits.start], index[ends[len(hits) :]] + 1])
        step = hits.start == hits.end
        places = places[np.concatenate([np.ones(len(hits), bool), ~step])]
        fresh = np.unique(places[~edges[places] & (places > 0) & (places < n)])
        if not len(fresh):
            break
        edges[fresh] = True
        looked = around(fresh, n)
    for _ in range(2):
        edges = _settle(walk, edges, sigma)
    return _segments(walk, edges)


def _settle(walk: Walk, edges: np.ndarray, sigma: float) -> np.ndarray:
    """Move every edge by up to two points to where the step is clearest."""
    sums = Sums(walk)
    inner = np.flatnonzero(edges[:-1] & (np.append(-1, walk.piece[:-1]) == walk.piece))
    if not len(inner):
        return edges
    bounds = np.flatnonzero(edges[:-1] | (np.append(-1, walk.piece[:-1]) != walk.piece))
    place = np.searchsorted(bounds, inner)
    before, after = bounds[place - 1], np.append(bounds, len(walk))[place + 1]
    best, clearest = inner.copy(), np.full(len(inner), -1.0)
    for shift in (0, -1, 1, -2, 2):
        at = inner + shift
        fits = (at > before) & (at < after)
        c = np.where(fits, at, inner)
        low, high = np.maximum(inner - 6, before), np.minimum(inner + 6, after)
        step, variance = offset_of(sums.over(c, high), sums.over(low, c), sigma, sums.trend.take(c))
        clear = np.where(fits, np.abs(step) / np.sqrt(variance), -1.0)
        better = clear > clearest * 1.02
        best[better], clearest[better] = c[better], clear[better]
    moved = np.zeros(len(edges), bool)
    moved[bounds] = True
    moved[inner] = False
    moved[best] = True
    return moved


def _part(walk: Walk, edges: np.ndarray, index: np.ndarray) -> Walk:
    """Points ``index`` as a walk whose pieces end at ``edges`` and where points were left out."""
    piece = walk.piece + np.cumsum(edges[:-1])
    skipped = np.append(0, np.cumsum(np.diff(index) > 1))
    number = np.append(0, np.cumsum((np.diff(piece[index]) != 0) | (np.diff(skipped) != 0)))
    starts = np.flatnonzero(np.append(True, np.diff(number) != 0))
    ends = np.append(starts[1:], len(index))
    return replace(
        walk, index=walk.index[index], x=walk.x[index], y=walk.y[index], z=walk.z[index], piece=number,
        first=starts[number], last=ends[number],
    )  # fmt: skip


def around(places: np.ndarray, n: int) -> np.ndarray:
    """Mask (n,) of the points within 32 of ``places``."""
    change = np.zeros(n + 1, np.int64)
    np.add.at(change, np.maximum(places - _NEAR, 0), 1)
    np.add.at(change, np.minimum(places + _NEAR, n), -1)
    mask: np.ndarray = np.cumsum(change)[:-1] > 0
    return mask


def _segments(walk: Walk, edges: np.ndarray) -> Segments:
    breaks = np.append(True, np.diff(walk.piece) != 0)
    start = np.flatnonzero(breaks | edges[:-1])
    of = np.cumsum(breaks | edges[:-1]) - 1
    return Segments(start, np.append(start[1:], len(walk)), of, ~breaks[start])


def without_cuts(segments: Segments, gone: np.ndarray) -> Segments:
    """Segments with those of mask ``gone`` (s,) joined to the ones before them."""
    stay = np.flatnonzero(~gone)
    start = segments.start[stay]
    end = segments.end[np.append(stay[1:], len(segments)) - 1]
    return Segments(start, end, (np.cumsum(~gone) - 1)[segments.of], segments.joined[stay])


def with_cuts(walk: Walk, segments: Segments, places: np.ndarray) -> Segments:
    """Segments cut at ``places`` (points) too, unless a cut is within two points already."""
    edges = np.zeros(len(walk) + 1, bool)
    edges[segments.start] = True
    near = edges.copy()
    for shift in (1, 2):
        near[shift:] |= edges[:-shift]
        near[:-shift] |= edges[shift:]
    edges[places[~near[places]]] = True
    return _segments(walk, edges)


def whole_pieces(walk: Walk) -> Segments:
    """Each piece of the walk as one segment."""
    return _segments(walk, np.zeros(len(walk) + 1, bool))
