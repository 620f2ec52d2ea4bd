"""Search along the walk for heights that step away from the ground and back.

Every hypothesis (these w points stand off by a; the heights step by a here) is a small least-squares fit: a plane
shared by both groups of points and an offset between them, as in :func:`.fits.offset_of`. Its score is the offset over
its standard deviation.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Sequence, Tuple, Union

import numpy as np

from ..progress import Progress, part, silent
from .fits import SLOPE, sums_of
from .noise import robust_sigma
from .walk import Walk

_CHUNK = 16384  # points looked at together: their sums stay in the processor's cache
_SAMPLE = 10_000  # scores that tell how large they usually are


@dataclass(frozen=True)
class Hypothesis:
    """``width`` points from some place on stand off the ``before`` points before them and the ``after`` behind them.

    Without ``after`` it is a step, and where fewer than ``width`` points are left they will do.
    """

    before: int
    width: int
    after: int


HYPOTHESES: Tuple[Hypothesis, ...] = (
    *(Hypothesis(flank, width, flank) for width, flank in ((1, 4), (2, 4), (3, 5), (4, 6), (6, 6), (8, 8), (12, 8))),
    *(Hypothesis(reach, reach, 0) for reach in (4, 8, 12)),
)
_BEFORE = max(h.before for h in HYPOTHESES)
_AFTER = max(h.width + h.after for h in HYPOTHESES)


@dataclass(frozen=True)
class Hits:
    """h places where the heights step: ``start, end`` [start, end) of the points off, or ``start == end`` of a step.

    ``score``: size over its standard deviation.
    """

    start: np.ndarray
    end: np.ndarray
    score: np.ndarray

    def __len__(self) -> int:
        return len(self.start)


class Scores:
    """The scores of all hypotheses at all points of a walk, kept while it is cut: a cut changes those around it only.

    A fit never reaches over a cut or the end of a piece.
    """

    def __init__(
        self, walk: Walk, sigma: float, where: Optional[np.ndarray] = None, progress: Progress = silent
    ) -> None:
        """``sigma``: noise of a height (m); ``where``: points (k,) to begin with, rising; all by default."""
        n = len(walk)
        self._walk, self._sigma = walk, sigma
        self._starts = np.flatnonzero(np.append(True, np.diff(walk.piece) != 0))
        self._known = np.full(n, where is None)
        if where is None:
            self._score = scores_of(walk, HYPOTHESES, sigma, progress)
        else:
            self._score = np.zeros((len(HYPOTHESES), n))
            self._known[where] = True
            self._look([where] * len(HYPOTHESES), spread(where, _BEFORE, _AFTER, n), progress)

    def cut(self, fresh: np.ndarray, looked: np.ndarray, progress: Progress = silent) -> None:
        """Take in new cuts before the points ``fresh``; ``looked``: points (k,) whose scores will be asked for."""
        n = len(self._walk)
        self._starts = np.union1d(self._starts, fresh)
        unknown = looked[~self._known[looked]]
        self._known[unknown] = True
        places = []
        for h in HYPOTHESES:
            near = spread(fresh, h.width + h.after - 1, h.before, n)
            near = near[self._known[near]]
            places.append(np.union1d(near, unknown) if len(unknown) else near)
        near = spread(fresh, _BEFORE + _AFTER, _BEFORE + _AFTER, n)
        if len(unknown):
            near = np.union1d(near, spread(unknown, _BEFORE, _AFTER, n))
        self._look(places, near, part(progress, 0.2, 1.0))

    def _look(self, places: List[np.ndarray], near: np.ndarray, progress: Progress) -> None:
        """Score each hypothesis anew at its places (k,); ``near``: the points of all their windows. All rise."""
        walk, own = self._walk, np.arange(len(near))
        columns = tuple(c[near] for c in (walk.x, walk.y, walk.z))
        piece = np.searchsorted(self._starts, near, side="right")
        first = own - (near - self._starts[piece - 1])  # counted in ``near``, as all that follows
        last = own + (np.append(self._starts, len(walk))[piece] - near)
        number = np.zeros(len(walk), np.int64)
        number[near] = own
        starts = np.arange(0, len(near), _CHUNK)
        at = [number[some] for some in places]
        cuts = [np.append(np.searchsorted(some, starts), len(some)) for some in at]
        for turn, start in enumerate(starts.tolist()):
            progress(turn / len(starts), "quality")
            block = _Block(columns, start)
            for h, score, place, one, bounds in zip(HYPOTHESES, self._score, places, at, cuts):
                some = slice(bounds[turn], bounds[turn + 1])
                low = np.maximum(one[some] - h.before, first[one[some]])
                high = np.minimum(one[some] + h.width + h.after, last[one[some]])
                score[place[some]] = block.scores_at(h, one[some], low, high, self._sigma)

    def hits(self, limit: float, looked: Optional[np.ndarray] = None) -> Hits:
        """Where, at the points ``looked`` (k,), scores exceed ``limit``: noise and usual roughness together."""
        found: List[Tuple[np.ndarray, np.ndarray, np.ndarray]] = []
        for h, scores in zip(HYPOTHESES, self._score):
            score = scores if looked is None else scores[looked]
            usual = _usual(score[:: -(-len(score) // _SAMPLE) or 1])
            strong = np.flatnonzero(np.abs(score) > limit * usual)
            at = strong if looked is None else looked[strong]
            found.append((at, at + (h.width if h.after else 0), score[strong] / usual))
        return Hits(*(np.concatenate(column) for column in zip(*found)))


def scores_of(walk: Walk, hypotheses: Sequence[Hypothesis], sigma: float, progress: Progress = silent) -> np.ndarray:
    """Scores (h, q) of ``hypotheses`` (none wider than the widest of :data:`HYPOTHESES`) at all points of a walk.

    ``sigma``: noise of a height (m). 0 where there are too few points; windows end where a piece does.
    """
    result = np.zeros((len(hypotheses), len(walk)))
    ends = np.append(np.flatnonzero(np.append(True, np.diff(walk.piece) != 0)), len(walk))
    # Near the ends of a piece windows are cut.
    cut = [spread(ends, h.width + h.after - 1, h.before, len(walk)) for h in hypotheses]
    for start in range(0, len(walk), _CHUNK):
        progress(start / len(walk), "quality")
        block = _Block((walk.x, walk.y, walk.z), start)
        for h, score, places in zip(hypotheses, result, cut):
            score[start : block.end] = block.scores(h, sigma)
            at = places[slice(*np.searchsorted(places, (start, block.end)))]
            low = np.maximum(at - h.before, walk.first[at])
            high = np.minimum(at + h.width + h.after, walk.last[at])
            score[at] = block.scores_at(h, at, low, high, sigma)
    return result


def spread(places: np.ndarray, before: int, after: int, n: int) -> np.ndarray:
    """All points of n from ``before`` places before to ``after`` (not included) after one of ``places``, which rise."""
    low, high = np.maximum(places - before, 0), np.minimum(places + after, n)
    low = np.maximum(low, np.append(0, high[:-1]))
    count = np.maximum(high - low, 0)
    result: np.ndarray = np.repeat(low - np.cumsum(count) + count, count) + np.arange(count.sum())
    return result


class _Block:
    """Points [start, end) of some points with running sums that reach some points further on either side."""

    def __init__(self, columns: Sequence[np.ndarray], start: int) -> None:
        """``columns``: x, y and z of all points, each (n,)."""
        n = len(columns[0])
        self.start, self.end = start, min(start + _CHUNK, n)
        low, high = max(start - _BEFORE, 0), min(self.end + _AFTER, n)
        self._offset = start - _BEFORE
        self._sums = np.zeros((9, self.end - start + _BEFORE + _AFTER + 1))
        place = slice(low - self._offset, high - self._offset + 1)
        self._sums[:, place] = sums_of(*(c[low:high] - c[start] for c in columns))

    def scores(self, h: Hypothesis, sigma: float) -> np.ndarray:
        """Scores at all points of the block, whole windows; what they are where a piece ends is no matter."""
        k, at = self.end - self.start, _BEFORE
        s = self._sums

        def over(rows: slice, low: int, high: int) -> np.ndarray:
            result: np.ndarray = s[rows, at + high : at + high + k] - s[rows, at + low : at + low + k]
            return result

        whole, inside = over(slice(1, 9), -h.before, h.width + h.after), over(slice(1, 4), 0, h.width)
        return _score(list(whole), list(inside), h.before + h.width + h.after, h.width, sigma)

    def scores_at(self, h: Hypothesis, at: np.ndarray, low: np.ndarray, high: np.ndarray, sigma: float) -> np.ndarray:
        """Scores at points ``at`` (k,) of the block whose windows are [low, high); 0 where there are too few points."""
        end = np.minimum(at + h.width, high)
        inside, others = end - at, high - low - (end - at)
        fits = (others >= 2) & ((inside == h.width) if h.after else (inside >= 2))
        at, low, end, high = (v[fits] - self._offset for v in (at, low, end, high))
        result = np.zeros(len(fits))
        whole = [row.take(high) - row.take(low) for row in self._sums[1:]]
        group = [row.take(end) - row.take(at) for row in self._sums[1:4]]
        result[fits] = _score(whole, group, (inside + others)[fits].astype(float), inside[fits].astype(float), sigma)
        return result


def _score(
    whole: Sequence[np.ndarray], inside: Sequence[np.ndarray], count: Union[int, np.ndarray],
    width: Union[int, np.ndarray], sigma: float,
) -> np.ndarray:  # fmt: skip
    """Offset of a group over its standard deviation, from sums of x, y, z, xx, xy, yy, xz, yz over ``count`` points and
    of x, y, z over the ``width`` of them that are the group.

    Least squares for a plane and the offset together; the slopes are held back by what slopes the ground may have.
    """
    ridge = (sigma / SLOPE) ** 2
    x, y, z, xx, xy, yy, xz, yz = whole
    mean_x, mean_y, share = x / count, y / count, width / count
    xx, xy, yy = xx - mean_x * x + ridge, xy - mean_x * y, yy - mean_y * y + ridge
    xz, yz = xz - mean_x * z, yz - mean_y * z
    gx, gy, gz = (own - share * every for own, every in zip(inside, (x, y, z)))
    whole_det = np.maximum(xx * yy - xy * xy, ridge**2)  # no less but by rounding
    ux, uy = (yy * gx - xy * gy) / whole_det, (xx * gy - xy * gx) / whole_det
    left = width * (1 - share) - ux * gx - uy * gy  # of the group's own scatter, when the slope has its part
    result: np.ndarray = (gz - ux * xz - uy * yz) / (sigma * np.sqrt(np.maximum(left, 1e-12)))
    return result


def _usual(score: np.ndarray) -> float:
    """How large scores usually are, 1 at least: more than that is the ground's."""
    known = score[score != 0]
    return max(1.0, robust_sigma(known)) if len(known) else 1.0


def strongest(hits: Hits, reach: int) -> Hits:
    """The hits that no stronger hit overlaps, bumps and steps alike; ``reach`` points around each are taken by it."""
    order = np.argsort(-np.abs(hits.score), kind="stable")
    start, end = hits.start[order].tolist(), hits.end[order].tolist()
    taken = bytearray(int(hits.end.max()) + 2 * reach + 2) if len(hits) else bytearray()
    kept: List[int] = []
    for k, a, b in zip(order.tolist(), start, end):
        low, high = max(0, a - reach), b + reach
        if taken.find(1, a, b + 1) >= 0:
            continue
        taken[low : high + 1] = b"\1" * (high + 1 - low)
        kept.append(k)
    which = np.array(kept, np.int64)
    return Hits(hits.start[which], hits.end[which], hits.score[which])
