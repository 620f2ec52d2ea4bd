"""Cut the walk into segments at every place where the heights seem to step."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional, Tuple

import numpy as np

from ..progress import Progress, part, silent
from .fits import Sums, offset_of
from .scan import Scores, spread, strongest
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


def cut(
    walk: Walk, sums: Sums, sigma: float, limit: float, where: Optional[np.ndarray] = None, progress: Progress = silent
) -> Segments:
    """Binary segmentation: the strongest steps first, then again within what they leave.

    A fit never reaches over a cut, so a big fault does not hide a small one beside it. ``where``: points
    (k,) to look at, rising; all by default.
    """
    n = len(walk)
    edges = np.zeros(n + 1, bool)
    looked = where
    share = 1 / (_ROUNDS + 3)
    scores = Scores(walk, sigma, where, part(progress, 0.0, share))
    for turn in range(_ROUNDS):
        progress((turn + 1) * share, "quality")
        hits = strongest(scores.hits(limit, looked), _CLEAR)
        places = np.concatenate([hits.start, hits.end[hits.end > hits.start]])
        fresh = np.unique(places[(places > 0) & (places < n)])
        fresh = fresh[~edges[fresh]]
        if not len(fresh):
            break
        edges[fresh] = True
        looked = around(fresh, n)
        scores.cut(fresh, looked, part(progress, (turn + 1.5) * share, (turn + 2) * share))
    moved = edges[:-1]
    for turn in range(2):
        progress((_ROUNDS + 1 + turn) * share, "quality")
        edges, moved = _settle(walk, sums, edges, moved, sigma)
    return _segments(walk, edges)


def _settle(
    walk: Walk, sums: Sums, edges: np.ndarray, moved: np.ndarray, sigma: float
) -> Tuple[np.ndarray, np.ndarray]:
    """Move edges by up to two points to where the step is clearest: those of mask ``moved`` (q,) and their neighbours.

    The new edges (q + 1,), and a mask (q,) of those that moved.
    """
    first = np.append(-1, walk.piece[:-1]) != walk.piece
    bounds = np.flatnonzero(edges[:-1] | first)
    fresh = moved[bounds]
    fresh = fresh | np.append(False, fresh[:-1]) | np.append(fresh[1:], False)
    place = np.flatnonzero(fresh & ~first[bounds])
    inner = bounds[place]
    if not len(inner):
        return edges, np.zeros(len(walk), bool)
    before, after = bounds[place - 1], np.append(bounds, len(walk))[place + 1]
    best, clearest = inner.copy(), np.full(len(inner), -1.0)
    low, high = (sums.before(v) for v in (np.maximum(inner - 6, before), np.minimum(inner + 6, after)))
    for shift in (0, -1, 1, -2, 2):
        at = inner + shift
        fits = (at > before) & (at < after)
        c = np.where(fits, at, inner)
        middle = sums.before(c)
        step, variance = offset_of(high - middle, middle - low, sigma, sums.trend(c))
        clear = np.where(fits, np.abs(step) / np.sqrt(variance), -1.0)
        better = clear > clearest * 1.02
        best[better], clearest[better] = c[better], clear[better]
    settled = edges.copy()
    settled[bounds] = True
    settled[inner] = False
    settled[best] = True
    return settled, settled[:-1] & ~edges[:-1]


def around(places: np.ndarray, n: int) -> np.ndarray:
    """The points of n within 32 of one of ``places``, which rise."""
    return spread(places, _NEAR, _NEAR, n)


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
