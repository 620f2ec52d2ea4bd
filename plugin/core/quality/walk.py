"""The walk behind a survey: auto-recorded points in recording order, cut into pieces where the chain breaks."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional

import numpy as np
from scipy.spatial import cKDTree

#: A step longer than so many median steps is a gap: the rover did not store between.
GAP_STEPS = 4.0
#: Steps shorter than this share of the median step are no progress.
STILL_SHARE = 0.3
#: Speed of a walker, m/s (common practice, no source).
WALKING = 1.2


@dataclass(frozen=True)
class Walk:
    """q auto-recorded points in recording order.

    ``index``: (q,) their place in the point set. ``x, y, z``: (q,) local metres. ``piece``: (q,) number of the
    piece, which is a chain without gaps; ``first, last``: (q,) bounds [first, last) of each point's piece.
    ``regained``: (q,) bool, the fix was lost right before. ``spacing``: median step, metres.
    """

    index: np.ndarray
    x: np.ndarray
    y: np.ndarray
    z: np.ndarray
    piece: np.ndarray
    first: np.ndarray
    last: np.ndarray
    regained: np.ndarray
    spacing: float

    def __len__(self) -> int:
        return len(self.index)

    def take(self, keep: np.ndarray) -> Walk:
        """The walk without some points; pieces stay whole across what is left out."""
        regained = np.diff(np.cumsum(self.regained)[keep], prepend=0) > 0
        index, x, y, z, piece = (column[keep] for column in (self.index, self.x, self.y, self.z, self.piece))
        return chain(index, x, y, z, piece, regained, self.spacing)


def median_step(x: np.ndarray, y: np.ndarray) -> float:
    """Median distance of points that follow each other, standing still left out; nan without steps."""
    step = np.hypot(np.diff(x), np.diff(y))
    step = step[step > 0.02]
    if not len(step):
        return float("nan")
    middle = float(np.median(step))
    moving = step[step > STILL_SHARE * middle]
    return float(np.median(moving))


def plain_tree(xy: np.ndarray) -> cKDTree:
    """A tree of places (n, 2) that is quickly built; the same answers as any other."""
    return cKDTree(xy, compact_nodes=False, balanced_tree=False)


def chain(
    index: np.ndarray, x: np.ndarray, y: np.ndarray, z: np.ndarray, piece: np.ndarray, regained: np.ndarray,
    spacing: float,
) -> Walk:  # fmt: skip
    """A walk from columns (q,) with known piece numbers, which never fall."""
    starts = np.flatnonzero(np.append(True, np.diff(piece) != 0)) if len(piece) else np.empty(0, np.int64)
    number = np.cumsum(np.append(True, np.diff(piece) != 0)) - 1 if len(piece) else np.empty(0, np.int64)
    ends = np.append(starts[1:], len(piece))
    return Walk(index, x, y, z, number, starts[number], ends[number], regained, spacing)


def make_walk(
    index: np.ndarray, x: np.ndarray, y: np.ndarray, z: np.ndarray, regained: Optional[np.ndarray] = None
) -> Walk:
    """The walk through points ``index`` (q,) at local ``x, y, z``, broken at gaps. ``regained``: (q,) as in Walk."""
    spacing = median_step(x, y)
    step = np.hypot(np.diff(x), np.diff(y))
    broken = step > GAP_STEPS * spacing
    piece = np.append(0, np.cumsum(broken)) if len(index) else np.empty(0, np.int64)
    regained = np.zeros(len(index), bool) if regained is None else regained
    return chain(index, x, y, z, piece, regained, spacing)


def walking_time(walk: Walk, time: np.ndarray) -> np.ndarray:
    """Seconds (q,) of the points: ``time`` (q,) where all are known, else what walking so far takes."""
    if np.isfinite(time).all():
        return time
    step = np.hypot(np.diff(walk.x, prepend=walk.x[:1]), np.diff(walk.y, prepend=walk.y[:1]))
    result: np.ndarray = np.cumsum(step) / WALKING
    return result
