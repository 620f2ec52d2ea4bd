"""Long stretches of the walk between two jumps of one size, up and down, which other visits say are off by it.

A pole of another height, or a fix regained wrongly, begins and ends with a jump. Kerbs, walls and terraces jump as
well, so the jumps alone say nothing: crossings must fit the height that the jumps give, and hardly any the ground's.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional, Tuple

import numpy as np

from ..surface.cells import runs
from .crossings import Track
from .excursions import Edges, off_and_back
from .meeting_points import MET_NOISE, Met, find_met
from .walk import Walk

_CLEAR = 3.0  # standard deviations of either jump
_LARGE = 4.0  # standard deviations of a height that a jump comes to
_SAME = 0.15  # of the larger jump: how well both agree
_LONGEST = 400  # points
_PARTNERS = 40  # jumps looked at for the way back
_NEAR = 2.5  # standard deviations within which a crossing fits
_SHARE, _MOST = 0.4, 0.6  # of all crossings that say off, for one in doubt and for one that is sure
_SURE = 2  # of them, at least
_TOGETHER = 1 << 20  # crossings looked at together, which bounds the memory
_EACH = 6  # crossings that say off, for one that says ground


@dataclass(frozen=True)
class LongExcursions:
    """x stretches: points [start, end) of the walk (x,), and the ``level`` (x,) they are off by (m).

    ``sure``: (x,) bool, crossings leave no doubt.
    """

    start: np.ndarray
    end: np.ndarray
    level: np.ndarray
    sure: np.ndarray

    def __len__(self) -> int:
        return len(self.start)


def find_long(walk: Walk, edges: Edges, sigma: float, track: Optional[Track] = None) -> LongExcursions:
    """The long stretches that crossings confirm, the most confirmed first.

    ``sigma``: standard deviation of one height (m); ``track``: of the walk, where it is known.
    """
    start, end, level = _pairs(walk, edges, sigma)
    if not len(start):
        return LongExcursions(start, end, level, np.zeros(0, bool))
    met = find_met(walk, np.zeros(len(walk), np.int64), track)
    off, ground, total = _counts(met, start, end, level, _NEAR * MET_NOISE * sigma)
    kept = np.flatnonzero((off > 0) & (off >= _EACH * ground) & (off >= _SHARE * total))
    kept = kept[np.lexsort((start[kept], end[kept] - start[kept], ground[kept] - off[kept]))]
    sure = (off >= _SURE) & (ground == 0) & (off >= _MOST * total)
    return LongExcursions(start[kept], end[kept], level[kept], sure[kept])


def _pairs(walk: Walk, edges: Edges, sigma: float) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    edges = edges.take(np.flatnonzero((edges.clear > _CLEAR) & (np.abs(edges.size) > _LARGE * sigma)))
    a, b = off_and_back(edges, _PARTNERS, _SAME, sigma)
    start, end = edges.after[a], edges.before[b] + 1
    fits = (end - start <= _LONGEST) & (end > start)
    return start[fits], end[fits], ((edges.size[a] - edges.size[b]) / 2)[fits]


def _counts(
    met: Met, start: np.ndarray, end: np.ndarray, level: np.ndarray, near: float
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Crossings of each stretch (x,) with the rest of the walk: that fit its level alone, the ground alone, and all."""
    met = met.take(np.argsort(met.point, kind="stable"))
    first, count = (
        np.searchsorted(met.point, start),
        np.searchsorted(met.point, end) - np.searchsorted(met.point, start),
    )
    many = len(start)
    off, ground, total = (np.zeros(many, np.int64) for _ in range(3))
    parts = np.unique(np.searchsorted(np.cumsum(count), np.arange(_TOGETHER, count.sum() + _TOGETHER, _TOGETHER)) + 1)
    for low, high in zip(np.append(0, parts[:-1]).tolist(), parts.tolist()):
        some, of = runs(first[low:high], count[low:high]), np.repeat(np.arange(low, min(high, many)), count[low:high])
        here, own = met.take(some), level[of]
        limit = np.minimum(near, 0.5 * np.abs(own))
        away = (here.other < start[of] - 1) | (here.other > end[of])
        plain, shifted = np.abs(here.beyond()) <= limit, np.abs(here.beyond(own)) <= limit
        off += np.bincount(of[away & shifted & ~plain], minlength=many)
        ground += np.bincount(of[away & plain & ~shifted], minlength=many)
        total += np.bincount(of[away], minlength=many)
    return off, ground, total
