"""What is decided of each stretch that seems off the ground: rejected, flagged, or let be.

A search of the walk finds stretches that stand off their surroundings. So do ditches, kerb feet, walls, heaps and beds.
What decides is told here, in this order:

- Meetings. Where other visits cross the stretch at its own height it is ground, however low or high it lies beside its
  surroundings; where they say that it is off by what it seems to be, it is rejected.
- A line of the ground that several passes share (:mod:`..features`) explains what departs beside it.
- Steps. A short stretch that steps off the ground and back, within one step of the walk at either end, by the same
  amount, where no other pass has such steps, is rejected: ground that passes on both sides do not share does not do so.
- All else is at most flagged, if it is off by four standard deviations of a height and steps at one end at least.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np

from .fits import Sums, offset_of
from .meeting_points import Met, find_met
from .stretches import Scale
from .suspects import Suspects
from .walk import Walk

#: Standard deviations of a height from which a stretch counts.
COUNTS = 4.0
_NEAR = 2.5  # standard deviations within which a meeting agrees with a height
_SHARE = 0.4  # of the offset: how close a meeting must come to either height
_STEEP = 4.0  # standard deviations of a step
_WINDOW = 6  # points on either side of a step
_SHORT = 30  # points of a stretch whose steps speak for themselves
_DENIES = 2.0  # of the meetings that say off, for each that says ground
_EXPLAINED = 0.5  # of the points of a stretch
_MET_NOISE = 1.6  # of a height's noise: what two visits differ by at a crossing


@dataclass(frozen=True)
class Parts:
    """p stretches: points [start, end) of the walk, the ``level`` (p,) they seem off by (m), and what speaks for it.

    ``into``, ``out``: (p,) the step (m) at either end, up onto the stretch, nan where it cannot be told; ``steep_in``,
    ``steep_out``: (p,) bool, it is that of the level. ``off``, ``ground``: (p,) meetings that say off, and ground.
    """

    start: np.ndarray
    end: np.ndarray
    level: np.ndarray
    into: np.ndarray
    out: np.ndarray
    steep_in: np.ndarray
    steep_out: np.ndarray
    off: np.ndarray
    ground: np.ndarray

    def __len__(self) -> int:
        return len(self.start)


def decide(walk: Walk, suspects: Suspects, scale: Scale, explained: np.ndarray) -> Suspects:
    """The suspects as decided. ``explained``: (q,) bool, a line of the ground explains that the point departs."""
    parts = _parts(walk, suspects, scale)
    if not len(parts):
        return suspects
    size = parts.end - parts.start
    count = np.append(0, np.cumsum(explained))
    told = (count[parts.end] - count[parts.start]) > _EXPLAINED * size
    large = np.abs(parts.level) >= COUNTS * scale.total
    searched = np.array([suspects.off[a:b].any() for a, b in zip(parts.start.tolist(), parts.end.tolist())])
    denied = (parts.ground > 0) & (parts.off <= _DENIES * parts.ground)
    steep = parts.steep_in.astype(int) + parts.steep_out
    met = (parts.off >= 2) | ((parts.off >= 1) & (steep >= 1))
    rejected = large & ~denied & (met | (~told & searched & (steep == 2) & (size <= _SHORT)))
    flagged = large & ~denied & ~told & ~rejected & ((steep >= 1) | searched)
    off, doubtful = np.zeros(len(walk), bool), np.zeros(len(walk), bool)
    level, group = np.zeros(len(walk)), np.full(len(walk), -1)
    for k in np.flatnonzero(rejected | flagged).tolist():
        some = slice(parts.start[k], parts.end[k])
        off[some], doubtful[some] = rejected[k], flagged[k]
        level[some], group[some] = parts.level[k], k
    return Suspects(off, doubtful, level, suspects.sigma, group)


def _parts(walk: Walk, suspects: Suspects, scale: Scale) -> Parts:
    start, end = _bounds(walk, suspects)
    level = np.array([np.median(suspects.level[a:b]) for a, b in zip(start.tolist(), end.tolist())])
    group = np.full(len(walk), -1)
    for k, (a, b) in enumerate(zip(start.tolist(), end.tolist())):
        group[a:b] = k
    met = find_met(walk, group)
    into, in_sigma, out, out_sigma = _steps(walk, start, end, scale.noise)
    level = _levels(level, group, met, into, in_sigma, out, out_sigma, scale)
    off, ground = _counts(level, group, met, scale)
    return Parts(
        start, end, level, into, out, _steep(into, in_sigma, level), _steep(out, out_sigma, level), off, ground
    )


def _bounds(walk: Walk, suspects: Suspects) -> Tuple[np.ndarray, np.ndarray]:
    """Rows of points that follow each other and were found together."""
    some = np.flatnonzero(suspects.marked)
    if not len(some):
        return np.empty(0, np.int64), np.empty(0, np.int64)
    apart = (np.diff(some) > 1) | (np.diff(suspects.group[some]) != 0) | (np.diff(walk.piece[some]) != 0)
    first = np.append(True, apart)
    last = np.append(apart, True)
    return some[first], some[last] + 1


def _steps(
    walk: Walk, start: np.ndarray, end: np.ndarray, noise: float
) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Steps (m) onto each stretch from before it and from behind it, and their standard deviations; nan for none."""
    sums, n = Sums(walk), len(walk)
    low, high = np.maximum(start - _WINDOW, walk.first[start]), np.minimum(end + _WINDOW, walk.last[end - 1])
    inner_high, inner_low = np.minimum(start + _WINDOW, end), np.maximum(end - _WINDOW, start)
    result = []
    for outside, inside, at in (
        ((low, start), (start, inner_high), start),
        ((end, high), (inner_low, end), np.minimum(end, n - 1)),
    ):
        step, variance = offset_of(sums.over(*inside), sums.over(*outside), noise, sums.trend(at))
        known = outside[1] - outside[0] >= 2
        result += [np.where(known, step, np.nan), np.where(known, np.sqrt(variance), np.nan)]
    return result[0], result[1], result[2], result[3]


def _steep(step: np.ndarray, sigma: np.ndarray, level: np.ndarray) -> np.ndarray:
    """Mask of the steps that are clear and come to half to twice the level."""
    with np.errstate(invalid="ignore"):
        result: np.ndarray = (
            (step * level > 0)
            & (np.abs(step) > 0.5 * np.abs(level))
            & (np.abs(step) < 2 * np.abs(level))
            & (np.abs(step) > _STEEP * sigma)
        )
    return result


def _levels(
    level: np.ndarray, group: np.ndarray, met: Met, into: np.ndarray, in_sigma: np.ndarray, out: np.ndarray,
    out_sigma: np.ndarray, scale: Scale,
) -> np.ndarray:  # fmt: skip
    """What each stretch is off by: as meetings say that see it off, else its steps where both agree, else as found."""
    result = level.copy()
    with np.errstate(invalid="ignore"):
        both = (np.abs(into) > _STEEP * in_sigma) & (np.abs(out) > _STEEP * out_sigma) & (into * out > 0)
        both &= np.maximum(np.abs(into), np.abs(out)) < 2 * np.minimum(np.abs(into), np.abs(out))
    result[both] = ((into + out) / 2)[both]
    spread = _MET_NOISE * scale.total
    away = np.abs(met.beyond) > 3 * spread
    of, beyond = group[met.point][away], met.beyond[away]
    order = np.lexsort((beyond, of))
    of, beyond = of[order], beyond[order]
    for k in np.unique(of).tolist():
        own = beyond[slice(*np.searchsorted(of, [k, k + 1]))]
        middle = float(np.median(own))
        if (
            len(own) >= 2
            and np.count_nonzero(np.abs(own - middle) < max(3 * spread, _SHARE * abs(middle))) > len(own) / 2
        ):
            result[k] = middle
    return result


def _counts(level: np.ndarray, group: np.ndarray, met: Met, scale: Scale) -> Tuple[np.ndarray, np.ndarray]:
    """Meetings of each stretch that say it is off by its level, and that say it is ground."""
    of = group[met.point]
    own, spread = level[of], _MET_NOISE * scale.total
    slack = np.maximum(_NEAR * spread, _SHARE * np.abs(own))
    ground = np.abs(met.beyond) <= np.minimum(slack, 0.5 * np.abs(own))
    off = ~ground & (np.abs(met.beyond - own) <= slack)
    count = len(level)
    return np.bincount(of[off], minlength=count), np.bincount(of[ground], minlength=count)
