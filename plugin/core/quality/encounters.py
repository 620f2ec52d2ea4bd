"""Places that were walked twice: where passes cross or run side by side."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional

import numpy as np

from .fits import Sums, offset_of
from .segments import Segments
from .walk import Walk, plain_tree

#: Points stored fewer places apart than this belong to one visit.
APART = 30
_NEAR = 0.75  # of the recorded spacing: how close two passes must come
_WINDOW = 3  # points on either side that speak for a pass
_CELLS = 2000  # along the longer side of a survey, at most
_LONG = 40  # points after which a side-by-side run counts as a new encounter


@dataclass(frozen=True)
class Encounters:
    """e places visited twice: points ``first < second`` (e,) of the walk there, ``difference`` (m) of second
    less first,
    ``variance`` (m²) of it as the noise of single points gives it (nothing that differs from visit to visit).
    """

    first: np.ndarray
    second: np.ndarray
    difference: np.ndarray
    variance: np.ndarray

    def __len__(self) -> int:
        return len(self.first)

    def take(self, which: np.ndarray) -> Encounters:
        return Encounters(self.first[which], self.second[which], self.difference[which], self.variance[which])


def find_encounters(walk: Walk, segments: Segments, sigma: float, sums: Optional[Sums] = None) -> Encounters:
    """All encounters of the walk; windows of points end where the heights step.

    The difference comes from a least-squares plane that both visits share (crossing tracks give its slope in both
    directions) and an offset between them.
    """
    xy = np.column_stack([walk.x, walk.y])
    reach = _NEAR * walk.spacing
    if len(walk) <= APART or not np.isfinite(reach):
        return Encounters(np.empty(0, np.int64), np.empty(0, np.int64), np.empty(0), np.empty(0))
    some = np.flatnonzero(_near_other_visits(xy, reach))
    pairs = plain_tree(xy[some]).query_pairs(reach, output_type="ndarray")
    pairs = np.sort(some[pairs], axis=1)
    pairs = pairs[pairs[:, 1] - pairs[:, 0] > APART]
    first, second = _closest(pairs, np.hypot(*(xy[pairs[:, 0]] - xy[pairs[:, 1]]).T))
    sums = Sums(walk) if sums is None else sums
    windows = []
    for at in (second, first):
        segment = segments.of[at]
        low = np.maximum(at - _WINDOW, segments.start[segment])
        windows.append(sums.over(low, np.minimum(at + _WINDOW + 1, segments.end[segment])))
    difference, variance = offset_of(windows[0], windows[1], sigma)
    bulge = [_bulge(walk, at) for at in (second, first)]
    difference = difference - bulge[0] + bulge[1]
    # Where the ground bends as much as the noise, the parabola is no better known than that.
    variance = variance + 2 * (0.08 * sigma) ** 2 + (0.5 * bulge[0]) ** 2 + (0.5 * bulge[1]) ** 2
    return Encounters(first, second, difference, variance)


def _near_other_visits(xy: np.ndarray, reach: float) -> np.ndarray:
    """Mask (q,) of the points that may have one of another visit within ``reach`` (m); few are asked of a tree then.

    By cells of twice that size: the lowest and the highest number of a point in each and in those around it.
    """
    low = xy.min(axis=0)
    cell = max(2 * reach, float((xy.max(axis=0) - low).max()) / _CELLS)
    column, row = ((xy[:, k] - low[k]) / cell + 1 for k in (0, 1))
    shape = int(column.max()) + 2, int(row.max()) + 2
    code = column.astype(np.int32) * np.int32(shape[1]) + row.astype(np.int32)
    number = np.arange(len(xy), dtype=np.int32)
    first, last = np.full(shape, len(xy), np.int32), np.full(shape, -1, np.int32)
    first.ravel()[code[::-1]], last.ravel()[code] = number[::-1], number  # of those in one cell the last one stays
    for table, best in ((first, np.minimum), (last, np.maximum)):
        best(best(table[:-2], table[2:]), table[1:-1], out=table[1:-1])
        best(best(table[:, :-2], table[:, 2:]), table[:, 1:-1], out=table[:, 1:-1])
    mask: np.ndarray = last.ravel()[code] - first.ravel()[code] > APART
    return mask


def _bulge(walk: Walk, at: np.ndarray) -> np.ndarray:
    """How far (m) the mean of a window of seven points stands over its middle because the ground is curved
    along the pass.

    From the second difference of means of three, six steps apart; for evenly spaced points on a parabola the mean of
    seven lies 4/72 of it above the middle. 0 near the ends of a piece, where the pass turns, and where the
    ground breaks.
    """
    far = _WINDOW * 2
    fits = (at - far - 1 >= walk.first[at]) & (at + far + 1 < walk.last[at])
    i = np.where(fits, at, far + 1) if len(walk) > 2 * far + 2 else None
    if i is None:
        return np.zeros(len(at))
    low, middle, high = (sum(walk.z[i + k + d] for d in (-1, 0, 1)) / 3 for k in (-far, 0, far))
    whole = np.hypot(walk.x[i + far] - walk.x[i - far], walk.y[i + far] - walk.y[i - far])
    straight = whole > 0.9 * 2 * far * walk.spacing
    bend = (low + high - 2 * middle) * (4 / 72)
    result: np.ndarray = np.where(fits & straight & (np.abs(bend) < 0.03), bend, 0.0)
    return result


def _closest(pairs: np.ndarray, distance: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """The closest pair of each encounter: pairs whose points follow each other on both passes are one."""
    if not len(pairs):
        return np.empty(0, np.int64), np.empty(0, np.int64)
    order = np.lexsort((pairs[:, 1], pairs[:, 0]))
    pairs, distance = pairs[order], distance[order]
    # Side by side, second - first or second + first stays about the same: group by place and by pass.
    key = (pairs[:, 0] // _LONG) * (1 << 32) + pairs[:, 1] // _LONG
    ranked = np.lexsort((distance, key))
    best = ranked[np.append(True, np.diff(key[ranked]) != 0)]
    a, b = pairs[best].T
    # Groups cut one encounter in two where it lies on a boundary: keep the closer of such neighbours.
    keep = np.ones(len(best), bool)
    order = np.argsort(a, kind="stable")
    for back in (1, 2):
        p, q = order[:-back], order[back:]
        same = (np.abs(a[p] - a[q]) < 6) & (np.abs(b[p] - b[q]) < 6)
        farther = np.where(distance[best[p]] > distance[best[q]], p, q)
        keep[farther[same]] = False
    return a[keep], b[keep]
