"""Long stretches of the walk between two jumps of one size, up and down, which other visits say are off by it.

A pole of another height, or a fix regained wrongly, begins and ends with a jump. Kerbs, walls and terraces jump as
well, so the jumps alone say nothing: crossings must fit the height that the jumps give, and hardly any the ground's.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np

from .excursions import Edges
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


def find_long(walk: Walk, edges: Edges, sigma: float) -> LongExcursions:
    """The long stretches that crossings confirm, the most confirmed first. ``sigma``: standard deviation of one height
    (m)."""
    start, end, level = _pairs(walk, edges, sigma)
    if not len(start):
        return LongExcursions(start, end, level, np.zeros(0, bool))
    met = find_met(walk, np.zeros(len(walk), np.int64))
    off, ground, total = _counts(met, start, end, level, _NEAR * MET_NOISE * sigma)
    kept = np.flatnonzero((off > 0) & (off >= _EACH * ground) & (off >= _SHARE * total))
    kept = kept[np.lexsort((start[kept], end[kept] - start[kept], ground[kept] - off[kept]))]
    sure = (off >= _SURE) & (ground == 0) & (off >= _MOST * total)
    return LongExcursions(start[kept], end[kept], level[kept], sure[kept])


def _pairs(walk: Walk, edges: Edges, sigma: float) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    edges = edges.take(np.flatnonzero((edges.clear > _CLEAR) & (np.abs(edges.size) > _LARGE * sigma)))
    found = [np.zeros((0, 3))]
    count = len(edges.size)
    for k in range(1, min(_PARTNERS + 1, count)):
        a, b = np.arange(count - k), np.arange(k, count)
        up, down = edges.size[a], edges.size[b]
        start, end = edges.after[a], edges.before[b] + 1
        fits = (up * down < 0) & (end - start <= _LONGEST) & (end > start)
        fits &= np.abs(up + down) <= _SAME * np.maximum(np.abs(up), np.abs(down)) + sigma
        found.append(np.column_stack([start, end, (up - down) / 2])[fits])
    table = np.vstack(found)
    return table[:, 0].astype(np.int64), table[:, 1].astype(np.int64), table[:, 2]


def _counts(
    met: Met, start: np.ndarray, end: np.ndarray, level: np.ndarray, near: float
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Crossings of each stretch (x,) with the rest of the walk: that fit its level alone, the ground alone, and all."""
    met = met.take(np.argsort(met.point, kind="stable"))
    first, last = np.searchsorted(met.point, start), np.searchsorted(met.point, end)
    off, ground, total = (np.zeros(len(start), np.int64) for _ in range(3))
    for k in np.flatnonzero(last > first).tolist():
        some = met.take(slice(first[k], last[k]))
        away = (some.other < start[k] - 1) | (some.other > end[k])
        limit = min(near, 0.5 * abs(level[k]))
        plain, shifted = np.abs(some.beyond()) <= limit, np.abs(some.beyond(level[k])) <= limit
        off[k] = np.count_nonzero(away & shifted & ~plain)
        ground[k] = np.count_nonzero(away & plain & ~shifted)
        total[k] = np.count_nonzero(away)
    return off, ground, total
